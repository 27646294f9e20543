namespace Lugwork.Planning;

/// <summary>How far a capped choice has come: the best under the cap so far and what none goes below, in steps of the network.</summary>
internal readonly record struct ChoiceCapped(bool IsPossible, bool IsExact, long Bound, (int State, int Rank)[]? Chosen)
{
    /// <summary>Something fits together, and none of it goes below this of the capped sum, which is above the cap; null elsewhere.</summary>
    public long? LeastCapped { get; init; }

    public int LargestClique { get; init; }

    public long LargestTable { get; init; }
}

/// <summary>
/// The least of one sum under a cap of the other, exact: weighings of both give a bound and a choice under the cap; what can be in no better choice is fixed away by its marginals; what is left is
/// gone through with lists of labels.
/// </summary>
internal sealed class ChoiceCap
{
    private const long MostTries = 300;

    private const int MostTurns = 60;

    /// <summary>The most steps of one search.</summary>
    public const long MostSteps = 200_000;

    private readonly ChoiceNetwork _network;
    private readonly bool _light;
    private readonly long _cap;
    private readonly Action<long, long>? _progress;
    private readonly CancellationToken _cancellation;
    private readonly (long Cells, long Steps)? _limits;
    private readonly long _steps;

    private ChoiceCap(ChoiceNetwork network, bool light, long cap, Action<long, long>? progress, (long Cells, long Steps)? limits, long steps, CancellationToken cancellationToken)
    {
        _limits = limits;
        _steps = steps;
        _network = network;
        _light = light;
        _cap = cap;
        _progress = progress;
        _cancellation = cancellationToken;
    }

    /// <summary>Solves it.</summary>
    /// <param name="network">In its own steps (<see cref="ChoiceScale"/>).</param>
    /// <param name="light">The mass is to be least under a cap of the price; else the price under a cap of the mass.</param>
    /// <param name="cap">The most of the capped sum.</param>
    /// <param name="progress">Told the best so far (never where there is none) and the bound.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <param name="limits">The most cells and steps of one table.</param>
    /// <param name="steps">The most steps of one search.</param>
    public static ChoiceCapped Of(ChoiceNetwork network, bool light, long cap, Action<long, long>? progress, CancellationToken cancellationToken, (long Cells, long Steps)? limits = null, long steps = MostSteps) =>
        new ChoiceCap(network, light, cap, progress, limits, steps, cancellationToken).Told();

    private int _clique;
    private long _table;

    private ChoiceCapped Told() => Solve() with { LargestClique = _clique, LargestTable = _table };

    private ChoiceWeights Weights(long least, long capped) => _light ? new(capped, least) : new(least, capped);

    private sealed record ChoicePoint(ChoiceLabel Label, (int State, int Rank)[] Chosen);

    private ChoiceCapped Solve()
    {
        if (Search(Weights(1, 0), out ChoiceElimination first, out bool none) is not { } cheap || Search(Weights(0, 1), out _, out none) is not { } light)
        {
            // Nothing was found: there is nothing, or the steps did not suffice to say.
            return none ? default : new(true, false, 0, null);
        }

        if (light.Label.Capped > _cap)
        {
            return new ChoiceCapped { LeastCapped = light.Label.Capped };
        }

        _progress?.Invoke(light.Label.Least, cheap.Label.Least);
        return cheap.Label.Capped <= _cap ? Lightened(cheap, new(1, 0), first) : Weighed(cheap, light);
    }

    /// <summary>Of all that cost the least the lightest: the weighing of the least alone leaves ties open.</summary>
    private ChoiceCapped Lightened(ChoicePoint best, (long Least, long Capped) weights, ChoiceElimination elimination) =>
        Exact(best, weights, elimination, best.Label.Least);

