using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

public sealed class GainRatioExamples : WorkedExample
{
    private const string Topic = "gain-ratio";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 6);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Gain_ratios_and_their_cadences_come_out_as_printed(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Length crank = Length.FromMillimeters(row["crank_mm"]);
        Agrees(row, row.Quantity switch
        {
            "gain ratio" => new Gear((int)row["front"], (int)row["rear"]).GainRatio(Length.FromMillimeters(row["wheel_radius_mm"]), crank),
            "cadence at 3 mph" => Gearing.CadenceAt(row["gain"], crank, Speed.FromMilesPerHour(3)).RevolutionsPerMinute,
            "cadence at 4 mph" => Gearing.CadenceAt(row["gain"], crank, Speed.FromMilesPerHour(4)).RevolutionsPerMinute,
            _ => throw new ArgumentException(row.Quantity),
        });
    }
}
