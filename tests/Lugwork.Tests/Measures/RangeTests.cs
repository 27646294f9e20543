using Lugwork.Brakes;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;
using UnitsNet;
using static Lugwork.Tests.Measures.StatedRange;

namespace Lugwork.Tests.Measures;

/// <summary>What the sums of wheel, steering, saddle and suspension take, at both ends.</summary>
public sealed class RangeTests
{
    private static readonly SpokeFlange Flange = SpokeFlange.Of(Mm(58), Mm(35), Mm(2.6));

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static Angle Deg(double degrees) => Angle.FromDegrees(degrees);

    [Fact]
    public void Spokes_at_hand()
    {
        Holds(10, 500, v => SpokeStock.Nearest(Mm(v), Mm(1)));
        Holds(10, 500, v => SpokeStock.NotAbove(Mm(v), Mm(1)));
        Holds(0.5, 10, v => SpokeStock.Nearest(Mm(290), Mm(v)));
        Holds(0.5, 10, v => SpokeStock.NotAbove(Mm(290), Mm(v)));
        Assert.Equal(289, SpokeStock.NotAbove(Mm(289.9), Mm(1)).Millimeters);
        Assert.Equal(290, SpokeStock.NotAbove(Mm(290), Mm(1)).Millimeters);
        Assert.Equal(289, SpokeStock.Nearest(Mm(289.5), Mm(1)).Millimeters);
        Assert.Equal(290, SpokeStock.Nearest(Mm(289.501), Mm(1)).Millimeters);
    }

    [Fact]
    public void Flanges_and_rims()
    {
        Holds(15, 300, v => SpokeFlange.Of(Mm(v), Mm(35), Mm(2.6)));
        Holds(0, 150, v => SpokeFlange.Of(Mm(58), Mm(v), Mm(2.6)));
        Holds(1.5, 5, v => SpokeFlange.Of(Mm(58), Mm(35), Mm(v)));
        Holds(50, 250, v => SpokeFlange.OffsetFrom(Mm(v), Mm(10)));
        Holds(0, 50, v => SpokeFlange.OffsetFrom(Mm(100), Mm(v)));
        Holds(50, 900, v => EffectiveRimDiameter.OfSpokeEnds(Mm(v)));
        Holds(50, 850, v => EffectiveRimDiameter.FromNippleSeats(Mm(v), Mm(25)));
        Holds(0, 25, v => EffectiveRimDiameter.FromNippleSeats(Mm(600), Mm(v)));
        Holds(350, 900, v => EffectiveRimDiameter.FromOutside(Mm(v), Mm(150)));
        Holds(0, 150, v => EffectiveRimDiameter.FromOutside(Mm(600), Mm(v)));
        Assert.Throws<ArgumentOutOfRangeException>(() => EffectiveRimDiameter.FromSpoke(Mm(500.001), Flange, SpokeLacing.Of(32, 3)));
        Assert.Throws<ArgumentOutOfRangeException>(() => EffectiveRimDiameter.FromSpoke(Mm(9.999), Flange, SpokeLacing.Of(32, 3)));
    }

