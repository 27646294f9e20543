using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What a sum comes to when it is held against a limit. One type for every sum of the library. Immutable.</summary>
public sealed class SumCheck
{
    internal SumCheck(string id, Verdict verdict, string sentence, string remedy, Caution? caution, ImmutableArray<Source> sources)
    {
        Id = id;
        Verdict = verdict;
        Sentence = sentence;
        Remedy = remedy.Length == 0 ? null : remedy;
        Cautions = caution is null ? [] : [caution];
        Sources = sources;
    }

    /// <summary>Which sum it is; permanent: "steerer-length".</summary>
    public string Id { get; }

    /// <summary>The verdict.</summary>
    public Verdict Verdict { get; }

    /// <summary>Why, with the figures, in a sentence.</summary>
    public string Sentence { get; }

    /// <summary>The figures that were compared: what there is first, then the limits that are known. Empty where a missing one kept the sum from being done.</summary>
    public ImmutableArray<SumFigure> Figures { get; private init; } = [];

    /// <summary>What would mend it; null where nothing has to be mended, or nothing is known that would.</summary>
    public string? Remedy { get; }

    /// <summary>The warnings that go with it.</summary>
    public ImmutableArray<Caution> Cautions { get; }

    /// <summary>What it rests on; empty where the limit is a maker's own.</summary>
    public ImmutableArray<Source> Sources { get; }

    /// <summary>The worst verdict of several checks; not judged where there is none, which counts as needs measuring wherever verdicts combine.</summary>
    /// <param name="checks">The checks.</param>
    public static Verdict WorstOf(params ReadOnlySpan<SumCheck> checks)
    {
        Verdict worst = Verdict.NotJudged;
        foreach (SumCheck check in checks)
        {
            worst = worst == Verdict.NotJudged ? Verdicts.Worse(check.Verdict, check.Verdict) : Verdicts.Worse(worst, check.Verdict);
        }

        return worst;
    }

    /// <summary>"needs measuring: the sentence".</summary>
    public override string ToString() => $"{Verdicts.InWords(Verdict)}: {Sentence}";

    /// <summary>The same with what was compared; figures that are not known are left out.</summary>
    internal SumCheck Comparing(params ReadOnlySpan<(string Name, double? Value, string Unit)> figures)
    {
        ImmutableArray<SumFigure>.Builder told = ImmutableArray.CreateBuilder<SumFigure>(figures.Length);
        foreach ((string name, double? value, string unit) in figures)
        {
            if (value is { } known)
            {
                told.Add(new(name, known, unit));
            }
        }

        return new(Id, Verdict, Sentence, Remedy ?? "", Cautions is [var caution] ? caution : null, Sources) { Figures = told.ToImmutable() };
    }
}
