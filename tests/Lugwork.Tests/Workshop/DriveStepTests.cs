using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Workshop;

/// <summary>Hanger, sprockets, chain and the rear wheel that is set by it: no order that cannot be worked, nothing cut or tightened by a guess.</summary>
public sealed class DriveStepTests
{
    private static Build Steel(string frame = "") => Build.From(Frame.Read("material steel" + frame));

    private static bool Says(WorkStep step, string words) => step.Does.Any(d => d.Contains(words, StringComparison.Ordinal));

    private static bool Asks(WorkStep step) => step.Does.Any(d => d.StartsWith("Find out first", StringComparison.Ordinal));

    [Theory]
    [InlineData("UDH", true)]
    [InlineData("M10", false)]
    [InlineData("direct-mount", false)]
    [InlineData("unknown", false)]
    public void A_hanger_goes_on_before_the_wheel_and_its_hand_is_said(string hanger, bool leftHand)
    {
        WorkPlan plan = Steel($"; hanger {hanger}").With(RearDerailleur.Read("M10 bolt")).With(Wheel.Read("hub R148-12"), Slot.RearWheel).WorkPlan();
        Assert.NotEmpty(plan.WhyBefore("fit-hanger", "fit-rear-wheel"));
        Assert.NotEmpty(plan.WhyBefore("fit-rear-wheel", "align-hanger"));
        Assert.Equal(leftHand, Says(plan.Find("fit-hanger")!, "anticlockwise"));
        Assert.Equal(leftHand, Says(plan.Find("align-hanger")!, "replaced, not bent back"));
        Assert.Equal(hanger == "unknown", Asks(plan.Find("fit-hanger")!));
        Assert.Empty(plan.Find("align-hanger")!.Torques);
    }

    [Fact]
    public void A_universal_hanger_holds_the_axle_of_a_bicycle_without_a_derailleur_too()
    {
        Assert.NotNull(Steel("; hanger UDH").With(Wheel.Read("hub R148-12"), Slot.RearWheel).WorkPlan().Find("fit-hanger"));
        Assert.Null(Steel("; hanger M10").With(Wheel.Read("hub R148-12"), Slot.RearWheel).WorkPlan().Find("fit-hanger"));
    }

    [Fact]
    public void A_derailleur_round_the_axle_is_in_before_the_wheel_and_tightened_after_the_chain()
    {
        Build build = Steel("; hanger UDH").With(Wheel.Read("hub R148-12"), Slot.RearWheel).With(Chain.Read("12-speed"));
        WorkPlan plan = build.With(RearDerailleur.Read("hangerless")).WorkPlan();
        Assert.NotEmpty(plan.WhyBefore("fit-rear-derailleur", "fit-rear-wheel"));
        Assert.NotEmpty(plan.WhyBefore("fit-chain", "tighten-derailleur"));
        Assert.Empty(plan.Find("fit-rear-derailleur")!.Figures);
        Assert.Equal(["derailleur-torque"], plan.Find("tighten-derailleur")!.Figures.Select(f => f.Id));
        Assert.NotEmpty(build.With(RearDerailleur.Read("M10 bolt")).WorkPlan().WhyBefore("fit-rear-wheel", "fit-rear-derailleur"));
    }

    [Theory]
    [InlineData("kind road", "hub unknown", "pattern HG-9", null)]
    [InlineData("kind single-speed", "hub unknown", "pattern HG-9", null)]
    [InlineData("kind children's", "hub unknown", "pattern freewheel", null)]
    [InlineData("kind single-speed", "hub unknown", "pattern freewheel", true)]
    [InlineData("kind BMX", "hub unknown", "pattern unknown", true)]
    [InlineData("kind road", "hub unknown", "pattern fixed-sprocket", true)]
    [InlineData("kind road", "body hub gear", "pattern unknown", true)]
    public void A_chain_is_cut_without_a_derailleur_only_where_none_can_come(string frame, string wheel, string cassette, bool? cut)
    {
        WorkPlan plan = Steel($"; {frame}").With(Wheel.Read(wheel), Slot.RearWheel).With(Cassette.Read(cassette)).With(Chain.Read("9-speed")).WorkPlan();
        Assert.Equal(cut == true, Says(plan.Find("fit-chain")!, "Cut it there"));
        Assert.Equal(cut is null, Asks(plan.Find("fit-chain")!));
        Assert.Equal(cut is null, plan.Find("fit-chain")!.Tools.All(t => t.Id != "chain-tool"));
        Assert.Equal(cut == true, plan.Find("set-chain-tension") is not null);
        Assert.Equal(cut == true, Says(plan.Find("fit-rear-wheel")!, "loose"));
    }

