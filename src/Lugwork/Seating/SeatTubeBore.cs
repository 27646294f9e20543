using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>The bore of a seat tube, named by the post that it takes.</summary>
/// <remarks>18 to 40 mm, exact to the nanometre. The default is no diameter: it is refused wherever a value is asked for.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<SeatTubeBore>))]
[TypeConverter(typeof(InterfaceTypeConverter<SeatTubeBore>))]
public readonly record struct SeatTubeBore : IInterfaceValue<SeatTubeBore>
{
    private readonly Nanometres _length;

    private SeatTubeBore(Nanometres length) => _length = length;

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
    public static ImmutableArray<SeatTubeBore> All { get; } = Nominal();

    private static ImmutableArray<SeatTubeBore> Nominal()
    {
        SeatTubeBore[] nominal = new SeatTubeBore[SeatDiameters.Rows.Length];
        for (int i = 0; i < nominal.Length; i++)
        {
            nominal[i] = new(SeatDiameters.Exact(SeatDiameters.Rows[i].Hundredths));
        }

        return ImmutableArray.Create(nominal);
    }

    /// <inheritdoc/>
    public static string Called => "seat tube bore";

    /// <summary>Makes a diameter from millimetres.</summary>
    /// <param name="millimetres">18 to 40; rounded to the nanometre.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static SeatTubeBore OfMillimetres(decimal millimetres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(millimetres, SeatDiameters.Least);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(millimetres, SeatDiameters.Most);
        return new(Nanometres.OfMillimetres(millimetres));
    }

    /// <inheritdoc/>
    public static SeatTubeBore OfFitCode(long code) =>
        code > 0 ? new(new Nanometres(code)) : throw new ArgumentOutOfRangeException(nameof(code), code, "a diameter is above zero");

    /// <inheritdoc/>
    public static TextReading<SeatTubeBore> Read(ReadOnlySpan<char> text) =>
        SeatDiameters.Read(text, out long nanometres, out int position) is { } problem
            ? TextReading<SeatTubeBore>.Refused(problem, position)
            : TextReading<SeatTubeBore>.Of(new(new Nanometres(nanometres)));

    /// <summary>The posts that a bore of this reading can be made for: the bore of a slip fit is up to 0.1 mm larger than its post. Where none is near, the reading and both ends of its error.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<SeatTubeBore> WithinError(decimal millimetres, decimal error)
    {
        ImmutableArray<SeatTubeBore> near = [.. All.Where(n => n.Millimetres >= millimetres - error - SeatDiameters.SlipFit && n.Millimetres <= millimetres + error)];
        return near.IsEmpty && millimetres - error >= SeatDiameters.Least && millimetres + error <= SeatDiameters.Most
            ? [.. new[] { millimetres - error, millimetres, millimetres + error }.Distinct().Select(OfMillimetres)]
            : near;
    }

    /// <summary>The nominal sizes that readings can be: a bore is up to 0.1 mm over its name, the post that slides in it up to 0.1 mm under it. The old post says more than the bore.</summary>
    /// <param name="bore">Inside the seat tube, below the slot.</param>
    /// <param name="post">The post that slid in it without play.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    public static Identification<SeatTubeBore> Identify(MeasuredLength? bore = null, MeasuredLength? post = null) => SeatTubeBoreMeasures.Table.Identify(bore, post);

    private static class SeatTubeBoreMeasures
    {
        public static IdentificationTable<SeatTubeBore> Table { get; } =
            SeatDiameters.Table(Falling(), bore => (int)(bore._length.Value / (Nanometres.PerMillimetre / 100)), bore => bore.FitKey, postFirst: false);

        /// <summary>Largest first: of two sizes 0.1 mm apart, a bore of exactly the larger one is that one.</summary>
        private static ImmutableArray<SeatTubeBore> Falling()
        {
            SeatTubeBore[] falling = new SeatTubeBore[All.Length];
            for (int i = 0; i < falling.Length; i++)
            {
                falling[i] = All[All.Length - 1 - i];
            }

            return ImmutableArray.Create(falling);
        }
    }

    /// <inheritdoc/>
    public static SeatTubeBore Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<SeatTubeBore>(s);

    /// <inheritdoc/>
    public static SeatTubeBore Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<SeatTubeBore>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out SeatTubeBore result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out SeatTubeBore result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out SeatTubeBore result) => TryParse(s, null, out result);

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
