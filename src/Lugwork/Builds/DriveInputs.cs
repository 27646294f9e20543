using Lugwork.BottomBrackets;
using Lugwork.Drivetrain;

namespace Lugwork;

/// <summary>Inputs of shifting, rings, front derailleur, chain guide and screwed sprockets.</summary>
internal static partial class JointInputs
{
    private const string ListedPair = "Look both up in the list of what goes together by the shifter's maker: named together is allowed, ruled out is refused, nothing said is none.";

    public static readonly JointInput HubThread = Input<Wheel, FreewheelThread>(Slot.RearWheel, "thread", "thread of the hub", p => p.ThreadOrBody, "Outside caliper over the crests, to 0.05 mm, and a thread gauge: 24 an inch or 1 mm. A track hub has a smaller left-hand thread beside it.");
    public static readonly JointInput SprocketThread = Input<Cassette, FreewheelThread>(Slot.Cassette, "thread", "thread of the freewheel or sprocket", p => p.ThreadOrPattern, "Read its back, or a thread gauge inside: 24 an inch or 1 mm; inside caliper, to 0.05 mm.");
    public static readonly JointInput SprocketLockring = WithNone<Cassette, FreewheelThread>(Slot.Cassette, "lockring", "lockring of the fixed sprocket", p => p.Lockring, ThreadOnHub.NoLockring, "none", "Look outside the sprocket: a thin ring with notches on a thread of its own that tightens anticlockwise.", t => t.IsLeftHand);
    public static readonly JointInput RingSpeeds = Input<Chainring, SprocketClass>(Slot.Chainring, "speeds", "speeds of the chainring", p => p.Speeds, "Read the ring or its maker's list; caliper on a tooth.");
    public static readonly JointInput SpiderCircle = Input<Crankset, BoltCircle>(Slot.Crankset, "boltCircle", "bolt circle of the crank", p => p.BoltCircle, "Count the arms and caliper between the middles of neighbouring holes, to 0.5 mm; see whether all are equally far apart.");
    public static readonly JointInput RingCircle = Input<Chainring, BoltCircle>(Slot.Chainring, "boltCircle", "bolt circle of the ring", p => p.BoltCircle, "Count the holes and caliper between the middles of neighbouring ones, to 0.5 mm; see whether all are equally far apart.");
    public static readonly JointInput RingTeeth = Input<Chainring, ToothCount>(Slot.Chainring, "teeth", "teeth of the ring", p => p.Teeth, "Read the number on the ring, or count.");
    public static readonly JointInput ArmMount = Input<Crankset, DirectMountRing>(Slot.Crankset, "directMount", "direct mount of the arm", p => p.DirectMount, "Take the ring off: count the bolts round the spindle, three or eight; other splines are the maker's own.");
    public static readonly JointInput RingMount = Input<Chainring, DirectMountRing>(Slot.Chainring, "directMount", "direct mount of the ring", p => p.DirectMount, "Count the holes round its middle, three or eight; other splines are the maker's own.");
    public static readonly JointInput LargestRing = Input<Crankset, ToothCount>(Slot.Crankset, "largestRing", "largest ring of the crank", p => p.LargestRing, "Read the number on the largest ring, or count.");
    public static readonly JointInput SmallestRing = Input<Crankset, ToothCount>(Slot.Crankset, "smallestRing", "smallest ring of the crank", p => p.SmallestRingOrSingle, "Read the number on the smallest ring, or count; \"none\" with one ring.");
    public static readonly JointInput RingLimit = Input<Frame, ToothCount>(Slot.Frame, "largestRing", "largest ring that the frame allows", p => p.LargestRing, "The frame maker's figure for one, two or three rings; do not guess.");
    public static readonly JointInput FrontMountOfFrame = Input<Frame, FrontDerailleurMount>(Slot.Frame, "frontDerailleurMount", "front-derailleur mount of the frame", p => p.FrontDerailleurMount, "Look for a tab or two threaded holes; else outside caliper on a round seat tube 100 mm above the shell, to 0.1 mm. A shaped tube without a tab has none.");
    public static readonly JointInput FrontMountOfDerailleur = Input<FrontDerailleur, FrontDerailleurMount>(Slot.FrontDerailleur, "mount", "front-derailleur mount", p => p.Mount, "Inside caliper in the closed band, to 0.1 mm; or one bolt and a curved back; or two bolts: caliper between their middles.");
    public static readonly JointInput CageSpeeds = Input<FrontDerailleur, SprocketClass>(Slot.FrontDerailleur, "speeds", "speeds of the front derailleur", p => p.Speeds, "Read it or its maker's list.");
    public static readonly JointInput CageChainline = Input<FrontDerailleur, FrontChainline>(Slot.FrontDerailleur, "chainline", "chainline of the front derailleur", p => p.Chainline, "Read its maker's list: usual or wide.");
    public static readonly JointInput CrankChainline = Input<Crankset, FrontChainline>(Slot.Crankset, "chainline", "chainline of the crank", p => p.Chainline, "Rule from the side of the seat tube to the middle between the rings and add half of the tube's thickness, to 0.5 mm.");
    public static readonly JointInput SignalOfDerailleur = Input<RearDerailleur, ShiftSignal>(Slot.RearDerailleur, "signal", "shift signal of the derailleur", p => p.Signal, "Look at it: a cable bolt, a plug, a battery, or a hose.");
    public static readonly JointInput SignalOfFront = Input<FrontDerailleur, ShiftSignal>(Slot.FrontDerailleur, "signal", "shift signal of the front derailleur", p => p.Signal, "Look at it: a cable bolt, a plug, a battery, or a hose.");
    public static readonly JointInput PullOfShifter = Input<Shifter, ActuationFamily>(Slot.RearShifter, "actuation", "cable pull of the shifter", p => p.Actuation, "Read its maker's list; or rule the cable that ten clicks, or all of them, pull, to 0.5 mm.");
    public static readonly JointInput RatioOfDerailleur = Input<RearDerailleur, ActuationFamily>(Slot.RearDerailleur, "actuation", "actuation of the derailleur", p => p.Actuation, "Read its maker's list; or pull 10 mm of cable and rule how far the cage moves sideways.");
    public static readonly JointInput WordOfPair = Input<Shifter, MakersWord>(Slot.RearShifter, "withDerailleur", "maker's word on shifter and derailleur", p => p.WithDerailleur, ListedPair);
    public static readonly JointInput WordOfSprockets = Input<Shifter, MakersWord>(Slot.RearShifter, "withSprockets", "maker's word on shifter and sprockets", p => p.WithSprocketsOrNothing, ListedPair);
    public static readonly JointInput WordOfFront = Input<Shifter, MakersWord>(Slot.FrontShifter, "withDerailleur", "maker's word on shifter and front derailleur", p => p.WithDerailleur, ListedPair);
    public static readonly JointInput SpacingOfShifter = Input<Shifter, SprocketSpacing>(Slot.RearShifter, "spacing", "sprockets that the shifter is made for", p => p.Spacing, "Count the clicks and add one; read its maker's list for the family.");
    public static readonly JointInput SpacingOfCassette = Input<Cassette, SprocketSpacing>(Slot.Cassette, "spacing", "spacing of the sprockets", p => p.SpacingOrPattern, "Count the sprockets; caliper from the first to the last, middle to middle, to 0.2 mm.");
    public static readonly JointInput GuideMount = Input<ChainGuide, ChainGuideMount>(Slot.ChainGuide, "mount", "mount of the chain guide", p => p.Mount, "Three slots: rule twice from the middle of the spindle to a slot, 59 or 73 mm; a plate with one large hole goes under the cup; else it has a front-derailleur mount.");
    public static readonly JointInput GuideTabs = Input<Frame, ChainGuideMount>(Slot.Frame, "chainGuideTabs", "guide tabs of the frame", p => p.ChainGuideTabs, "Three M6 holes round the shell: rule twice from the middle of the shell to a hole, 59 or 73 mm.", where: m => m.Tabs is not null);
    public static readonly JointInput DriveSpacer = Input<BottomBracket, Dimension>(Slot.BottomBracket, "driveSpacer", "spacers under the drive-side cup", p => p.DriveSpacer, "Caliper on the loose spacers between shell and drive-side cup, all together and without the plate of a chain guide or front derailleur, to 0.1 mm; \"none\" without.", Lengths);

