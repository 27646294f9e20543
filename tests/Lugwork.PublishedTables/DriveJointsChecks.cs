using Lugwork.BottomBrackets;
using Lugwork.Drivetrain;
using Lugwork.Suspension;

namespace Lugwork.PublishedTables;

/// <summary>Shifting, rings, front derailleurs, guides, screwed sprockets, pedals and fork limits, each joint on cases of a page.</summary>
public sealed class DriveJointsChecks
{
    private const string Freewheels = "Traditional Thread-on Freewheels; sheldonbrown.com";
    private const string Lockring = "Fixed gear without lockring; movimentofisso.it";
    private const string Tall = "Specifications changed without notice (shallower first-position sprocket); pedaldamnit.blogspot.com";
    private const string Circles = "Bicycle Crank/Chainring Bolt Circle Diameter Crib Sheet; sheldonbrown.com";
    private const string CrankPage = "Cranks (BCD and smallest ring); Rivendell";
    private const string Patterns = "Understanding Chainring Bolt-hole Patterns; sheldonbrown.com";
    private const string Offset = "Chainring sizing (110 offset-hole warning); dotbike blog";
    private const string Decoder = "Chainring decoder; trbike.blogspot.com";
    private const string Hulk = "Derailleurs (direct-mount hole spacing); Hulk Bike";
    private const string Front = "Front Derailleurs; Rivendell";
    private const string Cranks = "[Standards] Road and Gravel Drivetrains - Cranks and BB's; customframeforum.com";
    private const string Pull = "10 vs 11 speed cassette; hastiny.blogg.se";
    private const string Thick = "Podcast on Linkglide and CUES (transcript copy); Pinkbike podcast";
    private const string Crib = "New Shifters, and Nine Over Eight Gearing? (quotes the sprocket crib sheet); 2nd-gear.blogspot.com";
    private const string Guide = "Double chain-guide fitting on an external-cup crank; rideitfixit.blogspot.com";
    private const string Tabs = "ISCG glossary entry; jitetan.com";
    private const string Pedal = "Attachment of the pedals to the cranks; defietssite.nl";
    private const string Fork = "Suspension travel: understanding fork length; Bike Perfect";

    [Theory]
    [InlineData("ISO", "ISO", Verdict.Fits, Freewheels)]
    [InlineData("ISO", "British", Verdict.Fits, Freewheels)]
    [InlineData("Italian", "ISO", Verdict.Fits, Freewheels)]
    [InlineData("French", "ISO", Verdict.Unsafe, Freewheels)]
    [InlineData("ISO", "French", Verdict.DoesNotFit, Freewheels)]
    [InlineData("ISO", "BMX", Verdict.DoesNotFit, Freewheels)]
    public void A_freewheel_on_a_hub_thread(string hub, string freewheel, Verdict expected, string source) =>
        Published.Says(Screwed("FW-thread", hub, "freewheel", freewheel, source), "freewheel-on-hub-thread", source, expected);

    [Fact]
    [PrintedIn(Lockring)]
    public void A_fixed_sprocket_needs_a_left_hand_lockring()
    {
        Published.Says(Screwed("FW-thread", "ISO", "fixed sprocket", "ISO", Lockring), "freewheel-on-hub-thread", Lockring, Verdict.Unsafe, "left-hand lockring");
        Published.Says(Screwed("fixed", "track", "fixed sprocket", "track", Lockring, "lockring lockring"), "freewheel-on-hub-thread", Lockring, Verdict.Fits);
        Published.Says(Screwed("fixed", "track", "fixed sprocket", "track", Lockring, "lockring none"), "freewheel-on-hub-thread", Lockring, Verdict.Unsafe, "left-hand lockring");
    }

    [Fact]
    [PrintedIn(Tall)]
    public void Tall_splines_of_another_maker_are_checked_with_a_thin_spacer() =>
        Published.Says(
            Build.From(new Frame()).With(Wheel.Read($"body {Published.Key<FreehubBody>("third-party HG", Tall)}"), Slot.RearWheel).With(Cassette.Read("9-speed HG")),
            "cassette-on-freehub-body", Tall, Verdict.NeedsMeasuring, "0.3 to 0.5 mm");

