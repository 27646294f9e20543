using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;

namespace Lugwork;

/// <summary>Inputs of the checks over several parts.</summary>
internal static partial class JointInputs
{
    private const int Teeth = 5;

    private const string Count = "Read the number on it, or count the teeth.";

    private const int Angles = 7;

    private const string HeadAngleLimit = "Ask the frame maker for the limit; \"none\" if the maker prints none. Do not guess.";

    private const string MakersFigure = "The derailleur maker's figure; \"none\" if the maker prints none.";

    public static readonly JointInput CapacityOfDerailleur = Input<RearDerailleur, ToothCount>(Slot.RearDerailleur, "capacity", "capacity of the derailleur", p => p.Capacity, MakersFigure, Teeth);
    public static readonly JointInput LargestForDerailleur = Input<RearDerailleur, ToothCount>(Slot.RearDerailleur, "largestSprocket", "largest sprocket of the derailleur", p => p.LargestSprocket, MakersFigure, Teeth);
    public static readonly JointInput SmallestForDerailleur = Input<RearDerailleur, ToothCount>(Slot.RearDerailleur, "smallestSprocket", "smallest sprocket of the derailleur", p => p.SmallestSprocket, MakersFigure, Teeth);
    public static readonly JointInput ChainAllowance = Pitched<RearDerailleur>(Slot.RearDerailleur, "chainAllowance", "allowance of the chain in big-big", p => p.AllowanceOrGeneral, "The derailleur maker's figure, pitches added in big-big; two is the general rule.");
    public static readonly JointInput LargestOfCassette = Input<Cassette, ToothCount>(Slot.Cassette, "largestSprocket", "largest sprocket", p => p.LargestSprocket, Count, Teeth);
    public static readonly JointInput SmallestOfCassette = Input<Cassette, ToothCount>(Slot.Cassette, "smallestSprocket", "smallest sprocket", p => p.SmallestSprocket, Count, Teeth);
    public static readonly JointInput LargeRing = Input<Crankset, ToothCount>(Slot.Crankset, "largestRing", "largest ring of the crank", p => p.LargestRing, Count, Teeth);

    /// <summary>A crank that is stated without a ring: what goes on it stands in its own place.</summary>
    public static readonly JointInput BareCrank = Input<Crankset, ToothCount>(Slot.Crankset, "largestRing", "largest ring of the crank", p => p.LargestRing, Count, Teeth, isStated: p => ((Crankset)p).LargestRing.State == KnownState.None);

    /// <summary>The smallest ring of such a crank: none where the one beside it is all, a figure or unknown where a second one may go on.</summary>
    public static readonly JointInput SmallRingOfBareCrank = Input<Crankset, ToothCount>(Slot.Crankset, "smallestRing", "smallest ring of the crank", p => p.SmallestRingOrSingle, "Read the number on the smallest ring, or count; \"none\" with one ring.", Teeth, isStated: p => ((Crankset)p).LargestRing.State == KnownState.None);
    public static readonly JointInput RingOfBareCrank = Input<Chainring, ToothCount>(Slot.Chainring, "teeth", "teeth of the ring", p => p.Teeth, Count, Teeth);

    /// <summary>A front derailleur is there: a bare crank under it has more than one ring, and the row of their difference asks for them.</summary>
    public static bool IsFrontDerailleur(Part part) => part is FrontDerailleur;

    /// <summary>A ring is there: the rows that read it speak.</summary>
    public static bool IsRing(Part part) => part is Chainring;

    public static readonly JointInput SmallRing = Input<Crankset, ToothCount>(Slot.Crankset, "smallestRing", "smallest ring of the crank", p => p.SmallestRingOrSingle, "Read the number on the smallest ring, or count; \"none\" with one ring.", Teeth);
    public static readonly JointInput FrontDifference = Input<FrontDerailleur, ToothCount>(Slot.FrontDerailleur, "difference", "difference of the rings", p => p.Difference, MakersFigure, Teeth);
    public static readonly JointInput ChainPitches = Pitched<Chain>(Slot.Chain, "pitches", "length of the chain", p => p.Length, "Count the pitches, half an inch each, the quick link as one.");
    public static readonly JointInput Chainstay = Input<Frame, Dimension>(Slot.Frame, "chainstay", "chainstay", p => p.Chainstay, "Rule from the middle of the spindle to the middle of the rear axle, to 1 mm; with the wheel farthest back, and rear suspension where it is longest.", Lengths);

    public static readonly JointInput LengthOfSteerer = Input<Fork, Dimension>(Slot.Fork, "steererLength", "length of the steerer", p => p.SteererLength, "Rule from the seat of the crown race to the top of the steerer, to 0.5 mm.", Lengths, isStated: IsOfThreadless);

