using Lugwork.Geometry;
using static Lugwork.Tests.Geometry.Frames;
using static Lugwork.Tests.Measures.StatedRange;

namespace Lugwork.Tests.Geometry;

/// <summary>What a figure of a frame may be, at both ends.</summary>
public sealed class RangeTests
{
    public static TheoryData<string, double, double> Figures => new()
    {
        { "reach", 100, 800 }, { "stack", 200, 1_000 }, { "head angle", 45, 90 }, { "seat angle", 45, 90 }, { "chainstay", 200, 800 }, { "bottom-bracket drop", -200, 200 },
        { "head tube", 40, 400 }, { "lower headset stack", 0, 80 }, { "fork length along the axis", 150, 900 }, { "axle to crown", 150, 900 }, { "fork offset", 0, 120 },
        { "rear wheel radius", 100, 500 }, { "front wheel radius", 100, 500 }, { "wheelbase", 500, 2_000 }, { "front centre", 250, 1_300 }, { "effective top tube", 200, 1_000 },
        { "bottom-bracket height", 50, 600 }, { "trail", -200, 400 }, { "chainstay, level", 100, 800 }, { "front centre, level", 200, 1_300 },
    };

    [Theory]
    [MemberData(nameof(Figures))]
    public void A_chart_takes_a_figure_from_end_to_end(string name, double least, double most)
    {
        FrameFigure figure = FrameFigure.All.Single(f => f.Name == name);
        Assert.Equal((least, most), (figure.Least, figure.Most));
        Holds(least, most, v => _ = name switch
        {
            "reach" => new FrameChart { Reach = Mm(v) },
            "stack" => new FrameChart { Stack = Mm(v) },
            "head angle" => new FrameChart { HeadAngle = Deg(v) },
            "seat angle" => new FrameChart { SeatAngle = Deg(v) },
            "chainstay" => new FrameChart { Chainstay = Mm(v) },
            "bottom-bracket drop" => new FrameChart { BottomBracketDrop = Mm(v) },
            "head tube" => new FrameChart { HeadTube = Mm(v) },
            "lower headset stack" => new FrameChart { LowerStack = Mm(v) },
            "fork length along the axis" => new FrameChart { ForkAxialLength = Mm(v) },
            "axle to crown" => new FrameChart { AxleToCrown = Mm(v) },
            "fork offset" => new FrameChart { ForkOffset = Mm(v) },
            "rear wheel radius" => new FrameChart { RearRadius = Mm(v) },
            "front wheel radius" => new FrameChart { FrontRadius = Mm(v) },
            "wheelbase" => new FrameChart { Wheelbase = Mm(v) },
            "front centre" => new FrameChart { FrontCentre = Mm(v) },
            "effective top tube" => new FrameChart { EffectiveTopTube = Mm(v) },
            "bottom-bracket height" => new FrameChart { BottomBracketHeight = Mm(v) },
            "trail" => new FrameChart { Trail = Mm(v) },
            "chainstay, level" => new FrameChart { ChainstayHorizontal = Mm(v) },
            _ => new FrameChart { FrontCentreHorizontal = Mm(v) },
        });
    }

    [Fact]
    public void What_no_chart_prints_lies_within_what_its_parts_can_be()
    {
        Assert.Equal((-600, 600), (FrameFigure.FrontDrop.Least, FrameFigure.FrontDrop.Most));
        Assert.Equal(FrameFigure.HeadTube.Least + FrameFigure.LowerStack.Least + FrameFigure.ForkAxialLength.Least, FrameFigure.SteeringLength.Least);
        Assert.Equal(FrameFigure.HeadTube.Most + FrameFigure.LowerStack.Most + FrameFigure.ForkAxialLength.Most, FrameFigure.SteeringLength.Most);
    }

    [Fact]
    public void The_grain_of_a_chart()
    {
        Holds(0, 10, v => _ = new FrameChart { LengthGrain = Mm(v) });
        Holds(0, 1, v => _ = new FrameChart { AngleGrain = Deg(v) });
    }

