using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>How the tensions of the two sides of a wheel stand to each other when the rim is pulled to neither side.</summary>
/// <remarks>
/// Tl / Tr = (or / Lr) / (ol / Ll), o flange to the plane of the rim's holes, L spoke length; equal numbers of spokes and equal crossings on both
/// sides. It gives no tension: how tight the tighter side may be is the rim maker's figure.
/// By "How do you determine that difference in tension?".
/// </remarks>
public static class SpokeTension
{
    /// <summary>What the formula rests on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.SpokeTensions];

    /// <summary>Ratio of the tension of the left to that of the right: 0.5 is half as tight on the left.</summary>
    /// <param name="leftOffset">Left flange to the plane of the rim's holes, 1 to 150 mm.</param>
    /// <param name="leftSpoke">Length of a left spoke, 10 to 500 mm, not below its offset.</param>
    /// <param name="rightOffset">Right flange to the plane of the rim's holes, 1 to 150 mm.</param>
    /// <param name="rightSpoke">Length of a right spoke, 10 to 500 mm, not below its offset.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range or no number.</exception>
    public static double LeftOverRight(Length leftOffset, Length leftSpoke, Length rightOffset, Length rightSpoke) =>
        Slant(rightOffset, rightSpoke, nameof(rightOffset), nameof(rightSpoke)) / Slant(leftOffset, leftSpoke, nameof(leftOffset), nameof(leftSpoke));

    private static double Slant(Length offset, Length spoke, string offsetName, string spokeName)
    {
        double across = NumberRange.Millimetres(offset, 1, 150, offsetName);
        return across / NumberRange.Millimetres(spoke, Math.Max(10, across), 500, spokeName);
    }
}
