using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>Bead seats by diameter and by tape.</summary>
internal static class RoundMeasure
{
    private const decimal Pi = 3.1415926535897932384626433833m;

    public static ImmutableArray<MeasuredDimension> Dimensions { get; } =
    [
        new("diameter", "across the rim from bead seat to bead seat, where the tyre's edge stands"),
        new("circumference", "a thin tape once round the bead seat"),
    ];

    /// <summary>Diameter and circumference, rounded outwards to a thousandth of a millimetre.</summary>
    public static ImmutableArray<(decimal Least, decimal Most)?> Of((decimal Least, decimal Most) diameter) =>
    [
        diameter,
        (decimal.Floor(diameter.Least * Pi * 1000) / 1000, decimal.Ceiling(diameter.Most * Pi * 1000) / 1000),
    ];
}
