using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Rules about heights, rims, pressures and growth, each with the figures that follow from its print.</summary>
public sealed class TyreRuleExamples : WorkedExample
{
    private const string Topic = "tyre-rules";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_rule_gives_its_figure(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        int section = (int)row["section"];
        Agrees(row, row.Text("take") switch
        {
            "height" => SectionHeight.All.Single(h => h.Name == row.Text("rule")).Of(Length.FromMillimeters(section)).Millimeters,
            "older rim" => RimWidthAdvice.For(Length.FromMillimeters(section)).ByOlderRule.Millimeters,
            "ratio narrow" => RimWidthAdvice.For(Length.FromMillimeters(section)).LeastByRatio.Millimeters,
            "ratio wide" => RimWidthAdvice.For(Length.FromMillimeters(section)).MostByRatio.Millimeters,
            "least" => PressureLimits.LeastByOlderStandard(Length.FromMillimeters(section), row["off road"] > 0).Kilopascals,
            _ => TyreGrowth.All.Single(g => g.Name == row.Text("rule")).WidthOn(Length.FromMillimeters(row["section"]), Length.FromMillimeters(row["on"]), Length.FromMillimeters(row["rim"])).Millimeters,
        });
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 17);
}
