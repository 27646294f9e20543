using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.Tests.Drivetrain;

public sealed class GearTests
{
    private static readonly Length Wheel = Length.FromMillimeters(2_130);

    [Fact]
    public void A_gear_tells_ratio_inches_development_speed_and_gain()
    {
        Gear gear = new(50, 11);
        Assert.Equal(4.545, gear.Ratio, 3);
        Assert.Equal(121.3, gear.GearInches(Length.FromMillimeters(678)), 1);
        Assert.Equal(9.68, gear.Development(Wheel).Meters, 2);
        Assert.Equal(52.3, gear.SpeedAt(RotationalSpeed.FromRevolutionsPerMinute(90), Wheel).KilometersPerHour, 1);
        Assert.Equal(8.93, gear.GainRatio(Length.FromMillimeters(339), Length.FromMillimeters(172.5)), 2);
        Assert.Equal("50/11", gear.ToString());
    }

    [Fact]
    public void Two_pairs_of_teeth_with_one_ratio_are_two_gears() => Assert.NotEqual(new Gear(50, 25), new Gear(40, 20));

    [Theory]
    [InlineData(5, 20)]
    [InlineData(201, 20)]
    [InlineData(20, 5)]
    [InlineData(20, 201)]
    public void Teeth_are_6_to_200(int ring, int sprocket) => Assert.Throws<ArgumentOutOfRangeException>(() => new Gear(ring, sprocket));

