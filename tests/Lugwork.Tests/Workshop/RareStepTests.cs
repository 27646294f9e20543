using Lugwork.Tests.Builds;
using Lugwork.Workshop;
using UnitsNet;

namespace Lugwork.Tests.Workshop;

/// <summary>Parts that few bicycles have: a fork of two crowns, a belt, a one-piece crank, a claw, a line outside. Each with its neighbour, for which the sentence would be wrong.</summary>
public sealed class RareStepTests
{
    private static Build Steel(string frame = "") => Build.From(Frame.Read("material steel" + frame));

    private static bool Says(WorkStep step, string words) => step.Does.Any(d => d.Contains(words, StringComparison.Ordinal));

    private static bool Asks(WorkStep step, string what = "") => step.Does.Any(d => d.StartsWith("Find out first" + what, StringComparison.Ordinal));

    private static string Lacks(WorkStep step) => string.Join(' ', step.Figures.Where(f => f.Unit == "N m").Select(f => f.Id));

    [Theory]
    [InlineData("crowns dual", true)]
    [InlineData("crowns single; travel 200", false)]
    [InlineData("travel 79.9", false)]
    [InlineData("travel 80", null)]
    [InlineData("crowns single | dual", null)]
    [InlineData("travel none", false)]
    [InlineData("travel 63 | 100", null)]
    [InlineData("front brake hole recessed-6", false)]
    [InlineData("", null)]
    public void A_fork_of_two_crowns_goes_by_its_makers_sheet(string fork, bool? two)
    {
        WorkPlan plan = Steel("; head tube length 110").With(Fork.Read($"steerer kind threadless; steerer material aluminium; steerer length 260; {fork}")).With(Headset.Read("threadless; upper stack 12; lower stack 10")).With(Preload.Read("star nut"))
            .With(Stem.Read("28.6 clamp; clamp height 40; spacers below 10; spacers above 5")).WorkPlan();
        WorkStep fit = plan.Find("fit-fork")!;
        WorkStep cut = plan.Find("cut-steerer")!;
        Assert.Equal(two == true, Says(fit, "Put the upper crown on"));
        Assert.Equal(two == true ? "crown-torque" : "", Lacks(fit));
        Assert.Equal(two == true, plan.Find("final-torque")!.Figures.Any(f => f.Id == "crown-torque"));
        Assert.Equal(two == true, fit.Shop is not null);
        Assert.Equal(two != false, fit.Cautions.Any(c => c.Id == "fork-class"));
        Assert.All(new[] { "dry-fit-fork", "cut-steerer", "fit-fork" }, id => Assert.Equal(two is null, Asks(plan.Find(id)!, " whether the fork has one crown")));
        Assert.Equal(two == false, cut.Tools.Any(t => t.Id == "saw"));
        Assert.Equal(two == false, cut.Figures.Single(f => f.Id == "steerer-cut").IsKnown);
        Assert.Equal(two == false, Says(plan.Find("dry-fit-fork")!, "Mark the steerer"));
        Assert.Equal(two == true, Says(plan.Find("fit-stem")!, "bolts to the upper crown"));
    }

    [Fact]
    public void A_stem_on_the_upper_crown_is_its_makers_own_and_asked_about()
    {
        WorkStep step = Steel().With(Fork.Read("steerer kind threadless; crowns dual")).With(Stem.Read("fixing proprietary; bar 31.8")).WorkPlan().Find("fit-stem")!;
        Assert.True(Asks(step, " whether the stem bolts to the upper crown"));
        Assert.Empty(step.Torques);
        Assert.Equal("stem-torque", Lacks(step));
    }

