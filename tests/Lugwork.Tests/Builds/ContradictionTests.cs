using Lugwork.Drivetrain;

namespace Lugwork.Tests.Builds;

public sealed class ContradictionTests
{
    [Theory]
    [InlineData("HG-8; speeds 12")]
    [InlineData("speeds 12; HG-8")]
    [InlineData("pattern HG-12-road; sprockets 11")]
    [InlineData("pattern XD; sprockets 9")]
    public void Sprockets_that_the_pattern_is_not_made_with_are_refused(string text)
    {
        Assert.False(Cassette.TryRead(text, out _, out var problems));
        Assert.Equal("speeds", Assert.Single(problems).Where);
    }

    [Theory]
    [InlineData("HG-8; speeds 8")]
    [InlineData("XD; speeds 12")]
    [InlineData("freewheel; speeds 7")]
    [InlineData("3-lug; sprockets 1/8")]
    [InlineData("HG-8; speeds unknown")]
    public void Sprockets_that_the_pattern_may_have_stand_beside_it(string text) => Assert.True(Cassette.TryRead(text, out _, out _));

    [Theory]
    [InlineData("12")]
    [InlineData("8")]
    public void A_cassette_made_in_code_that_contradicts_itself_fits_nothing(string chain)
    {
        Cassette cassette = new() { Pattern = Known<CassettePattern>.Of(CassettePattern.Hg8), Speeds = Known<SprocketClass>.Of(SprocketClass.For12) };
        Fit onChain = Bench.Judge("chain-on-cassette", "material steel", (Slot.Cassette, cassette), (Slot.Chain, Chain.Read(chain)));
        Fit onBody = Bench.Judge("cassette-on-freehub-body", "material steel", (Slot.Cassette, cassette), (Slot.RearWheel, Wheel.Read("body HG-M")));
        Assert.Equal((Verdict.NeedsMeasuring, Verdict.NeedsMeasuring), (onChain.Verdict, onBody.Verdict));
    }

    [Fact]
    public void Where_the_completions_need_different_shims_one_is_bought_and_the_bore_is_measured()
    {
        FitReport report = Build.From(Frame.Read("seatTube 30.9 | 31.6")).With(Seatpost.Read("27.2"), Slot.Seatpost).Check();
        Fit fit = report.Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube");
        Assert.Equal(Verdict.NeedsPart, fit.Verdict);
        Assert.StartsWith("one of these", Assert.Single(fit.Remedies).What, StringComparison.Ordinal);
        Assert.Contains("; or ", fit.Sentence, StringComparison.Ordinal);
        Assert.Equal("seatTube", Assert.Single(fit.Measurements).Field);
        Assert.Single(report.PartsToAdd);
        Assert.Contains(report.ToMeasure, m => m.What.Field == "seatTube");
    }

    [Theory]
    [InlineData("T47", "T47-68")]
    [InlineData("BB30", "BB30-68")]
    [InlineData("PF30", "PF30-68")]
    public void The_bare_name_of_a_bracket_means_what_the_named_field_means(string name, string shell)
    {
        BottomBracket bare = BottomBracket.Read(name);
        Assert.Equal(BottomBracket.Read("family " + name).Family.ToString(), bare.Family.ToString());
        Assert.Equal(Verdict.Fits, Bench.Judge("bottom-bracket-in-shell", "shell " + shell, (Slot.BottomBracket, bare)).Verdict);
        Assert.Equal("T47A", BottomBracket.Read("T47 77").Family.ToString());
    }
}
