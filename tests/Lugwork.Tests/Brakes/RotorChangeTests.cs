using Lugwork.Brakes;

namespace Lugwork.Tests.Brakes;

/// <summary>Another rotor, its adapter, and a lever against a brake.</summary>
public sealed class RotorChangeTests
{
    [Theory]
    [InlineData("160", "180", 10, 8.66, 5)]
    [InlineData("180", "160", -10, -8.66, -5)]
    [InlineData("200", "203", 1.5, 1.30, 0.75)]
    public void A_caliper_moves_half_the_growth_along_the_radius(string from, string to, double radius, double square, double along)
    {
        RotorChange change = RotorChange.Of(RotorSize.Parse(from, null), RotorSize.Parse(to, null));
        Assert.Equal(radius, change.AlongRadius.Millimeters, 9);
        Assert.Equal(square, change.SquareToPosts.Millimeters, 2);
        Assert.Equal(along, change.AlongPosts.Millimeters, 9);
        Assert.Equal("rotor-limit", RotorChange.Caution.Id);
    }

    [Fact]
    public void A_change_is_told_in_words() =>
        Assert.Equal("180 mm to 160 mm: the pads move 10 mm in", RotorChange.Of(RotorSize.Parse("180", null), RotorSize.Parse("160", null)).ToString());

    /// <summary>The problem with flat mount (a frame builder's reading of one maker's drawing): faces at 55.90, 64.56 and 73.22 mm for 160, 180 and 200.</summary>
    [Fact]
    public void The_move_square_to_the_posts_is_the_step_of_the_drawing_that_was_read()
    {
        foreach ((BrakeMount low, BrakeMount high) in new[] { (BrakeMount.Post160, BrakeMount.Post180), (BrakeMount.Post180, BrakeMount.Post200), (BrakeMount.Post200, BrakeMount.Post203) })
        {
            double step = (high.AxleToPostFace!.Value - low.AxleToPostFace!.Value).Millimeters;
            RotorChange change = RotorChange.Of(RotorSize.OfFitCode(low.NativeRotorMillimetres), RotorSize.OfFitCode(high.NativeRotorMillimetres));
            Assert.Equal(step, change.SquareToPosts.Millimeters, 0.011);
        }
    }

    [Theory]
    [InlineData("PM-160", "180", "180", Verdict.NeedsPart, "+20")]
    [InlineData("PM-160", "160", "180", Verdict.Fits, null)]
    [InlineData("PM-160", "203", "203", Verdict.NeedsPart, "+43")]
    [InlineData("PM-160", "203", "200", Verdict.Unsafe, null)]
    [InlineData("PM-160", "180", null, Verdict.NeedsMeasuring, "+20")]
    [InlineData("PM-180", "160", "203", Verdict.DoesNotFit, null)]
    [InlineData("IS-rear", "160", "180", Verdict.NeedsPart, "+20")]
    [InlineData("IS-front", "160", "180", Verdict.NeedsPart, "+0")]
    public void An_adapter_is_chosen_from_those_that_exist(string mount, string rotor, string? largest, Verdict expected, string? increment)
    {
        AdapterChoice choice = AdapterChoice.Of(BrakeMount.Parse(mount, null), CaliperFoot.Post, RotorSize.Parse(rotor, null), largest is null ? null : RotorSize.Parse(largest, null));
        Assert.True(expected == choice.Verdict, choice.ToString());
        Assert.Equal(increment, choice.Increment?.FitKey);
        Assert.Equal(increment is null, choice.Adapter.Length == 0);
        Assert.NotEmpty(choice.OnMount.Sources);
        Assert.NotEmpty(choice.Limit.Sources);
        Assert.DoesNotContain("{", choice.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("[bridge]", choice.ToString(), StringComparison.Ordinal);
        Assert.False(expected == Verdict.Unsafe && $"{choice}{choice.OnMount.Remedy}{choice.OnMount.Sentence}".Contains("mm of rotor", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("short", "direct-pull", 0.5, Verdict.Unsafe)]
    [InlineData("long", "direct-pull", 1.0, Verdict.Fits)]
    [InlineData("long", "rim-caliper", 2.0, Verdict.Unsafe)]
    [InlineData("short", "cantilever", 1.0, Verdict.Fits)]
    [InlineData("short", "disc-cable-off-road", 0.5, Verdict.DoesNotFit)]
    [InlineData("newer-road", "rim-caliper", null, Verdict.NeedsMeasuring)]
    [InlineData("short", "disc-hydraulic", null, Verdict.DoesNotFit)]
    public void A_lever_pulls_a_share_of_what_the_brake_wants(string lever, string brake, double? share, Verdict expected)
    {
        LeverAndBrake pair = LeverAndBrake.Of(CablePull.Parse(lever, null), BrakeType.Parse(brake, null));
        Assert.Equal((decimal?)share, pair.CableShare);
        Assert.Equal(share is null ? null : 1 / (decimal)share, pair.ForceShare);
        Assert.True(expected == pair.Check.Verdict, pair.ToString());
        Assert.DoesNotContain("{", pair.ToString(), StringComparison.Ordinal);
    }
}
