using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>What a judged joint costs: its bridges by the price list. Never where it does not fit.</summary>
internal sealed class ChoicePrices
{
    private readonly Dictionary<string, (long Price, long Mass)> _bridges;
    private readonly ImmutableHashSet<string> _there;
    private readonly bool _allowsUnpriced;
    private readonly bool _allowsMeasuring;

    public ChoicePrices(ImmutableArray<ChoiceBridgePrice> bridges, IEnumerable<string> there, bool allowsUnpriced, bool allowsMeasuring)
    {
        _bridges = new(StringComparer.Ordinal);
        _there = [.. there];
        _allowsUnpriced = allowsUnpriced;
        _allowsMeasuring = allowsMeasuring;
        foreach (ChoiceBridgePrice bridge in bridges)
        {
            if (bridge.Price.Amount < 0)
            {
                throw new ArgumentException($"the bridge {bridge.BridgeId} has a negative price");
            }

            if (!_bridges.TryAdd(bridge.BridgeId, (bridge.Price.Steps, bridge.Mass is { } mass ? Milligrams(mass, bridge.BridgeId) : 0)))
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
        (long Price, long Mass) most = (-1, 0);
        joint.VisitSpread(row, (_, outcome) =>
        {
            if (outcome.Verdict == Verdict.NeedsPart)
            {
                ImmutableArray<Bridge> bridges = [.. new[] { outcome.Bridge, outcome.Second }.Concat(outcome.Reason?.Offers ?? []).OfType<Bridge>().Where(b => b.Kind != BridgeKind.MadeForBoth).Distinct()];
                (long Price, long Mass) cost = Sum(joint, bridges);
                if (cost.Price > most.Price)
                {
                    most = cost;
                    dearest = bridges;
                }
            }

            return true;
        });
        return dearest;
    }

    /// <summary>What one bridge of a joint costs; nothing where it is there already or where none has to be priced, never where it has no price.</summary>
    public (long Price, long Mass) Of(Joint joint, Bridge bridge) =>
        _there.Contains($"{joint.Id}:{bridge.Id}") ? default
        : _bridges.TryGetValue(bridge.Id, out (long Price, long Mass) priced) ? priced
        : _allowsUnpriced ? default
        : (ChoiceEntry.Never, ChoiceEntry.Never);

    public bool IsPriced(Joint joint, Bridge bridge) => _bridges.ContainsKey(bridge.Id) || _there.Contains($"{joint.Id}:{bridge.Id}");

    private (long Price, long Mass) OfBridges(Joint joint, in CandidateRow row) => Sum(joint, BridgesOf(joint, row));

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
