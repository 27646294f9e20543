using FsCheck;
using FsCheck.Xunit;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.Tests.Fits;

/// <summary>Which way each sum goes when one figure grows, and which sums lead back.</summary>
public sealed class GrowthLaws
{
    private static readonly (string Name, double Least, double Most, bool Grows, Func<double, double> Sum)[] Ways =
    [
        ("gear inches with the wheel", 400, 800, true, x => new Gear(42, 17).GearInches(Mm(x))),
        ("development with the rolled circumference", 900, 2_400, true, x => new Gear(42, 17).Development(Mm(x)).Meters),
        ("gain ratio with the crank", 100, 250, false, x => new Gear(42, 17).GainRatio(Mm(340), Mm(x))),
        ("speed with the cadence", 1, 200, true, x => new Gear(42, 17).SpeedAt(RotationalSpeed.FromRevolutionsPerMinute(x), Mm(2_100)).KilometersPerHour),
        ("cadence with the speed", 1, 80, true, x => new Gear(42, 17).CadenceAt(Speed.FromKilometersPerHour(x), Mm(2_100)).RevolutionsPerMinute),
        ("chain with the chainstay", 380, 600, true, x => ChainRule.BigBig(Mm(x), 50, 34, 2).Pitches),
        ("short rule with the chainstay", 380, 600, true, x => ChainRule.ByShortRuleWithOneInch(Mm(x), 50, 34).Pitches),
        ("wear with the length over pins", 302, 313, true, x => ChainWear.Of(ChainSize.For11, Mm(x), 24).Percent),
        ("rear chainline with the gap", 120, 200, true, x => RearChainline.OfOneSprocketInInnerGap(Dimension.Of(Mm(x)), Dimension.OfMillimetres(17.5m)).Millimeters),
        ("front chainline with the shell", 60, 130, true, x => RingLine.ByShell(Mm(x), Mm(10)).Millimeters),
        ("front chainline with the spindle", 100, 180, true, x => RingLine.BySpindle(Mm(x), Mm(10)).Millimeters),
        ("angle of the chain with the chainstay", 300, 600, false, x => ChainlineStudy.Of([Mm(50)], SprocketSpacing.Parse("11 wide", null).InInnerGap(Dimension.OfMillimetres(135m))!, Mm(x)).Worst.Angle.Degrees),
        ("cut with the head tube", 80, 300, true, x => SteererLength.OfMillimetres((decimal)x, 12, 14, 20, 40).Cut.Millimeters),
        ("cut with the spacers", 0, 100, true, x => SteererLength.OfMillimetres(120, 12, 14, (decimal)x, 40).Cut.Millimeters),
        ("spacers with the steerer", 150, 400, true, x => SteererCut.SpacersBelowFor(SteererLength.OfMillimetres(120, 12, 14, 0, 40), Mm(x)).Millimeters),
        ("height of the bar with the spacers", 0, 100, true, x => (Cockpit() with { SpacersBelow = Mm(x) }).BarStack.Millimeters),
        ("reach of the bar with the spacers", 0, 100, false, x => (Cockpit() with { SpacersBelow = Mm(x) }).BarReach.Millimeters),
        ("reach of the bar with the stem", 40, 140, true, x => (Cockpit() with { Stem = StemShape.Of(Mm(x), default) }).BarReach.Millimeters),
        ("height of the bar with the angle of the stem", -40, 40, true, x => (Cockpit() with { Stem = StemShape.Of(Mm(100), StemAngle.OfSquare(Angle.FromDegrees(x))) }).BarStack.Millimeters),
        ("rails with the saddle height", 600, 900, true, x => SaddleHeight.RailsAboveCollar(Mm(x), Mm(440), Mm(48)).Millimeters),
        ("rails with the seat tube", 300, 600, false, x => SaddleHeight.RailsAboveCollar(Mm(715), Mm(x), Mm(48)).Millimeters),
        ("longest travel with the stack", 30, 120, false, x => new SeatpostRoom { RailHeight = Dimension.OfMillimetres(235), OpenDepth = Dimension.OfMillimetres(250), LeastInsertion = Dimension.OfMillimetres(80) }.LongestTravel(Dimension.Of(Mm(x))).Millimeters),
        ("saddle height with the inseam", 740, 830, true, x => SaddleHeightRule.Range(Mm(x), Mm(170)).Least.Millimeters),
        ("crank with the inseam", 740, 830, true, x => CrankLengthRule.Range(Mm(x)).Most.Millimeters),
        ("width of a tyre with the rim", 15, 40, true, x => MountedTyre.OnRim(TyreSize.Parse("40-622", null), Mm(x)).Width.Millimeters),
        ("mean leverage with the stroke", 30, 75, false, x => MeanLeverage.Of(Mm(150), Mm(x)).Ratio),
        ("sag with the stroke", 30, 75, true, x => Sag.AtShock(Mm(x), Ratio.FromPercent(30)).Millimeters),
        ("trail with the offset", 20, 80, false, x => SteeringGeometry.Trail(Angle.FromDegrees(70), Mm(x), Mm(340)).Millimeters),
        ("trail with the head angle", 60, 80, false, x => SteeringGeometry.Trail(Angle.FromDegrees(x), Mm(45), Mm(340)).Millimeters),
        ("trail with the wheel", 250, 400, true, x => SteeringGeometry.Trail(Angle.FromDegrees(70), Mm(45), Mm(x)).Millimeters),
        ("lean with the height of the bottom bracket", 250, 350, true, x => GroundClearance.Lean(Mm(x), Mm(170), Mm(16), Mm(180)).Degrees),
        ("lean with the crank", 150, 200, false, x => GroundClearance.Lean(Mm(290), Mm(x), Mm(16), Mm(180)).Degrees),
        ("room at the toe with the front centre", 550, 800, true, x => ToeClearance.Estimate(Mm(x), Mm(340), Mm(170)).Millimeters),
        ("shift of bearings with the angle", 0.1, 3, true, x => AngleHeadset.ShiftFor(Angle.FromDegrees(x), Mm(120)).Millimeters),
    ];

