using System.Collections.Immutable;
using Lugwork.Drivetrain;
using Lugwork.Hubs;

namespace Lugwork.Workshop;

/// <summary>Derailleurs, chain and shift lines.</summary>
internal static class ShiftSteps
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = "fit-rear-derailleur", Title = "Fit the rear derailleur", Stage = WorkStage.Drivetrain, Needed = b => b.Has(Slot.RearDerailleur), Uses = [Slot.Frame, Slot.RearDerailleur],
            Joints = ["derailleur-on-hanger", "derailleur-capacity", "derailleur-capacity-with-ring", "largest-sprocket-of-derailleur", "smallest-sprocket-of-derailleur"],
            After = [new("align-hanger", "a derailleur on a bent hanger cannot be set"), new("fit-rear-wheel", "it is set under the sprockets that are in"), new("check-ends", "a derailleur in a crooked end cannot be set")],
            Waits = (b, step) => step != "fit-rear-wheel" || (b.IsHangerless() != true && !b.HangsOnClaw()),
            Does = b => b.IsHangerless() is null ? ["Find out first whether the derailleur hangs on a hanger or goes round the axle: order and torque go by it."] : b.IsHangerless() == true ? ["Take a hanger out: none takes part.", "Grease the thread, unless the derailleur's maker says otherwise.", "Put the derailleur into the frame end, loose, as its maker shows; the axle of the wheel goes through it."] : b.HangsOnClaw() ? ["Grease the bolt.", "Screw the derailleur to its claw, its stop behind the claw's tab, and tighten it to the maker's torque.", "Lay the claw into the right end with its own bolt, and tighten that as its maker says; the wheel goes in after it and holds it."] : ["Grease the bolt.", "Screw the derailleur on, its stop behind the hanger's tab, and tighten it to the maker's torque."], Tools = b => [b.IsHangerless() == false ? KeySizes.RearDerailleur : Kit.HexKeys, Kit.TorqueWrench], Consumables = b => [b.IsHangerless() is null ? null : Kit.Grease],
            Torques = b => [b.IsHangerless() == false && !b.HangsOnClaw() ? TorqueTable.DriveTorques.RearDerailleur : null], Figures = r => [DerailleurLacks(r.Build)], Checks = b => [b.IsHangerless() == true ? "It sits in the frame end as its maker shows." : "It swings freely on its bolt."], Cautions = _ => [Lugwork.Cautions.ChainTooShort], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "fit-front-derailleur", Title = "Fit the front derailleur", Stage = WorkStage.Drivetrain, Needed = b => b.Has(Slot.FrontDerailleur), Uses = [Slot.Frame, Slot.Crankset, Slot.FrontDerailleur],
            Joints = ["front-derailleur-on-frame", "front-derailleur-with-crank", "front-difference", "front-derailleur-tab"],
            After = [new("fit-crankset", "height and angle are set against the large ring")],
            Does = _ => ["Put it on loose; set cage and ring parallel, at the height that its maker names.", "Tighten it to the maker's torque."], Tools = _ => [Kit.HexKeys, Kit.TorqueWrench],
            Torques = FrontTorques, Figures = r => [FrontTorques(r.Build).Length > 0 ? null : WorkFigure.LacksTorque("front-derailleur-torque", "torque of the front derailleur", "its maker's figure: no page was read for this mount")],
            Checks = _ => ["The cage clears ring and arm in its whole travel."], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "fit-chain", Title = "Size and join the chain", Stage = WorkStage.Drivetrain, Needed = b => b.Has(Slot.Chain), Uses = [Slot.Frame, Slot.Crankset, Slot.Cassette, Slot.RearDerailleur, Slot.Chain],
            Joints = ["chain-on-cassette", "chain-on-rings", "chain-on-chainring", "chain-through-derailleur", "belt-through-rear-triangle", "chain-reaches", "chain-reaches-with-ring", "chain-taken-up", "chain-taken-up-with-ring"],
            After = [new("fit-crankset", "the chain is laid round the rings"), new("fit-rear-wheel", "the chain is laid round the sprockets"), new("fit-rear-derailleur", "the chain is led through its cage"), new("fit-front-derailleur", "the chain is led through its cage"), new("fit-shock", "a chain is sized where the rear travel makes it longest"), new("lead-belt", "the belt hangs in the triangle")],
            Does = b => b.IsBelt()
                ? ["Lay the belt on both pulleys without a bend or twist, with the wheel or what tensions it let in.", "Set its line to the belt maker's figure."]
                : b.HasFixedChain() switch
                {
                    null => ["Find out first whether a derailleur comes: none is there, and this bicycle may need one.", "Do not cut the chain before: with one it is longer."],
                    true =>
                    [
                        b.WheelTensions() == false ? "Lay the chain round ring and sprocket, with the eccentric, the tensioner or the sliding ends where they have room to both sides." : "Lay the chain round ring and sprocket, with the wheel where it has room to both sides in its slots.",
                        "Cut it there; keep it long if unsure.", "Join it with a new pin or link of this chain.", "Lubricate it and wipe it dry outside.",
                    ],
                    false => ["Lay the chain round the largest ring and the largest sprocket, as the derailleur's maker says.", "Compare with the figure below; keep it long if unsure.", "Lead it through the cage of the derailleur, on the right side of its tongue, and join it with a new pin or quick link of this chain, arrow as marked.", "Lubricate it and wipe it dry outside."],
                },
            Tools = b => [b.IsBelt() || b.HasFixedChain() is null ? null : new("chain-tool", "chain tool, and pliers for quick links")],
            Consumables = b => [b.IsBelt() || b.HasFixedChain() is null ? null : Kit.ChainLube], Figures = r => DriveFigures.Chain(r.Build),
            Checks = b => b.IsBelt() ? ["The belt runs in the middle of both pulleys when turned both ways."] : [b.HasFixedChain() switch
            {
                true => "The link is closed and turns freely.",
                false => "On the largest ring and sprocket it is not stretched; on the smallest it does not hang slack.",
                _ => "It is known whether a derailleur comes.",
            }, b.HasRearTravel() != false ? "It reaches through the whole travel, where the rear moves." : null],
            Cautions = b => [b.IsBelt() ? Lugwork.Cautions.BeltCare : Lugwork.Cautions.ChainOff, b.Has(Slot.RearDerailleur) ? Lugwork.Cautions.ChainTooShort : null], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "set-chain-tension", Title = "Set the tension, and see that the rear wheel is tight", Stage = WorkStage.Drivetrain, Needed = b => b.HasFixedChain() == true, Uses = [Slot.Frame, Slot.RearWheel, Slot.RearAxleNuts, Slot.RearThruAxle, Slot.Chain],
            After = [new("fit-chain", "the tension is set with the chain or belt on"), new("fit-rear-wheel", "the wheel is in its ends"), new("fit-shock", "the tension is set where the rear travel makes the run longest")],
            Does = b =>
            [
                b.WheelTensions() switch
                {
                    true => "Draw the wheel back in its slots.",
                    false => "Set the tension by an eccentric, a tensioner or ends that slide, and tighten their bolts to their maker's torque: the slots let the wheel move no way.",
                    _ => "Find out first how the rear slots run: along the chain the wheel is drawn back; others take an eccentric, a tensioner or ends that slide.",
                },
                b.IsBelt() ? "Set the tension to the belt maker's figure." : "Turn the crank once round: at the tightest point the chain still moves a little up and down and binds nowhere.",
                .. WheelHolding.WaitsForChain(b, WheelEnd.Rear) ? WheelHolding.Does(b, WheelEnd.Rear) : ["See that the wheel stands in the middle and is still tight."],
            ],
            Tools = b => [b.IsBelt() ? new("belt-gauge", "belt tension gauge", true) : null, Kit.HexKeys, WheelHolding.WaitsForChain(b, WheelEnd.Rear) ? WheelHolding.Tool(b, WheelEnd.Rear) : null],
            Torques = b => [WheelHolding.WaitsForChain(b, WheelEnd.Rear) ? WheelHolding.Torque(b, WheelEnd.Rear) : null],
            Figures = r => [TensionLacks(r.Build), WheelHolding.WaitsForChain(r.Build, WheelEnd.Rear) ? WheelHolding.Lacks(r.Build, WheelEnd.Rear) : null],
            Checks = _ => ["The wheel stands in the middle and does not move when it is pulled forward or sideways.", "The run is neither slack nor tight anywhere in a turn of the crank."],
            Cautions = b => [Lugwork.Cautions.Axle, b.IsBelt() ? Lugwork.Cautions.BeltCare : Lugwork.Cautions.ChainOff], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
            Shop = b => b.IsBelt() ? new(false, "the tension of a belt is read with a gauge, and one that is guessed jumps or wears the bearings") : null,
        },
        new()
        {
            Id = "tighten-derailleur", Title = "Set and tighten the derailleur round the axle", Stage = WorkStage.Drivetrain, Needed = b => b.Has(Slot.RearDerailleur) && b.IsHangerless() == true, Uses = [Slot.RearWheel, Slot.RearDerailleur, Slot.Chain],
            After = [new("fit-rear-derailleur", "it is in the frame end, loose"), new("fit-rear-wheel", "the axle holds it in line"), new("fit-chain", "its angle is set by the chain that is on")],
            Does = _ => ["Turn the derailleur to the angle that its maker gives for this chain and cassette.", "Hold it there, and tighten it to the maker's torque."],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench], Figures = _ => [WorkFigure.LacksTorque("derailleur-torque", "torque of a derailleur round the axle", "its maker's figure")],
            Checks = b => ["It does not turn on the frame end.", b.Has(Slot.RearWheel) ? "The wheel still comes out and goes in as its maker says." : null], Cautions = _ => [Lugwork.Cautions.ChainTooShort], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "connect-shifters", Title = "Join the shifters", Stage = WorkStage.Drivetrain, Needed = b => b.HasAny(Slot.RearShifter, Slot.FrontShifter), Uses = [Slot.RearShifter, Slot.FrontShifter, Slot.RearDerailleur, Slot.FrontDerailleur],
            Joints = ["shifter-with-derailleur", "shifter-with-cassette", "front-shifter-with-front-derailleur"],
            After = [new("fit-controls", "the line is measured to the shifter in its place"), new("route-lines", "the line lies in the frame"), new("fit-rear-derailleur", "the line ends there"), new("tighten-derailleur", "its place is set before it is joined"), new("fit-front-derailleur", "the line ends there"), new("set-chain-tension", "the line of a hub gear is set to the wheel that is tight")],
            Does = b => b.ShiftsByCable()
                ? ["Cut the housing to length with the bar fully turned, grind the ends, put ferrules on.", "Set the shifters to the loosest position.", "Thread and clamp the cables, pull them once, clamp them again.", "Cap the ends."]
                : b.NeedsLine(Slot.RearShifter) || b.NeedsLine(Slot.FrontShifter) ? ["Plug wires or hoses in until they click or sit, as their maker says.", "Charge and fit the battery where there is one."]
                : b.ShiftsByAir() ? ["Charge the batteries.", "Pair the shifters with what they shift, as their maker says."]
                : ["There is nothing to join: nothing is shifted."],
            Tools = b => [b.ShiftsByCable() ? Kit.CableCutter : null, Kit.HexKeys], Consumables = b => [b.ShiftsByCable() ? Kit.CableEnds : null],
            Torques = b => [b.ShiftsByCable() && b.Has(Slot.RearDerailleur) ? TorqueTable.DriveTorques.RearCable : null, b.ShiftsByCable() && b.Has(Slot.FrontDerailleur) ? TorqueTable.DriveTorques.FrontCable : null],
            Figures = r => [RoutingFigures.Shift(r.Build, Slot.RearShifter), RoutingFigures.Shift(r.Build, Slot.FrontShifter), r.Build.ShiftsByCable() && !r.Build.HasAny(Slot.RearDerailleur, Slot.FrontDerailleur) ? WorkFigure.LacksTorque("shift-cable-torque", "torque of the clamp of the shift cable", "the figure of the maker of the hub, or of the derailleur that is still to come") : null], Checks = _ => ["Every click moves something; nothing is strained with the bar fully turned."], Cautions = _ => [Lugwork.Cautions.ShiftSetUp], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
    ];

    /// <summary>Of an eccentric a page prints a row, of a tensioner and of ends that slide none, and no field tells which of them it is.</summary>
    private static WorkFigure? TensionLacks(Build build) => build.WheelTensions() switch
    {
        true => null,
        false => WorkFigure.LacksTorque("tension-torque", "torque of what sets the tension", FormattableString.Invariant($"what it is, and its maker's figure; one page alone prints {TorqueTable.DriveTorques.BracketEccentric.Ranges[0]} for the bolts of an eccentric shell, and none was read for the others")),
        _ => WorkFigure.LacksTorque("tension-torque", "torque of what sets the tension", "how the rear slots run"),
    };

    /// <summary>Rows of a band and of a braze-on tab; of other mounts no page was read.</summary>
    private static TorqueFigure?[] FrontTorques(Build build) => build.As<FrontDerailleur>(Slot.FrontDerailleur)!.Mount is not { State: KnownState.Value } mount ? [TorqueTable.DriveTorques.FrontBand, TorqueTable.DriveTorques.FrontBrazeOn]
        : mount.Value == FrontDerailleurMount.BrazeOn ? [TorqueTable.DriveTorques.FrontBrazeOn] : mount.Value.Tube is not null ? [TorqueTable.DriveTorques.FrontBand] : [];

    /// <summary>The rear derailleur has a row on a hanger alone; one round the axle is tightened in a step of its own.</summary>
    private static WorkFigure? DerailleurLacks(Build build) =>
        build.IsHangerless() is null ? WorkFigure.LacksTorque("derailleur-torque", "torque of the derailleur", "whether it hangs on a hanger or goes round the axle")
        : build.HangsOnClaw() ? WorkFigure.LacksTorque("derailleur-torque", "torque of the derailleur on its claw, and of the claw in the end", "the derailleur maker's figures") : null;
}
