namespace Lugwork.Planning;

/// <summary>The postage of each seller, from what is bought of him.</summary>
internal static class CostPostage
{
    /// <summary>How the ids of these lines start.</summary>
    public const string Start = "postage:";

    /// <summary>A line for each seller of whom something is bought, in the order of their first lines. Of one who is not described it is unknown.</summary>
    public static IEnumerable<CostLine> Lines(IReadOnlyList<CostLine> lines, IReadOnlyList<CostSeller> sellers, string currency)
    {
        foreach (string name in lines.Where(IsSent).Select(l => l.Seller).Distinct(StringComparer.Ordinal))
        {
            CostSeller seller = sellers.FirstOrDefault(s => s.Name == name) ?? new(name, CostRange.Unknown);
            CostRange goods = lines.Where(l => IsSent(l) && l.Seller == name).Aggregate(CostRange.Nothing(currency), (sum, l) => sum.Plus(l.Cost));
            yield return new() { Id = Start + name, Kind = CostKind.Postage, What = $"postage of {name}", Price = Of(seller, goods) };
        }
    }

    private static bool IsSent(CostLine line) => line.Seller.Length > 0 && !line.IsOwned;

    /// <summary>Free from the sum on, before it the whole; where the sum of the goods may lie on either side, nothing up to the whole.</summary>
    private static CostRange Of(CostSeller seller, CostRange goods)
    {
        CostRange whole = seller.Postage.AsPrice();
        return seller.FreeFrom is not { } free || goods.Most < free.Amount ? whole
            : goods.Least >= free.Amount ? CostRange.Nothing(free.Currency)
            : CostRange.Ends(0, whole.Most, free.Currency);
    }
}
