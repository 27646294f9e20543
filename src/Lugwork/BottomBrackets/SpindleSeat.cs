using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.BottomBrackets;

/// <summary>Which spindle a bottom bracket takes, or carries for the crank to sit on. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<SpindleSeat>))]
[TypeConverter(typeof(InterfaceTypeConverter<SpindleSeat>))]
public sealed class SpindleSeat : Standard<SpindleSeat>, IInterfaceValue<SpindleSeat>
{
    private SpindleSeat(int code, string key, string name, int drive, int other, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        DriveMicrometres = drive;
        OtherMicrometres = other;
    }

    /// <summary>24 mm on both sides.</summary>
    public static SpindleSeat Mm24 { get; } = new(1, "24", "24 mm", 24_000, 24_000, Sources.BracketSense);

    /// <summary>24 mm on the drive side, 22 mm on the other.</summary>
    public static SpindleSeat Stepped24 { get; } = new(2, "24/22", "24/22 mm stepped", 24_000, 22_000, Sources.SpindleOptions);

    /// <summary>Cups of the 25 mm spindle of two halves, which carries its bearings itself.</summary>
    public static SpindleSeat Mm25 { get; } = new(3, "25", "25 mm, two halves", 25_000, 25_000, Sources.BracketGuide);

    /// <summary>28.99 mm on both sides.</summary>
    public static SpindleSeat Mm2899 { get; } = new(4, "28.99", "28.99 mm", 28_990, 28_990, Sources.Overview2899, "29");

    /// <summary>30 mm on both sides.</summary>
    public static SpindleSeat Mm30 { get; } = new(5, "30", "30 mm", 30_000, 30_000, Sources.BracketMisconceptions);

    /// <summary>30 mm on the drive side, 28 mm on the other; the figures of the step are from memory.</summary>
    public static SpindleSeat Stepped30 { get; } = new(6, "30/28", "30/28 mm stepped", 30_000, 28_000, Sources.Memory);

    /// <summary>Square taper, JIS.</summary>
    public static SpindleSeat SquareJis { get; } = new(7, "square-JIS", "square taper JIS", 0, 0, Sources.TaperMeasured, "JIS", "JIS taper");

    /// <summary>Square taper, ISO.</summary>
    public static SpindleSeat SquareIso { get; } = new(8, "square-ISO", "square taper ISO", 0, 0, Sources.TaperMeasured, "ISO", "ISO taper");

    /// <summary>Eight splines 5 mm long and 2.2 mm wide.</summary>
    public static SpindleSeat EightSplineShort { get; } = new(9, "8-spline-short", "8 splines, 5 mm long", 0, 0, Sources.ShortAndLongSplines);

    /// <summary>Eight splines 9 mm long and 2.8 mm wide.</summary>
    public static SpindleSeat EightSplineLong { get; } = new(10, "8-spline-long", "8 splines, 9 mm long", 0, 0, Sources.ShortAndLongSplines);

    /// <summary>Ten tapered splines and a shoulder.</summary>
    public static SpindleSeat TenSpline { get; } = new(11, "10-spline", "10 splines, tapered", 0, 0, Sources.TenSplineFaq);

    /// <summary>Cones and cups of a one-piece crank.</summary>
    public static SpindleSeat OnePiece { get; } = new(12, "one-piece", "one-piece crank", 0, 0, Sources.UnthreadedShells);

    /// <summary>19 mm, BMX.</summary>
    public static SpindleSeat Bmx19 { get; } = new(13, "BMX-19", "19 mm BMX", 19_000, 19_000, Sources.BmxBrackets, "19");

    /// <summary>22 mm, BMX.</summary>
    public static SpindleSeat Bmx22 { get; } = new(14, "BMX-22", "22 mm BMX", 22_000, 22_000, Sources.BmxBrackets, "22");

    /// <summary>24 mm, BMX.</summary>
    public static SpindleSeat Bmx24 { get; } = new(15, "BMX-24", "24 mm BMX", 24_000, 24_000, Sources.BmxBrackets);

    /// <summary>Cottered: round with a flat for a cotter pin.</summary>
    public static SpindleSeat Cottered { get; } = new(16, "cottered", "cottered", 0, 0, Sources.CotteredCranks);

    /// <summary>Every seat.</summary>
    public static ImmutableArray<SpindleSeat> All { get; } =
        [Mm24, Stepped24, Mm25, Mm2899, Mm30, Stepped30, SquareJis, SquareIso, EightSplineShort, EightSplineLong, TenSpline, OnePiece, Bmx19, Bmx22, Bmx24, Cottered];

    /// <inheritdoc/>
    public static string Called => "spindle seat";

