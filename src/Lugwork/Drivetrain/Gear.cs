using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>One gear: a ring, a sprocket and, inside a hub, its ratio. Equal by its teeth; two pairs of teeth with one ratio are two gears.</summary>
/// <remarks>
/// G = F / R · i, with F teeth in front, R teeth at the rear and i the ratio inside the hub. Teeth are 6 to 200. What is asked for beside the gear names its
/// convention: gear inches take the outside diameter of the tyre, development the circumference as it is rolled out on the road (about 1 % less than the outside
/// diameter gives, as the tyre is pressed flat).
/// Gear inches by "Gear inches", the gain ratio by "Mechanical Advantage: Gain Ratios", the ratio inside a hub by "Drive ratios of bicycle hub gears (workbook, improper fractions)".
/// </remarks>
public sealed record Gear
{
    /// <summary>Makes a gear.</summary>
    /// <param name="ring">Teeth in front, 6 to 200.</param>
    /// <param name="sprocket">Teeth at the rear, 6 to 200.</param>
    /// <param name="hub">Ratio inside the hub; direct drive where it is left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is out of range.</exception>
    public Gear(int ring, int sprocket, HubRatio hub = default)
    {
        Ring = Given.Teeth(ring, nameof(ring));
        Sprocket = Given.Teeth(sprocket, nameof(sprocket));
        Hub = hub;
    }

    /// <summary>Teeth in front.</summary>
    public int Ring { get; }

    /// <summary>Teeth at the rear.</summary>
    public int Sprocket { get; }

    /// <summary>Ratio inside the hub.</summary>
    public HubRatio Hub { get; }

    /// <summary>Ratio G: turns of the wheel for one turn of the cranks.</summary>
    public double Ratio => (double)Over / Under;

    private long Over => (long)Ring * Hub.Over;

    private long Under => (long)Sprocket * Hub.Under;

    /// <summary>Gear inches, GI = G · D / 25.4: the diameter of a wheel that goes as far without gears. It is no distance; the distance is π times as long.</summary>
    /// <param name="tyreDiameter">Outside diameter over the tyre, 100 to 1,500 mm. A nominal 27 in instead of a true 26.2 in makes every gear 3 % higher.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public double GearInches(Length tyreDiameter) => Ratio * Given.Millimetres(tyreDiameter, 100, 1_500, nameof(tyreDiameter)) / 25.4;

    /// <summary>Development: the way for one turn of the cranks, G · C.</summary>
    /// <param name="rolledCircumference">Way of the wheel for one turn, rolled out under load, 300 to 5,000 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public Length Development(Length rolledCircumference) => Length.FromMillimeters(Ratio * Gearing.Circumference(rolledCircumference));

    /// <summary>Gain ratio, G · (D / 2) / L: the way of the bicycle for the way of the pedal. The same in every unit.</summary>
    /// <param name="tyreRadius">Outside radius of the wheel over the tyre, 50 to 750 mm.</param>
    /// <param name="crank">Crank length, 100 to 250 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range.</exception>
    public double GainRatio(Length tyreRadius, Length crank) =>
        Ratio * Given.Millimetres(tyreRadius, 50, 750, nameof(tyreRadius)) / Gearing.Crank(crank);

    /// <summary>Speed at a cadence, n · G · C.</summary>
    /// <param name="cadence">Turns of the cranks, 0 to 300 a minute.</param>
    /// <param name="rolledCircumference">Way of the wheel for one turn, rolled out under load, 300 to 5,000 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public Speed SpeedAt(RotationalSpeed cadence, Length rolledCircumference) => Gearing.SpeedAt(Development(rolledCircumference), cadence);

    /// <summary>Cadence at a speed, v / (G · C).</summary>
    /// <param name="speed">0 to 200 km/h.</param>
    /// <param name="rolledCircumference">Way of the wheel for one turn, rolled out under load, 300 to 5,000 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public RotationalSpeed CadenceAt(Speed speed, Length rolledCircumference) => Gearing.CadenceAt(Development(rolledCircumference), speed);

    /// <summary>"50/11", with a hub "40/18 x 31/24".</summary>
    public override string ToString() => Hub.IsDirect ? FormattableString.Invariant($"{Ring}/{Sprocket}") : FormattableString.Invariant($"{Ring}/{Sprocket} x {Hub}");

    /// <summary>Which of two ratios is higher, exactly.</summary>
    internal static int Compare(Gear first, Gear second) => ((Int128)first.Over * second.Under).CompareTo((Int128)second.Over * first.Under);
}
