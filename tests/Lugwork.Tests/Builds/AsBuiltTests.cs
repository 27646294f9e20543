namespace Lugwork.Tests.Builds;

/// <summary>What was measured on the parts of a build and cut.</summary>
public sealed class AsBuiltTests
{
    private static readonly DateOnly Day = new(2026, 5, 1);

    private static Build Uncut() => Build.From(Frame.Read("head tube length 130"))
        .With(Fork.Read("threadless; steerer 28.6; crowns single; steerer length 300")).With(Headset.Read("upper stack 12; lower stack 10")).With(Stem.Read("28.6 clamp; clamp height 40; spacers below 10; spacers above 5"))
        .With(Seatpost.Read("27.2 x 400; mark 80")).With(Chain.Read("11; pitches 116")).With(Handlebar.Read("31.8; width 800"));

    private static Verdict Of(Build build, string check) => build.Check().Findings.Single(f => f.Joint!.Id == check).Verdict;

    private static string Reason(Action act) => Assert.Throws<SpecException>(act).Problems.Single().Reason;

    [Fact]
    public void A_cut_steerer_is_what_the_next_check_reads()
    {
        Build cut = Uncut().WithCut(Slot.Fork, "steererLength", "203", "guide, square", Day);
        Assert.Equal(203m, ((Fork)cut[Slot.Fork]!).SteererLength.Value.Millimetres);
        Assert.Equal((Verdict.Fits, Verdict.Fits), (Of(cut, "steerer-reaches-stem"), Of(cut, "gap-under-cap")));
        Assert.Equal(Verdict.Unsafe, Of(cut.WithCut(Slot.Fork, "steererLength", "196.9"), "steerer-reaches-stem"));
        Assert.Equal(new(Slot.Fork, "steererLength", "203", AsBuiltKind.Cut, "300", "guide, square", Day), cut.AsBuilt.Single());
        Assert.Equal("fork, length of the steerer: 203, cut, was 300 (2026-05-01): guide, square", cut.AsBuilt.Single().ToString());
        Assert.Contains("measured: \"cut to 203 on 2026-05-01, guide, square\"", cut.Check().Findings.Single(f => f.Joint!.Id == "steerer-reaches-stem").Explain(), StringComparison.Ordinal);
        Assert.Empty(Uncut().AsBuilt);
    }

