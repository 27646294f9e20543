using FsCheck;
using FsCheck.Xunit;
using Lugwork.Geometry;
using UnitsNet;
using static Lugwork.Tests.Geometry.Frames;

namespace Lugwork.Tests.Geometry;

/// <summary>What is true of every change of a frame.</summary>
public sealed class ChangeLaws
{
    [Property(MaxTest = 1_000)]
    public void A_change_and_its_opposite_end_where_they_began(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        FrameGeometry frame = Any(random).ToGeometry();
        double by = (random.NextDouble() * 120) - 60;
        Same(frame, frame.WithForkLongerBy(Mm(by)).WithForkLongerBy(Mm(-by)));
        Same(frame, frame.WithForkOffset(Mm(38)).WithForkOffset(frame.ForkOffset));
        Same(frame, frame.WithFork(Mm(500), Mm(51)).WithFork(frame.AxleToCrown, frame.ForkOffset));
        Same(frame, frame.WithWheels(Mm(355), Mm(330)).WithWheels(frame.FrontRadius, frame.RearRadius));
        Same(frame, frame.WithLowerStack(Mm(30)).WithLowerStack(frame.LowerStack));
        Same(frame, frame.WithAngleHeadset(AngleHeadset.Of(Deg(1.5), Mm(random.Next(-20, 150)))).WithAngleHeadset(AngleHeadset.None));
        Same(frame, frame.WithForkLongerBy(Length.Zero));
    }

    [Property(MaxTest = 1_000)]
    public void The_order_of_changes_does_not_matter(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        FrameGeometry frame = Any(random).ToGeometry();
        Length by = Mm((random.NextDouble() * 80) - 40);
        (Length front, Length rear) = (Mm(random.Next(300, 380)), Mm(random.Next(300, 380)));
        AngleHeadset headset = AngleHeadset.Of(Deg((random.NextDouble() * 4) - 2), Mm(random.Next(0, 120)));
        FrameGeometry one = frame.WithForkLongerBy(by).WithWheels(front, rear).WithAngleHeadset(headset).WithLowerStack(Mm(20));
        Same(one, frame.WithLowerStack(Mm(20)).WithAngleHeadset(headset).WithWheels(front, rear).WithForkLongerBy(by));
    }

    /// <summary>The frame is rigid, and both wheels stand on the ground.</summary>
    [Property(MaxTest = 1_000)]
    public void Lengths_of_the_frame_stay_and_the_wheels_touch_the_ground(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        FrameGeometry frame = Any(random).ToGeometry();
        FrameGeometry changed = frame.WithForkLongerBy(Mm(random.Next(-60, 60))).WithWheels(Mm(random.Next(300, 380)), Mm(random.Next(300, 380))).WithAngleHeadset(AngleHeadset.Of(Deg(1), Mm(50)));
        Assert.Equal(frame.Chainstay.Millimeters, changed.Chainstay.Millimeters, 1e-6);
        Assert.Equal(Far(frame.RearAxle, frame.HeadTubeTop), Far(changed.RearAxle, changed.HeadTubeTop), 1e-6);
        Assert.Equal(Far(frame.RearAxle, frame.HeadTubeBottom), Far(changed.RearAxle, changed.HeadTubeBottom), 1e-6);
        Assert.Equal(frame.SeatAngle!.Value.Degrees - frame.HeadTubeAngle.Degrees, changed.SeatAngle!.Value.Degrees - changed.HeadTubeAngle.Degrees, 1e-8);
        Assert.Equal(changed.RearAxle.YMillimetres - changed.RearRadius.Millimeters, changed.FrontAxle.YMillimetres - changed.FrontRadius.Millimeters, 1e-6);
        Assert.Equal(1, changed.HeadsetAngle.Degrees, 1e-8);

        static double Far(FramePoint a, FramePoint b) => double.Hypot(a.XMillimetres - b.XMillimetres, a.YMillimetres - b.YMillimetres);
    }

