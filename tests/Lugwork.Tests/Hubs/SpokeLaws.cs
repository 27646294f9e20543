using FsCheck;
using FsCheck.Xunit;
using Lugwork.Hubs;
using UnitsNet;

namespace Lugwork.Tests.Hubs;

/// <summary>Laws of spokes.</summary>
public sealed class SpokeLaws
{
    [Property(MaxTest = 2_000)]
    public void Units_in_change_nothing(DoNotSize<int> seed)
    {
        Wheel wheel = new(seed.Item);
        double inches = SpokeLength.Of(
            EffectiveRimDiameter.OfSpokeEnds(Length.FromInches(wheel.Erd / 25.4)),
            SpokeFlange.Of(Length.FromCentimeters(wheel.Circle / 10), Length.FromMeters(wheel.Offset / 1000), Length.FromMicrometers(2600)),
            wheel.Lacing).Inches;
        Assert.Equal(wheel.Spoke(), inches * 25.4, 7);
    }

    [Property(MaxTest = 2_000)]
    public void A_spoke_grows_with_rim_offset_and_crossings(DoNotSize<int> seed)
    {
        Wheel wheel = new(seed.Item);
        Assert.True((wheel with { Erd = wheel.Erd + 0.01 }).Spoke() > wheel.Spoke());
        Assert.True((wheel with { Offset = wheel.Offset + 0.01 }).Spoke() > wheel.Spoke());
        Assert.True(wheel.Crosses == wheel.Spokes / 4 || (wheel with { Crosses = wheel.Crosses + 1 }).Spoke() > wheel.Spoke());
        Assert.Equal(wheel.Spoke() + 1.3, SpokeLength.FromMiddleOfHole(wheel.Rim, wheel.Flange, wheel.Lacing).Millimeters, 1e-9);
    }

    /// <summary>The spoke as a line in space, from its hole in the flange to the end of its nipple, drawn from the spokes of one side that it really crosses.</summary>
    [Property(MaxTest = 2_000)]
    public void A_spoke_is_as_long_as_the_line_that_is_drawn(DoNotSize<int> seed)
    {
        Wheel wheel = new(seed.Item);
        double step = 2 * Math.PI / (wheel.Spokes / 2);
        double turn = wheel.Crosses * step;
        (double x, double y) = ((wheel.Erd / 2 * Math.Cos(turn)) - (wheel.Circle / 2), wheel.Erd / 2 * Math.Sin(turn));
        double line = Math.Sqrt((x * x) + (y * y) + (wheel.Offset * wheel.Offset));
        Assert.Equal(line, SpokeLength.FromMiddleOfHole(wheel.Rim, wheel.Flange, wheel.Lacing).Millimeters, 1e-9);
        Assert.Equal(line - 1.3, wheel.Spoke(), 1e-9);
        Assert.Equal(turn * 180 / Math.PI, wheel.Lacing.AngleAtHub.Degrees, 1e-9);

        // Every other spoke of the side runs the other way round; those that change places with this one on the way out are crossed.
        int crossed = Enumerable.Range(1, wheel.Spokes / 2).Count(k => k % 2 == 1 && k * step < (2 * turn) - 1e-9);
        Assert.Equal(wheel.Crosses, crossed);
    }

    [Property(MaxTest = 2_000)]
    public void The_rim_is_found_again_from_its_spoke(DoNotSize<int> seed)
    {
        Wheel wheel = new(seed.Item);
        Assert.Equal(wheel.Erd, EffectiveRimDiameter.FromSpoke(Length.FromMillimeters(wheel.Spoke()), wheel.Flange, wheel.Lacing).Diameter.Millimeters, 6);
    }

