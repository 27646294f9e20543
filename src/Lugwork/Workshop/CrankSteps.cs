using System.Collections.Immutable;
using Lugwork.BottomBrackets;

namespace Lugwork.Workshop;

/// <summary>Crank, chainring, pedals and chain guide.</summary>
internal static class CrankSteps
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = "fit-chainring", Title = "Fit the chainring", Stage = WorkStage.Drivetrain, Needed = b => b.Has(Slot.Chainring), Uses = [Slot.Crankset, Slot.Chainring],
            Joints = ["ring-on-spider", "direct-mount-ring-on-arm", "ring-counted-with-crank", "chainring-against-chainstay"],
            After = [new("inspect-parts", "worn rings are found before they are bolted on")],
            Does = b => ["Grease the bolts.", "Fit the ring with its marks where its maker says.", b.IsRingBolted() == true ? "See whether the bolts are of aluminium or steel: the torque goes by it." : null, "Tighten crosswise, or its lockring, to the maker's torque."],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench], Consumables = _ => [Kit.Grease],
            Torques = b => b.IsRingBolted() == true ? [TorqueTable.DriveTorques.RingBoltsAluminium, TorqueTable.DriveTorques.RingBoltsSteel] : [],
            Figures = r => [r.Build.IsRingBolted() == true ? null : WorkFigure.LacksTorque("ring-torque", "torque of the chainring", r.Build.IsRingBolted() is null ? "how the ring is held: by bolts on a spider, or directly on the arm" : "the crank maker's figure for a ring directly on the arm")],
            Checks = _ => ["The ring runs true."], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "fit-chain-guide", Title = "Fit the chain guide", Stage = WorkStage.Drivetrain, Needed = b => b.Has(Slot.ChainGuide), Uses = [Slot.Frame, Slot.ChainGuide], Joints = ["guide-on-bottom-bracket", "guide-on-tabs"],
            After = [new("fit-bottom-bracket", "a plate under the cup, or tabs beside it, are reached before the crank is on")],
            Does = _ => ["Bolt the guide on its tabs or plate, with thread lock.", "Set it over the ring once the crank is on."],
            Tools = b => [KeySizes.Guide(b)], Consumables = _ => [Kit.Threadlock], Figures = _ => [WorkFigure.LacksTorque("guide-torque", "torque of the chain guide", "the guide maker's figure: no page was read that prints one")], Checks = _ => ["The chain runs free in every gear."], Cautions = _ => [Lugwork.Cautions.GuidePlate], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "fit-crankset", Title = "Fit the crank", Stage = WorkStage.Drivetrain, Needed = b => b.Has(Slot.Crankset), Uses = [Slot.Frame, Slot.BottomBracket, Slot.Crankset],
            Joints = ["spindle-in-bottom-bracket", "splined-crank-with-spindle-width", "crank-across-shell", "ring-against-chainstay", "ring-on-bare-crank", "chainline", "chainline-of-hangerless", "chain-angle", "single-chainline", "crank-for-shell"],
            After = [new("fit-bottom-bracket", "the spindle runs in its bearings"), new("fit-chainring", "the ring is bolted on the arm on the bench"), new("fit-chain-guide", "the guide sits behind the crank"), new("inspect-parts", "a cracked arm is not fitted")],
            Does = b => b.Takes(SpindleSeat.Mm24)
                ? ["Grease the seats of the spindle.", "Push the crank through and the other arm on, opposite it.", "Where two pinch bolts hold that arm, take the play up with the preload cap by hand, then tighten both in turn to the maker's torque.", "An arm that one bolt holds goes by its maker's figure: the rows here are of pinch bolts."]
                : b.Takes(SpindleSeat.Mm25) ? ["Grease the bearing seats as the maker says.", "Push one half in from each side, arms opposite, until their teeth meet.", "Tighten the bolt that joins them to the maker's torque."]
                : b.Takes(SpindleSeat.SquareJis, SpindleSeat.SquareIso) ? ["Clean tapers and arms.", "Push both arms on, opposite each other.", "Tighten the bolts to the maker's torque."]
                : b.Takes(SpindleSeat.Cottered) ? ["Push both arms on, opposite each other.", "Drive or press the cotters in from opposite sides; tighten their nuts to the maker's torque, which only hold them."]
                : b.Takes(SpindleSeat.OnePiece) ? ["Put the chainring on the crank and pass the crank through the shell.", "Grease the bearings, and set their play at the cone on the left.", "Hold the cone, and tighten the locknut to the maker's torque.", "Turn both anticlockwise to tighten them: the thread of cone and locknut on the left is left-hand."]
                : !b.KnowsSpindle() ? ["Find out first what spindle this crank has: how it is held, and how tight, goes by it."]
                : b.Takes(SpindleSeat.Mm2899, SpindleSeat.Mm30, SpindleSeat.Stepped30, SpindleSeat.Stepped24) ? ["Grease the seats of the spindle as its maker says.", "Push the crank through and the other arm on, opposite it.", "Tighten the bolt to the maker's torque and take the play up as the maker says."]
                : ["Grease the seats of the spindle as its maker says.", "Push the arms on, opposite each other.", "Tighten the bolts to the maker's torque."],
            Tools = b => [b.Takes(SpindleSeat.SquareJis, SpindleSeat.SquareIso) ? KeySizes.SquareTaper : Kit.HexKeys, b.Takes(SpindleSeat.SquareJis, SpindleSeat.SquareIso) ? null : b.Takes(SpindleSeat.Mm24) ? new("preload-tool", "tool for the preload cap")
                : b.Takes(SpindleSeat.OnePiece) ? new("cone-spanner", "spanner for cone and locknut of the crank")
                : b.KnowsSpindle() ? new("crank-tool", $"crank tool for {b.As<Crankset>(Slot.Crankset)!.Spindle.InTradeWords()} spindles") : null],
            Consumables = b => [b.Takes(SpindleSeat.SquareJis, SpindleSeat.SquareIso, SpindleSeat.Cottered) || !b.KnowsSpindle() ? null : Kit.Grease], Torques = ShellFigures.CrankTorque,
            Figures = r => [ShellFigures.Spacers(r), DriveFigures.Chainline(r), ShellFigures.ConeThread(r.Build), ShellFigures.CrankLacks(r.Build)],
            Checks = _ => ["No side play, and the crank turns freely.", "Arm and ring clear the chainstay."],
            Cautions = b => [b.Takes(SpindleSeat.SquareJis, SpindleSeat.SquareIso) ? Lugwork.Cautions.Tapers : b.Takes(SpindleSeat.OnePiece) ? Lugwork.Cautions.LeftHandCone : null], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "fit-pedals", Title = "Fit the pedals", Stage = WorkStage.Drivetrain, Needed = b => b.Has(Slot.Pedals), Uses = [Slot.Crankset, Slot.Pedals], Joints = ["pedals-in-cranks"],
            After = [new("fit-crankset", "the pedals go into arms that are fixed")],
            Does = _ => ["Grease the threads.", "Start each pedal by hand: the right one clockwise, the left one anticlockwise.", "Tighten both towards the front."],
            Tools = _ => [KeySizes.Pedal], Consumables = _ => [Kit.Grease], Torques = _ => [TorqueTable.DriveTorques.Pedal],
            Checks = _ => ["Left and right are not exchanged.", "The thread is in over its whole length."], Cautions = _ => [Lugwork.Cautions.PedalThreads], Time = WorkTime.QuarterHour,
        },
    ];

    /// <summary>Bolts on a spider, directly on the arm, or null where it is not known.</summary>
    private static bool? IsRingBolted(this Build build) => build.As<Chainring>(Slot.Chainring) is not { } ring ? null
        : ring.BoltCircle.State is KnownState.Value or KnownState.OneOf or KnownState.Measured ? true
        : ring.DirectMount.State is KnownState.Value or KnownState.OneOf || ring.BoltCircle.State == KnownState.None ? false : null;

    private static bool KnowsSpindle(this Build build) => build.As<Crankset>(Slot.Crankset) is { Spindle.State: KnownState.Value };
}
