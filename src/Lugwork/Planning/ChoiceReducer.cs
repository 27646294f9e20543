namespace Lugwork.Planning;

/// <summary>Makes the network of a model: drops what goes with nothing, merges what behaves alike, and keeps a state for what is left.</summary>
internal sealed class ChoiceReducer
{
    private readonly ChoiceModel _model;
    private readonly bool[][] _alive;
    private readonly long[][] _price;
    private readonly long[][] _mass;
    private readonly ChoiceTable?[] _tables;
    private readonly bool _masses;
    private readonly CancellationToken _cancellation;
    private readonly int _mostCells;
    private long _constantPrice;
    private long _constantMass;

    private ChoiceReducer(ChoiceModel model, bool masses, int mostCells, CancellationToken cancellationToken)
    {
        _mostCells = mostCells;
        _model = model;
        _masses = masses;
        _cancellation = cancellationToken;
        _alive = [.. model.Groups.Select(g => Enumerable.Repeat(true, g.Count).ToArray())];
        _price = [.. model.Groups.Select(g => new long[g.Count])];
        _mass = [.. model.Groups.Select(g => new long[g.Count])];
        _tables = new ChoiceTable?[model.Rules.Count];
    }

    /// <summary>The most cells of a table; a rule with more is asked late.</summary>
    public const int MostCells = 1 << 21;

    /// <summary>The network of those rules and wishes that count; null where some slot has nothing left.</summary>
    /// <param name="model">The model.</param>
    /// <param name="masses">Masses count: of entries alike in all else those are kept that are cheapest for their mass; else all are.</param>
    /// <param name="rules">Which rules count; all, where left out.</param>
    /// <param name="wishes">Which wishes count; all, where left out.</param>
    /// <param name="mostCells">The most cells of a table.</param>
    /// <param name="cancellationToken">Stops it.</param>
    public static ChoiceNetwork? Of(ChoiceModel model, bool masses, bool[]? rules = null, bool[]? wishes = null, int mostCells = MostCells, CancellationToken cancellationToken = default)
    {
        ChoiceReducer reducer = new(model, masses, mostCells, cancellationToken);
        for (int i = 0; i < model.Wishes.Count; i++)
        {
            (_, int slot, bool[] met) = model.Wishes[i];
            for (int group = 0; group < met.Length && (wishes is null || wishes[i]); group++)
            {
                reducer._alive[slot][group] &= met[group];
            }
        }

        return reducer.Reduce(rules) ? reducer.Network(rules) : null;
    }

    private bool Reduce(bool[]? rules)
    {
        int count = _model.Rules.Count;
        bool[] stale = [.. Enumerable.Range(0, count).Select(i => rules is null || rules[i])];
        int[] order = [.. Enumerable.Range(0, count).OrderBy(i => _model.Rules[i].Scope.Count(s => _model.Groups[s].Count > 1)).ThenBy(i => i)];
        while (Array.TrueForAll(_alive, a => a.Contains(true)))
        {
            int next = Array.FindIndex(order, i => stale[i]);
            if (next < 0)
            {
                return true;
            }

            _cancellation.ThrowIfCancellationRequested();
            int at = order[next];
            stale[at] = false;
            foreach (int slot in Refresh(at))
            {
                for (int i = 0; i < count; i++)
                {
                    stale[i] |= i != at && (rules is null || rules[i]) && _model.Rules[i].Scope.Contains(slot);
                }
            }
        }

        return false;
    }

    /// <summary>Makes the table of a rule over what is alive, and gives the slots in which something died by it.</summary>
    private List<int> Refresh(int number)
    {
        ChoiceRule rule = _model.Rules[number];
        int places = rule.Scope.Length;
        int[][] classOf = new int[places][];
        List<int>[] classes = new List<int>[places];
        long cells = 1;
        for (int place = 0; place < places; place++)
        {
            (classOf[place], classes[place]) = Alive(rule, place);
            cells = cells > _mostCells ? cells : cells * classes[place].Count;
        }

        _tables[number] = null;
        if (cells > _mostCells)
        {
            return [];
        }

        long[] price = new long[cells];
        long[] mass = new long[cells];
        bool anyMass = false;
        int[] at = new int[places];
        int[] asked = new int[places];
        for (long cell = 0; cell < cells; cell++)
        {
            if ((cell & 0xFFF) == 0)
            {
                _cancellation.ThrowIfCancellationRequested();
            }

            for (int place = 0; place < places; place++)
            {
                asked[place] = classes[place][at[place]];
            }

            (price[cell], mass[cell]) = rule.Cost(asked);
            anyMass |= mass[cell] != 0 && price[cell] != ChoiceEntry.Never;
            for (int place = places - 1; place >= 0 && ++at[place] == classes[place].Count; place--)
            {
                at[place] = 0;
            }
        }

        ChoiceTable table = new([.. rule.Scope], classOf, [.. classes.Select(c => c.Count)], price, _masses && anyMass ? mass : null);
        List<int> touched = [];
        if (table.Merge())
        {
            for (int place = 0; place < places; place++)
            {
                bool died = false;
                bool[] alive = _alive[rule.Scope[place]];
                for (int group = 0; group < alive.Length; group++)
                {
                    bool dies = alive[group] && table.ClassOf[place][group] < 0;
                    died |= dies;
                    alive[group] &= !dies;
                }

                if (died)
                {
                    touched.Add(rule.Scope[place]);
                }
            }
        }

        _tables[number] = table;
        return touched;
    }

