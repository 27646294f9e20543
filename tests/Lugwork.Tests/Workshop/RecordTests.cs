using System.Collections.Immutable;
using Lugwork.Tests.Builds;
using Lugwork.Workshop;
using UnitsNet;

namespace Lugwork.Tests.Workshop;

/// <summary>A plan worked off: written down, saved, resumed, lapsed, and taken back into the build.</summary>
public sealed class RecordTests
{
    private static readonly WorkPlan Plan = Bench.WholeBicycle().WorkPlan();

    [Fact]
    public void What_comes_next_is_what_waits_for_nothing()
    {
        WorkRecord record = WorkRecord.For(Plan);
        Assert.Equal(["inspect-parts"], record.Next.Select(s => s.Id));
        record = record.WithDone("inspect-parts");
        Assert.Contains("measure-interfaces", record.Next.Select(s => s.Id));
        Assert.DoesNotContain("inspect-parts", record.Next.Select(s => s.Id));
        Assert.DoesNotContain("cut-steerer", record.Next.Select(s => s.Id));
        Assert.Equal(["inspect-parts"], record.WithReopened("inspect-parts").Next.Select(s => s.Id));
    }

    [Fact]
    public void Working_off_what_is_next_ends_with_the_whole_plan()
    {
        WorkRecord record = WorkRecord.For(Plan);
        for (int i = 0; i < Plan.Steps.Length; i++)
        {
            Assert.False(record.IsComplete);
            WorkStep next = record.Next[^1];
            record = record.WithDone(next.Id);
            record = next.Torques.Where(t => !t.IsByHand).Aggregate(record, (r, t) => r.WithTorque(next.Id, t.Id, t.Ranges.First(g => t.Ranges.All(o => o.IsOfOtherParts || o.Source.IsUnpublished) || (!g.IsOfOtherParts && !g.Source.IsUnpublished)).Least));
            record = next.Figures.Any(f => f.Unit == "N m") ? record.WithNote(next.Id, "by the makers' sheets") : record;
        }

        Assert.True(record.IsComplete);
        Assert.Empty(record.Next);
        Assert.Empty(record.Questions.Where(q => !q.Contains("no page was read for", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_record_reads_back_as_it_was_written()
    {
        WorkRecord record = WorkRecord.For(Plan).WithDone("inspect-parts").WithMeasured("cut-steerer", "steerer-cut", Length.FromMillimeters(199.5)).WithTorque("fit-stem", "stem-on-steerer", Torque.FromNewtonMeters(4.5)).WithNote("fit-stem", "\"paste\" <used>\n\u00e4");
        WorkRecord back = WorkRecordFile.Read(WorkRecordFile.Write(record), Plan);
        Assert.Equal(record.Entries.Select(e => e.ToString()), back.Entries.Select(e => e.ToString()));
        Assert.True(back.IsDone("inspect-parts"));
        Assert.Equal(WorkRecordFile.Write(record), WorkRecordFile.Write(back));
    }

    [Fact]
    public void A_figure_or_torque_written_again_replaces_the_earlier_one()
    {
        WorkEntry entry = WorkRecord.For(Plan).WithMeasured("cut-steerer", "steerer-cut", Length.FromMillimeters(199)).WithMeasured("cut-steerer", "steerer-cut", Length.FromMillimeters(198)).Entries.Single();
        Assert.Equal(["steerer-cut 198 mm"], entry.Measurements.Select(m => m.ToString()));
    }

    [Fact]
    public void An_unknown_step_figure_or_torque_is_refused_with_its_name()
    {
        WorkRecord record = WorkRecord.For(Plan);
        Assert.Contains("no step polish", Assert.Throws<ArgumentException>(() => record.WithDone("polish")).Message, StringComparison.Ordinal);
        Assert.Contains("no figure weight", Assert.Throws<ArgumentException>(() => record.WithMeasured("fit-stem", "weight", Length.FromMillimeters(1))).Message, StringComparison.Ordinal);
        Assert.Contains("no torque pedal", Assert.Throws<ArgumentException>(() => record.WithTorque("fit-stem", "pedal", Torque.FromNewtonMeters(1))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => record.WithTorque("fit-pedals", "pedal", Torque.FromNewtonMeters(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => record.WithTorque("fit-pedals", "pedal", Torque.FromNewtonMeters(300.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => record.WithMeasured("cut-steerer", "steerer-cut", Length.FromMillimeters(-1)));
        Assert.Throws<ArgumentException>(() => record.WithNote("fit-stem", new string('x', 1_001)));
        Assert.Single(record.WithNote("fit-stem", new string('x', 1_000)).Entries);
    }

    [Fact]
    public void An_entry_lapses_with_its_step_and_stands_again_with_it()
    {
        WorkRecord record = WorkRecord.For(Plan).WithDone("fit-grips").WithDone("inspect-parts");
        WorkPlan without = Bench.WholeBicycle().Without(Slot.Grips).WorkPlan();
        WorkRecord resumed = WorkRecordFile.Read(WorkRecordFile.Write(record), without);
        Assert.Equal(["fit-grips"], resumed.Lapsed.Select(e => e.StepId));
        Assert.Equal(["inspect-parts"], resumed.Entries.Select(e => e.StepId));
        Assert.False(resumed.IsDone("fit-grips"));
        Assert.Contains(resumed.Questions, q => q.StartsWith("fit-grips is no step", StringComparison.Ordinal));
        Assert.Throws<ArgumentException>(() => resumed.WithDone("fit-grips"));
        Assert.True(resumed.WithPlan(Plan).IsDone("fit-grips"));
        Assert.Empty(resumed.WithPlan(Plan).Lapsed);
        Assert.Equal(WorkRecordFile.Write(record), WorkRecordFile.Write(resumed));
    }

    [Theory]
    [InlineData("{\"steps\":[{\"step\":\"polish\"}]}", "$.steps[0].step", "there is no step polish")]
    [InlineData("{\"steps\":[{\"step\":\"fit-stem\"},{\"step\":\"fit-stem\"}]}", "$.steps[1].step", "fit-stem stands twice")]
    [InlineData("{\"steps\":[{\"done\":true}]}", "$.steps[0]", "an entry names no step")]
    [InlineData("{\"steps\":[null]}", "$.steps[0]", "an entry names no step")]
    [InlineData("{\"steps\":[{\"step\":\"fit-stem\",\"torqueNewtonMetres\":{\"ghost\":5}}]}", "$.steps[0].torqueNewtonMetres.ghost", "there is no such torque")]
    [InlineData("{\"steps\":[{\"step\":\"fit-stem\",\"torqueNewtonMetres\":{\"top-cap\":-5}}]}", "$.steps[0].torqueNewtonMetres.top-cap", "the torque is out of range")]
    [InlineData("{\"steps\":[{\"step\":\"fit-stem\",\"measured\":{\"spacers-below\":{\"value\":\"-1\",\"unit\":\"mm\"}}}]}", "$.steps[0].measured.spacers-below", "the value is none of its unit, or out of range")]
    [InlineData("{}", "$.steps", "there are no steps")]
    [InlineData("null", "$.steps", "there are no steps")]
    [InlineData("{\"steps\":[],\"steps\":[]}", "$", "it is no record")]
    [InlineData("{\"steps\":[],\"other\":1}", "$", "it is no record")]
    [InlineData("{\"steps\":", "$.steps", "it is no record")]
    [InlineData("", "$", "it is no record")]
    public void A_record_that_cannot_be_read_says_where_and_why(string text, string where, string why)
    {
        Assert.False(WorkRecordFile.TryRead(text, Plan, out WorkRecord? record, out ImmutableArray<SpecProblem> problems));
        Assert.Null(record);
        SpecProblem problem = Assert.Single(problems);
        Assert.StartsWith(where, problem.Where, StringComparison.Ordinal);
        Assert.Equal(why, problem.Reason);
        Assert.Throws<SpecException>(() => WorkRecordFile.Read(text, Plan));
    }

    [Fact]
    public void A_record_above_a_megabyte_is_refused() =>
        Assert.False(WorkRecordFile.TryRead(new string(' ', BuildFile.MostBytes + 1), Plan, out _, out _));

    [Fact]
    public void A_torque_outside_every_figure_is_asked_about_and_one_within_any_is_not()
    {
        WorkRecord record = WorkRecord.For(Plan);
        Assert.Contains("other parts alone (2 to 4 N m, with a plate that locks them)", Assert.Single(record.WithTorque("fit-front-rotor", "rotor-bolts", Torque.FromNewtonMeters(3)).Questions), StringComparison.Ordinal);
        Assert.Empty(record.WithTorque("fit-front-rotor", "rotor-bolts", Torque.FromNewtonMeters(4)).Questions);
        Assert.Empty(record.WithTorque("fit-front-rotor", "rotor-bolts", Torque.FromNewtonMeters(6.2)).Questions);
        Assert.Contains("outside every figure", Assert.Single(record.WithTorque("fit-front-rotor", "rotor-bolts", Torque.FromNewtonMeters(6.21)).Questions), StringComparison.Ordinal);
        Assert.Contains("outside every figure", Assert.Single(record.WithTorque("fit-front-rotor", "rotor-bolts", Torque.FromNewtonMeters(1.99)).Questions), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("hanger M10; material aluminium", "fit-hanger", "hanger-bolts", 3, "no page was read for")]
    [InlineData("hanger M10; material aluminium", "fit-hanger", "hanger-bolts", 1, null)]
    [InlineData("material carbon; binder collar", "fit-seatpost", "seat-collar-carbon", 8, "wedge instead of a collar")]
    [InlineData("material carbon; binder collar", "fit-seatpost", "seat-collar-carbon", 5, "no page was read for")]
    public void A_torque_by_memory_alone_or_of_other_parts_is_asked_about(string frame, string step, string row, double torque, string? asked)
    {
        WorkPlan plan = Build.From(Frame.Read(frame)).With(RearDerailleur.Read("M10 bolt")).With(Seatpost.Read("27.2")).WorkPlan();
        ImmutableArray<string> questions = WorkRecord.For(plan).WithTorque(step, row, Torque.FromNewtonMeters(torque)).Questions;
        Assert.Equal(asked is not null, questions.Any());
        Assert.True(asked is null || questions.Single().Contains(asked, StringComparison.Ordinal), string.Join("; ", questions));
    }

    [Fact]
    public void A_step_done_with_an_open_joint_or_an_unknown_cut_is_asked_about()
    {
        WorkPlan plan = Build.From(Frame.Read("material steel; seatTube unknown")).With(Seatpost.Read("27.2")).With(Fork.Read("steerer kind threadless; crowns single")).With(Stem.Read("28.6 clamp")).WorkPlan();
        Assert.Contains(WorkRecord.For(plan).WithDone("fit-seatpost").Questions, q => q.StartsWith("fit-seatpost is done, and seatpost-in-seat-tube", StringComparison.Ordinal));
        Assert.Contains(WorkRecord.For(plan).WithDone("cut-steerer").Questions, q => q.Contains("steerer-cut was neither known nor written down", StringComparison.Ordinal));
        Assert.DoesNotContain(WorkRecord.For(plan).WithDone("cut-steerer").WithMeasured("cut-steerer", "steerer-cut", Length.FromMillimeters(210)).Questions, q => q.Contains("neither known", StringComparison.Ordinal));
    }

    [Fact]
    public void What_a_used_part_was_found_to_be_goes_into_the_build_and_the_step_stands()
    {
        WorkPlan plan = Build.From(Frame.Read("material steel; condition new")).With(Chain.Read("9-speed; condition used")).With(Saddle.Read("7 mm round; condition used")).WorkPlan();
        WorkRecord record = WorkRecord.For(plan).WithDone("inspect-parts").WithFinding("inspect-used-parts", "inspect-chain", "inspected").WithFinding("inspect-used-parts", "inspect-saddle", "worn").WithMeasured("inspect-used-parts", "chain-over-24", Length.FromMillimeters(305)).WithDone("inspect-used-parts");
        Build built = record.AsBuilt();
        Assert.Equal([PartCondition.Inspected, PartCondition.Worn], new[] { built[Slot.Chain], built[Slot.Saddle] }.Select(p => p!.Condition.Value));
        Assert.Empty(record.WithPlan(built.WorkPlan()).Questions.Where(q => !q.Contains("condition", StringComparison.Ordinal)));
        Assert.True(record.WithPlan(built.WorkPlan()).IsDone("inspect-used-parts"));
    }

    [Fact]
    public void A_step_done_before_its_prerequisite_is_asked_about() =>
        Assert.Contains(WorkRecord.For(Plan).WithDone("fit-stem").Questions, q => q.StartsWith("fit-stem is done and fit-fork is not", StringComparison.Ordinal));

    [Fact]
    public void What_was_measured_stands_in_the_build_as_built_and_is_judged_there()
    {
        WorkRecord record = WorkRecord.For(Plan).WithMeasured("fit-seatpost", "post-insertion", Length.FromMillimeters(60)).WithCount("fit-chain", "chain-pitches", 106).WithMeasured("fit-stem", "spacers-above", Length.FromMillimeters(0));
        Build built = record.AsBuilt();
        Assert.Equal(Known<Dimension>.Of(Dimension.OfMillimetres(60)), ((Seatpost)built[Slot.Seatpost]!).Insertion);
        Assert.Equal(EvidenceKind.Measured, ((Seatpost)built[Slot.Seatpost]!).Insertion.Evidence!.Kind);
        Assert.Equal(Known<Dimension>.Of(Dimension.OfMillimetres(1346.2m)), ((Chain)built[Slot.Chain]!).Length);
        Assert.Equal(KnownState.None, ((Stem)built[Slot.Stem]!).SpacersAbove.State);
        Assert.Equal(Verdict.Fits, Plan.Report.Findings.Single(f => f.Joint!.Id == "seatpost-insertion").Verdict);
        Assert.Equal(Verdict.Unsafe, built.Check().Findings.Single(f => f.Joint!.Id == "seatpost-insertion").Verdict);
        Assert.Contains(record.WithPlan(built.WorkPlan()).WithDone("fit-seatpost").Questions, q => q.StartsWith("fit-seatpost is done, and seatpost-insertion", StringComparison.Ordinal));
    }

    [Fact]
    public void What_was_cut_is_remembered_as_cut_and_with_the_step()
    {
        Build built = WorkRecord.For(Plan).WithMeasured("cut-steerer", "steerer-cut", Length.FromCentimeters(19.9)).AsBuilt();
        AsBuiltValue cut = built.AsBuilt.Single();
        Assert.Equal((Slot.Fork, "steererLength", "199", AsBuiltKind.Cut, "at cut-steerer"), (cut.Slot, cut.Field, cut.Value, cut.Kind, cut.Note));
    }

    [Fact]
    public void What_a_part_refuses_stays_in_the_record_and_is_asked_about()
    {
        WorkRecord record = WorkRecord.For(Plan).WithMeasured("cut-steerer", "steerer-cut", Length.FromMillimeters(900));
        Assert.Empty(record.AsBuilt().AsBuilt);
        Assert.Contains("only made shorter", Assert.Single(record.Questions), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_figure_that_is_measured_and_has_a_field_goes_into_the_build()
    {
        Build build = Build.From(Frame.Read("material steel"))
            .With(Fork.Read("steerer kind threadless; crowns single; steerer material carbon")).With(Stem.Read("28.6 clamp")).With(Headset.Read("threadless"))
            .With(Dropper.Read("internal")).With(Seatpost.Read("27.2")).With(Shock.Read("condition new")).With(BrakeLever.Read("fluid mineral"), Slot.RearBrakeLever).With(Chain.Read("9-speed; condition used"));
        WorkPlan plan = build.WorkPlan();
        WorkRecord record = WorkRecord.For(plan)
            .WithFinding("press-headset", "upper-cup", "ZS44").WithFinding("press-headset", "lower-cup", "ZS56").WithFinding("fit-shock", "shock-size", "210x55")
            .WithMeasured("fit-dropper-line", "dropper-travel", Length.FromMillimeters(150)).WithMeasured("fit-dropper-line", "dropper-stack", Length.FromMillimeters(205))
            .WithMeasured("fit-seatpost", "open-depth", Length.FromMillimeters(230)).WithMeasured("fit-seatpost", "frame-least", Length.FromMillimeters(80))
            .WithMeasured("fit-stem", "most-spacers", Length.FromMillimeters(30)).WithMeasured("connect-rear-brake", "rear-brake-line", Length.FromMeters(1.62))
            .WithMeasured("inspect-used-parts", "chain-over-24", Length.FromMillimeters(305.5)).WithCount("fit-chain", "chain-pitches", 112);
        Build built = record.AsBuilt();
        Assert.Empty(record.Questions);
        Assert.Equal(
            ["chain.over24Pitches 305.5", "chain.pitches 112", "dropper.stack 205", "dropper.travel 150", "fork.mostSpacers 30", "frame.leastInsertion 80", "frame.mostInsertion 230", "headset.lowerCup ZS56", "headset.upperCup ZS44", "rearBrakeLever.hoseLength 1620", "shock.size eyelet-210x55"],
            built.AsBuilt.Select(v => $"{v.Slot.Key}.{v.Field} {v.Value}").Order(StringComparer.Ordinal));
        Assert.Equal(AsBuiltKind.Measured, built.AsBuilt.Single(v => v.Field == "pitches").Kind);
        Assert.Empty(record.WithPlan(built.WorkPlan()).Questions);
        Assert.Equal(WorkRecordFile.Write(record), WorkRecordFile.Write(WorkRecordFile.Read(WorkRecordFile.Write(record), plan)));
    }

    [Fact]
    public void Every_place_of_a_figure_is_a_field_of_a_part_that_is_there()
    {
        foreach (WorkPlan plan in Enumerable.Range(0, 150).Select(i => Bicycles.Any(new Random(i)).WorkPlan()).Append(Plan))
        {
            Assert.All(plan.Steps.SelectMany(s => s.Figures).Where(f => f.Place is not null), f =>
            {
                Assert.NotNull(plan.Build[f.Place!.Slot]);
                Assert.Contains(PartForms.Of(f.Place.Slot).Fields, field => field.Key == f.Place.Field);
                Assert.True(!f.Place.IsCut || AsBuiltRules.IsCuttable(f.Place.Slot, f.Place.Field), f.Id);
            });
            Assert.All(plan.Steps.SelectMany(s => s.Figures).Where(f => f.Unit == WorkFigure.NewtonMetres), f => Assert.Contains(f.Id, StepTable.MakersTorques));
        }
    }

    [Fact]
    public void A_figure_takes_its_own_kind_of_answer_and_says_which()
    {
        WorkRecord record = WorkRecord.For(Plan);
        Assert.Contains("counted in pitches: WithCount takes it, WithMeasured does not", Assert.Throws<ArgumentException>(() => record.WithMeasured("fit-chain", "chain-pitches", Length.FromMillimeters(1400))).Message, StringComparison.Ordinal);
        Assert.Contains("a length: WithMeasured takes it, WithCount does not", Assert.Throws<ArgumentException>(() => record.WithCount("cut-steerer", "steerer-cut", 3)).Message, StringComparison.Ordinal);
        Assert.Contains("a length: WithMeasured takes it, WithFinding does not", Assert.Throws<ArgumentException>(() => record.WithFinding("cut-steerer", "steerer-cut", "long")).Message, StringComparison.Ordinal);
        foreach ((string step, WorkFigure figure) in Plan.Steps.SelectMany(s => s.Figures.Where(f => f.Unit is not ("pitches" or "teeth")).Select(f => (s.Id, f))))
        {
            string taker = figure.Unit switch { "mm" => nameof(record.WithMeasured), "" => nameof(record.WithFinding), _ => nameof(record.WithTorque) };
            Assert.EndsWith($": {taker} takes it, WithCount does not (Parameter 'figure')", Assert.Throws<ArgumentException>(() => record.WithCount(step, figure.Id, 1)).Message, StringComparison.Ordinal);
        }

        Assert.Throws<ArgumentException>(() => record.WithFinding("mount-rear-caliper", "brake-adapter", " "));
        Assert.Throws<ArgumentOutOfRangeException>(() => record.WithCount("fit-chain", "chain-pitches", 0));
        foreach (double none in new[] { -0.1, 100_000.1 })
        {
            Assert.Contains("length is 0 to 100000 mm", Assert.Throws<ArgumentOutOfRangeException>(() => record.WithMeasured("cut-steerer", "steerer-cut", Length.FromMillimeters(none))).Message, StringComparison.Ordinal);
            Assert.Contains("torque is 0.001 to 300 N m", Assert.Throws<ArgumentOutOfRangeException>(() => record.WithTorque("fit-pedals", "pedal", Torque.FromNewtonMeters(none))).Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_torque_in_inch_pounds_is_the_same_torque() =>
        Assert.Equal("fit-pedals: open; pedal 35.025 N m", WorkRecord.For(Plan).WithTorque("fit-pedals", "pedal", Torque.FromPoundForceInches(310)).Entries.Single().ToString());

    [Fact]
    public void A_torque_that_only_the_maker_names_is_written_down_and_not_asked_about()
    {
        WorkPlan plan = Build.From(Frame.Read("material steel")).With(Seatpost.Read("27.2")).WorkPlan();
        WorkRecord record = WorkRecord.For(plan).WithTorque("fit-seatpost", "binder-torque", Torque.FromNewtonMeters(5));
        Assert.Empty(record.Questions);
        Assert.All(new[] { 3.99, 14.11 }, none => Assert.Contains("outside what was read of like fasteners (4 to 14.1 N m)", Assert.Single(record.WithTorque("fit-seatpost", "binder-torque", Torque.FromNewtonMeters(none)).Questions), StringComparison.Ordinal));
        Assert.All(new[] { 4, 14.1 }, some => Assert.Empty(record.WithTorque("fit-seatpost", "binder-torque", Torque.FromNewtonMeters(some)).Questions));
        Assert.Equal(["fit-seatpost: open; binder-torque 5 N m"], WorkRecordFile.Read(WorkRecordFile.Write(record), plan).Entries.Select(e => e.ToString()));
    }

    [Fact]
    public void A_torque_of_a_kind_that_was_never_read_is_asked_about_only_outside_all_that_was()
    {
        WorkRecord record = WorkRecord.For(Build.From(Frame.Read("material steel; kind full-suspension")).WorkPlan());
        Assert.All(new[] { 0.39, 70.01 }, none => Assert.Contains("outside the torques of every fastener", Assert.Single(record.WithTorque("check-pivots", "pivot-torque", Torque.FromNewtonMeters(none)).Questions), StringComparison.Ordinal));
        Assert.All(new[] { 0.4, 70 }, some => Assert.Empty(record.WithTorque("check-pivots", "pivot-torque", Torque.FromNewtonMeters(some)).Questions));
    }

    /// <summary>Of rows that exclude each other one is enough; what is set by hand is never asked for.</summary>
    [Fact]
    public void A_step_that_is_done_without_its_torque_is_asked_about()
    {
        WorkPlan plan = Build.From(Frame.Read("kind road; material steel")).With(Fork.Read("steerer kind threadless; crowns single; steerer material aluminium")).With(Stem.Read("28.6 clamp")).With(Preload.Read("star nut")).With(Grips.Read("22.2")).WorkPlan();
        static string[] Unwritten(WorkRecord record) => [.. record.Questions.Where(q => q.Contains("no torque is written down", StringComparison.Ordinal))];
        WorkRecord done = WorkRecord.For(plan).WithDone("fit-stem");
        Assert.Equal(["fit-stem is done, and no torque is written down for stem-on-steerer or stem-on-steerer-old"], Unwritten(done));
        Assert.Empty(Unwritten(done.WithTorque("fit-stem", "stem-on-steerer-old", Torque.FromNewtonMeters(15))));
        Assert.Empty(Unwritten(done.WithReopened("fit-stem")));
        Assert.Single(Unwritten(done.WithTorque("final-torque", "stem-on-steerer", Torque.FromNewtonMeters(5))));
        Assert.Empty(Unwritten(done.WithTorque("final-torque", "stem-on-steerer", Torque.FromNewtonMeters(5)).WithTorque("final-torque", "grip-torque", Torque.FromNewtonMeters(3)).WithDone("final-torque")));
        Assert.Equal(["fit-grips is done, and no torque is written down for grip-torque (or a note that there is none)"], Unwritten(WorkRecord.For(plan).WithDone("fit-grips")));
        Assert.Empty(Unwritten(WorkRecord.For(plan).WithDone("fit-grips").WithNote("fit-grips", "no clamps")));
        Assert.Empty(Unwritten(WorkRecord.For(plan).WithDone("inspect-parts")));
    }

    [Fact]
    public void The_second_pass_is_written_down_and_read_back_beside_the_first()
    {
        WorkRecord record = WorkRecord.For(Plan).WithTorque("fit-stem", "stem-on-steerer", Torque.FromNewtonMeters(5)).WithTorque("recheck", "stem-on-steerer", Torque.FromNewtonMeters(5.5)).WithDone("recheck");
        WorkRecord back = WorkRecordFile.Read(WorkRecordFile.Write(record), Plan);
        Assert.Equal([5, 5.5], new[] { "fit-stem", "recheck" }.Select(s => back.Entries.Single(e => e.StepId == s).Torques.Single().Applied.NewtonMeters));
        string asked = Assert.Single(back.Questions, q => q.StartsWith("recheck is done, and no torque", StringComparison.Ordinal));
        Assert.DoesNotContain("stem-on-steerer", asked, StringComparison.Ordinal);
        Assert.Contains("pedal", asked, StringComparison.Ordinal);
        Assert.Contains("outside every figure", Assert.Single(back.WithTorque("recheck", "pedal", Torque.FromNewtonMeters(90)).Questions, q => q.StartsWith("recheck: pedal", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_depth_or_thickness_of_safety_that_nobody_knows_is_asked_about()
    {
        WorkRecord record = WorkRecord.For(Build.From(Frame.Read("material steel")).With(Seatpost.Read("27.2")).With(Rotor.Read("160; six-bolt"), Slot.FrontRotor).WorkPlan()).WithDone("fit-seatpost").WithDone("fit-front-rotor");
        string[] Asked(WorkRecord r) => [.. r.Questions.Where(q => q.Contains("neither known nor written down", StringComparison.Ordinal)).Select(q => q.Split(", and ")[1].Split(' ')[0])];
        Assert.Equal(["post-mark", "post-insertion", "rotor-thickness"], Asked(record).OrderBy(id => Array.IndexOf(["post-mark", "post-insertion", "rotor-thickness"], id)));
        Assert.Equal(["post-mark"], Asked(record.WithMeasured("fit-seatpost", "post-insertion", Length.FromMillimeters(100)).WithMeasured("fit-front-rotor", "rotor-thickness", Length.FromMillimeters(1.8))));
    }

    [Fact]
    public void Each_rotor_gets_its_own_thickness()
    {
        Build built = WorkRecord.For(Plan).WithMeasured("fit-front-rotor", "rotor-thickness", Length.FromMillimeters(1.7)).WithMeasured("fit-rear-rotor", "rotor-thickness", Length.FromMillimeters(1.6)).AsBuilt();
        Assert.Equal(["1.7", "1.6"], new[] { built[Slot.FrontRotor], built[Slot.RearRotor] }.Select(r => ((Rotor)r!).Thickness.ToString()));
    }
}
