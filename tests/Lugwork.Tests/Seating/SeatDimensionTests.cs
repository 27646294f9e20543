using Lugwork.Seating;

namespace Lugwork.Tests.Seating;

/// <summary>Close neighbours, guesses before measuring, insertion and droppers.</summary>
public sealed class SeatDimensionTests
{
    [Theory]
    [InlineData(30.85, 0.05, "30.8, 30.9")]
    [InlineData(30.88, 0.02, "30.9")]
    [InlineData(31.55, 0.1, "31.6")]
    [InlineData(31.6, 0.1, "31.6, 31.8")]
    [InlineData(27.18, 0.05, "27.2")]
    [InlineData(27.0, 0.0, "27")]
    [InlineData(27.1, 0.0, "27.2")]
    [InlineData(34.9, 0.02, "34.9, 35")]
    public void A_caliper_reading_names_the_posts_it_can_be(double reading, double error, string expected) =>
        Assert.Equal(expected, string.Join(", ", SeatpostDiameter.Identify(MeasuredLength.OfMillimetres((decimal)reading, (decimal)error)).Candidates.Select(c => c.Value.FitKey).Order(StringComparer.Ordinal)));

    /// <summary>Beside every bore that is named, the reading and both ends of its error; but only where all three are a bore that there can be.</summary>
    [Theory]
    [InlineData(39.95, 0.04, 3)]
    [InlineData(39.95, 0.06, 0)]
    [InlineData(18.05, 0.04, 3)]
    [InlineData(18.05, 0.06, 0)]
    public void A_reading_near_no_bore_is_kept_between_the_least_and_the_most(double reading, double error, int found) =>
        Assert.Equal(found, SeatTubeBore.WithinError((decimal)reading, (decimal)error).Length);

    [Fact]
    public void The_two_off_road_sizes_are_told_apart()
    {
        Assert.DoesNotContain("31.6", Keys(30.9m));
        Assert.DoesNotContain("30.9", Keys(31.6m));
        Identification<SeatpostDiameter> rough = SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(31.2m, 0.5m));
        Identified<SeatpostDiameter> smaller = rough.Candidates.Single(c => c.Value.FitKey == "30.9");
        Identified<SeatpostDiameter> larger = rough.Candidates.Single(c => c.Value.FitKey == "31.6");
        Assert.Contains("against 31.6, 0.7 more, a caliper decides", smaller.TellsApart, StringComparison.Ordinal);
        Assert.Contains("against 30.9, 0.7 less, a caliper decides", larger.TellsApart, StringComparison.Ordinal);
        Assert.StartsWith("bore", rough.Next, StringComparison.Ordinal);
        Assert.EndsWith("30.8 to 31 mm is 30.8 or 30.9; 31.4 to 31.9 mm is 31.4 or 31.6 or 31.8", rough.Next, StringComparison.Ordinal);

