using Lugwork.Steering;

namespace Lugwork.Tests.Builds;

/// <summary>A cup outside the head tube has a height: "none" beside it is a contradiction, and is asked about.</summary>
public sealed class LowerStackTests
{
    private static FitReport With(string headset, string crowns = "single") =>
        Build.From(Frame.Read("head tube length 110; slackest head angle 66; fork of the design 500; head angle 67; wheelbase 1150")).With(Fork.Read($"axle to crown 500; steerer length 179.5; crowns {crowns}"))
            .With(Headset.Read(headset.Contains("upper stack", StringComparison.Ordinal) ? headset : $"upper stack 12; {headset}")).With(Stem.Read("clamp height 40; spacers below 10; spacers above none")).Check();

    private static Verdict? Of(FitReport report, string joint) => report.Findings.Where(f => f.Joint!.Id == joint).Select(f => (Verdict?)f.Verdict).SingleOrDefault();

    [Theory]
    [InlineData("lower EC34/30; lower stack none", false)]
    [InlineData("lower IS52/40; lower stack none", true)]
    [InlineData("lower ZS56/40; lower stack none", true)]
    public void None_is_taken_of_a_half_that_may_stand_inside_alone(string headset, bool taken)
    {
        FitReport report = With(headset);
        Assert.Equal(!taken, report.ToMeasure.Any(m => m.What.Slot == Slot.Headset && m.What.Field == "lowerStack"));
        Assert.Equal(taken ? Verdict.Fits : null, Of(report, "head-angle-not-too-slack"));
        Assert.Equal(taken ? null : Verdict.NeedsMeasuring, Of(report, "head-angle-with-headset"));
        Assert.Equal(taken, Of(report, "steerer-reaches-stem") != Verdict.NeedsMeasuring);
    }

    /// <summary>A cup that may be one outside or one inside is settled by no "none".</summary>
    [Fact]
    public void None_beside_a_cup_that_may_stand_outside_is_asked_about()
    {
        Known<HeadsetCup> outside = Headset.Read("lower EC34/30").LowerCup;
        Known<HeadsetCup> inside = Headset.Read("lower ZS56/40").LowerCup;
        Build build = With("lower stack none").Build;
        Headset either = ((Headset)build[Slot.Headset]!) with { LowerCup = Known<HeadsetCup>.OneOf([outside.Value, inside.Value]) };
        Assert.Contains(build.With(either).Check().ToMeasure, m => m.What.Slot == Slot.Headset && m.What.Field == "lowerStack");
        Assert.DoesNotContain(build.With(either with { LowerCup = inside }).Check().ToMeasure, m => m.What.Field == "lowerStack");
    }

    /// <summary>Every upper half has a height: "none" says nothing of it, and no sum of the steerer holds by it.</summary>
    [Fact]
    public void None_is_no_height_of_an_upper_half()
    {
        FitReport report = With("lower EC34/26.4; lower stack 12; upper EC34/28.6; upper stack none");
        Assert.Equal((Verdict.NeedsMeasuring, Verdict.NeedsMeasuring), (Of(report, "steerer-reaches-stem"), Of(report, "gap-under-cap")));
        Assert.Contains(report.ToMeasure, m => m.What.Slot == Slot.Headset && m.What.Field == "upperStack");
    }

    /// <summary>A fork has one crown or two. "none" is neither, and no sum of a steerer holds by it.</summary>
    [Fact]
    public void A_fork_without_a_crown_is_asked_about()
    {
        FitReport report = With("lower stack 10", "none");
        Assert.Equal((Verdict.NeedsMeasuring, Verdict.NeedsMeasuring), (Of(report, "steerer-reaches-stem"), Of(report, "gap-under-cap")));
        Assert.Equal((Verdict.Fits, Verdict.Fits), (Of(With("lower stack 10"), "steerer-reaches-stem"), Of(With("lower stack 10"), "gap-under-cap")));
    }
}
