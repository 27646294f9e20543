using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>A headset whose bearings hold the steerer at an angle to the head tube. The default is none.</summary>
/// <remarks>
/// Both bearings sit beside the head tube's axis by a shift: tan(angle) = (upper shift + lower shift) / distance of the bearing centres. The steering axis crosses
/// the head tube's where the shifts say. Cups of a fixed shift give less angle in a longer head tube; cups with tilted seats are made for one range of lengths.
/// Derived by arithmetic: no published worked example was found. The sum says nothing of whether head tube, cups and steerer take each other.
/// </remarks>
public readonly record struct AngleHeadset
{
    private AngleHeadset(double slacker, double pivot)
    {
        SlackerDegrees = slacker;
        PivotMillimetres = pivot;
    }

    /// <summary>No angle headset.</summary>
    public static AngleHeadset None => default;

    /// <summary>What the sum rests on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.Derived];

    /// <summary>By how much it makes the steering axis slacker; negative where it makes it steeper.</summary>
    public Angle Slacker => Angle.FromDegrees(SlackerDegrees);

    /// <summary>Where the axes cross, above the head tube's lower end.</summary>
    public Length PivotAboveLowerEnd => Length.FromMillimeters(PivotMillimetres);

    internal double SlackerDegrees { get; }

    internal double PivotMillimetres { get; }

    /// <summary>A headset of a stated angle.</summary>
    /// <param name="slacker">-3 to 3 degrees; positive makes the steering axis slacker.</param>
    /// <param name="pivotAboveLowerEnd">Where the axes cross, above the head tube's lower end: -60 to 460 mm. With the angle in the upper cup alone it is at the lower bearing, shared alike it is half way.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static AngleHeadset Of(Angle slacker, Length pivotAboveLowerEnd) =>
        new(NumberRange.Degrees(slacker, -3, 3, nameof(slacker)), NumberRange.Millimetres(pivotAboveLowerEnd, -60, 460, nameof(pivotAboveLowerEnd)));

    /// <summary>A headset by the shift of its bearings.</summary>
    /// <param name="upperShift">How far the upper bearing sits behind the head tube's axis, -10 to 10 mm.</param>
    /// <param name="lowerShift">How far the lower bearing sits before it, -10 to 10 mm.</param>
    /// <param name="bearingDistance">From bearing centre to bearing centre, 40 to 500 mm.</param>
    /// <param name="lowerBearing">Middle of the lower bearing above the head tube's lower end, -60 to 60 mm; negative in a cup below it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range, or the angle is.</exception>
    /// <exception cref="ArgumentException">The shifts put the bearings beside the axis without turning it.</exception>
    public static AngleHeadset OfShifts(Length upperShift, Length lowerShift, Length bearingDistance, Length lowerBearing)
    {
        double upper = NumberRange.Millimetres(upperShift, -10, 10, nameof(upperShift));
        double lower = NumberRange.Millimetres(lowerShift, -10, 10, nameof(lowerShift));
        double distance = NumberRange.Millimetres(bearingDistance, 40, 500, nameof(bearingDistance));
        double bearing = NumberRange.Millimetres(lowerBearing, -60, 60, nameof(lowerBearing));
        double total = upper + lower;
        return total != 0 ? Of(Angle.FromDegrees(double.RadiansToDegrees(Math.Atan2(total, distance))), Length.FromMillimeters(bearing + (distance * lower / total)))
            : lower == 0 ? None
            : throw new ArgumentException("shifts of one size to one side move the axis without turning it; that is no angle headset", nameof(lowerShift));
    }

    /// <summary>The shift of both bearings together that an angle asks for: distance x tan(angle).</summary>
    /// <param name="slacker">-3 to 3 degrees.</param>
    /// <param name="bearingDistance">From bearing centre to bearing centre, 40 to 500 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static Length ShiftFor(Angle slacker, Length bearingDistance) =>
        Length.FromMillimeters(NumberRange.Millimetres(bearingDistance, 40, 500, nameof(bearingDistance)) * Math.Tan(double.DegreesToRadians(NumberRange.Degrees(slacker, -3, 3, nameof(slacker)))));

    /// <summary>"1.5 degrees slacker".</summary>
    public override string ToString() => SlackerDegrees == 0 ? "none" : string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(SlackerDegrees):0.##} degrees {(SlackerDegrees > 0 ? "slacker" : "steeper")}");
}
