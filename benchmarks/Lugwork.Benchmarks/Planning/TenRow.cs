using Lugwork.Planning;

namespace Lugwork.Benchmarks.Planning;

/// <summary>The ten best builds against one solve of the reduced model, system checks among it.</summary>
internal sealed class TenRow : IRow
{
    private const int Offers = 5_000;

    private (ChoiceNetwork Whole, ChoiceNetwork One)[] _shops = [];

    public IReadOnlyList<Claim> Claims { get; } = [new("12", "ten best builds, with all that is reduced again for ten", "one solve", 60, LimitKind.AtMostTimes)];

    public void Prove()
    {
        _shops = [.. Enumerable.Range(0, Shops.Bicycles).Select(b => Shops.Draw(b, Offers, b)).Select(s => (BuildChooser.Of(s).PlanOf(false, default).Network!, Shops.Network(s, systemChecks: true, masses: false)))];
        foreach ((ChoiceNetwork whole, ChoiceNetwork one) in _shops)
        {
            // Without what is beaten, as with it; and the first is the one solve's.
            long[] ten = Best(ChoiceDominance.Thinned(whole, 10, default)!, 10);
            if (ten.Length != 10 || !ten.SequenceEqual(Best(whole, 10)) || ten[0] != Best(one, 1)[0])
            {
                throw new InvalidOperationException($"the ten best are {string.Join(", ", ten)}");
            }
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        double[] ratios = [.. _shops.Select(shop =>
        {
            double[] taken = Timing.InTurn(9, () => Timing.Of(() => Best(ChoiceDominance.Thinned(shop.Whole, 10, default)!, 10)), () => Timing.Of(() => Best(shop.One, 1)));
            return taken[0] / taken[1];
        })];
        Array.Sort(ratios);
        return [new(ratios[ratios.Length / 2])];
    }

    private static long[] Best(ChoiceNetwork network, int count)
    {
        ChoiceSearch search = new(network, new(network, ChoiceWeights.Price, default), ChoiceWeights.Price, default);
        List<long> found = [];
        while (found.Count < count && search.Next(1_000_000) is { } next)
        {
            found.Add(next.Cost);
        }

        return [.. found];
    }
}
