using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>How a front derailleur is held. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<FrontDerailleurMount>))]
[TypeConverter(typeof(InterfaceTypeConverter<FrontDerailleurMount>))]
public sealed class FrontDerailleurMount : Standard<FrontDerailleurMount>, IInterfaceValue<FrontDerailleurMount>
{
    private FrontDerailleurMount(int code, string key, string name, int tube, int bolts, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        TubeMicrometres = tube;
        BoltMicrometres = bolts;
    }

    /// <summary>A band round a seat tube of 28.6 mm, the commonest.</summary>
    public static FrontDerailleurMount Band28 { get; } = new(1, "band-28.6", "band clamp 28.6 mm", 28_600, 0, Sources.FrontDerailleurs, "28.6", "28.6 mm", "clamp 28.6", "28.6 clamp", "28.6 band", "clamp-on 28.6", "28.6 mm clamp", "28.6 mm band", "1-1/8 in band", "1-1/8 in");

    /// <summary>A band round a seat tube of 31.8 mm; a shim for 28.6 is usual.</summary>
    public static FrontDerailleurMount Band31 { get; } = new(2, "band-31.8", "band clamp 31.8 mm", 31_800, 0, Sources.FrontDerailleurs, "31.8", "31.8 mm", "clamp 31.8", "31.8 clamp", "31.8 band", "clamp-on 31.8", "31.8 mm clamp", "31.8 mm band", "1-1/4 in band", "1-1/4 in");

    /// <summary>A band round a seat tube of 34.9 mm.</summary>
    public static FrontDerailleurMount Band34 { get; } = new(3, "band-34.9", "band clamp 34.9 mm", 34_900, 0, Sources.FrontDerailleurCare, "34.9", "34.9 mm", "clamp 34.9", "34.9 clamp", "34.9 band", "clamp-on 34.9", "34.9 mm clamp", "34.9 mm band", "1-3/8 in band", "1-3/8 in");

    /// <summary>A bolt to a curved tab on the seat tube; band adapters are made for all three tubes.</summary>
    public static FrontDerailleurMount BrazeOn { get; } = new(4, "braze-on", "braze-on tab", 0, 0, Sources.FrontDerailleurs, "brazed-on", "tab");

    /// <summary>A flat tab high on the seat tube, with little room up and down.</summary>
    public static FrontDerailleurMount HighDirect { get; } = new(5, "high-direct", "high direct mount", 0, 0, Sources.FrontMountSpacing, "high direct mount", "HDM");

    /// <summary>Low direct mount S1, 42.7 mm between the bolts; rings are fixed.</summary>
    public static FrontDerailleurMount LowDirect1 { get; } = new(6, "low-direct-S1", "low direct mount S1", 0, 42_700, Sources.FrontMountSpacing, "S1", "LDM S1");

    /// <summary>Low direct mount S2, 22.1 mm between the bolts, both in one plane.</summary>
    public static FrontDerailleurMount LowDirect2 { get; } = new(7, "low-direct-S2", "low direct mount S2", 0, 22_100, Sources.FrontMountSpacing, "S2", "LDM S2");

    /// <summary>Low direct mount S3, 22.1 mm between the bolts, one of them 5 mm further out.</summary>
    public static FrontDerailleurMount LowDirect3 { get; } = new(8, "low-direct-S3", "low direct mount S3", 0, 22_100, Sources.FrontMountSpacing, "S3", "LDM S3");

    /// <summary>E-type: a plate held by the drive-side cup, in the place of one 2.5 mm spacer.</summary>
    public static FrontDerailleurMount EType { get; } = new(9, "E-type", "E-type plate", 0, 0, Sources.FrontMountSpacing, "E type plate");

    /// <summary>Every mount, in the order of the table.</summary>
    public static ImmutableArray<FrontDerailleurMount> All { get; } =
    [
        Band28, Band31, Band34, BrazeOn, HighDirect, LowDirect1, LowDirect2, LowDirect3, EType,
    ];

    /// <inheritdoc/>
    public static string Called => "front-derailleur mount";

    /// <summary>Outside of the seat tube that the band goes round; null for mounts without a band.</summary>
    public Length? Tube => TubeMicrometres == 0 ? null : Length.FromMicrometers(TubeMicrometres);

    /// <summary>Between the middles of the two bolts; null where there are not two.</summary>
    public Length? BoltSpacing => BoltMicrometres == 0 ? null : Length.FromMicrometers(BoltMicrometres);

    /// <summary>How much further out one of the two bolts is: 5 mm for S3, 0 for S1 and S2; null where there are not two.</summary>
    public Length? BoltStep => BoltMicrometres == 0 ? null : Length.FromMillimeters(this == LowDirect3 ? 5 : 0);

    /// <summary>Thickness of the spacer whose place a plate takes, 2.5 mm; null for mounts without a plate.</summary>
    public Length? Plate => this == EType ? Length.FromMillimeters(2.5) : null;

    internal int TubeMicrometres { get; }

    internal int BoltMicrometres { get; }

    /// <inheritdoc/>
    public static FrontDerailleurMount OfFitCode(long code) => ByCode(code);

    /// <summary>What mount measured dimensions of a frame can be, likeliest first, and what to measure next.</summary>
    /// <param name="tube">Outside of a plain seat tube where the band would sit; then only bands are left.</param>
    /// <param name="boltSpacing">Between the middles of two bolt holes low on the frame; then only low direct mounts are left.</param>
    /// <param name="boltStep">How much further out one of the holes is than the other.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    public static Identification<FrontDerailleurMount> Identify(MeasuredLength? tube = null, MeasuredLength? boltSpacing = null, MeasuredLength? boltStep = null) =>
        FrontMountMeasured.Identify(tube, boltSpacing, boltStep);

    /// <summary>Reads a key, a name or the diameter of a band; "band", "direct mount" and "low direct mount" alone are several.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<FrontDerailleurMount> Read(ReadOnlySpan<char> text)
    {
        foreach (FrontDerailleurMount mount in All.AsSpan()[..3])
        {
            TextCursor cursor = new(text);
            if (cursor.TryNumber(out long nanometres) && nanometres == mount.TubeMicrometres * 1_000L)
            {
                cursor.SkipMillimetres();
                return cursor.AtEnd ? TextReading<FrontDerailleurMount>.Of(mount) : ByName(text);
            }
        }

        const int Longest = 40;
        return Trim(text) is { Length: <= Longest } word ? Several(word.ToString().ToUpperInvariant().Replace('-', ' ')) ?? ByName(text) : ByName(text);
    }

    private static TextReading<FrontDerailleurMount>? Several(string word) => word switch
    {
        "BAND" or "CLAMP" or "BAND CLAMP" => TextReading<FrontDerailleurMount>.Several([Band28, Band31, Band34], "the outside of the seat tube is missing: 28.6, 31.8 or 34.9 mm"),
        "LOW DIRECT" or "LOW DIRECT MOUNT" or "LDM" => TextReading<FrontDerailleurMount>.Several([LowDirect1, LowDirect2, LowDirect3], "three are called so: 42.7 mm between the bolts is S1; 22.1 mm is S2, or S3 where one bolt is 5 mm further out"),
        "DIRECT" or "DIRECT MOUNT" => TextReading<FrontDerailleurMount>.Several([HighDirect, LowDirect1, LowDirect2, LowDirect3], "high and low direct mounts differ"),
        _ => null,
    };
}
