using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>What of an old bicycle goes onto a new frame.</summary>
public sealed class CarryOverTests
{
    private static Build Donor(params (Slot Slot, Part Part)[] parts) =>
        parts.Aggregate(Build.From(Frame.Read("material steel; seat tube 26.8; rear 135 QR"), "the old one"), (b, p) => b.With(p.Part, p.Slot));

    private static CarriedPart Only(Build donor, string frame) => CarryOver.Of(donor, Deep(frame)).Parts.Single();

    /// <summary>A frame that takes every post deep enough.</summary>
    private static Frame Deep(string frame) => Frame.Read(frame + "; leastInsertion 70; mostInsertion 250");

    [Theory]
    [InlineData("26.8; mark 75; insertion 110", "seat tube 26.8", Verdict.Fits, CarryDecision.Moves)]
    [InlineData("26.8; mark 75; insertion 110", "seat tube 27.2", Verdict.NeedsPart, CarryDecision.Moves)]
    [InlineData("26.8; mark 75; insertion 110", "seat tube unknown", Verdict.NeedsMeasuring, CarryDecision.Moves)]
    [InlineData("27.2; mark 75; insertion 110", "seat tube 26.8", Verdict.DoesNotFit, CarryDecision.Stays)]
    [InlineData("26.8; mark 75; insertion 110; condition worn", "seat tube 26.8", Verdict.Unsafe, CarryDecision.Stays)]
    [InlineData("26.8; mark 75; insertion 110; condition used", "seat tube 26.8", Verdict.NeedsMeasuring, CarryDecision.Moves)]
    [InlineData("26.8; mark 75; insertion 110; condition inspected", "seat tube 26.8", Verdict.Fits, CarryDecision.Moves)]
    [InlineData("26.8; mark 75; insertion 110; condition crashed; material aluminium", "seat tube 26.8", Verdict.Unsafe, CarryDecision.Stays)]
    public void A_part_has_one_of_five_classes(string post, string frame, Verdict verdict, CarryDecision plan)
    {
        CarriedPart part = Only(Donor((Slot.Seatpost, Seatpost.Read(post))), frame);
        Assert.Equal((verdict, plan), (part.Verdict, part.Plan));

        // A post throws its rider when it breaks: where nothing is stated of its condition it is looked over first.
        Assert.Equal(plan == CarryDecision.Moves && verdict <= Verdict.NeedsPart && post.Contains("condition", StringComparison.Ordinal), part.IsWorthMoving);
        Assert.Equal(verdict == Verdict.NeedsMeasuring, !part.Measurements.IsEmpty);
        Assert.Equal(verdict == Verdict.NeedsPart, !part.Bridges.IsEmpty);
    }

    [Fact]
    public void A_bridge_comes_with_its_class_of_price_and_the_joint_that_asks_for_it()
    {
        CarriedPart post = Only(Donor((Slot.Seatpost, Seatpost.Read("26.8; mark 75; insertion 110"))), "seat tube 27.2");
        CarriedBridge shim = Assert.Single(post.Bridges);
        Assert.Equal(("seatpost-in-seat-tube", "seatpost-shim-26.8-to-27.2", CostClass.Cheap), (shim.Joint.Id, shim.Remedy.Bridge!.Id, shim.Class));
        Assert.Equal(CostClass.Cheap, post.BridgeClass);
        Assert.Contains("(cheap)", post.ToString(), StringComparison.Ordinal);
        CarriedPart wheel = Only(Donor((Slot.RearWheel, Wheel.Read("rear 135 QR; ends swappable; body HG-M"))), "rear 12x142; material steel");
        Assert.Equal((Verdict.NeedsPart, CostClass.Moderate), (wheel.Verdict, wheel.BridgeClass));
        CarriedPart spread = Only(Donor((Slot.RearWheel, Wheel.Read("rear 135 QR; body HG-M"))), "rear 130; material steel");
        Assert.Equal((Verdict.NeedsPart, CostClass.Dear), (spread.Verdict, spread.BridgeClass));
        Assert.Equal([false, false, true], [post.IsDear, wheel.IsDear, spread.IsDear]);
    }