    /// <summary>Diameter on the drive side; null where the seat is a taper, splines, or no bearing seat at all.</summary>
    public Length? DriveSide => DriveMicrometres == 0 ? null : Length.FromMicrometers(DriveMicrometres);

    /// <summary>Diameter on the other side; null where the seat is a taper, splines, or no bearing seat at all.</summary>
    public Length? OtherSide => OtherMicrometres == 0 ? null : Length.FromMicrometers(OtherMicrometres);

    /// <summary>Least outside of the spindle on the drive side, over the splines where it has some; null for square tapers and where none is known. 22 and 21 mm of splined ones are rough.</summary>
    public Length? LeastOutside => SpindleDimensions.Outside(this) is { Least: > 0 } outside ? Length.FromMicrometers(outside.Least) : null;

    /// <summary>Most outside of the spindle on the drive side; cottered ones are 15.5 or 15.9 mm, by one weak page.</summary>
    public Length? MostOutside => SpindleDimensions.Outside(this) is { Least: > 0 } outside ? Length.FromMicrometers(outside.Most) : null;

    /// <summary>Where <see cref="LeastOutside"/> and <see cref="MostOutside"/> come from; null where they are.</summary>
    public Source? OutsideSource => LeastOutside is null ? null : FitCode switch { 9 or 10 => Sources.SplinedBracketText, 11 => Sources.Memory, _ => Source };

    /// <summary>Least printed distance across the flats at the small end of a square taper; null for other seats.</summary>
    public Length? LeastAcrossFlats => SpindleDimensions.Flats(this) is { Least: > 0 } flats ? Length.FromMicrometers(flats.Least) : null;

    /// <summary>Most printed distance across the flats at the small end of a square taper; null for other seats.</summary>
    public Length? MostAcrossFlats => SpindleDimensions.Flats(this) is { Least: > 0 } flats ? Length.FromMicrometers(flats.Most) : null;

    /// <summary>Slope of a face of a square taper, 2 degrees; null for other seats.</summary>
    public Angle? Taper => SpindleDimensions.Flats(this).Least > 0 ? Angle.FromDegrees(2) : null;

    /// <summary>Number of splines; null where there are none, or as many as the maker likes.</summary>
    public int? Splines => SpindleDimensions.Splines(this) is { Number: > 0 } splines ? splines.Number : null;

    /// <summary>Length of a spline; null where there are none or it is not printed.</summary>
    public Length? SplineLength => SpindleDimensions.Splines(this) is { Length: > 0 } splines ? Length.FromMicrometers(splines.Length) : null;

    /// <summary>Width of a spline; null where there are none or it is not printed.</summary>
    public Length? SplineWidth => SpindleDimensions.Splines(this) is { Width: > 0 } splines ? Length.FromMicrometers(splines.Width) : null;

    internal int DriveMicrometres { get; }

    /// <summary>What seat measured dimensions of a spindle can be, likeliest first, and what to measure next.</summary>
    /// <param name="driveSide">Diameter on the drive side, where the bearing sits or over the splines.</param>
    /// <param name="otherSide">Diameter on the other side, where the bearing sits.</param>
    /// <param name="acrossFlats">Across the flats at the small end of a square taper.</param>
    /// <param name="splineLength">Along one spline.</param>
    /// <param name="splineWidth">Across one spline.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    public static Identification<SpindleSeat> Identify(MeasuredLength? driveSide = null, MeasuredLength? otherSide = null, MeasuredLength? acrossFlats = null, MeasuredLength? splineLength = null, MeasuredLength? splineWidth = null) =>
        SpindleDimensions.Identify(driveSide, otherSide, acrossFlats, splineLength, splineWidth);

    internal int OtherMicrometres { get; }

    internal override Nanometres? MainLength => IsRound && DriveMicrometres == OtherMicrometres ? new(DriveMicrometres * 1_000L) : null;

    /// <summary>A round spindle of known size.</summary>
    internal bool IsRound => DriveMicrometres > 0;

    /// <inheritdoc/>
    public static SpindleSeat OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; "square taper", "8-spline" and "BMX" alone are several.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<SpindleSeat> Read(ReadOnlySpan<char> text)
    {
        string plain = BracketText.Compact(text);
        ImmutableArray<SpindleSeat> several = plain switch
        {
            "SQUARE" or "SQUARETAPER" or "TAPER" => [SquareJis, SquareIso],
            "8SPLINE" or "8SPLINES" => [EightSplineShort, EightSplineLong],
            "BMX" => [Bmx19, Bmx22, Bmx24],
            _ => [],
        };
        return several.IsEmpty
            ? ByName(Find(text) is null ? plain : text)
            : TextReading<SpindleSeat>.Several(several, "several are called so: tapers differ at the tip, short and long splines in length, BMX spindles in diameter");
    }
}
