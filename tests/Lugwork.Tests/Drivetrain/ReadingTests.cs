using Lugwork.Drivetrain;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Spellings of drivetrain interfaces, and texts that mean several.</summary>
public sealed class ReadingTests
{
    [Theory]
    [InlineData("5x110", "5x110")]
    [InlineData("5 X 110 mm", "5x110")]
    [InlineData("110/5", "5x110")]
    [InlineData("5-arm 110", "5x110")]
    [InlineData("110 BCD 5 bolt", "5x110")]
    [InlineData("5\u00D7110", "5x110")]
    [InlineData("104 BCD", "4x104")]
    [InlineData("104bcd", "4x104")]
    [InlineData("BCD 64", "4x64")]
    [InlineData("130", "5x130")]
    [InlineData("4-arm 110", "4x110-uneven")]
    [InlineData("110 mm 4 bolt asymmetric", "4x110-uneven")]
    [InlineData("96 even", "4x96-even")]
    [InlineData("uneven 96", "4x96-uneven")]
    [InlineData("5x110 offset", "5x110-offset")]
    [InlineData("3x86", "3x86")]
    public void A_bolt_circle_is_read(string text, string key) => Assert.Equal([key], Keys(BoltCircle.Read(text)));

    [Theory]
    [InlineData("110", "5x110,4x110-uneven,5x110-offset")]
    [InlineData("110 uneven", "4x110-uneven,5x110-offset")]
    [InlineData("96", "4x96-even,4x96-uneven")]
    [InlineData("4x96", "4x96-even,4x96-uneven")]
    [InlineData("86", "5x86,3x86")]
    public void A_bolt_circle_of_several_keeps_them(string text, string keys)
    {
        TextReading<BoltCircle> reading = BoltCircle.Read(text);
        Assert.Equal(keys.Split(','), Keys(reading));
        Assert.NotEmpty(reading.Reason);
        Assert.False(BoltCircle.TryParse(text, null, out _));
    }

    [Theory]
    [InlineData("105")]
    [InlineData("5x104")]
    [InlineData("5")]
    [InlineData("5x5")]
    [InlineData("110x130")]
    [InlineData("110.5")]
    [InlineData("-110")]
    [InlineData("even uneven 96")]
    [InlineData("110 odd")]
    public void No_bolt_circle_is_refused(string text)
    {
        Assert.Empty(BoltCircle.Read(text).Values);
        Assert.NotEmpty(BoltCircle.Read(text).Reason);
    }

    [Theory]
    [InlineData("172.5", 172.5)]
    [InlineData("172,5 mm", 172.5)]
    [InlineData("170", 170)]
    [InlineData("100", 100)]
    [InlineData("250mm", 250)]
    public void A_crank_length_is_read(string text, double millimetres) => Assert.Equal((decimal)millimetres, UsualCrankLength.Parse(text, null).Millimetres);

    [Theory]
    [InlineData("99.999999")]
    [InlineData("250.000001")]
    [InlineData("-170")]
    [InlineData("170 cm")]
    [InlineData("long")]
    public void No_crank_length_is_refused(string text) => Assert.False(CrankLength.TryParse(text, null, out _));

    [Fact]
    public void A_measured_crank_is_a_usual_one_or_itself()
    {
        Assert.Equal(["172.5"], CrankLength.WithinError(172.3m, 0.5m).Select(c => c.FitKey));
        Assert.Equal(["161.5", "162", "162.5"], CrankLength.WithinError(162m, 0.5m).Select(c => c.FitKey));
        Assert.Equal(["163.9", "164", "164.1"], CrankLength.WithinError(164m, 0.1m).Select(c => c.FitKey));
        Assert.Same(Sources.CrankLengths, UsualCrankLength.OfMillimetres(175m).Source);
        Assert.Null(UsualCrankLength.OfMillimetres(176m).Source);
        Assert.Throws<ArgumentOutOfRangeException>(() => UsualCrankLength.OfMillimetres(99m));
    }

