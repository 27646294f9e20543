#region gears
using Lugwork.Drivetrain;
using UnitsNet;
#endregion
using Lugwork;
using Lugwork.Geometry;

namespace Answers;

/// <summary>Gears, chain and geometry sums.</summary>
internal static class GearsAndGeometry
{
    public static void Gears()
    {
        #region gears

        GearTable gears = GearTable.Of([46, 30], [11, 13, 15, 17, 19, 21, 24, 28, 32], Length.FromMillimeters(2180));
        Console.WriteLine(gears);
        #endregion
    }

    public static void Chain()
    {
        #region chain
        ChainLength chain = ChainRule.BigBig(Length.FromMillimeters(440), largestRing: 46, largestSprocket: 32, ChainRule.GeneralAllowancePitches);
        Console.WriteLine(chain);
        #endregion
    }

    public static void LongerFork()
    {
        #region geometry
        FrameGeometry frame = new FrameChart
        {
            Reach = Length.FromMillimeters(448), HeadAngle = Angle.FromDegrees(66.5), SeatAngle = Angle.FromDegrees(75), Chainstay = Length.FromMillimeters(430),
            BottomBracketDrop = Length.FromMillimeters(58), HeadTube = Length.FromMillimeters(110), LowerStack = Length.FromMillimeters(1),
            AxleToCrown = Length.FromMillimeters(531), ForkOffset = Length.FromMillimeters(44), FrontRadius = Length.FromMillimeters(371), RearRadius = Length.FromMillimeters(371),
        }.ToGeometry();

        FrameGeometry longer = frame.WithForkLongerBy(Length.FromMillimeters(20));
        Console.WriteLine(GeometryDifference.Between(frame, longer));
        #endregion
    }

    public static void Check()
    {
        #region check
        DerailleurLimits limits = new() { TotalCapacity = 37, FrontDifference = 16, LargestSprocket = 34, SmallestSprocket = 11 };
        SumCheck check = limits.Check([46, 30], [11, 32]);
        Console.WriteLine(check);
        Console.WriteLine(string.Join("; ", check.Sources));
        #endregion
    }
}
