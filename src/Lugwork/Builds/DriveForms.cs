namespace Lugwork;

/// <summary>Forms of bottom bracket, crankset, pedals, chain and rear derailleur.</summary>
internal static partial class PartForms
{
    public static PartForm<BottomBracket> BottomBracket { get; } = new("bottom bracket", () => new BottomBracket(),
        ForShell,
        PartField<BottomBracket>.Of("family", "a thread or bore such as BSA or PF41", p => p.Family, (p, v) => p with { Family = v }, ["made for"]),
        PartField<BottomBracket>.Of("narrowestShell", Millimetres, p => p.NarrowestShell, (p, v) => p with { NarrowestShell = v }, ["narrowest shell"]),
        PartField<BottomBracket>.Of("widestShell", Millimetres, p => p.WidestShell, (p, v) => p with { WidestShell = v }, ["widest shell"]),
        PartField<BottomBracket>.Of("takes", "a spindle such as 24, 28.99 or square taper JIS", p => p.Takes, (p, v) => p with { Takes = v }, ["spindle"]),
        PartField<BottomBracket>.Of("driveSpacer", "millimetres of loose spacers under the drive-side cup, such as 2.5, or none", p => p.DriveSpacer, (p, v) => p with { DriveSpacer = v }, ["drive spacer", "drive-side spacer"]),
        PartField<BottomBracket>.Of("designatedWidth", Millimetres, p => p.DesignatedWidth, (p, v) => p with { DesignatedWidth = v }, ["designated width"]))
        {
            Contradiction = TurnedRange,
        };

    public static PartForm<Crankset> Crankset { get; } = new("crankset", () => new Crankset(),
        PartField<Crankset>.Of("spindle", "a spindle such as 24-road, 28.99 or square-JIS", p => p.Spindle, (p, v) => p with { Spindle = v }, []),
        PartField<Crankset>.Of("pedalThread", "a thread such as 9/16", p => p.PedalThread, (p, v) => p with { PedalThread = v }, ["pedals", "pedal thread"]),
        PartField<Crankset>.Of("rings", "speeds such as 11, or 1/8 or 3/32 for one ring", p => p.Rings, (p, v) => p with { Rings = v }, ["speeds"]),
        PartField<Crankset>.Of("boltCircle", "a circle such as 5x110 or 4x104, or none", p => p.BoltCircle, (p, v) => p with { BoltCircle = v }, ["bolt circle", "BCD", "spider"]),
        PartField<Crankset>.Of("directMount", "3-bolt, 8-bolt or own, or none", p => p.DirectMount, (p, v) => p with { DirectMount = v }, ["direct mount"]),
        PartField<Crankset>.Of("largestRing", "teeth such as 50", p => p.LargestRing, (p, v) => p with { LargestRing = v }, ["largest ring", "largest chainring"]),
        PartField<Crankset>.Of("chainline", "a chainline such as road-2x", p => p.Chainline, (p, v) => p with { Chainline = v }, []),
        PartField<Crankset>.Of("material", "steel, aluminium, carbon or titanium", p => p.Material, (p, v) => p with { Material = v }, []),
        MadeOf<Crankset>(p => p.Made, (p, v) => p with { Made = v }),
        PartField<Crankset>.Of("measuredChainline", Millimetres, p => p.MeasuredChainline, (p, v) => p with { RingLine = v }, ["ring line"]),
        PartField<Crankset>.Of("shellWidth", Millimetres, p => p.ShellWidth, (p, v) => p with { ShellWidth = v }, ["shell width", "for shell"]),
        PartField<Crankset>.Of("designedWidth", Millimetres, p => p.DesignedWidth, (p, v) => p with { DesignedWidth = v }, ["designed width"]),
        PartField<Crankset>.Of("smallestRing", "teeth such as 34, or none with one ring", p => p.SmallestRing, (p, v) => p with { SmallestRing = v }, ["smallest ring", "smallest chainring"]),
        PartField<Crankset>.Of("crankLength", Millimetres, p => p.CrankLength, (p, v) => p with { CrankLength = v }, ["crank length", "arm length"]),
        PartField<Crankset>.Of("qFactor", Millimetres, p => p.QFactor, (p, v) => p with { QFactor = v }, ["q factor", "Q"]),
        PartField<Crankset>.Of("toeClearance", Millimetres, p => p.ToeClearance, (p, v) => p with { ToeRoom = v }, ["toe room"]));

