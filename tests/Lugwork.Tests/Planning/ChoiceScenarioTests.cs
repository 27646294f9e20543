using Lugwork.Planning;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Planning;

/// <summary>Small cases reckoned by hand, line by line.</summary>
public sealed class ChoiceScenarioTests
{
    private const string PostRest = "x 350; mark 75; insertion 110; rails 7-round; material aluminium; binder gap 2; rider limit 115 kg; system limit none; use condition 4; condition new";
    private const string WheelRest = "ends swappable; body HG-M; beadSeat 622; innerWidth 21; rimType TC; brake track aluminium; hub brake none; axle thread M10x1; washers none; hub holes 28; rim holes 28; hold clincher; valve hole 6.5; rim depth 24; bed hole 9; load limit none; system limit 130 kg; use condition 2; rim material aluminium; rim wall 1.6; sprocket line 47; condition new";

    /// <summary>The whole bicycle of the bench without some parts; the rest is kept.</summary>
    internal static ChoiceRequest Finish(ChoiceOffer[] offers, params (string Bridge, decimal Price)[] bridges)
    {
        Build build = offers.Select(o => o.Slot).Distinct().Aggregate(Bench.WholeBicycle(), (b, s) => b.Without(s));
        return new()
        {
            Build = build,
            Offers = [.. offers],
            Bridges = [.. bridges.Select(b => new ChoiceBridgePrice(b.Bridge, Euro(b.Price)))],
            Wishes = [.. Slot.All.Where(s => s != Slot.Frame && build[s] is not null).Select(ChoiceWish.Keep)],
        };
    }

    internal static Price Euro(decimal amount) => new(amount, "EUR");

    internal static ChoiceOffer Offer(string id, Slot slot, Part part, decimal price) => new(id, slot, part) { Price = Euro(price) };

    internal static ChoiceOffer Post(string diameter, decimal price) => Offer($"post {diameter}", Slot.Seatpost, Seatpost.Read($"{diameter} {PostRest}"), price);

    [Fact]
    public void A_post_with_a_shim_is_taken_where_both_cost_less_than_the_right_post()
    {
        ChoiceRequest request = Finish(
            [Post("27.2", 49.90m), Post("26.8", 31.50m), Post("25.4", 22.00m), Post("30.9", 5.00m)],
            ("seatpost-shim-26.8-to-27.2", 12.00m), ("seatpost-shim-25.4-to-27.2", 24.00m));

        // 27.2: 49.90. 26.8 and its shim: 31.50 + 12.00 = 43.50. 25.4 and its shim: 22.00 + 24.00 = 46.00. 30.9 goes into no bore of 27.2.
        ChoiceResult result = BuildChooser.Of(request).CheapestFew(10);
        Assert.Equal(ChoiceStatus.Optimal, result.Status);
        Assert.Equal([43.50m, 46.00m, 49.90m], result.Builds.Select(b => b.Price.Amount));
        Assert.Equal(["post 26.8", "post 25.4", "post 27.2"], result.Builds.Select(b => b.ToBuy.Single().Id));
        Assert.Equal("seatpost-shim-26.8-to-27.2", result.Best!.Bridges.Single().Bridge.Id);
        Assert.Equal(Verdict.NeedsPart, result.Best.Report.Verdict);

        // The wish for a bare fit leaves the right post alone.
        ChoiceWish bare = ChoiceWish.Of<Seatpost, Lugwork.Seating.SeatpostDiameter>(Slot.Seatpost, "27.2 as it is", p => p.Diameter, d => d.FitKey == "27.2");
        Assert.Equal(49.90m, BuildChooser.Of(request with { Wishes = request.Wishes.Add(bare) }).Cheapest().Best!.Price.Amount);

        // Without a price for the thin shim it is 25.4; where a bridge may go without one, 31.50 and no less.
        ChoiceRequest unpriced = request with { Bridges = [request.Bridges[1]] };
        Assert.Equal(46.00m, BuildChooser.Of(unpriced).Cheapest().Best!.Price.Amount);
        ChosenBuild atLeast = BuildChooser.Of(unpriced with { AllowsUnpricedBridges = true }).Cheapest().Best!;
        Assert.Equal((31.50m, true), (atLeast.Price.Amount, atLeast.IsAtLeast));
    }

