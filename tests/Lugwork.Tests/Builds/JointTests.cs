using static Lugwork.Tests.Builds.Bench;

namespace Lugwork.Tests.Builds;

/// <summary>Each joint: both sides of its boundaries, an unknown on each side, and a trap.</summary>
public sealed class JointTests
{
    [Theory]
    [InlineData("rear 12x142; material carbon", "hub R142-12", Verdict.Fits)]
    [InlineData("rear 12x142; material carbon", "hub R135-QR; ends swappable", Verdict.NeedsPart)]
    [InlineData("rear 12x142; material carbon", "hub R135-QR; ends fixed", Verdict.DoesNotFit)]
    [InlineData("rear 12x142; material carbon", "hub R135-QR", Verdict.NeedsMeasuring)]
    [InlineData("rear 135 QR; material carbon", "hub R142-12", Verdict.NeedsPart)]
    [InlineData("rear 12x148; material carbon", "hub R142-12", Verdict.NeedsMeasuring)]
    [InlineData("rear 12x142; material carbon", "hub R148-12", Verdict.DoesNotFit)]
    [InlineData("rear 12x142; material carbon", "hub R148-12; ends unknown", Verdict.DoesNotFit)]
    [InlineData("rear unknown; material carbon", "hub R142-12", Verdict.NeedsMeasuring)]
    [InlineData("rear 12x142; material carbon", "hub unknown", Verdict.NeedsMeasuring)]
    [InlineData("rear 126 QR; material steel", "hub R130", Verdict.Fits)]
    [InlineData("rear 126 QR; material aluminium", "hub R130", Verdict.Unsafe)]
    [InlineData("rear 126 QR; material titanium", "hub R130", Verdict.Unsafe)]
    [InlineData("rear 126 QR; material unknown", "hub R130", Verdict.NeedsMeasuring)]
    [InlineData("rear 130 QR; material steel", "hub R135-QR", Verdict.NeedsPart)]
    [InlineData("rear R110-3/8; material steel", "hub R110-14", Verdict.DoesNotFit)]
    [InlineData("rear R110-14; material steel", "hub R110-3/8", Verdict.NeedsPart)]
    [InlineData("rear 10x120; material steel", "hub 9.5x120", Verdict.NeedsMeasuring)]
    [InlineData("rear 150 ± 0.5; material carbon", "hub R150-12", Verdict.NeedsMeasuring)]
    [InlineData("rear 141 ± 0.5; material carbon", "hub R141-QR", Verdict.NeedsMeasuring)]
    [InlineData("rear 135 ± 0.5; material carbon", "hub R142-12", Verdict.NeedsMeasuring)]
    [InlineData("rear 12x150; material carbon", "hub 10x150; ends fixed", Verdict.DoesNotFit)]
    [InlineData("rear 135 QR; material carbon", "hub 10x135 nutted", Verdict.Fits)]
    [InlineData("rear R132.5; material aluminium", "hub R142-12", Verdict.NeedsPart)]
    [InlineData("rear R145-flex; material carbon", "hub R141-QR; ends swappable", Verdict.NeedsPart)]
    [InlineData("rear R145-flex; material carbon", "hub R141-QR; ends fixed", Verdict.DoesNotFit)]
    [InlineData("rear 12x157; material carbon", "hub 12x157", Verdict.Fits)]
    [InlineData("rear 12x148; material carbon", "hub R135-QR; ends swappable", Verdict.NeedsMeasuring)]
    public void A_rear_wheel_is_judged_by_standard_ends_and_material(string frame, string wheel, Verdict expected) =>
        Assert.Equal(expected, RearWheel(frame, wheel));

    [Theory]
    [InlineData("front 12x100", "hub F100-12", Verdict.Fits)]
    [InlineData("front 12x100", "hub F100-15", Verdict.NeedsPart)]
    [InlineData("front 15x110", "hub F100-15", Verdict.NeedsMeasuring)]
    [InlineData("front 15x100", "hub F110-15B", Verdict.DoesNotFit)]
    [InlineData("front F110-20", "hub F110-20B", Verdict.DoesNotFit)]
    [InlineData("front 20x110", "hub F110-20B", Verdict.NeedsMeasuring)]
    [InlineData("front F100-QR9", "hub 9x100 bolt", Verdict.Fits)]
    [InlineData("front F110-15B-31", "hub F110-20B", Verdict.NeedsPart)]
    [InlineData("front F-OWN", "hub F-OWN", Verdict.NeedsMeasuring)]
    [InlineData("front unknown", "hub F100-12", Verdict.NeedsMeasuring)]
    public void A_front_wheel_is_judged_by_standard_and_not_by_its_printed_width(string fork, string wheel, Verdict expected) =>
        Assert.Equal(expected, FrontWheel(fork, wheel));

