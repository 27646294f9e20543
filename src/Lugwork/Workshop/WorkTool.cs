namespace Lugwork.Workshop;

/// <summary>A tool that a step needs.</summary>
/// <param name="Id">Short id: "torque-wrench".</param>
/// <param name="Name">What it is, by the interfaces of this bicycle where they decide it.</param>
/// <param name="IsOfTheShop">A press, a facing tool, a gauge: what a home workshop seldom has.</param>
public sealed record WorkTool(string Id, string Name, bool IsOfTheShop = false)
{
    /// <summary>Where its form comes from; null where it is common practice or the maker's.</summary>
    public Source? Source { get; init; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}

/// <summary>Something that is used up: grease, paste, fluid. Equal by id and name.</summary>
/// <param name="Id">Short id: "grease".</param>
/// <param name="Name">What to buy.</param>
public sealed record WorkConsumable(string Id, string Name)
{
    /// <summary>The name.</summary>
    public override string ToString() => Name;
}

/// <summary>A step that belongs into a shop, and why.</summary>
/// <param name="IsNeeded">It cannot be done well without the shop's tools; otherwise the risk advises it.</param>
/// <param name="Reason">Why.</param>
public sealed record LeaveToShop(bool IsNeeded, string Reason)
{
    /// <summary>"Leave it to a shop: the reason".</summary>
    public override string ToString() => $"{(IsNeeded ? "Leave it to a shop" : "Better left to a shop if in doubt")}: {Reason}";
}

/// <summary>The tools and supplies that several steps name.</summary>
internal static class Kit
{
    public static WorkTool HexKeys { get; } = new("hex-keys", "hex or star keys (no page names a size: the bolt head decides)");

    public static WorkTool TorqueWrench { get; } = new("torque-wrench", "torque wrench with bits for the bolts at hand");

    public static WorkTool Stand { get; } = new("stand", "work stand that does not clamp carbon or thin tubes");

    public static WorkTool Caliper { get; } = new("caliper", "caliper and rule");

    public static WorkTool Light { get; } = new("light", "bright light and a clean rag");

    public static WorkTool CableCutter { get; } = new("cable-cutter", "cutter for cable and housing");

    public static WorkTool Liner { get; } = new("liner", "liner tube, magnet or pick for lines inside the frame");

    public static WorkTool TyreLevers { get; } = new("tyre-levers", "tyre levers of plastic");

    public static WorkTool Pump { get; } = new("pump", "pump with a gauge");

    public static WorkTool HeadsetPress { get; } = new("headset-press", "headset press with seats for these cups", true);

    public static WorkTool RaceSetter { get; } = new("race-setter", "crown race setter", true);

    public static WorkTool FacingSet { get; } = new("facing-set", "reaming and facing set", true);

    public static WorkTool Taps { get; } = new("taps", "taps and facing cutter for the shell", true);

    public static WorkTool Chasers { get; } = new("chasers", "taps for the shell", true);

    public static WorkTool HangerGauge { get; } = new("hanger-gauge", "hanger alignment gauge", true);

    public static WorkConsumable Grease { get; } = new("grease", "assembly grease");

    public static WorkConsumable Paste { get; } = new("carbon-paste", "assembly paste for carbon");

    public static WorkConsumable Threadlock { get; } = new("threadlock", "thread lock of the strength that the maker names");

    public static WorkConsumable Alcohol { get; } = new("alcohol", "alcohol and clean rags, for rotors, tracks and rims");

    public static WorkConsumable CableEnds { get; } = new("cable-ends", "end caps and ferrules");

    public static WorkConsumable ChainLube { get; } = new("chain-lube", "chain lubricant");
}
