using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What to look at on one kind of part that is not new.</summary>
/// <param name="Duty">What comes of it when it fails.</param>
/// <param name="What">Where to look, for what, with what.</param>
/// <param name="Sources">What it rests on.</param>
internal sealed record InspectionRow(PartDuty Duty, string What, params ImmutableArray<Source> Sources);

/// <summary>What to inspect on used parts, a row for each kind. Why a kind counts as it does: see <see cref="PartDuty"/>.</summary>
internal static class InspectionTable
{
    private const string Carbon = " Carbon: look also for soft, white or loose places, creaks, and a dull tap beside a sound one.";

    private const string Play = "Turn it by hand, then push and pull across: rough, notched or loose is worn; adjust first where it can be adjusted.";

    private static readonly InspectionRow Frame = new(PartDuty.Safety, "Clean it; light and straightedge over every tube: cracks at welds, lugs, head tube, bottom bracket, bridges and ends; dents, bulges, blistered paint; hanger, ends and head tube in line; threads and seats. Ask for crashes, and look for a recall." + Carbon, Sources.ReuseInspection, Sources.UsedBicycle, Sources.CarbonFrameManual);

    private static readonly InspectionRow Fork = new(PartDuty.Safety, "Take it out: cracks and bends at crown, steerer, brake mounts and ends; the steerer where stem, plug and lower race sat; blades in line. Suspension: play in the bushes, worn coating, oil. Ask for crashes, and look for a recall." + Carbon, Sources.ReuseInspection, Sources.UsedBicycle, Sources.CarbonFrameManual);

    private static readonly InspectionRow Wheel = new(PartDuty.Safety, "Spin it true; feel every spoke; cracks at spoke holes, in the flanges and at the axle; brake track: wear mark, straightedge, wall of 1.0 mm or less by caliper is worn out; dents at the bead; play at the rim is a bearing. Carbon: heat marks at the track too.", Sources.ReuseInspection, Sources.RimWall, Sources.RimWallBreaks);

    private static readonly InspectionRow Tyre = new(PartDuty.Safety, "Whole circumference, both sides: casing that shows, cuts, bulges, cracked rubber, frayed or bent bead; wear marks in the tread where there are some.", Sources.UsedBicycle);

    private static readonly InspectionRow Cassette = new(PartDuty.Wear, "Teeth against a new one: hooked or thin is worn; then every sprocket under load with the chain that will run on it. Chain, sprockets and rings wear as a set.", Sources.ChainWithSprockets, Sources.UsedBicycle);

    private static readonly InspectionRow Rings = new(PartDuty.Wear, "Teeth against a new one: hooked like a fin, thin or bent is worn; bolts and holes. Chain, sprockets and rings wear as a set.", Sources.ChainWithSprockets, Sources.UsedBicycle);

    private static readonly InspectionRow Rotor = new(PartDuty.Safety, "Micrometer on the track at its thinnest place, against the least that is marked on it: below that it is worn out; cracks at the arms, warp, blue heat marks, oil.", Sources.RotorFaq, Sources.WornRotors);

    private static readonly InspectionRow Brake = new(PartDuty.Safety, "Pads, springs, pivots, bolts and their threads; hydraulic: leaks at pistons and fittings, pistons that come back; arms and mounts for cracks. Squeeze hard, and look again.", Sources.UsedBicycle);

    private static readonly InspectionRow Lever = new(PartDuty.Safety, "Blade, pivot, clamp and hose or cable end for cracks and bends: a lever is the first thing to hit the ground. Squeeze hard: it must not reach the bar, sink or leak.", Sources.ChainWithSprockets, Sources.UsedBicycle);

    private static readonly InspectionRow Post = new(PartDuty.Cockpit, "Out of the frame: cracks and score marks where the collar sat and at the head, corrosion, clamp bolts and jaws, insertion mark readable. Replace light alloy after a fall." + Carbon, Sources.ReuseInspection, Sources.AlloyPartsLife, Sources.CarbonPostCracks);

