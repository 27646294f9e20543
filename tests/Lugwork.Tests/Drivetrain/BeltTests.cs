using Lugwork.Drivetrain;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Belts: the frame has to open, and only belt sprockets carry one.</summary>
public sealed class BeltTests
{
    private const string Joint = "belt-through-rear-triangle";

    [Theory]
    [InlineData("rear triangle opens", "belt", Verdict.Fits, "frame-opens")]
    [InlineData("rear triangle split seat stay", "carbon belt", Verdict.Fits, "frame-opens")]
    [InlineData("rear triangle closed", "belt", Verdict.DoesNotFit, "frame-closed")]
    [InlineData("rear 12x142", "belt drive", Verdict.NeedsMeasuring, "open")]
    [InlineData("rear triangle none", "belt", Verdict.NeedsMeasuring, "no-rear-triangle")]
    [InlineData("rear triangle proprietary", "belt", Verdict.NeedsMeasuring, "not-covered")]
    [InlineData("rear triangle closed", "11", Verdict.Fits, "chain-opens")]
    [InlineData("rear triangle opens", "1/8", Verdict.Fits, "chain-opens")]
    [InlineData("rear 12x142", "9 | 10", Verdict.Fits, "chain-opens")]
    [InlineData("rear triangle opens", "9 | belt", Verdict.Fits, "frame-opens")]
    [InlineData("rear triangle closed", "9 | belt", Verdict.NeedsMeasuring, "open")]
    [InlineData("rear triangle closed", "unknown", Verdict.NeedsMeasuring, "open")]
    [InlineData("rear triangle closed", "none", Verdict.DoesNotFit, "nothing-to-mate")]
    public void A_belt_wants_a_frame_that_opens_and_a_chain_does_not_ask(string frame, string chain, Verdict expected, string reason)
    {
        Fit fit = Bench.Judge(Joint, frame, (Slot.Chain, Chain.Read("size " + chain)));
        Assert.Equal(expected, fit.Verdict);
        Assert.True(chain.Contains('|', StringComparison.Ordinal) || fit.ReasonId == reason, fit.ToString());
    }

    [Fact]
    public void A_belt_in_a_closed_frame_is_left_to_a_frame_builder()
    {
        Fit fit = Bench.Judge(Joint, "rear triangle closed", (Slot.Chain, Chain.Read("belt")));
        Assert.Contains("frame builder", Assert.Single(fit.Remedies).What, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_known_of_the_frame_is_looked_at_with_a_belt_only()
    {
        Measurement look = Assert.Single(Bench.Judge(Joint, "rear 12x142", (Slot.Chain, Chain.Read("belt"))).Measurements);
        Assert.Equal(("rearTriangle", "Look for a joint in the right seat stay, chain stay or drop-out that unbolts."), (look.Field, look.How));
        Assert.DoesNotContain(Bench.WholeBicycle().Check().ToMeasure, m => m.What.Field == "rearTriangle");
        Assert.Contains("tensioned", string.Join(' ', Bench.Judge(Joint, "rear triangle opens", (Slot.Chain, Chain.Read("belt"))).Cautions), StringComparison.Ordinal);
    }

    [Fact]
    public void A_belt_runs_on_belt_sprockets_only_and_no_chain_on_them()
    {
        foreach (Relation relation in new[] { ChainRelations.OnSprockets, ChainRelations.OnRings })
        {
            foreach (SprocketClass teeth in SprocketClass.All)
            {
                Verdict belt = relation.Judge([teeth.FitCode, ChainSize.Belt.FitCode]).Verdict;
                Assert.Equal(teeth == SprocketClass.Belt ? Verdict.NeedsMeasuring : Verdict.DoesNotFit, belt);
            }

            Assert.All(ChainSize.All.Where(c => c.Opens), c => Assert.Equal(Verdict.DoesNotFit, relation.Judge([SprocketClass.Belt.FitCode, c.FitCode]).Verdict));
        }

        Assert.All(ChainSize.All, c => Assert.Equal(Verdict.DoesNotFit, ChainRelations.ThroughDerailleur.Judge([c.FitCode, ChainSize.Belt.FitCode]).Verdict));
        Assert.All(ChainSize.All, c => Assert.Equal(Verdict.DoesNotFit, ChainRelations.ThroughDerailleur.Judge([ChainSize.Belt.FitCode, c.FitCode]).Verdict));
    }

    [Fact]
    public void A_belt_has_no_chain_lengths_and_is_never_read_from_a_caliper()
    {
        Assert.False(ChainSize.Belt.Opens);
        Assert.Null(ChainSize.Belt.InnerWidth);
        Assert.Null(ChainSize.Belt.LeastOverRivets);
        Assert.All(ChainSize.All.Where(c => c != ChainSize.Belt), c => Assert.True(c.Opens && c.InnerWidth is not null));
        for (decimal width = 0.1m; width < 20m; width += 0.1m)
        {
            Assert.DoesNotContain(ChainSize.Belt, ChainSize.WithinError(width, 1m));
            Assert.DoesNotContain(ChainSize.Identify(MeasuredLength.OfMillimetres(width, 1m)).Candidates, c => c.Value == ChainSize.Belt);
        }
    }

    [Fact]
    public void A_hub_gear_with_a_belt_asks_for_no_derailleur_and_only_for_the_belts_system()
    {
        Build build = Bench.WholeBicycle().Without(Slot.RearDerailleur).Without(Slot.FrontDerailleur).Without(Slot.FrontShifter).Without(Slot.ChainGuide).Without(Slot.Chainring).Without(Slot.Rider)
            .With(Wheel.Read("hub R142-12; ends swappable; body IGH-3lug; six-bolt; beadSeat 622; innerWidth 21; rimType TC; brake track aluminium; axle thread M10x1; washers horizontal; hold clincher; valve hole 6.5; rim depth 24; bed hole 9"), Slot.RearWheel)
            .With(Cassette.Read("pattern 3-lug; sprockets belt; spacing single"))
            .With(Crankset.Read("spindle 24-road; pedals 9/16; rings belt; bolt circle none; direct mount none; largest ring 46; designed width none; crank length 170; Q factor 146"))
            .With(Chain.Read("belt"))
            .With(Shifter.Read("cable; pull R; spacing 9; with derailleur none; with sprockets allowed"), Slot.RearShifter);
        build = Rebuilt(build, build.Frame with { RearTriangle = Known<RearTriangle>.Of(RearTriangle.Opens), RearDropout = Known<Lugwork.Hubs.DropoutSlot>.Of(Lugwork.Hubs.DropoutSlot.Horizontal) });
        FitReport report = build.Check();
        Assert.True(report.IsComplete);
        Assert.Equal(["chain-on-cassette", "chain-on-rings"], report.Findings.Where(f => f.Verdict != Verdict.Fits).Select(f => f.Joint!.Id));
        Assert.All(report.Findings.Where(f => f.Verdict != Verdict.Fits), f => Assert.Equal("belt-systems", f.ReasonId));
        Assert.Equal(Verdict.NeedsMeasuring, report.Verdict);
    }

    private static Build Rebuilt(Build build, Frame frame) =>
        Slot.All.Where(s => s != Slot.Frame && build[s] is not null).Aggregate(Build.From(frame), (b, s) => b.With(build[s]!, s));
}
