using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Seating;
using Lugwork.Steering;

namespace Lugwork.PublishedTables;

/// <summary>Readings that pages tell of, and what those pages say the thing is.</summary>
public sealed class IdentifiedByMeasuringChecks
{
    [Theory]
    [InlineData(43.95, 0.02, "44", "Musings on headset reaming tolerances; Velocipede Salon forum: a common reamer cuts 43.95")]
    [InlineData(29.88, 0.02, "EC29", "Headset Identification and Specification Guide; a headset maker")]
    [InlineData(30.08, 0.02, "EC30", "Headset Identification and Specification Guide; a headset maker")]
    [InlineData(33.93, 0.02, "EC34", "Headset Identification and Specification Guide; a headset maker")]
    public void A_head_tube_is_what_its_bore_says(double bore, double error, string expected, string source) =>
        Assert.True(HeadTubeBore.Identify(Reading(bore, error)).Candidates is [{ Value.FitKey: var key }, ..] && key == expected, source);

    [Theory]
    [InlineData(50, "Headset Identification and Specification Guide: about 50 mm is the outside of a 44 mm head tube")]
    [InlineData(62, "Headset Identification and Specification Guide: 62 mm is the outside of a 1.5 in head tube")]
    public void An_outside_reading_is_no_bore(double reading, string source) =>
        Assert.True(HeadTubeBore.Identify(Reading(reading, 0.1)).Candidates.IsEmpty, source);

    [Theory]
    [InlineData(30.02, 0.02, "30", "Crown race won't fit on fork; MTBR forum: a normal pair, seat 30.02")]
    [InlineData(33.06, 0.03, "33", "Crown race won't fit on carbon steerer; RoadBikeReview forums: 33.06 +/- 0.03")]
    [InlineData(39.8, 0.02, "39.8", "Headset Standards Explained: Reading the SHIS Chart; a tool maker")]
    public void A_crown_seat_is_what_it_measures(double seat, double error, string expected, string source) =>
        Assert.True(CrownSeat.Identify(Reading(seat, error)).Candidates is [{ Value.FitKey: var key }] && key == expected, source);

    [Theory]
    [InlineData(29.92, 0.02, "30", "Crown race won't fit on fork; MTBR forum: a normal pair, race 29.92")]
    [InlineData(32.9, 0.05, "33", "Crown race won't fit on carbon steerer; RoadBikeReview forums: race 32.9")]
    public void A_race_measures_less_than_its_seat(double race, double error, string expected, string source) =>
        Assert.True(CrownRace.Identify(Reading(race, error)).Candidates is [{ Value.FitKey: var key }] && key == expected, source);

    [Fact]
    public void A_seat_of_33_6_is_outside_any_press_fit() =>
        Assert.True(CrownSeat.Identify(Reading(33.6, 0.1)).Candidates.IsEmpty, "Crown race won't fit on carbon steerer; RoadBikeReview forums");

    [Theory]
    [InlineData(31.7, 0.05, "31.8", "Which Grip Fits?; Velogear: 31.7 is another label of 31.8")]
    [InlineData(25.4, 0.05, "25.4", "Bicycle Handlebar and Stem Dimensions; Love City Cycles")]
    [InlineData(26.0, 0.05, "26", "Bicycle Handlebar and Stem Dimensions; Love City Cycles")]
    public void A_bar_is_what_it_measures(double bar, double error, string expected, string source) =>
        Assert.True(BarClamp.Identify(Reading(bar, error)).Candidates is [{ Value.FitKey: var key }, ..] && key == expected, source);

    [Theory]
    [InlineData(27.16, "27.2", "Still mountain bike-less; centerlinerule.blogspot.com: stamped 27.0, measures 27.16 to 27.30")]
    [InlineData(27.2, "27.2", "Seatpost diameter sizes (standards); BikeGremlin")]
    public void A_post_is_what_it_measures_not_what_is_stamped(double post, string expected, string source) =>
        Assert.True(SeatpostDiameter.Identify(Reading(post, 0.02)).Candidates is [{ Value.FitKey: var key }, ..] && key == expected, source);

    [Theory]
    [InlineData(203.2, "203", "8 in is 203.2 mm: arithmetic")]
    [InlineData(160, "160", "Disc brake adapters page; a shop reference")]
    public void A_rotor_is_what_it_measures(double rotor, string expected, string source) =>
        Assert.True(RotorSize.Identify(Reading(rotor, 1)).Candidates is [{ Value.FitKey: var key }, ..] && key == expected, source);

    private static MeasuredLength Reading(double millimetres, double error) => MeasuredLength.OfMillimetres((decimal)millimetres, (decimal)error);
}
