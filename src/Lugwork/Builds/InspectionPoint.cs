using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What to look at on one part before it is called inspected.</summary>
/// <param name="Slot">Where the part is.</param>
/// <param name="What">Where to look, for what, with what, and the limit of wear where one is published.</param>
/// <param name="Sources">What it rests on.</param>
public sealed record InspectionPoint(Slot Slot, string What, ImmutableArray<Source> Sources)
{
    /// <summary>"fork: ...".</summary>
    public override string ToString() => $"{Slot.Name}: {What}";
}
