using Lugwork.BottomBrackets;
using Lugwork.Cockpit;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork;

/// <summary>Inputs of tubes, valves and tapes, of the pieces of headset, cockpit and bottom bracket, and of binder and dropper.</summary>
internal static partial class JointInputs
{
    public static JointInput UpperSkirt => Input<Headset, Dimension>(Slot.Headset, "upperSkirt", "skirt of the upper cup", p => p.UpperSkirtOrNone, "Depth gauge or caliper from the collar of the cup to its inner end, to 0.1 mm; \"none\" for a half without a cup.", Lengths);

    public static JointInput LowerSkirt => Input<Headset, Dimension>(Slot.Headset, "lowerSkirt", "skirt of the lower cup", p => p.LowerSkirtOrNone, "Depth gauge or caliper from the collar of the cup to its inner end, to 0.1 mm; \"none\" for a half without a cup.", Lengths);

    public static JointInput UpperBoreDepth => Input<Frame, Dimension>(Slot.Frame, "upperBoreDepth", "depth of the upper bore", p => p.UpperBoreDepth, "Depth gauge from the end of the head tube to where the bore steps down, to 0.1 mm; \"none\" where it goes through.", Lengths);

    public static JointInput LowerBoreDepth => Input<Frame, Dimension>(Slot.Frame, "lowerBoreDepth", "depth of the lower bore", p => p.LowerBoreDepth, "Depth gauge from the end of the head tube to where the bore steps down, to 0.1 mm; \"none\" where it goes through.", Lengths);

    public static JointInput UpperBearingAsked => Input<Headset, HeadsetBearing>(Slot.Headset, "upperBearing", "bearing that the upper half asks for", p => p.UpperBearing, BearingMeasure);

    public static JointInput LowerBearingAsked => Input<Headset, HeadsetBearing>(Slot.Headset, "lowerBearing", "bearing that the lower half asks for", p => p.LowerBearing, BearingMeasure);

    public static JointInput CablesOfFrame => Input<Frame, CableWay>(Slot.Frame, "headsetCables", "cables at the headset", p => p.HeadsetCables, "Look whether cables and hoses go down beside the steerer, or into the frame elsewhere.");

    public static JointInput CablesOfCover => Input<HeadsetCover, CableWay>(Slot.HeadsetCover, "cables", "cables at the cover", p => p.Cables, "Look for ways through the cover beside the hole for the steerer.");

    public static JointInput SteererMaterialOfFork => Input<Fork, Material>(Slot.Fork, "steererMaterial", "material of the steerer", p => p.SteererMaterial, "Look into the steerer from below: a magnet sticks to steel; black and woven is carbon. Ask the fork's maker.");

    public static JointInput PreloadKind => Input<Preload, SteererPreload>(Slot.Preload, "kind", "star nut or expander", p => p.Kind, "Look: sprung steel stars that are driven in, or a plug with a bolt that spreads it.");

    public static JointInput QuillDepth => Input<Stem, Dimension>(Slot.Stem, "insertion", "how deep the quill sits", p => p.Insertion, "Mark the quill at the locknut, pull it out and rule from the mark to its lower end, to 1 mm.", Lengths);

    public static JointInput QuillMark => Input<Stem, Dimension>(Slot.Stem, "mark", "insertion mark of the quill", p => p.Mark, "Rule from the lower end of the quill to the top of the mark, to 1 mm; \"none\" where it has none.", Lengths);

    public static JointInput GripOfBar => Input<Handlebar, GripDiameter>(Slot.Handlebar, "grip", "bar where hands and controls go", p => p.Grip, "Outside caliper on the bare bar where the controls go, two directions, to 0.05 mm.");

    public static JointInput ControlsClamp => Input<Controls, ControlClamp>(Slot.Controls, "clamp", "clamp of the controls", p => p.Clamp, "Inside caliper in the closed band, to 0.1 mm; read the maker's list of bars.");

    public static JointInput GripsBore => Input<Grips, GripDiameter>(Slot.Grips, "bore", "bore of the grips", p => p.Bore, "Read the maker's list; inside caliper in the stiff end or the closed collar, to 0.1 mm.");

    public static JointInput DesignedWidth => Input<Crankset, Dimension>(Slot.Crankset, "designedWidth", "spindle width of the crank", p => p.DesignedWidth, "Read the crank maker's list for the width of spindle that it names; no caliper tells it.", Lengths);

    public static JointInput DesignatedWidth => Input<BottomBracket, Dimension>(Slot.BottomBracket, "designatedWidth", "designated width of the spindle", p => p.DesignatedWidth, "Read the second figure on the bottom bracket or its box; the length over the ends of the spindle is another.", Lengths);

    public static JointInput ShellBore => Input<Frame, Dimension>(Slot.Frame, "shellBore", "measured bore of the shell", p => p.ShellBore, "Bore gauge or inside micrometer in the clean shell, both ends, two directions each, to 0.01 mm; the largest reading counts.", Lengths);

    public static JointInput FaceOfShell => Input<Frame, ShellFace>(Slot.Frame, "shellFace", "face of the shell", p => p.ShellFace, "Look at both ends: bare metal, paint, or an insert; ask the frame's maker what an insert may carry.");

    public static JointInput AdapterKind => Input<ShellAdapter, ShellAdapterKind>(Slot.ShellAdapter, "kind", "where the adapter bears", p => p.Kind, "Look whether it has collars that stand against the ends of the shell.");

