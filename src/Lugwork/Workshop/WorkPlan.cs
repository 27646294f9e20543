using System.Collections.Immutable;
using Lugwork.Drawing;
using Lugwork.Geometry;

namespace Lugwork.Workshop;

/// <summary>The steps by which a build becomes a bicycle, in an order that works. Immutable.</summary>
/// <remarks>A plan of what is usual, not the maker's instructions: those, and the figures on the parts, rule wherever they differ. Brakes, steering, axles and carbon: have it checked by a shop before the first ride.</remarks>
public sealed partial class WorkPlan
{
    /// <summary>What stands over every plan.</summary>
    public static string MakersRule => "The maker's figure rules: what is printed on a part or in its instructions comes before every figure here. Brakes, steering, axles and carbon parts: have the work checked by a shop before the first ride.";

    internal WorkPlan(FitReport report, ImmutableArray<WorkStep> steps)
    {
        Report = report;
        Steps = steps;
    }

    /// <summary>The build.</summary>
    public Build Build => Report.Build;

    /// <summary>The build judged. A plan of parts that do not mate can be read, and must not be worked off.</summary>
    public FitReport Report { get; }

    /// <summary>Every step that this build needs, each after its prerequisites.</summary>
    public ImmutableArray<WorkStep> Steps { get; }

    /// <summary>Small parts that are still to buy, beside what is used up.</summary>
    public ImmutableArray<SmallPart> SmallParts => Shopping.SmallParts(this);

    /// <summary>Every tool, each once, in the order of first use.</summary>
    public ImmutableArray<WorkTool> Tools => ToolsOf(Steps);

    /// <summary>Everything that is used up, each once, in the order of first use; what comes with a small part stands there.</summary>
    public ImmutableArray<WorkConsumable> Consumables => Shopping.Consumables(this);

    /// <summary>Steps for a shop: those that need its tools and those that the risk advises.</summary>
    public ImmutableArray<WorkStep> ForShop => [.. Steps.Where(s => s.Shop is not null)];

    /// <summary>Steps that are left for home.</summary>
    public ImmutableArray<WorkStep> AtHome => [.. Steps.Where(s => s.Shop is null)];

    /// <summary>The chain of steps that takes longest, each with the reason why it waits for the one before.</summary>
    public ImmutableArray<WorkLink> LongestChain => WorkChains.Longest(Steps);

    /// <summary>The last look over the bicycle before it is ridden.</summary>
    public ImmutableArray<FinalPoint> Inspection => FinalInspection.Of(Report);

    /// <summary>What to look at on the parts that are stated to be used, of unknown condition or from a crash, before they are fitted.</summary>
    public ImmutableArray<InspectionPoint> UsedParts => Build.ToInspect();

    /// <summary>The tools of some steps, each once.</summary>
    /// <param name="steps">Steps of this plan.</param>
    public static ImmutableArray<WorkTool> ToolsOf(IEnumerable<WorkStep> steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        return [.. steps.SelectMany(s => s.Tools).Distinct()];
    }

