using Lugwork.Hubs;
using UnitsNet;

namespace Lugwork.Tests.Hubs;

/// <summary>Spokes of a wheel: examples and refusals.</summary>
public sealed class SpokeTests
{
    private static readonly EffectiveRimDiameter Rim = EffectiveRimDiameter.OfSpokeEnds(Mm(600));

    private static readonly SpokeLacing Three = SpokeLacing.Of(32, 3);

    [Fact]
    public void A_radial_spoke_is_the_slanting_line_from_hole_to_rim() =>
        Assert.Equal(Math.Sqrt((270 * 270) + (30 * 30)) - 1.3, SpokeLength.Of(Rim, Flange(60, 30, 2.6), SpokeLacing.Of(32, 0)).Millimeters, 9);

    [Fact]
    public void A_spoke_at_a_right_angle_leaves_the_flange_as_a_tangent() =>
        Assert.Equal(Math.Sqrt((300 * 300) + (30 * 30) + (30 * 30)), SpokeLength.FromMiddleOfHole(Rim, Flange(60, 30, 2.6), SpokeLacing.Of(32, 4)).Millimeters, 9);

    [Fact]
    public void An_offset_rim_evens_out_a_dished_wheel()
    {
        WheelSpokes plain = WheelSpokes.Of(Rim, Flange(45, 36, 2.6), Flange(45, 18, 2.6), Three);
        WheelSpokes offset = WheelSpokes.Of(Rim, Flange(45, 36, 2.6), Flange(45, 18, 2.6), Three, Three, Mm(3));
        Assert.Equal(33, offset.LeftOffset.Millimeters, 9);
        Assert.Equal(21, offset.RightOffset.Millimeters, 9);
        Assert.InRange(plain.TensionLeftOverRight!.Value, 0.5, 0.51);
        Assert.InRange(offset.TensionLeftOverRight!.Value, 0.635, 0.645);
        Assert.Equal("left 293.0 mm, right 291.4 mm", plain.ToString());
    }

    [Fact]
    public void Unequal_crossings_have_no_ratio_of_tensions() =>
        Assert.Null(WheelSpokes.Of(Rim, Flange(45, 36, 2.6), Flange(45, 18, 2.6), SpokeLacing.Of(32, 3), SpokeLacing.Of(32, 2), Length.Zero).TensionLeftOverRight);

    [Theory]
    [InlineData(36, 4, true)]
    [InlineData(32, 3, true)]
    [InlineData(32, 4, false)]
    [InlineData(28, 3, true)]
    [InlineData(24, 3, false)]
    public void Crossings_up_to_a_ninth_of_the_spokes_are_usual(int spokes, int crosses, bool usual) => Assert.Equal(usual, SpokeLacing.Of(spokes, crosses).IsUsual);

    [Fact]
    public void The_meaning_of_a_rim_diameter_is_said_by_its_factory()
    {
        Assert.Equal(602, EffectiveRimDiameter.FromNippleSeats(Mm(596), Mm(3)).Diameter.Millimeters, 9);
        Assert.Equal(602, EffectiveRimDiameter.FromOutside(Mm(638), Mm(18)).Diameter.Millimeters, 9);
        Assert.Equal("ERD 602 mm", EffectiveRimDiameter.OfSpokeEnds(Mm(602)).ToString());
    }

    [Theory]
    [InlineData(260.9, 1, 260, 261)]
    [InlineData(260.5, 1, 260, 260)]
    [InlineData(261, 2, 260, 260)]
    [InlineData(261.1, 2, 260, 262)]
    [InlineData(262, 2, 262, 262)]
    public void Stock_is_rounded_as_the_name_says(double computed, double step, double notAbove, double nearest)
    {
        Assert.Equal(notAbove, SpokeStock.NotAbove(Mm(computed), Mm(step)).Millimeters, 9);
        Assert.Equal(nearest, SpokeStock.Nearest(Mm(computed), Mm(step)).Millimeters, 9);
    }

    [Theory]
    [InlineData(1e300)]
    [InlineData(-1e300)]
    [InlineData(-1)]
    [InlineData(10_000)]
    public void What_is_no_length_of_a_wheel_is_refused(double bad)
    {
        Refused(() => EffectiveRimDiameter.OfSpokeEnds(Mm(bad)));
        Refused(() => EffectiveRimDiameter.FromNippleSeats(Mm(bad), Mm(3)));
        Refused(() => EffectiveRimDiameter.FromNippleSeats(Mm(596), Mm(bad)));
        Refused(() => EffectiveRimDiameter.FromOutside(Mm(bad), Mm(3)));
        Refused(() => EffectiveRimDiameter.FromOutside(Mm(596), Mm(bad)));
        Refused(() => EffectiveRimDiameter.FromSpoke(Mm(bad), Flange(45, 20, 2.6), Three));
        Refused(() => Flange(bad, 20, 2.6));
        Refused(() => Flange(45, bad, 2.6));
        Refused(() => Flange(45, 20, bad));
        Refused(() => SpokeFlange.OffsetFrom(Mm(bad), Mm(30)));
        Refused(() => SpokeFlange.OffsetFrom(Mm(130), Mm(bad)));
        Refused(() => SpokeStock.Nearest(Mm(bad), Mm(1)));
        Refused(() => SpokeStock.NotAbove(Mm(260), Mm(bad)));
        Refused(() => SpokeTension.LeftOverRight(Mm(bad), Mm(290), Mm(20), Mm(290)));
        Refused(() => SpokeTension.LeftOverRight(Mm(20), Mm(bad), Mm(20), Mm(290)));
        Refused(() => SpokeTension.LeftOverRight(Mm(20), Mm(290), Mm(bad), Mm(290)));
        Refused(() => SpokeTension.LeftOverRight(Mm(20), Mm(290), Mm(20), Mm(bad)));
        Refused(() => WheelSpokes.Of(Rim, Flange(45, 36, 2.6), Flange(45, 18, 2.6), Three, Three, Mm(bad == -1 ? -18 : bad)));
    }

    [Fact]
    public void A_refusal_names_value_and_range()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => EffectiveRimDiameter.OfSpokeEnds(Mm(40)));
        Assert.Equal("diameter", refused.ParamName);
        Assert.Equal(40.0, refused.ActualValue);
        Assert.Contains("50 to 900 mm", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(31, 3)]
    [InlineData(6, 1)]
    [InlineData(98, 3)]
    [InlineData(32, 9)]
    [InlineData(32, -1)]
    public void Lacings_that_cannot_be_are_refused(int spokes, int crosses) => Refused(() => SpokeLacing.Of(spokes, crosses));

    [Fact]
    public void Two_sides_of_different_wheels_and_a_flange_as_large_as_the_rim_are_refused()
    {
        Refused(() => WheelSpokes.Of(Rim, Flange(45, 36, 2.6), Flange(45, 18, 2.6), SpokeLacing.Of(32, 3), SpokeLacing.Of(36, 3), Length.Zero));
        Refused(() => SpokeLength.Of(EffectiveRimDiameter.OfSpokeEnds(Mm(150)), Flange(120, 36, 2.6), Three));
        Refused(() => EffectiveRimDiameter.FromSpoke(Mm(20), Flange(60, 36, 2.6), Three));
    }

    private static void Refused(Func<object> made) => Assert.Throws<ArgumentOutOfRangeException>(() => made());

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static SpokeFlange Flange(double circle, double offset, double hole) => SpokeFlange.Of(Mm(circle), Mm(offset), Mm(hole));
}
