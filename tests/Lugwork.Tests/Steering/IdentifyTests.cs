using Lugwork.Cockpit;
using Lugwork.Steering;
using static Lugwork.Tests.Steering.Identifying;

namespace Lugwork.Tests.Steering;

/// <summary>Parts on the bench without a name.</summary>
public sealed class IdentifyTests
{
    [Theory]
    [InlineData(44.0, "44")]
    [InlineData(41.15, "IS41")]
    [InlineData(41.3, "ZS41|IS41")]
    [InlineData(41.38, "ZS41")]
    [InlineData(30.0, "EC30|EC29")]
    [InlineData(49.6, "49")]
    [InlineData(52.0, "IS52")]
    [InlineData(62.0, "")]
    [InlineData(60.0, "")]
    public void A_bore(double reading, string found) => Assert.Equal(found, Keys(HeadTubeBore.Identify(bore: Mm(reading))));

    [Fact]
    public void A_bore_between_two_is_closed_by_the_part_that_came_out()
    {
        Identification<HeadTubeBore> open = HeadTubeBore.Identify(bore: Mm(41.3));
        Assert.Equal(2, open.Candidates.Length);
        Assert.Contains("cup or bearing", open.Next, StringComparison.Ordinal);
        Assert.Contains("IS41 seat", open.Next, StringComparison.Ordinal);
        Assert.Contains(open.Candidates, c => c.TellsApart.Contains("45 degree", StringComparison.Ordinal));
        Assert.Equal("IS41", Keys(HeadTubeBore.Identify(bore: Mm(41.3), part: Mm(41.0))));
        Assert.Equal("ZS41", Keys(HeadTubeBore.Identify(bore: Mm(41.3), part: Mm(41.45))));
    }

    [Theory]
    [InlineData(12.5, "EC44")]
    [InlineData(2.5, "ZS44")]
    [InlineData(7.0, "")]
    public void Flush_and_external_cups_of_one_diameter_are_told_by_their_height(double stack, string found)
    {
        Identification<HeadsetCup> open = HeadsetCup.Identify(diameter: Mm(44.05, 0.02));
        Assert.Equal("EC44|ZS44", Keys(open));
        Assert.Contains("lower stack", open.Next, StringComparison.Ordinal);
        Assert.Equal(found, Keys(HeadsetCup.Identify(diameter: Mm(44.05, 0.02), lowerStack: Mm(stack))));
    }

    [Theory]
    [InlineData(26.5, 0.02, "26.5|26.4")]
    [InlineData(26.4, 0.02, "26.4")]
    [InlineData(27.07, 0.02, "27")]
    [InlineData(30.02, 0.02, "30")]
    [InlineData(33.6, 0.05, "")]
    [InlineData(39.82, 0.02, "39.8")]
    public void A_seat(double reading, double error, string found) => Assert.Equal(found, Keys(CrownSeat.Identify(diameter: Mm(reading, error))));

    [Fact]
    public void A_French_seat_is_told_by_its_steerer()
    {
        Assert.Contains("steerer", CrownSeat.Identify(diameter: Mm(26.45)).Next, StringComparison.Ordinal);
        Assert.Equal("26.5", Keys(CrownSeat.Identify(diameter: Mm(26.45), steerer: Mm(25.0))));
        Assert.Equal("26.4", Keys(CrownSeat.Identify(diameter: Mm(26.45), steerer: Mm(25.4))));
    }

    [Theory]
    [InlineData(28.6, 30.0, "straight-1-1/8")]
    [InlineData(28.6, 33.05, "tapered-1-1/8-1-1/4")]
    [InlineData(28.6, 37.0, "tapered-1-1/8-1-3/8")]
    [InlineData(28.6, 39.8, "tapered-1-1/8-1.5")]
    [InlineData(31.8, 39.8, "tapered-1-1/4-1.5")]
    [InlineData(38.1, 39.8, "straight-1.5")]
    [InlineData(25.4, 26.4, "straight-1")]
    public void A_steerer_by_its_top_and_its_seat(double top, double seat, string found) =>
        Assert.Equal(found, SteererShape.Identify(top: Mm(top), crownSeat: Mm(seat)).Candidates[0].Value.FitKey);

    [Fact]
    public void A_top_alone_asks_for_the_foot_or_the_seat()
    {
        Identification<SteererShape> open = SteererShape.Identify(top: Mm(28.6));
        Assert.Equal(5, open.Candidates.Length);
        Assert.Contains("mm is straight 1-1/8 in", open.Next, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(25.0, "25")]
    [InlineData(25.2, "")]
    [InlineData(25.4, "25.4")]
    public void A_French_steerer_is_not_one_of_1_in(double reading, string found) => Assert.Equal(found, Keys(SteererSize.Identify(diameter: Mm(reading))));

    [Theory]
    [InlineData(22.2, "quill-22.2")]
    [InlineData(22.1, "quill-22.0|quill-22.2")]
    [InlineData(22.0, "quill-22.0")]
    [InlineData(25.4, "quill-25.4")]
    public void A_quill(double reading, string found) => Assert.Equal(found, Keys(StemFixing.Identify(quill: Mm(reading))));

    [Fact]
    public void A_25_4_is_a_clamp_or_a_quill_by_what_was_measured()
    {
        Assert.Equal("clamp-25.4", Keys(StemFixing.Identify(clamp: Mm(25.4))));
        Assert.Equal("quill-25.4", Keys(StemFixing.Identify(quill: Mm(25.4))));
        Assert.Equal("quill-22.0", Keys(StemFixing.Identify(quill: Mm(22.1), steerer: Mm(25.0))));
    }

    [Theory]
    [InlineData(31.7, "31.8")]
    [InlineData(25.4, "25.4")]
    [InlineData(25.9, "26|25.8")]
    [InlineData(35.0, "35")]
    [InlineData(30.0, "")]
    public void A_bar(double reading, string found) => Assert.Equal(found, Keys(BarClamp.Identify(clamp: Mm(reading))));

    [Fact]
    public void A_flat_bar_is_no_drop_bar_of_nearly_its_size()
    {
        Assert.Equal("25.4|25.8", Keys(BarClamp.Identify(clamp: Mm(25.55, 0.2))));
        Assert.Equal("25.4", Keys(BarClamp.Identify(clamp: Mm(25.55, 0.2), grip: Mm(22.2))));
    }

    [Theory]
    [InlineData(52.0, 40.0, 7.0, "40x52x7-45/45|40x52x7-radial")]
    [InlineData(41.0, 30.15, 6.5, "30.15x41x6.5-36/45")]
    [InlineData(41.8, 30.5, 6.0, "30.5x41.8x6-45/45")]
    [InlineData(47.0, 34.2, 7.0, "34.1x46.9x7-45/45")]
    [InlineData(51.8, 40.0, 8.0, "40x51.8x8-36/45")]
    [InlineData(51.9, 40.0, 7.5, "")]
    public void A_bearing(double outside, double inside, double height, string found) =>
        Assert.Equal(found, Keys(HeadsetBearing.Identify(Mm(outside), Mm(inside), Mm(height))));

    [Fact]
    public void A_bearing_by_its_outside_alone_asks_for_the_height()
    {
        Identification<HeadsetBearing> open = HeadsetBearing.Identify(outside: Mm(41.8));
        Assert.Equal("30.5x41.8x8-45/45|30.5x41.8x6-45/45", Keys(open));
        Assert.StartsWith("height", open.Next, StringComparison.Ordinal);
    }
}
