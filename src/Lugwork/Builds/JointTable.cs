using System.Collections.Immutable;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Tyres;

namespace Lugwork;

/// <summary>The whole bicycle on one page: a joint a row.</summary>
public static class JointTable
{
    private const int SeatSizes = 1;
    private const int Lengths = 2;

    private static readonly JointInput RearEnd = Input<Frame, HubStandard>(Slot.Frame, "rear", "rear end", p => p.RearEnd, "Rule between the dropout faces, then look for the 3.5 mm shelf of a recessed end: with it add 7 mm. Read the axle diameter off the axle.", where: h => h.IsRear);
    private static readonly JointInput FrontEnd = Input<Fork, HubStandard>(Slot.Fork, "front", "fork end", p => p.FrontEnd, "Rule between the fork ends, to 0.5 mm; read the axle diameter off the axle, and the rotor side for Boost.", where: h => !h.IsRear);
    private static readonly JointInput Material = Input<Frame, FrameMaterial>(Slot.Frame, "material", "frame material", p => p.Material, "A magnet sticks to steel; otherwise ask the frame maker.");
    private static readonly JointInput Bore = Input<Frame, SeatTubeBore>(Slot.Frame, "seatTube", "seat tube bore", p => p.SeatTubeBore, "Inside caliper, two directions, 20 mm below the slot, to 0.05 mm.", SeatSizes);
    private static readonly JointInput Least = Input<Frame, Dimension>(Slot.Frame, "leastInsertion", "frame's least insertion", p => p.LeastInsertion, "The frame maker's figure; \"none\" if the maker prints none.", Lengths);
    private static readonly JointInput Most = Input<Frame, Dimension>(Slot.Frame, "mostInsertion", "open seat tube depth", p => p.MostInsertion, "Slide a straight rod down the seat tube to the first bend, bolt or pivot, to 5 mm.", Lengths);
    private static readonly JointInput RearMount = Input<Frame, BrakeMount>(Slot.Frame, "rearBrake", "rear brake mount", p => p.RearBrakeMount, "Hole spacing of the mount: 51 mm IS tabs, 74 mm posts, 34 mm flat mount; read the rotor size from the frame maker's sheet.", where: m => m.IsRear);
    private static readonly JointInput FrontMount = Input<Fork, BrakeMount>(Slot.Fork, "frontBrake", "front brake mount", p => p.FrontBrakeMount, "Hole spacing of the mount: 51 mm IS tabs, 74 mm posts, 34 mm flat mount; read the rotor size off the fork.", where: m => m.IsFront);
    private static readonly JointInput LargestRear = Input<Frame, Dimension>(Slot.Frame, "largestRearRotor", "largest rear rotor", p => p.LargestRearRotor, "Ask the frame maker for the largest rotor; do not guess.", Lengths);
    private static readonly JointInput LargestFront = Input<Fork, Dimension>(Slot.Fork, "largestFrontRotor", "largest front rotor", p => p.LargestFrontRotor, "Read it off the fork or its manual; do not guess.", Lengths);
    private static readonly JointInput Post = Input<Seatpost, SeatpostDiameter>(Slot.Seatpost, "diameter", "seatpost diameter", p => p.Diameter, "Outside caliper on the round part, two directions, to 0.05 mm; trust it over the stamp.", SeatSizes);
    private static readonly JointInput Mark = Input<Seatpost, Dimension>(Slot.Seatpost, "mark", "insertion mark", p => p.Mark, "From the lower end to the insertion line, to 1 mm.", Lengths);
    private static readonly JointInput Depth = Input<Seatpost, Dimension>(Slot.Seatpost, "insertion", "insertion", p => p.Insertion, "Tape the post at the collar at your saddle height, pull it out and rule from tape to end, to 1 mm.", Lengths);
    private static readonly JointInput Pattern = Input<Cassette, CassettePattern>(Slot.Cassette, "pattern", "cassette pattern", p => p.Pattern, "Count the sprockets and read the marking on the largest or the lockring.");
    private static readonly JointInput RearMounting = Input<Caliper, CaliperFoot>(Slot.RearBrake, "mounting", "caliper mounting", p => p.Mounting, "Hole spacing of the caliper: 74 mm post, 34 mm flat.");
    private static readonly JointInput FrontMounting = Input<Caliper, CaliperFoot>(Slot.FrontBrake, "mounting", "caliper mounting", p => p.Mounting, "Hole spacing of the caliper: 74 mm post, 34 mm flat.");

