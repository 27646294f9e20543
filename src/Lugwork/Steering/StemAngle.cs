using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>Angle of a stem, kept against the square of the steerer: 0 stands square to it, above 0 rises, as on the label +6 or -17.</summary>
/// <remarks>-60 to 60 degrees. Three ways of saying it are in use and each has a factory of its own. The default stands square to the steerer. Square = steerer - 90 = horizon - (90 - head angle), degrees, by "Stem angle explained (in Japanese)".</remarks>
public readonly record struct StemAngle
{
    private const double Most = 60;

    private StemAngle(double degrees) => Degrees = degrees;

    /// <summary>What the conversions rest on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.StemAngles];

    /// <summary>Against the square of the steerer; above 0 it rises.</summary>
    public Angle FromSquare => Angle.FromDegrees(Degrees);

    /// <summary>Against the steerer, as some catalogues say it: 84 for -6, 96 for +6.</summary>
    public Angle FromSteerer => Angle.FromDegrees(90 + Degrees);

    internal double Degrees { get; }

    internal double Radians => double.DegreesToRadians(Degrees);

    /// <summary>An angle as labels print it: +6 rises, -17 falls from the square of the steerer.</summary>
    /// <param name="angle">-60 to 60 degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static StemAngle OfSquare(Angle angle) => new(NumberRange.Degrees(angle, -Most, Most, nameof(angle)));

    /// <summary>An angle against the steerer: 84 falls by 6, 96 rises by 6. A catalogue that says "84" of a stem that can be turned over means 84 one way and 96 the other.</summary>
    /// <param name="angle">30 to 150 degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static StemAngle OfSteerer(Angle angle) => new(NumberRange.Degrees(angle, 90 - Most, 90 + Most, nameof(angle)) - 90);

    /// <summary>An angle against the ground on a bicycle of some head angle: it is 90 less the head angle above the one of the label.</summary>
    /// <param name="angle">Above level, degrees.</param>
    /// <param name="headAngle">45 to 90 degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">An angle is out of range, or the stem's own is.</exception>
    public static StemAngle OfHorizon(Angle angle, Angle headAngle)
    {
        double head = NumberRange.Degrees(headAngle, 45, 90, nameof(headAngle));
        return new(NumberRange.Degrees(angle, 90 - head - Most, 90 - head + Most, nameof(angle)) - (90 - head));
    }

    /// <summary>How far the stem stands above level: 90 - head angle + angle.</summary>
    /// <param name="headAngle">45 to 90 degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public Angle AboveHorizon(Angle headAngle) => Angle.FromDegrees(90 - NumberRange.Degrees(headAngle, 45, 90, nameof(headAngle)) + Degrees);

    /// <summary>Turned over: what rose falls.</summary>
    public StemAngle Flipped => new(-Degrees);

    /// <summary>"+6" or "-17", against the square of the steerer.</summary>
    public override string ToString() => Degrees.ToString("+0.##;-0.##;0", CultureInfo.InvariantCulture);
}
