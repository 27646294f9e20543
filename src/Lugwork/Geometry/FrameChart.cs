using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>What a chart says of a frame: any of its figures, as many as it prints. <see cref="Solve"/> makes a frame of them, or says what is missing and what disagrees.</summary>
/// <remarks>
/// Every figure has its range (<see cref="FrameFigure"/>); one out of range, or no number, is refused with <see cref="ArgumentOutOfRangeException"/>.
/// The drop is measured below the rear axle; with wheels of two sizes the front axle stands elsewhere. Two lengths of a fork go under one name in the
/// trade: say which one it is. Kept as numbers, so that two charts are equal where their figures are.
/// Wheelbase = level chainstay + level front centre; chainstay² = level chainstay² + drop²; bottom-bracket height = rear radius - drop; effective top tube = reach + stack / tan(seat angle); trail = (radius cos(head angle) - offset) / sin(head angle), mm and degrees; trail by "Bicycle and motorcycle geometry", the rest is trigonometry.
/// </remarks>
public sealed record FrameChart
{
    private readonly double? _reach;
    private readonly double? _stack;
    private readonly double? _headAngle;
    private readonly double? _seatAngle;
    private readonly double? _chainstay;
    private readonly double? _drop;
    private readonly double? _headTube;
    private readonly double? _lowerStack;
    private readonly double? _forkAxialLength;
    private readonly double? _axleToCrown;
    private readonly double? _forkOffset;
    private readonly double? _rearRadius;
    private readonly double? _frontRadius;
    private readonly double? _wheelbase;
    private readonly double? _frontCentre;
    private readonly double? _topTube;
    private readonly double? _bracketHeight;
    private readonly double? _trail;
    private readonly double? _chainstayHorizontal;
    private readonly double? _frontCentreHorizontal;
    private readonly double _lengthGrain = 1;
    private readonly double _angleGrain = 0.1;

    /// <summary>From the bottom bracket forward to the head tube's top, level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? Reach { get => Told(_reach); init => _reach = Taken(value, FrameFigure.Reach); }

    /// <summary>From the bottom bracket up to the head tube's top.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? Stack { get => Told(_stack); init => _stack = Taken(value, FrameFigure.Stack); }

    /// <summary>Angle of the head tube to the ground.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Angle? HeadAngle { get => ToldAngle(_headAngle); init => _headAngle = Taken(value, FrameFigure.HeadAngle); }

    /// <summary>Angle of the effective seat tube to the ground. A frame stands without it; effective top tube and new seat angle ask for it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Angle? SeatAngle { get => ToldAngle(_seatAngle); init => _seatAngle = Taken(value, FrameFigure.SeatAngle); }

    /// <summary>From the bottom bracket to the rear axle, straight.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? Chainstay { get => Told(_chainstay); init => _chainstay = Taken(value, FrameFigure.Chainstay); }

    /// <summary>How far the bottom bracket stands below the rear axle; negative above it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? BottomBracketDrop { get => Told(_drop); init => _drop = Taken(value, FrameFigure.BottomBracketDrop); }

    /// <summary>Length of the head tube.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? HeadTube { get => Told(_headTube); init => _headTube = Taken(value, FrameFigure.HeadTube); }

    /// <summary>From the lower end of the head tube to the crown-race seat.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? LowerStack { get => Told(_lowerStack); init => _lowerStack = Taken(value, FrameFigure.LowerStack); }

    /// <summary>Length of the fork along the steering axis.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? ForkAxialLength { get => Told(_forkAxialLength); init => _forkAxialLength = Taken(value, FrameFigure.ForkAxialLength); }

    /// <summary>Length of the fork from the crown-race seat straight to the axle.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? AxleToCrown { get => Told(_axleToCrown); init => _axleToCrown = Taken(value, FrameFigure.AxleToCrown); }

    /// <summary>From the steering axis forward to the axle, square to the axis.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? ForkOffset { get => Told(_forkOffset); init => _forkOffset = Taken(value, FrameFigure.ForkOffset); }

