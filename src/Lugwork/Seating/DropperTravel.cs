using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>How far a dropper post goes down.</summary>
/// <remarks>30 to 400 mm, a range that no page prints: it is wide on purpose and only keeps out what is no travel. Exact to the nanometre. The default is no travel: it is refused wherever a value is asked for.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<DropperTravel>))]
[TypeConverter(typeof(InterfaceTypeConverter<DropperTravel>))]
public readonly record struct DropperTravel : IInterfaceValue<DropperTravel>
{
    private const decimal Least = 30m;
    private const decimal Most = 400m;

    private static readonly ImmutableArray<short> Catalogue = [50, 65, 75, 100, 110, 120, 125, 140, 150, 160, 170, 175, 180, 185, 200, 210, 213, 225, 240];

    private readonly Nanometres _length;

    private DropperTravel(Nanometres length) => _length = length;

    /// <summary>The travel as a quantity.</summary>
    public Length Travel => _length.ToLength();

    /// <summary>The travel in millimetres, exact.</summary>
    public decimal Millimetres => _length.Millimetres;

    /// <inheritdoc/>
    public string FitKey => _length.ToString();

    /// <summary>Whole nanometres.</summary>
    public long FitCode => _length.Value;

    /// <summary>Where the travel comes from; null for one that no row has. 200 and 240 stand in published pages, the rest are from memory.</summary>
    public Source? Source => !All.Contains(this) ? null : Millimetres == 200 ? Sources.DropperAnatomy : Millimetres == 240 ? Sources.LongDropper : Sources.Memory;

    /// <summary>The travels of the trade, shortest first; others are read too.</summary>
    public static ImmutableArray<DropperTravel> All { get; } = Nominal();

    /// <inheritdoc/>
    public static string Called => "dropper travel";

    private static ImmutableArray<DropperTravel> Nominal()
    {
        DropperTravel[] all = new DropperTravel[Catalogue.Length];
        for (int i = 0; i < all.Length; i++)
        {
            all[i] = new(new Nanometres(Catalogue[i] * Nanometres.PerMillimetre));
        }

        return ImmutableArray.Create(all);
    }

    /// <summary>Makes a travel from millimetres.</summary>
    /// <param name="millimetres">30 to 400; rounded to the nanometre.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static DropperTravel OfMillimetres(decimal millimetres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(millimetres, Least);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(millimetres, Most);
        return new(Nanometres.OfMillimetres(millimetres));
    }

    /// <inheritdoc/>
    public static DropperTravel OfFitCode(long code) =>
        code > 0 ? new(new Nanometres(code)) : throw new ArgumentOutOfRangeException(nameof(code), code, "a travel is above zero");

    /// <inheritdoc/>
    public static TextReading<DropperTravel> Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (!cursor.TryNumber(out long nanometres))
        {
            return TextReading<DropperTravel>.Refused("a travel in millimetres is expected, such as 150", cursor.Position);
        }

        cursor.SkipMillimetres();
        if (cursor.Rest.TrimEnd().Equals("travel", StringComparison.OrdinalIgnoreCase))
        {
            cursor.Position = text.Length;
        }

        return !cursor.AtEnd ? TextReading<DropperTravel>.Refused("only millimetres may follow the travel", cursor.Position)
            : new Nanometres(nanometres).Millimetres is < Least or > Most ? TextReading<DropperTravel>.Refused("a dropper goes down by 30 to 400 mm")
            : TextReading<DropperTravel>.Of(new(new Nanometres(nanometres)));
    }

    /// <summary>The travels of the trade that a reading can be.</summary>
    /// <param name="travel">From the lip of the post to a mark on the shaft, up less down.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<DropperTravel> Identify(MeasuredLength travel) => DropperTravelMeasures.Table.Identify(travel);

    /// <inheritdoc/>
    public static DropperTravel Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<DropperTravel>(s);

    /// <inheritdoc/>
    public static DropperTravel Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<DropperTravel>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out DropperTravel result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out DropperTravel result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out DropperTravel result) => TryParse(s, null, out result);

    /// <summary>Millimetres without unit: "150".</summary>
    public override string ToString() => FitKey;

    /// <summary>The key for "G", "T" or nothing; the length in millimetres for "M", in inches for "I".</summary>
    /// <param name="format">"G", "T", "M", "I", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, _length, Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);

    private static class DropperTravelMeasures
    {
        public static IdentificationTable<DropperTravel> Table { get; } = new([new("travel", "rule from the lip of the post to a mark on the shaft, up less down")], Rows(), travel => travel.FitKey);

        private static ImmutableArray<DimensionRow<DropperTravel>> Rows()
        {
            DimensionRow<DropperTravel>[] rows = new DimensionRow<DropperTravel>[All.Length];
            for (int i = 0; i < rows.Length; i++)
            {
                rows[i] = new(All[i], [(All[i].Millimetres, All[i].Millimetres)]);
            }

            return ImmutableArray.Create(rows);
        }
    }
}
