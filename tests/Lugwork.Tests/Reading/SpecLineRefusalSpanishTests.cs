using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Spanish lines that look like ones that are read and say another thing, or not enough.</summary>
public sealed class SpecLineRefusalSpanishTests
{
    [Theory]
    [InlineData("rear wheel", "núcleo XD no incluido", "body")]
    [InlineData("rear wheel", "núcleo XD incluido, núcleo MS incluido", "body")]
    [InlineData("rear wheel", "se entrega sin núcleo XD", "body")]
    [InlineData("front wheel", "perforación 6,5", "valveHole")]
    [InlineData("front wheel", "maza 32", "hubHoles")]
    [InlineData("chainring", "plato 58", "teeth")]
    [InlineData("chainring", "plato 50 mm", "teeth")]
    [InlineData("chainring", "cubre plato 42", "teeth")]
    [InlineData("chainring", "tornillos de plato 42", "teeth")]
    [InlineData("crankset", "bielas 68", "crankLength")]
    [InlineData("crankset", "sin bielas 170", "crankLength")]
    [InlineData("crankset", "bielas 165/170", "crankLength")]
    [InlineData("crankset", "bielas hasta 175", "crankLength")]
    [InlineData("handlebar", "para potencia de 90 mm", "clamp")]
    [InlineData("handlebar", "para potencia corta de 35 mm", "clamp")]
    [InlineData("handlebar", "sin potencia 31,8", "clamp")]
    [InlineData("fork", "vástago 110 mm", "steererLength")]
    [InlineData("fork", "longitud del vástago de la potencia 110 mm", "steererLength")]
    [InlineData("fork", "tubo no cónico", "steererShape")]
    [InlineData("frame", "luz trasera 45", "largestRearTyre")]
    [InlineData("frame", "espacio trasero para portabultos 130 mm", "rear")]
    [InlineData("frame", "descarrilador no compatible 34,9", "frontDerailleurMount")]
    [InlineData("rear derailleur", "piñón hasta 11 velocidades", "largestSprocket")]
    [InlineData("front inner tube", "pico fino o pico grueso", "valve")]
    [InlineData("front tyre", "aro flexible o rígido", "bead")]
    public void A_line_that_looks_alike_gives_the_field_nothing(string slot, string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values, v => v.Field == field);
}
