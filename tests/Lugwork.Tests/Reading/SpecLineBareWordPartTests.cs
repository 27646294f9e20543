using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Words of pedals, cranks and drives that are of something beside the part: the field of such a line is left open.</summary>
public sealed class SpecLineBareWordPartTests
{
    [Theory]
    [InlineData("pedals", "both sides clip", "sides")]
    [InlineData("pedals", "both sides platform, 9/16", "sides")]
    [InlineData("pedals", "left / right cleats", "sides")]
    [InlineData("pedals", "2 right allen keys", "sides")]
    [InlineData("pedals", "2 linke Schuhplatten", "sides")]
    [InlineData("pedals", "2x left pedals, 1 right", "sides")]
    [InlineData("pedals", "beide links en rechts", "sides=two-left")]
    [InlineData("crankset", "carbon monobloc 30 mm", "spindle")]
    [InlineData("crankset", "alu monoblocco forgiato", "spindle")]
    [InlineData("bottom bracket", "in un pezzo, BSA 68", "takes")]
    [InlineData("bottom bracket", "uit één stuk gefreesd, BSA", "takes")]
    [InlineData("bottom bracket", "d'une pièce, 68x113", "takes")]
    [InlineData("bottom bracket", "eight splines, short spindle 113 mm", "takes")]
    [InlineData("bottom bracket", "acht Keile, kurze Garantie", "takes")]
    [InlineData("bottom bracket", "8-spline, 118 mm axle long cage", "takes")]
    [InlineData("bottom bracket", "8-spline, long life bearings", "takes")]
    [InlineData("crankset", "bolts: 4 included, 104", "boltCircle")]
    [InlineData("crankset", "bolts: 5 included, 110", "boltCircle")]
    [InlineData("bottom bracket", "isis compatible", "takes")]
    [InlineData("rear shifter", "hydraulique 11v STI", "signal")]
    [InlineData("rear shifter", "11 speed hydraulic", "signal")]
    [InlineData("rear shifter", "Hydraulic road, 2x12", "signal")]
    [InlineData("rear derailleur", "hydraulisch, 2x11", "signal")]
    [InlineData("front derailleur", "hydraulique 2v", "signal")]
    [InlineData("rear derailleur", "1 zu 1 getauscht, 9-fach", "actuation")]
    [InlineData("rear derailleur", "11v, 1 op 1 inruil", "actuation")]
    [InlineData("rear shifter", "1 a 1 con el mando izquierdo", "actuation")]
    [InlineData("rear shifter", "8-speed, thick plate washers", "actuation")]
    [InlineData("cassette", "poulie 11 dents", "speeds")]
    [InlineData("cassette", "puleggia 12 denti", "speeds")]
    [InlineData("chainring", "polea 42", "speeds")]
    [InlineData("cassette", "carrier sprocket, 10-51", "pattern")]
    [InlineData("chain guide", "fits to bottom bracket area, ISCG tabs", "mount")]
    [InlineData("chain", "8 speed cassette, 116 links", "size")]
    [InlineData("stem", "pen 25.4 stuur", "fixing")]
    [InlineData("stem", "pen 25.4 mm klemming stuur", "fixing")]
    [InlineData("seatpost", "alu geschmiedet, carbon Kloben 27.2", "material")]
    [InlineData("levers and shifters", "rennbremshebel Ersatzgummi", "clamp")]
    [InlineData("levers and shifters", "routed road lever, flat bar adapter", "clamp")]
    [InlineData("rider", "max load 120 kg", "mass")]
    [InlineData("rider", "max. Belastung 110 kg", "mass")]
    [InlineData("frame", "BSA 68 mm, must be faced", "shellFace")]
    public void A_word_of_what_stands_beside_says_nothing_of_the_part(string slot, string text, string field) => Without(slot, text, field);

    private static void Without(string slot, string text, string field) =>
        Assert.DoesNotContain(Told(slot, text), v => v.StartsWith(field.Contains('=', StringComparison.Ordinal) ? field : field + "=", StringComparison.Ordinal));

    private static string[] Told(string slot, string text) =>
        [.. SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)];
}
