using Lugwork.Seating;
using UnitsNet;

namespace Lugwork.Tests.Fits;

/// <summary>The ends of the range of a plain length and of a size.</summary>
public sealed class LengthTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(1e-9)]
    [InlineData(100_000.1)]
    [InlineData(1e300)]
    public void A_length_out_of_range_is_refused(double millimetres) =>
        Assert.ThrowsAny<ArgumentException>(() => Dimension.Of(Length.FromMillimeters(millimetres)));

    [Fact]
    public void Less_than_half_a_nanometre_is_no_length()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Dimension.OfMillimetres(0.0000004m));
        Assert.False(Dimension.TryParse("0.0000004", null, out _));
    }

    [Fact]
    public void The_ends_of_the_range_are_lengths()
    {
        Assert.Equal(1, Dimension.OfMillimetres(0.000001m).FitCode);
        Assert.Equal("100000", Dimension.OfMillimetres(100_000m).ToString());
        Assert.Equal(Dimension.OfMillimetres(100_000m), Dimension.Parse("100000", null));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dimension.OfMillimetres(100_000.000001m));
        Assert.False(Dimension.TryParse("100000.000001", null, out _));
    }

    [Fact]
    public void A_measurement_keeps_both_ends_and_a_size_every_nominal_within_the_error()
    {
        Candidates known = Known<Dimension>.Measured(80m, 0.5m).ToCandidates();
        Assert.Equal((KnownState.Measured, 79_500_000L, 80_500_000L), (known.State, known.Low, known.High));
        Known<SeatpostDiameter> post = Known<SeatpostDiameter>.Measured(27.1m, 0.1m);
        Assert.All(post.Values, v => Assert.InRange(v.FitCode, 27_000_000, 27_200_000));
        Assert.Contains(SeatpostDiameter.Parse("27.2", null), post.Values);
        Assert.Throws<ArgumentOutOfRangeException>(() => Known<Dimension>.Measured(0m, 1m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Known<Dimension>.Measured(1m, -0.1m));
    }
}
