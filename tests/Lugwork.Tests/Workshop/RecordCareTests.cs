using System.Collections.Immutable;
using Lugwork.Tests.Builds;
using Lugwork.Workshop;
using UnitsNet;

namespace Lugwork.Tests.Workshop;

/// <summary>What a record must not say: a cut that was only marked, an answer that counts for nothing, two answers for one thing.</summary>
public sealed class RecordCareTests
{
    private static readonly WorkPlan Plan = Bench.WholeBicycle().WorkPlan();

    private static readonly Build Uncut = Build.From(Frame.Read("material steel; head tube length 130"))
        .With(Fork.Read("steerer kind threadless; crowns single; steerer material steel")).With(Headset.Read("threadless; upper stack 12; lower stack 10")).With(Stem.Read("28.6 clamp; clamp height 40; spacers below 10; spacers above 5"))
        .With(BrakeLever.Read("fluid mineral"), Slot.RearBrakeLever).With(Shifter.Read("cable"), Slot.RearShifter).With(Dropper.Read("internal")).With(Seatpost.Read("27.2")).With(Rotor.Read("160"), Slot.FrontRotor).With(Caliper.Read("post"), Slot.FrontCaliper);

    private static Length Mm(double length) => Length.FromMillimeters(length);

    [Fact]
    public void A_mark_at_the_dry_fit_is_no_cut()
    {
        WorkRecord record = WorkRecord.For(Uncut.WorkPlan()).WithMeasured("dry-fit-fork", "steerer-cut", Mm(212)).WithDone("dry-fit-fork");
        Assert.Empty(record.AsBuilt().AsBuilt);
        Assert.Contains(record.AsBuilt().WorkPlan().Find("cut-steerer")!.Tools, t => t.Id == "saw");
        Assert.Equal("212", WorkRecordFile.Read(WorkRecordFile.Write(record), record.Plan).Entries.Single().Measurements.Single().Text);
        Assert.Equal(AsBuiltKind.Cut, Assert.Single(record.WithMeasured("cut-steerer", "steerer-cut", Mm(212)).AsBuilt().AsBuilt).Kind);
    }

    [Theory]
    [InlineData("rear-brake-line", "connect-rear-brake")]
    [InlineData("shift-line", "connect-shifters")]
    public void A_way_measured_while_the_lines_are_laid_is_no_cut(string line, string cuts)
    {
        WorkRecord record = WorkRecord.For(Uncut.WorkPlan()).WithMeasured("route-lines", line, Mm(1700));
        Assert.Empty(record.AsBuilt().AsBuilt);
        Assert.Equal(["1650"], record.WithMeasured(cuts, line, Mm(1650)).AsBuilt().AsBuilt.Select(v => v.Value));
    }

    [Fact]
    public void No_step_that_only_looks_or_marks_brings_a_cut_into_the_build() => Assert.All(
        Bicycle.All.Append(Uncut).SelectMany(b => b.WorkPlan().Steps).SelectMany(s => s.Figures.Where(f => f.Place is { IsCut: true }).Select(f => s.Id)).Distinct(),
        id => Assert.Contains(id, new[] { "cut-steerer", "connect-front-brake", "connect-rear-brake", "connect-shifters", "fit-dropper-line", "fit-chain" }));

