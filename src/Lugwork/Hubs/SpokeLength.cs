using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>Length of a spoke with a bend at the hub, from the inside of the bend to the end of the thread.</summary>
/// <remarks>
/// L = sqrt(o² + (E/2)² + (P/2)² - (E/2) P cos a) - h/2, with E effective rim diameter, P hole circle, o flange to the plane of the rim's holes,
/// h hole of the flange, a angle at the hub. Under tension a spoke stretches by about 0.6 mm and takes up about 0.2 mm of the hole, which nearly
/// makes up for h/2: builders who leave h/2 out and round down come to the same spoke.
/// Lengths in mm, by "spoke_length.txt"; stretch and hole by "Triplet lacing and spoke length (formula and corrections)".
/// </remarks>
public static class SpokeLength
{
    /// <summary>What the formula rests on.</summary>
    public static ImmutableArray<Source> Sources { get; } = [Lugwork.Sources.SpokeFormula, Lugwork.Sources.SpokeCorrections];

    /// <summary>Length by the formula, half of the hole taken off. Not rounded: see <see cref="SpokeStock"/>.</summary>
    /// <param name="rim">Effective rim diameter.</param>
    /// <param name="flange">The flange; its offset counts to the plane of the rim's holes.</param>
    /// <param name="lacing">Spokes and crossings.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rim is not at least 40 mm larger than the hole circle.</exception>
    public static Length Of(EffectiveRimDiameter rim, SpokeFlange flange, SpokeLacing lacing)
    {
        ArgumentNullException.ThrowIfNull(flange);
        return Length.FromMillimeters(Millimetres(rim, flange, flange.OffsetMillimetres, lacing));
    }

    /// <summary>From the middle of the hole in the hub to the end of the spoke: the same without half of the hole taken off.</summary>
    /// <param name="rim">Effective rim diameter.</param>
    /// <param name="flange">The flange; its offset counts to the plane of the rim's holes.</param>
    /// <param name="lacing">Spokes and crossings.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rim is not at least 40 mm larger than the hole circle.</exception>
    public static Length FromMiddleOfHole(EffectiveRimDiameter rim, SpokeFlange flange, SpokeLacing lacing) =>
        Of(rim, flange, lacing) + Length.FromMillimeters(flange.HoleMillimetres / 2);

    internal static double Millimetres(EffectiveRimDiameter rim, SpokeFlange flange, double offset, SpokeLacing lacing)
    {
        ArgumentNullException.ThrowIfNull(rim);
        ArgumentNullException.ThrowIfNull(lacing);
        NumberRange.Checked(rim.Millimetres, flange.CircleMillimetres + 40, 900, "mm: the rim stands at least 20 mm outside the holes of the flange", nameof(rim));
        double outer = rim.Millimetres / 2;
        double inner = flange.CircleMillimetres / 2;
        double square = (offset * offset) + (outer * outer) + (inner * inner) - (2 * outer * inner * Math.Cos(lacing.Degrees * Math.PI / 180));
        return Math.Sqrt(square) - (flange.HoleMillimetres / 2);
    }
}
