using FsCheck;
using FsCheck.Xunit;

namespace Lugwork.Tests.Builds;

/// <summary>What a build needs beside its main parts.</summary>
public sealed class SmallPartTests
{
    private static Build Sample(string name) => BuildFile.Read(File.ReadAllText(Path.Combine(BuildFileTests.Root(), "samples", "FrameUp", "builds", name + ".json")));

    [Fact]
    public void A_bridge_of_a_joint_is_a_small_part_with_its_row()
    {
        Build build = Build.From(Frame.Read("seatTube 27.2")).With(Seatpost.Read("26.8 x 350"));
        SmallPart shim = build.SmallParts().Single(p => p.Id.StartsWith("seatpost-in-seat-tube:", StringComparison.Ordinal));
        Assert.Contains("shim", shim.What, StringComparison.OrdinalIgnoreCase);
        Assert.NotEmpty(shim.Sources);
        Assert.Equal(Verdict.NeedsPart, build.WithSmallPart(shim.Id).Check().Fits.Single(f => f.Joint!.Id == "seatpost-in-seat-tube").Verdict);
    }

    [Theory]
    [InlineData("carbon", "expander")]
    [InlineData("aluminium", "star nut, with")]
    [InlineData("unknown", "or an expander")]
    public void What_the_cap_pulls_on_follows_the_steerer(string material, string what) =>
        Assert.Contains(what, Build.From(Frame.Read("steel")).With(Fork.Read($"threadless; steerer material {material}")).SmallParts().Single(p => p.Id == "preload").What, StringComparison.Ordinal);

    [Theory]
    [InlineData("stem", "carbon", true)]
    [InlineData("stem", "aluminium", false)]
    [InlineData("handlebar", "carbon", true)]
    [InlineData("handlebar", "steel", false)]
    public void Clamped_carbon_takes_paste(string slot, string material, bool paste)
    {
        Assert.True(PartForms.Of(Slot.Find(slot)!).TryReadAny($"material {material}", out Part part, out _));
        Assert.Equal(paste, Build.From(Frame.Read("steel")).With(part).SmallParts().Any(p => p.Id == "carbon-paste"));
    }

    [Fact]
    public void A_part_in_its_slot_is_not_asked_for_again()
    {
        Build build = Build.From(Frame.Read("steel")).With(Fork.Read("threadless; front 12x100; axle thread M12x1.5; axle length 127"));
        Assert.Contains(build.SmallParts(), p => p.Id == "preload");
        Assert.Contains("127 mm under the head", build.SmallParts().Single(p => p.Id == "front-axle").What, StringComparison.Ordinal);
        Build with = build.With(Preload.Read("star nut")).With(ThruAxle.Read("M12x1.5; length 127"), Slot.FrontAxle);
        Assert.DoesNotContain(with.SmallParts(), p => p.Id is "preload" or "front-axle");
    }

    [Theory]
    [InlineData("37-622; tubeless", "", "front-valve front-rim-tape front-sealant")]
    [InlineData("37-622; folding", "", "front-tube front-rim-tape")]
    [InlineData("37-622; tubeless", "tube", "front-rim-tape")]
    public void A_tyre_asks_for_what_holds_its_air(string tyre, string tube, string ids)
    {
        Build build = Build.From(Frame.Read("steel")).With(Wheel.Read("hub F100-12; rim 622; innerWidth 21; rim depth 24"), Slot.FrontWheel).With(Tyre.Read(tyre), Slot.FrontTyre);
        build = tube.Length == 0 ? build : build.With(InnerTube.Read("622"), Slot.FrontTube);
        string[] found = [.. build.SmallParts().Select(p => p.Id).Where(i => i.StartsWith("front-", StringComparison.Ordinal))];
        Assert.Equal(ids.Split(' ').Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_belt_needs_no_joining_link_and_a_wireless_shifter_no_cable()
    {
        Build build = Build.From(Frame.Read("steel")).With(Chain.Read("belt")).With(Shifter.Read("wireless"), Slot.Shifter);
        Assert.DoesNotContain(build.SmallParts(), p => p.Id is "quick-link" or "rear-shift-cable");
        Build geared = build.With(Chain.Read("11")).With(Shifter.Read("cable"), Slot.Shifter);
        Assert.Equal(2, geared.SmallParts().Count(p => p.Id is "quick-link" or "rear-shift-cable"));
    }

    [Theory]
    [InlineData("road-disc-all-new")]
    [InlineData("tourer-from-commuter")]
    [InlineData("trail-frame-donor-mix")]
    [InlineData("swap-meet-frame")]
    [InlineData("bare-gravel-frame")]
    public void The_lists_of_the_samples_are_complete_and_minimal(string name) => IsCompleteAndMinimal(Sample(name));

    [Property(MaxTest = 60)]
    public void A_list_is_complete_and_minimal(DoNotSize<int> seed) => IsCompleteAndMinimal(Bicycles.Any(new Random(seed.Item)));

    private static void IsCompleteAndMinimal(Build build)
    {
        SmallPart[] needed = [.. build.SmallParts()];
        Assert.Equal(needed.Length, needed.Select(p => p.Id).Distinct().Count());
        Build all = needed.Aggregate(build, (b, part) => b.WithSmallPart(part.Id));
        Assert.Empty(all.SmallParts());
        Assert.All(needed.Take(8), part => Assert.Equal([part.Id], all.WithoutSmallPart(part.Id).SmallParts().Select(p => p.Id)));
        Assert.Equal(build.Check().Verdict, all.Check().Verdict);
    }

    [Fact]
    public void Small_parts_that_are_there_stand_in_the_build_file()
    {
        Build build = Build.From(Frame.Read("seatTube 27.2")).With(Seatpost.Read("26.8 x 350"));
        build = build.SmallParts().Aggregate(build, (b, part) => b.WithSmallPart(part.Id));
        Build read = BuildFile.Read(BuildFile.Write(build));
        Assert.Equal(build.SmallPartsThere, read.SmallPartsThere);
        Assert.Empty(read.SmallParts());
        Assert.False(BuildFile.TryRead("""{"parts": {"frame": {}}, "smallParts": ["magic"]}""", out _, out var problems));
        Assert.Equal("$.smallParts[0]", problems.Single().Where);
        Assert.Throws<ArgumentException>(() => build.WithSmallPart("magic"));
        Assert.Throws<ArgumentException>(() => build.WithSmallPart("seatpost-in-seat-tube:magic"));
    }

    [Fact]
    public void Every_row_has_a_source_and_its_own_id()
    {
        Assert.All(SmallPartTable.All, r => Assert.NotEmpty(r.Sources));
        Assert.Equal(SmallPartTable.All.Length, SmallPartTable.All.Select(r => r.Id).Distinct().Count());
        Assert.All(SmallPartTable.All, r => Assert.True(SmallPartTable.IsId(r.Id)));
    }
}
