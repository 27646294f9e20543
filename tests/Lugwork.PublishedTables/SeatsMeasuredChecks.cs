using Lugwork.Seating;

namespace Lugwork.PublishedTables;

/// <summary>Posts, bores and collars told by published measurements, insertion and droppers by published rules, each with its source.</summary>
public sealed class SeatsMeasuredChecks
{
    private const string PostSizes = "Seatpost diameter sizes (standards); BikeGremlin";
    private const string SlipFit = "Moving the seat post; Minnesota MTB";
    private const string Stamp = "Still mountain bike-less; centerlinerule.blogspot.com";
    private const string French = "Vintage French seatpost sizes; thevelocollective.com";
    private const string FrenchList = "Re: 26.2 seatpost size; Classic Rendezvous list archive";
    private const string Japanese = "A 26.7 mm seat pillar (in Japanese); ketta, tcp-ip.or.jp";
    private const string Rare = "Seatpost swap abandoned (in Japanese); ameblo 0301hard";
    private const string Folding = "Is there a standard for seat pillar thickness? (in Japanese); Hakusen Hatogaya";
    private const string Choices = "Cheerful about a few seat post size choices; Bike Mag (copy)";
    private const string Range = "Seatpost feature; RoadCyclingUK";
    private const string Collars = "Clamps; Compulsion Cycles";
    private const string Regulation = "16 CFR 1512.15 Requirements for seat; US Code of Federal Regulations";
    private const string Insertion = "Minimum seatpost insertion length; BikeGremlin";
    private const string DropperChoice = "Choosing a dropper: ride height and insertion; dirtlifebike.com";
    private const string DropperTips = "Dropper post tips; Bicycle Times";
    private const string Anatomy = "The anatomy of a dropper post; BikeRadar";
    private const string LongDropper = "The 240 mm dropper post; peterverdone.com";

    [Theory]
    [InlineData(PostSizes, 27.18, 0.05, "27.2")]
    [InlineData(Stamp, 27.16, 0.02, "27.2")]
    [InlineData(SlipFit, 27.1, 0.0, "27.2")]
    [InlineData(French, 26.2, 0.05, "26.2")]
    [InlineData(French, 26.4, 0.05, "26.4")]
    [InlineData(FrenchList, 26.6, 0.05, "26.6")]
    [InlineData(Rare, 27.6, 0.05, "27.6")]
    [InlineData(Folding, 33.9, 0.1, "33.9")]
    [InlineData(Folding, 31.6, 0.05, "31.6")]
    [InlineData(Range, 32.4, 0.1, "32.4")]
    [InlineData(Choices, 30.9, 0.05, "30.9")]
    public void A_measured_post_is_this_one(string source, double reading, double error, string expected) =>
        Assert.True(expected == SeatpostDiameter.Identify(MeasuredLength.OfMillimetres((decimal)reading, (decimal)error)).Candidates.Single().Value.FitKey, source);

    /// <summary>Stamped 27.0, measured 27.16 to 27.30: whatever it is, the stamp is wrong.</summary>
    [Theory]
    [PrintedIn(Stamp)]
    [InlineData(27.16)]
    [InlineData(27.23)]
    [InlineData(27.30)]
    public void The_caliper_beats_the_stamp(double reading) =>
        Assert.False(SeatpostDiameter.Identify(MeasuredLength.OfMillimetres((decimal)reading, 0.02m)).Candidates.Any(c => c.Value.FitKey == "27"), Stamp);

