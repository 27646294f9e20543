using Lugwork.Geometry;
using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Trail, and the offset that holds it, as published.</summary>
public sealed class TrailExamples : WorkedExample
{
    private const string Topic = "trail";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 12);

    [Fact]
    public void The_nominal_radius_is_the_one_that_the_page_took() =>
        Assert.All(RowsOf(Topic).Where(r => r.Has("tyre")), r => Assert.Equal(r["R"], WheelRadius.Nominal(TyreSize.Parse(r.Text("tyre"), null)).Millimeters, 6));


    private static double Computed(WorkedRow row)
    {
        Length radius = row.Has("tyre") ? WheelRadius.Nominal(TyreSize.Parse(row.Text("tyre"), null)) : Length.FromMillimeters(row["R"]);
        Length trail = SteeringGeometry.Trail(Angle.FromDegrees(row["HA"]), Length.FromMillimeters(row["offset"]), radius);
        return row.Quantity switch
        {
            "trail" => trail.Millimeters,
            "offset change that holds trail" => SteeringGeometry.OffsetForTrail(Angle.FromDegrees(row["new HA"]), trail, radius).Millimeters - row["offset"],
            _ => throw new ArgumentException(row.Quantity),
        };
    }
}
