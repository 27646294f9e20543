using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>Trail and what belongs to it, from head angle, fork offset and the radius of the front wheel. Exact; the radius, not the diameter, which one published formula prints by mistake.</summary>
/// <remarks>Head angle 30 to 110 degrees, offset -120 to 120 mm (behind the axis where negative), radius 100 to 500 mm; anything else is refused. R radius, o offset, a head angle: trail = (R cos a - o) / sin a, mm, by "Bicycle and motorcycle geometry"; the flop factor by "What is wheel flop? (in Japanese)".</remarks>
public static class SteeringGeometry
{
    /// <summary>What the formulas rest on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.GeometryArticle];

    /// <summary>What says that the flop factor is an index and no way.</summary>
    public static Source FlopSource => Lugwork.Sources.FlopExplained;

    /// <summary>Trail on the ground: (radius x cos(head angle) - offset) / sin(head angle).</summary>
    /// <param name="headAngle">Angle of the steering axis to the ground.</param>
    /// <param name="forkOffset">From the steering axis to the axle, square to the axis.</param>
    /// <param name="frontRadius">Radius of the front wheel with its tyre.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static Length Trail(Angle headAngle, Length forkOffset, Length frontRadius) =>
        Length.FromMillimeters(MechanicalTrail(headAngle, forkOffset, frontRadius).Millimeters / Math.Sin(Head(headAngle)));

    /// <summary>Trail square to the steering axis: radius x cos(head angle) - offset.</summary>
    /// <param name="headAngle">Angle of the steering axis to the ground.</param>
    /// <param name="forkOffset">From the steering axis to the axle, square to the axis.</param>
    /// <param name="frontRadius">Radius of the front wheel with its tyre.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static Length MechanicalTrail(Angle headAngle, Length forkOffset, Length frontRadius) =>
        Length.FromMillimeters((NumberRange.Millimetres(frontRadius, 100, 500, nameof(frontRadius)) * Math.Cos(Head(headAngle))) - NumberRange.Millimetres(forkOffset, -120, 120, nameof(forkOffset)));

    /// <summary>The offset that gives a trail: radius x cos(head angle) - trail x sin(head angle).</summary>
    /// <param name="headAngle">Angle of the steering axis to the ground.</param>
    /// <param name="trail">Trail on the ground, -400 to 400 mm.</param>
    /// <param name="frontRadius">Radius of the front wheel with its tyre.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static Length OffsetForTrail(Angle headAngle, Length trail, Length frontRadius)
    {
        double wanted = NumberRange.Millimetres(trail, -400, 400, nameof(trail));
        double radius = NumberRange.Millimetres(frontRadius, 100, 500, nameof(frontRadius));
        (double sin, double cos) = Math.SinCos(Head(headAngle));
        return Length.FromMillimeters((radius * cos) - (wanted * sin));
    }

    /// <summary>Flop factor: trail x sin(head angle) x cos(head angle).</summary>
    /// <remarks>An index for comparing two bicycles. Pages disagree on what it means; the axle of a turned wheel really comes down by a millimetre or so where the factor says fifteen.</remarks>
    /// <param name="trail">Trail on the ground, -400 to 400 mm.</param>
    /// <param name="headAngle">Angle of the steering axis to the ground.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static Length FlopFactor(Length trail, Angle headAngle)
    {
        double length = NumberRange.Millimetres(trail, -400, 400, nameof(trail));
        (double sin, double cos) = Math.SinCos(Head(headAngle));
        return Length.FromMillimeters(length * sin * cos);
    }

    private static double Head(Angle headAngle) => double.DegreesToRadians(NumberRange.Degrees(headAngle, 30, 110, nameof(headAngle)));
}
