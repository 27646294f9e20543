using Lugwork.Drivetrain;

namespace Lugwork.PublishedTables.WorkedExamples;

public sealed class HubGearRatioExamples : WorkedExample
{
    private const string Topic = "hub-gear-ratio";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 56);

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_hub_of_that_class_has_the_printed_ratio(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        HubRatio ratio = RatioOf(row);
        InternalHub hub = InternalHub.Find(row.Text("hub"))!;
        Assert.True(hub.Ratios.Contains(ratio), $"{row.Tell(ratio.Value)} {hub}");
        Agrees(row, hub.Ratios[hub.Ratios.IndexOf(ratio)].Value);
    }

    [Fact]
    public void No_hub_has_a_ratio_that_is_not_printed_but_direct_drive() =>
        Assert.All(
            InternalHub.All.Where(h => h.Source.Id == "HUB-GEAR-FRACTIONS"),
            hub => Assert.Equal(RowsOf(Topic).Where(r => r.Text("hub") == hub.Key).Select(RatioOf).Where(r => !r.IsDirect).ToHashSet(), hub.Ratios.Where(r => !r.IsDirect).ToHashSet()));

    private static HubRatio RatioOf(WorkedRow row)
    {
        (int over, int under) = (1, 1);
        foreach (string factor in row.Text(row.Has("fraction") ? "fraction" : "factors").Split(' '))
        {
            string[] parts = factor.Split('/');
            (over, under) = (over * int.Parse(parts[0], null), under * int.Parse(parts[1], null));
        }

        return new(over, under);
    }
}
