using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

public sealed class ChainLengthExamples : WorkedExample
{
    private const string Topic = "chain-length";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 12);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Chains_come_out_as_printed(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, row.Quantity switch
        {
            "chain by the long rule, as misprinted" or "chain by the long rule" => ChainRule.ByLongRuleWithOneInch(Length.FromInches(row["C_in"]), Front(row), Rear(row)).Pitches / 2,
            "chain by the short rule" => ChainRule.ByShortRuleWithOneInch(Length.FromInches(row["C_in"]), Front(row), Rear(row)).Pitches / 2,
            "chain by the short rule, metric" => ChainRule.ByShortRuleWithOneInch(Length.FromMillimeters(row["C_mm"]), Front(row), Rear(row)).Pitches,
            "centre distance back from its loop" => Back(row),
            "loop by the roller-chain formula" => ChainLoop.ByRollerChainFormula(ChainSize.Pitch * row["C_pitches"], Front(row), Rear(row)).Pitches,
            "pitches saved by a smaller sprocket" => -ChainLoop.PitchesForTeeth(Added(row)),
            "pitches more for other teeth" => ChainLoop.PitchesForTeeth(Added(row)),
            "chain, rigid rear, one ring" or "chain, road double" => ChainLoop.ByRollerChainFormula(Length.FromMillimeters(row["C_mm"]), Front(row), Rear(row)).Plus(row["allowance"]).Pitches,
            "extra for suspension growth" => ChainLoop.PitchesForGrowth(Length.FromMillimeters(row["growth_mm"])),
            _ => throw new ArgumentException(row.Quantity),
        });
    }

    [Theory]
    [InlineData("264", 114)]
    [InlineData("265", 110)]
    public void Big_big_is_cut_to_the_same_number_by_the_exact_sum(string id, int cut)
    {
        WorkedRow row = RowOf(Topic, id);
        ChainLength chain = ChainRule.BigBig(Length.FromMillimeters(row["C_mm"]), Front(row), Rear(row), (int)row["allowance"]);
        Assert.True(chain.EvenPitches == cut && Math.Abs(chain.Pitches - row.Own) < 0.01, row.Tell(chain.Pitches));
    }

    [Fact]
    public void A_misprinted_rule_is_still_cut_to_the_same_full_links()
    {
        WorkedRow row = RowOf(Topic, "255");
        Assert.Equal((int)Math.Ceiling(row.Published), ChainRule.ByLongRuleWithOneInch(Length.FromInches(row["C_in"]), Front(row), Rear(row)).FullLinks);
    }

    private static int Front(WorkedRow row) => (int)row["front"];

    private static int Rear(WorkedRow row) => (int)row["rear"];

    private static int Added(WorkedRow row) => (int)(row.List("after").Sum() - row.List("before").Sum());

    private static double Back(WorkedRow row)
    {
        double scale = ChainSize.Pitch.Millimeters / row["pitch_mm"];
        Length centre = Length.FromMillimeters(row["C_mm"] * scale);
        ChainLength loop = ChainLoop.ByRollerChainFormula(centre, Front(row), Rear(row));
        Assert.Equal(row["C_mm"], ChainLoop.CentreDistance(ChainLoop.Exact(centre, Front(row), Rear(row)), Front(row), Rear(row)).Millimeters / scale, 6);
        return ChainLoop.CentreDistanceByRollerChainFormula(loop, Front(row), Rear(row)).Millimeters / scale;
    }
}
