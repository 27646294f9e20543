namespace Lugwork.Tests.Builds;

/// <summary>What a shape or a code says roughly may be said more closely beside it, in any order, and never otherwise.</summary>
public sealed class RoughFieldTests
{
    [Theory]
    [InlineData("steerer shape straight 1; crown seat 26.4", "25.4", "26.4")]
    [InlineData("crown seat 26.4; steerer shape straight 1", "25.4", "26.4")]
    [InlineData("steerer shape tapered; crown seat 39.8 ± 0.05", "28.6 | 31.8", "39.8")]
    [InlineData("steerer shape tapered; steerer 28.6", "28.6", "33 | 37 | 39.8")]
    public void A_closer_figure_narrows_the_shape(string text, string steerer, string seat)
    {
        Fork fork = Fork.Read(text);
        Assert.Equal((steerer, seat), (fork.Steerer.ToString(), fork.CrownSeat.ToString()));
    }

    [Theory]
    [InlineData("steerer shape straight 1-1/8; crown seat 39.8", "crownSeat")]
    [InlineData("crown seat 39.8; steerer shape straight 1-1/8", "crownSeat")]
    [InlineData("steerer shape straight 1; steerer shape tapered", "steererShape")]
    [InlineData("steerer 28.6; steerer 28.6", "steerer")]
    public void Another_figure_or_the_same_field_twice_is_refused(string text, string where)
    {
        SpecException refused = Assert.Throws<SpecException>(() => Fork.Read(text));
        Assert.Equal(where, Assert.Single(refused.Problems).Where);
    }

    [Fact]
    public void A_build_file_reads_the_same_way_and_says_where_it_contradicts_itself()
    {
        Build build = BuildFile.Read("""{ "parts": { "frame": {}, "headset": { "crownRace": "40", "code": "ZS44/28.6|ZS56" } } }""");
        Assert.Equal("39.8", ((Headset)build[Slot.Headset]!).CrownRace.ToString());
        SpecException refused = Assert.Throws<SpecException>(() => BuildFile.Read("""{ "parts": { "frame": { "headTubeLower": "49", "headTube": "44|56" } } }"""));
        Assert.Equal("$.parts.frame.headTubeLower", Assert.Single(refused.Problems).Where);
    }

    [Theory]
    [InlineData("code ZS44/28.6|ZS56/40; upper EC34/25.4")]
    [InlineData("upper EC34/25.4; code ZS44/28.6|ZS56/40")]
    [InlineData("code ZS44/28.6|ZS56/40; lower ZS56/40")]
    public void Two_rough_fields_that_say_the_same_things_are_refused(string text) => Assert.False(Headset.TryRead(text, out _, out _));

    [Theory]
    [InlineData("ZS44/28.6|ZS56/40")]
    [InlineData("zs44/28.6 - zs56/40")]
    [InlineData("ZS44.0/28.6|ZS56.0/40")]
    [InlineData("ZS44/28.6 I ZS56/40")]
    [InlineData("ZS44/28.6 ZS56/40")]
    public void A_headset_code_alone_is_a_headset(string text)
    {
        Headset headset = Headset.Read(text);
        Assert.Equal(("ZS44", "28.6", "ZS56", "39.8"), (headset.UpperCup.ToString(), headset.Steerer.ToString(), headset.LowerCup.ToString(), headset.CrownRace.ToString()));
    }

    [Theory]
    [InlineData("steerer 1-1/8\"", "28.6")]
    [InlineData("steerer 28,6 mm", "28.6")]
    [InlineData("steerer 28.60", "28.6")]
    public void Sizes_are_read_as_people_write_them(string text, string expected) => Assert.Equal(expected, Fork.Read(text).Steerer.ToString());

    [Theory]
    [InlineData("hanger UDH; rear axle thread M12x1.5", false)]
    [InlineData("hanger UDH; rear axle thread M12x1.0", true)]
    [InlineData("hanger UDH; rear axle thread M12", true)]
    [InlineData("hanger UDH; rear axle thread own", true)]
    [InlineData("hanger M10x1; rear axle thread M12x1.5", true)]
    public void A_universal_hanger_has_its_own_axle_thread(string text, bool good) => Assert.Equal(good, Frame.TryRead(text, out _, out _));

    [Theory]
    [InlineData("6.6 ± 0.1", "9")]
    [InlineData("5.9 ± 0.05", "10")]
    [InlineData("5.8 ± 0.1", "10 | 11")]
    [InlineData("7.3 ± 0.1", "5-8")]
    [InlineData("5.2 ± 0.05", "12")]
    public void A_chain_is_told_by_its_width_over_the_rivets(string text, string expected) => Assert.Equal(expected, Chain.Read("size " + text).Size.ToString());
}