    [Fact]
    public void A_makers_limits()
    {
        Holds(150, 900, v => _ = new FrameLimits { LongestFork = Mm(v) });
        Holds(150, 900, v => _ = new FrameLimits { ShortestFork = Mm(v) });
        Holds(100, 500, v => _ = new FrameLimits { LargestFrontRadius = Mm(v) });
        Holds(100, 500, v => _ = new FrameLimits { LargestRearRadius = Mm(v) });
        Holds(100, 500, v => _ = new FrameLimits { SmallestFrontRadius = Mm(v) });
        Holds(100, 500, v => _ = new FrameLimits { SmallestRearRadius = Mm(v) });
        Holds(50, 600, v => _ = new FrameLimits { LeastBottomBracketHeight = Mm(v) });
        Holds(30, 110, v => _ = new FrameLimits { SlackestHeadAngle = Deg(v) });
        Holds(30, 110, v => _ = new FrameLimits { SteepestHeadAngle = Deg(v) });
        Holds(0, 120, v => _ = new FrameLimits { LeastForkOffset = Mm(v) });
        Holds(0, 120, v => _ = new FrameLimits { MostForkOffset = Mm(v) });
        Holds(0.001, 300, v => _ = new FrameLimits { LeastTrail = Mm(v) });
        Holds(0, 3, v => _ = new FrameLimits { MostHeadsetAngle = Deg(v) });
    }

    [Fact]
    public void Steering()
    {
        Holds(30, 110, v => SteeringGeometry.Trail(Deg(v), Mm(44), Mm(340)));
        Holds(-120, 120, v => SteeringGeometry.Trail(Deg(70), Mm(v), Mm(340)));
        Holds(100, 500, v => SteeringGeometry.Trail(Deg(70), Mm(44), Mm(v)));
        Holds(100, 500, v => SteeringGeometry.OffsetForTrail(Deg(70), Mm(60), Mm(v)));
        Holds(-400, 400, v => SteeringGeometry.FlopFactor(Mm(v), Deg(70)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SteeringGeometry.OffsetForTrail(Deg(70), Mm(400.001), Mm(340)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SteeringGeometry.OffsetForTrail(Deg(70), Mm(-400.001), Mm(340)));
    }

    [Fact]
    public void Clearances_and_wheels()
    {
        Holds(250, 1_300, v => ToeClearance.Estimate(Mm(v), Mm(340), Mm(170)));
        Holds(100, 520, v => ToeClearance.Estimate(Mm(600), Mm(v), Mm(170)));
        Holds(100, 250, v => ToeClearance.Estimate(Mm(600), Mm(340), Mm(v)));
        Holds(50, 600, v => GroundClearance.Lean(Mm(v), Mm(170), Mm(20), Mm(190)));
        Holds(100, 250, v => GroundClearance.Lean(Mm(300), Mm(v), Mm(20), Mm(190)));
        Holds(5, 80, v => GroundClearance.Lean(Mm(300), Mm(170), Mm(v), Mm(190)));
        Holds(100, 300, v => GroundClearance.Lean(Mm(300), Mm(170), Mm(20), Mm(v)));
        Holds(600, 3_200, v => WheelRadius.OfRollOut(Mm(v)));
    }

    [Fact]
    public void An_angle_headset()
    {
        Holds(-3, 3, v => AngleHeadset.Of(Deg(v), Mm(0)));
        Holds(-60, 460, v => AngleHeadset.Of(Deg(1), Mm(v)));
        Holds(-10, 10, v => AngleHeadset.OfShifts(Mm(v), Mm(0), Mm(300), Mm(0)));
        Holds(-10, 10, v => AngleHeadset.OfShifts(Mm(0), Mm(v), Mm(300), Mm(0)));
        Holds(40, 500, v => AngleHeadset.OfShifts(Mm(1), Mm(0), Mm(v), Mm(0)));
        Holds(-60, 60, v => AngleHeadset.OfShifts(Mm(1), Mm(0), Mm(300), Mm(v)));
        Holds(40, 500, v => AngleHeadset.ShiftFor(Deg(1), Mm(v)));
        Holds(-3, 3, v => AngleHeadset.ShiftFor(Deg(v), Mm(100)));
    }
}
