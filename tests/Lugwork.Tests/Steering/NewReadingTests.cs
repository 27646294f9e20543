using Lugwork.Steering;

namespace Lugwork.Tests.Steering;

/// <summary>Texts of bearings and steerer shapes.</summary>
public sealed class NewReadingTests
{
    [Theory]
    [InlineData("30.15x41x6.5 36/45", "30.15x41x6.5-36/45")]
    [InlineData("30,15 x 41 x 6,5 - 36/45", "30.15x41x6.5-36/45")]
    [InlineData("41 x 30.15 x 6.5, 36 x 45", "30.15x41x6.5-36/45")]
    [InlineData("41.0\u00D730.15\u00D76.5 mm 36\u00B0/45\u00B0", "30.15x41x6.5-36/45")]
    [InlineData("30.15 x 41 x 6.5 (36/45)", "30.15x41x6.5-36/45")]
    [InlineData("40x52x7 45x45", "40x52x7-45/45")]
    [InlineData("40x52x7-45-45", "40x52x7-45/45")]
    [InlineData("34x47x7 45/45", "34.1x46.9x7-45/45")]
    [InlineData("34.2 x 47 x 7 45/45", "34.1x46.9x7-45/45")]
    [InlineData("6808", "40x52x7-radial")]
    [InlineData("40X52X7-RADIAL", "40x52x7-radial")]
    public void A_bearing_is_read_in_the_notations_of_the_trade(string text, string key) => Assert.Equal(key, HeadsetBearing.Parse(text, null).FitKey);

