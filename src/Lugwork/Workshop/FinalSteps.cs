using System.Collections.Immutable;

namespace Lugwork.Workshop;

/// <summary>The last pass over the bicycle, the first ride, and what follows it.</summary>
internal static class FinalSteps
{
    /// <summary>The last pass with the torque wrench.</summary>
    public const string LastPass = "final-torque";

    private static readonly ImmutableArray<string> Tightened =
    [
        "fit-hanger", "tighten-derailleur", "check-pivots", "fit-bottom-bracket", "fit-shell-adapter", "fit-stem", "fit-shock", "fit-seatpost", "fit-saddle", "fit-dropper-line", "fit-front-rotor", "fit-rear-rotor", "fit-cassette", "set-preload", "fit-fork", "lead-belt", "fit-front-wheel", "fit-rear-wheel",
        "fit-handlebar", "fit-controls", "fit-grips", "fit-chainring", "fit-chain-guide", "fit-crankset", "fit-pedals", "mount-front-caliper", "mount-rear-caliper", "mount-front-rim-brake", "mount-rear-rim-brake", "connect-front-brake", "connect-rear-brake", "hold-front-hub-brake", "hold-rear-hub-brake", "set-chain-tension", "align-steering",
        "fit-rear-derailleur", "fit-front-derailleur", "connect-shifters", "set-saddle-height",
    ];

