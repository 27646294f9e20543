using Lugwork.Steering;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Interference of published pairs.</summary>
public sealed class PressFitExamples : WorkedExample
{
    private const string Topic = "press-fit";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_interference_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, row.Text("take") switch
        {
            "nominal" => PressFit.Interference(Length.FromMillimeters(row["larger"]), Length.FromMillimeters(row["smaller"])).Millimeters,
            "least" => Toleranced(row).Least.Millimeters,
            _ => Toleranced(row).Most.Millimeters,
        });
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 4);

    private static LengthRange Toleranced(WorkedRow row) => PressFit.InterferenceRange(
        MeasuredLength.OfMillimetres((decimal)row["larger"], (decimal)row["larger error"]),
        MeasuredLength.OfMillimetres((decimal)row["smaller"], (decimal)row["smaller error"]));
}
