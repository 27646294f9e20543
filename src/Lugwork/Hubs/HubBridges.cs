using System.Collections.Immutable;

namespace Lugwork.Hubs;

/// <summary>What lets a hub into an end of another standard. Direction and kind of every bridge are data. Apart from the relation, so that the rows are made when a hub first meets another standard.</summary>
internal static class HubBridges
{
    private const int EndsInput = 2;
    private const int MaterialInput = 3;

    /// <summary>Rows of what goes into what. Caps that let a thicker axle through need swappable ends.</summary>
    public static ImmutableArray<Bridge> Table { get; } =
    [
        // 135 mm shells: caps add or take 3.5 mm a side; rotor and cassette stay where they are in the frame.
        .. OpenSlots("R135-10", "R135-QR", Sources.AxleStandardsBlog),
        Caps("R135-QR", "R142-12", 3_500, true, Sources.Boost148Explained, Sources.FrameBuilder148),
        Caps("R135-10", "R142-12", 3_500, true, Sources.Boost148Explained, Sources.FrameBuilder148),
        Caps("R135-QR", "R135-12", 0, true, Sources.Boost148Explained),
        Caps("R135-10", "R135-12", 0, true, Sources.Boost148Explained),
        Caps("R142-12", "R135-QR", -3_500, false, Sources.Boost148Explained),
        Caps("R142-12", "R135-10", -3_500, false, Sources.Boost148Explained),
        Caps("R142-12", "R135-12", -3_500, false, Sources.Boost148Explained),
        Caps("R135-12", "R142-12", 3_500, false, Sources.Boost148Explained),
        Caps("R135-12", "R135-QR", 0, false, Sources.AxleGuide),
        Caps("R135-12", "R135-10", 0, false, Sources.AxleGuide),

        // 141 mm shells.
        Caps("R148-12", "R141-QR", -3_500, false, Sources.WheelBuilderAxles),
        Caps("R141-QR", "R148-12", 3_500, true, Sources.WheelBuilderAxles),

        // 150 mm shells.
        Caps("R150-12", "R157-12DH", 3_500, false, Sources.AxleWidths157),
        Caps("R157-12DH", "R150-12", -3_500, false, Sources.AxleWidths157),
        Made("R157-12DH", "R157-12W", "drops in; narrower flanges lose spoke angle, judge crank and shell separately", Sources.SuperBoostPress, Sources.AxleWidths157),
        Made("R157-12W", "R157-12DH", "drops in; check caliper and stay clearance, the flange is further out", Sources.SuperBoostPress, Sources.Derived),
        Check("R157-12W", "R150-12", "end caps for this hub, 3.5 mm less a side, if its maker sells them", default, Sources.AxleWidths157),
        Check("R150-12", "R157-12W", "end caps for this hub, 3.5 mm more a side, if its maker sells them", new(0, 0, 0, 3_500), Sources.AxleWidths157),

        // Fat shells.
        Caps("R170-QR", "R177-12", 3_500, true, Sources.Derived, Sources.SprocketCarrier),
        Caps("R177-12", "R170-QR", -3_500, false, Sources.Derived, Sources.SprocketCarrier),
        Caps("R190-QR", "R197-12", 3_500, true, Sources.Derived, Sources.SprocketCarrier),
        Caps("R197-12", "R190-QR", -3_500, false, Sources.Derived, Sources.SprocketCarrier),

        // From 135 shells to 141 shells: width and rotor both have to move; caps alone never do it.
        Check("R142-12", "R148-12", "spacer kit 3 mm a side with a 3 mm rotor spacer and a longer axle, or 6 mm on one side with the rim re-dished", new(0, 0, 3_000, 3_000), Sources.SixMillimetre, Sources.BoostTrade),
        Check("R135-QR", "R141-QR", "3 mm spacer a side with a 3 mm rotor spacer, longer axle and skewer; the chainline stays 3 mm inside what the frame means", new(0, -3_000, 3_000, 3_000), Sources.Derived, Sources.Boost148Press),

        // Frames made for two widths.
        Made("R130", "R132.5", "1.25 mm a side, by design", Sources.CassetteFaq),
        Made("R135-QR", "R132.5", "1.25 mm a side, by design", Sources.CassetteFaq),
        Made("R142-12", "R145-flex", "only frames made for both; the axle must suit", Sources.BoostBlog),
        Made("R148-12", "R145-flex", "only frames made for both; the axle must suit", Sources.BoostBlog),

        // Steel can be sprung or re-spaced; nothing else can.
        Steel("R130", "R126", BridgeKind.MadeForBoth, Verdict.Fits, "springs in, or is cold-set 2 mm a side with the ends re-aligned", Sources.SpreadPost, Sources.FrameSpacing),
        Steel("R135-QR", "R130", BridgeKind.ShopWork, Verdict.NeedsPart, "cold-setting the steel frame 2.5 mm a side and re-aligning the ends (leave it to a shop)", Sources.FrameSpacing, Sources.Chainline135),
        Spaced("R126", "R130", Verdict.NeedsPart, "2 mm spacers a side, if the axle is long enough, and the rim re-dished", 2_000, Sources.WheelAdvice),
        Spaced("R130", "R135-QR", Verdict.NeedsMeasuring, "2.5 mm spacers a side, if the axle is threaded and long enough, and the rim re-dished", 2_500, Sources.FreehubLengths, Sources.WheelAdvice),
        Spaced("R120", "R130", Verdict.NeedsMeasuring, "5 mm spacers a side, if the axle is long enough; the track chainline must match the crank", 5_000, Sources.SingleChainline, Sources.WheelAdvice),

        Thinner("R120-3/8", "R120"),

        // BMX: a thin axle can be centred in wide slots, a thick one does not enter narrow ones.
        Row("R110-3/8", "R110-14", BridgeKind.Adapter, Verdict.NeedsPart, "stepped washers that centre a 3/8 in axle in 14 mm slots", Sources.CommonPractice),

        // Front.
        .. OpenSlots("F100-TB9", "F100-QR9", Sources.AxleStandardsBlog),
        .. OpenSlots("F100-N9", "F100-QR9", Sources.CommonPractice),
        .. OpenSlots("F100-N9", "F100-TB9", Sources.CommonPractice),
        Thinner("F100-QR9", "F100-N-3/8"),
        Thinner("F100-TB9", "F100-N-3/8"),
        Thinner("F100-N9", "F100-N-3/8"),
        Thinner("F100-N-5/16", "F100-QR9"),
        Thinner("F100-N-5/16", "F100-TB9"),
        Thinner("F100-N-5/16", "F100-N9"),
        Thinner("F100-N-5/16", "F100-N-3/8"),
        Caps("F100-QR9", "F100-12", 0, true, Sources.HubStandards),
        Caps("F100-QR9", "F100-15", 0, true, Sources.AxleGuide, Sources.HubStandards),
        Caps("F100-TB9", "F100-12", 0, true, Sources.HubStandards),
        Caps("F100-TB9", "F100-15", 0, true, Sources.HubStandards),
        Caps("F100-12", "F100-QR9", 0, false, Sources.HubStandards),
        Caps("F100-15", "F100-QR9", 0, false, Sources.AxleGuide),
        Caps("F100-12", "F100-TB9", 0, false, Sources.HubStandards),
        Caps("F100-15", "F100-TB9", 0, false, Sources.AxleGuide),
        Caps("F100-15", "F100-12", 0, false, Sources.EndCapForum) with { What = "end caps with a 12 mm bore and 19 mm outside for this hub; a bore sleeve alone does not enter the recess" },
        Check("F100-12", "F100-15", "15 mm end caps for this hub, if its bore passes a 15 mm axle", default, Sources.HubStandards),
        Check("F100-15", "F110-15B", "spacer kit 5 mm a side with a 5 mm rotor spacer, or 10 mm on the other side with the rim re-dished", new(0, 0, 5_000, 5_000), Sources.BoostTrade, Sources.Derived),
        Caps("F110-20B", "F110-15B", 0, false, Sources.Axle20Article, Sources.Derived),
        Check("F110-15B", "F110-20B", "20 mm end caps for this hub, if its bore passes a 20 mm axle", default, Sources.Axle20Article),
        Check("F110-20", "F110-20B", "5 mm rotor spacer: same printed size, the rotor stands 5 mm too far in", new(0, 0, 5_000, 0), Sources.Axle20Article),
        Check("F110-15B", "F110-12RB", "12 mm end caps for this hub, where they exist; equal rotor place is not promised", default, Sources.WheelBuilderAxles),
        Made("F110-15B", "F110-15B-31", "clamps and works; the wheel does not centre itself while the axle is out", Sources.EndCapPage),
    ];