    /// <summary>One crown or two, as the sums of a steerer read it: where nobody says, what travel and crown tell of it; a fork of which neither is told is asked about.</summary>
    public static readonly JointInput CrownsOfSum = new OwnInput<Fork, CrownType>(Slot.Fork, "crowns", "crowns of the fork", p => p.Crowns, "Look above the head tube: a second crown clamps the legs there, or there is none.")
    {
        Reads = p => p.CrownsByTravel.ToCandidates(),
        Lists = () => [CrownType.Single.FitCode, CrownType.Dual.FitCode],
    };

    public static readonly JointInput MostSpacers = Input<Fork, Dimension>(Slot.Fork, "mostSpacers", "fork maker's most spacers", p => p.MostSpacers, "The fork maker's figure; \"none\" if the maker prints none.", Lengths);
    public static readonly JointInput HeadTubeLength = Input<Frame, Dimension>(Slot.Frame, "headTubeLength", "length of the head tube", p => p.HeadTubeLength, "Rule from face to face of the head tube, cups out, to 0.5 mm.", Lengths);
    public static readonly JointInput UpperStack = Input<Headset, Dimension>(Slot.Headset, "upperStack", "upper stack of the headset", p => p.UpperStackOrOpen, "The maker's figure, or caliper from the head tube to the top of the cover, to 0.5 mm.", Lengths);
    public static readonly JointInput LowerStack = Input<Headset, Dimension>(Slot.Headset, "lowerStack", "lower stack of the headset", p => p.LowerStackOrOpen, "The maker's figure, or caliper from the head tube to the seat of the race, to 0.5 mm; \"none\" where it stands inside.", Lengths);

    /// <summary>The same where it is taller than what the band near a limit of the head angle holds.</summary>
    public static readonly JointInput TallLowerStack = Input<Headset, Dimension>(Slot.Headset, "lowerStack", "lower stack of the headset", p => p.LowerStackOrOpen, LowerStack.Measure, Lengths, isStated: HasTallLowerHalf);

    public static readonly JointInput StemHeight = Input<Stem, Dimension>(Slot.Stem, "clampHeight", "height of the stem at the steerer", p => p.ClampHeight, "Caliper over the clamp along the steerer, to 0.5 mm.", Lengths);
    public static readonly JointInput SpacersBelow = Input<Stem, Dimension>(Slot.Stem, "spacersBelow", "spacers below the stem", p => p.SpacersBelow, "Caliper over the stack of spacers, to 0.5 mm; \"none\" without.", Lengths);
    public static readonly JointInput SpacersAbove = Input<Stem, Dimension>(Slot.Stem, "spacersAbove", "spacers above the stem", p => p.SpacersAbove, "Caliper over the stack of spacers, to 0.5 mm; \"none\" without.", Lengths);

    public static readonly JointInput HeightOfSaddle = Input<Rider, Dimension>(Slot.Rider, "saddleHeight", "saddle height", p => p.SaddleHeight, "Rule from the middle of the spindle along the seat tube to the top of the saddle of a bicycle that fits you, to 2 mm.", Lengths);
    public static readonly JointInput Inseam = Input<Rider, Dimension>(Slot.Rider, "inseam", "inseam", p => p.Inseam, "In your shoes, back to the wall, a book pulled up firmly between the legs: rule from the floor to its upper edge, to 5 mm.", Lengths);
    public static readonly JointInput SeatTubeLength = Input<Frame, Dimension>(Slot.Frame, "seatTubeLength", "length of the seat tube", p => p.SeatTubeLength, "Rule from the middle of the spindle along the seat tube to the top of the collar, to 1 mm.", Lengths);
    public static readonly JointInput SaddleDepth = Input<Saddle, Dimension>(Slot.Saddle, "depth", "depth of the saddle", p => p.Depth, "Rule from the middle of the rails straight up to the top of the saddle, to 1 mm.", Lengths);
    public static readonly JointInput PostLength = Input<Seatpost, Dimension>(Slot.Seatpost, "length", "length of the post", p => p.Length, "Rule from the middle of the rails to the lower end, to 1 mm; a dropper fully up.", Lengths);
    public static readonly JointInput TravelOfDropper = Input<Dropper, Dimension>(Slot.Dropper, "travel", "travel of the dropper", p => p.Travel, "Rule over the shaft between fully up and fully down, to 1 mm.", Lengths);
    public static readonly JointInput DropperStack = Input<Dropper, Dimension>(Slot.Dropper, "stack", "dropper from lip to rails", p => p.Stack, "Fully down, rule from the lip above the collar to the middle of the rails, to 1 mm.", Lengths);
    public static readonly JointInput Standover = Input<Frame, Dimension>(Slot.Frame, "standover", "standover", p => p.Standover, "Rule from the floor to the top tube where you stand over it, wheels in, to 5 mm.", Lengths);

