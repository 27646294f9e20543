using Lugwork.BottomBrackets;
using Lugwork.Cockpit;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork.PublishedTables;

/// <summary>Tubes, valves and tapes, pieces of headset, cockpit and bottom bracket, binders and droppers against what is published of them.</summary>
public sealed class SmallerPartsChecks
{
    private const string Standard = "ISO 5775-1:2014 Tyre designations and dimensions (sample pages); iTeh / ISO";
    private const string Rims = "BS ISO 5775-2:2015 Bicycle tyres and rims, Part 2: Rims - scope and clause extract; ulstandardspdf.com extract of BSI text";
    private const string TubeSize = "Tyre sizes (451 tube in a 406 tyre); tadpolerider2.wordpress.com";
    private const string Wheelset = "Spoke and Wheel (wheelset data sheet copied); GitHub wiki stopcoder/BikeNotes";
    private const string Valves = "Presta valve (encyclopaedia-derived); thedailyomnivore.net";
    private const string Conversion = "Headset or steerer tube from straight to tapered conversion; highlandmist.blogspot.com";
    private const string Bearings = "How to measure sealed headset bearing sizes (copy of CyclingTips, Jul 2021); Zeno Cycle Parts";
    private const string Angles = "How to Measure Headset Bearings; Aire Velo Bearings";
    private const string Cables = "The definitive thread for 1-1/2 internal routing headsets; Chinertown forum";
    private const string Cutting = "Fork cutting and headset; allez-allez.net";
    private const string Quill = "Quill stem (in Japanese); jitetan.com bicycle glossary";
    private const string Levers = "Classic Rendezvous list, message on bar diameters; S. Brown, classicrendezvous list";
    private const string Bars = "Bar diameter; Seatpost diameter; standardbikes.ca";
    private const string CribSheet = "Bicycle Handlebar and Stem Dimensions (copy of the Sheldon Brown crib sheet); Love City Cycles";
    private const string TenSplines = "Spindle designation of the 10-spline standard; experts123 (copy of the standard's FAQ)";
    private const string Creak = "The ultimate creaky bottom bracket fix; BikeRadar";
    private const string Adapter = "One adapter for an in-shell bearing frame: a mistake; Chinertown forum";
    private const string Binder = "Seat post saga; ryansrebuilds.blogspot.com";
    private const string CarbonPost = "Technical FAQ: cracked carbon seatposts; VeloNews";
    private const string Practice = "common practice, no source";
    private const string Memory = "from memory";

    private static Build Bare => Build.From(Frame.Read("material steel"));

    [Theory]
    [InlineData("tubular", "clincher", Verdict.DoesNotFit, Standard)]
    [InlineData("clincher", "clincher", Verdict.Fits, Standard)]
    [InlineData("clincher", "tubular", Verdict.DoesNotFit, Practice)]
    [InlineData("tubular", "tubular", Verdict.Fits, Practice)]
    public void A_tubular_is_outside_the_sizes_of_the_standard(string tyre, string rim, Verdict expected, string source) =>
        Published.Says(Bare.With(Wheel.Read("hold " + Published.Key<TyreHold>(rim, source)), Slot.RearWheel).With(Tyre.Read("hold " + Published.Key<TyreHold>(tyre, source)), Slot.RearTyre), "rear-tubular-on-rim", source, expected);

    [Theory]
    [InlineData("451", "40-406", Verdict.DoesNotFit, TubeSize)]
    [InlineData("406", "40-406", Verdict.Fits, TubeSize)]
    public void A_tube_of_another_seat_is_too_long(string tube, string tyre, Verdict expected, string source) =>
        Published.Says(Bare.With(Tyre.Read(tyre), Slot.FrontTyre).With(InnerTube.Read($"{tube}; other seat none"), Slot.FrontInnerTube), "front-tube-in-tyre", source, expected);

