using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

public sealed class RolloutLimitExamples : WorkedExample
{
    private const string Topic = "rollout-limit";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 29);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Developments_and_limits_come_out_as_printed(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        if (row.Quantity == "development of a pair listed as legal")
        {
            Legal(row);
        }
        else
        {
            Agrees(row, row.Has("limit_m") ? Gearing.GearInchesOf(LimitOf(row["limit_m"]).Longest) : Pair(row).Development(Wheel(row)).Meters);
        }
    }

    // The printed value is a limit: what is listed as legal stays within it, a slip does not, and its own figure is met.
    private static void Legal(WorkedRow row)
    {
        SumCheck check = LimitOf(row.Published).Check(Pair(row), Wheel(row));
        double rolled = check.Figures[0].Length!.Value.Meters;
        Assert.True((rolled <= row.Published) == (row.Use == "usable"), row.Tell(rolled));
        Assert.Contains(row.Use == "usable" ? " within the " : " above the ", check.Sentence, StringComparison.Ordinal);
        Assert.True(row.Use != "slip" || Math.Abs(rolled - row.Own) <= row.HalfOfTheLastDigit, row.Tell(rolled));
        Assert.NotEqual(Verdict.Fits, check.Verdict);
    }

    private static RolloutLimit LimitOf(double metres) => RolloutLimit.PrintedUntilFebruary2025.Single(l => Math.Abs(l.Longest.Meters - metres) < 1e-9);

    private static Gear Pair(WorkedRow row) => new((int)row["front"], (int)row["rear"]);

    private static Length Wheel(WorkedRow row) => Length.FromMeters(row["circumference_m"]);
}
