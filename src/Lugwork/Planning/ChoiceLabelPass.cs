namespace Lugwork.Planning;

/// <summary>What says that a label cannot be part of a choice that is looked for: a weighing of both sums, the most that it may come to, and the least of what lies outside.</summary>
internal sealed record ChoiceCeiling(ChoiceWeights Weights, long Most, ChoiceElimination Elimination, ChoiceMarginals Marginals);

/// <summary>
/// Eliminates with whole lists of labels in place of one cost: exact for what is to be least under a cap. A label goes no further where some ceiling says that no choice with it is looked for.
/// </summary>
internal sealed class ChoiceLabelPass
{
    /// <summary>The most labels in all.</summary>
    public const int MostLabels = 3_000_000;

    private readonly ChoiceNetwork _network;
    private readonly bool _light;
    private readonly ChoiceCeiling[] _ceilings;
    private readonly CancellationToken _cancellation;
    private readonly int[] _stateCounts;
    private readonly Dictionary<ChoiceMessage, Dictionary<long, List<ChoiceLabel>>> _labels = [];
    private readonly List<ChoiceTraced> _buckets = [];
    private readonly List<(ChoiceTraced Bucket, List<ChoiceLabel> Labels)> _ends = [];
    private long _count;

    /// <param name="network">What is chosen from; no late tables.</param>
    /// <param name="light">The mass is to be least under a cap of the price, not the other way round.</param>
    /// <param name="ceilings">At least one, all of one order of elimination; the first weighs both sums.</param>
    /// <param name="cancellationToken">Stops it.</param>
    public ChoiceLabelPass(ChoiceNetwork network, bool light, ChoiceCeiling[] ceilings, CancellationToken cancellationToken)
    {
        _network = network;
        _light = light;
        _ceilings = ceilings;
        _cancellation = cancellationToken;
        _stateCounts = [.. network.States.Select(s => s.Length)];
    }

    private sealed record ChoiceTraced(int Variable, ChoiceJoin Join, ChoiceMessage? Left);

    /// <summary>The choice that is least under the cap, of equals the one with less of what is capped; its states and places of entries. Null where there is none below the ceilings.</summary>
    /// <param name="cap">The most of what is capped.</param>
    /// <param name="gaveUp">There were too many labels.</param>
    public (int State, int Rank)[]? Least(long cap, out bool gaveUp)
    {
        gaveUp = false;
        List<ChoiceMessage> open = [.. _network.Tables.Select(t => ChoiceMessage.Of(t, _ceilings[0].Weights))];
        foreach (ChoiceBucket bucket in _ceilings[0].Elimination.Buckets)
        {
            ChoiceMessage[] inputs = [.. open.Where(m => m.Scope.Contains(bucket.Variable))];
            open.RemoveAll(m => m.Scope.Contains(bucket.Variable));
            if (Eliminate(bucket, inputs) is { } left)
            {
                open.Add(left);
            }

            if (_count > MostLabels)
            {
                gaveUp = true;
                return null;
            }
        }

        return Combined(cap);
    }

    private ChoiceLabel LabelOf(long price, long mass) => _light ? new(mass, price) : new(price, mass);

