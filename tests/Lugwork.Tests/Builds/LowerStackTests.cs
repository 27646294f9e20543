namespace Lugwork.Tests.Builds;

/// <summary>A cup outside the head tube has a height: "none" beside it is a contradiction, and is asked about.</summary>
public sealed class LowerStackTests
{
    private static FitReport With(string headset, string crowns = "single") =>
        Build.From(Frame.Read("head tube length 110; slackest head angle 66; fork of the design 500; head angle 67; wheelbase 1150")).With(Fork.Read($"axle to crown 500; steerer length 179.5; crowns {crowns}"))
            .With(Headset.Read($"upper stack 12; {headset}")).With(Stem.Read("clamp height 40; spacers below 10; spacers above none")).Check();

    private static Verdict? Of(FitReport report, string joint) => report.Fits.Where(f => f.Joint!.Id == joint).Select(f => (Verdict?)f.Verdict).SingleOrDefault();

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

    /// <summary>A fork has one crown or two. "none" is neither, and no sum of a steerer holds by it.</summary>
    [Fact]
    public void A_fork_without_a_crown_is_asked_about()
    {
        FitReport report = With("lower stack 10", "none");
        Assert.Equal((Verdict.NeedsMeasuring, Verdict.NeedsMeasuring), (Of(report, "steerer-reaches-stem"), Of(report, "gap-under-cap")));
        Assert.Equal((Verdict.Fits, Verdict.Fits), (Of(With("lower stack 10"), "steerer-reaches-stem"), Of(With("lower stack 10"), "gap-under-cap")));
    }
}
