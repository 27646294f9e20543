using System.Text.Json;
using System.Text.Json.Nodes;

namespace Lugwork.Tests.Builds;

/// <summary>Thirty whole bicycles: what was written down before is found, each finding and nothing else.</summary>
public sealed class WholeBuildTests
{
    private static readonly string Folder = Path.Combine(BuildFileTests.Root(), "tests", "Lugwork.Tests", "Builds", "Whole");

    private static readonly JsonArray Expected = JsonNode.Parse(File.ReadAllText(Path.Combine(Folder, "expected.json")))!.AsArray();

    public static TheoryData<string> Files => [.. Expected.Select(e => (string)e!["file"]!)];

    [Theory]
    [MemberData(nameof(Files))]
    public void It_finds_what_a_mechanic_expects_and_nothing_else(string file)
    {
        JsonNode expected = Expected.Single(e => (string)e!["file"]! == file)!;
        FitReport report = BuildFile.Read(File.ReadAllText(Path.Combine(Folder, file))).Check();
        string[] wanted = [.. expected["findings"]!.AsArray().Select(f => $"{f!["joint"]}: {f["verdict"]}").Order(StringComparer.Ordinal)];
        string[] found = [.. report.Fits.Where(f => f.Verdict != Verdict.Fits).Select(f => $"{f.Joint!.Id}: {f.Verdict}").Order(StringComparer.Ordinal)];
        string told = string.Join('\n', report.Fits.Where(f => f.Verdict != Verdict.Fits && !wanted.Contains($"{f.Joint!.Id}: {f.Verdict}")));
        Assert.True(
            wanted.SequenceEqual(found) && (string)expected["verdict"]! == report.Verdict.ToString(),
            $"{file}: {report.Verdict}, expected {expected["verdict"]}\nnot found: {string.Join(", ", wanted.Except(found))}\nnot expected: {string.Join(", ", found.Except(wanted))}\nmissing slots: {string.Join(", ", report.Missing)}\n{told}");
    }

    public static TheoryData<string> WithSmallParts => [.. Expected.Where(e => e!["smallParts"] is not null).Select(e => (string)e!["file"]!)];

    /// <summary>The whole list, written down by hand from the parts of the build.</summary>
    [Theory]
    [MemberData(nameof(WithSmallParts))]
    public void It_lists_the_small_parts_that_a_mechanic_buys_and_no_others(string file)
    {
        JsonNode expected = Expected.Single(e => (string)e!["file"]! == file)!;
        Assert.Equal(
            expected["smallParts"]!.AsArray().Select(p => (string)p!).Order(StringComparer.Ordinal),
            BuildFile.Read(File.ReadAllText(Path.Combine(Folder, file))).SmallParts().Select(p => p.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void There_are_thirty_of_all_kinds()
    {
        Assert.Equal(30, Expected.Count);
        Assert.Equal(Directory.GetFiles(Folder, "*.json").Select(Path.GetFileName).Where(f => f != "expected.json").Order(StringComparer.Ordinal), Files.Select(f => f.Data).Order(StringComparer.Ordinal));
        Assert.All(Expected.SelectMany(e => e!["findings"]!.AsArray()), f => Assert.NotEmpty((string)f!["why"]!));
    }
}