    private static readonly InspectionRow Stem = new(PartDuty.Cockpit, "Off the bar: cracks at clamp slots, bolt holes and welds, stripped threads, bent bolts. Replace light alloy after a fall; pages name two to ten years of use as its life." + Carbon, Sources.AlloyBarsAfterFall, Sources.AlloyPartsLife);

    private static readonly InspectionRow Bar = new(PartDuty.Cockpit, "Tape and grips off: cracks, scores and corrosion at stem and lever clamps, bends against a straightedge. Replace light alloy after a fall; pages name two to ten years of use as its life." + Carbon, Sources.AlloyBarsAfterFall, Sources.AlloyPartsLife, Sources.CarbonCrashManual);

    private static readonly InspectionRow Collar = new(PartDuty.Safety, "Cracks at bolt and slot, stripped thread, bent bolt or cam.", Sources.CommonPractice);

    private static readonly InspectionRow Saddle = new(PartDuty.Safety, "Rails for bends, cracks and scores at the clamp; where they enter the shell; shell for cracks.", Sources.CommonPractice);

    private static readonly InspectionRow Axle = new(PartDuty.Safety, "Roll it on glass for a bend; thread for missing or flattened turns; cracks at head and groove; cam or nuts that hold.", Sources.CommonPractice);

    private static readonly InspectionRow Crank = new(PartDuty.Crank, "Cracks at the pedal eye, at the spindle and where arm and spider meet; taper or splines that are rounded or pulled; pedal threads; arms in line; teeth of the rings against new ones." + Carbon, Sources.UsedBicycle, Sources.ChainWithSprockets);

    private static readonly InspectionRow Pedals = new(PartDuty.Safety, "Axle for a bend and for play, threads, cracks in body and cage, retention that holds and lets go.", Sources.UsedBicycle);

    private static readonly InspectionRow Chain = new(PartDuty.Wear, "Rule over 24 pitches under tension, new 304.8 mm: worn out 0.5 % longer for 11 and 12 speeds, 0.75 % for 10 and fewer, 1 % for one speed; stiff links, cracked plates, rust.", Sources.ChainWearLimits, Sources.ChainWearShop, Sources.ChainWearRuler);

    private static readonly InspectionRow Bearings = new(PartDuty.Bearing, Play + " Cups, races and threads for cracks and pits.", Sources.UsedBicycle, Sources.ReuseInspection);

    private static readonly InspectionRow Shock = new(PartDuty.Bearing, "Shaft for scores, oil at the seals, play at both bushes, damping in both ways, air that stays in.", Sources.EyeletBushings, Sources.TrunnionWear);

    private static readonly InspectionRow Grips = new(PartDuty.Wear, "Turn and pull hard, dry and wet: a grip that moves is worn out; clamps and end plugs.", Sources.CommonPractice);

    private static readonly InspectionRow Plug = new(PartDuty.Wear, "Star nut: straight in the steerer, thread whole, holds when the cap is turned. Expander: cracks, thread, surfaces that grip; it has to hold, and to carry a carbon steerer under the stem.", Sources.StarNutSetting);

    private static readonly InspectionRow Tape = new(PartDuty.Wear, "Off the rim or all round on it: torn, shifted, dented into the spoke holes, glue that lets go; every hole covered.", Sources.CommonPractice);

    private static readonly InspectionRow Derailleur = new(PartDuty.Wear, "Hang it straight behind the sprockets and work it from end to end: a bent cage, play in the pivots or a lazy spring lets it swing into the spokes; limit screws that hold, pulleys and their teeth.", Sources.CommonPractice);

    private static readonly InspectionRow Tube = new(PartDuty.Wear, "Blow it up outside the tyre and leave it: folds, thin or sticky places, patches that lift, rubber torn at the valve; the valve's own stem and core.", Sources.CommonPractice);

