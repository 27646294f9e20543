using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>The shape of a steerer: straight, or tapered from its top to its foot. Closed set, identity equality.</summary>
/// <remarks>The proprietary 39.7 mm telescoping steerer is not covered and has no row.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<SteererShape>))]
[TypeConverter(typeof(InterfaceTypeConverter<SteererShape>))]
public sealed class SteererShape : Standard<SteererShape>, IInterfaceValue<SteererShape>
{
    private readonly int _foot;

    private SteererShape(int code, string key, string name, Source source, int footHundredths, ImmutableArray<SteererSize> tops, ImmutableArray<CrownSeat> seats, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _foot = footHundredths;
        Tops = tops;
        Seats = seats;
    }

    /// <summary>1 in, 25.4 mm all the way.</summary>
    public static SteererShape Straight1 { get; } = new(1, "straight-1", "straight 1 in", Sources.HeadsetArticle, 2540, [SteererSize.Mm25Point4], [CrownSeat.Mm26Point4, CrownSeat.Mm27], "1", "25.4");

    /// <summary>1-1/8 in, 28.6 mm all the way.</summary>
    public static SteererShape Straight1And1Eighth { get; } = new(2, "straight-1-1/8", "straight 1-1/8 in", Sources.HeadsetArticle, 2860, [SteererSize.Mm28Point6], [CrownSeat.Mm30], "straight 28.6");

    /// <summary>1-1/4 in, 31.8 mm all the way.</summary>
    public static SteererShape Straight1And1Quarter { get; } = new(3, "straight-1-1/4", "straight 1-1/4 in", Sources.HeadsetArticle, 3180, [SteererSize.Mm31Point8], [CrownSeat.Mm33], "straight 31.8");

    /// <summary>1.5 in, 38.1 mm all the way.</summary>
    public static SteererShape Straight1Point5 { get; } = new(4, "straight-1.5", "straight 1.5 in", Sources.HeadsetArticle, 3810, [SteererSize.Mm38Point1], [CrownSeat.Mm39Point8], "straight 1-1/2", "straight 38.1");

    /// <summary>28.6 mm at the top, 31.8 mm at the foot.</summary>
    public static SteererShape Tapered1And1Quarter { get; } = new(5, "tapered-1-1/8-1-1/4", "tapered 1-1/8 to 1-1/4 in", Sources.CrownRaceGuide, 3180, [SteererSize.Mm28Point6], [CrownSeat.Mm33], "1-1/8-1-1/4", "28.6-31.8", "tapered 28.6-31.8");

    /// <summary>28.6 mm at the top, 34.9 mm at the foot.</summary>
    public static SteererShape Tapered1And3Eighths { get; } = new(6, "tapered-1-1/8-1-3/8", "tapered 1-1/8 to 1-3/8 in", Sources.ForkCutting, 3490, [SteererSize.Mm28Point6], [CrownSeat.Mm37], "1-1/8-1-3/8", "28.6-34.9", "tapered 28.6-34.9");

    /// <summary>28.6 mm at the top, 38.1 mm at the foot: the usual tapered steerer.</summary>
    public static SteererShape Tapered1Point5 { get; } = new(7, "tapered-1-1/8-1.5", "tapered 1-1/8 to 1.5 in", Sources.HeadsetChart, 3810, [SteererSize.Mm28Point6], [CrownSeat.Mm39Point8], "1-1/8-1.5", "1-1/8-1-1/2", "tapered 1-1/8-1-1/2", "28.6-38.1", "28.6/38.1", "tapered 28.6-38.1");

    /// <summary>31.8 mm at the top, 38.1 mm at the foot.</summary>
    public static SteererShape TaperedOversize { get; } = new(8, "tapered-1-1/4-1.5", "tapered 1-1/4 to 1.5 in", Sources.Memory, 3810, [SteererSize.Mm31Point8], [CrownSeat.Mm39Point8], "1-1/4-1.5", "1-1/4-1-1/2", "tapered 1-1/4-1-1/2", "31.8-38.1", "tapered 31.8-38.1");