    /// <summary>Every joint, in the order of a build sheet.</summary>
    public static ImmutableArray<Joint> All { get; } =
    [
        new("front-wheel-in-fork", "Front wheel in fork", HubRelations.InFrame, FrontEnd, Hub(Slot.FrontWheel), Ends(Slot.FrontWheel)) { Sources = [Sources.AxleGuide, Sources.HubStandards], Caution = Cautions.Axle },
        new("rear-wheel-in-frame", "Rear wheel in frame", HubRelations.InFrame, RearEnd, Hub(Slot.RearWheel), Ends(Slot.RearWheel), Material) { Sources = [Sources.AxleGuide, Sources.HubStandards], Caution = Cautions.Axle },
        new("front-tyre-bead-on-rim", "Front tyre on rim, bead seat", TyreOnRim.Bead, Seat(Slot.FrontWheel), SeatOf(Slot.FrontTyre)) { Sources = [Sources.Iso5775Article] },
        new("rear-tyre-bead-on-rim", "Rear tyre on rim, bead seat", TyreOnRim.Bead, Seat(Slot.RearWheel), SeatOf(Slot.RearTyre)) { Sources = [Sources.Iso5775Article] },
        new("front-tyre-width-on-rim", "Front tyre on rim, width", TyreOnRim.Width, Type(Slot.FrontWheel), Inner(Slot.FrontWheel), WidthOf(Slot.FrontTyre), Bead(Slot.FrontTyre)) { Sources = [Sources.WidthRanges2022, Sources.WidthMatrix2006] },
        new("rear-tyre-width-on-rim", "Rear tyre on rim, width", TyreOnRim.Width, Type(Slot.RearWheel), Inner(Slot.RearWheel), WidthOf(Slot.RearTyre), Bead(Slot.RearTyre)) { Sources = [Sources.WidthRanges2022, Sources.WidthMatrix2006] },
        new("cassette-on-freehub-body", "Cassette on freehub body", CassetteOnBody.Table, Body, Pattern) { Sources = [Sources.FreehubTypes] },
        new("front-rotor-on-hub", "Front rotor on hub", BrakeRelations.Fixing, Fixing(Slot.FrontWheel), RotorsFixing(Slot.FrontRotor)) { Sources = [Sources.SixBoltAndSplined] },
        new("rear-rotor-on-hub", "Rear rotor on hub", BrakeRelations.Fixing, Fixing(Slot.RearWheel), RotorsFixing(Slot.RearRotor)) { Sources = [Sources.SixBoltAndSplined] },
        new("front-rotor-within-limit", "Front rotor within the fork's limit", BrakeRelations.Limit, Across(Slot.FrontRotor), LargestFront) { Sources = [Sources.CommonPractice], Caution = Cautions.Rotor },
        new("rear-rotor-within-limit", "Rear rotor within the frame's limit", BrakeRelations.Limit, Across(Slot.RearRotor), LargestRear) { Sources = [Sources.CommonPractice], Caution = Cautions.Rotor },
        new("front-caliper-on-mount", "Front caliper and rotor on mount", BrakeRelations.OnMount, FrontMount, FrontMounting, Size(Slot.FrontRotor)) { Sources = [Sources.MountAnswer, Sources.AdapterGuide], Caution = Cautions.BrakeWork },
        new("rear-caliper-on-mount", "Rear caliper and rotor on mount", BrakeRelations.OnMount, RearMount, RearMounting, Size(Slot.RearRotor)) { Sources = [Sources.MountAnswer, Sources.AdapterGuide], Caution = Cautions.BrakeWork },
        new("seatpost-in-seat-tube", "Seatpost in seat tube", SeatpostRelations.InBore, Bore, Post) { Sources = [Sources.PostSizes] },
        new("seatpost-room-in-seat-tube", "Room for the seatpost", SeatpostRelations.Room, Mark, Least, Most) { Sources = [Sources.FrameManual, Sources.SeatRegulation], Caution = Cautions.Insertion },
        new("seatpost-insertion", "Seatpost insertion", SeatpostRelations.Depth, Depth, Mark, Least, Most, TwoDiameters) { Sources = [Sources.FrameManual, Sources.SeatRegulation], Caution = Cautions.Insertion },
    ];

    private static JointInput TwoDiameters => Projected<Seatpost, SeatpostDiameter>(Slot.Seatpost, "diameter", "seatpost diameter", p => p.Diameter, d => 2 * d.FitCode, [.. SeatpostDiameter.All.Select(d => 2 * d.FitCode)], "Outside caliper on the round part, two directions, to 0.05 mm; trust it over the stamp.");

    private static JointInput Body => Input<Wheel, FreehubBody>(Slot.RearWheel, "body", "freehub body", p => p.Body, "Pull the cassette; count splines and rule the body: HG 31, 34.9 or 36.75 mm, to 0.5 mm.");

    private static JointInput Hub(Slot slot) => Input<Wheel, HubStandard>(slot, "hub", "hub standard", p => p.Hub, "Rule over the locknuts or end caps, to 0.5 mm, and the axle, to 0.1 mm.", where: h => h.IsRear == (slot == Slot.RearWheel));

    private static JointInput Ends(Slot slot) => Input<Wheel, HubEnds>(slot, "ends", "hub ends", p => p.Ends, "Pull at an end cap: if it comes off and the bore passes a 12 mm axle the ends swap; cones and locknuts do not. Check the hub maker's list of caps.");

