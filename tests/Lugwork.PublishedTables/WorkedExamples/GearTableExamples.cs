using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

public sealed class GearTableExamples : WorkedExample
{
    private const string Topic = "gear-table";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 28);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Ratios_inches_and_metres_come_out_as_printed(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, row.Quantity switch
        {
            "gear ratio" => GearTable.Of([(int)row["front"]], [(int)row["rear"]], Length.FromMillimeters(2_100)).Gears[0].Ratio,
            "development from gear inches" => Gearing.DevelopmentOf(row["gear_in"]).Meters,
            "gear inches" => new Gear((int)row["front"], (int)row["rear"]).GearInches(Length.FromInches(row["wheel_in"])),
            _ => throw new ArgumentException(row.Quantity),
        });
    }
}
