using System.Collections.Immutable;
using Lugwork.Tests.Builds;

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
        record = record.Done("inspect-parts");
        Assert.Contains("measure-interfaces", record.Next.Select(s => s.Id));
        Assert.DoesNotContain("inspect-parts", record.Next.Select(s => s.Id));
        Assert.DoesNotContain("cut-steerer", record.Next.Select(s => s.Id));
        Assert.Equal(["inspect-parts"], record.Reopened("inspect-parts").Next.Select(s => s.Id));
    }

    [Fact]
    public void Working_off_what_is_next_ends_with_the_whole_plan()
    {
        WorkRecord record = WorkRecord.For(Plan);
        for (int i = 0; i < Plan.Steps.Length; i++)
        {
            Assert.False(record.IsComplete);
            record = record.Done(record.Next[^1].Id);
        }

        Assert.True(record.IsComplete);
        Assert.Empty(record.Next);
        Assert.Empty(record.Questions);
    }

    [Fact]
    public void A_record_reads_back_as_it_was_written()
    {
        WorkRecord record = WorkRecord.For(Plan).Done("inspect-parts").Measured("cut-steerer", "steerer-cut", 199.5m).Applied("fit-stem", "stem-on-steerer", 4.5m).Noted("fit-stem", "\"paste\" <used>\n\u00e4");
        WorkRecord back = WorkRecordFile.Read(WorkRecordFile.Write(record), Plan);
        Assert.Equal(record.Entries.Select(e => e.ToString()), back.Entries.Select(e => e.ToString()));
        Assert.True(back.IsDone("inspect-parts"));
        Assert.Equal(WorkRecordFile.Write(record), WorkRecordFile.Write(back));
    }

    [Fact]
    public void A_figure_or_torque_written_again_replaces_the_earlier_one()
    {
        WorkEntry entry = WorkRecord.For(Plan).Measured("cut-steerer", "steerer-cut", 199).Measured("cut-steerer", "steerer-cut", 198).Entries.Single();
        Assert.Equal([new WorkMeasurement("steerer-cut", 198)], entry.Measurements);
    }

    [Fact]
    public void An_unknown_step_figure_or_torque_is_refused_with_its_name()
    {
        WorkRecord record = WorkRecord.For(Plan);
        Assert.Contains("no step polish", Assert.Throws<ArgumentException>(() => record.Done("polish")).Message, StringComparison.Ordinal);
        Assert.Contains("no figure weight", Assert.Throws<ArgumentException>(() => record.Measured("fit-stem", "weight", 1)).Message, StringComparison.Ordinal);
        Assert.Contains("no torque pedal", Assert.Throws<ArgumentException>(() => record.Applied("fit-stem", "pedal", 1)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => record.Applied("fit-pedals", "pedal", 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => record.Applied("fit-pedals", "pedal", 300.1m));
        Assert.Throws<ArgumentOutOfRangeException>(() => record.Measured("cut-steerer", "steerer-cut", -1));
        Assert.Throws<ArgumentException>(() => record.Noted("fit-stem", new string('x', 1_001)));
        Assert.Single(record.Noted("fit-stem", new string('x', 1_000)).Entries);
    }

    [Fact]
    public void An_entry_lapses_with_its_step_and_stands_again_with_it()
    {
        WorkRecord record = WorkRecord.For(Plan).Done("fit-grips").Done("inspect-parts");
        WorkPlan without = Bench.WholeBicycle().Without(Slot.Grips).WorkPlan();
        WorkRecord resumed = WorkRecordFile.Read(WorkRecordFile.Write(record), without);
        Assert.Equal(["fit-grips"], resumed.Lapsed.Select(e => e.Step));
        Assert.Equal(["inspect-parts"], resumed.Entries.Select(e => e.Step));
        Assert.False(resumed.IsDone("fit-grips"));
        Assert.Contains(resumed.Questions, q => q.StartsWith("fit-grips is no step", StringComparison.Ordinal));
        Assert.Throws<ArgumentException>(() => resumed.Done("fit-grips"));
        Assert.True(resumed.On(Plan).IsDone("fit-grips"));
        Assert.Empty(resumed.On(Plan).Lapsed);
        Assert.Equal(WorkRecordFile.Write(record), WorkRecordFile.Write(resumed));
    }

    [Theory]
    [InlineData("{\"steps\":[{\"step\":\"polish\"}]}", "$.steps[0].step", "there is no step polish")]
    [InlineData("{\"steps\":[{\"step\":\"fit-stem\"},{\"step\":\"fit-stem\"}]}", "$.steps[1].step", "fit-stem stands twice")]
    [InlineData("{\"steps\":[{\"done\":true}]}", "$.steps[0]", "an entry names no step")]
    [InlineData("{\"steps\":[null]}", "$.steps[0]", "an entry names no step")]
    [InlineData("{\"steps\":[{\"step\":\"fit-stem\",\"torqueNewtonMetres\":{\"ghost\":5}}]}", "$.steps[0].torqueNewtonMetres.ghost", "there is no such torque")]
    [InlineData("{\"steps\":[{\"step\":\"fit-stem\",\"torqueNewtonMetres\":{\"top-cap\":-5}}]}", "$.steps[0].torqueNewtonMetres.top-cap", "the torque is out of range")]
    [InlineData("{\"steps\":[{\"step\":\"fit-stem\",\"measured\":{\"spacers-below\":-1}}]}", "$.steps[0].measured.spacers-below", "the value is out of range")]
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
        Assert.Empty(record.Applied("fit-front-rotor", "rotor-bolts", 3).Questions);
        Assert.Empty(record.Applied("fit-front-rotor", "rotor-bolts", 6.2m).Questions);
        Assert.Contains("outside every figure", Assert.Single(record.Applied("fit-front-rotor", "rotor-bolts", 6.21m).Questions), StringComparison.Ordinal);
        Assert.Contains("outside every figure", Assert.Single(record.Applied("fit-front-rotor", "rotor-bolts", 1.99m).Questions), StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_done_before_its_prerequisite_is_asked_about() =>
        Assert.Contains(WorkRecord.For(Plan).Done("fit-stem").Questions, q => q.StartsWith("fit-stem is done and fit-fork is not", StringComparison.Ordinal));

    [Fact]
    public void What_was_measured_stands_in_the_build_as_built_and_is_judged_there()
    {
        WorkRecord record = WorkRecord.For(Plan).Measured("fit-seatpost", "post-insertion", 60).Measured("fit-chain", "chain-pitches", 110).Measured("fit-stem", "spacers-above", 0);
        Build built = record.AsBuilt();
        Assert.Equal(Known<Dimension>.Of(Dimension.OfMillimetres(60)), ((Seatpost)built[Slot.Seatpost]!).Insertion);
        Assert.Equal(EvidenceKind.Measured, ((Seatpost)built[Slot.Seatpost]!).Insertion.Evidence!.Kind);
        Assert.Equal(Known<Dimension>.Of(Dimension.OfMillimetres(1397)), ((Chain)built[Slot.Chain]!).Length);
        Assert.Equal(KnownState.None, ((Stem)built[Slot.Stem]!).SpacersAbove.State);
        Assert.Equal(Verdict.Fits, Plan.Report.Fits.Single(f => f.Joint!.Id == "seatpost-insertion").Verdict);
        Assert.Equal(Verdict.Unsafe, built.Check().Fits.Single(f => f.Joint!.Id == "seatpost-insertion").Verdict);
        Assert.Contains(record.On(built.WorkPlan()).Done("fit-seatpost").Questions, q => q.StartsWith("fit-seatpost is done, and seatpost-insertion", StringComparison.Ordinal));
    }

    [Fact]
    public void Each_rotor_gets_its_own_thickness()
    {
        Build built = WorkRecord.For(Plan).Measured("fit-front-rotor", "rotor-thickness", 1.7m).Measured("fit-rear-rotor", "rotor-thickness", 1.6m).AsBuilt();
        Assert.Equal(["1.7", "1.6"], new[] { built[Slot.FrontRotor], built[Slot.RearRotor] }.Select(r => ((Rotor)r!).Thickness.ToString()));
    }
}