    [Theory]
    [InlineData(299.9)]
    [InlineData(5_000.1)]
    [InlineData(-2_100)]
    public void A_wheel_out_of_range_is_refused_with_its_name_and_range(double millimetres)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => new Gear(40, 20).Development(Length.FromMillimeters(millimetres)));
        Assert.Equal("rolledCircumference", refused.ParamName);
        Assert.Contains("300 to 5000 mm", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_number_is_refused()
    {
        Assert.ThrowsAny<ArgumentException>(() => new Gear(40, 20).Development(Length.FromMillimeters(double.NaN)));
        Assert.ThrowsAny<ArgumentException>(() => new Gear(40, 20).Development(Length.FromMillimeters(double.PositiveInfinity)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gearing.DevelopmentOf(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gearing.DevelopmentOf(double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gearing.DevelopmentOf(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gearing.RangePercent(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gearing.RangePercent(2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gearing.StepPercent(1, double.NegativeInfinity));
    }

    [Fact]
    public void A_hub_ratio_is_in_lowest_terms_and_its_default_is_direct_drive()
    {
        Assert.Equal(new HubRatio(31, 24), new HubRatio(62, 48));
        Assert.Equal(default, new HubRatio(7, 7));
        Assert.True(default(HubRatio).IsDirect);
        Assert.Equal(1, default(HubRatio).Value);
        Assert.Throws<ArgumentOutOfRangeException>(() => new HubRatio(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new HubRatio(1, -1));
    }

    [Fact]
    public void A_whole_hub_has_as_many_gears_as_its_name_says_lowest_first()
    {
        Assert.All(InternalHub.All, hub =>
        {
            Assert.Same(hub, InternalHub.Find(hub.Key.ToLowerInvariant()));
            Assert.Equal(hub.Ratios.OrderBy(r => r.Value), hub.Ratios);
            Assert.Equal(hub.IsWhole, hub.Ratios.Length == hub.Speeds);
            Assert.Equal(hub.IsWhole, hub.RangePercent is not null);
        });
        Assert.Equal(526.6, InternalHub.Find("14")!.RangePercent!.Value, 1);
        Assert.Null(InternalHub.Find("6"));
    }

    [Fact]
    public void Of_equal_gears_that_on_the_larger_ring_comes_first() =>
        Assert.Equal(["20/20", "40/20", "20/10", "40/10"], GearTable.Of([20, 40], [10, 20], Wheel).Gears.Select(g => g.ToString()));

    [Fact]
    public void The_lowest_gear_that_teeth_allow_is_told() =>
        Assert.StartsWith("development, metres;", GearTable.Of([6], [200], Wheel, InternalHub.Find("14")).ToString(), StringComparison.Ordinal);

    [Fact]
    public void A_table_of_a_double_tells_range_steps_and_duplicates()
    {
        GearTable table = GearTable.Of([34, 50], [34, 11, 17], Wheel);
        Assert.Equal([50, 34], table.Rings);
        Assert.Equal([11, 17, 34], table.Sprockets);
        Assert.Equal(6, table.Gears.Length);
        Assert.Equal(5, table.StepsPercent.Length);
        Assert.Equal(454.5, table.RangePercent, 1);
        Assert.Empty(table.Duplicates());
        Assert.Equal(6, table.CountOfDifferent());
        Assert.Equal(
            """
            development, metres; 2130 mm rolled
                       11    17    34
                 50  9.68  6.26  3.13
                 34  6.58  4.26  2.13
            range 454.5 %, steps 5.1 to 47.1 %, 6 gears, 6 that differ by 2.5 % or more
            """.ReplaceLineEndings("\n"),
            table.ToString());
    }

    [Fact]
    public void Equal_gears_are_duplicates_at_every_tolerance_above_zero()
    {
        GearTable table = GearTable.Of([48, 24], [12, 24], Wheel);
        Assert.Equal("24/12 and 48/24", string.Join(" and ", table.Duplicates(0.001).SelectMany(p => new[] { p.Lower, p.Higher }).OrderBy(g => g.Ring)));
        Assert.Equal(3, table.CountOfDifferent(0.001));
        Assert.Empty(table.Duplicates(0));
    }

    [Fact]
    public void A_geared_hub_makes_a_column_for_each_of_its_gears()
    {
        GearTable table = GearTable.Of([40], [20], Wheel, InternalHub.Find("3-B"));
        Assert.Equal([1.5, 2.0, 8 / 3.0], table.Gears.Select(g => g.Ratio));
        Assert.Contains("40/20     1.50     2.00     2.67\n", table.ToString(GearMeasure.Ratio), StringComparison.Ordinal);
        Assert.Contains(" 0.750    1.000    1.333\n", table.ToString(GearMeasure.RolledGearInches), StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_of_a_hub_with_gears_missing_is_refused()
    {
        Assert.Throws<ArgumentException>(() => GearTable.Of([40], [20], Wheel, InternalHub.Find("9")));
        Assert.Throws<ArgumentException>(() => GearTable.Of([40, 40], [20], Wheel));
        Assert.Throws<ArgumentOutOfRangeException>(() => GearTable.Of([], [20], Wheel));
        Assert.Throws<ArgumentOutOfRangeException>(() => GearTable.Of([40], new int[15], Wheel));
    }

    [Theory]
    [InlineData(6_860, Verdict.Fits, true)]
    [InlineData(6_862.4, Verdict.NeedsMeasuring, true)]
    [InlineData(6_930, Verdict.NeedsMeasuring, true)]
    [InlineData(6_930.1, Verdict.NeedsMeasuring, false)]
    [InlineData(6_999.2, Verdict.NeedsMeasuring, false)]
    [InlineData(7_000, Verdict.DoesNotFit, false)]
    public void A_roll_out_within_a_hundredth_of_the_limit_has_to_be_measured(double development, Verdict verdict, bool within)
    {
        SumCheck check = RolloutLimit.Of("own class", Length.FromMillimeters(6_930)).Check(new Gear(48, 16), Length.FromMillimeters(development / 3));
        Assert.Equal((verdict, within), (check.Verdict, check.Sentence.Contains("within the 6.93 m of own class", StringComparison.Ordinal)));
        Assert.Equal(!within, check.Sentence.Contains("above the 6.93 m", StringComparison.Ordinal));
        Assert.Equal(development, check.Figures[0].Length!.Value.Millimeters, 9);
        Assert.Equal(verdict == Verdict.NeedsMeasuring, check.Sentence.Contains("roll it out", StringComparison.Ordinal));
    }

    [Fact]
    public void A_printed_limit_never_reads_as_a_fit_as_rules_have_changed()
    {
        Assert.All(RolloutLimit.PrintedUntilFebruary2025, limit =>
        {
            SumCheck check = limit.Check(new Gear(30, 30), Length.FromMillimeters(2_000));
            Assert.Equal(Verdict.NeedsMeasuring, check.Verdict);
            Assert.Contains(" within the ", check.Sentence, StringComparison.Ordinal);
            Assert.Contains(limit.Source!, check.Sources);
            Assert.Contains("ask for the rule in force", check.ToString(), StringComparison.Ordinal);
        });
    }
}
