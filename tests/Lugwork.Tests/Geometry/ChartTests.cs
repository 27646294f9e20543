using Lugwork.Geometry;
using UnitsNet;
using static Lugwork.Tests.Geometry.Frames;

namespace Lugwork.Tests.Geometry;

public sealed class ChartTests
{
    [Fact]
    public void A_chart_gives_the_points_of_its_frame()
    {
        Assert.Equal(455, Drawn.Reach.Millimeters, 1e-8);
        Assert.Equal(55, Drawn.RearAxle.YMillimetres, 1e-8);
        Assert.Equal(55, Drawn.FrontAxle.YMillimetres, 1e-6);
        Assert.Equal(315, Drawn.BottomBracketHeight.Millimeters, 1e-8);
        Assert.Equal(Drawn.Wheelbase.Millimeters, Drawn.FrontAxle.XMillimetres - Drawn.RearAxle.XMillimetres, 1e-8);
        Assert.Equal(115, double.Hypot(Drawn.HeadTubeTop.XMillimetres - Drawn.HeadTubeBottom.XMillimetres, Drawn.HeadTubeTop.YMillimetres - Drawn.HeadTubeBottom.YMillimetres), 1e-8);
        Assert.Equal(531, Drawn.AxleToCrown.Millimeters, 1e-6);
        Assert.Equal(Math.Sqrt((531 * 531) - (44 * 44)), Drawn.ForkAxialLength.Millimeters, 1e-6);
    }

    [Fact]
    public void A_wheelbase_that_does_not_go_with_the_rest_is_named_with_its_size()
    {
        Length right = Drawn.Wheelbase;
        ChartReading reading = (Trail with { Wheelbase = right + Mm(12) }).Solve();
        ChartDisagreement found = Assert.Single(reading.Disagreements);
        Assert.Equal(FrameFigure.Wheelbase, found.Figure);
        Assert.Equal(12, found.Size.Millimeters, 1e-6);
        Assert.True(found.Rounding.Millimeters is > 1 and < 5);
        Assert.Contains(FrameFigure.Reach, found.Figures);
        Assert.DoesNotContain(FrameFigure.SeatAngle, found.Figures);
        Assert.Null(reading.Frame);
        Assert.Contains("12 mm apart", reading.ToString(), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => (Trail with { Wheelbase = right + Mm(12) }).ToGeometry());
        Assert.NotNull((Trail with { Wheelbase = right + Mm(1) }).Solve().Frame);
    }

    [Fact]
    public void What_is_not_known_contradicts_nothing()
    {
        FrameChart[] parts = [new() { Reach = Mm(455) }, new() { Wheelbase = Mm(1_200), Chainstay = Mm(432) }, Trail with { RearRadius = null, FrontRadius = null }, Trail with { HeadAngle = null }];
        foreach (ChartReading reading in parts.Select(p => p.Solve()))
        {
            Assert.Null(reading.Frame);
            Assert.NotEmpty(reading.Missing);
            Assert.Empty(reading.Disagreements);
        }
    }

    [Fact]
    public void A_gap_below_a_tenth_is_told_with_the_digits_that_show_it()
    {
        ChartDisagreement found = Assert.Single((Printed(Drawn) with { Wheelbase = Drawn.Wheelbase + Mm(0.004) }).Solve().Disagreements, d => d.Figure == FrameFigure.Wheelbase);
        Assert.Contains("0.004 mm apart where rounding explains 0 mm", found.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lower_stack_that_would_have_to_be_negative_is_a_disagreement()
    {
        ChartReading reading = (Trail with { LowerStack = null, Stack = Drawn.Stack - Mm(20) }).Solve();
        Assert.Null(reading.Frame);
        Assert.Contains(FrameFigure.Stack, Assert.Single(reading.Disagreements).Figures);
        Assert.InRange((Trail with { LowerStack = null, Stack = Drawn.Stack + Mm(5) }).ToGeometry().LowerStack.Millimeters, 17, 18);
    }

    [Fact]
    public void What_follows_and_cannot_be_is_a_disagreement()
    {
        ChartDisagreement found = Assert.Single((Trail with { FrontRadius = Mm(100), RearRadius = Mm(100), BottomBracketDrop = Mm(60) }).Solve().Disagreements);
        Assert.Equal(FrameFigure.BottomBracketHeight, found.Figure);
        Assert.Equal(40, found.Follows.Millimeters, 1e-6);
        Assert.Equal([FrameFigure.BottomBracketDrop, FrameFigure.RearRadius], found.Figures);
    }

    [Fact]
    public void A_chart_without_its_fork_says_so()
    {
        ChartReading reading = (Trail with { AxleToCrown = null, ForkOffset = null }).Solve();
        Assert.Null(reading.Frame);
        Assert.Equal([FrameFigure.ForkOffset, FrameFigure.AxleToCrown], reading.Missing);
        Assert.StartsWith("missing: ", reading.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Wheelbase_and_stack_tell_a_fork_that_is_not_printed()
    {
        FrameChart without = Trail with { AxleToCrown = null, ForkOffset = null, Stack = Drawn.Stack, Wheelbase = Drawn.Wheelbase };
        Same(Drawn, without.ToGeometry());
    }

    [Fact]
    public void An_empty_chart_asks_for_everything_that_it_needs()
    {
        ChartReading reading = new FrameChart().Solve();
        Assert.Null(reading.Frame);
        Assert.Equal(10, reading.Missing.Length);
        Assert.Empty(reading.Disagreements);
    }

    [Fact]
    public void What_is_no_number_or_out_of_range_is_refused_by_name()
    {
        Assert.Contains("reach is 100 to 800 mm", Assert.Throws<ArgumentOutOfRangeException>(() => Trail with { Reach = Mm(99) }).Message, StringComparison.Ordinal);
        Assert.ThrowsAny<ArgumentException>(() => Trail with { Stack = Mm(double.NaN) });
        Assert.ThrowsAny<ArgumentException>(() => Trail with { HeadAngle = Deg(double.PositiveInfinity) });
        Assert.Throws<ArgumentOutOfRangeException>(() => Trail with { LengthGrain = Mm(-1) });
        Assert.Throws<ArgumentOutOfRangeException>(() => Drawn.WithForkLongerBy(Mm(400)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Drawn.WithWheels(Mm(501), Mm(300)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SteeringGeometry.Trail(Deg(29), Mm(40), Mm(340)));
        Assert.Throws<ArgumentOutOfRangeException>(() => AngleHeadset.Of(Deg(3.1), Mm(0)));
        Assert.Throws<InvalidOperationException>(() => (Trail with { HeadAngle = Deg(89) }).ToGeometry().WithForkLongerBy(Mm(-250)).WithWheels(Mm(100), Mm(500)));
    }

    [Fact]
    public void Two_charts_with_the_same_figures_are_equal() => Assert.Equal(Trail, Trail with { Reach = Length.FromCentimeters(45.5) });

    [Fact]
    public void Every_figure_has_its_own_place() => Assert.Equal(Enumerable.Range(0, 22), FrameFigure.All.Select(f => f.Index));
}
