using System.Collections.Immutable;

namespace Lugwork.Geometry;

/// <summary>One figure of a frame chart. Closed set, identity equality.</summary>
public sealed class FrameFigure
{
    private FrameFigure(int index, string name, double least, double most, bool isAngle = false)
    {
        Index = index;
        Name = name;
        Least = least;
        Most = most;
        IsAngle = isAngle;
    }

    /// <summary>From the bottom bracket forward to the middle of the head tube's top, level.</summary>
    public static FrameFigure Reach { get; } = new(0, "reach", 100, 800);

    /// <summary>From the bottom bracket up to the middle of the head tube's top, upright.</summary>
    public static FrameFigure Stack { get; } = new(1, "stack", 200, 1_000);

    /// <summary>Angle of the head tube to the ground, behind it.</summary>
    public static FrameFigure HeadAngle { get; } = new(2, "head angle", 45, 90, isAngle: true);

    /// <summary>Angle of the effective seat tube to the ground, behind it.</summary>
    public static FrameFigure SeatAngle { get; } = new(3, "seat angle", 45, 90, isAngle: true);

    /// <summary>From the bottom bracket to the rear axle, straight.</summary>
    public static FrameFigure Chainstay { get; } = new(4, "chainstay", 200, 800);

    /// <summary>How far the bottom bracket stands below the rear axle; negative above it.</summary>
    public static FrameFigure BottomBracketDrop { get; } = new(5, "bottom-bracket drop", -200, 200);

    /// <summary>Length of the head tube.</summary>
    public static FrameFigure HeadTube { get; } = new(6, "head tube", 40, 400);

    /// <summary>From the lower end of the head tube to the crown-race seat, along the steering axis.</summary>
    public static FrameFigure LowerStack { get; } = new(7, "lower headset stack", 0, 80);

    /// <summary>From the crown-race seat to the axle, along the steering axis.</summary>
    public static FrameFigure ForkAxialLength { get; } = new(8, "fork length along the axis", 150, 900);

    /// <summary>From the crown-race seat to the axle, straight: longer than along the axis where the fork has offset.</summary>
    public static FrameFigure AxleToCrown { get; } = new(9, "axle to crown", 150, 900);

    /// <summary>From the steering axis forward to the axle, square to the axis.</summary>
    public static FrameFigure ForkOffset { get; } = new(10, "fork offset", 0, 120);

    /// <summary>Radius of the rear wheel with its tyre.</summary>
    public static FrameFigure RearRadius { get; } = new(11, "rear wheel radius", 100, 500);

    /// <summary>Radius of the front wheel with its tyre.</summary>
    public static FrameFigure FrontRadius { get; } = new(12, "front wheel radius", 100, 500);

    /// <summary>From axle to axle, level.</summary>
    public static FrameFigure Wheelbase { get; } = new(13, "wheelbase", 500, 2_000);

    /// <summary>From the bottom bracket to the front axle, straight.</summary>
    public static FrameFigure FrontCentre { get; } = new(14, "front centre", 250, 1_300);

    /// <summary>From the head tube's top back to the effective seat tube, level.</summary>
    public static FrameFigure EffectiveTopTube { get; } = new(15, "effective top tube", 200, 1_000);

    /// <summary>From the ground to the bottom bracket.</summary>
    public static FrameFigure BottomBracketHeight { get; } = new(16, "bottom-bracket height", 50, 600);

    /// <summary>How far the front tyre stands behind the steering axis, on the ground.</summary>
    public static FrameFigure Trail { get; } = new(17, "trail", -200, 400);

    /// <summary>From the bottom bracket to the rear axle, level.</summary>
    public static FrameFigure ChainstayHorizontal { get; } = new(18, "chainstay, level", 100, 800);

    /// <summary>From the bottom bracket to the front axle, level.</summary>
    public static FrameFigure FrontCentreHorizontal { get; } = new(19, "front centre, level", 200, 1_300);

    /// <summary>How far the bottom bracket stands below the front axle.</summary>
    public static FrameFigure FrontDrop { get; } = new(20, "drop below the front axle", -600, 600);

    /// <summary>From the head tube's top to beside the front axle, along the steering axis.</summary>
    public static FrameFigure SteeringLength { get; } = new(21, "head tube, lower stack and fork together", 190, 1_380);

    /// <summary>Every figure, in the order of a chart.</summary>
    public static ImmutableArray<FrameFigure> All { get; } =
    [
        Reach, Stack, HeadAngle, SeatAngle, Chainstay, BottomBracketDrop, HeadTube, LowerStack, ForkAxialLength, AxleToCrown, ForkOffset, RearRadius, FrontRadius,
        Wheelbase, FrontCentre, EffectiveTopTube, BottomBracketHeight, Trail, ChainstayHorizontal, FrontCentreHorizontal, FrontDrop, SteeringLength,
    ];

    /// <summary>The figure in words: "bottom-bracket drop".</summary>
    public string Name { get; }

    /// <summary>Whether it is an angle, in degrees, and no length.</summary>
    public bool IsAngle { get; }

    /// <summary>Smallest that is taken, millimetres or degrees.</summary>
    public double Least { get; }

    /// <summary>Largest that is taken, millimetres or degrees.</summary>
    public double Most { get; }

    internal int Index { get; }

    internal int Bit => 1 << Index;

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
