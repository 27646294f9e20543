namespace Lugwork.Planning;

/// <summary>
/// Choices in the order of their cost, from what an elimination left: slots are filled in the reverse order, and the messages say what the rest will cost at least. After an exact
/// elimination they say it exactly, and no step is taken in vain.
/// </summary>
internal sealed class ChoiceSearch
{
    private readonly ChoiceNetwork _network;
    private readonly ChoiceElimination _elimination;
    private readonly ChoiceWeights _weights;
    private readonly CancellationToken _cancellation;
    private readonly PriorityQueue<ChoiceNode, (long Cost, int Left, long Turn)> _queue = new();
    private readonly int[]?[][] _ranked;
    private readonly int[] _state;
    private long _turn;

    public ChoiceSearch(ChoiceNetwork network, ChoiceElimination elimination, ChoiceWeights weights, CancellationToken cancellationToken)
    {
        _network = network;
        _elimination = elimination;
        _weights = weights;
        _cancellation = cancellationToken;
        _state = new int[network.States.Length];
        _ranked = [.. network.States.Select(s => new int[]?[s.Length])];
        if (elimination.Bound < ChoiceEntry.Never)
        {
            Open(null, elimination.Bound);
        }
    }

    /// <summary>No choice that was not given yet costs less; never where there is none.</summary>
    public long Bound => _queue.TryPeek(out _, out (long Cost, int Left, long Turn) next) ? next.Cost : ChoiceEntry.Never;

    /// <summary>How many steps were taken.</summary>
    public long Steps { get; private set; }

    /// <summary>The next choice: the place of an entry in its state, by variable with the state. Null where there is none, or the steps or the ceiling did not suffice.</summary>
    /// <param name="steps">How many steps may be taken in all.</param>
    /// <param name="ceiling">Nothing of this cost or more is looked at.</param>
    public (long Cost, (int State, int Rank)[] Chosen)? Next(long steps, long ceiling = ChoiceEntry.Never)
    {
        while (Bound < ceiling && Steps < steps && _queue.TryDequeue(out ChoiceNode? node, out _))
        {
            Steps++;
            if ((Steps & 0xFF) == 0)
            {
                _cancellation.ThrowIfCancellationRequested();
            }

            PushBeside(node);
            if (node.Depth + 1 == _network.States.Length)
            {
                return (node.Cost, Chosen(node));
            }

            Open(node, node.Cost);
        }

        return null;
    }

    /// <summary>A slot that was filled, with what the whole costs at least.</summary>
    private sealed record ChoiceNode(ChoiceNode? Before, int Depth, ChoiceChild[] Children, int Number, int Rank, long Cost);

    private readonly record struct ChoiceChild(int State, long Cost);

    private int VariableAt(int depth) => _elimination.Buckets[^(depth + 1)].Variable;

    /// <summary>Works out what each state of the next slot costs, and puts the best of them into the queue.</summary>
    private void Open(ChoiceNode? before, long cost)
    {
        int depth = before is null ? 0 : before.Depth + 1;
        for (ChoiceNode? node = before; node is not null; node = node.Before)
        {
            _state[VariableAt(node.Depth)] = node.Children[node.Number].State;
        }

        ChoiceBucket bucket = _elimination.Buckets[^(depth + 1)];
        long rest = cost;
        foreach (ChoiceBucketPart part in bucket.Parts)
        {
            rest -= part.Left?.At(_state) ?? part.Constant;
        }

        List<ChoiceChild> children = [];
        Span<long> beside = stackalloc long[bucket.Inputs.Length];
        bool goes = true;
        for (int i = 0; i < beside.Length; i++)
        {
            beside[i] = bucket.Inputs[i].Beside(bucket.Variable, _state);
            goes &= beside[i] >= 0;
        }

        ulong bit = 1UL << bucket.Variable;
        for (int state = 0; goes && state < _network.States[bucket.Variable].Length; state++)
        {
            _state[bucket.Variable] = state;
            long own = rest + _elimination.Own[bucket.Variable][state];
            for (int i = 0; i < beside.Length && own < ChoiceEntry.Never; i++)
            {
                int number = bucket.Inputs[i].ClassesOf(bit, out _, out long stride)[state];
                own += number < 0 ? ChoiceEntry.Never : bucket.Inputs[i][beside[i] + (number * stride)];
            }

            for (int i = 0; i < bucket.Late.Length && own < ChoiceEntry.Never; i++)
            {
                own += Late(bucket.Late[i]);
            }

            if (own < ChoiceEntry.Never)
            {
                children.Add(new(state, own));
            }
        }

        if (children.Count > 0)
        {
            // Of equal states the one whose best entry stands first.
            children.Sort((a, b) => a.Cost != b.Cost ? a.Cost.CompareTo(b.Cost) : First(bucket.Variable, a.State).CompareTo(First(bucket.Variable, b.State)));
            Push(new(before, depth, [.. children], 0, 0, children[0].Cost));
        }
    }

    private int First(int variable, int state) => _network.States[variable][state].Entry[Ranked(variable, state)[0]];

    private long Late(ChoiceLateTable late)
    {
        int[] scope = late.Rule.Scope;
        Span<int> states = stackalloc int[scope.Length];
        for (int i = 0; i < scope.Length; i++)
        {
            states[i] = _state[scope[i]];
        }

        (long price, long mass) = late.Of(states);
        return price >= ChoiceEntry.Never ? ChoiceEntry.Never : _weights.Of(price, mass);
    }

    /// <summary>The next state, and the next entry of the same state.</summary>
    private void PushBeside(ChoiceNode node)
    {
        if (node.Rank == 0 && node.Number + 1 < node.Children.Length)
        {
            Push(node with { Number = node.Number + 1, Cost = node.Children[node.Number + 1].Cost });
        }

        int variable = VariableAt(node.Depth);
        int state = node.Children[node.Number].State;
        int[] ranked = Ranked(variable, state);
        if (node.Rank + 1 < ranked.Length)
        {
            Push(node with { Rank = node.Rank + 1, Cost = node.Cost + Weight(variable, state, ranked[node.Rank + 1]) - Weight(variable, state, ranked[node.Rank]) });
        }
    }

    private long Weight(int variable, int state, int place) => _weights.Of(_network.States[variable][state].Price[place], _network.States[variable][state].Mass[place]);

    /// <summary>The entries of a state by their cost, of equals the earlier.</summary>
    private int[] Ranked(int variable, int state)
    {
        if (_ranked[variable][state] is { } known)
        {
            return known;
        }

        int[] places = [.. Enumerable.Range(0, _network.States[variable][state].Price.Length)];
        if (_weights != ChoiceWeights.Price)
        {
            Array.Sort([.. places.Select(p => (Weight(variable, state, p), p))], places);
        }

        return _ranked[variable][state] = places;
    }

    private void Push(ChoiceNode node) => _queue.Enqueue(node, (node.Cost, _network.States.Length - node.Depth, _turn++));

    private (int State, int Rank)[] Chosen(ChoiceNode last)
    {
        (int State, int Rank)[] chosen = new (int State, int Rank)[_network.States.Length];
        for (ChoiceNode? node = last; node is not null; node = node.Before)
        {
            int variable = VariableAt(node.Depth);
            int state = node.Children[node.Number].State;
            chosen[variable] = (state, Ranked(variable, state)[node.Rank]);
        }

        return chosen;
    }
}
