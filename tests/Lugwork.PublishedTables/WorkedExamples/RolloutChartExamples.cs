using Lugwork.Tyres;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>
/// Three published rollout charts. Half of the rows follow a convention within the tolerance of the tyre's class; in two of the charts the convention changes from row to row, so that
/// it was picked to suit each and those rows are <c>low</c>; <c>outside</c> rows follow none
/// and show why a wheel is rolled out; <c>open</c> rows have a label that stands for no one bead seat.
/// </summary>
public sealed class RolloutChartExamples : WorkedExample
{
    private const string Topic = "rollout-charts";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_chart_is_met_or_known_to_differ(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        switch (row.Use)
        {
            case "open":
                Assert.True(!TyreSize.Read(row.Text("label")).IsClear, row.Tell(0));
                break;
            case "outside":
                Assert.All(SectionHeight.All, h => Assert.True(Math.Abs(Computed(row, h) - row.Published) > 1, row.Tell(Computed(row, h))));
                Assert.True(Math.Abs(Computed(row, SectionHeight.EqualToWidth) - row.Published) > row.Tolerance, row.Tell(Computed(row, SectionHeight.EqualToWidth)));
                Assert.InRange(row.Published / Computed(row, SectionHeight.EqualToWidth), 0.95, 1.025);
                break;
            default:
                Agrees(row, Computed(row, SectionHeight.All.Single(h => h.Name == row.Text("height"))));
                break;
        }
    }

    [Fact]
    public void Every_row_is_here()
    {
        Holds(Topic, 146);
        Assert.Equal(14, RowsOf(Topic).Count(r => r.Use == "usable"));
        Assert.Equal(77, RowsOf(Topic).Count(r => r.Use == "low"));
        Assert.All(RowsOf(Topic).Where(r => r.Use == "usable"), r => Assert.Equal(SectionHeight.EqualToWidth.Name, r.Text("height")));
        Assert.Equal(26, RowsOf(Topic).Count(r => r.Use == "low" && r.Text("height") == SectionHeight.UpperSize.Name));
        Assert.Equal(47, RowsOf(Topic).Count(r => r.Use == "outside"));
        Assert.Equal(8, RowsOf(Topic).Count(r => r.Use == "open"));
    }

    private static double Computed(WorkedRow row, SectionHeight convention) =>
        MountedTyre.OnMeasuringRim(TyreSize.Of((int)row["section"], BeadSeat.OfFitCode((long)row["seat"]))).UnloadedCircumference(convention).Millimeters;
}
