using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Sums of gears that need no teeth: between gear inches and development, speed and cadence, ranges and steps.</summary>
/// <remarks>GI gear inches, DEV development in metres, n turns of the cranks a minute, v speed in km/h: DEV = π · 0.0254 · GI by "Gear inches"; v = n · DEV · 60 / 1,000; GR gain ratio by "Mechanical Advantage: Gain Ratios"; range by "Internal gear ratios". Ranges stand with each sum; what lies beyond is refused.</remarks>
public static class Gearing
{
    /// <summary>What the sums rest on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.GearInchesPage, Lugwork.Sources.GainRatios, Lugwork.Sources.HubGearArticle];

    /// <summary>Development of a gear in inches, DEV = GI · π · 0.0254 m.</summary>
    /// <param name="gearInches">Inches, above 0, at most 1,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static Length DevelopmentOf(double gearInches) => Length.FromMillimeters(Given.Number(gearInches, double.Epsilon, 1_000, nameof(gearInches)) * Math.PI * 25.4);

    /// <summary>Gear inches of a development, DEV / (π · 0.0254 m).</summary>
    /// <param name="development">Way for one turn of the cranks, 0.001 to 1,000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static double GearInchesOf(Length development) => RollOf(development) / (Math.PI * 25.4);

    /// <summary>Speed, n · DEV.</summary>
    /// <param name="development">Way for one turn of the cranks, 0.001 to 1,000 m.</param>
    /// <param name="cadence">Turns of the cranks, 0 to 300 a minute.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static Speed SpeedAt(Length development, RotationalSpeed cadence) =>
        Speed.FromKilometersPerHour(Given.Number(cadence.RevolutionsPerMinute, 0, 300, nameof(cadence), "a minute") * RollOf(development) * 60 / 1_000_000);

    /// <summary>Cadence, v / DEV; of a wheel, with its circumference for the development.</summary>
    /// <param name="development">Way for one turn, 0.001 to 1,000 m.</param>
    /// <param name="speed">0 to 200 km/h.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static RotationalSpeed CadenceAt(Length development, Speed speed) =>
        RotationalSpeed.FromRevolutionsPerMinute(KilometresPerHour(speed) * 1_000_000 / (60 * RollOf(development)));

    /// <summary>Cadence by the gain ratio, v / (2π · L · GR).</summary>
    /// <param name="gainRatio">Ratio, no unit: way of the bicycle for the way of the pedal, above 0, at most 50.</param>
    /// <param name="crank">Crank length, 100 to 250 mm.</param>
    /// <param name="speed">0 to 200 km/h.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static RotationalSpeed CadenceAt(double gainRatio, Length crank, Speed speed) =>
        RotationalSpeed.FromRevolutionsPerMinute(KilometresPerHour(speed) * 1_000_000 / (60 * 2 * Math.PI * Crank(crank) * Given.Number(gainRatio, 0.01, 50, nameof(gainRatio))));

    /// <summary>Range, 100 · highest / lowest, per cent: one gear alone has 100.</summary>
    /// <param name="lowest">Lowest ratio, 0.001 to 100.</param>
    /// <param name="highest">Highest ratio, not below the lowest.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static double RangePercent(double lowest, double highest) =>
        100 * Given.Number(highest, Given.Number(lowest, 0.001, 100, nameof(lowest)), 100, nameof(highest)) / lowest;

    /// <summary>Step from one ratio to another, 100 · (to / from - 1), per cent; negative for a step down.</summary>
    /// <param name="from">Ratio before, 0.001 to 100.</param>
    /// <param name="to">Ratio after, 0.001 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static double StepPercent(double from, double to) =>
        100 * ((Given.Number(to, 0.001, 100, nameof(to)) / Given.Number(from, 0.001, 100, nameof(from))) - 1);

    internal static double Circumference(Length rolledCircumference) => Given.Millimetres(rolledCircumference, 300, 5_000, nameof(rolledCircumference));

    internal static double Crank(Length crank) => Given.Millimetres(crank, 100, 250, nameof(crank));

    private static double RollOf(Length development) => Given.Millimetres(development, 1, 1_000_000, nameof(development));

    private static double KilometresPerHour(Speed speed) => Given.Number(speed.KilometersPerHour, 0, 200, nameof(speed), "km/h");
}
