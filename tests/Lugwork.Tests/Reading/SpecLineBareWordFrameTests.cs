using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Words that are as well said of damage, of another part or of what is not sold with it: no value is read from them.</summary>
public sealed class SpecLineBareWordFrameTests
{
    [Theory]
    [InlineData("frame", "Swiss made bottom bracket, shell 68", "shell")]
    [InlineData("frame", "Swiss bottom bracket maker, shell 68 mm", "shell")]
    [InlineData("frame", "telaio americano, movimento 68 mm", "shell")]
    [InlineData("frame", "hub flange 130 mm", "rear")]
    [InlineData("frame", "stays 68 mm apart at the disc brake", "rearBrake")]
    [InlineData("frame", "seatstays 68 mm apart, brake bridge", "rearBrake")]
    [InlineData("fork", "stanchion legs 68 mm apart, disc brake", "frontBrake")]
    [InlineData("fork", "rim brake posts 68 mm apart", "frontBrake")]
    [InlineData("fork", "brake hole to crown 22 mm apart", "frontBrake")]
    [InlineData("fork", "Brake hole 22 mm apart", "frontBrake")]
    [InlineData("frame", "Spiel im Steuersatz", "headsetCables")]
    [InlineData("frame", "inside the headset there is rust", "headsetCables")]
    [InlineData("frame", "jeu dans le jeu de direction", "headsetCables")]
    [InlineData("frame", "grease in het balhoofdstel", "headsetCables")]
    [InlineData("headset cover", "through it a cable tie", "cables")]
    [InlineData("headset cover", "plain cover, hoses through the stem", "cables")]
    [InlineData("headset cover", "two cable ports closed with plugs", "cables")]
    [InlineData("frame", "Fork max 203 mm", "mostForkTravel")]
    [InlineData("frame", "Gabel max 180 mm", "mostForkTravel")]
    [InlineData("frame", "Fork max 150 mm quill", "mostForkTravel")]
    public void Mounts_cables_and_travel_are_not_taken_from_a_word_of_another_thing(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("Hanger not threaded correctly, stripped", "hanger")]
    [InlineData("Gear hanger has no thread left, needs a helicoil", "hanger")]
    [InlineData("Schaltauge ohne Gewinde für Achse", "hanger")]
    [InlineData("patilla sin rosca dañada", "hanger")]
    [InlineData("without derailleur mount bolt", "hanger")]
    [InlineData("no hanger play", "hanger")]
    [InlineData("Ohne Schaltauge geliefert (M10)", "hanger")]
    [InlineData("sin patilla de cambio de repuesto", "hanger")]
    [InlineData("Crack: right seatstay split near dropout", "rearTriangle")]
    [InlineData("Hauban droit fendu, à réparer", "rearTriangle")]
    [InlineData("right dropout removable", "rearTriangle")]
    [InlineData("ohne Rahmenschloss (Schlüssel fehlt)", "rearTriangle")]
    [InlineData("sans fourche double té", "forkCrowns")]
    [InlineData("zonder dubbelkroonsvork", "forkCrowns")]
    [InlineData("Una sola corona 42T", "forkCrowns")]
    [InlineData("opening for the dropper lever", "dropperEntry")]
    [InlineData("dropper cable hole closed by rubber plug", "dropperEntry")]
    [InlineData("threaded insert in seat tube for front derailleur", "shell")]
    [InlineData("SP: 25 mm setback", "seatTube")]
    [InlineData("sp: 28 (speed)", "seatTube")]
    [InlineData("fixed seat clamp 34.9", "binder")]
    public void Damage_and_what_is_not_sold_with_it_is_no_value_of_a_frame(string text, string field) => Without("frame", text, field);

    private static void Without(string slot, string text, string field) =>
        Assert.DoesNotContain(Told(slot, text), v => v.StartsWith(field.Contains('=', StringComparison.Ordinal) ? field : field + "=", StringComparison.Ordinal));

    private static string[] Told(string slot, string text) =>
        [.. SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)];
}
