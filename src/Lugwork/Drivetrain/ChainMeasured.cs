using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>Which chain measured widths can be. Made when something is first identified.</summary>
internal static class ChainMeasured
{
    /// <summary>No upper end is known: the longest that can be measured.</summary>
    private const decimal Open = 100_000m;

    public static readonly IdentificationTable<ChainSize> Table = new(
        [new("over the rivets", "caliper over both ends of a rivet, not of a joining one"), new("inner width", "caliper between the inner plates")],
        Rows(),
        c => c.FitKey);

    private static ImmutableArray<DimensionRow<ChainSize>> Rows()
    {
        DimensionRow<ChainSize>[] rows = new DimensionRow<ChainSize>[ChainSize.All.Length - 1];
        int row = 0;
        foreach (ChainSize chain in ChainSize.All)
        {
            if (!chain.Opens)
            {
                // A belt has no plates and is told by a look.
                continue;
            }

            (decimal least, decimal most) = Over(chain);
            decimal inner = chain.InnerMicrometres / 1_000m;
            rows[row++] = new(chain, [(least, most), (inner, inner)], most == Open ? "goes with no derailleur" : "");
        }

        return ImmutableArray.Create(rows);
    }

    private static (decimal Least, decimal Most) Over(ChainSize chain)
    {
        (int least, int most) = chain.OverRivets;
        (int _, int widest) = ChainSize.To8.OverRivets;
        return least > 0 ? (least / 1_000m, most / 1_000m) : ((widest - ChainSize.To8.InnerMicrometres + chain.InnerMicrometres) / 1_000m, Open);
    }
}