    [Fact]
    public void Lacing_and_tension()
    {
        HoldsWhole(0, 8, v => SpokeLacing.Of(32, v));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpokeLacing.Of(98, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpokeLacing.Of(6, 1));
        _ = SpokeLacing.Of(8, 2);
        _ = SpokeLacing.Of(96, 3);
        Holds(1, 150, v => SpokeTension.LeftOverRight(Mm(v), Mm(290), Mm(20), Mm(290)));
        Holds(1, 150, v => SpokeTension.LeftOverRight(Mm(20), Mm(290), Mm(v), Mm(290)));
        Holds(20, 500, v => SpokeTension.LeftOverRight(Mm(20), Mm(v), Mm(20), Mm(290)));
        Holds(10, 500, v => SpokeTension.LeftOverRight(Mm(5), Mm(v), Mm(20), Mm(290)));
        Holds(-20, 20, v => WheelSpokes.Of(EffectiveRimDiameter.OfSpokeEnds(Mm(600)), Flange, Flange, SpokeLacing.Of(32, 3), SpokeLacing.Of(32, 3), Mm(v)));
        SpokeFlange near = SpokeFlange.Of(Mm(58), Mm(10), Mm(2.6));
        Holds(-9, 9, v => WheelSpokes.Of(EffectiveRimDiameter.OfSpokeEnds(Mm(600)), near, near, SpokeLacing.Of(32, 3), SpokeLacing.Of(32, 3), Mm(v)));
        Holds(98, 900, v => SpokeLength.Of(EffectiveRimDiameter.OfSpokeEnds(Mm(v)), Flange, SpokeLacing.Of(32, 3)));
        Holds(5, 20, v => Lockring.All[0].OnAxle(Mm(v)));
    }

    [Fact]
    public void Stems_and_steerers()
    {
        SteererLength stack = SteererLength.OfMillimetres(130, 12, 20, 10, 40);
        Holds(-60, 60, v => StemAngle.OfSquare(Deg(v)));
        Holds(30, 150, v => StemAngle.OfSteerer(Deg(v)));
        Holds(-40, 80, v => StemAngle.OfHorizon(Deg(v), Deg(70)));
        Holds(45, 90, v => StemAngle.OfHorizon(Deg(0), Deg(v)));
        Holds(45, 90, v => StemAngle.OfSquare(Deg(0)).AboveHorizon(Deg(v)));
        Holds(0, 200, v => StemShape.Of(Mm(v), StemAngle.OfSquare(Deg(0))));
        Holds(0, 100, v => HeadsetHeights.Measured(Mm(v), Mm(10)));
        Holds(0, 80, v => HeadsetHeights.Measured(Mm(20), Mm(v)));
        Holds(0, 100, v => HeadsetHeights.Measured(Mm(20), Mm(10), Mm(v)));
        Holds(0, 100, v => HeadsetHeights.Usual(HeadsetCup.Zs44, HeadsetCup.Zs44, Mm(v)));
        Holds(0.001, 1_000, v => stack.Check(Mm(v)));
        Holds(0, 1_000, v => _ = stack with { HeadTube = Mm(v) });
        Holds(0, 200, v => SteererSpacers.OnCarbon(SteererSize.Mm28Point6, Mm(v)));
        Holds(0, 200, v => SteererSpacers.OnCarbon(SteererSize.Mm28Point6, Mm(10), Mm(v)));
        Holds(0, 30, v => SteererSpacers.OnCarbon(SteererSize.Mm28Point6, Mm(10), Mm(30), Mm(v)));
        Holds(0, 200, v => SteererSpacers.OnCarbon(SteererSize.Mm28Point6, Mm(10), null, Mm(v)));
        Holds(5, 200, v => PressFit.Interference(Mm(v), Mm(30)));
        Holds(5, 200, v => PressFit.Interference(Mm(30), Mm(v)));
    }

    [Fact]
    public void A_cockpit()
    {
        CockpitSetup setup = new() { Stack = Mm(600), Reach = Mm(400), HeadAngle = Deg(70), Stem = StemShape.Of(Mm(60), StemAngle.OfSquare(Deg(0))) };
        Holds(200, 1_000, v => _ = setup with { Stack = Mm(v) });
        Holds(100, 800, v => _ = setup with { Reach = Mm(v) });
        Holds(45, 90, v => _ = setup with { HeadAngle = Deg(v) });
        Holds(0, 100, v => _ = setup with { UpperStack = Mm(v) });
        Holds(0, 200, v => _ = setup with { SpacersBelow = Mm(v) });
        Holds(0, 200, v => _ = setup with { StemClamp = Mm(v) });
        Holds(-100, 200, v => _ = setup with { BarRise = Mm(v) });
    }

