using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>The sums of a derailleur drive: capacity, limits of sprockets and rings, length of the chain.</summary>
internal static class DriveSums
{
    private const long Thousandth = Nanometres.PerMillimetre / 1_000;

    private static readonly ImmutableArray<Source> OfCapacity = [Sources.DerailleurCapacity, Sources.TotalCapacity];

    private static readonly Reason NoLimit = new("no-derailleur-limit", "The derailleur's maker prints no such limit: ask, or measure it on the bicycle; no figure is unknown, not unlimited.", Cautions.ChainTooShort) { Sources = OfCapacity };

    private static readonly Reason NoRing = new("crank-without-ring", "The crank is stated without a ring: state the teeth of what goes on it as the crank's own, of both rings under a front derailleur; chain and derailleur are counted with them.", Cautions.ChainTooShort) { Sources = OfCapacity };

    private static readonly Reason RingApart = new("crank-bare", "The crank is stated without a ring: the row of the ring that goes on it counts.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason Taken = new("capacity-enough", "The chain that {1} and {4} rings with {3} to {2} sprockets leave over is taken up: {0} teeth are stated, [sum] are left.") { Sources = OfCapacity };

    private static readonly Reason TooMuch = new("capacity-too-small", "{1} and {4} rings with {3} to {2} sprockets need [over] teeth of capacity more than the {0} that are stated: the chain hangs slack or is too short.", Cautions.ChainTooShort)
    {
        Mend = "a derailleur with a longer cage, or fewer teeth between the smallest and the largest",
        Sources = OfCapacity,
    };

    /// <summary>Inputs: capacity, largest ring, largest sprocket, smallest sprocket, smallest ring. Capacity less both differences, teeth. Of a bare crank the row of its ring speaks.</summary>
    public static SumRelation Capacity { get; } = OfCapacityLeft(Verdict.Fits, RingApart);

    /// <summary>The same of the ring that goes on a bare crank; the smallest ring is the crank's own: none, what is stated, or not known.</summary>
    public static SumRelation CapacityWithRing { get; } = OfCapacityLeft(Verdict.NeedsMeasuring, NoRing);

    private static SumRelation OfCapacityLeft(Verdict bare, Reason of) => new SumRelation(
            "capacity less the differences of rings and sprockets, at least 0 teeth", "teeth",
            v => v[0] - Ring(v[1], v[4]) - Math.Max(0, v[2] - v[3]), [1, -1, -1, 1, 1],
            new(long.MinValue, new(Verdict.DoesNotFit, TooMuch)), new(0, new(Verdict.Fits, Taken)))
        .Without(0, Verdict.NeedsMeasuring, NoLimit).Without(1, bare, of).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Without(3, Verdict.DoesNotFit, Reasons.NothingToMate);

    /// <summary>Inputs: the largest sprocket that the derailleur's maker allows, the cassette's largest.</summary>
    public static SumRelation LargestSprocket { get; } = Limit(
        "largest sprocket within the derailleur's", v => v[0] - v[1], [1, -1],
        new("sprocket-within-limit", "A sprocket of {1} teeth where the derailleur's maker allows {0}.") { Sources = OfCapacity },
        new("sprocket-too-large", "A sprocket of {1} teeth is larger than the {0} that the derailleur's maker allows: the upper pulley runs on it.", Cautions.ChainTooShort) { Mend = "a derailleur made for this sprocket, or a smaller cassette", Sources = OfCapacity });

    /// <summary>Inputs: the smallest sprocket that the derailleur's maker allows, the cassette's smallest.</summary>
    public static SumRelation SmallestSprocket { get; } = Limit(
        "smallest sprocket within the derailleur's", v => v[1] - v[0], [-1, 1],
        new("small-sprocket-within-limit", "A sprocket of {1} teeth where the derailleur's maker allows from {0}.") { Sources = OfCapacity },
        new("sprocket-too-small", "A sprocket of {1} teeth is smaller than the {0} from which the derailleur's maker allows.") { Mend = "a cassette that begins with a larger sprocket, or another derailleur", Sources = OfCapacity });

    /// <summary>Inputs: the difference that the front derailleur's maker allows, largest ring, smallest ring.</summary>
    public static SumRelation FrontDifference { get; } = Limit(
        "largest ring less the smallest within the front derailleur's", v => v[0] - Ring(v[1], v[2]), [1, -1, 1],
        new("front-difference-within-limit", "{1} and {2} rings under a front derailleur for a difference of {0}.") { Sources = OfCapacity },
        new("front-difference-too-large", "{1} and {2} rings differ by [over] teeth more than the {0} of the front derailleur: the chain drags on its cage.") { Mend = "rings that are closer, or a front derailleur for this difference", Sources = OfCapacity })
        .Without(1, Verdict.NeedsMeasuring, NoRing);

    private static readonly ImmutableArray<Source> OfChain = [Sources.ChainSizing, Sources.DerailleurCapacity, Sources.Derived];

    /// <summary>Inputs: chain, chainstay, largest ring, largest sprocket, the maker's allowance (none: the general two pitches). Chain less big-big.</summary>
    public static SumRelation ChainReaches { get; } = OfChainReach([1, -1, -1, -1, -1], Verdict.Fits, RingApart);

    /// <summary>The same of the one ring that goes on a bare crank, and last the crank's own, which is none.</summary>
    public static SumRelation ChainReachesWithRing { get; } = OfChainReach([1, -1, -1, -1, -1, 1], Verdict.NeedsMeasuring, NoRing);

    private static SumRelation OfChainReach(ImmutableArray<int> directions, Verdict bare, Reason of) => new SumRelation(
            "chain at least as long as round the largest ring and sprocket, with the allowance", "mm",
            v => v[0] - Loop(v[1], v[2], v[3]) - Allowance(v[4]), directions,
            new(long.MinValue, new(Verdict.Unsafe, new Reason("chain-too-short", "A chain of {0} pitches is [over] mm too short for {2} and {3} teeth on a chainstay of {1} mm: shifted there by mistake, it tears the derailleur off.", Cautions.ChainTooShort) { Mend = "a longer chain", Sources = OfChain })),
            new(0, new(Verdict.Fits, new Reason("chain-long-enough", "A chain of {0} pitches goes round {2} and {3} teeth on a chainstay of {1} mm, with [sum] mm beyond the allowance.") { Sources = OfChain })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, bare, of).Without(3, Verdict.DoesNotFit, Reasons.NothingToMate);

    /// <summary>Inputs: chain, chainstay, smallest sprocket, largest ring, smallest ring (none: one ring), capacity, the maker's allowance. Small-small with the capacity taken up, less the chain.</summary>
    public static SumRelation ChainTaken { get; } = OfChainTaken(Verdict.Fits, RingApart);

    private static SumRelation OfChainTaken(Verdict bare, Reason of) => new SumRelation(
            "chain at most as long as the derailleur takes up on the smallest ring and sprocket", "mm",
            v => Loop(v[1], v[4] == 0 ? v[3] : Math.Min(v[3], v[4]), v[2]) + Allowance(v[6]) + (v[5] * PitchNanometres / 2) - v[0], [-1, 1, 1, 1, 1, 1, 1],
            new(long.MinValue, new(Verdict.NeedsMeasuring, new Reason("chain-slack", "A chain of {0} pitches may hang slack on the smallest ring and sprocket: it is [over] mm longer than a capacity of {5} teeth takes up. Look at it there.", Cautions.ChainTooShort) { Mend = "a shorter chain, if it still goes round the largest ring and sprocket", Sources = OfChain })),
            new(0, new(Verdict.Fits, new Reason("chain-taken-up", "A chain of {0} pitches is taken up on the smallest ring and sprocket, with [sum] mm to spare.") { Sources = OfChain })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Without(3, bare, of).Without(5, Verdict.NeedsMeasuring, NoLimit);

    /// <summary>The same of the ring that goes on a bare crank; the smallest ring is the crank's own: none, what is stated, or not known.</summary>
    public static SumRelation ChainTakenWithRing { get; } = OfChainTaken(Verdict.NeedsMeasuring, NoRing);

    private const long PitchNanometres = 12_700_000;

    private static readonly double[] Radii = EveryRadius();

    /// <summary>How far the rings differ; with one ring not at all.</summary>
    private static long Ring(long largest, long smallest) => smallest == 0 ? 0 : Math.Max(0, largest - smallest);

    private static long Allowance(long stated) => stated == 0 ? ChainRule.GeneralAllowancePitches * PitchNanometres : stated;

    /// <summary>The closed loop in nanometres, to a micrometre; two wheels that would touch are taken as touching.</summary>
    private static long Loop(long centre, long ring, long sprocket)
    {
        double least = RadiusOf(ring) + RadiusOf(sprocket);
        double pitches = ChainLoop.ExactPitches(Math.Max((double)centre / Nanometres.PerMillimetre, least), (int)ring, (int)sprocket);
        return (long)Math.Round(pitches * Given.PitchMillimetres * 1_000) * Thousandth;
    }

    private static double RadiusOf(long teeth) => Radii[Math.Min(teeth, Radii.Length - 1)];

    private static double[] EveryRadius()
    {
        double[] all = new double[201];
        for (int teeth = 3; teeth < all.Length; teeth++)
        {
            all[teeth] = ChainLoop.Radius(teeth);
        }

        return all;
    }

    private static SumRelation Limit(string kind, Func<ReadOnlySpan<long>, long> sum, ImmutableArray<int> directions, Reason within, Reason beyond) =>
        new SumRelation(kind, "teeth", sum, directions, new(long.MinValue, new(Verdict.DoesNotFit, beyond)), new(0, new(Verdict.Fits, within)))
            .Without(0, Verdict.NeedsMeasuring, NoLimit).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate);
}
