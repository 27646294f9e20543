using Lugwork.Steering;

namespace Lugwork.Tests.Steering;

public sealed class HeadsetTests
{
    [Theory]
    [InlineData("EC34/28.6|EC34/30", "EC34/28.6|EC34/30")]
    [InlineData("ZS44 - ZS56", "ZS44|ZS56")]
    [InlineData("zs44/28.6 ; ec44/40", "ZS44/28.6|EC44/40")]
    [InlineData("IS52/IS52", "IS52|IS52")]
    [InlineData("EC34/EC34", "EC34|EC34")]
    [InlineData("ZS44/28.6 I EC44/40", "ZS44/28.6|EC44/40")]
    [InlineData("ZS44/28,6IEC44/40", "ZS44/28.6|EC44/40")]
    [InlineData("ZS44/28.6, EC44/40", "ZS44/28.6|EC44/40")]
    [InlineData("ZS44,ZS56", "ZS44|ZS56")]
    [InlineData("ZS44,5,ZS56", "ZS44.5|ZS56")]
    [InlineData("ZS44 ZS56", "ZS44|ZS56")]
    [InlineData("IS42 IS52", "IS42|IS52")]
    [InlineData("IS42 I IS52", "IS42|IS52")]
    [InlineData("IS42 IIS52", "IS42|IS52")]
    [InlineData("is42iis52", "IS42|IS52")]
    [InlineData("ec34 i ec34", "EC34|EC34")]
    [InlineData("ZS44\u2013ZS56", "ZS44|ZS56")]
    [InlineData("ZS 44 / 28.6 / ZS 56 / 40", "ZS44/28.6|ZS56/40")]
    [InlineData(" ZS44/28.6 mm | ZS56/40mm ", "ZS44/28.6|ZS56/40")]
    [InlineData("EC33.95|EC34", "EC33.95|EC34")]
    public void A_pair_is_read_in_every_published_form(string text, string written)
    {
        HeadsetPair pair = HeadsetPair.Parse(text, null);
        Assert.Equal(written, pair.ToString());
        Assert.Equal(HeadsetHalf.Parse(written.Split('|')[0], null), pair.Upper);
        Assert.Equal(HeadsetHalf.Parse(written.Split('|')[1], null), pair.Lower);
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("EC34", 4)]
    [InlineData("EC34/28.6", 9)]
    [InlineData("EC34/28.6|", 10)]
    [InlineData("EC34/", 5)]
    [InlineData("EC34EC34", 4)]
    [InlineData("EC34IS42", 5)]
    [InlineData("EC34||EC34", 5)]
    [InlineData("EC34|34", 5)]
    [InlineData("44/28.6|56/40", 0)]
    [InlineData("EX34|EC34", 1)]
    [InlineData("ZC44|ZS56", 1)]
    [InlineData("IC41|IS41", 1)]
    [InlineData("ES34|EC34", 1)]
    [InlineData("EC34|EC34|EC34", 9)]
    [InlineData("EC34/28.6/30|EC34", 10)]
    [InlineData("EC 1-1/8|EC34", 5)]
    public void Anything_else_is_refused_where_it_stands(string text, int position)
    {
        TextReading<HeadsetPair> reading = HeadsetPair.Read(text);
        Assert.False(reading.IsClear);
        Assert.Equal(position, reading.Position);
    }

    [Fact]
    public void One_half_alone_is_refused_as_a_pair_and_read_as_a_half()
    {
        Assert.Contains("one half alone is no headset code", HeadsetPair.Read("EC34/28.6").Reason, StringComparison.Ordinal);
        Assert.Equal("EC34/28.6", HeadsetHalf.Parse(" ec 34 / 28,6 mm ", null).ToString());
        Assert.False(HeadsetHalf.TryParse("EC34|EC34", null, out _));
    }

    [Theory]
    [InlineData("EC20/20", true)]
    [InlineData("EC70/50", true)]
    [InlineData("EC19.999999", false)]
    [InlineData("EC70.000001", false)]
    [InlineData("EC34/19.999999", false)]
    [InlineData("EC34/50.000001", false)]
    [InlineData("EC34/0", false)]
    [InlineData("EC0/30", false)]
    public void Its_ranges_are_20_to_70_and_20_to_50(string text, bool good)
    {
        Assert.Equal(good, HeadsetHalf.TryParse(text, null, out _));
        Assert.Equal(good, HeadsetPair.TryParse(text + "|EC34", null, out _));
        Assert.Equal(good, HeadsetPair.TryParse("EC34|" + text, null, out _));
    }

    [Fact]
    public void An_absent_second_number_stays_unknown()
    {
        HeadsetPair pair = HeadsetPair.Parse("ZS44|ZS56/40", null);
        Assert.Null(pair.Upper.Second);
        Assert.Null(pair.Upper.SecondMillimetres);
        Assert.Equal(40m, pair.Lower.SecondMillimetres);
        double seat = pair.Lower.Second!.Value.Millimeters;
        Assert.Equal(40, seat, 9);
        Assert.Equal(44m, pair.Upper.BoreMillimetres);
        double bore = pair.Upper.Bore.Millimeters;
        Assert.Equal(44, bore, 9);
        Assert.Same(HeadsetStyle.ZeroStack, pair.Upper.Style);
    }

    [Fact]
    public void Each_style_is_read_as_itself()
    {
        foreach (HeadsetStyle style in HeadsetStyle.All)
        {
            Assert.Same(style, HeadsetHalf.Parse(style.FitKey + "44", null).Style);
            Assert.Same(style, HeadsetPair.Parse("EC34|" + style.FitKey.ToLowerInvariant() + "44", null).Lower.Style);
        }
    }

    [Fact]
    public void Halves_are_made_within_their_ranges_and_pairs_from_halves()
    {
        HeadsetHalf half = HeadsetHalf.OfMillimetres(HeadsetStyle.Integrated, 52, 40);
        Assert.Equal("IS52/40", half.ToString());
        Assert.Equal("IS52/40|EC34", HeadsetPair.Of(half, HeadsetHalf.Parse("EC34", null)).ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => HeadsetHalf.OfMillimetres(HeadsetStyle.Integrated, 19.9m));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeadsetHalf.OfMillimetres(HeadsetStyle.Integrated, 70.1m));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeadsetHalf.OfMillimetres(HeadsetStyle.Integrated, 52, 19.9m));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeadsetHalf.OfMillimetres(HeadsetStyle.Integrated, 52, 50.1m));
        Assert.Throws<ArgumentNullException>(() => HeadsetHalf.OfMillimetres(null!, 52));
        Assert.Throws<ArgumentException>(() => HeadsetPair.Of(half, default));
        Assert.Throws<ArgumentException>(() => HeadsetPair.Of(default, half));
    }

    [Fact]
    public void The_defaults_are_no_code()
    {
        Assert.Equal("?", default(HeadsetHalf).ToString());
        Assert.Equal("?", default(HeadsetPair).ToString());
        Assert.Throws<InvalidOperationException>(() => default(HeadsetHalf).Style);
        Assert.False(HeadsetPair.TryParse("?", null, out _));
        Assert.False(HeadsetHalf.TryParse((string?)null, null, out _));
        Assert.Throws<ArgumentNullException>(() => HeadsetPair.Parse((string)null!, null));
    }
}