    [Theory]
    [InlineData("direct mount", "3-bolt,8-bolt,own")]
    [InlineData("Direct-Mount", "3-bolt,8-bolt,own")]
    [InlineData("3 bolt", "3-bolt")]
    public void A_direct_mount_ring_is_read(string text, string keys) => Assert.Equal(keys.Split(','), Keys(DirectMountRing.Read(text)));

    [Theory]
    [InlineData("ISO", "1.375x24")]
    [InlineData("1,375 \u00D7 24", "1.375x24")]
    [InlineData("french", "34.7x1")]
    [InlineData("34.7 x 1.0", "34.7x1")]
    [InlineData("30X1", "30x1")]
    [InlineData("35 x 24", "1.378x24")]
    [InlineData("1.37 x 24", "1.375x24,British-1.370x24,track-1.37x24")]
    [InlineData("1.37x24 tpi", "1.375x24,British-1.370x24,track-1.37x24")]
    [InlineData("lockring", "lockring-1.29x24")]
    public void A_freewheel_thread_is_read(string text, string keys) => Assert.Equal(keys.Split(','), Keys(FreewheelThread.Read(text)));

    [Theory]
    [InlineData("11", "11-close,11-wide,11-8-spline,LG-11")]
    [InlineData("11s", "11-close,11-wide,11-8-spline,LG-11")]
    [InlineData("9-speed", "9,9-8-spline,LG-9")]
    [InlineData("10 speed", "10,10-8-spline,LG-10")]
    [InlineData("5", "5-freewheel,5-freewheel-narrow")]
    [InlineData("8-speed", "8")]
    [InlineData("12s", "12")]
    [InlineData("9", "9")]
    public void A_sprocket_spacing_is_read(string text, string keys) => Assert.Equal(keys.Split(','), Keys(SprocketSpacing.Read(text)));

    [Theory]
    [InlineData("43.5", "road-2x")]
    [InlineData("43,5 mm", "road-2x")]
    [InlineData("41", "track")]
    [InlineData("52", "off-road-1x-52,single-52")]
    [InlineData("47.5", "gravel-2x-wide,off-road-3x-slim,single-47.5")]
    [InlineData("road triple, middle ring", "road-3x")]
    public void A_front_chainline_is_read(string text, string keys) => Assert.Equal(keys.Split(','), Keys(FrontChainline.Read(text)));

    [Theory]
    [InlineData("31.8", "band-31.8")]
    [InlineData("31,8 mm", "band-31.8")]
    [InlineData("34.90", "band-34.9")]
    [InlineData("band", "band-28.6,band-31.8,band-34.9")]
    [InlineData("Low Direct Mount", "low-direct-S1,low-direct-S2,low-direct-S3")]
    [InlineData("direct-mount", "high-direct,low-direct-S1,low-direct-S2,low-direct-S3")]
    [InlineData("e-type", "E-type")]
    [InlineData("s3", "low-direct-S3")]
    public void A_front_derailleur_mount_is_read(string text, string keys) => Assert.Equal(keys.Split(','), Keys(FrontDerailleurMount.Read(text)));

    [Theory]
    [InlineData("31.8 x")]
    [InlineData("31.81")]
    [InlineData("-31.8")]
    public void No_front_derailleur_mount_is_refused(string text) => Assert.Empty(FrontDerailleurMount.Read(text).Values);

    [Theory]
    [InlineData("ISCG 05", "ISCG05")]
    [InlineData("iscg-05", "ISCG05")]
    [InlineData("ISCG", "ISCG")]
    public void Guide_tabs_are_read(string text, string key) => Assert.Equal(key, ChainGuideMount.Parse(text, null).FitKey);

    [Fact]
    public void A_wide_chain_is_read() => Assert.Same(ChainSize.Freight, ChainSize.Parse("5/32 in", null));

    private static string[] Keys<T>(TextReading<T> reading)
        where T : Standard<T>, IInterfaceValue<T> => [.. reading.Values.Select(v => v.FitKey)];
}