    /// <summary>Radius of the rear wheel with its tyre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? RearRadius { get => Told(_rearRadius); init => _rearRadius = Taken(value, FrameFigure.RearRadius); }

    /// <summary>Radius of the front wheel with its tyre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? FrontRadius { get => Told(_frontRadius); init => _frontRadius = Taken(value, FrameFigure.FrontRadius); }

    /// <summary>From axle to axle, level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? Wheelbase { get => Told(_wheelbase); init => _wheelbase = Taken(value, FrameFigure.Wheelbase); }

    /// <summary>From the bottom bracket to the front axle, straight.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? FrontCentre { get => Told(_frontCentre); init => _frontCentre = Taken(value, FrameFigure.FrontCentre); }

    /// <summary>From the head tube's top back to the effective seat tube, level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? EffectiveTopTube { get => Told(_topTube); init => _topTube = Taken(value, FrameFigure.EffectiveTopTube); }

    /// <summary>From the ground to the bottom bracket.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? BottomBracketHeight { get => Told(_bracketHeight); init => _bracketHeight = Taken(value, FrameFigure.BottomBracketHeight); }

    /// <summary>How far the front tyre stands behind the steering axis, on the ground.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? Trail { get => Told(_trail); init => _trail = Taken(value, FrameFigure.Trail); }

    /// <summary>From the bottom bracket to the rear axle, level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? ChainstayHorizontal { get => Told(_chainstayHorizontal); init => _chainstayHorizontal = Taken(value, FrameFigure.ChainstayHorizontal); }

    /// <summary>From the bottom bracket to the front axle, level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? FrontCentreHorizontal { get => Told(_frontCentreHorizontal); init => _frontCentreHorizontal = Taken(value, FrameFigure.FrontCentreHorizontal); }

    /// <summary>To what the chart rounds its lengths: 1 mm unless said otherwise; 0 to 10 mm. A difference that rounding explains is no disagreement.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length LengthGrain { get => Length.FromMillimeters(_lengthGrain); init => _lengthGrain = NumberRange.Millimetres(value, 0, 10, nameof(LengthGrain)); }

    /// <summary>To what the chart rounds its angles: 0.1 degree unless said otherwise; 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Angle AngleGrain { get => Angle.FromDegrees(_angleGrain); init => _angleGrain = NumberRange.Degrees(value, 0, 1, nameof(AngleGrain)); }

    /// <summary>Makes a frame of the figures: what is not printed follows from the rest, and where two ways lead to one figure they are compared.</summary>
    public ChartReading Solve() => ChartSolver.Solve(Figures(), _lengthGrain / 2, _angleGrain / 2);

    /// <summary>The frame, where nothing is missing and nothing disagrees.</summary>
    /// <exception cref="InvalidOperationException">A figure is missing or two disagree; the message names them.</exception>
    public FrameGeometry ToGeometry() =>
        Solve() is var reading && reading.Frame is { } frame ? frame : throw new InvalidOperationException(reading.ToString());

    /// <summary>In the order of <see cref="FrameFigure.All"/>.</summary>
    internal double?[] Figures() =>
    [
        _reach, _stack, _headAngle, _seatAngle, _chainstay, _drop, _headTube, _lowerStack, _forkAxialLength, _axleToCrown, _forkOffset, _rearRadius, _frontRadius,
        _wheelbase, _frontCentre, _topTube, _bracketHeight, _trail, _chainstayHorizontal, _frontCentreHorizontal, null, null,
    ];

    private static Length? Told(double? millimetres) => millimetres is { } known ? Length.FromMillimeters(known) : null;

    private static Angle? ToldAngle(double? degrees) => degrees is { } known ? Angle.FromDegrees(known) : null;

    private static double? Taken(Length? value, FrameFigure figure) => NumberRange.Millimetres(value, figure.Least, figure.Most, figure.Name);

    private static double? Taken(Angle? value, FrameFigure figure) => NumberRange.Degrees(value, figure.Least, figure.Most, figure.Name);
}