    private static Bridge Row(string from, string to, BridgeKind kind, Verdict result, string what, params ImmutableArray<Source> sources) => new()
    {
        Id = $"hub-{from}-in-{to}".ToLowerInvariant(),
        Kind = kind,
        Result = result,
        What = what,
        From = HubStandard.Named(from).FitCode,
        To = HubStandard.Named(to).FitCode,
        Caution = kind == BridgeKind.MadeForBoth ? null : Cautions.Axle,
        Sources = sources,
    };

    private static Bridge Caps(string from, string to, int perSide, bool swappable, params ImmutableArray<Source> sources) =>
        Row(from, to, BridgeKind.EndCaps, Verdict.NeedsPart, $"{HubStandard.Named(to).TradeName} end caps for this hub, if its maker sells them", sources) with
        {
            Effects = new(0, 0, 0, perSide),
            Chains = true,
            ConditionInput = swappable ? EndsInput : -1,
            ConditionCode = HubEnds.Swappable.FitCode,
        };

    private static ImmutableArray<Bridge> OpenSlots(string one, string other, Source source) =>
    [
        Row(one, other, BridgeKind.MadeForBoth, Verdict.Fits, "nothing between: both axles sit in the same open slots", source),
        Row(other, one, BridgeKind.MadeForBoth, Verdict.Fits, "nothing between: both axles sit in the same open slots", source),
    ];