    [Theory]
    [InlineData("130", "130", "38", Verdict.Fits, Circles)]
    [InlineData("130", "130", "34", Verdict.DoesNotFit, Circles)]
    [InlineData("144", "144", "41", Verdict.Fits, Circles)]
    [InlineData("5x110", "5x110", "34", Verdict.Fits, CrankPage)]
    [InlineData("5x110", "5x110", "33", Verdict.NeedsMeasuring, CrankPage)]
    [InlineData("74", "74", "24", Verdict.Fits, CrankPage)]
    [InlineData("4-arm 110 uneven", "5x110", "42", Verdict.DoesNotFit, Patterns)]
    [InlineData("5x110 offset", "5x110", "42", Verdict.DoesNotFit, Offset)]
    public void A_ring_on_a_spider(string spider, string ring, string teeth, Verdict expected, string source) =>
        Published.Says(
            Build.From(new Frame()).With(Crankset.Read($"bolt circle {Published.Key<BoltCircle>(spider, source)}"))
                .With(Chainring.Read($"bolt circle {Published.Key<BoltCircle>(ring, source)}; teeth {Published.Key<ToothCount>(teeth, source)}")),
            "ring-on-spider", source, expected);

    [Fact]
    [PrintedIn(Decoder)]
    public void Three_bolts_and_eight_are_two_interfaces()
    {
        Published.Says(Build.From(new Frame()).With(Crankset.Read("direct mount 8-bolt")).With(Chainring.Read("direct mount 3-bolt")), "direct-mount-ring-on-arm", Decoder, Verdict.DoesNotFit);
        Published.Says(Build.From(new Frame()).With(Crankset.Read("direct mount 3-bolt")).With(Chainring.Read("direct mount 3-bolt")), "direct-mount-ring-on-arm", Decoder, Verdict.Fits);
    }

    [Theory]
    [InlineData("28.6", "28.6", Verdict.Fits, "", Front)]
    [InlineData("28.6", "31.8", Verdict.NeedsPart, "shim", Front)]
    [InlineData("31.8", "braze-on", Verdict.NeedsPart, "clamp for a tube of 31.8", Hulk)]
    [InlineData("34.9", "braze-on", Verdict.NeedsPart, "clamp for a tube of 34.9", Hulk)]
    [InlineData("S2", "S3", Verdict.DoesNotFit, "", Hulk)]
    [InlineData("S2", "S1", Verdict.DoesNotFit, "", Hulk)]
    [InlineData("31.8", "E-type", Verdict.NeedsMeasuring, "2.5 mm spacer", Hulk)]
    public void A_front_derailleur_on_a_frame(string frame, string derailleur, Verdict expected, string remedy, string source) =>
        Published.Says(
            Build.From(Frame.Read($"front derailleur {Published.Key<FrontDerailleurMount>(frame, source)}")).With(FrontDerailleur.Read($"mount {Published.Key<FrontDerailleurMount>(derailleur, source)}")),
            "front-derailleur-on-frame", source, expected, remedy);

    [Theory]
    [InlineData("gravel-2x", "road-2x", Verdict.DoesNotFit)]
    [InlineData("gravel-2x-wide", "road-45", Verdict.DoesNotFit)]
    [InlineData("gravel-2x", "gravel-2x", Verdict.Fits)]
    [PrintedIn(Cranks)]
    public void A_usual_cage_does_not_reach_a_wide_crank(string crank, string cage, Verdict expected) =>
        Published.Says(Build.From(new Frame()).With(Crankset.Read($"rings 11; chainline {crank}")).With(FrontDerailleur.Read($"speeds 11; chainline {cage}")), "front-derailleur-with-crank", Cranks, expected);

    [Theory]
    [InlineData("road 10", "off-road 10", Pull)]
    [InlineData("road 11", "off-road 11", Pull)]
    [InlineData("thick plates", "road 10", Thick)]
    public void Families_whose_published_figures_part_never_work_together_even_if_a_list_says_so(string shifter, string derailleur, string source) =>
        Published.Says(
            Build.From(new Frame()).With(Shifter.Read($"cable; pull {Published.Key<ActuationFamily>(shifter, source)}; with derailleur allowed"), Slot.RearShifter)
                .With(RearDerailleur.Read($"cable; pull {Published.Key<ActuationFamily>(derailleur, source)}")),
            "shifter-with-derailleur", source, Verdict.DoesNotFit);

