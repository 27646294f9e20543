using System.Collections.Immutable;

namespace Lugwork.Steering;

/// <summary>A threadless steerer that is cut, and what stands on it.</summary>
internal static class SteererSums
{
    private const long Millimetre = Nanometres.PerMillimetre;

    private static readonly ImmutableArray<Source> Gap = [Sources.SteererRequirement, Sources.SteererGap];

    private static readonly Bridge Spacer = new()
    {
        Id = "spacer-above-stem",
        Kind = BridgeKind.Spacers,
        Result = Verdict.NeedsPart,
        What = "a spacer above the stem as the steerer's maker allows, or the steerer cut shorter",
        Sources = [Sources.SteererGap, Sources.SpacersAbove],
        Caution = Cautions.SteeringCare,
    };

    private static readonly ImmutableArray<int> ToStem = [1, -1, -1, -1, -1, -1, -1];

    private static readonly ImmutableArray<int> Stack = [-1, 1, 1, 1, 1, 1, 1, -1];

    /// <summary>The sum of a fork with two crowns: far below all that lengths come to.</summary>
    private const long NoSum = -2_000_000_000L * Millimetre;

    /// <summary>Code of two crowns among the inputs.</summary>
    public const long TwoCrowns = 2;

    private static readonly SumBand OfTwoCrowns = new(long.MinValue, new(Verdict.NeedsMeasuring, new Reason("steerer-of-two-crowns", "With two crowns the fork maker's rule says where the steerer ends: the sum of a stem on a steerer does not hold.", Cautions.SteeringCare) { Sources = [Sources.CommonPractice] }));

    private static readonly Reason NoCrown = new("fork-without-crown", "A fork has one crown or two, and this one is stated with none: look above the head tube, where a second crown clamps the legs, or there is none and it has one.", Cautions.SteeringCare) { Sources = [Sources.CommonPractice] };

    /// <summary>Inputs: steerer, head tube, stem, lower stack, upper stack, spacers below, crowns of the fork. How far the steerer goes beyond 5 mm below the top of the stem.</summary>
    public static SumRelation Reaches { get; } = new SumRelation(
            "steerer at least to 5 mm below the top of the stem", "mm",
            v => v[6] == TwoCrowns ? NoSum : v[0] - v[1] - v[2] - v[3] - v[4] - v[5] + ((long)SteererLength.MostGap * Millimetre), ToStem,
            OfTwoCrowns,
            new(NoSum + 1, new(Verdict.Unsafe, new Reason("steerer-too-short", "A steerer of {0} mm ends [over] mm lower than 5 mm below the top of the stem (head tube {1}, stem {2}, spacers {5} mm): the clamp does not hold on it.", Cautions.SteeringCare) { Mend = "fewer spacers below the stem, a lower stem or a fork with a longer steerer", Sources = [Sources.SteererRequirement] })),
            new(0, new(Verdict.Fits, new Reason("steerer-reaches", "A steerer of {0} mm reaches into the stem, [sum] mm beyond the least.") { Sources = [Sources.SteererRequirement] })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Without(6, Verdict.NeedsMeasuring, NoCrown);

    /// <summary>Inputs: steerer, head tube, stem, lower stack, upper stack, spacers below, spacers above, crowns of the fork. The gap under the cap.</summary>
    public static SumRelation UnderCap { get; } = new SumRelation(
            "gap of at least 2 mm under the cap", "mm",
            v => v[7] == TwoCrowns ? NoSum : v[1] + v[2] + v[3] + v[4] + v[5] + v[6] - v[0], Stack,
            OfTwoCrowns,
            new(NoSum + 1, new(Verdict.NeedsPart, new Reason("steerer-above-stem", "A steerer of {0} mm stands [over] mm above the stem and its spacers (head tube {1}, stem {2}, spacers {5} and {6} mm): the cap pulls nothing down. It takes [bridge].", Cautions.SteeringCare) { Sources = Gap }, Spacer)),
            new(0, new(Verdict.NeedsPart, new Reason("cap-meets-steerer", "A steerer of {0} mm leaves a gap of [sum] mm under the cap (head tube {1}, stem {2}, spacers {5} and {6} mm): the cap meets it before it pulls the stem down. It takes [bridge].", Cautions.SteeringCare) { Sources = Gap }, Spacer)),
            new((long)SteererLength.LeastGap * Millimetre, new(Verdict.Fits, new Reason("gap-under-cap", "A steerer of {0} mm leaves a gap of [sum] mm under the cap.") { Sources = Gap })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Without(7, Verdict.NeedsMeasuring, NoCrown);
}
