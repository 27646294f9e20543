using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>A steerer before and after the cut: where it is cut, what comes off, the gap that stays under the cap, and what the cap pulls on.</summary>
/// <remarks>Cut = stack - 3 mm, off = before - cut, see <see cref="SteererLength"/>; the depth of the nut by "Star Fangled Nut and Expansion Plug Installation".</remarks>
public sealed class SteererCut
{
    private const decimal StarNut = 15;

    private readonly decimal _before;
    private readonly decimal _after;
    private readonly SteererLength _stack;

    private SteererCut(SteererLength stack, decimal before, decimal after, Material? material, SumCheck check)
    {
        Material = material;
        _stack = stack;
        _before = before;
        _after = after;
        Check = check;
    }

    /// <summary>Where the depth of the star nut comes from; the cut is a sum.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.StarNutSetting];

    /// <summary>From the crown-race seat to the top as it is now.</summary>
    public Length Before => Length.FromMillimeters((double)_before);

    /// <summary>From the crown-race seat to the saw: 3 mm below the top of the stack; as it is now where it is shorter already.</summary>
    public Length After => Length.FromMillimeters((double)_after);

    /// <summary>What comes off; 0 where nothing does.</summary>
    public Length Off => Length.FromMillimeters((double)(_before - _after));

    /// <summary>From the top of the steerer to the top of the stack, under the cap, after the cut.</summary>
    public Length GapUnderCap => Length.FromMillimeters((double)(_stack.TotalMillimetres - _after));

    /// <summary>What the steerer is made of; null where it is not known.</summary>
    public Material? Material { get; }

    /// <summary>How far below the top of the cut steerer a star nut is set, about 15 mm. Metal steerers only.</summary>
    public static Length StarNutBelowTop => Length.FromMillimeters((double)StarNut);

    /// <summary>The warning that goes with a star nut.</summary>
    public static Caution StarNutCaution => Cautions.StarNutCare;

    /// <summary>Whether the steerer, once cut, holds the stem. Never a fit where its material is not known, nor of carbon with spacers of which the fork maker's figures are not known.</summary>
    public SumCheck Check { get; }

    /// <summary>The cut of a steerer for what is to stand on it.</summary>
    /// <param name="stack">What stands on it from the crown up.</param>
    /// <param name="before">From the crown-race seat to the top as it is now, above 0 to 1,000 mm.</param>
    /// <param name="material">What the steerer is made of; null where it is not known, and then what goes into it is asked for.</param>
    /// <param name="makersMostSpacers">The fork maker's largest height of spacers below the stem, 0 to 200 mm; null where it is not known. Not asked for on metal.</param>
    /// <param name="makersLeastSpacers">The fork maker's least height of spacers below the stem, 0 to 200 mm; null where it is not known. Not asked for on metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range, or nothing stands on the steerer.</exception>
    public static SteererCut Of(SteererLength stack, Length before, Material? material = null, Length? makersMostSpacers = null, Length? makersLeastSpacers = null)
    {
        decimal now = (decimal)NumberRange.Millimetres(before, 0.001, 1_000, nameof(before));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stack.CutMillimetres, nameof(stack));
        decimal after = Math.Min(now, stack.CutMillimetres);
        return new(stack, now, after, material, Judge(stack, after, material, makersMostSpacers, makersLeastSpacers));
    }

    private static SumCheck Judge(SteererLength stack, decimal after, Material? material, Length? most, Length? least)
    {
        SumCheck length = stack.Judge(after);
        SumCheck other = material is null
            ? new("steerer-material", Verdict.NeedsMeasuring, "what the steerer is made of is not known: carbon has limits of its own, and takes no star nut", "a magnet, a look inside, or the fork's maker", Cautions.CarbonSpacers, [Lugwork.Sources.SpacerColumn, Lugwork.Sources.StarNutSetting])
            : material == Material.Carbon
            ? SteererSpacers.OnCarbon(SteererSize.Mm28Point6, Length.FromMillimeters((double)Math.Min(stack.BelowMillimetres, 200)), most, least)
            : length;
        return other.Verdict > length.Verdict ? other : length;
    }

    /// <summary>The spacers below the stem that leave a gap of 3 mm on a steerer that is already cut.</summary>
    /// <param name="stack">What else stands on it; its spacers below do not count.</param>
    /// <param name="steerer">From the crown-race seat to the top, above 0 to 1,000 mm.</param>
    /// <returns>Negative where the steerer is too short for a gap of 3 mm without any spacer: see <see cref="SteererLength.Check"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is out of range, or nothing else stands on the steerer.</exception>
    public static Length SpacersBelowFor(SteererLength stack, Length steerer)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stack.CutMillimetres - stack.BelowMillimetres, nameof(stack));
        decimal now = (decimal)NumberRange.Millimetres(steerer, 0.001, 1_000, nameof(steerer));
        return Length.FromMillimeters((double)(now - (stack.CutMillimetres - stack.BelowMillimetres)));
    }

    /// <summary>"cut at 199.9 mm: 100.1 mm off, 3 mm under the cap, star nut 15 mm down"; of a steerer that is too short only its length and the gap.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{(_before > _after ? FormattableString.Invariant($"cut at {_after:0.##} mm: {_before - _after:0.##} mm off") : FormattableString.Invariant($"not cut, {_after:0.##} mm"))}, {_stack.TotalMillimetres - _after:0.##} mm under the cap{(Check.Verdict == Verdict.Unsafe ? "" : Inside)}");

    private string Inside =>
        Material is null ? ", star nut or expander: by what the steerer is made of"
        : Material == Material.Carbon ? ", the maker's expander in it"
        : $", star nut {StarNut} mm down";
}
