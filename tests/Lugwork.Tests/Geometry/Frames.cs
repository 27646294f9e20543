using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.Tests.Geometry;

/// <summary>Frames of our own invention, printed and drawn.</summary>
internal static class Frames
{
    public static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    public static Angle Deg(double degrees) => Angle.FromDegrees(degrees);

    /// <summary>An off-road hardtail, as a chart prints one.</summary>
    public static FrameChart Trail { get; } = new()
    {
        Reach = Mm(455),
        HeadAngle = Deg(65.5),
        SeatAngle = Deg(75.5),
        Chainstay = Mm(432),
        BottomBracketDrop = Mm(55),
        HeadTube = Mm(115),
        LowerStack = Mm(12),
        AxleToCrown = Mm(531),
        ForkOffset = Mm(44),
        RearRadius = Mm(370),
        FrontRadius = Mm(370),
    };

    public static FrameGeometry Drawn { get; } = Trail.ToGeometry();

    /// <summary>Any frame within what is built, whose chart it returns as well.</summary>
    public static FrameChart Any(Random random)
    {
        double At(double least, double most) => least + (random.NextDouble() * (most - least));
        double rear = At(200, 380);
        return new()
        {
            Reach = Mm(At(340, 540)),
            HeadAngle = Deg(At(60, 76)),
            SeatAngle = Deg(At(68, 80)),
            Chainstay = Mm(At(350, 520)),
            BottomBracketDrop = Mm(At(-60, 90)),
            HeadTube = Mm(At(80, 240)),
            LowerStack = Mm(At(0, 25)),
            ForkAxialLength = Mm(At(340, 620)),
            ForkOffset = Mm(At(30, 70)),
            RearRadius = Mm(rear),
            FrontRadius = Mm(rear + At(-20, 20)),
        };
    }

    /// <summary>Every figure of a frame as a chart would print it.</summary>
    public static FrameChart Printed(FrameGeometry frame) => new()
    {
        Reach = frame.Reach,
        Stack = frame.Stack,
        HeadAngle = frame.HeadAngle,
        SeatAngle = frame.SeatAngle,
        Chainstay = frame.Chainstay,
        BottomBracketDrop = frame.BottomBracketDrop,
        HeadTube = frame.HeadTube,
        LowerStack = frame.LowerStack,
        ForkAxialLength = frame.ForkAxialLength,
        AxleToCrown = frame.AxleToCrown,
        ForkOffset = frame.ForkOffset,
        RearRadius = frame.RearRadius,
        FrontRadius = frame.FrontRadius,
        Wheelbase = frame.Wheelbase,
        FrontCentre = frame.FrontCentre,
        EffectiveTopTube = frame.EffectiveTopTube,
        BottomBracketHeight = frame.BottomBracketHeight,
        Trail = frame.Trail,
        ChainstayHorizontal = frame.ChainstayHorizontal,
        FrontCentreHorizontal = frame.FrontCentreHorizontal,
        LengthGrain = Length.Zero,
        AngleGrain = Angle.Zero,
    };

    public static double[] Numbers(FrameGeometry frame) =>
    [
        frame.Reach.Millimeters, frame.Stack.Millimeters, frame.HeadAngle.Degrees, frame.HeadTubeAngle.Degrees, frame.SeatAngle?.Degrees ?? 0, frame.Chainstay.Millimeters,
        frame.BottomBracketDrop.Millimeters, frame.BottomBracketHeight.Millimeters, frame.Wheelbase.Millimeters, frame.FrontCentre.Millimeters, frame.Trail.Millimeters,
        frame.FlopFactor.Millimeters, frame.ForkAxialLength.Millimeters, frame.AxleToCrown.Millimeters, frame.ForkOffset.Millimeters, frame.LowerStack.Millimeters,
        frame.FrontRadius.Millimeters, frame.RearRadius.Millimeters, frame.HeadsetAngle.Degrees,
    ];

    public static void Same(FrameGeometry expected, FrameGeometry actual, double within = 1e-6)
    {
        (double[] e, double[] a) = (Numbers(expected), Numbers(actual));
        for (int i = 0; i < e.Length; i++)
        {
            Assert.True(Math.Abs(e[i] - a[i]) <= within, $"figure {i}: {e[i]} became {a[i]}\n{expected}\n{actual}");
        }
    }
}
