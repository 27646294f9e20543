using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>Length and angle of a stem, and where they put the bar. The default has no length.</summary>
/// <remarks>Length from steerer centre to bar centre. Along the steerer the figures are the stem's own; against the ground they need the head angle. Length l, angle a: l cos a from the steerer, l sin a along it, mm, by "Help Needed With Stem Math".</remarks>
public readonly record struct StemShape
{
    private readonly double _length;

    private StemShape(double length, StemAngle angle)
    {
        _length = length;
        Angle = angle;
    }

    /// <summary>What the figures rest on: trigonometry that a published sum agrees with.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.StemMath];

    /// <summary>From steerer centre to bar centre.</summary>
    public Length Length => Length.FromMillimeters(_length);

    /// <summary>Its angle.</summary>
    public StemAngle Angle { get; }

    /// <summary>How far the bar stands before the steerer, square to it: length x cos(angle).</summary>
    public Length FromSteerer => Length.FromMillimeters(_length * Math.Cos(Angle.Radians));

    /// <summary>How far the bar stands above the middle of the clamp, along the steerer: length x sin(angle).</summary>
    public Length AlongSteerer => Length.FromMillimeters(_length * Math.Sin(Angle.Radians));

    /// <summary>A stem.</summary>
    /// <param name="length">Steerer centre to bar centre, 0 to 200 mm.</param>
    /// <param name="angle">Its angle.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is out of range.</exception>
    public static StemShape Of(Length length, StemAngle angle) => new(NumberRange.Millimetres(length, 0, 200, nameof(length)), angle);

    /// <summary>How far the bar stands before the middle of the clamp, level.</summary>
    /// <param name="headAngle">45 to 90 degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public Length Forward(Angle headAngle) => Length.FromMillimeters(_length * Math.Cos(Angle.AboveHorizon(headAngle).Radians));

    /// <summary>How far the bar stands above the middle of the clamp, upright.</summary>
    /// <param name="headAngle">45 to 90 degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public Length Up(Angle headAngle) => Length.FromMillimeters(_length * Math.Sin(Angle.AboveHorizon(headAngle).Radians));

    /// <summary>Turned over.</summary>
    public StemShape Flipped => new(_length, Angle.Flipped);

    /// <summary>"110 mm -6".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{_length:0.##} mm {Angle}");
}
