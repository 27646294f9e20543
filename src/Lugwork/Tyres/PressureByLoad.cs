using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>A tyre maker's usual pressure for a tyre width and a rider's weight, as published: a row of its table and one of its columns.</summary>
/// <remarks>A place to start, for tyres in general. It is offered only within the limits of tyre and rim; between rows nothing is filled in. Pressure = the cell of a width and a rider's weight, as printed; widths in mm, riders in kg, pressures in bar, by "What is the correct inflation pressure for my tire?".</remarks>
public sealed class PressureByLoad
{
    private readonly int _width;
    private readonly int _kilograms;
    private readonly double _bars;

    private PressureByLoad(int width, int kilograms, double bars) => (_width, _kilograms, _bars) = (width, kilograms, bars);

    /// <summary>Every cell, narrow tyres first, light riders first.</summary>
    public static ImmutableArray<PressureByLoad> All { get; } = Cells();

    /// <summary>Where the table comes from.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.PressureByWeight];

    /// <summary>Nominal section width of the tyre.</summary>
    public Length TyreWidth => Length.FromMillimeters(_width);

    /// <summary>Weight of the rider.</summary>
    public Mass Rider => Mass.FromKilograms(_kilograms);

    /// <summary>The published pressure.</summary>
    public Pressure Published => Pressure.FromBars(_bars);

    /// <summary>The published cell.</summary>
    /// <param name="tyreWidth">Nominal section width.</param>
    /// <param name="rider">60, 85 or 110 kg, exact to the gram.</param>
    /// <returns>The cell; null where the table has none.</returns>
    public static PressureByLoad? Find(Length tyreWidth, Mass rider)
    {
        int tenths = NumberRange.Tenths(tyreWidth);
        double grams = Math.Round(rider.Grams);
        foreach (PressureByLoad cell in All)
        {
            if (cell._width * 10 == tenths && cell._kilograms * 1_000.0 == grams)
            {
                return cell;
            }
        }

        return null;
    }

    /// <summary>The published pressure where the limits of tyre and rim allow it for certain.</summary>
    /// <param name="limits">The limits.</param>
    /// <returns>The pressure; null where it is above a limit, below the tyre's least, or a limit is not known. <see cref="PressureLimits.Check"/> says which.</returns>
    public Pressure? Within(PressureLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return limits.Check(Published).Verdict == Verdict.Fits ? Published : null;
    }

    private static ImmutableArray<PressureByLoad> Cells()
    {
        ReadOnlySpan<(int Width, double Light, double Middle, double Heavy)> rows =
        [
            (25, 6, 7, 8), (28, 5.5, 6.5, 7.5), (32, 4.5, 5.5, 6.5), (37, 4, 5, 6), (40, 3.5, 4.5, 6),
            (47, 3, 4, 5), (50, 2.5, 4, 5), (55, 2, 3, 4), (60, 2, 3, 4),
        ];
        ImmutableArray<PressureByLoad>.Builder cells = ImmutableArray.CreateBuilder<PressureByLoad>(rows.Length * 3);
        foreach ((int width, double light, double middle, double heavy) in rows)
        {
            cells.Add(new(width, 60, light));
            cells.Add(new(width, 85, middle));
            cells.Add(new(width, 110, heavy));
        }

        return cells.MoveToImmutable();
    }

    /// <summary>"28 mm, rider of 85 kg: 6.5 bar".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{_width} mm, rider of {_kilograms} kg: {_bars:0.0} bar");
}
