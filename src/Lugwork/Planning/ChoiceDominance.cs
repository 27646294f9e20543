namespace Lugwork.Planning;

/// <summary>
/// Drops entries that others of the same slot beat: no dearer, no heavier, and in every table at no higher cost whatever stands beside. An entry goes when as many others beat it as builds are asked
/// for; then as many builds as good are left without it, and what the best builds cost stays the same.
/// </summary>
internal sealed class ChoiceDominance
{
    private const int MostStates = 1_500;
    private const long MostComparisons = 40_000_000;

    private readonly ChoiceNetwork _network;
    private readonly int _builds;
    private readonly CancellationToken _cancellation;

    private ChoiceDominance(ChoiceNetwork network, int builds, CancellationToken cancellationToken)
    {
        _network = network;
        _builds = builds;
        _cancellation = cancellationToken;
    }

    /// <summary>The thinner network; null where nothing goes together.</summary>
    /// <param name="network">A network.</param>
    /// <param name="builds">How many of the best builds have to be left.</param>
    /// <param name="cancellationToken">Stops it.</param>
    public static ChoiceNetwork? Thinned(ChoiceNetwork network, int builds, CancellationToken cancellationToken)
    {
        for (int turn = 0; turn < 3; turn++)
        {
            int before = network.States.Sum(s => s.Length);
            if (ChoiceTables.Restricted(new ChoiceDominance(network, builds, cancellationToken).Thin()) is not { } thinner)
            {
                return null;
            }

            network = thinner;
            if (network.States.Sum(s => s.Length) == before)
            {
                break;
            }
        }

        return network;
    }

    private ChoiceNetwork Thin()
    {
        ChoiceState[][] states = new ChoiceState[_network.States.Length][];
        int[][] old = new int[states.Length][];
        for (int variable = 0; variable < states.Length; variable++)
        {
            _cancellation.ThrowIfCancellationRequested();
            (states[variable], old[variable]) = Thin(variable);
        }

        return ChoiceTables.Picked(_network, states, old);
    }

    private (ChoiceState[] States, int[] Old) Thin(int variable)
    {
        ChoiceState[] states = _network.States[variable];
        bool[]? better = states.Length <= MostStates ? Better(variable) : null;
        List<(long Price, long Mass, int Entry, int State)> all = [];
        for (int state = 0; state < states.Length; state++)
        {
            int few = states[state].Mass.AsSpan().ContainsAnyExcept(states[state].Mass[0]) ? states[state].Price.Length : Math.Min(_builds, states[state].Price.Length);
            for (int i = 0; i < few; i++)
            {
                all.Add((states[state].Price[i], states[state].Mass[i], states[state].Entry[i], state));
            }
        }

        all.Sort();
        bool[] gone = new bool[all.Count];
        for (int i = all.Count - 1; i > 0; i--)
        {
            int beaten = 0;
            for (int n = 0; n < i && beaten < _builds; n++)
            {
                beaten += all[n].Mass <= all[i].Mass && (all[n].State == all[i].State || (better is not null && better[(all[n].State * states.Length) + all[i].State])) ? 1 : 0;
            }

            gone[i] = beaten >= _builds;
        }

        var kept = all.Where((_, i) => !gone[i]).ToLookup(e => e.State);
        int[] old = [.. Enumerable.Range(0, states.Length).Where(kept.Contains)];
        return ([.. old.Select(s => new ChoiceState([.. kept[s].Select(e => e.Price)], [.. kept[s].Select(e => e.Mass)], [.. kept[s].Select(e => e.Entry)]))], old);
    }

    /// <summary>Whether one state costs in no table more than another, whatever stands beside.</summary>
    private bool[] Better(int variable)
    {
        int count = _network.States[variable].Length;
        bool[] better = new bool[count * count];
        Array.Fill(better, true);
        foreach (ChoiceTable table in _network.Tables)
        {
            int place = Array.IndexOf(table.Scope, variable);
            if (place >= 0)
            {
                Narrow(better, table.ClassOf[place], Below(table, place), table.Sizes[place]);
            }
        }

        foreach (ChoiceLateTable late in _network.Late)
        {
            int place = Array.IndexOf(late.Rule.Scope, variable);
            if (place >= 0)
            {
                Narrow(better, late.ClassOf[place], null, 0);
            }
        }

        return better;
    }

    private static void Narrow(bool[] better, int[] classOf, bool[]? below, int size)
    {
        int count = classOf.Length;
        for (int one = 0; one < count; one++)
        {
            for (int other = 0; other < count; other++)
            {
                better[(one * count) + other] &= classOf[one] == classOf[other] || (below is not null && below[(classOf[one] * size) + classOf[other]]);
            }
        }
    }

    /// <summary>Which classes cost at every place at most what another does; null where there are too many to compare.</summary>
    private static bool[]? Below(ChoiceTable table, int place)
    {
        int size = table.Sizes[place];
        int stride = (int)table.Stride(place);
        int outer = table.Price.Length / (size * stride);
        if ((long)size * table.Price.Length > MostComparisons)
        {
            return null;
        }

        bool[] below = new bool[size * size];
        for (int one = 0; one < size; one++)
        {
            for (int other = 0; other < size; other++)
            {
                below[(one * size) + other] = IsBelow(table, one, other, size, stride, outer);
            }
        }

        return below;
    }

    private static bool IsBelow(ChoiceTable table, int one, int other, int size, int stride, int outer)
    {
        for (int o = 0; o < outer; o++)
        {
            int a = ((o * size) + one) * stride;
            int b = ((o * size) + other) * stride;
            for (int i = 0; i < stride; i++)
            {
                if (table.Price[a + i] > table.Price[b + i] || (table.Mass is not null && table.Mass[a + i] > table.Mass[b + i]))
                {
                    return false;
                }
            }
        }

        return true;
    }
}
