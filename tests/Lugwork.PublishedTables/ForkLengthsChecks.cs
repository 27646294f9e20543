using Lugwork.Suspension;
using static Lugwork.PublishedTables.Identified;

namespace Lugwork.PublishedTables;

/// <summary>Forks by the lengths and offsets that makers and builders print.</summary>
public sealed class ForkLengthsChecks
{
    private const string Maker = "Rigid fork vs 120 mm suspension fork; a fork maker";
    private const string Confusion = "Forking confusion; g-tedproductions.blogspot.com, 2010";
    private const string Line2015 = "SOC14: a closer look at the 2015 product line; BikeRumor, 2014";
    private const string Length = "Welche Einbauhoehe eignet sich an meinem Bike (in German); a fork maker, 2017";
    private const string CrossForks = "Disc cross forks; a frame builder, 2014";
    private const string Bmx = "The truth about BMX fork sizing; brainybiker.com";
    private const string BmxShop = "BMX forks; a retailer";
    private const string Shipping = "Mountain fork now shipping; Bike Hugger";
    private const string Pair = "Will a 29 fork fit a 27.5 bike; brainybiker.com";
    private const string Notes = "Notes on MTB frame geometry; a frame builder, 2012";
    private const string RaceFork = "29 in race fork: first impressions; greggsom.blogspot.com, 2008";
    private const string Rake = "To the point: rake and trail; Pinkbike, 2013";

    [Theory]
    [InlineData(525, 120, "29-120", Maker)]
    [InlineData(536.4, 160, "26-160", Line2015)]
    [InlineData(556.4, 180, "26-180", Line2015)]
    [InlineData(549.1, 160, "27.5-160", Line2015)]
    [InlineData(559.1, 170, "27.5-170", Line2015)]
    [InlineData(567.1, 160, "29-160", Line2015)]
    [InlineData(506, 100, "29-100", Length)]
    [InlineData(504, 100, "29-100", Length)]
    [InlineData(501, 100, "29-100", RaceFork)]
    [InlineData(501, 100, "29-100", Notes)]
    [InlineData(532, 140, "27.5-140", Pair)]
    [InlineData(550, 140, "29-140", Pair)]
    public void A_suspension_fork_is_among_what_its_length_and_travel_can_be(double length, double travel, string key, string source) =>
        Among(source, key, ForkClass.Identify(Mm(length, 1), Mm(travel, 1)));

    [Theory]
    [InlineData(490, "29-rigid-120", Maker)]
    [InlineData(490, "29-rigid-120", Confusion)]
    [InlineData(465, "29-rigid-80", Confusion)]
    [InlineData(470, "29-rigid-80", Confusion)]
    [InlineData(470, "29-rigid-80", Shipping)]
    [InlineData(472, "29-rigid-80", Shipping)]
    [InlineData(395, "700c-cyclocross", Shipping)]
    [InlineData(395, "700c-cyclocross", CrossForks)]
    [InlineData(400, "700c-cyclocross", CrossForks)]
    [InlineData(310, "20-bmx", Bmx)]
    [InlineData(315, "20-bmx", Bmx)]
    [InlineData(320, "20-bmx", Bmx)]
    [InlineData(315, "20-bmx", BmxShop)]
    public void A_rigid_fork_is_among_what_its_length_can_be(double length, string key, string source) =>
        Among(source, key, ForkClass.Identify(Mm(length, 1)));

    [Theory]
    [PrintedIn(Length)]
    [InlineData(470)]
    [InlineData(490)]
    public void A_rigid_29_fork_of_the_useful_range_is_told(double length) =>
        Assert.True(ForkClass.Identify(Mm(length, 3)).Candidates.Any(c => !c.Value.IsSuspension && c.Value.FitKey.StartsWith("29", StringComparison.Ordinal)), Length);

    [Fact]
    [PrintedIn(Pair)]
    public void Wheel_sizes_differ_by_18_mm_at_one_travel()
    {
        double apart = ForkClass.Parse("29-140", null).LeastAxleToCrown.Millimeters - ForkClass.Parse("27.5-140", null).LeastAxleToCrown.Millimeters;
        Assert.True(Math.Abs(apart - 18) <= 2, $"{Pair}: 532 and 550, here {apart} apart");
    }

    [Theory]
    [InlineData(51, "29", Rake)]
    [InlineData(46, "29", Rake)]
    [InlineData(51, "29", Notes)] // a race fork of 501 mm
    public void An_offset_of_the_2010s_is_among_what_it_can_be(double offset, string key, string source) => Among(source, key, ForkOffset.Identify(Mm(offset, 0.5)));

    [Fact]
    [PrintedIn(Rake)]
    public void An_offset_of_51_is_first_of_all_a_29_fork() => First(Rake, "29", ForkOffset.Identify(Mm(51, 0.2)));
}
