using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Height of the bottom bracket from drop and wheel.</summary>
public sealed class BbHeightExamples : WorkedExample
{
    private const string Topic = "bb-height";

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


    private static double Computed(WorkedRow row) =>
        (PlainFrame.Chart with { Reach = Length.FromMillimeters(400), FrontRadius = Length.FromMillimeters(row["R"]), RearRadius = Length.FromMillimeters(row["R"]), BottomBracketDrop = Length.FromMillimeters(row["drop"]) }).ToGeometry().BottomBracketHeight.Millimeters;
}
