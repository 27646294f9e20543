using Lugwork.Suspension;
using UnitsNet;

namespace Lugwork.Tests.Suspension;

/// <summary>Leverage, sag, and another shock in a frame: examples and refusals.</summary>
public sealed class LeverageTests
{
    [Fact]
    public void A_ratio_is_told_with_its_figures() => Assert.Equal("150 mm of travel from 55 mm of stroke: 2.73 to 1", MeanLeverage.Of(Mm(150), Mm(55)).ToString());

    [Theory]
    [InlineData("eyelet 210x50", "eyelet 210x55", Verdict.Unsafe, 5.0, 13.0, 143)]
    [InlineData("eyelet 210x55", "eyelet 210x50", Verdict.NeedsMeasuring, -5.0, -11.8182, 118.1818)]
    [InlineData("eyelet 210x55", "eyelet 210x55", Verdict.Fits, 0.0, 0.0, 130)]
    [InlineData("eyelet 210x55", "eyelet 230x60", Verdict.DoesNotFit, -15.0, -35.4545, 141.8182)]
    [InlineData("eyelet 210x55", "trunnion 185x55", Verdict.DoesNotFit, null, null, 130)]
    public void Another_shock_is_judged_as_the_joint_does_and_its_bottom_out_is_told(string frame, string shock, Verdict expected, double? further, double? up, double travel)
    {
        ShockChange change = ShockChange.Of(ShockSize.Parse(frame, null), Mm(130), ShockSize.Parse(shock, null));
        SumCheck check = change.Check();
        Assert.True(expected == check.Verdict, check.ToString());
        Assert.Equal(further is null, change.FurtherIn is null && change.WheelFurtherUp is null && change.WheelFurtherDown is null);
        Assert.Equal(further ?? 0, change.FurtherIn?.Millimeters ?? 0, 6);
        Assert.Equal(up ?? 0, change.WheelFurtherUp?.Millimeters ?? 0, 4);
        Assert.Equal(further is null or 0, !check.Sentence.Contains("Fully in", StringComparison.Ordinal));
        Assert.Equal(travel, change.WheelTravel.Millimeters, 4);
        Assert.NotEmpty(check.Cautions);
        Assert.Equal(further > 0, check.Sentence.Contains("shorter: the wheel goes up about", StringComparison.Ordinal));
        Assert.DoesNotContain("{", check.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_longer_shock_pushes_the_wheel_down() =>
        Assert.Equal(20 * 130 / 55.0, ShockChange.Of(ShockSize.Parse("eyelet 210x55", null), Mm(130), ShockSize.Parse("eyelet 230x60", null)).WheelFurtherDown!.Value.Millimeters, 6);

    [Fact]
    public void Advice_is_a_range_with_a_source()
    {
        Assert.All(SagAdvice.All, a => Assert.True(a.Least <= a.Most && a.Source.Title.Length > 0 && a.ToString().Contains('%', StringComparison.Ordinal)));
        Assert.Equal("downhill, rear: 30 to 35 %", SagAdvice.All[2].ToString());
        Assert.Equal(["cross-country, rear: 25 %", "trail and enduro, rear: 30 %", "downhill, rear: 30 to 35 %", "in general, to start at 25 %: 20 to 30 %", "downhill, fork: about a third: 33 %"], SagAdvice.All.Select(a => a.ToString()));
    }

    [Theory]
    [InlineData(1e300)]
    [InlineData(-1)]
    [InlineData(1_000)]
    public void What_is_no_travel_is_refused(double bad)
    {
        MeanLeverage leverage = MeanLeverage.Of(Mm(150), Mm(55));
        Refused(() => MeanLeverage.Of(Mm(bad), Mm(55)));
        Refused(() => MeanLeverage.Of(Mm(150), Mm(bad)));
        Refused(() => leverage.TravelFor(Mm(bad)));
        Refused(() => leverage.StrokeFor(Mm(bad)));
        Refused(() => Sag.AtShock(Mm(bad), Ratio.FromPercent(30)));
        Refused(() => Sag.AtFork(Mm(bad), Ratio.FromPercent(30)));
        Refused(() => Sag.AtRearWheelByMeanRatio(Mm(bad), Ratio.FromPercent(30)));
        Refused(() => Sag.AtShock(Mm(55), Ratio.FromDecimalFractions(Math.Clamp(bad, -1, 2))));
        Refused(() => Sag.AtFork(Mm(55), Ratio.FromDecimalFractions(Math.Clamp(bad, -1, 2))));
        Refused(() => Sag.AtRearWheelByMeanRatio(Mm(55), Ratio.FromDecimalFractions(Math.Clamp(bad, -1, 2))));
        Refused(() => Sag.ShareOf(Mm(bad), Mm(55)));
        Refused(() => Sag.ShareOf(Mm(5), Mm(bad)));
        Refused(() => ShockChange.Of(ShockSize.All[0], Mm(bad), ShockSize.All[0]));
    }

    [Fact]
    public void A_wheel_never_travels_less_than_the_shock_and_sag_never_more_than_the_whole()
    {
        Refused(() => MeanLeverage.Of(Mm(54.9), Mm(55)));
        Refused(() => Sag.ShareOf(Mm(55.1), Mm(55)));
        Assert.Equal(1, Sag.ShareOf(Mm(55), Mm(55)).DecimalFractions, 9);
    }

    private static void Refused(Func<object> made) => Assert.Throws<ArgumentOutOfRangeException>(() => made());

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
