using Lugwork.Brakes;
using Lugwork.Hubs;
using Lugwork.Tyres;

namespace Lugwork.PublishedTables;

/// <summary>Bolts, lockrings, carriers, pads, lips, nuts and axle lengths: published cases, each with its source.</summary>
public sealed class BrakeJointsChecks
{
    private const string Bolts = "Notes on flat-mount caliper mounting bolts (in translation); nomulabworkshop.com";
    private const string ThinStay = "Fabike C3: Brake Calipers and SKS Mudguards; handsonbike.blogspot.com";
    private const string Pads = "Precautions for the use of brake pads for rim brake road bike carbon wheels; Carbonal";
    private const string Splined = "Splined rotor adapter notes; nomulabworkshop.com";
    private const string Rings = "Interchangeability of splined-rotor lockrings; brainybiker.com";
    private const string OpenEnds = "Disc brake mount glossary entry; jitetan.com";
    private const string Washers = "Anti-rotation washers (non-turn washers) in non-parallel dropouts; Bicycles Stack Exchange";
    private const string Nuts = "Axle nut; wrenchfu.com";
    private const string AxleMaker = "How to Measure a Bicycle Thru-Axle; Hardlite Components";
    private const string BrazeOns = "Braze-on distances index (frame builders' list posts); bikebuilding.blogspot.com";
    private const string Rotors = "Technical FAQ on rotors; VeloNews";
    private const string ReachShop = "Caliper reach; bmxworks";
    private const string RimTable = "Felge (rim table with valve hole column); Radreise-Wiki";

    private static long Nm(double millimetres) => (long)(millimetres * 1_000_000);

    [Theory]
    [InlineData(ThinStay, 25, 38, Verdict.Fits)]
    [InlineData(ThinStay, 10, 23, Verdict.Fits)]
    [InlineData(ThinStay, 7, 38, Verdict.Unsafe)]
    [InlineData(Bolts, 20, 33, Verdict.Fits)]
    [InlineData(Bolts, 10, 33, Verdict.Unsafe)]
    [InlineData(Bolts, 30, 33, Verdict.NeedsMeasuring)]
    public void A_flat_mount_bolt_is_13_mm_longer_than_the_stay_is_thick(string source, double stay, double bolt, Verdict expected) =>
        Assert.True(expected == DiscRelations.BoltInStay.Judge([BrakeMount.FlatRear140.FitCode, CaliperFoot.Flat.FitCode, Nm(stay), Nm(bolt), Nm(140)]).Verdict, source);

    [Theory]
    [PrintedIn(Pads)]
    [InlineData("carbon", "for-carbon", Verdict.Fits)]
    [InlineData("carbon", "for-aluminium", Verdict.Unsafe)]
    [InlineData("aluminium", "for-carbon", Verdict.DoesNotFit)]
    [InlineData("aluminium", "for-aluminium", Verdict.Fits)]
    public void Pads_go_on_the_track_that_they_are_made_for(string track, string pads, Verdict expected) =>
        Assert.True(expected == RimBrakeRelations.PadsOnRim.Judge([BrakeTrack.Parse(track, null).FitCode, RimPads.Parse(pads, null).FitCode]).Verdict, Pads);

    [Theory]
    [PrintedIn(Splined)]
    [InlineData("B29", "pins", "external", Verdict.NeedsMeasuring)]
    [InlineData("sold together", "with-lockring", "external", Verdict.Fits)]
    public void A_carrier_goes_under_the_ring_that_clears_it(string row, string carrier, string ring, Verdict expected) => Assert.True(
        expected == DiscRelations.CarrierUnderRing.Judge([RotorFixing.CenterLock.FitCode, RotorFixing.SixBolt.FitCode, RotorCarrier.Parse(carrier, null).FitCode, Lockring.Parse(ring, null).FitCode]).Verdict,
        $"{row}, {Splined}");

    [Theory]
    [InlineData(Rings, "internal", 12_000, Verdict.Fits)]
    [InlineData(Rings, "internal", 15_000, Verdict.DoesNotFit)]
    [InlineData(Splined, "internal", 20_000, Verdict.DoesNotFit)]
    [InlineData(Rings, "external", 15_000, Verdict.Fits)]
    [InlineData(Rings, "external", 9_000, Verdict.Fits)]
    public void A_lockring_is_turned_over_the_axles_that_are_printed(string source, string ring, long axle, Verdict expected) =>
        Assert.True(expected == DiscRelations.LockringOnAxle.Judge([axle, RotorFixing.CenterLock.FitCode, Lockring.Parse(ring, null).FitCode, RotorFixing.CenterLock.FitCode, DiscRelations.NotThere]).Verdict, source);

    [Theory]
    [PrintedIn(OpenEnds)]
    [InlineData("F100-QR9", "kept", Verdict.Fits)]
    [InlineData("F100-15", "missing", Verdict.Fits)]
    public void Lips_keep_a_disc_wheel_in_open_ends(string end, string lips, Verdict expected) => Assert.True(
        expected == EndRelations.DiscOnOpenEnds.Judge([HubStandard.Parse(end, null).FitCode, CaliperFoot.Post.FitCode, RetentionLips.Parse(lips, null).FitCode]).Verdict,
        OpenEnds);

