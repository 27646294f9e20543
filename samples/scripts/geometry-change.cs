#:package Lugwork@1.0.0-rc.1
// A hardtail made for 120 mm of travel: what does a fork of 140 mm make of it, and an angle headset on top?
using Lugwork;
using Lugwork.Geometry;
using UnitsNet;

Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
Angle Degrees(double degrees) => Angle.FromDegrees(degrees);

FrameChart chart = new()
{
    Reach = Mm(448), HeadAngle = Degrees(66.5), SeatAngle = Degrees(75), Chainstay = Mm(430), BottomBracketDrop = Mm(58), HeadTube = Mm(110),
    LowerStack = Mm(1), AxleToCrown = Mm(531), ForkOffset = Mm(44), FrontRadius = Mm(371), RearRadius = Mm(371), Wheelbase = Mm(1177),
};
ChartReading reading = chart.Solve();
Console.WriteLine($"The chart as printed: {reading}");

FrameGeometry frame = (chart with { Wheelbase = null }).ToGeometry();
Console.WriteLine($"Without its wheelbase the chart makes {frame.Wheelbase.Millimeters:0} mm of it; we go on with that.");
Console.WriteLine();

FrameGeometry longer = frame.WithFork(Mm(551), Mm(44));
Console.WriteLine("A fork 20 mm longer:");
Console.WriteLine(GeometryDifference.Between(frame, longer));
Console.WriteLine();

FrameGeometry slacker = longer.WithAngleHeadset(AngleHeadset.Of(Degrees(1), Mm(0)));
Console.WriteLine("And a headset of one degree, its angle in the upper cup:");
Console.WriteLine(GeometryDifference.Between(longer, slacker));
Console.WriteLine();

FrameLimits limits = new() { LongestFork = Mm(541) };
foreach (SumCheck finding in limits.Check(frame, slacker))
{
    Console.WriteLine($"{finding}");
}

Console.WriteLine(ToeClearance.Check(slacker.FrontCentre, slacker.FrontRadius, Mm(170)));
Console.WriteLine(GroundClearance.Check(slacker.BottomBracketHeight, Mm(170), Mm(16), Mm(190)));
