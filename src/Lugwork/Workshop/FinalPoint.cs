using System.Collections.Immutable;

namespace Lugwork.Workshop;

/// <summary>One point of the last look over a bicycle, with what this build says of it. Immutable.</summary>
public sealed class FinalPoint
{
    internal FinalPoint()
    {
    }

    /// <summary>Permanent id: "stem-gap".</summary>
    public required string Id { get; init; }

    /// <summary>What is looked at and what is right.</summary>
    public required string Ask { get; init; }

    /// <summary>What this build says of it; empty where there is nothing to fill in.</summary>
    public ImmutableArray<WorkFigure> Figures { get; init; } = [];

    /// <summary>What it rests on.</summary>
    public required ImmutableArray<Source> Sources { get; init; }

    /// <summary>No standard or page that was read says it: common practice.</summary>
    public bool IsPractice => Sources.All(s => s.IsUnpublished);

    /// <summary>"stem-gap: the question".</summary>
    public override string ToString() => $"{Id}: {Ask}";
}
