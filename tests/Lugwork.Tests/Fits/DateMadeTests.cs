namespace Lugwork.Tests.Fits;

/// <summary>When a part was made: what is read, what is refused, and both ends of the range.</summary>
public sealed class DateMadeTests
{
    [Theory]
    [InlineData("2014", 2014, null)]
    [InlineData("2014-05", 2014, 5)]
    [InlineData("2014-5", 2014, 5)]
    [InlineData("05/2014", 2014, 5)]
    [InlineData("5 / 2014", 2014, 5)]
    [InlineData("2014/12", 2014, 12)]
    [InlineData(" 1860 ", 1860, null)]
    [InlineData("2100-01", 2100, 1)]
    public void A_year_and_its_month_are_read(string text, int year, int? month)
    {
        DateMade made = DateMade.Parse(text, null);
        Assert.Equal((year, month), (made.Year, made.Month));
        Assert.Equal(DateMade.Of(year, month), made);
        Assert.Equal(made, DateMade.Parse(made.FitKey, null));
        Assert.Equal(made, DateMade.OfFitCode(made.FitCode));
    }

    [Theory]
    [InlineData("")]
    [InlineData("14")]
    [InlineData("05/14")]
    [InlineData("05-2014")]
    [InlineData("2014-00")]
    [InlineData("2014-13")]
    [InlineData("2014-")]
    [InlineData("2014-05-01")]
    [InlineData("1859")]
    [InlineData("2101")]
    [InlineData("02014")]
    [InlineData("005/2014")]
    [InlineData("2014-005")]
    [InlineData("-2014")]
    [InlineData("2014.5")]
    [InlineData("May 2014")]
    [InlineData("٢٠١٤")]
    public void Anything_else_is_refused_with_its_reason(string text)
    {
        TextReading<DateMade> reading = DateMade.Read(text);
        Assert.Empty(reading.Values);
        Assert.NotEmpty(reading.Reason);
    }

    [Fact]
    public void Figures_and_codes_keep_within_the_range()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DateMade.Of(1859));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateMade.Of(2101));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateMade.Of(2014, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateMade.Of(2014, 13));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateMade.OfFitCode(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateMade.OfFitCode(201_413));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateMade.OfFitCode(185_912));
        Assert.Equal(0, default(DateMade).Year);
        Assert.False(DateMade.TryParse(default(DateMade).ToString(), null, out _));
        Assert.ThrowsAny<ArgumentException>(() => Known<DateMade>.Of(default));
    }
}