    private ChoiceMessage? Eliminate(ChoiceBucket bucket, ChoiceMessage[] inputs)
    {
        ChoiceJoin join = new(bucket.Variable, inputs, _stateCounts);
        List<ChoiceLabel>[] own = [.. Enumerable.Range(0, join.Sizes[0]).Select(_ => new List<ChoiceLabel>())];
        for (int state = 0; state < _stateCounts[bucket.Variable]; state++)
        {
            int number = join.ClassOf[0][state];
            ChoiceState entries = _network.States[bucket.Variable][state];
            for (int i = 0; i < entries.Price.Length && number >= 0; i++)
            {
                own[number].Add(LabelOf(entries.Price[i], entries.Mass[i]));
            }
        }

        Array.ForEach(own, ChoiceLabels.Clear);
        ChoiceGatherer gatherer = new(this, bucket, join, own);
        long budget = long.MaxValue;
        join.Go(ChoiceElimination.OwnBy(join, _ceilings[0].Elimination.Own[bucket.Variable]), ref gatherer, ref budget, _cancellation);
        Dictionary<long, long> least = [];
        foreach ((long at, List<ChoiceLabel> labels) in gatherer.Cells)
        {
            ChoiceLabels.Clear(labels);
            _count += labels.Count;
            if (labels.Count > 0)
            {
                least[at] = labels.Min(Weighed);
            }
        }

        if (join.Scope.Length == 0)
        {
            ChoiceTraced end = new(bucket.Variable, join, null);
            _buckets.Add(end);
            _ends.Add((end, gatherer.Cells.GetValueOrDefault(0) ?? []));
            return null;
        }

        ChoiceMessage left = ChoiceMessage.Sparse([.. join.Scope], join.ClassOf[1..], join.Sizes[1..], least);
        _labels[left] = gatherer.Cells;
        _buckets.Add(new(bucket.Variable, join, left));
        return left;
    }

    private long Weighed(ChoiceLabel label) => Weighed(_ceilings[0].Weights, label);

    private long Weighed(ChoiceWeights weights, ChoiceLabel label) => _light ? weights.Of(label.Capped, label.Least) : weights.Of(label.Least, label.Capped);

    /// <summary>The parts of the bicycle that meet in no table: their lists side by side, and the least of all sums.</summary>
    private (int State, int Rank)[]? Combined(long cap)
    {
        ChoiceLabel start = LabelOf(_network.Price, _network.Mass);
        List<(ChoiceLabel Sum, int Before, ChoiceLabel Own)>[] steps = new List<(ChoiceLabel, int, ChoiceLabel)>[_ends.Count + 1];
        steps[0] = [(start, -1, default)];
        long[] rest = new long[_ends.Count + 1];
        long[] restCapped = new long[_ends.Count + 1];
        for (int i = _ends.Count - 1; i >= 0; i--)
        {
            if (_ends[i].Labels.Count == 0)
            {
                return null;
            }

            rest[i] = rest[i + 1] + _ends[i].Labels.Min(Weighed);
            restCapped[i] = restCapped[i + 1] + _ends[i].Labels.Min(l => l.Capped);
        }

        for (int i = 0; i < _ends.Count; i++)
        {
            _cancellation.ThrowIfCancellationRequested();
            List<(ChoiceLabel Sum, int Before, ChoiceLabel Own)> next = [];
            for (int before = 0; before < steps[i].Count; before++)
            {
                foreach (ChoiceLabel own in _ends[i].Labels)
                {
                    ChoiceLabel sum = new(steps[i][before].Sum.Least + own.Least, steps[i][before].Sum.Capped + own.Capped);
                    if (sum.Capped + restCapped[i + 1] <= cap && Weighed(sum) + rest[i + 1] <= _ceilings[0].Most)
                    {
                        next.Add((sum, before, own));
                    }
                }
            }

            steps[i + 1] = Cleared(next);
        }

        int at = 0;
        if (steps[^1].Count == 0)
        {
            return null;
        }

        (int State, int Rank)[] chosen = new (int State, int Rank)[_stateCounts.Length];
        int[] states = new int[_stateCounts.Length];
        Dictionary<ChoiceTraced, ChoiceLabel> wanted = [];
        for (int i = _ends.Count; i > 0; i--)
        {
            wanted[_ends[i - 1].Bucket] = steps[i][at].Own;
            at = steps[i][at].Before;
        }

        for (int i = _buckets.Count - 1; i >= 0; i--)
        {
            Trace(_buckets[i], wanted, states, chosen);
        }

        return chosen;
    }

