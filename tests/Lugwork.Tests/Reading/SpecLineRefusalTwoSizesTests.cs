using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Lines that say two things at once, or a figure that is of another thing, a day or what is in stock. What is right is common practice, no source.</summary>
public sealed class SpecLineRefusalTwoSizesTests
{
    [Theory]
    [InlineData("frame", "no bigger rotor than 180 in stock")]
    [InlineData("fork", "keine gr\u00F6\u00DFere Scheibe als 180 auf Lager")]
    [InlineData("headset", "EC34 cups without the lower")]
    [InlineData("headset", "ZS44 both EC34")]
    [InlineData("chainring", "ring direct to the spider, 8 bolts")]
    [InlineData("crankset", "ring direct to the spider, 8 bolts")]
    [InlineData("fork", "crown race 26.4 to 27 cut")]
    [InlineData("fork", "Konussitz 26,4 auf 27")]
    [InlineData("rear thru-axle", "12 x 142, pitch 1.75 on the old axle")]
    [InlineData("seatpost", "30.9, not this one")]
    [InlineData("seatpost", "27,2, nicht diese")]
    [InlineData("seatpost", "am 27.2. abholen")]
    [InlineData("dropper", "gear cable external")]
    [InlineData("frame", "BSA 68 drop")]
    [InlineData("fork", "suspension fork, 100 mm, 15 mm axle")]
    [InlineData("stem", "stem 1\" (28.6 mm) steerer")]
    [InlineData("rider", "target 70 kg")]
    [InlineData("rider", "Zielgewicht 70 kg")]
    [InlineData("rider", "poids cible 70 kg")]
    public void Nothing_is_read(string slot, string text) =>
        Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);

    [Theory]
    [InlineData("frame", "no rotor bigger than 180", "180")]
    [InlineData("frame", "max rotor 180 in stock", "180")]
    [InlineData("headset", "EC34 cups", "EC34")]
    [InlineData("headset", "both EC34 upper cups", "EC34")]
    [InlineData("seatpost", "Sattelst\u00FCtze 27.2. abholbereit", "27.2")]
    [InlineData("frame", "BSA 68 drop bar frame", "BSA-68")]
    [InlineData("fork", "voorvork, 110 mm Boost, steekas 15 mm", "F110-15B")]
    [InlineData("stem", "clamp 1-1/8\" (31.8 mm bar)", "31.8")]
    [InlineData("rear thru-axle", "M12, pitch 1.75", "M12x1.75")]
    public void What_stands_there_plainly_is_read(string slot, string text, string key) =>
        Assert.Contains(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values, v => v.Key == key);

    [Fact]
    public void One_half_of_a_headset_is_not_both() =>
        Assert.DoesNotContain(SpecLine.Read(Slot.Headset, "both EC34 upper cups").Values, v => v.Field == "lowerCup");
}
