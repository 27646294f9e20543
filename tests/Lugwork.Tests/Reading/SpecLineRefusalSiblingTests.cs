using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Words of the newer forms where they stand with another meaning: another thing's cable, a length, a level, a wish, one of two, what is for sale.</summary>
public sealed class SpecLineRefusalSiblingTests
{
    [Theory]
    [InlineData("dropper", "gaine du cable de frein interne")]
    [InlineData("dropper", "leiding langs de buis voor de rem")]
    [InlineData("dropper", "cable visto en la foto")]
    [InlineData("dropper", "guaina interna del freno")]
    [InlineData("dropper", "hydraulic hose for brake runs through the tube")]
    [InlineData("frame", "keine Riemen\u00F6ffnung n\u00F6tig, da teilbar")]
    [InlineData("frame", "belt split bike, not this one")]
    [InlineData("frame", "bases \u00E9cart\u00E9es \u00E0 130 possible")]
    [InlineData("frame", "I'd have it cold set to 130")]
    [InlineData("frame", "keine gr\u00F6\u00DFere Scheibe als 180 vorhanden")]
    [InlineData("frame", "luce posteriore 130 lumen")]
    [InlineData("frame", "PP paint 142")]
    [InlineData("rear wheel", "135 pp")]
    [InlineData("rear wheel", "135 mm, pp")]
    [InlineData("rear wheel", "135, pp 20 \u20AC")]
    [InlineData("cassette", "pi\u00F1\u00F3n a rosca para rueda fija")]
    [InlineData("pedals", "only one of a pair of pedals")]
    [InlineData("front brake caliper", "olio min livello")]
    [InlineData("front brake caliper", "serbatoio: olio min e max")]
    [InlineData("front brake caliper", "\u00F6l min. 2 Jahre alt")]
    [InlineData("front brake caliper", "olio min. 50 ml")]
    public void Another_meaning_of_a_word_is_not_read(string slot, string text) =>
        Assert.Empty(SpecLine.Read(Slot.All.SingleOrDefault(s => s.Name == slot), text).Values);

    [Theory]
    [InlineData("rear brake lever", "Seilzug: kurz abgel\u00E4ngt")]
    [InlineData("rear brake lever", "Seilzug: lang genug")]
    [InlineData("rear brake lever", "cable pull: long enough for tandem")]
    [InlineData("rear brake lever", "pull: short inner cable")]
    [InlineData("front brake lever", "tiro: largo / corto")]
    [InlineData("front brake lever", "from a cantilever bike")]
    [InlineData("front brake lever", "cantilever, hydraulic")]
    [InlineData("fork", "Federgabel 200, Schaftl\u00E4nge")]
    [InlineData("fork", "forcella ammortizzata 180, disco")]
    [InlineData("headset", "one of the EC34 cups")]
    [InlineData("headset", "ZS44 cups, lower one missing")]
    [InlineData("headset", "ZS44 Schalen, unten fehlt")]
    [InlineData("frame", "ZS44 cups, lower EC")]
    [InlineData("chainring", "directly on the 5 arm spider, 8 holes")]
    [InlineData("chainring", "direct to your door, 3 bolts")]
    [InlineData("chainring", "directamente a cliente, 3 tornillos")]
    [InlineData("crankset", "bolted directly on spider 3 holes")]
    [InlineData("headset cover", "cables through the cap of the frame")]
    [InlineData("-", "seat tube band 31.8 front mech")]
    public void A_length_or_one_of_two_is_not_read(string slot, string text) =>
        Assert.Empty(SpecLine.Read(Slot.All.SingleOrDefault(s => s.Name == slot), text).Values);

    [Theory]
    [InlineData("rear wheel", "622, rim with alloy nipples", "rimMaterial")]
    [InlineData("rear wheel", "622, rim alloy nipples steel spokes", "rimMaterial")]
    [InlineData("rear wheel", "622, the old rim was steel", "rimMaterial")]
    [InlineData("rear wheel", "spokes for carbon rims, 622", "rimMaterial")]
    [InlineData("rear wheel", "622, carbon rim tape", "rimMaterial")]
    [InlineData("rear wheel", "622, not a carbon rim", "rimMaterial")]
    [InlineData("rear wheel", "carbon look rim 622", "rimMaterial")]
    [InlineData("rear wheel", "rim 622 alloy/carbon", "rimMaterial")]
    [InlineData("rear wheel", "622, Felge: Farbe Carbon", "rimMaterial")]
    [InlineData("rear wheel", "622, jante acier moyeu alu", "rimMaterial")]
    [InlineData("rear wheel", "velg 622, nippels 36g", "hubHoles")]
    [InlineData("rear wheel", "hub weighs 36g less, 12x142", "hubHoles")]
    [InlineData("rear wheel", "36er Felge", "rimHoles")]
    [InlineData("rear wheel", "12x148, freehub not convertible", "ends")]
    [InlineData("rear wheel", "12x148, not convertible to tubeless", "ends")]
    [InlineData("seatpost", "27.2, rider weight 90 kg", "riderLimit")]
    [InlineData("seatpost", "27,2, Fahrergewicht 90 kg", "riderLimit")]
    [InlineData("stem", "31.8, 28.6, peso del ciclista 80 kg", "riderLimit")]
    public void What_is_of_another_thing_or_time_is_not_read(string slot, string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(Slot.All.SingleOrDefault(s => s.Name == slot), text).Values, v => v.Field == field);
}