    [Fact]
    public void What_is_refused_says_why_and_what_is_unsafe_brings_its_caution()
    {
        CarriedPart thick = Only(Donor((Slot.Seatpost, Seatpost.Read("27.2; mark 75; insertion 110"))), "seat tube 26.8");
        Assert.Contains("does not fit", thick.ToString(), StringComparison.Ordinal);
        Assert.Equal("seatpost-in-seat-tube", thick.Why.Joint!.Id);
        CarriedPart recalled = Only(Donor((Slot.Pedals, Pedals.Read("9/16; condition recalled"))), "material steel");
        Assert.Equal(Verdict.Unsafe, recalled.Verdict);
        Assert.Contains(recalled.Cautions, c => c.Id == "recall");
        Assert.Contains("called back", recalled.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_measurement_says_where_and_with_what()
    {
        CarriedPart post = Only(Donor((Slot.Seatpost, Seatpost.Read("26.8; mark 75; insertion 110"))), "material steel");
        Measurement bore = post.Measurements.Single(m => m.Field == "seatTube");
        Assert.Equal(Slot.Frame, bore.Slot);
        Assert.True(bore.How.Length > 20);
    }

    [Fact]
    public void Parts_that_meet_each_other_and_not_the_frame_are_judged_with_what_moves_along()
    {
        Build donor = Donor((Slot.RearWheel, Wheel.Read("rear 12x142; body HG-L")), (Slot.Cassette, Cassette.Read("9-speed HG")));
        CarryOver moved = CarryOver.Of(donor, Frame.Read("rear 12x142"));
        CarriedPart cassette = moved.Parts.Single(p => p.From == Slot.Cassette);
        Assert.Equal((Verdict.NeedsPart, Verdict.NotJudged), (cassette.Verdict, cassette.WithFrame));
        Assert.Equal("cassette-hg-9-on-hg-l", Assert.Single(cassette.Bridges).Remedy.Bridge!.Id);
        Assert.Contains(Slot.RearWheel, cassette.Together);

        // The wheel stays behind: nothing is there to judge the cassette by, and that is no fit.
        CarryOver left = CarryOver.Of(donor, Frame.Read("rear 12x157"));
        cassette = left.Parts.Single(p => p.From == Slot.Cassette);
        Assert.Equal((Verdict.NotJudged, false), (cassette.Verdict, cassette.IsWorthMoving));
        Assert.Contains(Slot.RearWheel, cassette.Follows);
        Assert.Equal(CarryDecision.Stays, left.Parts.Single(p => p.From == Slot.RearWheel).Plan);

        // And with a wheel that is there it is judged by that one.
        CarryOver there = CarryOver.Of(donor, Build.From(Frame.Read("rear 12x157")).With(Wheel.Read("rear 12x148; body XD"), Slot.RearWheel));
        Assert.Equal(Verdict.DoesNotFit, there.Parts.Single(p => p.From == Slot.Cassette).Verdict);
    }

    [Fact]
    public void Of_two_that_clash_the_earlier_one_moves()
    {
        Build donor = Donor((Slot.FrontCaliper, Caliper.Read("post; type hydraulic disc; fluid mineral oil")), (Slot.FrontBrakeLever, BrakeLever.Read("pull none; fluid glycol-ether")));
        CarryOver over = CarryOver.Of(donor, Frame.Read("material steel; rear brake PM-160"));
        Assert.Equal(CarryDecision.Moves, over.Parts.Single(p => p.From == Slot.FrontCaliper).Plan);
        CarriedPart lever = over.Parts.Single(p => p.From == Slot.FrontBrakeLever);
        Assert.Equal((Verdict.Unsafe, CarryDecision.Stays), (lever.Verdict, lever.Plan));
        Assert.Equal("front-lever-fluid-with-caliper", lever.Why.Joint!.Id);
    }

    [Fact]
    public void What_is_there_is_kept_and_what_is_not_asked_for_stays()
    {
        Build donor = Donor((Slot.Seatpost, Seatpost.Read("27.2; mark 75; insertion 110")), (Slot.RearRimBrake, RimBrake.Read("linear-pull")));
        CarryOver over = CarryOver.Of(donor, Build.From(Deep("seat tube 27.2; rear brake PM-160")).With(Seatpost.Read("27.2 x 400")));
        Assert.Equal([CarryDecision.Spare, CarryDecision.NotAsked], over.Parts.Select(p => p.Plan));
        Assert.Equal("27.2", PartForms.Of(Slot.Seatpost).TextOf(over.Moved[Slot.Seatpost]!, "diameter"));
        Assert.Same(over.Onto[Slot.Seatpost], over.Moved[Slot.Seatpost]);
        Assert.Null(over.Moved[Slot.RearRimBrake]);
    }

    [Fact]
    public void A_part_goes_to_another_place_only_where_it_fits_there_and_the_place_is_empty()
    {
        Build donor = Donor((Slot.RearTyre, Tyre.Read("45-622")));
        Build bare = Build.From(Frame.Read("largest tyre 35-622")).With(Fork.Read("largest tyre 47-622; travel none"));
        CarriedPart tyre = CarryOver.Of(donor, bare).Parts.Single();
        Assert.Equal((Slot.RearTyre, Slot.FrontTyre, Verdict.Fits, CarryDecision.Moves), (tyre.From, tyre.Slot, tyre.Verdict, tyre.Plan));
        Assert.Equal([Slot.RearTyre, Slot.FrontTyre], tyre.Places.Select(p => p.Slot));
        Assert.True(tyre.Places[0].Verdict > Verdict.NeedsMeasuring);
        Assert.Contains("rear tyre as front tyre: fits", tyre.ToString(), StringComparison.Ordinal);
        tyre = CarryOver.Of(donor, bare.With(Tyre.Read("40-622"), Slot.FrontTyre)).Parts.Single();
        Assert.Equal((Slot.RearTyre, CarryDecision.Stays), (tyre.Slot, tyre.Plan));

        // Whether it fits at the front is not known here, so it does not change places.
        tyre = CarryOver.Of(donor, Build.From(Frame.Read("largest tyre 35-622"))).Parts.Single();
        Assert.Equal(CarryDecision.Stays, tyre.Plan);
    }

    [Fact]
    public void A_shifter_waits_for_the_derailleur_that_comes_after_it()
    {
        Build donor = Donor((Slot.FrontShifter, Shifter.Read("cable; with derailleur allowed")), (Slot.FrontDerailleur, FrontDerailleur.Read("28.6; cable")));
        CarryOver over = CarryOver.Of(donor, Frame.Read("front mount 28.6"));
        Assert.All(over.Parts, p => Assert.Equal(CarryDecision.Moves, p.Plan));
        over = CarryOver.Of(donor, Frame.Read("front mount none"));
        Assert.All(over.Parts, p => Assert.Equal(CarryDecision.Stays, p.Plan));
    }

    [Fact]
    public void A_dropper_goes_with_its_seatpost_alone()
    {
        Build donor = Donor((Slot.Seatpost, Seatpost.Read("31.6; mark 75; insertion 110")), (Slot.Dropper, Dropper.Read("internal")));
        Assert.All(CarryOver.Of(donor, Deep("seat tube 31.6; dropper entry hole")).Parts, p => Assert.Equal(CarryDecision.Moves, p.Plan));
        Assert.All(CarryOver.Of(donor, Deep("seat tube 27.2; dropper entry hole")).Parts, p => Assert.Equal(CarryDecision.Stays, p.Plan));

        // The post would fit a frame without a way in for the cable, but it is a dropper: both stay.
        CarryOver closed = CarryOver.Of(donor, Deep("seat tube 31.6; dropper entry no-hole"));
        Assert.All(closed.Parts, p => Assert.Equal((CarryDecision.Stays, Verdict.DoesNotFit, "dropper-routing-in-frame"), (p.Plan, p.Verdict, p.Why.Joint!.Id)));
        Assert.True(closed.DonorLeft[Slot.Seatpost] is not null && closed.DonorLeft[Slot.Dropper] is not null);

        // A post of the same words that is there is another post.
        CarryOver there = CarryOver.Of(donor, Build.From(Deep("seat tube 31.6; dropper entry hole")).With(Seatpost.Read("31.6; mark 75; insertion 110")));
        Assert.All(there.Parts, p => Assert.Equal(CarryDecision.Spare, p.Plan));
        Assert.Null(there.Moved[Slot.Dropper]);
    }

    [Fact]
    public void Controls_go_with_their_levers_and_shifters()
    {
        Build donor = Donor((Slot.FrontBrakeLever, BrakeLever.Read("pull long; fluid none; condition new")), (Slot.RearBrakeLever, BrakeLever.Read("pull long; fluid none; condition new")), (Slot.Controls, Controls.Read("flat-bar control")));
        CarryOver flat = CarryOver.Of(donor, Build.From(Frame.Read("steel")).With(Handlebar.Read("31.8; grip 22.2")));
        Assert.All(flat.Parts, p => Assert.Equal(CarryDecision.Moves, p.Plan));

        // On a drop bar the clamps do not fit, and the levers are those clamps.
        CarryOver drop = CarryOver.Of(donor, Build.From(Frame.Read("steel")).With(Handlebar.Read("31.8; grip 23.8")));
        Assert.All(drop.Parts, p => Assert.Equal((CarryDecision.Stays, true), (p.Plan, p.Verdict > Verdict.NeedsMeasuring)));
    }

    [Fact]
    public void Limits_are_judged_under_the_rider_of_the_donor_where_no_other_is_named()
    {
        Build donor = Donor((Slot.Seatpost, Seatpost.Read("26.8; mark 75; insertion 110; rider limit 100 kg; condition new")), (Slot.Rider, Rider.Read("105 kg")));
        CarryOver heavy = CarryOver.Of(donor, Deep("seat tube 26.8"));
        Assert.Equal((CarryDecision.Stays, true), (heavy.Parts.Single().Plan, heavy.Parts.Single().Verdict > Verdict.NeedsMeasuring));
        Assert.NotNull(heavy.Moved[Slot.Rider]);
        CarryOver light = CarryOver.Of(donor, Build.From(Deep("seat tube 26.8")).With(Rider.Read("60 kg")));
        Assert.Equal(CarryDecision.Moves, light.Parts.Single().Plan);
    }

    [Fact]
    public void A_shim_that_is_there_moves_with_its_post()
    {
        const string Shim = "seatpost-in-seat-tube:seatpost-shim-26.8-to-27.2";
        Build donor = Donor((Slot.Seatpost, Seatpost.Read("26.8; mark 75; insertion 110; condition new"))).WithSmallPart(Shim).WithSmallPart("rear-rotor-bolts");
        CarryOver over = CarryOver.Of(donor, Deep("seat tube 27.2"));
        Assert.Equal([Shim], over.Moved.SmallPartsThere);
        Assert.DoesNotContain(over.SmallParts, p => p.Id == Shim);
        Assert.Equal(["rear-rotor-bolts"], over.DonorLeft.SmallPartsThere);
        Assert.Empty(CarryOver.Of(donor, Deep("seat tube 26.8")).Moved.SmallPartsThere);
    }

    [Fact]
    public void What_waits_for_a_part_that_went_elsewhere_is_tried_again()
    {
        Build donor = Donor((Slot.RearTyre, Tyre.Read("45-622; folding; clincher; condition new")), (Slot.FrontInnerTube, InnerTube.Read("622; other seat none; tyres from 40; tyres to 50; Presta; valve length 48")));
        CarryOver over = CarryOver.Of(donor, Build.From(Frame.Read("largest tyre 35-622")).With(Fork.Read("largest tyre 47-622; travel none")));
        Assert.Equal([Slot.FrontTyre, Slot.FrontInnerTube], over.Parts.Where(p => p.Plan == CarryDecision.Moves).Select(p => p.Slot));
    }

    [Fact]
    public void The_age_of_a_safety_part_of_which_nothing_is_stated_is_asked_for()
    {
        Build donor = Donor((Slot.Seatpost, Seatpost.Read("26.8; mark 75; insertion 110")), (Slot.Chain, Chain.Read("9")), (Slot.Saddle, Saddle.Read("7-round; condition new")), (Slot.Pedals, Pedals.Read("9/16; condition not-known")));
        CarryOver over = CarryOver.Of(donor, Deep("seat tube 26.8"));
        Assert.Equal([Slot.Seatpost, Slot.Pedals], over.Parts.Where(p => p.Inspection is not null).Select(p => p.From));
        Assert.Contains("age and condition not stated, look it over first", over.Parts.Single(p => p.From == Slot.Seatpost).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_donor_says_what_it_lacks_and_which_joints_open()
    {
        Build donor = Donor((Slot.Seatpost, Seatpost.Read("26.8; mark 75; insertion 110; rails 7-round")), (Slot.Saddle, Saddle.Read("7-round")), (Slot.RearWheel, Wheel.Read("rear 135 QR")));
        CarryOver over = CarryOver.Of(donor, Deep("seat tube 26.8; rear 12x157"));
        Assert.Null(over.DonorLeft[Slot.Seatpost]);
        Assert.NotNull(over.DonorLeft[Slot.RearWheel]);
        Assert.Equal(["seatpost-in-seat-tube", "saddle-on-seatpost"], over.DonorOpens.Select(j => j.Id).Where(i => i is "seatpost-in-seat-tube" or "saddle-on-seatpost" or "rear-wheel-in-frame"));
        Need post = over.DonorLacks.Single(n => n.Slot == Slot.Seatpost);
        Assert.Contains("26.8", post.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(over.DonorLacks, n => n.Slot == Slot.RearWheel);
        Assert.Contains("The donor then lacks: ", over.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_to_be_bought_knows_the_parts_that_moved()
    {
        Build donor = Donor((Slot.RearWheel, Wheel.Read("rear 12x142; body XD")), (Slot.Seatpost, Seatpost.Read("26.8; mark 75; insertion 110")));
        CarryOver over = CarryOver.Of(donor, Deep("rear 12x142; rear axle thread M12x1.5; seat tube unknown"));
        Assert.DoesNotContain(over.ToBuy, n => n.Slot == Slot.RearWheel || n.Slot == Slot.Seatpost);
        Assert.Contains("XD", over.ToBuy.Single(n => n.Slot == Slot.Cassette).ToString(), StringComparison.Ordinal);
        Assert.Contains(over.ToBuyUnlessMeasured, n => n.Slot == Slot.Seatpost);
        Assert.DoesNotContain(over.SmallParts, p => p.Slot == Slot.RearThruAxle);
        Assert.Contains(over.ToBuy, n => n.Slot == Slot.RearThruAxle);
    }

    [Fact]
    public void Nothing_moves_from_a_bare_frame_and_a_rider_is_no_part()
    {
        Assert.Empty(CarryOver.Of(Donor(), Frame.Read("steel")).Parts);
        Assert.Empty(CarryOver.Of(Donor((Slot.Rider, Rider.Read("82 kg"))), Frame.Read("steel")).Parts);
        using CancellationTokenSource cancelled = new();
        cancelled.Cancel();
        Assert.Throws<OperationCanceledException>(() => CarryOver.Of(Donor(), Build.From(Frame.Read("steel")), cancelled.Token));
    }

    [Fact]
    public void Every_bridge_has_a_class_and_the_table_names_its_basis()
    {
        Bridge[] bridges = [.. JointTable.All.SelectMany(j => j.Relation.Bridges).Distinct()];
        Assert.All(bridges, b => Assert.NotEqual(CostClass.NotSaid, CostClassTable.Of(b)));
        Assert.All(bridges.Where(b => b.Kind == BridgeKind.ShopWork), b => Assert.Equal(CostClass.Dear, CostClassTable.Of(b)));
        Assert.All(CostClassRows.Own, row => Assert.Contains(bridges, b => b.Id.StartsWith(row.Start, StringComparison.Ordinal)));
        Assert.Equal(bridges.Where(b => b.Kind != BridgeKind.MadeForBoth), CostClassTable.Bridges);
        Assert.Equal(SourceKind.CommonPractice, CostClassTable.Basis.Kind);
    }

    [Fact]
    public void A_joint_of_one_part_has_no_pairs() => Assert.All(JointTable.All.Where(j => j.Inputs.Length == 1), j => Assert.Empty(JointPairs.Of(j)));

    [Fact]
    public void The_text_says_the_first_things_that_are_asked_of_what_is_to_be_bought()
    {
        string text = CarryOver.Of(Donor(), Deep("seat tube 27.2; shell BSA 68")).ToString();
        Assert.Contains("  seatpost: seatpost diameter 27.2, with a shim or adapter ", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), l => Assert.True(l.Length < 600, l));
    }
}
