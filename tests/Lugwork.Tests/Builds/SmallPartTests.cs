using FsCheck;
using FsCheck.Xunit;

namespace Lugwork.Tests.Builds;

/// <summary>What a build needs beside its main parts.</summary>
public sealed class SmallPartTests
{
    [Fact]
    public void A_bridge_of_a_joint_is_a_small_part_with_its_row()
    {
        Build build = Build.From(Frame.Read("seatTube 27.2")).With(Seatpost.Read("26.8 x 350"));
        SmallPart shim = build.SmallParts().Single(p => p.Id.StartsWith("seatpost-in-seat-tube:", StringComparison.Ordinal));
        Assert.Contains("shim", shim.What, StringComparison.OrdinalIgnoreCase);
        Assert.NotEmpty(shim.Sources);
        Assert.Equal(Verdict.NeedsPart, build.WithSmallPart(shim.Id).Check().Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube").Verdict);
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
        Build with = build.With(Preload.Read("star nut")).With(ThruAxle.Read("M12x1.5; length 127"), Slot.FrontThruAxle);
        Assert.DoesNotContain(with.SmallParts(), p => p.Id is "preload" or "front-axle");
    }

    [Theory]
    [InlineData("37-622; tubeless", "rim type TC", "", "front-valve front-rim-tape front-sealant")]
    [InlineData("37-622; tubeless", "rim type TSS", "", "front-valve front-rim-tape front-sealant")]
    [InlineData("37-622; tubeless", "rim type C", "", "front-tube front-rim-tape")]
    [InlineData("37-622; tubeless", "rim type unknown", "", "front-tube front-rim-tape")]
    [InlineData("37-622; tubeless", "rim type C | TC", "", "front-tube front-rim-tape")]
    [InlineData("37-622; tubeless", "rim type TC | TSS", "", "front-valve front-rim-tape front-sealant")]
    [InlineData("37-622; tubeless", "rim type unknown", "valve", "front-rim-tape front-sealant")]
    [InlineData("37-622; tubeless", "rim type C", "valve", "front-tube front-rim-tape")]
    [InlineData("37-622; folding", "rim type TC", "", "front-tube front-rim-tape")]
    [InlineData("37-622; tubeless", "rim type TC", "tube", "front-rim-tape")]
    public void A_tyre_asks_for_what_holds_its_air(string tyre, string rim, string there, string ids)
    {
        Build build = Build.From(Frame.Read("steel")).With(Wheel.Read($"hub F100-12; rim 622; innerWidth 21; rim depth 24; {rim}"), Slot.FrontWheel).With(Tyre.Read(tyre), Slot.FrontTyre);
        build = there == "tube" ? build.With(InnerTube.Read("622"), Slot.FrontInnerTube) : there == "valve" ? build.With(TubelessValve.Read("length 44"), Slot.FrontTubelessValve) : build;
        string[] found = [.. build.SmallParts().Select(p => p.Id).Where(i => i.StartsWith("front-", StringComparison.Ordinal))];
        Assert.Equal(ids.Split(' ').Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_rim_that_is_not_known_is_asked_for()
    {
        Build build = Build.From(Frame.Read("steel")).With(Tyre.Read("37-622; tubeless"), Slot.FrontTyre);
        Assert.Contains("read the rim", What(build, "front-tube"), StringComparison.Ordinal);
        build = build.With(Wheel.Read("rim type C; rim depth 24"), Slot.FrontWheel);
        Assert.DoesNotContain("read the rim", What(build, "front-tube"), StringComparison.Ordinal);
        Assert.Contains("valve of at least 39 mm", What(build, "front-tube"), StringComparison.Ordinal);
        build = build.With(Wheel.Read("rim type TC; rim depth 60"), Slot.FrontWheel);
        Assert.Contains("at least 75 mm", What(build, "front-valve"), StringComparison.Ordinal);
        Assert.Equal(Verdict.Fits, build.With(TubelessValve.Read("length 75"), Slot.FrontTubelessValve).Check().Findings.Single(f => f.Joint!.Id == "front-valve-length").Verdict);
        Assert.NotEqual(Verdict.Fits, build.With(TubelessValve.Read("length 74.9"), Slot.FrontTubelessValve).Check().Findings.Single(f => f.Joint!.Id == "front-valve-length").Verdict);
    }

    private static string What(Build build, string id) => build.SmallParts().Single(p => p.Id == id).What;

    [Theory]
    [InlineData("rear 10x135 QR", "hub R135-QR", true)]
    [InlineData("rear 10x135 QR", "hub R130", true)]
    [InlineData("rear 12x142", "hub R135-QR", false)]
    [InlineData("rear 10x135 QR", "hub R142-12", false)]
    [InlineData("rear 10x135 QR", "hub R135-10", false)]
    [InlineData("rear unknown", "hub R135-QR", false)]
    [InlineData("rear 10x135 QR", "hub R135-QR; axle thread M10x1", false)]
    public void A_quick_release_hub_in_open_ends_asks_for_its_skewer(string frame, string hub, bool asked) =>
        Assert.Equal(asked, Build.From(Frame.Read(frame)).With(Wheel.Read(hub), Slot.RearWheel).SmallParts().Any(p => p.Id == "rear-skewer"));

    /// <summary>Common practice, no source: an axle with nuts on it holds nothing by a skewer.</summary>
    [Fact]
    public void Nuts_on_the_axle_leave_no_skewer_to_buy()
    {
        Build build = Build.From(Frame.Read("rear R120")).With(Wheel.Read("hub R120"), Slot.RearWheel);
        Assert.Contains(build.SmallParts(), p => p.Id == "rear-skewer");
        Assert.DoesNotContain(build.With(AxleNuts.Read("thread M10x1"), Slot.RearAxleNuts).SmallParts(), p => p.Id == "rear-skewer");
        Build front = Build.From(Frame.Read("rear R120")).With(Fork.Read("front F100-QR9")).With(Wheel.Read("hub F100-QR9"), Slot.FrontWheel);
        Assert.Contains(front.SmallParts(), p => p.Id == "front-skewer");
        Assert.DoesNotContain(front.With(AxleNuts.Read("thread M9x1"), Slot.FrontAxleNuts).SmallParts(), p => p.Id == "front-skewer");
    }

    [Theory]
    [InlineData("hub R120", "if the axle is hollow", true)]
    [InlineData("hub R120; axle thread none", "if the axle is hollow", false)]
    public void An_axle_that_may_be_solid_is_said(string hub, string words, bool said) =>
        Assert.Equal(said, What(Build.From(Frame.Read("rear R120")).With(Wheel.Read(hub), Slot.RearWheel), "rear-skewer").Contains(words, StringComparison.Ordinal));

    /// <summary>Head tube 130, headset 10 and 5, stem 40: 185 mm. Two millimetres of gap at least, five at most below.</summary>
    [Theory]
    [InlineData("205", "", "at least 22 mm, of all not more than 25 mm below")]
    [InlineData("205", "spacers below 20", "at least 2 mm more than there are, of all not more than 25 mm below")]
    [InlineData("205", "spacers below 20; spacers above 5", null)]
    [InlineData("205", "spacers below 22", null)]
    [InlineData("205", "spacers above 30", null)]
    [InlineData("184", "", "at least 1 mm, of all not more than 4 mm below")]
    [InlineData("183", "", null)]
    [InlineData("183", "spacers below none; spacers above none", null)]
    [InlineData("unknown", "", null)]
    [InlineData("unknown", "spacers below 15", null)]
    public void Spacers_follow_from_the_sum_of_the_steerer(string steerer, string spacers, string? what)
    {
        Build build = Build.From(Frame.Read("head tube length 130")).With(Fork.Read($"threadless; crowns single; steerer length {steerer}")).With(Headset.Read("upper stack 10; lower stack 5")).With(Stem.Read($"clamp height 40; {spacers}"));
        SmallPart? part = build.SmallParts().SingleOrDefault(p => p.Id == "headset-spacers");
        Assert.Equal(what is null, part is null);
        Assert.True(what is null || part!.What.EndsWith(what, StringComparison.Ordinal) || part.What.Contains(what, StringComparison.Ordinal), part?.What);
        if (steerer == "205" && spacers.Length == 0)
        {
            // What it names closes the gap, and not a millimetre less does.
            Build enough = build.With(Stem.Read("clamp height 40; spacers below 22; spacers above none"));
            Build less = build.With(Stem.Read("clamp height 40; spacers below 21; spacers above none"));
            Assert.Equal(Verdict.Fits, enough.Check().Findings.Single(f => f.Joint!.Id == "gap-under-cap").Verdict);
            Assert.NotEqual(Verdict.Fits, less.Check().Findings.Single(f => f.Joint!.Id == "gap-under-cap").Verdict);
            Build most = build.With(Stem.Read("clamp height 40; spacers below 25; spacers above 2"));
            Build beyond = build.With(Stem.Read("clamp height 40; spacers below 26; spacers above 2"));
            Assert.Equal(Verdict.Fits, most.Check().Findings.Single(f => f.Joint!.Id == "steerer-reaches-stem").Verdict);
            Assert.Equal(Verdict.Unsafe, beyond.Check().Findings.Single(f => f.Joint!.Id == "steerer-reaches-stem").Verdict);
        }
    }

    [Fact]
    public void A_threaded_steerer_takes_no_spacers_of_this_kind() =>
        Assert.DoesNotContain(Build.From(Frame.Read("head tube length 130")).With(Fork.Read("threaded; steerer length 205")).With(Headset.Read("upper stack 10; lower stack 5")).With(Stem.Read("clamp height 40")).SmallParts(), p => p.Id == "headset-spacers");

    [Theory]
    [InlineData("hub F100-12", "internal notches")]
    [InlineData("hub F100-15", "external notches for the rotor")]
    [InlineData("hub unknown", "as the axle leaves room")]
    public void The_ring_of_a_rotor_follows_the_axle(string hub, string what) =>
        Assert.Contains(what, What(Build.From(Frame.Read("steel")).With(Wheel.Read($"{hub}; center-lock"), Slot.FrontWheel).With(Rotor.Read("160; center-lock"), Slot.FrontRotor), "front-rotor-lockring"), StringComparison.Ordinal);

    [Fact]
    public void A_ring_that_the_joint_asks_for_is_not_asked_for_twice()
    {
        Build build = Build.From(Frame.Read("steel")).With(Wheel.Read("hub F100-15; center-lock"), Slot.FrontWheel).With(Rotor.Read("160; center-lock; lockring none"), Slot.FrontRotor);
        Assert.Single(build.SmallParts(), p => p.What.Contains("lockring", StringComparison.Ordinal));
        Assert.Single(build.Without(Slot.FrontWheel).SmallParts(), p => p.Id == "front-rotor-lockring");
    }

    [Theory]
    [InlineData("headset cables through", "rear-lever", "fluid mineral-oil", true, true)]
    [InlineData("headset cables through", "rearShifter", "cable", true, true)]
    [InlineData("headset cables through", "rearShifter", "wireless", true, false)]
    [InlineData("headset cables outside", "rearShifter", "cable", false, false)]
    [InlineData("headset cables unknown", "rearShifter", "cable", false, false)]
    [InlineData("dropper entry hole", "dropper", "routing internal", false, true)]
    [InlineData("dropper entry hole", "dropper", "routing wireless", false, false)]
    [InlineData("dropper entry hole", "dropper", "routing external", false, false)]
    [InlineData("dropper entry no-hole", "dropper", "routing internal", false, false)]
    public void Runs_inside_the_frame_ask_for_what_holds_them(string frame, string slot, string part, bool cover, bool inserts)
    {
        Slot at = slot == "rear-lever" ? Slot.RearBrakeLever : slot == "rearShifter" ? Slot.RearShifter : Slot.Dropper;
        Assert.True(PartForms.Of(at).TryReadAny(part, out Part read, out var problems), string.Join(" | ", problems));
        Build build = Build.From(Frame.Read(frame)).With(read, at);
        Assert.Equal((cover, inserts), (build.SmallParts().Any(p => p.Id == "headset-cover"), build.SmallParts().Any(p => p.Id == "frame-inserts")));
        Assert.DoesNotContain(build.With(HeadsetCover.Read("cables through"), Slot.HeadsetCover).SmallParts(), p => p.Id == "headset-cover");
    }

    [Fact]
    public void A_belt_needs_no_joining_link_and_a_wireless_shifter_no_cable()
    {
        Build build = Build.From(Frame.Read("steel")).With(Chain.Read("belt")).With(Shifter.Read("wireless"), Slot.RearShifter);
        Assert.DoesNotContain(build.SmallParts(), p => p.Id is "quick-link" or "rear-shift-cable");
        Build geared = build.With(Chain.Read("11")).With(Shifter.Read("cable"), Slot.RearShifter);
        Assert.Equal(2, geared.SmallParts().Count(p => p.Id is "quick-link" or "rear-shift-cable"));
    }

    /// <summary>All that was asked for is there, and then one part is changed: what is listed is what it asks for anew, and nothing of what was bought for the same need.</summary>
    [Property(MaxTest = 60)]
    public void A_changed_part_lists_what_is_asked_for_anew(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = Bicycles.Any(random);
        Dictionary<string, string> before = build.SmallParts().ToDictionary(p => p.Id, p => p.What);
        Build there = before.Keys.Aggregate(build, (b, id) => b.WithSmallPart(id));
        Build other = Bicycles.Any(random);
        foreach (Slot slot in Slot.All.Where(s => other[s] is not null))
        {
            string[] listed = [.. there.With(other[slot]!, slot).SmallParts().Select(p => p.Id)];
            string[] anew = [.. build.With(other[slot]!, slot).SmallParts().Where(p => !before.TryGetValue(p.Id, out string? what) || (!SmallPartTable.Covers(what, p.What) && !IsArticle(p.Id))).Select(p => p.Id)];
            Assert.Equal(anew, listed);
        }
    }

    /// <summary>Joint and row: the id is the article, whatever asks for it.</summary>
    private static bool IsArticle(string id) => id.Contains(':', StringComparison.Ordinal) && !id.EndsWith(":choice", StringComparison.Ordinal);

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
        Assert.All(SmallPartTable.Rules, r => Assert.NotEmpty(r.Sources));
        Assert.Equal(SmallPartTable.Rules.Length, SmallPartTable.Rules.Select(r => r.Id).Distinct().Count());
        Assert.All(SmallPartTable.Rules, r => Assert.True(SmallPartTable.IsId(r.Id)));
    }
}
