using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Lines in Dutch whose words look like those of a field and are not: the field of such a line is left open, or the line is ambiguous.</summary>
public sealed class SpecLineRefusalDutchTests
{
    [Theory]
    [InlineData("frame", "zadelpenstrop 34,9 mm", "seatTube")]
    [InlineData("frame", "klemband zadelpen 34,9 mm", "seatTube")]
    [InlineData("frame", "zadelpenklemband: 31,8 mm", "seatTube")]
    [InlineData("frame", "voorderailleuropname klem 34,9", "seatTubeOutside")]
    [InlineData("frame", "voorversnelling klem 34,9", "seatTubeOutside")]
    public void A_clamp_of_the_saddle_is_no_bore(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("frame", "afstand tussen de nokken 130 mm", "rear")]
    [InlineData("frame", "tussen de padden ongeveer 130 mm", "rear")]
    [InlineData("frame", "padafstand onbekend 130 of 135", "rear")]
    [InlineData("frame", "zadelstang 350 mm", "seatTube")]
    [InlineData("frame", "buitenbanden 45-622 erbij", "largestRearTyre")]
    [InlineData("front wheel", "velg extern 25 mm", "innerWidth")]
    [InlineData("front wheel", "velg buiten 25 mm", "innerWidth")]
    [InlineData("saddle", "onderstel 155 mm", "rails")]
    [InlineData("rear derailleur", "cassette tot 11 speed", "largestSprocket")]
    public void A_word_of_another_place_gives_its_field_nothing(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("frame", "geen remklauwhouder post mount 180", "rearBrake")]
    [InlineData("frame", "bracket voor lamp 34,9", "seatTubeOutside")]
    [InlineData("rear wheel", "niet voor vaste naaf", "body")]
    [InlineData("front rim brake", "niet voor racefietsrem", "type")]
    [InlineData("front inner tube", "niet voor hollandventiel", "valve")]
    [InlineData("front inner tube", "47 tot 28-622", "narrowestTyre")]
    [InlineData("star nut or expander", "zonder klauwmoer", "kind")]
    [InlineData("front brake lever", "niet als remgreep voor cantilever", "pull")]
    [InlineData("fork", "vorksteel van 220 gram", "steererLength")]
    public void What_is_denied_or_of_another_thing_is_not_read(string slot, string text, string field) => Without(slot, text, field);

    private static void Without(string slot, string text, string field) =>
        Assert.DoesNotContain(Told(slot, text), v => v.StartsWith(field.Contains('=', StringComparison.Ordinal) ? field : field + "=", StringComparison.Ordinal));

    private static string[] Told(string slot, string text) =>
        [.. SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)];
}
