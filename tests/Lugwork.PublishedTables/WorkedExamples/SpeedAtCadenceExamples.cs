using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

public sealed class SpeedAtCadenceExamples : WorkedExample
{
    private const string Topic = "speed-at-cadence";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 63);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Speeds_and_cadences_come_out_as_printed(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, row.Quantity switch
        {
            "wheel rpm at 55 mph" => Gearing.CadenceAt(Length.FromMillimeters(row["circumference_mm"]), Speed.FromMilesPerHour(row["mph"])).RevolutionsPerMinute,
            "cadence at 55 mph" => Pair(row).CadenceAt(Speed.FromMilesPerHour(row["mph"]), Wheel(row)).RevolutionsPerMinute,
            "speed" or "speed at 155 rpm" => In(row.Unit, row.Has("gear_in") ? Gearing.SpeedAt(Gearing.DevelopmentOf(row["gear_in"]), Turns(row)) : Pair(row).SpeedAt(Turns(row), Wheel(row))),
            _ => throw new ArgumentException(row.Quantity),
        });
    }

    [Fact]
    public void The_true_wheel_gives_the_speed_that_the_nominal_one_misses() =>
        Agreed(Gearing.SpeedAt(Gearing.DevelopmentOf(Math.Round(123.0 / 27 * 26.2)), RotationalSpeed.FromRevolutionsPerMinute(100)), RowOf(Topic, "186"));

    private static void Agreed(Speed speed, WorkedRow row) => Assert.True(Math.Abs(speed.MilesPerHour - row.Published) <= row.Tolerance, row.Tell(speed.MilesPerHour));

    private static Gear Pair(WorkedRow row) => new((int)row["front"], (int)row["rear"]);

    private static Length Wheel(WorkedRow row) => Length.FromMillimeters(row["circumference_mm"]);

    private static RotationalSpeed Turns(WorkedRow row) => RotationalSpeed.FromRevolutionsPerMinute(row["rpm"]);

    private static double In(string unit, Speed speed) => unit == "mph" ? speed.MilesPerHour : speed.KilometersPerHour;
}
