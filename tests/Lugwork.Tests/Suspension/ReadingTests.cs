using Lugwork.Suspension;

namespace Lugwork.Tests.Suspension;

public sealed class ReadingTests
{
    [Theory]
    [InlineData("210x55", "eyelet-210x55")]
    [InlineData("210 \u00D7 52,5 mm", "eyelet-210x52.5")]
    [InlineData("185 x 55 trunnion", "trunnion-185x55")]
    [InlineData("Trunnion mount 205 x 65 mm", "trunnion-205x65")]
    [InlineData("205x65mm (trunnion)", "trunnion-205x65")]
    [InlineData("T 165x45", "trunnion-165x45")]
    [InlineData("165x40 eyelet", "eyelet-165x40")]
    [InlineData("standard mount, 165 x 40", "eyelet-165x40")]
    [InlineData("trunnion-165x37.5", "trunnion-165x37.5")]
    [InlineData("225x67.5", "trunnion-225x67.5")]
    [InlineData("250x67.5", "eyelet-250x67.5")]
    [InlineData("7.875 x 2.25 in", "eyelet-200x57")]
    [InlineData("7.875\" x 2.25\"", "eyelet-200x57")]
    [InlineData("7-7/8 x 2-1/4 in", "eyelet-200x57")]
    [InlineData("200x57", "eyelet-200x57")]
    [InlineData("200x50", "eyelet-200x51")]
    [InlineData("200x51", "eyelet-200x51")]
    [InlineData("190x50", "eyelet-190.5x51")]
    [InlineData("190.5x50.8", "eyelet-190.5x51")]
    [InlineData("190x45", "eyelet-190x45")]
    [InlineData("216x63", "eyelet-216x63.5")]
    [InlineData("8.5x2.5", "eyelet-216x63.5")]
    [InlineData("241.3 x 76.2", "eyelet-241x76")]
    [InlineData("267x90", "eyelet-267x89")]
    [InlineData("165x38", "eyelet-165x38")]
    [InlineData("6.5 x 1.5", "eyelet-165x38")]
    public void A_shock_size_is_read_in_millimetres_and_inches(string text, string key) => Assert.Equal(key, ShockSize.Parse(text, null).FitKey);

    [Theory]
    [InlineData("165x40")]
    [InlineData("165 x 37,5 mm")]
    public void A_size_of_both_mounts_keeps_both(string text)
    {
        TextReading<ShockSize> reading = ShockSize.Read(text);
        Assert.Equal([ShockMount.Eyelet, ShockMount.Trunnion], reading.Values.Select(v => v.Mount));
        Assert.Contains("eyelet or trunnion", reading.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("210")]
    [InlineData("210x")]
    [InlineData("210x56")]
    [InlineData("211x55")]
    [InlineData("55x210")]
    [InlineData("trunnion 210x55")]
    [InlineData("trunnion 7.875 x 2.25 in")]
    [InlineData("eyelet trunnion 165x40")]
    [InlineData("-210x55")]
    [InlineData("210x55x20")]
    [InlineData("7-8/7 x 2")]
    [InlineData("7-7/0 x 2")]
    [InlineData("200.1x57")]
    public void Anything_else_is_refused(string text) => Assert.Empty(ShockSize.Read(text).Values);

    [Theory]
    [InlineData("22.2 x 8", "22.2x8")]
    [InlineData("8 x 22.2 mm", "22.2x8")]
    [InlineData("M8 x 22,2", "22.2x8")]
    [InlineData("30mm x M10", "30x10")]
    [InlineData("21.84 x 8", "21.84x8")]
    public void Hardware_is_read_in_either_order(string text, string key) => Assert.Equal(key, ShockHardware.Parse(text, null).FitKey);

    [Theory]
    [InlineData("22.2")]
    [InlineData("22.2x4.9")]
    [InlineData("22.2x12.1")]
    [InlineData("9.9x8")]
    [InlineData("80.1x8")]
    [InlineData("8x8")]
    [InlineData("22.222x8")]
    [InlineData("22.2x8x6")]
    [InlineData("-22.2x8")]
    [InlineData("?")]
    public void Out_of_range_is_not(string text) => Assert.False(ShockHardware.TryParse(text, null, out _));

    [Fact]
    public void Hardware_has_eighteen_metric_sizes_and_no_default()
    {
        Assert.Equal(18, ShockHardware.All.Count(h => h.IsMetric));
        Assert.Equal(30, ShockHardware.All.Length);
        Assert.All(ShockHardware.All, h => Assert.NotNull(h.Source));
        Assert.Null(ShockHardware.OfMillimetres(33, 8).Source);
        Assert.Equal("?", default(ShockHardware).ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => ShockHardware.OfMillimetres(9.99m, 8));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShockHardware.OfMillimetres(80.01m, 8));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShockHardware.OfMillimetres(20, 4.99m));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShockHardware.OfMillimetres(20, 12.01m));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShockHardware.OfFitCode(1));
    }

    [Theory]
    [InlineData("29 x 120", "29-120")]
    [InlineData("29\" 120 mm", "29-120")]
    [InlineData("29 in 120 mm", "29-120")]
    [InlineData("27.5 140", "27.5-140")]
    [InlineData("26 rigid corrected 80", "26-rigid-80")]
    [InlineData("700C cyclocross", "700c-cyclocross")]
    [InlineData("BMX", "20-bmx")]
    [InlineData("29 dual crown", "29-dual-200")]
    public void A_fork_class_is_read(string text, string key) => Assert.Equal(key, ForkClass.TryParse(text, null, out ForkClass? fork) ? fork.FitKey : "");

    [Theory]
    [InlineData("29", 13)]
    [InlineData("29\"", 13)]
    [InlineData("27.5", 9)]
    [InlineData("26", 9)]
    [InlineData("700c", 5)]
    [InlineData("29 rigid", 3)]
    [InlineData("road", 2)]
    [InlineData("700C road", 2)]
    public void A_wheel_alone_keeps_every_class_of_it(string text, int readings)
    {
        TextReading<ForkClass> reading = ForkClass.Read(text);
        Assert.Equal(readings, reading.Values.Length);
        Assert.NotEmpty(reading.Reason);
    }

    [Theory]
    [InlineData("1/2 in", "12.7")]
    [InlineData("12,0 mm", "12")]
    public void A_bush_is_read(string text, string key) => Assert.Equal(key, ShockBush.Parse(text, null).FitKey);
}
