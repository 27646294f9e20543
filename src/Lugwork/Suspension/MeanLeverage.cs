using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Suspension;

/// <summary>Mean leverage ratio of a rear suspension: wheel travel over shock stroke. Immutable.</summary>
/// <remarks>LR = T / s, T wheel travel, s stroke. Most frames change their ratio through the travel, so that only the whole travel comes out exactly; between, every length is an estimate. All in mm, by "Garage Files: How to Calculate Leverage Ratios".</remarks>
public sealed class MeanLeverage
{
    private readonly double _travel;
    private readonly double _stroke;

    private MeanLeverage(double travel, double stroke) => (_travel, _stroke) = (travel, stroke);

    /// <summary>Travel of the rear wheel.</summary>
    public Length WheelTravel => Length.FromMillimeters(_travel);

    /// <summary>Stroke of the shock.</summary>
    public Length Stroke => Length.FromMillimeters(_stroke);

    /// <summary>Millimetres of wheel for each millimetre of shock.</summary>
    public double Ratio => _travel / _stroke;

    /// <summary>What the formula rests on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.LeverageColumn];

    /// <summary>Puts travel and stroke together.</summary>
    /// <param name="wheelTravel">T, 20 to 300 mm, not below the stroke.</param>
    /// <param name="stroke">s, 10 to 150 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range or no number.</exception>
    public static MeanLeverage Of(Length wheelTravel, Length stroke)
    {
        double shaft = NumberRange.Millimetres(stroke, 10, 150);
        return new(NumberRange.Millimetres(wheelTravel, Math.Max(20, shaft), 300), shaft);
    }

    /// <summary>Travel of the wheel for a part of the stroke, or another stroke: T' = s' LR.</summary>
    /// <param name="stroke">s', 0 to 150 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is out of range or no number.</exception>
    public Length TravelFor(Length stroke) => Length.FromMillimeters(NumberRange.Millimetres(stroke, 0, 150) * _travel / _stroke);

    /// <summary>Stroke for a travel of the wheel, the inverse: s' = T' / LR.</summary>
    /// <param name="wheelTravel">T', 0 to 500 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is out of range or no number.</exception>
    public Length StrokeFor(Length wheelTravel) => Length.FromMillimeters(NumberRange.Millimetres(wheelTravel, 0, 500) * _stroke / _travel);

    /// <summary>"150 mm of travel from 55 mm of stroke: 2.73 to 1".</summary>
    public override string ToString() => FormattableString.Invariant($"{_travel:0.#} mm of travel from {_stroke:0.#} mm of stroke: {Ratio:0.00} to 1");
}
