using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>What a lower rear end does to the head angle, as published.</summary>
public sealed class RearRideHeightExamples : WorkedExample
{
    private const string Topic = "rear-ride-height";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 1);


    private static double Computed(WorkedRow row)
    {
        FrameGeometry frame = PlainFrame.Of(row["HA"], row["wheelbase"], 400);
        FrameGeometry lower = frame.WithWheels(frame.FrontRadius, frame.RearRadius - Length.FromMillimeters(row["dR"]));
        return (frame.HeadAngle - lower.HeadAngle).Degrees;
    }
}
