using Lugwork.Steering;

namespace Lugwork.Workshop;

/// <summary>Keys and spanners whose size a page prints, by the thread of the bolt or by the part. They are of the usual head: the head at hand decides, and where no page was read none is named.</summary>
internal static class KeySizes
{
    /// <summary>Socket heads by ISO 4762: M5.</summary>
    public static WorkTool M5 { get; } = new("hex-m5", "hex key of 4 mm for M5 bolts with socket heads (the head decides)") { Source = Sources.SocketHeads };

    /// <summary>Socket heads by ISO 4762: M6.</summary>
    public static WorkTool M6 { get; } = new("hex-m6", "hex key of 5 mm for M6 bolts with socket heads (the head decides)") { Source = Sources.SocketHeads };

    public static WorkTool RotorStar { get; } = new("t25", "T25 key") { Source = Sources.RotorMakersSheet };

    public static WorkTool Pedal { get; } = new("pedal-spanner", "pedal spanner of 15 mm for flats, or hex key of 6 or 8 mm for a socket in the axle (the pedal decides)") { Source = Sources.PedalSpanners };

    public static WorkTool SquareTaper { get; } = new("crank-bolt-key", "hex key of 8 mm, or socket of 14 or 15 mm on older ones, for the crank bolts (the head decides)") { Source = Sources.CrankBoltHeads };

    public static WorkTool AxleNuts { get; } = new("axle-spanner", "spanner of 15 mm for the axle nuts, 17 mm on some (the nut decides)") { Source = Sources.WheelTools };

    public static WorkTool ThruAxle { get; } = new("axle-key", "hex key of 5 or 6 mm for a thru-axle without a lever (the axle decides)") { Source = Sources.AxleTools };

    public static WorkTool RearDerailleur { get; } = new("derailleur-key", "hex key of 5 or 6 mm for the bolt of the rear derailleur (the head decides)") { Source = Sources.DerailleurTools };

    public static WorkTool SaddleClamp { get; } = new("saddle-key", "hex key of 6 mm for one bolt, 5 mm for two, spanners of 13 or 14 mm for nuts (the clamp decides)") { Source = Sources.GuideTorques2002 };

    /// <summary>One page names the size, for steerers of 1 in.</summary>
    public static WorkTool Headset(Build build) => build.As<Fork>(Slot.Fork)?.Steerer.Is(SteererSize.Mm25Point4) == true
        ? new("headset-spanners", "two headset spanners, of 32 mm on most steerers of 1 in (race and locknut decide)") { Source = Sources.HeadsetService }
        : new("headset-spanners", "two headset spanners of the size of race and locknut");

    /// <summary>Tabs have M6 bolts; of a plate or a clamp no page was read.</summary>
    public static WorkTool Guide(Build build) => build.As<ChainGuide>(Slot.ChainGuide)?.Mount is { State: KnownState.Value } mount && mount.Value.Bolt == "M6" ? M6 : Kit.HexKeys;
}