    private static readonly ImmutableArray<string> Set = ["adjust-brakes", "adjust-gears", "align-hanger", "set-sag", "inflate-tyres", "tape-bar", "fit-chain"];

    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = LastPass, Title = "Go over every bolt once more", Stage = WorkStage.FinalChecks, Needed = _ => true, Uses = [.. Slot.All.Where(s => s != Slot.Rider)],
            After = [.. Tightened.Select(id => new WorkPrerequisite(id, "it is checked once it is tight"))],
            Does = b =>
            [
                "Go over every bolt that is reached with the torque wrench, in the order of the plan.",
                Covers(b) ? "What lies under crank, cap or wheel was tightened at its step: see that it is written down there, and take nothing apart for it." : null,
                Locks(b) ? "Stop at the low end of its figure where a bolt has thread lock: turned further, the lock breaks." : null,
                ByHand(b, TorqueTable.SteeringTorques.TopCap) ? "Leave the top cap: against a stem that is clamped it sets nothing." : null,
                ByHand(b, TorqueTable.DriveTorques.PreloadCap) ? "Leave the preload cap of the crank: against pinch bolts that are tight it sets nothing." : null,
                ByHand(b, TorqueTable.BrakeTorques.Skewer) ? "Open and close each quick release once more by hand; no wrench goes on it." : null,
                "Mark each bolt that is done.", "Write down what was applied.",
            ],
            Tools = _ => [Kit.TorqueWrench],
            Torques = Wrenched,
            Figures = r => [WorkFigure.Told("joint-strength", "what a joint of bar, stem, saddle or post must bear", "1.5 times its recommended torque without failing; never a reason to tighten more", Sources.JointStrength), .. ByMakers(r)],
            Checks = _ => ["No bolt turned far below its figure: one that did was loose."], Cautions = _ => [Lugwork.Cautions.SteeringCare, Lugwork.Cautions.BrakeWork], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "final-inspection", Title = "Inspect the finished bicycle", Stage = WorkStage.FinalChecks, Needed = _ => true, Uses = [.. Slot.All],
            Joints =
            [
                "rider-on-frame", "rider-on-fork", "rider-on-front-wheel", "rider-on-rear-wheel", "rider-on-stem", "rider-on-handlebar", "rider-on-seatpost",
                "use-of-frame", "use-of-fork", "use-of-front-wheel", "use-of-rear-wheel", "use-of-stem", "use-of-handlebar", "use-of-seatpost",
                "standover", "standover-with-fork", "toe-clearance", "pedal-ground-clearance", "bottom-bracket-with-fork-and-wheels", "wheels-of-one-size", "rotors-front-and-rear", "rotor-fixings-front-and-rear", "tyres-front-and-rear",
            ],
            After = [new(LastPass, "what is loose is found before it is inspected"), .. Set.Select(id => new WorkPrerequisite(id, "it is inspected once it is set"))],
            Does = _ => ["Go through the inspection list, point by point.", "Have someone else go through it again."],
            Tools = _ => [Kit.Light, Kit.Caliper], Checks = _ => ["Every point of the list is answered."], Cautions = _ => [Lugwork.Cautions.GroundAndToe], Skill = WorkSkill.Mechanic, Time = WorkTime.HalfHour,
            Shop = _ => new(false, "a second pair of eyes on brakes, steering, axles and carbon, before anyone rides"),
        },
        new()
        {
            Id = "bed-in-brakes", Title = "Bed in the discs", Stage = WorkStage.Riding, Needed = b => b.HasAny(Slot.FrontRotor, Slot.RearRotor, Slot.FrontCaliper, Slot.RearCaliper), Uses = [Slot.FrontCaliper, Slot.RearCaliper, Slot.FrontRotor, Slot.RearRotor],
            After = [new("final-inspection", "nobody rides what was not inspected")],
            Does = _ => ["Roll and brake slowly in a yard first; a new disc brake hardly slows the bicycle.", "Bed in discs as the brake maker says: many firm stops from a moderate speed, never to a standstill."],
            Checks = _ => ["Each brake bites evenly and without noise."], Cautions = _ => [Lugwork.Cautions.BrakeWork], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "first-ride", Title = "First ride", Stage = WorkStage.Riding, Needed = _ => true, Uses = [Slot.Frame], After = [new("final-inspection", "nobody rides what was not inspected"), new("bed-in-brakes", "new discs hardly brake before they are bedded in")],
            Does = b => ["Roll and brake at walking pace in a yard, the rear brake alone, then the front one.", b.HasAny(Slot.RearDerailleur, Slot.FrontDerailleur) ? "Shift through every gear under light load." : "Pedal with light load.", "Ride a short way near home with tools along; stop at any noise."],
            Tools = _ => [Kit.HexKeys], Checks = _ => ["Brakes stop evenly; headset, wheels and pedals have no play.", "Post and saddle have not moved."], Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "recheck", Title = "Check again after the first rides", Stage = WorkStage.Riding, Needed = _ => true, Uses = [.. Slot.All.Where(s => s != Slot.Rider)], After = [new("first-ride", "parts settle under load, not on the stand")],
            Does = b => ["After 50 to 100 km go over every bolt that is reached again with the torque wrench, and leave what is closed by hand as it is.", b.HasAny(Slot.FrontWheel, Slot.RearWheel) ? "Look at spokes and run-out of the wheels." : null, b.HasLines() ? "Take up cables that have stretched." : null],
            Tools = _ => [Kit.TorqueWrench], Torques = Wrenched, Figures = ByMakers, Checks = _ => ["Nothing has come loose; no new crack, no new noise."], Cautions = _ => [Lugwork.Cautions.BrakeWork], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
    ];

    private static IEnumerable<StepRule> Earlier(Build build) => StepTable.All.Where(r => r.Stage < WorkStage.FinalChecks && r.Needed(build));

    /// <summary>Torques that only makers name of what lies under crank or wheel once the bicycle is together. The lockring of a fixed sprocket is reached, and holds the brake of the legs. Common practice, no source.</summary>
    internal static readonly ImmutableArray<string> Covered = ["bracket-torque", "shell-adapter-torque", "cassette-torque", "sprocket-torque", "ring-torque", "expander-torque"];

    /// <summary>What a wrench is set for and still reaches: what is closed by hand, or until play is gone, and what lies under another part is none of it.</summary>
    private static TorqueFigure?[] Wrenched(Build build) => [.. Earlier(build).SelectMany(r => r.Torques(build)).Where(t => t is { IsByHand: false, IsCovered: false })];

    private static bool Covers(Build build) => Earlier(build).SelectMany(r => r.Torques(build)).Any(t => t is { IsCovered: true }) || build.HasAny(Slot.BottomBracket, Slot.Cassette, Slot.Chainring);

    /// <summary>A step of this bicycle uses thread lock up.</summary>
    private static bool Locks(Build build) => Earlier(build).SelectMany(r => r.Consumables(build)).Contains(Kit.Threadlock);

    private static bool ByHand(Build build, TorqueFigure row) => Earlier(build).SelectMany(r => r.Torques(build)).Contains(row);

    private static IEnumerable<WorkFigure> Makers(FitReport report) => Earlier(report.Build).SelectMany(r => r.Figures(report)).OfType<WorkFigure>().Where(f => f.Unit == WorkFigure.NewtonMetres);

    /// <summary>Every joint that is reached and whose figure only its maker has, each once, with all that its steps lack.</summary>
    private static WorkFigure?[] ByMakers(FitReport report) =>
        [.. Makers(report).Where(f => !Covered.Contains(f.Id)).GroupBy(f => f.Id).Select(g => g.First() with { Lacking = [.. g.SelectMany(f => f.Lacking).Distinct()] })];
}
