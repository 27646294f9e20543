using Lugwork.Tests.Builds;
using Lugwork.Workshop;
using UnitsNet;

namespace Lugwork.Tests.Workshop;

/// <summary>Which steps a bicycle needs, in both states: with the part or figure that asks for one, and without.</summary>
public sealed class StepTests
{
    private static readonly WorkPlan Whole = Bench.WholeBicycle().WorkPlan();

    private static Build Steel(string frame = "") => Build.From(Frame.Read("material steel" + frame));

    [Fact]
    public void Discs_are_bedded_in_after_torque_and_inspection_and_rim_brakes_are_not()
    {
        string[] ids = [.. Whole.Steps.Select(s => s.Id)];
        Assert.True(Array.IndexOf(ids, "bed-in-brakes") > Array.IndexOf(ids, "final-inspection"));
        Assert.True(Array.IndexOf(ids, "bed-in-brakes") < Array.IndexOf(ids, "first-ride"));
        Assert.NotEmpty(Whole.WhyBefore("final-torque", "bed-in-brakes"));
        Assert.DoesNotContain(Whole.Find("adjust-brakes")!.Does, d => d.Contains("Bed in", StringComparison.Ordinal));
        Assert.Null(Steel().With(BrakeLever.Read("pull short"), Slot.FrontBrakeLever).WorkPlan().Find("bed-in-brakes"));
    }

    [Theory]
    [InlineData("coaster", "rear", true)]
    [InlineData("roller", "rear", true)]
    [InlineData("none", "rear", false)]
    [InlineData("drum", "front", true)]
    [InlineData("roller | drum", "front", true)]
    [InlineData("none", "front", false)]
    public void The_arm_of_a_hub_brake_is_held_in_a_step_that_warns(string brake, string end, bool needed)
    {
        WorkPlan plan = Steel().With(Fork.Read("steerer kind threadless")).With(Wheel.Read($"hub brake {brake}"), end == "front" ? Slot.FrontWheel : Slot.RearWheel).WorkPlan();
        Assert.Equal(needed, end == "front" && plan.Find("hold-front-hub-brake")?.After.Any(a => a.StepId == "fit-fork") == true || plan.Find("hold-rear-hub-brake") is not null);
        Assert.Equal(needed, plan.Inspection.Any(p => p.Id == "hub-brake-arm"));
        Assert.Equal(needed, plan.Find($"hold-{end}-hub-brake")?.Cautions.Any(c => c.Id == "reaction-arm") == true);
        Assert.Equal(needed, plan.Find("adjust-brakes") is not null);
    }

    [Fact]
    public void What_a_joint_that_fits_warns_of_is_told() => Assert.All(
        Whole.Steps, step => Assert.All(step.Findings.SelectMany(j => j.Cautions), c => Assert.Contains(c, step.Cautions)));

    [Fact]
    public void Without_a_derailleur_the_wheel_is_tightened_after_the_chain()
    {
        Build build = Steel().With(Wheel.Read("hub brake none; body gear-hub"), Slot.RearWheel).With(AxleNuts.Read("M10x1"), Slot.RearAxleNuts).With(Chain.Read("9-speed"));
        WorkPlan single = build.WorkPlan();
        Assert.Equal(["axle-nut"], single.Find("set-chain-tension")!.Torques.Select(t => t.Id));
        Assert.Empty(single.Find("fit-rear-wheel")!.Torques);
        Assert.DoesNotContain(single.Find("fit-chain")!.Does, d => d.Contains("derailleur", StringComparison.Ordinal) || d.Contains("largest", StringComparison.Ordinal));
        WorkPlan geared = build.With(RearDerailleur.Read("M10 bolt")).WorkPlan();
        Assert.Null(geared.Find("set-chain-tension"));
        Assert.Equal(["axle-nut"], geared.Find("fit-rear-wheel")!.Torques.Select(t => t.Id));
    }

