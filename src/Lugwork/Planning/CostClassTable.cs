using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>Classes of what bridges cost, as data. By kind of bridge, with rows of their own where a bridge is unlike its kind.</summary>
/// <remarks>Common practice, no source: no published list of prices stands behind a row, and none gives a figure.</remarks>
public static class CostClassTable
{
    private static readonly (BridgeKind Kind, CostClass Class)[] Kinds =
    [
        (BridgeKind.MadeForBoth, CostClass.Cheap),
        (BridgeKind.EndCaps, CostClass.Moderate),
        (BridgeKind.Spacers, CostClass.Cheap),
        (BridgeKind.Shim, CostClass.Cheap),
        (BridgeKind.Adapter, CostClass.Moderate),
        (BridgeKind.ShopWork, CostClass.Dear),
    ];

    /// <summary>What every class rests on: common practice, no source.</summary>
    public static Source Basis => Sources.CommonPractice;

    /// <summary>Every bridge that a joint knows and that is bought or done, each once, in the order of the joint table: the rows of a price list.</summary>
    public static ImmutableArray<Bridge> Bridges => [.. JointTable.All.SelectMany(j => j.Relation.Bridges).Where(b => b.Kind != BridgeKind.MadeForBoth).DistinctBy(b => b.Id)];

    /// <summary>Class of a bridge.</summary>
    /// <param name="bridge">Any bridge of a joint.</param>
    public static CostClass Of(Bridge bridge)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        foreach ((string start, CostClass own) in CostClassRows.Own)
        {
            if (bridge.Id.StartsWith(start, StringComparison.Ordinal))
            {
                return own;
            }
        }

        foreach ((BridgeKind kind, CostClass of) in Kinds)
        {
            if (kind == bridge.Kind)
            {
                return of;
            }
        }

        return CostClass.NotSaid;
    }

    /// <summary>Class of a remedy of a judged joint: that of its bridge; the dearest of those that it offers as a choice; dear for shop work without a bridge; else not said.</summary>
    /// <param name="remedy">One of the remedies of the joint.</param>
    /// <param name="fit">The judged joint.</param>
    public static CostClass Of(Remedy remedy, Fit fit)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        if (remedy.Bridge is { } bridge)
        {
            return Of(bridge);
        }

        ImmutableArray<Bridge> choices = fit.Tell().Bridges;
        return remedy.Kind == RemedyKind.ShopWork ? CostClass.Dear
            : remedy.Kind != RemedyKind.BuyPart || choices.IsEmpty ? CostClass.NotSaid
            : choices.Max(Of);
    }

    /// <summary>In words: "cheap"; "price not said".</summary>
    /// <param name="of">Any class.</param>
    public static string InWords(CostClass of) => of switch
    {
        CostClass.Cheap => "cheap",
        CostClass.Moderate => "moderate",
        CostClass.Dear => "dear",
        _ => "price not said",
    };
}
