using Lugwork.Tests.Builds;
using Lugwork.Workshop;

namespace Lugwork.Tests.Workshop;

/// <summary>Steering, tyres, hub brakes and setting up: each sentence at a time when it can be done.</summary>
public sealed class SetUpTests
{
    private static Build Steel(string frame = "") => Build.From(Frame.Read("material steel" + frame));

    private static bool Says(WorkStep step, string words) => step.Does.Any(d => d.Contains(words, StringComparison.Ordinal));

    [Fact]
    public void Play_is_felt_without_a_brake_first_and_with_the_brake_once_it_works()
    {
        WorkPlan plan = Bench.WholeBicycle().WorkPlan();
        Assert.DoesNotContain(plan.Find("align-steering")!.Checks, c => c.Contains("brake", StringComparison.Ordinal));
        Assert.Contains(plan.Find("adjust-brakes")!.Checks, c => c.Contains("Rocked with the front brake on", StringComparison.Ordinal));
        Assert.DoesNotContain(Bench.WholeBicycle().Without(Slot.FrontBrakeLever).WorkPlan().Find("adjust-brakes")!.Checks, c => c.Contains("front brake", StringComparison.Ordinal));
    }

    [Fact]
    public void The_bar_is_taped_once_bar_and_levers_stand_for_the_rider()
    {
        WorkPlan plan = Steel("; binder collar").With(Handlebar.Read("material aluminium; grip 23.8")).With(Stem.Read("28.6 clamp")).With(BrakeLever.Read("pull short"), Slot.FrontBrakeLever).With(Seatpost.Read("27.2; material carbon")).With(Saddle.Read("7 mm round")).WorkPlan();
        WorkStep set = plan.Find("set-saddle-height")!;
        Assert.NotEmpty(plan.WhyBefore("set-saddle-height", "tape-bar"));
        Assert.True(Says(set, "Turn the bar in its clamp") && Says(set, "Turn the levers into line"));
        Assert.Equal(["seat-collar-carbon", "stem-faceplate"], set.Torques.Select(t => t.Id));
        Assert.Contains(set.Figures, f => f.Id == "drop-lever-torque");
        WorkPlan without = Steel().With(Seatpost.Read("27.2; material aluminium")).With(Saddle.Read("7 mm round")).WorkPlan();
        Assert.False(Says(without.Find("set-saddle-height")!, "bar"));
        Assert.Contains(without.Find("set-saddle-height")!.Figures, f => f.Id == "binder-torque");
    }

    [Fact]
    public void The_mark_is_at_the_top_of_the_stack_and_the_saw_below_it()
    {
        WorkPlan plan = Steel().With(Fork.Read("steerer kind threadless; steerer material aluminium; crowns single; steerer length 300")).With(Stem.Read("28.6 clamp")).WorkPlan();
        Assert.True(Says(plan.Find("dry-fit-fork")!, "top of the whole stack, the spacers above the stem included"));
        Assert.True(Says(plan.Find("cut-steerer")!, "3 mm under the mark"));
        Assert.True(Says(plan.Find("cut-steerer")!, "Take the fork out"));
        Lugwork.Steering.SteererLength stack = Lugwork.Steering.SteererLength.OfMillimetres(100, 10, 10, 10, 40, 5);
        Assert.Equal(3, (stack.Total - stack.Cut).Millimeters, 6);
        Assert.True(Says(Steel().With(Fork.Read("steerer kind threadless; crowns single")).WorkPlan().Find("dry-fit-fork")!, "Mark nothing before the stem is there"));
    }

    [Theory]
    [InlineData(true, true, true)]
    [InlineData(true, false, false)]
    [InlineData(false, true, true)]
    public void Beside_a_tubeless_valve_the_tube_is_the_spare(bool tube, bool valve, bool sealant)
    {
        Build build = Steel().With(Wheel.Read("innerWidth 19"), Slot.RearWheel).With(Tyre.Read("40-622; tubeless"), Slot.RearTyre);
        build = tube ? build.With(InnerTube.Read("622; Presta"), Slot.RearInnerTube) : build;
        build = valve ? build.With(TubelessValve.Read("Presta"), Slot.RearTubelessValve) : build;
        WorkPlan plan = build.WorkPlan();
        Assert.Equal(sealant, plan.Find("fit-rear-tyre")!.Consumables.Any(s => s.Id == "sealant"));
        Assert.Equal(!sealant, Says(plan.Find("fit-rear-tyre")!, "no tube is under a bead"));
        Assert.Equal(tube && valve, plan.Find("fit-rear-tube") is { } step && Says(step, "as the spare"));
        Assert.Equal(sealant, build.SmallParts().Any(p => p.Id == "rear-sealant"));
    }