    [Theory]
    [InlineData("; shock 210x55", false)]
    [InlineData("", false)]
    [InlineData("; kind city", false)]
    [InlineData("; kind full-suspension", false)]
    [InlineData("; kind touring", true)]
    [InlineData("; shock none", true)]
    [InlineData("; kind full-suspension; shock none", true)]
    public void A_chain_is_counted_only_where_the_rear_is_known_to_stand_still(string shock, bool known)
    {
        Build build = Steel("; chainstay 430" + shock).With(Crankset.Read("largest ring 46; smallest ring 34")).With(Cassette.Read("9-speed HG; smallest sprocket 11; largest sprocket 28")).With(RearDerailleur.Read("M10 bolt")).With(Chain.Read("9-speed"));
        Assert.Equal(known, build.WorkPlan().Find("fit-chain")!.Figures.Single(f => f.Id == "chain-pitches").IsKnown);
        Assert.Equal(!known, build.WorkPlan().Find("check-pivots") is not null);
    }

    [Theory]
    [InlineData("hangerless", false)]
    [InlineData("M10 bolt", true)]
    public void A_derailleur_round_the_axle_needs_no_hanger(string mount, bool hangs)
    {
        WorkPlan plan = Steel().With(RearDerailleur.Read(mount)).WorkPlan();
        Assert.Equal(hangs, plan.Find("align-hanger") is not null);
        Assert.Equal(hangs, plan.Find("fit-hanger") is not null);
        Assert.Equal(!hangs, plan.Find("tighten-derailleur") is not null);
        Assert.Equal(hangs, plan.Find("fit-rear-derailleur")!.Torques.Any());
    }

