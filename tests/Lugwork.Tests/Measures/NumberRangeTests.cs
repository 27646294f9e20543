using UnitsNet;

namespace Lugwork.Tests.Measures;

/// <summary>Numbers within their range.</summary>
public sealed class NumberRangeTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(0.999)]
    [InlineData(2.001)]
    public void What_is_outside_or_no_number_is_refused_with_value_and_range(double number)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => NumberRange.Checked(number, 1, 2, "mm"));
        Assert.Equal("number", refused.ParamName);
        Assert.Equal(number, refused.ActualValue);
        Assert.Contains("number is 1 to 2 mm", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_ends_belong_to_the_range()
    {
        Assert.Equal(1, NumberRange.Checked(1.0, 1, 2, "mm"));
        Assert.Equal(2, NumberRange.Checked(2, 1, 2, "holes"));
        Assert.Equal(25.4, NumberRange.Millimetres(Length.FromInches(1), 25, 26), 9);
        Assert.Equal(5, NumberRange.Bars(Pressure.FromKilopascals(500), 1, 5.1), 9);
        Assert.Equal(0.3, NumberRange.Parts(Ratio.FromPercent(30), 0, 1), 9);
    }
}