    [Property(MaxTest = 1_000)]
    public void A_changed_frame_printed_whole_is_the_same_frame(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        FrameGeometry changed = Any(random).ToGeometry().WithForkLongerBy(Mm(random.Next(-40, 40))).WithWheels(Mm(random.Next(300, 380)), Mm(random.Next(300, 380)));
        Same(changed, Printed(changed).ToGeometry());
    }

    [Property(MaxTest = 1_000)]
    public void A_longer_fork_is_slacker_and_higher_and_a_larger_rear_wheel_steeper(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        FrameGeometry frame = Any(random).ToGeometry();
        double step = 0.01 + (random.NextDouble() * 30);
        GeometryDifference fork = GeometryDifference.Between(frame, frame.WithForkLongerBy(Mm(step)));
        Assert.True(fork.HeadAngle.Degrees < 0 && fork.SeatAngle.Degrees < 0 && fork.BottomBracketHeight.Millimeters > 0 && fork.Trail.Millimeters > 0 && fork.Wheelbase.Millimeters > 0);
        GeometryDifference rear = GeometryDifference.Between(frame, frame.WithWheels(frame.FrontRadius, frame.RearRadius + Mm(step)));
        Assert.True(rear.HeadAngle.Degrees > 0 && rear.BottomBracketHeight.Millimeters > 0 && rear.BottomBracketHeight.Millimeters < step);
        GeometryDifference offset = GeometryDifference.Between(frame, frame.WithForkOffset(frame.ForkOffset + Mm(step)));
        Assert.True(offset.Trail.Millimeters < 0 && offset.Wheelbase.Millimeters > 0);
        GeometryDifference headset = GeometryDifference.Between(frame, frame.WithAngleHeadset(AngleHeadset.Of(Deg(Math.Min(step / 10, 3)), Mm(40))));
        Assert.True(headset.HeadAngle.Degrees < 0 && headset.Trail.Millimeters > 0);
    }

    [Property(MaxTest = 1_000)]
    public void Both_wheels_larger_by_the_same_lift_the_frame_and_turn_nothing(DoNotSize<int> seed)
    {
        FrameGeometry frame = Any(new(seed.Item)).ToGeometry();
        FrameGeometry raised = frame.WithWheels(frame.FrontRadius + Mm(7), frame.RearRadius + Mm(7));
        GeometryDifference difference = GeometryDifference.Between(frame, raised);
        Assert.Equal(0, difference.HeadAngle.Degrees, 1e-8);
        Assert.Equal(7, difference.BottomBracketHeight.Millimeters, 1e-6);
        Assert.Equal(0, difference.Wheelbase.Millimeters, 1e-6);
    }

    [Property(MaxTest = 500)]
    public void Units_in_never_change_results(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        FrameChart chart = Any(random);
        FrameGeometry frame = chart.ToGeometry();
        FrameChart other = chart with { Reach = chart.Reach!.Value.ToUnit(UnitsNet.Units.LengthUnit.Inch), HeadAngle = chart.HeadAngle!.Value.ToUnit(UnitsNet.Units.AngleUnit.Radian), RearRadius = chart.RearRadius!.Value.ToUnit(UnitsNet.Units.LengthUnit.Foot) };
        Same(frame, other.ToGeometry());
        double by = random.NextDouble() * 40;
        Same(frame.WithForkLongerBy(Mm(by)), frame.WithForkLongerBy(Length.FromInches(by / 25.4)));
    }

    [Property(MaxTest = 1_000)]
    public void The_offset_for_a_trail_gives_that_trail(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        (Angle head, Length radius) = (Deg(60 + (random.NextDouble() * 18)), Mm(200 + (random.NextDouble() * 180)));
        Length offset = Mm((random.NextDouble() * 120) - 20);
        Length trail = SteeringGeometry.Trail(head, offset, radius);
        Assert.Equal(offset.Millimeters, SteeringGeometry.OffsetForTrail(head, trail, radius).Millimeters, 1e-8);
        Assert.True(SteeringGeometry.Trail(head + Deg(0.01), offset, radius).Millimeters < trail.Millimeters);
    }
}