    /// <summary>Mounts of which the plate under the drive-side cup stands in the place of a spacer: where there is or may be one, a row of its own speaks of the spacers.</summary>
    public static readonly JointInput GuidePlate = Input<ChainGuide, ChainGuideMount>(Slot.ChainGuide, "mount", "mount of the chain guide", p => p.Mount, GuideMount.Measure, isStated: HasGuidePlate);
    public static readonly JointInput DerailleurPlate = Input<FrontDerailleur, FrontDerailleurMount>(Slot.FrontDerailleur, "mount", "front-derailleur mount", p => p.Mount, FrontMountOfDerailleur.Measure, isStated: HasDerailleurPlate);
    public static readonly JointInput SidesOfPedals = Input<Pedals, PedalSides>(Slot.Pedals, "sides", "sides of the pedals", p => p.SidesOrPair, "Read L and R on the spindles, or look which way the thread climbs.");

    public static JointInput SignalOfShifter(Slot slot) => Input<Shifter, ShiftSignal>(slot, "signal", "shift signal of the shifter", p => p.Signal, "Look at it: a cable, a plug, a battery, or a hose.");

    /// <summary>The guide has a plate under the drive-side cup, or one of several mounts of which one has.</summary>
    public static bool HasGuidePlate(Part part) => part is ChainGuide guide && guide.Mount.Values.Contains(ChainGuideMount.Bracket);

    /// <summary>The front derailleur has a plate under the drive-side cup, or one of several mounts of which one has.</summary>
    public static bool HasDerailleurPlate(Part part) => part is FrontDerailleur derailleur && derailleur.Mount.Values.Contains(FrontDerailleurMount.EType);

    /// <summary>Somebody said what stands under the drive-side cup.</summary>
    public static bool HasDriveSpacer(Part part) => part is BottomBracket { DriveSpacer.State: not KnownState.Unknown };

    /// <summary>With the spindle the spacers under the cup are judged by the table of cranks and shells.</summary>
    public static bool HasSpindle(Part part) => part is Crankset { Spindle.State: not KnownState.Unknown };
}
