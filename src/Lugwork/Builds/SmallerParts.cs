using System.Collections.Immutable;
using Lugwork.BottomBrackets;
using Lugwork.Cockpit;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork;

/// <summary>An inner tube.</summary>
public sealed record InnerTube : Part
{
    /// <summary>The bead seat of the tyres that it is made for.</summary>
    public Known<BeadSeat> Seat { get; init; }

    /// <summary>The other bead seat that it is made for; none where it names one only.</summary>
    public Known<BeadSeat> OtherSeat { get; init; }

    /// <summary>Narrowest tyre that it is made for.</summary>
    public Known<Dimension> NarrowestTyre { get; init; }

    /// <summary>Widest tyre that it is made for.</summary>
    public Known<Dimension> WidestTyre { get; init; }

    /// <summary>Its valve.</summary>
    public Known<ValveStem> Valve { get; init; }

    /// <summary>Length of the valve from its foot to its top.</summary>
    public Known<Dimension> ValveLength { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontInnerTube, Slot.RearInnerTube];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "622; other seat none; tyres from 28; tyres to 47; Presta; valve length 48".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static InnerTube Read(string text) => PartForms.InnerTube.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out InnerTube part, out ImmutableArray<SpecProblem> problems) => PartForms.InnerTube.TryRead(text, out part, out problems);
}

/// <summary>A valve for a rim without a tube.</summary>
public sealed record TubelessValve : Part
{
    /// <summary>Its kind.</summary>
    public Known<ValveStem> Valve { get; init; }

    /// <summary>Its length from the foot that seals to the top.</summary>
    public Known<Dimension> Length { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontTubelessValve, Slot.RearTubelessValve];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "Presta; length 44".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static TubelessValve Read(string text) => PartForms.TubelessValve.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out TubelessValve part, out ImmutableArray<SpecProblem> problems) => PartForms.TubelessValve.TryRead(text, out part, out problems);
}

/// <summary>A tape or strip in the bed of a rim.</summary>
public sealed record RimTape : Part
{
    /// <summary>Its width; none where the rim has no tape.</summary>
    public Known<Dimension> Width { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontRimTape, Slot.RearRimTape];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "width 21".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static RimTape Read(string text) => PartForms.RimTape.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out RimTape part, out ImmutableArray<SpecProblem> problems) => PartForms.RimTape.TryRead(text, out part, out problems);
}

/// <summary>A bearing of a headset, bought apart.</summary>
public sealed record HeadsetCartridge : Part
{
    /// <summary>Its four sizes.</summary>
    public Known<HeadsetBearing> Size { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.UpperBearing, Slot.LowerBearing];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "30.15x41x6.5 36/45".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static HeadsetCartridge Read(string text) => PartForms.HeadsetCartridge.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out HeadsetCartridge part, out ImmutableArray<SpecProblem> problems) => PartForms.HeadsetCartridge.TryRead(text, out part, out problems);
}

/// <summary>The cover of a headset with its centring ring and spacers, bought apart.</summary>
public sealed record HeadsetCover : Part
{
    /// <summary>Where cables run at it.</summary>
    public Known<CableWay> Cables { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.HeadsetCover];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "outside".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static HeadsetCover Read(string text) => PartForms.HeadsetCover.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out HeadsetCover part, out ImmutableArray<SpecProblem> problems) => PartForms.HeadsetCover.TryRead(text, out part, out problems);
}

/// <summary>Star nut or expander plug: what the top cap of a threadless headset pulls on inside the steerer.</summary>
public sealed record Preload : Part
{
    /// <summary>Star nut or expander.</summary>
    public Known<SteererPreload> Kind { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Preload];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "star nut".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Preload Read(string text) => PartForms.Preload.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Preload part, out ImmutableArray<SpecProblem> problems) => PartForms.Preload.TryRead(text, out part, out problems);
}

/// <summary>Brake levers and shifters on a bar.</summary>
public sealed record Controls : Part
{
    /// <summary>The bar that they clamp.</summary>
    public Known<ControlClamp> Clamp { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Controls];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "drop-bar lever".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Controls Read(string text) => PartForms.Controls.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Controls part, out ImmutableArray<SpecProblem> problems) => PartForms.Controls.TryRead(text, out part, out problems);
}

/// <summary>Grips for a bar.</summary>
public sealed record Grips : Part
{
    /// <summary>The bar that they are made for.</summary>
    public Known<GripDiameter> Bore { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Grips];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "22.2".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Grips Read(string text) => PartForms.Grips.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Grips part, out ImmutableArray<SpecProblem> problems) => PartForms.Grips.TryRead(text, out part, out problems);
}

/// <summary>An adapter between bottom bracket and shell.</summary>
public sealed record ShellAdapter : Part
{
    /// <summary>Where it bears.</summary>
    public Known<ShellAdapterKind> Kind { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.ShellAdapter];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "outboard".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static ShellAdapter Read(string text) => PartForms.ShellAdapter.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out ShellAdapter part, out ImmutableArray<SpecProblem> problems) => PartForms.ShellAdapter.TryRead(text, out part, out problems);
}

/// <summary>What makes a seatpost a dropper: its mechanism, and the line to its lever. The post itself, which is one article with it, goes into <see cref="Slot.Seatpost"/> too: diameter, length and clamp of the rails stand there.</summary>
public sealed record Dropper : Part
{
    /// <summary>How it is worked from the bar.</summary>
    public Known<DropperRouting> Routing { get; init; }

    /// <summary>How far it goes down.</summary>
    public Known<Dimension> Travel { get; init; }

    /// <summary>From the lip above the collar to the middle of the rails, fully down.</summary>
    public Known<Dimension> Stack { get; init; }

    /// <summary>Housing or hose from its lever to the dropper, all pieces together; no joint reads it.</summary>
    public Known<Dimension> HousingLength { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Dropper];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "internal".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Dropper Read(string text) => PartForms.Dropper.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Dropper part, out ImmutableArray<SpecProblem> problems) => PartForms.Dropper.TryRead(text, out part, out problems);
}
