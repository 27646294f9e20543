using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>What a headset itself adds to the steerer: its lower half below the head tube, its upper half and cover above it. Immutable.</summary>
/// <remarks>
/// Total on the steerer = lower stack + head tube + upper stack + cover + spacers + stem, see <see cref="SteererLength"/>. By the code of its halves a headset has a
/// range: the heights of one code differ by some millimetres from maker to maker, and most ranges are from memory, so that nothing is called a fit by them. The
/// heights of the headset at hand, by depth gauge or from its maker's drawing, decide.
/// Heights of codes: each names its source, see <see cref="HeadsetCup.StackSource"/>; most have no source but memory.
/// </remarks>
public sealed class HeadsetHeights
{
    private readonly decimal _leastUpper;
    private readonly decimal _mostUpper;
    private readonly decimal _leastLower;
    private readonly decimal _mostLower;
    private readonly decimal _cover;

    private HeadsetHeights((decimal Least, decimal Most) upper, (decimal Least, decimal Most) lower, decimal cover, bool isMeasured, ImmutableArray<Source> sources)
    {
        (_leastUpper, _mostUpper) = upper;
        (_leastLower, _mostLower) = lower;
        _cover = cover;
        IsMeasured = isMeasured;
        Sources = sources;
    }

    /// <summary>The heights are those of the headset at hand; otherwise those that are usual for its codes.</summary>
    public bool IsMeasured { get; }

    /// <summary>Least that both halves and the cover add.</summary>
    public Length Least => Length.FromMillimeters((double)(_leastUpper + _leastLower + _cover));

    /// <summary>Most that both halves and the cover add.</summary>
    public Length Most => Length.FromMillimeters((double)(_mostUpper + _mostLower + _cover));

    /// <summary>What the heights rest on; empty for measured ones.</summary>
    public ImmutableArray<Source> Sources { get; }

    /// <summary>The heights of the headset at hand.</summary>
    /// <param name="upper">From the top of the head tube to where cover, spacer or stem sits, 0 to 100 mm.</param>
    /// <param name="lower">From the lower end of the head tube to the crown-race seat, 0 to 80 mm.</param>
    /// <param name="cover">Height of a cover that stands on the upper half, 0 to 100 mm; 0 where the upper height counts it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A height is out of range or no number.</exception>
    public static HeadsetHeights Measured(Length upper, Length lower, Length cover = default)
    {
        decimal above = NumberRange.Exact(upper, 0, 100).Millimetres;
        decimal below = NumberRange.Exact(lower, 0, 80).Millimetres;
        return new((above, above), (below, below), NumberRange.Exact(cover, 0, 100).Millimetres, true, []);
    }

    /// <summary>The heights that are usual for two halves; null where one of them has none that is known.</summary>
    /// <param name="upper">The upper half.</param>
    /// <param name="lower">The lower half.</param>
    /// <param name="cover">Height of a cover that stands on the upper half, 0 to 100 mm; 0 where the usual height counts it.</param>
    /// <exception cref="ArgumentException">A half is not made for its end.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The cover is out of range or no number.</exception>
    public static HeadsetHeights? Usual(HeadsetCup upper, HeadsetCup lower, Length cover = default)
    {
        ArgumentNullException.ThrowIfNull(upper);
        ArgumentNullException.ThrowIfNull(lower);
        decimal cap = NumberRange.Exact(cover, 0, 100).Millimetres;
        if (!upper.IsUpper || !lower.IsLower)
        {
            throw new ArgumentException($"{(upper.IsUpper ? lower : upper).TradeName} is not made for this end of a head tube", upper.IsUpper ? nameof(lower) : nameof(upper));
        }

        return CupFigures.Of(upper.FitCode).Upper is var (leastUpper, mostUpper) && CupFigures.Of(lower.FitCode).Lower is var (leastLower, mostLower)
            ? new((leastUpper / 100m, mostUpper / 100m), (leastLower / 100m, mostLower / 100m), cap, false, upper.StackSource == lower.StackSource ? [upper.StackSource] : [upper.StackSource, lower.StackSource])
            : null;
    }

    /// <summary>The stack with the least heights of this headset.</summary>
    /// <param name="others">Head tube, spacers and stem; its own headset heights do not count.</param>
    public SteererLength LeastOn(SteererLength others) => With(others, _leastUpper, _leastLower);

    /// <summary>The stack with the largest heights of this headset: by it the steerer is cut, for it can be cut again.</summary>
    /// <param name="others">Head tube, spacers and stem; its own headset heights do not count.</param>
    public SteererLength MostOn(SteererLength others) => With(others, _mostUpper, _mostLower);

    /// <summary>Judges a steerer that is already cut, with this headset.</summary>
    /// <param name="others">Head tube, spacers and stem; its own headset heights do not count.</param>
    /// <param name="steerer">Length of the steerer from the crown-race seat to the top, above 0 to 1,000 mm.</param>
    /// <returns>Of measured heights what <see cref="SteererLength.Check"/> says. Of usual ones unsafe where the steerer is too short even without any headset, else needs measuring: a code is no height.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is out of range or no number.</exception>
    public SumCheck Check(SteererLength others, Length steerer)
    {
        if (IsMeasured)
        {
            return MostOn(others).Check(steerer);
        }

        SumCheck without = With(others, 0, 0).Check(steerer);
        return without.Verdict == Verdict.Unsafe
            ? without
            : new SumCheck(
                "headset-heights",
                Verdict.NeedsMeasuring,
                string.Create(CultureInfo.InvariantCulture, $"by the usual heights of its codes the headset adds {_leastUpper + _leastLower + _cover:0.##} to {_mostUpper + _mostLower + _cover:0.##} mm: a steerer of {LeastOn(others).CutMillimetres:0.##} to {MostOn(others).CutMillimetres:0.##} mm leaves 3 mm under the cap, this one is {steerer.Millimeters:0.##} mm long"),
                "the heights of both halves of this headset, by depth gauge or from its maker's drawing",
                Cautions.SteeringCare,
                Sources).Comparing(("steerer", steerer.Millimeters, "mm"), ("least with 3 mm under the cap", (double)LeastOn(others).CutMillimetres, "mm"), ("most with 3 mm under the cap", (double)MostOn(others).CutMillimetres, "mm"));
    }

    /// <summary>"upper 16.35, lower 12.05 mm, measured", "upper 10 to 14, lower 10 to 15 mm by the usual heights of the codes".</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"upper {Span(_leastUpper + _cover, _mostUpper + _cover)}, lower {Span(_leastLower, _mostLower)} mm{(IsMeasured ? ", measured" : " by the usual heights of the codes")}");

    private static string Span(decimal least, decimal most) => least == most ? FormattableString.Invariant($"{least:0.##}") : FormattableString.Invariant($"{least:0.##} to {most:0.##}");

    private SteererLength With(SteererLength others, decimal upper, decimal lower) => others with
    {
        UpperStack = Length.FromMillimeters((double)upper),
        LowerStack = Length.FromMillimeters((double)lower),
        Cover = Length.FromMillimeters((double)_cover),
    };
}
