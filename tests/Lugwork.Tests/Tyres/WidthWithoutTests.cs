using Lugwork.Tyres;

namespace Lugwork.Tests.Tyres;

/// <summary>Without a rim type, an inner width or a tyre width there is nothing to compare.</summary>
public sealed class WidthWithoutTests
{
    private static readonly long[] Good = [RimType.TubelessCrochet.FitCode, 19L * Nanometres.PerMillimetre, 28L * Nanometres.PerMillimetre, TyreBead.Folding.FitCode, TyreHold.Clincher.FitCode];

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void What_is_absent_has_nothing_to_mate(int absent)
    {
        long[] values = [.. Good];
        values[absent] = 0;
        Outcome outcome = TyreOnRim.Width.Judge(values);
        Assert.Equal((Verdict.DoesNotFit, Reasons.NothingToMate), (outcome.Verdict, outcome.Reason));
        Assert.Equal(Verdict.Fits, TyreOnRim.Width.Judge(Good).Verdict);
    }
}
