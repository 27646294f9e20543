using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Room between shoe and tyre, straight ahead.</summary>
public sealed class ToeClearanceExamples : WorkedExample
{
    private const string Topic = "toe-clearance";

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
        (Length centre, Length radius, Length crank) = (Length.FromMillimeters(row["front centre"]), Length.FromMillimeters(row["R"]), Length.FromMillimeters(row["crank"]));
        Assert.Equal(Verdict.NeedsMeasuring, ToeClearance.Check(centre, radius, crank).Verdict);
        return ToeClearance.Estimate(centre, radius, crank).Millimeters;
    }
}
