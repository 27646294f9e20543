using FsCheck;
using FsCheck.Xunit;

namespace Lugwork.Tests.Builds;

/// <summary>Every judgement can be checked by a person.</summary>
public sealed class ExplainTests
{
    [Property(MaxTest = 150)]
    public void An_explanation_holds_what_was_compared_the_relation_the_sources_and_the_weakest_leg(DoNotSize<int> seed)
    {
        Build build = Bicycles.Any(new Random(seed.Item));
        foreach (Fit fit in build.Check().Findings)
        {
            string told = fit.Explain();
            Assert.Contains(fit.Joint!.Id, told, StringComparison.Ordinal);
            Assert.Contains(fit.Joint.RelationInWords, told, StringComparison.Ordinal);
            Assert.Contains(fit.Sentence, told, StringComparison.Ordinal);
            Assert.All(fit.Compared, c => Assert.Contains(c.Value, told, StringComparison.Ordinal));
            Assert.All(fit.Sources, s => Assert.Contains(s.ToString(), told, StringComparison.Ordinal));
            Assert.All(fit.Remedies, r => Assert.Contains(r.What, told, StringComparison.Ordinal));
            Assert.EndsWith("confidence).", told, StringComparison.Ordinal);
            Assert.DoesNotContain("[bridge]", told, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Evidence_goes_with_each_figure()
    {
        Build build = Build.From(Frame.Read("seat tube 27.18 ± 0.05") with { Name = "old frame" }).With(Seatpost.Read("27.2") with { Name = "B" });
        string told = build.Check().Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube").Explain();
        Assert.Contains("frame (old frame), seat tube bore: 27.2; measured: \"27.18 ± 0.05\"", told, StringComparison.Ordinal);
        Assert.Contains("seatpost (B), seatpost diameter: 27.2; stated: \"27.2\"", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bridge_is_told_with_what_it_moves()
    {
        Build build = Build.From(Frame.Read("rear 12x142; material carbon")).With(Wheel.Read("hub R135-QR; ends swappable"), Slot.RearWheel);
        string told = build.Check().Findings.Single(f => f.Joint!.Id == "rear-wheel-in-frame").Explain();
        Assert.Contains("hub-r135-qr-in-r142-12", told, StringComparison.Ordinal);
        Assert.Contains("each hub end +3.5 mm", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_default_explains_that_nothing_was_judged() => Assert.Equal("Nothing was judged.", default(Fit).Explain());

    [Fact]
    public void Unknown_is_said_to_be_not_known()
    {
        Build build = Build.From(Frame.Read("seat tube 27.2")).With(new Seatpost());
        Assert.Contains("seatpost diameter: unknown; not known", build.Check().Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube").Explain(), StringComparison.Ordinal);
    }
}
