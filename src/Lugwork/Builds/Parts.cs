using System.Collections.Immutable;
using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;

namespace Lugwork;

/// <summary>A bare frame.</summary>
public sealed record Frame : Part
{
    /// <summary>What kind of bicycle it becomes; unknown counts as a geared bicycle with disc brakes.</summary>
    public Known<BicycleKind> Kind { get; init; }

    /// <summary>What the rear triangle is made of.</summary>
    public Known<FrameMaterial> Material { get; init; }

    /// <summary>The rear end.</summary>
    public Known<HubStandard> RearEnd { get; init; }

    /// <summary>Bore of the seat tube, named by the post that it takes.</summary>
    public Known<SeatTubeBore> SeatTubeBore { get; init; }

    /// <summary>The frame maker's least insertion of the post; none where the maker prints none.</summary>
    public Known<Dimension> LeastInsertion { get; init; }

    /// <summary>How deep the seat tube is open for a post; none where nothing limits it.</summary>
    public Known<Dimension> MostInsertion { get; init; }

    /// <summary>Mount of the rear disc caliper; none for a frame without one.</summary>
    public Known<BrakeMount> RearBrakeMount { get; init; }

    /// <summary>Largest rear rotor by the frame maker.</summary>
    public Known<Dimension> LargestRearRotor { get; init; }

    /// <summary>Thread of the rear thru-axle; none for an end with open slots.</summary>
    public Known<AxleThread> RearAxleThread { get; init; }

    /// <summary>Upper end of the head tube.</summary>
    public Known<HeadTubeBore> HeadTubeUpper { get; init; }

    /// <summary>Lower end of the head tube.</summary>
    public Known<HeadTubeBore> HeadTubeLower { get; init; }

    /// <summary>The bottom bracket shell: thread or bore, and width.</summary>
    public Known<Shell> Shell { get; init; }

    /// <summary>Outside diameter of the seat tube where the collar goes; none for a frame with a binder of its own.</summary>
    public Known<SeatClampSize> SeatTubeOutside { get; init; }

    /// <summary>Where the rear derailleur hangs.</summary>
    public Known<Hanger> Hanger { get; init; }

    /// <summary>Whether the rear triangle opens for a belt; does not matter with a chain.</summary>
    public Known<RearTriangle> RearTriangle { get; init; }

    /// <summary>The largest rear tyre that the frame maker allows.</summary>
    public Known<TyreSize> LargestRearTyre { get; init; }

    /// <summary>Where a front derailleur goes: a band stands for a plain round tube of that outside; none for a frame without a place for one.</summary>
    public Known<FrontDerailleurMount> FrontMount { get; init; }

    /// <summary>Tabs for a chain guide; none for a frame without.</summary>
    public Known<ChainGuideMount> GuideTabs { get; init; }

    /// <summary>Teeth of the largest ring that the frame maker allows; none where the maker prints none.</summary>
    public Known<ToothCount> LargestRing { get; init; }

    /// <summary>The shock that it is made for; none for a frame without rear suspension.</summary>
    public Known<ShockSize> Shock { get; init; }

    /// <summary>Width and bolt at the lower end of the shock: the end with an eyelet on every shock.</summary>
    public Known<ShockHardware> LowerShockHardware { get; init; }

    /// <summary>Width and bolt at the upper end of the shock; none for a trunnion.</summary>
    public Known<ShockHardware> UpperShockHardware { get; init; }

    /// <summary>Longest fork, axle to crown, by the frame maker; none where the maker prints none.</summary>
    public Known<Dimension> LongestFork { get; init; }

    /// <summary>Most travel of a fork by the frame maker; none where the maker prints none.</summary>
    public Known<Dimension> MostForkTravel { get; init; }

    /// <summary>The crowns that the frame maker allows on a fork.</summary>
    public Known<CrownType> ForkCrowns { get; init; }

    /// <inheritdoc/>
    public override ImmutableArray<Slot> Places => [Slot.Frame];

    /// <summary>Reads the short form: "rear 12x142; seat tube 27.2; rear brake IS".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Frame Read(string text) => PartForms.Frame.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Frame part, out ImmutableArray<SpecProblem> problems) => PartForms.Frame.TryRead(text, out part, out problems);
}

/// <summary>A fork.</summary>
public sealed record Fork : Part
{
    /// <summary>The fork end.</summary>
    public Known<HubStandard> FrontEnd { get; init; }

    /// <summary>Mount of the front disc caliper; none for a fork without one.</summary>
    public Known<BrakeMount> FrontBrakeMount { get; init; }

    /// <summary>Largest front rotor by the fork maker.</summary>
    public Known<Dimension> LargestFrontRotor { get; init; }

    /// <summary>The steerer at its top.</summary>
    public Known<SteererSize> Steerer { get; init; }

