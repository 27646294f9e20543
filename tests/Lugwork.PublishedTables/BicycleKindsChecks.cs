namespace Lugwork.PublishedTables;

/// <summary>What a kind of bicycle does without: common practice, no page was looked for.</summary>
public sealed class BicycleKindsChecks
{
    [Theory]
    [InlineData("track", false)]
    [InlineData("fixed", false)]
    [InlineData("single speed", false)]
    [InlineData("touring", true)]
    [InlineData("gravel", true)]
    [InlineData("BMX", false)]
    [InlineData("children's", false)]
    [InlineData("fat", true)]
    [InlineData("folding", true)]
    [PrintedIn("common practice, no source")]
    public void A_bicycle_without_gears_asks_for_no_cassette(string kind, bool asked)
    {
        string key = BicycleKind.Parse(kind, null).FitKey;
        Assert.Equal(asked, Build.From(Frame.Read($"kind {key}; material steel")).Needs().Any(n => n.Slot == Slot.Cassette));
    }

    [Theory]
    [InlineData("full-suspension", true)]
    [InlineData("hardtail", false)]
    [InlineData("fat", false)]
    [PrintedIn("common practice, no source")]
    public void A_shock_is_asked_for_with_rear_suspension_alone(string kind, bool asked)
    {
        string key = BicycleKind.Parse(kind, null).FitKey;
        Assert.Equal(asked, Build.From(Frame.Read($"kind {key}; material steel")).Needs().Any(n => n.Slot == Slot.Shock));
    }
}
