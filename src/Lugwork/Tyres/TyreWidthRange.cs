using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>The tyre widths that an edition gives for one inner rim width: a row of its table.</summary>
public sealed class TyreWidthRange
{
    private readonly int _inner;
    private readonly int _least;
    private readonly int _most;

    private TyreWidthRange(WidthEdition edition, int inner, int least, int most, bool reconstructed = false)
    {
        Edition = edition;
        IsReconstructed = reconstructed;
        (_inner, _least, _most) = (inner, least, most);
    }

    /// <summary>Every row, by edition and inner width.</summary>
    public static ImmutableArray<TyreWidthRange> All { get; } =
    [
        new(WidthEdition.Before2006, 13, 18, 25), new(WidthEdition.Before2006, 15, 23, 32), new(WidthEdition.Before2006, 17, 25, 37),
        new(WidthEdition.Before2006, 19, 28, 47, true), new(WidthEdition.Before2006, 21, 35, 50, true), new(WidthEdition.Before2006, 23, 37, 50, true),
        new(WidthEdition.Before2006, 25, 44, 60, true), new(WidthEdition.Before2006, 27, 0, 0, true), new(WidthEdition.Before2006, 29, 0, 0, true),
        new(WidthEdition.Etrto2006, 13, 18, 25), new(WidthEdition.Etrto2006, 15, 23, 32), new(WidthEdition.Etrto2006, 17, 25, 50),
        new(WidthEdition.Etrto2006, 19, 28, 62, true), new(WidthEdition.Etrto2006, 21, 35, 62, true), new(WidthEdition.Etrto2006, 23, 37, 62, true),
        new(WidthEdition.Etrto2006, 25, 44, 62, true), new(WidthEdition.Etrto2006, 27, 47, 62, true), new(WidthEdition.Etrto2006, 29, 54, 62, true),
        new(WidthEdition.Etrto2022, 17, 20, 54), new(WidthEdition.Etrto2022, 19, 22, 63), new(WidthEdition.Etrto2022, 21, 25, 65), new(WidthEdition.Etrto2022, 23, 25, 65),
        new(WidthEdition.Etrto2022, 25, 28, 83), new(WidthEdition.Etrto2022, 28, 40, 83), new(WidthEdition.Etrto2022, 30, 47, 99),
        new(WidthEdition.WheelMaker, 17, 23, 40), new(WidthEdition.WheelMaker, 19, 25, 45), new(WidthEdition.WheelMaker, 21, 28, 50), new(WidthEdition.WheelMaker, 23, 30, 53),
        new(WidthEdition.WheelMaker, 25, 38, 60), new(WidthEdition.WheelMaker, 28, 57, 66), new(WidthEdition.WheelMaker, 30, 60, 71), new(WidthEdition.WheelMaker, 36, 66, 76),
        new(WidthEdition.WheelMaker, 40, 71, 83), new(WidthEdition.WheelMaker, 80, 97, 122),
        new(WidthEdition.TyreMaker, 17, 38, 38), new(WidthEdition.TyreMaker, 27, 38, 38),
    ];

    /// <summary>Whose row it is.</summary>
    public WidthEdition Edition { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source => Edition.Source;

    /// <summary>The source keeps the number of marks in this row but lost their columns: placed by assuming no gaps.</summary>
    public bool IsReconstructed { get; }

    /// <summary>Inner width of the rim.</summary>
    public Length InnerWidth => Length.FromMillimeters(_inner);

    /// <summary>Narrowest tyre; null where the edition has no tyre for this rim.</summary>
    public Length? Least => _least == 0 ? null : Length.FromMillimeters(_least);

    /// <summary>Widest tyre; null where the edition has no tyre for this rim.</summary>
    public Length? Most => _most == 0 ? null : Length.FromMillimeters(_most);

    /// <summary>The row of an edition.</summary>
    /// <param name="edition">The edition.</param>
    /// <param name="innerMillimetres">Inner width, whole millimetres, as the table lists it.</param>
    /// <returns>The row; null where the edition does not list that width.</returns>
    public static TyreWidthRange? Of(WidthEdition edition, int innerMillimetres)
    {
        ArgumentNullException.ThrowIfNull(edition);
        foreach (TyreWidthRange row in All)
        {
            if (row.Edition == edition && row._inner == innerMillimetres)
            {
                return row;
            }
        }

        return null;
    }

    /// <summary>Is a tyre inside the row?</summary>
    /// <param name="tyreMillimetres">Nominal section width, whole millimetres.</param>
    public bool Holds(int tyreMillimetres) => _least > 0 && tyreMillimetres >= _least && tyreMillimetres <= _most;

    /// <summary>"ETRTO 2022, 19 mm: 22 to 63 mm".</summary>
    public override string ToString() => _least == 0
        ? FormattableString.Invariant($"{Edition.TradeName}, {_inner} mm: none")
        : FormattableString.Invariant($"{Edition.TradeName}, {_inner} mm: {_least} to {_most} mm");
}
