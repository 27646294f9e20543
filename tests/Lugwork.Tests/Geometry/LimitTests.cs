using Lugwork.Geometry;
using Lugwork.Tyres;
using static Lugwork.Tests.Geometry.Frames;

namespace Lugwork.Tests.Geometry;

/// <summary>A frame maker's limits, an angle headset, clearances.</summary>
public sealed class LimitTests
{
    [Theory]
    [InlineData(541, 551, Verdict.Unsafe)]
    [InlineData(551, 551, Verdict.Fits)] // just reached: told, allowed
    public void A_longer_fork_against_the_makers_longest(double most, double fork, Verdict verdict)
    {
        FrameGeometry longer = Drawn.WithFork(Mm(fork), Drawn.ForkOffset);
        FrameLimits limits = new() { LongestFork = Mm(most), SlackestHeadAngle = Deg(60) };
        GeometryFinding finding = Assert.Single(limits.Check(Drawn, longer));
        Assert.Equal(verdict, finding.Verdict);
        Assert.NotNull(finding.Caution);
        Assert.Empty(new FrameLimits { LongestFork = Mm(552), SlackestHeadAngle = Deg(60) }.Check(Drawn, longer));
    }

    [Fact]
    public void What_changed_without_a_known_limit_is_asked_for_and_what_stayed_is_not()
    {
        Assert.Empty(new FrameLimits().Check(Drawn, Drawn));
        string[] asked = [.. new FrameLimits().Check(Drawn, Drawn.WithForkLongerBy(Mm(20))).Select(f => f.Figure)];
        Assert.Equal(["axle to crown", "head angle"], asked);
        Assert.All(new FrameLimits().Check(Drawn, Drawn.WithWheels(Mm(380), Mm(350)).WithAngleHeadset(AngleHeadset.Of(Deg(1), Mm(0)))), f => Assert.Equal(Verdict.NeedsMeasuring, f.Verdict));
        Assert.Equal(["front wheel radius", "bottom-bracket height", "head angle", "angle headset"], new FrameLimits().Check(Drawn, Drawn.WithWheels(Mm(380), Mm(350)).WithAngleHeadset(AngleHeadset.Of(Deg(1), Mm(0)))).Select(f => f.Figure));
    }

    [Fact]
    public void Each_limit_that_is_passed_is_named()
    {
        FrameLimits limits = new()
        {
            LongestFork = Mm(540), ShortestFork = Mm(500), LargestFrontRadius = Mm(372), LargestRearRadius = Mm(372), LeastBottomBracketHeight = Mm(310), SlackestHeadAngle = Deg(64.5), MostHeadsetAngle = Deg(0.5),
        };
        Assert.Equal(["axle to crown", "front wheel radius", "head angle", "angle headset"], Unsafe(Drawn.WithForkLongerBy(Mm(30)).WithWheels(Mm(375), Mm(370)).WithAngleHeadset(AngleHeadset.Of(Deg(1), Mm(0)))));
        Assert.Equal(["axle to crown", "bottom-bracket height"], Unsafe(Drawn.WithForkLongerBy(Mm(-40))));
        Assert.Equal(["rear wheel radius"], Unsafe(Drawn.WithWheels(Mm(370), Mm(373))));
        Assert.Empty(Unsafe(Drawn));

        string[] Unsafe(FrameGeometry after) => [.. limits.Check(Drawn, after).Where(f => f.Verdict == Verdict.Unsafe).Select(f => f.Figure)];
    }

    [Fact]
    public void An_angle_headset_turns_the_axis_about_its_pivot()
    {
        AngleHeadset headset = AngleHeadset.OfShifts(Mm(2), Mm(1), Mm(120), Mm(-5));
        Assert.Equal(35, headset.PivotAboveLowerEnd.Millimeters, 1e-8);
        Assert.Equal(3, AngleHeadset.ShiftFor(headset.Slacker, Mm(120)).Millimeters, 1e-8);
        FrameGeometry slacker = Drawn.WithAngleHeadset(headset);
        Assert.Equal(headset.Slacker.Degrees, slacker.HeadsetAngle.Degrees, 1e-8);
        Assert.Equal(slacker.HeadTubeAngle.Degrees - headset.Slacker.Degrees, slacker.HeadAngle.Degrees, 1e-8);

        // Slackening carries the axle forward and up, so that the front comes down and the frame steepens a little: by less than a third of the angle.
        Assert.InRange(slacker.HeadTubeAngle.Degrees - Drawn.HeadTubeAngle.Degrees, 0.001, headset.Slacker.Degrees / 3);
        Assert.True(slacker.BottomBracketHeight.Millimeters < Drawn.BottomBracketHeight.Millimeters && slacker.Wheelbase.Millimeters > Drawn.Wheelbase.Millimeters);
        Assert.Equal(AngleHeadset.None, AngleHeadset.OfShifts(Mm(0), Mm(0), Mm(120), Mm(0)));
        Assert.Throws<ArgumentException>(() => AngleHeadset.OfShifts(Mm(2), Mm(-2), Mm(120), Mm(0)));
    }

    [Theory]
    [InlineData(270, Verdict.Fits)]
    [InlineData(259.28, Verdict.Fits)]
    [InlineData(259.26, Verdict.Unsafe)]
    public void The_pedal_leans_by_25_degrees(double height, Verdict verdict) =>
        Assert.Equal(verdict, GroundClearance.Check(Mm(height), Mm(170), Mm(20), Mm(170)).Verdict);

    [Theory]
    [InlineData(604, Verdict.Fits)]
    [InlineData(603.9, Verdict.NeedsMeasuring)]
    [InlineData(590, Verdict.NeedsMeasuring)]
    [InlineData(500, Verdict.NeedsMeasuring)]
    public void The_toe_is_measured_below_a_hundred(double centre, Verdict verdict) =>
        Assert.Equal(verdict, ToeClearance.Check(Mm(centre), Mm(334), Mm(170)).Verdict);

    [Fact]
    public void A_larger_front_wheel_takes_toe_clearance()
    {
        FrameGeometry larger = Drawn.WithWheels(Mm(380), Mm(380));
        Assert.Equal(-10, GeometryDifference.Between(Drawn, larger).ToeClearance.Millimeters, 1e-6);
        Assert.Equal(
            ToeClearance.Estimate(larger.FrontCentre, larger.FrontRadius, Mm(170)).Millimeters - ToeClearance.Estimate(Drawn.FrontCentre, Drawn.FrontRadius, Mm(170)).Millimeters,
            GeometryDifference.Between(Drawn, larger).ToeClearance.Millimeters,
            1e-6);
    }

    [Fact]
    public void A_wheel_by_its_label_and_by_its_roll_out()
    {
        Assert.Equal(334, WheelRadius.Nominal(TyreSize.Parse("23-622", null)).Millimeters, 1e-8);
        Assert.Equal(334, WheelRadius.OfRollOut(Mm(2 * Math.PI * 334)).Millimeters, 1e-8);
        Assert.Throws<ArgumentException>(() => WheelRadius.Nominal(default));
    }
}
