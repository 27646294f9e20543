using System.Collections.Immutable;
using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork;

/// <summary>What the joints ask of the parts: an interface, how it is read, and how a person measures it.</summary>
internal static partial class JointInputs
{
    private const int SeatSizes = 1;
    private const int Lengths = 2;

    public static readonly JointInput RearEnd = Input<Frame, HubStandard>(Slot.Frame, "rear", "rear end", p => p.RearEnd, "Rule between the dropout faces, then look for the 3.5 mm shelf of a recessed end: with it add 7 mm. Read the axle diameter off the axle.", where: h => h.IsRear);
    public static readonly JointInput FrontEnd = Input<Fork, HubStandard>(Slot.Fork, "front", "fork end", p => p.FrontEnd, "Rule between the fork ends, to 0.5 mm; read the axle diameter off the axle, and the rotor side for Boost.", where: h => !h.IsRear);
    public static readonly JointInput MaterialOfFrame = Input<Frame, Material>(Slot.Frame, "material", "frame material", p => p.Material, "A magnet sticks to steel; otherwise ask the frame maker.");
    public static readonly JointInput Bore = Input<Frame, SeatTubeBore>(Slot.Frame, "seatTube", "seat tube bore", p => p.SeatTubeBore, "Inside caliper, two directions, 20 mm below the slot, to 0.05 mm.", SeatSizes);
    public static readonly JointInput Least = Input<Frame, Dimension>(Slot.Frame, "leastInsertion", "frame's least insertion", p => p.LeastInsertion, "The frame maker's figure; \"none\" if the maker prints none.", Lengths);
    public static readonly JointInput Most = Input<Frame, Dimension>(Slot.Frame, "mostInsertion", "open seat tube depth", p => p.MostInsertion, "Slide a straight rod down the seat tube to the first bend, bolt or pivot, to 5 mm.", Lengths);
    public static readonly JointInput RearMount = Input<Frame, BrakeMount>(Slot.Frame, "rearBrake", "rear brake mount", p => p.RearBrakeMount, "Hole spacing of the mount: 51 mm IS tabs, 74 mm posts, 34 mm flat mount; read the rotor size from the frame maker's sheet.", where: m => m.IsRear);
    public static readonly JointInput FrontMount = Input<Fork, BrakeMount>(Slot.Fork, "frontBrake", "front brake mount", p => p.FrontBrakeMount, "Hole spacing of the mount: 51 mm IS tabs, 74 mm posts, 34 mm flat mount; read the rotor size off the fork.", where: m => m.IsFront);
    public static readonly JointInput LargestRear = Input<Frame, Dimension>(Slot.Frame, "largestRearRotor", "largest rear rotor", p => p.LargestRearRotor, "Ask the frame maker for the largest rotor; do not guess.", Lengths);
    public static readonly JointInput LargestFront = Input<Fork, Dimension>(Slot.Fork, "largestFrontRotor", "largest front rotor", p => p.LargestFrontRotor, "Read it off the fork or its manual; do not guess.", Lengths);
    public static readonly JointInput Post = Input<Seatpost, SeatpostDiameter>(Slot.Seatpost, "diameter", "seatpost diameter", p => p.Diameter, "Outside caliper on the round part, two directions, to 0.05 mm; trust it over the stamp.", SeatSizes);
    public static readonly JointInput Mark = Input<Seatpost, Dimension>(Slot.Seatpost, "mark", "insertion mark", p => p.Mark, "From the lower end to the insertion line, to 1 mm.", Lengths);
    public static readonly JointInput Depth = Input<Seatpost, Dimension>(Slot.Seatpost, "insertion", "insertion", p => p.Insertion, "Tape the post at the collar at your saddle height, pull it out and rule from tape to end, to 1 mm.", Lengths);
    public static readonly JointInput Pattern = Input<Cassette, CassettePattern>(Slot.Cassette, "pattern", "cassette pattern", p => p.PatternOrSprockets, "Count the sprockets and read the marking on the largest or the lockring.");
    public static readonly JointInput RearMounting = Input<Caliper, CaliperFoot>(Slot.RearCaliper, "mounting", "caliper mounting", p => p.Mounting, "Hole spacing of the caliper: 74 mm post, 34 mm flat.");
    public static readonly JointInput FrontMounting = Input<Caliper, CaliperFoot>(Slot.FrontCaliper, "mounting", "caliper mounting", p => p.Mounting, "Hole spacing of the caliper: 74 mm post, 34 mm flat.");
    public static readonly JointInput RearThread = Input<Frame, AxleThread>(Slot.Frame, "rearAxleThread", "thread of the rear end", p => p.ThreadOfRearEnd, "Read the old axle, or try a thread gauge in the end: 1.0, 1.5 or 1.75 mm a turn.");
    public static readonly JointInput FrontThread = Input<Fork, AxleThread>(Slot.Fork, "frontAxleThread", "thread of the fork end", p => p.FrontAxleThread, "Read the old axle, or try a thread gauge in the end: 1.5 mm a turn is usual.");
    public static readonly JointInput UpperEnd = Input<Frame, HeadTubeBore>(Slot.Frame, "headTubeUpper", "upper end of the head tube", p => p.HeadTubeUpper, "Inside caliper in the bare end, two directions, to 0.05 mm; never the outside (50 outside is a 44 bore).");
    public static readonly JointInput LowerEnd = Input<Frame, HeadTubeBore>(Slot.Frame, "headTubeLower", "lower end of the head tube", p => p.HeadTubeLower, "Inside caliper in the bare end, two directions, to 0.05 mm; never the outside (62 outside is a 1.5 in bore).");
    public static readonly JointInput UpperCup = Input<Headset, HeadsetCup>(Slot.Headset, "upperCup", "upper half", p => p.UpperCup, "Read the code on the cup or its box, such as ZS44.", where: c => c.IsUpper);
    public static readonly JointInput LowerCup = Input<Headset, HeadsetCup>(Slot.Headset, "lowerCup", "lower half", p => p.LowerCup, "Read the code on the cup or its box, such as ZS56.", where: c => c.IsLower);
    public static readonly JointInput MadeForSteerer = Input<Headset, SteererSize>(Slot.Headset, "steerer", "steerer that the headset is made for", p => p.Steerer, "Read the number after the slash of the upper code; inside caliper in the top cover, to 0.1 mm.");
    public static readonly JointInput Race = Input<Headset, CrownRace>(Slot.Headset, "crownRace", "crown race", p => p.CrownRace, "Read the number after the slash of the lower code; inside caliper in the race, to 0.05 mm.");
    public static readonly JointInput HeadsetKind = Input<Headset, SteererKind>(Slot.Headset, "kind", "kind of headset", p => p.Kind, "A threaded locknut on top, or a cap over a plain tube.");
    public static readonly JointInput Steerer = Input<Fork, SteererSize>(Slot.Fork, "steerer", "steerer", p => p.Steerer, "Outside caliper at the top of the steerer, to 0.1 mm.");
    public static readonly JointInput ForkKind = Input<Fork, SteererKind>(Slot.Fork, "steererKind", "kind of steerer", p => p.SteererKind, "Look at the top of the steerer: threads or none.");
    public static readonly JointInput CrownSeatOfFork = Input<Fork, CrownSeat>(Slot.Fork, "crownSeat", "crown-race seat", p => p.CrownSeat, "Outside caliper on the turned seat just above the crown, race off, to 0.02 mm.");
    public static readonly JointInput StemFixing = Input<Stem, StemFixing>(Slot.Stem, "fixing", "stem fixing", p => p.Fixing, "Inside caliper in the closed steerer clamp, or outside on the quill, to 0.1 mm.");
    public static readonly JointInput StemBar = Input<Stem, BarClamp>(Slot.Stem, "bar", "bar clamp of the stem", p => p.BarClamp, "Inside caliper in the bar clamp, bolts just snug, to 0.1 mm.");
    public static readonly JointInput Bar = Input<Handlebar, BarClamp>(Slot.Handlebar, "clamp", "bar diameter at the stem", p => p.Clamp, "Outside caliper in the middle of the bar, to 0.1 mm.");
    public static readonly JointInput TubeOutside = Input<Frame, SeatClampSize>(Slot.Frame, "seatTubeOutside", "seat tube outside", p => p.SeatTubeOutside, "Outside caliper on the seat tube where the collar sits, two directions, to 0.1 mm.");
    public static readonly JointInput Collar = Input<SeatClamp, SeatClampSize>(Slot.SeatClamp, "size", "collar size", p => p.Size, "Read the number inside the collar; inside caliper, to 0.1 mm.");
    public static readonly JointInput PostHead = Input<Seatpost, RailClamp>(Slot.Seatpost, "railClamp", "post head", p => p.RailClamp, "Look at the jaws: round 7 mm grooves, or taller oval ones; read the maker's list of rails.");
    public static readonly JointInput SaddleRail = Input<Saddle, SaddleRails>(Slot.Saddle, "rails", "saddle rails", p => p.Rails, "Caliper on a straight part of the rail, width and height, to 0.1 mm.");
    public static readonly JointInput HangerOfFrame = Input<Frame, Hanger>(Slot.Frame, "hanger", "derailleur hanger", p => p.Hanger, "Look at the drive-side end: a threaded hole, a longer direct-mount one, a round universal hanger, or none.");
    public static readonly JointInput Mount = Input<RearDerailleur, DerailleurMount>(Slot.RearDerailleur, "mount", "derailleur mount", p => p.Mount, "Look at its top: one pivot bolt, a link behind it that comes off, or a fork round the axle.");
    public static readonly JointInput ChainOfDerailleur = Input<RearDerailleur, ChainSize>(Slot.RearDerailleur, "chain", "chain of the derailleur", p => p.Chain, "Read the speeds off the derailleur or its maker's list.");
    public static readonly JointInput ChainFor = Input<Chain, ChainSize>(Slot.Chain, "size", "chain size", p => p.Size, "Caliper over the rivets, to 0.1 mm: 7.0 to 7.8 up to 8 speeds, 6.6 nine, 5.9 ten, 5.6 eleven, 5.2 twelve.");
    public static readonly JointInput Triangle = Input<Frame, RearTriangle>(Slot.Frame, "rearTriangle", "rear triangle", p => p.RearTriangle, "Look for a joint in the right seat stay, chain stay or drop-out that unbolts.");
    public static readonly JointInput Rings = Input<Crankset, SprocketClass>(Slot.Crankset, "speeds", "speeds of the rings", p => p.Speeds, "Read the ring or its maker's list; caliper on a tooth.");
    public static readonly JointInput SprocketsOfCassette = Input<Cassette, SprocketClass>(Slot.Cassette, "speeds", "speeds of the cassette", p => p.SprocketsOrPattern, "Count the sprockets; one sprocket is 1/8 in (tooth about 3 mm) or 3/32 in (about 2.2 mm).");
    public static readonly JointInput ShellFamilyOfFrame = Projected<Frame, Shell>(Slot.Frame, "shell", "shell thread or bore", p => p.Shell, s => s.Family.FitCode, () => CodesOf<ShellFamily>(null), "Look for threads; inside caliper, to 0.05 mm; a thread gauge tells 24 threads an inch from 1 mm.", family: 0, show: c => ShellFamily.OfFitCode(c).FitKey);
    public static readonly JointInput ShellWidthOfFrame = Projected<Frame, Shell>(Slot.Frame, "shell", "shell width", p => p.Shell, s => s.WidthNanometres, ShellWidths, "Caliper across the faces of the shell, cups out, to 0.1 mm.", showsLength: true);
    public static readonly JointInput ShellOfFrame = Input<Frame, Shell>(Slot.Frame, "shell", "shell", p => p.Shell, "Thread or bore inside, and the width across the faces.");
    public static readonly JointInput BracketFamily = Input<BottomBracket, ShellFamily>(Slot.BottomBracket, "family", "shell that the bottom bracket is made for", p => p.Family, "Read the cup; outside caliper on thread or pressed part, to 0.05 mm.");
    public static readonly JointInput Narrowest = Input<BottomBracket, Dimension>(Slot.BottomBracket, "narrowestShell", "narrowest shell", p => p.NarrowestShell, "Read the maker's list of shell widths.", Lengths);
    public static readonly JointInput Widest = Input<BottomBracket, Dimension>(Slot.BottomBracket, "widestShell", "widest shell", p => p.WidestShell, "Read the maker's list of shell widths.", Lengths);
    public static readonly JointInput BracketTakes = Input<BottomBracket, SpindleSeat>(Slot.BottomBracket, "takes", "spindle that the bottom bracket takes", p => p.Takes, "Inside caliper in the bearings, to 0.05 mm, or look at the end of the cartridge's spindle.");
    public static readonly JointInput CrankSeat = Projected<Crankset, Spindle>(Slot.Crankset, "spindle", "spindle", p => p.Spindle, s => s.Seat.FitCode, () => CodesOf<SpindleSeat>(null), "Outside caliper on the spindle where the bearings run, to 0.02 mm, both ends.", family: 0, show: c => SpindleSeat.OfFitCode(c).FitKey);
    public static readonly JointInput CrankSpindle = Input<Crankset, Spindle>(Slot.Crankset, "spindle", "spindle", p => p.Spindle, "Outside caliper on the spindle and rule along it; read the crank maker's chart of shells.");
    public static readonly JointInput CrankPedals = Input<Crankset, PedalThread>(Slot.Crankset, "pedalThread", "pedal thread of the crank", p => p.PedalThread, "A one-piece crank has 1/2 in, other cranks 9/16 in; old French ones are stamped D and G and measure 14 mm.");
    public static readonly JointInput PedalsThread = Input<Pedals, PedalThread>(Slot.Pedals, "thread", "pedal thread", p => p.Thread, "Outside caliper on the thread: 12.7 mm is 1/2 in, 14.3 is 9/16 in, 14.0 French.");