    [Property(MaxTest = 2_000)]
    public void A_wheel_turned_round_has_its_sides_exchanged(DoNotSize<int> seed)
    {
        Wheel left = new(seed.Item);
        Wheel right = new(seed.Item + 1);
        SpokeLacing lacing = left.Lacing;
        Length shift = Length.FromMillimeters((Math.Abs(seed.Item % 100) / 10.0) - 5);
        WheelSpokes wheel = WheelSpokes.Of(left.Rim, left.Flange, right.Flange, lacing, lacing, shift);
        WheelSpokes turned = WheelSpokes.Of(left.Rim, right.Flange, left.Flange, lacing, lacing, -shift);
        Assert.Equal(wheel.Left.Millimeters, turned.Right.Millimeters, 1e-9);
        Assert.Equal(wheel.Right.Millimeters, turned.Left.Millimeters, 1e-9);
        Assert.Equal(1, wheel.TensionLeftOverRight!.Value * turned.TensionLeftOverRight!.Value, 1e-9);
        Assert.Equal(left.Offset + right.Offset, (wheel.LeftOffset + wheel.RightOffset).Millimeters, 1e-9);
        Assert.Equal(left.Offset - shift.Millimeters, wheel.LeftOffset.Millimeters, 1e-9);
    }

    [Property(MaxTest = 2_000)]
    public void Tensions_pull_the_rim_to_neither_side(DoNotSize<int> seed)
    {
        Wheel left = new(seed.Item);
        Wheel right = new(seed.Item + 1);
        WheelSpokes wheel = WheelSpokes.Of(left.Rim, left.Flange, right.Flange, left.Lacing);
        double pullLeft = wheel.TensionLeftOverRight!.Value * wheel.LeftOffset.Millimeters / wheel.Left.Millimeters;
        Assert.Equal(wheel.RightOffset.Millimeters / wheel.Right.Millimeters, pullLeft, 1e-9);
        Assert.Equal(wheel.TensionLeftOverRight!.Value, SpokeTension.LeftOverRight(wheel.LeftOffset, wheel.Left, wheel.RightOffset, wheel.Right), 1e-9);
    }

    [Property(MaxTest = 2_000)]
    public void Stock_is_a_whole_number_of_steps_and_near(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        double step = random.Next(1, 11) / 2.0;
        double computed = (random.Next(20, 80) * step) + (random.Next(3) switch { 0 => 0, 1 => step / 2, _ => random.NextDouble() * step });
        computed = Math.Max(computed, 10);
        double below = SpokeStock.NotAbove(Length.FromMillimeters(computed), Length.FromMillimeters(step)).Millimeters;
        double nearest = SpokeStock.Nearest(Length.FromMillimeters(computed), Length.FromMillimeters(step)).Millimeters;
        Assert.InRange(computed - below, -1e-6, step - 1e-6);
        Assert.InRange(computed - nearest, (-step / 2) - 1e-6, (step / 2) + 1e-6);
        Assert.Equal(0, Math.Abs((below / step) - Math.Round(below / step)), 6);
        Assert.True(nearest == below || nearest - below == step);
        Assert.True(computed - below > step / 2 || nearest == below);
    }

    private sealed record Wheel(double Erd, double Circle, double Offset, int Spokes, int Crosses)
    {
        public Wheel(int seed)
            : this(new Random(seed))
        {
        }

        private Wheel(Random random)
            : this(300 + (random.NextDouble() * 330), 28 + (random.NextDouble() * 60), 10 + (random.NextDouble() * 40), random.Next(8, 25) * 2, 0) =>
            Crosses = random.Next(0, (Spokes / 4) + 1);

        public EffectiveRimDiameter Rim => EffectiveRimDiameter.OfSpokeEnds(Length.FromMillimeters(Erd));

        public SpokeFlange Flange => SpokeFlange.Of(Length.FromMillimeters(Circle), Length.FromMillimeters(Offset), Length.FromMillimeters(2.6));

        public SpokeLacing Lacing => SpokeLacing.Of(Spokes, Crosses);

        public double Spoke() => SpokeLength.Of(Rim, Flange, Lacing).Millimeters;
    }
}