    public static JointInput BinderGap => Input<Seatpost, Dimension>(Slot.Seatpost, "binderGap", "gap of the binder", p => p.BinderGap, "Post in, bolt at its torque: feeler gauge between the ears, to 0.1 mm; \"none\" where they meet.", Lengths);

    public static JointInput PostMaterial => Input<Seatpost, Material>(Slot.Seatpost, "material", "material of the post", p => p.Material, "A magnet sticks to steel; woven or plain black without a seam is carbon. Ask the post's maker.");

    public static JointInput BinderOfFrame => Input<Frame, SeatBinder>(Slot.Frame, "binder", "binder of the frame", p => p.BinderOrCollar, "Look at the top of the seat tube: a ring that lifts off, or ears that belong to the tube.");

    /// <summary>The binder as it is stated: a stated outside of the seat tube tells nothing here.</summary>
    public static JointInput StatedBinder => Input<Frame, SeatBinder>(Slot.Frame, "binder", "binder of the frame", p => p.Binder, "Look at the top of the seat tube: a ring that lifts off, or ears that belong to the tube.");

    public static JointInput EntryOfFrame => Input<Frame, DropperEntry>(Slot.Frame, "dropperEntry", "dropper entry of the frame", p => p.DropperEntry, "Look for a hole for the cable in down tube or seat tube, and feel whether a liner passes to the foot of the post.");

    public static JointInput RoutingOfDropper => Input<Dropper, DropperRouting>(Slot.Dropper, "routing", "routing of the dropper", p => p.Routing, "Look where the cable joins: at the foot of the post, at its head or collar, or nowhere.");

    private const string BearingMeasure = "Caliper on the bearing: inside, outside and height, to 0.05 mm; read both angles off its ring, such as 36/45.";

    public static JointInput BearingBought(Slot slot) => Input<HeadsetCartridge, HeadsetBearing>(slot, "size", "bearing", p => p.Size, BearingMeasure);

    public static JointInput HoldOfRim(Slot slot) => Input<Wheel, TyreHold>(slot, "hold", "how the rim holds the tyre", p => p.HoldOrRim, "Look at the rim: two flanges with a well between, or one shallow hollow to stick a tubular on.");

    public static JointInput HoldOfTyre(Slot slot) => Input<Tyre, TyreHold>(slot, "hold", "how the tyre is held", p => p.HoldOrSize, "Look at the tyre: two beads with the inside open, or sewn shut round its tube.");

    public static JointInput TubeSeat(Slot slot) => Input<InnerTube, BeadSeat>(slot, "seat", "bead seat of the tube", p => p.Seat, "Read the ISO sizes on the tube or its box: the number after the dash.");

    public static JointInput TubeOtherSeat(Slot slot) => Input<InnerTube, BeadSeat>(slot, "otherSeat", "other bead seat of the tube", p => p.OtherSeat, "Read the ISO sizes on the tube or its box; \"none\" where only one number stands after a dash.");

    public static JointInput NarrowestTyre(Slot slot) => Input<InnerTube, Dimension>(slot, "narrowestTyre", "narrowest tyre of the tube", p => p.NarrowestTyre, "Read the ISO sizes on the tube or its box: the first number before the dash.", Lengths);

    public static JointInput WidestTyre(Slot slot) => Input<InnerTube, Dimension>(slot, "widestTyre", "widest tyre of the tube", p => p.WidestTyre, "Read the ISO sizes on the tube or its box: the last number before the dash.", Lengths);

    public static JointInput HoleOf(Slot slot) => Input<Wheel, ValveHole>(slot, "valveHole", "valve hole of the rim", p => p.ValveHole, "Inside caliper in the outer wall of the rim: 6.5 mm for Presta, 8.5 mm for Schrader and Dunlop.");

    public static JointInput DepthOf(Slot slot) => Input<Wheel, Dimension>(slot, "rimDepth", "depth of the rim at the valve", p => p.RimDepth, "Push a rod through the valve hole and rule from the bed to the outside of the rim, to 0.5 mm.", Lengths);

    public static JointInput ValveOf(Slot slot) => slot == Slot.FrontInnerTube || slot == Slot.RearInnerTube
        ? Input<InnerTube, ValveStem>(slot, "valve", "valve of the tube", p => p.Valve, ValveMeasure)
        : Input<TubelessValve, ValveStem>(slot, "valve", "tubeless valve", p => p.Valve, ValveMeasure);

    public static JointInput ValveLengthOf(Slot slot) => slot == Slot.FrontInnerTube || slot == Slot.RearInnerTube
        ? Input<InnerTube, Dimension>(slot, "valveLength", "valve length", p => p.ValveLength, "Rule from where the stem leaves the tube to its top, to 1 mm; or the figure on the box.", Lengths)
        : Input<TubelessValve, Dimension>(slot, "length", "valve length", p => p.Length, "Rule from the rubber foot to the top, to 1 mm; or the figure on the box.", Lengths);

    public static JointInput TapeWidth(Slot slot) => Input<RimTape, Dimension>(slot, "width", "width of the rim tape", p => p.Width, "Rule across the tape laid flat, to 0.5 mm; \"none\" where there is no tape.", Lengths);

    public static JointInput BedHole(Slot slot) => Input<Wheel, Dimension>(slot, "bedHole", "widest hole of the rim bed", p => p.BedHole, "Inside caliper across the widest hole in the bed, to 0.1 mm; \"none\" for a closed bed.", Lengths);

    private const string ValveMeasure = "Caliper on the stem: 6 mm is Presta, 8 mm Schrader; a nut that holds the core is Dunlop.";
}
