using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>The shortest and the longest chain for a rear derailleur: big-big and small-small. A chain that can be ridden lies between. Immutable.</summary>
/// <remarks>
/// Shortest, big-big: N = loop(C, F, R) + a, with the largest ring F and sprocket R, the longest distance C between the axles and the allowance a of the derailleur's
/// maker, pitches. Longest, small-small: N = loop(c, f, r) + a + K / 2, with the smallest ring f and sprocket r, the shortest distance c, and the stated capacity K in
/// teeth: a derailleur that stands right in big-big takes up half a pitch more for each tooth of its capacity, and what is beyond it hangs slack. The first is
/// "Chain Sizing 1x11 (thread, quoting a handbook)"; the second is derived from the meaning of the capacity, and no page prints a worked example of it.
/// </remarks>
public sealed class ChainSpan
{
    private readonly int _needed;
    private readonly int? _capacity;

    private ChainSpan(ChainLength shortest, ChainLength? longest, int needed, int? capacity)
    {
        (Shortest, Longest) = (shortest, longest);
        (_needed, _capacity) = (needed, capacity);
    }

    /// <summary>What the sums rest on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.ChainSizing, Lugwork.Sources.DerailleurCapacity, Lugwork.Sources.Derived, Lugwork.Sources.CommonPractice];

    /// <summary>The shortest chain, not rounded: cut to <see cref="ChainLength.EvenPitches"/>.</summary>
    public ChainLength Shortest { get; }

    /// <summary>The longest chain that small-small still takes up, not rounded: cut to <see cref="ChainLength.EvenPitchesNotAbove"/>. Null where the capacity is not known.</summary>
    public ChainLength? Longest { get; }

    /// <summary>Both ends of the chains of a drive.</summary>
    /// <param name="longestCentreDistance">Between the axles where it is longest: a rigid frame's chainstay, a suspended one's at its longest.</param>
    /// <param name="shortestCentreDistance">Between the axles where it is shortest, not above the longest; the same on a rigid frame.</param>
    /// <param name="rings">Teeth of 1 to 4 rings.</param>
    /// <param name="sprockets">Teeth of 1 to 14 sprockets; the smallest and the largest will do.</param>
    /// <param name="capacity">Total capacity that the derailleur's maker states, teeth, 0 to 200; null where it is not known.</param>
    /// <param name="allowancePitches">Pitches added in big-big, 0 to 12: the derailleur maker's figure, <see cref="ChainRule.GeneralAllowancePitches"/> where there is none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range or no number.</exception>
    public static ChainSpan Of(Length longestCentreDistance, Length shortestCentreDistance, ReadOnlySpan<int> rings, ReadOnlySpan<int> sprockets, int? capacity, int allowancePitches)
    {
        int needed = DerailleurLimits.Needed(rings, sprockets);
        (int smallRing, int largeRing) = Ends(rings);
        (int small, int large) = Ends(sprockets);
        ChainLength shortest = ChainRule.BigBig(longestCentreDistance, largeRing, large, allowancePitches);
        double least = ChainLoop.Centre(shortestCentreDistance, smallRing, small);
        Given.Number(least, 0, longestCentreDistance.Millimeters, nameof(shortestCentreDistance), "mm");
        return capacity is not { } stated
            ? new(shortest, null, needed, null)
            : new(shortest, ChainRule.SmallSmall(shortestCentreDistance, smallRing, small, stated, allowancePitches), needed, stated);
    }

    /// <summary>Whether a chain can be cut for both ends.</summary>
    /// <returns>Does not fit where the drive needs more than the stated capacity; needs measuring where the capacity is not known, or where no even number of pitches lies between; fits otherwise, with the chains that do.</returns>
    public SumCheck Check()
    {
        int even = Shortest.EvenPitches;
        SumCheck check = _capacity is not { } stated
                ? new("chain-span", Verdict.NeedsMeasuring, FormattableString.Invariant($"at least {even} pitches; how long it may be is not known without the derailleur's capacity, {_needed} teeth are needed"), "the capacity that the derailleur's maker states", Cautions.ChainTooShort, Sources)
            : _needed > stated
                ? new("chain-span", Verdict.DoesNotFit, FormattableString.Invariant($"{_needed} teeth of capacity are needed, {stated} are stated: a chain of {even} pitches hangs slack in small-small"), "a derailleur with a longer cage, or fewer teeth", Cautions.ChainTooShort, Sources)
            : Longest!.Value.EvenPitchesNotAbove is var most && most < even
                ? new("chain-span", Verdict.NeedsMeasuring, FormattableString.Invariant($"between {Shortest.Pitches:0.0} pitches in big-big and {Longest.Value.Pitches:0.0} in small-small lies no even number; {even} is the shortest that can be ridden"), "the chain itself in small-small: it must not hang slack", Cautions.ChainTooShort, Sources)
            : new("chain-span", Verdict.Fits, most == even ? FormattableString.Invariant($"cut to {even} pitches") : FormattableString.Invariant($"cut to {even} pitches, at most {most}"), "", Cautions.ChainTooShort, Sources);
        return check.Comparing(("shortest", Shortest.Pitches, "pitches"), ("longest", Longest?.Pitches, "pitches"), ("capacity needed", _needed, "teeth"), ("capacity", _capacity, "teeth"));
    }

    /// <summary>"shortest 114.78 pitches, cut to 116 (58 full links); longest 116.90 pitches, cut to 116".</summary>
    public override string ToString() => Longest is { } longest
        ? FormattableString.Invariant($"shortest {Shortest}; longest {longest.Pitches:0.00} pitches, cut to {longest.EvenPitchesNotAbove}")
        : $"shortest {Shortest}; longest not known";

    private static (int Least, int Most) Ends(ReadOnlySpan<int> teeth)
    {
        (int least, int most) = (teeth[0], teeth[0]);
        foreach (int one in teeth)
        {
            (least, most) = (Math.Min(least, one), Math.Max(most, one));
        }

        return (least, most);
    }
}
