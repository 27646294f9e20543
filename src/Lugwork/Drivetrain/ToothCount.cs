using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>Number of teeth of a ring: "42".</summary>
/// <remarks>8 to 80. The default is no count: it is written "?", which is refused when read.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<ToothCount>))]
[TypeConverter(typeof(InterfaceTypeConverter<ToothCount>))]
public readonly record struct ToothCount : IInterfaceValue<ToothCount>
{
    private const int Fewest = 8;

    private const int Most = 80;

    private readonly int _teeth;

    private ToothCount(int teeth) => _teeth = teeth;

    /// <summary>Every count, few before many.</summary>
    public static ImmutableArray<ToothCount> All { get; } = Every();

    /// <inheritdoc/>
    public static string Called => "number of teeth";

    /// <summary>How many teeth; zero for a default.</summary>
    public int Teeth => _teeth;

    /// <inheritdoc/>
    public string FitKey => _teeth == 0 ? InterfaceText.NoValue : _teeth.ToString(CultureInfo.InvariantCulture);

    /// <summary>How many teeth: the code is the count.</summary>
    public long FitCode => _teeth;

    /// <summary>Makes one.</summary>
    /// <param name="teeth">How many teeth, 8 to 80.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such ring.</exception>
    public static ToothCount Of(int teeth)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(teeth, Fewest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(teeth, Most);
        return new(teeth);
    }

    /// <inheritdoc/>
    public static ToothCount OfFitCode(long code) =>
        code is >= Fewest and <= Most ? new((int)code) : throw new ArgumentOutOfRangeException(nameof(code), code, "no count of teeth has this code");

    /// <summary>Reads a whole number, with "T", "t" or "teeth" behind it if need be.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<ToothCount> Read(ReadOnlySpan<char> text)
    {
        const string Expected = "a number of teeth is expected, 8 to 80, such as 42";
        TextCursor cursor = new(text);
        if (TextCursor.IsNegative(text) || !cursor.TryNumber(out long nanometres))
        {
            return TextReading<ToothCount>.Refused(Expected, cursor.Position);
        }

        cursor.SkipBlanks();
        ReadOnlySpan<char> rest = cursor.Rest.TrimEnd();
        bool padded = rest.IsEmpty || rest.Equals("t", StringComparison.OrdinalIgnoreCase) || rest.Equals("teeth", StringComparison.OrdinalIgnoreCase);
        (long teeth, long part) = Math.DivRem(nanometres, Nanometres.PerMillimetre);
        return padded && part == 0 && teeth is >= Fewest and <= Most ? TextReading<ToothCount>.Of(new((int)teeth)) : TextReading<ToothCount>.Refused(Expected, padded ? 0 : cursor.Position);
    }

    /// <inheritdoc/>
    public static ToothCount Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<ToothCount>(s);

    /// <inheritdoc/>
    public static ToothCount Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<ToothCount>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out ToothCount result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out ToothCount result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out ToothCount result) => TryParse(s, null, out result);

    /// <summary>The count: "42".</summary>
    public override string ToString() => FitKey;

    /// <summary>The count for "G", "T" or nothing; it has no length.</summary>
    /// <param name="format">"G", "T", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, null, Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);

    private static ImmutableArray<ToothCount> Every()
    {
        ToothCount[] every = new ToothCount[Most - Fewest + 1];
        for (int i = 0; i < every.Length; i++)
        {
            every[i] = new(Fewest + i);
        }

        return ImmutableArray.Create(every);
    }
}
