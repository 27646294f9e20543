using Lugwork.Steering;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Where a stem puts the bar, as published.</summary>
public sealed class StemExamples : WorkedExample
{
    private const string Topic = "stem";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 21);


    private static double Computed(WorkedRow row)
    {
        if (row.Has("spacer"))
        {
            CockpitSetup bare = new() { Stack = Length.FromMillimeters(600), Reach = Length.FromMillimeters(400), HeadAngle = Angle.FromDegrees(row["HA"]), Stem = StemShape.Of(Length.FromMillimeters(100), default) };
            BarMove move = bare.To(bare with { SpacersBelow = Length.FromMillimeters(row["spacer"]) });
            return (row.Quantity.StartsWith("reach", StringComparison.Ordinal) ? move.Forward : move.Up).Millimeters;
        }

        StemShape stem = Stem(row, "angle");
        return row.Quantity switch
        {
            "reach along the perpendicular to the steerer" => stem.FromSteerer.Millimeters,
            "rise along the steerer" => stem.AlongSteerer.Millimeters,
            "rise difference" => (Stem(row, "new angle").AlongSteerer - stem.AlongSteerer).Millimeters,
            "reach difference" => (Stem(row, "new angle").FromSteerer - stem.FromSteerer).Millimeters,
            "angle above horizontal" => stem.Angle.AboveHorizon(Angle.FromDegrees(row["HA"])).Degrees,
            "horizontal reach" => stem.Forward(Angle.FromDegrees(row["HA"])).Millimeters,
            "vertical rise" => stem.Up(Angle.FromDegrees(row["HA"])).Millimeters,
            _ => throw new ArgumentException(row.Quantity),
        };
    }

    private static StemShape Stem(WorkedRow row, string angle) => StemShape.Of(Length.FromMillimeters(row.Has("L") ? row["L"] : 100), StemAngle.OfSquare(Angle.FromDegrees(row[angle])));
}
