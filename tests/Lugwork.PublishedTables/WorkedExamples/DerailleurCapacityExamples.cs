using Lugwork.Drivetrain;

namespace Lugwork.PublishedTables.WorkedExamples;

public sealed class DerailleurCapacityExamples : WorkedExample
{
    private const string Topic = "derailleur-capacity";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 5);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Capacities_come_out_as_printed(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, row.Quantity switch
        {
            "total capacity needed" => DerailleurLimits.Needed(Teeth(row, "front"), Teeth(row, "rear")),
            "spare capacity" => new DerailleurLimits { TotalCapacity = (int)row["capacity"] }.Spare(Teeth(row, "front"), Teeth(row, "rear"))!.Value,
            "slack to take up" => DerailleurLimits.TakenUp((int)row["teeth"]).Millimeters,
            _ => throw new ArgumentException(row.Quantity),
        });
    }

    private static int[] Teeth(WorkedRow row, string name) => [.. row.List(name).Select(t => (int)t)];
}
