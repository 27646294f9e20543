using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.Tests.Tyres;

/// <summary>Tyre on a rim: examples and refusals.</summary>
public sealed class MountedTyreTests
{
    [Theory]
    [InlineData("28-622", 19, 28, 25, 31)]
    [InlineData("28-622", 23, 29.6, 26.6, 35)]
    [InlineData("38-622", 19, 36.4, 31, 39.4)]
    [InlineData("40-622", 25, 40.8, 37.8, 45)]
    public void A_tyre_is_as_wide_as_its_rim_makes_it(string size, double rim, double likely, double least, double most)
    {
        MountedTyre tyre = MountedTyre.OnRim(TyreSize.Parse(size, null), Mm(rim));
        Assert.Equal(likely, tyre.Width.Millimeters, 6);
        Assert.Equal(least, tyre.LeastWidth.Millimeters, 6);
        Assert.Equal(most, tyre.MostWidth.Millimeters, 6);
    }

    [Theory]
    [InlineData("23-622", 668, 673, 679)]
    [InlineData("28-622", 678, 678, 684)]
    [InlineData("27-622", 676, 681, 687)]
    public void The_outside_diameter_goes_by_a_convention(string size, double equal, double older, double upper)
    {
        MountedTyre tyre = MountedTyre.OnMeasuringRim(TyreSize.Parse(size, null));
        Assert.Equal(equal, tyre.OutsideDiameter(SectionHeight.EqualToWidth).Millimeters, 6);
        Assert.Equal(older, tyre.OutsideDiameter(SectionHeight.OlderStandard).Millimeters, 6);
        Assert.Equal(upper, tyre.OutsideDiameter(SectionHeight.UpperSize).Millimeters, 6);
    }

    [Fact]
    public void Under_a_rider_a_wheel_rolls_a_little_less()
    {
        LengthRange range = MountedTyre.OnMeasuringRim(TyreSize.Parse("25-622", null)).LoadedCircumference(SectionHeight.EqualToWidth);
        (Length least, Length most) = (range.Least, range.Most);
        Assert.Equal(2085.8, least.Millimeters, 1);
        Assert.Equal(2096.4, most.Millimeters, 1);
    }

    [Theory]
    [InlineData(50, "Road", Verdict.Fits)]
    [InlineData(42, "Road", Verdict.Fits)]
    [InlineData(41.9, "Road", Verdict.NeedsMeasuring)]
    [InlineData(35.9, "Road", Verdict.NeedsMeasuring)]
    [InlineData(34.3, "Road", Verdict.NeedsMeasuring)]
    [InlineData(34.1, "Road", Verdict.DoesNotFit)]
    [InlineData(41.9, "UnitedStates", Verdict.NeedsMeasuring)]
    [InlineData(29, "UnitedStates", Verdict.DoesNotFit)]
    [InlineData(100, "UnitedStates", Verdict.NeedsMeasuring)]
    [InlineData(46, "Others", Verdict.Fits)]
    [InlineData(45.9, "Others", Verdict.NeedsMeasuring)]
    public void A_gap_is_held_against_a_rule(double gap, string rule, Verdict expected)
    {
        ClearanceRule asked = rule switch { "Road" => ClearanceRule.Road, "Others" => ClearanceRule.Others, _ => ClearanceRule.UnitedStates };
        SumCheck check = TyreClearance.EachSide(MountedTyre.OnRim(TyreSize.Parse("28-622", null), Mm(22)), Mm(gap)).Check(asked);
        Assert.True(expected == check.Verdict, check.ToString());
        Assert.NotEmpty(check.Cautions);
    }

    [Fact]
    public void A_wheel_off_the_middle_is_judged_on_its_closer_side()
    {
        TyreClearance room = TyreClearance.EachSide(MountedTyre.OnMeasuringRim(TyreSize.Parse("28-622", null)), Mm(44), Mm(3));
        Assert.Equal(5, room.Likely.Millimeters, 6);
        Assert.Equal(3.5, room.Least.Millimeters, 6);
        Assert.Equal(6.5, room.Most.Millimeters, 6);
    }