    /// <summary>28.6 or 38.1 mm at the top, 45.7 mm at the foot, of electric bicycles; its seat is not known for sure (46 to 47 mm) and none is listed.</summary>
    public static SteererShape Tapered1Point8 { get; } = new(9, "tapered-1.8", "tapered to 1.8 in", Sources.Memory, 4570, [SteererSize.Mm28Point6, SteererSize.Mm38Point1], [], "1.8", "1-1/8-1.8", "tapered 1-1/8-1.8", "1.5-1.8", "tapered 1.5-1.8");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<SteererShape> All { get; } =
    [
        Straight1, Straight1And1Eighth, Straight1And1Quarter, Straight1Point5,
        Tapered1And1Quarter, Tapered1And3Eighths, Tapered1Point5, TaperedOversize, Tapered1Point8,
    ];

    /// <inheritdoc/>
    public static string Called => "steerer shape";

    /// <summary>Wider at the foot than at the top.</summary>
    public bool IsTapered => Tops[0].Hundredths != _foot;

    /// <summary>Sizes at the top; more than one where the name leaves it open.</summary>
    public ImmutableArray<SteererSize> Tops { get; }

    /// <summary>Outside diameter at the foot, just above the crown-race seat.</summary>
    public Length Foot => Length.FromMillimeters(_foot / 100d);

    /// <summary>Crown-race seats that such steerers have; empty where none is known for sure.</summary>
    public ImmutableArray<CrownSeat> Seats { get; }

    /// <summary>What a steerer can be, from what it measures.</summary>
    /// <param name="top">Outside diameter at the top.</param>
    /// <param name="foot">Outside diameter just above the crown-race seat.</param>
    /// <param name="crownSeat">Outside diameter of the crown-race seat.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<SteererShape> Identify(MeasuredLength? top = null, MeasuredLength? foot = null, MeasuredLength? crownSeat = null) =>
        SteererShapeDimensions.Table.Identify(top, foot, crownSeat);

    /// <inheritdoc/>
    public static SteererShape OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a shape by inches or millimetres; a taper without figures, or a top alone, keeps every shape that has it.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<SteererShape> Read(ReadOnlySpan<char> text) =>
        SteererShapeText.Several(text, out string reason) is { IsEmpty: false } several ? TextReading<SteererShape>.Several(several, reason) : ByName(SteererShapeText.Plain(text));

    /// <summary>Made when something is first identified.</summary>
    private static class SteererShapeDimensions
    {
        public static readonly IdentificationTable<SteererShape> Table = new(
            [
                new("top", "outside caliper at the top of the steerer"),
                new("foot", "outside caliper on the steerer just above the crown-race seat"),
                new("crown-race seat", "outside caliper on the turned seat just above the crown, race off"),
            ],
            Rows(),
            s => s.TradeName);

        private static ImmutableArray<DimensionRow<SteererShape>> Rows()
        {
            ImmutableArray<DimensionRow<SteererShape>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<SteererShape>>(All.Length);
            foreach (SteererShape shape in All)
            {
                decimal top = shape.Tops[0].Hundredths / 100m;
                decimal foot = shape._foot / 100m;
                rows.Add(new(shape, [shape.Tops.Length == 1 ? (top, top) : null, (foot, foot), Seats(shape)], shape.IsTapered ? "the steerer widens towards the crown" : "the steerer is as wide above the crown as at the top, although its seat is wider"));
            }

            return rows.MoveToImmutable();
        }

        private static (decimal Least, decimal Most)? Seats(SteererShape shape)
        {
            int least = int.MaxValue;
            int most = 0;
            foreach (CrownSeat seat in shape.Seats)
            {
                CrownFigures figures = CrownFigures.Seat(seat.FitCode);
                least = Math.Min(least, figures.Least);
                most = Math.Max(most, figures.Most);
            }

            return most > 0 ? (least / 100m, most / 100m) : null;
        }
    }
}
