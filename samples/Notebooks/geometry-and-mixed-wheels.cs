#:package Lugwork@1.0.0-rc.1
// The code cells of geometry-and-mixed-wheels.ipynb, one after the other. RunNotebooks.cs writes this file.
using Lugwork;
using Lugwork.Drawing;
using Lugwork.Geometry;
using Lugwork.Tyres;
using UnitsNet;

Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
Length large = WheelRadius.Nominal(TyreSize.Parse("61-622"));
var chart = new FrameChart
{
    Reach = Mm(470), HeadAngle = Angle.FromDegrees(65), SeatAngle = Angle.FromDegrees(77), Chainstay = Mm(440), BottomBracketDrop = Mm(32), HeadTube = Mm(115),
    LowerStack = Mm(13), AxleToCrown = Mm(561), ForkOffset = Mm(44), FrontRadius = large, RearRadius = large,
};
Console.WriteLine(chart.Solve());
FrameGeometry frame = chart.ToGeometry();
display(Drawings.Geometry(frame));

Length small = WheelRadius.Nominal(TyreSize.Parse("64-584"));
FrameGeometry mixed = frame.WithWheels(large, small);
display(GeometryDifference.Between(frame, mixed));

FrameGeometry lifted = mixed.WithForkLongerBy(Mm(10));
display(GeometryDifference.Between(frame, lifted));
Console.WriteLine(GroundClearance.Check(lifted.BottomBracketHeight, Mm(170), Mm(16), Mm(190)));
foreach (SumCheck finding in new FrameLimits { LongestFork = Mm(571), LeastBottomBracketHeight = Mm(335) }.Check(frame, lifted))
{
    Console.WriteLine(finding);
}

var bike = Build.From(Frame.Read("kind full-suspension; largest tyre 64-584"), "Smaller rear wheel")
    .With(Wheel.Read("beadSeat 584; innerWidth 30; rimType TC; rim depth 20"), Slot.RearWheel)
    .With(Tyre.Read("64-584; tubeless"), Slot.RearTyre);
display(Drawings.Tyre(bike, Slot.RearTyre, betweenMillimetres: 78, offMiddleMillimetres: 1, axleToBrakeBridgeMillimetres: 390));

static void display(object shown) => Console.WriteLine(shown is System.Collections.IEnumerable list ? string.Join('\n', list.Cast<object>()) : shown);
