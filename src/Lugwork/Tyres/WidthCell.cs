using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>What one cell of the 2006 table says of a tyre width on a crochet rim.</summary>
public enum WidthCell
{
    /// <summary>The table has no such column or row.</summary>
    NotListed = 0,

    /// <summary>Listed and not allowed.</summary>
    NotAllowed,

    /// <summary>Allowed since 2006.</summary>
    Since2006,

    /// <summary>Allowed before 2006 too.</summary>
    Before2006,
}

/// <summary>The 2006 table of tyre and rim widths, cell by cell.</summary>
/// <remarks>The source kept the marks of each row but not their columns. 13 and 15 mm agree with a second source; 17 mm in number; 19 mm and wider are reconstructed.</remarks>
public static class WidthCells2006
{
    private static readonly int[] Tyres = [18, 20, 23, 25, 28, 32, 35, 37, 40, 44, 47, 50, 54, 57, 60, 62];

    // x before 2006, n since 2006, - not allowed.
    private static readonly (int Rim, string Cells)[] Rows =
    [
        (13, "xxxx------------"),
        (15, "--xxxx----------"),
        (17, "---xxxxxnnnn----"),
        (19, "----xxxxxxxnnnnn"),
        (21, "------xxxxxxnnnn"),
        (23, "-------xxxxxnnnn"),
        (25, "---------xxxxxxn"),
        (27, "----------nnnnnn"),
        (29, "------------nnnn"),
    ];

    /// <summary>Where the table comes from.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.WidthMatrix2006];

    /// <summary>What the table says.</summary>
    /// <param name="innerMillimetres">Inner width of the rim, as listed: 13, 15 and so on to 29 mm.</param>
    /// <param name="tyreMillimetres">Nominal section width, as listed: 18 to 62 mm.</param>
    public static WidthCell Of(int innerMillimetres, int tyreMillimetres)
    {
        int column = Array.IndexOf(Tyres, tyreMillimetres);
        foreach ((int rim, string cells) in Rows)
        {
            if (rim == innerMillimetres && column >= 0)
            {
                return cells[column] switch
                {
                    'x' => WidthCell.Before2006,
                    'n' => WidthCell.Since2006,
                    _ => WidthCell.NotAllowed,
                };
            }
        }

        return WidthCell.NotListed;
    }

    /// <summary>Was this row put together again from a count of its marks, without a second source?</summary>
    /// <param name="innerMillimetres">Inner width of the rim, whole millimetres.</param>
    public static bool IsReconstructed(int innerMillimetres) => innerMillimetres >= 19;
}