    [Fact]
    public void A_rider_above_the_limit_of_the_post_is_never_left_off_to_make_it_fit()
    {
        ChoiceRequest request = Finish([Post("27.2", 49.90m)]);
        Assert.Equal(ChoiceStatus.Optimal, BuildChooser.Of(request).Cheapest().Status);

        ChoiceRequest heavy = request with { Build = request.Build.With(Rider.Read("116 kg")) };
        Assert.Equal(ChoiceStatus.Impossible, BuildChooser.Of(heavy).Cheapest().Status);
        Assert.Equal(ChoiceStatus.Impossible, BuildChooser.Of(heavy with { AllowsMeasuring = true }).Cheapest().Status);

        // Nor is he where the post is swapped, whether a wish keeps him or none.
        Assert.Equal(ChoiceStatus.Impossible, BuildChooser.Of(heavy).Changes(Slot.Seatpost, request.Offers[0].Part).Status);
        Assert.Equal(ChoiceStatus.Impossible, BuildChooser.Of(heavy with { Wishes = [] }).Changes(Slot.Seatpost, request.Offers[0].Part).Status);

        ChoiceRequest offered = request with { Offers = request.Offers.Add(Offer("a lighter rider", Slot.Rider, Rider.Read("80 kg"), 1m)) };
        Assert.Throws<ArgumentException>(() => BuildChooser.Of(offered).Cheapest());
    }

    [Fact]
    public void A_wheel_and_its_rotor_are_chosen_together_with_end_caps_or_a_carrier()
    {
        ChoiceRequest request = Finish(
            [
                Offer("wheel 142 six", Slot.RearWheel, Wheel.Read($"hub R142-12; six-bolt; {WheelRest}"), 260m),
                Offer("wheel 135 six", Slot.RearWheel, Wheel.Read($"hub R135-QR; six-bolt; {WheelRest}"), 180m),
                Offer("wheel 142 lock", Slot.RearWheel, Wheel.Read($"hub R142-12; center-lock; {WheelRest}"), 190m),
                Offer("rotor six", Slot.RearRotor, Rotor.Read("160; six-bolt; lockring none; carrier none; thickness 1.8; least thickness 1.5; condition new"), 20m),
                Offer("rotor lock", Slot.RearRotor, Rotor.Read("160; center-lock; lockring internal; carrier none; thickness 1.8; least thickness 1.5; condition new"), 45m),
            ],
            ("hub-r135-qr-in-r142-12", 33m), ("six-bolt-rotor-on-center-lock", 28m), ("lockring-internal", 9m), ("carrier-with-lockring", 30m));

        // Center-lock wheel and rotor: 190 + 45 = 235. Center-lock wheel and six-bolt rotor on a carrier, which comes with its bolts and ring: 190 + 20 + 28 = 238. Six-bolt wheel of 142: 260 + 20 = 280.
        // 135 with end caps and the six-bolt rotor, 180 + 33 + 20 = 233, would be cheapest: but nobody sells this crank for a rear end of 135, so its chainline has to be measured.
        ChoiceResult result = BuildChooser.Of(request).CheapestFew(10);
        Assert.Equal([235m, 238m, 280m], result.Builds.Select(b => b.Price.Amount));
        Assert.Equal(["wheel 142 lock", "rotor lock"], result.Builds[0].ToBuy.Select(p => p.Id));
        Assert.Equal(["rear-rotor-on-hub"], result.Builds[1].Bridges.Select(b => b.Joint.Id));

        // A carrier of 24 is 234, and then cheapest; the cost sheet has it once too, and neither bolts nor a ring beside it.
        ChoiceRequest cheaper = request with { Bridges = [.. request.Bridges.Select(b => b.BridgeId == "six-bolt-rotor-on-center-lock" ? b with { Price = Euro(24m) } : b)] };
        ChosenBuild carried = BuildChooser.Of(cheaper).Cheapest().Best!;
        Assert.Equal((234m, "rotor six"), (carried.Price.Amount, carried.ToBuy.Single(p => p.Slot == Slot.RearRotor).Id));
        Assert.Equal(["rear-rotor-on-hub:six-bolt-rotor-on-center-lock"], CostSheet.Of(carried.Build).Lines.Select(l => l.Id).Where(i => i.Contains("rear", StringComparison.Ordinal) && (i.Contains("ring", StringComparison.Ordinal) || i.Contains("rotor-", StringComparison.Ordinal))));

        ChosenBuild measured = BuildChooser.Of(request with { AllowsMeasuring = true }).Cheapest().Best!;
        Assert.Equal((233m, Verdict.NeedsMeasuring), (measured.Price.Amount, measured.Report.Verdict));
        Assert.Equal(["hub-r135-qr-in-r142-12"], measured.Bridges.Select(b => b.Bridge.Id));
    }

    internal static Part Changed(Slot slot, params (string Field, string Text)[] fields)
    {
        Part part = Bench.WholeBicycle()[slot]!;
        foreach ((string field, string text) in fields)
        {
            Assert.True(PartForms.Of(slot).TrySet(part, field, text, new Evidence(EvidenceKind.Stated, text), out part, out _));
        }

        return part;
    }