    private static JointInput Fixing(Slot slot) => Input<Wheel, RotorFixing>(slot, "rotorFixing", "rotor fixing of the hub", p => p.RotorFixing, "Six threaded holes, or splines with a lockring.");

    private static JointInput RotorsFixing(Slot slot) => Input<Rotor, RotorFixing>(slot, "fixing", "rotor fixing", p => p.Fixing, "Six holes, or splines in the middle.");

    private static JointInput Seat(Slot slot) => Input<Wheel, BeadSeat>(slot, "beadSeat", "rim bead seat", p => p.BeadSeat, "Read the ISO number on the rim or on a tyre that fits it (the one after the dash).");

    private static JointInput Inner(Slot slot) => Input<Wheel, Dimension>(slot, "innerWidth", "rim inner width", p => p.InnerWidth, "Caliper between the flanges where the bead sits, to 0.5 mm; not the outside.", Lengths);

    private static JointInput Type(Slot slot) => Input<Wheel, RimType>(slot, "rimType", "rim type", p => p.RimType, "Look at the flange: a small hook is crochet (TC if tubeless-ready), none is hookless or old straight side. Ask the rim maker.");

    private static JointInput Bead(Slot slot) => Input<Tyre, TyreBead>(slot, "bead", "tyre bead", p => p.Bead, "Read the sidewall: tubeless-ready, folding, or a wire that does not fold.");

    private static JointInput Size(Slot slot) => Projected<Rotor, RotorSize>(slot, "size", "rotor size", p => p.Size, RotorSize.Exact, [.. RotorSize.All.Select(RotorSize.Exact)], "Rule across the rotor through the centre, to 1 mm: 200 and 203 are two sizes.");

    /// <summary>Against a limit a rotor is a plain length: an unknown one may be larger than any that a table lists.</summary>
    private static JointInput Across(Slot slot) => Projected<Rotor, RotorSize>(slot, "size", "rotor size", p => p.Size, RotorSize.Exact, [.. RotorSize.All.Select(RotorSize.Exact)], "Rule across the rotor through the centre, to 1 mm: 200 and 203 are two sizes.", isLength: true);

    private static JointInput SeatOf(Slot slot) => Projected<Tyre, TyreSize>(slot, "size", "tyre size", p => p.Size, s => s.FitCode % 1_000, [.. BeadSeat.All.Select(b => b.FitCode)], "Read the ISO number on the sidewall, such as 37-622.", family: 0);

    private static JointInput WidthOf(Slot slot) => Projected<Tyre, TyreSize>(slot, "size", "tyre size", p => p.Size, s => s.WidthMillimetres * Nanometres.PerMillimetre, [.. Enumerable.Range(18, 115).Select(w => w * Nanometres.PerMillimetre)], "Read the ISO number on the sidewall, such as 37-622.");

    private static JointInput Input<TPart, T>(Slot slot, string field, string called, Func<TPart, Known<T>> get, string measure, int family = 0, Func<T, bool>? where = null)
        where TPart : Part
        where T : IInterfaceValue<T> => new()
        {
            Slot = slot,
            Field = field,
            Called = called,
            Read = where is null ? part => get((TPart)part).ToCandidates() : part => Narrow(get((TPart)part), where),
            Domain = [.. T.All.Where(v => where is null || where(v)).Select(v => v.FitCode)],
            Family = family,
            IsLength = T.IsPlainLength,
            Show = code => T.OfFitCode(code).FitKey,
            ShowKnown = part => get((TPart)part).InTradeWords(),
            Evidence = part => get((TPart)part).Evidence,
            Measure = measure,
        };

    /// <summary>Of several readings those that can be at this end of the bicycle; all of them where none can.</summary>
    private static Candidates Narrow<T>(Known<T> known, Func<T, bool> where)
        where T : IInterfaceValue<T>
    {
        if (known.State != KnownState.OneOf)
        {
            return known.ToCandidates();
        }

        ImmutableArray<T> here = [.. known.Values.Where(where)];
        return here.IsEmpty ? known.ToCandidates() : Known<T>.OneOf(here).ToCandidates();
    }

    private static JointInput Projected<TPart, T>(Slot slot, string field, string called, Func<TPart, Known<T>> get, Func<T, long> from, ImmutableArray<long> domain, string measure, int family = Lengths, bool isLength = false)
        where TPart : Part
        where T : IInterfaceValue<T> => new()
        {
            Slot = slot,
            Field = field,
            Called = called,
            Read = part => get((TPart)part).ToCandidates(from),
            Domain = domain,
            Family = family,
            IsLength = isLength,
            Show = code => family == 0 ? BeadSeat.OfFitCode(code).FitKey : new Nanometres(code).ToString(),
            ShowKnown = part => get((TPart)part).InTradeWords(),
            Evidence = part => get((TPart)part).Evidence,
            Measure = measure,
        };
}
