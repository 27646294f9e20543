using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>The lean at which the pedal meets the ground.</summary>
public sealed class PedalClearanceExamples : WorkedExample
{
    private const string Topic = "pedal-clearance";

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
        GroundClearance.Lean(Length.FromMillimeters(row["BB height"]), Length.FromMillimeters(row["crank"]), Length.FromMillimeters(row["pedal height"]), Length.FromMillimeters(row["outer edge"])).Degrees;
}
