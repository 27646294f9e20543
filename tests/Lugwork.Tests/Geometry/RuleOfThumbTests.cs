using Lugwork.Geometry;
using static Lugwork.Tests.Geometry.Frames;

namespace Lugwork.Tests.Geometry;

/// <summary>How far the linear rules of the trade are from the exact turn. Reference page calculations, sections 5.2 and 5.3; the rule of 20 mm a degree is common practice, no source.</summary>
public sealed class RuleOfThumbTests
{
    private static FrameGeometry Plain(double head, double wheelbase) => (Trail with
    {
        Reach = null, HeadAngle = Deg(head), Wheelbase = Mm(wheelbase), BottomBracketDrop = Mm(0), Chainstay = Mm(435),
    }).ToGeometry();

    /// <summary>sin(head angle) / wheelbase for each millimetre.</summary>
    [Theory]
    [InlineData(65, 1_220, 10, 0.002)]
    [InlineData(65, 1_220, 40, 0.03)]
    [InlineData(70, 1_100, 20, 0.007)]
    [InlineData(73, 985, 10, 0.003)]
    [InlineData(73, 985, 40, 0.03)]
    public void The_small_angle_rule_of_a_longer_fork(double head, double wheelbase, double by, double within)
    {
        FrameGeometry frame = Plain(head, wheelbase);
        double exact = frame.HeadAngle.Degrees - frame.WithForkLongerBy(Mm(by)).HeadAngle.Degrees;
        double linear = double.RadiansToDegrees(by * Math.Sin(double.DegreesToRadians(head)) / wheelbase);
        Assert.InRange(linear - exact, within / 10, within);
    }

    /// <summary>Twenty millimetres a degree: near on a short bicycle, fifteen percent too much on a long one.</summary>
    [Theory]
    [InlineData(73, 985, -0.11, -0.08)]
    [InlineData(70, 1_100, 0.02, 0.04)]
    [InlineData(65, 1_220, 0.14, 0.17)]
    public void Twenty_millimetres_a_degree(double head, double wheelbase, double least, double most)
    {
        FrameGeometry frame = Plain(head, wheelbase);
        Assert.InRange(1 - (frame.HeadAngle.Degrees - frame.WithForkLongerBy(Mm(20)).HeadAngle.Degrees), least, most);
    }

    /// <summary>The rear axle down by d lowers the bottom bracket by d (1 - chainstay / wheelbase) and turns it by d / wheelbase.</summary>
    [Theory]
    [InlineData(65, 1_220, 19)]
    [InlineData(63.5, 1_250, 14)]
    [InlineData(73, 985, 10)]
    public void A_smaller_rear_wheel(double head, double wheelbase, double by)
    {
        FrameGeometry frame = Plain(head, wheelbase);
        GeometryDifference difference = GeometryDifference.Between(frame, frame.WithWheels(frame.FrontRadius, frame.RearRadius - Mm(by)));
        Assert.InRange(difference.BottomBracketHeight.Millimeters + (by * (1 - (435 / wheelbase))), -0.001, 0.001);
        Assert.InRange(difference.HeadAngle.Degrees + double.RadiansToDegrees(by / wheelbase), -0.0005, 0.0005);
    }

    /// <summary>With a drop, which the rule leaves out, it is off by a hundredth of a millimetre.</summary>
    [Fact]
    public void The_drop_hardly_shows()
    {
        GeometryDifference difference = GeometryDifference.Between(Drawn, Drawn.WithWheels(Drawn.FrontRadius, Drawn.RearRadius - Mm(19)));
        double rule = -19 * (1 - (Drawn.ChainstayHorizontal.Millimeters / Drawn.Wheelbase.Millimeters));
        Assert.InRange(Math.Abs(difference.BottomBracketHeight.Millimeters - rule), 0.001, 0.02);
    }

    /// <summary>Another head angle and offset of a frame builder's rule: half a degree for 3 mm, one for 6 (published), at the same trail.</summary>
    [Theory]
    [InlineData(72.5, 3, 0.1)]
    [InlineData(72, 6, 0.15)]
    public void Offset_against_head_angle(double head, double expected, double within)
    {
        UnitsNet.Length trail = SteeringGeometry.Trail(Deg(73), Mm(44), Mm(336));
        Assert.InRange(SteeringGeometry.OffsetForTrail(Deg(head), trail, Mm(336)).Millimeters - 44, expected - within, expected + within);
    }
}
