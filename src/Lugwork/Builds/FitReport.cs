using System.Collections.Immutable;
using System.Text;

namespace Lugwork;

/// <summary>A whole build judged: every joint, clean ones included.</summary>
public sealed class FitReport
{
    internal FitReport(Build build, ImmutableArray<Fit> fits, ImmutableArray<Slot> missing)
    {
        Build = build;
        Fits = fits;
        Missing = missing;
        Verdict worst = fits.IsEmpty ? Verdict.NeedsMeasuring : Verdict.Fits;
        foreach (Fit fit in fits)
        {
            worst = Verdicts.Worse(worst, fit.Verdict);
        }

        Verdict = missing.IsEmpty ? worst : Verdicts.Worse(worst, Verdict.NeedsPart);
    }

    /// <summary>What this version does not judge yet, said in every report.</summary>
    public const string NotYetJudged = "Not judged by this version: headset, stem, bar, bottom bracket, crank, derailleurs, chain, shifting, clearances, thru-axle thread.";

    /// <summary>The build that was judged.</summary>
    public Build Build { get; }

    /// <summary>The worst joint's verdict; where a required slot is empty at least <see cref="Verdict.NeedsPart"/>.</summary>
    public Verdict Verdict { get; }

    /// <summary>Every joint whose slots are filled.</summary>
    public ImmutableArray<Fit> Fits { get; }

    /// <summary>Required slots that are empty.</summary>
    public ImmutableArray<Slot> Missing { get; }

    /// <summary>Every required slot is filled.</summary>
    public bool IsComplete => Missing.IsEmpty;

    /// <summary>What has to be bought or done beside the parts: the remedies of joints that need a part.</summary>
    public ImmutableArray<Remedy> PartsToAdd =>
        [.. Fits.Where(f => f.Verdict == Verdict.NeedsPart).SelectMany(f => f.Remedies).Distinct()];

    /// <summary>What to measure or ask, those first that settle most joints.</summary>
    public ImmutableArray<Measurement> ToMeasure =>
        [.. Fits.SelectMany(f => f.Measurements).GroupBy(m => m).OrderByDescending(g => g.Count()).Select(g => g.Key)];

    /// <summary>Every caution, each once, the worst joint's first.</summary>
    public ImmutableArray<Caution> Cautions => [.. Fits.OrderByDescending(f => f.Verdict).SelectMany(f => f.Cautions).Distinct()];

    /// <summary>The worst joint; the first of equals. Default where nothing was judged.</summary>
    public Fit Worst => Fits.IsEmpty ? default : Fits.MaxBy(f => Verdicts.Worse(f.Verdict, Verdict.Fits));

    /// <summary>The answer of a mechanic in five lines: verdict, worst joint, remedy, what is missing, what is not judged.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        int clean = Fits.Count(f => f.Verdict == Verdict.Fits);
        text.Append(Capital(Verdicts.InWords(Verdict))).Append(": ").Append(clean).Append(" of ").Append(Fits.Length).AppendLine(" joints fit as they are.");
        Fit worst = Worst;
        if (worst.Joint is not null && worst.Verdict != Verdict.Fits)
        {
            text.Append("Worst: ").AppendLine(worst.ToString());
            string mend = worst.Remedies is [var first, ..] ? (first.Kind == RemedyKind.IfMeasured ? "If it measures right: " : "Mend: ") + first.What
                : worst.Measurements is [var measure, ..] ? "Measure: " + measure : "Mend: nothing known.";
            text.AppendLine(mend);
        }

        text.AppendLine(IsComplete ? "Every slot is filled." : $"Still empty: {string.Join(", ", Missing)}.");
        text.Append(NotYetJudged);
        return text.ToString();
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
