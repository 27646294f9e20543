using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>The inner rim width on which tyres of a width are measured, since January 2020. On a wider rim the tyre is wider than its number.</summary>
/// <remarks>Measuring rim = the row of the tyre's width, mm, by "2020 ETRTO standards for bike tires".</remarks>
public sealed class MeasuringRim
{
    private readonly int _from;
    private readonly int _to;
    private readonly int _inner;

    private MeasuringRim(int from, int to, int inner, bool crochet = false)
    {
        (_from, _to, _inner) = (from, to, inner);
        Designation = FormattableString.Invariant($"{inner}{(crochet ? "C" : "")}");
    }

    /// <summary>Every row, narrow tyres first.</summary>
    public static ImmutableArray<MeasuringRim> All { get; } =
    [
        new(18, 21, 15, true), new(22, 24, 17, true), new(25, 28, 19, true), new(29, 34, 21, true), new(35, 46, 23), new(47, 57, 25),
        new(58, 65, 30), new(66, 71, 35), new(72, 83, 45), new(84, 113, 76), new(114, 132, 94),
    ];

    /// <summary>Where the table comes from.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.MeasuringRims2020];

    /// <summary>As it is printed: "19C", "30".</summary>
    public string Designation { get; }

    /// <summary>Narrowest tyre.</summary>
    public Length NarrowestTyre => Length.FromMillimeters(_from);

    /// <summary>Widest tyre.</summary>
    public Length WidestTyre => Length.FromMillimeters(_to);

    /// <summary>Inner width of the rim.</summary>
    public Length InnerWidth => Length.FromMillimeters(_inner);

    /// <summary>The rim on which a tyre is measured.</summary>
    /// <param name="tyreWidth">Nominal section width, 18 to 132 mm, in whole millimetres.</param>
    /// <exception cref="ArgumentOutOfRangeException">No row has that width.</exception>
    public static MeasuringRim For(Length tyreWidth) => For(NumberRange.Whole(tyreWidth, 18, 132));

    internal static MeasuringRim For(int tyreMillimetres)
    {
        foreach (MeasuringRim row in All)
        {
            if (tyreMillimetres >= row._from && tyreMillimetres <= row._to)
            {
                return row;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(tyreMillimetres), tyreMillimetres, "a tyre is 18 to 132 mm wide");
    }

    /// <summary>"25 to 28 mm on 19C".</summary>
    public override string ToString() => FormattableString.Invariant($"{_from} to {_to} mm on {Designation}");
}
