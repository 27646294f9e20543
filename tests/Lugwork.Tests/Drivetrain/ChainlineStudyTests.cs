using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.Tests.Drivetrain;

public sealed class ChainlineStudyTests
{
    private static readonly RearChainline Twelve = SprocketSpacing.Parse("12", null).InInnerGap(Dimension.OfMillimetres(141m))!;

    [Fact]
    public void Rings_stand_around_their_chainline()
    {
        Assert.Equal([46.0, 41.0], RingLine.Rings(Mm(43.5), 2, Mm(5)).Select(r => r.Millimeters));
        Assert.Equal([57.5, 50.0, 42.5], RingLine.Rings(Mm(50), 3, Mm(7.5)).Select(r => r.Millimeters));
        Assert.Equal([52.0], RingLine.Rings(Mm(52), 1, default).Select(r => r.Millimeters));
        Assert.Throws<ArgumentOutOfRangeException>(() => RingLine.Rings(Mm(52), 4, Mm(5)));
    }

    [Fact]
    public void A_longer_spindle_moves_a_ring_out_by_half()
    {
        Assert.Equal(43.5, RingLine.BySpindle(Mm(110), Mm(11.5)).Millimeters, 9);
        Assert.Equal(46, RingLine.BySpindle(Mm(115), Mm(11.5)).Millimeters, 9);
        Assert.Equal(45, RingLine.BySpindle(Mm(110), Mm(11.5), driveSideLonger: Mm(3)).Millimeters, 9);
        Assert.Equal(52, RingLine.ByShell(Mm(73), Mm(15.5)).Millimeters, 9);
        Assert.Throws<ArgumentOutOfRangeException>(() => RingLine.ByShell(Mm(68), Mm(-35)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RingLine.BySpindle(Mm(110), Mm(11.5), Mm(51)));
    }

    [Fact]
    public void A_ring_in_the_middle_runs_alike_to_both_ends()
    {
        ChainlineStudy study = ChainlineStudy.Of([Twelve.Middle], Twelve, Mm(435));
        Assert.Equal(study.Runs[0].Angle.Degrees, study.Runs[^1].Angle.Degrees, 9);
        Assert.Equal((1, 1), (study.Worst.Ring, study.Worst.Sprocket));
        Assert.True(study.IsUsual);
        Assert.Equal(0, study.ShiftToMiddle.Millimeters, 9);
    }

    [Fact]
    public void A_ring_outside_the_middle_is_told_with_its_steepest_run()
    {
        ChainlineStudy study = ChainlineStudy.Of([Mm(52)], Twelve, Mm(435));
        Assert.Equal("ring 1, sprocket 12: 3.28 degrees inward", study.Worst.ToString());
        Assert.False(study.IsUsual);
        Assert.Equal(5.1, study.FromMiddle.Millimeters, 6);
        Assert.Equal(-24.9, study.Worst.Deviation.Millimeters, 6);
        Assert.EndsWith("rings 5.1 mm outside the middle of the sprockets", study.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Choices_are_ranked_by_their_steepest_run()
    {
        ChainlineStudy study = ChainlineStudy.Of([Mm(52)], Twelve, Mm(435));
        string[] ranked = [.. study.Rank([("as it is", default), ("2.5 mm spacer to the left", Mm(-2.5)), ("6 mm ring", Mm(-3)), ("flat ring", Mm(3))]).Select(c => c.Name)];
        Assert.Equal(["6 mm ring", "2.5 mm spacer to the left", "as it is", "flat ring"], ranked);
        Assert.Throws<ArgumentOutOfRangeException>(() => study.Rank([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => study.Rank([("far", Mm(-51))]));
    }

    [Fact]
    public void Rings_that_stand_in_no_order_or_nowhere_are_refused()
    {
        Assert.Throws<ArgumentException>(() => ChainlineStudy.Of([Mm(41), Mm(46)], Twelve, Mm(435)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainlineStudy.Of([], Twelve, Mm(435)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainlineStudy.Of(default, Twelve, Mm(435)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainlineStudy.Of([Mm(52)], Twelve, Mm(199)));
    }

    [Fact]
    public void Sprockets_stand_in_equal_steps_between_the_ends()
    {
        Assert.Equal(12, Twelve.Sprockets.Length);
        Assert.Equal(Twelve.Smallest.Millimeters, Twelve.Sprockets[0].Millimeters, 9);
        Assert.Equal(Twelve.Largest.Millimeters, Twelve.Sprockets[^1].Millimeters, 9);
        Assert.Equal(Twelve.Middle.Millimeters, Twelve.Between(1, 12).Millimeters, 9);
        Assert.Throws<ArgumentOutOfRangeException>(() => Twelve.Between(0, 12));
        Assert.Throws<ArgumentOutOfRangeException>(() => Twelve.Between(1, 13));
        Assert.Throws<ArgumentOutOfRangeException>(() => RearChainline.OfStackInInnerGap(D(60), D(3), D(2), D(5), 7));
        Assert.Throws<ArgumentOutOfRangeException>(() => RearChainline.OfStackInInnerGap(D(130), D(3), default, D(5), 7));
        Assert.Equal(42.5, RearChainline.OfStackInInnerGap(D(120), D(16.5m), D(2), D(5), 1).Smallest.Millimeters, 9);
    }

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static Dimension D(decimal millimetres) => Dimension.OfMillimetres(millimetres);
}
