namespace Lugwork;

/// <summary>How a joint was judged. The default is no fit.</summary>
/// <remarks>
/// From <see cref="Fits"/> on a larger one is worse. <see cref="NotJudged"/> stands before them as the default and is no better than
/// <see cref="NeedsMeasuring"/>: ask by <see cref="Verdicts.IsNoWorseThan"/>, which knows that, and not by comparing numbers.
/// </remarks>
public enum Verdict
{
    /// <summary>Nothing was judged. Counts as <see cref="NeedsMeasuring"/> wherever verdicts combine.</summary>
    NotJudged = 0,

    /// <summary>The two mate as they are.</summary>
    Fits = 1,

    /// <summary>They mate with a part or work that has to be bought.</summary>
    NeedsPart = 2,

    /// <summary>What is known does not decide it; something has to be measured or asked.</summary>
    NeedsMeasuring = 3,

    /// <summary>They do not mate and nothing bridges them.</summary>
    DoesNotFit = 4,

    /// <summary>They may go together and then fail. No bridge and no waiver makes this milder.</summary>
    Unsafe = 5,
}

/// <summary>How verdicts combine.</summary>
public static class Verdicts
{
    /// <summary>The worse of two; <see cref="Verdict.NotJudged"/> counts as <see cref="Verdict.NeedsMeasuring"/>.</summary>
    /// <param name="first">One verdict.</param>
    /// <param name="second">The other verdict.</param>
    public static Verdict Worse(this Verdict first, Verdict second)
    {
        Verdict a = first == Verdict.NotJudged ? Verdict.NeedsMeasuring : first;
        Verdict b = second == Verdict.NotJudged ? Verdict.NeedsMeasuring : second;
        return a > b ? a : b;
    }

    /// <summary>True where a verdict is as good as another or better; <see cref="Verdict.NotJudged"/> counts as <see cref="Verdict.NeedsMeasuring"/> on both sides.</summary>
    /// <param name="verdict">The verdict that is asked about.</param>
    /// <param name="worst">The worst that is let through.</param>
    public static bool IsNoWorseThan(this Verdict verdict, Verdict worst) => verdict.Worse(worst) == worst.Worse(worst);

    /// <summary>The words of a mechanic: "needs a part", "does not fit".</summary>
    /// <param name="verdict">Any verdict.</param>
    public static string InWords(this Verdict verdict) => verdict switch
    {
        Verdict.Fits => "fits",
        Verdict.NeedsPart => "needs a part",
        Verdict.NeedsMeasuring => "needs measuring",
        Verdict.DoesNotFit => "does not fit",
        Verdict.Unsafe => "unsafe",
        _ => "not judged",
    };
}
