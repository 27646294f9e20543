using Lugwork.Tyres;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>What a smaller wheel takes off the height.</summary>
public sealed class WheelSizeExamples : WorkedExample
{
    private const string Topic = "wheel-size";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_difference_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        double from = Radius((int)row["section"], (long)row["from"]);
        double to = Radius((int)row["section"], (long)row["to"]);
        Agrees(row, from - to);
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 1);

    private static double Radius(int section, long seat) =>
        MountedTyre.OnMeasuringRim(TyreSize.Of(section, BeadSeat.OfFitCode(seat))).OutsideDiameter(SectionHeight.EqualToWidth).Millimeters / 2;
}
