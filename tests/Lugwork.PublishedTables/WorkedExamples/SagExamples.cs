using Lugwork.Suspension;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Sag of shock, wheel and fork.</summary>
public sealed class SagExamples : WorkedExample
{
    private const string Topic = "sag";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_sag_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Length whole = Length.FromMillimeters(row["whole"]);
        Ratio share = Ratio.FromPercent(row["percent"]);
        Agrees(row, (row.Text("at") switch
        {
            "shock" => Sag.AtShock(whole, share),
            "wheel" => Sag.AtRearWheelByMeanRatio(whole, share),
            _ => Sag.AtFork(whole, share),
        }).Millimeters);
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 3);
}