    public static TheoryData<string> Names => [.. Ways.Select(w => w.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_sum_goes_the_way_that_physics_says(string name)
    {
        (_, double least, double most, bool grows, Func<double, double> sum) = Ways.Single(w => w.Name == name);
        Random random = new(1);
        for (int i = 0; i < 300; i++)
        {
            double step = (most - least) / 1_000;
            double low = least + (random.NextDouble() * (most - least - step));
            double high = low + step + (random.NextDouble() * (most - step - low));
            (double first, double second) = (sum(low), sum(high));
            Assert.True(grows ? second > first : second < first, $"{name}: {first} at {low}, {second} at {high}");
        }
    }

    /// <summary>A tooth more in front is a higher gear and a longer chain, one more behind a lower gear and a longer chain, and each asks for a tooth of capacity.</summary>
    [Property(MaxTest = 500)]
    public void A_tooth_more(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        (int ring, int sprocket) = (random.Next(20, 60), random.Next(9, 50));
        Length centre = Mm(380 + (random.NextDouble() * 200));
        Assert.True(new Gear(ring + 1, sprocket).Ratio > new Gear(ring, sprocket).Ratio && new Gear(ring, sprocket + 1).Ratio < new Gear(ring, sprocket).Ratio);
        foreach (Func<Length, int, int, ChainLength> chain in (Func<Length, int, int, ChainLength>[])[ChainLoop.Exact, ChainLoop.ByRollerChainFormula, ChainRule.ByShortRuleWithOneInch, ChainRule.ByLongRuleWithOneInch, (c, f, r) => ChainRule.BigBig(c, f, r, 2), (c, f, r) => ChainRule.SmallSmall(c, f, r, 39, 2)])
        {
            double pitches = chain(centre, ring, sprocket).Pitches;
            Assert.True(chain(centre, ring + 1, sprocket).Pitches > pitches && chain(centre, ring, sprocket + 1).Pitches > pitches);
        }

        Assert.Equal(DerailleurLimits.Needed([ring, 20], [9, sprocket]) + 1, DerailleurLimits.Needed([ring + 1, 20], [9, sprocket]));
        Assert.Equal(DerailleurLimits.Needed([ring, 20], [9, sprocket]) + 1, DerailleurLimits.Needed([ring, 20], [9, sprocket + 1]));
    }

    [Property(MaxTest = 500)]
    public void What_leads_there_leads_back(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Length seatTube = Mm(300 + (random.NextDouble() * 250));
        Length saddle = Mm(650 + (random.NextDouble() * 200));
        Assert.Equal(saddle.Millimeters, SaddleHeight.Of(SaddleHeight.RailsAboveCollar(saddle, seatTube, Mm(45)), seatTube, Mm(45)).Millimeters, 1e-6);
        Length rolled = Mm(900 + (random.NextDouble() * 1_500));
        Assert.Equal(rolled.Millimeters, WheelRadius.OfRollOut(rolled).Millimeters * 2 * Math.PI, 1e-6);
        Angle slacker = Angle.FromDegrees(random.NextDouble() * 3);
        Length shift = AngleHeadset.ShiftFor(slacker, Mm(120));
        Assert.Equal(slacker.Degrees, AngleHeadset.OfShifts(shift / 2, shift / 2, Mm(120), Mm(0)).Slacker.Degrees, 1e-6);
        SteererLength stack = SteererLength.OfMillimetres(random.Next(90, 200), 12, 14, 0, 40);
        decimal below = random.Next(0, 60);
        Assert.Equal((double)below, SteererCut.SpacersBelowFor(stack, (stack with { SpacersBelow = Mm((double)below) }).Cut).Millimeters, 1e-6);
        double inches = 20 + (random.NextDouble() * 100);
        Assert.Equal(inches, Gearing.GearInchesOf(Gearing.DevelopmentOf(inches)), 1e-9);
        RotorSize small = RotorSize.All[random.Next(RotorSize.All.Length)];
        RotorSize large = RotorSize.All[random.Next(RotorSize.All.Length)];
        Assert.Equal(0, RotorChange.Of(small, large).AlongRadius.Millimeters + RotorChange.Of(large, small).AlongRadius.Millimeters, 1e-9);
    }

    private static CockpitSetup Cockpit() => new() { Stack = Mm(572), Reach = Mm(388), HeadAngle = Angle.FromDegrees(72), UpperStack = Mm(14), SpacersBelow = Mm(20), Stem = StemShape.Of(Mm(100), default) };

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
