using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>Outside diameter of a steerer at the top, where headset and stem meet it. Closed set, identity equality.</summary>
/// <remarks>A tapered steerer is told by its top here and by its crown-race seat.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<SteererSize>))]
[TypeConverter(typeof(InterfaceTypeConverter<SteererSize>))]
public sealed class SteererSize : Standard<SteererSize>, IInterfaceValue<SteererSize>
{
    private SteererSize(int code, string key, string name, Source source, int hundredths, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Hundredths = hundredths;
    }

    /// <summary>Old American 7/8 in.</summary>
    public static SteererSize Mm23Point8 { get; } = new(1, "23.8", "7/8 in steerer (23.8)", Sources.StemSizes, 2380, "7/8 in", "7/8");

    /// <summary>French.</summary>
    public static SteererSize Mm25 { get; } = new(2, "25", "French steerer (25.0)", Sources.Memory, 2500, "25.0", "French");

    /// <summary>1 in.</summary>
    public static SteererSize Mm25Point4 { get; } = new(3, "25.4", "1 in steerer (25.4)", Sources.HeadsetArticle, 2540, "1 in", "1 inch", "1");

    /// <summary>1-1/8 in; also the top of most tapered steerers.</summary>
    public static SteererSize Mm28Point6 { get; } = new(4, "28.6", "1-1/8 in steerer (28.6)", Sources.HeadsetArticle, 2860, "1-1/8 in", "1-1/8", "1 1/8");

    /// <summary>1-1/4 in.</summary>
    public static SteererSize Mm31Point8 { get; } = new(5, "31.8", "1-1/4 in steerer (31.8)", Sources.HeadsetArticle, 3180, "1-1/4 in", "1-1/4");

    /// <summary>1.5 in, straight.</summary>
    public static SteererSize Mm38Point1 { get; } = new(6, "38.1", "1.5 in steerer (38.1)", Sources.HeadsetArticle, 3810, "1.5 in", "1.5", "1-1/2 in", "1-1/2");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<SteererSize> All { get; } =
    [
        Mm23Point8, Mm25, Mm25Point4, Mm28Point6, Mm31Point8, Mm38Point1,
    ];

    /// <inheritdoc/>
    public static string Called => "steerer size";

    /// <summary>The ones within the error of a measured size.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<SteererSize> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(s => s.Hundredths / 100m >= millimetres - error && s.Hundredths / 100m <= millimetres + error)];

    /// <summary>The outside diameter.</summary>
    public Length Diameter => Length.FromMillimeters(Hundredths / 100d);

    internal int Hundredths { get; }

    internal override Nanometres? MainLength => new(Hundredths * (Nanometres.PerMillimetre / 100));

    /// <summary>What a steerer can be, from what it measures. The proprietary 39.7 mm telescoping steerer is not covered and has no row.</summary>
    /// <param name="diameter">Outside diameter at the top.</param>
    /// <param name="inside">Inside diameter at the top of a threaded steerer, where the quill goes; leave it out for a threadless one.</param>
    /// <param name="crownSeat">Outside diameter of the crown-race seat.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<SteererSize> Identify(MeasuredLength? diameter = null, MeasuredLength? inside = null, MeasuredLength? crownSeat = null) =>
        SteererSizeDimensions.Table.Identify(diameter, inside, crownSeat);

    /// <inheritdoc/>
    public static SteererSize OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a size in millimetres, with a decimal comma and a unit if need be, or a name.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<SteererSize> Read(ReadOnlySpan<char> text) =>
        SizedText.Find<SteererSize>(text, s => s.Hundredths) is { } sized ? TextReading<SteererSize>.Of(sized) : ByName(text);

    /// <summary>Made when something is first identified.</summary>
    private static class SteererSizeDimensions
    {
        public static readonly IdentificationTable<SteererSize> Table = new(
            [
                new("diameter", "outside caliper at the top of the steerer, below any thread"),
                new("inside", "inside caliper at the top of a threaded steerer"),
                new("crown-race seat", "outside caliper on the turned seat just above the crown, race off"),
            ],
            Rows(),
            s => s.TradeName);

        private static ImmutableArray<DimensionRow<SteererSize>> Rows()
        {
            ImmutableArray<DimensionRow<SteererSize>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<SteererSize>>(All.Length);
            foreach (SteererSize size in All)
            {
                rows.Add(new(size, [(size.Hundredths / 100m, size.Hundredths / 100m), Quill(size), Seats(size)], Apart(size)));
            }

            return rows.MoveToImmutable();
        }

        private static (decimal Least, decimal Most)? Quill(SteererSize size)
        {
            foreach (StemFixing foot in StemFixing.All)
            {
                if (foot.IsQuill && foot.Steerer == size)
                {
                    return (foot.Hundredths / 100m, foot.Hundredths / 100m);
                }
            }

            return null;
        }

        private static (decimal Least, decimal Most)? Seats(SteererSize size)
        {
            int least = int.MaxValue;
            int most = 0;
            foreach (SteererShape shape in SteererShape.All)
            {
                foreach (CrownSeat seat in shape.Seats)
                {
                    if (shape.Tops.Contains(size))
                    {
                        CrownFigures figures = CrownFigures.Seat(seat.FitCode);
                        least = Math.Min(least, figures.Least);
                        most = Math.Max(most, figures.Most);
                    }
                }
            }

            return most > 0 ? (least / 100m, most / 100m) : size == Mm25 ? (26.5m, 26.5m) : null;
        }

        private static string Apart(SteererSize size) =>
            size == Mm25 ? "French: 0.4 mm under 1 in, with a 26.5 mm seat and a 22.0 mm quill"
            : size == Mm25Point4 ? "its seat is 26.4 mm (ISO) or 27.0 mm (JIS)"
            : size == Mm28Point6 ? "straight where its seat is 30.0 mm, tapered where it is larger"
            : size == Mm31Point8 ? "straight where its seat is 33.0 mm, tapered where it is 39.8 mm"
            : "";
    }
}
