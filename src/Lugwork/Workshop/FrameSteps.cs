using System.Collections.Immutable;
using Lugwork.Hubs;

namespace Lugwork.Workshop;

/// <summary>Looking, measuring, and what is done to the bare frame.</summary>
internal static class FrameSteps
{
    /// <summary>The first step.</summary>
    public const string InspectParts = "inspect-parts";

    private static readonly WorkPrerequisite Looked = new(InspectParts, "a cracked or worn part is not worth the work that follows");

    /// <summary>The step that every work on a part waits for, where used parts are in the build.</summary>
    public const string InspectUsed = "inspect-used-parts";

    private static readonly WorkPrerequisite Measured = new("measure-interfaces", "what is cut or pressed cannot be put back");

    public static ImmutableArray<StepRule> All { get; } =
    [
        new()
        {
            Id = InspectParts, Title = "Inspect frame and every part", Stage = WorkStage.Inspection, Needed = _ => true, Uses = [.. Slot.All.Where(s => s != Slot.Rider)],
            Joints = [.. JointTable.All.Where(j => j.IsOfCondition).Select(j => j.Id), "drive-worn-as-a-set", "drive-worn-with-chainring"],
            Does = b =>
            [
                "Lay out every part and tick it off against the build.",
                "Clean and look over the frame under a bright light: cracks, dents, bent ends, torn threads.",
                b.HasAny(Slot.FrontWheel, Slot.RearWheel) ? "Spin each wheel by hand; feel spokes and bearings." : null,
                b.ToInspect().IsEmpty ? "Leave out and replace what is worn, cracked or bent." : "Replace worn chains, pads, cables and tyres; look at each used part by its own list.",
            ],
            Tools = _ => [Kit.Light, Kit.Caliper],
            Checks = _ => ["No crack, dent or bend in frame, fork, bar, stem, post or crank.", "Every part of the list is there.", "Every maker's instruction sheet is at hand."],
            Skill = WorkSkill.Practised, Time = WorkTime.Hour,
        },
        new()
        {
            Id = InspectUsed, Title = "Inspect the used parts, one by one", Stage = WorkStage.Inspection, Needed = b => !b.ToInspect().IsEmpty || b.AsBuilt.Any(v => v.Note == MeasuredBuild.NoteOf(InspectUsed)), Uses = [.. Slot.All.Where(s => s != Slot.Rider)], After = [Looked],
            Does = _ =>
            [
                "Clean each part of the list below and look at it by its own line.",
                "Measure what wears, and write it down with what the part was found to be: inspected, worn, damaged.",
                "Do not fit a part that you doubt, or that was in a crash, before someone of the trade has looked at it.",
            ],
            Tools = b => [Kit.Light, Kit.Caliper, Asks(b, Slot.Chain) ? new("rule", "steel rule of 400 mm") : null],
            Figures = r => [.. r.Build.ToInspect().Select(p => WorkFigure.Told($"inspect-{p.Slot.Key}", p.Slot.Name, p.What, p.Sources).Into(p.Slot, "condition")), .. WearFigures.Of(r.Build)],
            Checks = _ => ["Each part of the list is found sound, or left out.", "What each was found to be is written down."],
            Cautions = _ => [Lugwork.Cautions.UsedPart], Skill = WorkSkill.Mechanic, Time = WorkTime.Hour,
            Shop = b => b.ToInspect().Any(p => p.Slot == Slot.Frame || p.Slot == Slot.Fork || p.Slot == Slot.Stem || p.Slot == Slot.Handlebar || p.Slot == Slot.Seatpost)
                ? new(false, "a crack in frame, fork, bar, stem or post throws the rider, and is easily missed") : null,
        },
        new()
        {
            Id = "check-ends", Title = "Check the fork ends and the rear ends", Stage = WorkStage.Preparation, Needed = b => b.HasAny(Slot.FrontWheel, Slot.RearWheel), Uses = [Slot.Frame, Slot.Fork], After = [Looked],
            Does = b =>
            [
                "Set a wheel that is known to be straight into each pair of ends: it slides in without force and stands in the middle.",
                "Lay a straightedge or gauges on the ends: they stand parallel.",
                EndsAreSteel(b) switch
                {
                    true => "Have ends of steel that are out of line set by a shop, cold and in small steps.",
                    false => "Never bend carbon, aluminium or titanium: ask the maker of frame or fork.",
                    _ => "Find out first what frame and fork are made of: only steel is ever bent.",
                },
            ],
            Tools = _ => [new("straightedge", "straightedge"), new("end-gauges", "alignment gauges for the ends", true)],
            Checks = _ => ["Both ends are parallel, and the wheel stands in the middle of stays and blades.", "Slots, holes and threads of the ends are not worn, and none is cracked."],
            Cautions = _ => [Lugwork.Cautions.Axle], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
            Shop = b => EndsAreSteel(b) == true ? new(false, "setting ends takes gauges, and a bent end that is set twice breaks") : null,
        },
        new()
        {
            Id = "measure-interfaces", Title = "Measure and write down each fit and thread", Stage = WorkStage.Inspection, Needed = _ => true, Uses = [Slot.Frame, Slot.Fork], After = [Looked],
            Does = _ =>
            [
                "Measure each bore at two angles, since few are round, and take the mean.",
                "Count the pitch of each thread with a gauge before anything is screwed in.",
                "Write down what is asked for below, if anything is.",
            ],
            Tools = _ => [Kit.Caliper, new("thread-gauge", "thread gauge")],
            Figures = FrameFigures.Asked,
            Skill = WorkSkill.Practised, Time = WorkTime.Hour,
        },
        new()
        {
            Id = "prepare-head-tube", Title = "Prepare the head tube", Stage = WorkStage.Preparation, Needed = b => b.Has(Slot.Headset) && b.HasPressedCup(), Uses = [Slot.Frame, Slot.Headset], After = [Looked, Measured],
            Does = b => b.IsCarbonFrame() switch
            {
                true => ["Clean paint and resin out of the seats by hand.", "Do not ream or face carbon; ask the frame maker where a seat is out of size."],
                false => ["Measure the bores against the cups.", "Ream and face the ends where paint, weld or size asks for it.", "Clean out every chip."],
                _ => ["Find out first what the head tube is made of: no tool cuts carbon.", "Measure the bores against the cups."],
            },
            Tools = b => [Kit.Caliper, b.IsCarbonFrame() == false ? Kit.FacingSet : null],
            Figures = r => [SteeringFigures.Cup(r.Build, true), SteeringFigures.Cup(r.Build, false)],
            Checks = _ => ["The bores are in the range of the cups.", "The ends are square: parallel to 0.075 mm by one headset maker.", "No paint in the seats."],
            Cautions = _ => [Lugwork.Cautions.PressFitCare],
            Skill = WorkSkill.Mechanic, Time = WorkTime.Hour,
            Shop = b => b.IsCarbonFrame() != false ? null : new(true, "reaming and facing take cutters that a home workshop does not have"),
        },
        new()
        {
            Id = "prepare-shell", Title = "Prepare the bottom-bracket shell", Stage = WorkStage.Preparation, Needed = b => b.HasAny(Slot.BottomBracket, Slot.ShellAdapter), Uses = [Slot.Frame, Slot.BottomBracket], After = [Looked, Measured],
            Does = b => b.IsFrameThreaded() switch
            {
                true => ["Count pitch and hand of both threads.", b.Has(Slot.ShellAdapter) ? "Turn the adapter in by hand where it screws in; where it binds, have the threads chased." : "Turn a cup in by hand; where it binds, have the threads chased.", b.IsCarbonFrame() switch
                {
                    true => "Do not face a metal insert that is bonded into carbon without the frame maker's word.",
                    false => "Have the faces cut square where outboard cups bear on them.",
                    _ => "Find out first what the frame is made of before a face is cut.",
                }],
                false => ["Measure the bore at both ends and at two angles.", "Clean paint and resin out of the bore by hand; never cut carbon."],
                _ => ["Find out first whether the shell is threaded or pressed before anything is bought for it.", "Measure bore and width."],
            },
            Tools = b => [Kit.Caliper, b.IsFrameThreaded() != true ? null : b.IsCarbonFrame() == false ? Kit.Taps : Kit.Chasers],
            Figures = r => [ShellFigures.Bore(r.Build), ShellFigures.FrameThread(r.Build)],
            Checks = b => [b.Has(Slot.ShellAdapter) ? "Width and bore of the shell are those that the adapter is made for." : "The width of the shell is that of the bottom bracket.", b.IsFrameThreaded() switch
            {
                true => "Cups start by hand on both sides.",
                false => "The bore is in the range of its family.",
                _ => "It is known how the shell holds a bottom bracket.",
            }],
            Cautions = b => [b.IsFrameThreaded() == false ? Lugwork.Cautions.WornBore : Lugwork.Cautions.ShellThreads],
            Skill = WorkSkill.Mechanic, Time = WorkTime.HalfHour,
            Shop = b => b.IsFrameThreaded() != true ? null
                : b.IsCarbonFrame() == false ? new(false, "chasing and facing take a shop's cutters; needed only where a cup binds or the faces are not square")
                : new(false, "chasing takes a shop's taps; needed only where a cup binds"),
        },
        new()
        {
            Id = "check-brake-mounts", Title = "Check the faces of the brake mounts", Stage = WorkStage.Preparation, Needed = b => b.HasAny(Slot.FrontCaliper, Slot.RearCaliper), Uses = [Slot.Frame, Slot.Fork, Slot.FrontCaliper, Slot.RearCaliper], After = [Looked],
            Does = _ => ["Clean paint off the faces by hand.", "Lay the caliper or its adapter on: it bears flat on both faces and does not rock.", "Where it rocks, ask frame or fork maker; nothing is cut that may be carbon."],
            Tools = _ => [Kit.Light], Checks = _ => ["The caliper bears flat on both faces.", "The threads take their bolts by hand."],
            Cautions = _ => [Lugwork.Cautions.BrakeWork], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
            Shop = _ => new(false, "facing a mount takes a cutter on a guide, and the maker's word that the mount may be cut"),
        },
        new()
        {
            Id = "check-pivots", Title = "Check and tighten the pivots", Stage = WorkStage.Suspension, Needed = b => b.HasRearTravel() != false, Uses = [Slot.Frame], After = [Looked],
            Does = b => b.HasRearTravel() == true ? ["Move each link by hand: no play, nothing rough.", "Tighten every pivot bolt to the frame maker's figure."]
                : ["Find out first whether the rear wheel moves on a shock; a frame whose rear stands still has no pivots to check.", "Where it moves, tighten every pivot bolt to the frame maker's figure."],
            Tools = _ => [Kit.HexKeys, Kit.TorqueWrench], Figures = _ => [WorkFigure.LacksTorque("pivot-torque", "torque of the pivot bolts", "the frame maker's figures")],
            Checks = b => [b.HasRearTravel() == true ? "The rear moves freely without play." : "It is known whether the rear moves."], Cautions = _ => [Lugwork.Cautions.SuspensionSums], Skill = WorkSkill.Practised, Time = WorkTime.HalfHour,
        },
        new()
        {
            Id = "fit-hanger", Title = "Fit the derailleur hanger", Stage = WorkStage.Preparation, Needed = NeedsHanger, Uses = [Slot.Frame], After = [Looked],
            Does = b =>
            [
                b.IsHangerless() is null ? "Find out first whether the derailleur hangs on a hanger or goes round the axle: one round the axle takes the place of the hanger." : null,
                .. b.Frame.Hanger switch
                {
                    { State: KnownState.Value } hanger when hanger.Value == Drivetrain.Hanger.Universal => new[]
                    {
                        "Clean hanger, bolt and frame end; put them together as the hanger's maker shows, with the washer where this frame has one.",
                        "Grease the thread of the bolt thinly, unless its maker says otherwise.",
                        "Turn the bolt anticlockwise to tighten it: its thread is left-hand.",
                    },
                    { State: KnownState.Value } hanger when hanger.Value == Drivetrain.Hanger.NoHanger => ["This frame has no hanger: have the claw of the derailleur ready, which goes into the end before the wheel and is held by its axle."],
                    { State: KnownState.Value } => ["Screw a hanger that is a part of its own to its clean seat now, and tighten its bolts as its maker says.", "A hanger that is one piece with the frame needs nothing here."],
                    _ => ["Find out first which hanger this frame takes, and which way its bolt turns: universal ones tighten the other way round."],
                },
            ],
            Tools = _ => [Kit.HexKeys], Consumables = b => [b.Frame.Hanger.Is(Drivetrain.Hanger.Universal) ? Kit.Grease : null],
            Torques = b => [HangerTorque(b)],
            Figures = r => [HangerTorque(r.Build) is not null || r.Build.Frame.Hanger.Is(Drivetrain.Hanger.NoHanger) ? null : WorkFigure.LacksTorque("hanger-torque", "torque of the hanger", r.Build.IsHangerless() is null ? "whether there is a hanger at all" : "which hanger it is: one row never holds for the other")],
            Checks = b => [b.Frame.Hanger.Is(Drivetrain.Hanger.NoHanger) ? "The claw is at hand." : "The hanger sits flat on its seat and does not turn."],
            Cautions = b => [b.Frame.Hanger.Is(Drivetrain.Hanger.Universal) ? Lugwork.Cautions.Axle : null], Skill = WorkSkill.Practised, Time = WorkTime.QuarterHour,
        },
        new()
        {
            Id = "align-hanger", Title = "Check and align the derailleur hanger", Stage = WorkStage.Drivetrain, Needed = b => b.Has(Slot.RearDerailleur) && b.IsHangerless() != true && !b.HangsOnClaw(), Uses = [Slot.Frame, Slot.RearWheel],
            After = [Looked, new("fit-hanger", "it is aligned as it sits in the frame"), new("fit-rear-wheel", "the gauge is read against the rim of a wheel that sits in the frame")],
            Does = b =>
            [
                b.IsHangerless() is null ? "Find out first whether the derailleur hangs on a hanger or goes round the axle: only a hanger is aligned." : null,
                "Check it against the rim with a gauge, at four places round the wheel.",
                b.Frame.Hanger.Is(Drivetrain.Hanger.Universal) ? "Where it is out of line, see that it sits right in the frame; a universal hanger that is bent is replaced, not bent back."
                : b.IsCarbonFrame() switch
                {
                    true => "Bend only a replaceable hanger, in small steps, so that no force goes into the carbon; replace one that was bent far.",
                    false => "Bend it true in small steps; replace one that was bent far.",
                    _ => "Find out first what frame and hanger are made of before anything is bent.",
                },
                !b.Frame.Hanger.Is(Drivetrain.Hanger.Universal) && b.Frame.Hanger.MayBe(Drivetrain.Hanger.Universal) ? "Should it be a universal hanger, replace it where it is bent." : null,
            ],
            Tools = _ => [Kit.HangerGauge],
            Checks = _ => ["The hanger is parallel to the wheel at all four places."],
            Skill = WorkSkill.Mechanic, Time = WorkTime.QuarterHour,
            Shop = _ => new(true, "it takes an alignment gauge"),
        },
    ];

