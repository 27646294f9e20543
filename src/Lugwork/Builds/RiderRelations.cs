namespace Lugwork;

/// <summary>Joints of the rider with the parts: what they may carry, and what they are made for.</summary>
internal static class RiderRelations
{
    /// <summary>Inputs: rider, rider with luggage, rider with luggage and bicycle, limit for rider and luggage, limit for everything.</summary>
    public static Relation Carried { get; } = new LoadWithin(hasLuggage: true);

    /// <summary>Inputs: rider, rider with luggage and bicycle, limit for the rider, limit for everything.</summary>
    public static Relation Held { get; } = new LoadWithin(hasLuggage: false);

    private static readonly Reason Inside = new("use-within", "A part for {1} on a bicycle that is ridden in {0}.") { Sources = [Sources.UseCategories] };

    private static readonly Reason Harder = new("use-above", "{1} is what the part is made for, and {0} is harder.", Cautions.HarderUse)
    {
        Mend = "a part that its maker allows for this use, or milder riding",
        Sources = [Sources.UseCategories],
    };

    private static readonly Reason NotNamed = new("use-not-named", "{0} against {1}: where no category is named, none is allowed yet.")
    {
        Mend = "the maker's word on what the part is made for",
    };

    /// <summary>Inputs: use of the bicycle, category that the part is made for.</summary>
    public static Relation Use { get; } = new Computed("at least, by the order of the categories", JudgeUse, [], [Sources.UseCategories]);

    private static Outcome JudgeUse(ReadOnlySpan<long> values) =>
        values[0] == 0 || values[1] == 0 ? new(Verdict.NeedsMeasuring, NotNamed)
        : UseCategory.OfFitCode(values[1]).TakesIn(UseCategory.OfFitCode(values[0])) ? new(Verdict.Fits, Inside)
        : new(Verdict.Unsafe, Harder);
}

/// <summary>
/// Masses within the two limits that a maker can print. What is heavier than a part of itself is impossible, so the heaviest figure counts;
/// without either limit nothing is allowed yet.
/// </summary>
internal sealed class LoadWithin : Relation
{
    private readonly bool _hasLuggage;
    private readonly Reason _within;
    private readonly Reason _aboveLimit;
    private readonly Reason _aboveSystem;

    public LoadWithin(bool hasLuggage)
    {
        _hasLuggage = hasLuggage;
        const string Mend = "a part that its maker allows for this load, or less of it";
        _within = hasLuggage
            ? new("load-within", "Rider {0}, with luggage {1}, with bicycle {2}: within the maker's limits, {3} for rider and luggage, {4} for everything.")
            : new("load-within", "Rider {0}, everything {1}: within the maker's limits, {2} for the rider, {3} for everything.");
        _aboveLimit = (hasLuggage
            ? new Reason("load-above", "Rider {0}, with luggage {1}: above the maker's limit of {3} for rider and luggage.", Cautions.Overload)
            : new Reason("load-above", "Rider {0}: above the maker's limit of {2} for the rider.", Cautions.Overload)) with { Mend = Mend };
        _aboveSystem = (hasLuggage
            ? new Reason("system-above", "Rider {0}, with luggage {1}, with bicycle {2}: above the maker's limit of {4} for everything.", Cautions.Overload)
            : new Reason("system-above", "Rider {0}, everything {1}: above the maker's limit of {3} for everything.", Cautions.Overload)) with { Mend = Mend };
    }

    private static readonly Reason NoLimit = new("no-load-limit", "The maker prints no limit: unknown, not unlimited.") { Mend = "the maker's word on the load that the part may carry" };

    private static readonly Reason NotWeighed = new("not-weighed", "A limit is printed for a mass that was not weighed.") { Mend = "a pair of scales" };

    public override string Kind => "at most, two limits; none is unknown";

    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        int last = values.Length - 1;
        (long rider, long system, long limit, long systemLimit) = (values[0], values[last - 2], values[last - 1], values[last]);
        long carried = _hasLuggage ? Math.Max(rider, values[1]) : rider;
        long everything = Math.Max(carried, system);
        return limit > 0 && carried > limit ? new(Verdict.Unsafe, _aboveLimit)
            : systemLimit > 0 && everything > systemLimit ? new(Verdict.Unsafe, _aboveSystem)
            : limit == 0 && systemLimit == 0 ? new(Verdict.NeedsMeasuring, NoLimit)
            : (limit > 0 && carried == 0) || (systemLimit > 0 && system == 0) ? new(Verdict.NeedsMeasuring, NotWeighed)
            : new(Verdict.Fits, _within);
    }
}
