using FsCheck;
using FsCheck.Xunit;

namespace Lugwork.Tests.Builds;

/// <summary>What holds for every check that is a sum, near its boundary.</summary>
public sealed class SystemCheckLaws
{
    private static readonly Joint[] Sums = [.. JointTable.All.Where(j => j.Relation is SumRelation)];

    [Fact]
    public void There_are_sums_to_hold_the_laws_on() => Assert.True(Sums.Length >= 14 && Sums.Count(j => j.IsSystemCheck) >= 9);

    /// <summary>More of one input goes one way only: never from better to worse and back.</summary>
    [Property(MaxTest = 3_000)]
    public void More_of_an_input_never_turns_a_verdict_back(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Joint joint = Sums[random.Next(Sums.Length)];
        long[] values = Near(joint, random);
        int at = random.Next(values.Length);
        if (MoreIsNeverWorse.Marks[joint.Id][at] == '.')
        {
            return;
        }

        Verdict[] along = [.. Steps(joint.Inputs[at]).Select(v => Judge(joint, values, at, v))];
        Assert.True(along.SequenceEqual(along.Order()) || along.SequenceEqual(along.OrderDescending()), $"{joint} input {at}: {string.Join(' ', along)}");
    }

    [Fact]
    public void Every_check_and_every_sum_has_its_directions_written_down()
    {
        Joint[] checks = [.. SystemChecks.All, .. PairRows.All, .. JointTable.All.Where(j => j.Relation is SumRelation)];
        Assert.Empty(checks.Select(j => j.Id).Except(MoreIsNeverWorse.Marks.Keys));
        Assert.All(MoreIsNeverWorse.Marks, m => Assert.Equal(JointTable.All.Single(j => j.Id == m.Key).Inputs.Length, m.Value.Length));
        Assert.True(MoreIsNeverWorse.Marks.Values.Sum(m => m.Count(c => c != '.')) >= 100);
    }

    public static TheoryData<string, int> Directed => [.. MoreIsNeverWorse.Marks.SelectMany(m => m.Value.Select((mark, at) => (m.Key, at, mark))).Where(t => t.mark != '.').Select(t => (t.Key, t.at))];

    /// <summary>More clearance, capacity or length never makes a check worse, and more of what takes it up never makes one better; and each figure that has a direction does matter somewhere.</summary>
    [Theory]
    [MemberData(nameof(Directed))]
    public void More_never_makes_a_check_worse(string id, int at)
    {
        Joint joint = JointTable.All.Single(j => j.Id == id);
        bool more = MoreIsNeverWorse.Marks[id][at] == '+';
        Random random = new(7 * at + id.Length);
        bool matters = false;
        for (int turn = 0; turn < 250; turn++)
        {
            long[] values = MoreIsNeverWorse.Draw(joint, random);
            values[at] = values[at] == 0 ? random.Next(1, 700) * 1_000_000L : values[at];
            values[at] = Edge(joint, values, at);
            long[] steps = [.. MoreIsNeverWorse.Along(joint.Inputs[at], values[at])];
            Verdict[] along = [.. steps.Select(v => Judge(joint, values, at, v))];
            matters |= along[0] != along[^1];
            for (int i = 1; i < along.Length; i++)
            {
                Assert.True(more ? along[i] <= along[i - 1] : along[i] >= along[i - 1], $"{id} {string.Join(' ', values)} input {at}: {along[i - 1]} at {steps[i - 1]}, {along[i]} at {steps[i]}");
            }
        }

        Assert.True(matters, $"{id}: input {at} never changes the verdict");
    }

    /// <summary>The value of one input at which the verdict changes, where it does: everything is aimed at that boundary.</summary>
    private static long Edge(Joint joint, long[] values, int at)
    {
        long[] steps = [.. MoreIsNeverWorse.Along(joint.Inputs[at], values[at])];
        for (int i = 1; i < steps.Length; i++)
        {
            if (Judge(joint, values, at, steps[i]) != Judge(joint, values, at, steps[i - 1]))
            {
                return steps[i];
            }
        }

        return values[at];
    }

