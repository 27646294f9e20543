namespace Lugwork.Geometry;

/// <summary>The figures that say all of a frame with its fork and wheels, in millimetres and radians; the rest follows.</summary>
/// <param name="Top">Middle of the head tube's top.</param>
/// <param name="RearAxle">The rear axle.</param>
/// <param name="HeadTubeAngle">Of the head tube, not of the steering axis where an angle headset parts them.</param>
/// <param name="SeatAngle">Not a number where it is not known.</param>
/// <param name="HeadTube">Length of the head tube.</param>
/// <param name="LowerStack">From the head tube's lower end to the crown-race seat.</param>
/// <param name="Fork">Length along the steering axis.</param>
/// <param name="Offset">Offset of the fork.</param>
/// <param name="RearRadius">Radius of the rear wheel.</param>
/// <param name="FrontRadius">Radius of the front wheel.</param>
/// <param name="Tilt">By how much the steering axis is slacker than the head tube.</param>
/// <param name="Pivot">Where the steering axis crosses the head tube's, above the head tube's lower end.</param>
internal readonly record struct FrameState(
    FramePoint Top, FramePoint RearAxle, double HeadTubeAngle, double SeatAngle, double HeadTube, double LowerStack, double Fork, double Offset, double RearRadius, double FrontRadius, double Tilt, double Pivot)
{
    public double SteeringAngle => HeadTubeAngle - Tilt;

    /// <summary>Down the head tube by a length.</summary>
    public FramePoint DownHeadTube(double length) => new(Top.XMillimetres + (length * Math.Cos(HeadTubeAngle)), Top.YMillimetres - (length * Math.Sin(HeadTubeAngle)));

    public FramePoint FrontAxle
    {
        get
        {
            FramePoint pivot = DownHeadTube(HeadTube - Pivot);
            (double sin, double cos) = Math.SinCos(SteeringAngle);
            double down = Pivot + LowerStack + Fork;
            return new(pivot.XMillimetres + (down * cos) + (Offset * sin), pivot.YMillimetres - (down * sin) + (Offset * cos));
        }
    }

    /// <summary>The same bicycle with both wheels on level ground: turned about the bottom bracket until the front axle stands above the rear one by what its wheel is larger.</summary>
    /// <exception cref="InvalidOperationException">The figures make no bicycle.</exception>
    public FrameState Settled()
    {
        FramePoint front = FrontAxle;
        double x = front.XMillimetres - RearAxle.XMillimetres;
        double y = front.YMillimetres - RearAxle.YMillimetres;
        double turn = Math.Asin((FrontRadius - RearRadius) / double.Hypot(x, y)) - Math.Atan2(y, x);
        FrameState settled = this with { Top = Top.Turned(turn), RearAxle = RearAxle.Turned(turn), HeadTubeAngle = HeadTubeAngle - turn, SeatAngle = SeatAngle - turn };
        return settled.SteeringAngle is > Math.PI / 6 and < 11 * Math.PI / 18
            ? settled
            : throw new InvalidOperationException("with these figures the steering axis would stand at less than 30 or more than 110 degrees: that is no bicycle");
    }
}
