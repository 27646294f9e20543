using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Tyre widths on another rim, by the rules that are argued for.</summary>
public sealed class TyreWidthExamples : WorkedExample
{
    private const string Topic = "tyre-width";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void An_argued_width_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        TyreGrowth rule = TyreGrowth.All.Single(g => g.Name == row.Text("rule"));
        Agrees(row, rule.WidthOn(Length.FromMillimeters(row["width"]), Length.FromMillimeters(row["on"]), Length.FromMillimeters(row["rim"])).Millimeters);
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 4);
}