    [Fact]
    public void Above_the_tread_the_upper_size_counts()
    {
        TyreClearance room = TyreClearance.Above(MountedTyre.OnMeasuringRim(TyreSize.Parse("25-622", null)), Mm(345));
        Assert.Equal(9, room.Likely.Millimeters, 6);
        Assert.Equal(3.5, room.Least.Millimeters, 6);
        Assert.Equal(12, room.Most.Millimeters, 6);
        Assert.Equal(Verdict.NeedsMeasuring, room.Check(ClearanceRule.Road).Verdict);
    }

    /// <summary>No height off the measuring rim is published.</summary>
    [Theory]
    [InlineData(19, 2)]
    [InlineData(40, 23)]
    [InlineData(17, 4)]
    public void Off_the_measuring_rim_the_height_may_differ_as_much_as_the_rim(double rim, double lessRoom)
    {
        TyreSize size = TyreSize.Parse("28-622", null);
        double off = Math.Abs(rim - MountedTyre.OnMeasuringRim(size).MeasuredOn.Millimeters);
        TyreClearance measured = TyreClearance.Above(MountedTyre.OnMeasuringRim(size), Mm(348));
        TyreClearance mounted = TyreClearance.Above(MountedTyre.OnRim(size, Mm(rim)), Mm(348));
        Assert.True(off <= lessRoom);
        Assert.Equal(measured.Least.Millimeters - off, mounted.Least.Millimeters, 6);
        Assert.Equal(measured.Most.Millimeters + off, mounted.Most.Millimeters, 6);
        Assert.True(rim < 30 || mounted.Check(ClearanceRule.Road).Verdict == Verdict.NeedsMeasuring);
    }

    [Fact]
    public void Rims_are_advised_from_the_tables_and_by_rule_of_thumb()
    {
        RimWidthAdvice advice = RimWidthAdvice.For(Mm(32));
        Assert.Equal(16, advice.LeastByRatio.Millimeters, 6);
        Assert.Equal(22.07, advice.MostByRatio.Millimeters, 2);
        Assert.Equal("21C", advice.MeasuredOn.Designation);
        Assert.Equal([17, 19, 21], advice.CodesWithinRatio(RimType.Crochet).Select(w => w.Millimeters));
        Assert.Empty(advice.CodesWithinRatio(RimType.Hookless));
        Assert.All(advice.Rows, r => Assert.True(r.Holds(32)));
        Assert.Equal(TyreWidthRange.All.Count(r => r.Holds(32)), advice.Rows.Length);
    }

    [Theory]
    [InlineData(1e300)]
    [InlineData(-5)]
    [InlineData(5_000)]
    public void What_is_no_length_of_a_tyre_is_refused(double bad)
    {
        MountedTyre tyre = MountedTyre.OnMeasuringRim(TyreSize.Parse("28-622", null));
        Refused(() => MountedTyre.OnRim(tyre.Size, Mm(bad)));
        Refused(() => SectionHeight.EqualToWidth.Of(Mm(bad)));
        Refused(() => TyreGrowth.Half.WidthOn(Mm(bad), Mm(15), Mm(20)));
        Refused(() => TyreGrowth.Half.WidthOn(Mm(25), Mm(bad), Mm(20)));
        Refused(() => TyreGrowth.Half.WidthOn(Mm(25), Mm(15), Mm(bad)));
        Refused(() => TyreClearance.EachSide(tyre, Mm(bad)));
        Refused(() => TyreClearance.EachSide(tyre, Mm(50), Mm(bad)));
        Refused(() => TyreClearance.Above(tyre, Mm(bad)));
    }

    [Fact]
    public void The_default_size_and_widths_of_no_tyre_are_refused()
    {
        Refused(() => MountedTyre.OnMeasuringRim(default));
        Refused(() => MountedTyre.OnRim(default, Mm(20)));
        Refused(() => RimWidthAdvice.For(Mm(17)));
        Refused(() => RimWidthAdvice.For(Mm(133)));
        Refused(() => PressureLimits.LeastByOlderStandard(Mm(17), false));
        Refused(() => PressureLimits.LeastByOlderStandard(Mm(17), true));
    }

    private static void Refused(Func<object> made) => Assert.Throws<ArgumentOutOfRangeException>(() => made());

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
