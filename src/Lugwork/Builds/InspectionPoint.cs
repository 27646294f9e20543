using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What to look at on one part before it is called inspected.</summary>
public sealed class InspectionPoint
{
    internal InspectionPoint(Slot slot, string what, ImmutableArray<Source> sources)
    {
        Slot = slot;
        What = what;
        Sources = sources;
    }

    /// <summary>Where the part is.</summary>
    public Slot Slot { get; internal init; }

    /// <summary>Where to look, for what, with what, and the limit of wear where one is published.</summary>
    public string What { get; internal init; }

    /// <summary>What it rests on.</summary>
    public ImmutableArray<Source> Sources { get; internal init; }

    /// <summary>"fork: ...".</summary>
    public override string ToString() => $"{Slot.Name}: {What}";
}