    [Theory]
    [InlineData("innerWidth 19", false, null)]
    [InlineData("innerWidth 19", true, false)]
    [InlineData("hub brake none", false, false)]
    [InlineData("hub brake coaster", false, true)]
    public void A_hub_that_may_hold_the_only_brake_is_asked_about(string wheel, bool rim, bool? brakes)
    {
        Build build = Steel().With(Wheel.Read(wheel), Slot.RearWheel);
        WorkStep? step = (rim ? build.With(RimBrake.Read("type cantilever"), Slot.RearRimBrake) : build).WorkPlan().Find("hold-rear-hub-brake");
        Assert.Equal(brakes != false, step is not null);
        Assert.Equal(brakes is null, step is not null && Says(step, "Find out first whether the hub holds a brake"));
    }

    [Theory]
    [InlineData("unknown", true, false)]
    [InlineData("cantilever", false, true)]
    [InlineData("direct-pull", false, false)]
    public void A_rim_brake_of_unknown_kind_is_asked_for_its_stop_and_guard(string type, bool asked, bool stop)
    {
        WorkStep step = Steel().With(RimBrake.Read($"type {type}"), Slot.FrontRimBrake).With(BrakeLever.Read("pull short"), Slot.FrontBrakeLever).WorkPlan().Find("connect-front-brake")!;
        Assert.Equal(asked, Says(step, "Find out first what rim brake it is"));
        Assert.Equal(stop, step.Checks.Any(c => c.StartsWith("A guard", StringComparison.Ordinal)));
    }

    [Fact]
    public void Seats_of_carbon_are_not_greased_by_habit()
    {
        Build carbon = Build.From(Frame.Read("material carbon; shell PF41 86.5"));
        Assert.True(Says(carbon.With(BottomBracket.Read("PF41; takes 24")).WorkPlan().Find("fit-bottom-bracket")!, "on carbon as the frame maker says"));
        Assert.All(new[] { "IS42/28.6", "ZS44/28.6" }, cup => Assert.True(Says(carbon.With(Headset.Read($"upper {cup}; lower IS52/40")).WorkPlan().Find("press-headset")!, "on carbon as the frame maker says")));
    }

    [Fact]
    public void Lines_are_laid_once_no_chip_comes_through_the_frame()
    {
        WorkPlan plan = Bench.WholeBicycle().WorkPlan();
        Assert.NotEmpty(plan.WhyBefore("prepare-shell", "route-lines"));
        Assert.NotEmpty(plan.WhyBefore("prepare-head-tube", "route-lines"));
        Assert.DoesNotContain(Steel("; headset cables through").With(BrakeLever.Read("fluid mineral"), Slot.FrontBrakeLever).With(HeadsetCover.Read("through")).WorkPlan().Find("route-lines")!.Does, d => d.StartsWith("Lead", StringComparison.Ordinal));
        Assert.DoesNotContain(Steel().With(BrakeLever.Read("fluid mineral"), Slot.FrontBrakeLever).WorkPlan().Find("route-lines")!.Consumables, s => s.Id == "cable-ends");
    }

    [Fact]
    public void Each_thing_to_buy_stands_on_one_list()
    {
        WorkPlan plan = Bench.WholeBicycle().Without(Slot.RearInnerTube).With(Tyre.Read("40-622; tubeless"), Slot.RearTyre).WorkPlan();
        string[] used = [.. plan.Consumables.Select(s => s.Id)];
        string[] parts = [.. plan.SmallParts.Select(p => p.Id)];
        Assert.All(new[] { "grease", "sealant", "threadlock" }, id => Assert.Contains(id, used));
        Assert.DoesNotContain(parts, p => p is "grease" or "carbon-paste" or "threadlock" || p.EndsWith("sealant", StringComparison.Ordinal));
        Assert.Contains("rear-brake-cable", parts);
        Assert.DoesNotContain("cable-ends", used);
        WorkPlan fluid = Steel().With(BrakeLever.Read("fluid mineral"), Slot.FrontBrakeLever).With(Caliper.Read("fluid mineral"), Slot.FrontCaliper).WorkPlan();
        Assert.Equal(["front-hose-ends"], fluid.SmallParts.Select(p => p.Id).Where(p => p.Contains("hose", StringComparison.Ordinal)));
        Assert.DoesNotContain(fluid.Consumables, s => s.Id == "hose-ends" || s.Id == "cable-ends" || s.Id.StartsWith("fluid-", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_left_to_measure_is_counted()
    {
        WorkPlan plan = Bicycles.Any(new Random(3)).WorkPlan();
        int all = plan.Report.ToMeasure.Count(m => m.What.Field != "condition");
        Assert.InRange(all, 13, 1_000);
        Assert.Contains($"{all - 12} more", plan.Find("measure-interfaces")!.Figures.Single(f => f.Id == "measure-more").Words, StringComparison.Ordinal);
        Assert.DoesNotContain(Bench.WholeBicycle().WorkPlan().Find("measure-interfaces")!.Figures, f => f.Id == "measure-more");
    }
}
