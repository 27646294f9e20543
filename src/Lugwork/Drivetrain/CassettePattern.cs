using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>What a cassette is cut for. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<CassettePattern>))]
[TypeConverter(typeof(InterfaceTypeConverter<CassettePattern>))]
public sealed class CassettePattern : Standard<CassettePattern>, IInterfaceValue<CassettePattern>
{
    private CassettePattern(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>7-speed HG.</summary>
    public static CassettePattern Hg7 { get; } = new(1, "HG-7", "7-speed HG", Sources.FreehubTypes);

    /// <summary>8-speed HG.</summary>
    public static CassettePattern Hg8 { get; } = new(2, "HG-8", "8-speed HG", Sources.FreehubTypes);

    /// <summary>9-speed HG.</summary>
    public static CassettePattern Hg9 { get; } = new(3, "HG-9", "9-speed HG", Sources.FreehubTypes);

    /// <summary>10-speed HG, off-road and later road.</summary>
    public static CassettePattern Hg10 { get; } = new(4, "HG-10-late", "10-speed HG, off-road and later road", Sources.FreehubTypes, "10-speed HG off-road");

    /// <summary>10-speed HG, older road; needs a 1 mm spacer on the medium body.</summary>
    public static CassettePattern Hg10OldRoad { get; } = new(5, "HG-10-old-road", "10-speed HG, older road", Sources.FreehubTypes, "10-speed HG road old");

    /// <summary>11-speed that goes on the medium body: wide range.</summary>
    public static CassettePattern Hg11Wide { get; } = new(6, "HG-11-wide", "11-speed HG, wide range", Sources.FreehubTypes, "11-speed HG off-road");

    /// <summary>11-speed close-ratio road; long body only.</summary>
    public static CassettePattern Hg11Road { get; } = new(7, "HG-11-road", "11-speed HG, close road", Sources.FreehubTypes, "11-speed HG road");

    /// <summary>12-speed road.</summary>
    public static CassettePattern Hg12Road { get; } = new(8, "HG-12-road", "12-speed HG, road", Sources.FreehubTypes, "12-speed HG road");

    /// <summary>12-speed that goes on the medium HG body, 11-50 class.</summary>
    public static CassettePattern Hg12Fit { get; } = new(9, "HG-12-fit", "12-speed for HG bodies, 11-50 class", Sources.CassetteWidths);

    /// <summary>12-speed Micro Spline.</summary>
    public static CassettePattern MicroSpline12 { get; } = new(10, "MS-12", "12-speed Micro Spline", Sources.FreehubTypes, "Micro Spline");

    /// <summary>XD, 11- or 12-speed.</summary>
    public static CassettePattern Xd { get; } = new(11, "XD", "XD 11/12-speed", Sources.XdExplained);

    /// <summary>XDR, 12-speed road and gravel.</summary>
    public static CassettePattern Xdr { get; } = new(12, "XDR", "XDR 12-speed", Sources.XdrExplained);

    /// <summary>9-speed of the 8-spline family.</summary>
    public static CassettePattern EightSpline9 { get; } = new(13, "8-spline-9", "9-speed 8-spline", Sources.EightSpline);

    /// <summary>10- to 12-speed of the 8-spline family.</summary>
    public static CassettePattern EightSpline10To12 { get; } = new(14, "8-spline-10-12", "10- to 12-speed 8-spline", Sources.EightSpline, "10-speed 8-spline", "11-speed 8-spline", "12-speed 8-spline");

    /// <summary>13-speed of the 8-spline family, first sprocket 9 teeth.</summary>
    public static CassettePattern EightSpline13 { get; } = new(15, "8-spline-13", "13-speed 8-spline", Sources.N3wPage);

    /// <summary>A screwed freewheel: no cassette, but sold beside them.</summary>
    public static CassettePattern Freewheel { get; } = new(16, "freewheel", "screwed freewheel", Sources.Freewheels, "screw-on freewheel");

    /// <summary>One sprocket with three lugs inside, held by a snap ring, for hub gears and coaster hubs.</summary>
    public static CassettePattern ThreeLug { get; } = new(17, "3-lug", "3-lug sprocket", Sources.HubGearPage, "three-lug", "three-lug sprocket", "hub-gear sprocket 3-lug");

    /// <summary>One sprocket for the own carrier of a hub gear.</summary>
    public static CassettePattern HubGearOwn { get; } = new(18, "carrier", "sprocket for a hub gear's own carrier", Sources.HubGearPage, "carrier sprocket", "splined carrier sprocket");

    /// <summary>8-speed of the 8-spline family, cut for the old shallow splines.</summary>
    public static CassettePattern EightSpline8 { get; } = new(19, "8-spline-8", "8-speed 8-spline", Sources.EightSpline);

    /// <summary>One fixed sprocket that is screwed on and held by a left-hand lockring.</summary>
    public static CassettePattern FixedSprocket { get; } = new(20, "fixed-sprocket", "screwed fixed sprocket", Sources.FixedLockring, "fixed sprocket", "fixed cog", "track sprocket", "track cog");

    /// <summary>Every pattern.</summary>
    public static ImmutableArray<CassettePattern> All { get; } =
    [
        Hg7, Hg8, Hg9, Hg10, Hg10OldRoad, Hg11Wide, Hg11Road, Hg12Road, Hg12Fit, MicroSpline12, Xd, Xdr,
        EightSpline9, EightSpline10To12, EightSpline13, Freewheel, ThreeLug, HubGearOwn, EightSpline8, FixedSprocket,
    ];

    /// <inheritdoc/>
    public static string Called => "cassette pattern";

    /// <summary>With how many sprockets the pattern is made at least; null for a freewheel, which says nothing of it, and for one sprocket.</summary>
    public int? FewestSpeeds => FitCode switch { <= 3 => (int)FitCode + 6, 4 or 5 => 10, 6 or 7 => 11, 8 or 9 or 10 or 12 => 12, 11 => 11, 13 => 9, 14 => 10, 15 => 13, 19 => 8, _ => null };

    /// <summary>With how many sprockets the pattern is made at most; null for a freewheel and for one sprocket.</summary>
    public int? MostSpeeds => FitCode is 11 or 14 ? 12 : FewestSpeeds;

    /// <summary>Teeth of the smallest sprocket that the body under it allows: 11 on HG, 10 on Micro Spline, XD and XDR, 9 on N3W, 12 on a freewheel and on the old 8-spline body, 13 on a hub gear, 12 on a track hub. A few XD cassettes start at 9.</summary>
    public int FewestTeeth => FitCode switch { 10 or 11 or 12 => 10, 15 => 9, 16 or 19 or 20 => 12, 17 or 18 => 13, _ => 11 };

    /// <inheritdoc/>
    public static CassettePattern OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; "10-speed HG", "11-speed HG" and "12-speed HG" alone are several, and so is the sprocket of a hub gear.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<CassettePattern> Read(ReadOnlySpan<char> text)
    {
        if (TextCursor.IsNegative(text))
        {
            return ByName(text);
        }

        string upper = Trim(text).ToString().ToUpperInvariant().Replace('-', ' ');
        if (upper is "HUB GEAR" or "HUB GEAR SPROCKET" or "IGH" or "IGH SPROCKET")
        {
            return TextReading<CassettePattern>.Several([ThreeLug, HubGearOwn], "look inside the sprocket: three lugs, or splines or a thread of one maker");
        }

        string word = upper.Replace("SPEED", "", StringComparison.Ordinal).Replace("SP", "", StringComparison.Ordinal);
        string plain = string.Join(' ', word.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return plain switch
        {
            "10 HG" or "HG10" or "HG 10" => TextReading<CassettePattern>.Several([Hg10, Hg10OldRoad], "older road cassettes need another spacer"),
            "11 HG" or "HG11" or "HG 11" => TextReading<CassettePattern>.Several([Hg11Wide, Hg11Road], "close road cassettes need the long body"),
            "12 HG" or "HG12" or "HG 12" => TextReading<CassettePattern>.Several([Hg12Road, Hg12Fit], "road cassettes and those for HG bodies differ"),
            "9 HG" or "HG9" => TextReading<CassettePattern>.Of(Hg9),
            _ => ByName(text),
        };
    }
}