    [Fact]
    public void Saddles()
    {
        Holds(300, 1_200, v => SaddleHeight.RailsAboveCollar(Mm(v), Mm(450), Mm(50)));
        Holds(100, 800, v => SaddleHeight.RailsAboveCollar(Mm(1_000), Mm(v), Mm(50)));
        Holds(20, 120, v => SaddleHeight.RailsAboveCollar(Mm(1_000), Mm(450), Mm(v)));
        Holds(-100, 600, v => SaddleHeight.Of(Mm(v), Mm(450), Mm(50)));
        Holds(650, 1_000, v => SaddleHeightRule.Inseam883.For(Mm(v)));
        Holds(1_450, 2_050, v => SaddleHeightRule.TeamBody.For(Mm(v)));
        Holds(100, 250, v => SaddleHeightRule.Range(Mm(800), Mm(v)));
    }

    [Fact]
    public void Suspension()
    {
        Ratio share = Ratio.FromDecimalFractions(0.3);
        Holds(10, 150, v => Sag.AtShock(Mm(v), share));
        Holds(20, 300, v => Sag.AtRearWheelByMeanRatio(Mm(v), share));
        Holds(20, 300, v => Sag.AtFork(Mm(v), share));
        Holds(0, 1, v => Sag.AtFork(Mm(100), Ratio.FromDecimalFractions(v)));
        Holds(0, 1, v => Sag.AtShock(Mm(50), Ratio.FromDecimalFractions(v)));
        Holds(0, 1, v => Sag.AtRearWheelByMeanRatio(Mm(100), Ratio.FromDecimalFractions(v)));
        Holds(10, 300, v => Sag.ShareOf(Mm(5), Mm(v)));
        Holds(0, 50, v => Sag.ShareOf(Mm(v), Mm(50)));
        Holds(10, 150, v => MeanLeverage.Of(Mm(200), Mm(v)));
        Holds(50, 300, v => MeanLeverage.Of(Mm(v), Mm(50)));
        Holds(20, 300, v => MeanLeverage.Of(Mm(v), Mm(15)));
        Holds(0, 150, v => MeanLeverage.Of(Mm(140), Mm(50)).TravelFor(Mm(v)));
        Holds(0, 500, v => MeanLeverage.Of(Mm(140), Mm(50)).StrokeFor(Mm(v)));
    }

    [Fact]
    public void Tyres()
    {
        MountedTyre tyre = MountedTyre.OnMeasuringRim(TyreSize.Parse("40-622", null));
        Holds(10, 250, v => TyreClearance.EachSide(tyre, Mm(v)));
        Holds(0, 20, v => TyreClearance.EachSide(tyre, Mm(60), Mm(v)));
        Holds(50, 600, v => TyreClearance.Above(tyre, Mm(v)));
        Holds(10, 100, v => MountedTyre.OnRim(tyre.Size, Mm(v)));
        HoldsWhole(18, 132, v => RimWidthAdvice.For(Mm(v)));
        HoldsWhole(18, 132, v => MeasuringRim.For(Mm(v)));
        HoldsWhole(18, 132, v => PressureLimits.LeastByOlderStandard(Mm(v), false));
        Holds(0.2, 20, v => PressureLimits.Of(Pressure.FromBars(v), null, null));
        Holds(0.2, 20, v => PressureLimits.Of(Pressure.FromBars(5), null, null).Check(Pressure.FromBars(v)));
        Holds(15, 140, v => SectionHeight.EqualToWidth.Of(Mm(v)));
        Assert.All(TyreGrowth.All, g => Holds(15, 140, v => g.WidthOn(Mm(v), Mm(20), Mm(21))));
        Assert.All(TyreGrowth.All, g => Holds(10, 100, v => g.WidthOn(Mm(40), Mm(v), Mm(21))));
        Assert.All(TyreGrowth.All, g => Holds(10, 100, v => g.WidthOn(Mm(40), Mm(20), Mm(v))));
    }
}