    private static ChoiceOffer[] Drive() =>
    [
        Offer("11-28", Slot.Cassette, Changed(Slot.Cassette), 60m),
        Offer("11-34", Slot.Cassette, Changed(Slot.Cassette, ("largestSprocket", "34")), 40m),
        Offer("33 teeth", Slot.RearDerailleur, Changed(Slot.RearDerailleur), 50m),
        Offer("40 teeth", Slot.RearDerailleur, Changed(Slot.RearDerailleur, ("capacity", "40"), ("largestSprocket", "36")), 65m),
        Offer("108 pitches", Slot.Chain, Changed(Slot.Chain), 15m),
        Offer("112 pitches", Slot.Chain, Changed(Slot.Chain, ("pitches", "112")), 18m),
    ];

    [Fact]
    public void Capacity_and_chain_length_take_part_in_the_choice()
    {
        // Rings 46 and 34. 11-34 asks for (46 - 34) + (34 - 11) = 35 teeth of capacity: the cheaper derailleur has 33. The chain for it is 2 x 430 / 12.7 + (46 + 34) / 2 + 2, about 110 pitches.
        // 11-34, 40 teeth, 112 pitches: 40 + 65 + 18 = 123. 11-28 asks for 29 teeth and 107 pitches: 60 + 50 + 15 = 125. The cheapest of each, 40 + 50 + 15 = 105, does not work.
        ChosenBuild best = BuildChooser.Of(Finish(Drive())).Cheapest().Best!;
        Assert.Equal(123m, best.Price.Amount);
        Assert.Equal(["11-34", "112 pitches", "40 teeth"], best.ToBuy.Select(p => p.Id));
        Assert.Empty(best.Bridges);
        Assert.Equal(Verdict.Fits, best.Report.Verdict);

        // With the owned derailleur, at no price: 60 + 0 + 15 = 75 against 40 + 65 + 18 = 123.
        ChoiceRequest owned = Finish(Drive());
        Build with = owned.Build.With(Bench.WholeBicycle()[Slot.RearDerailleur]!);
        ChosenBuild kept = BuildChooser.Of(owned with { Build = with }).Cheapest().Best!;
        Assert.Equal(75m, kept.Price.Amount);
        Assert.Equal(["11-28", "108 pitches"], kept.ToBuy.Select(p => p.Id));
    }

    [Fact]
    public void A_wider_cassette_asks_for_another_derailleur_and_a_longer_chain()
    {
        ChoiceRequest request = new() { Build = Bench.WholeBicycle(), Offers = [.. Drive()] };
        ChangePlan plan = BuildChooser.Of(request).Changes(Slot.Cassette, Changed(Slot.Cassette, ("largestSprocket", "34")));
        Assert.Equal((ChoiceStatus.Optimal, 2, 83m), (plan.Status, plan.Fewest, plan.Price!.Value.Amount));
        Assert.Equal([Slot.Chain, Slot.RearDerailleur], plan.Changes.Select(c => c.Slot));
        Assert.Equal(Verdict.Fits, plan.Build!.Check().Verdict);

        ChangePlan none = BuildChooser.Of(request).Changes(Slot.Cassette, Changed(Slot.Cassette, ("largestSprocket", "26")));
        Assert.Equal((0, "Nothing else has to change."), (none.Fewest, none.ToString()));

        // Nothing on offer goes over 12 speeds of another body.
        ChangePlan impossible = BuildChooser.Of(request with { Offers = [] }).Changes(Slot.Cassette, Cassette.Read("pattern XD; smallestSprocket 10; largestSprocket 42"));
        Assert.Equal(ChoiceStatus.Impossible, impossible.Status);
    }

    [Fact]
    public void What_cannot_be_met_is_said_by_its_joints_and_the_part_that_comes_nearest()
    {
        ChoiceRequest request = Finish([Post("30.9", 5.00m), Post("31.6", 6.00m)]);
        Assert.Equal(ChoiceStatus.Impossible, BuildChooser.Of(request).Cheapest().Status);
        ChoiceConflict conflict = BuildChooser.Of(request).Conflict()!;
        Assert.True(conflict.IsSmallest);
        Assert.Equal(["seatpost-in-seat-tube"], conflict.Joints.Select(j => j.Id));
        Assert.Equal([Slot.Seatpost], conflict.Required);
        Assert.Equal("post 30.9", conflict.Remedies.Single().Nearest!.Id);
        Assert.Contains("27.2", conflict.Remedies.Single().Need!.ToString(), StringComparison.Ordinal);

        // A post that fits and has no price: it is named.
        ChoiceOffer free = new("post without price", Slot.Seatpost, Seatpost.Read($"27.2 {PostRest}"));
        ChoiceConflict priceless = BuildChooser.Of(request with { Offers = request.Offers.Add(free) }).Conflict()!;
        Assert.Equal("post without price", priceless.Remedies[0].Nearest!.Id);
        Assert.Empty(priceless.Remedies[0].Fails);
        Assert.Equal([free], priceless.LeftOut);

        // A wish is a reason too.
        ChoiceRequest wished = Finish([Post("27.2", 5.00m)]) with { Wishes = [ChoiceWish.AtLeast<Seatpost>(Slot.Seatpost, "a mark of 100 mm", p => p.Mark, UnitsNet.Length.FromMillimeters(100))] };
        ChoiceConflict unmet = BuildChooser.Of(wished).Conflict()!;
        Assert.Equal((0, "a mark of 100 mm"), (unmet.Joints.Length, unmet.Wishes.Single().Name));
        Assert.Equal("a mark of 100 mm", unmet.Remedies.Single().Unmet.Single().Name);
    }