    public static JointInput TwoDiameters => Projected<Seatpost, SeatpostDiameter>(Slot.Seatpost, "diameter", "seatpost diameter", p => p.Diameter, d => 2 * d.FitCode, () => Scaled(CodesOf<SeatpostDiameter>(null), 2), "Outside caliper on the round part, two directions, to 0.05 mm; trust it over the stamp.");

    public static JointInput Body => Input<Wheel, FreehubBody>(Slot.RearWheel, "body", "freehub body", p => p.FreehubBody, "Pull the cassette; count splines and rule the body: HG 31, 34.9 or 36.75 mm, to 0.5 mm.");

    public static JointInput Hub(Slot slot) => Input<Wheel, HubStandard>(slot, "hub", "hub standard", p => p.Hub, "Rule over the locknuts or end caps, to 0.5 mm, and the axle, to 0.1 mm.", where: h => h.IsRear == (slot == Slot.RearWheel));

    public static JointInput Ends(Slot slot) => Input<Wheel, HubEnds>(slot, "ends", "hub ends", p => p.Ends, "Pull at an end cap: if it comes off and the bore passes a 12 mm axle the ends swap; cones and locknuts do not. Check the hub maker's list of caps.");

    public static JointInput Fixing(Slot slot) => Input<Wheel, RotorFixing>(slot, "rotorFixing", "rotor fixing of the hub", p => p.RotorFixing, "Six threaded holes, or splines with a lockring.");

