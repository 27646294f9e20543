using FsCheck;
using FsCheck.Xunit;
using Lugwork.Suspension;
using UnitsNet;

namespace Lugwork.Tests.Suspension;

/// <summary>Laws of leverage, sag and another shock.</summary>
public sealed class LeverageLaws
{
    [Property(MaxTest = 2_000)]
    public void Travel_and_stroke_are_inverse_and_whole_gives_whole(DoNotSize<int> seed)
    {
        (double travel, double stroke, double part) = Any(seed.Item);
        MeanLeverage leverage = MeanLeverage.Of(Length.FromMillimeters(travel), Length.FromMillimeters(stroke));
        Assert.Equal(travel, leverage.TravelFor(Length.FromMillimeters(stroke)).Millimeters, 1e-9);
        Assert.Equal(stroke * part, leverage.StrokeFor(leverage.TravelFor(Length.FromMillimeters(stroke * part))).Millimeters, 1e-9);
        Assert.Equal(leverage.Ratio, leverage.TravelFor(Length.FromMillimeters(1)).Millimeters, 1e-9);
    }

    [Property(MaxTest = 2_000)]
    public void Sag_and_share_are_inverse_and_wheel_sag_is_the_ratio_times_shock_sag(DoNotSize<int> seed)
    {
        (double travel, double stroke, double part) = Any(seed.Item);
        MeanLeverage leverage = MeanLeverage.Of(Length.FromMillimeters(travel), Length.FromMillimeters(stroke));
        Ratio share = Ratio.FromDecimalFractions(part);
        Length shock = Sag.AtShock(Length.FromMillimeters(stroke), share);
        Assert.Equal(part, Sag.ShareOf(shock, Length.FromMillimeters(stroke)).DecimalFractions, 1e-9);
        Assert.Equal(leverage.TravelFor(shock).Millimeters, Sag.AtRearWheelByMeanRatio(Length.FromMillimeters(travel), share).Millimeters, 1e-9);
        Assert.Equal(part * travel, Sag.AtFork(Length.FromMillimeters(travel), share).Millimeters, 1e-9);
    }

    [Property(MaxTest = 2_000)]
    public void Units_in_change_nothing(DoNotSize<int> seed)
    {
        (double travel, double stroke, double part) = Any(seed.Item);
        Assert.Equal(travel / stroke, MeanLeverage.Of(Length.FromInches(travel / 25.4), Length.FromCentimeters(stroke / 10)).Ratio, 1e-9);
        Assert.Equal(stroke * part, Sag.AtShock(Length.FromMeters(stroke / 1000), Ratio.FromPercent(part * 100)).Millimeters, 1e-9);
    }

    [Fact]
    public void A_shock_and_back_again_changes_nothing_and_more_stroke_goes_further_in()
    {
        foreach (ShockSize frame in ShockSize.All)
        {
            foreach (ShockSize shock in ShockSize.All)
            {
                ShockChange there = ShockChange.Of(frame, Length.FromMillimeters(150), shock);
                ShockChange back = ShockChange.Of(shock, Length.FromMillimeters(150), frame);
                Assert.Equal(frame.Mount == shock.Mount, there.FurtherIn is not null && there.WheelFurtherUp is not null && there.WheelFurtherDown is not null);
                Assert.Equal(0, (there.FurtherIn + back.FurtherIn)?.Millimeters ?? 0, 1e-9);
                Assert.Equal(there.FurtherIn?.Millimeters * there.Ratio ?? 0, there.WheelFurtherUp?.Millimeters ?? 0, 1e-9);
                Assert.Equal(ShockRelations.InFrame.Judge([frame.FitCode, shock.FitCode]).Verdict, there.Check().Verdict);
                Assert.True(frame.Mount != shock.Mount || frame.Eye != shock.Eye || Math.Sign(shock.Shaft - frame.Shaft) == Math.Sign(there.FurtherIn!.Value.Millimeters));
                Assert.True(there.Check().Verdict != Verdict.Fits || there.FurtherIn!.Value.Millimeters == 0);
            }
        }
    }

    /// <summary>From the lengths of the two shocks alone: what one is shorter fully in goes up at the wheel, what it is longer fully out goes down, and the travel is the way between.</summary>
    [Property(MaxTest = 500)]
    public void Both_ends_of_the_travel_follow_from_both_ends_of_the_shock(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        ShockSize frame = ShockSize.All[random.Next(ShockSize.All.Length)];
        ShockSize shock = ShockSize.All[random.Next(ShockSize.All.Length)];
        double travel = Math.Max(frame.Stroke.Millimeters, 20) + (random.NextDouble() * 150);
        ShockChange change = ShockChange.Of(frame, Length.FromMillimeters(travel), shock);
        double ratio = travel / frame.Stroke.Millimeters;
        Assert.Equal(shock.Stroke.Millimeters * ratio, change.WheelTravel.Millimeters, 1e-9);
        if (frame.Mount == shock.Mount)
        {
            double fullyIn = frame.EyeToEye.Millimeters - frame.Stroke.Millimeters - (shock.EyeToEye.Millimeters - shock.Stroke.Millimeters);
            Assert.Equal(fullyIn, change.FurtherIn!.Value.Millimeters, 1e-9);
            Assert.Equal(fullyIn * ratio, change.WheelFurtherUp!.Value.Millimeters, 1e-9);
            Assert.Equal((shock.EyeToEye.Millimeters - frame.EyeToEye.Millimeters) * ratio, change.WheelFurtherDown!.Value.Millimeters, 1e-9);
            Assert.Equal(travel + change.WheelFurtherUp.Value.Millimeters + change.WheelFurtherDown.Value.Millimeters, change.WheelTravel.Millimeters, 1e-9);
            Assert.Equal(fullyIn > 1e-9, change.Check().Sentence.Contains("mm further", StringComparison.Ordinal));
            Assert.Equal(fullyIn < -1e-9, change.Check().Sentence.Contains("mm earlier", StringComparison.Ordinal));
        }
    }

    /// <summary>Parts of a stroke add up, and a share of the travel is the same share of the stroke: true of a constant ratio and of no other.</summary>
    [Property(MaxTest = 1_000)]
    public void Parts_of_the_stroke_add_up(DoNotSize<int> seed)
    {
        (double travel, double stroke, double part) = Any(seed.Item);
        MeanLeverage leverage = MeanLeverage.Of(Length.FromMillimeters(travel), Length.FromMillimeters(stroke));
        Length first = leverage.TravelFor(Length.FromMillimeters(stroke * part));
        Length rest = leverage.TravelFor(Length.FromMillimeters(stroke * (1 - part)));
        Assert.Equal(travel, (first + rest).Millimeters, 1e-9);
        Assert.Equal(part, first.Millimeters / travel, 1e-9);
        Assert.Equal(part, Sag.ShareOf(Sag.AtFork(Length.FromMillimeters(travel), Ratio.FromDecimalFractions(part)), Length.FromMillimeters(travel)).DecimalFractions, 1e-9);
        Assert.True(leverage.Ratio >= 1 && leverage.TravelFor(Length.Zero).Millimeters == 0 && leverage.StrokeFor(Length.Zero).Millimeters == 0);
    }

    private static (double Travel, double Stroke, double Part) Any(int seed)
    {
        Random random = new(seed);
        double stroke = 30 + (random.NextDouble() * 60);
        return (stroke * (1 + (random.NextDouble() * 2)), stroke, random.NextDouble());
    }
}
