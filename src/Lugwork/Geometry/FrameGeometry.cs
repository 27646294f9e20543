using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>A frame as a figure, standing on level ground on its wheels: points, angles and what follows from them, and what they become with another fork, wheel or headset.</summary>
/// <remarks>
/// Axes: x forward, y up, from the bottom bracket. A change is worked out exactly: the frame is rigid and turns until both wheels stand on the ground,
/// so that a change and its opposite end where they began and the order of changes does not matter. Tyres are taken as round and stiff, a suspension fork as
/// long as it is said to be: for the bicycle under its rider give the lengths as they are then. Immutable.
/// Trail and flop by "Bicycle and motorcycle geometry", the rest is trigonometry; lengths in mm, angles in degrees, ranges by <see cref="FrameFigure"/>.
/// </remarks>
public sealed class FrameGeometry
{
    private readonly FrameState _s;
    private readonly FramePoint _front;

    private FrameGeometry(FrameState settled)
    {
        _s = settled;
        _front = settled.FrontAxle;
    }

    /// <summary>What trail and flop rest on; the rest is trigonometry.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.GeometryArticle];

    /// <summary>From the bottom bracket forward to the head tube's top.</summary>
    public Length Reach => _s.Top.X;

    /// <summary>From the bottom bracket up to the head tube's top.</summary>
    public Length Stack => _s.Top.Y;

    /// <summary>Angle of the steering axis to the ground: of the head tube, unless an angle headset is in it.</summary>
    public Angle HeadAngle => Angle.FromDegrees(HeadDegrees);

    /// <summary>Angle of the head tube itself to the ground.</summary>
    public Angle HeadTubeAngle => Angle.FromDegrees(double.RadiansToDegrees(_s.HeadTubeAngle));

    /// <summary>Angle of the effective seat tube to the ground; null where the chart does not tell it.</summary>
    public Angle? SeatAngle => double.IsNaN(_s.SeatAngle) ? null : Angle.FromDegrees(double.RadiansToDegrees(_s.SeatAngle));

    /// <summary>From the head tube's top back to the effective seat tube; null without a seat angle. Reach + stack / tan(seat angle).</summary>
    public Length? EffectiveTopTube => double.IsNaN(_s.SeatAngle) ? null : Length.FromMillimeters(_s.Top.XMillimetres + (_s.Top.YMillimetres / Math.Tan(_s.SeatAngle)));

    /// <summary>From the bottom bracket to the rear axle, straight.</summary>
    public Length Chainstay => Length.FromMillimeters(double.Hypot(_s.RearAxle.XMillimetres, _s.RearAxle.YMillimetres));

    /// <summary>From the bottom bracket to the rear axle, level.</summary>
    public Length ChainstayHorizontal => Length.FromMillimeters(-_s.RearAxle.XMillimetres);

    /// <summary>How far the bottom bracket stands below the rear axle; negative above it.</summary>
    public Length BottomBracketDrop => _s.RearAxle.Y;

    /// <summary>How far the bottom bracket stands below the front axle; as below the rear one where both wheels are of one size.</summary>
    public Length FrontDrop => _front.Y;

    /// <summary>From the ground to the bottom bracket: rear radius less drop.</summary>
    public Length BottomBracketHeight => Length.FromMillimeters(_s.RearRadius - _s.RearAxle.YMillimetres);

    /// <summary>From axle to axle, level.</summary>
    public Length Wheelbase => Length.FromMillimeters(_front.XMillimetres - _s.RearAxle.XMillimetres);

    /// <summary>From the bottom bracket to the front axle, straight.</summary>
    public Length FrontCentre => Length.FromMillimeters(double.Hypot(_front.XMillimetres, _front.YMillimetres));

    /// <summary>From the bottom bracket to the front axle, level.</summary>
    public Length FrontCentreHorizontal => _front.X;

    /// <summary>Trail on the ground: <see cref="SteeringGeometry.Trail"/>.</summary>
    public Length Trail => SteeringGeometry.Trail(HeadAngle, ForkOffset, FrontRadius);

    /// <summary>Trail square to the steering axis.</summary>
    public Length MechanicalTrail => SteeringGeometry.MechanicalTrail(HeadAngle, ForkOffset, FrontRadius);

    /// <summary>An index for comparing, no way that anything goes: <see cref="SteeringGeometry.FlopFactor"/>.</summary>
    public Length FlopFactor => SteeringGeometry.FlopFactor(Trail, HeadAngle);

    /// <summary>Length of the head tube.</summary>
    public Length HeadTube => Length.FromMillimeters(_s.HeadTube);

    /// <summary>From the head tube's lower end to the crown-race seat. What rounding of the chart leaves over is in it: it may differ from the printed one by a millimetre or two.</summary>
    public Length LowerStack => Length.FromMillimeters(_s.LowerStack);

    /// <summary>Length of the fork along the steering axis.</summary>
    public Length ForkAxialLength => Length.FromMillimeters(_s.Fork);

    /// <summary>Length of the fork from the crown-race seat straight to the axle.</summary>
    public Length AxleToCrown => Length.FromMillimeters(double.Hypot(_s.Fork, _s.Offset));

    /// <summary>Offset of the fork.</summary>
    public Length ForkOffset => Length.FromMillimeters(_s.Offset);

    /// <summary>Radius of the rear wheel with its tyre.</summary>
    public Length RearRadius => Length.FromMillimeters(_s.RearRadius);

    /// <summary>Radius of the front wheel with its tyre.</summary>
    public Length FrontRadius => Length.FromMillimeters(_s.FrontRadius);

