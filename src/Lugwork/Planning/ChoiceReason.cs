namespace Lugwork.Planning;

/// <summary>
/// Finds a smallest set of rules and wishes that cannot be met: whatever hits every set of which one has to be given up. Each try that can be met is grown until nothing more can be added,
/// and what is then missing has to be hit. Where that takes too long, a set of which nothing can be left out.
/// </summary>
internal sealed class ChoiceReason
{
    private const int MostTurns = 200;
    private const int MostBranches = 20_000;

    private readonly ChoiceModel _model;
    private readonly CancellationToken _cancellation;
    private readonly int[][] _groupOf;
    private readonly int _rules;
    private readonly int _all;
    private readonly long _steps;

    public ChoiceReason(ChoiceModel model, long steps, CancellationToken cancellationToken)
    {
        _steps = steps;
        _model = model;
        _cancellation = cancellationToken;
        _rules = model.Rules.Count;
        _all = _rules + model.Wishes.Count;
        _groupOf = [.. model.Groups.Select((groups, slot) =>
        {
            int[] of = new int[model.Entries[slot].Count];
            for (int group = 0; group < groups.Count; group++)
            {
                groups[group].Entries.ForEach(e => of[e] = group);
            }

            return of;
        })];
    }

    /// <summary>A reason, or null where all can be met or it could not be found out, which is then open; rules by their number, wishes after them.</summary>
    public (int[] Reason, bool IsSmallest)? Find(out bool isOpen)
    {
        bool[] whole = [.. Enumerable.Repeat(true, _all)];
        bool isMet = Meet(whole, out bool sure) is not null;
        isOpen = !isMet && !sure;
        if (isMet || isOpen)
        {
            return null;
        }

        List<int[]> missing = [];
        for (int turn = 0; turn < MostTurns; turn++)
        {
            if (Hit(missing) is not { } tried)
            {
                break;
            }

            bool[] active = new bool[_all];
            Array.ForEach(tried, n => active[n] = true);
            if (Meet(active, out sure) is not { } groups)
            {
                if (!sure)
                {
                    break;
                }

                return (tried, true);
            }

            missing.Add(Grown(active, groups));
        }

        return (Thinned(whole), false);
    }

    /// <summary>Can rules be met, of those that are set? A group for each slot that meets them.</summary>
    public int[]? Meet(bool[] active, out bool sure)
    {
        _cancellation.ThrowIfCancellationRequested();
        sure = true;
        if (ChoiceReducer.Of(_model, false, active[.._rules], active[_rules..], cancellationToken: _cancellation) is not { } network)
        {
            return null;
        }

        ChoiceElimination elimination = new(network, ChoiceWeights.Price, _cancellation);
        ChoiceSearch search = new(network, elimination, ChoiceWeights.Price, _cancellation);
        if (search.Next(_steps) is not { } found)
        {
            sure = search.Bound >= ChoiceEntry.Never;
            return null;
        }

        return [.. found.Chosen.Select((c, slot) => _groupOf[slot][network.States[slot][c.State].Entry[c.Rank]])];
    }

    /// <summary>Adds all that can be added to what is met, and gives what is left.</summary>
    private int[] Grown(bool[] active, int[] groups)
    {
        AddMet(active, groups);
        for (int number = 0; number < _all; number++)
        {
            if (active[number])
            {
                continue;
            }

            active[number] = true;
            if (Meet(active, out _) is { } more)
            {
                AddMet(active, more);
            }
            else
            {
                active[number] = false;
            }
        }

        return [.. Enumerable.Range(0, _all).Where(n => !active[n])];
    }

    private void AddMet(bool[] active, int[] groups)
    {
        Span<int> classes = stackalloc int[Joint.MostInputs + 1];
        for (int number = 0; number < _rules; number++)
        {
            ChoiceRule rule = _model.Rules[number];
            for (int i = 0; i < rule.Scope.Length; i++)
            {
                classes[i] = rule.ClassOf[i][groups[rule.Scope[i]]];
            }

            active[number] |= rule.Cost(classes[..rule.Scope.Length]).Price < ChoiceEntry.Never;
        }

        for (int i = 0; i < _model.Wishes.Count; i++)
        {
            active[_rules + i] |= _model.Wishes[i].Met[groups[_model.Wishes[i].Slot]];
        }
    }

    /// <summary>A smallest set that takes something of each; of equal ones the first. Null where that takes too long.</summary>
    private static int[]? Hit(List<int[]> sets)
    {
        int branches = 0;
        for (int size = 0; size <= sets.Count; size++)
        {
            List<int> taken = [];
            if (Take(sets, size, taken, ref branches))
            {
                return [.. taken.Order()];
            }

            if (branches > MostBranches)
            {
                return null;
            }
        }

        return null;
    }

    private static bool Take(List<int[]> sets, int left, List<int> taken, ref int branches)
    {
        if (++branches > MostBranches)
        {
            return false;
        }

        int[]? open = sets.Find(s => !Array.Exists(s, taken.Contains));
        if (open is null)
        {
            return true;
        }

        foreach (int number in left > 0 ? open : [])
        {
            taken.Add(number);
            if (Take(sets, left - 1, taken, ref branches))
            {
                return true;
            }

            taken.RemoveAt(taken.Count - 1);
        }

        return false;
    }

    /// <summary>Takes away what can be taken away, in halves first; what could not be tried to the end stays.</summary>
    private int[] Thinned(bool[] active)
    {
        for (int size = _all / 2; size > 0; size /= 2)
        {
            for (int from = 0; from < _all; from += size)
            {
                bool[] less = [.. active];
                for (int i = from; i < Math.Min(_all, from + size); i++)
                {
                    less[i] = false;
                }

                if (!less.AsSpan().SequenceEqual(active) && Meet(less, out bool sure) is null && sure)
                {
                    active = less;
                }
            }
        }

        return [.. Enumerable.Range(0, _all).Where(n => active[n])];
    }
}
