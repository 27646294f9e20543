using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Brakes;

/// <summary>A kind of brake, by what it is held by and what works it. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<BrakeType>))]
[TypeConverter(typeof(InterfaceTypeConverter<BrakeType>))]
public sealed class BrakeType : Standard<BrakeType>, IInterfaceValue<BrakeType>
{
    private BrakeType(int code, string key, string name, BrakePlace place, CablePull? pull, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Place = place;
        Pull = pull;
    }

    /// <summary>One bolt through crown or bridge.</summary>
    public static BrakeType RimCaliper { get; } = new(1, "rim-caliper", "road caliper", BrakePlace.CentreBolt, CablePull.Short, Sources.LeverPull, "side-pull", "caliper", "dual pivot", "dual-pivot caliper", "side-pull caliper", "rim brake caliper");

    /// <summary>One bolt, two arms drawn by a yoke from the middle.</summary>
    public static BrakeType CentrePull { get; } = new(2, "centre-pull", "centre-pull caliper", BrakePlace.CentreBolt, null, Sources.ReachPitfalls, "center-pull");

    /// <summary>Two arms on bosses below the rim, drawn by a yoke.</summary>
    public static BrakeType Cantilever { get; } = new(3, "cantilever", "cantilever brake", BrakePlace.BossesBelowRim, CablePull.Short, Sources.LeverPull, "canti");

    /// <summary>Two long arms on bosses below the rim, the cable straight across.</summary>
    /// <remarks>"V-brake" began as one maker's word; shops and glossaries use it for every brake of this kind, so that it is read as a name of the kind and never written.</remarks>
    public static BrakeType DirectPull { get; } = new(4, "direct-pull", "direct-pull brake", BrakePlace.BossesBelowRim, CablePull.Long, Sources.LeverPull, "linear-pull", "V-brake", "V-brakes", "vee brake");

    /// <summary>Direct-pull with arms short enough for road levers.</summary>
    public static BrakeType MiniDirectPull { get; } = new(5, "mini-direct-pull", "mini direct-pull brake", BrakePlace.BossesBelowRim, CablePull.Short, Sources.LeverPull, "mini V-brake");

    /// <summary>Two arms on bosses above the rim, drawn from the middle.</summary>
    public static BrakeType UBrake { get; } = new(6, "u-brake", "U-brake", BrakePlace.BossesAboveRim, CablePull.Short, Sources.LeverPull);

    /// <summary>Two arms on bosses above the rim, spread by a cam.</summary>
    public static BrakeType RollerCam { get; } = new(7, "roller-cam", "roller-cam brake", BrakePlace.BossesAboveRim, null, Sources.BrazedOnBrakes);

    /// <summary>Cable disc for road levers.</summary>
    public static BrakeType RoadCableDisc { get; } = new(8, "disc-cable-road", "road cable disc", BrakePlace.DiscMount, CablePull.Short, Sources.LeverPull, "road mechanical disc");

    /// <summary>Cable disc for flat-bar levers.</summary>
    public static BrakeType OffRoadCableDisc { get; } = new(9, "disc-cable-off-road", "off-road cable disc", BrakePlace.DiscMount, CablePull.Long, Sources.LeverPull, "off-road mechanical disc");

    /// <summary>Disc worked by fluid: no cable.</summary>
    public static BrakeType HydraulicDisc { get; } = new(10, "disc-hydraulic", "hydraulic disc", BrakePlace.DiscMount, null, Sources.FluidGuide, "hydro disc");

    /// <summary>Shoes inside the hub.</summary>
    public static BrakeType Drum { get; } = new(11, "drum", "drum brake", BrakePlace.Hub, null, Sources.Memory, "drum brake hub");

    /// <summary>A unit on the side of the hub, shoes pressed by rollers.</summary>
    public static BrakeType Roller { get; } = new(12, "roller", "roller brake", BrakePlace.Hub, CablePull.Short, Sources.MechanicalBrakes);

    /// <summary>Inside the hub, worked by pedalling back: no lever.</summary>
    public static BrakeType Coaster { get; } = new(13, "coaster", "coaster brake", BrakePlace.Hub, null, Sources.HubGearPage, "back-pedal brake", "backpedal");

    /// <summary>Disc worked by a cable that presses fluid inside the caliper: the lever pulls a cable, and holds no fluid. Which lever it wants is its maker's to say.</summary>
    public static BrakeType CableHydraulicDisc { get; } = new(14, "disc-cable-hydraulic", "cable-worked hydraulic disc", BrakePlace.DiscMount, null, Sources.CommonPractice, "cable hydraulic disc", "cable-actuated hydraulic disc", "hybrid disc");

    /// <summary>Every kind.</summary>
    public static ImmutableArray<BrakeType> All { get; } =
    [
        RimCaliper, CentrePull, Cantilever, DirectPull, MiniDirectPull, UBrake, RollerCam,
        RoadCableDisc, OffRoadCableDisc, HydraulicDisc, Drum, Roller, Coaster, CableHydraulicDisc,
    ];

    /// <inheritdoc/>
    public static string Called => "brake type";

    /// <summary>What holds it.</summary>
    public BrakePlace Place { get; }

    /// <summary>The cable pull that it wants; null where it has no cable or none is known here.</summary>
    public CablePull? Pull { get; }

    /// <summary>It presses on the rim, not on a disc or inside the hub.</summary>
    public bool IsRimBrake => Place is BrakePlace.CentreBolt || IsOnBosses;

    /// <summary>Two bosses hold it, below the rim or above it.</summary>
    public bool IsOnBosses => Place is BrakePlace.BossesBelowRim or BrakePlace.BossesAboveRim;

    /// <summary>Works without a cable: by fluid or by the chain.</summary>
    public bool IsWithoutCable => this == HydraulicDisc || this == Coaster;

    /// <summary>It turns an arm against the frame, which has to be held at fork blade or chain stay; no disc mount is needed.</summary>
    public bool HasReactionArm => Place == BrakePlace.Hub;

    /// <summary>What tells of the arm; empty where there is none.</summary>
    public ImmutableArray<Source> ArmSources => this == Drum ? [Sources.DrumArmClip, Sources.DrumArmLoose] : HasReactionArm ? [Sources.CommonPractice] : [];

    /// <summary>What to mind of the frame; null where a joint's own caution says it.</summary>
    public Caution? OfTheFrame => HasReactionArm ? Cautions.ReactionArm : null;

    /// <inheritdoc/>
    public static BrakeType OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; "disc" and "cable disc" alone are several.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<BrakeType> Read(ReadOnlySpan<char> text)
    {
        string word = Trim(text) is { Length: < 40 } trimmed ? trimmed.ToString().ToUpperInvariant().Replace('-', ' ') : "";
        return word switch
        {
            "DISC" or "DISC BRAKE" => TextReading<BrakeType>.Several([RoadCableDisc, OffRoadCableDisc, HydraulicDisc], "say whether cable or fluid works it"),
            "CABLE DISC" or "MECHANICAL DISC" => TextReading<BrakeType>.Several([RoadCableDisc, OffRoadCableDisc], "say whether it is made for road levers"),
            "HUB BRAKE" => TextReading<BrakeType>.Several([Drum, Roller, Coaster], "say which"),
            _ => ByName(text),
        };
    }
}
