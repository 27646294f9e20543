using System.Collections.Immutable;
using Lugwork.BottomBrackets;
using Lugwork.Drivetrain;
using Lugwork.Hubs;

namespace Lugwork;

/// <summary>A bottom bracket: cups or cartridge, with its bearings.</summary>
public sealed record BottomBracket : Part
{
    /// <summary>The thread or bore that it is made for.</summary>
    public Known<ShellFamily> Family { get; init; }

    /// <summary>Narrowest shell that it is made for.</summary>
    public Known<Dimension> NarrowestShell { get; init; }

    /// <summary>Widest shell that it is made for.</summary>
    public Known<Dimension> WidestShell { get; init; }

    /// <summary>The spindle that goes in it.</summary>
    public Known<SpindleSeat> Takes { get; init; }

    /// <summary>Thickness of the loose spacers under the drive-side cup, without the plate of a chain guide or front derailleur; none where the cup sits on the shell or on that plate.</summary>
    public Known<Dimension> DriveSpacer { get; init; }

    /// <summary>Width for which a spindle of ten splines is designated, not its length. Does not matter for another spindle.</summary>
    public Known<Dimension> DesignatedWidth { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.BottomBracket];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "BSA 68; takes 24".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static BottomBracket Read(string text) => PartForms.BottomBracket.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out BottomBracket part, out ImmutableArray<SpecProblem> problems) => PartForms.BottomBracket.TryRead(text, out part, out problems);
}

/// <summary>A crankset: arms, spindle and rings.</summary>
public sealed record Crankset : Part
{
    /// <summary>Its spindle, or the spindle that its arms go on.</summary>
    public Known<Spindle> Spindle { get; init; }

    /// <summary>What the arms are made of.</summary>
    public Known<Material> Material { get; init; }

    /// <summary>From the middle plane of the frame to the one ring, to the middle between two, or to the middle one of three, as it is mounted.</summary>
    public Known<Dimension> MeasuredChainline { get; init; }

    /// <summary>None where nobody measured it.</summary>
    internal Known<Dimension> RingLineOrNothing => MeasuredChainline.State == KnownState.Unknown ? Known<Dimension>.None : MeasuredChainline;

    /// <summary>Room measured on the bicycle: from the middle of the pedal's axle, crank forward, to the front tyre or its mudguard, with the wheel turned to where it comes nearest.</summary>
    public Known<Dimension> ToeClearance { get; init; }

    /// <summary>None where nobody measured it.</summary>
    internal Known<Dimension> ToeRoomOrNothing => ToeClearance.State == KnownState.Unknown ? Known<Dimension>.None : ToeClearance;

    /// <summary>What its line with one sprocket reads: where it was not measured, the range of a chainline for one ring.</summary>
    internal Known<Dimension> RingLineOrChainline =>
        MeasuredChainline.State == KnownState.Unknown && Chainline.State == KnownState.Value && Chainline.Value.MostRings == 1
            ? Known<Dimension>.Measured((Chainline.Value.Range.Least + Chainline.Value.Range.Most) / 2, (Chainline.Value.Range.Most - Chainline.Value.Range.Least) / 2, Chainline.Value.FitKey)
            : MeasuredChainline;

    /// <summary>Width of the shell that the crank is made for, by its maker.</summary>
    public Known<Dimension> ShellWidth { get; init; }

    /// <summary>Width of ten-spline spindle for which the crank is designed. Does not matter for another spindle.</summary>
    public Known<Dimension> DesignedWidth { get; init; }

    /// <summary>Thread of the pedal holes.</summary>
    public Known<PedalThread> PedalThread { get; init; }

    /// <summary>The speeds that its rings are made for.</summary>
    public Known<SprocketClass> Speeds { get; init; }

    /// <summary>Bolt circle of its spider; none for arms without one.</summary>
    public Known<BoltCircle> BoltCircle { get; init; }

    /// <summary>How a ring, or a spider, sits on the arm itself; none for arms with a fixed spider.</summary>
    public Known<DirectMountRing> DirectMount { get; init; }

    /// <summary>Teeth of its largest ring.</summary>
    public Known<ToothCount> LargestRing { get; init; }

    /// <summary>Its chainline, by the kind of crankset.</summary>
    public Known<FrontChainline> Chainline { get; init; }

    /// <summary>Teeth of the smallest ring; none with one ring.</summary>
    public Known<ToothCount> SmallestRing { get; init; }

    /// <summary>
    /// What the joints read: a chainline for one ring says that there is no smaller one, and of a crank that is stated without its largest there is none either, unless its chainline may be one of several rings:
    /// then a second one may go on beside the one that is there.
    /// </summary>
    internal Known<ToothCount> SmallestRingOrSingle =>
        SmallestRing.State == KnownState.Unknown && (LargestRing.State == KnownState.None ? !MayTakeSeveral : Chainline.State == KnownState.Value && Chainline.Value.MostRings == 1) ? Known<ToothCount>.None : SmallestRing;