    private static List<(ChoiceLabel Sum, int Before, ChoiceLabel Own)> Cleared(List<(ChoiceLabel Sum, int Before, ChoiceLabel Own)> all)
    {
        all.Sort(static (a, b) => a.Sum.Least != b.Sum.Least ? a.Sum.Least.CompareTo(b.Sum.Least) : a.Sum.Capped != b.Sum.Capped ? a.Sum.Capped.CompareTo(b.Sum.Capped) : a.Before.CompareTo(b.Before));
        long lowest = long.MaxValue;
        List<(ChoiceLabel, int, ChoiceLabel)> kept = [];
        foreach ((ChoiceLabel Sum, int Before, ChoiceLabel Own) step in all)
        {
            if (step.Sum.Capped < lowest)
            {
                lowest = step.Sum.Capped;
                kept.Add(step);
            }
        }

        return kept;
    }

    /// <summary>Finds an entry of the variable, and labels of what was left to it, that make up the wanted label.</summary>
    private void Trace(ChoiceTraced bucket, Dictionary<ChoiceTraced, ChoiceLabel> wanted, int[] states, (int State, int Rank)[] chosen)
    {
        ChoiceLabel want = wanted[bucket];
        List<(ChoiceTraced From, List<ChoiceLabel> Labels)> lists = [];
        for (int state = 0; state < _stateCounts[bucket.Variable]; state++)
        {
            states[bucket.Variable] = state;
            lists.Clear();
            ChoiceLabel sum = default;
            bool goes = true;
            foreach (ChoiceMessage input in bucket.Join.Inputs)
            {
                long at = PlaceOf(input, states);
                goes = goes && at >= 0 && input[at] < ChoiceEntry.Never;
                if (!goes)
                {
                    break;
                }

                if (input.Table is { } table)
                {
                    ChoiceLabel own = LabelOf(table.Price[at], table.Mass?[at] ?? 0);
                    sum = new(sum.Least + own.Least, sum.Capped + own.Capped);
                }
                else
                {
                    lists.Add((_buckets.Find(b => b.Left == input)!, _labels[input][at]));
                }
            }

            ChoiceState entries = _network.States[bucket.Variable][state];
            for (int i = 0; i < entries.Price.Length && goes; i++)
            {
                ChoiceLabel own = LabelOf(entries.Price[i], entries.Mass[i]);
                if (Makes(lists, 0, new(want.Least - sum.Least - own.Least, want.Capped - sum.Capped - own.Capped), wanted))
                {
                    chosen[bucket.Variable] = (state, i);
                    return;
                }
            }
        }

        throw new InvalidOperationException("A fault of the library: a label has no origin.");
    }

    private static bool Makes(List<(ChoiceTraced From, List<ChoiceLabel> Labels)> lists, int number, ChoiceLabel left, Dictionary<ChoiceTraced, ChoiceLabel> wanted)
    {
        if (left.Least < 0 || left.Capped < 0)
        {
            return false;
        }

        if (number == lists.Count)
        {
            return left == default;
        }

        foreach (ChoiceLabel label in lists[number].Labels)
        {
            if (Makes(lists, number + 1, new(left.Least - label.Least, left.Capped - label.Capped), wanted))
            {
                wanted[lists[number].From] = label;
                return true;
            }
        }

        return false;
    }

    private static long PlaceOf(ChoiceMessage message, int[] states)
    {
        long at = 0;
        for (int i = 0; i < message.Scope.Length; i++)
        {
            int own = message.ClassOf[i][states[message.Scope[i]]];
            if (own < 0)
            {
                return -1;
            }

            at = (at * message.Sizes[i]) + own;
        }

        return at;
    }

