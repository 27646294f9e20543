using FsCheck;
using FsCheck.Xunit;
using Lugwork.Steering;
using UnitsNet;

namespace Lugwork.Tests.Steering;

/// <summary>Stem, spacers and bar; the cut of a steerer.</summary>
public sealed class CockpitTests
{
    private static readonly CockpitSetup Plain = new() { Stack = Mm(560), Reach = Mm(385), HeadAngle = Deg(73), UpperStack = Mm(15), SpacersBelow = Mm(20), Stem = Stem(100, -6) };

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static Angle Deg(double degrees) => Angle.FromDegrees(degrees);

    private static StemShape Stem(double length, double angle) => StemShape.Of(Mm(length), StemAngle.OfSquare(Deg(angle)));

    [Fact]
    public void Three_ways_of_saying_one_angle()
    {
        Assert.Equal(-6, StemAngle.OfSteerer(Deg(84)).FromSquare.Degrees, 1e-8);
        Assert.Equal(84, StemAngle.OfSquare(Deg(-6)).FromSteerer.Degrees, 1e-8);
        Assert.Equal(-17, StemAngle.OfHorizon(Deg(0), Deg(73)).FromSquare.Degrees, 1e-8);
        Assert.Equal(0, StemAngle.OfSquare(Deg(-17)).AboveHorizon(Deg(73)).Degrees, 1e-8);
        Assert.Equal("+6", StemAngle.OfSquare(Deg(-6)).Flipped.ToString());
    }

    [Fact]
    public void The_bar_by_hand()
    {
        // 55 mm up the axis, then 100 mm at 11 degrees above level.
        Assert.Equal(385 - (55 * Math.Cos(73 * Math.PI / 180)) + (100 * Math.Cos(11 * Math.PI / 180)), Plain.BarReach.Millimeters, 1e-8);
        Assert.Equal(560 + (55 * Math.Sin(73 * Math.PI / 180)) + (100 * Math.Sin(11 * Math.PI / 180)) + 20, (Plain with { BarRise = Mm(20) }).BarStack.Millimeters, 1e-8);
    }

    [Fact]
    public void A_flipped_stem_comes_up_and_back()
    {
        BarMove move = Plain.To(Plain with { Stem = Plain.Stem.Flipped });
        Assert.InRange(move.Up.Millimeters, 19.9, 20.0);
        Assert.InRange(move.Forward.Millimeters, -6.2, -6.0);
        Assert.EndsWith("up", move.ToString(), StringComparison.Ordinal);
    }

    [Property(MaxTest = 1_000)]
    public void Spacers_for_the_same_height_keep_it_and_moves_add_up(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        CockpitSetup one = Plain with { SpacersBelow = Mm(60 + random.Next(40)), HeadAngle = Deg(62 + (random.NextDouble() * 14)), Stem = Stem(random.Next(30, 140), random.Next(-20, 21)) };
        StemShape stem = Stem(random.Next(30, 140), random.Next(-20, 21));
        Length spacers = one.SpacersForSameHeight(stem);
        if (spacers.Millimeters is >= 0 and <= 200)
        {
            Assert.Equal(one.BarStack.Millimeters, (one with { Stem = stem, SpacersBelow = spacers }).BarStack.Millimeters, 1e-6);
        }

        CockpitSetup other = one with { Stem = stem };
        Assert.Equal(-one.To(other).Up.Millimeters, other.To(one).Up.Millimeters, 1e-8);
        Assert.Equal(-one.To(other).Forward.Millimeters, other.To(one).Forward.Millimeters, 1e-8);
        BarMove higher = one.To(one with { SpacersBelow = one.SpacersBelow + Mm(0.01) });
        Assert.True(higher.Up.Millimeters > 0 && higher.Forward.Millimeters < 0);
    }

