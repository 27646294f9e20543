using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>How far the bicycle can lean until the lower pedal meets the ground.</summary>
/// <remarks>Lean = atan((h - c - p / 2) / e), degrees: h bottom bracket above the ground, c crank, p height of the pedal, e its outer edge from the middle plane, mm; at least 25 degrees by "16 CFR 1512.17 Other requirements (ground and toe clearance)". The width of the tyre is left out, which is on the safe side: a round tyre rolls outward under a leaning bicycle.</remarks>
public static class GroundClearance
{
    private const double LeastDegrees = ClearanceSums.LeastLeanDegrees;
    private const double Doubt = ClearanceSums.HeightDoubtMillimetres;

    /// <summary>The least that the regulation asks for, 25 degrees, pedal lowest and level, no training wheels.</summary>
    public static Angle Least => Angle.FromDegrees(LeastDegrees);

    /// <summary>How far the height of a bottom bracket may be off where it was worked out of labels and a chart, 5 mm: so near the least it is measured. Our own bound, no source.</summary>
    public static Length HeightDoubt => Length.FromMillimeters(Doubt);

    /// <summary>Where the least comes from; the lean itself is trigonometry.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.ClearanceRegulation];

    /// <summary>Lean at which the pedal meets the ground: atan((bottom-bracket height - crank - half the pedal's height) / outer edge).</summary>
    /// <param name="bottomBracketHeight">From the ground, 50 to 600 mm.</param>
    /// <param name="crank">Length of the crank, 100 to 250 mm.</param>
    /// <param name="pedalHeight">Height of the pedal's body, 5 to 80 mm.</param>
    /// <param name="outerEdge">Outer edge of the pedal from the bicycle's middle plane, 100 to 300 mm.</param>
    /// <returns>Negative where the pedal would already be below the ground.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static Angle Lean(Length bottomBracketHeight, Length crank, Length pedalHeight, Length outerEdge)
    {
        double height = NumberRange.Millimetres(bottomBracketHeight, 50, 600, nameof(bottomBracketHeight));
        double arm = NumberRange.Millimetres(crank, 100, 250, nameof(crank));
        double pedal = NumberRange.Millimetres(pedalHeight, 5, 80, nameof(pedalHeight));
        double edge = NumberRange.Millimetres(outerEdge, 100, 300, nameof(outerEdge));
        return Angle.FromDegrees(double.RadiansToDegrees(Math.Atan2(height - arm - (pedal / 2), edge)));
    }

    /// <summary>Holds the lean against the regulation.</summary>
    /// <param name="bottomBracketHeight">From the ground, 50 to 600 mm.</param>
    /// <param name="crank">Length of the crank, 100 to 250 mm.</param>
    /// <param name="pedalHeight">Height of the pedal's body, 5 to 80 mm.</param>
    /// <param name="outerEdge">Outer edge of the pedal from the bicycle's middle plane, 100 to 300 mm.</param>
    /// <returns>Unsafe below 25 degrees; needs measuring where a bottom bracket lower by <see cref="HeightDoubt"/> would be; otherwise fits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static SumCheck Check(Length bottomBracketHeight, Length crank, Length pedalHeight, Length outerEdge)
    {
        double lean = Lean(bottomBracketHeight, crank, pedalHeight, outerEdge).Degrees;
        double lower = double.RadiansToDegrees(Math.Atan(Math.Tan(double.DegreesToRadians(lean)) - (Doubt / outerEdge.Millimeters)));
        (Verdict verdict, string near) = lean < LeastDegrees ? (Verdict.Unsafe, "")
            : lower < LeastDegrees ? (Verdict.NeedsMeasuring, string.Create(CultureInfo.InvariantCulture, $", and {Doubt:0} mm less height (our own bound, no source) would be below it: measure it on the bicycle"))
            : (Verdict.Fits, "");
        return new SumCheck("pedal-clearance", verdict, string.Create(CultureInfo.InvariantCulture, $"the pedal meets the ground at a lean of {lean:0.0} degrees; 25 is the least{near}"), verdict == Verdict.Fits ? "" : "shorter cranks, a thinner pedal, larger wheels or a longer fork, as the frame maker allows", Cautions.GroundAndToe, [Lugwork.Sources.ClearanceRegulation])
            .Comparing(("lean", lean, "degrees"), ("least", LeastDegrees, "degrees"));
    }
}