    public static JointInput RotorsFixing(Slot slot) => Input<Rotor, RotorFixing>(slot, "fixing", "rotor fixing", p => p.Fixing, "Six holes, or splines in the middle.");

    public static JointInput Seat(Slot slot) => Input<Wheel, BeadSeat>(slot, "beadSeat", "rim bead seat", p => p.BeadSeat, "Read the ISO number on the rim or on a tyre that fits it (the one after the dash).");

    public static JointInput Inner(Slot slot) => Input<Wheel, Dimension>(slot, "innerWidth", "rim inner width", p => p.InnerWidth, "Caliper between the flanges where the bead sits, to 0.5 mm; not the outside.", Lengths);

    public static JointInput Type(Slot slot) => Input<Wheel, RimType>(slot, "rimType", "rim type", p => p.RimType, "Look at the flange: a small hook is crochet (TC if tubeless-ready), none is hookless or old straight side. Ask the rim maker.");

    public static JointInput Bead(Slot slot) => Input<Tyre, TyreBead>(slot, "bead", "tyre bead", p => p.Bead, "Read the sidewall: tubeless-ready, folding, or a wire that does not fold.");

    public static JointInput Size(Slot slot) => Projected<Rotor, RotorSize>(slot, "size", "rotor size", p => p.Size, RotorSize.Exact, Rotors, "Rule across the rotor through the centre, to 1 mm: 200 and 203 are two sizes.");

