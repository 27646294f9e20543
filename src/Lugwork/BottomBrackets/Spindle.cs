using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.BottomBrackets;

/// <summary>A crank's side of the bottom bracket: what it sits on or brings along, with its length class where that decides. Closed set, identity equality.</summary>
/// <remarks>A diameter alone does not prove a fit: spindles of one diameter are made for shells from 68 to 92 mm.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<Spindle>))]
[TypeConverter(typeof(InterfaceTypeConverter<Spindle>))]
public sealed class Spindle : Standard<Spindle>, IInterfaceValue<Spindle>
{
    private Spindle(int code, string key, string name, SpindleSeat seat, int reach, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Seat = seat;
        ReachMicrometres = reach;
    }

    /// <summary>24 mm for road: over cups 86.5 mm apart.</summary>
    public static Spindle Road24 { get; } = new(1, "24-road", "24 mm road", SpindleSeat.Mm24, 86_500, Sources.BracketSense, "24 short");

    /// <summary>24 mm off-road: over cups 91.5 to 92 mm apart.</summary>
    public static Spindle OffRoad24 { get; } = new(2, "24-MTB", "24 mm off-road", SpindleSeat.Mm24, 92_000, Sources.BracketSense, "24 long", "24 off-road");

    /// <summary>24 mm on the drive side, 22 mm on the other.</summary>
    public static Spindle Stepped24 { get; } = new(3, "24/22", "24/22 mm stepped", SpindleSeat.Stepped24, 0, Sources.SpindleOptions);

    /// <summary>25 mm of two halves joined in the middle.</summary>
    public static Spindle Mm25 { get; } = new(4, "25", "25 mm, two halves", SpindleSeat.Mm25, 0, Sources.BracketGuide);

    /// <summary>28.99 mm.</summary>
    public static Spindle Mm2899 { get; } = new(5, "28.99", "28.99 mm", SpindleSeat.Mm2899, 0, Sources.Overview2899, "29");

    /// <summary>30 mm for shells of 68 mm.</summary>
    public static Spindle Short30 { get; } = new(6, "30-short", "30 mm short, 68 family", SpindleSeat.Mm30, 68_000, Sources.CranksAndBrackets, "30 68");

    /// <summary>30 mm for asymmetric shells of 79 mm: 11 mm longer than the short one.</summary>
    public static Spindle Asymmetric30 { get; } = new(7, "30-79", "30 mm for 79 mm shells", SpindleSeat.Mm30, 79_000, Sources.BracketStandards);

    /// <summary>30 mm for shells of 86.5 to 92 mm.</summary>
    public static Spindle Long30 { get; } = new(8, "30-long", "30 mm long, 86.5 family", SpindleSeat.Mm30, 92_000, Sources.SpacerChart30, "30 86.5");

    /// <summary>30 mm on the drive side, 28 mm on the other.</summary>
    public static Spindle Stepped30 { get; } = new(9, "30/28", "30/28 mm stepped", SpindleSeat.Stepped30, 0, Sources.Memory);

    /// <summary>Crank with a JIS square taper.</summary>
    public static Spindle SquareJis { get; } = new(10, "square-JIS", "square taper JIS", SpindleSeat.SquareJis, 0, Sources.TaperMeasured, "JIS", "JIS taper");

    /// <summary>Crank with an ISO square taper.</summary>
    public static Spindle SquareIso { get; } = new(11, "square-ISO", "square taper ISO", SpindleSeat.SquareIso, 0, Sources.TaperMeasured, "ISO", "ISO taper");

    /// <summary>Crank with eight short splines.</summary>
    public static Spindle EightSplineShort { get; } = new(12, "8-spline-short", "8 splines, 5 mm long", SpindleSeat.EightSplineShort, 0, Sources.ShortAndLongSplines);

    /// <summary>Crank with eight long splines.</summary>
    public static Spindle EightSplineLong { get; } = new(13, "8-spline-long", "8 splines, 9 mm long", SpindleSeat.EightSplineLong, 0, Sources.ShortAndLongSplines);

    /// <summary>Crank with ten tapered splines.</summary>
    public static Spindle TenSpline { get; } = new(14, "10-spline", "10 splines, tapered", SpindleSeat.TenSpline, 0, Sources.TenSplineFaq);

    /// <summary>Crank and spindle of one forging.</summary>
    public static Spindle OnePiece { get; } = new(15, "one-piece", "one-piece crank", SpindleSeat.OnePiece, 0, Sources.UnthreadedShells, "Ashtabula");

    /// <summary>19 mm, BMX.</summary>
    public static Spindle Bmx19 { get; } = new(16, "BMX-19", "19 mm BMX", SpindleSeat.Bmx19, 0, Sources.BmxBrackets, "19");

    /// <summary>22 mm, BMX.</summary>
    public static Spindle Bmx22 { get; } = new(17, "BMX-22", "22 mm BMX", SpindleSeat.Bmx22, 0, Sources.BmxBrackets, "22");

    /// <summary>24 mm, BMX.</summary>
    public static Spindle Bmx24 { get; } = new(18, "BMX-24", "24 mm BMX", SpindleSeat.Bmx24, 0, Sources.BmxBrackets);

    /// <summary>Cottered crank.</summary>
    public static Spindle Cottered { get; } = new(19, "cottered", "cottered", SpindleSeat.Cottered, 0, Sources.CotteredCranks);

    /// <summary>Every spindle.</summary>
    public static ImmutableArray<Spindle> All { get; } =
    [
        Road24, OffRoad24, Stepped24, Mm25, Mm2899, Short30, Asymmetric30, Long30, Stepped30, SquareJis, SquareIso,
        EightSplineShort, EightSplineLong, TenSpline, OnePiece, Bmx19, Bmx22, Bmx24, Cottered,
    ];

    /// <inheritdoc/>
    public static string Called => "spindle";

    /// <summary>The widest distance over the bearings that the length class is made for; null where the class is open.</summary>
    public Length? Reach => ReachMicrometres == 0 ? null : Length.FromMicrometers(ReachMicrometres);

    internal int ReachMicrometres { get; }

    internal SpindleSeat Seat { get; }

    /// <inheritdoc/>
    public static Spindle OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; a diameter that comes in several lengths, "square taper", "8-spline" and "BMX" alone are several.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<Spindle> Read(ReadOnlySpan<char> text)
    {
        string plain = BracketText.Compact(text);
        ImmutableArray<Spindle> several = plain switch
        {
            "24" => [Road24, OffRoad24],
            "30" => [Short30, Asymmetric30, Long30],
            // Said of cranks, the name of the shell says no more than the diameter.
            "BB30" => [Short30, Asymmetric30, Long30],
            "SQUARE" or "SQUARETAPER" or "TAPER" => [SquareJis, SquareIso],
            "8SPLINE" or "8SPLINES" => [EightSplineShort, EightSplineLong],
            "BMX" => [Bmx19, Bmx22, Bmx24],
            _ => [],
        };
        return several.IsEmpty
            ? ByName(Find(text) is null ? plain : text)
            : TextReading<Spindle>.Several(several, "several are called so: say road or off-road, short or long, JIS or ISO, or the diameter");
    }
}
