using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Workshop;

/// <summary>A plan as it is worked off, step by step: what is done, what was measured and applied. Immutable; saved and resumed by <see cref="WorkRecordFile"/>.</summary>
public sealed class WorkRecord
{
    /// <summary>Longest note, characters.</summary>
    public static int MostNote => NoteLimit;

    // For patterns and attributes, which take constants alone; a public one would be copied into callers.
    internal const int NoteLimit = 1_000;

    internal const double MostMillimetres = 100_000;
    internal const int MostCount = 1_000;
    internal const double MostTorque = 300;

    private readonly ImmutableDictionary<string, WorkEntry> _entries;

    internal WorkRecord(WorkPlan plan, ImmutableDictionary<string, WorkEntry> entries, string keptFor = "")
    {
        Plan = plan;
        KeptFor = keptFor;
        _entries = entries;
    }

    /// <summary>Name of the build for which a record that was read had been kept; empty where it does not say.</summary>
    internal string KeptFor { get; }

    /// <summary>The plan that is worked off.</summary>
    public WorkPlan Plan { get; }

    /// <summary>What was written down, in the order of the plan.</summary>
    public ImmutableArray<WorkEntry> Entries => [.. Plan.Steps.Where(s => _entries.ContainsKey(s.Id)).Select(s => _entries[s.Id])];

    /// <summary>Entries of steps that this plan has no more, since the build is another: kept and counted for nothing. By id.</summary>
    public ImmutableArray<WorkEntry> Lapsed => [.. _entries.Values.Where(e => Plan.Find(e.StepId) is null).OrderBy(e => e.StepId, StringComparer.Ordinal)];

    /// <summary>Steps that can be done now: not done, and all that comes before is.</summary>
    public ImmutableArray<WorkStep> Next => [.. Plan.Steps.Where(s => !IsDone(s.Id) && s.After.All(a => IsDone(a.StepId)))];

    /// <summary>Every step is done.</summary>
    public bool IsComplete => Plan.Steps.All(s => IsDone(s.Id));

    /// <summary>What someone should look at: steps done before those they wait for, with joints that do not mate, or without their torque written down; torques outside what was read; entries that count for nothing.</summary>
    public ImmutableArray<string> Questions => RecordQuestions.Of(this);

    /// <summary>A record in which nothing is done.</summary>
    /// <param name="plan">The plan.</param>
    public static WorkRecord For(WorkPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(plan, ImmutableDictionary<string, WorkEntry>.Empty);
    }

    /// <summary>The same entries on another plan, after the build was changed; those of steps that are gone lapse, and stand again when the step comes back.</summary>
    /// <param name="plan">The new plan.</param>
    public WorkRecord WithPlan(WorkPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(plan, _entries, KeptFor);
    }

    /// <summary>A step of this plan is done.</summary>
    /// <param name="step">Its id.</param>
    public bool IsDone(string step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return Plan.Find(step) is not null && _entries.TryGetValue(step, out WorkEntry? entry) && entry.IsDone;
    }

    /// <summary>The step is done.</summary>
    /// <param name="step">Its id.</param>
    /// <exception cref="ArgumentException">This plan has no such step.</exception>
    public WorkRecord WithDone(string step) => With(Of(step) with { IsDone = true });

    /// <summary>The step has to be done again; what was measured stays.</summary>
    /// <param name="step">Its id.</param>
    /// <exception cref="ArgumentException">This plan has no such step.</exception>
    public WorkRecord WithReopened(string step) => With(Of(step) with { IsDone = false });

    /// <summary>A length as it was measured; an earlier one of the same figure goes.</summary>
    /// <param name="step">Id of the step.</param>
    /// <param name="figure">Id of a figure of this step in millimetres.</param>
    /// <param name="length">0 to 100 m; kept to the nanometre.</param>
    /// <exception cref="ArgumentException">This plan has no such step, the step no such figure, or the figure is no length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is no number, or out of range.</exception>
    public WorkRecord WithMeasured(string step, string figure, Length length)
    {
        decimal millimetres = Math.Round((decimal)NumberRange.Millimetres(length, 0, MostMillimetres), 6);
        return With(step, figure, millimetres.ToString("0.######", CultureInfo.InvariantCulture), u => u == WorkMeasurement.Millimetres, nameof(WithMeasured));
    }

    /// <summary>Pitches or teeth as they were counted; earlier ones of the same figure go.</summary>
    /// <param name="step">Id of the step.</param>
    /// <param name="figure">Id of a figure of this step in pitches or teeth.</param>
    /// <param name="count">How many were counted, 1 to 1,000.</param>
    /// <exception cref="ArgumentException">This plan has no such step, the step no such figure, or nothing of it is counted.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is out of range.</exception>
    public WorkRecord WithCount(string step, string figure, int count) =>
        With(step, figure, NumberRange.Checked(count, 1, MostCount, "", nameof(count)).ToString(CultureInfo.InvariantCulture), u => u is "pitches" or "teeth", nameof(WithCount));

