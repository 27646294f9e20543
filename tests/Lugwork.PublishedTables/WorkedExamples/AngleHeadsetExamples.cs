using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Angle and shift of an angle headset; own arithmetic, for no published example was found.</summary>
public sealed class AngleHeadsetExamples : WorkedExample
{
    private const string Topic = "angle-headset";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 2);


    private static double Computed(WorkedRow row)
    {
        Length distance = Length.FromMillimeters(row["bearing distance"]);
        return row.Has("angle")
            ? AngleHeadset.ShiftFor(Angle.FromDegrees(row["angle"]), distance).Millimeters
            : AngleHeadset.OfShifts(Length.FromMillimeters(row["shift"] / 2), Length.FromMillimeters(row["shift"] / 2), distance, Length.Zero).Slacker.Degrees;
    }
}
