using Lugwork.Steering;
using UnitsNet;

namespace Lugwork.Tests.Steering;

public sealed class PressFitTests
{
    [Theory]
    [InlineData("0.00", Verdict.DoesNotFit, true)]
    [InlineData("-0.10", Verdict.DoesNotFit, true)]
    [InlineData("0.001", Verdict.NeedsMeasuring, true)]
    [InlineData("0.02", Verdict.NeedsMeasuring, true)]
    [InlineData("0.029", Verdict.NeedsMeasuring, true)]
    [InlineData("0.03", Verdict.Fits, false)]
    [InlineData("0.05", Verdict.Fits, false)]
    [InlineData("0.10", Verdict.Fits, false)]
    [InlineData("0.101", Verdict.Fits, true)]
    [InlineData("0.15", Verdict.Fits, true)]
    [InlineData("0.151", Verdict.DoesNotFit, true)]
    [InlineData("0.5", Verdict.DoesNotFit, true)]
    public void The_limits_belong_to_the_milder_side(string interference, Verdict verdict, bool caution)
    {
        SumCheck check = Check(44m + decimal.Parse(interference, System.Globalization.CultureInfo.InvariantCulture), 0, 44, 0);
        Assert.Equal(verdict, check.Verdict);
        Assert.NotEmpty(check.Cautions);
        Assert.True(verdict != Verdict.Fits || caution == check.Sentence.Contains("above the 0.10", StringComparison.Ordinal), check.ToString());
        Assert.NotEmpty(check.Sources);
        Assert.Equal(verdict != Verdict.Fits, check.Remedy is not null);
        Assert.True(verdict == Verdict.NeedsMeasuring || check.Sources.All(s => s.Kind != SourceKind.Memory), "a remembered limit makes no verdict");
    }

    [Theory]
    [InlineData(44.05, 0.01, 44.0, 0.01, Verdict.Fits)]
    [InlineData(44.05, 0.1, 44.0, 0.1, Verdict.NeedsMeasuring)]
    [InlineData(44.14, 0.02, 44.0, 0.02, Verdict.NeedsMeasuring)]
    [InlineData(44.5, 0.1, 44.0, 0.1, Verdict.DoesNotFit)]
    [InlineData(43.8, 0.1, 44.1, 0.1, Verdict.DoesNotFit)]
    [InlineData(44.03, 0.02, 44.0, 0.0, Verdict.NeedsMeasuring)]
    public void Errors_of_the_readings_count(double outside, double outsideError, double bore, double boreError, Verdict verdict) =>
        Assert.Equal(verdict, Check((decimal)outside, (decimal)outsideError, (decimal)bore, (decimal)boreError).Verdict);

    /// <summary>An error never settles what one of the sizes inside it would judge otherwise.</summary>
    [Fact]
    public void A_verdict_with_errors_is_the_common_one_of_every_size_inside_them()
    {
        for (int middle = -30; middle <= 30; middle++)
        {
            for (int error = 0; error <= 12; error++)
            {
                Verdict[] inside = [.. Enumerable.Range(middle - error, (2 * error) + 1).Select(i => Check(44 + (i / 100m), 0, 44, 0).Verdict).Distinct()];
                Verdict expected = inside is [var only] ? only : Verdict.NeedsMeasuring;
                Assert.Equal(expected, Check(44 + (middle / 100m), error / 100m, 44, 0).Verdict);
            }
        }
    }

    [Fact]
    public void Every_listed_cup_holds_in_the_largest_bore_of_its_own_and_splits_none_but_by_its_limits()
    {
        foreach (HeadsetCup cup in HeadsetCup.All.Where(c => c.Style != HeadsetStyle.Integrated))
        {
            SumCheck loosest = Check((decimal)cup.OutsideDiameter.Millimeters, 0, (decimal)cup.Bore.Most.Millimeters, 0);
            SumCheck tightest = Check((decimal)cup.OutsideDiameter.Millimeters, 0, (decimal)cup.Bore.Least.Millimeters, 0);
            Assert.True(loosest.Verdict == Verdict.Fits && tightest.Verdict == Verdict.Fits, $"{cup}: {loosest} {tightest}");
        }
    }

    [Fact]
    public void A_default_is_no_reading() => Assert.Throws<ArgumentException>(() => PressFit.Check(default, MeasuredLength.OfMillimetres(44)));

    [Fact]
    public void It_tells_its_figures() =>
        Assert.Equal("fits: interference is 0.05 mm, within the 0.10 mm of the printed rule", Check(44.05m, 0, 44, 0).ToString());

    [Fact]
    public void Interference_is_what_the_outer_diameter_exceeds_the_inner_one_by()
    {
        for (int hundredths = -20; hundredths <= 40; hundredths++)
        {
            double outer = 44 + (hundredths / 100.0);
            Assert.Equal(hundredths / 100.0, PressFit.Interference(Length.FromMillimeters(outer), Length.FromInches(44 / 25.4)).Millimeters, 9);
            LengthRange range = PressFit.InterferenceRange(MeasuredLength.OfMillimetres(44 + (hundredths / 100m), 0.02m), MeasuredLength.OfMillimetres(44, 0.01m));
            (Length least, Length most) = (range.Least, range.Most);
            Assert.Equal((hundredths / 100.0) - 0.03, least.Millimeters, 9);
            Assert.Equal((hundredths / 100.0) + 0.03, most.Millimeters, 9);
        }
    }

    [Theory]
    [InlineData(4.9)]
    [InlineData(201)]
    public void A_diameter_of_no_press_fit_is_refused(double bad)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PressFit.Interference(Length.FromMillimeters(bad), Length.FromMillimeters(44)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PressFit.Interference(Length.FromMillimeters(44), Length.FromMillimeters(bad)));
        Assert.Throws<ArgumentException>(() => PressFit.InterferenceRange(MeasuredLength.OfMillimetres(44), default));
    }

    private static SumCheck Check(decimal larger, decimal largerError, decimal smaller, decimal smallerError) =>
        PressFit.Check(MeasuredLength.OfMillimetres(larger, largerError), MeasuredLength.OfMillimetres(smaller, smallerError));
}