    [Theory]
    [InlineData("28", "47", "37-622", Verdict.Fits, Practice)]
    [InlineData("18", "25", "37-622", Verdict.DoesNotFit, Practice)]
    public void A_tube_is_made_for_a_range_of_widths(string from, string to, string tyre, Verdict expected, string source) =>
        Published.Says(Bare.With(Tyre.Read(tyre), Slot.FrontTyre).With(InnerTube.Read($"tyres from {from}; tyres to {to}"), Slot.FrontInnerTube), "front-tube-width-in-tyre", source, expected);

    [Theory]
    [InlineData("8 mm stem", "Schrader", "6.5 mm", Verdict.DoesNotFit, "", Wheelset)]
    [InlineData("6 mm stem", "Presta", "6.5 mm", Verdict.Fits, "", Wheelset)]
    [InlineData("6 mm stem in the wide hole", "Presta", "8.5 mm", Verdict.NeedsPart, "collar", Memory)]
    [InlineData("the same hole as Schrader", "Dunlop", "8.5 mm", Verdict.Fits, "", Valves)]
    [InlineData("its own hole", "Schrader", "8.5 mm", Verdict.Fits, "", Valves)]
    public void A_valve_stands_in_a_hole_as_published(string row, string valve, string hole, Verdict expected, string remedy, string source)
    {
        Wheel wheel = Wheel.Read("valve hole " + Published.Key<ValveHole>(hole, source));
        string stem = Published.Key<ValveStem>(valve, source);
        Published.Says(Bare.With(wheel, Slot.RearWheel).With(InnerTube.Read("valve " + stem), Slot.RearInnerTube), "rear-tube-valve-through-rim", $"{row}, {source}", expected, remedy);
        Published.Says(Bare.With(wheel, Slot.FrontWheel).With(TubelessValve.Read("valve " + stem), Slot.FrontTubelessValve), "front-valve-through-rim", $"{row}, {source}", expected, remedy);
    }

    [Theory]
    [InlineData("40", "50", Verdict.DoesNotFit, "arithmetic on a stem shorter than the rim is deep")]
    [InlineData("60", "25", Verdict.Fits, Practice)]
    public void A_valve_reaches_through_the_rim(string length, string depth, Verdict expected, string source) =>
        Published.Says(Bare.With(Wheel.Read("rim depth " + depth), Slot.RearWheel).With(TubelessValve.Read("length " + length), Slot.RearTubelessValve), "rear-valve-length", source, expected);

    [Theory]
    [InlineData("covers every hole", "18", Verdict.Fits, Rims)]
    [InlineData("leaves an edge bare", "7", Verdict.DoesNotFit, Rims)]
    [InlineData("is missing", "none", Verdict.DoesNotFit, Rims)]
    public void A_rim_tape_covers_every_spoke_hole(string row, string tape, Verdict expected, string source) =>
        Published.Says(Bare.With(Wheel.Read("innerWidth 19; bedHole 8"), Slot.FrontWheel).With(RimTape.Read("width " + tape), Slot.FrontRimTape), "front-rim-tape-on-rim", $"{row}, {source}", expected);

    [Theory]
    [InlineData("12", "9", Verdict.DoesNotFit, Conversion)]
    [InlineData("9", "12", Verdict.Fits, Conversion)]
    public void A_cup_is_no_longer_than_its_bore(string skirt, string bore, Verdict expected, string source) =>
        Published.Says(Build.From(Frame.Read("lower bore depth " + bore)).With(Headset.Read("lower skirt " + skirt), Slot.Headset), "lower-cup-depth-in-head-tube", source, expected);

    [Theory]
    [InlineData("40x52x7 45/45", "40x52x6.5 36/45", Verdict.DoesNotFit, Bearings)]
    [InlineData("30.15x41x7 45/45", "30.15x41x6.5 36/45", Verdict.DoesNotFit, Angles)]
    [InlineData("30.15x41x6.5 36/45", "41x30.15x6.5 36x45", Verdict.Fits, Bearings)]
    public void A_bearing_is_replaced_by_one_of_all_its_sizes(string asked, string bearing, Verdict expected, string source) =>
        Published.Says(Bare.With(Headset.Read("upper bearing " + Published.Key<HeadsetBearing>(asked, source)), Slot.Headset).With(HeadsetCartridge.Read("size " + Published.Key<HeadsetBearing>(bearing, source)), Slot.UpperBearing), "upper-bearing-in-seat", source, expected);

