using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Rows and spoken lines whose figure stands apart from its name and is denied, offered beside another, or in conflict.</summary>
public sealed class SpecLineRefusalRowFormsTests
{
    [Theory]
    [InlineData("frame", "post. \u25BA QR 130 mm (= Boost 12\u00D7148)", "rear")]
    [InlineData("frame", "post. QR 130 mm (Boost 12x148)", "rear")]
    [InlineData("chain guide", "ISCG tabs, not the 05", "mount")]
    [InlineData("chain guide", "ISCG, 05 oder alt", "mount")]
    [InlineData("chain guide", "ISCG mount, 5", "mount")]
    [InlineData("chain guide", "ISCG or ISCG 05", "mount")]
    [InlineData("fork", "110 boost, eje pasante de quince a veinte", "front")]
    [InlineData("fork", "110 Boost, Steckachse f\u00FCnfzehn oder zwanzig", "front")]
    [InlineData("rear derailleur", "electronic, cable, 11 speed", "signal")]
    [InlineData("rear derailleur", "11 velocidades, electr\u00F3nico, por cable", "signal")]
    [InlineData("fork", "110 mm travel, 15 mm thru axle", "front")]
    [InlineData("fork", "110 fork, 12 mm thru axle", "front")]
    [InlineData("frame", "achter en voor 180", "rear")]
    [InlineData("frame", "telaio corsa 65 mm", "mostForkTravel")]
    [InlineData("fork", "bicicleta de 100 de viaje larga, horquilla de 15", "travel")]
    [InlineData("frame", "flat mount for 160s with adapter", "rearBrake")]
    [InlineData("frame", "flat mount for 140s and 160s", "rearBrake")]
    [InlineData("crankset", "cranks 170s or 175s", "crankLength")]
    [InlineData("rear shock", "6 bolts, stroke 2\"", "size")]
    [InlineData("rear shock", "8 x neu, Hub 2\"", "size")]
    [InlineData("fork", "bigger rotor than 180 fits", "largestFrontRotor")]
    [InlineData("frame", "Gabel Bremsscheibe max 180, keine Doppelbrücke", "mostForkTravel")]
    [InlineData("rear wheel", "HG body 11 speed, 9 speed cassette fitted", "body")]
    [InlineData("rear tyre", "700B 47C", "size")]
    [InlineData("rear tyre", "20c, 700 gefahren", "size")]
    [InlineData("rear tyre", "47C, weighs 700", "size")]
    [InlineData("rear tyre", "700er Rad, 28C oder 32C", "size")]
    [InlineData("frame", "sticker says 31.6 but it takes 27.2", "seatTube")]
    [InlineData("seatpost", "28.8 mm, titanium, 350", "length")]
    [InlineData("rear tyre", "copertoncino 28-622", "hold")]
    [InlineData("frame", "old post 27.2", "seatTube")]
    [InlineData("rear wheel", "HG body, takes 11 speed, I had a 10 speed cassette", "body")]
    [InlineData("frame", "measured with calipers 27, so 27.2?", "seatTube")]
    public void What_is_in_doubt_is_not_read(string slot, string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values, v => v.Field == field);
}
