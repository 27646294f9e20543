using System.Collections.Immutable;
using Lugwork.Geometry;

namespace Lugwork.Workshop;

/// <summary>One row of the work: when a step is needed and what it is then. What a function gives as null is left out.</summary>
internal sealed class StepRule
{
    public required string Id { get; init; }

    public required string Title { get; init; }

    public required WorkStage Stage { get; init; }

    /// <summary>This build needs the step. Where a joint of it is judged, it has to be true: a law holds that.</summary>
    public required Func<Build, bool> Needed { get; init; }

    /// <summary>Slots whose parts are handled, where they are filled.</summary>
    public ImmutableArray<Slot> Uses { get; init; } = [];

    /// <summary>Ids of the joints that this step assembles or settles; each joint stands in one row.</summary>
    public ImmutableArray<string> Joints { get; init; } = [];

    /// <summary>Earlier steps and why; one that this build does not need falls away.</summary>
    public ImmutableArray<WorkPrerequisite> After { get; init; } = [];

    /// <summary>This build waits for that earlier step; most rows always do.</summary>
    public Func<Build, string, bool> Waits { get; init; } = (_, _) => true;

    public required Func<Build, string?[]> Does { get; init; }

    public Func<Build, WorkTool?[]> Tools { get; init; } = _ => [];

    public Func<Build, WorkConsumable?[]> Consumables { get; init; } = _ => [];

    public Func<Build, TorqueFigure?[]> Torques { get; init; } = _ => [];

    public Func<FitReport, WorkFigure?[]> Figures { get; init; } = _ => [];

    public Func<Build, string?[]> Checks { get; init; } = _ => [];

    public Func<Build, Caution?[]> Cautions { get; init; } = _ => [];

    public WorkSkill Skill { get; init; }

    public WorkTime Time { get; init; }

    public Func<Build, LeaveToShop?> Shop { get; init; } = _ => null;

    /// <summary>It handles a part that is to be inspected as a used one.</summary>
    private bool WaitsForUsed(Build build) => Id is not (FrameSteps.InspectParts or FrameSteps.InspectUsed) && build.ToInspect().Any(p => Uses.Contains(p.Slot));

    public WorkStep For(FitReport report, Func<string, bool> isThere)
    {
        Build build = report.Build;
        ImmutableArray<Fit> fits = [.. report.Findings.Where(f => Joints.Contains(f.Joint!.Id))];
        ImmutableArray<TorqueFigure> torques = [.. Torques(build).OfType<TorqueFigure>().DistinctBy(t => t.Id)];
        ImmutableArray<WorkFigure> figures = [.. Figures(report).OfType<WorkFigure>()];
        bool isSet = torques.Any(t => !t.IsByHand) || figures.Any(f => f.Unit == WorkFigure.NewtonMetres);
        return new()
        {
            Id = Id,
            Title = Title,
            Stage = Stage,
            Does = [.. Does(build).OfType<string>()],
            Slots = [.. Uses.Where(build.Has)],
            Findings = fits,
            After = [.. After.Where(a => isThere(a.StepId) && Waits(build, a.StepId)), .. WaitsForUsed(build) ? new[] { new WorkPrerequisite(FrameSteps.InspectUsed, "a used part is fitted only once it is found sound") } : []],
            Tools = [.. Tools(build).OfType<WorkTool>().Concat(isSet ? [Kit.TorqueWrench] : Array.Empty<WorkTool>()).Distinct()],
            Consumables = [.. Consumables(build).OfType<WorkConsumable>()],
            Torques = torques,
            Figures = figures,
            Checks = [.. Checks(build).OfType<string>()],
            Cautions = [.. Cautions(build).OfType<Caution>().Concat(fits.SelectMany(f => f.Cautions)).DistinctBy(c => c.Id)],
            Skill = Skill,
            Time = Time,
            Shop = Shop(build),
        };
    }
}

/// <summary>Every step that a bicycle can need, a row each, in the usual order of work.</summary>
internal static class StepTable
{
    public static ImmutableArray<StepRule> All { get; } =
    [
        .. FrameSteps.All, .. BearingSteps.All, .. RoutingSteps.All, .. SteeringSteps.All, .. SeatSteps.All,
        .. WheelSteps.For(WheelEnd.Front), .. WheelSteps.For(WheelEnd.Rear), .. CockpitSteps.All, .. CrankSteps.All,
        .. BrakeSteps.For(WheelEnd.Front), .. BrakeSteps.For(WheelEnd.Rear), .. ShiftSteps.All, .. SettingSteps.All, .. FinalSteps.All,
    ];

    /// <summary>The look at used parts is named where nothing else that comes before has waited for it already.</summary>
    private static WorkStep[] Pruned(WorkStep[] steps)
    {
        HashSet<string> waiting = [FrameSteps.InspectUsed, .. steps.Where(s => s.After.Any(a => a.StepId == FrameSteps.InspectUsed)).Select(s => s.Id)];
        for (int known = 0; known != waiting.Count;)
        {
            known = waiting.Count;
            waiting.UnionWith(steps.Where(s => s.After.Any(a => waiting.Contains(a.StepId))).Select(s => s.Id));
        }

        return [.. steps.Select(s => s.After.Any(a => a.StepId != FrameSteps.InspectUsed && waiting.Contains(a.StepId)) ? s with { After = s.After.RemoveAll(a => a.StepId == FrameSteps.InspectUsed) } : s)];
    }

    /// <summary>Ids of the torques that only makers name, and that are written down once they were applied.</summary>
    public static ImmutableArray<string> MakersTorques => LikeTorques.All.Keys;

    /// <summary>The steps that a build needs, in the order of the table.</summary>
    public static IReadOnlyList<WorkStep> Of(FitReport report, FrameGeometry? frame = null)
    {
        HashSet<string> known = [.. All.Select(r => r.Id)];
        foreach (StepRule rule in All)
        {
            foreach (WorkPrerequisite before in rule.After)
            {
                if (!known.Contains(before.StepId))
                {
                    throw new WorkOrderException($"{rule.Id} waits for {before.StepId}, which is no step", [rule.Id, before.StepId]);
                }
            }
        }

        StepRule[] needed = [.. All.Where(r => r.Needed(report.Build))];
        HashSet<string> there = [.. needed.Select(r => r.Id)];
        WorkStep[] steps = Pruned([.. needed.Select(r => r.For(report, id => there.Contains(id)))]);
        return frame is null ? [.. steps] : [.. steps.Select(s => s with { Figures = [.. s.Figures.Select(f => LineEstimates.Of(f, report.Build, frame))] })];
    }
}
