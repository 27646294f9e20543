using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Everyday lines in which a word or a figure looks like one that says a value, and is none.</summary>
public sealed class SpecLineRefusalEverydayTests
{
    [Theory]
    [InlineData("frame", "the rear brake is fine", "rearBrake")]
    [InlineData("frame", "rear disc is 180", "rearBrake")]
    [InlineData("frame", "THE REAR BRAKE IS FINE", "rearBrake")]
    [InlineData("fork", "brake is good", "frontBrake")]
    [InlineData("fork", "the disc is fine", "frontBrake")]
    public void A_verb_is_no_mount(string slot, string text, string field) => Without(slot, text, field);

    [Theory]
    [InlineData("flat mount mit 160er Scheibe verbaut")]
    [InlineData("flat mount avec disque de 160")]
    [InlineData("post mount con disco de 180")]
    [InlineData("flat mount with 140 rotor fitted")]
    [InlineData("post mount rear, bike has 180 rotor")]
    [InlineData("flat mount rear, 160 rotors included")]
    [InlineData("postmount, 180 mm Federweg")]
    [InlineData("post mount rear, 160 rear travel")]
    [InlineData("flat mount, rotor max 160")]
    [InlineData("flat mount, front rotor 160")]
    [InlineData("flat mount, voor 140")]
    [InlineData("flat mount rear, rotor 160 or 140")]
    public void A_rotor_that_is_mounted_or_allowed_is_not_the_one_of_the_mount(string text) => Without("frame", text, "rearBrake");

    [Theory]
    [InlineData("seatpost", "tija de 27.2 por 300 pesos", "length")]
    [InlineData("seatpost", "400 posts 27.2", "length")]
    [InlineData("seatpost", "27.2, de 300 a 250", "length")]
    [InlineData("seatpost", "27.2 post, asking 300", "length")]
    [InlineData("frame", "envoi par la poste 31.6", "seatTube")]
    [InlineData("frame", "pen van de stuurpen 25.4", "seatTube")]
    [InlineData("frame", "stuurpen met pen 27.2", "seatTube")]
    [InlineData("frame", "canotto 28.6", "seatTube")]
    [InlineData("frame", "pen 27.2 of 31.6", "seatTube")]
    [InlineData("handlebar", "35 up 760 wide", "clamp")]
    [InlineData("handlebar", "stuur 800 breed, 35 omhoog", "clamp")]
    [InlineData("stem", "caña 28.6", "fixing")]
    [InlineData("stem", "avance 35 mm", "bar")]
    [InlineData("frame", "mehr als 180 nicht getestet", "largestRearRotor")]
    [InlineData("frame", "Scheibe größer als 180 nicht empfohlen", "largestRearRotor")]
    [InlineData("frame", "entra hasta 50 de cubierta", "mostInsertion")]
    [InlineData("rear wheel", "142 auf 148 umgebaut", "hub")]
    [InlineData("rear shock", "165x40 Einbaulänge", "size")]
    [InlineData("seatpost", "27.2 op 31.6 vulbus", "diameter")]
    [InlineData("frame", "Direct-Mount-Auge am Umwerfer", "hanger")]
    [InlineData("frame", "corona unica 34 max", "forkCrowns")]
    [InlineData("frame", "disco 160 mas no 180", "largestRearRotor")]
    [InlineData("rear shock", "210 auf 55 gekürzt", "size")]
    public void A_word_of_another_meaning_binds_no_figure(string slot, string text, string field) => Without(slot, text, field);

    private static void Without(string slot, string text, string field) =>
        Assert.DoesNotContain(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values, v => v.Field == field);
}
