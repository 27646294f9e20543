using Lugwork.Suspension;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Mean leverage ratios.</summary>
public sealed class LeverageRatioExamples : WorkedExample
{
    private const string Topic = "leverage-ratio";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_ratio_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, MeanLeverage.Of(Length.FromMillimeters(row["travel"]), Length.FromMillimeters(row["stroke"])).Ratio);
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 3);
}