    [Fact]
    public void A_whole_bicycle_that_lacks_its_derailleur_alone_keeps_its_chain()
    {
        WorkPlan plan = Bench.WholeBicycle().Without(Slot.RearDerailleur).WorkPlan();
        Assert.DoesNotContain(plan.Steps.SelectMany(s => s.Does), d => d.Contains("Cut it there", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Find("fit-chain")!.Figures, f => f.Place is { IsCut: true });
        Assert.Null(plan.Find("set-chain-tension"));
    }

    [Theory]
    [InlineData("horizontal", "hub R120", "M10x1", "washers", true)]
    [InlineData("horizontal", "hub R135-QR", null, "palm", true)]
    [InlineData("horizontal", "hub R142-12", null, "start the axle by hand", false)]
    [InlineData("vertical", "hub R135-QR", null, "palm", false)]
    [InlineData("unknown", "hub R135-QR", null, "palm", true)]
    [InlineData("horizontal", "hub unknown", null, "Find out first what holds this hub", true)]
    public void With_a_fixed_chain_the_wheel_is_still_held_as_its_hub_says(string slot, string hub, string? nuts, string said, bool afterChain)
    {
        Build build = Steel($"; kind single-speed; rearDropout {slot}").With(Wheel.Read(hub), Slot.RearWheel).With(Cassette.Read("pattern freewheel")).With(Chain.Read("1/8"));
        WorkPlan plan = (nuts is null ? build : build.With(AxleNuts.Read(nuts), Slot.RearAxleNuts)).WorkPlan();
        Assert.Equal(afterChain, Says(plan.Find("set-chain-tension")!, said));
        Assert.Equal(!afterChain, Says(plan.Find("fit-rear-wheel")!, said));
        string[] rows = [.. plan.Find("set-chain-tension")!.Torques.Select(t => t.Id), .. plan.Find("fit-rear-wheel")!.Torques.Select(t => t.Id)];
        Assert.Equal(hub == "hub R142-12", plan.Find("fit-rear-wheel")!.Consumables.Any(s => s.Id == "grease"));
        Assert.Equal(said == "palm", rows.Contains("quick-release"));
    }

    [Theory]
    [InlineData("horizontal", "Draw the wheel back", null)]
    [InlineData("vertical", "eccentric", "what it is")]
    [InlineData("none", "eccentric", "what it is")]
    [InlineData("unknown", "Find out first how the rear slots run", "how the rear slots run")]
    [InlineData("horizontal | vertical", "Find out first how the rear slots run", "how the rear slots run")]
    public void What_tensions_the_chain_goes_by_the_slots_and_no_row_of_an_eccentric_stands_for_all(string slot, string said, string? lacks)
    {
        WorkStep step = Steel($"; kind single-speed; rearDropout {slot}").With(Chain.Read("1/8")).WorkPlan().Find("set-chain-tension")!;
        Assert.StartsWith(said, step.Does[0].StartsWith("Set the tension by an eccentric", StringComparison.Ordinal) ? "eccentric" : step.Does[0], StringComparison.Ordinal);
        Assert.DoesNotContain(step.Torques, t => t.Id == "bracket-eccentric");
        Assert.Equal(lacks, step.Figures.SingleOrDefault(f => f.Id == "tension-torque")?.Lacking[0][..lacks!.Length]);
    }

    [Theory]
    [InlineData("XD", "no separate lockring", null, "cassette-torque", "cassette-tool")]
    [InlineData("XDR", "no separate lockring", null, "cassette-torque", "cassette-tool")]
    [InlineData("fixed-sprocket", "anticlockwise", null, "fixed-lockring-torque", "chain-whip fixed-lockring-spanner")]
    [InlineData("freewheel", "pedalling tightens it", null, null, "cassette-tool")]
    [InlineData("HG-9", "lockring", "cassette-lockring", null, "cassette-tool")]
    public void Sprockets_are_held_as_they_are_made(string pattern, string said, string? row, string? lacks, string tools)
    {
        WorkStep step = Steel().With(Cassette.Read($"pattern {pattern}")).WorkPlan().Find("fit-cassette")!;
        Assert.True(Says(step, said));
        Assert.Equal(pattern == "fixed-sprocket", Says(step, "anticlockwise"));
        Assert.Equal(row, step.Torques.SingleOrDefault()?.Id);
        Assert.Equal(lacks, step.Figures.SingleOrDefault()?.Id);
        Assert.Equal(tools, string.Join(' ', step.Tools.Select(t => t.Id).Where(t => t != "torque-wrench")));
        Assert.Equal(pattern == "fixed-sprocket", step.Cautions.Any(c => c.Id == "fixed-lockring"));
        Assert.Equal(pattern == "HG-9", Steel().With(Cassette.Read($"pattern {pattern}")).SmallParts().Any(p => p.Id == "cassette-lockring"));
    }

    [Theory]
    [InlineData("body 3-lug; hub brake coaster", null, null)]
    [InlineData("body 3-lug; hub brake coaster", "cable", true)]
    [InlineData("body 3-lug", "no-shifting", null)]
    [InlineData("body hub gear", null, true)]
    [InlineData("body HG-8", "cable", false)]
    public void Three_lugs_alone_make_no_hub_gear(string wheel, string? shifter, bool? gears)
    {
        Build build = Steel("; kind touring").With(Wheel.Read(wheel), Slot.RearWheel).With(AxleNuts.Read("M10x1"), Slot.RearAxleNuts);
        WorkPlan plan = (shifter is null ? build : build.With(Shifter.Read(shifter), Slot.RearShifter)).WorkPlan();
        Assert.Equal(gears == true, plan.Find("fit-rear-wheel")!.Torques.Any(t => t.Id == "axle-nut"));
        Assert.Equal(gears is null, plan.Find("fit-rear-wheel")!.Figures.Any(f => f.Id == "axle-torque" && f.Lacking[0].StartsWith("whether the hub has gears", StringComparison.Ordinal)));
        Assert.Equal(gears == true && shifter is not null, plan.Find("adjust-gears") is { } gear && Says(gear, "by the marks"));
    }

    [Theory]
    [InlineData("largest ring 46; smallest ring none", "teeth 42", 42)]
    [InlineData("largest ring 46; smallest ring none", "teeth unknown", null)]
    [InlineData("largest ring 46; smallest ring 30", "teeth 46", 46)]
    [InlineData("largest ring 46; smallest ring 30", "teeth 30", 46)]
    [InlineData("largest ring 46; smallest ring 30", "teeth 44", null)]
    [InlineData("rings 9", "teeth 42", 42)]
    [InlineData("largest ring 46; smallest ring 30", null, 46)]
    public void The_chain_is_counted_for_the_ring_that_is_on(string crank, string? ring, int? teeth)
    {
        Build build = Steel("; kind road; chainstay 420").With(Crankset.Read(crank)).With(Cassette.Read("9-speed HG; smallest sprocket 11; largest sprocket 28")).With(RearDerailleur.Read("M10 bolt; capacity 40")).With(Chain.Read("9-speed"));
        WorkFigure found = (ring is null ? build : build.With(Chainring.Read(ring))).WorkPlan().Find("fit-chain")!.Figures.Single(f => f.Id == "chain-pitches");
        Assert.Equal(teeth is null ? null : (double)Lugwork.Drivetrain.ChainRule.BigBig(UnitsNet.Length.FromMillimeters(420), teeth.Value, 28, 2).EvenPitches, found.Value);
    }
}
