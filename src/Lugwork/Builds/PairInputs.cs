using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Drivetrain;

namespace Lugwork;

/// <summary>Inputs of the checks of front beside rear, of hands, and of the line of the chain.</summary>
internal static partial class JointInputs
{
    private const string HandMeasure = "Look at blade, clamp and banjo or cable end: most cable levers go on either side, most hydraulic ones on one or are turned round by their maker's word.";

    private const string LineMeasure = "Ruler from the middle plane of the frame (half the tube or the shell) to the middle of the tooth, to 0.5 mm.";

    public static readonly JointInput RingLine = Input<Crankset, Dimension>(Slot.Crankset, "measuredChainline", "line of the ring", p => p.RingLineOrChainline, LineMeasure, Lengths);
    public static readonly JointInput SprocketLine = Input<Wheel, Dimension>(Slot.RearWheel, "sprocketChainline", "line of the sprocket", p => p.SprocketChainline, LineMeasure, Lengths);
    public static readonly JointInput TabRing = Input<Frame, ToothCount>(Slot.Frame, "smallestOuterRing", "smallest outer ring of the tab", p => p.SmallestOuterRing, "The frame maker's figure; or hold the derailleur at the lowest place of the slot and find the ring that it clears by 1 to 3 mm.", Teeth);
    public static readonly JointInput ShellOfCrank = Input<Crankset, Dimension>(Slot.Crankset, "shellWidth", "shell that the crank is made for", p => p.ShellWidth, "The crank maker's chart of shells.", Lengths);
    public static readonly JointInput KnobRise = Input<Fork, Dimension>(Slot.Fork, "knobRise", "knobs of the crown above the seat of the race", p => p.KnobRise, "Rule along the steerer from the seat of the crown race to the top of the knobs, to 1 mm; \"none\" where nothing stands above it.", Lengths);
    public static readonly JointInput DownTubeDrop = Input<Frame, Dimension>(Slot.Frame, "downTubeDrop", "down tube below the head tube", p => p.DownTubeDrop, "Straightedge on the lower face of the head tube; rule down to the underside of the down tube as far out as the knobs of the crown swing, to 1 mm; \"none\" where it stays above.", Lengths);
    public static readonly JointInput RearHoseSide = Input<Frame, Hand>(Slot.Frame, "rearHoseSide", "side of the rear hose", p => p.RearHoseSide, "Look where the rear hose or housing goes into the frame, or to which side of it; seen by the rider.");
    public static readonly JointInput HandOfRider = Input<Rider, Hand>(Slot.Rider, "frontBrakeHand", "hand for the front brake", p => p.FrontBrakeHand, "Ask the rider which hand brakes in front on the other bicycles; right is usual in some countries, left in others.");

    public static JointInput HandOf(Slot slot) => Input<BrakeLever, Hand>(slot, "hand", slot == Slot.FrontBrakeLever ? "hand of the front lever" : "hand of the rear lever", p => p.Hand, HandMeasure);

    public static JointInput FixingOrNone(Slot slot) => WithNone<Wheel, RotorFixing>(slot, "rotorFixing", slot == Slot.FrontWheel ? "rotor fixing in front" : "rotor fixing behind", p => p.RotorFixing, PairChecks.NoFixing, "none", "Six threaded holes, or splines with a lockring.");

    public static JointInput SecondAdapter(Slot slot) => WithNone<Caliper, AdapterIncrement>(slot, "secondAdapter", "second adapter", p => p.SecondAdapter, PairChecks.NoFixing, "none", "Look at the stack between mount and caliper: \"none\" with one adapter or without.");
}
