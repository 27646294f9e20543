using Lugwork.Hubs;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Further spoke lengths, and the figures that go into them; the example that row 352 of spoke-length.csv has too stands there alone.</summary>
public sealed class SpokeTableExamples : WorkedExample
{
    private const string Topic = "spoke-table";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_figure_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, row.Text("take") switch
        {
            "offset" => SpokeFlange.OffsetFrom(Length.FromMillimeters(row["old"]), Length.FromMillimeters(row["to flange"])).Millimeters,
            "angle" => SpokeLacing.Of((int)row["spokes"], (int)row["crosses"]).AngleAtHub.Degrees,
            _ => Spoke(row),
        });
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 4);

    private static double Spoke(WorkedRow row) => SpokeLength.Of(
        EffectiveRimDiameter.OfSpokeEnds(Length.FromMillimeters(row["erd"])),
        SpokeFlange.Of(Length.FromMillimeters(row["circle"]), Length.FromMillimeters(row["offset"]), Length.FromMillimeters(row["hole"])),
        SpokeLacing.Of((int)row["spokes"], (int)row["crosses"])).Millimeters;
}
