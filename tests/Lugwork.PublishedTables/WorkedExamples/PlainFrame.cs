using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>A frame of round figures around the few that a page prints.</summary>
internal static class PlainFrame
{
    /// <summary>Without reach and stack: one of them, or a wheelbase, is for the example to give.</summary>
    public static FrameChart Chart { get; } = new()
    {
        HeadAngle = Angle.FromDegrees(70),
        Chainstay = Length.FromMillimeters(430),
        BottomBracketDrop = Length.Zero,
        HeadTube = Length.FromMillimeters(110),
        LowerStack = Length.Zero,
        ForkAxialLength = Length.FromMillimeters(450),
        ForkOffset = Length.FromMillimeters(45),
        RearRadius = Length.FromMillimeters(340),
        FrontRadius = Length.FromMillimeters(340),
    };

    /// <summary>Wheels of one size, bottom bracket level with the axles.</summary>
    public static FrameGeometry Of(double headAngle, double wheelbase, double chainstay) =>
        (Chart with { HeadAngle = Angle.FromDegrees(headAngle), Wheelbase = Length.FromMillimeters(wheelbase), Chainstay = Length.FromMillimeters(chainstay) }).ToGeometry();
}
