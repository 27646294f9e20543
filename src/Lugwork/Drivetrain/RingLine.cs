using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Where chainrings stand, from the middle plane of the frame: measured on the bicycle, or summed from shell, spindle and ring.</summary>
/// <remarks>With one ring the chainline is that of its tooth, with two the middle between them, with three that of the middle one. Lengths are 0 to 300 mm unless it is said otherwise. D diameter of the tube, a from tube to outer face, b over both rings, mm: D/2 + a - b/2 by "Chainline measuring, mechanical advice (as quoted)"; from shell and spindle derived by arithmetic.</remarks>
public static class RingLine
{
    private const double Most = 300;

    /// <summary>What the sums rest on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.ChainlineMeasuring, Lugwork.Sources.ChainlineFormula, Lugwork.Sources.Derived];

    /// <summary>Two rings, measured at the seat tube: D/2 + a - b/2.</summary>
    /// <param name="tubeDiameter">Diameter of the seat tube where it is measured, D.</param>
    /// <param name="tubeToOuterFace">From the side of the tube to the outer face of the outer ring, a.</param>
    /// <param name="overBothRings">Over both rings, outside to outside, b.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range, or the rings would stand on the other side.</exception>
    public static Length OfTwoByTube(Length tubeDiameter, Length tubeToOuterFace, Length overBothRings) =>
        Line((Plain(tubeDiameter, nameof(tubeDiameter)) / 2) + Plain(tubeToOuterFace, nameof(tubeToOuterFace)) - (Plain(overBothRings, nameof(overBothRings)) / 2), nameof(tubeToOuterFace));

    /// <summary>One ring, or the middle one of three, measured at the seat tube: D/2 + a - t/2.</summary>
    /// <param name="tubeDiameter">Diameter of the seat tube where it is measured, D.</param>
    /// <param name="tubeToOuterFace">From the side of the tube to the outer face of the ring, a.</param>
    /// <param name="tooth">Thickness of the tooth, t.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range, or the ring would stand on the other side.</exception>
    public static Length OfOneByTube(Length tubeDiameter, Length tubeToOuterFace, Length tooth) => OfTwoByTube(tubeDiameter, tubeToOuterFace, tooth);

    /// <summary>By the shell: half its width and what the ring stands off its drive-side face.</summary>
    /// <param name="shellWidth">Width of the shell.</param>
    /// <param name="faceToRing">From the drive-side face of the shell to the middle of the tooth, outward; negative inward.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range, or the ring would stand on the other side.</exception>
    public static Length ByShell(Length shellWidth, Length faceToRing) =>
        Line((Plain(shellWidth, nameof(shellWidth)) / 2) + Given.Millimetres(faceToRing, -Most, Most, nameof(faceToRing)), nameof(faceToRing));

    /// <summary>By the spindle: its drive-side half, less what the ring stands inside of its end. A spindle longer by d moves the ring out by d/2 where it is symmetric.</summary>
    /// <param name="spindle">Length of the spindle over its ends.</param>
    /// <param name="ringInsideEnd">From the drive-side end inward to the middle of the tooth, with the crank on; negative outward. It belongs to the crank and to how far it goes on.</param>
    /// <param name="driveSideLonger">How much longer the drive-side half is than the other, -50 to 50 mm; 0 for a symmetric spindle.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range, or the ring would stand on the other side.</exception>
    public static Length BySpindle(Length spindle, Length ringInsideEnd, Length driveSideLonger = default) =>
        Line(((Plain(spindle, nameof(spindle)) + Given.Millimetres(driveSideLonger, -50, 50, nameof(driveSideLonger))) / 2) - Given.Millimetres(ringInsideEnd, -Most, Most, nameof(ringInsideEnd)), nameof(ringInsideEnd));

    /// <summary>Where each ring stands, outermost first.</summary>
    /// <param name="chainline">Chainline of the set.</param>
    /// <param name="rings">How many there are, 1 to 3.</param>
    /// <param name="spacing">From ring to ring, middle to middle, 0 to 20 mm: about 5 on the road, 7 to 8 on fat and off-road cranks. Not used with one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static ImmutableArray<Length> Rings(Length chainline, int rings, Length spacing)
    {
        double middle = Given.Millimetres(chainline, 0, Most, nameof(chainline));
        double step = Given.Millimetres(spacing, 0, 20, nameof(spacing));
        Given.Number(rings, 1, 3, nameof(rings));
        Length[] all = new Length[rings];
        for (int i = 0; i < rings; i++)
        {
            all[i] = Length.FromMillimeters(middle + ((((rings - 1) / 2.0) - i) * step));
        }

        return ImmutableArray.Create(all);
    }

    private static double Plain(Length length, string name) => Given.Millimetres(length, 0, Most, name);

    private static Length Line(double millimetres, string name) => Length.FromMillimeters(Given.Number(millimetres, 0, Most, name, "mm of chainline"));
}