        static IEnumerable<string> Keys(decimal reading) => SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(reading)).Candidates.Select(c => c.Value.FitKey);
    }

    [Fact]
    public void The_old_post_settles_a_rough_bore()
    {
        Identification<SeatTubeBore> rough = SeatTubeBore.Identify(bore: MeasuredLength.OfMillimetres(27.1m, 0.3m));
        Assert.True(rough.Candidates.Length > 1);
        Identification<SeatTubeBore> told = SeatTubeBore.Identify(MeasuredLength.OfMillimetres(27.1m, 0.3m), MeasuredLength.OfMillimetres(27.16m, 0.05m));
        Assert.Equal("27.2", Assert.Single(told.Candidates).Value.FitKey);
    }

    [Fact]
    public void Sizes_a_tenth_apart_are_left_to_the_micrometer() =>
        Assert.Contains("30.8 is 0.1 less: only a micrometer or the stamp tells", SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(30.9m)).Candidates.Single(c => c.Value.FitKey == "30.9").TellsApart, StringComparison.Ordinal);

    [Fact]
    public void A_collar_printed_35_is_the_one_of_34_9()
    {
        Assert.Equal(SeatClampSize.Mm34Point9, SeatClampSize.Identify(MeasuredLength.OfMillimetres(35m, 0)).Candidates.Single().Value);
        Assert.Equal(SeatClampSize.Mm34Point9, SeatClampSize.Parse("35.0", null));
        Assert.Contains("30.9, 31.6", SeatClampSize.Identify(MeasuredLength.OfMillimetres(35m)).Candidates.Single().TellsApart, StringComparison.Ordinal);
    }

    [Fact]
    public void A_post_only_guesses_its_collar()
    {
        SeatClampForPost row = SeatClampForPost.Of(SeatpostDiameter.OfMillimetres(27.2m))!;
        Assert.Equal(SeatClampSize.Mm31Point8, row.Usual);
        Assert.Equal([SeatClampSize.Mm28Point6, SeatClampSize.Mm30, SeatClampSize.Mm31Point8], row.Sizes);
        Assert.Null(SeatClampForPost.Of(SeatpostDiameter.OfMillimetres(33.9m))!.Usual);
        Assert.Null(SeatClampForPost.Of(SeatpostDiameter.OfMillimetres(26m)));
        Assert.All(SeatClampForPost.All, r => Assert.True(r.Usual is null || r.Sizes.Contains(r.Usual)));
    }

    [Theory]
    [InlineData(7.0, 9.0, "7x9")]
    [InlineData(7.0, 9.6, "7x9.6")]
    [InlineData(7.1, 9.3, "7x9.6")]
    [InlineData(6.9, 10.0, "7x10")]
    [InlineData(8.0, 8.0, "8-round")]
    [InlineData(7.0, 7.0, "7-round")]
    [InlineData(7.0, 8.5, "")]
    public void Rails_are_told_by_a_caliper(double width, double height, string expected) =>
        Assert.Equal(expected, string.Join(", ", SaddleRails.Identify(MeasuredLength.OfMillimetres((decimal)width), MeasuredLength.OfMillimetres((decimal)height)).Candidates.Select(c => c.Value.FitKey)));

    [Fact]
    public void The_height_decides_between_oval_rails() =>
        Assert.StartsWith("height", SaddleRails.Identify(width: MeasuredLength.OfMillimetres(7m)).Next, StringComparison.Ordinal);

    [Fact]
    public void A_rule_asks_by_diameter_or_by_length()
    {
        SeatpostDiameter post = SeatpostDiameter.OfMillimetres(30.9m);
        Assert.Equal(61.8, Asked(InsertionRule.Mark), 9);
        Assert.Equal(30.9, Asked(InsertionRule.StrengthBelowMark), 9);
        Assert.Equal(150, Asked(InsertionRule.NothingKnown), 9);
        Assert.Null(InsertionRule.FrameLeast.For(post));
        Assert.Equal("90", InsertionRule.LeastWithStub(Dimension.OfMillimetres(65m)).FitKey);
        Assert.Equal("91", InsertionRule.LeastWithStub(Dimension.OfMillimetres(66m)).FitKey);
        Assert.Throws<ArgumentException>(() => InsertionRule.LeastWithStub(default));
        Assert.Throws<ArgumentException>(() => InsertionRule.Mark.For(default));

        double Asked(InsertionRule rule) => rule.For(post)!.Value.Millimeters;
    }

    [Theory]
    [InlineData("150", "150")]
    [InlineData(" 150 mm", "150")]
    [InlineData("212,5mm", "212.5")]
    [InlineData("30", "30")]
    [InlineData("400", "400")]
    public void A_travel_is_read(string text, string written) => Assert.Equal(written, DropperTravel.Parse(text, null).ToString());

    [Theory]
    [InlineData("29.9")]
    [InlineData("400.1")]
    [InlineData("150 in")]
    [InlineData("-150")]
    [InlineData("travel")]
    public void Another_figure_is_no_travel(string text) => Assert.False(DropperTravel.TryParse(text, null, out _));

    [Theory]
    [InlineData(250, 260, 90, Verdict.Fits)]
    [InlineData(250, 240, 90, Verdict.DoesNotFit)]
    [InlineData(250, 255, 90, Verdict.Fits)]
    [InlineData(250, 254.9, 90, Verdict.DoesNotFit)]
    [InlineData(229.9, 400, 90, Verdict.DoesNotFit)]
    [InlineData(230, 400, 90, Verdict.Fits)]
    [InlineData(400, 400, 90, Verdict.Unsafe)]
    [InlineData(390, 400, 90, Verdict.Fits)]
    [InlineData(480, 600, 90, Verdict.Unsafe)]
    public void A_dropper_needs_leg_depth_and_insertion(double rails, double open, double least, Verdict expected)
    {
        DropperSize dropper = new() { Travel = DropperTravel.OfMillimetres(180), Stack = Of(50), TotalLength = Of(480), Actuator = UnitsNet.Length.FromMillimeters(25) };
        Assert.Equal(expected, dropper.Check(Of(rails), Of(open), Of(least)).Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, dropper.Check(default, Of(open), Of(least)).Verdict);

        static Dimension Of(double millimetres) => Dimension.OfMillimetres((decimal)millimetres);
    }
}
