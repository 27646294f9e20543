using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>What stands on a threadless steerer from the fork crown upwards, millimetres; the sum says how long the steerer has to be.</summary>
/// <remarks>The steerer ends below the top of the stack, so that the cap pulls the stem on to the bearings: by 2 to 3 mm, and by the standard not more than 5 mm below the top of the stem. The default is an empty stack.</remarks>
/// <param name="HeadTube">Length of the head tube.</param>
/// <param name="LowerStack">Height of the lower half below the head tube.</param>
/// <param name="UpperStack">Height of the upper half above the head tube.</param>
/// <param name="SpacersBelow">Spacers below the stem.</param>
/// <param name="StemClamp">Height of the stem at the steerer.</param>
/// <param name="SpacersAbove">Spacers above the stem.</param>
public readonly record struct SteererLength(decimal HeadTube, decimal LowerStack, decimal UpperStack, decimal SpacersBelow, decimal StemClamp, decimal SpacersAbove = 0)
{
    private const decimal UsualGap = 3;
    private const decimal LeastGap = 2;
    private const decimal MostGap = 5;

    /// <summary>Length of the head tube, 0 to 1,000 mm.</summary>
    public decimal HeadTube { get; init => field = Height(value); } = Height(HeadTube);

    /// <summary>Height of the lower half below the head tube, 0 to 1,000 mm.</summary>
    public decimal LowerStack { get; init => field = Height(value); } = Height(LowerStack);

    /// <summary>Height of the upper half above the head tube, 0 to 1,000 mm.</summary>
    public decimal UpperStack { get; init => field = Height(value); } = Height(UpperStack);

    /// <summary>Spacers below the stem, 0 to 1,000 mm.</summary>
    public decimal SpacersBelow { get; init => field = Height(value); } = Height(SpacersBelow);

    /// <summary>Height of the stem at the steerer, 0 to 1,000 mm.</summary>
    public decimal StemClamp { get; init => field = Height(value); } = Height(StemClamp);

    /// <summary>Spacers above the stem, 0 to 1,000 mm.</summary>
    public decimal SpacersAbove { get; init => field = Height(value); } = Height(SpacersAbove);

    /// <summary>Everything that stands on the steerer.</summary>
    public decimal Total => HeadTube + LowerStack + UpperStack + SpacersBelow + StemClamp + SpacersAbove;

    /// <summary>Where the steerer is cut, 3 mm below the top of the stack. Cut long rather than short: it can be cut again.</summary>
    public decimal CutMillimetres => Total - UsualGap;

    /// <summary>Where the steerer is cut, 3 mm below the top of the stack.</summary>
    public Length Cut => Length.FromMillimeters((double)CutMillimetres);

    /// <summary>The shortest steerer that the standard allows: 5 mm below the top of the stem.</summary>
    public decimal ShortestMillimetres => Total - SpacersAbove - MostGap;

    /// <summary>The shortest steerer that the standard allows: 5 mm below the top of the stem.</summary>
    public Length Shortest => Length.FromMillimeters((double)ShortestMillimetres);

    /// <summary>Judges a steerer that is already cut.</summary>
    /// <param name="steerer">Its length from the crown-race seat to the top, millimetres; above 0, at most 1,000.</param>
    /// <returns>Needs measuring where head tube or stem have no height; unsafe where it is too short; needs a part, a spacer above, where the cap would meet it; otherwise fits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is out of range.</exception>
    public SteeringCheck Check(decimal steerer)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(steerer);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(steerer, 1_000);
        if (HeadTube == 0 || StemClamp == 0)
        {
            return new(Verdict.NeedsMeasuring, $"the height of the {(HeadTube == 0 ? "head tube" : "stem at the steerer")} is not known", "the missing height, by caliper", Cautions.SteeringCare, [Sources.SteererRequirement]);
        }

        decimal gap = Total - steerer;
        if (steerer < ShortestMillimetres)
        {
            return new(Verdict.Unsafe, string.Create(CultureInfo.InvariantCulture, $"the steerer ends {ShortestMillimetres + MostGap - steerer:0.##} mm below the top of the stem; 5 mm is the limit"), "fewer spacers below the stem, a lower stem or headset, or another fork", Cautions.SteeringCare, [Sources.SteererRequirement]);
        }

        return gap < LeastGap
            ? new(Verdict.NeedsPart, string.Create(CultureInfo.InvariantCulture, $"the steerer ends {gap:0.##} mm below the top of the stack: the cap meets it before it pulls the stem down"), "a spacer above the stem, or cutting the steerer; on carbon as the fork maker says", Cautions.SteeringCare, [Sources.SteererGap])
            : new(Verdict.Fits, string.Create(CultureInfo.InvariantCulture, $"the steerer ends {gap:0.##} mm below the top of the stack"), "", null, [Sources.SteererRequirement, Sources.SteererGap]);
    }

    private static decimal Height(decimal millimetres)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(millimetres);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(millimetres, 1_000);
        return millimetres;
    }
}
