using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>What another offset does to the wheelbase: the printed figure is a slip.</summary>
public sealed class ForkOffsetExamples : WorkedExample
{
    private const string Topic = "fork-offset";

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
        FrameGeometry frame = PlainFrame.Of(row["HA"], 1_220, 430).WithForkOffset(Length.FromMillimeters(row["offset"]));
        return (frame.Wheelbase - frame.WithForkOffset(Length.FromMillimeters(row["new offset"])).Wheelbase).Millimeters;
    }
}