    private ChoiceCapped Weighed(ChoicePoint over, ChoicePoint under)
    {
        long bound = over.Label.Least;
        (long Least, long Capped) weights = (1, 0);
        ChoiceElimination? last = null;

        // Weights that were made smaller need not close in; each of them gives a bound.
        for (int turn = 0; turn < MostTurns; turn++)
        {
            weights = Small(over.Label.Capped - under.Label.Capped, Math.Max(0, under.Label.Least - over.Label.Least));
            if (Search(Weights(weights.Least, weights.Capped), out last, out _) is not { } next)
            {
                break;
            }

            long value = Value(weights, next);
            bound = Math.Max(bound, Up(value - (weights.Capped * _cap), weights.Least));
            bool better = value < Value(weights, over) && value < Value(weights, under);
            if (!better)
            {
                break;
            }

            (over, under) = next.Label.Capped <= _cap ? (over, next) : (next, under);
            _progress?.Invoke(under.Label.Least, Math.Min(bound, under.Label.Least));
        }

        under = Tried(under, weights, last!);
        _progress?.Invoke(under.Label.Least, Math.Min(bound, under.Label.Least));
        return Exact(under, weights, last!, bound);
    }

    private static long Value((long Least, long Capped) weights, ChoicePoint point) => (weights.Least * point.Label.Least) + (weights.Capped * point.Label.Capped);

    /// <summary>Some choices more in the order of the weighing: one of them may be under the cap and better.</summary>
    private ChoicePoint Tried(ChoicePoint under, (long Least, long Capped) weights, ChoiceElimination elimination)
    {
        ChoiceWeights both = Weights(weights.Least, weights.Capped);
        ChoiceSearch search = new(_network, elimination, both, _cancellation);
        for (int i = 0; i < MostTries && search.Next(Math.Min(_steps, MostTries * _network.States.Length), Ceiling(under, weights)) is { } next; i++)
        {
            under = Better(under, next.Chosen);
        }

        return under;
    }

    private ChoicePoint Better(ChoicePoint under, (int State, int Rank)[] chosen)
    {
        ChoiceLabel label = LabelOf(chosen);
        return label.Capped <= _cap && (label.Least, label.Capped).CompareTo((under.Label.Least, under.Label.Capped)) < 0 ? new(label, chosen) : under;
    }

    /// <summary>Where tables were too large or rules are asked late: all choices that can be as good, in the order of the weighing. A bound where the steps do not suffice.</summary>
    private ChoiceCapped OneByOne(ChoicePoint under, (long Least, long Capped) weights, ChoiceElimination elimination, long bound)
    {
        ChoiceSearch search = new(_network, elimination, Weights(weights.Least, weights.Capped), _cancellation);
        while (search.Next(_steps, Ceiling(under, weights) + 1) is { } next)
        {
            under = Better(under, next.Chosen);
        }

        bool isExact = search.Bound > Ceiling(under, weights);
        bound = Math.Max(bound, Up(search.Bound - (weights.Capped * _cap), weights.Least));
        return new(true, isExact, isExact ? under.Label.Least : Math.Min(bound, under.Label.Least), under.Chosen);
    }

    private long Ceiling(ChoicePoint under, (long Least, long Capped) weights) => (weights.Least * under.Label.Least) + (weights.Capped * _cap);

    /// <summary>Fixes away what can be in no choice as good, and goes through the rest with labels.</summary>
    private ChoiceCapped Exact(ChoicePoint under, (long Least, long Capped) weights, ChoiceElimination elimination, long bound)
    {
        if (elimination.HasSparse || !elimination.IsExact)
        {
            return OneByOne(under, weights, elimination, bound);
        }

        ChoiceWeights both = Weights(weights.Least, weights.Capped);
        ChoiceMarginals marginals = new(_network, elimination, _cancellation);
        (ChoiceNetwork network, int[][] states, int[][][] ranks) = Fixed(marginals, elimination, both, Ceiling(under, weights));
        ChoiceElimination left = new(network, both, _cancellation, _limits);
        int[] order = [.. left.Buckets.Where(b => b is not null).Select(b => b.Variable)];
        if (order.Length < network.States.Length)
        {
            return new(true, true, under.Label.Least, under.Chosen);
        }

        ChoiceWeights capped = Weights(0, 1);
        ChoiceElimination lightest = new(network, capped, _cancellation, _limits, order);
        ChoiceWeights least = Weights(1, 0);
        ChoiceElimination cheapest = new(network, least, _cancellation, _limits, order);
        if (Array.Exists([left, lightest, cheapest], e => e.HasSparse || !e.IsExact))
        {
            return OneByOne(under, weights, elimination, bound);
        }

        ChoiceLabelPass pass = new(network, _light,
            [new(both, Ceiling(under, weights), left, new(network, left, _cancellation)), new(capped, _cap, lightest, new(network, lightest, _cancellation)), new(least, under.Label.Least, cheapest, new(network, cheapest, _cancellation))], _cancellation);
        (int State, int Rank)[]? found = pass.Least(_cap, out bool gaveUp);
        if (gaveUp)
        {
            return OneByOne(under, weights, elimination, bound);
        }

        (int State, int Rank)[] chosen = found is null ? under.Chosen : [.. found.Select((f, variable) => (states[variable][f.State], ranks[variable][f.State][f.Rank]))];
        return new(true, true, LabelOf(chosen).Least, chosen);
    }

