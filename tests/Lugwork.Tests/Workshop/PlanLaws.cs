using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Workshop;

/// <summary>What holds for the plan of any build, whole or half, fitting or not.</summary>
public sealed class PlanLaws
{
    private const int Builds = 400;

    private static readonly WorkPlan[] Some = [.. new[] { Bench.WholeBicycle(), Build.From(Frame.Read("material steel")) }.Concat(Enumerable.Range(0, Builds / 4).Select(seed => Fitting(new Random(seed)))).Concat(Enumerable.Range(0, Builds).Select(seed => Bicycles.Any(new Random(seed)))).Select(b => b.WorkPlan())];

    [Fact]
    public void Every_prerequisite_precedes_its_step() => Each(plan =>
    {
        HashSet<string> before = [];
        foreach (WorkStep step in plan.Steps)
        {
            Assert.All(step.After, a => Assert.Contains(a.Step, before));
            Assert.All(step.After, a => Assert.True(a.Because.Length > 8, $"{step.Id} gives no reason for {a.Step}"));
            Assert.True(before.Add(step.Id), $"{step.Id} stands twice");
        }
    });

    [Fact]
    public void Each_joint_of_the_report_is_assembled_by_exactly_one_step() => Each(plan => Assert.Equal(
        plan.Report.Fits.Select(f => f.Joint!.Id).Order(StringComparer.Ordinal),
        plan.Steps.SelectMany(s => s.Joints).Select(f => f.Joint!.Id).Order(StringComparer.Ordinal)));

    [Fact]
    public void Each_joint_of_the_library_has_one_row_of_the_work() => Assert.Equal(
        JointTable.All.Select(j => j.Id).Order(StringComparer.Ordinal),
        StepTable.All.SelectMany(r => r.Joints).Order(StringComparer.Ordinal));

    [Fact]
    public void No_step_uses_an_empty_slot_and_every_filled_one_is_fitted() => Each(plan =>
    {
        Assert.All(plan.Steps.SelectMany(s => s.Slots), s => Assert.NotNull(plan.Build[s]));
        string[] general = ["inspect-parts", "measure-interfaces", "final-torque", "final-inspection", "first-ride", "recheck"];
        HashSet<Slot> fitted = [.. plan.Steps.Where(s => !general.Contains(s.Id)).SelectMany(s => s.Slots)];
        Assert.All(Slot.All.Where(s => plan.Build[s] is not null && s != Slot.Rider && s != Slot.Frame), s => Assert.Contains(s, fitted));
    });

    [Fact]
    public void Every_prerequisite_of_a_row_is_a_row_and_no_id_stands_twice()
    {
        string[] ids = [.. StepTable.All.Select(r => r.Id)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.All(StepTable.All.SelectMany(r => r.After), a => Assert.Contains(a.Step, ids));
    }

    [Fact]
    public void A_joint_of_a_step_is_judged_as_in_the_report() => Each(plan => Assert.All(
        plan.Steps.SelectMany(s => s.Joints),
        fit => Assert.Equal(plan.Report.Fits.Single(f => f.Joint == fit.Joint).Verdict, fit.Verdict)));

    [Fact]
    public void Every_step_says_what_is_done_in_short_sentences() => Each(plan => Assert.All(plan.Steps, step =>
    {
        Assert.NotEmpty(step.Does);
        Assert.All(step.Does.Concat(step.Checks), line => Assert.True(line.EndsWith('.') && char.IsUpper(line[0]) && line.Length < 170, $"{step.Id}: {line}"));
        Assert.Equal(step.Figures.Length, step.Figures.Select(f => f.Id).Distinct().Count());
    }));

    [Fact]
    public void Work_on_brakes_steering_and_axles_warns_and_a_press_is_the_shops() => Each(plan => Assert.All(plan.Steps, step =>
    {
        Assert.True(step.Stage != WorkStage.Brakes || step.Cautions.Any(c => c.Id == "brake-work"), step.Id);
        Assert.True(step.Id is not ("fit-stem" or "fit-fork" or "fit-handlebar") || step.Cautions.Any(c => c.Id == "steering"), step.Id);
        Assert.True(step.Id is not ("fit-front-wheel" or "fit-rear-wheel") || step.Cautions.Any(c => c.Id == "axle"), step.Id);
        Assert.True(!step.Tools.Any(t => t.Id is "headset-press" or "bearing-press" or "facing-set") || step.Shop is { IsNeeded: true }, step.Id);
    }));

    [Fact]
    public void The_shops_steps_and_those_for_home_are_the_plan() => Each(plan =>
    {
        Assert.Equal(plan.Steps.Select(s => s.Id).Order(StringComparer.Ordinal), plan.ForShop.Concat(plan.AtHome).Select(s => s.Id).Order(StringComparer.Ordinal));
        Assert.Equal(plan.Tools.Length, plan.Tools.Distinct().Count());
        Assert.Equal(plan.Supplies.Length, plan.Supplies.Distinct().Count());
    });

    [Fact]
    public void The_order_is_the_same_each_time() =>
        Assert.All(Enumerable.Range(0, 20), i => Assert.Equal(Some[i].Steps.Select(s => s.Id), Some[i].Build.WorkPlan().Steps.Select(s => s.Id)));

    [Fact]
    public void The_builds_of_the_laws_hold_many_that_fit() => Assert.InRange(Some.Count(p => !p.Report.Fits.Any(f => f.Verdict is Verdict.DoesNotFit or Verdict.Unsafe)), Builds / 4, Some.Length);

    [Fact]
    public void No_step_waits_for_itself_by_any_way() => Each(plan =>
    {
        Dictionary<string, HashSet<string>> before = [];
        foreach (WorkStep step in plan.Steps)
        {
            HashSet<string> all = [.. step.After.Select(a => a.Step)];
            all.UnionWith(step.After.SelectMany(a => before[a.Step]));
            Assert.DoesNotContain(step.Id, all);
            before[step.Id] = all;
        }
    });

    /// <summary>Of a bicycle that fits, any part but the frame may be missing, and any may be used.</summary>
    private static Build Fitting(Random random)
    {
        Build build = Bench.WholeBicycle();
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame && build[s] is not null))
        {
            int drawn = random.Next(6);
            build = drawn == 0 ? build.Without(slot) : drawn == 1 && slot != Slot.Rider ? build.With(build[slot]! with { Condition = Known<PartCondition>.Of(PartCondition.Inspected) }, slot) : build;
        }

        return build;
    }

    private static void Each(Action<WorkPlan> law) => Assert.All(Enumerable.Range(0, Some.Length), i => law(Some[i]));
}
