using Lugwork.Tests.Builds;
using Lugwork.Workshop;

namespace Lugwork.Tests.Workshop;

/// <summary>What holds for the plan of any build, whole or half, fitting or not.</summary>
public sealed partial class PlanLaws
{
    private const int Builds = 400;

    private static readonly WorkPlan[] Some = [.. Bicycle.All.Concat(FurtherBicycles.All).Append(Build.From(Frame.Read("material steel"))).Concat(Enumerable.Range(0, Builds / 2).Select(seed => Exchanged(new Random(seed)))).Concat(Enumerable.Range(0, Builds).Select(seed => Bicycles.Any(new Random(seed)))).Select(b => b.WorkPlan())];

    private static readonly WorkPlan[] Fitting = [.. Some.Where(p => !p.Report.Findings.Any(Refused))];

    [Fact]
    public void Every_prerequisite_precedes_its_step() => Each(plan =>
    {
        HashSet<string> before = [];
        foreach (WorkStep step in plan.Steps)
        {
            Assert.All(step.After, a => Assert.Contains(a.StepId, before));
            Assert.All(step.After, a => Assert.True(a.Because.Length > 8, $"{step.Id} gives no reason for {a.StepId}"));
            Assert.True(before.Add(step.Id), $"{step.Id} stands twice");
        }
    });

