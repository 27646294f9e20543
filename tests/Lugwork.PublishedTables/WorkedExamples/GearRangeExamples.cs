using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

public sealed class GearRangeExamples : WorkedExample
{
    private const string Topic = "gear-range";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 12);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Ranges_and_steps_come_out_as_printed(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, row.Quantity switch
        {
            "overall range" => Gearing.RangePercent(row["lowest"], row["highest"]),
            "hub gear from direct drive" => row["direct_in"] * row["hub"],
            "range of a table" => GearTable.Of(Teeth(row, "front"), Teeth(row, "rear"), Length.FromMillimeters(2_100)).RangePercent,
            "step from 12 to 11 teeth" => Gearing.StepPercent(Gear(row, "gear").Ratio, Gear(row, "other").Ratio),
            "step between two gears called one" => Gearing.StepPercent(Gear(row, "other").Ratio, Gear(row, "gear").Ratio),
            _ => throw new ArgumentException(row.Quantity),
        });
    }

    [Theory]
    [InlineData("243", "14")]
    [InlineData("244", "2-fast")]
    [InlineData("245", "4-close")]
    public void The_hub_itself_has_the_printed_range(string id, string hub) => Agrees(RowOf(Topic, id), InternalHub.Find(hub)!.RangePercent!.Value);

    [Fact]
    public void Two_gears_that_a_page_calls_one_are_found_as_duplicates()
    {
        WorkedRow row = RowOf(Topic, "251");
        GearTable table = GearTable.Of([52, 42], [17, 21], Length.FromMillimeters(2_100));
        Assert.True(table.Duplicates() is [var pair] && pair.Higher == Gear(row, "gear") && pair.Lower == Gear(row, "other"), row.Tell(0));
    }

    private static int[] Teeth(WorkedRow row, string name) => [.. row.List(name).Select(t => (int)t)];

    private static Gear Gear(WorkedRow row, string name) => new((int)row.List(name)[0], (int)row.List(name)[1]);
}
