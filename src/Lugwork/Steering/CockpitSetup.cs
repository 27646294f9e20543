using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>What stands between frame and bar: headset cap, spacers, stem and the rise of the bar; says where the middle of the bar comes to.</summary>
/// <remarks>
/// From the middle of the head tube's top, along the steering axis up to the middle of the stem's clamp, then along the stem, then the bar's rise straight up. Bar height
/// and reach are counted from the bottom bracket like stack and reach of the frame. Backsweep and the reach of drop bars come on top of it.
/// x = reach - (cap + spacers + clamp / 2) cos(head angle) + length cos(90 - head angle + angle); y = stack + (cap + spacers + clamp / 2) sin(head angle) + length sin(90 - head angle + angle) + rise.
/// Kept as numbers: two are equal where their figures are.
/// By "Help Needed With Stem Math".
/// </remarks>
public sealed record CockpitSetup
{
    private readonly double _stack;
    private readonly double _reach;
    private readonly double _head;
    private readonly double _cap;
    private readonly double _spacers;
    private readonly double _clamp = 40;
    private readonly double _rise;

    /// <summary>What the sum rests on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.StemMath];

    /// <summary>Stack of the frame, 200 to 1,000 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public required Length Stack { get => Length.FromMillimeters(_stack); init => _stack = NumberRange.Millimetres(value, 200, 1_000, nameof(Stack)); }

    /// <summary>Reach of the frame, 100 to 800 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public required Length Reach { get => Length.FromMillimeters(_reach); init => _reach = NumberRange.Millimetres(value, 100, 800, nameof(Reach)); }

    /// <summary>Angle of the steering axis, 45 to 90 degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public required Angle HeadAngle { get => Angle.FromDegrees(_head); init => _head = NumberRange.Degrees(value, 45, 90, nameof(HeadAngle)); }

    /// <summary>Height of the headset above the head tube, 0 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length UpperStack { get => Length.FromMillimeters(_cap); init => _cap = NumberRange.Millimetres(value, 0, 100, nameof(UpperStack)); }

    /// <summary>Spacers below the stem, 0 to 200 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length SpacersBelow { get => Length.FromMillimeters(_spacers); init => _spacers = NumberRange.Millimetres(value, 0, 200, nameof(SpacersBelow)); }

    /// <summary>Height of the stem at the steerer, 0 to 200 mm; 40 unless said otherwise.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length StemClamp { get => Length.FromMillimeters(_clamp); init => _clamp = NumberRange.Millimetres(value, 0, 200, nameof(StemClamp)); }

    /// <summary>The stem.</summary>
    public required StemShape Stem { get; init; }

    /// <summary>Rise of the bar, turned so that it rises straight up, -100 to 200 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length BarRise { get => Length.FromMillimeters(_rise); init => _rise = NumberRange.Millimetres(value, -100, 200, nameof(BarRise)); }

    /// <summary>Middle of the bar before the bottom bracket.</summary>
    public Length BarReach => Length.FromMillimeters(_reach - (Up * Math.Cos(HeadRadians)) + Stem.Forward(HeadAngle).Millimeters);

    /// <summary>Middle of the bar above the bottom bracket.</summary>
    public Length BarStack => Length.FromMillimeters(_stack + (Up * Math.Sin(HeadRadians)) + Stem.Up(HeadAngle).Millimeters + _rise);

    private double Up => _cap + _spacers + (_clamp / 2);

    private double HeadRadians => double.DegreesToRadians(_head);

    /// <summary>What another setup does to the bar: how far it comes forward and up.</summary>
    /// <param name="other">The other one.</param>
    public BarMove To(CockpitSetup other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new(other.BarReach.Millimeters - BarReach.Millimeters, other.BarStack.Millimeters - BarStack.Millimeters);
    }

    /// <summary>The spacers under which another stem leaves the bar as high as it is.</summary>
    /// <param name="stem">The other stem, of the same clamp height.</param>
    /// <returns>Negative where no spacer is low enough: then the bar comes to stand higher whatever is taken out.</returns>
    public Length SpacersForSameHeight(StemShape stem) =>
        Length.FromMillimeters(_spacers + ((Stem.Up(HeadAngle).Millimeters - stem.Up(HeadAngle).Millimeters) / Math.Sin(HeadRadians)));

    /// <summary>"bar 472 mm forward and 668 mm up from the bottom bracket".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"bar {BarReach.Millimeters:0.#} mm forward and {BarStack.Millimeters:0.#} mm up from the bottom bracket");
}
