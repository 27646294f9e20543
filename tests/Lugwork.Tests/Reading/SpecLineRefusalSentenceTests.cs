using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Sentences with several values of a part, of which one is not said for certain.</summary>
public sealed class SpecLineRefusalSentenceTests
{
    [Theory]
    [InlineData("frame", "The seat tube measures 26.7 mm inside, rear 12x148", "seatTube")]
    [InlineData("frame", "Sattelrohr gemessen mit einer 27,2er Stütze, hinten 12x148", "seatTube")]
    [InlineData("frame", "seat tube measured with a 27.2 post: loose, rear 12x148", "seatTube")]
    [InlineData("frame", "BSA shell, measured 67.2 mm, rear 12x148", "shell")]
    [InlineData("frame", "zadelpen 27,2 of 30,9 met een klem", "seatTube")]
    [InlineData("frame", "rear 142 or 148 with a 12 mm thru axle", "rear")]
    [InlineData("frame", "PF86, hinten 142 oder 148 mm mit 12er Achse", "rear")]
    [InlineData("frame", "PF86, hinten Post Mount 180 mit 12er Achse", "rear")]
    [InlineData("frame", "hinten 142 mm, nicht mit 12er Achse", "rear")]
    [InlineData("frame", "front 100 with a 12 mm axle, BSA 68", "rear")]
    [InlineData("frame", "BSA 120 with a 12 mm axle", "rear")]
    [InlineData("fork", "160 mm mit 15er Achse", "front")]
    [InlineData("fork", "travel 150 with a 15 mm axle", "front")]
    [InlineData("frame", "vieux cadre français boîtier 68 mm", "shell")]
    [InlineData("frame", "bottom bracket is French made, 68 mm", "shell")]
    [InlineData("frame", "Frans merk, trapas 68 mm", "shell")]
    [InlineData("frame", "flat mount, for 160 rotors with an adapter, rear 12x148", "rearBrake")]
    [InlineData("frame", "flat mount, comes with 160 rotor, rear 12x148", "rearBrake")]
    [InlineData("frame", "flat mount, mit 160er Scheibe montiert, hinten 12x148", "rearBrake")]
    [InlineData("frame", "flat mount, bis 160, hinten 12x148", "rearBrake")]
    [InlineData("frame", "The bottom bracket standard is 386EVO.", "rearBrake")]
    [InlineData("rear wheel", "drum brake 36h, rim 650B", "rimHoles")]
    [InlineData("rear wheel", "a rim and a hub drilled for 32, quick release 135", "hubHoles")]
    [InlineData("rear wheel", "141 mm quick-release hub, HG 11-speed road body and a 584x30TC rim drilled for 32 spokes", "hubHoles")]
    [InlineData("frame", "12x148 and a 12x142 hub", "rear")]
    [InlineData("frame", "a 27.2 and a 30.9 post", "seatTube")]
    [InlineData("frame", "PF30 68 and not a post mount 160", "rearBrake")]
    public void What_is_open_in_a_sentence_stays_open(string slot, string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values, v => v.Field == field);
}
