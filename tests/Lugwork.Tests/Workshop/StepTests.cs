using Lugwork.Tests.Builds;

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
        Assert.Null(Steel().With(BrakeLever.Read("pull short"), Slot.FrontLever).WorkPlan().Find("bed-in-brakes"));
    }

    [Theory]
    [InlineData("coaster", true)]
    [InlineData("roller", true)]
    [InlineData("none", false)]
    public void The_arm_of_a_hub_brake_is_held_in_a_step_that_warns(string brake, bool needed)
    {
        WorkPlan plan = Steel().With(Wheel.Read($"hub brake {brake}"), Slot.RearWheel).WorkPlan();
        Assert.Equal(needed, plan.Find("hold-rear-hub-brake")?.Cautions.Any(c => c.Id == "reaction-arm") == true);
        Assert.Equal(needed, plan.Find("adjust-brakes") is not null);
    }

    [Fact]
    public void What_a_joint_that_fits_warns_of_is_told() => Assert.All(
        Whole.Steps, step => Assert.All(step.Joints.SelectMany(j => j.Cautions), c => Assert.Contains(c, step.Cautions)));

    [Fact]
    public void Without_a_derailleur_the_wheel_is_tightened_after_the_chain()
    {
        Build build = Steel().With(Wheel.Read("hub brake none"), Slot.RearWheel).With(AxleNuts.Read("M10x1"), Slot.RearNuts).With(Chain.Read("9-speed"));
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
    [InlineData("", true)]
    public void A_chain_is_counted_only_where_the_rear_stands_still(string shock, bool known)
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
        Build build = Steel("; head tube length 130").With(Fork.Read($"steerer kind threadless; steerer material aluminium; steerer length {length}")).With(Headset.Read("threadless; upper stack 12; lower stack 10")).With(Stem.Read("28.6 clamp; clamp height 40; spacers below 10; spacers above 5"));
        WorkStep step = build.WorkPlan().Find("cut-steerer")!;
        Assert.Equal(cut, step.Tools.Any(t => t.Id == "saw"));
        Assert.Equal(!cut, step.Does.Any(d => d.StartsWith("Do not cut", StringComparison.Ordinal)));
        Assert.Contains(build.WorkPlan().Find("dry-fit-fork")!.Joints, f => f.Joint!.Id == "steerer-reaches-stem");
    }

    [Fact]
    public void The_last_pass_carries_every_torque_and_each_torque_a_wrench()
    {
        string[] all = [.. Whole.Steps.Where(s => s.Id != "final-torque").SelectMany(s => s.Torques).Select(t => t.Id).Distinct().Order(StringComparer.Ordinal)];
        Assert.Equal(all, Whole.Find("final-torque")!.Torques.Select(t => t.Id).Order(StringComparer.Ordinal));
        Assert.All(Whole.Steps.Where(s => s.Torques.Any(t => !t.IsByHand)), s => Assert.Contains(s.Tools, t => t.Id == "torque-wrench"));
    }

    [Fact]
    public void Each_supply_has_its_sentence()
    {
        Dictionary<string, string> words = new() { ["grease"] = "rease", ["carbon-paste"] = "paste", ["threadlock"] = "thread lock", ["alcohol"] = "alcohol", ["chain-lube"] = "ubricate" };
        Assert.All(Whole.Steps, step => Assert.All(step.Supplies.Where(s => words.ContainsKey(s.Id)), s => Assert.True(step.Does.Any(d => d.Contains(words[s.Id], StringComparison.Ordinal)), $"{step.Id}: {s.Id}")));
    }

    [Theory]
    [InlineData("pull short", true)]
    [InlineData("fluid mineral", false)]
    public void Ends_of_cables_are_asked_of_cables(string lever, bool asked) =>
        Assert.Equal(asked, Steel().With(BrakeLever.Read(lever), Slot.FrontLever).WorkPlan().Inspection.Any(p => p.Id == "cable-ends"));

    [Fact]
    public void A_step_of_ones_own_is_read_back_without_its_plan_and_a_poor_one_is_refused()
    {
        WorkStep paint = new() { Id = "paint", Title = "Paint", Stage = WorkStage.Preparation, Does = ["Paint it."] };
        WorkRecord back = WorkRecordFile.Read(WorkRecordFile.Write(WorkRecord.For(Whole.With(paint)).Done("paint")), Whole);
        Assert.Equal(["paint"], back.Lapsed.Select(e => e.Step));
        Assert.Throws<ArgumentException>(() => Whole.With(paint with { Does = [] }));
        Assert.Throws<ArgumentException>(() => Whole.With(paint with { Checks = default }));
        Assert.Throws<ArgumentException>(() => Whole.With(paint with { Joints = [Whole.Report.Fits[0]] }));
        Assert.Throws<ArgumentException>(() => Steel().WorkPlan().With(paint with { Slots = [Slot.Fork] }));
    }

    [Fact]
    public void A_record_asks_about_other_parts_and_not_about_measured_ones()
    {
        WorkRecord record = WorkRecord.For(Whole).Done("inspect-parts").Measured("fit-seatpost", "post-insertion", 100);
        Assert.DoesNotContain(record.On(record.AsBuilt().WorkPlan()).Questions, q => q.Contains("other parts", StringComparison.Ordinal));
        WorkPlan other = Bench.WholeBicycle().With(Seatpost.Read("30.9 x 400")).WorkPlan();
        Assert.Contains(WorkRecordFile.Read(WorkRecordFile.Write(record), other).Questions, q => q.StartsWith("fit-seatpost was written down with other parts", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.0000001)]
    public void A_length_of_nothing_stays_in_the_record(double nothing)
    {
        Build built = WorkRecord.For(Whole).Measured("fit-front-rotor", "rotor-thickness", (decimal)nothing).AsBuilt();
        Assert.Equal(((Rotor)Whole.Build[Slot.FrontRotor]!).Thickness, ((Rotor)built[Slot.FrontRotor]!).Thickness);
    }
}
