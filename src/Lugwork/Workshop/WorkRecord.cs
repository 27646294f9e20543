using System.Collections.Immutable;

namespace Lugwork;

/// <summary>A plan as it is worked off, step by step: what is done, what was measured and applied. Immutable; saved and resumed by <see cref="WorkRecordFile"/>.</summary>
public sealed class WorkRecord
{
    /// <summary>Longest note, characters.</summary>
    public const int MostNote = 1_000;

    internal const decimal MostValue = 100_000;
    internal const decimal MostTorque = 300;

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
    public ImmutableArray<WorkEntry> Lapsed => [.. _entries.Values.Where(e => Plan.Find(e.Step) is null).OrderBy(e => e.Step, StringComparer.Ordinal)];

    /// <summary>Steps that can be done now: not done, and all that comes before is.</summary>
    public ImmutableArray<WorkStep> Next => [.. Plan.Steps.Where(s => !IsDone(s.Id) && s.After.All(a => IsDone(a.Step)))];

    /// <summary>Every step is done.</summary>
    public bool IsComplete => Plan.Steps.All(s => IsDone(s.Id));

    /// <summary>What someone should look at: steps done before those they wait for or with joints that do not mate, torques outside every published figure, entries that count for nothing.</summary>
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
    public WorkRecord On(WorkPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(plan, _entries, KeptFor);
    }

    /// <summary>A step of this plan is done.</summary>
    /// <param name="step">Its id.</param>
    public bool IsDone(string step) => Plan.Find(step) is not null && _entries.TryGetValue(step, out WorkEntry? entry) && entry.IsDone;

    /// <summary>The step is done.</summary>
    /// <param name="step">Its id.</param>
    /// <exception cref="ArgumentException">This plan has no such step.</exception>
    public WorkRecord Done(string step) => With(Of(step) with { IsDone = true });

    /// <summary>The step has to be done again; what was measured stays.</summary>
    /// <param name="step">Its id.</param>
    /// <exception cref="ArgumentException">This plan has no such step.</exception>
    public WorkRecord Reopened(string step) => With(Of(step) with { IsDone = false });

    /// <summary>A figure as it was measured; an earlier one of the same figure goes.</summary>
    /// <param name="step">Id of the step.</param>
    /// <param name="figure">Id of a figure of this step.</param>
    /// <param name="value">In the unit of the figure, 0 to 100,000.</param>
    /// <exception cref="ArgumentException">This plan has no such step, or the step no such figure.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is out of range.</exception>
    public WorkRecord Measured(string step, string figure, decimal value)
    {
        WorkEntry entry = Of(step);
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, MostValue);
        return Plan.Find(step)!.Figures.Any(f => f.Id == figure)
            ? With(entry with { Measurements = [.. entry.Measurements.Where(m => m.Figure != figure), new(figure, value)] })
            : throw new ArgumentException($"{step} has no figure {figure}; it has {string.Join(", ", Plan.Find(step)!.Figures.Select(f => f.Id))}", nameof(figure));
    }

    /// <summary>A torque as it was applied; an earlier one of the same fastener goes. It is written down, never approved: the maker's figure rules.</summary>
    /// <param name="step">Id of the step.</param>
    /// <param name="torque">Id of a torque row of this step.</param>
    /// <param name="newtonMetres">What was applied, N m, above 0 to 300.</param>
    /// <exception cref="ArgumentException">This plan has no such step, or the step no such torque.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The torque is out of range.</exception>
    public WorkRecord Applied(string step, string torque, decimal newtonMetres)
    {
        WorkEntry entry = Of(step);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(newtonMetres);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(newtonMetres, MostTorque);
        return Plan.Find(step)!.Torques.Any(t => t.Id == torque)
            ? With(entry with { Torques = [.. entry.Torques.Where(t => t.Torque != torque), new(torque, newtonMetres)] })
            : throw new ArgumentException($"{step} has no torque {torque}; it has {string.Join(", ", Plan.Find(step)!.Torques.Select(t => t.Id))}", nameof(torque));
    }

    /// <summary>A note to a step; an earlier one goes.</summary>
    /// <param name="step">Id of the step.</param>
    /// <param name="note">0 to 1,000 characters.</param>
    /// <exception cref="ArgumentException">This plan has no such step, or the note is too long.</exception>
    public WorkRecord Noted(string step, string note)
    {
        ArgumentNullException.ThrowIfNull(note);
        WorkEntry entry = Of(step);
        return note.Length <= MostNote ? With(entry with { Note = note }) : throw new ArgumentException($"a note has at most {MostNote} characters", nameof(note));
    }

    /// <summary>The build as built: what was measured stands in its parts, marked as measured. Check and plan it again.</summary>
    public Build AsBuilt() => AsBuiltTable.Of(this);

    internal IEnumerable<WorkEntry> All => _entries.Values.OrderBy(e => e.Step, StringComparer.Ordinal);

    private WorkEntry Of(string step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return Plan.Find(step) is null ? throw new ArgumentException($"this plan has no step {step}", nameof(step)) : _entries.GetValueOrDefault(step) ?? new WorkEntry { Step = step };
    }

    private WorkRecord With(WorkEntry entry) => new(Plan, _entries.SetItem(entry.Step, entry with { Parts = PartsOf(entry.Step) }), KeptFor);

    /// <summary>The parts that a step of this plan handles, as they are now.</summary>
    internal string PartsOf(string step) => Waiver.PartsOf(Plan.Find(step)!.Slots, AsBuiltTable.Bare(Plan.Build));
}
