using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What a sum comes to when it is held against a limit.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Reason">Why, with the figures, in a sentence.</param>
/// <param name="Mend">What would mend it; empty where nothing has to be mended.</param>
/// <param name="Caution">A warning that goes with it; null where there is none.</param>
/// <param name="Sources">What it rests on.</param>
public sealed record SumCheck(Verdict Verdict, string Reason, string Mend, Caution? Caution, ImmutableArray<Source> Sources)
{
    /// <summary>"needs measuring: the reason".</summary>
    public override string ToString() => $"{Verdicts.InWords(Verdict)}: {Reason}";
}