    [Theory]
    [PrintedIn(Washers)]
    [InlineData("horizontal", "horizontal", Verdict.Fits)]
    [InlineData("horizontal", "vertical", Verdict.DoesNotFit)]
    public void Washers_of_a_hub_gear_are_made_for_one_slot(string slot, string washers, Verdict expected) =>
        Assert.True(expected == EndRelations.GearHubInDropout.Judge([EndRelations.GearHub, DropoutSlot.Parse(slot, null).FitCode, DropoutSlot.Parse(washers, null).FitCode]).Verdict, Washers);

    [Theory]
    [PrintedIn(Nuts)]
    [InlineData("H42", "3/8x26", "3/8x24", Verdict.DoesNotFit)]
    [InlineData("front solid", "5/16x24", "5/16x26", Verdict.DoesNotFit)]
    [InlineData("front", "M9x1", "M9x1", Verdict.Fits)]
    [InlineData("rear", "M10x1", "3/8x26", Verdict.DoesNotFit)]
    public void A_nut_has_the_thread_of_its_axle(string row, string axle, string nut, Verdict expected) =>
        Assert.True(expected == EndRelations.Nuts.Judge([HubAxleThread.Parse(axle, null).FitCode, HubAxleThread.Parse(nut, null).FitCode]).Verdict, $"{row}, {Nuts}");

    [Theory]
    [PrintedIn(AxleMaker)]
    [InlineData(163, 163, Verdict.Fits)]
    [InlineData(171, 163, Verdict.Unsafe)]
    [InlineData(163, 171, Verdict.DoesNotFit)]
    public void Two_axles_for_one_hub_width_are_not_exchanged(double asked, double axle, Verdict expected) =>
        Assert.True(expected == EndRelations.Length.Judge([Nm(asked), Nm(axle), Nm(142)]).Verdict, AxleMaker);

    [Theory]
    [PrintedIn(BrazeOns)]
    [InlineData("cantilever-622", 622, Verdict.Fits)]
    [InlineData("cantilever-622", 584, Verdict.DoesNotFit)]
    [InlineData("cantilever-559", 559, Verdict.Fits)]
    [InlineData("cantilever-559", 622, Verdict.DoesNotFit)]
    public void Bosses_stand_for_one_bead_seat(string bosses, long seat, Verdict expected) =>
        Assert.True(expected == RimBrakeRelations.BossesWithRim.Judge([BrakeBoss.Parse(bosses, null).FitCode, seat, 2]).Verdict, BrazeOns);

    [Theory]
    [InlineData(BrazeOns, 80, Verdict.Fits)]
    [InlineData(BrazeOns, 85, Verdict.Fits)]
    [InlineData("Cantilever post spacing question; MTBR forum", 73, Verdict.NeedsMeasuring)]
    [InlineData("Cantilever post spacing question; MTBR forum", 77, Verdict.Fits)]
    public void Bosses_stand_75_to_85_mm_apart(string source, double spacing, Verdict expected) =>
        Assert.True(expected == RimBrakeRelations.ArmsOnSpacing.Judge([Nm(spacing), 2]).Verdict, source);

    [Theory]
    [PrintedIn(Rotors)]
    [InlineData("B30", 2.0, Verdict.NeedsMeasuring)]
    [InlineData("made for it", 1.8, Verdict.Fits)]
    public void A_thicker_rotor_than_the_caliper_is_made_for_is_asked_about(string row, double thickness, Verdict expected) =>
        Assert.True(expected == DiscRelations.Thickness.Judge([Nm(thickness), Nm(1.8), Nm(1.5)]).Verdict, $"{row}, {Rotors}");

    [Theory]
    [PrintedIn(ReachShop)]
    [InlineData("recessed-6", "recessed-6", Verdict.Fits)]
    [InlineData("nutted-6", "recessed-6", Verdict.NeedsMeasuring)]
    public void A_recessed_nut_wants_its_hole(string hole, string bolt, Verdict expected) =>
        Assert.True(expected == RimBrakeRelations.BoltInHole.Judge([BrakeBolt.Parse(hole, null).FitCode, BrakeBolt.Parse(bolt, null).FitCode]).Verdict, ReachShop);

    [Theory]
    [PrintedIn(RimTable)]
    [InlineData("28", "28", true)]
    [InlineData("32", "36", false)]
    [InlineData("36", "36", true)]
    public void A_printed_rim_is_laced_to_a_hub_with_as_many_holes(string hub, string rim, bool laced)
    {
        Assert.Equal(rim, SpokeCount.Parse(rim + "h", null).FitKey);
        Assert.True(laced == Wheel.TryRead($"hub holes {hub}; rim holes {rim}", out _, out _), RimTable);
    }
}
