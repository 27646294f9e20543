using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Workshop;

/// <summary>What is clamped, bolted or pressed by the one kind that is known: no row of a neighbour, and a question where it is not known.</summary>
public sealed class ClampTests
{
    private static Build Steel(string frame = "") => Build.From(Frame.Read("material steel" + frame));

    private static bool Says(WorkStep step, string words) => step.Does.Any(d => d.Contains(words, StringComparison.Ordinal));

    private static bool Asks(WorkStep step) => step.Does.Any(d => d.StartsWith("Find out first", StringComparison.Ordinal));

    private static string Rows(WorkStep step) => string.Join(' ', step.Torques.Select(t => t.Id));

    [Theory]
    [InlineData("six-bolt", "rotor-bolts", "t25", "threadlock", false)]
    [InlineData("center-lock", "rotor-lockring", "rotor-lockring-tool", "grease", false)]
    [InlineData("four-bolt", "", "rotor-key", "threadlock", false)]
    [InlineData("unknown", "", null, null, true)]
    [InlineData("six-bolt | center-lock", "", null, null, true)]
    public void A_rotor_is_fixed_only_as_it_is_known_to_be(string fixing, string rows, string? tool, string? supply, bool asked)
    {
        WorkStep step = Steel().With(Rotor.Read($"160; fixing {fixing}"), Slot.FrontRotor).WorkPlan().Find("fit-front-rotor")!;
        Assert.Equal(rows, Rows(step));
        Assert.Equal(rows.Length == 0, step.Figures.Any(f => f.Id == "rotor-torque"));
        Assert.Equal(tool, step.Tools.FirstOrDefault(t => t.Id != "torque-wrench")?.Id);
        Assert.Equal(supply, step.Consumables.FirstOrDefault(s => s.Id != "alcohol")?.Id);
        Assert.Equal(asked, Asks(step));
    }

    [Theory]
    [InlineData("mounting post; adapter none", "caliper-bolts caliper-body-bolts", false)]
    [InlineData("mounting post", "caliper-bolts caliper-body-bolts adapter-bolts-m5", false)]
    [InlineData("mounting flat; adapter none", "flat-mount-bolts", false)]
    [InlineData("mounting flat", "flat-mount-bolts", false)]
    [InlineData("mounting unknown", "", true)]
    [InlineData("mounting post | flat", "", true)]
    public void A_caliper_has_a_torque_only_where_its_foot_is_known(string caliper, string rows, bool asked)
    {
        WorkStep step = Steel().With(Caliper.Read(caliper), Slot.RearCaliper).WorkPlan().Find("mount-rear-caliper")!;
        Assert.Equal(rows, Rows(step));
        Assert.Equal(asked, Asks(step));
        Assert.Equal(asked, step.Figures.Any(f => f.Id == "caliper-torque"));
        Assert.Equal(rows != "caliper-bolts caliper-body-bolts" && rows != "caliper-bolts caliper-body-bolts adapter-bolts-m5", step.Cautions.Any(c => c.Id == "flat-mount-bolts"));
    }

    [Theory]
    [InlineData("material aluminium", "lever-clamp shifter-clamp", null, false, false)]
    [InlineData("material carbon", "", "control-torque", false, true)]
    [InlineData("material unknown", "", "control-torque", true, false)]
    public void What_is_clamped_on_carbon_goes_by_the_lower_of_two_makers(string bar, string rows, string? lacks, bool asked, bool shop)
    {
        WorkPlan plan = Steel().With(Handlebar.Read($"{bar}; grip 22.2")).With(BrakeLever.Read("pull short"), Slot.FrontBrakeLever).With(Shifter.Read("cable"), Slot.RearShifter).With(Grips.Read("22.2")).WorkPlan();
        WorkStep step = plan.Find("fit-controls")!;
        Assert.Equal(rows, Rows(step));
        Assert.Equal(lacks, step.Figures.SingleOrDefault()?.Id);
        Assert.Equal(asked, Asks(step));
        Assert.Equal(asked, Asks(plan.Find("fit-grips")!));
        Assert.Equal(shop, step.Shop is not null);
        Assert.All(new[] { "fit-controls", "fit-grips" }, id => Assert.Equal(lacks is not null, plan.Find(id)!.Cautions.Any(c => c.Id == "carbon-bar")));
        Assert.Equal(shop, step.Consumables.Any(s => s.Id == "carbon-paste"));
    }

    [Theory]
    [InlineData("material aluminium", "7 mm round", true)]
    [InlineData("material carbon", "7 mm round", false)]
    [InlineData("material carbon", "rails unknown", false)]
    [InlineData("material aluminium", "7x9", false)]
    [InlineData("material unknown", "7 mm round", null)]
    [InlineData("material aluminium", "rails unknown", null)]
    public void The_guide_of_metal_posts_and_round_rails_holds_for_those_alone(string post, string saddle, bool? holds)
    {
        WorkStep step = Steel().With(Seatpost.Read($"27.2; {post}")).With(Saddle.Read(saddle)).WorkPlan().Find("fit-saddle")!;
        Assert.Equal(holds == true ? "saddle-clamp-two-bolts saddle-clamp-one-bolt saddle-clamp-nuts" : "", Rows(step));
        Assert.Equal(holds == true, Says(step, "See which bolts hold the rails"));
        Assert.Equal(holds != true, step.Figures.Any(f => f.Id == "saddle-torque"));
        Assert.Equal(holds is null, Asks(step));
    }

