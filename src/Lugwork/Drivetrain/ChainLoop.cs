using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Chain round one ring and one sprocket, without anything added: the exact sum, the standard one of roller chains, and the way back to the distance between the axles.</summary>
/// <remarks>
/// F teeth in front, R at the rear, C from the middle of the bottom bracket to the middle of the rear axle, p = 12.7 mm. Exact, on pitch circles:
/// r = p / (2 sin(π / teeth)); b = asin((r1 - r2) / C); N = 2 √(C² - (r1 - r2)²) / p + F (1/2 + b/π) + R (1/2 - b/π).
/// Standard: N = 2C/p + (F + R)/2 + ((F - R)/2π)² p/C. Both agree to 0.015 of a pitch from 380 mm on, with 20 to 60 teeth in front and 9 to 52 at the rear. Teeth are 6 to 200; C is above r1 + r2 and at most 5,000 mm.
/// Standard by "Chain length page (formula)"; the exact one is derived from the pitch circles.
/// </remarks>
public static class ChainLoop
{
    private const double Longest = 5_000;

    /// <summary>What the sums rest on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.RollerChainTextbook, Lugwork.Sources.RollerChainPage, Lugwork.Sources.Derived];

    /// <summary>Exact length of the closed loop.</summary>
    /// <param name="centreDistance">Between the axles, straight: the effective chainstay.</param>
    /// <param name="ring">Teeth in front.</param>
    /// <param name="sprocket">Teeth at the rear.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range, or the two would touch.</exception>
    public static ChainLength Exact(Length centreDistance, int ring, int sprocket) =>
        ChainLength.OfPitches(ExactPitches(Centre(centreDistance, ring, sprocket), ring, sprocket));

    /// <summary>Length of the closed loop by the standard formula of roller chains.</summary>
    /// <param name="centreDistance">Between the axles, straight.</param>
    /// <param name="ring">Teeth in front.</param>
    /// <param name="sprocket">Teeth at the rear.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range, or the two would touch.</exception>
    public static ChainLength ByRollerChainFormula(Length centreDistance, int ring, int sprocket)
    {
        double centre = Centre(centreDistance, ring, sprocket);
        double difference = (ring - sprocket) / (2 * Math.PI);
        return ChainLength.OfPitches((2 * centre / Given.PitchMillimetres) + ((ring + sprocket) / 2.0) + (difference * difference * Given.PitchMillimetres / centre));
    }

    /// <summary>Distance between the axles at which a loop is tight, exact: the inverse of <see cref="Exact"/>.</summary>
    /// <param name="chain">The loop, not rounded.</param>
    /// <param name="ring">Teeth in front.</param>
    /// <param name="sprocket">Teeth at the rear.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range, or the chain is too short or too long for any distance.</exception>
    public static Length CentreDistance(ChainLength chain, int ring, int sprocket)
    {
        (double low, double high) = (Touching(Given.Teeth(ring, nameof(ring)), Given.Teeth(sprocket, nameof(sprocket))), Longest);
        Given.Number(chain.Pitches, ExactPitches(low, ring, sprocket), ExactPitches(high, ring, sprocket), nameof(chain), "pitches");
        while (high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            (low, high) = ExactPitches(middle, ring, sprocket) < chain.Pitches ? (middle, high) : (low, middle);
        }

        return Length.FromMillimeters((low + high) / 2);
    }

    /// <summary>Distance between the axles by the standard formula: z = N - (F + R)/2; C = p/4 · (z + √(z² - 8 ((F - R)/2π)²)).</summary>
    /// <param name="chain">The loop, not rounded.</param>
    /// <param name="ring">Teeth in front.</param>
    /// <param name="sprocket">Teeth at the rear.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range, or the chain is too short.</exception>
    public static Length CentreDistanceByRollerChainFormula(ChainLength chain, int ring, int sprocket)
    {
        double difference = (Given.Teeth(ring, nameof(ring)) - Given.Teeth(sprocket, nameof(sprocket))) / (2 * Math.PI);
        double left = chain.Pitches - ((ring + sprocket) / 2.0);
        double root = (left * left) - (8 * difference * difference);
        return left > 0 && root >= 0
            ? Length.FromMillimeters(Given.PitchMillimetres / 4 * (left + Math.Sqrt(root)))
            : throw new ArgumentOutOfRangeException(nameof(chain), chain.Pitches, "the chain does not reach round both");
    }

    /// <summary>Pitches that a longer distance between the axles asks for, 2 ΔC / p: from the position in which the chain was measured to the point of the travel where it is longest.</summary>
    /// <param name="growth">Growth of the distance, -500 to 500 mm. For a suspended frame take it from the maker, or let the air out and move the rear through its travel.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static double PitchesForGrowth(Length growth) => 2 * Given.Millimetres(growth, -500, 500, nameof(growth)) / Given.PitchMillimetres;

    /// <summary>Pitches that more teeth ask for, to the first order: half a pitch for each, in front or at the rear.</summary>
    /// <param name="moreTeeth">Teeth added, less those taken away; -200 to 200.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static double PitchesForTeeth(int moreTeeth) => Given.Number(moreTeeth, -200, 200, nameof(moreTeeth)) / 2;

    internal static double Centre(Length centreDistance, int ring, int sprocket) =>
        Given.Millimetres(centreDistance, Touching(Given.Teeth(ring, nameof(ring)), Given.Teeth(sprocket, nameof(sprocket))), Longest, nameof(centreDistance));

    internal static double Radius(int teeth) => Given.PitchMillimetres / (2 * Math.Sin(Math.PI / teeth));

    internal static double ExactPitches(double centre, int ring, int sprocket)
    {
        double difference = Radius(ring) - Radius(sprocket);
        double turn = Math.Asin(difference / centre) / Math.PI;
        return (2 * Math.Sqrt((centre * centre) - (difference * difference)) / Given.PitchMillimetres) + (ring * (0.5 + turn)) + (sprocket * (0.5 - turn));
    }

    private static double Touching(int ring, int sprocket) => Radius(ring) + Radius(sprocket);
}
