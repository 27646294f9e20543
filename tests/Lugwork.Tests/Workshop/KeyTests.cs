using Lugwork.BottomBrackets;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Workshop;

/// <summary>Key sizes where a page prints one for the bolt that is there, and none where not; spacers of each side where a page counts them.</summary>
public sealed class KeyTests
{
    private static Build Steel(string frame = "") => Build.From(Frame.Read("material steel" + frame));

    private static WorkTool[] Tools(Build build, string step) => [.. build.WorkPlan().Find(step)!.Tools.Where(t => t.Id is not ("torque-wrench" or "caliper"))];

    [Theory]
    [InlineData("mounting post; adapter none", "hex-m6")]
    [InlineData("mounting post", "hex-m6 hex-m5")]
    [InlineData("mounting flat; adapter none", "hex-m5")]
    [InlineData("mounting unknown", "hex-keys")]
    [InlineData("mounting post | flat", "hex-keys")]
    public void A_caliper_takes_the_key_of_its_bolts(string caliper, string keys) =>
        Assert.Equal(keys, string.Join(' ', Tools(Steel().With(Caliper.Read(caliper), Slot.RearCaliper), "mount-rear-caliper").Select(t => t.Id)));

    [Theory]
    [InlineData("material aluminium", "7 mm round", "saddle-key")]
    [InlineData("material carbon", "7 mm round", "hex-keys")]
    [InlineData("material unknown", "7 mm round", "hex-keys")]
    public void A_saddle_has_key_sizes_where_its_rows_hold(string post, string saddle, string key) =>
        Assert.Equal(key, Tools(Steel().With(Seatpost.Read($"27.2; {post}")).With(Saddle.Read(saddle)), "fit-saddle").Single().Id);

    [Theory]
    [InlineData("spindle square-JIS", "crank-bolt-key")]
    [InlineData("spindle square-ISO", "crank-bolt-key")]
    [InlineData("spindle 24-road", "hex-keys preload-tool")]
    [InlineData("rings 9", "hex-keys")]
    public void A_crank_takes_the_key_of_its_spindle(string crank, string keys) =>
        Assert.Equal(keys, string.Join(' ', Tools(Steel().With(Crankset.Read(crank)), "fit-crankset").Select(t => t.Id)));

    [Theory]
    [InlineData("hub R120", "M10x1", "axle-spanner")]
    [InlineData("hub R142-12", null, "axle-key")]
    [InlineData("hub R135-QR", null, "")]
    [InlineData("hub unknown", null, "")]
    public void A_wheel_takes_the_spanner_of_what_holds_it(string wheel, string? nuts, string keys)
    {
        Build build = Steel().With(Wheel.Read(wheel), Slot.RearWheel);
        Assert.Equal(keys, string.Join(' ', Tools(nuts is null ? build : build.With(AxleNuts.Read(nuts), Slot.RearAxleNuts), "fit-rear-wheel").Select(t => t.Id)));
    }

    [Theory]
    [InlineData("1 in", true)]
    [InlineData("1-1/8", false)]
    [InlineData("unknown", false)]
    public void A_headset_spanner_has_a_size_at_a_steerer_of_one_inch_alone(string steerer, bool sized)
    {
        WorkTool tool = Tools(Steel().With(Fork.Read($"steerer kind threaded; steerer {steerer}")).With(Headset.Read("threaded")), "fit-fork").Single(t => t.Id == "headset-spanners");
        Assert.Equal(sized, tool.Name.Contains("32 mm", StringComparison.Ordinal));
        Assert.Equal(sized, tool.Source is not null);
    }

    [Theory]
    [InlineData("ISCG05", "hex-m6")]
    [InlineData("BB-mount", "hex-keys")]
    public void The_tabs_of_a_guide_have_bolts_of_M6(string guide, string key) =>
        Assert.Equal(key, Tools(Steel().With(ChainGuide.Read(guide)), "fit-chain-guide").Single().Id);

