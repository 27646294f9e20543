namespace Lugwork.Planning;

/// <summary>Choices of one slot that every table treats alike: what stands in it, cheapest first, of equals the earlier entry.</summary>
/// <param name="Price">Prices with what the slot's own joints cost, ascending.</param>
/// <param name="Mass">Masses beside them.</param>
/// <param name="Entry">Numbers of the entries.</param>
internal sealed record ChoiceState(long[] Price, long[] Mass, int[] Entry);

/// <summary>
/// The choice as numbers alone: a variable a slot, states with prices and masses, and tables over a few variables each. A choice is a state for every variable with an entry of it,
/// and costs the sum.
/// </summary>
internal sealed class ChoiceNetwork(ChoiceState[][] states, List<ChoiceTable> tables, List<ChoiceLateTable> late, long price, long mass)
{
    /// <summary>Sets of variables are kept as the bits of one number.</summary>
    public const int MostVariables = 64;

    /// <summary>States by variable.</summary>
    public ChoiceState[][] States { get; } = states.Length <= MostVariables ? states : throw new ArgumentException($"a choice is over {MostVariables} slots at most", nameof(states));

    public List<ChoiceTable> Tables { get; } = tables;

    /// <summary>Rules that are too large for a table: they are asked when all their variables are chosen.</summary>
    public List<ChoiceLateTable> Late { get; } = late;

    /// <summary>What every choice costs.</summary>
    public long Price { get; } = price;

    /// <summary>What every choice weighs.</summary>
    public long Mass { get; } = mass;

    /// <summary>What a choice costs and weighs.</summary>
    public (long Price, long Mass) Cost((int State, int Rank)[] chosen)
    {
        (long price, long mass) = (Price, Mass);
        for (int variable = 0; variable < chosen.Length; variable++)
        {
            ChoiceState state = States[variable][chosen[variable].State];
            (price, mass) = (price + state.Price[chosen[variable].Rank], mass + state.Mass[chosen[variable].Rank]);
        }

        foreach (ChoiceTable table in Tables)
        {
            long at = 0;
            for (int i = 0; i < table.Scope.Length; i++)
            {
                at = (at * table.Sizes[i]) + table.ClassOf[i][chosen[table.Scope[i]].State];
            }

            (price, mass) = (price + table.Price[at], mass + (table.Mass?[at] ?? 0));
        }

        foreach (ChoiceLateTable late in Late)
        {
            (long latePrice, long lateMass) = late.Of([.. late.Rule.Scope.Select(v => chosen[v].State)]);
            (price, mass) = (price + latePrice, mass + lateMass);
        }

        return (price, mass);
    }

    /// <summary>The most that any choice can cost.</summary>
    public long MostPrice => Price + States.Sum(s => s.Max(t => t.Price[^1])) + Tables.Sum(t => t.Price.Where(p => p < ChoiceEntry.Never).DefaultIfEmpty().Max()) + Late.Sum(l => l.Rule.Most.Price);

    /// <summary>The most that any choice can weigh.</summary>
    public long MostMass => Mass + States.Sum(s => s.Max(t => t.Mass.Max())) + Tables.Sum(t => t.Mass is null ? 0 : t.Mass.Where(m => m < ChoiceEntry.Never).DefaultIfEmpty().Max()) + Late.Sum(l => l.Rule.Most.Mass);
}

/// <summary>A rule that is asked combination by combination.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="ClassOf">For each variable of its scope and each state the rule's class.</param>
internal sealed record ChoiceLateTable(ChoiceRule Rule, int[][] ClassOf)
{
    /// <summary>What the states of its scope cost together.</summary>
    public (long Price, long Mass) Of(ReadOnlySpan<int> states)
    {
        Span<int> classes = stackalloc int[states.Length];
        for (int i = 0; i < states.Length; i++)
        {
            classes[i] = ClassOf[i][states[i]];
        }

        lock (Rule)
        {
            return Rule.Cost(classes);
        }
    }
}
