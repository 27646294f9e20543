using Lugwork.Tests.Builds;
using Lugwork.Workshop;

namespace Lugwork.Tests.Workshop;

/// <summary>What is not known is asked first: no torque, nut, blade or fluid is named that only one answer would allow.</summary>
public sealed class UnknownTests
{
    [Theory]
    [InlineData("steel", "facing-set", false)]
    [InlineData("steel | titanium", "facing-set", false)]
    [InlineData("carbon", null, false)]
    [InlineData("unknown", null, true)]
    [InlineData("steel | carbon", null, true)]
    public void A_head_tube_is_faced_only_where_it_is_known_to_be_metal(string material, string? tool, bool asked)
    {
        WorkStep step = Build.From(Frame.Read($"material {material}")).With(Headset.Read("upper EC34/28.6; lower EC34/30")).WorkPlan().Find("prepare-head-tube")!;
        Assert.Equal(tool, step.Tools.FirstOrDefault(t => t.Id == "facing-set")?.Id);
        Assert.Equal(asked, Asks(step));
        Assert.Equal(tool is not null, step.Does.Any(d => d.StartsWith("Ream", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("road", true)]
    [InlineData("unknown", true)]
    [InlineData("track", false)]
    public void A_chain_is_not_cut_where_a_derailleur_may_still_come(string kind, bool waits)
    {
        WorkStep step = Build.From(Frame.Read($"kind {kind}")).With(Chain.Read("size 9")).WorkPlan().Find("fit-chain")!;
        Assert.Equal(waits, step.Does.Any(d => d.StartsWith("Find out first whether a derailleur comes", StringComparison.Ordinal)));
        Assert.Equal(!waits, step.Does.Any(d => d.StartsWith("Cut it there", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("aluminium", "star-nut-setter", "saw", "stem-on-steerer", false)]
    [InlineData("carbon", null, "saw", "stem-on-carbon-steerer", false)]
    [InlineData("unknown", null, null, null, true)]
    [InlineData("aluminium | carbon", null, null, null, true)]
    public void A_steerer_gets_its_nut_its_blade_and_its_torque_by_its_material(string material, string? setter, string? saw, string? torque, bool asked)
    {
        WorkPlan plan = Build.From(Frame.Read("material steel")).With(Fork.Read($"steerer kind threadless; crowns single; steerer material {material}")).With(Stem.Read("28.6 clamp")).With(Preload.Read("star nut")).WorkPlan();
        Assert.Equal(setter, plan.Find("set-preload")!.Tools.FirstOrDefault(t => t.Id == "star-nut-setter")?.Id);
        Assert.Equal(setter is not null, plan.Find("set-preload")!.Figures.Any(f => f.Id == "star-nut-depth"));
        Assert.Equal(saw, plan.Find("cut-steerer")!.Tools.FirstOrDefault(t => t.Id == "saw")?.Id);
        Assert.Equal(torque, plan.Find("fit-stem")!.Torques.FirstOrDefault(t => t.Id.StartsWith("stem-on", StringComparison.Ordinal))?.Id);
        Assert.All(new[] { "set-preload", "cut-steerer", "fit-stem" }, id => Assert.Equal(asked, Asks(plan.Find(id)!)));
    }

    [Theory]
    [InlineData("steel; binder welded-tabs", "aluminium", "seat-binder-metal", "grease")]
    [InlineData("steel; binder collar", "aluminium", null, "grease")]
    [InlineData("carbon; binder collar", "unknown", "seat-collar-carbon", "carbon-paste")]
    [InlineData("steel; binder collar", "carbon", "seat-collar-carbon", "carbon-paste")]
    [InlineData("carbon", "unknown", null, "carbon-paste")]
    [InlineData("steel; binder welded-tabs", "carbon", null, "carbon-paste")]
    [InlineData("steel; binder welded-tabs", "unknown", null, null)]
    [InlineData("unknown", "aluminium", null, null)]
    public void A_binder_has_a_torque_only_where_its_metal_or_carbon_is_known(string frame, string post, string? torque, string? supply)
    {
        Build build = Build.From(Frame.Read($"material {frame}")).With(Seatpost.Read($"27.2; material {post}"));
        WorkStep step = build.WorkPlan().Find("fit-seatpost")!;
        Assert.Equal(torque, step.Torques.SingleOrDefault()?.Id);
        Assert.Equal(supply, step.Consumables.SingleOrDefault()?.Id);
        Assert.Equal(supply is null, Asks(step));
        Assert.Equal(torque is null, step.Figures.Any(f => f.Id == "binder-torque"));
        Assert.Empty(build.With(Dropper.Read("internal")).WorkPlan().Find("fit-seatpost")!.Torques);
    }

    [Theory]
    [InlineData("fluid mineral", "fluid mineral", "mineral oil")]
    [InlineData("fluid DOT", "fluid DOT", "DOT 4 / 5.1")]
    [InlineData("fluid mineral | DOT", "fluid mineral", null)]
    [InlineData("fluid mineral", "fluid mineral | DOT", null)]
    [InlineData("fluid mineral", "fluid DOT", null)]
    [InlineData("fluid mineral", "post", null)]
    public void A_fluid_is_named_only_where_lever_and_caliper_are_known_to_agree(string lever, string caliper, string? fluid)
    {
        WorkPlan plan = Build.From(Frame.Read("material steel")).With(BrakeLever.Read(lever), Slot.FrontBrakeLever).With(Caliper.Read(caliper), Slot.FrontCaliper).WorkPlan();
        WorkStep bleed = plan.Find("bleed-front-brake")!;
        Assert.Equal(fluid is null ? null : $"brake fluid: {fluid}", bleed.Consumables.FirstOrDefault(s => s.Id.StartsWith("fluid-", StringComparison.Ordinal))?.Name);
        Assert.All(new[] { bleed, plan.Find("connect-front-brake")! }, s => Assert.Equal(fluid is null, Asks(s)));
        Assert.All(bleed.Does.Where(_ => fluid is null), d => Assert.False(d.Contains("mineral", StringComparison.Ordinal) || d.Contains("DOT", StringComparison.Ordinal), d));
    }

    [Theory]
    [InlineData("fluid mineral", true, false, "hose-nut")]
    [InlineData("pull short", false, false, "brake-cable")]
    [InlineData("fluid unknown", true, true, null)]
    public void A_lever_of_unknown_kind_is_asked_about_and_its_bleeding_is_not_forgotten(string lever, bool bleeds, bool asked, string? torque)
    {
        WorkPlan plan = Build.From(Frame.Read("material steel")).With(BrakeLever.Read(lever), Slot.RearBrakeLever).With(Caliper.Read("post"), Slot.RearCaliper).WorkPlan();
        Assert.Equal(bleeds, plan.Find("bleed-rear-brake") is not null);
        Assert.Equal(torque, plan.Find("connect-rear-brake")!.Torques.SingleOrDefault()?.Id);
        Assert.Equal(asked, plan.Find("connect-rear-brake")!.Does.Any(d => d.StartsWith("Find out first whether", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("hub R135-QR", "quick-release", false)]
    [InlineData("hub R142-12", "thru-axle-rear", false)]
    [InlineData("hub unknown", null, true)]
    public void A_wheel_is_held_as_its_hub_says(string wheel, string? torque, bool asked)
    {
        WorkStep step = Build.From(Frame.Read("material steel")).With(Wheel.Read(wheel), Slot.RearWheel).WorkPlan().Find("fit-rear-wheel")!;
        Assert.Equal(torque, step.Torques.SingleOrDefault()?.Id);
        Assert.Equal(asked, Asks(step));
    }

    [Theory]
    [InlineData("spindle one-piece", "cone-spanner", false)]
    [InlineData("spindle 24-road", "preload-tool", false)]
    [InlineData("rings 9", null, true)]
    public void A_crank_of_unknown_spindle_has_no_tool_and_no_torque(string crank, string? tool, bool asked)
    {
        WorkStep step = Build.From(Frame.Read("material steel")).With(Crankset.Read(crank)).WorkPlan().Find("fit-crankset")!;
        Assert.Equal(tool, step.Tools.FirstOrDefault(t => t.Id is "cone-spanner" or "preload-tool" or "crank-tool")?.Id);
        Assert.Equal(asked, Asks(step));
        Assert.False(asked && !step.Torques.IsEmpty);
        Assert.DoesNotContain(step.Does, d => tool == "cone-spanner" && d.Contains("arms", StringComparison.Ordinal));
    }

    [Fact]
    public void A_quill_stem_shows_the_row_of_small_bolts_beside_that_of_one_large_bolt()
    {
        string[] Of(string stem) => [.. Build.From(Frame.Read("material steel")).With(Stem.Read(stem)).With(Handlebar.Read("31.8")).WorkPlan().Find("fit-handlebar")!.Torques.Select(t => t.Id)];
        Assert.Equal(["bar-binder-old", "stem-faceplate"], Of("quill-22.2"));
        Assert.Equal(["stem-faceplate"], Of("28.6 clamp"));
    }

    [Theory]
    [InlineData("quill-22.2", "quill-wedge", false)]
    [InlineData("28.6 clamp", "stem-on-steerer", false)]
    [InlineData("bar 31.8", null, true)]
    [InlineData("fixing quill-22.2 | clamp-28.6", null, true)]
    public void A_stem_of_unknown_fixing_is_neither_quill_nor_clamp(string stem, string? torque, bool asked)
    {
        WorkPlan plan = Build.From(Frame.Read("material steel")).With(Fork.Read("crowns single; steerer material steel")).With(Stem.Read(stem)).With(Wheel.Read("innerWidth 19"), Slot.FrontWheel).With(Preload.Read("star nut")).WorkPlan();
        Assert.Equal(torque, plan.Find("fit-stem")!.Torques.FirstOrDefault(t => t.Id != "top-cap")?.Id);
        Assert.Equal(torque, plan.Find("align-steering")!.Torques.FirstOrDefault()?.Id);
        Assert.All(new[] { "dry-fit-fork", "cut-steerer", "set-preload", "fit-fork", "fit-stem", "align-steering" }.Where(id => asked || plan.Find(id) is not null), id => Assert.Equal(asked, Asks(plan.Find(id)!)));
        Assert.Equal(torque == "quill-wedge", plan.Find("cut-steerer") is null);
        Assert.Equal(torque == "stem-on-steerer", plan.Find("cut-steerer")?.Tools.Any(t => t.Id == "saw") == true);
        Assert.Equal(asked, plan.Inspection.Any(p => p.Id == "quill-mark") && plan.Inspection.Any(p => p.Id == "stem-gap"));
        Assert.Equal(asked, plan.Find("fit-stem")!.Figures.Any(f => f is { Id: "stem-fixing", IsKnown: false }));
    }

    [Theory]
    [InlineData("M10 bolt", false, "rear-derailleur")]
    [InlineData("hangerless", false, null)]
    [InlineData("chain 9", true, null)]
    [InlineData("mount M10-bolt | hangerless", true, null)]
    public void A_derailleur_of_unknown_mount_is_asked_about(string derailleur, bool asked, string? torque)
    {
        WorkPlan plan = Build.From(Frame.Read("material steel; hanger M10")).With(RearDerailleur.Read(derailleur)).WorkPlan();
        Assert.Equal(asked, Asks(plan.Find("fit-rear-derailleur")!));
        Assert.Equal(torque, plan.Find("fit-rear-derailleur")!.Torques.SingleOrDefault()?.Id);
        Assert.Equal(asked, plan.Find("align-hanger") is { } align && Asks(align) && align.Torques.IsEmpty);
    }

    [Theory]
    [InlineData("UDH", "universal-hanger-bolt")]
    [InlineData("M10", "hanger-bolts")]
    [InlineData("no-hanger", null)]
    [InlineData("unknown", null)]
    [InlineData("UDH | M10", null)]
    public void A_hanger_has_a_torque_only_where_it_is_known(string hanger, string? torque)
    {
        WorkStep step = Build.From(Frame.Read($"material steel; hanger {hanger}")).With(RearDerailleur.Read("M10 bolt")).WorkPlan().Find("fit-hanger")!;
        Assert.Equal(torque, step.Torques.SingleOrDefault()?.Id);
        Assert.Equal(torque is null && hanger != "no-hanger", step.Figures.Any(f => f.Id == "hanger-torque"));
    }

    [Theory]
    [InlineData("shock none", false, false)]
    [InlineData("shock 210x55", true, false)]
    [InlineData("kind full-suspension", true, false)]
    [InlineData("kind folding", true, true)]
    [InlineData("", true, true)]
    public void Pivots_of_a_rear_that_is_not_known_are_asked_about(string frame, bool needed, bool asked)
    {
        WorkStep? step = Build.From(Frame.Read($"material steel; {frame}")).WorkPlan().Find("check-pivots");
        Assert.Equal(needed, step is not null);
        Assert.Equal(asked, step is not null && Asks(step));
    }

    private static bool Asks(WorkStep step) => step.Does.Any(d => d.StartsWith("Find out first", StringComparison.Ordinal));
}