    /// <summary>Adds up lists at every combination that goes together.</summary>
    private readonly struct ChoiceGatherer : IChoiceVisitor
    {
        private readonly ChoiceLabelPass _pass;
        private readonly ChoiceBucket[] _buckets;
        private readonly List<ChoiceLabel>[] _own;
        private readonly int[][] _stateOf;
        private readonly int[] _states;
        private readonly Dictionary<long, long[]> _rests = [];

        public ChoiceGatherer(ChoiceLabelPass pass, ChoiceBucket bucket, ChoiceJoin join, List<ChoiceLabel>[] own)
        {
            _pass = pass;
            _own = own;
            _buckets = [.. pass._ceilings.Select(c => c.Elimination.Buckets.First(b => b.Variable == bucket.Variable))];
            _states = new int[pass._stateCounts.Length];
            _stateOf = new int[join.Variables.Length][];
            for (int place = 0; place < _stateOf.Length; place++)
            {
                _stateOf[place] = new int[join.Sizes[place]];
                for (int state = join.ClassOf[place].Length - 1; state >= 0; state--)
                {
                    if (join.ClassOf[place][state] >= 0)
                    {
                        _stateOf[place][join.ClassOf[place][state]] = state;
                    }
                }
            }
        }

        public static bool LooksAtPlaces => true;

        public Dictionary<long, List<ChoiceLabel>> Cells { get; } = [];

        public bool Visit(ChoiceJoin join, long cost, long at)
        {
            long[] rests = RestsAt(join, at);
            if (rests[0] >= ChoiceEntry.Never || cost + rests[0] > _pass._ceilings[0].Most)
            {
                return true;
            }

            List<ChoiceLabel> labels = _own[join.At[0]];
            ChoiceLabel tables = default;
            long childrenLeast = 0;
            foreach ((ChoiceMessage input, int i) in join.Inputs.Select((m, i) => (m, i)))
            {
                if (input.Table is { } table)
                {
                    ChoiceLabel own = _pass.LabelOf(table.Price[join.InputAt[i]], table.Mass?[join.InputAt[i]] ?? 0);
                    tables = new(tables.Least + own.Least, tables.Capped + own.Capped);
                }
                else
                {
                    childrenLeast += input[join.InputAt[i]];
                }
            }

            labels = Sums(labels, [tables], rests, childrenLeast);
            foreach ((ChoiceMessage input, int i) in join.Inputs.Select((m, i) => (m, i)))
            {
                if (input.Table is null)
                {
                    childrenLeast -= input[join.InputAt[i]];
                    labels = Sums(labels, _pass._labels[input][join.InputAt[i]], rests, childrenLeast);
                }
            }

            if (!Cells.TryGetValue(at, out List<ChoiceLabel>? there))
            {
                Cells[at] = there = [];
            }

            there.AddRange(labels);
            if (there.Count > 4_096)
            {
                ChoiceLabels.Clear(there);
            }

            return true;
        }

        private List<ChoiceLabel> Sums(List<ChoiceLabel> some, List<ChoiceLabel> others, long[] rests, long childrenLeast)
        {
            List<ChoiceLabel> sums = [];
            foreach (ChoiceLabel one in some)
            {
                foreach (ChoiceLabel other in others)
                {
                    ChoiceLabel sum = new(one.Least + other.Least, one.Capped + other.Capped);
                    bool goes = _pass.Weighed(sum) + childrenLeast + rests[0] <= _pass._ceilings[0].Most;
                    for (int i = 1; i < rests.Length && goes; i++)
                    {
                        goes = _pass.Weighed(_pass._ceilings[i].Weights, sum) + rests[i] <= _pass._ceilings[i].Most;
                    }

                    if (goes)
                    {
                        sums.Add(sum);
                    }
                }
            }

            if (some.Count > 1 && others.Count > 1)
            {
                ChoiceLabels.Clear(sums);
            }

            return sums;
        }

        private long[] RestsAt(ChoiceJoin join, long at)
        {
            if (_rests.TryGetValue(at, out long[]? known))
            {
                return known;
            }

            for (int place = 1; place < join.Variables.Length; place++)
            {
                _states[join.Variables[place]] = _stateOf[place][join.At[place]];
            }

            long[] rests = new long[_buckets.Length];
            for (int i = 0; i < rests.Length; i++)
            {
                rests[i] = _pass._ceilings[i].Marginals.Rest(_buckets[i], _states);
            }

            return _rests[at] = rests;
        }
    }
}
