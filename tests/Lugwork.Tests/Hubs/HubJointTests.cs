using Lugwork.Hubs;
using static Lugwork.Tests.Builds.Bench;

namespace Lugwork.Tests.Hubs;

/// <summary>Nuts, axle lengths, lips, hub gears, and which brakes are asked for.</summary>
public sealed class HubJointTests
{
    [Theory]
    [InlineData("3/8x26", "3/8x26", Verdict.Fits)]
    [InlineData("3/8x26", "3/8x24", Verdict.DoesNotFit)]
    [InlineData("M10x1", "3/8x26", Verdict.DoesNotFit)]
    [InlineData("3/8", "3/8x24", Verdict.NeedsMeasuring)]
    [InlineData("3/8", "M9x1", Verdict.DoesNotFit)]
    [InlineData("M14x1", "M14x1", Verdict.Fits)]
    [InlineData("3/8x26", "M10x1", Verdict.Unsafe)]
    [InlineData("M9x1", "3/8x26", Verdict.Unsafe)]
    [InlineData("unknown", "3/8x24", Verdict.NeedsMeasuring)]
    [InlineData("3/8x24", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("none", "3/8x24", Verdict.DoesNotFit)]
    public void Nuts_have_the_thread_of_the_axle(string axle, string nut, Verdict expected)
    {
        Assert.Equal(expected, Judge("rear-axle-nut-on-hub-axle", "material steel", (Slot.RearWheel, Wheel.Read($"axleThread {axle}")), (Slot.RearAxleNuts, AxleNuts.Read("thread " + nut))).Verdict);
        Assert.Equal(expected, Judge("front-axle-nut-on-hub-axle", "material steel", (Slot.FrontWheel, Wheel.Read($"axleThread {axle}")), (Slot.FrontAxleNuts, AxleNuts.Read("thread " + nut))).Verdict);
    }

    // Both axles of 9 mm stand in the slots of a quick release, a thinner one may, a thicker one does not enter: common practice, no source.
    [Theory]
    [InlineData("F100-N9", "F100-N9", Verdict.Fits)]
    [InlineData("F100-QR9", "F100-N9", Verdict.Fits)]
    [InlineData("F100-N9", "F100-QR9", Verdict.Fits)]
    [InlineData("F100-TB9", "F100-N9", Verdict.Fits)]
    [InlineData("F100-N-3/8", "F100-N9", Verdict.NeedsMeasuring)]
    [InlineData("F100-N9", "F100-N-5/16", Verdict.NeedsMeasuring)]
    [InlineData("F100-N9", "F100-N-3/8", Verdict.DoesNotFit)]
    [InlineData("F100-QR9", "F100-N-3/8", Verdict.DoesNotFit)]
    [InlineData("F100-N-5/16", "F100-N9", Verdict.DoesNotFit)]
    [InlineData("F100-N", "F100-N9", Verdict.NeedsMeasuring)]
    [InlineData("F100-N-3/8", "F100-N", Verdict.NeedsMeasuring)]
    [InlineData("F100-N", "F100-N", Verdict.NeedsMeasuring)]
    [InlineData("F100-QR9", "F100-N", Verdict.NeedsMeasuring)]
    [InlineData("F100-12", "F100-N", Verdict.DoesNotFit)]
    [InlineData("F100-N", "F100-12", Verdict.DoesNotFit)]
    [InlineData("unknown", "F100-N9", Verdict.NeedsMeasuring)]
    public void Nutted_front_axles_are_told_by_their_thickness(string end, string hub, Verdict expected) =>
        Assert.Equal(expected, Judge("front-wheel-in-fork", "material steel", (Slot.Fork, Fork.Read($"front {end}")), (Slot.FrontWheel, Wheel.Read($"hub {hub}; ends fixed"))).Verdict);

    [Theory]
    [InlineData("R120", "R120-3/8", Verdict.NeedsMeasuring)]
    [InlineData("R120-3/8", "R120", Verdict.DoesNotFit)]
    public void A_thin_track_axle_may_stand_in_wider_slots(string end, string hub, Verdict expected) =>
        Assert.Equal(expected, Judge("rear-wheel-in-frame", $"material steel; rear {end}", (Slot.RearWheel, Wheel.Read($"hub {hub}; ends fixed"))).Verdict);

    [Theory]
    [InlineData("9x100 nutted", "F100-N9")]
    [InlineData("5/16 in x 100, nutted", "F100-N-5/16")]
    [InlineData("3/8 in x 100, nutted", "F100-N-3/8")]
    [InlineData("100 mm nutted", "F100-N")]
    public void A_nutted_axle_is_read_by_its_thickness(string text, string key) => Assert.Equal(key, HubStandard.Parse(text, null).FitKey);

    [Theory]
    [InlineData("12x142", "163", "163", Verdict.Fits)]
    [InlineData("12x142", "163", "162.499999", Verdict.Unsafe)]
    [InlineData("12x142", "163", "163.500001", Verdict.DoesNotFit)]
    [InlineData("12x142", "163", "171", Verdict.DoesNotFit)]
    [InlineData("12x142", "171", "163", Verdict.Unsafe)]
    [InlineData("12x142", "163 ± 0.5", "163", Verdict.Fits)]
    [InlineData("12x142", "163 ± 0.6", "163", Verdict.NeedsMeasuring)]
    [InlineData("12x142", "unknown", "163", Verdict.NeedsMeasuring)]
    [InlineData("12x142", "163", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("12x142", "unknown", "142", Verdict.DoesNotFit)]
    [InlineData("12x142", "unknown", "142.000001", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "163", "163", Verdict.NeedsMeasuring)]
    [InlineData("12x142", "none", "163", Verdict.DoesNotFit)]
    public void A_thru_axle_has_the_length_that_the_maker_names(string end, string asked, string length, Verdict expected) => Assert.Equal(
        expected, Judge("rear-thru-axle-length", $"rear {end}; rearAxleLength {asked}", (Slot.RearThruAxle, ThruAxle.Read($"M12x1.5; length {length}"))).Verdict);

    [Theory]
    [InlineData("15x100", "127", "127", Verdict.Fits)]
    [InlineData("15x100", "127", "120", Verdict.Unsafe)]
    [InlineData("15x100", "unknown", "100", Verdict.DoesNotFit)]
    [InlineData("15x100", "unknown", "127", Verdict.NeedsMeasuring)]
    public void A_front_thru_axle_too(string end, string asked, string length, Verdict expected) => Assert.Equal(
        expected, Judge("front-thru-axle-length", "material steel", (Slot.Fork, Fork.Read($"front {end}; frontAxleLength {asked}")), (Slot.FrontThruAxle, ThruAxle.Read($"M15x1.5; length {length}"))).Verdict);

    [Theory]
    [InlineData("F100-QR9", "kept", Verdict.Fits)]
    [InlineData("F100-QR9", "none", Verdict.Unsafe)]
    [InlineData("F100-QR9", "missing", Verdict.Unsafe)]
    [InlineData("F100-QR9", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("F100-TB9", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("F100-15", "unknown", Verdict.Fits)]
    [InlineData("F100-15", "none", Verdict.Fits)]
    [InlineData("F-OWN", "kept", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "none", Verdict.NeedsMeasuring)]
    public void A_disc_wheel_is_kept_in_its_ends(string end, string lips, Verdict expected) => Assert.Equal(
        expected, Judge("disc-on-open-ends", "material steel", (Slot.Fork, Fork.Read($"front {end}; frontLips {lips}")), (Slot.FrontCaliper, Caliper.Read("post"))).Verdict);

    [Theory]
    [InlineData("horizontal", "hub gear", "horizontal", Verdict.Fits)]
    [InlineData("horizontal", "hub gear", "vertical", Verdict.DoesNotFit)]
    [InlineData("horizontal", "hub gear", "none", Verdict.NeedsMeasuring)]
    [InlineData("vertical", "hub gear", "vertical", Verdict.NeedsPart)]
    [InlineData("vertical", "hub gear", "horizontal", Verdict.DoesNotFit)]
    [InlineData("vertical", "hub gear", "none", Verdict.NeedsMeasuring)]
    [InlineData("vertical", "hub gear", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("none", "hub gear", "vertical", Verdict.NeedsMeasuring)]
    [InlineData("vertical", "HG-M", "unknown", Verdict.Fits)]
    [InlineData("none", "XD", "unknown", Verdict.Fits)]
    [InlineData("unknown", "HG-M", "unknown", Verdict.Fits)]
    [InlineData("unknown", "hub gear", "horizontal", Verdict.NeedsMeasuring)]
    [InlineData("horizontal", "unknown", "horizontal", Verdict.Fits)]
    [InlineData("vertical", "unknown", "vertical", Verdict.NeedsMeasuring)]
    [InlineData("horizontal", "hub gear", "unknown", Verdict.NeedsMeasuring)]
    public void A_hub_gear_asks_for_its_slot_and_its_washers(string slot, string body, string washers, Verdict expected) => Assert.Equal(
        expected, Judge("hub-gear-in-dropout", $"rearDropout {slot}", (Slot.RearWheel, Wheel.Read($"body {body}; washers {washers}"))).Verdict);

    [Theory]
    [InlineData("rearBrake none; rearBosses cantilever-622", "frontBrake none; frontBrakeHole recessed-6", "", "frontBrakeLever rearBrakeLever frontRimBrake rearRimBrake")]
    [InlineData("rearBosses cantilever-622", "frontBosses cantilever-622", "", "frontBrakeLever rearBrakeLever frontRimBrake rearRimBrake")]
    [InlineData("rearBrake IS; rearBosses cantilever-622", "frontBrake IS; frontBosses cantilever-622", "", "frontRotor rearRotor frontCaliper rearCaliper frontBrakeLever rearBrakeLever")]
    [InlineData("material steel", "front unknown", "", "frontRotor rearRotor frontCaliper rearCaliper frontBrakeLever rearBrakeLever")]
    [InlineData("rearBrake none", "frontBrake none", "", "")]
    [InlineData("rearBrake none; rearBosses none; rearBrakeHole none", "frontBrake none; frontBosses none", "", "")]
    [InlineData("rearBrake none; rearBrakeHole nutted-6", "frontBrake none; frontBrakeHole nutted-6", "coaster", "frontBrakeLever frontRimBrake")]
    [InlineData("rearBrake none; rearBrakeHole nutted-6", "frontBrake none", "drum", "rearBrakeLever")]
    public void Brakes_are_asked_for_where_there_is_a_place_for_them(string frame, string fork, string hubBrake, string expected)
    {
        Build build = Build.From(Frame.Read(frame)).With(Fork.Read(fork));
        build = hubBrake.Length == 0 ? build : build.With(Wheel.Read("hub brake " + hubBrake), Slot.RearWheel);
        Slot[] brakes = [Slot.FrontRotor, Slot.RearRotor, Slot.FrontCaliper, Slot.RearCaliper, Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.FrontRimBrake, Slot.RearRimBrake, Slot.FrontAxleNuts, Slot.RearAxleNuts];
        Assert.Equal(expected, string.Join(' ', build.Check().Missing.Where(brakes.Contains).Select(s => s.Key)));
    }

    [Theory]
    [InlineData("hub holes 32; rim holes 32", true)]
    [InlineData("hub holes 32h; rim holes 36h", false)]
    [InlineData("hub holes 28 | 32; rim holes 32", true)]
    [InlineData("hub holes 28 | 32; rim holes 36", false)]
    [InlineData("hub holes 32; rim holes unknown", true)]
    [InlineData("rim holes 36", true)]
    public void Hub_and_rim_have_as_many_holes(string wheel, bool read) => Assert.Equal(read, Wheel.TryRead(wheel, out _, out _));

    [Fact]
    public void A_wheel_made_in_code_with_other_holes_never_fits()
    {
        Build whole = WholeBicycle();
        foreach (Slot slot in new[] { Slot.FrontWheel, Slot.RearWheel })
        {
            Wheel wheel = (Wheel)whole[slot]! with { RimHoles = Known<Lugwork.Hubs.SpokeCount>.Of(Lugwork.Hubs.SpokeCount.OfFitCode(36)) };
            Assert.Equal(Verdict.NeedsMeasuring, whole.With(wheel, slot).Check().Verdict);
        }

        Assert.Equal(Verdict.Fits, whole.Check().Verdict);
    }
}