    [Fact]
    public void A_wheel_of_which_something_is_outside_the_library_is_not_said_to_fit()
    {
        ChoiceRequest request = Finish([Offer("own washers", Slot.FrontWheel, Changed(Slot.FrontWheel, ("sprocketChainline", "proprietary")), 60m), Offer("wide wheel", Slot.FrontWheel, Changed(Slot.FrontWheel, ("hub", "F110-15B"), ("ends", "fixed"), ("rotorFixing", "center-lock")), 50m)]);
        ChoiceConflict conflict = BuildChooser.Of(request).Conflict()!;
        ChoiceRemedy wheel = conflict.Remedies.Single(m => m.Slot == Slot.FrontWheel);
        Assert.Equal(("own washers", true), (wheel.Nearest!.Id, wheel.IsOutside));
        Assert.DoesNotContain("would fit", conflict.ToString(), StringComparison.Ordinal);
        Assert.Equal(["own washers"], conflict.LeftOut.Select(o => o.Id));
    }

    [Fact]
    public void Two_of_one_bridge_are_paid_for_twice()
    {
        Part six = Rotor.Read("160; six-bolt; lockring none; carrier none; thickness 1.8; least thickness 1.5; condition new");
        ChoiceRequest request = Finish(
            [
                Offer("front wheel", Slot.FrontWheel, Changed(Slot.FrontWheel, ("rotorFixing", "center-lock")), 150m), Offer("rear wheel", Slot.RearWheel, Changed(Slot.RearWheel, ("rotorFixing", "center-lock")), 190m),
                Offer("front rotor", Slot.FrontRotor, six, 20m), Offer("rear rotor", Slot.RearRotor, six, 20m),
            ],
            ("six-bolt-rotor-on-center-lock", 28m));

        // 150 + 190 + 20 + 20 and two carriers: 380 + 2 x 28 = 436.
        ChosenBuild best = BuildChooser.Of(request).Cheapest().Best!;
        Assert.Equal(436m, best.Price.Amount);
        Assert.Equal(["front-rotor-on-hub", "rear-rotor-on-hub"], best.Bridges.Select(b => b.Joint.Id));

        // One of them is there already.
        Assert.Equal(408m, BuildChooser.Of(request with { Build = request.Build.WithSmallPart("rear-rotor-on-hub:six-bolt-rotor-on-center-lock") }).Cheapest().Best!.Price.Amount);
    }

    [Fact]
    public void What_another_wheel_would_lack_is_said_with_it()
    {
        // The hub of the fork asks for 100-12. The wheel that goes in has no rotor mount and asks for a rim brake, which nobody offers.
        Build build = Bench.WholeBicycle().Without(Slot.FrontWheel).Without(Slot.FrontRimBrake);
        ChoiceRequest request = new()
        {
            Build = build,
            Offers = [Offer("rim wheel", Slot.FrontWheel, Changed(Slot.FrontWheel, ("rotorFixing", "none")), 60m), Offer("wide wheel", Slot.FrontWheel, Changed(Slot.FrontWheel, ("hub", "F110-15B"), ("ends", "fixed")), 50m)],
            Wishes = [.. Slot.All.Where(s => s != Slot.Frame && build[s] is not null && s != Slot.FrontRotor && s != Slot.FrontCaliper).Select(ChoiceWish.Keep)],
        };
        ChoiceConflict conflict = BuildChooser.Of(request).Conflict()!;
        ChoiceRemedy wheel = conflict.Remedies.Single(m => m.Slot == Slot.FrontWheel);
        Assert.DoesNotContain("would fit", wheel.ToString(), StringComparison.Ordinal);
        Assert.Equal(("wide wheel", 1), (wheel.Nearest!.Id, wheel.Fails.Length));

        // The rotor has no place on the other one and is left off; the disc brake that stays asks for it.
        ChoiceRemedy alone = BuildChooser.Of(request with { Offers = [request.Offers[0]] }).Conflict()!.Remedies.Single(m => m.Slot == Slot.FrontWheel);
        Assert.Equal("rim wheel", alone.Nearest!.Id);
        Assert.Equal([Slot.FrontRotor], alone.Lacks);
    }
}