    public static readonly JointInput FrontCentre = Input<Frame, Dimension>(Slot.Frame, "frontCentre", "front centre", p => p.FrontCentre, "Rule from the middle of the spindle to the middle of the front axle, wheel straight, to 1 mm.", Lengths);
    public static readonly JointInput LengthOfCrank = Input<Crankset, Dimension>(Slot.Crankset, "crankLength", "length of the crank", p => p.CrankLength, "Read it on the arm, or rule from the middle of the spindle to the middle of the pedal's axle, to 0.5 mm.", Lengths);
    public static readonly JointInput AcrossCranks = Input<Crankset, Dimension>(Slot.Crankset, "qFactor", "Q factor", p => p.QFactor, "Caliper or rule over the outer faces of both arms where the pedals go in, one arm turned round, to 1 mm.", Lengths);
    public static readonly JointInput Drop = Input<Frame, Dimension>(Slot.Frame, "bottomBracketDrop", "bottom bracket drop", p => p.BottomBracketDrop, "The frame maker's chart; or height of the axles less height of the spindle above the floor, to 1 mm.", Lengths);
    public static readonly JointInput PedalHeight = Input<Pedals, Dimension>(Slot.Pedals, "height", "height of the pedal", p => p.Height, "Caliper over the body of the pedal, to 1 mm.", Lengths);
    public static readonly JointInput PedalReach = Input<Pedals, Dimension>(Slot.Pedals, "reach", "reach of the pedal", p => p.Reach, "Rule from the face of the crank to the outer edge of the pedal, to 1 mm.", Lengths);
    public static readonly JointInput RoomForToes = WhenBuilt<Crankset>(Slot.Crankset, "toeClearance", "room between pedal and front tyre", p => p.ToeRoomOrNothing, "Crank forward, front wheel turned to where it comes nearest: rule from the middle of the pedal's axle to the tyre or its mudguard, to 2 mm.");
    public static readonly JointInput PedalAboveGround = WhenBuilt<Pedals>(Slot.Pedals, "groundHeight", "height of the pedal above the ground", p => p.GroundHeightOrNothing, "Bicycle upright with the rider's tyres at pressure, crank straight down: rule from the floor to the lower outer edge of the pedal, to 1 mm.");
    public static readonly JointInput RingLineAsBuilt = WhenBuilt<Crankset>(Slot.Crankset, "measuredChainline", "line of the rings", p => p.RingLineOrNothing, "Ruler from the middle plane of the frame (half the tube or the shell) to the middle of the one ring, or half-way between two, or to the middle one of three, to 0.5 mm.");
    public static readonly JointInput CassetteLine = WhenBuilt<Wheel>(Slot.RearWheel, "cassetteChainline", "line of the cassette", p => p.CassetteLineOrNothing, "Ruler from the middle plane of the frame (half of the rear end) to half-way between the smallest and the largest sprocket, to 0.5 mm.");
    public static readonly JointInput ShortestFork = Input<Frame, Dimension>(Slot.Frame, "shortestFork", "frame's shortest fork", p => p.ShortestFork, "Ask the frame maker for the shortest axle to crown; \"none\" if the maker prints none.", Lengths);
    public static readonly JointInput ForkOfDesign = Input<Frame, Dimension>(Slot.Frame, "designAxleToCrown", "fork that the chart holds for", p => p.DesignAxleToCrown, "The frame maker's chart: axle to crown, without load, of the fork with which its angles are printed; ask where the chart is printed sagged.", Lengths);
    public static readonly JointInput HeadAngle = Angled(Slot.Frame, "headAngle", "head angle of the chart", p => p.HeadAngle, "The frame maker's chart; or an angle gauge on the head tube, bicycle on level ground with the fork that the chart holds for, to 0.1\u00B0.");
    public static readonly JointInput Wheelbase = Input<Frame, Dimension>(Slot.Frame, "wheelbase", "wheelbase of the chart", p => p.Wheelbase, "The frame maker's chart; or rule from axle to axle, bar straight, to 2 mm.", Lengths);
    public static readonly JointInput SlackestHeadAngle = Angled(Slot.Frame, "slackestHeadAngle", "slackest head angle of the frame", p => p.SlackestHeadAngle, HeadAngleLimit, p => p.SlackestHeadAngle);
    public static readonly JointInput SteepestHeadAngle = Angled(Slot.Frame, "steepestHeadAngle", "steepest head angle of the frame", p => p.SteepestHeadAngle, HeadAngleLimit, p => p.SteepestHeadAngle);
    public static readonly JointInput DesignedFront = Input<Frame, BeadSeat>(Slot.Frame, "designFrontBeadSeat", "front wheel of the design", p => p.FrontWheelOfOrNothing, "The frame maker's sheet: the wheel size in front; \"none\" if the maker says nothing.");
    public static readonly JointInput DesignedRear = Input<Frame, BeadSeat>(Slot.Frame, "designRearBeadSeat", "rear wheel of the design", p => p.RearWheelOfOrNothing, "The frame maker's sheet: the wheel size behind; \"none\" if the maker says nothing.");

