using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>What a rear derailleur's maker states, in teeth; null where it is not known.</summary>
/// <remarks>
/// By "Capacity of the rear derailleur" and "Total capacity glossary entry", teeth: capacity needed = (largest - smallest ring) + (largest - smallest sprocket). It, the largest and the smallest sprocket and, with two or three rings, the difference
/// in front are limits of their own; all must hold. Some go beyond them and get away with it: outside the stated limit never reads as a fit. The same sum holds for a chain tensioner on several sprockets.
/// </remarks>
public sealed record DerailleurLimits
{
    /// <summary>What the sum rests on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.DerailleurCapacity, Lugwork.Sources.TotalCapacity];

    /// <summary>Total capacity, 0 to 200 teeth.</summary>
    public int? TotalCapacity { get; init => field = Teeth(value, 0, nameof(TotalCapacity)); }

    /// <summary>Largest sprocket, 6 to 200 teeth.</summary>
    public int? LargestSprocket { get; init => field = Teeth(value, Given.FewestTeeth, nameof(LargestSprocket)); }

    /// <summary>Smallest sprocket, 6 to 200 teeth.</summary>
    public int? SmallestSprocket { get; init => field = Teeth(value, Given.FewestTeeth, nameof(SmallestSprocket)); }

    /// <summary>Largest ring less the smallest, 0 to 200 teeth; not asked for with one ring.</summary>
    public int? FrontDifference { get; init => field = Teeth(value, 0, nameof(FrontDifference)); }

    /// <summary>Capacity that rings and sprockets need, teeth.</summary>
    /// <param name="rings">Teeth of 1 to 4 rings.</param>
    /// <param name="sprockets">Teeth of 1 to 14 sprockets; the smallest and the largest will do.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is out of range.</exception>
    public static int Needed(ReadOnlySpan<int> rings, ReadOnlySpan<int> sprockets)
    {
        (int smallRing, int largeRing) = Ends(rings, 4, nameof(rings));
        (int small, int large) = Ends(sprockets, 14, nameof(sprockets));
        return largeRing - smallRing + large - small;
    }

    /// <summary>Chain that a capacity takes up: half a pitch, 6.35 mm, for each tooth.</summary>
    /// <param name="teeth">How many teeth, 0 to 200.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static Length TakenUp(int teeth) => Length.FromMillimeters(Given.Number(teeth, 0, 200, nameof(teeth)) * Given.PitchMillimetres / 2);

    /// <summary>Capacity that is left; negative where more is needed, null where the capacity is not known.</summary>
    /// <param name="rings">Teeth of 1 to 4 rings.</param>
    /// <param name="sprockets">Teeth of 1 to 14 sprockets.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is out of range.</exception>
    public int? Spare(ReadOnlySpan<int> rings, ReadOnlySpan<int> sprockets) => TotalCapacity - Needed(rings, sprockets);

    /// <summary>Judges rings and sprockets by every limit.</summary>
    /// <param name="rings">Teeth of 1 to 4 rings.</param>
    /// <param name="sprockets">Teeth of 1 to 14 sprockets.</param>
    /// <returns>Does not fit where one limit is passed; needs measuring where one is not known; else fits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A count is out of range.</exception>
    public SumCheck Check(ReadOnlySpan<int> rings, ReadOnlySpan<int> sprockets)
    {
        (int smallRing, int largeRing) = Ends(rings, 4, nameof(rings));
        (int small, int large) = Ends(sprockets, 14, nameof(sprockets));
        List<string> outside = [];
        List<string> unknown = [];
        Judge(TotalCapacity, largeRing - smallRing + large - small, "capacity", "needed", atMost: true);
        Judge(LargestSprocket, large, "largest sprocket", "there", atMost: true);
        Judge(SmallestSprocket, small, "smallest sprocket", "there", atMost: false);
        if (rings.Length > 1)
        {
            Judge(FrontDifference, largeRing - smallRing, "difference in front", "there", atMost: true);
        }

        SumCheck check = outside.Count > 0
            ? new("derailleur-limits", Verdict.DoesNotFit, $"outside the stated limits: {string.Join(", ", outside)}", "a derailleur with a longer cage or a larger sprocket limit, or fewer teeth", Cautions.ChainTooShort, Sources)
            : unknown.Count > 0
                ? new("derailleur-limits", Verdict.NeedsMeasuring, $"not known: {string.Join(", ", unknown)}", "the figures of the derailleur's maker", Cautions.ChainTooShort, Sources)
                : new("derailleur-limits", Verdict.Fits, FormattableString.Invariant($"within every stated limit, {Spare(rings, sprockets)} teeth of capacity to spare"), "", Cautions.ChainTooShort, Sources);
        return check.Comparing(("capacity needed", largeRing - smallRing + large - small, "teeth"), ("capacity", TotalCapacity, "teeth"), ("largest sprocket", large, "teeth"), ("largest sprocket stated", LargestSprocket, "teeth"), ("smallest sprocket", small, "teeth"), ("smallest sprocket stated", SmallestSprocket, "teeth"), ("difference in front", rings.Length > 1 ? largeRing - smallRing : null, "teeth"), ("difference in front stated", rings.Length > 1 ? FrontDifference : null, "teeth"));

        void Judge(int? limit, int have, string what, string word, bool atMost)
        {
            if (limit is not { } stated)
            {
                unknown.Add(FormattableString.Invariant($"{what} ({have} {word})"));
            }
            else if (atMost ? have > stated : have < stated)
            {
                outside.Add(FormattableString.Invariant($"{what} {stated}, {have} {word}"));
            }
        }
    }

    private static (int Least, int Most) Ends(ReadOnlySpan<int> teeth, int most, string name)
    {
        Given.Number(teeth.Length, 1, most, name);
        (int low, int high) = (int.MaxValue, 0);
        foreach (int one in teeth)
        {
            (low, high) = (Math.Min(low, Given.Teeth(one, name)), Math.Max(high, one));
        }

        return (low, high);
    }

    private static int? Teeth(int? teeth, int least, string name) => teeth is { } known ? (int)Given.Number(known, least, 200, name, "teeth") : null;
}
