using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>What a longer fork does, as published; the frame around the figures that a page prints is ours and does not show in the result.</summary>
public sealed class ForkLengthExamples : WorkedExample
{
    private const string Topic = "fork-length";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 11);


    private static double Computed(WorkedRow row)
    {
        double head = row.Has("HA") ? row["HA"] : 73;
        if (row.Quantity == "trail change")
        {
            Length radius = Length.FromMillimeters(row["R"]);
            Length offset = Length.FromMillimeters(row["offset"]);
            return (SteeringGeometry.Trail(Angle.FromDegrees(row["new HA"]), offset, radius) - SteeringGeometry.Trail(Angle.FromDegrees(head), offset, radius)).Millimeters;
        }

        FrameGeometry frame = PlainFrame.Of(head, row["wheelbase"], row.Has("chainstay") ? row["chainstay"] : 430);
        FrameGeometry changed = row.Has("block")
            ? frame.WithWheels(frame.FrontRadius + Length.FromMillimeters(row["block"]), frame.RearRadius)
            : frame.WithForkLongerBy(Length.FromMillimeters(row["dL"]));
        GeometryDifference difference = GeometryDifference.Between(frame, changed);
        return row.Quantity.StartsWith("BB", StringComparison.Ordinal) ? difference.BottomBracketHeight.Millimeters : -difference.HeadAngle.Degrees;
    }
}
