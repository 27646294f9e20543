using Lugwork.Workshop;

namespace Lugwork.Tests.Docs;

/// <summary>The made pages are fresh and whole.</summary>
public sealed class ReferencePagesTests
{
    private static readonly string Joints = JointsPage.Write();

    [Fact]
    public void The_page_of_joints_is_fresh() => DocPage.Hold("src/Lugwork/docs/joints.md", Joints);

    [Fact]
    public void The_page_of_sums_is_fresh() => DocPage.Hold("src/Lugwork/docs/sums.md", SumsPage.Write());

    [Fact]
    public void The_page_of_sources_is_fresh() => DocPage.Hold("src/Lugwork/docs/sources.md", SourcesPage.Write());

    [Fact]
    public void The_page_of_open_points_is_fresh() => DocPage.Hold("src/Lugwork/docs/what-we-do-not-know.md", OpenPointsPage.Write());

    [Fact]
    public void Every_joint_says_what_it_asks_when_it_refuses_and_on_what_it_rests()
    {
        foreach (Joint joint in JointTable.All)
        {
            string block = Joints[Joints.IndexOf($"\n`{joint.Id}`, between", StringComparison.Ordinal)..];
            block = block[..(block.IndexOf("\n## ", StringComparison.Ordinal) is var end and > 0 ? end : block.Length)];
            Assert.All(joint.Inputs, i => Assert.Contains(i.Called, block, StringComparison.Ordinal));
            Assert.All(joint.Sources, s => Assert.Contains(s.Id, block, StringComparison.Ordinal));
            Assert.True(block.Contains("\n- Does not fit: ", StringComparison.Ordinal) || block.Contains("\n- Unsafe: ", StringComparison.Ordinal) || block.Contains("\n- Needs measuring: ", StringComparison.Ordinal), $"{joint} never refuses and never asks");
        }
    }

    [Fact]
    public void Every_function_of_a_sum_is_told()
    {
        string page = SumsPage.Write();
        Assert.DoesNotContain("`: \n", page, StringComparison.Ordinal);
        Assert.All(SumsPage.Types, t => Assert.Contains($"\n### {t.Name}\n", page, StringComparison.Ordinal));
        Assert.True(SumsPage.Functions > 100, $"{SumsPage.Functions}");
    }

    [Fact]
    public void Every_source_has_one_row_and_each_count_is_of_its_rows()
    {
        string[] lines = SourcesPage.Write().Split('\n');
        foreach (Source source in Sources.All)
        {
            Assert.Single(lines, l => l.StartsWith($"| {source.Id} |", StringComparison.Ordinal));
        }

        Assert.Equal(StandardTables.All.Concat(StandardTables.Nominal).Sum(t => t.Rows.Length), Column(lines, 5));
        Assert.Equal(TorqueTable.All.Sum(t => t.Ranges.Length), Column(lines, 9));
    }

    private static int Column(string[] lines, int column) =>
        Sources.All.Sum(s => int.TryParse(lines.Single(l => l.StartsWith($"| {s.Id} |", StringComparison.Ordinal)).Replace("\\|", "/", StringComparison.Ordinal).Split('|')[column].Trim(), out int count) ? count : 0);

    [Fact]
    public void What_rests_on_memory_is_named_row_by_row()
    {
        string page = OpenPointsPage.Write();
        Assert.All(StandardTables.All.Concat(StandardTables.Nominal).SelectMany(t => t.Rows).Where(r => r.Source.Kind == SourceKind.Memory), r => Assert.Contains($"`{r.Key}`", page, StringComparison.Ordinal));
        Assert.All(TorqueTable.All.Where(t => t.Agreement == TorqueAgreement.Apart), t => Assert.Contains($"- `{t.Id}`, ", page, StringComparison.Ordinal));
        Assert.All(new[] { "dropper", "U-brake", "centre-pull", "pads", "hoses", "angle headsets" }, w => Assert.Contains(w, page, StringComparison.Ordinal));
    }
}