    [Theory]
    [InlineData("fork", "steererLength", "300.1", "300", "a steerer")]
    [InlineData("seatpost", "length", "401", "400", "a post")]
    [InlineData("chain", "pitches", "118", "116", "a chain")]
    [InlineData("handlebar", "width", "820", "800", "a bar")]
    public void Cutting_only_shortens(string slot, string field, string longer, string same, string called)
    {
        Slot place = Slot.Find(slot)!;
        string reason = Reason(() => Uncut().WithCut(place, field, longer));
        Assert.Contains($"{called} is only made shorter", reason, StringComparison.Ordinal);
        Assert.Contains(same, reason, StringComparison.Ordinal);
        Assert.Equal(longer, Uncut().WithMeasured(place, field, longer).AsBuilt.Single().Value);

        Build build = Uncut().WithCut(place, field, same);
        Assert.Equal(same, build.AsBuilt.Single().Value);
        Assert.Contains("only made shorter", Reason(() => Uncut().WithCut(place, field, "100").WithCut(place, field, "102")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_within_its_error_of_what_was_stated_is_taken()
    {
        Assert.Equal("300.5 \u00B1 1", Uncut().WithMeasured(Slot.Fork, "steererLength", "300.5 \u00B1 1").AsBuilt.Single().Value);
        Assert.Contains("longer", Reason(() => Uncut().WithCut(Slot.Fork, "steererLength", "302 \u00B1 1")), StringComparison.Ordinal);
        Build twice = Uncut().WithMeasured(Slot.Fork, "steererLength", "300.5 \u00B1 1").WithMeasured(Slot.Fork, "steererLength", "302 \u00B1 1");
        Assert.Equal(twice.AsBuilt, BuildFile.Read(BuildFile.Write(twice)).AsBuilt);
    }

    [Fact]
    public void What_is_measured_above_the_stated_length_is_the_truth_from_which_it_is_cut()
    {
        Build cut = Uncut().WithMeasured(Slot.Handlebar, "width", "802").WithCut(Slot.Handlebar, "width", "801");
        Assert.Equal(("801", "802"), (cut.AsBuilt.Single().Value, cut.AsBuilt.Single().Was));
        Assert.Equal(cut.AsBuilt, BuildFile.Read(BuildFile.Write(cut)).AsBuilt);
        Assert.Contains("longer", Reason(() => Uncut().WithMeasured(Slot.Handlebar, "width", "802").WithCut(Slot.Handlebar, "width", "802.1")), StringComparison.Ordinal);
        Assert.Equal("800", Uncut().WithMeasured(Slot.Handlebar, "width", "802").WithCut(Slot.Handlebar, "width", "790").AsBuilt.Single().Was);
    }

    [Fact]
    public void A_reading_after_a_cut_keeps_the_cut_and_is_held_against_it()
    {
        Build cut = Uncut().WithCut(Slot.Fork, "steererLength", "203", "square", Day);
        Build read = cut.WithMeasured(Slot.Fork, "steererLength", "204", "again").WithMeasured(Slot.Fork, "steererLength", "206");
        Assert.Equal((AsBuiltKind.Measured, "300", new("203", "square", Day)), (read.AsBuilt.Single().Kind, read.AsBuilt.Single().Was, read.AsBuilt.Single().Cut));
        Assert.Contains("cut to 203", read.AsBuilt.Single().ToString(), StringComparison.Ordinal);
        Assert.Equal(read.AsBuilt, BuildFile.Read(BuildFile.Write(read)).AsBuilt);
        Assert.Contains("cut to 203", Reason(() => read.WithMeasured(Slot.Fork, "steererLength", "206.1")), StringComparison.Ordinal);
        Assert.Null(read.WithCut(Slot.Fork, "steererLength", "200").AsBuilt.Single().Cut);
    }

    [Theory]
    [InlineData("none")]
    [InlineData("not covered")]
    [InlineData("180 | 200")]
    public void A_thing_is_cut_to_one_figure(string text)
    {
        Assert.NotEmpty(Reason(() => Uncut().WithCut(Slot.Fork, "steererLength", text)));
        Assert.NotEmpty(Reason(() => Uncut().WithMeasured(Slot.Fork, "steererLength", text)));
        Assert.Equal("180 \u00B1 1", Uncut().WithCut(Slot.Fork, "steererLength", "180 \u00B1 1").AsBuilt.Single().Value);
        Assert.Equal("none", Uncut().WithMeasured(Slot.Fork, "knobRise", "none").AsBuilt.Single().Value);
    }

    [Fact]
    public void What_was_not_stated_can_be_measured_to_any_length_and_cut_from_there()
    {
        Build bare = Build.From(new Frame()).With(new Fork());
        Build measured = bare.WithMeasured(Slot.Fork, "steererLength", "250");
        Assert.Equal("unknown", measured.AsBuilt.Single().Was);
        Build cut = measured.WithCut(Slot.Fork, "steererLength", "180");
        Assert.Equal(("180", AsBuiltKind.Cut, "unknown"), (cut.AsBuilt.Single().Value, cut.AsBuilt.Single().Kind, cut.AsBuilt.Single().Was));
    }

    [Fact]
    public void Every_other_field_can_be_measured_either_way()
    {
        Build build = Uncut().WithMeasured(Slot.Frame, "seatTube", "27.2").WithMeasured(Slot.Stem, "spacersBelow", "20").WithMeasured(Slot.Frame, "headTubeLength", "131");
        Assert.Equal(["headTubeLength", "seatTube", "spacersBelow"], build.AsBuilt.Select(v => v.Field));
        Assert.Equal(131m, build.Frame.HeadTubeLength.Value.Millimetres);
        Assert.Equal(EvidenceKind.Measured, build.Frame.HeadTubeLength.Evidence!.Kind);
    }

    [Fact]
    public void What_cannot_be_measured_or_cut_is_refused_and_says_why()
    {
        Build build = Uncut();
        Assert.Throws<ArgumentException>(() => build.WithMeasured(Slot.Saddle, "depth", "45"));
        Assert.Throws<ArgumentException>(() => build.WithMeasured(Slot.Fork, "steererLength", "200", new string('x', 501)));
        Assert.Contains("no such field", Reason(() => build.WithMeasured(Slot.Fork, "steererlength", "200")), StringComparison.Ordinal);
        Assert.Contains("no such field", Reason(() => build.WithMeasured(Slot.Frame, "headTube", "ZS44/ZS56")), StringComparison.Ordinal);
        Assert.Contains("nothing that is cut", Reason(() => build.WithCut(Slot.Frame, "headTubeLength", "120")), StringComparison.Ordinal);
        Assert.Contains("unknown", Reason(() => build.WithCut(Slot.Fork, "steererLength", "unknown")), StringComparison.Ordinal);
        Assert.NotEmpty(Reason(() => build.WithCut(Slot.Fork, "steererLength", "-5")));
        Assert.NotEmpty(Reason(() => build.WithCut(Slot.Chain, "pitches", "113.5")));
        Assert.Contains("mark", Reason(() => build.WithCut(Slot.Seatpost, "length", "60")), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_part_takes_what_was_built_with_the_old_one_along()
    {
        Build cut = Uncut().WithCut(Slot.Fork, "steererLength", "203").WithMeasured(Slot.Stem, "spacersBelow", "10");
        Assert.Equal("spacersBelow", cut.With(Fork.Read("steerer length 300")).AsBuilt.Single().Field);
        Assert.Equal("spacersBelow", cut.With(Fork.Read("steerer length 203")).AsBuilt.Single().Field);
        Assert.Equal("spacersBelow", cut.Without(Slot.Fork).AsBuilt.Single().Field);
        Assert.Equal(2, cut.With(((Fork)cut[Slot.Fork]!) with { Name = "named" }).AsBuilt.Length);
        Assert.Equal(2, cut.With(new Saddle()).AsBuilt.Length);
        Assert.Equal(2, cut.WithSmallPart("grease").AsBuilt.Length);
    }

    [Fact]
    public void A_file_keeps_what_was_built_and_a_report_tells_it()
    {
        Build cut = Uncut().WithCut(Slot.Fork, "steererLength", "203", "square", Day).WithMeasured(Slot.Frame, "seatTube", "27.2").WithCut(Slot.Chain, "pitches", "110");
        Build read = BuildFile.Read(BuildFile.Write(cut));
        Assert.Equal(cut.AsBuilt, read.AsBuilt);
        Assert.Equal(BuildFile.Write(cut), BuildFile.Write(read));
        Assert.Equal(EvidenceKind.Measured, ((Fork)read[Slot.Fork]!).SteererLength.Evidence!.Kind);
        Assert.Contains("only made shorter", Reason(() => read.WithCut(Slot.Fork, "steererLength", "204")), StringComparison.Ordinal);
        using System.Text.Json.JsonDocument json = System.Text.Json.JsonDocument.Parse(read.Check().ToJson());
        Assert.Equal(["frame seatTube 27.2 measured unknown", "fork steererLength 203 cut 300", "chain pitches 110 cut 116"], json.RootElement.GetProperty("asBuilt").EnumerateArray().Select(v => string.Join(' ', new[] { "slot", "field", "value", "kind", "was" }.Select(n => v.GetProperty(n).GetString()))));
    }

    [Theory]
    [InlineData("""{"slot": "magic", "field": "steererLength", "kind": "cut"}""", "$.asBuilt[0].slot")]
    [InlineData("""{"slot": "stem", "field": "clampHeight", "kind": "measured"}""", "$.asBuilt[0].slot")]
    [InlineData("""{"slot": "fork", "field": "magic", "kind": "cut"}""", "$.asBuilt[0].field")]
    [InlineData("""{"slot": "fork", "field": "axleToCrown", "kind": "measured"}""", "$.asBuilt[0].field")]
    [InlineData("""{"slot": "fork", "field": "steererLength"}""", "$.asBuilt[0].kind")]
    [InlineData("""{"slot": "fork", "field": "travel", "kind": "cut"}""", "$.asBuilt[0].kind")]
    [InlineData("""{"slot": "fork", "field": "steererLength", "kind": "cut", "was": "190"}""", "$.asBuilt[0].was")]
    [InlineData("""{"slot": "fork", "field": "steererLength", "kind": "cut", "was": "long"}""", "$.asBuilt[0].was")]
    [InlineData("""{"slot": "fork", "field": "steererLength", "kind": "cut", "value": "190"}""", "$.asBuilt[0].value")]
    [InlineData("""{"slot": "fork", "field": "steererLength", "kind": "cut", "on": "1.5.2026"}""", "$.asBuilt[0].on")]
    [InlineData("""{"slot": "fork", "field": "steererLength", "kind": "cut"}, {"slot": "fork", "field": "steererLength", "kind": "measured"}""", "$.asBuilt[1].field")]
    [InlineData("""{"slot": "fork", "field": "steererLength", "kind": "measured", "cut": {"value": "196"}}""", "$.asBuilt[0].was")]
    [InlineData("""{"slot": "fork", "field": "steererLength", "kind": "measured", "cut": {"note": "square"}}""", "$.asBuilt[0].cut.value")]
    [InlineData("""{"slot": "fork", "field": "steererLength", "kind": "measured", "cut": {"value": "199", "on": "1.5.2026"}}""", "$.asBuilt[0].cut.on")]
    [InlineData("""{"slot": "fork", "field": "steererLength", "kind": "cut", "cut": {"value": "200"}}""", "$.asBuilt[0].was")]
    [InlineData("null", "$.asBuilt[0].slot")]
    public void A_value_that_is_not_whole_is_refused(string value, string path)
    {
        Assert.False(BuildFile.TryRead("{\"parts\": {\"frame\": {}, \"fork\": {\"steererLength\": 200, \"travel\": 100}}, \"asBuilt\": [" + value + "]}", out _, out var problems));
        Assert.Equal(path, problems.Single().Where);
    }

    [Fact]
    public void A_value_of_a_file_needs_no_more_than_its_place_and_kind() =>
        Assert.Equal(new(Slot.Fork, "steererLength", "200", AsBuiltKind.Cut, "unknown", "", null), BuildFile.Read("""{"parts": {"frame": {}, "fork": {"steererLength": 200}}, "asBuilt": [{"slot": "fork", "field": "steererLength", "kind": "cut"}]}""").AsBuilt.Single());
}
