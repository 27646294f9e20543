using System.Collections.Immutable;
using static Lugwork.Geometry.FrameFigure;

namespace Lugwork.Geometry;

/// <summary>How one figure of a frame follows from others: plain trigonometry on the points of the frame.</summary>
internal sealed class FrameRelation
{
    private readonly Func<double[], double> _value;
    private readonly int _neverSolved;

    private FrameRelation(FrameFigure lead, Func<double[], double> value, ReadOnlySpan<FrameFigure> others, FrameFigure? neverSolved = null, bool isOnlyAWay = false)
    {
        Lead = lead;
        _value = value;
        _neverSolved = neverSolved?.Bit ?? 0;
        IsOnlyAWay = isOnlyAWay;
        Mask = lead.Bit;
        foreach (FrameFigure other in others)
        {
            Mask |= other.Bit;
        }
    }

    /// <summary>Every relation; those that only turn others about the steering axis come last and are never compared.</summary>
    public static ImmutableArray<FrameRelation> All { get; } =
    [
        // The drop has two signs with one chainstay, and the offset hardly shows in the length: neither is taken from there.
        new(AxleToCrown, v => double.Hypot(v[8], v[10]), [ForkAxialLength, ForkOffset], neverSolved: ForkOffset),
        new(SteeringLength, v => v[6] + v[7] + v[8], [HeadTube, LowerStack, ForkAxialLength]),
        new(BottomBracketHeight, v => v[11] - v[5], [RearRadius, BottomBracketDrop]),
        new(FrontDrop, v => v[5] + v[12] - v[11], [BottomBracketDrop, FrontRadius, RearRadius]),
        new(Chainstay, v => double.Hypot(v[18], v[5]), [ChainstayHorizontal, BottomBracketDrop], neverSolved: BottomBracketDrop),
        new(Stack, v => v[20] + (v[21] * Sin(v[2])) - (v[10] * Cos(v[2])), [FrontDrop, SteeringLength, HeadAngle, ForkOffset]),
        new(FrontCentreHorizontal, v => v[0] + (v[21] * Cos(v[2])) + (v[10] * Sin(v[2])), [Reach, SteeringLength, HeadAngle, ForkOffset]),
        new(FrontCentre, v => double.Hypot(v[19], v[20]), [FrontCentreHorizontal, FrontDrop], neverSolved: FrontDrop),
        new(Wheelbase, v => v[18] + v[19], [ChainstayHorizontal, FrontCentreHorizontal]),
        new(EffectiveTopTube, v => v[0] + (v[1] * Cos(v[3]) / Sin(v[3])), [Reach, Stack, SeatAngle]),
        new(Trail, v => ((v[12] * Cos(v[2])) - v[10]) / Sin(v[2]), [FrontRadius, HeadAngle, ForkOffset]),
        new(ForkOffset, v => ((v[19] - v[0]) * Sin(v[2])) + ((v[20] - v[1]) * Cos(v[2])), [FrontCentreHorizontal, Reach, FrontDrop, Stack, HeadAngle], isOnlyAWay: true),
        new(SteeringLength, v => ((v[19] - v[0]) * Cos(v[2])) - ((v[20] - v[1]) * Sin(v[2])), [FrontCentreHorizontal, Reach, FrontDrop, Stack, HeadAngle], isOnlyAWay: true),
    ];

    /// <summary>The figure that the others give.</summary>
    public FrameFigure Lead { get; }

    /// <summary>All figures that take part.</summary>
    public int Mask { get; }

    /// <summary>It says nothing that two others do not say; it only leads to a figure where those cannot.</summary>
    public bool IsOnlyAWay { get; }

    /// <summary>The one figure that is still open and can be taken from the rest; null where none or several are open.</summary>
    public FrameFigure? Open(int known)
    {
        int open = Mask & ~known;
        return open != 0 && (open & (open - 1)) == 0 && (open & _neverSolved) == 0 && (!IsOnlyAWay || open == Lead.Bit) ? FrameFigure.All[int.TrailingZeroCount(open)] : null;
    }

    /// <summary>What the leading figure is by the others.</summary>
    public double Follows(double[] figures) => _value(figures);

    /// <summary>What the leading figure is stated to be, less what follows.</summary>
    public double Difference(double[] figures) => figures[Lead.Index] - _value(figures);

    /// <summary>The value of an open figure under which the relation holds. Each relation rises or falls with each figure that may be taken from it, so that halving its range finds it.</summary>
    /// <param name="figures">All figures; the open one is written, or the end of its range that is nearest.</param>
    /// <param name="open">The open figure.</param>
    /// <returns>0, or the difference that stays where no value in range makes it hold.</returns>
    public double SolveFor(double[] figures, FrameFigure open)
    {
        if (open == Lead)
        {
            double follows = Follows(figures);
            figures[open.Index] = Math.Clamp(follows, open.Least, open.Most);
            return Missed(figures[open.Index] - follows);
        }

        (double low, double high) = (open.Least, open.Most);
        double atLow = At(figures, open, low);
        double atHigh = At(figures, open, high);
        if (double.IsNegative(atLow) == double.IsNegative(atHigh))
        {
            return Missed(At(figures, open, Math.Abs(atLow) < Math.Abs(atHigh) ? low : high));
        }

        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = double.IsNegative(At(figures, open, middle)) == double.IsNegative(atLow) ? (middle, high) : (low, middle);
        }

        At(figures, open, (low + high) / 2);
        return 0;
    }

    private static double Missed(double difference) => Math.Abs(difference) <= 1e-6 ? 0 : difference;

    private double At(double[] figures, FrameFigure open, double value)
    {
        figures[open.Index] = value;
        return Difference(figures);
    }

    private static double Sin(double degrees) => Math.Sin(double.DegreesToRadians(degrees));

    private static double Cos(double degrees) => Math.Cos(double.DegreesToRadians(degrees));
}