    /// <summary>An axle in open slots that are cut for a thicker one. The other way round, a thick axle does not enter: no row.</summary>
    private static Bridge Thinner(string axle, string slots) =>
        Row(axle, slots, BridgeKind.MadeForBoth, Verdict.NeedsMeasuring, "nothing between, where the nuts bear fully on both ends and the wheel stands straight: the axle is thinner than the slots", Sources.CommonPractice) with { Caution = Cautions.Axle };

    private static Bridge Made(string from, string to, string what, params ImmutableArray<Source> sources) =>
        Row(from, to, BridgeKind.MadeForBoth, Verdict.Fits, what, sources) with { Chains = true };

    private static Bridge Check(string from, string to, string what, SideEffects effects, params ImmutableArray<Source> sources) =>
        Row(from, to, BridgeKind.Spacers, Verdict.NeedsMeasuring, what, sources) with { Effects = effects, Chains = from is "R142-12" or "F100-15" };

    private static Bridge Spaced(string from, string to, Verdict result, string what, int perSide, params ImmutableArray<Source> sources) =>
        Row(from, to, BridgeKind.Spacers, result, what, sources) with { Effects = new(0, 0, 0, perSide) };

    private static Bridge Steel(string from, string to, BridgeKind kind, Verdict result, string what, params ImmutableArray<Source> sources) =>
        Row(from, to, kind, result, what, sources) with
        {
            ConditionInput = MaterialInput,
            ConditionCode = Material.Steel.FitCode,
            Otherwise = Verdict.Unsafe,
            Caution = Cautions.NeverSpread,
        };
}
