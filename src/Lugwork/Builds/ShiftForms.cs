namespace Lugwork;

/// <summary>Forms of shifters, front derailleur, chain guide, chainring and rear shock.</summary>
internal static partial class PartForms
{
    public static PartForm<Shifter> Shifter { get; } = new("shifter", () => new Shifter(),
        PartField<Shifter>.Of("signal", "cable, wired, wireless or hydraulic", p => p.Signal, (p, v) => p with { Signal = v }, [], bare: true),
        PartField<Shifter>.Of("actuation", "a family such as R, M11 or LG, or none of the listed ones", p => p.Actuation, (p, v) => p with { Actuation = v }, ["pull"]),
        PartField<Shifter>.Of("spacing", "the sprockets it is made for, such as 9, 11-wide or LG-10, or none without clicks", p => p.Spacing, (p, v) => p with { Spacing = v }, ["speeds"]),
        PartField<Shifter>.Of("withDerailleur", "allowed or refused by its maker, or none", p => p.WithDerailleur, (p, v) => p with { WithDerailleur = v }, ["with derailleur"]),
        PartField<Shifter>.Of("withSprockets", "allowed or refused by its maker, or none", p => p.WithSprockets, (p, v) => p with { WithSprockets = v }, ["with sprockets"]),
        PartField<Shifter>.Of("housingLength", Millimetres, p => p.HousingLength, (p, v) => p with { HousingLength = v }, ["housing length"]));

    public static PartForm<FrontDerailleur> FrontDerailleur { get; } = new("front derailleur", () => new FrontDerailleur(),
        PartField<FrontDerailleur>.Of("mount", "a mount such as 31.8, braze-on or low direct S3", p => p.Mount, (p, v) => p with { Mount = v }, [], bare: true),
        PartField<FrontDerailleur>.Of("speeds", "speeds such as 11", p => p.Speeds, (p, v) => p with { Speeds = v }, ["rings"]),
        PartField<FrontDerailleur>.Of("chainline", "a chainline such as road-2x", p => p.Chainline, (p, v) => p with { Chainline = v }, []),
        PartField<FrontDerailleur>.Of("signal", "cable, wired, wireless or hydraulic", p => p.Signal, (p, v) => p with { Signal = v }, [], bare: true),
        PartField<FrontDerailleur>.Of("difference", "teeth such as 16", p => p.Difference, (p, v) => p with { Difference = v }, ["front difference", "capacity"]));

    public static PartForm<ChainGuide> ChainGuide { get; } = new("chain guide", () => new ChainGuide(),
        PartField<ChainGuide>.Of("mount", "ISCG, ISCG05, BB-mount or derailleur-mount", p => p.Mount, (p, v) => p with { Mount = v }, [], bare: true));

    public static PartForm<Chainring> Chainring { get; } = new("chainring", () => new Chainring(),
        PartField<Chainring>.Of("boltCircle", "a circle such as 5x110 or 4x104, or none", p => p.BoltCircle, (p, v) => p with { BoltCircle = v }, ["bolt circle", "BCD"]),
        PartField<Chainring>.Of("directMount", "3-bolt, 8-bolt or own, or none", p => p.DirectMount, (p, v) => p with { DirectMount = v }, ["direct mount"]),
        PartField<Chainring>.Of("teeth", "teeth such as 42", p => p.Teeth, (p, v) => p with { Teeth = v }, []),
        PartField<Chainring>.Of("speeds", "speeds such as 11, or 1/8 or 3/32 for one ring", p => p.Speeds, (p, v) => p with { Speeds = v }, []))
        {
            Contradiction = HeldByNothing,
        };

    public static PartForm<Shock> Shock { get; } = new("rear shock", () => new Shock(),
        PartField<Shock>.Of("size", "a size such as 210x55 or trunnion 185x55", p => p.Size, (p, v) => p with { Size = v }, [], bare: true),
        PartField<Shock>.Of("lowerHardware", "width and bolt, such as 22.2x8", p => p.LowerHardware, (p, v) => p with { LowerHardware = v }, ["lower hardware"]),
        PartField<Shock>.Of("upperHardware", "width and bolt, such as 22.2x8, or none for a trunnion", p => p.UpperHardware, (p, v) => p with { UpperHardware = v }, ["upper hardware"]),
        PartField<Shock>.Of("eyelet", "the bush it is made for, 12.7 or 12", p => p.Eyelet, (p, v) => p with { Eyelet = v }, []),
        PartField<Shock>.Of("bush", "12.7 or 12", p => p.Bush, (p, v) => p with { Bush = v }, []));

    private static (string Field, string Reason, string Expected)? HeldByNothing(Chainring ring) =>
        ring.BoltCircle.State == KnownState.None && ring.DirectMount.State == KnownState.None
            ? ("directMount", "a ring without a bolt circle sits on the arm itself", "a direct mount, or a bolt circle")
            : null;
}
