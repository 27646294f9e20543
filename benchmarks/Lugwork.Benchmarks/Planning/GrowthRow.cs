using Lugwork.Planning;

namespace Lugwork.Benchmarks.Planning;

/// <summary>How the time for the cheapest build grows with the offers, reading and collapsing them included.</summary>
internal sealed class GrowthRow : IRow
{
    private static readonly int[] OffersASlot = [50, 500, 5_000];

    private ChoiceRequest[][] _shops = [];

    public IReadOnlyList<Claim> Claims { get; } =
    [
        new("15", "cheapest build of 10 times the offers (500 a slot), read and reduced too", "itself with 50 a slot", 10, LimitKind.AtMostTimes),
        new("15", "cheapest build of 100 times the offers (5,000 a slot), read and reduced too", "itself with 50 a slot", 100, LimitKind.AtMostTimes),
    ];

    public void Prove()
    {
        _shops = [.. OffersASlot.Select(size => Enumerable.Range(0, Shops.Bicycles).Select(b => Shops.Draw(b, size, b)).ToArray())];
        foreach (ChoiceRequest request in _shops.SelectMany(s => s))
        {
            if (BuildChooser.Of(request).Cheapest().Status != ChoiceStatus.Optimal)
            {
                throw new InvalidOperationException("a shop's cheapest build was not found");
            }
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        double[] taken = Timing.InTurn(1, [.. _shops.Select(shops => (Func<double>)(() => Timing.Of(() => Array.ForEach(shops, s => BuildChooser.Of(s).Cheapest()))))]);
        return [new(taken[1] / taken[0]), new(taken[2] / taken[0])];
    }
}