    /// <summary>A size that a tool names has a page, and says what decides: the bolt at hand.</summary>
    [Fact]
    public void Every_key_with_a_size_names_its_page_and_what_decides()
    {
        WorkTool[] sized = [.. Bicycle.All.SelectMany(b => b.WorkPlan().Tools).Distinct().Where(t => t.Name.Contains("key of", StringComparison.Ordinal) || t.Name.Contains("spanner of", StringComparison.Ordinal))];
        Assert.True(sized.Length >= 6, string.Join("; ", sized.Select(t => t.Id)));
        Assert.All(sized, t => Assert.NotNull(t.Source));
        Assert.All(sized, t => Assert.Contains("decides)", t.Name, StringComparison.Ordinal));
        Assert.Contains("no page names a size: the bolt head decides", Bicycle.All[0].WorkPlan().Tools.Single(t => t.Id == "hex-keys").Name, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("BSA 68", "24-MTB", "", 5.0, 2.5)]
    [InlineData("BSA 68", "24-MTB", "E-type", 2.5, 2.5)]
    [InlineData("BSA 68", "24-MTB", "guide", 2.5, 2.5)]
    [InlineData("BSA 68", "24-MTB", "unknown", null, 2.5)]
    [InlineData("BSA 73", "24-MTB", "", 2.5, 0.0)]
    [InlineData("BSA 68", "24-road", "", 0.0, 0.0)]
    [InlineData("BB86", "24-road", "", 0.0, 0.0)]
    [InlineData("BSA 83", "24-MTB", "", null, null)]
    [InlineData("T47 85.5", "24-road", "", null, null)]
    public void Spacers_of_each_side_are_those_that_a_page_counts(string shell, string spindle, string plate, double? drive, double? other)
    {
        Build build = Steel($"; shell {shell}").With(BottomBracket.Read("takes 24")).With(Crankset.Read($"spindle {spindle}"));
        build = plate switch { "" => build, "guide" => build.With(ChainGuide.Read("BB-mount")), "unknown" => build.With(FrontDerailleur.Read("speeds 9")), _ => build.With(FrontDerailleur.Read(plate)) };
        WorkFigure[] figures = [.. build.WorkPlan().Find("fit-bottom-bracket")!.Figures];
        Assert.Equal(drive, figures.Single(f => f.Id == "drive-spacer").Value);
        Assert.Equal(other, figures.Single(f => f.Id == "other-spacer").Value);
        Assert.Equal(drive is null, !figures.Single(f => f.Id == "drive-spacer").IsKnown);
        Assert.All(figures.Where(f => f.Value is not null), f => Assert.NotEmpty(f.Sources));
    }

    [Fact]
    public void What_is_stated_of_the_drive_side_stands_and_an_adapter_hides_the_shell()
    {
        Build build = Steel("; shell BSA 68").With(BottomBracket.Read("takes 24; drive spacer 4.5")).With(Crankset.Read("spindle 24-MTB"));
        Assert.Equal(4.5, build.WorkPlan().Find("fit-bottom-bracket")!.Figures.Single(f => f.Id == "drive-spacer").Value);
        Assert.False(build.With(ShellAdapter.Read("outboard")).WorkPlan().Find("fit-bottom-bracket")!.Figures.Single(f => f.Id == "other-spacer").IsKnown);
    }

    /// <summary>The count says in rings what the part of the table says in words.</summary>
    [Fact]
    public void The_count_is_that_of_the_table_in_words()
    {
        SpacerCount count = SpacerCount.Of(Shell.All.Single(s => s.FitKey == "BSA-68"), Spindle.OffRoad24)!;
        string said = Lugwork.BottomBrackets.SpindleAcrossShell.Table.Judge([Shell.All.Single(s => s.FitKey == "BSA-68").FitCode, Spindle.OffRoad24.FitCode]).Bridge!.What;
        Assert.StartsWith("three 2.5 mm bottom-bracket spacers, two on the drive side (one where", said, StringComparison.Ordinal);
        Assert.EndsWith("one on the other", said, StringComparison.Ordinal);
        Assert.Equal((5_000_000, 2_500_000, 2_500_000), (count.DriveNanometres, count.OtherNanometres, count.DriveBesidePlateNanometres));
    }
}
