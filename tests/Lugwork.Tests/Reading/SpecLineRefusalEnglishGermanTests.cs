using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>English and German neighbours of words that are read, which say less or something else: no value is accepted.</summary>
public sealed class SpecLineRefusalEnglishGermanTests
{
    [Theory]
    [InlineData("italienisches Rennrad")]
    [InlineData("italienische Muffen")]
    [InlineData("italienischem Design")]
    [InlineData("italienischer Lack")]
    [InlineData("italienischer Rahmen, 70er Jahre")]
    [InlineData("englischer Rahmen")]
    [InlineData("englisches Rennrad")]
    [InlineData("englischer Rahmen, Gehäuse 68 mm")]
    [InlineData("Italian colours")]
    [InlineData("bb: eng")]
    [InlineData("rear 68 x 46")]
    public void A_country_is_no_thread(string text) => Without("frame", text, "shell");

    [Fact]
    public void The_country_of_a_frame_leaves_its_material() =>
        Assert.Equal("steel", Assert.Single(SpecLine.Read(Slot.Frame, "italienischer Stahlrahmen").Values).Key);

    [Theory]
    [InlineData("axle 142 mm long")]
    [InlineData("Achse 142 mm lang")]
    [InlineData("Steckachse 142 mm lang")]
    [InlineData("thru-axle 148 mm length")]
    [InlineData("stays are 130 mm wide at rear")]
    [InlineData("rear stays outside 130 mm wide")]
    [InlineData("hinten außen 148 mm breit")]
    [InlineData("hinten 130 mm breit, Sitz")]
    [InlineData("rear brake 130 mm wide")]
    [InlineData("rack at rear is 130 mm wide")]
    [InlineData("Schutzblech hinten 130 mm breit")]
    [InlineData("Hinterreifen 130 mm breit")]
    [InlineData("rear max 130 mm wide")]
    [InlineData("Lenker hinten 130 mm breit")]
    [InlineData("spaced at 5 mm")]
    [InlineData("fork ends 100 mm")]
    [InlineData("drop out 30 mm offset")]
    public void What_is_long_or_wide_elsewhere_is_no_hub(string text) => Without("frame", text, "rear");

    [Theory]
    [InlineData("max. KB Differenz 16")]
    [InlineData("1x11 max 42t")]
    [InlineData("1x max 34t oder 36t")]
    [InlineData("rear cog max 34t 1x")]
    [InlineData("SS max 34t")]
    public void Teeth_of_another_thing_are_no_ring(string text) => Without("frame", text, "largestRing");

    [Theory]
    [InlineData("Hinterbau 12x148, also 130 mm Schnellspanner")]
    [InlineData("12x148, auch 130 mm Schnellspanner")]
    public void Two_hubs_of_one_end_are_none(string text) => Without("frame", text, "rear");

    [Theory]
    [InlineData("frame", "upper ZS44/56", "headTubeLower")]
    [InlineData("frame", "ZS44/28.6", "headTubeLower")]
    [InlineData("frame", "ZS44/56/40", "headTubeLower")]
    [InlineData("frame", "Steuerrohr: 44 mm (oben) / 56 mm (oben)", "headTubeLower")]
    [InlineData("frame", "Steuerrohr 140 mm lang, oben 30 mm abgesägt", "headTubeLength")]
    [InlineData("frame", "FG 9,5", "rearAxleThread")]
    [InlineData("frame", "S/P: 350 mm", "seatTube")]
    [InlineData("fork", "FG 25,4", "steerer")]
    [InlineData("fork", "1 1/8 parallel zum Boden", "steererShape")]
    [InlineData("fork", "Federw 140 N/mm", "travel")]
    [InlineData("crankset", "cranks 170 mm BCD 130", "crankLength")]
    [InlineData("crankset", "175 mm", "crankLength")]
    [InlineData("rear tyre", "kevlar puncture belt", "bead")]
    [InlineData("rear tyre", "Kevlar-Pannenschutz", "bead")]
    [InlineData("rear tyre", "aramid breaker", "bead")]
    [InlineData("handlebar", "lever clamp 22.2", "clamp")]
    [InlineData("handlebar", "OS", "clamp")]
    [InlineData("handlebar", "oversize", "clamp")]
    [InlineData("stem", "OS 80 mm", "bar")]
    [InlineData("stem", "Steckvorbau 80 mm", "fixing")]
    [InlineData("stem", "Konusvorbau 100 mm", "fixing")]
    [InlineData("front inner tube", "AV oder SV", "valve")]
    [InlineData("front inner tube", "F/V A/V", "valve")]
    [InlineData("front inner tube", "SV-Ventil", "valve")]
    [InlineData("front inner tube", "Ventilschaft krumm", "valveLength")]
    [InlineData("front wheel", "6L", "rotorFixing")]
    [InlineData("front wheel", "Maul zu", "innerWidth")]
    [InlineData("front wheel", "6-Loch oder Centerlock", "rotorFixing")]
    public void A_word_that_says_less_is_left_open(string slot, string text, string field) => Without(slot, text, field);

    private static void Without(string slot, string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values, v => v.Field == field);
}
