using static Lugwork.Tests.Builds.Bench;

namespace Lugwork.Tests.Builds;

/// <summary>Tubes, valves, tapes, headset pieces, controls, grips, adapters, binders and droppers: both sides, an unknown on each side, and a trap.</summary>
public sealed class SmallerJointTests
{
    [Theory]
    [InlineData("rimType C", "37-622", Verdict.Fits)]
    [InlineData("beadSeat 622", "bead folding", Verdict.Fits)]
    [InlineData("beadSeat 622", "tubular", Verdict.DoesNotFit)]
    [InlineData("hold tubular", "tubular", Verdict.Fits)]
    [InlineData("hold tubular", "37-622", Verdict.DoesNotFit)]
    [InlineData("hold tubular", "size unknown", Verdict.NeedsMeasuring)]
    [InlineData("hold unknown", "tubular", Verdict.NeedsMeasuring)]
    public void A_tubular_goes_on_a_rim_for_tubulars_and_a_size_of_the_standard_says_beads(string wheel, string tyre, Verdict expected)
    {
        Assert.Equal(expected, Judge("rear-tubular-on-rim", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.RearTyre, Tyre.Read(tyre))).Verdict);
        Assert.Equal(expected, Judge("front-tubular-on-rim", "material steel", (Slot.FrontWheel, Wheel.Read(wheel)), (Slot.FrontTyre, Tyre.Read(tyre))).Verdict);
    }

    [Theory]
    [InlineData("37-622", "622; other seat none", Verdict.Fits)]
    [InlineData("37-622", "622", Verdict.Fits)]
    [InlineData("40-635", "622; other seat 635", Verdict.Fits)]
    [InlineData("40-635", "622; other seat none", Verdict.NeedsMeasuring)]
    [InlineData("47-406", "seat 419; other seat none", Verdict.NeedsMeasuring)]
    [InlineData("47-406", "seat 428; other seat none", Verdict.DoesNotFit)]
    [InlineData("47-406", "451; other seat none", Verdict.DoesNotFit)]
    [InlineData("47-406", "451", Verdict.NeedsMeasuring)]
    [InlineData("size unknown", "622; other seat none", Verdict.NeedsMeasuring)]
    [InlineData("37-622", "seat unknown; other seat none", Verdict.NeedsMeasuring)]
    [InlineData("37-622", "seat none", Verdict.DoesNotFit)]
    public void A_tube_names_the_bead_seat_of_its_tyre(string tyre, string tube, Verdict expected)
    {
        Assert.Equal(expected, Judge("rear-tube-in-tyre", "material steel", (Slot.RearTyre, Tyre.Read(tyre)), (Slot.RearInnerTube, InnerTube.Read(tube))).Verdict);
        Assert.Equal(expected, Judge("front-tube-in-tyre", "material steel", (Slot.FrontTyre, Tyre.Read(tyre)), (Slot.FrontInnerTube, InnerTube.Read(tube))).Verdict);
    }

    [Theory]
    [InlineData("28-622", "tyres from 28; tyres to 47", Verdict.Fits)]
    [InlineData("47-622", "tyres from 28; tyres to 47", Verdict.Fits)]
    [InlineData("27-622", "tyres from 28; tyres to 47", Verdict.DoesNotFit)]
    [InlineData("48-622", "tyres from 28; tyres to 47", Verdict.DoesNotFit)]
    [InlineData("27-622", "tyres from 28", Verdict.DoesNotFit)]
    [InlineData("37-622", "tyres from 28", Verdict.NeedsMeasuring)]
    [InlineData("37-622", "tyres to 47", Verdict.NeedsMeasuring)]
    [InlineData("size unknown", "tyres from 28; tyres to 47", Verdict.NeedsMeasuring)]
    [InlineData("size none", "tyres from 28; tyres to 47", Verdict.DoesNotFit)]
    public void A_tube_has_the_width_of_its_tyre_in_its_range(string tyre, string tube, Verdict expected)
    {
        Assert.Equal(expected, Judge("rear-tube-width-in-tyre", "material steel", (Slot.RearTyre, Tyre.Read(tyre)), (Slot.RearInnerTube, InnerTube.Read(tube))).Verdict);
        Assert.Equal(expected, Judge("front-tube-width-in-tyre", "material steel", (Slot.FrontTyre, Tyre.Read(tyre)), (Slot.FrontInnerTube, InnerTube.Read(tube))).Verdict);
    }

    [Fact]
    public void A_tube_whose_range_is_turned_round_is_bad_input() =>
        Assert.False(InnerTube.TryRead("622; tyres from 47; tyres to 28", out _, out _));

    [Theory]
    [InlineData("6.5", "Presta", Verdict.Fits)]
    [InlineData("8.5", "Presta", Verdict.NeedsPart)]
    [InlineData("8.5", "Schrader", Verdict.Fits)]
    [InlineData("6.5", "Schrader", Verdict.DoesNotFit)]
    [InlineData("8.5", "Dunlop", Verdict.Fits)]
    [InlineData("6.5", "Dunlop", Verdict.DoesNotFit)]
    [InlineData("6.5", "SV", Verdict.NeedsMeasuring)]
    [InlineData("8.5", "SV", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "Presta", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "Schrader", Verdict.NeedsMeasuring)]
    [InlineData("6.5", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("none", "Presta", Verdict.DoesNotFit)]
    public void A_valve_goes_through_its_own_hole_or_through_a_wider_one_with_a_collar(string hole, string valve, Verdict expected)
    {
        Wheel wheel = Wheel.Read("valve hole " + hole);
        Assert.Equal(expected, Judge("rear-tube-valve-through-rim", "material steel", (Slot.RearWheel, wheel), (Slot.RearInnerTube, InnerTube.Read("valve " + valve))).Verdict);
        Assert.Equal(expected, Judge("front-valve-through-rim", "material steel", (Slot.FrontWheel, wheel), (Slot.FrontTubelessValve, TubelessValve.Read("valve " + valve))).Verdict);
    }

    [Theory]
    [InlineData("45", "30", Verdict.Fits)]
    [InlineData("44.999999", "30", Verdict.NeedsMeasuring)]
    [InlineData("30.000001", "30", Verdict.NeedsMeasuring)]
    [InlineData("30", "30", Verdict.DoesNotFit)]
    [InlineData("36", "50", Verdict.DoesNotFit)]
    [InlineData("36", "none", Verdict.Fits)]
    [InlineData("unknown", "30", Verdict.NeedsMeasuring)]
    [InlineData("48", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("60", "30 ± 1", Verdict.Fits)]
    [InlineData("45", "30 ± 1", Verdict.NeedsMeasuring)]
    public void A_valve_is_longer_than_the_rim_is_deep_by_what_a_pump_takes(string length, string depth, Verdict expected)
    {
        Wheel wheel = Wheel.Read("rim depth " + depth);
        Assert.Equal(expected, Judge("front-tube-valve-length", "material steel", (Slot.FrontWheel, wheel), (Slot.FrontInnerTube, InnerTube.Read("valve length " + length))).Verdict);
        Assert.Equal(expected, Judge("rear-valve-length", "material steel", (Slot.RearWheel, wheel), (Slot.RearTubelessValve, TubelessValve.Read("length " + length))).Verdict);
    }

    [Theory]
    [InlineData("19", "innerWidth 19; bedHole 9", Verdict.Fits)]
    [InlineData("9.000001", "innerWidth 19; bedHole 9", Verdict.NeedsMeasuring)]
    [InlineData("10.999999", "innerWidth 19; bedHole 9", Verdict.NeedsMeasuring)]
    [InlineData("11", "innerWidth 19; bedHole 9", Verdict.Fits)]
    [InlineData("9", "innerWidth 19; bedHole 9", Verdict.DoesNotFit)]
    [InlineData("8", "innerWidth 19; bedHole 9", Verdict.DoesNotFit)]
    [InlineData("19.000001", "innerWidth 19; bedHole 9", Verdict.NeedsMeasuring)]
    [InlineData("none", "innerWidth 19; bedHole 9", Verdict.DoesNotFit)]
    [InlineData("none", "innerWidth 19; bedHole none", Verdict.Fits)]
    [InlineData("none", "innerWidth 19; bedHole unknown", Verdict.DoesNotFit)]
    [InlineData("8", "innerWidth 19; bedHole unknown", Verdict.NeedsMeasuring)]
    [InlineData("12", "bedHole 9", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "innerWidth 19; bedHole 9", Verdict.NeedsMeasuring)]
    public void A_tape_covers_the_widest_hole_and_stays_in_the_bed(string tape, string wheel, Verdict expected)
    {
        Assert.Equal(expected, Judge("rear-rim-tape-on-rim", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.RearRimTape, RimTape.Read("width " + tape))).Verdict);
        Assert.Equal(expected, Judge("front-rim-tape-on-rim", "material steel", (Slot.FrontWheel, Wheel.Read(wheel)), (Slot.FrontRimTape, RimTape.Read("width " + tape))).Verdict);
    }

    [Theory]
    [InlineData("12", "12", Verdict.Fits)]
    [InlineData("12", "11.999999", Verdict.DoesNotFit)]
    [InlineData("12", "9", Verdict.DoesNotFit)]
    [InlineData("12", "none", Verdict.Fits)]
    [InlineData("none", "9", Verdict.Fits)]
    [InlineData("unknown", "9", Verdict.NeedsMeasuring)]
    [InlineData("12", "unknown", Verdict.NeedsMeasuring)]
    public void A_cup_goes_no_deeper_than_its_bore(string skirt, string bore, Verdict expected)
    {
        Assert.Equal(expected, Judge("upper-cup-depth-in-head-tube", "upper bore depth " + bore, (Slot.Headset, Headset.Read("upper skirt " + skirt))).Verdict);
        Assert.Equal(expected, Judge("lower-cup-depth-in-head-tube", "lower bore depth " + bore, (Slot.Headset, Headset.Read("lower skirt " + skirt))).Verdict);
    }

    [Fact]
    public void An_integrated_half_has_no_cup_so_that_nothing_is_asked()
    {
        Assert.Equal(Verdict.Fits, Judge("lower-cup-depth-in-head-tube", "lower bore depth 9", (Slot.Headset, Headset.Read("upper IS42/28.6; lower IS52/40"))).Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, Judge("lower-cup-depth-in-head-tube", "lower bore depth 9", (Slot.Headset, Headset.Read("upper IS42/28.6; lower ZS56/40"))).Verdict);
    }

    [Theory]
    [InlineData("40x52x7-45/45", "40x52x7-45/45", Verdict.Fits)]
    [InlineData("40x52x7-45/45", "40x52x6.5-36/45", Verdict.DoesNotFit)]
    [InlineData("40x52x7-45/45", "40x52x7-radial", Verdict.DoesNotFit)]
    [InlineData("40x52x6.5-36/45", "40x51.8x8-36/45", Verdict.NeedsMeasuring)]
    [InlineData("30.5x41.8x8-45/45", "30.5x41.8x6-45/45", Verdict.NeedsMeasuring)]
    [InlineData("30.5x41.8x8-45/45", "30.15x41x7-45/45", Verdict.DoesNotFit)]
    [InlineData("unknown", "40x52x7-45/45", Verdict.NeedsMeasuring)]
    [InlineData("40x52x7-45/45", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("40x52x7-45/45", "none", Verdict.DoesNotFit)]
    public void A_bearing_has_all_the_sizes_of_its_seat(string asked, string bearing, Verdict expected)
    {
        Assert.Equal(expected, Judge("upper-bearing-in-seat", "material steel", (Slot.Headset, Headset.Read("upper bearing " + asked)), (Slot.UpperBearing, HeadsetCartridge.Read(bearing is "none" or "unknown" ? "size " + bearing : bearing))).Verdict);
        Assert.Equal(expected, Judge("lower-bearing-in-seat", "material steel", (Slot.Headset, Headset.Read("lower bearing " + asked)), (Slot.LowerBearing, HeadsetCartridge.Read("size " + bearing))).Verdict);
    }

    [Theory]
    [InlineData("outside", "outside", Verdict.Fits)]
    [InlineData("through", "outside", Verdict.DoesNotFit)]
    [InlineData("through", "through", Verdict.NeedsMeasuring)]
    [InlineData("outside", "through", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "outside", Verdict.NeedsMeasuring)]
    [InlineData("outside", "unknown", Verdict.NeedsMeasuring)]
    public void A_cover_lets_the_cables_in_where_the_frame_takes_them(string frame, string cover, Verdict expected) =>
        Assert.Equal(expected, Judge("headset-cover-system", "headset cables " + frame, (Slot.HeadsetCover, HeadsetCover.Read("cables " + cover))).Verdict);

    [Theory]
    [InlineData("carbon", "threadless", "star nut", Verdict.Unsafe)]
    [InlineData("carbon", "unknown", "star nut", Verdict.Unsafe)]
    [InlineData("carbon", "threadless", "expander", Verdict.Fits)]
    [InlineData("aluminium", "threadless", "star nut", Verdict.Fits)]
    [InlineData("steel", "threadless", "expander", Verdict.Fits)]
    [InlineData("steel", "threaded", "star nut", Verdict.DoesNotFit)]
    [InlineData("unknown", "threadless", "star nut", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "threadless", "expander", Verdict.Fits)]
    [InlineData("carbon", "threadless", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("aluminium", "threadless", "unknown", Verdict.Fits)]
    public void A_star_nut_goes_into_metal_only(string material, string kind, string preload, Verdict expected)
    {
        Fit fit = Judge("preload-in-steerer", "material steel", (Slot.Fork, Fork.Read($"steerer material {material}; steerer kind {kind}")), (Slot.Preload, Preload.Read("kind " + preload)));
        Assert.Equal(expected, fit.Verdict);
        Assert.True(expected != Verdict.Unsafe || fit.Cautions.Contains(Cautions.StarNutCare));
        Assert.True(expected != Verdict.Unsafe || fit.Remedies.Any(r => r.What.Contains("expander plug", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("22.2 quill; mark 60; insertion 60", Verdict.Fits)]
    [InlineData("22.2 quill; mark 60; insertion 59.999999", Verdict.Unsafe)]
    [InlineData("22.2 quill; mark none; insertion 55.5", Verdict.Fits)]
    [InlineData("22.2 quill; mark none; insertion 55.499999", Verdict.Unsafe)]
    [InlineData("25.4 quill; mark none; insertion 63.5", Verdict.Fits)]
    [InlineData("25.4 quill; mark none; insertion 63.4", Verdict.Unsafe)]
    [InlineData("22.2 quill; mark 50; insertion 52", Verdict.NeedsMeasuring)]
    [InlineData("22.2 quill; mark 50; insertion 55.499999", Verdict.NeedsMeasuring)]
    [InlineData("22.2 quill; mark 50; insertion 55.5", Verdict.Fits)]
    [InlineData("22.2 quill; mark 40; insertion 44.4", Verdict.NeedsMeasuring)]
    [InlineData("22.2 quill; mark 40; insertion 44.399999", Verdict.Unsafe)]
    [InlineData("22.2 quill; mark 20; insertion 25", Verdict.Unsafe)]
    [InlineData("22.2 quill; mark 60", Verdict.NeedsMeasuring)]
    [InlineData("22.2 quill; insertion 60", Verdict.NeedsMeasuring)]
    [InlineData("22.2 quill; mark 60; insertion 60 ± 1", Verdict.NeedsMeasuring)]
    [InlineData("28.6 clamp", Verdict.Fits)]
    [InlineData("mark 60; insertion 50", Verdict.NeedsMeasuring)]
    public void A_quill_sits_to_its_mark_or_two_and_a_half_diameters_deep(string stem, Verdict expected)
    {
        Fit fit = Judge("quill-insertion", "material steel", (Slot.Stem, Stem.Read(stem)));
        Assert.Equal(expected, fit.Verdict);
        Assert.True(expected != Verdict.Unsafe || fit.Cautions.Contains(Cautions.QuillInsertion));
    }

    [Theory]
    [InlineData("23.8", "drop-bar lever", Verdict.Fits)]
    [InlineData("22.2", "flat-bar control", Verdict.Fits)]
    [InlineData("23.8", "flat-bar control", Verdict.DoesNotFit)]
    [InlineData("22.2", "drop-bar lever", Verdict.DoesNotFit)]
    [InlineData("23.5", "drop-bar lever", Verdict.NeedsMeasuring)]
    [InlineData("23.5", "flat-bar control", Verdict.DoesNotFit)]
    [InlineData("unknown", "flat-bar control", Verdict.NeedsMeasuring)]
    [InlineData("23.8", "unknown", Verdict.NeedsMeasuring)]
    public void Controls_follow_the_bar_where_they_go_and_not_its_middle(string grip, string controls, Verdict expected) =>
        Assert.Equal(expected, Judge("control-on-bar", "material steel", (Slot.Handlebar, Handlebar.Read("31.8; grip " + grip)), (Slot.Controls, Controls.Read("clamp " + controls))).Verdict);

    [Theory]
    [InlineData("22.2", "22.2", Verdict.Fits)]
    [InlineData("23.8", "22.2", Verdict.DoesNotFit)]
    [InlineData("23.5", "22.2", Verdict.DoesNotFit)]
    [InlineData("22.2", "23.8", Verdict.Unsafe)]
    [InlineData("22.2", "23.5", Verdict.Unsafe)]
    [InlineData("23.5", "23.8", Verdict.NeedsMeasuring)]
    [InlineData("23.8", "23.5", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "22.2", Verdict.NeedsMeasuring)]
    [InlineData("22.2", "unknown", Verdict.NeedsMeasuring)]
    public void Grips_that_turn_on_the_bar_are_unsafe(string bar, string grips, Verdict expected)
    {
        Fit fit = Judge("grip-on-bar", "material steel", (Slot.Handlebar, Handlebar.Read("grip " + bar)), (Slot.Grips, Grips.Read("bore " + grips)));
        Assert.Equal(expected, fit.Verdict);
        Assert.True(expected != Verdict.Unsafe || fit.Cautions.Contains(Cautions.Grips));
    }

    [Theory]
    [InlineData("25.4", "26.0", Verdict.Unsafe)]
    [InlineData("26.0", "25.4", Verdict.Unsafe)]
    [InlineData("26.0", "26.0", Verdict.Fits)]
    [InlineData("25.4", "25.4", Verdict.Fits)]
    [InlineData("26.0", "26.4", Verdict.DoesNotFit)]
    [InlineData("26.0", "25.8", Verdict.NeedsMeasuring)]
    [InlineData("25.4 | 26.0", "26.0", Verdict.NeedsMeasuring)]
    public void Bars_of_25_4_and_26_0_go_into_each_others_clamps_and_fail_there(string stem, string bar, Verdict expected)
    {
        Fit fit = Judge("bar-in-stem", "material steel", (Slot.Stem, Stem.Read("bar " + stem)), (Slot.Handlebar, Handlebar.Read(bar)));
        Assert.Equal(expected, fit.Verdict);
        Assert.True(expected != Verdict.Unsafe || fit.Cautions.Contains(Cautions.BarClampCare));
    }

    [Theory]
    [InlineData("10-spline", "113", "113", Verdict.Fits)]
    [InlineData("10-spline", "113", "118", Verdict.NeedsMeasuring)]
    [InlineData("10-spline", "113", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("10-spline", "unknown", "113", Verdict.NeedsMeasuring)]
    [InlineData("10-spline", "113", "none", Verdict.DoesNotFit)]
    [InlineData("24", "unknown", "unknown", Verdict.Fits)]
    [InlineData("unknown", "113", "118", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "113", "113", Verdict.Fits)]
    public void Ten_splines_go_by_their_designated_width(string takes, string crank, string bracket, Verdict expected) =>
        Assert.Equal(expected, Judge("splined-crank-with-spindle-width", "material steel", (Slot.BottomBracket, BottomBracket.Read($"takes {takes}; designated width {bracket}")), (Slot.Crankset, Crankset.Read($"designed width {crank}"))).Verdict);

    [Theory]
    [InlineData("BB86", "41", Verdict.Fits)]
    [InlineData("BB86", "40.95", Verdict.Fits)]
    [InlineData("BB86", "41.000001", Verdict.NeedsMeasuring)]
    [InlineData("BB86", "41.049999", Verdict.NeedsMeasuring)]
    [InlineData("BB86", "41.05", Verdict.Unsafe)]
    [InlineData("BB86", "40.949999", Verdict.NeedsMeasuring)]
    [InlineData("BB86", "40.8", Verdict.NeedsMeasuring)]
    [InlineData("BB86", "40.799999", Verdict.DoesNotFit)]
    [InlineData("BB86", "41.1 ± 0.05", Verdict.Unsafe)]
    [InlineData("BB86", "41.03 ± 0.03", Verdict.NeedsMeasuring)]
    [InlineData("BB86", "none", Verdict.DoesNotFit)]
    [InlineData("BSA 68", "36", Verdict.Fits)]
    [InlineData("unknown", "41", Verdict.NeedsMeasuring)]
    public void A_pressed_unit_wants_a_bore_in_tolerance(string bracket, string bore, Verdict expected)
    {
        Fit fit = Judge("pressed-unit-in-measured-bore", "shell bore " + bore, (Slot.BottomBracket, BottomBracket.Read(bracket == "unknown" ? "family unknown" : "shell " + bracket)));
        Assert.Equal(expected, fit.Verdict);
        Assert.True(expected != Verdict.Unsafe || fit.Cautions.Contains(Cautions.WornBore) || fit.Cautions.Contains(Cautions.PressFitCare));
    }

    [Theory]
    [InlineData("bare", "outboard", Verdict.Fits)]
    [InlineData("insert-for-outboard", "outboard", Verdict.Fits)]
    [InlineData("painted", "outboard", Verdict.Unsafe)]
    [InlineData("other-insert", "outboard", Verdict.Unsafe)]
    [InlineData("painted", "inside", Verdict.Fits)]
    [InlineData("unknown", "outboard", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "inside", Verdict.Fits)]
    [InlineData("painted", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("none", "outboard", Verdict.DoesNotFit)]
    public void An_outboard_adapter_bears_on_metal_or_on_an_insert_that_is_made_for_it(string face, string adapter, Verdict expected) =>
        Assert.Equal(expected, Judge("adapter-on-shell-face", "shell face " + face, (Slot.ShellAdapter, ShellAdapter.Read("kind " + adapter))).Verdict);

    [Theory]
    [InlineData("27.2", "27.2; binder gap 0.1", Verdict.Fits)]
    [InlineData("27.2", "27.2; binder gap none", Verdict.Unsafe)]
    [InlineData("27.2", "27.0; binder gap none", Verdict.Unsafe)]
    [InlineData("27.2", "26.8; binder gap 1", Verdict.Fits)]
    [InlineData("27.2", "26.8; binder gap 0.999999", Verdict.NeedsMeasuring)]
    [InlineData("27.2", "diameter unknown; binder gap 0.5", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "27.2; binder gap none", Verdict.Unsafe)]
    public void A_binder_whose_ears_meet_holds_nothing(string bore, string post, Verdict expected) =>
        Assert.Equal(expected, Judge("binder-on-post", "seat tube " + bore, (Slot.Seatpost, Seatpost.Read(post))).Verdict);

    /// <summary>A seat tube with ears of its own is bound by a bolt through them (common practice, no source).</summary>
    [Theory]
    [InlineData("binder welded-tabs; seat tube outside 28.6", Verdict.DoesNotFit)]
    [InlineData("binder collar; seat tube outside 28.6", Verdict.Fits)]
    [InlineData("binder none; seat tube outside 28.6", Verdict.DoesNotFit)]
    public void A_collar_goes_on_no_ears(string frame, Verdict expected) =>
        Assert.Equal(expected, Judge("collar-on-binder", frame, (Slot.SeatClamp, SeatClamp.Read("28.6"))).Verdict);

    [Fact]
    public void A_binder_that_nobody_stated_is_not_asked_about() =>
        Assert.DoesNotContain(Build.From(Frame.Read("seat tube outside 28.6")).With(SeatClamp.Read("28.6")).Check().Findings, f => f.Joint!.Id == "collar-on-binder");

    [Theory]
    [InlineData("binder welded-tabs", false)]
    [InlineData("binder welded-tabs; seat tube outside 28.6", false)]
    [InlineData("seat tube outside none", false)]
    [InlineData("binder collar", true)]
    [InlineData("binder unknown; seat tube outside unknown", true)]
    public void Ears_of_the_frames_own_ask_for_no_collar(string frame, bool missing) =>
        Assert.Equal(missing, Build.From(Frame.Read(frame)).Check().Missing.Contains(Slot.SeatClamp));

    [Theory]
    [InlineData("binder welded-tabs", "carbon", Verdict.Unsafe)]
    [InlineData("binder welded-tabs", "aluminium", Verdict.Fits)]
    [InlineData("binder collar", "carbon", Verdict.Fits)]
    [InlineData("seat tube outside 31.8", "carbon", Verdict.Fits)]
    [InlineData("seat tube outside 31.8", "unknown", Verdict.Fits)]
    [InlineData("seat tube outside 31.8; binder welded-tabs", "carbon", Verdict.Unsafe)]
    [InlineData("seat tube outside none", "carbon", Verdict.NeedsMeasuring)]
    [InlineData("binder unknown", "steel", Verdict.Fits)]
    [InlineData("binder unknown", "carbon", Verdict.NeedsMeasuring)]
    [InlineData("binder welded-tabs", "unknown", Verdict.NeedsMeasuring)]
    public void A_carbon_post_is_not_pinched_by_ears_of_the_tube(string frame, string material, Verdict expected) =>
        Assert.Equal(expected, Judge("post-material-in-binder", frame, (Slot.Seatpost, Seatpost.Read("material " + material))).Verdict);

    [Theory]
    [InlineData("hole", "internal", Verdict.Fits)]
    [InlineData("no-hole", "internal", Verdict.DoesNotFit)]
    [InlineData("no-hole", "external", Verdict.Fits)]
    [InlineData("no-hole", "wireless", Verdict.Fits)]
    [InlineData("unknown", "internal", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "wireless", Verdict.Fits)]
    [InlineData("no-hole", "unknown", Verdict.NeedsMeasuring)]
    public void A_dropper_that_is_routed_inside_needs_a_hole(string frame, string dropper, Verdict expected) =>
        Assert.Equal(expected, Judge("dropper-routing-in-frame", "dropper entry " + frame, (Slot.Dropper, Dropper.Read("routing " + dropper))).Verdict);

    [Fact]
    public void No_kind_of_bicycle_requires_these_and_none_of_their_joints_is_asked_for_without_them()
    {
        foreach (Slot slot in Slot.All.Where(s => s.IsOptional))
        {
            Build without = WholeBicycle().Without(slot);
            Assert.True(without.Check().IsComplete);
            Assert.Equal(Verdict.Fits, without.Check().Verdict);
            Assert.DoesNotContain(without.Check().Findings, f => f.Joint!.Slots.Contains(slot));
            Assert.Contains(JointTable.All, j => j.Slots.Contains(slot));
        }
    }

    [Fact]
    public void A_stem_still_takes_the_size_that_is_left_for_its_other_end()
    {
        Assert.Equal("31.8", Stem.Read("fixing 28.6; 31.8").BarClamp.ToString());
        Assert.False(Stem.TryRead("31.8", out _, out _));
    }
}
