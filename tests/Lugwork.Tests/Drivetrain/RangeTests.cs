using Lugwork.Drivetrain;
using UnitsNet;
using static Lugwork.Tests.Measures.StatedRange;

namespace Lugwork.Tests.Drivetrain;

/// <summary>What the sums of the drivetrain take, at both ends.</summary>
public sealed class RangeTests
{
    private static readonly Gear Even = new(40, 20);

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    [Fact]
    public void Gears()
    {
        HoldsWhole(6, 200, v => _ = new Gear(v, 20));
        HoldsWhole(6, 200, v => _ = new Gear(40, v));
        Holds(100, 1_500, v => Even.GearInches(Mm(v)));
        Holds(50, 750, v => Even.GainRatio(Mm(v), Mm(170)));
        Holds(100, 250, v => Even.GainRatio(Mm(340), Mm(v)));
        Holds(300, 5_000, v => Even.Development(Mm(v)));
        Holds(0, 300, v => Gearing.SpeedAt(Mm(4_000), RotationalSpeed.FromRevolutionsPerMinute(v)));
        Holds(1, 1_000_000, v => Gearing.GearInchesOf(Mm(v)));
        Holds(0, 200, v => Gearing.CadenceAt(Mm(4_000), Speed.FromKilometersPerHour(v)));
        Holds(0.01, 50, v => Gearing.CadenceAt(v, Mm(170), Speed.FromKilometersPerHour(20)));
        Holds(0.001, 2, v => Gearing.RangePercent(v, 2));
        Holds(2, 100, v => Gearing.RangePercent(2, v));
        Holds(0.001, 100, v => Gearing.StepPercent(v, 2));
        Holds(0.001, 100, v => Gearing.StepPercent(2, v));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gearing.DevelopmentOf(1_000.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gearing.DevelopmentOf(0));
        Holds(1_000, 20_000, v => RolloutLimit.Of("a class", Mm(v)));
    }

    [Fact]
    public void Tables_of_gears()
    {
        GearTable table = GearTable.Of([40], [11, 28], Mm(2_100));
        Holds(0, 50, v => table.CountOfDifferent(v));
        HoldsWhole(6, 200, v => GearTable.Of([v], [12], Mm(2_100)));
        HoldsWhole(6, 200, v => GearTable.Of([40], [v], Mm(2_100)));
        Holds(300, 5_000, v => GearTable.Of([40], [11], Mm(v)));
    }

    [Fact]
    public void Chains()
    {
        Holds(0, 1_000, v => ChainLength.OfPitches(v));
        Holds(0, 500, v => ChainLength.OfFullLinks(v));
        Holds(-200, 200, v => ChainLength.OfPitches(400).Plus(v));
        Holds(-500, 500, v => ChainLoop.PitchesForGrowth(Mm(v)));
        HoldsWhole(-200, 200, v => ChainLoop.PitchesForTeeth(v));
        HoldsWhole(6, 200, v => ChainLoop.Exact(Mm(1_000), v, 20));
        HoldsWhole(6, 200, v => ChainLoop.Exact(Mm(1_000), 40, v));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainLoop.Exact(Mm(5_000.001), 40, 20));
        _ = ChainLoop.Exact(Mm(5_000), 40, 20);
        HoldsWhole(0, 12, v => ChainRule.BigBig(Mm(430), 40, 28, v));
        HoldsWhole(0, 12, v => ChainRule.SmallSmall(Mm(430), 40, 11, 30, v));
        HoldsWhole(0, 200, v => ChainRule.SmallSmall(Mm(430), 40, 11, v, 2));
        HoldsWhole(0, 200, v => DerailleurLimits.TakenUp(v));
        ChainSize chain = ChainSize.All[0];
        HoldsWhole(2, 200, v => ChainWear.LongestOver(chain, v));
        Holds(24 * 12.7 * 0.99, 24 * 12.7 * 1.03, v => ChainWear.Of(chain, Mm(v), 24));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainWear.Of(chain, Mm(12.7), 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainWear.Of(chain, Mm(12.7 * 201), 201));
    }

    [Fact]
    public void Lines()
    {
        Holds(0, 300, v => RingLine.Rings(Mm(v), 1, Mm(5)));
        Holds(0, 20, v => RingLine.Rings(Mm(45), 2, Mm(v)));
        HoldsWhole(1, 3, v => RingLine.Rings(Mm(45), v, Mm(5)));
        Holds(-50, 50, v => RingLine.BySpindle(Mm(120), Mm(20), Mm(v)));
        Holds(0, 300, v => RingLine.ByShell(Mm(v), Mm(10)));
        Holds(0, 300, v => RingLine.BySpindle(Mm(v), Mm(0)));
        Holds(-34, 266, v => RingLine.ByShell(Mm(68), Mm(v)));
        HoldsWhole(1, 14, v => RearChainline.OfStackInInnerGap(Dimension.OfMillimetres(135), Dimension.OfMillimetres(2), Dimension.OfMillimetres(1.8m), Dimension.OfMillimetres(3.6m), v));
    }
}