    [Theory]
    [InlineData(260, false, false)]
    [InlineData(180, true, true)]
    [InlineData(177, true, true)]
    [InlineData(184, true, false)]
    public void A_steerer_that_is_too_short_is_no_steerer_that_need_not_be_cut(int length, bool left, bool isShort)
    {
        WorkPlan plan = Steel("; head tube length 130").With(Fork.Read($"steerer kind threadless; steerer material steel; crowns single; steerer length {length}")).With(Headset.Read("threadless; upper stack 12; lower stack none")).With(Stem.Read("28.6 clamp; clamp height 40; spacers below 5; spacers above none")).WorkPlan();
        WorkStep step = plan.Find("cut-steerer")!;
        double shortest = step.Figures.Single(f => f.Id == "steerer-shortest").Value!.Value;
        Assert.Equal(182, shortest);
        Assert.Equal(isShort, Says(step, FormattableString.Invariant($"Do not go on: the steerer is {shortest - length} mm too short")));
        Assert.Equal(left && !isShort, Says(step, "Do not cut"));
        Assert.Equal(!left, step.Tools.Any(t => t.Id == "saw"));
        Assert.Equal(isShort ? shortest - length : null, step.Figures.SingleOrDefault(f => f.Id == "steerer-too-short")?.Value);
    }

    [Theory]
    [InlineData("threaded", "Put neither a star nut nor an expander")]
    [InlineData("threadless", "Set a star nut square")]
    public void Nothing_is_set_into_a_threaded_steerer(string kind, string said)
    {
        WorkStep step = Steel().With(Fork.Read($"steerer kind {kind}; steerer material steel")).With(Preload.Read("star nut")).WorkPlan().Find("set-preload")!;
        Assert.StartsWith(said, Assert.Single(step.Does), StringComparison.Ordinal);
        Assert.Equal(kind == "threadless", step.Tools.Any(t => t.Id == "star-nut-setter"));
    }

    [Theory]
    [InlineData("one-piece", true, "locknut-torque")]
    [InlineData("cottered", false, "cotter-torque")]
    [InlineData("square-JIS", false, "")]
    public void Cone_and_locknut_of_a_one_piece_crank_tighten_anticlockwise(string spindle, bool left, string lacks)
    {
        WorkPlan plan = Steel("; shell American").With(Crankset.Read($"spindle {spindle}")).WorkPlan();
        WorkStep step = plan.Find("fit-crankset")!;
        Assert.Equal(left, Says(step, "left-hand"));
        Assert.Equal(left, Says(step, "anticlockwise"));
        Assert.Equal(left, step.Cautions.Any(c => c.Id == "left-hand-cone"));
        Assert.Equal(left, step.Figures.SingleOrDefault(f => f.Id == "cone-thread")?.Sources.Contains(Sources.BracketTable) == true);
        Assert.Equal(lacks, Lacks(step));
        Assert.Equal(lacks.Length > 0, plan.Find("final-torque")!.Figures.Any(f => f.Id == lacks));
    }

    [Theory]
    [InlineData("opens", "Open the joint", false, true)]
    [InlineData("closed", "Do not go on", false, false)]
    [InlineData("unknown", "Find out first whether the rear triangle opens", true, true)]
    public void A_belt_goes_in_before_the_wheel_and_the_triangle_is_closed_and_written_down(string triangle, string said, bool asks, bool closes)
    {
        WorkPlan plan = Bicycle.All[2].With(((Frame)Bicycle.All[2][Slot.Frame]!) with { RearTriangle = Frame.Read($"rear triangle {triangle}").RearTriangle }, Slot.Frame).WorkPlan();
        WorkStep step = plan.Find("lead-belt")!;
        Assert.StartsWith(said, step.Does[0], StringComparison.Ordinal);
        Assert.Equal(asks, Asks(step));
        Assert.Equal(closes ? "triangle-torque" : "", Lacks(step));
        Assert.Equal(closes, plan.Find("final-torque")!.Figures.Any(f => f.Id == "triangle-torque"));
        Assert.Equal(closes, step.Does.Any(d => d.Contains("lose the joint", StringComparison.Ordinal)));
        Assert.NotEmpty(plan.WhyBefore("lead-belt", "fit-rear-wheel"));
        Assert.NotEmpty(plan.WhyBefore("lead-belt", "fit-chain"));
        Assert.False(Says(plan.Find("fit-chain")!, "triangle"));
        Assert.True(Array.IndexOf([.. plan.Steps.Select(s => s.Id)], "lead-belt") < Array.IndexOf([.. plan.Steps.Select(s => s.Id)], "fit-rear-wheel"));
        Assert.Null(Steel().With(Chain.Read("9-speed")).WorkPlan().Find("lead-belt"));
    }

