using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Lines told by mouth in which words and figures do not say the same, or in which what is said around a value takes its certainty away: none of them has a value.</summary>
public sealed class SpecLineRefusalSpokenTests
{
    [Theory]
    [InlineData("seatpost", "twenty-seven two, 27.4")]
    [InlineData("seatpost", "siebenundzwanzig zwei, 31,6")]
    [InlineData("seatpost", "thirty-one six, 30.9")]
    [InlineData("seat clamp", "vierunddreißig neun, 31,8")]
    [InlineData("frame", "rear axle one forty-eight, 142x12")]
    [InlineData("frame", "twelve by one forty-eight, 12x142")]
    [InlineData("rear tyre", "forty six twenty-two, 40-559")]
    [InlineData("rear shock", "two ten by fifty-five, 210x50")]
    [InlineData("rear rotor", "two-oh-three, 180")]
    [InlineData("rear wheel", "sechsunddreißig Loch, 32 Loch")]
    [InlineData("chain", "twelve speed, 11 speed")]
    [InlineData("rider", "two hundred sixty-five pounds, 265 kg")]
    public void Words_and_figures_that_differ_are_not_one(string slot, string text) => Empty(slot, text);

    [Theory]
    [InlineData("frame", "two 2 mm spacers")]
    [InlineData("crankset", "five 110 mm arms")]
    [InlineData("rider", "eighty, 80 years old")]
    [InlineData("rear wheel", "two thirty-two hole rims")]
    [InlineData("rear wheel", "nine ten eleven speed")]
    [InlineData("rear wheel", "thirty-two thirty-six holes")]
    [InlineData("seatpost", "twenty-six two-inch shims")]
    [InlineData("fork", "one ten fifteen")]
    [InlineData("rear tyre", "six twenty-two")]
    [InlineData("crankset", "one-ten BCD")]
    [InlineData("headset", "IS42 with 36 balls")]
    [InlineData("headset", "ZS44 with 44 mm")]
    public void What_is_counted_and_half_a_size_are_no_size(string slot, string text) => Empty(slot, text);

    [Theory]
    [InlineData("seatpost", "das ist vielleicht 27,2")]
    [InlineData("seatpost", "it's not 27.2")]
    [InlineData("seatpost", "also keine 27,2")]
    [InlineData("seatpost", "that's what I guess, 27.2")]
    [InlineData("frame", "one forty-two, or maybe 148")]
    [InlineData("handlebar", "the clamp is not the thirty-one eight kind")]
    [InlineData("stem", "thirty-one eight or thirty-five")]
    [InlineData("rear wheel", "thirty-two or 32 spokes")]
    [InlineData("rear wheel", "nix Boost, 148")]
    public void A_filler_takes_no_doubt_away(string slot, string text) => Empty(slot, text);

    [Theory]
    [InlineData("frame", "post mount at the back, comes with a 180")]
    [InlineData("frame", "hinten Post Mount, gefahren mit 160")]
    [InlineData("frame", "hinten Post Mount, das mit dem 160er Adapter")]
    [InlineData("frame", "flat mount rear, a 160 disc included")]
    [InlineData("fork", "Federgabel 160, Bremse Post Mount")]
    [InlineData("fork", "Gabel Post Mount, 160")]
    [InlineData("frame", "BSA, gemessen")]
    [InlineData("frame", "BSA, misst 68,4 breit")]
    [InlineData("bottom bracket", "PF30, measures 41.9")]
    [InlineData("seatpost", "diameter measured 27.1, twenty-seven two")]
    public void What_is_mounted_and_what_was_measured_is_no_name(string slot, string text) => Empty(slot, text);

    private static void Empty(string slot, string text) =>
        Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);
}
