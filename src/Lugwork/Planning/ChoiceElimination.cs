namespace Lugwork.Planning;

/// <summary>One part of a bucket: the inputs that were joined together, and the message that they leave. Exact elimination has one part a variable; where a table would be too large there are several, and their sum is a lower bound.</summary>
internal sealed class ChoiceBucketPart(ChoiceJoin join, ChoiceMessage? left, long constant, bool hasOwn)
{
    public ChoiceJoin Join { get; } = join;

    /// <summary>What it leaves to other variables; null where there are none, and then it is a constant.</summary>
    public ChoiceMessage? Left { get; } = left;

    public long Constant { get; } = constant;

    /// <summary>The variable's own cost is counted here.</summary>
    public bool HasOwn { get; } = hasOwn;
}

/// <summary>A variable in the order of elimination with all that speaks of it and of later ones alone.</summary>
internal sealed record ChoiceBucket(int Variable, ChoiceMessage[] Inputs, ChoiceBucketPart[] Parts, ChoiceLateTable[] Late);

/// <summary>
/// Eliminates the variables one by one, those first that leave the smallest table. What is left at the end is the least cost of all choices; where a table would have been too large it is a
/// lower bound of it.
/// </summary>
internal sealed class ChoiceElimination
{
    /// <summary>The most cells of a table that is held in full.</summary>
    public const long MostCells = 1 << 21;

    /// <summary>The most steps that one table may take.</summary>
    public const long MostSteps = 60_000_000;

    private readonly ChoiceNetwork _network;
    private readonly ChoiceWeights _weights;
    private readonly CancellationToken _cancellation;
    private readonly int[] _stateCounts;
    private readonly List<ChoiceMessage> _open;
    private readonly (long Cells, long Steps) _limits;
    private readonly int[]? _order;

    /// <param name="network">What is chosen from.</param>
    /// <param name="weights">What is to be least.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <param name="limits">The most cells and steps of one table.</param>
    /// <param name="order">The order of variables; found, where left out.</param>
    public ChoiceElimination(ChoiceNetwork network, ChoiceWeights weights, CancellationToken cancellationToken, (long Cells, long Steps)? limits = null, int[]? order = null)
    {
        _order = order;
        _network = network;
        _weights = weights;
        _cancellation = cancellationToken;
        _limits = limits ?? (MostCells, MostSteps);
        _stateCounts = [.. network.States.Select(s => s.Length)];
        _open = [.. network.Tables.Select(t => ChoiceMessage.Of(t, weights))];
        Own = [.. network.States.Select(states => states.Select(Best).ToArray())];
        Bound = weights.Of(network.Price, network.Mass);
        Buckets = new ChoiceBucket[network.States.Length];
        IsExact = network.Late.Count == 0;
        Run();
    }

    /// <summary>The least cost, or a lower bound of it where <see cref="IsExact"/> is false; never where nothing goes together.</summary>
    public long Bound { get; private set; }

    public bool IsExact { get; private set; }

    /// <summary>A table was too large to be held in full and is held as the combinations that go together: nothing can be marginalised through it.</summary>
    public bool HasSparse { get; private set; }

    /// <summary>In the order of elimination.</summary>
    public ChoiceBucket[] Buckets { get; }

    /// <summary>By variable and state the least own cost.</summary>
    public long[][] Own { get; }

    /// <summary>How many variables met in the largest join, the eliminated one among them.</summary>
    public int LargestClique { get; private set; }

    /// <summary>How many cells the largest message had, before classes that behave alike were merged.</summary>
    public long LargestTable { get; private set; }

    private long Best(ChoiceState state)
    {
        long best = long.MaxValue;
        for (int i = 0; i < state.Price.Length; i++)
        {
            best = Math.Min(best, _weights.Of(state.Price[i], state.Mass[i]));
        }

        return best;
    }

    private void Run()
    {
        List<ChoiceLateTable> late = [.. _network.Late];
        double[] estimates = new double[_stateCounts.Length];
        ulong changed = ulong.MaxValue;
        ulong gone = 0;
        for (int turn = 0; turn < Buckets.Length; turn++)
        {
            _cancellation.ThrowIfCancellationRequested();
            int variable = _order is null ? Smallest(estimates, changed, gone) : _order[turn];
            ulong bit = 1UL << variable;
            gone |= bit;
            ChoiceMessage[] inputs = Taken(bit);
            ChoiceLateTable[] own = late.Count == 0 ? [] : [.. late.Where(l => l.Rule.Scope.Contains(variable))];
            late.RemoveAll(l => l.Rule.Scope.Contains(variable));
            ChoiceBucketPart[] parts = Eliminate(variable, inputs);
            Buckets[turn] = new(variable, inputs, parts, own);
            changed = 0;
            foreach (ChoiceMessage input in inputs)
            {
                changed |= input.Mask;
            }

            foreach (ChoiceBucketPart part in parts)
            {
                if (part.Left is { } left)
                {
                    left.From = part;
                    _open.Add(left);
                }
                else
                {
                    Bound = Math.Min(ChoiceEntry.Never, Bound + part.Constant);
                }
            }

            if (Bound >= ChoiceEntry.Never)
            {
                return;
            }
        }
    }

    /// <summary>The messages that speak of a variable, taken out of those that are open.</summary>
    private ChoiceMessage[] Taken(ulong bit)
    {
        int left = 0;
        List<ChoiceMessage> taken = [];
        for (int i = 0; i < _open.Count; i++)
        {
            if ((_open[i].Mask & bit) != 0)
            {
                taken.Add(_open[i]);
            }
            else
            {
                _open[left++] = _open[i];
            }
        }

        _open.RemoveRange(left, _open.Count - left);
        return [.. taken];
    }

