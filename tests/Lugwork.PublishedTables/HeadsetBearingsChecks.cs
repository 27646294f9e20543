using Lugwork.Steering;
using static Lugwork.PublishedTables.Identified;

namespace Lugwork.PublishedTables;

/// <summary>Bearings as sellers write them and as owners measured them.</summary>
public sealed class HeadsetBearingsChecks
{
    private const string Seller = "Information and Guides: Measure Headset Bearings; a bearing seller";
    private const string Measure = "How to measure sealed headset bearing sizes; CyclingTips, 2021";
    private const string Angles = "How to Measure Headset Bearings; a bearing seller";
    private const string Cutting = "Fork cutting and headset; allez-allez.net, 2019";
    private const string RoadFrame = "Headset bearings of a road frame (measured); midlandscyclist.blogspot.com, 2014";
    private const string CarbonFrames = "Head bearings of two carbon road frames; CycleChat, 2013";
    private const string RaceFrame = "Head bearing of a race frame replaced (in Japanese); hatenablog.com";
    private const string Cable = "The definitive thread for 1-1/2 internal routing headsets; Chinertown forum";
    private const string Refit = "Headset removal and refit, part I; pedalingzen.blogspot.com, 2011";

    [Theory]
    [InlineData("30.15x41x6.5 36/45", "30.15x41x6.5-36/45", Seller)]
    [InlineData("49x37x6.5 36/45", "37x49x6.5-36/45", Cutting)]
    [InlineData("47 x 34.2 x 7 45/45", "34.1x46.9x7-45/45", CarbonFrames)]
    [InlineData("47 x 34 x 7, 45/45", "34.1x46.9x7-45/45", RoadFrame)]
    [InlineData("6808", "40x52x7-radial", RaceFrame)]
    public void A_bearing_in_the_words_of_its_page(string text, string key, string source) => Reads<HeadsetBearing>(source, key, text);

    [Fact]
    [PrintedIn(Measure)]
    [PrintedIn(Angles)]
    public void Angles_are_part_of_the_interface()
    {
        Assert.False(HeadsetBearing.TryParse("30.15x41x6.5 45/45", null, out _), Angles);
        Assert.False(HeadsetBearing.TryParse("30.15x41x6.5", null, out _), Measure);
        Assert.Equal(2, HeadsetBearing.Read("52x40x7").Values.Length);
    }

    [Fact]
    [PrintedIn(CarbonFrames)]
    public void An_owner_measured_34_2_by_47() => First(CarbonFrames, "34.1x46.9x7-45/45", HeadsetBearing.Identify(outside: Mm(47), inside: Mm(34.2), height: Mm(7)));

    [Fact]
    [PrintedIn(CarbonFrames)]
    public void An_owner_measured_49_outside() => First(CarbonFrames, "37x49x6.5-36/45", HeadsetBearing.Identify(outside: Mm(49)));

    [Fact]
    [PrintedIn(RoadFrame)]
    public void An_owner_measured_46_by_34_with_a_steel_rule() => First(RoadFrame, "34.1x46.9x7-45/45", HeadsetBearing.Identify(Mm(46, 1), Mm(34, 0.5), Mm(7, 0.5)));

    [Fact]
    [PrintedIn(RoadFrame)]
    public void The_height_of_a_41_8_bearing_is_not_given_by_its_diameter()
    {
        Identification<HeadsetBearing> open = HeadsetBearing.Identify(outside: Mm(41.8));
        Assert.True(open.Candidates.Length == 2 && open.Next.StartsWith("height", StringComparison.Ordinal), RoadFrame);
        First(RoadFrame, "30.5x41.8x6-45/45", HeadsetBearing.Identify(outside: Mm(41.8), height: Mm(6, 0.1)));
    }

    [Fact]
    [PrintedIn(RaceFrame)]
    public void A_radial_bearing_of_one_size_is_told_by_its_edges()
    {
        Identification<HeadsetBearing> found = HeadsetBearing.Identify(Mm(52), Mm(40), Mm(7));
        Among(RaceFrame, "40x52x7-radial", found);
        Assert.Contains(found.Candidates, c => c.TellsApart.Contains("no chamfer", StringComparison.Ordinal));
        Assert.Null(HeadsetBearing.Mm52Radial.OuterAngle);
    }

    [Fact]
    [PrintedIn(Cable)]
    public void A_51_8_is_not_a_52() => First(Cable, "40x51.8x8-36/45", HeadsetBearing.Identify(outside: Mm(51.8), height: Mm(8)));

    [Fact]
    [PrintedIn(Refit)]
    public void A_bearing_of_IS41_and_one_of_IS42_differ_outside()
    {
        Assert.True(HeadsetCup.Identify(diameter: Mm(41.0)).Candidates.All(c => c.Value != HeadsetCup.Is42), Refit);
        Assert.True(HeadsetCup.Identify(diameter: Mm(41.8)).Candidates.All(c => c.Value != HeadsetCup.Is41), Refit);
        Assert.Empty(HeadsetCup.Is41.Bearings.Intersect(HeadsetCup.Is42.Bearings));
    }

    [Fact]
    [PrintedIn(Seller)]
    public void The_bearing_of_a_41_seat_is_the_sellers() => Assert.True(HeadsetCup.Is41.Bearings.Contains(HeadsetBearing.Parse("30.15x41x6.5 36/45", null)), Seller);
}