    /// <summary>A universal hanger holds the axle too; of others a wheel knows nothing.</summary>
    private static bool NeedsHanger(Build build) =>
        build.IsHangerless() != true && (build.Frame.Hanger.Is(Drivetrain.Hanger.Universal) ? build.HasAny(Slot.RearDerailleur, Slot.RearWheel, Slot.RearThruAxle) : build.Has(Slot.RearDerailleur));

    private static bool Asks(Build build, Slot slot) => build.ToInspect().Any(p => p.Slot == slot);

    /// <summary>Frame and fork are both known to be steel, one is known not to be, or null.</summary>
    private static bool? EndsAreSteel(Build build)
    {
        Known<Material>[] materials = [build.Frame.Material, .. build.As<Fork>(Slot.Fork) is { } fork ? new[] { fork.Material } : []];
        return materials.All(m => m.Is(Material.Steel)) ? true : materials.Any(m => m.State == KnownState.Value && m.Value != Material.Steel) ? false : null;
    }

    /// <summary>By the hanger that is known; of an end without one there is nothing to tighten, and a guess between 1 and 25 N m ruins either.</summary>
    private static TorqueFigure? HangerTorque(Build build) =>
        build.IsHangerless() is null || build.Frame.Hanger is not { State: KnownState.Value } hanger || hanger.Value == Drivetrain.Hanger.NoHanger ? null
        : hanger.Value == Drivetrain.Hanger.Universal ? TorqueTable.DriveTorques.UniversalHanger : TorqueTable.DriveTorques.HangerBolts;
}
