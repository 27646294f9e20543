namespace Lugwork.Planning;

/// <summary>Networks with fewer states, and their tables made smaller with them.</summary>
internal static class ChoiceTables
{
    /// <summary>The network of some states alone; tables keep their cells.</summary>
    /// <param name="network">The network.</param>
    /// <param name="states">What is left by variable.</param>
    /// <param name="old">The old number of each.</param>
    public static ChoiceNetwork Picked(ChoiceNetwork network, ChoiceState[][] states, int[][] old) => new(
        states,
        [.. network.Tables.Select(t => new ChoiceTable(t.Scope, [.. t.Scope.Select((v, place) => Array.ConvertAll(old[v], s => t.ClassOf[place][s]))], t.Sizes, t.Price, t.Mass))],
        [.. network.Late.Select(l => l with { ClassOf = [.. l.Rule.Scope.Select((v, place) => Array.ConvertAll(old[v], s => l.ClassOf[place][s]))] })],
        network.Price, network.Mass);

    /// <summary>Tables over the classes that are left, merged; states that go with nothing dropped, and what one variable decides added to its states. Null where nothing goes together.</summary>
    public static ChoiceNetwork? Restricted(ChoiceNetwork network)
    {
        while (true)
        {
            if (Array.Exists(network.States, s => s.Length == 0))
            {
                return null;
            }

            bool[][] alive = [.. network.States.Select(s => Enumerable.Repeat(true, s.Length).ToArray())];
            List<ChoiceTable> tables = [];
            bool died = false;
            foreach (ChoiceTable table in network.Tables)
            {
                ChoiceTable used = Used(table);
                if (used.Merge())
                {
                    died = true;
                    for (int place = 0; place < used.Scope.Length; place++)
                    {
                        for (int state = 0; state < used.ClassOf[place].Length; state++)
                        {
                            alive[used.Scope[place]][state] &= used.ClassOf[place][state] >= 0;
                        }
                    }
                }

                tables.Add(used);
            }

            ChoiceNetwork restricted = new(network.States, tables, network.Late, network.Price, network.Mass);
            if (!died)
            {
                return Absorbed(restricted);
            }

            int[][] old = [.. alive.Select(a => Enumerable.Range(0, a.Length).Where(s => a[s]).ToArray())];
            network = Picked(restricted, [.. old.Select((o, v) => Array.ConvertAll(o, s => network.States[v][s]))], old);
        }
    }

    /// <summary>The table over those classes that a state still has.</summary>
    private static ChoiceTable Used(ChoiceTable table)
    {
        int places = table.Scope.Length;
        int[][] classes = [.. table.ClassOf.Select(c => c.Distinct().Order().ToArray())];
        int[][] classOf = [.. table.ClassOf.Select((c, place) => Array.ConvertAll(c, own => Array.BinarySearch(classes[place], own)))];
        int[] sizes = [.. classes.Select(c => c.Length)];
        long[] price = new long[sizes.Aggregate(1L, (a, b) => a * b)];
        long[]? mass = table.Mass is null ? null : new long[price.Length];
        int[] at = new int[places];
        for (int cell = 0; cell < price.Length; cell++)
        {
            long from = 0;
            for (int place = 0; place < places; place++)
            {
                from = (from * table.Sizes[place]) + classes[place][at[place]];
            }

            price[cell] = table.Price[from];
            if (mass is not null)
            {
                mass[cell] = table.Mass![from];
            }

            for (int place = places - 1; place >= 0 && ++at[place] == sizes[place]; place--)
            {
                at[place] = 0;
            }
        }

        return new([.. table.Scope], classOf, sizes, price, mass);
    }

    private static ChoiceNetwork Absorbed(ChoiceNetwork network)
    {
        (long price, long mass) = (network.Price, network.Mass);
        ChoiceState[][] states = [.. network.States.Select(s => s.ToArray())];
        List<ChoiceTable> open = [];
        foreach (ChoiceTable table in network.Tables)
        {
            if (!table.Narrowed(out ChoiceTable narrow))
            {
                (price, mass) = (price + table.Price[0], mass + (table.Mass?[0] ?? 0));
            }
            else if (narrow.Scope.Length > 1)
            {
                open.Add(narrow);
            }
            else
            {
                ChoiceState[] own = states[narrow.Scope[0]];
                for (int state = 0; state < own.Length; state++)
                {
                    (long morePrice, long moreMass) = (narrow.Price[narrow.ClassOf[0][state]], narrow.Mass?[narrow.ClassOf[0][state]] ?? 0);
                    own[state] = own[state] with { Price = Array.ConvertAll(own[state].Price, p => p + morePrice), Mass = Array.ConvertAll(own[state].Mass, m => m + moreMass) };
                }
            }
        }

        return new(states, open, network.Late, price, mass);
    }
}