    [Theory]
    [InlineData("9", "9-speed HG", Verdict.Fits, Crib)] // 4.34 mm
    [InlineData("9", "8-speed HG", Verdict.DoesNotFit, Crib)] // 4.34 against 4.8 mm
    [InlineData("LG-9", "9-speed HG", Verdict.DoesNotFit, Thick)]
    public void A_shifter_with_sprockets(string shifter, string cassette, Verdict expected, string source) =>
        Published.Says(
            Build.From(new Frame()).With(Shifter.Read($"spacing {Published.Key<SprocketSpacing>(shifter, source)}"), Slot.RearShifter).With(Cassette.Read(cassette)), "shifter-with-cassette", source, expected);

    [Theory]
    [InlineData("allowed", Verdict.Fits)]
    [InlineData("refused", Verdict.DoesNotFit)]
    [InlineData("none", Verdict.NeedsMeasuring)]
    [PrintedIn("common practice, no source")]
    public void The_word_of_the_maker_settles_what_no_figure_settles(string words, Verdict expected) =>
        Published.Says(
            Build.From(new Frame()).With(Shifter.Read($"wireless; with derailleur {Published.Key<MakersWord>(words, "common practice, no source")}"), Slot.RearShifter).With(RearDerailleur.Read("wireless")),
            "shifter-with-derailleur", "common practice, no source", expected);

    [Theory]
    [InlineData("none", Verdict.NeedsMeasuring)]
    [InlineData("2.5", Verdict.Fits)]
    [PrintedIn(Guide)]
    public void A_plate_under_the_cup_takes_the_place_of_a_spacer(string spacer, Verdict expected) =>
        Published.Says(Build.From(new Frame()).With(BottomBracket.Read($"drive spacer {spacer}")).With(ChainGuide.Read("BB-mount")), "guide-on-bottom-bracket", Guide, expected);

    [Theory]
    [InlineData("ISCG05", "ISCG", Verdict.DoesNotFit)]
    [InlineData("ISCG05", "ISCG05", Verdict.Fits)]
    [PrintedIn(Tabs)]
    public void A_guide_on_tabs(string tabs, string guide, Verdict expected) =>
        Published.Says(Build.From(Frame.Read($"guide tabs {Published.Key<ChainGuideMount>(tabs, Tabs)}")).With(ChainGuide.Read($"mount {Published.Key<ChainGuideMount>(guide, Tabs)}")), "guide-on-tabs", Tabs, expected);

    [Theory]
    [InlineData("left and right", Verdict.Fits)]
    [InlineData("two left ones", Verdict.Unsafe)]
    [InlineData("both right", Verdict.Unsafe)]
    [PrintedIn(Pedal)]
    public void A_pedal_on_the_wrong_side(string sides, Verdict expected) =>
        Published.Says(Build.From(new Frame()).With(Crankset.Read("pedals 9/16")).With(Pedals.Read($"9/16; sides {Published.Key<PedalSides>(sides, Pedal)}")), "pedals-in-cranks", Pedal, expected);

    [Theory]
    [InlineData("500", "520", Verdict.Unsafe)]
    [InlineData("500", "500", Verdict.Fits)]
    [PrintedIn(Fork)]
    public void A_fork_above_the_frames_limit(string longest, string fork, Verdict expected) =>
        Published.Says(Build.From(Frame.Read($"longest fork {longest}; most fork travel none")).With(Lugwork.Fork.Read($"axle to crown {fork}; travel 120")), "fork-length-within-limit", Fork, expected);

    [Fact]
    [PrintedIn("common practice, no source")]
    public void Two_crowns_go_on_a_frame_made_for_them_only()
    {
        string dual = Published.Key<CrownType>("double crown", "common practice, no source");
        Published.Says(Build.From(Frame.Read("fork crowns single")).With(Lugwork.Fork.Read($"crowns {dual}")), "fork-crowns-on-frame", "common practice, no source", Verdict.Unsafe);
    }

    [Fact]
    [PrintedIn("common practice, no source")]
    public void A_ring_of_more_teeth_than_the_frame_maker_allows_does_not_fit() =>
        Published.Says(Build.From(Frame.Read("largest ring 38")).With(Crankset.Read("largest ring 40")), "ring-against-chainstay", "common practice, no source", Verdict.DoesNotFit);

    private static Build Screwed(string body, string hub, string pattern, string thread, string source, string ring = "lockring unknown") => Build.From(new Frame())
        .With(Wheel.Read($"body {Published.Key<FreehubBody>(body, source)}; thread {Published.Key<FreewheelThread>(hub, source)}"), Slot.RearWheel)
        .With(Cassette.Read($"pattern {Published.Key<CassettePattern>(pattern, source)}; thread {Published.Key<FreewheelThread>(thread, source)}; {ring}"));
}
