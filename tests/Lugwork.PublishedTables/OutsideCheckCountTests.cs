namespace Lugwork.PublishedTables;

/// <summary>How many cases are held against how many published sources, and that no interface value is left out.</summary>
public sealed class OutsideCheckCountTests
{
    /// <summary>Values that no published page was found for: checked by common practice, not counted.</summary>
    private static readonly Type[] WithoutAPage = [typeof(BicycleKind), typeof(OutsideFamily), typeof(Lugwork.Drivetrain.MakersWord), typeof(Lugwork.Seating.DropperRouting), typeof(Lugwork.Seating.DropperEntry), typeof(Lugwork.Cockpit.CableGuide)];

    public static TheoryData<string> Values => [.. InterfaceValues.All.Select(t => t.FullName!).Order(StringComparer.Ordinal)];

    [Fact]
    public void At_least_300_cases_come_from_at_least_40_published_sources_of_the_register()
    {
        Case[] printed = [.. OutsideCheck.All.SelectMany(c => c.Cases).DistinctBy(c => c.Name).Where(c => c.Registered.Any())];
        string[] pages = [.. printed.SelectMany(c => c.Registered).Distinct()];
        TestContext.Current.TestOutputHelper?.WriteLine($"{printed.Length} cases from {pages.Length} published sources");

        Assert.True(printed.Length >= 300, $"{printed.Length} cases name a published source of the register");
        Assert.True(pages.Length >= 40, $"{pages.Length} published sources");
    }

    [Fact]
    public void Every_check_names_its_source() =>
        Assert.All(OutsideCheck.All.SelectMany(c => c.Cases), c => Assert.True(c.Sources.Length > 0 && c.Sources.All(s => s.Length > 8), $"{c.Name} names no source"));

    [Fact]
    public void No_case_stands_twice()
    {
        string[] twice = [.. OutsideCheck.All.SelectMany(c => c.Cases).GroupBy(c => c.Name).Where(g => g.Count() > 1).Select(g => g.Key)];
        Assert.True(twice.Length == 0, string.Join(Environment.NewLine, twice));
    }

    [Theory]
    [MemberData(nameof(Values))]
    public void Each_interface_value_is_run_by_a_check_with_a_published_source(string name)
    {
        Type type = InterfaceValues.All.Single(t => t.FullName == name);
        OutsideCheck[] running = [.. OutsideCheck.All.Where(c => c.Runs.Contains(type))];
        bool printed = running.Any(c => c.Cases.Any(k => k.Pages.Any()));

        Assert.True(running.Length > 0, $"no outside check runs {name}");
        Assert.True(printed != WithoutAPage.Contains(type), $"{name} is {(printed ? "checked against a page and listed as without one" : "checked by memory or common practice only")}");
    }
}