    [Fact]
    public void Without_angles_every_bearing_of_the_size_is_kept()
    {
        TextReading<HeadsetBearing> reading = HeadsetBearing.Read("40x52x7");
        Assert.Equal([HeadsetBearing.Mm52, HeadsetBearing.Mm52Radial], reading.Values);
        Assert.Contains("say both", reading.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("30.15x41x6.5")]
    [InlineData("30.15x41x6.5 45/45")]
    [InlineData("30.15x41x6.5 45/36")]
    [InlineData("30.15x41x6.6 36/45")]
    [InlineData("30.16x41x6.5 36/45")]
    [InlineData("40x51x7 45/45")]
    [InlineData("41x6.5")]
    [InlineData("30.15x41x6.5 36/45/45")]
    [InlineData("-30.15x41x6.5 36/45")]
    [InlineData("30.15x41x6.5 36/")]
    public void Anything_else_is_no_listed_bearing(string text)
    {
        Assert.False(HeadsetBearing.TryParse(text, null, out _));
        Assert.NotEmpty(HeadsetBearing.Read(text).Reason);
    }

    [Fact]
    public void One_size_without_angles_is_refused_by_naming_it() =>
        Assert.Contains("30.15x41x6.5-36/45", HeadsetBearing.Read("30.15x41x6.5").Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("1 in", "straight-1")]
    [InlineData("1\"", "straight-1")]
    [InlineData("straight 1-1/8", "straight-1-1/8")]
    [InlineData("Straight 1 1/8\"", "straight-1-1/8")]
    [InlineData("tapered 1-1/8 to 1.5", "tapered-1-1/8-1.5")]
    [InlineData("1-1/8\" - 1.5\"", "tapered-1-1/8-1.5")]
    [InlineData("1-1/8 inch to 1-1/2 inch", "tapered-1-1/8-1.5")]
    [InlineData("TAPERED 1 1/8 TO 1 1/2 IN", "tapered-1-1/8-1.5")]
    [InlineData("28.6 to 38.1 mm", "tapered-1-1/8-1.5")]
    [InlineData("28.6/38.1", "tapered-1-1/8-1.5")]
    [InlineData("1-1/8 to 1-1/4", "tapered-1-1/8-1-1/4")]
    [InlineData("1-1/8 to 1-3/8in", "tapered-1-1/8-1-3/8")]
    [InlineData("1-1/4 to 1.5", "tapered-1-1/4-1.5")]
    [InlineData("tapered 1.8", "tapered-1.8")]
    public void A_shape_is_read_in_inches_and_millimetres(string text, string key) => Assert.Equal(key, SteererShape.Parse(text, null).FitKey);

    [Theory]
    [InlineData("tapered", 5)]
    [InlineData("straight", 4)]
    [InlineData("1-1/8", 5)]
    [InlineData("1-1/8\"", 5)]
    [InlineData("28.6 mm", 5)]
    [InlineData("1-1/4", 2)]
    [InlineData("1.5", 3)]
    [InlineData("1-1/2 in", 3)]
    [InlineData("tapered 1.5", 2)]
    public void A_text_that_leaves_shapes_open_keeps_them(string text, int readings)
    {
        TextReading<SteererShape> reading = SteererShape.Read(text);
        Assert.Equal(readings, reading.Values.Length);
        Assert.Contains("measure", reading.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1-1/9")]
    [InlineData("39.7")]
    [InlineData("tapered 1-1/8 to 1.6")]
    [InlineData("-1")]
    [InlineData("1.5 to 1-1/8")]
    public void Anything_else_is_no_shape(string text) => Assert.Empty(SteererShape.Read(text).Values);

    [Theory]
    [InlineData("22.2", "quill-22.2")]
    [InlineData("22,2 mm", "quill-22.2")]
    [InlineData("22.0 mm", "quill-22.0")]
    [InlineData("31.8 mm", "clamp-31.8")]
    [InlineData("28.6", "clamp-28.6")]
    [InlineData("25.4", "clamp-25.4|quill-25.4")]
    [InlineData("25,40 mm", "clamp-25.4|quill-25.4")]
    [InlineData("22.1", "")]
    public void A_stem_is_read_by_its_size_alone(string text, string keys) =>
        Assert.Equal(keys, string.Join('|', StemFixing.Read(text).Values.Select(v => v.FitKey)));

    [Theory]
    [InlineData("40 mm", "39.8")]
    [InlineData("40.0", "39.8")]
    [InlineData("26 mm", "26.4")]
    [InlineData("39,8 mm", "39.8")]
    [InlineData("39.9", "")]
    [InlineData("40.1", "")]
    public void Seats_and_races_are_read_by_their_rounded_names(string text, string key)
    {
        Assert.Equal(key, CrownSeat.TryParse(text, null, out CrownSeat? seat) ? seat.FitKey : "");
        Assert.Equal(key, CrownRace.TryParse(text, null, out CrownRace? race) ? race.FitKey : "");
    }

    [Fact]
    public void Keys_and_codes_stay()
    {
        Assert.Equal("1 28x38x7-36/45;2 30.15x41x6.5-36/45;3 30.15x41x7-45/45;4 30.5x41.8x8-45/45;5 30.5x41.8x6-45/45;6 34x44x7-36/45;7 34.1x46.9x7-45/45;8 33.05x47x7-36/45;9 37x49x6.5-36/45;10 40x51.8x8-36/45;11 40x52x7-45/45;12 40x52x6.5-36/45;13 40x52x7-radial", Frozen(HeadsetBearing.All));
        Assert.Equal("1 straight-1;2 straight-1-1/8;3 straight-1-1/4;4 straight-1.5;5 tapered-1-1/8-1-1/4;6 tapered-1-1/8-1-3/8;7 tapered-1-1/8-1.5;8 tapered-1-1/4-1.5;9 tapered-1.8", Frozen(SteererShape.All));
    }

    [Fact]
    public void A_key_of_a_bearing_says_its_own_figures() =>
        Assert.All(HeadsetBearing.All, b => Assert.Equal(b.FitKey, FormattableString.Invariant($"{b.InsideDiameter.Millimeters}x{b.OutsideDiameter.Millimeters}x{b.Height.Millimeters}-{(b.InnerAngle is { } a ? $"{a.Degrees}/{b.OuterAngle!.Value.Degrees}" : "radial")}")));

    [Fact]
    public void A_shape_agrees_with_the_seats_and_steerers_that_it_names()
    {
        Assert.All(SteererShape.All.Where(s => !s.IsTapered), s => Assert.Equal(s.Foot, s.Tops[0].Diameter));
        Assert.All(SteererShape.All.Where(s => s.IsTapered), s => Assert.All(s.Tops, t => Assert.True(t.Diameter < s.Foot)));
        Assert.All(SteererShape.All, s => Assert.All(s.Seats, seat => Assert.True(seat.Diameter > s.Foot)));
    }

    private static string Frozen<T>(IEnumerable<T> all)
        where T : IInterfaceValue<T> => string.Join(';', all.Select(v => $"{v.FitCode} {v.FitKey}"));
}