    /// <summary>What the needs sheet allows of a figure is what the check says of it.</summary>
    [Property(MaxTest = 600)]
    public void Needs_sheet_and_check_agree_at_the_boundary(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Joint joint = Sums[random.Next(Sums.Length)];
        Slot[] single = [.. joint.Slots.Where(s => s != Slot.Frame && joint.Inputs.Count(i => i.Slot == s) == 1)];
        if (single.Length == 0)
        {
            return;
        }

        Slot slot = single[random.Next(single.Length)];
        int at = joint.Inputs.IndexOf(joint.Inputs.Single(i => i.Slot == slot));
        if (joint.Inputs[at].IsReadWhenBuilt)
        {
            return;
        }

        long[] values = Near(joint, random);
        CandidateRow row = default;
        for (int i = 0; i < values.Length; i++)
        {
            row[i] = i == at ? default : Candidate(values[i]);
        }

        // The least and the greatest that fit, as the sheet finds them, against every step by the relation.
        long least = long.MaxValue;
        long most = long.MinValue;
        joint.Visit(row, (completion, outcome) =>
        {
            if (outcome.Verdict == Verdict.Fits)
            {
                (least, most) = (Math.Min(least, completion[at]), Math.Max(most, completion[at]));
            }

            return true;
        });
        foreach (long step in Steps(joint.Inputs[at]))
        {
            Assert.True((Judge(joint, values, at, step) == Verdict.Fits) == (step >= least && step <= most), $"{joint} {string.Join(' ', values)} input {at}: {step} against {least} to {most}");
        }
    }

    [Property(MaxTest = 1_000)]
    public void A_measured_figure_has_the_verdict_of_all_that_it_can_be(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Joint joint = Sums[random.Next(Sums.Length)];
        long[] values = Near(joint, random);
        CandidateRow row = default;
        int at = Array.FindIndex(values, random.Next(values.Length), _ => true);
        at = joint.Inputs[at].IsLength && values[at] != 0 ? at : 0;
        for (int i = 0; i < values.Length; i++)
        {
            row[i] = Candidate(values[i]);
        }

        long error = joint.Inputs[at].IsLength ? 2_000_000 : 0;
        long low = Math.Max(1, values[at] - error);
        row[at] = error == 0 ? row[at] : new Candidates(KnownState.Measured, low, values[at] + error, null);
        HashSet<Verdict> all = [];
        for (long value = low; error > 0 && value <= values[at] + error; value += 40_000)
        {
            all.Add(Judge(joint, values, at, value));
        }

        if (all.Count == 1)
        {
            Verdict common = joint.Common(row);
            Assert.True(common == all.Single() || common == Verdict.NeedsMeasuring || (common == Verdict.DoesNotFit && all.Single() == Verdict.Unsafe), $"{joint}: {common} against {all.Single()}");
        }
        else if (all.Count > 1)
        {
            Assert.True(joint.Common(row) == Fits.Rows.Expected(all), $"{joint}: {joint.Common(row)} against {string.Join(',', all)}");
        }
    }

    private static Candidates Candidate(long value) => new(value == 0 ? KnownState.None : KnownState.Value, value, value, null);

    private static IEnumerable<long> Steps(JointInput input) =>
        input.IsLength ? Enumerable.Range(1, 900).Select(mm => mm * 1_000_000L) : input.Domain;

    private static Verdict Judge(Joint joint, long[] values, int at, long value)
    {
        long[] moved = [.. values];
        moved[at] = value;
        return joint.Relation.Judge(moved).Verdict;
    }

    /// <summary>Figures drawn at random, and one of them moved to where the verdict changes, if it does.</summary>
    private static long[] Near(Joint joint, Random random)
    {
        long[] values = [.. joint.Inputs.Select(i => i.IsReadWhenBuilt && random.Next(2) == 0 ? 0 : i.IsLength ? random.Next(10, 600) * 1_000_000L : i.Domain[random.Next(i.Domain.Length)])];
        int at = random.Next(values.Length);
        Verdict? before = null;
        foreach (long step in Steps(joint.Inputs[at]))
        {
            Verdict verdict = Judge(joint, values, at, step);
            if (before is { } last && last != verdict)
            {
                values[at] = step;
                break;
            }

            before = verdict;
        }

        return values;
    }
}
