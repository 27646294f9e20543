using Lugwork.Drivetrain;

namespace Lugwork.Tests.Drivetrain;

/// <summary>The table of chains on sprockets against the arithmetic of printed widths and pitches.</summary>
public sealed class ChainLaws
{
    // Outside widths: Bicycle chain explained (width tables), Cycling Boutique. Pitch and sprocket: New Shifters, and Nine Over Eight
    // Gearing? (2nd-gear) for 8 and 9; a 10-speed worked example (ti10x); cassette total widths (brainybiker) for 11 and 12.
    private static readonly (ChainSize Chain, double Least, double Most)[] Chains =
        [(ChainSize.To8, 7.0, 7.3), (ChainSize.For9, 6.5, 6.7), (ChainSize.For10, 5.84, 6.2), (ChainSize.For11, 5.46, 5.74), (ChainSize.For12, 5.15, 5.25)];

    private static readonly (SprocketClass Sprockets, double Pitch, double Sprocket)[] Spacings =
        [(SprocketClass.To8, 4.8, 1.8), (SprocketClass.For9, 4.34, 1.8), (SprocketClass.For10, 3.95, 1.6), (SprocketClass.For11, 3.9, 1.6), (SprocketClass.For12, 3.6, 1.6)];

    [Fact]
    public void A_chain_whose_outside_reaches_the_next_sprocket_never_fits_and_one_of_its_own_speeds_does()
    {
        int refused = 0;
        foreach ((ChainSize chain, double least, double most) in Chains)
        {
            foreach ((SprocketClass sprockets, double pitch, double sprocket) in Spacings)
            {
                Verdict verdict = ChainRelations.OnSprockets.Judge([sprockets.FitCode, chain.FitCode]).Verdict;
                double room = 2 * (pitch - (sprocket / 2));
                if (least > room)
                {
                    refused++;
                    Assert.Equal(Verdict.DoesNotFit, verdict);
                }
                else if (most > room)
                {
                    Assert.True(verdict >= Verdict.NeedsMeasuring, $"{chain} on {sprockets} may touch: {verdict}");
                }
                else
                {
                    Assert.True(verdict <= Verdict.NeedsMeasuring, $"{chain} on {sprockets} has room: {verdict}");
                }
            }
        }

        Assert.True(refused >= 4, $"{refused}");
        Assert.All(Chains.Zip(Spacings), p => Assert.Equal(Verdict.Fits, ChainRelations.OnSprockets.Judge([p.Second.Sprockets.FitCode, p.First.Chain.FitCode]).Verdict));
    }

    [Fact]
    public void The_wide_chain_goes_with_single_sprockets_only()
    {
        Assert.All(SprocketClass.All, s => Assert.Equal(s == SprocketClass.Eighth || s == SprocketClass.Single332, ChainRelations.OnSprockets.Judge([s.FitCode, ChainSize.Eighth.FitCode]).Verdict == Verdict.Fits));
        Assert.All(ChainSize.All, c => Assert.Equal(c == ChainSize.Eighth, ChainRelations.OnRings.Judge([SprocketClass.Eighth.FitCode, c.FitCode]).Verdict == Verdict.Fits));
    }
}
