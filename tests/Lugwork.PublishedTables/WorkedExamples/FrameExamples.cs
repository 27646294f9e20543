using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Relations of a chart: stack, top tube and front centre from their parts.</summary>
public sealed class FrameExamples : WorkedExample
{
    private const string Topic = "frame";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 3);


    private static double Computed(WorkedRow row) => row.Quantity switch
    {
        "stack from parts" => (PlainFrame.Chart with
        {
            Reach = Length.FromMillimeters(450),
            BottomBracketDrop = Length.FromMillimeters(row["BB drop"]),
            HeadTube = Length.FromMillimeters(row["head tube"]),
            LowerStack = Length.FromMillimeters(row["lower"]),
            ForkAxialLength = Length.FromMillimeters(row["fork axial"]),
            HeadAngle = Angle.FromDegrees(row["HA"]),
            ForkOffset = Length.FromMillimeters(row["offset"]),
        }).ToGeometry().Stack.Millimeters,
        "effective top tube" => (PlainFrame.Chart with
        {
            Reach = Length.FromMillimeters(row["reach"]),
            Stack = Length.FromMillimeters(row["stack"]),
            SeatAngle = Angle.FromDegrees(row["STA"]),
            HeadAngle = Angle.FromDegrees(65.5),
            ForkAxialLength = null,
        }).ToGeometry().EffectiveTopTube!.Value.Millimeters,
        "front centre horizontal" => (PlainFrame.Chart with
        {
            Reach = Length.FromMillimeters(row["reach"]),
            HeadTube = Length.FromMillimeters(row["axial sum"] - 531),
            LowerStack = Length.Zero,
            ForkAxialLength = Length.FromMillimeters(531),
            HeadAngle = Angle.FromDegrees(row["HA"]),
            ForkOffset = Length.FromMillimeters(row["offset"]),
        }).ToGeometry().FrontCentreHorizontal.Millimeters,
        _ => throw new ArgumentException(row.Quantity),
    };
}
