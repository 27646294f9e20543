using Lugwork.Hubs;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Published spoke lengths.</summary>
public sealed class SpokeLengthExamples : WorkedExample
{
    private const string Topic = "spoke-length";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_spoke_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        EffectiveRimDiameter rim = EffectiveRimDiameter.OfSpokeEnds(Length.FromMillimeters(row["erd"]));
        SpokeFlange flange = SpokeFlange.Of(Length.FromMillimeters(row["circle"]), Length.FromMillimeters(row["offset"]), Length.FromMillimeters(row["hole"]));
        SpokeLacing lacing = SpokeLacing.Of((int)row["spokes"], (int)row["crosses"]);
        Agrees(row, (row.Text("from") == "bend" ? SpokeLength.Of(rim, flange, lacing) : SpokeLength.FromMiddleOfHole(rim, flange, lacing)).Millimeters);
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 9);
}
