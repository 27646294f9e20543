namespace Lugwork.Tests.Builds;

/// <summary>Findings that someone accepts.</summary>
public sealed class WaiverTests
{
    private static Build Tight() => Build.From(Frame.Read("largestRearRotor 160")).With(Rotor.Read("180; six-bolt"), Slot.RearRotor);

    private static Build Mixed() => Build.From(Frame.Read("steel")).With(Wheel.Read("rim 622"), Slot.FrontWheel).With(Wheel.Read("rim 584"), Slot.RearWheel);

    [Fact]
    public void A_waived_finding_is_reported_with_its_reason_and_counts_as_before()
    {
        Build build = Mixed();
        Verdict before = build.Check().Verdict;
        FitReport report = build.Waive("wheels-of-one-size", "ridden so for years").Check();
        Assert.Equal(before, report.Verdict);
        WaivedFit waived = report.Waived.Single();
        Assert.Equal(("wheels-of-one-size", Verdict.NeedsMeasuring, "ridden so for years"), (waived.Fit.Joint!.Id, waived.Fit.Verdict, waived.Reason));
        Assert.Empty(report.Lapsed);
        Assert.Contains("Accepted, and still counted: Front and rear wheel, size: needs measuring, waived: ridden so for years.", report.ToString(), StringComparison.Ordinal);
        Assert.Contains("ridden so for years", report.ToJson(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_waiver_never_clears_what_is_unsafe()
    {
        Build build = Tight();
        Assert.Equal(Verdict.Unsafe, build.Check().Verdict);
        FitReport report = build.Waive("rear-rotor-within-limit", "the frame looks strong").Check();
        Assert.Equal(Verdict.Unsafe, report.Verdict);
        Assert.Equal(Verdict.Unsafe, report.Findings.Single(f => f.Joint!.Id == "rear-rotor-within-limit").Verdict);
        Assert.Single(report.Waived);
    }

    [Fact]
    public void A_waiver_lapses_when_either_part_changes_and_only_then()
    {
        Build waived = Mixed().Waive("wheels-of-one-size", "meant so");
        Assert.Single(waived.With(Saddle.Read("7-round")).Check().Waived);
        foreach (Build changed in new[] { waived.With(Wheel.Read("rim 559"), Slot.FrontWheel), waived.With(Wheel.Read("rim 584; innerWidth 25"), Slot.RearWheel) })
        {
            Assert.Empty(changed.Check().Waived);
            Assert.Equal("wheels-of-one-size", changed.Check().Lapsed.Single().JointId);
            Assert.Contains("lapsed: wheels-of-one-size", changed.Check().ToString(), StringComparison.Ordinal);
        }

        Assert.Single(waived.With(Wheel.Read("rim 559"), Slot.FrontWheel).With(Wheel.Read("rim 622"), Slot.FrontWheel).Check().Waived);
    }

    /// <summary>What was looked over is the one stem; another of the same figures was not.</summary>
    [Fact]
    public void The_condition_of_one_article_is_not_that_of_another()
    {
        Build waived = WholeBuilds.Load("01", "stem.condition=used").Waive("condition-of-stem", "looked over by me");
        Assert.Single(waived.Check().Waived);
        Build other = waived.With(waived[Slot.Stem]! with { Name = "another stem from the bin" }, Slot.Stem);
        Assert.Empty(other.Check().Waived);
        Assert.Equal("condition-of-stem", other.Check().Lapsed.Single().JointId);
        Assert.Single(other.With(waived[Slot.Stem]!, Slot.Stem).Check().Waived);
    }

    [Fact]
    public void A_name_takes_no_waiver_back()
    {
        Build waived = Mixed().Waive("wheels-of-one-size", "meant so");
        Build named = waived.With(waived[Slot.RearWheel]! with { Name = "the small one" }, Slot.RearWheel);
        Assert.Single(named.Check().Waived);
        Assert.Empty(named.Check().Lapsed);
        Assert.Single(BuildFile.Read(BuildFile.Write(named)).Check().Waived);
    }

    [Fact]
    public void A_waiver_of_what_fits_or_is_not_judged_or_says_nothing_is_refused()
    {
        Build build = Mixed();
        Assert.Throws<ArgumentException>(() => build.Waive("no-such-joint", "x"));
        Assert.Throws<ArgumentException>(() => build.Waive("seatpost-in-seat-tube", "x"));
        Assert.Throws<ArgumentException>(() => build.With(Wheel.Read("rim 622"), Slot.RearWheel).Waive("wheels-of-one-size", "x"));
        Assert.Throws<ArgumentException>(() => build.Waive("wheels-of-one-size", "  "));
        Assert.Throws<ArgumentException>(() => build.Waive("wheels-of-one-size", new string('x', 501)));
    }

    [Fact]
    public void Waivers_stand_in_the_build_file_and_hold_for_the_parts_that_stand_beside_them()
    {
        string file = BuildFile.Write(Mixed().Waive("wheels-of-one-size", "meant so"));
        Assert.Single(BuildFile.Read(file).Check().Waived);
        Assert.Single(BuildFile.Read(file.Replace("\"584\"", "\"559\"", StringComparison.Ordinal)).Check().Lapsed);
        string bare = """{"parts": {"frame": {}}, "waivers": [{"joint": "wheels-of-one-size", "reason": "meant so"}]}""";
        Assert.Single(BuildFile.Read(bare).Check().Lapsed);
    }

    [Theory]
    [InlineData("""{"joint": "magic", "reason": "x"}""", "$.waivers[0].joint")]
    [InlineData("""{"reason": "x"}""", "$.waivers[0].joint")]
    [InlineData("""{"joint": "wheels-of-one-size"}""", "$.waivers[0].reason")]
    [InlineData("""{"joint": "wheels-of-one-size", "reason": "x"}, {"joint": "wheels-of-one-size", "reason": "y"}""", "$.waivers[1].joint")]
    public void A_waiver_that_is_not_whole_is_refused(string waiver, string path)
    {
        Assert.False(BuildFile.TryRead("{\"parts\": {\"frame\": {}}, \"waivers\": [" + waiver + "]}", out _, out var problems));
        Assert.Equal(path, problems.Single().Where);
    }

    [Fact]
    public void A_waiver_can_be_taken_back() => Assert.Empty(Mixed().Waive("wheels-of-one-size", "x").WithoutWaiver("wheels-of-one-size").Waivers);
}