    [Theory]
    [InlineData(Choices, "27.2", "30.9")]
    [InlineData(Choices, "30.9", "31.6")]
    [InlineData(Choices, "31.6", "34.9")]
    public void Sizes_of_today_are_never_taken_for_each_other_by_a_caliper(string source, string smaller, string larger)
    {
        decimal least = SeatpostDiameter.Parse(smaller, null).Millimetres;
        decimal most = SeatpostDiameter.Parse(larger, null).Millimetres;
        Assert.False(SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(least)).Candidates.Any(c => c.Value.FitKey == larger), source);
        Assert.False(SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(most)).Candidates.Any(c => c.Value.FitKey == smaller), source);
        Assert.False(SeatTubeBore.Identify(MeasuredLength.OfMillimetres(most)).Candidates.Any(c => c.Value.FitKey == smaller), source);
    }

    /// <summary>Read, but no nominal size: a row would be invented.</summary>
    [Fact]
    [PrintedIn(Japanese)]
    public void An_odd_post_is_read_and_has_no_row() => Assert.True(SeatpostDiameter.Parse("26.7", null).Source is null, Japanese);

    [Theory]
    [InlineData(SlipFit, 27.3, "27.2")]
    [InlineData(SlipFit, 31.7, "31.6")]
    [InlineData(PostSizes, 27.2, "27.2")]
    public void A_bore_is_up_to_a_slip_fit_over_its_post(string source, double bore, string expected) =>
        Assert.True(expected == SeatTubeBore.Identify(MeasuredLength.OfMillimetres((decimal)bore, 0.02m)).Candidates.Single().Value.FitKey, source);

    [Theory]
    [PrintedIn(Collars)]
    [InlineData(25.4, "25.4")]
    [InlineData(28.5, "28.6")]
    [InlineData(31.9, "31.8")]
    [InlineData(30.0, "30")]
    public void A_collar_follows_the_tube(double outside, string expected) =>
        Assert.True(expected == SeatClampSize.Identify(MeasuredLength.OfMillimetres((decimal)outside)).Candidates.Single().Value.FitKey, Collars);

    [Theory]
    [InlineData(Regulation, "mark-two-diameters", "27.2", 54.4)]
    [InlineData(Regulation, "mark-two-diameters", "31.6", 63.2)]
    [InlineData(Regulation, "strength-one-diameter", "30.9", 30.9)]
    [InlineData(Insertion, "nothing-known", "27.2", 150)]
    public void A_rule_asks_what_is_published(string source, string rule, string post, double expected)
    {
        double asked = InsertionRule.Parse(rule, null).For(SeatpostDiameter.Parse(post, null))!.Value.Millimeters;
        Assert.True(Math.Abs(asked - expected) < 1e-9, source);
    }

    [Theory]
    [PrintedIn(Insertion)]
    [InlineData("50", "90")]
    [InlineData("100", "125")]
    public void A_stub_asks_for_25_below_the_weld_and_90_in_all(string collarToWeld, string expected) =>
        Assert.True(expected == InsertionRule.LeastWithStub(Dimension.Parse(collarToWeld, null)).FitKey, Insertion);

    [Theory]
    [PrintedIn(DropperChoice)]
    [InlineData("row 88: more travel than the leg allows", "50", "200", "480", "240", "400", Verdict.DoesNotFit)]
    [InlineData("row 89: too long for the seat tube", "50", "180", "480", "250", "200", Verdict.DoesNotFit)]
    [InlineData("both right", "50", "180", "480", "250", "260", Verdict.Fits)]
    public void A_dropper_fits_leg_and_tube_as_published(string row, string stack, string travel, string length, string rails, string open, Verdict expected) =>
        Assert.True(expected == Post(stack, travel, length, "25").Check(Of(rails), Of(open), Of("90")).Verdict, $"{row}, {DropperChoice}");

    [Fact]
    [PrintedIn(DropperTips)]
    public void A_100_mm_dropper_that_needs_158_has_58_of_stack() => Assert.True("158" == Post("58", "100", "350", "25").LeastRailHeight.FitKey, DropperTips);

    [Theory]
    [InlineData(Anatomy, "200")]
    [InlineData(LongDropper, "240")]
    public void A_published_travel_is_of_the_trade_and_sourced(string source, string travel) =>
        Assert.True(DropperTravel.Identify(MeasuredLength.OfMillimetres(decimal.Parse(travel, System.Globalization.CultureInfo.InvariantCulture), 2m)).Candidates.Single().Value.Source!.Kind > SourceKind.CommonPractice, source);

    private static DropperSize Post(string stack, string travel, string length, string actuator) =>
        new() { Travel = DropperTravel.Parse(travel, null), Stack = Of(stack), TotalLength = Of(length), Actuator = UnitsNet.Length.FromMillimeters(double.Parse(actuator, System.Globalization.CultureInfo.InvariantCulture)) };

    private static Dimension Of(string millimetres) => Dimension.Parse(millimetres, null);
}
