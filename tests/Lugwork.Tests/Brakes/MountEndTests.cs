using System.Globalization;
using Lugwork.Brakes;

namespace Lugwork.Tests.Brakes;

/// <summary>Both ends of what a mount measures: a reading there is exact, and one a hundredth outside is not.</summary>
public sealed class MountEndTests
{
    [Theory]
    [InlineData("IS-front", "51", "51")]
    [InlineData("IS-rear", "51", "51")]
    [InlineData("IS-front-DH", "51", "51")]
    [InlineData("PM-140", "74", "74.2")]
    [InlineData("PM-160", "74", "74.2")]
    [InlineData("PM-180", "74", "74.2")]
    [InlineData("PM-200", "74", "74.2")]
    [InlineData("PM-203", "74", "74.2")]
    [InlineData("PM-old", "68", "69")]
    [InlineData("DM-22", "22", "22")]
    [InlineData("FM-front-140", "34", "34")]
    [InlineData("FM-front-160", "34", "34")]
    [InlineData("FM-rear-140", "34", "34")]
    [InlineData("FM-rear-160", "34", "34")]
    public void Spacing_of_the_holes(string mount, string least, string most) => Holds(mount, least, most, r => BrakeMount.Identify(holeSpacing: r));

    [Theory]
    [InlineData("IS-front", "87.3", "88.2")]
    [InlineData("IS-rear", "79", "79.2")]
    public void Axle_to_the_farther_hole(string mount, string least, string most) => Holds(mount, least, most, r => BrakeMount.Identify(axleToFarHole: r));

    private static void Holds(string mount, string least, string most, Func<MeasuredLength, Identification<BrakeMount>> identify)
    {
        (decimal low, decimal high) = (decimal.Parse(least, CultureInfo.InvariantCulture), decimal.Parse(most, CultureInfo.InvariantCulture));
        Assert.Equal(0, Off(low));
        Assert.Equal(0, Off(high));
        Assert.NotEqual(0, Off(low - 0.01m));
        Assert.NotEqual(0, Off(high + 0.01m));

        decimal? Off(decimal millimetres) =>
            identify(MeasuredLength.OfMillimetres(millimetres, 0.05m)).Candidates.Where(c => c.Value.FitKey == mount).Select(c => (decimal?)c.DeviationMillimetres).SingleOrDefault();
    }
}
