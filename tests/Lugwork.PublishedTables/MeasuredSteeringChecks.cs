namespace Lugwork.PublishedTables;

/// <summary>Head tubes, steerers, seats and bars known only by a caliper: what the published sizes make of the reading.</summary>
public sealed class MeasuredSteeringChecks
{
    private const string Guide = "Headset Identification and Specification Guide, rev. F+; a headset maker, 2010";
    private const string Reaming = "Musings on headset reaming tolerances; Velocipede Salon forum, 2020";
    private const string Cutters = "The cutting tool problem; peterverdone.com";
    private const string Sketches = "Headset note with sketches (in Japanese); masahiromat.com, 2018";
    private const string Need41 = "Headset for a cyclocross frame; BikeRadar forum, 2013";
    private const string Pair = "Crown race won't fit on fork; MTBR forum";
    private const string CarbonRace = "Crown race won't fit on carbon steerer; RoadBikeReview forums, 2012";
    private const string Chart = "Headset Standards Explained: Reading the SHIS Chart; a tool maker";
    private const string NotStraight = "Straight 1-1/8 in steering tube is not actually straight; Bicycles Q&A (TransWikia copy), 2021";
    private const string Milled = "Out. Of. Shape.; homebrewedbikes.blogspot.com, 2011";
    private const string Grip = "Which Grip Fits?; Velogear";
    private const string Bars = "Bicycle Handlebar and Stem Dimensions; Love City Cycles";
    private const string Article = "Headset (bicycle part); Wikipedia";
    private const string Memory = "from memory";

    [Theory]
    [InlineData("34.0 ± 0.1", "EC34", Sketches)]
    [InlineData("33.9 ± 0.05", "EC34", Sketches)]
    [InlineData("44.0 ± 0.1", "44", Reaming)]
    [InlineData("43.95 ± 0.02", "44", Reaming)]
    [InlineData("49.57 ± 0.02", "49", Cutters)]
    [InlineData("55.95 ± 0.02", "56", Cutters)]
    [InlineData("56.0 ± 0.1", "56", Chart)]
    [InlineData("55.0 ± 0.1", "ZS55", Memory)]
    [InlineData("41.15 ± 0.02", "IS41", Cutters)]
    [InlineData("41.38 ± 0.02", "ZS41", Memory)]
    [InlineData("41.25 ± 0.15", "IS41 | ZS41", Need41)]
    [InlineData("52.1 ± 0.02", "IS52", Cutters)]
    [InlineData("29.88 ± 0.02", "EC29", Guide)]
    [InlineData("30.08 ± 0.02", "EC30", Guide)]
    [InlineData("30.0 ± 0.1", "EC29 | EC30", Guide)]
    public void A_bore_reading_means_the_published_ends(string reading, string ends, string source) =>
        Same(source, reading, ends, Frame.Read($"headTubeLower {reading}").HeadTubeLower);

    [Theory]
    [PrintedIn(Guide)]
    [InlineData("50")]
    [InlineData("62")]
    [InlineData("50 ± 0.1")]
    [InlineData("62 ± 0.1")]
    public void An_outside_reading_is_refused_as_a_bore(string reading) =>
        Assert.False(Frame.TryRead($"headTubeLower {reading}", out _, out _), $"{Guide}: {reading} is the outside of a 44 or a 1.5 in head tube");

    [Theory]
    [InlineData("39.8 ± 0.05", "39.8", Chart)]
    [InlineData("30.02 ± 0.02", "30", Pair)]
    [InlineData("30.0 ± 0.05", "30", NotStraight)]
    [InlineData("33.06 ± 0.03", "33", CarbonRace)]
    [InlineData("26.4 ± 0.05", "26.4", Milled)]
    [InlineData("26.5 ± 0.05", "26.4 | 26.5", Memory)]
    [InlineData("27.07 ± 0.03", "27", Milled)]
    public void A_seat_reading_means_the_published_seats(string reading, string seats, string source) =>
        Same(source, reading, seats, Fork.Read($"crown seat {reading}").CrownSeat);

    [Theory]
    [InlineData("29.92 ± 0.02", "30", Pair)]
    [InlineData("27.03 ± 0.02", "27", Milled)]
    [InlineData("26.43 ± 0.02", "26.4 | 26.5", Milled)]
    [InlineData("32.9 ± 0.05", "33", CarbonRace)]
    public void A_race_reading_means_the_published_seats(string reading, string seats, string source)
    {
        bool good = Headset.TryRead($"crown race {reading}", out Headset headset, out var problems);
        Assert.True(good, $"{source}: a race that measures {reading} is the {seats} one, refused: {string.Join(" | ", problems)}");
        Same(source, reading, seats, headset.CrownRace);
    }

    [Fact]
    [PrintedIn(CarbonRace)]
    public void A_carbon_seat_of_33_6_takes_no_33_race()
    {
        bool read = Fork.TryRead("crown seat 33.6 ± 0.05", out Fork fork, out _);
        Assert.True(!read || Published.Of(Build.From(Frame.Read("material carbon")).With(fork, Slot.Fork).With(Headset.Read("crown race 33"), Slot.Headset), "headset-on-crown").Verdict == Verdict.DoesNotFit, CarbonRace);
    }

    [Theory]
    [InlineData("28.6 ± 0.1", "28.6", Article)]
    [InlineData("25.4 ± 0.1", "25.4", Article)]
    [InlineData("25.2 ± 0.3", "25 | 25.4", Memory)]
    public void A_steerer_reading_means_the_published_sizes(string reading, string sizes, string source) =>
        Same(source, reading, sizes, Fork.Read($"steerer {reading}").Steerer);

    [Theory]
    [InlineData("31.7", "31.8", Grip)]
    [InlineData("31.7 ± 0.1", "31.8", Grip)]
    [InlineData("25.4 ± 0.1", "25.4", Bars)]
    [InlineData("25.6 ± 0.2", "25.4 | 25.8", Bars)]
    [InlineData("26.2 ± 0.2", "26 | 26.4", Bars)]
    public void A_bar_reading_means_the_published_clamps(string reading, string clamps, string source) =>
        Same(source, reading, clamps, Handlebar.Read($"clamp {reading}").Clamp);

    private static void Same<T>(string source, string reading, string keys, Known<T> read)
        where T : IInterfaceValue<T>
    {
        string[] expected = keys.Split(" | ");
        string[] found = [.. read.Values.Select(v => v.FitKey)];
        Assert.True(expected.Order(StringComparer.Ordinal).SequenceEqual(found.Order(StringComparer.Ordinal)), $"{source}: {reading} is {keys}, read: {read}");
    }
}
