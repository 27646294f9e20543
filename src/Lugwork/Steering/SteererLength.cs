using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>What stands on a threadless steerer from the fork crown upwards; the sum says how long the steerer has to be.</summary>
/// <remarks>
/// Total = lower stack + head tube + upper stack + cover + spacers below + stem + spacers above. Cut = total - 3 mm; shortest = total - spacers above - 5 mm.
/// The steerer ends below the top of the stack, so that the cap pulls the stem on to the bearings: by 2 to 3 mm ("Cutting a steerer: why subtract 3 mm?"), and
/// not more than 5 mm below the top of the stem ("TBIS 4210-2:2018 (text of ISO 4210-2:2014), clause 4.7.4"). Heights are 0 to 1,000 mm, exact to the nanometre.
/// The default is an empty stack: it is measured, never a fit. Upper and lower stack by the headset itself: <see cref="HeadsetHeights"/>.
/// </remarks>
public readonly record struct SteererLength
{
    private const decimal UsualGap = 3;
    internal const decimal LeastGap = 2;
    internal const decimal MostGap = 5;

    private readonly Nanometres _headTube;
    private readonly Nanometres _lower;
    private readonly Nanometres _upper;
    private readonly Nanometres _cover;
    private readonly Nanometres _below;
    private readonly Nanometres _stem;
    private readonly Nanometres _above;

    /// <summary>Length of the head tube, 0 to 1,000 mm.</summary>
    public required Length HeadTube { get => _headTube.ToLength(); init => _headTube = Height(value, nameof(HeadTube)); }

    /// <summary>Height of the lower half below the head tube, 0 to 1,000 mm.</summary>
    public required Length LowerStack { get => _lower.ToLength(); init => _lower = Height(value, nameof(LowerStack)); }

    /// <summary>Height of the upper half above the head tube, 0 to 1,000 mm.</summary>
    public required Length UpperStack { get => _upper.ToLength(); init => _upper = Height(value, nameof(UpperStack)); }

    /// <summary>Height of a cover above the upper half, 0 to 1,000 mm; 0 where the upper stack counts it.</summary>
    public Length Cover { get => _cover.ToLength(); init => _cover = Height(value, nameof(Cover)); }

    /// <summary>Spacers below the stem, 0 to 1,000 mm.</summary>
    public Length SpacersBelow { get => _below.ToLength(); init => _below = Height(value, nameof(SpacersBelow)); }

    /// <summary>Height of the stem at the steerer, 0 to 1,000 mm.</summary>
    public required Length StemClamp { get => _stem.ToLength(); init => _stem = Height(value, nameof(StemClamp)); }

    /// <summary>Spacers above the stem, 0 to 1,000 mm.</summary>
    public Length SpacersAbove { get => _above.ToLength(); init => _above = Height(value, nameof(SpacersAbove)); }

    /// <summary>Everything that stands on the steerer.</summary>
    public Length Total => ToLength(TotalMillimetres);

    /// <summary>Where the steerer is cut, 3 mm below the top of the stack. Cut long rather than short: it can be cut again.</summary>
    public Length Cut => ToLength(CutMillimetres);

    /// <summary>The shortest steerer that the standard allows: 5 mm below the top of the stem.</summary>
    public Length Shortest => ToLength(ShortestMillimetres);

    internal decimal TotalMillimetres => _headTube.Millimetres + _lower.Millimetres + _upper.Millimetres + _cover.Millimetres + _below.Millimetres + _stem.Millimetres + _above.Millimetres;

    internal decimal CutMillimetres => TotalMillimetres - UsualGap;

    internal decimal ShortestMillimetres => TotalMillimetres - _above.Millimetres - MostGap;

    internal decimal BelowMillimetres => _below.Millimetres;

    /// <summary>A stack from plain millimetres.</summary>
    /// <param name="headTube">Length of the head tube, 0 to 1,000 mm.</param>
    /// <param name="lowerStack">Height of the lower half below the head tube, 0 to 1,000 mm.</param>
    /// <param name="upperStack">Height of the upper half above the head tube, its cover counted, 0 to 1,000 mm.</param>
    /// <param name="spacersBelow">Spacers below the stem, 0 to 1,000 mm.</param>
    /// <param name="stemClamp">Height of the stem at the steerer, 0 to 1,000 mm.</param>
    /// <param name="spacersAbove">Spacers above the stem, 0 to 1,000 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A height is out of range.</exception>
    public static SteererLength OfMillimetres(decimal headTube, decimal lowerStack, decimal upperStack, decimal spacersBelow, decimal stemClamp, decimal spacersAbove = 0) => new()
    {
        HeadTube = ToLength(headTube),
        LowerStack = ToLength(lowerStack),
        UpperStack = ToLength(upperStack),
        SpacersBelow = ToLength(spacersBelow),
        StemClamp = ToLength(stemClamp),
        SpacersAbove = ToLength(spacersAbove),
    };

    /// <summary>Judges a steerer that is already cut.</summary>
    /// <param name="steerer">Its length from the crown-race seat to the top, above 0 to 1,000 mm.</param>
    /// <returns>Needs measuring where head tube or stem have no height; unsafe where it is too short; needs a part, a spacer above, where the cap would meet it; otherwise fits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is out of range or no number.</exception>
    public SumCheck Check(Length steerer) => Judge((decimal)NumberRange.Millimetres(steerer, 0.001, 1_000, nameof(steerer)));

    internal SumCheck Judge(decimal steerer)
    {
        if (_headTube.Value == 0 || _stem.Value == 0)
        {
            return new("steerer-length", Verdict.NeedsMeasuring, $"the height of the {(_headTube.Value == 0 ? "head tube" : "stem at the steerer")} is not known", "the missing height, by caliper", Cautions.SteeringCare, [Sources.SteererRequirement]);
        }

        decimal gap = TotalMillimetres - steerer;
        SumCheck check = steerer < ShortestMillimetres
            ? new("steerer-length", Verdict.Unsafe, string.Create(CultureInfo.InvariantCulture, $"the steerer ends {ShortestMillimetres + MostGap - steerer:0.##} mm below the top of the stem; 5 mm is the limit"), "fewer spacers below the stem, a lower stem or headset, or another fork", Cautions.SteeringCare, [Sources.SteererRequirement])
            : gap < LeastGap
            ? new("steerer-length", Verdict.NeedsPart, string.Create(CultureInfo.InvariantCulture, $"the steerer {(gap < 0 ? "stands" : "ends")} {Math.Abs(gap):0.##} mm {(gap < 0 ? "above" : "below")} the top of the stack: the cap meets it before it pulls the stem down"), "a spacer above the stem, or cutting the steerer; on carbon as the fork maker says", Cautions.SteeringCare, [Sources.SteererGap])
            : new("steerer-length", Verdict.Fits, string.Create(CultureInfo.InvariantCulture, $"the steerer ends {gap:0.##} mm below the top of the stack"), "", Cautions.SteeringCare, [Sources.SteererRequirement, Sources.SteererGap]);
        return check.Comparing(("steerer", (double)steerer, "mm"), ("stack", (double)TotalMillimetres, "mm"), ("gap under the cap", (double)gap, "mm"), ("shortest", (double)ShortestMillimetres, "mm"));
    }

    private static Length ToLength(decimal millimetres) => Length.FromMillimeters((double)millimetres);

    private static Nanometres Height(Length height, string name) => NumberRange.Exact(height, 0, 1_000, name);
}
