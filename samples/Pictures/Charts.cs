using System.Collections.Immutable;
using Lugwork.Drawing;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using UnitsNet;

namespace PicturesSample;

/// <summary>An invented frame before and after a longer fork, gears and offers: what no build file holds.</summary>
internal static class Charts
{
    public static ImmutableArray<LineDrawing> All
    {
        get
        {
            FrameGeometry frame = new FrameChart
            {
                Reach = Mm(448), HeadAngle = Angle.FromDegrees(66.5), SeatAngle = Angle.FromDegrees(75), Chainstay = Mm(430), BottomBracketDrop = Mm(58), HeadTube = Mm(110),
                LowerStack = Mm(1), AxleToCrown = Mm(531), ForkOffset = Mm(44), FrontRadius = Mm(371), RearRadius = Mm(371),
            }.ToGeometry();
            return
            [
                Drawings.Geometry(frame),
                Drawings.Geometry(frame, frame.WithForkLongerBy(Mm(20))),
                Drawings.Geometry(frame, frame.WithWheels(Mm(371), Mm(352))),
                Drawings.Gears(GearTable.Of([46, 30], [11, 13, 15, 17, 19, 21, 24, 28, 32, 36], Mm(2_180))),
                Drawings.Gears(GearTable.Of([42], [17], Mm(2_100), InternalHub.Find("8"))),
                Drawings.PriceAndMass([("plain alloy", 34m, 0.262m), ("heavy alloy", 19m, 0.341m), ("alloy, set back", 39m, 0.318m), ("carbon", 119m, 0.188m), ("carbon, light", 189m, 0.152m), ("titanium", 149m, 0.205m)], "EUR"),
            ];
        }
    }

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
