using Lugwork.Drivetrain;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Chains on one sprocket of full thickness: a chain for nine speeds and more is narrower inside, and a tooth has to be measured first.</summary>
public sealed class SingleSprocketTests
{
    private static Verdict Judge(SprocketClass sprocket, ChainSize chain) => ChainRelations.OnSprockets.Judge([sprocket.FitCode, chain.FitCode]).Verdict;

    [Fact]
    public void No_chain_for_nine_speeds_and_more_reads_as_a_fit_on_one_sprocket()
    {
        foreach (ChainSize chain in new[] { ChainSize.For9, ChainSize.For10, ChainSize.For11, ChainSize.For12, ChainSize.For13 })
        {
            Assert.Equal(Verdict.NeedsMeasuring, Judge(SprocketClass.Single332, chain));
            Assert.Equal(Verdict.DoesNotFit, Judge(SprocketClass.Eighth, chain));
        }
    }

    [Fact]
    public void A_wide_chain_goes_on_a_narrow_tooth_and_never_the_other_way()
    {
        Assert.Equal(Verdict.Fits, Judge(SprocketClass.Single332, ChainSize.To8));
        Assert.Equal(Verdict.Fits, Judge(SprocketClass.Single332, ChainSize.Eighth));
        Assert.Equal(Verdict.Fits, Judge(SprocketClass.Eighth, ChainSize.Eighth));
        Assert.Equal(Verdict.DoesNotFit, Judge(SprocketClass.Eighth, ChainSize.To8));
        Assert.Equal(Verdict.DoesNotFit, Judge(SprocketClass.To8, ChainSize.Eighth));
    }

    [Fact]
    public void A_freewheel_thread_is_right_handed_for_pedalling_tightens_it_and_the_lockring_of_a_track_hub_is_not() =>
        Assert.Equal([FreewheelThread.TrackLockring], FreewheelThread.All.Where(t => t.IsLeftHand));

    [Fact]
    public void A_measured_crank_is_a_usual_one_or_the_reading_with_both_ends_and_nothing_beyond_the_range()
    {
        Assert.Equal(["172.5"], UsualCrankLength.WithinError(172.6m, 0.1m).Select(c => c.FitKey));
        Assert.Equal([248.5m, 249m, 249.5m], UsualCrankLength.WithinError(249m, 0.5m).Select(c => c.Millimetres));
        Assert.Equal([249m, 249.5m, 250m], UsualCrankLength.WithinError(249.5m, 0.5m).Select(c => c.Millimetres));
        Assert.Empty(UsualCrankLength.WithinError(249.9m, 0.5m));
        Assert.Empty(UsualCrankLength.WithinError(100.1m, 0.5m));
    }
}
