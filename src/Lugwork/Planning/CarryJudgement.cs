using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>What a whole build's check says of the part in one slot.</summary>
/// <param name="Slot">The slot.</param>
/// <param name="Verdict">Worst of the joints that the part takes part in; not judged where it meets nothing that is there.</param>
/// <param name="Findings">Those joints, in the order of the joint table.</param>
/// <param name="Asked">Fields of it that no joint reads and that are outside the library.</param>
internal sealed record CarryJudgement(Slot Slot, Verdict Verdict, ImmutableArray<Fit> Findings, ImmutableArray<Measurement> Asked)
{
    public bool IsRefused => Verdict > Verdict.NeedsMeasuring;

    /// <summary>It fits as it is or with a shim or adapter.</summary>
    public bool Goes => Verdict is Verdict.Fits or Verdict.NeedsPart;

    public static CarryJudgement Of(Build build, Slot slot)
    {
        ImmutableArray<Fit> fits = build.FitsOf(slot);
        ImmutableArray<Measurement> asked = [.. (UnjudgedFields.Asked(build) ?? []).Where(m => m.Slot == slot)];
        Verdict worst = asked.IsEmpty ? Verdict.NotJudged : Verdict.NeedsMeasuring;
        foreach (Fit fit in fits)
        {
            // A part that is in good order has met nothing by that: its condition alone never makes it fit.
            if (fit.Verdict != Verdict.Fits || Meets(fit))
            {
                worst = worst == Verdict.NotJudged ? fit.Verdict : Verdicts.Worse(worst, fit.Verdict);
            }
        }

        return new(slot, worst, fits, asked);
    }

    /// <summary>The two of one article: the worse verdict, and the joints of both in the order of the table.</summary>
    public CarryJudgement With(CarryJudgement other) => new(
        Slot,
        Verdict == Verdict.NotJudged ? other.Verdict : other.Verdict == Verdict.NotJudged ? Verdict : Verdicts.Worse(Verdict, other.Verdict),
        [.. Findings.Concat(other.Findings).DistinctBy(f => f.Joint).OrderBy(f => JointTable.All.IndexOf(f.Joint!))],
        [.. Asked.Concat(other.Asked)]);

    private static bool Meets(Fit fit) => !fit.Joint!.IsOfCondition && fit.Joint.Slots.Length > 1;
}