    public static PartForm<Pedals> Pedals { get; } = new("pedals", () => new Pedals(),
        PartField<Pedals>.Of("thread", "a thread such as 9/16", p => p.Thread, (p, v) => p with { Thread = v }, [], bare: true),
        PartField<Pedals>.Of("sides", "pair, two-left or two-right", p => p.Sides, (p, v) => p with { Sides = v }, []),
        PartField<Pedals>.Of("height", Millimetres, p => p.Height, (p, v) => p with { Height = v }, ["body height"]),
        PartField<Pedals>.Of("reach", Millimetres, p => p.Reach, (p, v) => p with { Reach = v }, ["outer edge"]),
        PartField<Pedals>.Of("groundHeight", Millimetres, p => p.GroundHeight, (p, v) => p with { GroundHeight = v }, ["ground height", "height above ground"]));

    public static PartForm<Chain> Chain { get; } = new("chain", () => new Chain(),
        PartField<Chain>.Of("size", "speeds such as 11, or 1/8", p => p.Size, (p, v) => p with { Size = v }, ["speeds"], bare: true),
        PartField<Chain>.Of("over24Pitches", Millimetres, p => p.Over24Pitches, (p, v) => p with { Over24Pitches = v }, ["over 24 pitches"]),
        Pitches<Chain>("pitches", "a whole number of pitches such as 114", p => p.Length, (p, v) => p with { Length = v }, ["links"]));

    public static PartForm<RearDerailleur> RearDerailleur { get; } = new("rear derailleur", () => new RearDerailleur(),
        PartField<RearDerailleur>.Of("mount", "M10-bolt, direct-mount or hangerless", p => p.Mount, (p, v) => p with { Mount = v }, [], bare: true),
        PartField<RearDerailleur>.Of("chain", "speeds such as 11", p => p.Chain, (p, v) => p with { Chain = v }, ["speeds"], bare: true),
        PartField<RearDerailleur>.Of("signal", "cable, wired, wireless or hydraulic", p => p.Signal, (p, v) => p with { Signal = v }, [], bare: true),
        PartField<RearDerailleur>.Of("actuation", "a family such as R, M11 or LG, or none of the listed ones", p => p.Actuation, (p, v) => p with { Actuation = v }, ["pull"]),
        PartField<RearDerailleur>.Of("capacity", "teeth such as 39", p => p.Capacity, (p, v) => p with { Capacity = v }, ["total capacity"]),
        PartField<RearDerailleur>.Of("largestSprocket", "teeth such as 34", p => p.LargestSprocket, (p, v) => p with { LargestSprocket = v }, ["largest sprocket"]),
        PartField<RearDerailleur>.Of("smallestSprocket", "teeth such as 11", p => p.SmallestSprocket, (p, v) => p with { SmallestSprocket = v }, ["smallest sprocket"]),
        Pitches<RearDerailleur>("chainAllowance", "a whole number of pitches such as 2", p => p.ChainAllowance, (p, v) => p with { ChainAllowance = v }, ["chain allowance"]));

    private static PartField<BottomBracket> ForShell => Custom<BottomBracket>("shell", "the shell it is made for, such as BSA 68, or BSA 68-73", ["family", "narrowestShell", "widestShell"], (BottomBracket part, string text, out string reason) =>
        BracketShellText.TryRead(text, out Known<BottomBrackets.ShellFamily> family, out Known<Dimension> narrowest, out Known<Dimension> widest, out reason)
            ? part with { Family = family, NarrowestShell = narrowest, WidestShell = widest }
            : null, bare: true);

    private static (string Field, string Reason, string Expected)? TurnedRange(BottomBracket bracket) =>
        bracket.NarrowestShell.State == KnownState.Value && bracket.WidestShell.State == KnownState.Value && bracket.NarrowestShell.Value.FitCode > bracket.WidestShell.Value.FitCode
            ? ("widestShell", "it is narrower than the narrowest shell", "at least the narrowest shell")
            : null;
}
