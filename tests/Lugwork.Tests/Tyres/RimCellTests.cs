using Lugwork.Tyres;

namespace Lugwork.Tests.Tyres;

/// <summary>Tape in the bed of a rim and a valve through it: both sides of each boundary, in micrometres.</summary>
public sealed class RimCellTests
{
    [Theory]
    [InlineData(0, 0, 21_000, Verdict.Fits)]
    [InlineData(0, 9_000, 21_000, Verdict.DoesNotFit)]
    [InlineData(9_000, 9_000, 21_000, Verdict.DoesNotFit)]
    [InlineData(9_001, 9_000, 21_000, Verdict.NeedsMeasuring)]
    [InlineData(10_999, 9_000, 21_000, Verdict.NeedsMeasuring)]
    [InlineData(11_000, 9_000, 21_000, Verdict.Fits)]
    [InlineData(21_000, 9_000, 21_000, Verdict.Fits)]
    [InlineData(21_001, 9_000, 21_000, Verdict.NeedsMeasuring)]
    [InlineData(30_000, 9_000, 0, Verdict.Fits)]
    [InlineData(1, 0, 21_000, Verdict.Fits)]
    public void A_tape(long tape, long hole, long inner, Verdict verdict) => Assert.Equal(verdict, RimTapeRelations.InBed.Judge([tape * 1_000, hole * 1_000, inner * 1_000]).Verdict);

    [Theory]
    [InlineData(40_000, 40_000, Verdict.DoesNotFit)]
    [InlineData(40_001, 40_000, Verdict.NeedsMeasuring)]
    [InlineData(54_999, 40_000, Verdict.NeedsMeasuring)]
    [InlineData(55_000, 40_000, Verdict.Fits)]
    [InlineData(40_000, 0, Verdict.Fits)]
    public void A_valve(long length, long depth, Verdict verdict) => Assert.Equal(verdict, ValveRelations.Length.Judge([length * 1_000, depth * 1_000]).Verdict);
}
