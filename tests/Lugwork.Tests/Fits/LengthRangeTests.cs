using Lugwork.Brakes;

namespace Lugwork.Tests.Fits;

public sealed class LengthRangeTests
{
    [Fact]
    public void A_range_has_two_lengths_and_equals_what_has_the_same()
    {
        LengthRange place = BrakeBoss.ToAxleFor(559);
        Assert.Equal((251.5, 254.5), (place.Least.Millimeters, place.Most.Millimeters));
        Assert.Equal("251.5 to 254.5 mm", place.ToString());
        Assert.Equal(place, BrakeBoss.ToAxleFor(559));
        Assert.NotEqual(place, BrakeBoss.ToAxleFor(584));
        Assert.Equal("0 to 0 mm", default(LengthRange).ToString());
    }
}
