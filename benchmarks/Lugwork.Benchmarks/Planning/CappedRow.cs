using System.Globalization;
using Lugwork.Planning;

namespace Lugwork.Benchmarks.Planning;

/// <summary>The cheapest build under a mass cap, exact, against SCIP and HiGHS on the same reduced model.</summary>
internal sealed class CappedRow : IRow
{
    /// <summary>What a peer may take for one model, in milliseconds. Where neither ends within it, it counts as the peers' time, which is less than what they take.</summary>
    private const long MostMilliseconds = 20_000;

    /// <summary>Shops of the smallest size that are drawn for the proof alone.</summary>
    private const int Proven = 7;

    private static readonly (int Offers, int Shops)[] Sizes = [(50, 7), (500, 3), (5_000, 3)];

    /// <summary>A peer that took longer than this many nanoseconds is not timed again: its time stands in all repeats.</summary>
    private const double Long = 2e9;

    private readonly Dictionary<ChoiceNetwork, (double Nanoseconds, bool Ended)> _timed = [];
    private (ChoiceNetwork Network, long Cap)[][] _instances = [];
    private int _caps;
    private int _tooLow;
    private int _massTables;

    public IReadOnlyList<Claim> Claims { get; } = [.. Sizes.Select(s => new Claim("11", $"cheapest build under a mass cap, {Shops.Slots} slots x {s.Offers:N0} offers", "best of SCIP and HiGHS on the same reduced model", s.Offers == 50 ? 1 : 5, LimitKind.AtLeastFaster))];

    public string Note => string.Create(CultureInfo.InvariantCulture, $"Row 11: {_caps} capped answers equal to CP-SAT's, {_tooLow} of them that the cap is too low; {_massTables} tables with masses of bridges; {Solvers.There("SCIP", "HIGHS")}; of {_timed.Count} models a peer ended {_timed.Values.Count(t => t.Ended)} in time, each with our answer.");

    public void Prove()
    {
        for (int seed = 0; seed < Proven; seed++)
        {
            Against(Shops.Draw(seed % Shops.Bicycles, Sizes[0].Offers, 1_000 + seed), seed);
        }

        _instances = [.. Sizes.Select(size => Enumerable.Range(0, size.Shops).Select(bicycle =>
        {
            ChoiceNetwork network = Shops.Network(Shops.Draw(bicycle, size.Offers, bicycle), systemChecks: true, masses: true);
            (long lightest, long least, long heavy) = Ends(network);

            // A quarter above the lightest, or half way to the cheapest, so that the cap binds.
            long cap = Math.Min(lightest + (lightest / 4), (lightest + heavy) / 2);
            if (cap >= heavy || Library(network, cap) <= least)
            {
                throw new InvalidOperationException($"the cap of bicycle {bicycle} with {size.Offers} offers does not bind");
            }

            _massTables += network.Tables.Count(t => t.Mass is not null);
            return (network, cap);
        }).ToArray())];
    }

    /// <summary>Caps from one below the lightest build to one below the cheapest, each equal to what CP-SAT makes of the model before anything that is beaten was dropped.</summary>
    private void Against(ChoiceRequest request, int seed)
    {
        ChoiceNetwork whole = ChoiceReducer.Of(BuildChooser.Of(request).PlanOf(true, default).Model, masses: true) ?? throw new InvalidOperationException("nothing fits together");
        (ChoiceNetwork network, long perPrice, long perMass) = ChoiceScale.Of(ChoiceDominance.Thinned(whole, 1, default)!);
        (long lightest, _, long heavy) = Ends(network);
        foreach (long cap in (long[])[lightest - 1, lightest, lightest + ((heavy - lightest) / 50), lightest + ((heavy - lightest) / 10), lightest + ((heavy - lightest) / 4), lightest + ((heavy - lightest) / 2), heavy - 1])
        {
            ChoiceCapped ours = ChoiceCap.Of(network, false, cap, null, default);
            long? peer = Solvers.CpSat(whole, cap * perMass);
            if ((ours.LeastCapped is null ? Library(network, cap) * perPrice : null) != peer || (ours.LeastCapped ?? lightest) != lightest)
            {
                throw new InvalidOperationException($"shop {seed}, cap {cap}: the library says {ours}, CP-SAT {peer}");
            }

            _caps++;
            _tooLow += peer is null ? 1 : 0;
        }
    }

    /// <summary>The least mass, the least price, and the mass of the cheapest.</summary>
    private static (long Lightest, long Least, long Heavy) Ends(ChoiceNetwork network)
    {
        ChoiceElimination cheapest = new(network, ChoiceWeights.Price, default);
        return (new ChoiceElimination(network, ChoiceWeights.Mass, default).Bound, cheapest.Bound,
            network.Cost(new ChoiceSearch(network, cheapest, ChoiceWeights.Price, default).Next(1_000_000)!.Value.Chosen).Mass);
    }

    public IReadOnlyList<Measured> Measure(Effort effort) => [.. _instances.Select(instances =>
    {
        (double Ratio, bool IsAtLeast)[] ratios = [.. instances.Select(i =>
        {
            double library = Timing.InTurn(3, () => Timing.Of(() => Library(i.Network, i.Cap)))[0];
            (double peer, bool ended) = Peer(i.Network, i.Cap);
            return (peer / library, !ended);
        }).Order()];

        // A ratio that may be greater makes the middle one greater only from below.
        int middle = ratios.Length / 2;
        return new Measured(ratios[middle].Ratio) { IsAtLeast = ratios[..(middle + 1)].Any(r => r.IsAtLeast) };
    })];

    /// <summary>The time of the faster peer; one that takes longer than the other is stopped.</summary>
    private (double Nanoseconds, bool Ended) Peer(ChoiceNetwork network, long cap)
    {
        if (_timed.TryGetValue(network, out (double Nanoseconds, bool Ended) known) && known.Nanoseconds > Long)
        {
            return known;
        }

        (double best, bool any) = (MostMilliseconds * 1e6, false);
        foreach (string name in (string[])["HIGHS", "SCIP"])
        {
            (bool ended, long? least) = (false, null);
            double taken = Solvers.IsThere(name) ? Timing.Of(() => (ended, least) = Solvers.Mip(name, network, cap, (long)Math.Ceiling(best / 1e6))) : double.MaxValue;
            if (ended && least != Library(network, cap))
            {
                throw new InvalidOperationException($"{name}: the library says {Library(network, cap)}, the peer {least}");
            }

            (best, any) = ended ? (Math.Min(best, taken), true) : (best, any);
        }

        _timed[network] = (best, any);
        return (best, any);
    }

    /// <summary>The least price, added up anew from what was chosen.</summary>
    private static long Library(ChoiceNetwork network, long cap)
    {
        ChoiceCapped found = ChoiceCap.Of(network, false, cap, null, default);
        (long price, long mass) = network.Cost(found.Chosen!);
        return found.IsExact && price == found.Bound && mass <= cap ? price : throw new InvalidOperationException("what is chosen is not what is said of it, or a bound");
    }
}
