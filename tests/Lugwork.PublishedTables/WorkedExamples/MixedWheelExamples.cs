using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>A smaller rear wheel, as published.</summary>
public sealed class MixedWheelExamples : WorkedExample
{
    private const string Topic = "mixed-wheel";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 6);


    private static double Computed(WorkedRow row)
    {
        FrameGeometry frame = PlainFrame.Of(row.Has("HA") ? row["HA"] : 65, row["wheelbase"], row.Has("chainstay") ? row["chainstay"] : 430);
        FrameGeometry changed = frame.WithWheels(frame.FrontRadius, frame.RearRadius - Length.FromMillimeters(row["dR"]));
        GeometryDifference difference = GeometryDifference.Between(frame, changed);
        return row.Unit == "mm" ? -difference.BottomBracketHeight.Millimeters
            : row.Quantity.StartsWith("angle change", StringComparison.Ordinal) ? -difference.HeadAngle.Degrees
            : changed.HeadAngle.Degrees;
    }
}