    /// <summary>Threaded or threadless.</summary>
    public Known<SteererKind> SteererKind { get; init; }

    /// <summary>The seat of the crown race.</summary>
    public Known<CrownSeat> CrownSeat { get; init; }

    /// <summary>Thread of the front thru-axle; none for ends with open slots.</summary>
    public Known<AxleThread> FrontAxleThread { get; init; }

    /// <summary>The largest front tyre that the fork maker allows.</summary>
    public Known<TyreSize> LargestFrontTyre { get; init; }

    /// <summary>From the middle of the axle to the seat of the crown race, without load.</summary>
    public Known<Dimension> AxleToCrown { get; init; }

    /// <summary>Travel; none for a rigid fork.</summary>
    public Known<Dimension> Travel { get; init; }

    /// <summary>Its crowns; a rigid fork has one.</summary>
    public Known<CrownType> Crowns { get; init; }

    /// <summary>What the joints read: a fork that is known to be rigid has one crown.</summary>
    internal Known<CrownType> CrownsOrRigid => Crowns.State == KnownState.Unknown && Travel.State == KnownState.None ? OneCrown : Crowns;

    private static Known<CrownType> OneCrown { get; } = Known<CrownType>.Of(CrownType.Single, new Evidence(EvidenceKind.Assumed, "rigid fork"));

    /// <inheritdoc/>
    public override ImmutableArray<Slot> Places => [Slot.Fork];

    /// <summary>Reads the short form: "front 12x100; brake IS; largest rotor 180".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Fork Read(string text) => PartForms.Fork.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Fork part, out ImmutableArray<SpecProblem> problems) => PartForms.Fork.TryRead(text, out part, out problems);
}

/// <summary>A wheel: hub and rim.</summary>
public sealed record Wheel : Part
{
    /// <summary>The hub's standard.</summary>
    public Known<HubStandard> Hub { get; init; }

    /// <summary>Whether the hub's ends can be changed.</summary>
    public Known<HubEnds> Ends { get; init; }

    /// <summary>The freehub body or thread; none for a front wheel.</summary>
    public Known<FreehubBody> Body { get; init; }

    /// <summary>How a rotor is fixed; none for a hub without.</summary>
    public Known<RotorFixing> RotorFixing { get; init; }

    /// <summary>The rim's bead seat.</summary>
    public Known<BeadSeat> BeadSeat { get; init; }

    /// <summary>The rim's inner width between the flanges.</summary>
    public Known<Dimension> InnerWidth { get; init; }

    /// <summary>How the rim holds the bead.</summary>
    public Known<RimType> RimType { get; init; }

    /// <summary>Thread of a rear hub for a screwed freewheel or a fixed sprocket; does not matter with splines.</summary>
    public Known<FreewheelThread> Thread { get; init; }

    /// <summary>What the joints read: a hub whose body is known to have splines has no thread.</summary>
    internal Known<FreewheelThread> ThreadOrBody =>
        Thread.State == KnownState.Unknown && Body.State == KnownState.Value && !ThreadOnHub.IsThreaded(Body.Value.FitCode) ? Known<FreewheelThread>.None : Thread;

    /// <inheritdoc/>
    public override ImmutableArray<Slot> Places => [Slot.FrontWheel, Slot.RearWheel];

    /// <summary>Reads the short form: "rear 10x135, HG, six-bolt".</summary>
    /// <param name="text">"key value" pieces with semicolons, or commas and blanks, between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Wheel Read(string text) => PartForms.Wheel.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Wheel part, out ImmutableArray<SpecProblem> problems) => PartForms.Wheel.TryRead(text, out part, out problems);
}

/// <summary>A tyre.</summary>
public sealed record Tyre : Part
{
    /// <summary>The ISO size.</summary>
    public Known<TyreSize> Size { get; init; }

    /// <summary>What its edge is made for.</summary>
    public Known<TyreBead> Bead { get; init; }

    /// <inheritdoc/>
    public override ImmutableArray<Slot> Places => [Slot.FrontTyre, Slot.RearTyre];

    /// <summary>Reads the short form: "37-622; bead folding".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Tyre Read(string text) => PartForms.Tyre.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Tyre part, out ImmutableArray<SpecProblem> problems) => PartForms.Tyre.TryRead(text, out part, out problems);
}

/// <summary>A cassette or freewheel.</summary>
public sealed record Cassette : Part
{
    /// <summary>What it is cut for.</summary>
    public Known<CassettePattern> Pattern { get; init; }

    /// <summary>The speeds that its sprockets are spaced for; where unknown, what its pattern says.</summary>
    public Known<SprocketClass> Sprockets { get; init; }

    /// <summary>Thread of a screwed freewheel or fixed sprocket; does not matter with splines.</summary>
    public Known<FreewheelThread> Thread { get; init; }

