namespace Lugwork.Planning;

/// <summary>How a part of the donor goes to one of its places, with the frame and the parts that the new build has.</summary>
/// <param name="Slot">The place.</param>
/// <param name="Verdict">Worst of its joints there; not judged where it meets nothing that is there.</param>
/// <param name="Why">The worst joint; a default where nothing was judged.</param>
public sealed record CarryPlace(Slot Slot, Verdict Verdict, Fit Why)
{
    /// <summary>"rear tyre: does not fit".</summary>
    public override string ToString() => $"{Slot.Name}: {Verdicts.InWords(Verdict)}";
}