    [Property(MaxTest = 500)]
    public void A_stem_is_as_long_along_the_ground_as_along_the_steerer(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        StemShape stem = Stem(random.Next(0, 200), (random.NextDouble() * 80) - 40);
        Angle head = Deg(60 + (random.NextDouble() * 20));
        Assert.Equal(stem.Length.Millimeters, double.Hypot(stem.FromSteerer.Millimeters, stem.AlongSteerer.Millimeters), 1e-8);
        Assert.Equal(stem.Length.Millimeters, double.Hypot(stem.Forward(head).Millimeters, stem.Up(head).Millimeters), 1e-8);
        Assert.Equal(stem.Angle.FromSquare.Degrees, StemAngle.OfHorizon(stem.Angle.AboveHorizon(head), head).FromSquare.Degrees, 1e-8);
        Assert.Equal(stem.Forward(head).Millimeters, StemShape.Of(stem.Length.ToUnit(UnitsNet.Units.LengthUnit.Inch), stem.Angle).Forward(head.ToUnit(UnitsNet.Units.AngleUnit.Radian)).Millimeters, 1e-8);
    }

    [Fact]
    public void Out_of_range_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StemAngle.OfSquare(Deg(61)));
        Assert.Throws<ArgumentOutOfRangeException>(() => StemAngle.OfSteerer(Deg(-6)));
        Assert.Throws<ArgumentOutOfRangeException>(() => StemShape.Of(Mm(-1), default));
        Assert.ThrowsAny<ArgumentException>(() => Plain with { HeadAngle = Deg(double.NaN) });
        Assert.Throws<ArgumentOutOfRangeException>(() => SteererCut.Of(default, Mm(200)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SteererCut.Of(SteererLength.OfMillimetres(110, 11, 11, 0, 40), Mm(0)));
    }

    [Theory]
    [InlineData(300, 169, 131, 3, Verdict.Fits)]
    [InlineData(169, 169, 0, 3, Verdict.Fits)]
    [InlineData(167, 167, 0, 5, Verdict.Fits)]
    [InlineData(165, 165, 0, 7, Verdict.Unsafe)]
    public void A_steerer_before_and_after_the_cut(double before, double after, double off, double gap, Verdict verdict)
    {
        SteererCut cut = SteererCut.Of(SteererLength.OfMillimetres(110, 11, 11, 0, 40), Mm(before), Material.Aluminium);
        Assert.Equal(after, cut.After.Millimeters, 1e-8);
        Assert.Equal(off, cut.Off.Millimeters, 1e-8);
        Assert.Equal(gap, cut.GapUnderCap.Millimeters, 1e-8);
        Assert.Equal(verdict, cut.Check.Verdict);
        Assert.Equal(15, SteererCut.StarNutBelowTop.Millimeters);
    }

    [Theory]
    [InlineData(300, "steel", "cut at 169 mm: 131 mm off, 3 mm under the cap, star nut 15 mm down")]
    [InlineData(300, "aluminium", "cut at 169 mm: 131 mm off, 3 mm under the cap, star nut 15 mm down")]
    [InlineData(300, "carbon", "cut at 169 mm: 131 mm off, 3 mm under the cap, the maker's expander in it")]
    [InlineData(300, null, "cut at 169 mm: 131 mm off, 3 mm under the cap, star nut or expander: by what the steerer is made of")]
    [InlineData(165, "titanium", "not cut, 165 mm, 7 mm under the cap")]
    public void A_star_nut_is_told_for_metal_alone_and_never_where_the_steerer_is_too_short(double before, string? madeOf, string told)
    {
        Material? material = madeOf is null ? null : Material.Parse(madeOf, null);
        SteererCut cut = SteererCut.Of(SteererLength.OfMillimetres(110, 11, 11, 0, 40), Mm(before), material);
        Assert.Equal(told, cut.ToString());
        Assert.Equal(material, cut.Material);
    }

    [Property(MaxTest = 500)]
    public void The_spacers_for_a_cut_steerer_leave_three_under_the_cap(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        SteererLength stack = SteererLength.OfMillimetres(random.Next(80, 200), random.Next(0, 30), random.Next(0, 40), random.Next(0, 40), random.Next(30, 50), random.Next(0, 6));
        Length steerer = stack.Cut + Mm(random.Next(-10, 60));
        Length spacers = SteererCut.SpacersBelowFor(stack, steerer);
        if (spacers.Millimeters >= 0)
        {
            Assert.Equal(steerer.Millimeters, SteererCut.Of(stack with { SpacersBelow = spacers }, Mm(900)).After.Millimeters, 1e-6);
        }
    }
}
