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

    /// <summary>What was measured has the range that its comment names, both ends in it.</summary>
    [Fact]
    public void A_measured_figure_has_the_range_that_is_named()
    {
        Assert.Equal(KnownState.Measured, Known<Dimension>.Measured(100_000m, 0m).State);
        Assert.Throws<ArgumentOutOfRangeException>("millimetres", () => Known<Dimension>.Measured(100_000.000001m, 0m));
        Assert.Throws<ArgumentOutOfRangeException>("millimetres", () => Known<Dimension>.Measured(0m, 0m));
        Assert.Throws<ArgumentOutOfRangeException>("error", () => Known<Dimension>.Measured(10m, 1_000.000001m));
        Assert.Throws<ArgumentOutOfRangeException>("error", () => Known<Dimension>.Measured(10m, -0.000001m));
    }

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

    [Fact]
    public void Lengths_loads_and_angles_stand_in_their_order()
    {
        Dimension small = Dimension.OfMillimetres(27.2m);
        Dimension same = Dimension.OfMillimetres(27.2m);
        Dimension large = Dimension.OfMillimetres(27.200001m);
        Assert.Equal((true, false, false), (small < large, small < same, large < small));
        Assert.Equal((true, true, false), (small <= large, small <= same, large <= small));
        Assert.Equal((true, false, false), (large > small, small > same, small > large));
        Assert.Equal((true, true, false), (large >= small, small >= same, small >= large));

        (Load light, Load equal, Load heavy) = (Load.OfKilograms(80m), Load.OfKilograms(80m), Load.OfKilograms(80.001m));
        Assert.Equal((true, false, false), (light < heavy, light < equal, heavy < light));
        Assert.Equal((true, true, false), (light <= heavy, light <= equal, heavy <= light));
        Assert.Equal((true, false, false), (heavy > light, light > equal, light > heavy));
        Assert.Equal((true, true, false), (heavy >= light, light >= equal, light >= heavy));

        (FrameAngle slack, FrameAngle alike, FrameAngle steep) = (FrameAngle.OfDegrees(67m), FrameAngle.OfDegrees(67m), FrameAngle.OfDegrees(67.000001m));
        Assert.Equal((true, false, false), (slack < steep, slack < alike, steep < slack));
        Assert.Equal((true, true, false), (slack <= steep, slack <= alike, steep <= slack));
        Assert.Equal((true, false, false), (steep > slack, slack > alike, slack > steep));
        Assert.Equal((true, true, false), (steep >= slack, slack >= alike, slack >= steep));
    }

    [Fact]
    public void A_default_is_written_as_no_figure()
    {
        Assert.Equal(InterfaceText.NoValue, default(Load).ToString());
        Assert.Equal(InterfaceText.NoValue, default(FrameAngle).ToString());
        Assert.Equal(InterfaceText.NoValue, default(DateMade).ToString());
    }

    [Fact]
    public void What_follows_from_several_values_is_one_only_where_all_give_the_same()
    {
        Known<SeatpostDiameter> several = Known<SeatpostDiameter>.OneOf([SeatpostDiameter.Parse("27.2", null), SeatpostDiameter.Parse("27.0", null), SeatpostDiameter.Parse("26.8", null)]);
        Candidates same = several.ToCandidates(_ => 5);
        Assert.Equal((KnownState.Value, 5L, 5L), (same.State, same.Low, same.High));
        Candidates two = several.ToCandidates(v => v.FitCode == 27_200_000 ? 9 : 4);
        Assert.Equal((KnownState.OneOf, 4L, 9L), (two.State, two.Low, two.High));
        Assert.Equal([4L, 9L], two.Codes!);
    }
}
