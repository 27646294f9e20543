using Lugwork.Drivetrain;
using Lugwork.Steering;
using UnitsNet;

namespace Lugwork.Tests.Builds;

/// <summary>Checks over several parts, each at both sides of its boundary, with an unknown, and by the sum that the library has for it.</summary>
public sealed class SystemCheckTests
{
    private static FitReport Check(string frame, params (Slot Slot, string Text)[] parts)
    {
        Build build = Build.From(Frame.Read(frame));
        foreach ((Slot slot, string text) in parts)
        {
            Assert.True(PartForms.Of(slot).TryReadAny(text, out Part part, out var problems), string.Join(" | ", problems));
            build = build.OfFile(part, slot);
        }

        return build.Check();
    }

    private static Fit Of(FitReport report, string check) => report.Findings.Single(f => f.Joint!.Id == check);

    [Theory]
    [InlineData("capacity 39", "largest ring 50; smallest ring 34", "smallest sprocket 11; largest sprocket 34", Verdict.Fits)]
    [InlineData("capacity 38", "largest ring 50; smallest ring 34", "smallest sprocket 11; largest sprocket 34", Verdict.DoesNotFit)]
    [InlineData("capacity 23", "largest ring 42; smallest ring none", "smallest sprocket 11; largest sprocket 34", Verdict.Fits)]
    [InlineData("capacity 22", "largest ring 42; smallest ring none", "smallest sprocket 11; largest sprocket 34", Verdict.DoesNotFit)]
    [InlineData("capacity unknown", "largest ring 50; smallest ring 34", "smallest sprocket 11; largest sprocket 34", Verdict.NeedsMeasuring)]
    [InlineData("capacity none", "largest ring 50; smallest ring 34", "smallest sprocket 11; largest sprocket 34", Verdict.NeedsMeasuring)]
    [InlineData("capacity 20", "largest ring 50; smallest ring 34", "smallest sprocket 11; largest sprocket 32 | 34", Verdict.DoesNotFit)]
    [InlineData("capacity 38", "largest ring 50; smallest ring 34", "smallest sprocket 11; largest sprocket 32 | 34", Verdict.NeedsMeasuring)]
    public void The_derailleur_takes_up_what_rings_and_sprockets_leave_over(string derailleur, string crank, string cassette, Verdict verdict)
    {
        FitReport report = Check("steel", (Slot.RearDerailleur, derailleur), (Slot.Crankset, crank), (Slot.Cassette, cassette));
        Fit fit = Of(report, "derailleur-capacity");
        Assert.Equal(verdict, fit.Verdict);
        Assert.True(report.Verdict >= verdict);
        Assert.Equal(verdict == Verdict.NeedsMeasuring, fit.Measurements.Length > 0);
    }

    /// <summary>A chainline for one ring says that there is no smaller one.</summary>
    [Theory]
    [InlineData("off-road-1x-52", Verdict.Fits)]
    [InlineData("gravel-2x", Verdict.NeedsMeasuring)]
    public void A_crank_for_one_ring_has_no_smallest_ring_to_ask_for(string chainline, Verdict verdict)
    {
        Fit fit = Of(Check("steel", (Slot.RearDerailleur, "capacity 39"), (Slot.Crankset, $"largest ring 32; chainline {chainline}"), (Slot.Cassette, "smallest sprocket 11; largest sprocket 50")), "derailleur-capacity");
        Assert.Equal(verdict, fit.Verdict);
    }

    /// <summary>A finished bicycle with an adapter is judged once it is said for which mount it is made.</summary>
    [Theory]
    [InlineData("", Verdict.NeedsMeasuring)]
    [InlineData("; adapter on PM-160", Verdict.Fits)]
    [InlineData("; adapter on PM-180", Verdict.Fits)]
    [InlineData("; adapter on IS-rear", Verdict.DoesNotFit)]
    [InlineData("; adapter on IS-rear | PM-180", Verdict.NeedsMeasuring)]
    public void An_adapter_that_is_there_fits_the_mount_that_it_is_made_for(string on, Verdict verdict)
    {
        Fit fit = Of(Check("rear brake PM-180", (Slot.RearRotor, "200; six-bolt"), (Slot.RearCaliper, "post; adapter +20" + on)), "rear-caliper-on-mount");
        Assert.Equal(verdict, fit.Verdict);
        Assert.Equal(verdict == Verdict.NeedsMeasuring, fit.Measurements.Any(m => m.Field == "adapterOn"));
    }