    [Theory]
    [InlineData("{\"steps\":[{\"step\":\"fit-seatpost\",\"done\":true,\"measured\":{\"post-insertion\":{\"value\":\"deep enough\"}}}]}", "post-insertion")]
    [InlineData("{\"steps\":[{\"step\":\"fit-seatpost\",\"done\":true,\"measured\":{\"post-insertion\":{\"value\":\"130\"}}}]}", "post-insertion")]
    [InlineData("{\"steps\":[{\"step\":\"fit-seatpost\",\"done\":true,\"measured\":{\"post-insertion\":{\"value\":\"0\",\"unit\":\"mm\"}}}]}", "post-insertion")]
    [InlineData("{\"steps\":[{\"step\":\"fit-front-rotor\",\"done\":true,\"measured\":{\"rotor-thickness\":{\"value\":\"18\",\"unit\":\"teeth\"}}}]}", "rotor-thickness")]
    public void An_answer_that_counts_for_nothing_is_no_answer(string text, string figure)
    {
        WorkRecord record = WorkRecordFile.Read(text, Uncut.WorkPlan());
        Assert.Empty(record.AsBuilt().AsBuilt);
        Assert.Contains(record.Questions, q => q.Contains($"{figure} was neither known nor written down", StringComparison.Ordinal));
        Assert.Contains(record.Questions, q => q.Contains(figure, StringComparison.Ordinal) && q.Contains("counts for nothing", StringComparison.Ordinal));
        string right = text.Contains("rotor", StringComparison.Ordinal) ? text.Replace("\"18\",\"unit\":\"teeth\"", "\"1.8\",\"unit\":\"mm\"", StringComparison.Ordinal)
            : text.Replace("{\"value\":\"deep enough\"}", "{\"value\":\"130\",\"unit\":\"mm\"}", StringComparison.Ordinal).Replace("{\"value\":\"130\"}", "{\"value\":\"130\",\"unit\":\"mm\"}", StringComparison.Ordinal).Replace("\"0\"", "\"130\"", StringComparison.Ordinal);
        Assert.DoesNotContain(WorkRecordFile.Read(right, Uncut.WorkPlan()).Questions, q => q.Contains($"{figure} was neither", StringComparison.Ordinal) || q.Contains("counts for nothing", StringComparison.Ordinal));
    }

    [Fact]
    public void A_cut_of_nothing_is_asked_about()
    {
        WorkRecord record = WorkRecord.For(Uncut.Without(Slot.Headset).WorkPlan()).WithMeasured("cut-steerer", "steerer-cut", Mm(0)).WithDone("cut-steerer");
        Assert.Contains(record.Questions, q => q.StartsWith("cut-steerer: steerer-cut 0 mm counts for nothing", StringComparison.Ordinal));
        Assert.Contains(record.Questions, q => q.Contains("steerer-cut was neither known nor written down", StringComparison.Ordinal));
        Assert.Empty(WorkRecord.For(Plan).WithMeasured("fit-stem", "spacers-above", Mm(0)).Questions);
    }

    [Fact]
    public void Two_answers_for_one_thing_are_asked_about_and_the_later_one_counts()
    {
        WorkRecord record = WorkRecord.For(Uncut.WorkPlan()).WithMeasured("dry-fit-fork", "steerer-cut", Mm(212)).WithMeasured("cut-steerer", "steerer-cut", Mm(150));
        Assert.Equal("cut-steerer says steerer-cut 150 mm, and dry-fit-fork says steerer-cut 212 mm: the later one counts; measure once more", Assert.Single(record.Questions));
        Assert.Equal("150", Assert.Single(record.AsBuilt().AsBuilt).Value);
        Assert.Empty(record.WithMeasured("cut-steerer", "steerer-cut", Mm(212)).Questions);
        Assert.Single(WorkRecord.For(Plan).WithMeasured("fit-front-rotor", "rotor-thickness", Mm(1.8)).WithMeasured("mount-front-caliper", "rotor-thickness", Mm(1.6)).Questions, q => q.Contains("the later one counts", StringComparison.Ordinal));
        Assert.DoesNotContain(WorkRecord.For(Plan).WithMeasured("fit-front-rotor", "rotor-thickness", Mm(1.8)).WithMeasured("fit-rear-rotor", "rotor-thickness", Mm(1.6)).Questions, q => q.Contains("the later one counts", StringComparison.Ordinal));
    }

    /// <summary>The saddle is raised after the post was fitted: that is the work, and no contradiction.</summary>
    [Fact]
    public void A_step_that_sets_a_thing_anew_may_differ_from_the_one_that_fitted_it()
    {
        WorkPlan plan = Uncut.With(Saddle.Read("7 mm round")).WorkPlan();
        WorkRecord record = WorkRecord.For(plan).WithMeasured("fit-seatpost", "post-insertion", Mm(150)).WithMeasured("set-saddle-height", "post-insertion", Mm(120));
        Assert.DoesNotContain(record.Questions, q => q.Contains("the later one counts", StringComparison.Ordinal));
        Assert.Equal("120", ((Seatpost)record.AsBuilt()[Slot.Seatpost]!).Insertion.ToString());
    }