    private static readonly InspectionRow Valve = new(PartDuty.Wear, "Stem for bends and a stripped thread, rubber foot for cuts, core that closes.", Sources.CommonPractice);

    private static readonly InspectionRow Adapter = new(PartDuty.Wear, "Threads and faces for wear, cracks and corrosion; screw it in by hand: it has to bear on the whole face and stay.", Sources.CommonPractice);

    private static readonly InspectionRow Rest = new(PartDuty.Other, "Work it through its whole range: cracks, bends, loose pivots, worn wheels or seals, corrosion.", Sources.CommonPractice);

    /// <summary>The row of the kind of part that goes to a slot; null for the rider.</summary>
    public static InspectionRow? Of(Slot slot) =>
        slot == Slot.Rider ? null
        : slot == Slot.Frame ? Frame
        : slot == Slot.Fork ? Fork
        : slot == Slot.FrontWheel || slot == Slot.RearWheel ? Wheel
        : slot == Slot.FrontTyre || slot == Slot.RearTyre ? Tyre
        : slot == Slot.Cassette ? Cassette
        : slot == Slot.Chainring ? Rings
        : slot == Slot.FrontRotor || slot == Slot.RearRotor ? Rotor
        : slot == Slot.FrontCaliper || slot == Slot.RearCaliper || slot == Slot.FrontRimBrake || slot == Slot.RearRimBrake ? Brake
        : slot == Slot.FrontBrakeLever || slot == Slot.RearBrakeLever || slot == Slot.Controls ? Lever
        : slot == Slot.Seatpost || slot == Slot.Dropper ? Post
        : slot == Slot.Stem ? Stem
        : slot == Slot.Handlebar ? Bar
        : slot == Slot.SeatClamp ? Collar
        : slot == Slot.Saddle ? Saddle
        : slot == Slot.FrontThruAxle || slot == Slot.RearThruAxle || slot == Slot.FrontAxleNuts || slot == Slot.RearAxleNuts ? Axle
        : slot == Slot.Crankset ? Crank
        : slot == Slot.Pedals ? Pedals
        : slot == Slot.Chain ? Chain
        : slot == Slot.Headset || slot == Slot.BottomBracket || slot == Slot.UpperBearing || slot == Slot.LowerBearing ? Bearings
        : slot == Slot.Shock ? Shock
        : slot == Slot.Grips ? Grips
        : slot == Slot.Preload ? Plug
        : slot == Slot.FrontRimTape || slot == Slot.RearRimTape ? Tape
        : slot == Slot.RearDerailleur ? Derailleur
        : slot == Slot.FrontInnerTube || slot == Slot.RearInnerTube ? Tube
        : slot == Slot.FrontTubelessValve || slot == Slot.RearTubelessValve ? Valve
        : slot == Slot.ShellAdapter ? Adapter
        : Rest;

    /// <summary>What to look at on the parts that are stated to be used, of unknown condition or from a crash, and the age of parts whose date of making is stated, in the order of slots.</summary>
    public static ImmutableArray<InspectionPoint> Of(Build build)
    {
        ImmutableArray<InspectionPoint>.Builder points = ImmutableArray.CreateBuilder<InspectionPoint>();
        foreach (Slot slot in Slot.All)
        {
            if (build[slot] is not { } part || Of(slot) is not { } row)
            {
                continue;
            }

            string? age = AgeOfParts.Of(part);
            if (IsOpen(part.Condition))
            {
                points.Add(age is null ? new(slot, row.What, row.Sources) : new(slot, $"{row.What} {age}", [.. row.Sources.Union(AgeOfParts.Sources)]));
            }
            else if (age is not null)
            {
                points.Add(new(slot, age, AgeOfParts.Sources));
            }
        }

        return points.ToImmutable();
    }

    internal static bool IsOpen(Known<PartCondition> condition) => condition.Values.Any(c => c == PartCondition.Used || c == PartCondition.Crashed || c == PartCondition.NotKnown);
}
