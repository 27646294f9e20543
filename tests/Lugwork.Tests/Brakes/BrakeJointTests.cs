using Lugwork.Brakes;
using static Lugwork.Tests.Builds.Bench;

namespace Lugwork.Tests.Brakes;

/// <summary>Levers, rim brakes, rings, carriers and bolts: both sides, an unknown on each side, and a trap.</summary>
public sealed class BrakeJointTests
{
    [Theory]
    [InlineData("fluid mineral oil", "fluid mineral oil", Verdict.Fits)]
    [InlineData("fluid DOT 4", "fluid DOT 5.1", Verdict.Fits)]
    [InlineData("fluid DOT", "fluid mineral oil", Verdict.Unsafe)]
    [InlineData("fluid mineral oil", "fluid DOT", Verdict.Unsafe)]
    [InlineData("pull short", "type disc-cable-road", Verdict.Fits)]
    [InlineData("fluid none", "fluid none", Verdict.Fits)]
    [InlineData("pull short", "fluid DOT", Verdict.DoesNotFit)]
    [InlineData("fluid DOT", "type disc-cable-road", Verdict.DoesNotFit)]
    [InlineData("fluid unknown", "fluid DOT", Verdict.NeedsMeasuring)]
    [InlineData("fluid unknown", "fluid none", Verdict.NeedsMeasuring)]
    [InlineData("fluid DOT", "type hydraulic disc", Verdict.NeedsMeasuring)]
    [InlineData("fluid DOT | mineral", "fluid DOT | mineral", Verdict.NeedsMeasuring)]
    [InlineData("fluid DOT | mineral", "fluid none", Verdict.DoesNotFit)]
    public void Lever_and_caliper_hold_one_fluid_or_none(string lever, string caliper, Verdict expected)
    {
        Assert.Equal(expected, Judge("front-lever-fluid-with-caliper", "material steel", (Slot.FrontBrakeLever, BrakeLever.Read(lever)), (Slot.FrontCaliper, Caliper.Read(caliper))).Verdict);
        Assert.Equal(expected, Judge("rear-lever-fluid-with-caliper", "material steel", (Slot.RearBrakeLever, BrakeLever.Read(lever)), (Slot.RearCaliper, Caliper.Read(caliper))).Verdict);
    }

