using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork;

/// <summary>An angle of a frame to the ground, such as a head angle or its limit. Exact to the whole microdegree.</summary>
/// <remarks>
/// Above zero and at most 180 degrees, a range that no page prints: it only keeps out what is no angle of a frame; a field may take less.
/// Text and quantities are rounded to the microdegree. A bare number is degrees; radians, minutes and per cent are not read. The default
/// is no angle: it is refused wherever a value is asked for.
/// </remarks>
[JsonConverter(typeof(InterfaceJsonConverter<FrameAngle>))]
[TypeConverter(typeof(InterfaceTypeConverter<FrameAngle>))]
public readonly record struct FrameAngle : IInterfaceValue<FrameAngle>, IComparable<FrameAngle>
{
    internal const long PerDegree = 1_000_000;
    internal const long Largest = 180 * PerDegree;
    private const string Range = "an angle is above 0 and at most 180 degrees";

    private readonly int _microdegrees;

    private FrameAngle(long microdegrees) => _microdegrees = (int)microdegrees;

    /// <summary>The angle as a quantity.</summary>
    public Angle Angle => Angle.FromDegrees((double)Degrees);

    /// <summary>The angle in degrees, exact; 0 for the default.</summary>
    public decimal Degrees => _microdegrees / (decimal)PerDegree;

    /// <inheritdoc/>
    public string FitKey => Written(_microdegrees);

    /// <summary>Whole microdegrees.</summary>
    public long FitCode => _microdegrees;

    /// <summary>Empty: an angle has no nominal sizes.</summary>
    public static ImmutableArray<FrameAngle> All => [];

    /// <inheritdoc/>
    public static string Called => "angle";

    /// <inheritdoc/>
    public static bool IsPlainAngle => true;

    /// <summary>Makes an angle from degrees.</summary>
    /// <param name="degrees">Above zero, at most 180; rounded to the microdegree.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, or less than a microdegree.</exception>
    public static FrameAngle OfDegrees(decimal degrees)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(degrees, 0.000001m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(degrees, 180m);
        return new((long)decimal.Round(degrees * PerDegree, 0, MidpointRounding.AwayFromZero));
    }

    /// <summary>Makes an angle from a quantity.</summary>
    /// <param name="angle">At least a microdegree, at most 180 degrees; rounded to the microdegree.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or not a number.</exception>
    public static FrameAngle Of(Angle angle)
    {
        double degrees = angle.Degrees;
        if (!(degrees >= 0.000001 && degrees <= 180))
        {
            throw new ArgumentOutOfRangeException(nameof(angle), degrees, Range);
        }

        return OfDegrees((decimal)degrees);
    }

    /// <inheritdoc/>
    public static FrameAngle OfFitCode(long code) =>
        code is > 0 and <= Largest ? new(code) : throw new ArgumentOutOfRangeException(nameof(code), code, Range);

    /// <inheritdoc/>
    public static TextReading<FrameAngle> Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (!cursor.TryNumber(out long microdegrees))
        {
            return TextReading<FrameAngle>.Refused("an angle in degrees is expected, such as 67.5\u00B0", cursor.Position);
        }

        cursor.SkipBlanks();
        int unitAt = cursor.Position;
        ReadOnlySpan<char> unit = cursor.Rest;
        while (!unit.IsEmpty && TextCursor.IsBlank(unit[^1]))
        {
            unit = unit[..^1];
        }

        return !IsDegrees(unit) ? TextReading<FrameAngle>.Refused("only \u00B0 or deg may follow the number", unitAt)
            : microdegrees is > 0 and <= Largest ? TextReading<FrameAngle>.Of(new(microdegrees))
            : TextReading<FrameAngle>.Refused(Range);
    }

    /// <inheritdoc/>
    public static FrameAngle Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<FrameAngle>(s);

    /// <inheritdoc/>
    public static FrameAngle Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<FrameAngle>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out FrameAngle result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out FrameAngle result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out FrameAngle result) => TryParse(s, null, out result);

    /// <summary>Degrees with their sign: "67.5°".</summary>
    public override string ToString() => FitKey;

    /// <summary>The key for "G", "T" or nothing: "67.5°".</summary>
    /// <param name="format">"G", "T", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, null, Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);

    /// <summary>Any number of microdegrees as degrees; no angle, as the default is, has no text that is read.</summary>
    internal static string Written(long microdegrees) =>
        microdegrees <= 0 ? InterfaceText.NoValue : (microdegrees / (decimal)PerDegree).ToString("0.######", CultureInfo.InvariantCulture) + "\u00B0";

    private static bool IsDegrees(ReadOnlySpan<char> unit) =>
        unit is "" or "\u00B0" or "\u00BA"
        || unit.Equals("deg", StringComparison.OrdinalIgnoreCase) || unit.Equals("deg.", StringComparison.OrdinalIgnoreCase)
        || unit.Equals("degree", StringComparison.OrdinalIgnoreCase) || unit.Equals("degrees", StringComparison.OrdinalIgnoreCase);

    /// <summary>By the angle; the default, which is none, comes first.</summary>
    /// <param name="other">Another.</param>
    public int CompareTo(FrameAngle other) => _microdegrees.CompareTo(other._microdegrees);

    /// <summary>The left angle is smaller than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator <(FrameAngle left, FrameAngle right) => left._microdegrees < right._microdegrees;

    /// <summary>The left angle is not larger than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator <=(FrameAngle left, FrameAngle right) => left._microdegrees <= right._microdegrees;

    /// <summary>The left angle is larger than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator >(FrameAngle left, FrameAngle right) => left._microdegrees > right._microdegrees;

    /// <summary>The left angle is not smaller than the right one.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator >=(FrameAngle left, FrameAngle right) => left._microdegrees >= right._microdegrees;
}
