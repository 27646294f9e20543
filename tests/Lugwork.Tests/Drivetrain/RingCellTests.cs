using Lugwork.Drivetrain;

namespace Lugwork.Tests.Drivetrain;

/// <summary>A ring on its circle, among the rings of its crank and beside the chainstay: both sides of each boundary, and what is absent.</summary>
public sealed class RingCellTests
{
    /// <summary>Five arms on 110 mm, from 34 teeth up; one or two fewer were made by single makers.</summary>
    private const long Circle110 = 9;

    [Theory]
    [InlineData(Circle110, 34, Circle110, Verdict.Fits)]
    [InlineData(Circle110, 33, Circle110, Verdict.NeedsMeasuring)]
    [InlineData(Circle110, 32, Circle110, Verdict.NeedsMeasuring)]
    [InlineData(Circle110, 31, Circle110, Verdict.DoesNotFit)]
    [InlineData(Circle110, 50, 4, Verdict.DoesNotFit)]
    [InlineData(Circle110, 50, 0, Verdict.Fits)]
    [InlineData(Circle110, 0, Circle110, Verdict.DoesNotFit)]
    [InlineData(28, 38, 28, Verdict.NeedsMeasuring)]
    public void On_a_spider(long spider, long teeth, long ring, Verdict verdict) => Assert.Equal(verdict, RingRelations.OnSpider.Judge([spider, teeth, ring]).Verdict);

    [Theory]
    [InlineData(48, 48, 34, Verdict.Fits)]
    [InlineData(48, 34, 34, Verdict.Fits)]
    [InlineData(48, 36, 34, Verdict.NeedsMeasuring)]
    [InlineData(48, 48, 0, Verdict.Fits)]
    [InlineData(48, 47, 0, Verdict.NeedsMeasuring)]
    [InlineData(0, 48, 48, Verdict.NeedsMeasuring)]
    [InlineData(48, 0, 0, Verdict.NeedsMeasuring)]
    public void Among_the_rings_of_its_crank(long largest, long teeth, long smallest, Verdict verdict) => Assert.Equal(verdict, RingRelations.Counted.Judge([largest, teeth, smallest]).Verdict);

    [Theory]
    [InlineData(48, 48, Verdict.Fits)]
    [InlineData(49, 48, Verdict.DoesNotFit)]
    [InlineData(47, 48, Verdict.Fits)]
    [InlineData(48, 0, Verdict.NeedsMeasuring)]
    public void Beside_the_chainstay(long teeth, long most, Verdict verdict) => Assert.Equal(verdict, RingRelations.BesideChainstay.Judge([teeth, most]).Verdict);

    [Fact]
    public void On_the_arm()
    {
        foreach (DirectMountRing arm in DirectMountRing.All)
        {
            Assert.Equal(Verdict.Fits, RingRelations.OnArm.Judge([arm.FitCode, 0]).Verdict);
            Assert.All(DirectMountRing.All, ring => Assert.Equal(
                arm != ring ? Verdict.DoesNotFit : arm == DirectMountRing.Own ? Verdict.NeedsMeasuring : Verdict.Fits,
                RingRelations.OnArm.Judge([arm.FitCode, ring.FitCode]).Verdict));
        }
    }
}
