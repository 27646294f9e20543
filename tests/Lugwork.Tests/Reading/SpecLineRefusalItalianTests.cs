using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Lines in Italian whose words look like those of a field and are not: the field of such a line is left open, or the line is ambiguous.</summary>
public sealed class SpecLineRefusalItalianTests
{
    [Theory]
    [InlineData("frame", "chiusura reggisella 34,9 mm", "seatTube")]
    [InlineData("frame", "blocca sella 34,9", "seatTube")]
    [InlineData("frame", "collare sella: 31,8 mm", "seatTube")]
    [InlineData("frame", "bloccaggio reggisella 34,9", "seatTube")]
    public void A_clamp_of_the_saddle_is_no_bore(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("frame", "luce freno 47-57 mm", "rear")]
    [InlineData("frame", "luce forcellini circa 130 mm", "rear")]
    [InlineData("frame", "luce forcellini anteriori 100 mm", "rear")]
    [InlineData("frame", "cambio anteriore collarino 28,6", "seatTubeOutside")]
    [InlineData("rear wheel", "tamburo ruota libera XD", "hubBrake")]
    [InlineData("fork", "altezza massima spessori 30 mm", "axleToCrown")]
    [InlineData("fork", "steli 34 mm", "steerer")]
    [InlineData("front wheel", "larghezza esterna 25 mm", "innerWidth")]
    [InlineData("stem", "attacco tradizionale 22,2 mm", "bar")]
    [InlineData("handlebar", "oversize 780 mm", "clamp")]
    public void A_word_of_another_place_gives_its_field_nothing(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("frame", "senza supporto pinza post mount 180", "rearBrake")]
    [InlineData("frame", "supporto portapacchi 180", "rearBrake")]
    [InlineData("frame", "supporto cambio non UDH", "hanger")]
    [InlineData("frame", "massa totale ammessa 1,2 kg", "systemLimit")]
    [InlineData("frame", "gomme montate 45-622", "largestRearTyre")]
    [InlineData("frame", "monocorona 36T", "largestRing")]
    [InlineData("dropper", "senza cavo a vista", "routing")]
    [InlineData("front inner tube", "fino a 47-622", "narrowestTyre")]
    [InlineData("rear derailleur", "cassetta fino a 11 velocità", "largestSprocket")]
    [InlineData("rear derailleur", "max sprocket 36 / 34T", "largestSprocket")]
    public void What_is_denied_or_of_another_thing_is_not_read(string slot, string text, string field) => Without(slot, text, field);

    private static void Without(string slot, string text, string field) =>
        Assert.DoesNotContain(Told(slot, text), v => v.StartsWith(field.Contains('=', StringComparison.Ordinal) ? field : field + "=", StringComparison.Ordinal));

    private static string[] Told(string slot, string text) =>
        [.. SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)];
}
