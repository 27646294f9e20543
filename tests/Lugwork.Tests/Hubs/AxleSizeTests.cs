using Lugwork.Hubs;

namespace Lugwork.Tests.Hubs;

public sealed class AxleSizeTests
{
    [Theory]
    [InlineData("12x142", "12x142")]
    [InlineData("12 x 142 mm", "12x142")]
    [InlineData("142\u00D712", "12x142")]
    [InlineData("142 mm X 12 mm", "12x142")]
    [InlineData("12mmx142mm", "12x142")]
    [InlineData("  15 * 110\u00A0", "15x110")]
    [InlineData("12,0 x 132,5", "12x132.5")]
    [InlineData("5/16x100", "7.9375x100")]
    [InlineData("3/8 in x 110", "9.525x110")]
    [InlineData("3/8inx110", "9.525x110")]
    [InlineData("3/8\" x 110", "9.525x110")]
    [InlineData("110 x 3/8 INCH", "9.525x110")]
    [InlineData("110 \u00D7 3/8 \u2033", "9.525x110")]
    [InlineData("9/16x120", "14.2875x120")]
    [InlineData("13/64 in x 100", "5.159375x100")]
    [InlineData("9/2 in x 1/2 in", "12.7x114.3")]
    public void It_reads_axle_and_width_in_either_order(string text, string written) => Assert.Equal(written, AxleSize.Parse(text, null).ToString());

    [Theory]
    [InlineData("", 0)]
    [InlineData("   ", 3)]
    [InlineData("12", 2)]
    [InlineData("9/16", 4)]
    [InlineData("12 142", 3)]
    [InlineData("12x", 3)]
    [InlineData("x142", 0)]
    [InlineData("-12x142", 0)]
    [InlineData("12x-142", 3)]
    [InlineData("12x142x3", 6)]
    [InlineData("12x142 boost", 7)]
    [InlineData("12 m x 142", 4)]
    [InlineData("12x142 in", 7)]
    [InlineData("3.5/8x110", 3)]
    [InlineData("3/8 mm x 110", 4)]
    [InlineData("12.x142", 3)]
    [InlineData("1234567890x142", 9)]
    [InlineData("12.1234567x142", 9)]
    public void It_refuses_anything_else_where_it_stands(string text, int position)
    {
        TextReading<AxleSize> reading = AxleSize.Read(text);
        Assert.False(reading.IsClear);
        Assert.NotEmpty(reading.Reason);
        Assert.Equal(position, reading.Position);
    }

    [Theory]
    [InlineData("5x60", true)]
    [InlineData("25x250", true)]
    [InlineData("4.999999x100", false)]
    [InlineData("25.000001x100", false)]
    [InlineData("12x59.999999", false)]
    [InlineData("12x250.000001", false)]
    [InlineData("0x142", false)]
    [InlineData("12x0", false)]
    [InlineData("12x12", false)]
    [InlineData("142x142", false)]
    [InlineData("12/64x100", false)]
    [InlineData("13/64x100", true)]
    [InlineData("62/64x100", true)]
    [InlineData("63/64x100", false)]
    [InlineData("1/1x100", false)]
    [InlineData("3/0x100", false)]
    [InlineData("3/7x100", false)]
    [InlineData("999999999/2x100", false)]
    public void Its_range_is_5_to_25_by_60_to_250(string text, bool good) => Assert.Equal(good, AxleSize.TryParse(text, null, out _));

    [Fact]
    public void Every_64th_of_an_inch_is_exact()
    {
        for (int above = 13; above < 63; above++)
        {
            Assert.Equal(above * 25.4m / 64, AxleSize.Parse($"{above}/64 x 110", null).AxleMillimetres);
        }
    }

    [Fact]
    public void The_reason_says_what_is_wrong()
    {
        Assert.Contains("5 to 25", AxleSize.Read("30x142").Reason, StringComparison.Ordinal);
        Assert.Contains("60 to 250", AxleSize.Read("12x300").Reason, StringComparison.Ordinal);
        Assert.Contains("64", AxleSize.Read("3/7x110").Reason, StringComparison.Ordinal);
        Assert.Contains("12x142", Assert.Throws<FormatException>(() => AxleSize.Parse("QR 135", null)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_made_from_millimetres_within_its_range()
    {
        AxleSize size = AxleSize.OfMillimetres(12, 142);
        Assert.Equal(AxleSize.Parse("12x142", null), size);
        double axle = size.Axle.Millimeters;
        double width = size.Width.Millimeters;
        Assert.Equal(12, axle, 9);
        Assert.Equal(142, width, 9);
        Assert.Throws<ArgumentOutOfRangeException>(() => AxleSize.OfMillimetres(4.9m, 142));
        Assert.Throws<ArgumentOutOfRangeException>(() => AxleSize.OfMillimetres(25.1m, 142));
        Assert.Throws<ArgumentOutOfRangeException>(() => AxleSize.OfMillimetres(12, 59.9m));
        Assert.Throws<ArgumentOutOfRangeException>(() => AxleSize.OfMillimetres(12, 250.1m));
    }

    [Fact]
    public void The_default_is_no_size()
    {
        Assert.Equal("?", default(AxleSize).ToString());
        Assert.False(AxleSize.TryParse("?", null, out _));
        Assert.False(AxleSize.TryParse((string?)null, null, out AxleSize none));
        Assert.Equal(default, none);
        Assert.Throws<ArgumentNullException>(() => AxleSize.Parse((string)null!, null));
    }
}
