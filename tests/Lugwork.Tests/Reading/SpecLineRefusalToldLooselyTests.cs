using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Lines told loosely that look like ones that are read, and leave open what they say.</summary>
public sealed class SpecLineRefusalToldLooselyTests
{
    [Theory]
    [InlineData("fork", "15x110, have never run a rotor bigger than 180", "largestFrontRotor")]
    [InlineData("fork", "15x110, nie eine Scheibe größer als 180 gefahren", "largestFrontRotor")]
    [InlineData("fork", "15x110, mai montato un disco più grande di 180", "largestFrontRotor")]
    [InlineData("fork", "15x110, nunca he puesto un disco mas grande que 180", "largestFrontRotor")]
    [InlineData("fork", "15x110, nooit een schijf groter dan 180 gehad", "largestFrontRotor")]
    [InlineData("frame", "el tubo de sillín es de 31,8, no sé si por dentro o por fuera", "seatTube")]
    [InlineData("frame", "tija 27,2 creo que", "seatTube")]
    [InlineData("frame", "le tube de selle fait 27,2 à l'intérieur, je crois", "seatTube")]
    [InlineData("frame", "las punteras de atrás son horizontales, que se abren hacia atrás", "rearTriangle")]
    [InlineData("frame", "forcellini orizzontali, si apre verso dietro", "rearTriangle")]
    [InlineData("frame", "dropouts horizontal, the slot opens to the rear", "rearTriangle")]
    [InlineData("frame", "la tija del otro cuadro, de 27,2", "seatTube")]
    [InlineData("frame", "le tube de selle, à l'extérieur, fait 34,9 mm", "seatTube")]
    [InlineData("frame", "freno post mount, el cuadro de 160 de recorrido", "rearBrake")]
    [InlineData("frame", "post mount, la horquilla de 160", "rearBrake")]
    [InlineData("frame", "post mount, la de carbono 160", "rearBrake")]
    [InlineData("frame", "freno post mount, la de 160 o 180", "rearBrake")]
    [InlineData("frame", "freno post mount, como mucho la de 180", "rearBrake")]
    [InlineData("frame", "PF30, tija, de 73 mm", "shell")]
    [InlineData("frame", "BSA, eje de 135 mm", "shell")]
    [InlineData("frame", "pedalier BSA, con recorrido de 120 mm", "shell")]
    [InlineData("headset", "ZS44 with 30 mm stack", "crownRace")]
    [InlineData("headset", "ZS44 con 30 bolas", "crownRace")]
    [InlineData("headset", "ZS44/28.6, ZS56/40, ZS55/30", "lowerCup")]
    [InlineData("headset", "EC34/28.6 EC34/30 EC34/26.4", "lowerCup")]
    [InlineData("rear derailleur", "es de diez dientes", "chain")]
    [InlineData("chain", "es de 12 euros", "size")]
    [InlineData("cassette", "HG, el pequeño es de once", "pattern")]
    [InlineData("seatpost", "trenta e nove velocità", "diameter")]
    [InlineData("rear rotor", "disco de uno ochenta", "thickness")]
    [InlineData("rear tyre", "veintinueve por dos o por dos veinticinco", "size")]
    [InlineData("front tyre", "sesenta quinientos", "size")]
    public void A_line_that_looks_alike_gives_the_field_nothing(string slot, string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values, v => v.Field == field);
}
