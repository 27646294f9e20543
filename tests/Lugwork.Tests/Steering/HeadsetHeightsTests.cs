using Lugwork.Steering;
using UnitsNet;

namespace Lugwork.Tests.Steering;

/// <summary>Upper and lower stack of the headset at hand, or of its codes.</summary>
public sealed class HeadsetHeightsTests
{
    private static readonly SteererLength Others = SteererLength.OfMillimetres(120, 0, 0, 20, 40);

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    [Theory]
    [InlineData(210.1, Verdict.NeedsPart)] // 120 + 12 + 15 + 5 + 20 + 40: 212 in all
    [InlineData(210, Verdict.Fits)]
    [InlineData(207, Verdict.Fits)]
    [InlineData(206.9, Verdict.Unsafe)]
    public void Measured_heights_and_a_cover_are_judged_like_any_stack(double steerer, Verdict verdict)
    {
        HeadsetHeights headset = HeadsetHeights.Measured(Mm(15), Mm(12), Mm(5));
        Assert.Equal(212, headset.MostOn(Others).Total.Millimeters, 9);
        Assert.Equal(verdict, headset.Check(Others, Mm(steerer)).Verdict);
        Assert.Equal("upper 20, lower 12 mm, measured", headset.ToString());
    }

    [Fact]
    public void Codes_give_a_range_and_never_a_fit()
    {
        HeadsetHeights headset = HeadsetHeights.Usual(HeadsetCup.Ec44, HeadsetCup.Ec44)!;
        Assert.Equal((20, 29), ((int)headset.Least.Millimeters, (int)headset.Most.Millimeters));
        Assert.Equal(197, headset.LeastOn(Others).Cut.Millimeters, 9);
        Assert.Equal(206, headset.MostOn(Others).Cut.Millimeters, 9);
        foreach (double steerer in (double[])[176, 190, 200, 206, 230])
        {
            Assert.Equal(Verdict.NeedsMeasuring, headset.Check(Others, Mm(steerer)).Verdict);
        }

        Assert.Equal(Verdict.Unsafe, headset.Check(Others, Mm(174.9)).Verdict);
        Assert.Equal("upper 10 to 14, lower 10 to 15 mm by the usual heights of the codes", headset.ToString());
        Assert.Contains("197 to 206 mm", headset.Check(Others, Mm(200)).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_half_without_a_known_height_and_one_of_the_other_end_are_told()
    {
        Assert.Null(HeadsetHeights.Usual(HeadsetCup.Zs62, HeadsetCup.Zs56));
        Assert.Throws<ArgumentException>(() => HeadsetHeights.Usual(HeadsetCup.Ec56, HeadsetCup.Ec56));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeadsetHeights.Measured(Mm(101), Mm(12)));
        Assert.ThrowsAny<ArgumentException>(() => HeadsetHeights.Measured(Mm(double.NaN), Mm(12)));
        Assert.Equal([Sources.HeadsetGuide], HeadsetHeights.Usual(HeadsetCup.Ec34, HeadsetCup.Ec34)!.Sources);
    }
}
