using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Workshop;

/// <summary>What holds for the plan of any build, whole or half, fitting or not.</summary>
public sealed class PlanLaws
{
    private const int Builds = 400;

    private static readonly WorkPlan[] Some = [.. Bicycle.All.Append(Build.From(Frame.Read("material steel"))).Concat(Enumerable.Range(0, Builds / 4).Select(seed => Fitting(new Random(seed)))).Concat(Enumerable.Range(0, Builds).Select(seed => Bicycles.Any(new Random(seed)))).Select(b => b.WorkPlan())];

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
    public void A_joint_of_a_step_is_judged_as_a_check_of_its_own_judges_it() => Assert.All(Enumerable.Range(0, 40), i =>
    {
        Dictionary<string, Verdict> again = Some[i * 7].Build.Check().Fits.ToDictionary(f => f.Joint!.Id, f => f.Verdict);
        Assert.All(Some[i * 7].Steps.SelectMany(s => s.Joints), f => Assert.Equal(again[f.Joint!.Id], f.Verdict));
    });

    /// <summary>A step speaks only of parts that are there, or that this bicycle has to get: a plan that names others was made for another bicycle.</summary>
    [Fact]
    public void What_a_step_says_is_of_parts_that_are_there_or_to_come() => Each(plan =>
    {
        HashSet<Slot> there = [.. Slot.All.Where(s => plan.Build[s] is not null), .. plan.Report.Missing];
        foreach (WorkStep step in plan.Steps.Where(s => s.Id is not ("inspect-parts" or "inspect-used-parts")))
        {
            foreach (string line in step.Does.Concat(step.Checks).Where(l => !l.StartsWith("Find out first", StringComparison.Ordinal) && !l.StartsWith("It is known", StringComparison.Ordinal)))
            {
                Assert.All(Spoken.Where(w => line.Contains(w.Word, StringComparison.Ordinal)), w => Assert.True(w.Slots.Any(there.Contains), $"{step.Id}: {line}"));
            }
        }
    });

    private static readonly (string Word, Slot[] Slots)[] Spoken =
    [
        ("rotor", [Slot.FrontRotor, Slot.RearRotor, Slot.FrontBrake, Slot.RearBrake]), ("caliper", [Slot.FrontBrake, Slot.RearBrake]), ("straddle", [Slot.FrontRimBrake, Slot.RearRimBrake]), ("tracks of the rims", [Slot.FrontRimBrake, Slot.RearRimBrake]),
        ("derailleur", [Slot.RearDerailleur, Slot.FrontDerailleur]), ("hanger", [Slot.RearDerailleur, Slot.RearWheel, Slot.RearAxle]), ("dropper", [Slot.Dropper]), ("saddle", [Slot.Saddle]), ("shock", [Slot.Shock]), ("cassette", [Slot.Cassette, Slot.RearDerailleur]),
        ("stem", [Slot.Stem]), ("cap bolt", [Slot.Stem]), ("top cap", [Slot.Stem]), ("preload cap", [Slot.Crankset]), ("quill", [Slot.Stem]), ("the bar", [Slot.Handlebar, Slot.FrontLever, Slot.RearLever, Slot.Shifter, Slot.FrontShifter]), ("grips", [Slot.Grips]),
        ("star nut", [Slot.Stem, Slot.Preload]), ("expander", [Slot.Stem, Slot.Preload]), ("sealant", [Slot.FrontTyre, Slot.RearTyre]), ("chain whip", [Slot.Cassette]), ("quick release", [Slot.FrontWheel, Slot.RearWheel]), ("pedal", [Slot.Pedals, Slot.Crankset, Slot.Cassette, Slot.RearWheel, Slot.Chain]),
        ("front brake", [Slot.FrontLever, Slot.FrontWheel]), ("levers", [Slot.FrontLever, Slot.RearLever, Slot.Shifter, Slot.FrontShifter, Slot.Controls]), ("fork", [Slot.Fork]), ("gear", [Slot.RearDerailleur, Slot.FrontDerailleur, Slot.RearWheel]),
    ];

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
    public void What_takes_a_shops_press_cutter_or_gauge_is_left_to_the_shop_or_the_risk_says_so() => Each(plan =>
    {
        string[] measured = ["check-ends", "set-chain-tension"];
        Assert.All(plan.AtHome.Where(s => !measured.Contains(s.Id)), s => Assert.DoesNotContain(s.Tools, t => t.IsOfTheShop));
        Assert.All(plan.ForShop, s => Assert.DoesNotContain(s, plan.AtHome));
        Assert.All(plan.Steps, s => Assert.True(plan.ForShop.Contains(s) || plan.AtHome.Contains(s), s.Id));
    });

    [Fact]
    public void The_order_is_the_same_each_time() =>
        Assert.All(Enumerable.Range(0, 20), i => Assert.Equal(Some[i].Steps.Select(s => s.Id), Some[i].Build.WorkPlan().Steps.Select(s => s.Id)));

    [Fact]
    public void The_builds_of_the_laws_hold_many_that_fit_of_every_kind()
    {
        Assert.All(Bicycle.All, b => Assert.Empty(b.Check().Fits.Where(f => f.Verdict is Verdict.DoesNotFit or Verdict.Unsafe).Select(f => $"{b.Name}: {f.Joint!.Id}: {f.Sentence}")));
        WorkPlan[] fitting = [.. Some.Where(p => !p.Report.Fits.Any(f => f.Verdict is Verdict.DoesNotFit or Verdict.Unsafe))];
        Assert.InRange(fitting.Length, Builds / 4, Some.Length);
        string[] rare = ["inspect-used-parts", "hold-rear-hub-brake", "set-chain-tension", "tighten-derailleur", "fit-hanger", "bleed-front-brake", "fit-dropper-line", "fit-shock", "tape-bar", "mount-front-rim-brake", "fit-front-tube", "fit-front-valve"];
        Assert.All(rare, id => Assert.InRange(fitting.Count(p => p.Find(id) is not null), 3, Some.Length));
        Assert.Contains(fitting, p => p.Find("fit-front-tyre")?.Supplies.Any(s => s.Id == "tubular-glue") == true);
        Assert.Contains(fitting, p => p.Find("fit-stem")?.Torques.Any(t => t.Id == "quill-wedge") == true);
        Assert.Contains(fitting, p => p.Find("fit-bottom-bracket")?.Shop is { IsNeeded: true });
    }

    /// <summary>Of a bicycle that fits, any part but the frame may be missing, and any may be used.</summary>
    private static Build Fitting(Random random)
    {
        Build build = Bicycle.All[random.Next(Bicycle.All.Length)];
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame && build[s] is not null))
        {
            int drawn = random.Next(8);
            build = drawn == 0 ? build.Without(slot) : drawn == 1 && slot != Slot.Rider ? build.With(build[slot]! with { Condition = Known<PartCondition>.Of(PartCondition.Used) }, slot) : build;
        }

        return build;
    }

    private static void Each(Action<WorkPlan> law) => Assert.All(Enumerable.Range(0, Some.Length), i => law(Some[i]));
}
