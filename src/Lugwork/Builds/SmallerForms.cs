namespace Lugwork;

/// <summary>Forms of tubes, valves, tapes, headset pieces, controls, grips, adapters and droppers.</summary>
internal static partial class PartForms
{
    private const string BearingSizes = "a bearing such as 30.15x41x6.5-36/45";

    public static PartForm<InnerTube> InnerTube { get; } = new("inner tube", () => new InnerTube(),
        PartField<InnerTube>.Of("seat", "the ISO diameter, such as 622", p => p.Seat, (p, v) => p with { Seat = v }, ["bead seat"], bare: true),
        PartField<InnerTube>.Of("otherSeat", "another ISO diameter, such as 635, or none", p => p.OtherSeat, (p, v) => p with { OtherSeat = v }, ["other seat"]),
        PartField<InnerTube>.Of("narrowestTyre", Millimetres, p => p.NarrowestTyre, (p, v) => p with { NarrowestTyre = v }, ["narrowest tyre", "tyres from"]),
        PartField<InnerTube>.Of("widestTyre", Millimetres, p => p.WidestTyre, (p, v) => p with { WidestTyre = v }, ["widest tyre", "tyres to"]),
        PartField<InnerTube>.Of("valve", "Presta, Schrader or Dunlop", p => p.Valve, (p, v) => p with { Valve = v }, [], bare: true),
        PartField<InnerTube>.Of("valveLength", Millimetres, p => p.ValveLength, (p, v) => p with { ValveLength = v }, ["valve length"]))
        {
            Contradiction = TurnedTyres,
        };

    public static PartForm<TubelessValve> TubelessValve { get; } = new("tubeless valve", () => new TubelessValve(),
        PartField<TubelessValve>.Of("valve", "Presta, Schrader or Dunlop", p => p.Valve, (p, v) => p with { Valve = v }, [], bare: true),
        PartField<TubelessValve>.Of("length", Millimetres, p => p.Length, (p, v) => p with { Length = v }, []));

    public static PartForm<RimTape> RimTape { get; } = new("rim tape", () => new RimTape(),
        PartField<RimTape>.Of("width", Millimetres, p => p.Width, (p, v) => p with { Width = v }, [], bare: true));

    public static PartForm<HeadsetCartridge> HeadsetCartridge { get; } = new("headset bearing", () => new HeadsetCartridge(),
        PartField<HeadsetCartridge>.Of("size", BearingSizes, p => p.Size, (p, v) => p with { Size = v }, [], bare: true));

    public static PartForm<HeadsetCover> HeadsetCover { get; } = new("headset cover", () => new HeadsetCover(),
        PartField<HeadsetCover>.Of("cables", "outside or through", p => p.Cables, (p, v) => p with { Cables = v }, [], bare: true));

    public static PartForm<Preload> Preload { get; } = new("preload", () => new Preload(),
        PartField<Preload>.Of("kind", "star-nut or expander", p => p.Kind, (p, v) => p with { Kind = v }, [], bare: true));

    public static PartForm<Controls> Controls { get; } = new("controls", () => new Controls(),
        PartField<Controls>.Of("clamp", "drop-bar-lever or flat-bar-control", p => p.Clamp, (p, v) => p with { Clamp = v }, [], bare: true));

    public static PartForm<Grips> Grips { get; } = new("grips", () => new Grips(),
        PartField<Grips>.Of("bore", "a diameter such as 22.2", p => p.Bore, (p, v) => p with { Bore = v }, [], bare: true));

    public static PartForm<ShellAdapter> ShellAdapter { get; } = new("bottom-bracket adapter", () => new ShellAdapter(),
        PartField<ShellAdapter>.Of("kind", "outboard or inside", p => p.Kind, (p, v) => p with { Kind = v }, [], bare: true));

    public static PartForm<Dropper> Dropper { get; } = new("dropper", () => new Dropper(),
        PartField<Dropper>.Of("routing", "internal, external or wireless", p => p.Routing, (p, v) => p with { Routing = v }, [], bare: true),
        PartField<Dropper>.Of("travel", Millimetres, p => p.Travel, (p, v) => p with { Travel = v }, ["drop"]),
        PartField<Dropper>.Of("stack", Millimetres, p => p.Stack, (p, v) => p with { Stack = v }, ["least rail height"]),
        PartField<Dropper>.Of("housingLength", Millimetres, p => p.HousingLength, (p, v) => p with { HousingLength = v }, ["housing length"]));

    private static (string Field, string Reason, string Expected)? TurnedTyres(InnerTube tube) =>
        tube.NarrowestTyre.State == KnownState.Value && tube.WidestTyre.State == KnownState.Value && tube.NarrowestTyre.Value.FitCode > tube.WidestTyre.Value.FitCode
            ? ("widestTyre", "it is narrower than the narrowest tyre", "at least the narrowest tyre")
            : null;

    private static IPartForm OfSmaller(Slot slot) =>
        slot == Slot.FrontInnerTube || slot == Slot.RearInnerTube ? InnerTube
        : slot == Slot.FrontTubelessValve || slot == Slot.RearTubelessValve ? TubelessValve
        : slot == Slot.FrontRimTape || slot == Slot.RearRimTape ? RimTape
        : slot == Slot.UpperBearing || slot == Slot.LowerBearing ? HeadsetCartridge
        : slot == Slot.HeadsetCover ? HeadsetCover
        : slot == Slot.Preload ? Preload
        : slot == Slot.Controls ? Controls
        : slot == Slot.Grips ? Grips
        : slot == Slot.ShellAdapter ? ShellAdapter
        : slot == Slot.Rider ? Rider
        : Dropper;
}
