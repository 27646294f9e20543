#:package Lugwork@1.0.0-rc.1
// A bicycle on two wheels of 622: a smaller rear wheel of 584 in it, and a longer fork to stand it up again.
using Lugwork;
using Lugwork.Geometry;
using Lugwork.Tyres;
using UnitsNet;

Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

Length large = WheelRadius.Nominal(TyreSize.Parse("61-622"));
Length small = WheelRadius.Nominal(TyreSize.Parse("64-584"));
FrameGeometry frame = new FrameChart
{
    Reach = Mm(470), HeadAngle = Angle.FromDegrees(65), SeatAngle = Angle.FromDegrees(77), Chainstay = Mm(440), BottomBracketDrop = Mm(32), HeadTube = Mm(115),
    LowerStack = Mm(13), AxleToCrown = Mm(561), ForkOffset = Mm(44), FrontRadius = large, RearRadius = large,
}.ToGeometry();

FrameGeometry mixed = frame.WithWheels(large, small);
Console.WriteLine($"Rear radius {large.Millimeters:0} -> {small.Millimeters:0} mm, by label; the tyre that is there may differ by some.");
Console.WriteLine(GeometryDifference.Between(frame, mixed));
Console.WriteLine();

// A longer fork lifts the bottom bracket, but makes the head angle slacker still: the one is bought with the other.
FrameGeometry lifted = mixed.WithForkLongerBy(Mm(10));
GeometryDifference rest = GeometryDifference.Between(frame, lifted);
Console.WriteLine($"With 10 mm more fork: bottom bracket {rest.BottomBracketHeight.Millimeters:+0.0;-0.0} mm and head angle {rest.HeadAngle.Degrees:+0.00;-0.00} degrees from where it was.");
Console.WriteLine();
Console.WriteLine(GroundClearance.Check(mixed.BottomBracketHeight, Mm(170), Mm(16), Mm(190)));
FrameLimits limits = new() { LeastBottomBracketHeight = Mm(335) };
foreach (SumCheck finding in limits.Check(frame, mixed))
{
    Console.WriteLine(finding);
}
