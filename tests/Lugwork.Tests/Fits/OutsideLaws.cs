using FsCheck;
using FsCheck.Xunit;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Fits;

/// <summary>What holds for every joint with an input that is the frame maker's own or outside the library.</summary>
public sealed class OutsideLaws
{
    public static TheoryData<string> Joints => [.. JointTable.All.Select(j => j.Id)];

    private static readonly KnownState[] States = [KnownState.FrameSpecific, KnownState.NotCovered];

    [Theory]
    [MemberData(nameof(Joints))]
    public void It_never_fits_and_only_what_no_value_mends_stays_worse(string id)
    {
        Joint joint = JointTable.All.Single(j => j.Id == id);
        int judged = 0;
        for (int seed = 0; seed < 60; seed++)
        {
            Rows.Row drawn = Rows.Draw(joint, new Random(seed));
            int at = seed % drawn.Inputs.Length;
            if (drawn.Inputs.Where((c, i) => i != at && !c.IsSettled).Skip(1).Any())
            {
                // Three open lengths have too many completions to walk.
                continue;
            }

            Candidates[] inputs = [.. drawn.Inputs];
            inputs[at] = default;
            HashSet<Verdict> all = Rows.Completions(drawn with { Inputs = inputs });
            Verdict expected = Verdicts.Worse(all.Min(), Verdict.NeedsMeasuring);
            foreach (KnownState state in States)
            {
                inputs[at] = new(state, 0, 0, null);
                Rows.Row row = drawn with { Inputs = inputs };
                Assert.True(row.Common() == expected, $"{row}: {row.Common()} against {string.Join(',', all)}");
                judged++;
            }
        }

        Assert.True(judged > 60, $"{judged} judged");
    }

    [Property(MaxTest = 5_000)]
    public bool It_is_judged_as_an_unknown_or_needs_measuring(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Rows.Row row = Rows.Draw(random);
        Candidates[] outside = [.. row.Inputs];
        Candidates[] open = [.. row.Inputs];
        for (int turns = random.Next(1, 3); turns > 0; turns--)
        {
            int at = random.Next(outside.Length);
            outside[at] = new(States[random.Next(2)], 0, 0, null);
            open[at] = default;
        }

        return (row with { Inputs = outside }).Common() == Verdicts.Worse((row with { Inputs = open }).Common(), Verdict.NeedsMeasuring);
    }

    [Property(MaxTest = 40)]
    public void Its_maker_is_asked_and_nothing_is_measured_or_offered(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build build = Bicycles.Any(random);
        FitReport report = build.Check();
        foreach (Fit fit in report.Findings)
        {
            JointInput[] outside = [.. fit.Joint!.Inputs.Where(i => i.Read(build[i.Slot]!).IsOutside)];
            if (outside.Length == 0)
            {
                Assert.DoesNotContain(fit.ReasonId, new[] { "frame-specific", "not-covered" });
                continue;
            }

            Assert.True(fit.Verdict >= Verdict.NeedsMeasuring, fit.ToString());
            if (fit.Verdict != Verdict.NeedsMeasuring)
            {
                Assert.Empty(fit.Measurements);
                continue;
            }

            bool notCovered = outside.Any(i => i.Read(build[i.Slot]!).State == KnownState.NotCovered);
            Assert.Equal(notCovered ? "not-covered" : "frame-specific", fit.ReasonId);
            Assert.Empty(fit.Remedies);
            Assert.Equal(outside.Select(i => (i.Slot, i.Field)).Distinct(), fit.Measurements.Select(m => (m.Slot, m.Field)));
            Assert.All(fit.Measurements, m => Assert.StartsWith("Ask ", m.How, StringComparison.Ordinal));
        }

        // Nor by another joint, nor by the sheet.
        HashSet<(Slot, string)> fields = [.. JointTable.All.SelectMany(j => j.Inputs).Where(i => build[i.Slot] is { } part && i.Read(part).IsOutside).Select(i => (i.Slot, i.Field))];
        Assert.All(report.ToMeasure.Where(m => fields.Contains((m.What.Slot, m.What.Field))), m => Assert.StartsWith("Ask ", m.What.How, StringComparison.Ordinal));
        foreach (NeedLine line in build.Needs().SelectMany(n => n.Lines))
        {
            IEnumerable<JointInput> others = line.Joint.Inputs.Where(i => i.Slot != line.Input.Slot && build[i.Slot] is { } part && i.Read(part).IsOutside);
            Assert.True(!others.Any() || line.Accepted.Concat(line.WithBridge).Any() == false && line.Least is null && line.Most is null, line.ToString());
            Assert.All(others, o => Assert.DoesNotContain(o.Measure, line.ToString(), StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_bicycle_all_outside_the_library_is_asked_about_whole()
    {
        foreach ((string text, string reason) in new[] { ("not covered", "not-covered"), ("frame-specific", "frame-specific") })
        {
            Build build = Slot.All.Where(s => s != Slot.Frame).Aggregate(Build.From((Frame)Whole(Slot.Frame, text)), (b, slot) => b.With(Whole(slot, text), slot));
            FitReport report = build.Check();
            Assert.Equal(JointTable.All.Where(j => j.IsSeen(build) && !j.GivesWayIn(build)), report.Findings.Select(f => f.Joint));

            // Six rows give way to one that says more, two speak of plates alone, one of an insertion that was measured, and four of a bare crank.
            Assert.InRange(report.Findings.Length, JointTable.All.Length - 13, JointTable.All.Length);
            Assert.All(report.Findings, f => Assert.Equal((Verdict.NeedsMeasuring, reason), (f.Verdict, f.ReasonId)));
            Assert.Equal(Verdict.NeedsMeasuring, report.Verdict);
            Assert.All(report.ToMeasure, m => Assert.StartsWith("Ask ", m.What.How, StringComparison.Ordinal));
            Assert.All(Slot.All, s => Assert.Empty(FitKeys.Of(build[s]!, s)));
        }
    }

    [Fact]
    public void The_drawn_bicycles_hold_both_states()
    {
        string[] reasons = [.. Enumerable.Range(0, 200).SelectMany(seed => Bicycles.Any(new Random(seed)).Check().Findings).Select(f => f.ReasonId)];
        Assert.InRange(reasons.Count(r => r == "not-covered"), 100, reasons.Length / 4);
        Assert.InRange(reasons.Count(r => r == "frame-specific"), 100, reasons.Length / 4);
    }

    private static Part Whole(Slot slot, string text)
    {
        List<SpecProblem> problems = [];
        IPartForm form = PartForms.Of(slot);
        Part part = form.ReadProperties(form.Fields.Where(f => f.Sets.IsEmpty).Select(f => new KeyValuePair<string, string>(f.Key, text)), "", problems);
        Assert.Empty(problems);
        return part;
    }
}