    [Fact]
    public void The_tension_of_a_belt_is_a_shops_gauge_and_so_are_the_bushes_of_a_shock()
    {
        Assert.NotNull(Bicycle.All[2].WorkPlan().Find("set-chain-tension")!.Shop);
        Assert.Null(Steel("; kind single-speed").With(Chain.Read("1/8")).WorkPlan().Find("set-chain-tension")!.Shop);
        Assert.NotNull(Steel().With(Shock.Read("210x55")).WorkPlan().Find("fit-shock")!.Shop);
    }

    [Theory]
    [InlineData("no-hanger", "M10 bolt", true)]
    [InlineData("M10", "M10 bolt", false)]
    [InlineData("no-hanger", "hangerless", false)]
    public void A_derailleur_on_a_claw_goes_in_before_the_wheel_and_nothing_is_bent(string hanger, string mount, bool claw)
    {
        WorkPlan plan = Steel($"; hanger {hanger}; rear slot horizontal").With(RearDerailleur.Read(mount)).With(Wheel.Read("hub R126"), Slot.RearWheel).WorkPlan();
        WorkStep step = plan.Find("fit-rear-derailleur")!;
        Assert.Equal(claw || mount == "hangerless", !plan.WhyBefore("fit-rear-derailleur", "fit-rear-wheel").IsEmpty);
        Assert.Equal(claw || mount == "hangerless", plan.Find("align-hanger") is null);
        Assert.Equal(claw, Says(step, "Lay the claw into the right end"));
        Assert.Equal(claw ? "derailleur-torque" : "", Lacks(step));
        Assert.Equal(!claw && mount != "hangerless", step.Torques.Any(t => t.Id == "rear-derailleur"));
        Assert.Equal(claw, plan.Find("fit-rear-wheel")!.Checks.Any(c => c.Contains("claw", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("internal", "lower end of the post", false)]
    [InlineData("external", "along the frame to the head or the collar", false)]
    [InlineData("travel 120", "Find out first whether the line runs inside", true)]
    [InlineData("routing internal | external", "Find out first whether the line runs inside", true)]
    public void The_line_of_a_dropper_goes_where_its_routing_says(string dropper, string said, bool asks)
    {
        WorkPlan plan = Steel().With(Dropper.Read(dropper)).With(Seatpost.Read("27.2")).With(Handlebar.Read("grip 22.2")).WorkPlan();
        WorkStep step = plan.Find("fit-dropper-line")!;
        Assert.Contains(said, step.Does[0], StringComparison.Ordinal);
        Assert.Equal(asks, Asks(step));
        Assert.Equal(dropper == "internal", Says(step, "draw the post out again"));
        Assert.Equal(dropper == "external", Says(step, "the whole travel"));
        Assert.Equal("dropper-torque", Lacks(step));
        Assert.DoesNotContain(step.After, a => a.Because.Contains("liner", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("carbon", "no file to carbon", false)]
    [InlineData("steel", "Deburr", false)]
    [InlineData("unknown", "no file goes on carbon", true)]
    public void No_file_goes_on_a_carbon_seat_tube(string material, string said, bool asks)
    {
        WorkStep step = Build.From(Frame.Read($"material {material}")).With(SeatClamp.Read("31.8")).WorkPlan().Find("fit-seat-collar")!;
        Assert.Contains(said, step.Does[0], StringComparison.Ordinal);
        Assert.Equal(asks, Asks(step));
        Assert.Equal(material == "steel", Says(step, "Deburr"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_valve_goes_through_a_tape_only_where_there_is_one(bool tape)
    {
        Build build = Steel().With(Wheel.Read("innerWidth 25"), Slot.RearWheel).With(TubelessValve.Read("Presta"), Slot.RearTubelessValve);
        WorkStep step = (tape ? build.With(RimTape.Read("width 30"), Slot.RearRimTape) : build).WorkPlan().Find("fit-rear-valve")!;
        Assert.Equal(tape, Says(step, "through the tape"));
        Assert.Equal(!tape, Says(step, "closed or taped"));
    }

    [Theory]
    [InlineData("shell T47", "M47 x 1")]
    [InlineData("shell BSA", "1.370 in x 24 tpi")]
    [InlineData("shell American", null)]
    [InlineData("shell BSA 68 | T47 68", "lacking")]
    [InlineData("shell unknown", "lacking")]
    public void A_shell_of_one_family_has_its_thread_whatever_its_width(string frame, string? said)
    {
        WorkFigure? thread = Steel($"; {frame}").With(BottomBracket.Read("takes 24")).WorkPlan().Find("prepare-shell")!.Figures.SingleOrDefault(f => f.Id == "shell-thread");
        Assert.Equal(said is null, thread is null);
        Assert.True(said is null || thread!.ToString().Contains(said, StringComparison.Ordinal), thread?.ToString());
    }

    [Theory]
    [InlineData("M10 bolt", "", true, false)]
    [InlineData("hangerless", "", false, true)]
    [InlineData("hangerless", "31.8", true, true)]
    public void Limits_of_a_derailleur_round_the_axle_are_set_where_it_has_screws(string mount, string front, bool outer, bool where)
    {
        Build build = Steel().With(RearDerailleur.Read(mount));
        WorkStep step = (front.Length == 0 ? build : build.With(FrontDerailleur.Read(front))).WorkPlan().Find("adjust-gears")!;
        Assert.Equal(outer, Says(step, "Set the outer limits before"));
        Assert.Equal(where, Says(step, "where it has screws for them"));
        Assert.Equal(!where, Says(step, "Set the distance of the upper pulley as"));
    }

    [Theory]
    [InlineData("PM-160", "160", "", false)]
    [InlineData("PM-160", "180", "", null)]
    [InlineData("PM-160", "160", "; adapter unknown", false)]
    [InlineData("PM-160", "unknown", "", null)]
    [InlineData("unknown", "160", "", null)]
    public void No_adapter_and_no_row_of_one_where_the_caliper_sits_on_its_mount(string mount, string rotor, string caliper, bool? adapter)
    {
        WorkStep step = Steel($"; rearBrake {mount}").With(Caliper.Read($"post{caliper}"), Slot.RearCaliper).With(Rotor.Read($"size {rotor}; six-bolt"), Slot.RearRotor).WorkPlan().Find("mount-rear-caliper")!;
        Assert.Equal(adapter is null, step.Torques.Any(t => t.Id == "adapter-bolts-m5"));
        Assert.Equal(adapter is null, Says(step, "Bolt the adapter on"));
        Assert.Equal(adapter is null, step.Tools.Any(t => t.Id == "hex-m5"));
    }

    [Fact]
    public void A_hanger_of_one_piece_and_loose_cups_are_answered_by_a_note()
    {
        WorkPlan plan = Steel("; hanger M10; shell BSA 68").With(RearDerailleur.Read("M10 bolt")).With(BottomBracket.Read("BSA; takes square-JIS")).WorkPlan();
        foreach ((string step, string row) in new[] { ("fit-hanger", "hanger-bolts"), ("fit-bottom-bracket", "bracket-square-taper") })
        {
            Assert.Contains(WorkRecord.For(plan).WithDone(step).Questions, q => q.EndsWith($"no torque is written down for {row} (or a note that there is none)", StringComparison.Ordinal));
            Assert.DoesNotContain(WorkRecord.For(plan).WithDone(step).WithNote(step, "none").Questions, q => q.Contains("no torque", StringComparison.Ordinal));
            Assert.Contains("Only where", plan.Find(step)!.Torques.Single(t => t.Id == row).ToString(), StringComparison.Ordinal);
        }

        WorkStep cottered = Steel("; shell BSA 68").With(BottomBracket.Read("BSA; takes cottered")).WorkPlan().Find("fit-bottom-bracket")!;
        Assert.Empty(cottered.Torques);
        Assert.Equal("bracket-torque", Lacks(cottered));
    }

    [Fact]
    public void What_a_nut_or_bolt_is_made_of_is_looked_at_where_the_torque_goes_by_it()
    {
        Assert.True(Says(Steel().With(Chainring.Read("bolt circle 4x104; teeth 36")).WorkPlan().Find("fit-chainring")!, "aluminium or steel"));
        Assert.False(Says(Steel().With(Chainring.Read("direct mount unknown; bolt circle none; teeth 36")).WorkPlan().Find("fit-chainring")!, "aluminium or steel"));
    }

    [Theory]
    [InlineData("XD", "cassette-torque")]
    [InlineData("carrier", "sprocket-torque")]
    [InlineData("fixed-sprocket", "fixed-lockring-torque")]
    public void A_wrench_is_laid_out_for_a_torque_that_only_the_maker_names(string sprockets, string lacks)
    {
        WorkStep step = Steel().With(Cassette.Read($"pattern {sprockets}")).WorkPlan().Find("fit-cassette")!;
        Assert.Equal(lacks, Lacks(step));
        Assert.Contains(step.Tools, t => t.Id == "torque-wrench");
        Assert.DoesNotContain(Steel().With(Cassette.Read("pattern freewheel")).WorkPlan().Find("fit-cassette")!.Tools, t => t.Id == "torque-wrench");
    }

    [Fact]
    public void A_point_that_was_not_judged_says_what_that_takes()
    {
        FinalPoint[] points = [.. FurtherBicycles.All[3].WorkPlan().Inspection];
        WorkFigure Of(string point, string figure) => points.Single(p => p.Id == point).Figures.Single(f => f.Id == figure);
        Assert.Equal(["front centre or length of the crank or room between pedal and front tyre"], Of("toe-clearance", "toe-clearance").Lacking);
        Assert.False(Of("pedal-clearance", "pedal-ground-clearance").IsKnown);
        Assert.False(Of("load", "load").IsKnown);
        Assert.Contains(points.Single(p => p.Id == "tyre-room").Figures, f => f.Id.StartsWith("front-tyre", StringComparison.Ordinal));
        Assert.Contains(points.Single(p => p.Id == "tyre-room").Figures, f => f.Id.StartsWith("rear-tyre", StringComparison.Ordinal));
        Assert.Contains(Bench.WholeBicycle().WorkPlan().Inspection.Single(p => p.Id == "tyre-room").Figures, f => f.IsKnown);
    }

    [Fact]
    public void A_bolt_with_thread_lock_is_not_turned_further()
    {
        Assert.True(Says(Steel().With(Rotor.Read("160; six-bolt"), Slot.FrontRotor).WorkPlan().Find("final-torque")!, "Stop at the low end"));
        Assert.False(Says(Steel().With(Saddle.Read("7 mm round")).WorkPlan().Find("final-torque")!, "thread lock"));
    }

    [Fact]
    public void The_torque_of_each_fastener_is_written_down_at_its_own_step_where_the_last_pass_does_not_reach_it()
    {
        WorkPlan plan = Steel("; shell BSA 68").With(BottomBracket.Read("BSA; takes 24")).With(Cassette.Read("9-speed HG")).WorkPlan();
        WorkRecord record = WorkRecord.For(plan).WithTorque("fit-cassette", "cassette-lockring", Torque.FromNewtonMeters(40)).WithDone("fit-cassette").WithDone("fit-bottom-bracket");
        Assert.Equal(["fit-bottom-bracket is done, and no torque is written down for bracket-outboard"], record.Questions.Where(q => q.Contains("no torque", StringComparison.Ordinal)));
        Assert.Throws<ArgumentException>(() => record.WithTorque("final-torque", "cassette-lockring", Torque.FromNewtonMeters(40)));
    }
}
