using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What a build carries beside its parts: the small parts that are there, and findings that were accepted.</summary>
internal sealed record BuildNotes(ImmutableSortedSet<string> SmallParts, ImmutableArray<Waiver> Waivers)
{
    public static BuildNotes None { get; } = new(ImmutableSortedSet.Create<string>(StringComparer.Ordinal), []);
}
