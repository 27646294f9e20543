using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Compact lines whose short forms stand beside figures of another thing, or alone.</summary>
public sealed class SpecLineRefusalCompactTests
{
    [Theory]
    [InlineData("frame", "ZS44 o ZS56", "headTubeUpper")]
    [InlineData("frame", "ZS44 o. EC44 o.", "headTubeUpper")]
    [InlineData("frame", "EC34 o.", "headTubeUpper")]
    [InlineData("frame", "EC34 o./EC44", "headTubeUpper")]
    [InlineData("frame", "EBB 68", "rear")]
    [InlineData("frame", "seat post. 135 mm insertion", "rear")]
    [InlineData("frame", "dropper post. 150 mm travel", "rear")]
    [InlineData("frame", "HR SA 12, Adapter auf QR 135", "rear")]
    [InlineData("frame", "adapter rear 142, axle 12", "rear")]
    [InlineData("frame", "rear 142, axle 12 or 10", "rear")]
    [InlineData("frame", "12-148 oder 12-142", "rear")]
    [InlineData("frame", "116 mm, M10 hanger", "rear")]
    [InlineData("frame", "rear 116 mm, M10x1 Schaltauge", "rear")]
    [InlineData("frame", "IS rear not PM", "rearBrake")]
    [InlineData("frame", "headset ZS44 / IS", "rearBrake")]
    [InlineData("frame", "Steuersatz IS / hi.", "rearBrake")]
    [InlineData("frame", "the bottom bracket standard is 386EVO", "rearBrake")]
    [InlineData("frame", "IS AV", "rearBrake")]
    [InlineData("fork", "IS AR", "frontBrake")]
    [InlineData("fork", "headset IS / rotor 180", "frontBrake")]
    [InlineData("fork", "100 trav.", "travel")]
    [InlineData("fork", "140 trav. avant", "travel")]
    [InlineData("fork", "rotor rec. 160", "travel")]
    [InlineData("frame", "UDH incl. adapter", "hanger")]
    [InlineData("frame", "no UDH incl.", "hanger")]
    [InlineData("frame", "franz. Rahmen 68 cm", "shell")]
    [InlineData("rider", "Frans 68", "weight")]
    [InlineData("frame", "Stütze 30,9 mit Hülse, Schelle 34,9", "seatTubeOutside")]
    [InlineData("frame", "Sattelstütze 27,2, Schelle 22,2", "seatTubeOutside")]
    [InlineData("front wheel", "Loch 6,5 für Kabel", "valveHole")]
    [InlineData("front wheel", "carbon h. 50 cm", "rimDepth")]
    [InlineData("front wheel", "cerchio h. 50 x 25", "rimDepth")]
    [InlineData("rear wheel", "drum brake, rim 36 holes", "hubHoles")]
    [InlineData("rear wheel", "drum brake hub 36h, rim 650B", "rimHoles")]
    [InlineData("rear wheel", "622x23TC; hub 32 holes", "rimHoles")]
    [InlineData("rear wheel", "622x23TC, 6 holes", "rimHoles")]
    [InlineData("cassette", "12-100", "sprockets")]
    [InlineData("crankset", "Q 146 mm, 4 arms", "boltCircle")]
    [InlineData("headset", "lower spacers 20x6", "lowerCup")]
    public void A_short_form_beside_another_thing_gives_the_field_nothing(string slot, string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values, v => v.Field == field);
}
