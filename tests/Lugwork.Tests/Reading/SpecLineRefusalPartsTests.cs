using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Lines about small parts and the drive that look like ones that are read, and say the value of something else, of nothing, or of two things.</summary>
public sealed class SpecLineRefusalPartsTests
{
    [Theory]
    [InlineData("Italienisch 73 mm")]
    [InlineData("Italian 68, square ISO")]
    [InlineData("filetto italiano, scatola 83 mm")]
    [InlineData("BB92 86.5")]
    [InlineData("Thompson 73 mm cottered")]
    public void A_bracket_of_a_width_that_its_family_does_not_have_gives_nothing(string text) => Assert.Empty(Told("bottom bracket", text));

    [Theory]
    [InlineData("Spanish BMX, 22 mm axle")]
    [InlineData("Spanish BMX, rodamientos para eje de 22 mm")]
    [InlineData("Mid BMX press bearings 22 mm axle")]
    [InlineData("Euro BMX, 19 mm axle")]
    [InlineData("American BMX 22 mm axle")]
    public void A_family_of_several_widths_says_none(string text)
    {
        Without("bottom bracket", text, "narrowestShell");
        Without("bottom bracket", text, "widestShell");
    }

    [Theory]
    [InlineData("bottom bracket", "BB30 Ø 46, 68 mm", "family")]
    [InlineData("bottom bracket", "PF30 Ø 42, 73 mm", "family")]
    [InlineData("crankset", "8 cannelures, 48/36/26", "spindle")]
    [InlineData("crankset", "acht Keile kurz 9 mm", "spindle")]
    [InlineData("crankset", "not 10 spline", "spindle")]
    [InlineData("crankset", "one-piece spider, 110 BCD 5 arm", "spindle")]
    [InlineData("crankset", "30 mm axle for 73 mm shell", "spindle")]
    [InlineData("crankset", "30 mm spindle for 68/73/79 shell", "spindle")]
    [InlineData("crankset", "no Q-factor given, 146 BCD 4 arm", "qFactor")]
    [InlineData("crankset", "Lochkreis 122 mm, 5 Arme, Frankreich 70er", "largestRing")]
    [InlineData("chainring", "no belt, 44T, 5x130", "speeds")]
    [InlineData("chainring", "34/50T 2x11", "teeth")]
    public void What_is_said_of_a_crank_does_not_settle_it(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("front tyre", "450A 37-622")]
    [InlineData("front tyre", "36er 57-622")]
    [InlineData("front tyre", "22 inch 37-622")]
    [InlineData("front tyre", "3.5 57-622")]
    [InlineData("front tyre", "1.75 57-622")]
    [InlineData("rear derailleur", "cassette 11-speed")]
    [InlineData("rear derailleur", "Kassette 12-fach")]
    [InlineData("rear derailleur", "cassette 12v, chape longue")]
    [InlineData("cassette", "12-speed HG MTB cassette")]
    [InlineData("cassette", "12-speed HG+ MTB cassette on freehub body")]
    [InlineData("rear shifter", "STI shifter hydraulic brake 11-speed")]
    [InlineData("rear shifter", "shift/brake lever hydraulic")]
    [InlineData("rear shifter", "Schalthebel für hydraulische Scheibenbremse")]
    [InlineData("chain guide", "BB/ISCG05")]
    [InlineData("chain guide", "BB or ISCG05")]
    [InlineData("chain guide", "for 34.9 seat tube")]
    [InlineData("chain guide", "guide for bikes without front derailleur")]
    [InlineData("saddle", "oval rails 9 mm")]
    [InlineData("saddle", "oval rails 7 mm wide")]
    [InlineData("saddle", "forcella 7 mm")]
    [InlineData("rear shock", "trunnion or eyelet 185x55")]
    [InlineData("rear shock", "trunnion and eyelet 205x60")]
    [InlineData("rear shock", "hardware 8 mm bolt, 35 mm wide")]
    public void A_label_a_mate_or_half_a_size_gives_nothing(string slot, string text) => Assert.Empty(Told(slot, text));

    [Theory]
    [InlineData("rear derailleur", "Schaltwerk hydraulisch gedämpft, 11-fach", "signal")]
    [InlineData("rear derailleur", "11-speed, hydraulic damped cage", "signal")]
    [InlineData("rear shifter", "right, 11-speed, hydraulic", "signal")]
    [InlineData("rear tubeless valve", "Ventil 44 mm, nicht französisch", "valve")]
    [InlineData("rear tubeless valve", "44 mm, made in French factory", "valve")]
    [InlineData("rear inner tube", "18/25-622 French made 60 mm", "valve")]
    [InlineData("rear inner tube", "28-47/622 valvola italiana 40 mm", "valve")]
    [InlineData("pedals", "left pedal only 9/16", "sides")]
    [InlineData("pedals", "links 9/16 x 20", "sides")]
    [InlineData("pedals", "not French, 14 mm spanner, 9/16", "thread=14x1.25")]
    [InlineData("chain guide", "not on the seat tube, ISCG05", "mount=derailleur-mount")]
    [InlineData("seatpost", "alu bolts, carbon post 27.2", "material=aluminium")]
    [InlineData("seatpost", "28.8 mm, titanium, 350", "length")]
    [InlineData("dropper", "kein Funk", "routing")]
    [InlineData("dropper", "31.6, kein Zug dabei", "routing")]
    public void What_is_denied_or_of_another_thing_is_not_read(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("Vorbau 90 mm, Lenker 31,8", "stem.bar")]
    [InlineData("attacco manubrio ahead 1-1/4\"", "stem.bar")]
    [InlineData("attacco manubrio 31,8 / piega manubrio 31,8 / pedali 9/16", "stem.fixing")]
    [InlineData("Lenkergriffe, Innendurchmesser 22,2 mm", "handlebar.grip")]
    [InlineData("potence à plongeur 22,0 mm, cintre 25,0 mm", "handlebar.clamp")]
    public void A_part_is_not_taken_for_its_mate(string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(null, text).Values, v => $"{v.Slot.Key}.{v.Field}" == field);

    private static void Without(string slot, string text, string field) =>
        Assert.DoesNotContain(Told(slot, text), v => v.StartsWith(field.Contains('=', StringComparison.Ordinal) ? field : field + "=", StringComparison.Ordinal));

    private static string[] Told(string slot, string text) =>
        [.. SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)];
}