    /// <summary>The network of those entries that can be in a choice under the ceiling, with the old numbers of its states and entries.</summary>
    private (ChoiceNetwork Network, int[][] States, int[][][] Ranks) Fixed(ChoiceMarginals marginals, ChoiceElimination elimination, ChoiceWeights weights, long ceiling)
    {
        int variables = _network.States.Length;
        ChoiceState[][] states = new ChoiceState[variables][];
        int[][] old = new int[variables][];
        int[][][] ranks = new int[variables][][];
        for (int variable = 0; variable < variables; variable++)
        {
            List<ChoiceState> kept = [];
            List<int> numbers = [];
            List<int[]> places = [];
            for (int state = 0; state < _network.States[variable].Length; state++)
            {
                ChoiceState entries = _network.States[variable][state];
                long spare = ceiling - marginals.Of[variable][state] + elimination.Own[variable][state];
                int[] rank = marginals.Of[variable][state] >= ChoiceEntry.Never ? [] : [.. Enumerable.Range(0, entries.Price.Length).Where(i => weights.Of(entries.Price[i], entries.Mass[i]) <= spare)];
                if (rank.Length > 0)
                {
                    kept.Add(new([.. rank.Select(i => entries.Price[i])], [.. rank.Select(i => entries.Mass[i])], [.. rank.Select(i => entries.Entry[i])]));
                    numbers.Add(state);
                    places.Add(rank);
                }
            }

            (states[variable], old[variable], ranks[variable]) = ([.. kept], [.. numbers], [.. places]);
        }

        return (ChoiceTables.Picked(_network, states, old), old, ranks);
    }

    private ChoiceLabel LabelOf((int State, int Rank)[] chosen)
    {
        (long price, long mass) = _network.Cost(chosen);
        return _light ? new(mass, price) : new(price, mass);
    }

    /// <summary>The best by a weighing, exact whatever the size of the tables; null where there is none, or the steps did not suffice.</summary>
    private ChoicePoint? Search(ChoiceWeights weights, out ChoiceElimination elimination, out bool none)
    {
        elimination = new(_network, weights, _cancellation, _limits);
        (_clique, _table) = (Math.Max(_clique, elimination.LargestClique), Math.Max(_table, elimination.LargestTable));
        ChoiceSearch search = new(_network, elimination, weights, _cancellation);
        (long Cost, (int State, int Rank)[] Chosen)? best = search.Next(_steps);
        none = best is null && search.Bound >= ChoiceEntry.Never;
        return best is null ? null : new(LabelOf(best.Value.Chosen), best.Value.Chosen);
    }

    /// <summary>Weights of the same ratio, as nearly as the size of the sums allows; any weights give a bound.</summary>
    private (long Least, long Capped) Small(long least, long capped)
    {
        (Int128 price, Int128 mass) = ((Int128)_network.MostPrice + 1, (Int128)_network.MostMass + 1);
        (Int128 ofLeast, Int128 ofCapped) = _light ? (mass, price) : (price, mass);
        while ((least > 1 || capped > 0) && (least * ofLeast) + (capped * (ofCapped + _cap)) > ChoiceEntry.Never / 4)
        {
            (least, capped) = (Math.Max(1, least / 2), capped / 2);
        }

        return (least, capped);
    }

    /// <summary>What is divided, in whole steps upwards; nothing where it is below nothing.</summary>
    internal static long Up(long value, long by) => value <= 0 ? 0 : ((value - 1) / by) + 1;
}