    [Fact]
    public void Each_joint_of_the_report_is_assembled_by_exactly_one_step() => Each(plan => Assert.Equal(
        plan.Report.Findings.Select(f => f.Joint!.Id).Order(StringComparer.Ordinal),
        plan.Steps.SelectMany(s => s.Findings).Select(f => f.Joint!.Id).Order(StringComparer.Ordinal)));

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
        Assert.All(StepTable.All.SelectMany(r => r.After), a => Assert.Contains(a.StepId, ids));
    }

    /// <summary>A walk of its own, which knows nothing of how the plan was put in order.</summary>
    [Fact]
    public void The_plan_of_any_fitting_build_has_no_circle() => Assert.All(Fitting, plan =>
    {
        Dictionary<string, WorkStep> steps = plan.Steps.ToDictionary(s => s.Id);
        HashSet<string> closed = [];
        void Walk(string id, string[] trail)
        {
            Assert.True(!trail.Contains(id), $"{plan.Build.Name}: {string.Join(" < ", trail)} < {id}");
            if (closed.Contains(id))
            {
                return;
            }

            foreach (WorkPrerequisite before in steps[id].After)
            {
                Walk(before.StepId, [.. trail, id]);
            }

            closed.Add(id);
        }

        foreach (string id in steps.Keys)
        {
            Walk(id, []);
        }
    });

    /// <summary>Of all rows of the work with all that they may wait for, whatever the bicycle: no build that nobody drew can have a circle.</summary>
    [Fact]
    public void The_rows_of_the_work_have_no_circle_even_all_together_save_where_a_row_says_which_of_two_waits()
    {
        (string, string)[] either = [("fit-rear-derailleur", "fit-rear-wheel"), ("fit-rear-wheel", "fit-rear-derailleur"), ("fit-rear-derailleur", "align-hanger")];
        Dictionary<string, string[]> after = StepTable.All.ToDictionary(r => r.Id, r => r.After.Select(a => a.StepId).Where(a => !either.Contains((r.Id, a))).ToArray());
        HashSet<string> done = [];
        while (after.FirstOrDefault(r => !done.Contains(r.Key) && r.Value.All(done.Contains)).Key is { } free)
        {
            done.Add(free);
        }

        Assert.Empty(after.Keys.Except(done));
    }

    /// <summary>A joint stands in a step that handles one of the two parts which meet in it; a row put into the wrong step shows.</summary>
    [Fact]
    public void A_step_handles_a_part_of_each_joint_that_it_assembles() => Each(plan => Assert.All(plan.Steps.SelectMany(s => s.Findings.Select(f => (Step: s, f.Joint))), j =>
        Assert.True(j.Joint!.Inputs.Any(i => j.Step.Slots.Contains(i.Slot)), $"{j.Step.Id} handles no part of {j.Joint.Id}")));

    /// <summary>Torque, tool and supply are of parts that are there: a row shown without its part was meant for another bicycle.</summary>
    [Fact]
    public void A_torque_is_shown_only_where_its_part_is_in_the_build() => Each(plan => Assert.All(plan.Steps.SelectMany(s => s.Torques.Select(t => (Step: s.Id, Row: t.Id))), shown =>
    {
        Slot[] parts = TorqueOf.Where(t => shown.Row.StartsWith(t.Row, StringComparison.Ordinal)).MaxBy(t => t.Row.Length).Parts;
        Assert.NotNull(parts);
        Assert.True(parts.Any(p => plan.Build[p] is not null), $"{shown.Step}: {shown.Row}");
    }));

    private static readonly (string Row, Slot[] Parts)[] TorqueOf =
    [
        ("stem-on", [Slot.Stem]), ("quill", [Slot.Stem]), ("top-cap", [Slot.Stem]), ("stem-faceplate", [Slot.Handlebar]), ("bar-binder", [Slot.Handlebar]), ("headset-locknut", [Slot.Fork]), ("expander", [Slot.Preload]),
        ("seat-", [Slot.Seatpost]), ("saddle-", [Slot.Saddle]), ("shock-bolts", [Slot.Shock]), ("crank-", [Slot.Crankset]), ("ring-bolts", [Slot.Chainring]), ("bracket-", [Slot.BottomBracket]), ("bracket-eccentric", [Slot.Frame]),
        ("pedal", [Slot.Pedals]), ("cassette", [Slot.Cassette]), ("rear-derailleur", [Slot.RearDerailleur]), ("front-derailleur", [Slot.FrontDerailleur]), ("hanger", [Slot.RearDerailleur]), ("universal-hanger", [Slot.RearDerailleur, Slot.RearWheel, Slot.RearThruAxle]),
        ("shifter-clamp", [Slot.RearShifter, Slot.FrontShifter]), ("rotor-", [Slot.FrontRotor, Slot.RearRotor]), ("caliper-", [Slot.FrontCaliper, Slot.RearCaliper]), ("adapter-bolts", [Slot.FrontCaliper, Slot.RearCaliper]), ("flat-mount", [Slot.FrontCaliper, Slot.RearCaliper]),
        ("rim-caliper-rear", [Slot.RearRimBrake]), ("rim-caliper-front", [Slot.FrontRimBrake]), ("brake-arm", [Slot.FrontRimBrake, Slot.RearRimBrake]), ("pad-", [Slot.FrontRimBrake, Slot.RearRimBrake]), ("brake-cable", [Slot.FrontBrakeLever, Slot.RearBrakeLever]),
        ("lever-clamp", [Slot.FrontBrakeLever, Slot.RearBrakeLever]), ("hose-nut", [Slot.FrontBrakeLever, Slot.RearBrakeLever]), ("quick-release", [Slot.FrontWheel, Slot.RearWheel]), ("axle-nut", [Slot.RearWheel, Slot.RearAxleNuts]), ("thru-axle-front", [Slot.FrontWheel, Slot.FrontThruAxle]), ("thru-axle-rear", [Slot.RearWheel, Slot.RearThruAxle]),
    ];

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
        ("rotor", [Slot.FrontRotor, Slot.RearRotor, Slot.FrontCaliper, Slot.RearCaliper]), ("caliper", [Slot.FrontCaliper, Slot.RearCaliper]), ("straddle", [Slot.FrontRimBrake, Slot.RearRimBrake]), ("tracks of the rims", [Slot.FrontRimBrake, Slot.RearRimBrake]),
        ("derailleur", [Slot.RearDerailleur, Slot.FrontDerailleur]), ("hanger", [Slot.RearDerailleur, Slot.RearWheel, Slot.RearThruAxle]), ("dropper", [Slot.Dropper]), ("saddle", [Slot.Saddle]), ("shock", [Slot.Shock]), ("cassette", [Slot.Cassette, Slot.RearDerailleur]),
        ("stem", [Slot.Stem]), ("cap bolt", [Slot.Stem]), ("top cap", [Slot.Stem]), ("preload cap", [Slot.Crankset]), ("quill", [Slot.Stem]), ("the bar", [Slot.Handlebar, Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter]), ("grips", [Slot.Grips]),
        ("star nut", [Slot.Stem, Slot.Preload]), ("expander", [Slot.Stem, Slot.Preload]), ("sealant", [Slot.FrontTyre, Slot.RearTyre]), ("chain whip", [Slot.Cassette]), ("quick release", [Slot.FrontWheel, Slot.RearWheel]), ("pedal", [Slot.Pedals, Slot.Crankset, Slot.Cassette, Slot.RearWheel, Slot.Chain]),
        ("front brake", [Slot.FrontBrakeLever, Slot.FrontWheel]), ("levers", [Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter, Slot.Controls]), ("fork", [Slot.Fork]), ("gear", [Slot.RearDerailleur, Slot.FrontDerailleur, Slot.RearWheel]),
        ("the tape", [Slot.FrontRimTape, Slot.RearRimTape, Slot.Handlebar]), ("axle", [Slot.FrontWheel, Slot.RearWheel, Slot.FrontThruAxle, Slot.RearThruAxle]), ("adapter", [Slot.ShellAdapter, Slot.FrontCaliper, Slot.RearCaliper]), ("crown", [Slot.Fork]), ("locknut", [Slot.Fork, Slot.Crankset]),
        ("belt", [Slot.Chain]), ("triangle", [Slot.Chain]), ("claw", [Slot.RearDerailleur]), ("cotter", [Slot.Crankset]), ("snap ring", [Slot.Cassette]),
    ];

    /// <summary>What is tightened has a row, or says that its maker's figure is lacking: else nothing of it can be written down, and no wrench is laid out.</summary>
    [Fact]
    public void Each_step_that_tightens_has_a_torque_and_a_wrench() => Each(plan => Assert.All(plan.Steps.Where(s => s.Stage < WorkStage.FinalChecks), step =>
    {
        string[] tightens = [.. step.Does.Where(d => Tightens().IsMatch(d) && !d.StartsWith("Find out", StringComparison.Ordinal) && !d.Contains("by hand", StringComparison.Ordinal))];
        bool known = !step.Torques.IsEmpty || step.Figures.Any(f => f.Unit == "N m");
        Assert.True(tightens.Length == 0 || known || step.Does.Any(d => d.StartsWith("Find out first", StringComparison.Ordinal) || d.StartsWith("Do not go on", StringComparison.Ordinal)), $"{step.Id}: {string.Join(" ", tightens)}");
        Assert.True((step.Torques.All(t => t.IsByHand) && step.Figures.All(f => f.Unit != "N m")) || step.Tools.Any(t => t.Id == "torque-wrench"), $"{step.Id} has no wrench");
    }));

    [System.Text.RegularExpressions.GeneratedRegex(@"\b([Tt]ighten|Bolt|Clamp|[Cc]lamp the cables?|[Ss]crew (it|the|its|a|both))\b")]
    private static partial System.Text.RegularExpressions.Regex Tightens();

    /// <summary>The last pass takes nothing apart: what lies under crank, cap or wheel is asked for at its own step alone.</summary>
    [Fact]
    public void The_last_pass_names_nothing_that_lies_under_another_part() => Each(plan =>
    {
        string[] passes = ["final-torque", "recheck"];
        Assert.All(passes, id => Assert.DoesNotContain(plan.Find(id)!.Torques, t => t.IsCovered));
        Assert.All(passes, id => Assert.DoesNotContain(plan.Find(id)!.Figures, f => FinalSteps.Covered.Contains(f.Id)));
        Assert.True(plan.Steps.SelectMany(s => s.Torques).All(t => !t.IsCovered) || plan.Find("final-torque")!.Does.Any(d => d.StartsWith("What lies under crank", StringComparison.Ordinal)));
    });

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
        string[] measured = ["check-ends"];
        Assert.All(plan.AtHome.Where(s => !measured.Contains(s.Id)), s => Assert.DoesNotContain(s.Tools, t => t.IsOfTheShop));
        Assert.All(plan.ForShop, s => Assert.NotEmpty(s.Shop!.Reason));
        Assert.Equal(plan.Steps.Select(s => s.Id).Order(StringComparer.Ordinal), plan.ForShop.Concat(plan.AtHome).Select(s => s.Id).Order(StringComparer.Ordinal));
    });

    /// <summary>Of the steps that are free, the one that stands first in the table: told step by step, without the queue that the plan uses.</summary>
    [Fact]
    public void The_order_is_that_of_the_table_as_far_as_it_can_be() => Assert.All(Enumerable.Range(0, 60), i =>
    {
        WorkPlan plan = Some[i];
        List<string> table = [.. StepTable.All.Select(r => r.Id)];
        List<WorkStep> left = [.. plan.Steps.OrderBy(s => table.IndexOf(s.Id))];
        List<string> done = [];
        while (left.Count > 0)
        {
            WorkStep next = left.First(s => s.After.All(a => done.Contains(a.StepId)));
            left.Remove(next);
            done.Add(next.Id);
        }

        Assert.Equal(done, plan.Steps.Select(s => s.Id));
        Assert.Equal(done, plan.Build.WorkPlan().Steps.Select(s => s.Id));
    });

    [Fact]
    public void The_builds_of_the_laws_hold_many_that_fit_of_every_kind()
    {
        Assert.All(Bicycle.All, b => Assert.Empty(b.Check().Findings.Where(Refused).Select(f => $"{b.Name}: {f.Joint!.Id}: {f.Sentence}")));
        Assert.InRange(Fitting.Length, Builds / 4, Some.Length);
        string[] rare = ["inspect-used-parts", "hold-rear-hub-brake", "set-chain-tension", "tighten-derailleur", "fit-hanger", "bleed-front-brake", "fit-dropper-line", "fit-shock", "tape-bar", "mount-front-rim-brake", "fit-front-tube", "fit-front-valve"];
        Assert.All(rare, id => Assert.InRange(Fitting.Count(p => p.Find(id) is not null), 3, Some.Length));
        (string Kind, Func<WorkPlan, bool> Is)[] kinds =
        [
            ("quill", p => Shows(p, "fit-stem", "quill-wedge")),
            ("coaster", p => p.Build[Slot.RearWheel] is Wheel { HubBrake.State: KnownState.Value } wheel && wheel.HubBrake.Value == Lugwork.Brakes.BrakeType.Coaster),
            ("hub gear", p => Shows(p, "fit-rear-wheel", "axle-nut") || Shows(p, "set-chain-tension", "axle-nut")),
            ("fluid", p => Shows(p, "connect-front-brake", "hose-nut")),
            ("universal hanger", p => Shows(p, "fit-hanger", "universal-hanger-bolt")),
            ("belt", p => p.Find("fit-chain")?.Does.Any(d => d.Contains("Lay the belt", StringComparison.Ordinal)) == true),
            ("tubular", p => p.Find("fit-front-tyre")?.Consumables.Any(s => s.Id == "tubular-glue") == true),
            ("pressed shell", p => p.Find("fit-bottom-bracket")?.Shop is { IsNeeded: true }),
            ("carbon steerer", p => Shows(p, "fit-stem", "stem-on-carbon-steerer")),
            ("flat mount", p => Shows(p, "mount-rear-caliper", "flat-mount-bolts")),
        ];
        Assert.All(kinds, k => Assert.True(Fitting.Count(k.Is) >= 5, $"{k.Kind}: {Fitting.Count(k.Is)}"));
        Assert.True(Fitting.Select(p => string.Join(' ', p.Steps.Select(s => s.Id))).Distinct().Count() > 80, "the fitting builds are all one plan");
    }

    private static bool Shows(WorkPlan plan, string step, string row) => plan.Find(step)?.Torques.Any(t => t.Id == row) == true;

    private static bool Refused(Fit fit) => fit.Verdict is Verdict.DoesNotFit or Verdict.Unsafe;

    private static class Spare
    {
        public static readonly Part[] All =
        [
            RearDerailleur.Read("M10 bolt"), RearDerailleur.Read("hangerless; wireless"), Shifter.Read("wireless"), Preload.Read("expander"), Stem.Read("28.6 clamp; bar 31.8; material aluminium"), Stem.Read("quill-22.2; bar 25.4; material steel"),
            Handlebar.Read("31.8; grip 22.2; material aluminium; width 740"), Handlebar.Read("31.8; grip 23.8; material carbon; width 420"), Seatpost.Read("27.2; material carbon"), Seatpost.Read("27.2; material aluminium"), Saddle.Read("7x9"),
            Crankset.Read("spindle 24-road; rings 11"), Crankset.Read("spindle square-JIS"), BottomBracket.Read("BSA; takes square-JIS"), Caliper.Read("flat; fluid mineral"), Rotor.Read("160; center-lock"), BrakeLever.Read("fluid mineral"), RimBrake.Read("type cantilever"),
            Chain.Read("belt"), Chain.Read("11-speed"), Cassette.Read("11-speed HG road"), Cassette.Read("XD"), Dropper.Read("external"), Dropper.Read("wireless"), Wheel.Read("hub R135-QR; body 3-lug; hub brake coaster"), Wheel.Read("hub R148-12; body XD; six-bolt"),
        ];
    }

    /// <summary>From a bicycle that fits: parts are exchanged for those of other bicycles as long as nothing is refused; then any part but the frame may be missing, and any may be used.</summary>
    private static Build Exchanged(Random random)
    {
        Build build = Bicycle.All[random.Next(Bicycle.All.Length)];
        for (int i = 0; i < 12; i++)
        {
            Build other = Bicycle.All[random.Next(Bicycle.All.Length)];
            Slot slot = Slot.All[random.Next(Slot.All.Length)];
            Build tried = random.Next(2) == 0 && Spare.All[random.Next(Spare.All.Length)] is var part ? build.With(part, part.Places[random.Next(part.Places.Length)]) : other[slot] is { } there && slot != Slot.Frame ? build.With(there, slot) : build;
            build = tried.Check().Findings.Any(Refused) ? build : tried;
        }

        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame && build[s] is not null))
        {
            int drawn = random.Next(16);
            build = drawn == 0 ? build.Without(slot) : drawn == 1 && slot != Slot.Rider ? build.With(build[slot]! with { Condition = Known<PartCondition>.Of(PartCondition.Used) }, slot) : build;
        }

        return build;
    }

    private static void Each(Action<WorkPlan> law) => Assert.All(Enumerable.Range(0, Some.Length), i => law(Some[i]));
}
