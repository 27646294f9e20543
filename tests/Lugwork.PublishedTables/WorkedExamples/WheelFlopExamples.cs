using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>The flop factor, as published.</summary>
public sealed class WheelFlopExamples : WorkedExample
{
    private const string Topic = "wheel-flop";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 3);


    private static double Computed(WorkedRow row)
    {
        Angle head = Angle.FromDegrees(row["HA"]);
        Length trail = row.Has("trail") ? Length.FromMillimeters(row["trail"]) : SteeringGeometry.Trail(head, Length.FromMillimeters(row["offset"]), Length.FromMillimeters(row["R"]));
        return SteeringGeometry.FlopFactor(trail, head).Millimeters;
    }
}