    /// <summary>By how much the steering axis is slacker than the head tube: 0 without an angle headset.</summary>
    public Angle HeadsetAngle => Angle.FromDegrees(double.RadiansToDegrees(_s.Tilt));

    /// <summary>Middle of the head tube's top.</summary>
    public FramePoint HeadTubeTop => _s.Top;

    /// <summary>Middle of the head tube's lower end.</summary>
    public FramePoint HeadTubeBottom => _s.DownHeadTube(_s.HeadTube);

    /// <summary>The rear axle.</summary>
    public FramePoint RearAxle => _s.RearAxle;

    /// <summary>The front axle.</summary>
    public FramePoint FrontAxle => _front;

    private double HeadDegrees => double.RadiansToDegrees(_s.SteeringAngle);

    /// <summary>With a fork of another length, offset and radius of the wheel as they were.</summary>
    /// <param name="by">How much longer it is along the steering axis; negative where it is shorter. The fork stays 150 to 900 mm long.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fork would be out of its range.</exception>
    public FrameGeometry WithForkLongerBy(Length by) => With(_s with { Fork = Taken(ForkAxialLength + by, FrameFigure.ForkAxialLength) });

    /// <summary>With another fork.</summary>
    /// <param name="axleToCrown">From the crown-race seat straight to the axle, 150 to 900 mm: what makers print for most forks.</param>
    /// <param name="offset">Its offset, 0 to 120 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public FrameGeometry WithFork(Length axleToCrown, Length offset)
    {
        double straight = Taken(axleToCrown, FrameFigure.AxleToCrown);
        double square = Taken(offset, FrameFigure.ForkOffset);
        return With(_s with { Fork = Math.Sqrt((straight * straight) - (square * square)), Offset = square });
    }

    /// <summary>With a fork of another offset and the same length along the steering axis.</summary>
    /// <param name="offset">0 to 120 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public FrameGeometry WithForkOffset(Length offset) => With(_s with { Offset = Taken(offset, FrameFigure.ForkOffset) });

    /// <summary>With other wheels or tyres; for one wheel alone give the other as it is.</summary>
    /// <param name="frontRadius">Radius of the front wheel with its tyre, 100 to 500 mm.</param>
    /// <param name="rearRadius">Radius of the rear wheel with its tyre, 100 to 500 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A radius is out of range.</exception>
    public FrameGeometry WithWheels(Length frontRadius, Length rearRadius) =>
        With(_s with { FrontRadius = Taken(frontRadius, FrameFigure.FrontRadius), RearRadius = Taken(rearRadius, FrameFigure.RearRadius) });

    /// <summary>With another height between head tube and crown-race seat.</summary>
    /// <param name="lowerStack">0 to 80 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public FrameGeometry WithLowerStack(Length lowerStack) => With(_s with { LowerStack = Taken(lowerStack, FrameFigure.LowerStack) });

    /// <summary>With an angle headset instead of whatever is in; its lower stack is given by <see cref="WithLowerStack"/>.</summary>
    /// <param name="headset">The headset; <see cref="AngleHeadset.None"/> takes it out.</param>
    public FrameGeometry WithAngleHeadset(AngleHeadset headset) =>
        With(_s with { Tilt = double.DegreesToRadians(headset.SlackerDegrees), Pivot = headset.PivotMillimetres });

    internal static FrameGeometry OfFigures(double[] figures, bool hasSeatAngle)
    {
        double Figure(FrameFigure figure) => figures[figure.Index];
        double chainstay = Figure(FrameFigure.Chainstay);
        double drop = Figure(FrameFigure.BottomBracketDrop);
        FrameState state = new(
            new(Figure(FrameFigure.Reach), Figure(FrameFigure.Stack)),
            new(-Math.Sqrt((chainstay * chainstay) - (drop * drop)), drop),
            double.DegreesToRadians(Figure(FrameFigure.HeadAngle)),
            hasSeatAngle ? double.DegreesToRadians(Figure(FrameFigure.SeatAngle)) : double.NaN,
            Figure(FrameFigure.HeadTube),
            Figure(FrameFigure.LowerStack),
            Figure(FrameFigure.ForkAxialLength),
            Figure(FrameFigure.ForkOffset),
            Figure(FrameFigure.RearRadius),
            Figure(FrameFigure.FrontRadius),
            0,
            0);

        // Where rounding leaves a rest, the lower stack takes it up: both wheels stand on the ground at the printed angles.
        double rest = state.FrontAxle.YMillimetres - (drop + state.FrontRadius - state.RearRadius);
        return new(state with { LowerStack = state.LowerStack + (rest / Math.Sin(state.HeadTubeAngle)) });
    }

    /// <summary>"head angle 64.6, seat angle 76.1, reach 462.3, stack 634.1, trail 128.4, bottom bracket 341 up, wheelbase 1231".</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"head angle {HeadDegrees:0.0#}, {(SeatAngle is { } seat ? string.Create(CultureInfo.InvariantCulture, $"seat angle {seat.Degrees:0.0#}, ") : "")}reach {Reach.Millimeters:0.#}, stack {Stack.Millimeters:0.#}, trail {Trail.Millimeters:0.#}, bottom bracket {BottomBracketHeight.Millimeters:0.#} up, wheelbase {Wheelbase.Millimeters:0.#}");

    private static FrameGeometry With(FrameState changed) => new(changed.Settled());

    private static double Taken(Length value, FrameFigure figure) => NumberRange.Millimetres(value, figure.Least, figure.Most, figure.Name);
}
