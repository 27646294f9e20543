using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>What a judged joint costs: its bridges by the price list. Never where it does not fit.</summary>
internal sealed class ChoicePrices
{
    private readonly Dictionary<string, (long Price, long? Mass)> _bridges;
    private readonly ImmutableHashSet<string> _there;
    private readonly bool _allowsUnpriced;
    private readonly bool _allowsMeasuring;
    private readonly bool _masses;

    /// <param name="bridges">The price list.</param>
    /// <param name="there">Ids of the small parts that are there: they cost nothing.</param>
    /// <param name="allowsUnpriced">A bridge without a price counts as nothing; else it is never taken.</param>
    /// <param name="allowsMeasuring">A joint that needs measuring costs nothing; else it is never taken.</param>
    /// <param name="masses">Masses count: a bridge of unknown mass is never taken. Else no bridge has a mass.</param>
    public ChoicePrices(ImmutableArray<ChoiceBridgePrice> bridges, IEnumerable<string> there, bool allowsUnpriced, bool allowsMeasuring, bool masses)
    {
        _bridges = new(StringComparer.Ordinal);
        _there = [.. there];
        _allowsUnpriced = allowsUnpriced;
        _allowsMeasuring = allowsMeasuring;
        _masses = masses;
        foreach (ChoiceBridgePrice bridge in bridges)
        {
            if (bridge.Price.Amount < 0)
            {
                throw new ArgumentException($"the bridge {bridge.BridgeId} has a negative price");
            }

            if (!_bridges.TryAdd(bridge.BridgeId, (bridge.Price.Steps, bridge.Mass is { } mass ? Milligrams(mass, bridge.BridgeId) : null)))
            {
                throw new ArgumentException($"the bridge {bridge.BridgeId} is priced twice");
            }
        }
    }

    /// <summary>Whole milligrams.</summary>
    public static long Milligrams(UnitsNet.Mass mass, string what)
    {
        double milligrams = mass.Milligrams;
        return milligrams is >= 0 and <= 1e12 ? (long)Math.Round(milligrams) : throw new ArgumentException($"{what} has a mass that is none: it is from 0 to 1,000 t");
    }

    public (long Price, long Mass) Of(Joint joint, in CandidateRow row) => joint.Common(row) switch
    {
        Verdict.Fits => default,
        Verdict.NeedsPart => OfBridges(joint, row),
        Verdict.NeedsMeasuring when _allowsMeasuring => default,
        _ => (ChoiceEntry.Never, ChoiceEntry.Never),
    };

    /// <summary>The bridges of a joint that needs a part. Where it is open which, that of the dearest completion: the price is then enough for each.</summary>
    public ImmutableArray<Bridge> BridgesOf(Joint joint, in CandidateRow row)
    {
        ImmutableArray<Bridge> dearest = [];
        long most = -1;
        Visit(joint, row, bridges =>
        {
            long price = Sum(joint, bridges).Price;
            (most, dearest) = price > most ? (price, bridges) : (most, dearest);
        });
        return dearest;
    }

    /// <summary>What one bridge of a joint costs; no price where it is there already or where none has to be priced, never where it has no price, or no mass where masses count.</summary>
    public (long Price, long Mass) Of(Joint joint, Bridge bridge)
    {
        bool listed = _bridges.TryGetValue(bridge.Id, out (long Price, long? Mass) priced);
        long? price = _there.Contains($"{joint.Id}:{bridge.Id}") ? 0 : listed ? priced.Price : _allowsUnpriced ? 0 : null;
        long? mass = _masses ? priced.Mass : 0;
        return price is { } known && mass is { } weighed ? (known, weighed) : (ChoiceEntry.Never, ChoiceEntry.Never);
    }

    /// <summary>No joint costs more than all of its bridges together.</summary>
    public (long Price, long Mass) MostOf(Joint joint) => Sum(joint, [.. joint.Relation.Bridges.DistinctBy(b => b.Id).Where(b => Of(joint, b).Price < ChoiceEntry.Never)]);

    public bool IsPriced(Joint joint, Bridge bridge) => _bridges.ContainsKey(bridge.Id) || _there.Contains($"{joint.Id}:{bridge.Id}");

    /// <summary>The dearest completion and the heaviest, which need not be the same: both figures are then enough for each.</summary>
    private (long Price, long Mass) OfBridges(Joint joint, in CandidateRow row)
    {
        (long Price, long Mass) most = default;
        Visit(joint, row, bridges =>
        {
            (long price, long mass) = Sum(joint, bridges);
            most = (Math.Max(most.Price, price), Math.Max(most.Mass, mass));
        });
        return most;
    }

    /// <summary>Each completion's bridges.</summary>
    private static void Visit(Joint joint, in CandidateRow row, Action<ImmutableArray<Bridge>> visit) => joint.VisitSpread(row, (_, outcome) =>
    {
        if (outcome.Verdict == Verdict.NeedsPart)
        {
            visit([.. new[] { outcome.Bridge, outcome.Second }.Concat(outcome.Reason?.Offers ?? []).OfType<Bridge>().Where(b => b.Kind != BridgeKind.MadeForBoth).Distinct()]);
        }

        return true;
    });

    private (long Price, long Mass) Sum(Joint joint, ImmutableArray<Bridge> bridges)
    {
        (long Price, long Mass) sum = default;
        foreach (Bridge bridge in bridges)
        {
            (long price, long mass) = Of(joint, bridge);
            if (price == ChoiceEntry.Never)
            {
                return (ChoiceEntry.Never, ChoiceEntry.Never);
            }

            sum = (sum.Price + price, sum.Mass + mass);
        }

        return sum;
    }
}