    /// <summary>Against a limit a rotor is a plain length: an unknown one may be larger than any that a table lists.</summary>
    public static JointInput Across(Slot slot) => Projected<Rotor, RotorSize>(slot, "size", "rotor size", p => p.Size, RotorSize.Exact, Rotors, "Rule across the rotor through the centre, to 1 mm: 200 and 203 are two sizes.", isLength: true);

    public static JointInput SeatOf(Slot slot) => Projected<Tyre, TyreSize>(slot, "size", "tyre bead seat", p => p.SizeOrTubular, s => s.FitCode % 1_000, Seats, "Read the ISO number on the sidewall, such as 37-622.", family: 0);

    public static JointInput WidthOf(Slot slot) => Projected<Tyre, TyreSize>(slot, "size", "tyre width", p => p.SizeOrTubular, s => s.WidthMillimetres * Nanometres.PerMillimetre, Widths, "Read the ISO number on the sidewall, such as 37-622.");

    private static ImmutableArray<long> Rotors() => Scaled(CodesOf<RotorSize>(null), Nanometres.PerMillimetre);

    public static ImmutableArray<long> CodesOf<T>(Func<T, bool>? where)
        where T : IInterfaceValue<T>
    {
        ImmutableArray<T> all = T.All;
        ImmutableArray<long>.Builder codes = ImmutableArray.CreateBuilder<long>(all.Length);
        for (int i = 0; i < all.Length; i++)
        {
            if (where is null || where(all[i]))
            {
                codes.Add(all[i].FitCode);
            }
        }

        return codes.ToImmutable();
    }

