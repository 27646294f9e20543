using Lugwork.Seating;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Stack, travel and insertion of a dropper.</summary>
public sealed class DropperExamples : WorkedExample
{
    private const string Topic = "dropper";

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
        if (row.Has("least height"))
        {
            DropperTravel travel = DropperTravel.OfMillimetres((decimal)row["travel"]);
            Dimension stack = DropperFit.StackOf(Dimension.OfMillimetres((decimal)row["least height"]), travel);
            Assert.Equal(58, stack.Millimetres);
            return (double)new DropperSize { Travel = travel, Stack = stack, TotalLength = Dimension.OfMillimetres(350) }.LeastRailHeight.Millimetres;
        }

        SeatpostRoom room = new() { RailHeight = Dimension.OfMillimetres((decimal)row["rails"]), OpenDepth = Dimension.OfMillimetres(250), LeastInsertion = Dimension.OfMillimetres(80) };
        return row.Has("stack") ? room.LongestTravel(Dimension.OfMillimetres((decimal)row["stack"])).Millimeters : room.InsertionOf(Dimension.OfMillimetres((decimal)row["post"])).Millimeters;
    }
}
