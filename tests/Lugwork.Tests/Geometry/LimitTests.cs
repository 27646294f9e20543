using FsCheck;
using FsCheck.Xunit;
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
        SumCheck finding = limits.Check(Drawn, longer)[0];
        Assert.Equal(verdict, finding.Verdict);
        Assert.NotEmpty(finding.Cautions);
        Assert.All(new FrameLimits { LongestFork = Mm(552), SlackestHeadAngle = Deg(60) }.Check(Drawn, longer), f => Assert.Equal(Verdict.Fits, f.Verdict));
    }

    [Fact]
    public void What_changed_without_a_known_limit_is_asked_for_and_what_stayed_is_not()
    {
        Assert.Equal("nothing changed towards any limit of the frame", Assert.Single(new FrameLimits().Check(Drawn, Drawn)).Sentence);
        string[] asked = [.. new FrameLimits().Check(Drawn, Drawn.WithForkLongerBy(Mm(20))).Select(f => f.Figures[0].Name)];
        Assert.Equal(["axle to crown", "head angle"], asked);
        Assert.All(new FrameLimits().Check(Drawn, Drawn.WithWheels(Mm(380), Mm(350)).WithAngleHeadset(AngleHeadset.Of(Deg(1), Mm(0)))), f => Assert.Equal(Verdict.NeedsMeasuring, f.Verdict));
        Assert.Equal(["front wheel radius", "rear wheel radius", "bottom-bracket height", "head angle", "angle headset"], new FrameLimits().Check(Drawn, Drawn.WithWheels(Mm(380), Mm(350)).WithAngleHeadset(AngleHeadset.Of(Deg(1), Mm(0)))).Select(f => f.Figures[0].Name));
    }

    [Theory]
    [InlineData(1.5, "1.5 degrees slacker")]
    [InlineData(-0.75, "0.75 degrees steeper")]
    public void An_angle_headset_says_which_way_it_turns(double degrees, string text) => Assert.Equal(text, AngleHeadset.Of(Deg(degrees), Mm(0)).ToString());

    /// <summary>A lower stack that shrinks takes as much as a shorter fork, and one that grows gives it: the finding says so, and only then.</summary>
    [Fact]
    public void What_the_lower_stack_shrank_or_grew_by_is_told()
    {
        FrameLimits limits = new() { LongestFork = Mm(560), ShortestFork = Mm(500) };
        double stack = Drawn.LowerStack.Millimeters;
        string[] shrunk = Sentences(Drawn.WithLowerStack(Mm(stack)), Drawn.WithLowerStack(Mm(Math.Max(0, stack - 8))));
        string[] grown = Sentences(Drawn.WithLowerStack(Mm(stack)), Drawn.WithLowerStack(Mm(stack + 8)));
        Assert.Equal(stack > 0, shrunk.Any(s => s.Contains("less what the lower stack shrank by", StringComparison.Ordinal)));
        Assert.DoesNotContain(shrunk, s => s.Contains("grew", StringComparison.Ordinal));
        Assert.Contains(grown, s => s.Contains("with what the lower stack grew by", StringComparison.Ordinal));
        Assert.DoesNotContain(grown, s => s.Contains("shrank", StringComparison.Ordinal));

        string[] Sentences(FrameGeometry before, FrameGeometry after) => [.. limits.Check(before, after).Select(f => f.Sentence)];
    }

    [Fact]
    public void Each_limit_that_is_passed_is_named()
    {
        FrameLimits limits = new()
        {
            LongestFork = Mm(540), ShortestFork = Mm(500), LargestFrontRadius = Mm(372), LargestRearRadius = Mm(372), LeastBottomBracketHeight = Mm(310), SlackestHeadAngle = Deg(64.5), MostHeadsetAngle = Deg(0.5), LeastTrail = Mm(50), SteepestHeadAngle = Deg(80), SmallestRearRadius = Mm(300), SmallestFrontRadius = Mm(300),
        };
        Assert.Equal(["axle to crown", "front wheel radius", "head angle", "angle headset"], Unsafe(Drawn.WithForkLongerBy(Mm(30)).WithWheels(Mm(375), Mm(370)).WithAngleHeadset(AngleHeadset.Of(Deg(1), Mm(0)))));
        Assert.Equal(["axle to crown", "bottom-bracket height"], Unsafe(Drawn.WithForkLongerBy(Mm(-40))));
        Assert.Equal(["rear wheel radius"], Unsafe(Drawn.WithWheels(Mm(370), Mm(373))));
        Assert.Empty(Unsafe(Drawn));

        string[] Unsafe(FrameGeometry after) => [.. limits.Check(Drawn, after).Where(f => f.Verdict == Verdict.Unsafe).Select(f => f.Figures[0].Name)];
    }

    /// <summary>Of the largest change that is built: every limit is set, and still the wheel turns away by itself.</summary>
    [Fact]
    public void A_trail_of_zero_or_below_is_unsafe_whatever_is_allowed()
    {
        FrameLimits limits = new()
        {
            LongestFork = Mm(900), ShortestFork = Mm(150), LargestFrontRadius = Mm(500), SmallestFrontRadius = Mm(100), LargestRearRadius = Mm(500), SmallestRearRadius = Mm(100),
            LeastBottomBracketHeight = Mm(50), SlackestHeadAngle = Deg(30), SteepestHeadAngle = Deg(110), MostHeadsetAngle = Deg(3.0), LeastForkOffset = Mm(0), MostForkOffset = Mm(120), LeastTrail = Mm(1),
        };
        FrameGeometry after = Drawn.WithForkOffset(Mm(118)).WithWheels(Mm(200), Mm(370)).WithAngleHeadset(AngleHeadset.Of(Deg(-3), Mm(50)));
        Assert.True(after.Trail.Millimeters < 0);
        SumCheck finding = Assert.Single(limits.Check(Drawn, after), f => f.Figures[0].Name == "trail");
        Assert.Equal(Verdict.Unsafe, finding.Verdict);
        Assert.NotEmpty(finding.Cautions);
        Assert.Equal(Verdict.Unsafe, Assert.Single(new FrameLimits().Check(after, after)).Verdict);
    }

    [Fact]
    public void Less_trail_another_offset_a_steeper_axis_and_a_smaller_wheel_are_asked_for()
    {
        Assert.Equal(["fork offset", "trail"], Asked(Drawn.WithForkOffset(Mm(51)), "bottom-bracket height", "head angle", "axle to crown"));
        Assert.Equal(["fork offset"], Asked(Drawn.WithForkOffset(Mm(37)), "bottom-bracket height", "head angle", "axle to crown"));
        Assert.Equal(["front wheel radius", "bottom-bracket height", "head angle", "trail"], Asked(Drawn.WithWheels(Mm(350), Mm(370))));
        Assert.Equal(["rear wheel radius", "bottom-bracket height", "head angle"], Asked(Drawn.WithWheels(Mm(370), Mm(350))));

        static string[] Asked(FrameGeometry after, params string[] but) => [.. new FrameLimits().Check(Drawn, after).Where(f => f.Verdict == Verdict.NeedsMeasuring).Select(f => f.Figures[0].Name).Except(but)];
    }

    /// <summary>A fork of 531 mm on a lower stack that grew by 28 lifts the frame like one of 559.</summary>
    [Fact]
    public void What_the_lower_stack_grows_by_counts_for_the_fork()
    {
        FrameGeometry after = Drawn.WithLowerStack(Drawn.LowerStack + Mm(28));
        FrameLimits limits = new() { LongestFork = Mm(550), SlackestHeadAngle = Deg(60) };
        SumCheck finding = limits.Check(Drawn, after)[0];
        Assert.Equal(Verdict.Unsafe, finding.Verdict);
        Assert.Equal("axle to crown 559 mm with what the lower stack grew by, the frame maker's most is 550 mm", finding.Sentence);
        Assert.All(new FrameLimits { LongestFork = Mm(560), SlackestHeadAngle = Deg(60) }.Check(Drawn, after), f => Assert.Equal(Verdict.Fits, f.Verdict));
        Assert.Contains("axle to crown", new FrameLimits().Check(Drawn, after).Select(f => f.Figures[0].Name));
        Assert.Contains(new FrameLimits { ShortestFork = Mm(525) }.Check(Drawn, Drawn.WithLowerStack(Drawn.LowerStack - Mm(8))), f => f.Verdict == Verdict.Unsafe && f.Figures[0].Name == "axle to crown");
    }

    /// <summary>No figure that is changed goes by without its limit.</summary>
    [Property(MaxTest = 500)]
    public void Any_change_without_a_known_limit_is_told(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        FrameGeometry frame = Any(random).ToGeometry();
        double by = (random.Next(2) * 2 - 1) * (0.01 + (random.NextDouble() * 20));
        FrameGeometry[] changed =
        [
            frame.WithForkLongerBy(Mm(by)), frame.WithForkOffset(frame.ForkOffset + Mm(by)), frame.WithWheels(frame.FrontRadius + Mm(by), frame.RearRadius), frame.WithWheels(frame.FrontRadius, frame.RearRadius + Mm(by)),
            frame.WithWheels(frame.FrontRadius + Mm(by), frame.RearRadius + Mm(by)), frame.WithLowerStack(frame.LowerStack + Mm(Math.Abs(by))), frame.WithAngleHeadset(AngleHeadset.Of(Deg(by / 10), Mm(40))),
        ];
        Assert.All(changed, after => Assert.NotEmpty(new FrameLimits().Check(frame, after)));
        Assert.All(changed, after => Assert.DoesNotContain(new FrameLimits().Check(frame, after), f => f.Verdict == Verdict.Fits));
        Assert.Contains(new FrameLimits().Check(changed[6], frame.WithAngleHeadset(AngleHeadset.Of(Deg(-by / 10), Mm(40)))), f => f.Figures[0].Name == "angle headset");
    }

    [Fact]
    public void One_degree_is_told_in_the_singular()
    {
        FrameGeometry after = Drawn.WithAngleHeadset(AngleHeadset.Of(Deg(1), Mm(0)));
        Assert.Contains(new FrameLimits().Check(Drawn, after), f => f.Sentence.Contains("is now 1 degree;", StringComparison.Ordinal));
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
    [InlineData(264.28, Verdict.Fits)]
    [InlineData(264.26, Verdict.NeedsMeasuring)]
    [InlineData(259.28, Verdict.NeedsMeasuring)]
    [InlineData(259.26, Verdict.Unsafe)]
    public void The_pedal_leans_by_25_degrees(double height, Verdict verdict) =>
        Assert.Equal(verdict, GroundClearance.Check(Mm(height), Mm(170), Mm(20), Mm(170)).Verdict);

    [Fact]
    public void A_pedal_has_a_height() => Assert.Throws<ArgumentOutOfRangeException>(() => GroundClearance.Check(Mm(270), Mm(170), Mm(0), Mm(170)));

    [Theory]
    [InlineData(604, "at least the 100 mm of one test")]
    [InlineData(603.9, "below the 100 mm of one test; measure with the wheel turned")]
    [InlineData(593, "below the 100 mm of one test; measure with the wheel turned")] // 89
    [InlineData(592.9, "below the 89 mm of the regulation; measure with the wheel turned")]
    [InlineData(503.9, "the shoe reaches past the tyre; measure with the wheel turned")]
    public void The_toe_is_told_by_the_figure_that_it_passes(double centre, string told)
    {
        Assert.EndsWith(", " + told, ToeClearance.Check(Mm(centre), Mm(334), Mm(170)).Sentence, StringComparison.Ordinal);
        Assert.Equal(89, ToeClearance.Least.Millimeters);
        Assert.Equal(100, ToeClearance.Ample.Millimeters);
    }

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

    [Fact]
    public void Room_at_the_toe_is_what_is_left_and_takes_the_ends_of_its_ranges()
    {
        Assert.Equal(50, ToeClearance.Estimate(Mm(250), Mm(100), Mm(100)).Millimeters, 9);
        Assert.Equal(530, ToeClearance.Estimate(Mm(1_300), Mm(520), Mm(250)).Millimeters, 9);
        Assert.Throws<ArgumentOutOfRangeException>(() => ToeClearance.Estimate(Mm(249.9), Mm(100), Mm(100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToeClearance.Estimate(Mm(1_300.1), Mm(520), Mm(250)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToeClearance.Estimate(Mm(600), Mm(520.1), Mm(170)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToeClearance.Estimate(Mm(600), Mm(340), Mm(250.1)));
    }
}