    /// <summary>What was found out, in words as a build file writes them: "ZS44", "steel"; earlier ones of the same figure go.</summary>
    /// <param name="step">Id of the step.</param>
    /// <param name="figure">Id of a figure of this step that is neither a length nor counted nor a torque.</param>
    /// <param name="text">1 to 1,000 characters.</param>
    /// <exception cref="ArgumentException">This plan has no such step, the step no such figure, the figure is a number, or the text is empty or too long.</exception>
    public WorkRecord WithFinding(string step, string figure, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string said = text.Trim();
        return said.Length is > 0 and <= NoteLimit ? With(step, figure, said, u => u.Length == 0, nameof(WithFinding)) : throw new ArgumentException($"what was found out has 1 to {MostNote} characters", nameof(text));
    }

    /// <summary>A torque as it was applied; an earlier one of the same fastener goes. It is written down, never approved: the maker's figure rules.</summary>
    /// <param name="step">Id of the step.</param>
    /// <param name="fastener">Id of a torque row of this step, or of a figure of it that only the maker names.</param>
    /// <param name="torque">What was applied, in any unit, 0.001 to 300 N m.</param>
    /// <exception cref="ArgumentException">This plan has no such step, or the step no such torque.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The torque is no number, or out of range.</exception>
    public WorkRecord WithTorque(string step, string fastener, Torque torque)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        WorkEntry entry = Of(step);
        int thousandths = (int)Math.Round(NumberRange.Checked(torque.NewtonMeters, 0.001, MostTorque, WorkFigure.NewtonMetres, nameof(torque)) * 1000);
        WorkStep at = Plan.Find(step)!;
        string[] known = [.. at.Torques.Select(t => t.Id), .. at.Figures.Where(f => f.Unit == WorkFigure.NewtonMetres).Select(f => f.Id)];
        return known.Contains(fastener)
            ? With(entry with { Torques = [.. entry.Torques.Where(t => t.FastenerId != fastener), new(fastener, thousandths)] })
            : throw new ArgumentException($"{step} has no torque {fastener}; it has {Listed(known)}", nameof(fastener));
    }

    /// <summary>A note to a step; an earlier one goes.</summary>
    /// <param name="step">Id of the step.</param>
    /// <param name="note">0 to 1,000 characters.</param>
    /// <exception cref="ArgumentException">This plan has no such step, or the note is too long.</exception>
    public WorkRecord WithNote(string step, string note)
    {
        ArgumentNullException.ThrowIfNull(note);
        WorkEntry entry = Of(step);
        return note.Length <= MostNote ? With(entry with { Note = note }) : throw new ArgumentException($"a note has at most {MostNote} characters", nameof(note));
    }

    /// <summary>The build as built: what was measured stands in its parts, marked as measured. Check and plan it again.</summary>
    /// <remarks>A figure that has no field in a part stays in the record alone; one that the part refuses too, and <see cref="Questions"/> says why.</remarks>
    public Build AsBuilt() => MeasuredBuild.Of(this, []);

    internal IEnumerable<WorkEntry> All => _entries.Values.OrderBy(e => e.StepId, StringComparer.Ordinal);

    private WorkEntry Of(string step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return Plan.Find(step) is null ? throw new ArgumentException($"this plan has no step {step}", nameof(step)) : _entries.GetValueOrDefault(step) ?? new WorkEntry { StepId = step };
    }

    private WorkRecord With(string step, string figure, string text, Func<string, bool> takes, string how)
    {
        ArgumentNullException.ThrowIfNull(figure);
        WorkEntry entry = Of(step);
        WorkStep at = Plan.Find(step)!;
        if (at.Figures.FirstOrDefault(f => f.Id == figure) is not { } found)
        {
            throw new ArgumentException($"{step} has no figure {figure}; it has {Listed(at.Figures.Select(f => f.Id))}", nameof(figure));
        }

        return takes(found.Unit)
            ? With(entry with { Measurements = [.. entry.Measurements.Where(m => m.FigureId != figure), new(figure, text, found.Unit)] })
            : throw new ArgumentException($"{figure} is {InWords(found.Unit)}: {TakenBy(found.Unit)}, {how} does not", nameof(figure));
    }

    internal static string InWords(string unit) => unit switch
    {
        WorkMeasurement.Millimetres => "a length",
        "" => "said in words",
        WorkFigure.NewtonMetres => "a torque",
        "pitches" or "teeth" => $"counted in {unit}",
        _ => $"a figure in {unit}",
    };

    private static string TakenBy(string unit) => unit switch
    {
        WorkMeasurement.Millimetres => $"{nameof(WithMeasured)} takes it",
        "" => $"{nameof(WithFinding)} takes it",
        WorkFigure.NewtonMetres => $"{nameof(WithTorque)} takes it",
        "pitches" or "teeth" => $"{nameof(WithCount)} takes it",
        _ => "a record takes none",
    };

    private static string Listed(IEnumerable<string> ids) => string.Join(", ", ids) is { Length: > 0 } list ? list : "none";

    private WorkRecord With(WorkEntry entry) => new(Plan, _entries.SetItem(entry.StepId, entry with { Parts = PartsOf(entry.StepId) }), KeptFor);

    /// <summary>The parts that a step of this plan handles, as they are now.</summary>
    internal string PartsOf(string step) => Waiver.PartsOf(Plan.Find(step)!.Slots, MeasuredBuild.Bare(Plan.Build));
}
