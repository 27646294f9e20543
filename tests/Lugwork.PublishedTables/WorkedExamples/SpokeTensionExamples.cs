using Lugwork.Hubs;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>The published ratio of tensions.</summary>
public sealed class SpokeTensionExamples : WorkedExample
{
    private const string Topic = "spoke-tension";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_ratio_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, SpokeTension.LeftOverRight(
            Length.FromMillimeters(row["left"]), Length.FromMillimeters(row["left spoke"]), Length.FromMillimeters(row["right"]), Length.FromMillimeters(row["right spoke"])));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 1);
}
