using System.Collections.Immutable;

namespace Lugwork.Geometry;

/// <summary>What a figure of a frame came to against a limit.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Figure">What was compared: "axle to crown".</param>
/// <param name="Reason">Why, with the figures, in a sentence.</param>
/// <param name="Caution">The warning that goes with it; null where there is none.</param>
/// <param name="Sources">What the limit rests on; empty where it is the maker's own.</param>
public sealed record GeometryFinding(Verdict Verdict, string Figure, string Reason, Caution? Caution, ImmutableArray<Source> Sources)
{
    /// <summary>"unsafe: axle to crown 551 mm, the frame maker's most is 541 mm".</summary>
    public override string ToString() => $"{Verdicts.InWords(Verdict)}: {Reason}";
}