    [Theory]
    [InlineData("spindle 25", "", true)]
    [InlineData("spindle 30/28", "", true)]
    [InlineData("spindle 30-long", "crank-30", false)]
    [InlineData("spindle BMX-22", "crank-bolt", false)]
    [InlineData("spindle cottered", "", false)]
    public void A_crank_for_whose_spindle_no_page_was_read_has_its_makers_torque(string crank, string rows, bool lacks)
    {
        WorkStep step = Steel().With(Crankset.Read(crank)).WorkPlan().Find("fit-crankset")!;
        Assert.Equal(rows, Rows(step));
        Assert.Equal(lacks, step.Figures.Any(f => f.Id == "crank-torque"));
        Assert.Equal(crank == "spindle 25", Says(step, "Push one half in from each side"));
        Assert.Equal(crank == "spindle 30-long" || crank == "spindle 30/28", Says(step, "Push the crank through"));
    }

    [Theory]
    [InlineData("BSA; takes square-JIS", "bracket-square-taper", true)]
    [InlineData("BSA; takes 24", "bracket-outboard", false)]
    [InlineData("BSA; takes unknown", "", true)]
    public void A_unit_that_may_have_loose_cups_is_looked_at(string bracket, string rows, bool loose)
    {
        WorkStep step = Steel().With(BottomBracket.Read(bracket)).WorkPlan().Find("fit-bottom-bracket")!;
        Assert.Equal(rows, Rows(step));
        Assert.Equal(rows.Length == 0, step.Figures.Any(f => f.Id == "bracket-torque"));
        Assert.Equal(loose, Says(step, "loose cups"));
    }

    [Theory]
    [InlineData("aluminium", "star nut", "stem-on-steerer stem-on-steerer-old", "")]
    [InlineData("carbon", "expander", "stem-on-carbon-steerer", "")]
    [InlineData("carbon", null, "", "No expander is in this build")]
    [InlineData("aluminium", null, "stem-on-steerer stem-on-steerer-old", "No star nut")]
    [InlineData("unknown", null, "", "Find out first")]
    public void A_carbon_steerer_is_not_clamped_with_nothing_inside(string material, string? plug, string rows, string said)
    {
        Build build = Steel().With(Fork.Read($"steerer kind threadless; steerer material {material}")).With(Stem.Read("28.6 clamp"));
        WorkPlan plan = (plug is null ? build : build.With(Preload.Read(plug))).WorkPlan();
        Assert.Equal(rows, string.Join(' ', plan.Find("fit-stem")!.Torques.Select(t => t.Id).Where(t => t != "top-cap")));
        Assert.Equal(rows.Length == 0, plan.Find("fit-stem")!.Figures.Any(f => f.Id == "stem-torque"));
        Assert.Contains(plan.Find("set-preload")!.Does, d => d.StartsWith(said, StringComparison.Ordinal));
        Assert.Equal(rows.Contains("old", StringComparison.Ordinal), Says(plan.Find("fit-stem")!, "one or two large ones"));
        Assert.NotEmpty(plan.WhyBefore("set-preload", "fit-stem"));
        Assert.False(plug is null && plan.Find("set-preload")!.Tools.Any());
    }

    [Theory]
    [InlineData("shell American", true, "outboard", "BSA", false, false)]
    [InlineData("shell BSA 68", false, "outboard", "BSA", true, false)]
    [InlineData("shell PF41 86.5", true, "inside", "BSA", false, true)]
    [InlineData("shell unknown", false, "unknown", "BSA", null, true)]
    public void A_shell_is_prepared_by_its_own_kind_whatever_an_adapter_takes(string frame, bool plain, string adapter, string bracket, bool? threaded, bool press)
    {
        WorkPlan plan = Steel($"; {frame}").With(ShellAdapter.Read(adapter)).With(BottomBracket.Read(bracket)).WorkPlan();
        WorkStep step = plan.Find("prepare-shell")!;
        Assert.Equal(threaded == true, step.Tools.Any(t => t.Id is "taps" or "chasers"));
        Assert.Equal(plain, Says(step, "never cut carbon"));
        Assert.Equal(threaded is null, Asks(step));
        Assert.Equal(press, plan.Find("fit-shell-adapter")!.Shop!.IsNeeded);
        Assert.Equal(adapter == "inside", plan.Find("fit-shell-adapter")!.Tools.Any(t => t.Id == "adapter-press"));
        Assert.True(Says(plan.Find("fit-bottom-bracket")!, "Start both cups by hand"));
    }
}