    /// <summary>The variable that leaves the smallest table; of equal ones the first.</summary>
    private int Smallest(double[] estimates, ulong changed, ulong gone)
    {
        int smallest = -1;
        for (int variable = 0; variable < estimates.Length; variable++)
        {
            ulong bit = 1UL << variable;
            if ((gone & bit) != 0)
            {
                continue;
            }

            if ((changed & bit) != 0)
            {
                estimates[variable] = Estimate(bit);
            }

            smallest = smallest < 0 || estimates[variable] < estimates[smallest] ? variable : smallest;
        }

        return smallest;
    }

    /// <summary>About how many cells are left when a variable goes.</summary>
    private double Estimate(ulong bit)
    {
        Span<double> sizes = stackalloc double[ChoiceNetwork.MostVariables];
        ulong others = 0;
        foreach (ChoiceMessage message in _open)
        {
            for (int i = 0; (message.Mask & bit) != 0 && i < message.Scope.Length; i++)
            {
                int other = message.Scope[i];
                ulong own = 1UL << other;
                sizes[other] = Math.Min(_stateCounts[other], ((others & own) != 0 ? sizes[other] : 1) * message.Sizes[i]);
                others |= own;
            }
        }

        double cells = 1;
        for (others &= ~bit; others != 0; others &= others - 1)
        {
            cells *= sizes[System.Numerics.BitOperations.TrailingZeroCount(others)];
        }

        return cells;
    }

    private ChoiceBucketPart[] Eliminate(int variable, ChoiceMessage[] inputs)
    {
        if (Joined(variable, inputs, true) is { } whole)
        {
            return [whole];
        }

        // Too large: in several parts, each small enough. The sum of their least costs is no more than the least cost of the sum.
        IsExact = false;
        List<List<ChoiceMessage>> groups = [];
        foreach (ChoiceMessage input in inputs.OrderByDescending(i => i.Scope.Length))
        {
            List<ChoiceMessage>? room = groups.Find(g => g.Append(input).SelectMany(i => i.Scope).Distinct().Count() <= 3 && new ChoiceJoin(variable, [.. g, input], _stateCounts).Cells <= Math.Min(_limits.Cells, 1 << 16));
            if (room is null)
            {
                groups.Add([input]);
            }
            else
            {
                room.Add(input);
            }
        }

        return [.. groups.Select((g, i) => Joined(variable, [.. g], i == 0) ?? Projected(variable, g, i == 0))];
    }

    /// <summary>A part whose inputs are given up, since even they take too long: it counts as nothing, or as the least own cost.</summary>
    private ChoiceBucketPart Projected(int variable, List<ChoiceMessage> inputs, bool hasOwn) =>
        new(new ChoiceJoin(variable, inputs, _stateCounts), null, hasOwn ? Own[variable].Min() : 0, hasOwn);

    private ChoiceBucketPart? Joined(int variable, ChoiceMessage[] inputs, bool hasOwn)
    {
        ChoiceJoin join = new(variable, inputs, _stateCounts);
        LargestClique = Math.Max(LargestClique, join.Variables.Length);
        long[] own = OwnBy(join, hasOwn ? Own[variable] : null);
        long budget = _limits.Steps;
        if (join.Cells <= _limits.Cells)
        {
            ChoiceLeast least = new(join.Cells);
            join.Go(own, ref least, ref budget, _cancellation);
            LargestTable = Math.Max(LargestTable, join.Cells);
            return budget < 0 ? null
                : join.Scope.Length == 0 ? new(join, null, least.Cells[0], hasOwn)
                : new(join, ChoiceMessage.Merged([.. join.Scope], join.ClassOf[1..], join.Sizes[1..], least.Cells), 0, hasOwn);
        }

        if (join.Cells >= ChoiceEntry.Never)
        {
            return null;
        }

        ChoiceFew few = new(_limits.Cells);
        join.Go(own, ref few, ref budget, _cancellation);
        LargestTable = Math.Max(LargestTable, few.Cells.Count);
        HasSparse = true;
        return budget < 0 ? null : new(join, ChoiceMessage.Sparse([.. join.Scope], join.ClassOf[1..], join.Sizes[1..], few.Cells), 0, hasOwn);
    }

    /// <summary>The least own cost by class of the join.</summary>
    public static long[] OwnBy(ChoiceJoin join, long[]? own)
    {
        long[] least = new long[join.Sizes[0]];
        if (own is null)
        {
            return least;
        }

        Array.Fill(least, ChoiceEntry.Never);
        int[] classOf = join.ClassOf[0];
        for (int state = 0; state < own.Length; state++)
        {
            if (classOf[state] >= 0)
            {
                least[classOf[state]] = Math.Min(least[classOf[state]], own[state]);
            }
        }

        return least;
    }

    private readonly struct ChoiceLeast : IChoiceVisitor
    {
        public ChoiceLeast(long cells)
        {
            Cells = new long[cells];
            Array.Fill(Cells, ChoiceEntry.Never);
        }

        public static bool LooksAtPlaces => false;

        public long[] Cells { get; }

        public bool Visit(ChoiceJoin join, long cost, long at)
        {
            if (cost < Cells[at])
            {
                Cells[at] = cost;
            }

            return true;
        }
    }

    private readonly struct ChoiceFew(long most) : IChoiceVisitor
    {
        public static bool LooksAtPlaces => false;

        public Dictionary<long, long> Cells { get; } = [];

        public bool Visit(ChoiceJoin join, long cost, long at)
        {
            ref long cell = ref System.Runtime.InteropServices.CollectionsMarshal.GetValueRefOrAddDefault(Cells, at, out bool there);
            cell = there ? Math.Min(cell, cost) : cost;
            return Cells.Count <= most;
        }
    }
}