    private static ImmutableArray<long> Scaled(ImmutableArray<long> codes, long by)
    {
        long[] scaled = new long[codes.Length];
        for (int i = 0; i < scaled.Length; i++)
        {
            scaled[i] = codes[i] * by;
        }

        return ImmutableArray.Create(scaled);
    }

    private static ImmutableArray<long> Widths()
    {
        long[] widths = new long[115];
        for (int i = 0; i < widths.Length; i++)
        {
            widths[i] = (18 + i) * Nanometres.PerMillimetre;
        }

        return ImmutableArray.Create(widths);
    }

    private static ImmutableArray<long> ShellWidths()
    {
        List<long> widths = [];
        foreach (Shell shell in Shell.All)
        {
            int at = widths.BinarySearch(shell.WidthNanometres);
            if (at < 0)
            {
                widths.Insert(~at, shell.WidthNanometres);
            }
        }

        return [.. widths];
    }

    private static FieldInput<TPart, T> Input<TPart, T>(Slot slot, string field, string called, Func<TPart, Known<T>> get, string measure, int family = 0, Func<T, bool>? where = null, Func<Part, bool>? isStated = null, bool isReadWhenBuilt = false)
        where TPart : Part
        where T : IInterfaceValue<T> => new FieldInput<TPart, T>(slot, field, called, get, measure) { Family = family, Where = where, Stated = isStated, IsReadWhenBuilt = isReadWhenBuilt };

    private static FigureInput<TPart, T> Projected<TPart, T>(Slot slot, string field, string called, Func<TPart, Known<T>> get, Func<T, long> from, Func<ImmutableArray<long>> lists, string measure, int family = Lengths, bool isLength = false, Func<long, string>? show = null, bool showsLength = false)
        where TPart : Part
        where T : IInterfaceValue<T> => new FigureInput<TPart, T>(slot, field, called, get, from, measure) { Family = family, IsLength = isLength, Lists = lists, Shows = show, TellsLength = showsLength };

    public static JointInput AxleOf(Slot slot) => Input<ThruAxle, AxleThread>(slot, "thread", "axle thread", p => p.Thread, "Read the axle's head; a thread gauge tells 1.0, 1.5 and 1.75 mm a turn (a caliper reads 11.85 to 11.95 on M12).");

    public static JointInput LargestWidth(Slot slot) => slot == Slot.Frame
        ? Projected<Frame, TyreSize>(slot, "largestRearTyre", "largest rear tyre", p => p.LargestRearTyre, Width, Widths, RoomMeasure)
        : Projected<Fork, TyreSize>(slot, "largestFrontTyre", "largest front tyre", p => p.LargestFrontTyre, Width, Widths, RoomMeasure);

    public static JointInput LargestSeat(Slot slot) => slot == Slot.Frame
        ? Projected<Frame, TyreSize>(slot, "largestRearTyre", "wheel size of the largest rear tyre", p => p.LargestRearTyre, s => s.FitCode % 1_000, Seats, RoomMeasure, family: 0)
        : Projected<Fork, TyreSize>(slot, "largestFrontTyre", "wheel size of the largest front tyre", p => p.LargestFrontTyre, s => s.FitCode % 1_000, Seats, RoomMeasure, family: 0);

    public static JointInput MountedWidth(Slot slot) => WhenBuilt<Tyre>(slot, "mountedWidth", "width of the mounted tyre", p => p.MountedWidthOrNothing, "Caliper over the casing, and over knobs that stand out, mounted and at riding pressure, at three places, the widest, to 0.5 mm.");

    public static JointInput MountedRim(Slot slot) => WhenBuilt<Tyre>(slot, "mountedRim", "rim on which the tyre was measured", p => p.MountedRimOrNothing, "Inner width of the rim on which the mounted width was measured.");

    /// <summary>What is read on the finished bicycle.</summary>
    private static FieldInput<TPart, Dimension> WhenBuilt<TPart>(Slot slot, string field, string called, Func<TPart, Known<Dimension>> get, string measure)
        where TPart : Part => Input(slot, field, called, get, measure, Lengths, isStated: part => get((TPart)part).State != KnownState.None, isReadWhenBuilt: true);

    private const string RoomMeasure = "The maker's largest tyre as an ISO size; or the narrowest gap at that wheel size, less 12 mm (8 mm on a racing bicycle) and 3 mm for the tyre's own tolerance.";

    private static ImmutableArray<long> Seats() => CodesOf<BeadSeat>(null);

    private static long Width(TyreSize size) => size.WidthMillimetres * Nanometres.PerMillimetre;
}
