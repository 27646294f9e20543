using UnitsNet;

namespace Lugwork.Tests.Fits;

/// <summary>An angle in whole microdegrees: what is read, what is refused, and both ends of the range.</summary>
public sealed class FrameAngleTests
{
    [Theory]
    [InlineData("67.5°", 67_500_000)]
    [InlineData("67,5 deg", 67_500_000)]
    [InlineData("67.5", 67_500_000)]
    [InlineData(" 71 Degrees ", 71_000_000)]
    [InlineData("71 deg.", 71_000_000)]
    [InlineData("72.25 º", 72_250_000)]
    [InlineData("0.000001", 1)]
    [InlineData("180°", 180_000_000)]
    public void Degrees_are_read_to_the_microdegree(string text, long microdegrees)
    {
        Assert.Equal(microdegrees, FrameAngle.Parse(text, null).FitCode);
        Assert.Equal(microdegrees, FrameAngle.Parse(FrameAngle.Parse(text, null).FitKey, null).FitCode);
    }

    [Theory]
    [InlineData("")]
    [InlineData("°")]
    [InlineData("0")]
    [InlineData("0°")]
    [InlineData("-5°")]
    [InlineData("180.000001°")]
    [InlineData("67.5 mm")]
    [InlineData("67°30'")]
    [InlineData("1.17 rad")]
    [InlineData("67-68°")]
    [InlineData("67.5%")]
    public void Anything_else_is_refused_with_its_reason(string text)
    {
        TextReading<FrameAngle> reading = FrameAngle.Read(text);
        Assert.Empty(reading.Values);
        Assert.NotEmpty(reading.Reason);
    }

    [Fact]
    public void Quantities_and_numbers_keep_within_the_range()
    {
        Assert.Equal(67_500_000, FrameAngle.OfDegrees(67.5m).FitCode);
        Assert.Equal(67_500_000, FrameAngle.Of(Angle.FromDegrees(67.5)).FitCode);
        Assert.Equal(180_000_000, FrameAngle.Of(Angle.FromRadians(Math.PI)).FitCode);
        Assert.Equal(1, FrameAngle.Of(Angle.FromDegrees(0.000001)).FitCode);
        Assert.Equal(1, FrameAngle.OfDegrees(0.000001m).FitCode);
        Assert.Equal(180_000_000, FrameAngle.OfFitCode(180_000_000).FitCode);
        Assert.Equal(67.5, FrameAngle.OfDegrees(67.5m).Angle.Degrees, 9);
        Assert.Equal(67.5m, FrameAngle.OfDegrees(67.5m).Degrees);
        Assert.Equal("67.5°", FrameAngle.OfDegrees(67.5m).ToString("T", null));
        Assert.Throws<ArgumentOutOfRangeException>(() => FrameAngle.OfDegrees(0m));
        Assert.Throws<ArgumentOutOfRangeException>(() => FrameAngle.OfDegrees(180.0001m));
        Assert.Throws<ArgumentOutOfRangeException>(() => FrameAngle.Of(Angle.FromDegrees(181)));
        Assert.Throws<ArgumentOutOfRangeException>(() => FrameAngle.OfFitCode(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => FrameAngle.OfFitCode(180_000_001));
        Assert.Throws<FormatException>(() => FrameAngle.OfDegrees(67.5m).ToString("M", null));
    }

    [Fact]
    public void The_default_is_no_angle()
    {
        Assert.Equal(0, default(FrameAngle).FitCode);
        Assert.False(FrameAngle.TryParse(default(FrameAngle).ToString(), null, out _));
        Assert.ThrowsAny<ArgumentException>(() => Known<FrameAngle>.Of(default));
    }

    [Fact]
    public void An_error_is_refused_and_both_ends_are_taken()
    {
        Assert.False(Frame.TryRead("head angle 67.5 ± 0.5", out _, out var problems));
        Assert.Contains("without an error", problems.Single().Reason, StringComparison.Ordinal);
        Assert.Equal(2, Frame.Read("head angle 67 | 68").HeadAngle.Values.Length);
        Assert.False(Frame.TryRead("head angle 6.75", out _, out _));
    }
}