    /// <summary>The rule's classes of the groups that are alive, numbered anew.</summary>
    private (int[] ClassOf, List<int> Classes) Alive(ChoiceRule rule, int place)
    {
        bool[] alive = _alive[rule.Scope[place]];
        int[] renumbered = new int[rule.Classes[place]];
        int[] classOf = new int[alive.Length];
        List<int> classes = [];
        for (int group = 0; group < alive.Length; group++)
        {
            classOf[group] = -1;
            if (!alive[group])
            {
                continue;
            }

            int own = rule.ClassOf[place][group];
            if (renumbered[own] == 0)
            {
                classes.Add(own);
                renumbered[own] = classes.Count;
            }

            classOf[group] = renumbered[own] - 1;
        }

        return (classOf, classes);
    }

    private ChoiceNetwork? Network(bool[]? rules)
    {
        List<ChoiceTable> open = [];
        List<int> late = [];
        for (int i = 0; i < _tables.Length; i++)
        {
            if (rules is not null && !rules[i])
            {
                continue;
            }

            if (_tables[i] is not { } table)
            {
                late.Add(i);
            }
            else if (!table.Narrowed(out ChoiceTable narrow))
            {
                if (table.Price.Length == 0)
                {
                    return null;
                }

                _constantPrice += table.Price[0];
                _constantMass += table.Mass?[0] ?? 0;
            }
            else if (narrow.Scope.Length == 1)
            {
                Add(narrow);
            }
            else
            {
                open.Add(narrow);
            }
        }

        return Gather(open, late);
    }

    /// <summary>A table of one slot is part of what its groups cost.</summary>
    private void Add(ChoiceTable table)
    {
        int slot = table.Scope[0];
        for (int group = 0; group < _price[slot].Length; group++)
        {
            if (_alive[slot][group])
            {
                _price[slot][group] += table.Price[table.ClassOf[0][group]];
                _mass[slot][group] += table.Mass?[table.ClassOf[0][group]] ?? 0;
            }
        }
    }

    private ChoiceNetwork Gather(List<ChoiceTable> open, List<int> late)
    {
        ChoiceState[][] states = new ChoiceState[_alive.Length][];
        int[][] stateGroup = new int[_alive.Length][];
        for (int slot = 0; slot < states.Length; slot++)
        {
            int[][] columns = [.. open.Where(t => t.Scope.Contains(slot)).Select(t => t.ClassOf[Array.IndexOf(t.Scope, slot)]), .. late.Select(i => _model.Rules[i]).Where(r => r.Scope.Contains(slot)).Select(r => r.ClassOf[Array.IndexOf(r.Scope, slot)])];
            ChoiceInterner seen = new();
            List<List<int>> members = [];
            long[] key = new long[columns.Length];
            for (int group = 0; group < _alive[slot].Length; group++)
            {
                if (_alive[slot][group])
                {
                    for (int i = 0; i < key.Length; i++)
                    {
                        key[i] = columns[i][group];
                    }

                    int number = seen.NumberOf(key);
                    if (number == members.Count)
                    {
                        members.Add([]);
                    }

                    members[number].Add(group);
                }
            }

            states[slot] = [.. members.Select(m => StateOf(slot, m))];
            stateGroup[slot] = [.. members.Select(m => m[0])];
        }

        List<ChoiceTable> tables = [.. open.Select(t => new ChoiceTable(t.Scope, [.. t.Scope.Select((s, place) => Array.ConvertAll(stateGroup[s], g => t.ClassOf[place][g]))], t.Sizes, t.Price, t.Mass))];
        List<ChoiceLateTable> lateTables = [.. late.Select(i => _model.Rules[i]).Select(r => new ChoiceLateTable(r, [.. r.Scope.Select((s, place) => Array.ConvertAll(stateGroup[s], g => r.ClassOf[place][g]))]))];
        return new(states, tables, lateTables, _constantPrice, _constantMass);
    }

    private ChoiceState StateOf(int slot, List<int> groups)
    {
        List<ChoiceEntry> entries = _model.Entries[slot];
        List<(long Price, long Mass, int Entry)> all = [];
        foreach (int group in groups)
        {
            foreach (int entry in _model.Groups[slot][group].Entries)
            {
                all.Add((entries[entry].Price + _price[slot][group], entries[entry].Mass + _mass[slot][group], entry));
            }
        }

        all.Sort();
        if (_masses)
        {
            long lightest = long.MaxValue;
            all.RemoveAll(e => e.Mass >= lightest || (lightest = e.Mass) < 0);
        }

        return new([.. all.Select(e => e.Price)], [.. all.Select(e => e.Mass)], [.. all.Select(e => e.Entry)]);
    }
}