    [Fact]
    public void Fluids_that_must_not_meet_carry_their_caution_and_their_remedy()
    {
        Fit fit = Judge("front-lever-fluid-with-caliper", "material steel", (Slot.FrontBrakeLever, BrakeLever.Read("fluid DOT")), (Slot.FrontCaliper, Caliper.Read("fluid mineral oil")));
        Assert.NotEmpty(fit.Cautions);
        Assert.Contains(fit.Remedies, r => r.What.Contains("same fluid", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("pull short", "direct-pull", Verdict.Unsafe)]
    [InlineData("pull long", "direct-pull", Verdict.Fits)]
    [InlineData("pull long", "cantilever", Verdict.Unsafe)]
    [InlineData("pull long", "rim-caliper", Verdict.Unsafe)]
    [InlineData("pull short", "rim-caliper", Verdict.Fits)]
    [InlineData("pull newer-road", "rim-caliper", Verdict.NeedsMeasuring)]
    [InlineData("pull short", "centre-pull", Verdict.NeedsMeasuring)]
    [InlineData("fluid DOT", "rim-caliper", Verdict.DoesNotFit)]
    [InlineData("pull unknown", "rim-caliper", Verdict.NeedsMeasuring)]
    [InlineData("pull short", "type unknown", Verdict.NeedsMeasuring)]
    public void A_lever_pulls_the_cable_that_the_rim_brake_wants(string lever, string brake, Verdict expected)
    {
        Assert.Equal(expected, Judge("front-lever-with-rim-brake", "material steel", (Slot.FrontBrakeLever, BrakeLever.Read(lever)), (Slot.FrontRimBrake, RimBrake.Read(brake))).Verdict);
        Assert.Equal(expected, Judge("rear-lever-with-rim-brake", "material steel", (Slot.RearBrakeLever, BrakeLever.Read(lever)), (Slot.RearRimBrake, RimBrake.Read(brake))).Verdict);
    }

    [Theory]
    [InlineData("pull short", "type disc-cable-road", Verdict.Fits)]
    [InlineData("pull short", "type disc-cable-off-road", Verdict.DoesNotFit)]
    [InlineData("pull long", "type disc-cable-off-road", Verdict.Fits)]
    [InlineData("pull long", "type disc-cable-road", Verdict.Unsafe)]
    [InlineData("pull short", "type hydraulic disc", Verdict.DoesNotFit)]
    [InlineData("pull short", "fluid mineral oil", Verdict.DoesNotFit)]
    [InlineData("fluid mineral oil", "fluid mineral oil", Verdict.Fits)]
    [InlineData("fluid mineral oil", "type disc-cable-road", Verdict.DoesNotFit)]
    [InlineData("pull short", "fluid none", Verdict.NeedsMeasuring)]
    [InlineData("pull unknown", "type disc-cable-road", Verdict.NeedsMeasuring)]
    [InlineData("pull short", "type unknown", Verdict.NeedsMeasuring)]
    public void A_lever_works_the_disc_caliper_that_it_is_made_for(string lever, string caliper, Verdict expected)
    {
        Assert.Equal(expected, Judge("front-lever-with-disc-brake", "material steel", (Slot.FrontBrakeLever, BrakeLever.Read(lever)), (Slot.FrontCaliper, Caliper.Read(caliper))).Verdict);
        Assert.Equal(expected, Judge("rear-lever-with-disc-brake", "material steel", (Slot.RearBrakeLever, BrakeLever.Read(lever)), (Slot.RearCaliper, Caliper.Read(caliper))).Verdict);
    }

    [Theory]
    [InlineData("cantilever-622", "cantilever", Verdict.Fits)]
    [InlineData("cantilever-559", "direct-pull", Verdict.Fits)]
    [InlineData("u-brake", "direct-pull", Verdict.DoesNotFit)]
    [InlineData("u-brake", "u-brake", Verdict.Fits)]
    [InlineData("cantilever-622", "u-brake", Verdict.DoesNotFit)]
    [InlineData("none", "cantilever", Verdict.DoesNotFit)]
    [InlineData("none", "rim-caliper", Verdict.Fits)]
    [InlineData("unknown", "rim-caliper", Verdict.Fits)]
    [InlineData("unknown", "cantilever", Verdict.NeedsMeasuring)]
    [InlineData("cantilever", "cantilever", Verdict.Fits)]
    [InlineData("cantilever-622", "unknown", Verdict.NeedsMeasuring)]
    public void A_brake_goes_on_its_own_bosses(string bosses, string type, Verdict expected)
    {
        Assert.Equal(expected, Judge("rear-brake-on-bosses", $"rearBosses {bosses}", (Slot.RearRimBrake, RimBrake.Read("type " + type))).Verdict);
        Assert.Equal(expected, Judge("front-brake-on-bosses", "material steel", (Slot.Fork, Fork.Read($"frontBosses {bosses}")), (Slot.FrontRimBrake, RimBrake.Read("type " + type))).Verdict);
    }

    [Theory]
    [InlineData("cantilever-622", "622", "cantilever", Verdict.Fits)]
    [InlineData("cantilever-622", "584", "cantilever", Verdict.DoesNotFit)]
    [InlineData("cantilever-584", "622", "direct-pull", Verdict.DoesNotFit)]
    [InlineData("cantilever-622", "587", "cantilever", Verdict.NeedsMeasuring)]
    [InlineData("cantilever-622", "630", "cantilever", Verdict.NeedsMeasuring)]
    [InlineData("cantilever-584", "559", "cantilever", Verdict.NeedsMeasuring)]
    [InlineData("u-brake", "559", "u-brake", Verdict.NeedsMeasuring)]
    [InlineData("none", "622", "rim-caliper", Verdict.Fits)]
    [InlineData("cantilever-622", "584", "rim-caliper", Verdict.Fits)]
    [InlineData("none", "622", "cantilever", Verdict.DoesNotFit)]
    [InlineData("cantilever", "622", "cantilever", Verdict.NeedsMeasuring)]
    [InlineData("cantilever-622", "unknown", "cantilever", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "622", "cantilever", Verdict.NeedsMeasuring)]
    public void Bosses_stand_for_one_rim(string bosses, string seat, string type, Verdict expected)
    {
        Assert.Equal(expected, Judge("rear-bosses-with-rim", $"rearBosses {bosses}", (Slot.RearWheel, Wheel.Read($"beadSeat {seat}")), (Slot.RearRimBrake, RimBrake.Read(type))).Verdict);
        Assert.Equal(expected, Judge("front-bosses-with-rim", "material steel", (Slot.Fork, Fork.Read($"frontBosses {bosses}")), (Slot.FrontWheel, Wheel.Read($"beadSeat {seat}")), (Slot.FrontRimBrake, RimBrake.Read(type))).Verdict);
    }

    [Theory]
    [InlineData("46.999999", "622", "622", "47-57", Verdict.DoesNotFit)]
    [InlineData("47", "622", "622", "47-57", Verdict.Fits)]
    [InlineData("57", "622", "622", "47-57", Verdict.Fits)]
    [InlineData("57.000001", "622", "622", "47-57", Verdict.DoesNotFit)]
    [InlineData("57 ± 0.5", "622", "622", "47-57", Verdict.NeedsMeasuring)]
    [InlineData("58 ± 0.5", "622", "622", "47-57", Verdict.DoesNotFit)]
    [InlineData("52", "622", "622", "39-49", Verdict.DoesNotFit)]
    [InlineData("52", "622", "622", "short", Verdict.NeedsMeasuring)]
    [InlineData("53", "622", "622", "short", Verdict.DoesNotFit)]
    [InlineData("52", "622", "584", "47-57", Verdict.DoesNotFit)]
    [InlineData("45", "622", "584", "55-73", Verdict.Fits)]
    [InlineData("35", "622", "584", "55-73", Verdict.NeedsMeasuring)]
    [InlineData("37", "622", "584", "55-73", Verdict.Fits)]
    [InlineData("36.999999", "622", "584", "55-73", Verdict.NeedsMeasuring)]
    [InlineData("34.999999", "622", "584", "55-73", Verdict.DoesNotFit)]
    [InlineData("53", "622", "584", "55-73", Verdict.Fits)]
    [InlineData("53.000001", "622", "584", "55-73", Verdict.NeedsMeasuring)]
    [InlineData("55.000001", "622", "584", "55-73", Verdict.DoesNotFit)]
    [InlineData("64", "584", "622", "39-49", Verdict.Fits)]
    [InlineData("37 ± 0.5", "622", "584", "55-73", Verdict.NeedsMeasuring)]
    [InlineData("45 ± 9", "622", "584", "55-73", Verdict.NeedsMeasuring)]
    [InlineData("none", "622", "584", "47-57", Verdict.DoesNotFit)]
    [InlineData("61", "622", "622", "centre-pull-61-61", Verdict.NeedsMeasuring)]
    [InlineData("52", "unknown", "622", "47-57", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "622", "622", "47-57", Verdict.NeedsMeasuring)]
    [InlineData("52", "622", "622", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("52", "622", "unknown", "47-57", Verdict.NeedsMeasuring)]
    [InlineData("none", "622", "622", "47-57", Verdict.DoesNotFit)]
    [InlineData("52", "622", "622", "none", Verdict.NeedsMeasuring)]
    public void Pads_reach_the_rim_that_was_measured(string toRim, string readWith, string seat, string reach, Verdict expected)
    {
        RimBrake brake = RimBrake.Read($"rim-caliper; reach {reach}");
        Wheel wheel = Wheel.Read($"beadSeat {seat}");
        Assert.Equal(expected, Judge("rear-rim-caliper-reach", $"rearBoltToRim {toRim}; rearBoltToRimOf {readWith}", (Slot.RearWheel, wheel), (Slot.RearRimBrake, brake)).Verdict);
        Assert.Equal(expected, Judge("front-rim-caliper-reach", "material steel", (Slot.Fork, Fork.Read($"frontBoltToRim {toRim}; frontBoltToRimOf {readWith}")), (Slot.FrontWheel, wheel), (Slot.FrontRimBrake, brake)).Verdict);
    }

    [Fact]
    public void A_reach_accepts_exactly_what_its_inverse_says()
    {
        foreach (RimBrakeReach reach in RimBrakeReach.All)
        {
            for (int half = 60; half < 220; half++)
            {
                bool fits = RimBrakeRelations.Reach.Judge([half * 500_000L, reach.FitCode, 622, 622]).Verdict == Verdict.Fits;
                Assert.Equal(RimBrakeRelations.Accepts(reach) is var (least, most) && half >= least * 2 && half <= most * 2, fits);
            }
        }
    }

    [Theory]
    [InlineData("cantilever")]
    [InlineData("direct-pull")]
    [InlineData("u-brake")]
    public void A_brake_on_bosses_is_asked_for_no_reach_and_no_bolt(string type)
    {
        Assert.Equal(Verdict.Fits, Judge("rear-rim-caliper-reach", "material steel", (Slot.RearWheel, new Wheel()), (Slot.RearRimBrake, RimBrake.Read(type))).Verdict);
        Assert.Equal(Verdict.Fits, Judge("rear-caliper-bolt-in-hole", "rearBrakeHole none", (Slot.RearRimBrake, RimBrake.Read(type))).Verdict);
    }

    [Theory]
    [InlineData("recessed-6", "recessed-6", Verdict.Fits)]
    [InlineData("nutted-6", "recessed-6", Verdict.NeedsMeasuring)]
    [InlineData("recessed-6", "nutted-6", Verdict.NeedsMeasuring)]
    [InlineData("nutted-6", "nutted-1/4", Verdict.NeedsMeasuring)]
    [InlineData("none", "recessed-6", Verdict.DoesNotFit)]
    [InlineData("none", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "recessed-6", Verdict.NeedsMeasuring)]
    [InlineData("recessed-6", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("recessed-6", "none", Verdict.NeedsMeasuring)]
    public void A_bolt_has_the_hole_that_it_is_made_for(string hole, string bolt, Verdict expected)
    {
        RimBrake brake = RimBrake.Read($"rim-caliper; bolt {bolt}");
        Assert.Equal(expected, Judge("rear-caliper-bolt-in-hole", $"rearBrakeHole {hole}", (Slot.RearRimBrake, brake)).Verdict);
        Assert.Equal(expected, Judge("front-caliper-bolt-in-hole", "material steel", (Slot.Fork, Fork.Read($"frontBrakeHole {hole}")), (Slot.FrontRimBrake, brake)).Verdict);
    }

    [Theory]
    [InlineData("74.999999", "direct-pull", Verdict.NeedsMeasuring)]
    [InlineData("75", "direct-pull", Verdict.Fits)]
    [InlineData("85", "cantilever", Verdict.Fits)]
    [InlineData("85.000001", "cantilever", Verdict.NeedsMeasuring)]
    [InlineData("73", "direct-pull", Verdict.NeedsMeasuring)]
    [InlineData("80", "u-brake", Verdict.NeedsMeasuring)]
    [InlineData("80", "type unknown", Verdict.NeedsMeasuring)]
    [InlineData("none", "cantilever", Verdict.DoesNotFit)]
    public void Arms_want_the_usual_spacing(string spacing, string type, Verdict expected)
    {
        Assert.Equal(expected, Judge("rear-brake-arms-on-boss-spacing", $"rearBossSpacing {spacing}", (Slot.RearRimBrake, RimBrake.Read(type))).Verdict);
        Assert.Equal(expected, Judge("front-brake-arms-on-boss-spacing", "material steel", (Slot.Fork, Fork.Read($"frontBossSpacing {spacing}")), (Slot.FrontRimBrake, RimBrake.Read(type))).Verdict);
    }

    [Theory]
    [InlineData("carbon", "for-carbon", Verdict.Fits)]
    [InlineData("carbon", "for-aluminium", Verdict.Unsafe)]
    [InlineData("aluminium", "for-carbon", Verdict.DoesNotFit)]
    [InlineData("aluminium", "for-aluminium", Verdict.Fits)]
    [InlineData("none", "for-aluminium", Verdict.Unsafe)]
    [InlineData("none", "unknown", Verdict.Unsafe)]
    [InlineData("unknown", "for-aluminium", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "for-carbon", Verdict.NeedsMeasuring)]
    [InlineData("carbon", "unknown", Verdict.NeedsMeasuring)]
    public void Pads_are_made_for_the_track(string track, string pads, Verdict expected)
    {
        Fit fit = Judge("rear-pads-on-rim", "material steel", (Slot.RearWheel, Wheel.Read($"brakeTrack {track}")), (Slot.RearRimBrake, RimBrake.Read($"pads {pads}")));
        Assert.Equal(expected, fit.Verdict);
        Assert.Equal(expected, Judge("front-pads-on-rim", "material steel", (Slot.FrontWheel, Wheel.Read($"brakeTrack {track}")), (Slot.FrontRimBrake, RimBrake.Read($"pads {pads}"))).Verdict);
        Assert.True(expected != Verdict.Unsafe || !fit.Cautions.IsEmpty);
    }

    [Theory]
    [InlineData("F100-12", "center-lock", "internal", Verdict.Fits)]
    [InlineData("F100-QR9", "center-lock", "internal", Verdict.Fits)]
    [InlineData("F110-15B", "center-lock", "internal", Verdict.DoesNotFit)]
    [InlineData("F110-15B", "center-lock", "external", Verdict.Fits)]
    [InlineData("F110-20", "center-lock", "external", Verdict.Fits)]
    [InlineData("F110-15B", "center-lock", "none", Verdict.NeedsPart)]
    [InlineData("F110-15B", "six-bolt", "none", Verdict.Fits)]
    [InlineData("F110-15B", "six-bolt", "unknown", Verdict.Fits)]
    [InlineData("F100-12", "center-lock", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("F110-15B", "center-lock", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "center-lock", "internal", Verdict.NeedsMeasuring)]
    [InlineData("F-OWN", "center-lock", "external", Verdict.NeedsMeasuring)]
    [InlineData("F110-15B", "none", "internal", Verdict.DoesNotFit)]
    public void A_lockring_is_turned_over_the_axle(string hub, string fixing, string ring, Verdict expected) => Assert.Equal(
        expected,
        Judge("front-lockring-on-hub-axle", "material steel", (Slot.FrontWheel, Wheel.Read($"hub {hub}; rotorFixing {fixing}")), (Slot.FrontRotor, Rotor.Read($"center-lock; lockring {ring}"))).Verdict);

    [Theory]
    [InlineData("F110-15B", "six-bolt", "none", "none", Verdict.Fits)]
    [InlineData("F110-15B", "six-bolt", "none", "internal", Verdict.Fits)]
    [InlineData("F110-15B", "six-bolt", "bolts", "internal", Verdict.DoesNotFit)]
    [InlineData("F110-15B", "six-bolt", "bolts", "none", Verdict.NeedsPart)]
    [InlineData("F110-15B", "six-bolt", "unknown", "none", Verdict.NeedsMeasuring)]
    [InlineData("F110-15B", "center-lock", "none", "none", Verdict.NeedsPart)]
    [InlineData("F110-15B", "center-lock", "none", "internal", Verdict.DoesNotFit)]
    [InlineData("unknown", "six-bolt", "none", "none", Verdict.Fits)]
    public void A_carrier_that_is_still_to_be_bought_comes_with_its_ring(string hub, string rotor, string carrier, string ring, Verdict expected) => Assert.Equal(
        expected,
        Judge("front-lockring-on-hub-axle", "material steel", (Slot.FrontWheel, Wheel.Read($"hub {hub}; rotorFixing center-lock")), (Slot.FrontRotor, Rotor.Read($"fixing {rotor}; carrier {carrier}; lockring {ring}"))).Verdict);

    [Fact]
    public void One_carrier_is_asked_for_once()
    {
        Build build = Build.From(Frame.Read("steel")).With(Wheel.Read("hub R142-12; center-lock"), Slot.RearWheel).With(Rotor.Read("160; six-bolt; carrier none; lockring none"), Slot.RearRotor);
        Fit only = Assert.Single(build.Check().Findings, f => f.Verdict == Verdict.NeedsPart);
        Assert.Equal("rear-rotor-on-hub", only.Joint!.Id);
        Assert.Equal(["rear-rotor-on-hub:six-bolt-rotor-on-center-lock"], build.SmallParts().Select(p => p.Id).Where(i => i.Contains("rotor", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("center-lock", "six-bolt", "pins", "external", Verdict.NeedsMeasuring)]
    [InlineData("center-lock", "six-bolt", "pins", "internal", Verdict.Fits)]
    [InlineData("center-lock", "six-bolt", "bolts", "external", Verdict.Fits)]
    [InlineData("center-lock", "six-bolt", "with-lockring", "unknown", Verdict.Fits)]
    [InlineData("center-lock", "six-bolt", "none", "internal", Verdict.Fits)]
    [InlineData("center-lock", "six-bolt", "none", "external", Verdict.Fits)]
    [InlineData("center-lock", "center-lock", "unknown", "external", Verdict.Fits)]
    [InlineData("six-bolt", "six-bolt", "unknown", "unknown", Verdict.Fits)]
    [InlineData("center-lock", "six-bolt", "unknown", "external", Verdict.NeedsMeasuring)]
    [InlineData("center-lock", "six-bolt", "pins", "unknown", Verdict.NeedsMeasuring)]
    public void A_carrier_clears_the_ring(string hub, string rotor, string carrier, string ring, Verdict expected) => Assert.Equal(
        expected,
        Judge("rear-carrier-with-lockring", "material steel", (Slot.RearWheel, Wheel.Read($"rotorFixing {hub}")), (Slot.RearRotor, Rotor.Read($"fixing {rotor}; carrier {carrier}; lockring {ring}"))).Verdict);

    [Theory]
    [InlineData("1.8", "1.8", "1.5", Verdict.Fits)]
    [InlineData("1.800001", "1.8", "1.5", Verdict.NeedsMeasuring)]
    [InlineData("1.799999", "1.8", "1.5", Verdict.NeedsMeasuring)]
    [InlineData("1.5", "1.8", "1.5", Verdict.NeedsMeasuring)]
    [InlineData("1.499999", "1.8", "1.5", Verdict.NeedsMeasuring)]
    [InlineData("2.0", "1.8", "1.5", Verdict.NeedsMeasuring)]
    [InlineData("1.4", "1.8", "none", Verdict.NeedsMeasuring)]
    [InlineData("1.399999", "1.8", "none", Verdict.Unsafe)]
    [InlineData("1.399999", "unknown", "unknown", Verdict.Unsafe)]
    [InlineData("1.8", "none", "1.5", Verdict.NeedsMeasuring)]
    [InlineData("none", "1.8", "1.5", Verdict.DoesNotFit)]
    [InlineData("unknown", "1.8", "1.5", Verdict.NeedsMeasuring)]
    [InlineData("1.8", "unknown", "1.5", Verdict.NeedsMeasuring)]
    public void A_rotor_is_as_thick_as_the_caliper_allows(string rotor, string thickest, string thinnest, Verdict expected)
    {
        Assert.Equal(expected, Judge("front-rotor-thickness-in-caliper", "material steel", (Slot.FrontRotor, Rotor.Read($"thickness {rotor}")), (Slot.FrontCaliper, Caliper.Read($"thickestRotor {thickest}; thinnestRotor {thinnest}"))).Verdict);
        Assert.Equal(expected, Judge("rear-rotor-thickness-in-caliper", "material steel", (Slot.RearRotor, Rotor.Read($"thickness {rotor}")), (Slot.RearCaliper, Caliper.Read($"thickestRotor {thickest}; thinnestRotor {thinnest}"))).Verdict);
    }

    [Theory]
    [InlineData("FM-rear-140", "flat", "20", "33", "140", Verdict.Fits)]
    [InlineData("FM-rear-140", "flat", "20", "34.000001", "140", Verdict.Unsafe)]
    [InlineData("FM-rear-140", "flat", "20", "31.999999", "140", Verdict.NeedsMeasuring)]
    [InlineData("FM-rear-140", "flat", "20", "20", "140", Verdict.DoesNotFit)]
    [InlineData("FM-rear-160", "flat", "20", "38", "160", Verdict.Unsafe)]
    [InlineData("FM-rear-140", "flat", "20 ± 0.5", "38", "140", Verdict.Unsafe)]
    [InlineData("FM-rear-140", "flat", "20 ± 1.1", "33", "140", Verdict.NeedsMeasuring)]
    [InlineData("FM-rear-140", "flat", "unknown", "33", "140", Verdict.NeedsMeasuring)]
    [InlineData("FM-rear-140", "flat", "20", "unknown", "140", Verdict.NeedsMeasuring)]
    [InlineData("PM-160", "post", "unknown", "unknown", "160", Verdict.Fits)]
    [InlineData("FM-rear-140", "post", "unknown", "unknown", "140", Verdict.Fits)]
    [InlineData("FM-rear-140", "flat", "none", "33", "140", Verdict.DoesNotFit)]
    [InlineData("FM-rear-140", "flat", "20", "33", "160", Verdict.NeedsMeasuring)]
    [InlineData("FM-rear-140", "flat", "20", "33", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("FM-rear-160", "flat", "20", "33", "180", Verdict.NeedsMeasuring)]
    [InlineData("PM-160", "post", "unknown", "unknown", "unknown", Verdict.Fits)]
    public void A_flat_mount_bolt_comes_13_mm_through_the_stay(string mount, string foot, string stay, string bolt, string rotor, Verdict expected) => Assert.Equal(
        expected, Judge("flat-mount-bolt-in-stay", $"rearBrake {mount}; rearStayThickness {stay}", (Slot.RearCaliper, Caliper.Read($"{foot}; boltLength {bolt}")), (Slot.RearRotor, Rotor.Read($"size {rotor}"))).Verdict);

    [Fact]
    public void The_bolt_of_a_stay_is_the_one_that_the_relation_takes()
    {
        for (long stay = 1_000_000; stay < 60_000_000; stay += 500_000)
        {
            long bolt = DiscRelations.Bolt(stay);
            Assert.Equal(
                (Verdict.Fits, Verdict.Fits, Verdict.Fits, Verdict.Unsafe),
                (Judged(stay, bolt - 1_000_000), Judged(stay, bolt), Judged(stay, bolt + 1_000_000), Judged(stay, bolt + 1_000_001)));
            Assert.NotEqual(Verdict.Fits, Judged(stay, bolt - 1_000_001));
        }

        static Verdict Judged(long stay, long bolt) => DiscRelations.BoltInStay.Judge([BrakeMount.FlatRear140.FitCode, CaliperFoot.Flat.FitCode, stay, bolt, 140_000_000]).Verdict;
    }

    [Theory]
    [InlineData("pull short; fluid DOT")]
    [InlineData("pull none; fluid none")]
    public void A_lever_with_cable_and_fluid_or_neither_is_refused(string text) => Assert.False(BrakeLever.TryRead(text, out _, out _));

    [Theory]
    [InlineData("type disc-cable-road; fluid DOT")]
    [InlineData("type hydraulic disc; fluid none")]
    [InlineData("type direct-pull")]
    public void A_caliper_whose_type_and_fluid_contradict_each_other_is_refused(string text) => Assert.False(Caliper.TryRead(text, out _, out _));
}