    [Theory]
    [InlineData("3-lug", false)]
    [InlineData("9-speed HG", true)]
    public void Three_lugs_get_a_snap_ring_and_no_lockring(string sprockets, bool torque)
    {
        WorkStep step = Steel().With(Cassette.Read(sprockets)).WorkPlan().Find("fit-cassette")!;
        Assert.Equal(torque, step.Torques.Any());
        Assert.Equal(!torque, step.Does.Any(d => d.Contains("snap ring", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_line_of_a_dropper_waits_for_the_bar_and_the_stem_is_lined_up_with_the_wheel()
    {
        Assert.NotEmpty(Whole.WhyBefore("fit-handlebar", "fit-dropper-line"));
        Assert.NotEmpty(Whole.WhyBefore("fit-front-wheel", "align-steering"));
        Assert.Null(Bench.WholeBicycle().Without(Slot.FrontWheel).WorkPlan().Find("align-steering"));
    }

    [Theory]
    [InlineData(200, false)]
    [InlineData(300, true)]
    public void A_steerer_is_cut_only_where_something_comes_off(int length, bool cut)
    {
        Build build = Steel("; head tube length 130").With(Fork.Read($"steerer kind threadless; steerer material aluminium; crowns single; steerer length {length}")).With(Headset.Read("threadless; upper stack 12; lower stack 10")).With(Stem.Read("28.6 clamp; clamp height 40; spacers below 10; spacers above 5"));
        WorkStep step = build.WorkPlan().Find("cut-steerer")!;
        Assert.Equal(cut, step.Tools.Any(t => t.Id == "saw"));
        Assert.Equal(!cut, step.Does.Any(d => d.StartsWith("Do not cut", StringComparison.Ordinal)));
        Assert.Contains(build.WorkPlan().Find("dry-fit-fork")!.Findings, f => f.Joint!.Id == "steerer-reaches-stem");
    }

    [Fact]
    public void The_last_pass_carries_every_torque_and_each_torque_a_wrench()
    {
        string[] byHand = ["top-cap", "crank-preload-cap", "quick-release"];
        string[] covered = ["bracket-square-taper", "bracket-8-spline", "bracket-outboard", "bracket-outboard-stepped", "bracket-cups", "cassette-lockring", "rotor-lockring", "universal-hanger-bolt", "expander-plug", "ring-bolts-aluminium", "ring-bolts-steel"];
        string[] coveredToo = ["bracket-torque", "shell-adapter-torque", "cassette-torque", "sprocket-torque", "ring-torque", "expander-torque"];
        Assert.Contains(Whole.Steps.SelectMany(s => s.Torques), t => t.Id == "top-cap");
        WorkPlan skewered = Bench.WholeBicycle().Without(Slot.FrontThruAxle).Without(Slot.FrontAxleNuts).With(Wheel.Read("hub F100-QR9"), Slot.FrontWheel).WorkPlan();
        foreach (WorkPlan plan in new[] { Whole, skewered, Steel("; kind full-suspension").With(Seatpost.Read("27.2")).With(Grips.Read("22.2")).WorkPlan() })
        {
            WorkStep[] before = [.. plan.Steps.Where(s => s.Stage < WorkStage.FinalChecks)];
            string[] rows = [.. before.SelectMany(s => s.Torques).Select(t => t.Id).Distinct().Except(byHand).Except(covered).Order(StringComparer.Ordinal)];
            string[] makers = [.. before.SelectMany(s => s.Figures).Where(f => f.Unit == "N m").Select(f => f.Id).Distinct().Except(coveredToo).Order(StringComparer.Ordinal)];
            foreach (string pass in new[] { "final-torque", "recheck" })
            {
                Assert.Equal(rows, plan.Find(pass)!.Torques.Select(t => t.Id).Order(StringComparer.Ordinal));
                Assert.Equal(makers, plan.Find(pass)!.Figures.Where(f => f.Unit == "N m").Select(f => f.Id).Order(StringComparer.Ordinal));
            }
        }

        Assert.Contains(Whole.Find("final-torque")!.Does, d => d.StartsWith("Leave the top cap", StringComparison.Ordinal));
        Assert.Contains(skewered.Find("final-torque")!.Does, d => d.Contains("once more by hand", StringComparison.Ordinal));
        Assert.DoesNotContain(Whole.Find("final-torque")!.Does, d => d.Contains("once more by hand", StringComparison.Ordinal));
        Assert.Equal(["binder-torque", "grip-torque", "pivot-torque"], Steel("; kind full-suspension").With(Seatpost.Read("27.2")).With(Grips.Read("22.2")).WorkPlan().Find("final-torque")!.Figures.Where(f => f.Unit == "N m").Select(f => f.Id).Order(StringComparer.Ordinal));
        Assert.All(Whole.Steps.Where(s => s.Torques.Any(t => !t.IsByHand)), s => Assert.Contains(s.Tools, t => t.Id == "torque-wrench"));
    }

    [Fact]
    public void Each_supply_has_its_sentence()
    {
        Dictionary<string, string> words = new() { ["grease"] = "rease", ["carbon-paste"] = "paste", ["threadlock"] = "thread lock", ["alcohol"] = "alcohol", ["chain-lube"] = "ubricate" };
        Assert.All(Whole.Steps, step => Assert.All(step.Consumables.Where(s => words.ContainsKey(s.Id)), s => Assert.True(step.Does.Any(d => d.Contains(words[s.Id], StringComparison.Ordinal)), $"{step.Id}: {s.Id}")));
    }

    [Theory]
    [InlineData("pull short", true)]
    [InlineData("fluid mineral", false)]
    public void Ends_of_cables_are_asked_of_cables(string lever, bool asked) =>
        Assert.Equal(asked, Steel().With(BrakeLever.Read(lever), Slot.FrontBrakeLever).WorkPlan().Inspection.Any(p => p.Id == "cable-ends"));

    [Fact]
    public void A_step_of_ones_own_is_read_back_without_its_plan_and_a_poor_one_is_refused()
    {
        WorkStep paint = new() { Id = "paint", Title = "Paint", Stage = WorkStage.Preparation, Skill = WorkSkill.Practised, Time = WorkTime.HalfHour, Does = ["Paint it."] };
        WorkRecord back = WorkRecordFile.Read(WorkRecordFile.Write(WorkRecord.For(Whole.With(paint)).WithDone("paint")), Whole);
        Assert.Equal(["paint"], back.Lapsed.Select(e => e.StepId));
        Assert.Throws<ArgumentException>(() => Whole.With(paint with { Does = [] }));
        Assert.Throws<ArgumentException>(() => Whole.With(paint with { Checks = default }));
        Assert.Throws<ArgumentException>(() => Whole.With(paint with { Findings = [Whole.Report.Findings[0]] }));
        Assert.Throws<ArgumentException>(() => Steel().WorkPlan().With(paint with { Slots = [Slot.Fork] }));
    }

    [Fact]
    public void A_record_asks_about_other_parts_and_not_about_measured_ones()
    {
        WorkRecord record = WorkRecord.For(Whole).WithDone("inspect-parts").WithMeasured("fit-seatpost", "post-insertion", Length.FromMillimeters(100));
        Assert.DoesNotContain(record.WithPlan(record.AsBuilt().WorkPlan()).Questions, q => q.Contains("other parts", StringComparison.Ordinal));
        WorkPlan other = Bench.WholeBicycle().With(Seatpost.Read("30.9 x 400")).WorkPlan();
        Assert.Contains(WorkRecordFile.Read(WorkRecordFile.Write(record), other).Questions, q => q.StartsWith("fit-seatpost was written down with other parts", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.0000001)]
    public void A_length_of_nothing_stays_in_the_record(double nothing)
    {
        Build built = WorkRecord.For(Whole).WithMeasured("fit-front-rotor", "rotor-thickness", Length.FromMillimeters(nothing)).AsBuilt();
        Assert.Equal(((Rotor)Whole.Build[Slot.FrontRotor]!).Thickness, ((Rotor)built[Slot.FrontRotor]!).Thickness);
    }

    [Theory]
    [InlineData("body gear-hub", "rear", "axle-nut")]
    [InlineData("body HG-8", "rear", null)]
    [InlineData("innerWidth 19", "front", null)]
    public void A_row_for_geared_hubs_is_shown_for_those_alone(string wheel, string end, string? torque)
    {
        bool front = end == "front";
        WorkStep step = Steel("; kind touring").With(Wheel.Read(wheel), front ? Slot.FrontWheel : Slot.RearWheel).With(AxleNuts.Read("M10x1"), front ? Slot.FrontAxleNuts : Slot.RearAxleNuts).WorkPlan().Find($"fit-{end}-wheel")!;
        Assert.Equal(torque, step.Torques.SingleOrDefault()?.Id);
        Assert.Equal(torque is null, step.Figures.Any(f => f.Id == "axle-torque"));
        Assert.Contains(step.Tools, t => t.Id == "axle-spanner");
        Assert.Contains(step.Does, d => d.Contains("washers", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("body gear-hub", null, true, true)]
    [InlineData("body HG-8", null, false, false)]
    [InlineData("body HG-8", "M10 bolt", true, false)]
    public void Gears_are_set_by_hub_or_derailleur(string wheel, string? derailleur, bool needed, bool byMarks)
    {
        Build build = Steel().With(Wheel.Read(wheel), Slot.RearWheel).With(Shifter.Read("cable"), Slot.RearShifter);
        WorkStep? step = (derailleur is null ? build : build.With(RearDerailleur.Read(derailleur))).WorkPlan().Find("adjust-gears");
        Assert.Equal(needed, step is not null);
        Assert.Equal(byMarks, step?.Does.Any(d => d.Contains("hub gear", StringComparison.Ordinal)) == true);
        Assert.Equal(derailleur is not null, step?.Does.Any(d => d.Contains("outer limits", StringComparison.Ordinal)) == true);
    }

    [Fact]
    public void Each_used_part_is_inspected_before_it_is_fitted()
    {
        WorkPlan plan = Steel().With(Fork.Read("steerer kind threadless; condition used")).With(Stem.Read("28.6 clamp")).With(Chain.Read("9-speed; condition used")).WorkPlan();
        WorkStep step = plan.Find("inspect-used-parts")!;
        Assert.Equal(plan.Build.ToInspect().Select(p => p.What), step.Figures.Where(f => f.Id.StartsWith("inspect-", StringComparison.Ordinal)).Select(f => f.Words));
        Assert.Equal(plan.UsedParts.Select(p => p.ToString()), plan.Build.ToInspect().Select(p => p.ToString()));
        Assert.Contains(step.Figures, f => f is { Id: "chain-over-24", IsKnown: false, Unit: "mm" });
        Assert.All(new[] { "set-crown-race", "dry-fit-fork", "cut-steerer", "fit-stem", "fit-chain" }.Where(id => plan.Find(id) is not null), id => Assert.NotEmpty(plan.WhyBefore("inspect-used-parts", id)));
        Slot[] used = [Slot.Fork, Slot.Chain];
        Assert.All(plan.Steps.Where(s => s.Slots.Intersect(used).Any() && s.Id is not ("inspect-parts" or "inspect-used-parts")), s => Assert.NotEmpty(plan.WhyBefore("inspect-used-parts", s.Id)));
        Assert.NotNull(step.Shop);
        Assert.Null(Whole.Find("inspect-used-parts"));
    }

    [Theory]
    [InlineData("steel", true, false)]
    [InlineData("aluminium", false, false)]
    [InlineData("unknown", false, true)]
    public void Only_ends_of_steel_are_set(string material, bool set, bool asked)
    {
        WorkStep step = Build.From(Frame.Read($"material {material}")).With(Wheel.Read("innerWidth 19"), Slot.RearWheel).WorkPlan().Find("check-ends")!;
        Assert.Equal(set, step.Does.Any(d => d.Contains("set by a shop", StringComparison.Ordinal)));
        Assert.Equal(asked, step.Does.Any(d => d.StartsWith("Find out first", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("internal", "cassette tool")]
    [InlineData("external", "16 notches")]
    [InlineData("unknown", "inside or outside")]
    public void The_tool_for_a_rotor_ring_goes_by_its_notches(string ring, string tool)
    {
        WorkTool found = Steel().With(Rotor.Read($"160; center-lock; lockring {ring}"), Slot.RearRotor).WorkPlan().Find("fit-rear-rotor")!.Tools.Single(t => t.Id == "rotor-lockring-tool");
        Assert.Contains(tool, found.Name, StringComparison.Ordinal);
        Assert.Equal(ring != "unknown", found.Source is not null);
    }

    [Theory]
    [InlineData("BSA; takes 24", "16 notches")]
    [InlineData("BSA; takes square-JIS", "20 splines")]
    [InlineData("T47; takes 24", "do not interchange")]
    [InlineData("BSA; takes 30", "of the maker")]
    [InlineData("PF41; takes 24", "bearing press")]
    public void The_tool_for_the_cups_goes_by_shell_and_spindle(string bracket, string tool) =>
        Assert.Contains(tool, Steel().With(BottomBracket.Read(bracket)).WorkPlan().Find("fit-bottom-bracket")!.Tools.Single(t => t.Id is "cup-tool" or "bearing-press").Name, StringComparison.Ordinal);

    [Theory]
    [InlineData("cantilever", "brake-arm-bolt", true)]
    [InlineData("direct-pull", "brake-arm-bolt pad-linear-pull", false)]
    [InlineData("rim-caliper", "rim-caliper-front pad-rim-caliper", false)]
    [InlineData("u-brake", "", true)]
    [InlineData("unknown", "", true)]
    public void A_row_of_one_kind_of_rim_brake_is_shown_for_no_other(string type, string torques, bool lacks)
    {
        WorkPlan plan = Steel().With(RimBrake.Read($"type {type}; pads for-aluminium"), Slot.FrontRimBrake).With(BrakeLever.Read("pull short"), Slot.FrontBrakeLever).WorkPlan();
        WorkStep step = plan.Find("mount-front-rim-brake")!;
        Assert.Equal(torques, string.Join(' ', step.Torques.Select(t => t.Id)));
        Assert.Equal(lacks, step.Figures.Any(f => f.Id == "rim-brake-torque"));
        Assert.Equal(type is "cantilever" or "u-brake", plan.Find("connect-front-brake")!.Does.Any(d => d.Contains("straddle", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("material aluminium", "material steel", false)]
    [InlineData("material carbon", "material steel", true)]
    [InlineData("material aluminium", "bar 31.8", true)]
    public void Paste_goes_where_bar_or_stem_is_or_may_be_carbon(string bar, string stem, bool paste)
    {
        WorkPlan plan = Steel().With(Handlebar.Read(bar)).With(Stem.Read(stem)).WorkPlan();
        Assert.Equal(paste, plan.Find("fit-handlebar")!.Consumables.Any(s => s.Id == "carbon-paste"));
        Assert.Equal(paste, plan.Find("fit-handlebar")!.Does.Any(d => d.Contains("paste", StringComparison.Ordinal)));
        Assert.Equal(paste, plan.Inspection.Any(p => p.Id == "carbon"));
    }

    [Theory]
    [InlineData(37, true)]
    [InlineData(45, false)]
    public void A_chain_that_no_even_number_suits_is_said(int capacity, bool said)
    {
        Build build = Steel("; kind road; chainstay 410").With(Crankset.Read("largest ring 50; smallest ring 34")).With(Cassette.Read("11-speed HG road; smallest sprocket 11; largest sprocket 30")).With(RearDerailleur.Read($"M10 bolt; capacity {capacity}")).With(Chain.Read("11-speed"));
        WorkStep step = build.WorkPlan().Find("fit-chain")!;
        Assert.Equal(said, step.Figures.Single(f => f.Id == "chain-pitches").Value > step.Figures.Single(f => f.Id == "chain-most").Value);
        Assert.Equal(said, step.Figures.Any(f => f.Id == "chain-between"));
    }
}
