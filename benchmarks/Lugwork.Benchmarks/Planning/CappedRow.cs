using Lugwork.Planning;

namespace Lugwork.Benchmarks.Planning;

/// <summary>The cheapest build under a mass cap, exact, against SCIP and HiGHS on the same reduced model.</summary>
internal sealed class CappedRow : IRow
{
    private static readonly int[] Sizes = [50, 500, 5_000];

    private (ChoiceNetwork Network, long Cap)[][] _instances = [];

    public IReadOnlyList<Claim> Claims { get; } = [.. Sizes.Select(s => new Claim("11", $"cheapest build under a mass cap, {Shops.Slots} slots x {s:N0} offers", "best of SCIP and HiGHS on the same reduced model", s == 50 ? 1 : 5, LimitKind.AtLeastFaster))];

    private int _massTables;

    public string Note => $"Row 11: {Solvers.There("SCIP", "HIGHS")}; every cap makes the build dearer; {_massTables} tables with masses of bridges.";

    public void Prove()
    {
        _instances = [.. Sizes.Select(size => Enumerable.Range(0, Shops.Bicycles).Select(bicycle =>
        {
            ChoiceNetwork network = Shops.Network(Shops.Draw(bicycle, size, bicycle), systemChecks: true, masses: true);
            long lightest = new ChoiceElimination(network, ChoiceWeights.Mass, default).Bound;
            ChoiceElimination cheapest = new(network, ChoiceWeights.Price, default);
            long heavy = network.Cost(new ChoiceSearch(network, cheapest, ChoiceWeights.Price, default).Next(1_000_000)!.Value.Chosen).Mass;

            // A quarter above the lightest, or half way to the cheapest, so that the cap binds.
            long cap = Math.Min(lightest + (lightest / 4), (lightest + heavy) / 2);
            if (cap >= heavy || Library(network, cap) <= cheapest.Bound)
            {
                throw new InvalidOperationException($"the cap of bicycle {bicycle} with {size} offers does not bind");
            }

            _massTables += network.Tables.Count(t => t.Mass is not null);
            return (network, cap);
        }).ToArray())];
        foreach ((ChoiceNetwork network, long cap) in _instances.SelectMany(i => i))
        {
            ChoiceCapped ours = ChoiceCap.Of(network, false, cap, null, default);
            long least = ours.Bound;
            (long price, long mass) = network.Cost(ours.Chosen!);
            if (!ours.IsExact || price != least || mass > cap)
            {
                throw new InvalidOperationException("what is chosen is not what is said of it");
            }

            foreach (string solver in new[] { "SCIP", "HIGHS" })
            {
                long? peer = Solvers.Mip(solver, network, cap);
                if (peer is not null && peer != least)
                {
                    throw new InvalidOperationException($"{solver}: the library says {least}, the peer {peer}");
                }
            }
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort) => [.. _instances.Select(instances =>
    {
        double[] ratios = [.. instances.Select(i =>
        {
            double[] library = Timing.InTurn(3, () => Timing.Of(() => Library(i.Network, i.Cap)));
            double[] peers = Timing.InTurn(1,
                () => Solvers.IsThere("SCIP") ? Timing.Of(() => Solvers.Mip("SCIP", i.Network, i.Cap)) : double.MaxValue,
                () => Solvers.IsThere("HIGHS") ? Timing.Of(() => Solvers.Mip("HIGHS", i.Network, i.Cap)) : double.MaxValue);
            return peers.Min() / library[0];
        })];
        Array.Sort(ratios);
        return new Measured(ratios[ratios.Length / 2]);
    })];

    private static long Library(ChoiceNetwork network, long cap)
    {
        ChoiceCapped found = ChoiceCap.Of(network, false, cap, null, default);
        return found.IsExact ? found.Bound : throw new InvalidOperationException("the answer is a bound");
    }
}
