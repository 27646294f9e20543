using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>What a sprocket or cassette sits on. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<FreehubBody>))]
[TypeConverter(typeof(InterfaceTypeConverter<FreehubBody>))]
public sealed class FreehubBody : Standard<FreehubBody>, IInterfaceValue<FreehubBody>
{
    private FreehubBody(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Thread for a screwed freewheel, 1.375 in x 24.</summary>
    public static FreehubBody FreewheelThread { get; } = new(1, "FW-thread", "freewheel thread 1.375 in x 24", Sources.Freewheels, "threaded", "freewheel thread");

    /// <summary>Symmetric 9-spline with a threaded smallest sprocket; old.</summary>
    public static FreehubBody Symmetric { get; } = new(2, "UG", "symmetric 9-spline with threaded sprocket", Sources.Memory);

    /// <summary>HG for 7 speeds, 31 mm long.</summary>
    public static FreehubBody HgShort { get; } = new(3, "HG-S", "HG 7-speed body (31 mm)", Sources.FreehubLengths, "HG 7", "HG 7-speed");

    /// <summary>HG for 8 to 10 speeds, 34.9 mm long.</summary>
    public static FreehubBody HgMedium { get; } = new(4, "HG-M", "HG 8/9/10-speed body (34.9 mm)", Sources.SprocketExchange, "HG 8/9/10", "HG 9", "HG 8");

    /// <summary>Deep-spline alloy body for 10 speeds only.</summary>
    public static FreehubBody HgTenOnly { get; } = new(5, "HG-10only", "HG deep-spline 10-speed-only body", Sources.FreehubLengths, "HG 10 only");

    /// <summary>HG lengthened by 1.85 mm for road 11.</summary>
    public static FreehubBody HgLong { get; } = new(6, "HG-L", "HG 11-speed road body (36.75 mm)", Sources.SprocketExchange, "HG 11", "HG 11-speed road");

    /// <summary>18-spline body of road 12.</summary>
    public static FreehubBody Hg12Road { get; } = new(7, "HG-L2", "HG 12-speed road body (18 splines)", Sources.SprocketExchange, "HG 12 road");

    /// <summary>Micro Spline.</summary>
    public static FreehubBody MicroSpline { get; } = new(8, "MS", "Micro Spline", Sources.TwelveOnEleven);

    /// <summary>XD.</summary>
    public static FreehubBody Xd { get; } = new(9, "XD", "XD", Sources.XdExplained);

    /// <summary>XDR: XD lengthened by 1.85 mm.</summary>
    public static FreehubBody Xdr { get; } = new(10, "XDR", "XDR", Sources.XdrExplained);

    /// <summary>Eight shallow splines for 7 or 8 speeds; old.</summary>
    public static FreehubBody EightSplineOld { get; } = new(11, "C8-old", "8-spline 7/8-speed body", Sources.EightSpline);

    /// <summary>Eight deep splines for 9 to 12 speeds.</summary>
    public static FreehubBody EightSpline { get; } = new(12, "C9-12", "8-spline 9- to 12-speed body", Sources.EightSpline);

    /// <summary>Eight deep splines, 4.4 mm shorter.</summary>
    public static FreehubBody N3w { get; } = new(13, "N3W", "N3W", Sources.N3wPage);

    /// <summary>Short HG-pattern body for one sprocket and spacers.</summary>
    public static FreehubBody SingleSpeed { get; } = new(14, "SS-short", "short body for one sprocket", Sources.Memory, "single-speed body");

    /// <summary>One-piece BMX driver.</summary>
    public static FreehubBody BmxDriver { get; } = new(15, "BMX-driver", "BMX driver", Sources.Memory);

    /// <summary>Three-lug sprocket of a hub gear or coaster hub.</summary>
    public static FreehubBody ThreeLug { get; } = new(16, "IGH-3lug", "3-lug hub-gear driver", Sources.HubGearPage, "3-lug");

    /// <summary>The maker's own carrier of a hub gear.</summary>
    public static FreehubBody HubGearOwn { get; } = new(17, "IGH-own", "maker-own hub-gear carrier", Sources.HubGearPage);

    /// <summary>Track thread with a left-hand lockring.</summary>
    public static FreehubBody Track { get; } = new(18, "TRACK", "track thread with lockring", Sources.Memory, "fixed");

    /// <summary>HG for 8 to 10 speeds of a maker other than the system's, with taller splines: a cassette may stay loose on it at full torque.</summary>
    public static FreehubBody HgTall { get; } = new(19, "HG-tall", "HG body of another maker with tall splines", Sources.TallSplines, "HG tall splines", "third-party HG", "third-party HG body");

    /// <summary>Every body.</summary>
    public static ImmutableArray<FreehubBody> All { get; } =
    [
        FreewheelThread, Symmetric, HgShort, HgMedium, HgTenOnly, HgLong, Hg12Road, MicroSpline, Xd, Xdr,
        EightSplineOld, EightSpline, N3w, SingleSpeed, BmxDriver, ThreeLug, HubGearOwn, Track, HgTall,
    ];

    /// <inheritdoc/>
    public static string Called => "freehub body";

    /// <summary>Shortest printed length of the splined part; null where none was found. HG for 8 to 10 speeds is printed from 34.9 to 35.</summary>
    public Length? LeastLength => BodyDimensions.Length(this) is { Least: > 0 } length ? Length.FromMicrometers(length.Least) : null;

    /// <summary>Longest printed length of the splined part; null where none was found.</summary>
    public Length? MostLength => BodyDimensions.Length(this) is { Least: > 0 } length ? Length.FromMicrometers(length.Most) : null;

    /// <summary>Where the length comes from; null where there is none.</summary>
    public Source? LengthSource => BodyDimensions.LengthSource(this);

    /// <summary>Number of splines or lugs; 0 for a thread, null where it is not told.</summary>
    public int? Splines => BodyDimensions.Splines(this);

    /// <summary>Teeth of the smallest sprocket that goes on; the fewest that are printed.</summary>
    public int FewestTeeth => BodyDimensions.Smallest(this).Least;

    /// <summary>Teeth of the smallest sprocket that is usual; the most that are printed: 16 for a single freewheel.</summary>
    public int UsualFewestTeeth => BodyDimensions.Smallest(this).Most;

    /// <summary>One sprocket and nothing for a derailleur to do: hub gear, coaster hub, track hub, driver, or a body for one sprocket.</summary>
    internal bool TakesOneSprocket => FitCode is >= 14 and <= 18;

    /// <summary>What body measured dimensions can be, likeliest first, and what to count or measure next.</summary>
    /// <param name="length">Along the splines, from the shoulder to the end. A body of unknown length is never ruled out by it.</param>
    /// <param name="splines">Number of splines or lugs, counted all round.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of splines is below one.</exception>
    public static Identification<FreehubBody> Identify(MeasuredLength length, int? splines = null) => BodyDimensions.Identify(length, splines);

    /// <inheritdoc/>
    public static FreehubBody OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; "HG" alone is any of the HG bodies, "8-spline" any of the three with eight splines, and what drives a hub, such as "hub gear", any body that such a hub has.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<FreehubBody> Read(ReadOnlySpan<char> text) =>
        Trim(text).Equals("HG", StringComparison.OrdinalIgnoreCase)
            ? TextReading<FreehubBody>.Several([HgShort, HgMedium, HgTenOnly, HgLong, Hg12Road], "HG bodies differ in length and splines; measure the body: 31, 34.9 or 36.75 mm")
            : Trim(text) is "HG 10" or "HG10" or "HG-10" or "hg 10" or "hg10" or "hg-10"
                ? TextReading<FreehubBody>.Several([HgMedium, HgTenOnly], "a 10-speed body can be the usual one or the deep-spline one for 10 speeds only")
                : Trim(text).Equals("8-spline", StringComparison.OrdinalIgnoreCase) || Trim(text).Equals("8 spline", StringComparison.OrdinalIgnoreCase)
                    ? TextReading<FreehubBody>.Several([EightSplineOld, EightSpline, N3w], "bodies with eight splines differ: shallow splines for 7 or 8 speeds, deep ones 38 mm long for 9 to 12, and N3W, 4.4 mm shorter")
                    : ByName(text) is { Values.IsEmpty: false } named ? named
                    : HubDrive.Find(Trim(text)) is { } drive && drive != HubDrive.CassetteBody ? drive.Bodies is [var only] ? TextReading<FreehubBody>.Of(only) : TextReading<FreehubBody>.Several(drive.Bodies, "look at the sprocket: three lugs, splines or thread of one maker, or a plain thread")
                    : ByName(text);
}