    /// <summary>The step of an id; null where this plan has none.</summary>
    /// <param name="id">Its id.</param>
    public WorkStep? Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return Steps.FirstOrDefault(s => s.Id == id);
    }

    /// <summary>Why one step comes before another: the shortest chain of reasons. Empty where nothing asks for this order, and the plan merely lists them so.</summary>
    /// <param name="earlier">Id of the step that should come first.</param>
    /// <param name="later">Id of the step that should wait.</param>
    /// <exception cref="ArgumentException">This plan has no such step.</exception>
    public ImmutableArray<WorkLink> WhyBefore(string earlier, string later)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(later);
        foreach (string id in (ReadOnlySpan<string>)[earlier, later])
        {
            if (Find(id) is null)
            {
                throw new ArgumentException($"this plan has no step {id}", id == earlier ? nameof(earlier) : nameof(later));
            }
        }

        return WorkChains.Between(Steps, earlier, later);
    }

    /// <summary>The same with a step of one's own, such as painting; put where its prerequisites allow.</summary>
    /// <param name="step">The step. Those that are to wait for it say so by <paramref name="before"/>.</param>
    /// <param name="before">Ids of steps that wait for it.</param>
    /// <exception cref="ArgumentException">The step has no id, no title or nothing to do, has a list that was never made or holds a null, two figures of one id, or a class that is none, handles a slot that is empty, or assembles a joint: each joint has its step.</exception>
    /// <exception cref="WorkOrderException">There is no order: a step waits for itself, for one that is not there, or the id is taken.</exception>
    public WorkPlan With(WorkStep step, params ReadOnlySpan<string> before)
    {
        ArgumentNullException.ThrowIfNull(step);
        if (Fault(step) is { } fault)
        {
            throw new ArgumentException(fault, nameof(step));
        }

        List<WorkStep> steps = [.. Steps, step];
        foreach (string waiting in before)
        {
            int at = steps.FindIndex(s => s.Id == waiting);
            if (at < 0)
            {
                throw new WorkOrderException($"{step.Id} comes before {waiting}, which is no step of this plan", [step.Id, waiting]);
            }

            steps[at] = steps[at] with { After = steps[at].After.Add(new(step.Id, step.Title)) };
        }

        return new(Report, WorkOrder.Of(steps));
    }

    private string? Fault(WorkStep step) =>
        string.IsNullOrEmpty(step.Id) || string.IsNullOrEmpty(step.Title) ? "a step has an id and a title"
        : step.Does.IsDefaultOrEmpty ? "a step says what is done"
        : step.Slots.IsDefault || step.Findings.IsDefault || step.After.IsDefault || step.Tools.IsDefault || step.Consumables.IsDefault || step.Torques.IsDefault || step.Figures.IsDefault || step.Checks.IsDefault || step.Cautions.IsDefault ? "a list of the step was never made: an empty one is []"
        : HoldsNull(step) ? "a list of the step holds a null, or something without a name"
        : !Enum.IsDefined(step.Stage) || !Enum.IsDefined(step.Skill) || !Enum.IsDefined(step.Time) ? "there is no such stage, skill or time"
        : step.Figures.GroupBy(f => f.Id).FirstOrDefault(g => g.Skip(1).Any()) is { } twice ? $"two figures of the step are called {twice.Key}"
        : step.Slots.FirstOrDefault(s => Build[s] is null) is { } empty ? $"{step.Id} handles the {empty.Name}, which is empty in this build"
        : step.Findings.IsEmpty ? null : $"{step.Id} assembles a joint that another step of this plan assembles";

    private static bool HoldsNull(WorkStep step) =>
        step.Does.Any(d => d is null) || step.Slots.Any(s => s is null) || step.Torques.Any(t => t is null) || step.Checks.Any(c => c is null) || step.Cautions.Any(c => c?.Text is null)
        || step.After.Any(a => a?.StepId is null || a.Because is null) || step.Tools.Any(t => t?.Id is null || t.Name is null) || step.Consumables.Any(s => s?.Id is null || s.Name is null)
        || step.Figures.Any(f => string.IsNullOrEmpty(f?.Id) || f.Name is null || f.Unit is null || f.Words is null || f.Lacking.IsDefault || f.Lacking.Contains(null!) || f.Sources.IsDefault || f.Sources.Contains(null!));

    /// <summary>The plan as plain text.</summary>
    public override string ToString() => PlanText.Write(this);

    /// <summary>The plan as Markdown.</summary>
    public string ToMarkdown() => PlanMarkdown.Write(this);

    /// <summary>The plan as one HTML page: no scripts, nothing fetched, to be read on a screen and printed. A step has the drawing of what it puts together, where at least one figure of it is known.</summary>
    public string ToHtml() => ToHtml(PlanPictures.Of(Build));

    /// <summary>The same page with drawings of one's own choice: those of a joint stand in the step that assembles it, all others, such as the geometry of the frame, behind the steps.</summary>
    /// <param name="drawings">The drawings; none for a page of words alone.</param>
    /// <exception cref="ArgumentException">The list was never made, or a drawing is null.</exception>
    public string ToHtml(ImmutableArray<LineDrawing> drawings) =>
        drawings.IsDefault || drawings.Contains(null!) ? throw new ArgumentException("a list of drawings is expected; an empty one is []", nameof(drawings)) : PlanHtml.Write(this, drawings);

    /// <summary>The plan as JSON.</summary>
    public string ToJson() => PlanJson.Write(this);
}
