using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Sentences about several parts in which a figure stands near the words of a field and is of something else.</summary>
public sealed class SpecLineRefusalAmongPartsTests
{
    [Theory]
    [InlineData("frame", "12x148 pas 1x12", "rearAxleThread")]
    [InlineData("frame", "12x148, hanger M10, pitch 1.0", "rearAxleThread")]
    [InlineData("frame", "Stütze im Rahmen, max 110", "mostInsertion")]
    [InlineData("frame", "hanger, axle 10 mm x 26 tpi", "hanger")]
    [InlineData("frame", "carro posteriore 140 mm di corsa, sgancio rapido", "rear")]
    [InlineData("frame", "dual crown fork, rotor max 200", "mostForkTravel")]
    [InlineData("fork", "eje pasante de 15 y 100 de recorrido, post mount 180", "front")]
    [InlineData("fork", "perno passante da 15 e 100 di escursione", "front")]
    [InlineData("fork", "axe de 15 et 110 de débattement", "front")]
    [InlineData("fork", "thru axle 15 with 100 travel", "front")]
    [InlineData("fork", "Steckachse 15 mit 100 Federweg", "front")]
    [InlineData("frame", "eje pasante de 12 y 148 de largo, BSA 68", "rear")]
    [InlineData("frame", "axe traversant de 12 et 142 de long, BSA 68", "rear")]
    [InlineData("frame", "perno passante da 12 o 142", "rear")]
    [InlineData("frame", "tija de 27,2 y 135 de potencia con cierre rápido", "rear")]
    [InlineData("frame", "BSA 68 et bases de 135 avec blocage rapide", "rear")]
    [InlineData("frame", "BSA 68, siège à blocage rapide et 120 de débattement", "rear")]
    [InlineData("frame", "tija de cierre rápido de 100 mm y BSA 68", "rear")]
    [InlineData("frame", "freno post mount 160, pasante 180", "rear")]
    [InlineData("frame", "BSA and the rear is 135 with quick release", "shell")]
    [InlineData("frame", "Tretlager BSA, Schnellspanner 135", "shell")]
    [InlineData("frame", "flat mount con disco de 160 y tija de 27,2", "rearBrake")]
    [InlineData("frame", "flat mount, disco de 160 montado y tija 27,2", "rearBrake")]
    [InlineData("frame", "flat mount for 140 or 160 rotor and 27.2 post", "rearBrake")]
    [InlineData("frame", "flat mount pour disque de 180 et tige 27,2", "rearBrake")]
    [InlineData("frame", "flat mount, fork for 160 rotor and 27.2 post", "rearBrake")]
    [InlineData("frame", "charge max. système 300 lb", "loadLimit")]
    [InlineData("frame", "carico max sistema 136 kg", "loadLimit")]
    [InlineData("frame", "charge max. porte-bagages 25 kg", "systemLimit")]
    [InlineData("frame", "Zuladung max 120 kg", "systemLimit")]
    [InlineData("frame", "148 livres avec le cadre", "systemLimit")]
    [InlineData("frame", "tyre clearance 45-622 without mudguards, 40-622 with", "largestRearTyre")]
    [InlineData("frame", "sin guardabarros le entran cubiertas de 50-622", "largestRearTyre")]
    [InlineData("frame", "Altezza telaio 56 cm – orizzontale 565 mm", "rearDropout")]
    [InlineData("frame", "horizontal 560 mm", "rearDropout")]
    [InlineData("crankset", "cuatro brazos, BCD 104, tornillos quitados", "boltCircle")]
    [InlineData("crankset", "bielas de carretera o MTB, eje de 24 mm", "spindle")]
    [InlineData("crankset", "eje de 24, compatible carretera y MTB", "spindle")]
    [InlineData("rear wheel", "moyeu à tambour 36 trous, jante 622x19C", "rimHoles")]
    [InlineData("rear wheel", "584x30TC rim drilled for 32 spokes and a 141 mm quick-release hub", "hubHoles")]
    [InlineData("rear wheel", "mozzo 148x12 e cerchio 584x25TSS a 32 fori", "hubHoles")]
    public void The_figure_is_of_something_else(string slot, string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values, v => v.Field == field);

    [Theory]
    [InlineData("(inf.) ZS56 — (sup.) ZS49")]
    [InlineData("ZS49 (sup.) / ZS56 (inf.)")]
    [InlineData("ZS56 (inf.), ZS49 (sup.)")]
    public void A_short_word_in_brackets_says_the_half(string text)
    {
        SpecLine line = SpecLine.Read(Slot.Frame, text);
        Assert.Equal("49", line.Values.Single(v => v.Field == "headTubeUpper").Key);
        Assert.Equal("56", line.Values.Single(v => v.Field == "headTubeLower").Key);
    }
}
