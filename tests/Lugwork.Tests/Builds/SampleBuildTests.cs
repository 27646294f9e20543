using Lugwork.Workshop;

namespace Lugwork.Tests.Builds;

/// <summary>The build files of the samples say what they are there to show.</summary>
public sealed class SampleBuildTests
{
    private static Build Sample(string name) => BuildFile.Read(File.ReadAllText(Path.Combine(BuildFileTests.Root(), "samples", "FrameUp", "builds", name + ".json")));

    [Fact]
    public void The_readme_shows_how_the_answer_begins()
    {
        string shown = File.ReadAllText(Path.Combine(BuildFileTests.Root(), "README.md")).ReplaceLineEndings("\n").Split("```text\n")[1].Split("```")[0];
        Assert.StartsWith(shown, Sample("tourer-from-commuter").Check().ToString().ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_clean_bicycle_fits_whole()
    {
        FitReport report = Sample("road-disc-all-new").Check();
        Assert.Equal(Verdict.Fits, report.Verdict);
        Assert.True(report.IsComplete);
        Assert.Equal(JointTable.All.Count(j => j.IsFilled(report.Build)), report.Findings.Length);
        Assert.True(report.Findings.Length > 60);
        Assert.All(report.Findings, f => Assert.Equal(Verdict.Fits, f.Verdict));
    }

    /// <summary>The build of the work plan is the clean bicycle before its steerer is cut: that is all that is open.</summary>
    [Fact]
    public void The_bicycle_of_the_work_plan_waits_for_its_cut_alone()
    {
        Build build = BuildFile.Read(File.ReadAllText(Path.Combine(BuildFileTests.Root(), "samples", "WorkPlan", "builds", "road-frame-to-cut.json")));
        FitReport report = build.Check();
        Assert.Equal(["gap-under-cap NeedsPart"], report.Findings.Where(f => f.Verdict != Verdict.Fits).Select(f => $"{f.Joint!.Id} {f.Verdict}"));
        WorkPlan plan = build.WorkPlan();
        double Of(string step, string figure) => plan.Find(step)!.Figures.Single(f => f.Id == figure).Value!.Value;

        // By hand: 140 + 14 + 1 + 15 + 40 + 5 = 215 mm of stack; cut 3 mm below; 300 - 212; 350 - (775 - 510 - 45).
        Assert.Equal((212, 88, 3, 130), (Of("cut-steerer", "steerer-cut"), Of("cut-steerer", "steerer-off"), Of("cut-steerer", "gap-after-cut"), Of("fit-seatpost", "post-insertion")));
        Build cut = WorkRecord.For(plan).WithMeasured("cut-steerer", "steerer-cut", UnitsNet.Length.FromMillimeters(212)).AsBuilt();
        Assert.Equal(Verdict.Fits, cut.Check().Findings.Single(f => f.Joint!.Id == "gap-under-cap").Verdict);
    }

    [Theory]
    [InlineData("rear-axle-in-frame", Verdict.Unsafe, "aluminium trail frame", "axle of the old enduro frame", "M12 x 1.0", "M12 x 1.75", "own pitch")]
    [InlineData("cassette-on-freehub-body", Verdict.DoesNotFit, "new rear wheel", "cassette of the cross-country bicycle", "Micro Spline", "XD", "freehub body for this cassette")]
    [InlineData("seatpost-in-seat-tube", Verdict.DoesNotFit, "aluminium trail frame", "post of the cross-country bicycle", "30.9", "31.6", "own size")]
    [InlineData("bar-in-stem", Verdict.DoesNotFit, "stem of the old enduro bicycle", "wide bar of the downhill bicycle", "31.8", "35.0", "stem for this bar")]
    [InlineData("saddle-on-seatpost", Verdict.DoesNotFit, "post of the cross-country bicycle", "carbon-railed race saddle", "7 mm round", "7 x 9 mm", "clamp set for these rails")]
    public void Each_planted_fault_names_both_parts_both_figures_rule_source_and_remedy(string joint, Verdict verdict, string seat, string part, string seatFigure, string partFigure, string remedy)
    {
        Fit fit = Sample("trail-frame-donor-mix").Check().Findings.Single(f => f.Joint!.Id == joint);
        Assert.Equal(verdict, fit.Verdict);
        Assert.Contains(fit.Compared, c => c.ToString().Contains(seat, StringComparison.Ordinal) && c.Value.Contains(seatFigure, StringComparison.Ordinal));
        Assert.Contains(fit.Compared, c => c.ToString().Contains(part, StringComparison.Ordinal) && c.Value.Contains(partFigure, StringComparison.Ordinal));
        Assert.Contains(seatFigure, fit.Sentence, StringComparison.Ordinal);
        Assert.Contains(partFigure, fit.Sentence, StringComparison.Ordinal);
        Assert.Contains(fit.Remedies, r => r.What.Contains(remedy, StringComparison.Ordinal));
        Assert.NotNull(fit.WeakestLeg);
        string told = fit.Explain();
        Assert.All(new[] { joint, seat, part, seatFigure, partFigure, remedy, fit.WeakestLeg.ToString() }, piece => Assert.Contains(piece, told, StringComparison.Ordinal));
    }

    [Fact]
    public void The_used_bicycle_says_condition_wear_age_and_what_was_cut()
    {
        Build build = Sample("used-winter-bicycle");
        FitReport report = build.Check();
        string[] open =
        [
            "chain-elongation DoesNotFit", "condition-of-chain NeedsMeasuring", "condition-of-fork NeedsMeasuring", "condition-of-front-rotor NeedsMeasuring", "condition-of-stem NeedsMeasuring",
            "drive-worn-as-a-set NeedsMeasuring", "front-rotor-wear Unsafe",
        ];
        Assert.Equal(open, report.Findings.Where(f => f.Verdict != Verdict.Fits).Select(f => $"{f.Joint!.Id} {f.Verdict}").Order(StringComparer.Ordinal));
        Assert.Equal(Verdict.Fits, report.Findings.Single(f => f.Joint!.Id == "head-angle-not-too-slack").Verdict);
        Assert.Equal(Verdict.Fits, report.Findings.Single(f => f.Joint!.Id == "gap-under-cap").Verdict);
        Assert.Equal([Slot.Frame, Slot.Fork, Slot.Stem, Slot.Handlebar, Slot.Chain, Slot.FrontRotor], build.ToInspect().Select(p => p.Slot).OrderBy(s => Order.IndexOf(s)));
        Assert.Equal(["insertion", "over24Pitches", "steererLength"], build.AsBuilt.Select(v => v.Field).Order(StringComparer.Ordinal));
        Assert.Equal("300", build.AsBuilt.Single(v => v.Kind == AsBuiltKind.Cut).Was);
    }

    private static readonly List<Slot> Order = [Slot.Frame, Slot.Fork, Slot.Stem, Slot.Handlebar, Slot.Chain, Slot.FrontRotor];

    /// <summary>The samples page shows the report; the gate holds the whole of it, this its beginning.</summary>
    [Fact]
    public void The_samples_page_shows_the_report_of_the_used_bicycle()
    {
        string shown = File.ReadAllText(Path.Combine(BuildFileTests.Root(), "samples", "README.md")).ReplaceLineEndings("\n").Split("## used-winter-bicycle.json")[1].Split("```\n")[1];
        Build build = Sample("used-winter-bicycle");
        Assert.Contains(build.Check().ToString().ReplaceLineEndings("\n"), shown, StringComparison.Ordinal);
        Assert.All(build.ToInspect(), p => Assert.Contains($"  - {p}\n", shown, StringComparison.Ordinal));
        Assert.All(build.AsBuilt, v => Assert.Contains($"  - {v}\n", shown, StringComparison.Ordinal));
        Assert.All(build.SmallParts(), p => Assert.Contains($"  - {p}\n", shown, StringComparison.Ordinal));
    }

    [Fact]
    public void There_are_five_faults_and_no_more()
    {
        FitReport report = Sample("trail-frame-donor-mix").Check();
        Assert.True(report.IsComplete);
        Assert.Equal(5, report.Findings.Count(f => f.Verdict != Verdict.Fits));
        Assert.Equal(Verdict.Unsafe, report.Verdict);
    }

    [Fact]
    public void A_bare_frame_gets_a_need_for_every_slot_and_says_all_that_the_frame_decides()
    {
        Build build = Sample("bare-gravel-frame");
        NeedsSheet needs = build.Needs();
        Assert.Equal(build.Check().Missing, needs.Select(n => n.Slot));
        Assert.Equal(Slot.All.Where(s => !s.IsOptional && s != Slot.Frame && s != Slot.FrontRimBrake && s != Slot.RearRimBrake && s != Slot.Shock), needs.Select(n => n.Slot));
        Assert.All(needs, n => Assert.NotEmpty(n.Lines));
        Assert.All(
            new[]
            {
                (Slot.RearWheel, "hub standard 12x142 thru-axle"), (Slot.RearThruAxle, "axle thread M12 x 1.0"), (Slot.Headset, "upper half EC44, ZS44"), (Slot.Headset, "lower half EC44, ZS44"),
                (Slot.Seatpost, "seatpost diameter 27.2"), (Slot.Seatpost, "insertion at least 90 mm, at most 260 mm"), (Slot.SeatClamp, "collar size 31.8"),
                (Slot.RearTyre, "tyre width 18 to 45"), (Slot.RearTyre, "tyre bead seat 622"), (Slot.BottomBracket, "made for T47 threaded"), (Slot.RearRotor, "at most 160 mm"),
                (Slot.RearDerailleur, "derailleur mount M10 bolt, hangerless"), (Slot.Crankset, "spindle 24 mm road"),
            },
            expected => Assert.Contains(expected.Item2, string.Join("; ", needs.Of(expected.Item1)!.Rows), StringComparison.Ordinal));
    }

    [Fact]
    public void Measurements_are_ranked_by_the_verdicts_that_each_settles()
    {
        FitReport report = Sample("swap-meet-frame").Check();
        Assert.Equal(Verdict.NeedsMeasuring, report.Verdict);
        (int Settles, int Touches)[] worth = [.. report.ToMeasure.Select(m => (m.Settles, m.Touches))];
        Assert.Equal(worth.OrderByDescending(w => w), worth);
        Assert.Equal((Slot.Chain, "size", 4), (report.ToMeasure[0].What.Slot, report.ToMeasure[0].What.Field, report.ToMeasure[0].Settles));
    }

    [Fact]
    public void What_a_measurement_is_said_to_settle_it_settles()
    {
        Build build = Sample("swap-meet-frame");
        foreach (RankedMeasurement ranked in build.Check().ToMeasure.Where(m => m.Settles > 0))
        {
            Joint[] open = [.. build.Check().Findings.Where(f => f.Verdict == Verdict.NeedsMeasuring && f.Measurements.All(m => m.Slot == ranked.What.Slot && m.Field == ranked.What.Field)).Select(f => f.Joint!)];
            Assert.Equal(ranked.Settles, open.Length);
            foreach (Joint joint in open)
            {
                // Whatever its value turns out to be, the joint is decided: by a verdict, or by what its source says to check.
                int at = joint.Inputs.IndexOf(joint.Inputs.First(i => i.Slot == ranked.What.Slot && i.Field == ranked.What.Field));
                CandidateRow row = default;
                Assert.True(joint.TryRead(build, ref row), joint.Id);
                HashSet<Verdict> all = [];
                joint.Visit(row, (values, outcome) =>
                {
                    CandidateRow settled = row;
                    settled[at] = new Candidates(KnownState.Value, values[at], values[at], null);
                    all.Add(joint.Common(settled));
                    Assert.True(outcome.Verdict == joint.Common(settled), $"{joint}: {ranked} leaves {joint.Common(settled)} open, not {outcome.Verdict}");
                    return true;
                });
                Assert.True(all.Count > 1, $"{joint} does not depend on {ranked}");
            }
        }
    }

    [Fact]
    public void What_no_measurement_can_settle_is_only_helped()
    {
        // Its source says to check: the thread is a maker's own.
        Build build = Build.From(Frame.Read("rear 12x142; rear axle thread own")).With(ThruAxle.Read("own"), Slot.RearThruAxle);
        Assert.All(build.Check().ToMeasure, m => Assert.Equal(0, m.Settles));
        Assert.NotEmpty(build.Check().ToMeasure);
    }
}
