namespace Lugwork.Planning;

/// <summary>The same network in its own largest steps of price and mass, so that their products stay small.</summary>
internal static class ChoiceScale
{
    public static (ChoiceNetwork Network, long PerPrice, long PerMass) Of(ChoiceNetwork network)
    {
        // What is asked late is asked in its own steps.
        if (network.Late.Count > 0)
        {
            return (network, 1, 1);
        }

        long price = network.Price;
        long mass = network.Mass;
        foreach (ChoiceState state in network.States.SelectMany(s => s))
        {
            price = state.Price.Aggregate(price, Common);
            mass = state.Mass.Aggregate(mass, Common);
        }

        foreach (ChoiceTable table in network.Tables)
        {
            price = table.Price.Where(p => p < ChoiceEntry.Never).Aggregate(price, Common);
            mass = (table.Mass ?? []).Where(m => m < ChoiceEntry.Never).Aggregate(mass, Common);
        }

        (price, mass) = (Math.Max(1, price), Math.Max(1, mass));
        ChoiceNetwork scaled = new(
            [.. network.States.Select(states => states.Select(s => new ChoiceState(By(s.Price, price), By(s.Mass, mass), s.Entry)).ToArray())],
            [.. network.Tables.Select(t => new ChoiceTable(t.Scope, t.ClassOf, t.Sizes, By(t.Price, price), t.Mass is null ? null : By(t.Mass, mass)))],
            network.Late, network.Price / price, network.Mass / mass);
        return (scaled, price, mass);
    }

    private static long[] By(long[] amounts, long step) => Array.ConvertAll(amounts, a => a >= ChoiceEntry.Never ? ChoiceEntry.Never : a / step);

    private static long Common(long a, long b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }
}
