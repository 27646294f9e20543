using Lugwork.Drivetrain;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Cable pull times ratio against pitch: an estimate that never promises.</summary>
public sealed class IndexingTests
{
    [Fact]
    public void No_listed_pair_is_a_fit_as_no_family_has_both_figures_published()
    {
        int refused = 0;
        foreach (ActuationFamily shifter in ActuationFamily.All)
        {
            foreach (ActuationFamily derailleur in ActuationFamily.All)
            {
                foreach (SprocketSpacing sprockets in SprocketSpacing.All)
                {
                    IndexingEstimate told = Indexing.Estimate(shifter, derailleur, sprockets);
                    Assert.True(told.Check.Verdict is Verdict.NeedsMeasuring or Verdict.DoesNotFit, $"{shifter} {derailleur} {sprockets}: {told}");
                    Assert.Equal(told.Check.Verdict == Verdict.Fits, told.Check.Remedy is null);
                    Assert.Contains(Sources.GearEquation, told.Check.Sources);
                    Assert.True(shifter != derailleur || sprockets.FitKey.StartsWith("LG", StringComparison.Ordinal) || told.Check.Verdict == Verdict.NeedsMeasuring, $"{told}");
                    refused += told.Check.Verdict == Verdict.DoesNotFit ? 1 : 0;
                }
            }
        }

        Assert.True(refused > 50, $"{refused}");
    }

    [Fact]
    public void The_sum_is_shown()
    {
        IndexingEstimate told = Indexing.Estimate(ActuationFamily.Road11, ActuationFamily.Road11, SprocketSpacing.Parse("11-close", null));
        Assert.Equal(Verdict.NeedsMeasuring, told.Check.Verdict);
        Assert.Equal(2.7, told.Pull!.Value.Millimeters, 9);
        Assert.Equal(3.753, told.Travel!.Value.Millimeters, 9);
        Assert.Equal(3.74, told.Pitch!.Value.Millimeters, 9);
        Assert.Equal(0.13, told.MissAtLast!.Value.Millimeters, 9);
        Assert.Equal("needs measuring: 2.7 mm x 1.39 = 3.753 mm against 3.74 mm; pull and ratio of this family are not both published", told.ToString());
        Assert.Contains(Sources.Derived, told.Check.Sources);
        Assert.Contains(Sources.Memory, told.Check.Sources);
    }

    [Fact]
    public void A_sum_that_cannot_be_done_says_so()
    {
        IndexingEstimate told = Indexing.Estimate(ActuationFamily.ThickPlate, ActuationFamily.ThickPlate, SprocketSpacing.Parse("LG-10", null));
        Assert.Equal(Verdict.NeedsMeasuring, told.Check.Verdict);
        Assert.Null(told.Pull);
        Assert.Null(told.Travel);
        Assert.Null(told.MissAtLast);
        Assert.StartsWith("needs measuring: ? mm x ? = ? mm against ? mm;", told.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2.7, 1.4, 3.74, 10, Verdict.Fits)]
    [InlineData(2.7, 1.4, 3.9875, 10, Verdict.Fits)]
    [InlineData(2.7, 1.4, 3.9876, 10, Verdict.NeedsMeasuring)]
    [InlineData(2.7, 1.4, 4.34, 8, Verdict.DoesNotFit)]
    [InlineData(2.7, 1.4, 3.5775, 10, Verdict.Fits)]
    [InlineData(2.7, 1.4, 3.5774, 10, Verdict.NeedsMeasuring)]
    [InlineData(2.7, 1.7, 3.74, 10, Verdict.DoesNotFit)]
    public void Published_figures_fit_within_their_rounding_only(double pull, double ratio, double pitch, int steps, Verdict expected) =>
        Assert.Equal(expected, Indexing.OfPublished((decimal)pull, (decimal)ratio, (decimal)pitch, steps));

    [Fact]
    public void Two_figures_miss_by_what_rounding_leaves()
    {
        Assert.Equal(0m, Indexing.LeastMiss(1.7m, 1.7m, 0.05m));
        Assert.Equal(0m, Indexing.LeastMiss(1.8m, 1.7m, 0.05m));
        Assert.Equal(1m - (1.25m / 1.65m), Indexing.LeastMiss(1.2m, 1.7m, 0.05m));
        Assert.Equal((1.65m / 1.25m) - 1m, Indexing.LeastMiss(1.7m, 1.2m, 0.05m));
    }

    [Fact]
    public void Uneven_clicks_are_told_by_their_mean()
    {
        Assert.False(ActuationFamily.Uneven10.HasEvenClicks);
        Assert.Equal(25.5 / 9, ActuationFamily.Uneven10.Pull!.Value.Millimeters, 9);
        Assert.True(ActuationFamily.Road11.HasEvenClicks);
    }
}