    [Theory]
    [InlineData("internal", "through the headset", Verdict.NeedsMeasuring, Cables)]
    [InlineData("internal", "plain", Verdict.DoesNotFit, Cables)]
    public void Cover_and_spacers_of_cables_through_the_headset_are_one_system(string frame, string cover, Verdict expected, string source) =>
        Published.Says(Build.From(Frame.Read("headset cables " + Published.Key<CableWay>(frame, source))).With(HeadsetCover.Read("cables " + Published.Key<CableWay>(cover, source)), Slot.HeadsetCover), "headset-cover-system", source, expected);

    [Theory]
    [InlineData("carbon", "star nut", Verdict.Unsafe, "expander plug", Cutting)]
    [InlineData("carbon", "expander plug", Verdict.Fits, "", Cutting)]
    [InlineData("aluminium", "star nut", Verdict.Fits, "", Cutting)]
    public void A_carbon_steerer_takes_an_expander(string material, string preload, Verdict expected, string remedy, string source) =>
        Published.Says(Bare.With(Fork.Read($"steerer material {material}; threadless"), Slot.Fork).With(Preload.Read("kind " + Published.Key<SteererPreload>(preload, source)), Slot.Preload), "preload-in-steerer", source, expected, remedy);

    [Theory]
    [InlineData("22.2 quill; mark none; insertion 55.5", Verdict.Fits, Quill)]
    [InlineData("22.2 quill; mark none; insertion 55", Verdict.Unsafe, Quill)]
    [InlineData("25.4 quill; mark none; insertion 63.5", Verdict.Fits, Quill)]
    [InlineData("22.2 quill; mark 65; insertion 60", Verdict.Unsafe, Quill)]
    public void A_quill_sits_two_and_a_half_diameters_deep_or_to_its_mark(string stem, Verdict expected, string source) =>
        Published.Says(Bare.With(Stem.Read(stem), Slot.Stem), "quill-insertion", source, expected);

    [Theory]
    [InlineData("15/16 in", "drop-bar lever", Verdict.Fits, Levers)]
    [InlineData("15/16 in", "flat-bar lever", Verdict.DoesNotFit, Bars)]
    [InlineData("7/8 in", "drop-bar lever", Verdict.DoesNotFit, Bars)]
    [InlineData("7/8 in", "BMX lever", Verdict.Fits, CribSheet)]
    public void Controls_go_on_a_bar_as_published(string grip, string control, Verdict expected, string source) =>
        Published.Says(Bare.With(Handlebar.Read("31.8; grip " + Published.Key<GripDiameter>(grip, source)), Slot.Handlebar).With(Controls.Read("clamp " + Published.Key<ControlClamp>(control, source)), Slot.Controls), "control-on-bar", source, expected);

    [Theory]
    [InlineData("22.2", "7/8 in", Verdict.Fits, CribSheet)]
    [InlineData("23.8", "7/8 in", Verdict.DoesNotFit, "arithmetic on 22.2 and 23.8 mm")]
    [InlineData("22.2", "15/16 in", Verdict.Unsafe, Practice)]
    public void Grips_go_on_a_bar_of_their_own_size(string bar, string grips, Verdict expected, string source) =>
        Published.Says(Bare.With(Handlebar.Read("grip " + bar), Slot.Handlebar).With(Grips.Read("bore " + Published.Key<GripDiameter>(grips, source)), Slot.Grips), "grip-on-bar", source, expected);

    [Theory]
    [InlineData("bought by its overall length", "designated width unknown", Verdict.NeedsMeasuring, TenSplines)]
    [InlineData("bought by its designation", "designated width 113", Verdict.Fits, TenSplines)]
    public void A_ten_spline_spindle_goes_by_its_designation(string row, string width, Verdict expected, string source) =>
        Published.Says(Bare.With(BottomBracket.Read("takes 10-spline; " + width), Slot.BottomBracket).With(Crankset.Read("designed width 113"), Slot.Crankset), "splined-crank-with-spindle-width", $"{row}, {source}", expected);

