using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>How many spokes a wheel has, and how many others of its side each one crosses. Immutable.</summary>
/// <remarks>
/// Half of the spokes go to each side and the holes are evenly spaced; a wheel with two spokes on one side to one on the other is not covered.
/// <para>Angle at the hub: a = 360 X / (n / 2) degrees, X crossings, n spokes of the wheel.</para>
/// By "spoke_length.txt".
/// </remarks>
public sealed class SpokeLacing
{
    private SpokeLacing(int spokes, int crosses)
    {
        Spokes = spokes;
        Crosses = crosses;
    }

    /// <summary>How many spokes the whole wheel has.</summary>
    public int Spokes { get; }

    /// <summary>How many others of its side each spoke crosses; 0 is radial.</summary>
    public int Crosses { get; }

    /// <summary>Between the hole in the hub and the hole in the rim, seen along the axle: 0 for radial, 180 degrees at most.</summary>
    public Angle AngleAtHub => Angle.FromDegrees(Degrees);

    /// <summary>A rule of thumb (common practice, no source): up to n / 9 crossings the heads of neighbouring spokes do not lie on each other.</summary>
    public bool IsUsual => Crosses * 9 <= Spokes;

    /// <summary>The formula.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.SpokeFormula];

    internal double Degrees => 720.0 * Crosses / Spokes;

    /// <summary>Makes a lacing.</summary>
    /// <param name="spokes">How many the whole wheel has: even, 8 to 96.</param>
    /// <param name="crosses">How many others each crosses, 0 to a quarter of the spokes; beyond it a spoke would run backwards.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range, or the spokes are odd.</exception>
    public static SpokeLacing Of(int spokes, int crosses)
    {
        NumberRange.Checked(spokes, 8, 96, "spokes");
        ArgumentOutOfRangeException.ThrowIfNotEqual(spokes % 2, 0, nameof(spokes));
        NumberRange.Checked(crosses, 0, spokes / 4, "crossings");
        return new(spokes, crosses);
    }

    /// <summary>"36 spokes, 3 crosses".</summary>
    public override string ToString() => FormattableString.Invariant($"{Spokes} spokes, {(Crosses == 0 ? "radial" : Crosses == 1 ? "1 cross" : $"{Crosses} crosses")}");
}
