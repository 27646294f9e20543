using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Length of a crank arm, from the middle of the spindle to the middle of the pedal's hole.</summary>
/// <remarks>100 to 250 mm, exact to the nanometre; 130 to 220 mm are made. The default is no length: it is refused wherever a value is asked for.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<UsualCrankLength>))]
[TypeConverter(typeof(InterfaceTypeConverter<UsualCrankLength>))]
public readonly record struct CrankLength : IInterfaceValue<UsualCrankLength>
{
    private const decimal Least = 100m;

    private const decimal Most = 250m;

    private const int UsualCount = 7;

    private readonly Nanometres _length;

    private CrankLength(Nanometres length) => _length = length;

    /// <summary>The length as a quantity.</summary>
    public Length Length => _length.ToLength();

    /// <summary>The length in millimetres, exact.</summary>
    public decimal Millimetres => _length.Millimetres;

    /// <inheritdoc/>
    public string FitKey => _length.ToString();

    /// <summary>Whole nanometres.</summary>
    public long FitCode => _length.Value;

    /// <summary>Where the usual lengths come from; null for another length.</summary>
    public Source? Source => All.Contains(this) ? Sources.CrankLengths : null;

    /// <summary>The usual lengths, 165 to 180 mm in steps of 2.5; 170 is the commonest. Others are read too.</summary>
    public static ImmutableArray<UsualCrankLength> All { get; } = Usual();

    /// <inheritdoc/>
    public static string Called => "crank length";

    /// <summary>Makes a length from millimetres.</summary>
    /// <param name="millimetres">100 to 250; rounded to the nanometre.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static CrankLength OfMillimetres(decimal millimetres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(millimetres, Least);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(millimetres, Most);
        return new(Nanometres.OfMillimetres(millimetres));
    }

    /// <inheritdoc/>
    public static CrankLength OfFitCode(long code) =>
        code > 0 ? new(new Nanometres(code)) : throw new ArgumentOutOfRangeException(nameof(code), code, "a length is above zero");

    /// <inheritdoc/>
    public static TextReading<UsualCrankLength> Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (!cursor.TryNumber(out long nanometres))
        {
            return TextReading<UsualCrankLength>.Refused("a length in millimetres is expected, such as 172.5", cursor.Position);
        }

        cursor.SkipMillimetres();
        return !cursor.AtEnd ? TextReading<UsualCrankLength>.Refused("only millimetres may follow the length", cursor.Position)
            : new Nanometres(nanometres).Millimetres is < Least or > Most ? TextReading<UsualCrankLength>.Refused("a crank is 100 to 250 mm long")
            : TextReading<UsualCrankLength>.Of(new(new Nanometres(nanometres)));
    }

    /// <summary>The usual lengths that a reading can mean; where none is near, the reading and both ends of its error.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<UsualCrankLength> WithinError(decimal millimetres, decimal error)
    {
        ImmutableArray<UsualCrankLength> near = [.. All.Where(n => Math.Abs(n.Millimetres - millimetres) <= error)];
        return near.IsEmpty && millimetres - error >= Least && millimetres + error <= Most
            ? [.. new[] { millimetres - error, millimetres, millimetres + error }.Distinct().Select(OfMillimetres)]
            : near;
    }

    /// <inheritdoc/>
    public static CrankLength Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<UsualCrankLength>(s);

    /// <inheritdoc/>
    public static CrankLength Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<UsualCrankLength>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out CrankLength result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out CrankLength result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out CrankLength result) => TryParse(s, null, out result);

    /// <summary>Millimetres without unit: "172.5".</summary>
    public override string ToString() => FitKey;

    /// <summary>The key for "G", "T" or nothing; the length in millimetres for "M", in inches for "I".</summary>
    /// <param name="format">"G", "T", "M", "I", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, _length, Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);

    private static ImmutableArray<UsualCrankLength> Usual()
    {
        CrankLength[] usual = new CrankLength[UsualCount];
        for (int i = 0; i < usual.Length; i++)
        {
            usual[i] = new(Nanometres.OfMillimetres(165m + (2.5m * i)));
        }

        return ImmutableArray.Create(usual);
    }
}
