using System.Collections.Immutable;

namespace Lugwork.Workshop;

/// <summary>Another step that has to be done first, and why.</summary>
/// <param name="StepId">Id of the earlier step.</param>
/// <param name="Because">Why it comes first.</param>
public sealed record WorkPrerequisite(string StepId, string Because)
{
    /// <summary>"fit-fork: because".</summary>
    public override string ToString() => $"{StepId}: {Because}";
}

/// <summary>One earlier step and one later one, and why in this order.</summary>
public sealed record WorkLink
{
    internal WorkLink(string earlier, string later, string because)
    {
        EarlierId = earlier;
        LaterId = later;
        Because = because;
    }

    /// <summary>Id of the step that comes first.</summary>
    public string EarlierId { get; internal init; }

    /// <summary>Id of the step that waits for it.</summary>
    public string LaterId { get; internal init; }

    /// <summary>Why.</summary>
    public string Because { get; internal init; }

    /// <summary>"press-headset before fit-fork: because".</summary>
    public override string ToString() => $"{EarlierId} before {LaterId}: {Because}";
}

/// <summary>One step of a work plan: what is done, with what, how tight, and what comes before it. Immutable.</summary>
/// <remarks>The makers' figures and instructions rule; a step says what is usual and what this build says. Lists compare by being the same list: two that say the same are equal only where one was made from the other.</remarks>
public sealed record WorkStep
{
    /// <summary>Permanent id: "fit-bottom-bracket".</summary>
    public required string Id { get; init; }

    /// <summary>What the step is, in a few words.</summary>
    public required string Title { get; init; }

    /// <summary>Part of the work.</summary>
    public required WorkStage Stage { get; init; }

    /// <summary>What is done, in the order of doing.</summary>
    public required ImmutableArray<string> Does { get; init; }

    /// <summary>The slots whose parts are handled; each is filled in the build.</summary>
    public ImmutableArray<Slot> Slots { get; init; } = [];

    /// <summary>The joints that this step assembles or settles, as they were judged.</summary>
    public ImmutableArray<Fit> Findings { get; init; } = [];

    /// <summary>The steps that come before, each with its reason.</summary>
    public ImmutableArray<WorkPrerequisite> After { get; init; } = [];

    /// <summary>Tools.</summary>
    public ImmutableArray<WorkTool> Tools { get; init; } = [];

    /// <summary>What is used up.</summary>
    public ImmutableArray<WorkConsumable> Consumables { get; init; } = [];

    /// <summary>How tight, by published rows; the maker's figure rules.</summary>
    public ImmutableArray<TorqueFigure> Torques { get; init; } = [];

    /// <summary>Figures of this build.</summary>
    public ImmutableArray<WorkFigure> Figures { get; init; } = [];

    /// <summary>What to look at before the step counts as done.</summary>
    public ImmutableArray<string> Checks { get; init; } = [];

    /// <summary>Warnings.</summary>
    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>How much practice it takes; has to be said, so that a step that says nothing is not called easy.</summary>
    public required WorkSkill Skill { get; init; }

    /// <summary>How long it takes; has to be said.</summary>
    public required WorkTime Time { get; init; }

    /// <summary>Why a shop should do it; null where nothing asks for one.</summary>
    public LeaveToShop? Shop { get; init; }

    /// <summary>The joints of this step that do not simply fit: to be settled before it is done.</summary>
    public ImmutableArray<Fit> Open => [.. Findings.Where(f => f.Verdict != Verdict.Fits)];

    /// <summary>"fit-bottom-bracket: Fit the bottom bracket".</summary>
    public override string ToString() => $"{Id}: {Title}";
}