    /// <summary>What has no upper end is told without one.</summary>
    [Fact]
    public void A_sum_without_an_end_is_told_without_one()
    {
        Fit fit = Of(Check("head tube length 130", (Slot.Fork, "threadless; crowns single; steerer length 150"), (Slot.Headset, "upper stack 12"), (Slot.Stem, "clamp height 40; spacers below 10; spacers above 5")), "steerer-reaches-stem");
        Assert.Contains("or more", fit.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("000000", fit.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void The_check_of_capacity_says_how_much_is_missing_and_what_mends_it()
    {
        Fit fit = Of(Check("steel", (Slot.RearDerailleur, "capacity 33"), (Slot.Crankset, "largest ring 50; smallest ring 34"), (Slot.Cassette, "smallest sprocket 11; largest sprocket 34")), "derailleur-capacity");
        Assert.Contains("6 teeth of capacity more than the 33", fit.Sentence, StringComparison.Ordinal);
        Assert.Contains(fit.Remedies, r => r.What.Contains("longer cage", StringComparison.Ordinal));
        Assert.Contains(fit.Cautions, c => c.Id == "chain-too-short");
        Assert.Contains("Rule: capacity less", fit.Explain(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_of_which_nobody_stated_a_figure_is_listed_as_not_looked_at_and_keeps_nothing_from_fitting()
    {
        FitReport report = Check("steel", (Slot.RearDerailleur, "M10 bolt"), (Slot.Crankset, "largest ring 50"), (Slot.Cassette, "HG-9"));
        Assert.DoesNotContain(report.Findings, f => f.Joint!.Id == "derailleur-capacity");
        Assert.Contains(report.NotLookedAt, j => j.Id == "derailleur-capacity");
        Assert.DoesNotContain("gear capacity", report.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_without_its_parts_is_not_judged_and_not_listed()
    {
        FitReport report = Check("chainstay 430", (Slot.Crankset, "largest ring 50"));
        Assert.DoesNotContain(report.Findings, f => f.Joint!.IsSystemCheck);
        Assert.DoesNotContain(report.NotLookedAt, j => j.Id == "derailleur-capacity");
    }

    [Fact]
    public void A_check_stands_in_the_json_of_the_report_like_a_joint()
    {
        string json = ReportFile.Write(Check("steel", (Slot.RearDerailleur, "capacity 33"), (Slot.Crankset, "largest ring 50; smallest ring 34"), (Slot.Cassette, "smallest sprocket 11; largest sprocket 34")));
        Assert.Contains("\"derailleur-capacity\"", json, StringComparison.Ordinal);
        Assert.Contains("does-not-fit", json.Replace("does not fit", "does-not-fit", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void The_needs_sheet_says_the_least_capacity_for_the_rest_of_the_drive()
    {
        Build build = Build.From(Frame.Read("steel")).With(Crankset.Read("largest ring 50; smallest ring 34")).With(Cassette.Read("smallest sprocket 11; largest sprocket 34"));
        NeedLine line = build.Needs().Of(Slot.RearDerailleur)!.Lines.Single(l => l.Joint.Id == "derailleur-capacity");
        Assert.Equal("39", line.Accepted[0]);
        Assert.Equal((Verdict.DoesNotFit, Verdict.Fits), (line.Judge(38), line.Judge(39)));
    }

    [Fact]
    public void One_missing_figure_is_ranked_for_all_checks_that_it_settles()
    {
        FitReport report = Check("seat tube length 500; leastInsertion none; mostInsertion 250", (Slot.Rider, "saddle height 740"), (Slot.Saddle, "depth unknown"), (Slot.Seatpost, "27.2 x 250; mark 80"), (Slot.Dropper, "travel 100; stack 50"));
        RankedMeasurement first = report.ToMeasure.First(m => m.What.Field == "depth");
        Assert.Equal(3, first.Settles);
    }

    [Theory]
    [InlineData(197, Verdict.Fits, Verdict.Fits)]
    [InlineData(196.9, Verdict.Unsafe, Verdict.Fits)]
    [InlineData(205, Verdict.Fits, Verdict.Fits)]
    [InlineData(205.1, Verdict.Fits, Verdict.NeedsPart)]
    [InlineData(207, Verdict.Fits, Verdict.NeedsPart)]
    [InlineData(207.1, Verdict.Fits, Verdict.NeedsPart)]
    [InlineData(304, Verdict.Fits, Verdict.NeedsPart)]
    public void A_steerer_is_judged_as_the_sum_of_its_stack_says(double steerer, Verdict reaches, Verdict cap)
    {
        FitReport report = Check(
            "head tube length 130",
            (Slot.Fork, FormattableString.Invariant($"crowns single; steerer length {steerer}")), (Slot.Headset, "upper stack 12; lower stack 10"), (Slot.Stem, "clamp height 40; spacers below 10; spacers above 5"));
        Assert.Equal((reaches, cap), (Of(report, "steerer-reaches-stem").Verdict, Of(report, "gap-under-cap").Verdict));
        Verdict sum = SteererLength.OfMillimetres(130, 10, 12, 10, 40, 5).Check(Length.FromMillimeters(steerer)).Verdict;
        Assert.Equal(sum, Verdicts.Worse(reaches, cap));
        Assert.Equal(cap == Verdict.NeedsPart, Of(report, "gap-under-cap").Remedies.Any(r => r.Bridge?.Id == "spacer-above-stem"));
        Assert.Equal(steerer > 207, Of(report, "gap-under-cap").Sentence.Contains("above the stem and its spacers", StringComparison.Ordinal));
        Assert.DoesNotContain(" -", Of(report, "gap-under-cap").Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(106)]
    [InlineData(108)]
    [InlineData(110)]
    [InlineData(112)]
    [InlineData(114)]
    [InlineData(116)]
    public void A_chain_is_judged_as_the_rule_of_big_big_says(int pitches)
    {
        FitReport report = Check("chainstay 430", (Slot.Chain, $"pitches {pitches}"), (Slot.Crankset, "largest ring 50; smallest ring 34"), (Slot.Cassette, "smallest sprocket 11; largest sprocket 34"), (Slot.RearDerailleur, "capacity 39"));
        ChainLength shortest = ChainRule.BigBig(Length.FromMillimeters(430), 50, 34, 2);
        ChainLength longest = ChainRule.SmallSmall(Length.FromMillimeters(430), 34, 11, 39, 2);
        Assert.Equal(pitches >= shortest.Pitches ? Verdict.Fits : Verdict.Unsafe, Of(report, "chain-reaches").Verdict);
        Assert.Equal(pitches <= longest.Pitches ? Verdict.Fits : Verdict.NeedsMeasuring, Of(report, "chain-taken-up").Verdict);
    }

    [Theory]
    [InlineData("114", "114")]
    [InlineData("114 | 116", "114 | 116")]
    [InlineData("none", "none")]
    public void A_chain_is_counted_in_pitches(string text, string written) =>
        Assert.Equal(written, PartForms.Chain.Write(Chain.Read("pitches " + text)).Single(p => p.Key == "pitches").Value);

    [Theory]
    [InlineData("113.5")]
    [InlineData("1447.8 mm")]
    [InlineData("114 ± 1")]
    [InlineData("500")]
    public void What_is_no_count_of_pitches_is_refused(string text) => Assert.False(Chain.TryRead("pitches " + text, out _, out _));

    [Theory]
    [InlineData("27.2 x 249.4; mark none", Verdict.Fits)]
    [InlineData("27.2 x 249.3; mark none", Verdict.Unsafe)]
    [InlineData("diameter unknown; length 249.4; mark none", Verdict.NeedsMeasuring)]
    public void Where_neither_post_nor_frame_has_a_mark_two_diameters_are_in(string post, Verdict expected)
    {
        FitReport report = Check("seat tube length 500; leastInsertion none", (Slot.Rider, "saddle height 740"), (Slot.Saddle, "depth 45"), (Slot.Seatpost, post));
        Assert.Equal(expected, Of(report, "saddle-height-least-insertion").Verdict);
    }

    [Theory]
    [InlineData("Q factor none", "height 16; reach 100")]
    [InlineData("Q factor 150", "height none; reach 100")]
    [InlineData("Q factor 150", "height 16; reach none")]
    public void A_pedal_without_a_height_or_reach_clears_nothing(string crank, string pedals)
    {
        FitReport report = Check("bottom bracket drop 70", (Slot.Crankset, "crank length 170; " + crank), (Slot.Pedals, pedals), (Slot.RearTyre, "37-622"));
        Assert.Equal(Verdict.DoesNotFit, Of(report, "pedal-ground-clearance").Verdict);
    }

    [Theory]
    [InlineData("27.2 x 350; mark 80", Verdict.Fits, Verdict.Fits)]
    [InlineData("27.2 x 274; mark 80", Verdict.Unsafe, Verdict.Fits)]
    [InlineData("27.2 x 275; mark 80", Verdict.Fits, Verdict.Fits)]
    [InlineData("27.2 x 420; mark 80", Verdict.Fits, Verdict.Fits)]
    [InlineData("27.2 x 421; mark 80", Verdict.Fits, Verdict.DoesNotFit)]
    public void A_saddle_height_is_reached_with_the_post_in_as_deep_as_it_must_and_can(string post, Verdict least, Verdict most)
    {
        FitReport report = Check("seat tube length 500; leastInsertion 70; mostInsertion 225", (Slot.Rider, "saddle height 740"), (Slot.Saddle, "depth 45"), (Slot.Seatpost, post));
        Assert.Equal((least, most), (Of(report, "saddle-height-least-insertion").Verdict, Of(report, "saddle-height-open-depth").Verdict));
    }

    [Theory]
    [InlineData("travel 145; stack 50", Verdict.Fits)]
    [InlineData("travel 146; stack 50", Verdict.DoesNotFit)]
    [InlineData("travel unknown; stack 200", Verdict.DoesNotFit)]
    [InlineData("travel 120; stack unknown", Verdict.NeedsMeasuring)]
    public void A_dropper_stands_no_higher_than_the_saddle(string dropper, Verdict verdict) =>
        Assert.Equal(verdict, Of(Check("seat tube length 500", (Slot.Rider, "saddle height 740"), (Slot.Saddle, "depth 45"), (Slot.Dropper, dropper)), "dropper-at-saddle-height").Verdict);

    [Theory]
    [InlineData("carbon", "spacers below 30", "none", Verdict.NeedsMeasuring)]
    [InlineData("carbon", "spacers below 30.1", "none", Verdict.Unsafe)]
    [InlineData("carbon", "spacers below 40", "40", Verdict.Fits)]
    [InlineData("carbon", "spacers below 41", "40", Verdict.Unsafe)]
    [InlineData("carbon", "spacers below 41", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("steel", "spacers below 60", "unknown", Verdict.Fits)]
    public void Spacers_on_a_carbon_steerer_keep_to_the_makers_figure(string material, string stem, string most, Verdict verdict) =>
        Assert.Equal(verdict, Of(Check("steel", (Slot.Fork, $"steerer 28.6; steerer material {material}; most spacers {most}"), (Slot.Stem, stem)), "spacers-on-carbon-steerer").Verdict);

    [Theory]
    [InlineData("622", "622", "", Verdict.Fits)]
    [InlineData("622", "584", "", Verdict.NeedsMeasuring)]
    [InlineData("622", "584", "; front wheel of 622; rear wheel of 584", Verdict.Fits)]
    [InlineData("584", "622", "; front wheel of 622; rear wheel of 584", Verdict.NeedsMeasuring)]
    [InlineData("622", "622", "; front wheel of 622; rear wheel of 584", Verdict.NeedsMeasuring)]
    public void Wheels_of_two_sizes_need_a_frame_that_is_designed_for_them(string front, string rear, string frame, Verdict verdict) =>
        Assert.Equal(verdict, Of(Check("steel" + frame, (Slot.FrontWheel, "rim " + front), (Slot.RearWheel, "rim " + rear)), "wheels-of-one-size").Verdict);

    [Theory]
    [InlineData("180", "160", Verdict.Fits)]
    [InlineData("160", "160", Verdict.Fits)]
    [InlineData("160", "180", Verdict.Fits)]
    public void A_larger_rotor_behind_is_a_note(string front, string rear, Verdict verdict)
    {
        Fit fit = Of(Check("steel", (Slot.FrontRotor, front), (Slot.RearRotor, rear)), "rotors-front-and-rear");
        Assert.Equal(verdict, fit.Verdict);
        Assert.Equal(front == "160" && rear == "180", fit.Sentence.Contains("was it meant so", StringComparison.Ordinal));
    }

    /// <summary>On the mount, and adapter with rotor: what is not there is asked for once, what is there and adds up has not to be bought and is looked at, since it does not say which mount it is for; what does not add up is refused.</summary>
    [Theory]
    [InlineData("PM-160", "180", "none", Verdict.NeedsPart, Verdict.Fits)]
    [InlineData("PM-160", "180", "+20", Verdict.NeedsMeasuring, Verdict.Fits)]
    [InlineData("PM-160", "180", "+23", Verdict.NeedsPart, Verdict.DoesNotFit)]
    [InlineData("PM-160", "160", "none", Verdict.Fits, Verdict.Fits)]
    [InlineData("PM-160", "160", "+20", Verdict.Fits, Verdict.DoesNotFit)]
    [InlineData("PM-180", "203", "+23", Verdict.NeedsMeasuring, Verdict.Fits)]
    [InlineData("PM-180", "203", "+20 | +23", Verdict.NeedsMeasuring, Verdict.NeedsMeasuring)]
    [InlineData("PM-200", "203", "none", Verdict.NeedsMeasuring, Verdict.Fits)]
    [InlineData("PM-180", "160", "none", Verdict.DoesNotFit, Verdict.Fits)]
    [InlineData("IS-rear", "140", "none", Verdict.NeedsPart, Verdict.Fits)]
    [InlineData("IS-rear", "140", "+0", Verdict.NeedsMeasuring, Verdict.Fits)]
    [InlineData("IS-rear", "160", "+20", Verdict.NeedsMeasuring, Verdict.Fits)]
    [InlineData("unknown", "180", "+20", Verdict.NeedsMeasuring, Verdict.NeedsMeasuring)]
    public void An_adapter_is_asked_for_at_the_mount_and_judged_where_it_is(string mount, string rotor, string adapter, Verdict onMount, Verdict withRotor)
    {
        FitReport report = Check($"rear brake {mount}", (Slot.RearCaliper, $"post; adapter {adapter}"), (Slot.RearRotor, rotor));
        Assert.Equal((onMount, withRotor), (Of(report, "rear-caliper-on-mount").Verdict, Of(report, "rear-adapter-with-rotor").Verdict));
        Assert.Equal(onMount == Verdict.NeedsPart, report.Build.SmallParts().Any(p => p.Id.StartsWith("rear-caliper-on-mount:", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("inseam 805", Verdict.Fits)]
    [InlineData("inseam 804", Verdict.NeedsMeasuring)]
    [InlineData("inseam 779", Verdict.DoesNotFit)]
    public void The_rider_stands_over_the_frame(string rider, Verdict verdict) => Assert.Equal(verdict, Of(Check("standover 780", (Slot.Rider, rider)), "standover").Verdict);

    [Theory]
    [InlineData(620)]
    [InlineData(621)]
    [InlineData(640)]
    public void Toes_are_judged_as_the_sum_of_the_frame_says(int frontCentre)
    {
        Fit fit = Of(Check($"front centre {frontCentre}", (Slot.Fork, "threadless"), (Slot.FrontTyre, "40-622"), (Slot.Crankset, "crank length 170")), "toe-clearance");
        Assert.Equal(Lugwork.Geometry.ToeClearance.Check(Length.FromMillimeters(frontCentre), Length.FromMillimeters(351), Length.FromMillimeters(170)).Verdict, fit.Verdict);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(95)]
    [InlineData(97)]
    [InlineData(105)]
    public void Pedals_are_judged_as_the_sum_of_the_ground_says(int drop)
    {
        Fit fit = Of(Check($"bottom bracket drop {drop}", (Slot.RearTyre, "40-622"), (Slot.Crankset, "crank length 170; Q factor 150"), (Slot.Pedals, "height 20; reach 60")), "pedal-ground-clearance");
        Assert.Equal(Lugwork.Geometry.GroundClearance.Check(Length.FromMillimeters(351 - drop), Length.FromMillimeters(170), Length.FromMillimeters(20), Length.FromMillimeters(135)).Verdict, fit.Verdict);
    }

    /// <summary>Room that was measured with the wheel turned takes the place of the straight sum, whatever that says.</summary>
    [Theory]
    [InlineData("front centre 560", "toe room 89", Verdict.Fits)]
    [InlineData("front centre 560", "toe room 88.9", Verdict.DoesNotFit)]
    [InlineData("front centre 700", "toe room 88.9", Verdict.DoesNotFit)]
    [InlineData("front centre unknown", "toe room 95", Verdict.Fits)]
    [InlineData("front centre 560", "toe room 89 \u00B1 2", Verdict.NeedsMeasuring)]
    [InlineData("front centre 560", "toe room unknown", Verdict.NeedsMeasuring)]
    public void Toe_room_that_was_measured_settles_it(string frame, string crank, Verdict verdict)
    {
        Fit fit = Of(Check(frame, (Slot.Fork, "threadless"), (Slot.FrontTyre, "40-622"), (Slot.Crankset, "crank length 170; " + crank)), "toe-clearance");
        Assert.Equal(verdict, fit.Verdict);
        Assert.Equal(crank.StartsWith("toe room 9", StringComparison.Ordinal) || crank.EndsWith("88.9", StringComparison.Ordinal) || crank.EndsWith("89", StringComparison.Ordinal), fit.Sentence.Contains("as measured", StringComparison.Ordinal));
    }

    /// <summary>The tangent of 25 degrees over half of 150 and 60 mm is 62.95 mm of height.</summary>
    [Theory]
    [InlineData("bottom bracket drop 97", "ground height 63", Verdict.Fits)]
    [InlineData("bottom bracket drop 97", "ground height 62.9", Verdict.Unsafe)]
    [InlineData("bottom bracket drop unknown", "ground height 63", Verdict.Fits)]
    [InlineData("bottom bracket drop 20", "ground height 62.9", Verdict.Unsafe)]
    [InlineData("bottom bracket drop 20", "ground height 63 \u00B1 1", Verdict.NeedsMeasuring)]
    public void A_pedal_whose_height_was_measured_is_judged_by_it(string frame, string pedals, Verdict verdict) => Assert.Equal(
        verdict,
        Of(Check(frame, (Slot.RearTyre, "40-622"), (Slot.Crankset, "crank length 170; Q factor 150"), (Slot.Pedals, "height 20; reach 60; " + pedals)), "pedal-ground-clearance").Verdict);

    [Fact]
    public void What_the_sums_leave_open_asks_for_what_settles_it_and_a_sheet_chooses_no_part_by_it()
    {
        FitReport report = Check("front centre 560; bottom bracket drop 104", (Slot.Fork, "threadless"), (Slot.FrontTyre, "40-622"), (Slot.RearTyre, "40-622"), (Slot.Crankset, "crank length 170; Q factor 150"), (Slot.Pedals, "height 20; reach 60"));
        Assert.Contains(Of(report, "toe-clearance").Measurements, m => m.Field == "toeClearance");
        Assert.Contains(Of(report, "pedal-ground-clearance").Measurements, m => m.Field == "groundHeight");
        Assert.DoesNotContain(report.Build.Without(Slot.Crankset).Needs().SelectMany(n => n.Lines), l => l.Field is "toeClearance" or "groundHeight" or "mountedWidth" or "cassetteChainline");
        Build built = report.Build.WithMeasured(Slot.Crankset, "toeClearance", "92").WithMeasured(Slot.Pedals, "groundHeight", "70");
        Assert.Equal((Verdict.Fits, Verdict.Fits), (Of(built.Check(), "toe-clearance").Verdict, Of(built.Check(), "pedal-ground-clearance").Verdict));
    }

    /// <summary>A fork that is longer than the chart's lifts the top tube by at most the difference: what it may take of the 25 mm is asked, and refused is only what no fork of this length makes right.</summary>
    [Theory]
    [InlineData("820", "541", "541", Verdict.Fits)]
    [InlineData("785", "541", "541", Verdict.Fits)]
    [InlineData("784.9", "541", "541", Verdict.NeedsMeasuring)]
    [InlineData("820", "576", "541", Verdict.Fits)]
    [InlineData("820", "576.1", "541", Verdict.NeedsMeasuring)]
    [InlineData("820", "641", "541", Verdict.NeedsMeasuring)]
    [InlineData("820", "unknown", "541", Verdict.NeedsMeasuring)]
    [InlineData("820", "none", "541", Verdict.NeedsMeasuring)]
    [InlineData("820", "unknown", "unknown", Verdict.Fits)]
    [InlineData("755", "unknown", "541", Verdict.NeedsMeasuring)]
    [InlineData("1040", "560", "300", Verdict.NeedsMeasuring)]
    [InlineData("820", "641", "unknown", Verdict.Fits)]
    [InlineData("755", "541", "541", Verdict.DoesNotFit)]
    [InlineData("755", "536", "541", Verdict.NeedsMeasuring)]
    [InlineData("755", "537", "541", Verdict.DoesNotFit)]
    public void A_longer_fork_lifts_the_top_tube(string inseam, string fork, string chart, Verdict verdict)
    {
        FitReport report = Check($"standover 760; fork of the design {chart}", (Slot.Rider, $"inseam {inseam}"), (Slot.Fork, $"axle to crown {fork}"));
        Assert.Equal(verdict, Of(report, "standover-with-fork").Verdict);
        Assert.DoesNotContain(report.Findings, f => f.Joint!.Id == "standover");
    }

    [Fact]
    public void A_standover_that_was_measured_as_built_is_that_of_this_fork()
    {
        Build build = Check("standover 760; fork of the design 541", (Slot.Rider, "inseam 820"), (Slot.Fork, "axle to crown 641")).Build;
        Build measured = build.WithMeasured(Slot.Frame, "standover", "790");
        Assert.Equal(Verdict.Fits, Of(measured.Check(), "standover-with-fork").Verdict);
        Build other = measured.With(Fork.Read("axle to crown 661"));
        Assert.Equal(Verdict.NeedsMeasuring, Of(other.Check(), "standover-with-fork").Verdict);
        Assert.Equal("standover", other.OldReadings.Single().Field);
    }

    [Theory]
    [InlineData("shortest fork 380", "axle to crown 380", Verdict.Fits)]
    [InlineData("shortest fork 380", "axle to crown 379", Verdict.DoesNotFit)]
    [InlineData("shortest fork none", "axle to crown 379", Verdict.NeedsMeasuring)]
    public void A_fork_is_not_shorter_than_the_frame_allows(string frame, string fork, Verdict verdict) => Assert.Equal(verdict, Of(Check(frame, (Slot.Fork, fork)), "fork-not-too-short").Verdict);

    /// <summary>A threaded steerer is held by its locknut: the sums of a threadless one are not asked of it.</summary>
    [Theory]
    [InlineData("steererLength 200; steererKind threaded", false)]
    [InlineData("steererLength 200; steererKind threadless; crowns dual", false)]
    [InlineData("steererLength 200; steererKind threadless; crowns single", true)]
    [InlineData("steererLength 200; steererKind threadless", true)]
    [InlineData("steererLength 200", true)]
    public void The_sums_of_a_threadless_steerer_are_not_asked_of_a_threaded_one(string fork, bool asked)
    {
        FitReport report = Check("headTubeLength 120", (Slot.Fork, fork), (Slot.Headset, "upperStack 30; lowerStack 12"), (Slot.Stem, "clampHeight none; spacersBelow none; spacersAbove none"));
        Assert.Equal(asked, report.Findings.Any(f => f.Joint!.Id == "steerer-reaches-stem"));
        Assert.Equal(asked, report.Findings.Any(f => f.Joint!.Id == "gap-under-cap"));
    }

    /// <summary>The sums of one crown say nothing of a fork that may have two: with much travel, or where both are named.</summary>
    [Theory]
    [InlineData("travel 63", Verdict.Fits)]
    [InlineData("travel 79.9", Verdict.Fits)]
    [InlineData("travel 80", Verdict.NeedsMeasuring)]
    [InlineData("travel 130", Verdict.NeedsMeasuring)]
    [InlineData("travel 130; crowns single", Verdict.Fits)]
    [InlineData("travel 203", Verdict.NeedsMeasuring)]
    [InlineData("travel 203; crowns single", Verdict.Fits)]
    [InlineData("crowns single | dual", Verdict.NeedsMeasuring)]
    [InlineData("travel none", Verdict.Fits)]
    [InlineData("travel 50 | 63", Verdict.Fits)]
    [InlineData("travel 63 | 100", Verdict.NeedsMeasuring)]
    [InlineData("travel unknown", Verdict.NeedsMeasuring)]
    [InlineData("travel unknown; crowns single", Verdict.Fits)]
    [InlineData("travel not covered", Verdict.NeedsMeasuring)]
    [InlineData("frontBrakeHole recessed-6", Verdict.Fits)]
    [InlineData("frontBrakeHole nutted-6", Verdict.NeedsMeasuring)]
    [InlineData("frontBrakeHole none", Verdict.NeedsMeasuring)]
    [InlineData("frontBrakeHole recessed-6; crowns dual | single", Verdict.NeedsMeasuring)]
    public void A_fork_that_may_have_two_crowns_is_asked_about(string fork, Verdict verdict)
    {
        FitReport report = Check("head tube length 110", (Slot.Fork, $"steererLength 179.5; {fork}"), (Slot.Headset, "upper stack 12; lower stack 10"), (Slot.Stem, "clamp height 40; spacers below 10; spacers above none"));
        foreach (string joint in new[] { "steerer-reaches-stem", "gap-under-cap" })
        {
            Assert.Equal(verdict, Of(report, joint).Verdict);
            Assert.Equal(verdict == Verdict.NeedsMeasuring ? ["crowns"] : [], Of(report, joint).Measurements.Select(m => m.Field));
        }
    }

    [Fact]
    public void No_spacers_are_reckoned_for_a_fork_with_two_crowns()
    {
        static IEnumerable<string> Listed(string crowns) => Check("head tube length 110", (Slot.Fork, $"threadless; steererLength 220; crowns {crowns}"), (Slot.Headset, "upper stack 12; lower stack 10"), (Slot.Stem, "clamp height 40")).Build.SmallParts().Select(p => p.Id);
        Assert.Contains("headset-spacers", Listed("single"));
        Assert.DoesNotContain("headset-spacers", Listed("dual"));
    }

    /// <summary>A ring in its own place is one of those that chain and derailleur are counted with, or the crank's figure is asked about.</summary>
    [Theory]
    [InlineData("largestRing 40; smallestRing none", "teeth 40", Verdict.Fits)]
    [InlineData("largestRing 46; smallestRing 30", "teeth 30", Verdict.Fits)]
    [InlineData("largestRing 32; smallestRing none", "teeth 40", Verdict.NeedsMeasuring)]
    [InlineData("largestRing 46; smallestRing 30", "teeth 40", Verdict.NeedsMeasuring)]
    [InlineData("largestRing none; smallestRing none", "teeth 40", Verdict.Fits)]
    [InlineData("largestRing none", "teeth 40", Verdict.Fits)]
    [InlineData("largestRing none; smallestRing 40", "teeth 40", Verdict.NeedsMeasuring)]
    [InlineData("largestRing none", "teeth unknown", Verdict.Fits)]
    [InlineData("largestRing 40; smallestRing none", "teeth unknown", Verdict.NeedsMeasuring)]
    [InlineData("largestRing 32 | 40; smallestRing none", "teeth 40", Verdict.NeedsMeasuring)]
    public void A_ring_of_its_own_is_one_that_the_chain_is_counted_with(string crank, string ring, Verdict verdict) =>
        Assert.Equal(verdict, Of(Check("material steel", (Slot.Crankset, crank), (Slot.Chainring, ring)), "ring-counted-with-crank").Verdict);

    /// <summary>A bare crank with nothing beside it is asked about whatever else is known; with a ring beside it, or of its own, it is not.</summary>
    [Theory]
    [InlineData("largestRing none", null, Verdict.NeedsMeasuring)]
    [InlineData("largestRing none", "teeth 40", null)]
    [InlineData("largestRing 40", null, null)]
    [InlineData("material aluminium", null, null)]
    public void A_crank_that_is_stated_without_a_ring_is_asked_about(string crank, string? ring, Verdict? verdict)
    {
        Build build = Check("largest ring 42", (Slot.Crankset, crank)).Build;
        FitReport report = (ring is null ? build : build.With(Chainring.Read(ring))).Check();
        Assert.Equal(verdict is { } one ? [one] : [], report.Findings.Where(f => f.Joint!.Id == "ring-on-bare-crank").Select(f => f.Verdict));
        Assert.DoesNotContain(report.Findings, f => f.Verdict is Verdict.DoesNotFit or Verdict.Unsafe);
    }

    /// <summary>What is known of the ring on a bare crank is not asked of the crank again: each row says of the two what it says of a crank with that ring.</summary>
    [Theory]
    [InlineData("derailleur-capacity", "capacity 23", 112, 40)]
    [InlineData("derailleur-capacity", "capacity 22", 112, 40)]
    [InlineData("chain-reaches", "capacity 23", 111, 40)]
    [InlineData("chain-reaches", "capacity 23", 110, 40)]
    [InlineData("chain-reaches", "capacity 23", 110, 38)]
    [InlineData("chain-taken-up", "capacity 23", 113, 40)]
    [InlineData("chain-taken-up", "capacity 23", 117, 40)]
    [InlineData("chain-taken-up", "capacity none", 112, 40)]
    public void The_ring_on_a_bare_crank_is_counted(string joint, string derailleur, int pitches, int teeth)
    {
        Build Parts(string crank) => Check("chainstay 440", (Slot.Crankset, crank), (Slot.Cassette, "smallestSprocket 11; largestSprocket 34"), (Slot.RearDerailleur, derailleur), (Slot.Chain, FormattableString.Invariant($"pitches {pitches}"))).Build;
        Verdict own = Of(Parts(FormattableString.Invariant($"largestRing {teeth}; smallestRing none")).Check(), joint).Verdict;
        Build bare = Parts("largestRing none");
        Assert.DoesNotContain(bare.Check().Findings, f => f.Joint!.Id == joint + "-with-ring");
        FitReport report = bare.With(Chainring.Read(FormattableString.Invariant($"teeth {teeth}"))).Check();
        Assert.Equal((own, Verdict.Fits), (Of(report, joint + "-with-ring").Verdict, Of(report, joint).Verdict));
        FitReport open = bare.With(Chainring.Read("teeth unknown")).Check();

        // One ring takes nothing of the capacity, however many teeth it has.
        Assert.Equal(joint == "derailleur-capacity" ? own : Verdict.NeedsMeasuring, Of(open, joint + "-with-ring").Verdict);
        Assert.DoesNotContain(Parts("largestRing 40; smallestRing none").With(Chainring.Read("teeth 40")).Check().Findings, f => f.Joint!.Id.EndsWith("-with-ring", StringComparison.Ordinal));
    }

    /// <summary>The crowns are asked once, whatever rows ask: one look answers the frame's row and both sums.</summary>
    [Theory]
    [InlineData("single")]
    [InlineData("dual")]
    [InlineData("unknown")]
    public void The_crowns_are_asked_once(string allowed) => Assert.Single(
        Check($"fork crowns {allowed}; head tube length 110", (Slot.Fork, "steererLength 179.5"), (Slot.Headset, "upper stack 12; lower stack 10"), (Slot.Stem, "clamp height 40; spacers below 10; spacers above none")).ToMeasure,
        m => m.What.Slot == Slot.Fork && m.What.Field == "crowns");
}
