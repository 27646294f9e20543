using Lugwork.Steering;
using static Lugwork.PublishedTables.Identified;

namespace Lugwork.PublishedTables;

/// <summary>Bores, cups, seats and races known only by their published or measured dimensions.</summary>
public sealed class HeadTubeFiguresChecks
{
    private const string Cutters = "The cutting tool problem; peterverdone.com";
    private const string Types = "Building a bike from parts 2: headset types (table, in Japanese); shobota.com";
    private const string Glossary = "Head tube (glossary, in Japanese); atwiki piro bicycle wiki";
    private const string Sketches = "Headset note with sketches (in Japanese); masahiromat.com, 2018";
    private const string Trick = "The 1-1/8 in head tube trick; curbdestroyer.blogspot.com, 2008";
    private const string Guide = "Headset Identification and Specification Guide, rev. F+; a headset maker, 2010";
    private const string Notes = "Notes on headset standards (in Japanese); note.com";
    private const string Milled = "Out. Of. Shape.; homebrewedbikes.blogspot.com, 2011";
    private const string Pair = "Crown race won't fit on fork; MTBR forum";
    private const string CarbonRace = "Crown race won't fit on carbon steerer; RoadBikeReview forums, 2012";
    private const string NotStraight = "Straight 1-1/8 in steering tube is not actually straight; Bicycles Q&A (TransWikia copy), 2021";
    private const string Need41 = "Headset for a cyclocross frame; BikeRadar forum, 2013";

    [Theory]
    [InlineData(43.95, "44", Cutters)]
    [InlineData(49.57, "49", Cutters)]
    [InlineData(55.95, "56", Cutters)]
    [InlineData(41.15, "IS41", Cutters)]
    [InlineData(52.1, "IS52", Cutters)]
    [InlineData(41.4, "ZS41", Types)]
    [InlineData(44.0, "44", Types)]
    [InlineData(38.2, "IS38", Types)]
    [InlineData(37.0, "EC37", Glossary)]
    [InlineData(49.6, "49", Glossary)]
    [InlineData(33.9, "EC34", Sketches)]
    [InlineData(29.85, "EC29", Guide)]
    [InlineData(29.90, "EC29", Guide)]
    [InlineData(30.05, "EC30", Guide)]
    [InlineData(30.10, "EC30", Guide)]
    public void A_published_bore_is_the_end_of_its_name(double bore, string end, string source) => First(source, end, HeadTubeBore.Identify(bore: Mm(bore)));

    [Theory]
    [InlineData(50.0, Guide)]
    [InlineData(50.0 + 0.4, Guide)]
    public void The_outside_of_a_44_head_tube_is_no_bore(double outside, string source) =>
        Assert.True(HeadTubeBore.Identify(bore: Mm(outside, 0.1)).Candidates.IsEmpty, $"{source}: {outside} is the outside of a head tube");

    [Fact]
    [PrintedIn(Need41)]
    public void A_plain_bore_of_41_is_told_from_an_integrated_seat()
    {
        // Measured 41 without an angled seat; the owner had to find out that it takes pressed cups.
        Identification<HeadTubeBore> found = HeadTubeBore.Identify(bore: Mm(41.2, 0.2));
        Among(Need41, "ZS41", found);
        Among(Need41, "IS41", found);
        Assert.All(found.Candidates, c => Assert.Contains("45 degree", c.TellsApart, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(37.0, "EC37", Types)]
    [InlineData(49.6, "EC49", Types)]
    [InlineData(34.0, "EC34", Types)]
    public void A_published_cup_is_the_half_of_its_name(double cup, string half, string source) => First(source, half, HeadsetCup.Identify(diameter: Mm(cup)));

    [Fact]
    [PrintedIn(Trick)]
    public void A_cup_of_33_9_goes_with_a_bore_of_34() => Among(Trick, "EC34", HeadTubeBore.Identify(part: Mm(33.9, 0.1)));

    [Theory]
    [PrintedIn(Types)]
    [InlineData("upper ZS41/25.4", "steerer 1 in")]
    [InlineData("lower ZS41/27", "crown seat 27")]
    public void A_1_in_fork_in_the_41_4_bore_is_no_misfit(string headset, string fork)
    {
        Build build = Build.From(Frame.Read("head tube ZS41|ZS41")).With(Fork.Read(fork), Slot.Fork).With(Headset.Read(headset), Slot.Headset);
        string[] joints = ["headset-upper-in-head-tube", "headset-lower-in-head-tube", "headset-on-steerer", "headset-on-crown"];
        Assert.All(joints, j => Assert.True(Published.Of(build, j).Verdict < Verdict.DoesNotFit, $"{Types}: {Published.Of(build, j)}"));
    }

    [Theory]
    [InlineData(25.4, 26.4, "26.4", "straight-1", Notes)]
    [InlineData(28.6, 30.0, "30", "straight-1-1/8", Notes)]
    [InlineData(31.8, 33.0, "33", "straight-1-1/4", Notes)]
    [InlineData(38.1, 39.8, "39.8", "straight-1.5", Notes)]
    [InlineData(28.6, 30.0, "30", "straight-1-1/8", NotStraight)]
    public void Steerer_and_seat_of_a_straight_fork(double steerer, double seat, string key, string shape, string source)
    {
        First(source, key, CrownSeat.Identify(Mm(seat), Mm(steerer)));
        First(source, shape, SteererShape.Identify(top: Mm(steerer), foot: Mm(steerer), crownSeat: Mm(seat)));
    }

    [Theory]
    [InlineData(30.02, "30", Pair)]
    [InlineData(33.06, "33", CarbonRace)]
    [InlineData(33.09, "33", CarbonRace)]
    [InlineData(33.03, "33", CarbonRace)]
    public void A_measured_seat(double seat, string key, string source) => First(source, key, CrownSeat.Identify(Mm(seat, 0.02)));

    [Fact]
    [PrintedIn(CarbonRace)]
    public void A_seat_of_33_6_is_none_of_the_listed_ones() => Assert.True(CrownSeat.Identify(Mm(33.6)).Candidates.IsEmpty, CarbonRace);

    [Theory]
    [InlineData(29.92, "30", Pair)]
    [InlineData(27.03, "27", Milled)]
    [InlineData(26.43, "26.4", Milled)]
    [InlineData(27.15, "27", Types)]
    [InlineData(30.15, "30", Types)]
    [InlineData(33.0, "33", Types)]
    [InlineData(39.8, "39.8", Types)]
    [InlineData(32.9, "33", CarbonRace)]
    public void A_measured_race(double race, string key, string source) => First(source, key, CrownRace.Identify(Mm(race, 0.02)));

    [Fact]
    [PrintedIn(Guide)]
    public void The_published_stack_of_a_34_headset()
    {
        Among(Guide, "EC34", HeadsetCup.Identify(upperStack: Mm(16.35)));
        Among(Guide, "EC34", HeadsetCup.Identify(lowerStack: Mm(12.05)));
    }
}
