using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>The outside diameter of a seatpost, by its nominal size.</summary>
/// <remarks>18 to 40 mm, exact to the nanometre. The default is no diameter: it is refused wherever a value is asked for.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<SeatpostDiameter>))]
[TypeConverter(typeof(InterfaceTypeConverter<SeatpostDiameter>))]
public readonly record struct SeatpostDiameter : IInterfaceValue<SeatpostDiameter>
{
    private readonly Nanometres _length;

    private SeatpostDiameter(Nanometres length) => _length = length;

    /// <summary>The diameter as a quantity.</summary>
    public Length Diameter => _length.ToLength();

    /// <summary>The diameter in millimetres, exact.</summary>
    public decimal Millimetres => _length.Millimetres;

    /// <inheritdoc/>
    public string FitKey => _length.ToString();

    /// <summary>Whole nanometres.</summary>
    public long FitCode => _length.Value;

    /// <summary>Where the nominal size comes from; null for a size that no row has.</summary>
    public Source? Source => SeatDiameters.SourceOf(_length.Value);

    /// <summary>The nominal sizes of the trade, smallest first; others are read too.</summary>
    public static ImmutableArray<SeatpostDiameter> All { get; } = Nominal();

    private static ImmutableArray<SeatpostDiameter> Nominal()
    {
        SeatpostDiameter[] nominal = new SeatpostDiameter[SeatDiameters.Rows.Length];
        for (int i = 0; i < nominal.Length; i++)
        {
            nominal[i] = new(SeatDiameters.Exact(SeatDiameters.Rows[i].Hundredths));
        }

        return ImmutableArray.Create(nominal);
    }

    /// <inheritdoc/>
    public static string Called => "seatpost diameter";

    /// <summary>Makes a diameter from millimetres.</summary>
    /// <param name="millimetres">18 to 40; rounded to the nanometre.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static SeatpostDiameter OfMillimetres(decimal millimetres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(millimetres, SeatDiameters.Least);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(millimetres, SeatDiameters.Most);
        return new(Nanometres.OfMillimetres(millimetres));
    }

    /// <inheritdoc/>
    public static SeatpostDiameter OfFitCode(long code) =>
        code > 0 ? new(new Nanometres(code)) : throw new ArgumentOutOfRangeException(nameof(code), code, "a diameter is above zero");

    /// <inheritdoc/>
    public static TextReading<SeatpostDiameter> Read(ReadOnlySpan<char> text) =>
        SeatDiameters.Read(text, out long nanometres, out int position) is { } problem
            ? TextReading<SeatpostDiameter>.Refused(problem, position)
            : TextReading<SeatpostDiameter>.Of(new(new Nanometres(nanometres)));

    /// <summary>The nominal posts that a reading can mean: a post is made up to 0.1 mm under its name for a slip fit. Where none is near, the reading and both ends of its error.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<SeatpostDiameter> WithinError(decimal millimetres, decimal error)
    {
        ImmutableArray<SeatpostDiameter> near = [.. All.Where(n => n.Millimetres >= millimetres - error && n.Millimetres <= millimetres + error + SeatDiameters.SlipFit)];
        return near.IsEmpty && millimetres - error >= SeatDiameters.Least && millimetres + error <= SeatDiameters.Most
            ? [.. new[] { millimetres - error, millimetres, millimetres + error }.Distinct().Select(OfMillimetres)]
            : near;
    }

    /// <summary>How much smaller than its bore a post is made so that it slides: about 0.1 mm.</summary>
    public static Length SlipFit => Length.FromMillimeters((double)SeatDiameters.SlipFit);

    /// <summary>Where the slip fit comes from.</summary>
    public static Source SlipFitSource => Sources.SlipFitColumn;

    /// <summary>The nominal posts that readings can be: a post is made up to 0.1 mm under its name, its bore up to 0.1 mm over it.</summary>
    /// <param name="diameter">Over the post where it sits in the tube.</param>
    /// <param name="bore">The seat tube in which it slides without play, where that can be measured too.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    public static Identification<SeatpostDiameter> Identify(MeasuredLength? diameter = null, MeasuredLength? bore = null) => SeatpostDiameterMeasures.Table.Identify(diameter, bore);

    private static class SeatpostDiameterMeasures
    {
        public static IdentificationTable<SeatpostDiameter> Table { get; } =
            SeatDiameters.Table(All, post => (int)(post._length.Value / (Nanometres.PerMillimetre / 100)), post => post.FitKey, postFirst: true);
    }

    /// <inheritdoc/>
    public static SeatpostDiameter Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<SeatpostDiameter>(s);

    /// <inheritdoc/>
    public static SeatpostDiameter Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<SeatpostDiameter>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out SeatpostDiameter result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out SeatpostDiameter result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out SeatpostDiameter result) => TryParse(s, null, out result);

    /// <summary>Millimetres without unit: "27.2".</summary>
    public override string ToString() => FitKey;

    /// <summary>The key for "G", "T" or nothing; the diameter in millimetres for "M", in inches for "I": "27.2 mm", "1.071 in".</summary>
    /// <param name="format">"G", "T", "M", "I", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, _length, Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);
}
