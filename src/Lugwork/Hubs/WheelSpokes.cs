using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>The spokes of a wheel, left and right. Immutable.</summary>
/// <remarks>
/// Each side by <see cref="SpokeLength"/> with its own flange and crossings. An offset rim has the line of its holes off the middle: towards the
/// left flange by s, so that ol = o - s on the left and or = o + s on the right.
/// All in mm; the length by "spoke_length.txt", the tensions by "How do you determine that difference in tension?".
/// </remarks>
public sealed class WheelSpokes
{
    private readonly double _leftOffset;
    private readonly double _rightOffset;
    private readonly double _left;
    private readonly double _right;

    private WheelSpokes(double leftOffset, double left, double rightOffset, double right) =>
        (_leftOffset, _left, _rightOffset, _right) = (leftOffset, left, rightOffset, right);

    /// <summary>Left spokes by the formula, not rounded.</summary>
    public Length Left => Length.FromMillimeters(_left);

    /// <summary>Right spokes by the formula, not rounded.</summary>
    public Length Right => Length.FromMillimeters(_right);

    /// <summary>Left flange to the plane of the rim's holes.</summary>
    public Length LeftOffset => Length.FromMillimeters(_leftOffset);

    /// <summary>Right flange to the plane of the rim's holes.</summary>
    public Length RightOffset => Length.FromMillimeters(_rightOffset);

    /// <summary>Ratio of the tension of the left to that of the right; null where the two sides cross unequally often, for which the formula is not made.</summary>
    public double? TensionLeftOverRight { get; private init; }

    /// <summary>The warning that goes with building a wheel.</summary>
    public static Caution Caution => Cautions.WheelBuilding;

    /// <summary>What the sums rest on.</summary>
    public static ImmutableArray<Source> Sources { get; } = [Lugwork.Sources.SpokeFormula, Lugwork.Sources.SpokeCorrections, Lugwork.Sources.SpokeTensions, Lugwork.Sources.HubMeasuring];

    /// <summary>Both sides of a wheel with a plain or an offset rim.</summary>
    /// <param name="rim">Effective rim diameter.</param>
    /// <param name="left">Left flange, its offset to the middle of the wheel.</param>
    /// <param name="right">Right flange, its offset to the middle of the wheel.</param>
    /// <param name="leftLacing">Spokes of the wheel, and crossings of the left side.</param>
    /// <param name="rightLacing">Spokes of the wheel, and crossings of the right side.</param>
    /// <param name="holesToTheLeft">How far the line of the rim's holes lies to the left of the middle, -20 to 20 mm: 0 for a plain rim, negative to the right.</param>
    /// <exception cref="ArgumentOutOfRangeException">The two lacings are of different wheels, or the offset of the holes is out of range or leaves a flange less than 1 mm to its side.</exception>
    public static WheelSpokes Of(EffectiveRimDiameter rim, SpokeFlange left, SpokeFlange right, SpokeLacing leftLacing, SpokeLacing rightLacing, Length holesToTheLeft)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        ArgumentNullException.ThrowIfNull(leftLacing);
        ArgumentNullException.ThrowIfNull(rightLacing);
        ArgumentOutOfRangeException.ThrowIfNotEqual(rightLacing.Spokes, leftLacing.Spokes, nameof(rightLacing));
        double shift = NumberRange.Millimetres(holesToTheLeft, -20, 20);
        NumberRange.Checked(shift, 1 - right.OffsetMillimetres, left.OffsetMillimetres - 1, "mm", nameof(holesToTheLeft));
        (double leftOffset, double rightOffset) = (left.OffsetMillimetres - shift, right.OffsetMillimetres + shift);
        WheelSpokes made = new(leftOffset, SpokeLength.Millimetres(rim, left, leftOffset, leftLacing), rightOffset, SpokeLength.Millimetres(rim, right, rightOffset, rightLacing));
        return leftLacing.Crosses != rightLacing.Crosses ? made : new(leftOffset, made._left, rightOffset, made._right)
        {
            TensionLeftOverRight = rightOffset / made._right / (leftOffset / made._left),
        };
    }

    /// <summary>Both sides alike laced, plain rim.</summary>
    /// <param name="rim">Effective rim diameter.</param>
    /// <param name="left">Left flange.</param>
    /// <param name="right">Right flange.</param>
    /// <param name="lacing">Spokes and crossings.</param>
    /// <exception cref="ArgumentOutOfRangeException">A flange is less than 1 mm to its side.</exception>
    public static WheelSpokes Of(EffectiveRimDiameter rim, SpokeFlange left, SpokeFlange right, SpokeLacing lacing)
    {
        ArgumentNullException.ThrowIfNull(lacing);
        return Of(rim, left, right, lacing, lacing, Length.Zero);
    }

    /// <summary>"left 260.6 mm, right 258.9 mm".</summary>
    public override string ToString() => FormattableString.Invariant($"left {_left:0.0} mm, right {_right:0.0} mm");
}
