using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Rules for the chain of a rear derailleur.</summary>
/// <remarks>
/// Big-big is the shortest chain that can be ridden: round the largest ring and the largest sprocket without the derailleur, and an allowance. One inch, 2 pitches,
/// is the general rule; for very large sprockets makers give other allowances, so the allowance is asked for, and the maker's figure comes first. A suspended frame is
/// measured where its axles are farthest apart. A chain too short tears the derailleur off in big-big.
/// N = loop(C, F, R) + a, pitches: C the distance of the axles, F the largest ring, R the largest sprocket, a the allowance, by "Chain Sizing 1x11 (thread, quoting a handbook)"; the short and the long rule by "calculating chain length (thread 86388)".
/// </remarks>
public static class ChainRule
{
    /// <summary>The general allowance, pitches: one inch, one full link.</summary>
    public const int GeneralAllowancePitches = 2;

    private const double InchesAsPitches = 2;

    /// <summary>What the rules rest on. That makers differ for large sprockets is common practice; none of their documents could be read.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.ChainSizing, Lugwork.Sources.ChainLengthThread, Lugwork.Sources.CommonPractice];

    /// <summary>What goes with every chain for a derailleur.</summary>
    public static Caution Care => Cautions.ChainTooShort;

    /// <summary>The exact loop round the largest ring and sprocket and the allowance; <see cref="ChainLength.EvenPitches"/> is where it is cut.</summary>
    /// <param name="longestCentreDistance">Between the axles where it is longest: a rigid frame's chainstay, a suspended one's at its longest.</param>
    /// <param name="largestRing">Teeth of the largest ring.</param>
    /// <param name="largestSprocket">Teeth of the largest sprocket.</param>
    /// <param name="allowancePitches">Pitches added, 0 to 12: the derailleur maker's figure, <see cref="GeneralAllowancePitches"/> where there is none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static ChainLength BigBig(Length longestCentreDistance, int largestRing, int largestSprocket, int allowancePitches) =>
        ChainLoop.Exact(longestCentreDistance, largestRing, largestSprocket).Plus(Given.Number(allowancePitches, 0, 12, nameof(allowancePitches)));

    /// <summary>The longest chain that small-small does not leave slack: the exact loop round the smallest ring and sprocket, the allowance, and half a pitch for each tooth of the stated capacity.</summary>
    /// <remarks>N = loop + a + K / 2. Derived from the meaning of the capacity: what a derailleur takes up beyond its place in big-big. <see cref="ChainLength.EvenPitchesNotAbove"/> is where it is cut. Both ends at once: <see cref="ChainSpan"/>.</remarks>
    /// <param name="shortestCentreDistance">Between the axles where it is shortest.</param>
    /// <param name="smallestRing">Teeth of the smallest ring.</param>
    /// <param name="smallestSprocket">Teeth of the smallest sprocket.</param>
    /// <param name="capacity">Total capacity that the derailleur's maker states, teeth, 0 to 200.</param>
    /// <param name="allowancePitches">Pitches that are added in big-big, 0 to 12.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static ChainLength SmallSmall(Length shortestCentreDistance, int smallestRing, int smallestSprocket, int capacity, int allowancePitches) =>
        ChainLoop.Exact(shortestCentreDistance, smallestRing, smallestSprocket)
            .Plus(Given.Number(allowancePitches, 0, 12, nameof(allowancePitches)) + (Given.Number(capacity, 0, 200, nameof(capacity), "teeth") / 2));

    /// <summary>The handbook's short rule, inches: L = 2C + F/4 + R/4 + 1. The one inch is in it. Good to about half an inch; short where ring and sprocket differ much.</summary>
    /// <param name="centreDistance">Between the axles.</param>
    /// <param name="largestRing">Teeth of the largest ring.</param>
    /// <param name="largestSprocket">Teeth of the largest sprocket.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static ChainLength ByShortRuleWithOneInch(Length centreDistance, int largestRing, int largestSprocket) =>
        ChainLength.OfPitches(InchesAsPitches * ((2 * ChainLoop.Centre(centreDistance, largestRing, largestSprocket) / 25.4) + ((largestRing + largestSprocket) / 4.0) + 1));

    /// <summary>The handbook's long rule, inches: L = (F + R)/4 + 2 √(C² + ((F - R)/4π)²) + 1. The one inch is in it.</summary>
    /// <remarks>A spread misprint adds a count of pitches to the inches instead of the square under the root: 55.93 in for 55.71.</remarks>
    /// <param name="centreDistance">Between the axles.</param>
    /// <param name="largestRing">Teeth of the largest ring.</param>
    /// <param name="largestSprocket">Teeth of the largest sprocket.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static ChainLength ByLongRuleWithOneInch(Length centreDistance, int largestRing, int largestSprocket)
    {
        double centre = ChainLoop.Centre(centreDistance, largestRing, largestSprocket) / 25.4;
        double difference = (largestRing - largestSprocket) / (4 * Math.PI);
        return ChainLength.OfPitches(InchesAsPitches * (((largestRing + largestSprocket) / 4.0) + (2 * Math.Sqrt((centre * centre) + (difference * difference))) + 1));
    }
}