    /// <summary>How deep the post sits, where somebody measured it on the bicycle: what is only stated may be of another saddle height.</summary>
    public static readonly JointInput MeasuredDepth = Input<Seatpost, Dimension>(Slot.Seatpost, "insertion", "insertion as measured", p => p.Insertion, "Tape the post at the collar at your saddle height, pull it out and rule from the tape to its lower end, to 1 mm.", Lengths, isStated: p => ((Seatpost)p).Insertion.Evidence is { IsAsBuilt: true });

    /// <summary>The same, none where it is not known: what only sharpens a sum is not asked for.</summary>
    internal static JointInput IfKnown(JointInput input, Func<Part, bool>? counts = null) => new FigureIfKnown(input, counts);

    /// <summary>The fork with which a standover is printed; none of one that was measured on this bicycle.</summary>
    public static JointInput ForkOfStandover { get; } = IfKnown(ForkOfDesign, part => ((Frame)part).Standover.Evidence is not { IsAsBuilt: true });

    /// <summary>A fork is there: the row that reads it speaks.</summary>
    public static bool IsFork(Part part) => part is Fork;

    /// <summary>
    /// A headset whose lower half may lift the front end by more than a row of the head angle takes as its doubt. One of which nobody says how tall it is may, unless its bearing is known to sit
    /// inside the head tube.
    /// </summary>
    public static bool HasTallLowerHalf(Part part) => part is Headset headset && headset.LowerStackOrOpen.State switch
    {
        KnownState.None => false,
        KnownState.Value or KnownState.Measured or KnownState.OneOf => headset.LowerStack.ToCandidates().High > HeadAngleRelations.UsualLowerHalf,
        _ => !SitsInside(headset.LowerCup),
    };

    private static bool SitsInside(Known<HeadsetCup> cup)
    {
        foreach (HeadsetCup one in cup.Values)
        {
            if (one.Style == HeadsetStyle.ExternalCup)
            {
                return false;
            }
        }

        return !cup.Values.IsEmpty;
    }

    /// <summary>What stands on a threadless steerer, and the gap under its cap. The sums are those of a steerer that the stem alone clamps: a threaded one is held by its locknut, and one of two crowns by its upper crown, whose height no sum here knows.</summary>
    private static bool IsOfThreadless(Part part) =>
        part is Fork { SteererLength.State: not KnownState.Unknown } fork
        && !(fork.SteererKind.State == KnownState.Value && fork.SteererKind.Value == SteererKind.Threaded) && !(fork.Crowns.State == KnownState.Value && fork.Crowns.Value == CrownType.Dual);

    public static JointInput OutsideOf(Slot slot) => Projected<Tyre, TyreSize>(slot, "size", "tyre diameter by its label", p => p.Size, s => ((s.FitCode % 1_000) + (2 * s.WidthMillimetres)) * Nanometres.PerMillimetre, () => [], "Read the ISO number on the sidewall, such as 37-622.", isLength: true, showsLength: true);

    public static JointInput AdapterOf(Slot slot) => Input<Caliper, AdapterIncrement>(slot, "adapter", "adapter under the caliper", p => p.Adapter, "Read its marking, or rule how far it moves the caliper out along the radius and double it; \"none\" without one.");

    /// <summary>An angle of the frame. A limit that is said not to be printed is as good as not said: it asks for nothing.</summary>
    private static OwnInput<Frame, FrameAngle> Angled(Slot slot, string field, string called, Func<Frame, Known<FrameAngle>> get, string measure, Func<Frame, Known<FrameAngle>>? limit = null) => new OwnInput<Frame, FrameAngle>(slot, field, called, get, measure)
    {
        Stated = limit is null ? null : part => limit((Frame)part).State is not (KnownState.Unknown or KnownState.None),
        Lists = () => [],
        Family = Angles,
        IsLength = true,
        IsAngle = true,
        Shows = FrameAngle.Written,
    };

    private static OwnInput<TPart, Dimension> Pitched<TPart>(Slot slot, string field, string called, Func<TPart, Known<Dimension>> get, string measure)
        where TPart : Part => new OwnInput<TPart, Dimension>(slot, field, called, get, measure)
        {
            Lists = () => [],
            Family = Lengths,
            IsLength = true,
            Unit = " pitches",
            Shows = PartForms.CountOf,
            Tells = PartForms.Counted,
        };
}
