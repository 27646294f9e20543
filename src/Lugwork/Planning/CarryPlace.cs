namespace Lugwork.Planning;

/// <summary>How a part of the donor goes to one of its places, with the frame and the parts that the new build has.</summary>
public sealed record CarryPlace
{
    internal CarryPlace(Slot slot, Verdict verdict, Fit why)
    {
        Slot = slot;
        Verdict = verdict;
        Why = why;
    }

    /// <summary>The place.</summary>
    public Slot Slot { get; internal init; }

    /// <summary>Worst of its joints there; not judged where it meets nothing that is there.</summary>
    public Verdict Verdict { get; internal init; }

    /// <summary>The worst joint; a default where nothing was judged.</summary>
    public Fit Why { get; internal init; }

    /// <summary>"rear tyre: does not fit".</summary>
    public override string ToString() => $"{Slot.Name}: {Verdicts.InWords(Verdict)}";
}
