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
        string[] found = [.. report.Findings.Where(f => f.Verdict != Verdict.Fits).Select(f => $"{f.Joint!.Id}: {f.Verdict}").Order(StringComparer.Ordinal)];
        string told = string.Join('\n', report.Findings.Where(f => f.Verdict != Verdict.Fits && !wanted.Contains($"{f.Joint!.Id}: {f.Verdict}")));
        Assert.True(
            wanted.SequenceEqual(found) && (string)expected["verdict"]! == report.Verdict.ToString(),
            $"{file}: {report.Verdict}, expected {expected["verdict"]}\nnot found: {string.Join(", ", wanted.Except(found))}\nnot expected: {string.Join(", ", found.Except(wanted))}\nmissing slots: {string.Join(", ", report.Missing)}\n{told}");
    }

    /// <summary>The whole list, written down by hand from the parts of the build: complete and minimal. With all of it there nothing is left to add; with one of it gone that one comes back, and no other.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void It_lists_the_small_parts_that_a_mechanic_buys_and_no_others(string file)
    {
        Build build = Read(file);
        string[] wanted = Words(file, "smallParts");
        Assert.NotEmpty(wanted);
        Assert.Equal(wanted.Order(StringComparer.Ordinal), build.SmallParts().Select(p => p.Id).Order(StringComparer.Ordinal));
        Build all = wanted.Aggregate(build, (b, id) => b.WithSmallPart(id));
        Assert.Empty(all.SmallParts());
        Assert.All(wanted, id => Assert.Equal([id], all.WithoutSmallPart(id).SmallParts().Select(p => p.Id)));
        Assert.Equal(build.Check().Verdict, all.Check().Verdict);
    }

    /// <summary>What was accepted stands beside the finding and clears nothing; what was accepted of other parts has lapsed; what was measured and cut is remembered; and no slot that this kind of bicycle needs is empty.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void It_tells_what_was_accepted_what_was_built_and_what_is_missing(string file)
    {
        Build plain = Read(file);
        Build accepted = Words(file, "waived").Aggregate(plain, (b, joint) => b.Waive(joint, "seen, and meant so"));
        FitReport report = BuildFile.Read(BuildFile.Write(accepted)).Check();
        Assert.Equal(plain.Check().Verdict, report.Verdict);
        Assert.Equal(plain.Check().Findings.Select(f => f.Verdict), report.Findings.Select(f => f.Verdict));
        Assert.Equal(Words(file, "waived"), report.Waived.Select(w => w.Fit.Joint!.Id));
        Assert.Equal(Words(file, "lapsed"), report.Lapsed.Select(w => w.JointId));
        Assert.Equal(Words(file, "asBuilt").Order(StringComparer.Ordinal), report.Build.AsBuilt.Select(v => $"{v.Slot.Key} {v.Field} {v.Value}").Order(StringComparer.Ordinal));
        Assert.Equal(Words(file, "missing"), report.Missing.Select(s => s.Key));
        Assert.Equal(report.Build.AsBuilt, BuildFile.Read(BuildFile.Write(report.Build)).AsBuilt);
    }

    [Fact]
    public void Some_of_them_are_used_worn_accepted_measured_and_cut()
    {
        Assert.True(Expected.Count(e => e!["waived"] is not null) >= 3);
        Assert.Contains(Expected, e => e!["lapsed"] is not null);
        Assert.True(Expected.Count(e => e!["asBuilt"] is not null) >= 3);
        Assert.True(Files.Count(f => Read(f.Data).Check().Findings.Any(j => j.Joint!.IsOfCondition)) >= 4);
        Assert.Empty(SmallPartTable.Rules.Select(r => r.Id).Except(Expected.SelectMany(e => Words((string)e!["file"]!, "smallParts"))).Except(SmallPartRowTests.Rows.Select(r => r.Data.Item1)));
    }

    private static Build Read(string file) => BuildFile.Read(File.ReadAllText(Path.Combine(Folder, file)));

    private static string[] Words(string file, string field) => [.. Expected.Single(e => (string)e!["file"]! == file)![field]?.AsArray().Select(p => (string)p!) ?? []];

    [Fact]
    public void There_are_thirty_of_all_kinds()
    {
        Assert.Equal(30, Expected.Count);
        Assert.Equal(Directory.GetFiles(Folder, "*.json").Select(Path.GetFileName).Where(f => f != "expected.json").Order(StringComparer.Ordinal), Files.Select(f => f.Data).Order(StringComparer.Ordinal));
        Assert.All(Expected.SelectMany(e => e!["findings"]!.AsArray()), f => Assert.NotEmpty((string)f!["why"]!));
    }
}
