using System.Collections.Immutable;
using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Cockpit;
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
    public Known<Material> Material { get; init; }

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

    /// <summary>The thread of the rear end; a universal hanger brings its own, M12 x 1.0, where no other is stated.</summary>
    internal Known<AxleThread> ThreadOfRearEnd =>
        RearAxleThread.State == KnownState.Unknown && Hanger.State == KnownState.Value && Hanger.Value == Drivetrain.Hanger.Universal
            ? Known<AxleThread>.Of(AxleThread.M12Pitch1, Hanger.Evidence)
            : RearAxleThread;

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

    /// <summary>Bosses for a rear rim brake; none for a frame without.</summary>
    public Known<BrakeBoss> RearBosses { get; init; }

    /// <summary>The two bosses from middle to middle; none where there are no bosses.</summary>
    public Known<Dimension> RearBossSpacing { get; init; }

    /// <summary>The hole of the bridge for a rear rim brake, by the bolt that it takes; none where the bridge is not drilled.</summary>
    public Known<BrakeBolt> RearBrakeHole { get; init; }

    /// <summary>From the middle of the brake hole straight down to the middle of the rim's track; none where there is no hole.</summary>
    public Known<Dimension> RearBoltToRim { get; init; }

    /// <summary>Bead seat of the wheel with which <see cref="RearBoltToRim"/> was read.</summary>
    public Known<BeadSeat> RearBoltToRimOf { get; init; }

    /// <summary>Thickness of the left chain stay where the bolts of a flat mount go through; none for another mount.</summary>
    public Known<Dimension> RearStayThickness { get; init; }

    /// <summary>Length under the head of the thru-axle that the frame maker names; none for an end with open slots.</summary>
    public Known<Dimension> RearAxleLength { get; init; }

    /// <summary>How the open slots of the rear end run; none for closed ends.</summary>
    public Known<DropoutSlot> RearDropout { get; init; }
    /// <summary>Where a front derailleur goes: a band stands for a plain round tube of that outside; none for a frame without a place for one.</summary>
    public Known<FrontDerailleurMount> FrontDerailleurMount { get; init; }

    /// <summary>Tabs for a chain guide; none for a frame without.</summary>
    public Known<ChainGuideMount> ChainGuideTabs { get; init; }

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
    /// <summary>How deep the upper bore of the head tube is; none where it goes through.</summary>
    public Known<Dimension> UpperBoreDepth { get; init; }

    /// <summary>How deep the lower bore of the head tube is; none where it goes through.</summary>
    public Known<Dimension> LowerBoreDepth { get; init; }

    /// <summary>Where cables and hoses run at the headset.</summary>
    public Known<CableWay> HeadsetCables { get; init; }

    /// <summary>Bore of a pressed shell as it was measured; does not matter in a threaded one.</summary>
    public Known<Dimension> ShellBore { get; init; }

    /// <summary>What the ends of the shell offer an adapter.</summary>
    public Known<ShellFace> ShellFace { get; init; }

    /// <summary>What holds the seatpost: a collar of its own or ears of the tube. A stated outside of the seat tube means a collar.</summary>
    public Known<SeatBinder> Binder { get; init; }

    /// <summary>Whether the cable of a dropper comes in.</summary>
    public Known<DropperEntry> DropperEntry { get; init; }

    /// <summary>The binder as stated, or the collar that a stated outside of the seat tube is there for.</summary>
    internal Known<SeatBinder> BinderOrCollar =>
        Binder.State == KnownState.Unknown && SeatTubeOutside.State is KnownState.Value or KnownState.OneOf ? Known<SeatBinder>.Of(SeatBinder.Collar, SeatTubeOutside.Evidence) : Binder;

    /// <summary>The most that rider and luggage may weigh by its maker; none where the maker prints no figure, which is unknown, not unlimited.</summary>
    public Known<Load> LoadLimit { get; init; }

    /// <summary>The most that rider, luggage and bicycle may weigh by its maker; none where the maker prints no figure.</summary>
    public Known<Load> SystemLimit { get; init; }

    /// <summary>The riding that its maker allows; none where the maker names no category, which is unknown, not unlimited.</summary>
    public Known<UseCategory> Use { get; init; }

    /// <summary>From the middle of the bottom bracket to the middle of the rear axle, straight; with rear suspension where it is longest.</summary>
    public Known<Dimension> Chainstay { get; init; }

    /// <summary>From face to face of the head tube.</summary>
    public Known<Dimension> HeadTubeLength { get; init; }

    /// <summary>From the middle of the bottom bracket along the seat tube to the top of the collar.</summary>
    public Known<Dimension> SeatTubeLength { get; init; }

    /// <summary>From the middle of the bottom bracket to the middle of the front axle, straight, with the fork that is in it.</summary>
    public Known<Dimension> FrontCentre { get; init; }

    /// <summary>How far the middle of the bottom bracket lies below the line of the axles; none where it lies on it.</summary>
    public Known<Dimension> BottomBracketDrop { get; init; }

    /// <summary>Height of the top tube above the ground where the rider stands over it.</summary>
    public Known<Dimension> Standover { get; init; }

    /// <summary>Bead seat of the front wheel that the frame is designed for; asked for only where the two wheels differ.</summary>
    public Known<BeadSeat> DesignFrontBeadSeat { get; init; }

    /// <summary>What the joints read: a design that nobody has looked up says nothing.</summary>
    internal Known<BeadSeat> FrontWheelOfOrNothing => DesignFrontBeadSeat.State == KnownState.Unknown ? Known<BeadSeat>.None : DesignFrontBeadSeat;

    /// <summary>Bead seat of the rear wheel that the frame is designed for; asked for only where the two wheels differ.</summary>
    public Known<BeadSeat> DesignRearBeadSeat { get; init; }

    /// <summary>What the joints read: a design that nobody has looked up says nothing.</summary>
    internal Known<BeadSeat> RearWheelOfOrNothing => DesignRearBeadSeat.State == KnownState.Unknown ? Known<BeadSeat>.None : DesignRearBeadSeat;

    /// <summary>Shortest fork, axle to crown, by the frame maker; none where the maker prints none.</summary>
    public Known<Dimension> ShortestFork { get; init; }

    /// <summary>Axle to crown, without load, of the fork with which head angle and wheelbase of the chart are printed.</summary>
    public Known<Dimension> DesignAxleToCrown { get; init; }

    /// <summary>Angle of the head tube to the ground by the chart, 30 to 110 degrees.</summary>
    public Known<FrameAngle> HeadAngle { get; init; }

    /// <summary>From axle to axle, level, by the chart.</summary>
    public Known<Dimension> Wheelbase { get; init; }

    /// <summary>The slackest head angle that the frame maker allows; none where the maker prints none, which is unknown, not unlimited.</summary>
    public Known<FrameAngle> SlackestHeadAngle { get; init; }

    /// <summary>The steepest head angle that the frame maker allows; none where the maker prints none.</summary>
    public Known<FrameAngle> SteepestHeadAngle { get; init; }

    /// <summary>The smallest outer ring that the tab of the front derailleur is made for; none where its maker prints none.</summary>
    public Known<ToothCount> SmallestOuterRing { get; init; }

    /// <summary>How far the down tube hangs below the lower face of the head tube, as far out as the crown of the fork swings; none where it stays above.</summary>
    public Known<Dimension> DownTubeDrop { get; init; }

    /// <summary>The side on which the rear hose or housing goes into the frame.</summary>
    public Known<Hand> RearHoseSide { get; init; }

    /// <summary>What it carries along its tubes for cables and hoses; none where it carries nothing. No joint reads it; the list of small parts does.</summary>
    public Known<CableGuide> CableGuides { get; init; }

    /// <summary>When it was made. No joint reads it; <see cref="Build.ToInspect"/> tells it.</summary>
    public Known<DateMade> Made { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Frame];

    private protected override string Told() => PartText.Written(this);

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

    /// <summary>How far knobs on the crown stand above the seat of the crown race; none where nothing does.</summary>
    public Known<Dimension> KnobRise { get; init; }

    /// <summary>What blades and crown are made of.</summary>
    public Known<Material> Material { get; init; }

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

    /// <summary>Bosses for a front rim brake; none for a fork without.</summary>
    public Known<BrakeBoss> FrontBosses { get; init; }

    /// <summary>The two bosses from middle to middle; none where there are no bosses.</summary>
    public Known<Dimension> FrontBossSpacing { get; init; }

    /// <summary>The hole of the crown for a front rim brake, by the bolt that it takes; none where the crown is not drilled.</summary>
    public Known<BrakeBolt> FrontBrakeHole { get; init; }

    /// <summary>From the middle of the brake hole straight down to the middle of the rim's track; none where there is no hole.</summary>
    public Known<Dimension> FrontBoltToRim { get; init; }

    /// <summary>Bead seat of the wheel with which <see cref="FrontBoltToRim"/> was read.</summary>
    public Known<BeadSeat> FrontBoltToRimOf { get; init; }

    /// <summary>Length under the head of the thru-axle that the fork maker names; none for ends with open slots.</summary>
    public Known<Dimension> FrontAxleLength { get; init; }

    /// <summary>Lips that keep the wheel in open ends; none means missing. Does not matter with closed ends.</summary>
    public Known<RetentionLips> FrontLips { get; init; }

    /// <summary>From the middle of the axle to the seat of the crown race, without load.</summary>
    public Known<Dimension> AxleToCrown { get; init; }

    /// <summary>Travel; none for a rigid fork.</summary>
    public Known<Dimension> Travel { get; init; }

    /// <summary>Its crowns; a rigid fork has one.</summary>
    public Known<CrownType> Crowns { get; init; }

    /// <summary>
    /// From this travel on a fork of which nobody says how many crowns it has may have two. Our own bound, from memory, no source: forks with two crowns were made from about 100 mm of travel on; below 80 mm none
    /// is known.
    /// </summary>
    private const long MayHaveTwoCrowns = 80 * Nanometres.PerMillimetre;

    /// <summary>What the joints read: a fork that is known to be rigid has one crown.</summary>
    internal Known<CrownType> CrownsOrRigid => Crowns.State == KnownState.Unknown && Travel.State == KnownState.None ? OneCrown : Crowns;

    /// <summary>
    /// What is reckoned and planned by: a fork that is known to have less travel than any with two crowns has one, and so has one whose crown is drilled for the recessed nut of a road caliper
    /// (common practice, no source). Of any other nothing is taken for granted.
    /// </summary>
    internal Known<CrownType> CrownsByTravel =>
        CrownsOrRigid.State == KnownState.Unknown && (HasTravelOfOneCrown || (FrontBrakeHole.State == KnownState.Value && FrontBrakeHole.Value.IsRecessed)) ? OneBySigns : CrownsOrRigid;

    private bool HasTravelOfOneCrown => Travel.State is KnownState.Value or KnownState.Measured or KnownState.OneOf && Travel.ToCandidates().High < MayHaveTwoCrowns;

    private static Known<CrownType> OneCrown { get; } = Known<CrownType>.Of(CrownType.Single, new Evidence(EvidenceKind.Assumed, "rigid fork"));

    private static Known<CrownType> OneBySigns { get; } = Known<CrownType>.Of(CrownType.Single, new Evidence(EvidenceKind.Assumed, "a fork by whose travel or brake hole there is one"));

    /// <summary>What the steerer is made of at its top.</summary>
    public Known<Material> SteererMaterial { get; init; }

    /// <summary>The most that rider and luggage may weigh by its maker; none where the maker prints no figure, which is unknown, not unlimited.</summary>
    public Known<Load> LoadLimit { get; init; }

    /// <summary>The most that rider, luggage and bicycle may weigh by its maker; none where the maker prints no figure.</summary>
    public Known<Load> SystemLimit { get; init; }

    /// <summary>The riding that its maker allows; none where the maker names no category, which is unknown, not unlimited.</summary>
    public Known<UseCategory> Use { get; init; }

    /// <summary>From the seat of the crown race to the top of a threadless steerer, as it is cut.</summary>
    public Known<Dimension> SteererLength { get; init; }

    /// <summary>Most height of spacers below the stem by the fork maker; none where the maker prints none.</summary>
    public Known<Dimension> MostSpacers { get; init; }

    /// <summary>When it was made. No joint reads it; <see cref="Build.ToInspect"/> tells it.</summary>
    public Known<DateMade> Made { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Fork];

    private protected override string Told() => PartText.Written(this);

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

    /// <summary>What the rim is made of.</summary>
    public Known<Material> RimMaterial { get; init; }

    /// <summary>Wall of the rim at the thinnest place of a brake track; asked for on a used rim only.</summary>
    public Known<Dimension> RimWall { get; init; }

    /// <summary>From the middle plane of the frame to the middle of the one sprocket; not asked for with several.</summary>
    public Known<Dimension> SprocketChainline { get; init; }

    /// <summary>From the middle plane of the frame to the middle between the smallest and the largest sprocket of the cassette that is on it, as measured.</summary>
    public Known<Dimension> CassetteChainline { get; init; }

    /// <summary>None where nobody measured it.</summary>
    internal Known<Dimension> CassetteLineOrNothing => CassetteChainline.State == KnownState.Unknown ? Known<Dimension>.None : CassetteChainline;

    /// <summary>Whether the hub's ends can be changed.</summary>
    public Known<HubEnds> Ends { get; init; }

    /// <summary>The freehub body or thread; none for a front wheel.</summary>
    public Known<FreehubBody> FreehubBody { get; init; }

    /// <summary>How a rotor is fixed; none for a hub without.</summary>
    public Known<RotorFixing> RotorFixing { get; init; }

    /// <summary>The rim's bead seat.</summary>
    public Known<BeadSeat> BeadSeat { get; init; }

    /// <summary>The rim's inner width between the flanges.</summary>
    public Known<Dimension> InnerWidth { get; init; }

    /// <summary>How the rim holds the bead.</summary>
    public Known<RimType> RimType { get; init; }

    /// <summary>What a rim brake presses on; none for a rim made for discs.</summary>
    public Known<BrakeTrack> BrakeTrack { get; init; }

    /// <summary>The brake inside the hub, such as a drum or a coaster brake; none for a hub without.</summary>
    public Known<BrakeType> HubBrake { get; init; }

    /// <summary>Thread of a solid axle; none for an axle without.</summary>
    public Known<HubAxleThread> AxleThread { get; init; }

    /// <summary>The slot that the washers of a hub gear are made for; none where there are no washers. Does not matter without gears inside.</summary>
    public Known<DropoutSlot> Washers { get; init; }

    /// <summary>Holes for spokes in both flanges of the hub; asked for by nothing where the wheel is laced.</summary>
    public Known<SpokeCount> HubHoles { get; init; }

    /// <summary>Holes for spokes in the rim; asked for by nothing where the wheel is laced.</summary>
    public Known<SpokeCount> RimHoles { get; init; }

    /// <summary>Hub and rim are stated with other numbers of holes, whichever of them is right.</summary>
    internal bool HolesContradict =>
        HubHoles.Values is { IsEmpty: false } hub && RimHoles.Values is { IsEmpty: false } rim && !hub.Any(rim.Contains);

    /// <summary>Thread of a rear hub for a screwed freewheel or a fixed sprocket; does not matter with splines.</summary>
    public Known<FreewheelThread> Thread { get; init; }

    /// <summary>What the joints read: a hub whose body is known to have splines has no thread.</summary>
    internal Known<FreewheelThread> ThreadOrBody =>
        Thread.State == KnownState.Unknown && FreehubBody.State == KnownState.Value && !ThreadOnHub.IsThreaded(FreehubBody.Value.FitCode) ? Known<FreewheelThread>.None : Thread;

    /// <summary>How the rim holds its tyre; a stated bead seat or rim type means a clincher.</summary>
    public Known<TyreHold> Hold { get; init; }

    /// <summary>The hole for the valve.</summary>
    public Known<ValveHole> ValveHole { get; init; }

    /// <summary>From the bed of the rim at the valve to the outside toward the hub; none where nothing has to be passed.</summary>
    public Known<Dimension> RimDepth { get; init; }

    /// <summary>Width of the widest hole in the bed of the rim, spoke holes included; none where the bed is closed.</summary>
    public Known<Dimension> BedHole { get; init; }

    /// <summary>How it holds a tyre as stated, or as bead seat and type say: both are of clincher rims only.</summary>
    internal Known<TyreHold> HoldOrRim =>
        Hold.State != KnownState.Unknown ? Hold
        : BeadSeat.State is KnownState.Value or KnownState.OneOf ? Known<TyreHold>.Of(TyreHold.Clincher, BeadSeat.Evidence)
        : RimType.State is KnownState.Value or KnownState.OneOf ? Known<TyreHold>.Of(TyreHold.Clincher, RimType.Evidence)
        : Hold;

    /// <summary>The most that rider and luggage may weigh by its maker; none where the maker prints no figure, which is unknown, not unlimited.</summary>
    public Known<Load> LoadLimit { get; init; }

    /// <summary>The most that rider, luggage and bicycle may weigh by its maker; none where the maker prints no figure.</summary>
    public Known<Load> SystemLimit { get; init; }

    /// <summary>The riding that its maker allows; none where the maker names no category, which is unknown, not unlimited.</summary>
    public Known<UseCategory> Use { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontWheel, Slot.RearWheel];

    private protected override string Told() => PartText.Written(this);

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

    /// <summary>How it is held on the rim; a stated ISO size or bead means a clincher.</summary>
    public Known<TyreHold> Hold { get; init; }

    /// <summary>Width over the casing as it was measured, mounted and at riding pressure; knobs that stand out count. Not stated, the label is asked.</summary>
    public Known<Dimension> MountedWidth { get; init; }

    /// <summary>Inner width of the rim on which <see cref="MountedWidth"/> was measured: on another rim the tyre has another width.</summary>
    public Known<Dimension> MountedRim { get; init; }

    /// <summary>None where nobody measured the mounted tyre.</summary>
    internal Known<Dimension> MountedWidthOrNothing => MountedWidth.State == KnownState.Unknown ? Known<Dimension>.None : MountedWidth;

    /// <summary>Without a width that was measured nobody asks on which rim it was, save where its maker is asked anyway.</summary>
    internal Known<Dimension> MountedRimOrNothing =>
        MountedWidth.State is KnownState.Unknown or KnownState.None && MountedRim.State is not (KnownState.FrameSpecific or KnownState.NotCovered) ? Known<Dimension>.None : MountedRim;

    /// <summary>The size; none of a tubular of which none is stated: it has no ISO size.</summary>
    internal Known<TyreSize> SizeOrTubular =>
        Size.State == KnownState.Unknown && Hold.State == KnownState.Value && Hold.Value == TyreHold.Tubular ? Known<TyreSize>.None : Size;

    /// <summary>How it is held as stated, or as ISO size and bead say: a tubular has neither.</summary>
    internal Known<TyreHold> HoldOrSize =>
        Hold.State != KnownState.Unknown ? Hold
        : Size.State is KnownState.Value or KnownState.OneOf ? Known<TyreHold>.Of(TyreHold.Clincher, Size.Evidence)
        : Bead.State is KnownState.Value or KnownState.OneOf ? Known<TyreHold>.Of(TyreHold.Clincher, Bead.Evidence)
        : Hold;

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontTyre, Slot.RearTyre];

    private protected override string Told() => PartText.Written(this);

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
    public Known<SprocketClass> Speeds { get; init; }

    /// <summary>Thread of a screwed freewheel or fixed sprocket; does not matter with splines.</summary>
    public Known<FreewheelThread> Thread { get; init; }

    /// <summary>What the joints read: sprockets whose pattern is known to have splines have no thread.</summary>
    internal Known<FreewheelThread> ThreadOrPattern =>
        Thread.State == KnownState.Unknown && Pattern.State == KnownState.Value && !ThreadOnHub.IsScrewed(Pattern.Value.FitCode) ? Known<FreewheelThread>.None : Thread;

    /// <summary>The left-hand lockring of a fixed sprocket; none where it has none. Does not matter for another.</summary>
    public Known<FreewheelThread> Lockring { get; init; }

    /// <summary>How its sprockets stand beside each other; where unknown, what its pattern says.</summary>
    public Known<SprocketSpacing> Spacing { get; init; }

    /// <summary>What the joints read: the closer of the two. Where they contradict each other, both.</summary>
    internal Known<SprocketSpacing> SpacingOrPattern => CassetteSpacing.Of(Pattern, Spacing);

    /// <summary>What the joints read: the closer of the two. Where they contradict each other, both: neither is to be believed alone.</summary>
    internal Known<SprocketClass> SprocketsOrPattern =>
        Contradicts ? Known<SprocketClass>.OneOf([.. CassetteSpeeds.Of(Pattern).Values, .. Speeds.Values], Speeds.Evidence)
        : Speeds.State != KnownState.Unknown ? Speeds
        : Pattern.State.IsOutside() ? Known<SprocketClass>.Outside(Pattern.State, Pattern.Evidence!, Pattern.Family)
        : CassetteSpeeds.Of(Pattern);

    /// <summary>The pattern; where the sprockets contradict it, the patterns of those sprockets beside it.</summary>
    internal Known<CassettePattern> PatternOrSprockets =>
        Contradicts ? Known<CassettePattern>.OneOf([.. Pattern.Values, .. CassetteSpeeds.With(Speeds.Values)], Pattern.Evidence) : Pattern;

    /// <summary>Sprockets are stated that the pattern is not made with.</summary>
    internal bool Contradicts =>
        Speeds.Values is { IsEmpty: false } sprockets && CassetteSpeeds.Of(Pattern).Values is { IsEmpty: false } made && !sprockets.All(made.Contains);

    /// <summary>Its smallest sprocket.</summary>
    public Known<ToothCount> SmallestSprocket { get; init; }

    /// <summary>Its largest sprocket.</summary>
    public Known<ToothCount> LargestSprocket { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Cassette];

    private protected override string Told() => PartText.Written(this);

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

    /// <summary>The least thickness that is marked on it; asked for on a used rotor only.</summary>
    public Known<Dimension> LeastThickness { get; init; }

    /// <summary>What its fit in a caliper reads: a mark that nobody has read is none.</summary>
    internal Known<Dimension> LeastOrUnread => LeastThickness.State == KnownState.Unknown ? Known<Dimension>.None : LeastThickness;

    /// <summary>How it is fixed.</summary>
    public Known<RotorFixing> Fixing { get; init; }

    /// <summary>The lockring of a rotor or carrier on splines; none where none comes with it. Does not matter on a hub with bolts.</summary>
    public Known<Lockring> Lockring { get; init; }

    /// <summary>What holds a six-bolt rotor on a splined hub; none where there is no carrier yet. Does not matter where rotor and hub have one fixing.</summary>
    public Known<RotorCarrier> Carrier { get; init; }

    /// <summary>Thickness of its track.</summary>
    public Known<Dimension> Thickness { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontRotor, Slot.RearRotor];

    private protected override string Told() => PartText.Written(this);

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

    /// <summary>What works it: fluid, or a cable for one kind of lever. Where unknown, what the fluid says.</summary>
    public Known<BrakeType> Type { get; init; }

    /// <summary>The fluid that it holds; none for a caliper that a cable works.</summary>
    public Known<BrakeFluid> Fluid { get; init; }

    /// <summary>The thickest rotor that the maker allows; none where the maker prints no figure, which is unknown, not unlimited.</summary>
    public Known<Dimension> ThickestRotor { get; init; }

    /// <summary>The thinnest rotor that the maker allows; none where the maker prints no figure: then the mark on the rotor alone counts.</summary>
    public Known<Dimension> ThinnestRotor { get; init; }

    /// <summary>Length of the bolts that go through the stay of a flat mount; none for another mount.</summary>
    public Known<Dimension> BoltLength { get; init; }

    /// <summary>The fluid that reaches the lever; where it is not said, none of a type that a cable works, and none of what stays inside a caliper that a cable works.</summary>
    internal Known<BrakeFluid> FluidOrType =>
        Type.State == KnownState.Value && Type.Value == BrakeType.CableHydraulicDisc && !Fluid.State.IsOutside() ? Known<BrakeFluid>.None
        : Fluid.State == KnownState.Unknown && WorkedByCable ? Known<BrakeFluid>.None : Fluid;

    private bool WorkedByCable =>
        Type.State == KnownState.Value ? Type.Value != BrakeType.HydraulicDisc : Type.State == KnownState.OneOf && Type.Values.All(t => t != BrakeType.HydraulicDisc);

    /// <summary>The type; where it is not said, what follows from the fluid.</summary>
    internal Known<BrakeType> TypeOrFluid =>
        Type.State != KnownState.Unknown ? Type
        : Fluid.State is KnownState.Value or KnownState.OneOf ? Known<BrakeType>.Of(BrakeType.HydraulicDisc, Fluid.Evidence)
        : Fluid.State == KnownState.None ? Known<BrakeType>.OneOf([BrakeType.RoadCableDisc, BrakeType.OffRoadCableDisc], Fluid.Evidence)
        : default;

    /// <summary>The adapter that it stands on, by how much larger a rotor it asks for; none without one.</summary>
    public Known<AdapterIncrement> Adapter { get; init; }

    /// <summary>The mount that the adapter is made for, as it is marked or as its holes say; of posts and of tabs any of its form.</summary>
    public Known<BrakeMount> AdapterOn { get; init; }

    /// <summary>A second adapter on the first; none as it should be.</summary>
    public Known<AdapterIncrement> SecondAdapter { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontCaliper, Slot.RearCaliper];

    private protected override string Told() => PartText.Written(this);

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

    /// <summary>What the post is made of where it is clamped.</summary>
    public Known<Material> Material { get; init; }

    /// <summary>Gap that is left between the ears of the binder with the post held tight; none where they meet.</summary>
    public Known<Dimension> BinderGap { get; init; }

    /// <summary>The most that the rider may weigh by its maker; none where the maker prints no figure, which is unknown, not unlimited.</summary>
    public Known<Load> RiderLimit { get; init; }

    /// <summary>The most that rider, luggage and bicycle may weigh by its maker; none where the maker prints no figure.</summary>
    public Known<Load> SystemLimit { get; init; }

    /// <summary>The riding that its maker allows; none where the maker names no category, which is unknown, not unlimited.</summary>
    public Known<UseCategory> Use { get; init; }

    /// <summary>When it was made. No joint reads it; <see cref="Build.ToInspect"/> tells it.</summary>
    public Known<DateMade> Made { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Seatpost];

    private protected override string Told() => PartText.Written(this);

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
