using System.Collections.Immutable;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Tyres;

namespace Lugwork.Workshop;

/// <summary>Tape, tyre, rotor and cassette on a wheel, and the wheel in the frame: one declaration for both ends.</summary>
internal static class WheelSteps
{
    public static ImmutableArray<StepRule> For(WheelEnd end) =>
    [
        new()
        {
            Id = $"tape-{end.Name}-rim", Title = $"Tape the {end.Name} rim", Stage = WorkStage.Wheels, Needed = b => b.Has(end.Tape), Uses = [end.Wheel, end.Tape], Joints = [$"{end.Name}-rim-tape-on-rim"],
            After = [new("inspect-parts", "a cracked or worn rim is not taped")],
            Does = b => ["Clean the bed of the rim with alcohol and let it dry.", "Lay the tape tight from edge to edge, past the valve hole by a hand's width.", "Cut the valve hole clean."],
            Consumables = _ => [Kit.Alcohol], Checks = _ => ["Every spoke hole is covered; the edges lie down."], Cautions = _ => [Lugwork.Cautions.RimTape], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = $"fit-{end.Name}-tube", Title = $"Put in the {end.Name} tube", Stage = WorkStage.Wheels, Needed = b => b.Has(end.Tube), Uses = [end.Wheel, end.Tyre, end.Tube],
            Joints = [$"{end.Name}-tube-in-tyre", $"{end.Name}-tube-width-in-tyre", $"{end.Name}-tube-valve-through-rim", $"{end.Name}-tube-valve-length"],
            After = [new($"tape-{end.Name}-rim", "the tape keeps the tube off the spoke holes")],
            Does = b => b.RidesOnTube(end) ? ["Give the tube a little air.", "Lay it in the tyre with the valve through the rim."] : ["Keep it as the spare: the tyre is ridden without a tube, on its own valve."],
            Tools = b => [b.RidesOnTube(end) ? Kit.Pump : null], Checks = b => [b.RidesOnTube(end) ? "The tube is not twisted; the valve stands straight." : "The spare is of the size of the tyre."], Cautions = _ => [Lugwork.Cautions.TubeCare], Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = $"fit-{end.Name}-valve", Title = $"Fit the {end.Name} tubeless valve", Stage = WorkStage.Wheels, Needed = b => b.Has(end.Valve), Uses = [end.Wheel, end.Valve], Joints = [$"{end.Name}-valve-through-rim", $"{end.Name}-valve-length"],
            After = [new($"tape-{end.Name}-rim", "the valve seals on the tape")],
            Does = b => [b.Has(end.Tape) ? null : "See that the bed of the rim is closed or taped: where spoke holes are open the rim holds no air.", b.Has(end.Tape) ? "Push the valve through the tape." : "Push the valve through its hole from inside.", "Tighten its nut by hand, no tool."], Checks = _ => ["The foot of the valve seals all round."], Cautions = _ => [Lugwork.Cautions.ValveHole], Time = WorkTime.QuarterHour,
        },
        Tyre(end),
        new()
        {
            Id = $"fit-{end.Name}-rotor", Title = $"Fit the {end.Name} rotor", Stage = WorkStage.Wheels, Needed = b => b.Has(end.Rotor), Uses = [end.Wheel, end.Rotor],
            Joints = [$"{end.Name}-rotor-on-hub", $"{end.Name}-rotor-within-limit", $"{end.Name}-lockring-on-hub-axle", $"{end.Name}-carrier-with-lockring"],
            After = [new($"fit-{end.Name}-tyre", "sealant and lubricant stay off the rotor")],
            Does = b => FixingOf(b, end) switch
            {
                { } fixing when fixing == RotorFixing.CenterLock => ["Wipe the rotor with alcohol.", "Slide it on, its arrow the way the wheel turns.", "Grease the thread of the lockring, never the rotor.", "Tighten the lockring to the maker's torque."],
                { } => ["Wipe the rotor with alcohol.", "Lay it on, its arrow the way the wheel turns.", "Put thread lock on bolts that come without it.", "Tighten its bolts crosswise to the maker's torque."],
                _ => ["Wipe the rotor with alcohol.", "Find out first how the rotor is held: by bolts, and how many, or by a lockring on splines. Bolts, tool and torque go by it."],
            },
            Tools = b => FixingOf(b, end) switch
            {
                { } fixing when fixing == RotorFixing.CenterLock => [LockringTool(b, end)],
                { } fixing when fixing == RotorFixing.SixBolt => [KeySizes.RotorStar],
                { } => [new("rotor-key", "key for the bolts of this rotor")],
                _ => [],
            },
            Consumables = b => [Kit.Alcohol, FixingOf(b, end) is { } fixing ? fixing == RotorFixing.CenterLock ? Kit.Grease : Kit.Threadlock : null],
            Torques = b => [RotorTorque(b, end)],
            Figures = r => [BrakeFigures.Thickness(r.Build, end), RotorTorque(r.Build, end) is not null ? null : WorkFigure.LacksTorque("rotor-torque", "torque of the rotor", FixingOf(r.Build, end) is null ? "how the rotor is held" : "the rotor maker's figure: the row of six bolts does not hold for four or five")],
            Checks = _ => ["The rotor runs true and free of grease."], Cautions = _ => [Lugwork.Cautions.Rotor], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        .. end.IsFront ? ImmutableArray<StepRule>.Empty : [Sprockets(), BeltIn()],
        Wheel(end),
    ];

    private static StepRule Tyre(WheelEnd end) => new()
    {
        Id = $"fit-{end.Name}-tyre", Title = $"Fit the {end.Name} tyre", Stage = WorkStage.Wheels, Needed = b => b.Has(end.Tyre), Uses = [end.Wheel, end.Tyre, end.Tube, end.Valve],
        Joints =
        [
            $"{end.Name}-tyre-bead-on-rim", $"{end.Name}-tyre-width-on-rim", $"{end.Name}-tubular-on-rim",
            end.IsFront ? "front-tyre-in-fork" : "rear-tyre-in-frame", end.IsFront ? "front-tyre-on-its-rim-in-fork" : "rear-tyre-on-its-rim-in-frame",
        ],
        After = [new($"tape-{end.Name}-rim", "the bed is closed before the tyre goes on"), new($"fit-{end.Name}-tube", "the tube goes in with the tyre"), new($"fit-{end.Name}-valve", "a tyre without a tube is blown up through this valve"), new("inspect-parts", "a worn rim gets no tyre")],
        Does = b => b.IsTubular(end.Tyre)
            ? ["Stretch the tyre on the dry rim for a day.", "Glue or tape it as the makers of tyre, rim and glue say.", "Let it set for as long as they say."]
            : ["Mind the arrow on the side of the tyre.", "Lift the beads on by hand, first opposite the valve and last at the valve, with the beads pushed into the well of the rim.", b.IsTubeless(end.Tyre) && !b.RidesOnTube(end) ? "Pour sealant in; blow the beads on to their seats, at most to the lower of the largest pressures of tyre and rim." : b.RidesOnTube(end) ? "Pump a little, see that no tube is under a bead, then pump up." : "Pump it up, at most to the lower of the largest pressures of tyre and rim."],
        Tools = b => [b.IsTubular(end.Tyre) ? null : Kit.TyreLevers, Kit.Pump],
        Consumables = b => [b.IsTubular(end.Tyre) ? new("tubular-glue", "glue or tape that tyre and rim maker allow") : null, b.IsTubeless(end.Tyre) && !b.RidesOnTube(end) ? new("sealant", "sealant, as the tyre maker says for its size") : null],
        Figures = r => [TyreFigures.Lowest(r.Build, end)],
        Checks = _ => ["The line on the tyre is even all round, on both sides.", "The pressure is at most the lower of the largest ones of tyre and rim, and at least the tyre's least."],
        Cautions = b => [b.IsTubular(end.Tyre) ? Lugwork.Cautions.Tubular : Lugwork.Cautions.PressureLimit, b.As<Wheel>(end.Wheel)?.RimType.Is(RimType.Hookless) == true ? Lugwork.Cautions.Hookless : null, Lugwork.Cautions.TyreRoom],
        Skill = WorkSkill.Practised, Time = WorkTime.HalfHour, Shop = b => b.IsTubular(end.Tyre) ? new(false, "a tubular that comes off throws the rider; glue takes practice") : null,
    };

    private static StepRule Sprockets() => new()
    {
        Id = "fit-cassette", Title = "Fit the sprockets", Stage = WorkStage.Wheels, Needed = b => b.Has(Slot.Cassette), Uses = [Slot.RearWheel, Slot.Cassette], Joints = ["cassette-on-freehub-body", "freewheel-on-hub-thread"],
        After = [new("fit-rear-rotor", "a hub is worked on from the rotor's side first, while nothing oily is near it")],
        Does = b => HoldOf(b) switch
        {
            SprocketHold.Unknown => ["Find out first how the sprockets are held: by a lockring, a thread, a ring that snaps in, or the hub's own carrier."],
            SprocketHold.Freewheel => ["Grease the thread.", "Start the freewheel by hand and screw it on; pedalling tightens it the rest of the way."],
            SprocketHold.Fixed => ["Grease the thread.", "Start the sprocket by hand, then screw it on as tight as the chain whip brings it.", "Screw its lockring on anticlockwise, since its thread is left-hand, and tighten it hard against the sprocket.", "Never ride it without the lockring."],
            SprocketHold.OwnThread => ["Grease the thread and the splines of the body thinly.", "Slide the cassette on, and start the ring that is part of it on the body by hand: there is no separate lockring.", "Tighten that ring to the maker's torque."],
            SprocketHold.SnapRing => ["Lay the sprocket on its three lugs, dished as the chainline asks for.", "Press the snap ring into its groove all round; no lockring is screwed on."],
            SprocketHold.Carrier => ["Fit the sprocket on the carrier as the hub maker says, and tighten what holds it to the hub maker's torque."],
            _ => ["Grease the body thinly.", "Slide the sprockets on with the spacers that belong to them.", "Grease the thread of the lockring, and tighten it to the maker's torque."],
        },
        Tools = b =>
        [
            HoldOf(b) is SprocketHold.Lockring or SprocketHold.OwnThread or SprocketHold.Freewheel ? new("cassette-tool", $"remover by the maker of these sprockets: {b.As<Cassette>(Slot.Cassette)!.Pattern.InTradeWords()}") : null,
            HoldOf(b) == SprocketHold.Fixed ? new("chain-whip", "chain whip") : null,
            HoldOf(b) == SprocketHold.Fixed ? new("fixed-lockring-spanner", "hook spanner for the lockring of the fixed sprocket") : null,
            HoldOf(b) == SprocketHold.SnapRing ? new("ring-driver", "screwdriver for the snap ring") : null,
            HoldOf(b) == SprocketHold.Carrier ? new("carrier-tool", "the tool that the hub's maker names for sprocket and carrier") : null,
        ],
        Consumables = b => [HoldOf(b) is SprocketHold.Lockring or SprocketHold.OwnThread or SprocketHold.Freewheel or SprocketHold.Fixed ? Kit.Grease : null],
        Torques = b => [HoldOf(b) == SprocketHold.Lockring ? TorqueTable.DriveTorques.CassetteLockring : null],
        Figures = r => [HoldOf(r.Build) switch
        {
            SprocketHold.OwnThread => WorkFigure.LacksTorque("cassette-torque", "torque of the cassette", "its maker's figure: no page was read for one that screws itself on"),
            SprocketHold.Fixed => WorkFigure.LacksTorque("fixed-lockring-torque", "torque of the lockring of the fixed sprocket", "the hub maker's figure"),
            SprocketHold.Carrier => WorkFigure.LacksTorque("sprocket-torque", "how tight the sprocket is held on its carrier", "the hub maker's figure, where a lockring or screws hold it"),
            SprocketHold.Unknown => WorkFigure.LacksTorque("sprocket-torque", "how tight the sprockets are held", "how they are held, and the maker's figure"),
            _ => null,
        }],
        Cautions = b => [b.As<Cassette>(Slot.Cassette)!.Pattern.Values.Contains(CassettePattern.FixedSprocket) ? Lugwork.Cautions.FixedLockring : null],
        Checks = _ => ["No sprocket has play."], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
    };

    /// <summary>A belt is one loop: it goes in through the joint of the triangle, before a wheel stands in the way, and the joint is closed again.</summary>
    private static StepRule BeltIn() => new()
    {
        Id = "lead-belt", Title = "Lead the belt into the rear triangle", Stage = WorkStage.Wheels, Needed = b => b.IsBelt(), Uses = [Slot.Frame, Slot.Chain],
        After = [new("inspect-parts", "the joint of the triangle and the belt are looked at first"), new("check-ends", "the ends are set before their joint is opened and closed")],
        Does = b => Opens(b) switch
        {
            true => ["Open the joint of the rear triangle as the frame's maker says.", "Lay the belt in without a bend or twist, and let it hang in the triangle.", "Close the joint, and tighten its bolts to the frame maker's torque."],
            false => ["Do not go on: this rear triangle is closed, and a belt is one loop that goes in no other way."],
            _ => ["Find out first whether the rear triangle opens: a belt is one loop, and goes in no other way.", "Where it opens, lay the belt in without a bend or twist, close the joint, and tighten its bolts to the frame maker's torque."],
        },
        Tools = b => [Opens(b) == false ? null : Kit.HexKeys],
        Figures = r => [Opens(r.Build) == false ? null : WorkFigure.LacksTorque("triangle-torque", "torque of the joint of the rear triangle", Opens(r.Build) is null ? "whether it opens, and the frame maker's figure" : "the frame maker's figure")],
        Checks = b => [Opens(b) == false ? null : "The joint is closed all round and does not move when the stays are pressed together."],
        Cautions = _ => [Lugwork.Cautions.BeltCare], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
    };

    private static bool? Opens(Build build) => BuildLook.Common(build.Frame.RearTriangle, t => t == RearTriangle.Opens);

    private enum SprocketHold
    {
        Unknown,
        Lockring,
        OwnThread,
        Freewheel,
        Fixed,
        SnapRing,
        Carrier,
    }

    private static SprocketHold HoldOf(Build build)
    {
        Known<CassettePattern> pattern = build.As<Cassette>(Slot.Cassette)!.Pattern;
        SprocketHold[] holds = [.. pattern.Values.Select(HoldOf).Distinct()];
        return holds is [var only] ? only : SprocketHold.Unknown;
    }

    private static SprocketHold HoldOf(CassettePattern pattern) =>
        pattern == CassettePattern.Freewheel ? SprocketHold.Freewheel
        : pattern == CassettePattern.FixedSprocket ? SprocketHold.Fixed
        : pattern == CassettePattern.Xd || pattern == CassettePattern.Xdr ? SprocketHold.OwnThread
        : pattern == CassettePattern.ThreeLug ? SprocketHold.SnapRing
        : pattern == CassettePattern.HubGearOwn ? SprocketHold.Carrier
        : SprocketHold.Lockring;

    private static StepRule Wheel(WheelEnd end) => new()
    {
        Id = $"fit-{end.Name}-wheel", Title = $"Put the {end.Name} wheel in", Stage = WorkStage.Wheels, Needed = b => b.HasAny(end.Wheel, end.Axle, end.Nuts), Uses = [end.Holder, end.Wheel, end.Axle, end.Nuts],
        Joints = end.IsFront
            ? ["front-wheel-in-fork", "front-axle-in-fork", "front-axle-diameter", "front-thru-axle-length", "front-axle-nut-on-hub-axle"]
            : ["rear-wheel-in-frame", "rear-axle-in-frame", "rear-axle-diameter", "rear-thru-axle-length", "rear-axle-nut-on-hub-axle", "hub-gear-in-dropout", "hub-brake-arm-on-frame"],
        After = [new("check-ends", "a wheel in crooked ends stands askew, and its axle may break"), new($"fit-{end.Name}-tyre", "the room is looked at with the tyre on"), new($"fit-{end.Name}-rotor", "the rotor goes on beside the open hub"), .. end.IsFront
            ? new WorkPrerequisite[] { new("fit-fork", "the wheel stands in the fork that is in the frame") }
            : [new("fit-cassette", "the sprockets go on beside the open hub"), new("fit-hanger", "an axle may screw into the bolt of the hanger, and a claw goes on with the wheel"), new("fit-rear-derailleur", "the axle goes through the derailleur, or holds its claw"), new("lead-belt", "a belt passes the open triangle, which the wheel closes off")]],
        Waits = (b, step) => step != "fit-rear-derailleur" || b.IsHangerless() == true || b.HangsOnClaw(),
        Does = b => WheelHolding.WaitsForChain(b, end) ? ["Set the wheel into its slots, loose; it is set straight and tightened once the chain is on."] : WheelHolding.Does(b, end),
        Tools = b => [WheelHolding.WaitsForChain(b, end) ? null : WheelHolding.Tool(b, end)], Consumables = b => [WheelHolding.Greases(b, end) && !WheelHolding.WaitsForChain(b, end) ? Kit.Grease : null],
        Torques = b => [WheelHolding.WaitsForChain(b, end) ? null : WheelHolding.Torque(b, end)],
        Figures = r => [TyreFigures.AxleLength(r.Build, end), WheelHolding.WaitsForChain(r.Build, end) ? null : WheelHolding.Lacks(r.Build, end)],
        Checks = b => ["The hub turns freely and has no play at the rim.", !end.IsFront && b.HangsOnClaw() ? "The claw of the derailleur lies flat in the end, and what holds the wheel holds it too." : null, WheelHolding.WaitsForChain(b, end) ? null : "The wheel stands in the middle; it does not move when it is pulled sideways.", "The tyre clears frame or fork all round, by 6 mm, 4 mm on a racing bicycle, and never by less than the maker's figure."],
        Cautions = b => [Lugwork.Cautions.Axle, b.Has(end.Axle) ? Lugwork.Cautions.AxleThread : null], Time = WorkTime.QuarterHour,
    };

    private static WorkTool LockringTool(Build build, WheelEnd end) => build.As<Rotor>(end.Rotor)!.Lockring switch
    {
        { State: KnownState.Value } ring when ring.Value == Lockring.Internal => new("rotor-lockring-tool", "cassette tool, for a rotor lockring with notches inside") { Source = Sources.LockringExchange },
        { State: KnownState.Value } ring when ring.Value == Lockring.External => new("rotor-lockring-tool", "tool for outboard cups with 16 notches of the 44 mm class, for a rotor lockring with notches outside") { Source = Sources.LockringExchange },
        _ => new("rotor-lockring-tool", "tool for the lockring of the rotor: by whether its notches are inside or outside"),
    };

    /// <summary>The one fixing that is known; null where it is not.</summary>
    private static RotorFixing? FixingOf(Build build, WheelEnd end) => build.As<Rotor>(end.Rotor)?.Fixing is { State: KnownState.Value } fixing ? fixing.Value : null;

    private static TorqueFigure? RotorTorque(Build build, WheelEnd end) => FixingOf(build, end) switch
    {
        { } fixing when fixing == RotorFixing.CenterLock => TorqueTable.BrakeTorques.RotorLockring,
        { } fixing when fixing == RotorFixing.SixBolt => TorqueTable.BrakeTorques.RotorBolts,
        _ => null,
    };
}

/// <summary>Figures of tyre and axle.</summary>
internal static class TyreFigures
{
    public static WorkFigure Lowest(Build build, WheelEnd end) => WorkFigure.Lacks(
        $"{end.Name}-most-pressure", $"most pressure of the {end.Name} tyre", "what is printed on the tyre", "what the rim maker allows; the lower of the two counts" + (build.As<Wheel>(end.Wheel)?.RimType.Is(RimType.Hookless) == true ? ", and 5 bar on a hookless rim" : ""));

    public static WorkFigure? AxleLength(Build build, WheelEnd end) => !build.Has(end.Axle) ? null
        : AxleOf(build, end) is var length && build.Has(end.Holder) ? length.Into(end.Holder, end.IsFront ? "frontAxleLength" : "rearAxleLength") : length;

    private static WorkFigure AxleOf(Build build, WheelEnd end) =>
        SeatFigures.Stated("axle-length", "length of the axle under its head", "the length that the maker of frame or fork names", end.IsFront ? build.As<Fork>(Slot.Fork)?.FrontAxleLength ?? default : build.Frame.RearAxleLength);
}