    private bool MayTakeSeveral => Chainline.Values.Any(c => c.MostRings > 1);

    /// <summary>From the middle of the spindle to the middle of the pedal.</summary>
    public Known<Dimension> CrankLength { get; init; }

    /// <summary>From one outer face to the other, where the pedals go in.</summary>
    public Known<Dimension> QFactor { get; init; }

    /// <summary>When it was made. No joint reads it; <see cref="Build.ToInspect"/> tells it.</summary>
    public Known<DateMade> Made { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Crankset];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "spindle 24-road; pedals 9/16; rings 11".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Crankset Read(string text) => PartForms.Crankset.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Crankset part, out ImmutableArray<SpecProblem> problems) => PartForms.Crankset.TryRead(text, out part, out problems);
}

/// <summary>A pair of pedals.</summary>
public sealed record Pedals : Part
{
    /// <summary>Their thread.</summary>
    public Known<PedalThread> Thread { get; init; }

    /// <summary>Which sides they are for; a left and a right one, as pedals are sold, where nothing is said.</summary>
    public Known<PedalSides> Sides { get; init; }

    /// <summary>What the joints read.</summary>
    internal Known<PedalSides> SidesOrPair => Sides.State == KnownState.Unknown ? AsSold : Sides;

    private static Known<PedalSides> AsSold { get; } = Known<PedalSides>.Of(PedalSides.Pair, new Evidence(EvidenceKind.Assumed, "a pair as sold"));

    /// <summary>Height of the body.</summary>
    public Known<Dimension> Height { get; init; }

    /// <summary>From the face of the crank to the outer edge.</summary>
    public Known<Dimension> Reach { get; init; }

    /// <summary>Height of the lower outer edge above the ground, measured on the bicycle standing upright with the rider's tyres and pressure, the crank straight down.</summary>
    public Known<Dimension> GroundHeight { get; init; }

    /// <summary>None where nobody measured it.</summary>
    internal Known<Dimension> GroundHeightOrNothing => GroundHeight.State == KnownState.Unknown ? Known<Dimension>.None : GroundHeight;

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Pedals];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "9/16".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Pedals Read(string text) => PartForms.Pedals.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Pedals part, out ImmutableArray<SpecProblem> problems) => PartForms.Pedals.TryRead(text, out part, out problems);
}

/// <summary>A chain.</summary>
public sealed record Chain : Part
{
    /// <summary>What it is made for.</summary>
    public Known<ChainSize> Size { get; init; }

    /// <summary>From pin to pin over 24 pitches, under tension: 304.8 mm when new; asked for on a used chain only.</summary>
    public Known<Dimension> Over24Pitches { get; init; }

    /// <summary>Length laid straight, pin to pin: 12.7 mm for each pitch of its count.</summary>
    public Known<Dimension> Length { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Chain];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "11-speed".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Chain Read(string text) => PartForms.Chain.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Chain part, out ImmutableArray<SpecProblem> problems) => PartForms.Chain.TryRead(text, out part, out problems);
}

/// <summary>A rear derailleur.</summary>
public sealed record RearDerailleur : Part
{
    /// <summary>How it is held.</summary>
    public Known<DerailleurMount> Mount { get; init; }

    /// <summary>The chain that it is made for.</summary>
    public Known<ChainSize> Chain { get; init; }

    /// <summary>What moves it: cable, wire, radio or fluid.</summary>
    public Known<ShiftSignal> Signal { get; init; }

    /// <summary>Family of its ratio of travel to cable; none where it is none of the listed ones. Does not matter without a cable.</summary>
    public Known<ActuationFamily> Actuation { get; init; }

    /// <summary>Total capacity by its maker; none where the maker prints none.</summary>
    public Known<ToothCount> Capacity { get; init; }

    /// <summary>Largest sprocket that its maker allows; none where the maker prints none.</summary>
    public Known<ToothCount> LargestSprocket { get; init; }

    /// <summary>Smallest sprocket that its maker allows; none where the maker prints none.</summary>
    public Known<ToothCount> SmallestSprocket { get; init; }

    /// <summary>What its maker adds to the chain in big-big, 12.7 mm for each pitch; asked for only where another than the general two pitches is right.</summary>
    public Known<Dimension> ChainAllowance { get; init; }

    /// <summary>What the checks read: an allowance that nobody has looked up is the general one.</summary>
    internal Known<Dimension> AllowanceOrGeneral => ChainAllowance.State == KnownState.Unknown ? Known<Dimension>.None : ChainAllowance;

    private protected override ImmutableArray<Slot> GoesInto => [Slot.RearDerailleur];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "M10 bolt; chain 11".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static RearDerailleur Read(string text) => PartForms.RearDerailleur.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out RearDerailleur part, out ImmutableArray<SpecProblem> problems) => PartForms.RearDerailleur.TryRead(text, out part, out problems);
}