    /// <summary>What the joints read: sprockets whose pattern is known to have splines have no thread.</summary>
    internal Known<FreewheelThread> ThreadOrPattern =>
        Thread.State == KnownState.Unknown && Pattern.State == KnownState.Value && !ThreadOnHub.IsScrewed(Pattern.Value.FitCode) ? Known<FreewheelThread>.None : Thread;

    /// <summary>How its sprockets stand beside each other; where unknown, what its pattern says.</summary>
    public Known<SprocketSpacing> Spacing { get; init; }

    /// <summary>What the joints read: the closer of the two. Where they contradict each other, both.</summary>
    internal Known<SprocketSpacing> SpacingOrPattern => CassetteSpacing.Of(Pattern, Spacing);

    /// <summary>What the joints read: the closer of the two. Where they contradict each other, both: neither is to be believed alone.</summary>
    internal Known<SprocketClass> SprocketsOrPattern =>
        Contradicts ? Known<SprocketClass>.OneOf([.. CassetteSpeeds.Of(Pattern).Values, .. Sprockets.Values], Sprockets.Evidence)
        : Sprockets.State != KnownState.Unknown ? Sprockets
        : Pattern.State.IsOutside() ? Known<SprocketClass>.Outside(Pattern.State, Pattern.Evidence!, Pattern.Family)
        : CassetteSpeeds.Of(Pattern);

    /// <summary>The pattern; where the sprockets contradict it, the patterns of those sprockets beside it.</summary>
    internal Known<CassettePattern> PatternOrSprockets =>
        Contradicts ? Known<CassettePattern>.OneOf([.. Pattern.Values, .. CassetteSpeeds.With(Sprockets.Values)], Pattern.Evidence) : Pattern;

    /// <summary>Sprockets are stated that the pattern is not made with.</summary>
    internal bool Contradicts =>
        Sprockets.Values is { IsEmpty: false } sprockets && CassetteSpeeds.Of(Pattern).Values is { IsEmpty: false } made && !sprockets.All(made.Contains);

    /// <inheritdoc/>
    public override ImmutableArray<Slot> Places => [Slot.Cassette];

    /// <summary>Reads the short form: "9-speed HG".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Cassette Read(string text) => PartForms.Cassette.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Cassette part, out ImmutableArray<SpecProblem> problems) => PartForms.Cassette.TryRead(text, out part, out problems);
}

/// <summary>A disc rotor.</summary>
public sealed record Rotor : Part
{
    /// <summary>Its diameter.</summary>
    public Known<RotorSize> Size { get; init; }

    /// <summary>How it is fixed.</summary>
    public Known<RotorFixing> Fixing { get; init; }

    /// <inheritdoc/>
    public override ImmutableArray<Slot> Places => [Slot.FrontRotor, Slot.RearRotor];

    /// <summary>Reads the short form: "160; six-bolt".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Rotor Read(string text) => PartForms.Rotor.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Rotor part, out ImmutableArray<SpecProblem> problems) => PartForms.Rotor.TryRead(text, out part, out problems);
}

/// <summary>A disc brake caliper.</summary>
public sealed record Caliper : Part
{
    /// <summary>How it is held.</summary>
    public Known<CaliperFoot> Mounting { get; init; }

    /// <inheritdoc/>
    public override ImmutableArray<Slot> Places => [Slot.FrontBrake, Slot.RearBrake];

    /// <summary>Reads the short form: "post mount".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Caliper Read(string text) => PartForms.Caliper.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Caliper part, out ImmutableArray<SpecProblem> problems) => PartForms.Caliper.TryRead(text, out part, out problems);
}

/// <summary>A seatpost.</summary>
public sealed record Seatpost : Part
{
    /// <summary>Outside diameter.</summary>
    public Known<SeatpostDiameter> Diameter { get; init; }

    /// <summary>Overall length; kept for cut lengths and saddle height.</summary>
    public Known<Dimension> Length { get; init; }

    /// <summary>Insertion that the post's own mark asks for, from its lower end.</summary>
    public Known<Dimension> Mark { get; init; }

    /// <summary>What its head holds.</summary>
    public Known<RailClamp> RailClamp { get; init; }

    /// <summary>How deep it sits, or will sit, at the rider's saddle height.</summary>
    public Known<Dimension> Insertion { get; init; }

    /// <inheritdoc/>
    public override ImmutableArray<Slot> Places => [Slot.Seatpost];

    /// <summary>Reads the short form: "26.8 x 350; mark 75; insertion 110".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Seatpost Read(string text) => PartForms.Seatpost.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Seatpost part, out ImmutableArray<SpecProblem> problems) => PartForms.Seatpost.TryRead(text, out part, out problems);
}