    [Theory]
    [InlineData("0.05 mm too large after several changes", "41.05", Verdict.Unsafe, "screw together", Creak)]
    [InlineData("in tolerance", "40.98", Verdict.Fits, "", Memory)]
    public void A_worn_bore_holds_no_pressed_unit(string row, string bore, Verdict expected, string remedy, string source) =>
        Published.Says(Build.From(Frame.Read("shell bore " + bore)).With(BottomBracket.Read("shell BB86"), Slot.BottomBracket), "pressed-unit-in-measured-bore", $"{row}, {source}", expected, remedy);

    [Theory]
    [InlineData("painted", Verdict.Unsafe, Adapter)]
    [InlineData("unsupported insert", Verdict.Unsafe, Adapter)]
    [InlineData("bare metal", Verdict.Fits, Adapter)]
    public void An_outboard_adapter_wants_bare_metal(string face, Verdict expected, string source) =>
        Published.Says(Build.From(Frame.Read("shell face " + Published.Key<ShellFace>(face, source))).With(ShellAdapter.Read("kind " + Published.Key<ShellAdapterKind>("outboard adapter", source)), Slot.ShellAdapter), "adapter-on-shell-face", source, expected);

    [Theory]
    [InlineData("27.0; binder gap none", Verdict.Unsafe, Binder)]
    [InlineData("27.2; binder gap 3", Verdict.Fits, Binder)]
    public void Ears_that_meet_clamp_nothing(string post, Verdict expected, string source) =>
        Published.Says(Build.From(Frame.Read("seat tube 27.2")).OfFile(Seatpost.Read(post), Slot.Seatpost), "binder-on-post", source, expected);

    [Theory]
    [InlineData("binder tabs", "carbon", Verdict.Unsafe, "metal post", CarbonPost)]
    [InlineData("separate clamp", "carbon", Verdict.Fits, "", CarbonPost)]
    [InlineData("binder tabs", "aluminium", Verdict.Fits, "", CarbonPost)]
    public void Carbon_posts_crack_between_welded_ears(string binder, string material, Verdict expected, string remedy, string source) =>
        Published.Says(Build.From(Frame.Read("binder " + Published.Key<SeatBinder>(binder, source))).With(Seatpost.Read("material " + material), Slot.Seatpost), "post-material-in-binder", source, expected, remedy);

    [Theory]
    [InlineData("no entry hole", "internally routed", Verdict.DoesNotFit, Practice)]
    [InlineData("no entry hole", "wireless", Verdict.Fits, Practice)]
    [InlineData("entry hole", "internally routed", Verdict.Fits, Practice)]
    public void A_dropper_that_is_routed_inside_wants_a_hole(string entry, string routing, Verdict expected, string source) =>
        Published.Says(Build.From(Frame.Read("dropper entry " + Published.Key<DropperEntry>(entry, source))).With(Dropper.Read("routing " + Published.Key<DropperRouting>(routing, source)), Slot.Dropper), "dropper-routing-in-frame", source, expected);

    [Theory]
    [InlineData("none", "fluid mineral-oil", true, Practice)]
    [InlineData("cable stops", "fluid mineral-oil", true, Practice)]
    [InlineData("cable stops", "pull short", false, Practice)]
    [InlineData("clip-on guides", "pull short", true, Practice)]
    [InlineData("full-length guides", "fluid mineral-oil", false, Practice)]
    [InlineData("inside the frame", "pull short", false, Practice)]
    public void A_line_along_the_frame_is_held_by_something(string carried, string lever, bool bought, string source) =>
        Assert.True(bought == Build.From(Frame.Read("cable guides " + Published.Key<Lugwork.Cockpit.CableGuide>(carried, source))).With(BrakeLever.Read(lever), Slot.RearBrakeLever).SmallParts().Any(p => p.Id == "cable-guides"), source);
}
