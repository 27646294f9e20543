using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>One published limit of the spacers on a carbon steerer.</summary>
public sealed class SpacerLimit
{
    internal SpacerLimit(string basis, int least, int most, bool isAbove, ImmutableArray<Source> sources)
    {
        Basis = basis;
        (LeastMillimetres, MostMillimetres) = (least, most);
        IsAbove = isAbove;
        Sources = sources;
    }

    /// <summary>Which steerer and whose figure.</summary>
    public string Basis { get; }

    /// <summary>Largest height of spacers.</summary>
    public Length Most => Length.FromMillimeters(MostMillimetres);

    /// <summary>Least height of spacers; 0 where none is asked for.</summary>
    public Length Least => Length.FromMillimeters(LeastMillimetres);

    /// <summary>For spacers above the stem instead of below it.</summary>
    public bool IsAbove { get; }

    /// <summary>What it rests on.</summary>
    public ImmutableArray<Source> Sources { get; }

    internal int LeastMillimetres { get; }

    internal int MostMillimetres { get; }
}

/// <summary>Spacers between headset and stem on a carbon steerer: makers print 25 to 50 mm, and no one figure holds for all.</summary>
/// <remarks>Least ≤ h ≤ most, h the height of all spacers below the stem, mm: the fork maker's figures; without them one diameter of the steerer, "Headset spacer limit on carbon steerer" and "Technical FAQ: headset spacer stack height". The pages are forum threads and one column, and they disagree: without the fork maker's own figure nothing here is called a fit.</remarks>
public static class SteererSpacers
{
    // The one least that is printed, by one maker.
    private const decimal LargestLeast = 5;

    private static readonly ImmutableArray<Source> Rule = [Sources.SpacerLimitThread, Sources.SpacerColumn];

    /// <summary>The published limits.</summary>
    public static ImmutableArray<SpacerLimit> Limits { get; } =
    [
        new("carbon, 25.4 mm: one diameter", 0, 25, false, [Sources.SpacerLimitThread]),
        new("carbon, 28.6 mm: one diameter", 0, 30, false, [Sources.SpacerLimitThread]),
        new("carbon, one maker", 0, 35, false, [Sources.SpacerLimitThread]),
        new("carbon or aluminium, one maker", 5, 40, false, [Sources.SpacerLimitQuoted]),
        new("carbon, another maker", 0, 50, false, [Sources.SpacerLimitThread]),
        new("carbon, no figure of the maker", 0, 30, false, [Sources.Derived]),
        new("above the stem; makers disagree: asked for, at most this, or forbidden", 0, 5, true, [Sources.SpacerArrangements, Sources.SpacersAbove]),
    ];

    /// <summary>Judges the spacers below the stem on a carbon steerer.</summary>
    /// <param name="steerer">The steerer at the top.</param>
    /// <param name="spacers">Height of all spacers below the stem, 0 to 200 mm.</param>
    /// <param name="makersMost">The fork maker's largest, 0 to 200 mm; null where it is not known.</param>
    /// <param name="makersLeast">The fork maker's least, 0 to <paramref name="makersMost"/>; null where it is not known. Some makers want 5 mm below the stem: below that it is then asked for.</param>
    /// <returns>With the maker's figures: fits between them, unsafe above, needs a part, a spacer, below. Without the largest: needs measuring (the maker is asked) up to one diameter of the steerer, 30 mm at most; unsafe above, because nothing larger is taken for allowed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A height is out of range.</exception>
    public static SumCheck OnCarbon(SteererSize steerer, Length spacers, Length? makersMost = null, Length? makersLeast = null)
    {
        ArgumentNullException.ThrowIfNull(steerer);
        decimal millimetres = NumberRange.Exact(spacers, 0, 200).Millimetres;
        decimal? stated = makersMost is { } largest ? NumberRange.Exact(largest, 0, 200, nameof(makersMost)).Millimetres : null;
        decimal? least = makersLeast is { } smallest ? NumberRange.Exact(smallest, 0, (double)(stated ?? 200), nameof(makersLeast)).Millimetres : null;
        decimal most = stated ?? ByRule(steerer);
        string whose = stated is null ? "the rule of one diameter" : "the fork maker's figure";
        string told = string.Create(CultureInfo.InvariantCulture, $"{millimetres:0.##} mm of spacers, {whose} is {most:0.##} mm");
        SumCheck check = millimetres <= most
            ? stated is null
                ? new("carbon-spacers", Verdict.NeedsMeasuring, $"{told}; other makers print other limits", "the fork maker's own figure, for the least as for the most", Cautions.CarbonSpacers, Rule)
                : millimetres < (least ?? 0)
                    ? new("carbon-spacers", Verdict.NeedsPart, string.Create(CultureInfo.InvariantCulture, $"{told}, and {least:0.##} mm is its least"), "a spacer below the stem", Cautions.CarbonSpacers, [Sources.SpacerColumn])
                    : least is null && millimetres < LargestLeast
                        ? new("carbon-spacers", Verdict.NeedsMeasuring, string.Create(CultureInfo.InvariantCulture, $"{told}; some makers want {LargestLeast} mm at least"), "the fork maker's own least", Cautions.CarbonSpacers, [Sources.SpacerColumn, Sources.SpacerLimitQuoted])
                        : new("carbon-spacers", Verdict.Fits, told, "", Cautions.CarbonSpacers, [Sources.SpacerColumn])
            : new("carbon-spacers", Verdict.Unsafe, told, "fewer spacers, a stem that rises, or the fork maker's own figure where it allows more", Cautions.CarbonSpacers, stated is null ? Rule : [Sources.SpacerColumn]);
        return check.Comparing(("spacers", (double)millimetres, "mm"), ("most", (double)most, "mm"), ("least", (double?)least, "mm"));
    }

    /// <summary>One diameter of the steerer and 30 mm at most, where the fork's maker says nothing; millimetres.</summary>
    internal static int ByRule(SteererSize steerer) => steerer.Hundredths <= SteererSize.Mm25Point4.Hundredths ? 25 : 30;
}