    [Theory]
    [InlineData("seat tube 27.2", "27.2", Verdict.Fits)]
    [InlineData("seat tube 27.2", "27.4", Verdict.DoesNotFit)]
    [InlineData("seat tube 27.2", "26.8", Verdict.NeedsPart)]
    [InlineData("seat tube 27.2", "27.0", Verdict.DoesNotFit)]
    [InlineData("seat tube 27.2", "26.6", Verdict.DoesNotFit)]
    [InlineData("seat tube 27.2", "31.6", Verdict.DoesNotFit)]
    [InlineData("seat tube unknown", "27.2", Verdict.NeedsMeasuring)]
    [InlineData("seat tube 27.2", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("seat tube 27.18 ± 0.05", "27.2", Verdict.Fits)]
    [InlineData("seat tube 27.30 ± 0.05", "27.2", Verdict.Fits)]
    [InlineData("seat tube 27.2 ± 0.2", "27.2", Verdict.NeedsMeasuring)]
    [InlineData("seat tube 27.2", "27.18 ± 0.05", Verdict.Fits)]
    [InlineData("seat tube 27.2", "27.15 ± 0.02", Verdict.Fits)]
    [InlineData("seat tube 38 ± 1", "38 ± 1", Verdict.NeedsMeasuring)]
    [InlineData("seat tube 33 ± 0.1", "33 ± 0.1", Verdict.NeedsMeasuring)]
    [InlineData("seat tube 34.9", "27.2 | 30.9 | 31.6", Verdict.NeedsPart)]
    [InlineData("seat tube 27.2 | 27.4", "31.6", Verdict.DoesNotFit)]
    public void A_seatpost_goes_in_its_own_bore_or_in_a_shim_that_exists(string frame, string post, Verdict expected) =>
        Assert.Equal(expected, Post(frame, post));

    [Theory]
    [InlineData("insertion 80; mark 75", Verdict.Fits)]
    [InlineData("insertion 79.999999; mark 75", Verdict.Unsafe)]
    [InlineData("insertion 210; mark 75", Verdict.Fits)]
    [InlineData("insertion 210.000001; mark 75", Verdict.DoesNotFit)]
    [InlineData("insertion 90; mark 90", Verdict.Fits)]
    [InlineData("insertion 80; mark 20", Verdict.Fits)]
    [InlineData("insertion 89.9; mark 90", Verdict.Unsafe)]
    [InlineData("insertion 80 ± 1; mark 75", Verdict.NeedsMeasuring)]
    [InlineData("insertion 90 ± 5; mark 75", Verdict.Fits)]
    [InlineData("insertion 70; mark unknown", Verdict.Unsafe)]
    [InlineData("insertion 90; mark unknown", Verdict.NeedsMeasuring)]
    [InlineData("insertion unknown; mark 75", Verdict.NeedsMeasuring)]
    public void Insertion_is_held_between_the_larger_least_and_the_most(string post, Verdict expected) =>
        Assert.Equal(expected, Insertion("leastInsertion 80; mostInsertion 210", post));

    [Theory]
    [InlineData("insertion 54.4; mark none", Verdict.Fits)]
    [InlineData("insertion 54.399999; mark none", Verdict.Unsafe)]
    [InlineData("insertion 40; mark 30", Verdict.Unsafe)]
    public void Two_diameters_are_the_least_even_where_no_one_prints_a_figure(string post, Verdict expected) =>
        Assert.Equal(expected, Insertion("leastInsertion none; mostInsertion none", post));

    [Fact]
    public void Without_a_frame_figure_the_insertion_stays_open() =>
        Assert.Equal(Verdict.NeedsMeasuring, Insertion("material steel", "insertion 150; mark 75"));

    [Theory]
    [InlineData("leastInsertion 80; mostInsertion 80", "mark 80", Verdict.Fits)]
    [InlineData("leastInsertion 80; mostInsertion 80", "mark 80.000001", Verdict.DoesNotFit)]
    [InlineData("leastInsertion 81; mostInsertion 80", "mark unknown", Verdict.DoesNotFit)]
    [InlineData("leastInsertion 80; mostInsertion none", "mark 300", Verdict.Fits)]
    [InlineData("leastInsertion 80; mostInsertion unknown", "mark 75", Verdict.NeedsMeasuring)]
    public void A_hopeless_seat_tube_is_refused_before_anything_is_asked(string frame, string post, Verdict expected) =>
        Assert.Equal(expected, Room(frame, post));

    [Theory]
    [InlineData("body HG-M", "9-speed HG", Verdict.Fits)]
    [InlineData("body HG-L", "9-speed HG", Verdict.NeedsPart)]
    [InlineData("body HG", "9-speed HG", Verdict.NeedsMeasuring)]
    [InlineData("body HG 10", "9-speed HG", Verdict.NeedsMeasuring)]
    [InlineData("body HG-M", "HG 10", Verdict.NeedsMeasuring)]
    [InlineData("body HG-M", "10-speed HG", Verdict.NeedsMeasuring)]
    [InlineData("body HG-M", "HG-11-road", Verdict.DoesNotFit)]
    [InlineData("body HG-M", "11-speed HG", Verdict.NeedsMeasuring)]
    [InlineData("body XD", "11-speed HG", Verdict.DoesNotFit)]
    [InlineData("body unknown", "9-speed HG", Verdict.NeedsMeasuring)]
    [InlineData("body HG-M", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("body none", "9-speed HG", Verdict.DoesNotFit)]
    [InlineData("body XD", "XDR", Verdict.DoesNotFit)]
    [InlineData("body XDR", "XD", Verdict.NeedsPart)]
    public void A_cassette_has_a_cell_for_every_body(string wheel, string cassette, Verdict expected) =>
        Assert.Equal(expected, CassetteOn(wheel, cassette));

    [Theory]
    [InlineData("beadSeat 622", "37-622", Verdict.Fits)]
    [InlineData("beadSeat 622", "40-635", Verdict.DoesNotFit)]
    [InlineData("beadSeat 622", "25-630", Verdict.DoesNotFit)]
    [InlineData("beadSeat 622", "700x35C", Verdict.Fits)]
    [InlineData("beadSeat 622", "700x28", Verdict.Fits)]
    [InlineData("beadSeat 700", "700x28", Verdict.NeedsMeasuring)]
    [InlineData("beadSeat ISO 700", "700x28", Verdict.DoesNotFit)]
    [InlineData("beadSeat 541", "37-540", Verdict.NeedsMeasuring)]
    [InlineData("beadSeat unknown", "37-622", Verdict.NeedsMeasuring)]
    [InlineData("beadSeat 622", "size unknown", Verdict.NeedsMeasuring)]
    [InlineData("beadSeat 559 | 584", "37-622", Verdict.DoesNotFit)]
    public void A_tyre_has_the_bead_seat_of_its_rim(string wheel, string tyre, Verdict expected) =>
        Assert.Equal(expected, TyreBead(wheel, tyre));

    [Theory]
    [InlineData("rimType C; innerWidth 19", "28-622", Verdict.Fits)]
    [InlineData("rimType C; innerWidth 19", "25-622", Verdict.DoesNotFit)]
    [InlineData("rimType TC; innerWidth 19", "25-622", Verdict.Fits)]
    [InlineData("rimType TC; innerWidth 19", "63-622", Verdict.Fits)]
    [InlineData("rimType TC; innerWidth 19", "64-622", Verdict.DoesNotFit)]
    [InlineData("rimType unknown; innerWidth 19", "25-622", Verdict.NeedsMeasuring)]
    [InlineData("rimType TC; innerWidth unknown", "25-622", Verdict.NeedsMeasuring)]
    [InlineData("rimType TC; innerWidth 35", "60-622", Verdict.NeedsMeasuring)]
    [InlineData("rimType TSS; innerWidth 25", "29-622; bead tubeless", Verdict.Fits)]
    [InlineData("rimType TSS; innerWidth 25", "28-622; bead tubeless", Verdict.Unsafe)]
    [InlineData("rimType TSS; innerWidth 25", "29-622; bead folding", Verdict.Unsafe)]
    [InlineData("rimType TSS; innerWidth 25", "28-622; bead unknown", Verdict.Unsafe)]
    [InlineData("rimType TSS; innerWidth 25", "29-622; bead unknown", Verdict.NeedsMeasuring)]
    [InlineData("rimType TSS; innerWidth 22.5 ± 0.5", "28-622; bead tubeless", Verdict.Fits)]
    [InlineData("rimType TSS; innerWidth 23 ± 0.5", "28-622; bead tubeless", Verdict.NeedsMeasuring)]
    [InlineData("rimType TSS; innerWidth 24 ± 0.5", "28-622; bead tubeless", Verdict.Unsafe)]
    [InlineData("rimType TSS; innerWidth 23.000001", "28-622; bead tubeless", Verdict.Unsafe)]
    [InlineData("rimType TSS; innerWidth 23", "28-622; bead tubeless", Verdict.Fits)]
    [InlineData("rimType TSS; innerWidth 25.000001", "29-622; bead tubeless", Verdict.Unsafe)]
    [InlineData("rimType C; innerWidth 18 ± 3", "34-622", Verdict.NeedsMeasuring)]
    [InlineData("rimType HB; innerWidth 20", "37-622", Verdict.DoesNotFit)]
    [InlineData("rimType SS; innerWidth 20", "37-622; bead folding", Verdict.DoesNotFit)]
    public void A_tyre_width_goes_by_inner_width_and_rim_type(string wheel, string tyre, Verdict expected) =>
        Assert.Equal(expected, TyreWidth(wheel, tyre));

    [Theory]
    [InlineData("largestRearRotor 180", "180", Verdict.Fits)]
    [InlineData("largestRearRotor 180", "183", Verdict.Unsafe)]
    [InlineData("largestRearRotor 179.999999", "180", Verdict.Unsafe)]
    [InlineData("largestRearRotor unknown", "160", Verdict.NeedsMeasuring)]
    [InlineData("largestRearRotor none", "160", Verdict.NeedsMeasuring)]
    [InlineData("largestRearRotor 139", "140", Verdict.Unsafe)]
    [InlineData("largestRearRotor 230", "size unknown", Verdict.NeedsMeasuring)]
    [InlineData("largestRearRotor 230", "fixing six-bolt", Verdict.NeedsMeasuring)]
    [InlineData("largestRearRotor 180", "size unknown", Verdict.NeedsMeasuring)]
    public void A_rotor_above_the_makers_limit_is_unsafe_and_a_missing_limit_is_unknown(string frame, string rotor, Verdict expected) =>
        Assert.Equal(expected, RotorLimit(frame, rotor));

    [Theory]
    [InlineData("six-bolt", "six-bolt", Verdict.Fits)]
    [InlineData("center-lock", "six-bolt", Verdict.NeedsPart)]
    [InlineData("six-bolt", "center-lock", Verdict.DoesNotFit)]
    [InlineData("five-bolt", "four-bolt", Verdict.NeedsMeasuring)]
    [InlineData("rotorFixing none", "six-bolt", Verdict.DoesNotFit)]
    [InlineData("rotorFixing unknown", "six-bolt", Verdict.NeedsMeasuring)]
    [InlineData("six-bolt", "fixing unknown", Verdict.NeedsMeasuring)]
    public void A_six_bolt_rotor_has_a_carrier_and_a_splined_one_has_none(string wheel, string rotor, Verdict expected) =>
        Assert.Equal(expected, Fixing(wheel, rotor));

    [Theory]
    [InlineData("PM-160", "post", "160", Verdict.Fits)]
    [InlineData("PM-160", "post", "180", Verdict.NeedsPart)]
    [InlineData("PM-180", "post", "160", Verdict.DoesNotFit)]
    [InlineData("PM-200", "post", "203", Verdict.NeedsMeasuring)]
    [InlineData("PM-203", "post", "200", Verdict.DoesNotFit)]
    [InlineData("PM-160", "post", "205", Verdict.DoesNotFit)]
    [InlineData("IS", "post", "140", Verdict.NeedsPart)]
    [InlineData("PM-old", "post", "160", Verdict.DoesNotFit)]
    [InlineData("FM-rear-160", "flat", "140", Verdict.DoesNotFit)]
    [InlineData("FM-rear-140", "flat", "140", Verdict.Fits)]
    [InlineData("FM-rear-140", "flat", "160", Verdict.NeedsPart)]
    [InlineData("none", "post", "160", Verdict.DoesNotFit)]
    [InlineData("unknown", "post", "160", Verdict.NeedsMeasuring)]
    [InlineData("PM-160", "mounting unknown", "160", Verdict.NeedsMeasuring)]
    [InlineData("PM-160", "post", "size unknown", Verdict.NeedsMeasuring)]
    [InlineData("PM-180 | PM-200", "post", "160", Verdict.DoesNotFit)]
    public void A_rotor_is_the_native_size_plus_an_increment_that_exists(string mount, string caliper, string rotor, Verdict expected) =>
        Assert.Equal(expected, OnMount($"rearBrake {mount}", caliper, rotor));
}