    private static WorkStep Rack => new()
    {
        Id = "fit-rack", Title = "Fit the rack", Stage = WorkStage.SettingUp, Skill = WorkSkill.Practised, Time = WorkTime.HalfHour, Does = ["Bolt it on."],
        Figures = [new() { Id = "rack-torque", Name = "torque of the rack", Unit = "N m", Lacking = ["the rack maker's figure"] }, new() { Id = "rack-height", Name = "height of the rack", Unit = "mm", Lacking = ["a rule"] }],
    };

    [Fact]
    public void A_record_with_steps_of_ones_own_reads_back_as_it_was_written() => Assert.All(Bicycle.All, build =>
    {
        WorkPlan plan = build.WorkPlan().With(Rack);
        WorkRecord record = WorkRecord.For(plan).WithTorque("fit-rack", "rack-torque", Torque.FromNewtonMeters(6)).WithMeasured("fit-rack", "rack-height", Mm(320)).WithDone("fit-rack");
        string text = WorkRecordFile.Write(record);
        Assert.True(WorkRecordFile.TryRead(text, plan, out WorkRecord? back, out ImmutableArray<SpecProblem> problems), string.Join("; ", problems.Select(p => p.ToString())));
        Assert.Equal(record.Entries.Select(e => e.ToString()), back!.Entries.Select(e => e.ToString()));
        Assert.Equal(text, WorkRecordFile.Write(back));
        Assert.Empty(back.Questions);
        Assert.Equal(text, WorkRecordFile.Write(WorkRecordFile.Read(text, build.WorkPlan())));
        Assert.Contains(WorkRecordFile.Read(text, build.WorkPlan().With(Rack with { Figures = [] })).Questions, q => q.Contains("rack-torque", StringComparison.Ordinal));
    });

    [Fact]
    public void A_torque_of_ones_own_stands_in_no_step_of_the_library()
    {
        Assert.False(WorkRecordFile.TryRead("{\"steps\":[{\"step\":\"fit-stem\",\"own\":true,\"torqueNewtonMetres\":{\"rack-torque\":6}}]}", Plan, out _, out ImmutableArray<SpecProblem> problems));
        Assert.Equal("there is no such torque", Assert.Single(problems).Reason);
    }

    [Fact]
    public void A_file_of_problems_alone_tells_some_of_them()
    {
        Assert.False(WorkRecordFile.TryRead($"{{\"steps\":[{string.Join(',', Enumerable.Repeat("{\"step\":\"x\"}", 20_000))}]}}", Plan, out _, out ImmutableArray<SpecProblem> problems));
        Assert.Equal(100, problems.Length);
    }

    public static TheoryData<string> Faults => [.. Faulty.Keys];

    private static readonly Dictionary<string, WorkStep> Faulty = new()
    {
        ["does"] = Rack with { Does = [null!] }, ["checks"] = Rack with { Checks = [null!] }, ["slots"] = Rack with { Slots = [null!] }, ["torques"] = Rack with { Torques = [null!] }, ["cautions"] = Rack with { Cautions = [null!] },
        ["after"] = Rack with { After = [null!] }, ["reason"] = Rack with { After = [new("fit-stem", null!)] }, ["tools"] = Rack with { Tools = [null!] }, ["consumables"] = Rack with { Consumables = [null!] },
        ["figures"] = Rack with { Figures = [null!] }, ["lacking"] = Rack with { Figures = [new() { Id = "a", Name = "b", Lacking = default }] }, ["twice"] = Rack with { Figures = [Rack.Figures[0], Rack.Figures[0]] },
        ["stage"] = Rack with { Stage = (WorkStage)99 }, ["skill"] = Rack with { Skill = (WorkSkill)99 }, ["time"] = Rack with { Time = (WorkTime)99 },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_step_of_ones_own_that_cannot_be_written_is_refused(string fault)
    {
        Assert.Throws<ArgumentException>(() => Plan.With(Faulty[fault]));
        Assert.Contains("rack-height", Plan.With(Rack).ToString() + Plan.With(Rack).ToHtml() + Plan.With(Rack).ToMarkdown() + Plan.With(Rack).ToJson(), StringComparison.Ordinal);
    }
}
