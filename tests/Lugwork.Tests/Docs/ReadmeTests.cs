using System.Globalization;
using System.Text;
using Answers;
using Lugwork.Drawing;
using Lugwork.Workshop;

namespace Lugwork.Tests.Docs;

/// <summary>The first page: its example, its picture, its answers and its counts are those of the library.</summary>
[Collection(nameof(AnswerPagesTests))]
public sealed class ReadmeTests
{
    private const string Begin = "<!-- counts: made by ReadmeTests -->\n";
    private const string End = "<!-- end of counts -->\n";

    private static readonly string Page = File.ReadAllText(Path.Combine(DocPage.Root, "README.md"));

    [Fact]
    public void The_ten_lines_are_the_script_that_the_gate_runs_and_what_runs_here()
    {
        string script = Snippets.Code("samples/scripts/frame-up.cs");
        Assert.Contains($"```csharp\n{script}```\n", Page, StringComparison.Ordinal);
        Assert.Equal(Snippets.Code("samples/Answers/TenLines.cs#ten-lines"), script[(script.IndexOf("\n\n", StringComparison.Ordinal) + 2)..]);
    }

    /// <summary>Of each text block every line is one of the answer, in order, whole or up to three dots; three dots alone leave lines out.</summary>
    [Fact]
    public void The_answers_shown_are_those_that_are_printed()
    {
        string[] shown = [.. Snippets.Of(Page).Where(b => b.Language == "text").Select(b => b.Body)];
        string main = Build(Path.Combine("samples", "FrameUp", "builds", "tourer-from-commuter.json")).Check().ToString();
        Assert.Equal(2, shown.Length);
        Excerpt(shown[0], main);
        Excerpt(shown[1], Snippets.Printed("samples/Answers/TenLines.cs#ten-lines"));
    }

    [Fact]
    public void The_picture_is_the_one_that_is_drawn()
    {
        DocPage.Hold("src/Lugwork/docs/seatpost.svg", Svg(PicturesOfBuilds.InSeatTube));
        Assert.Contains("](src/Lugwork/docs/seatpost.svg)", Page, StringComparison.Ordinal);
        Assert.Contains($"![{PicturesOfBuilds.InSeatTube.Title}", Page, StringComparison.Ordinal);
        Assert.Contains($"![{PicturesOfBuilds.InSeatTube.Title}", File.ReadAllText(Path.Combine(DocPage.Folder, "draw-it.md")), StringComparison.Ordinal);
    }

    private static string Svg(LineDrawing drawing) => drawing.ToSvg().ReplaceLineEndings("\n").TrimEnd('\n') + "\n";

    [Fact]
    public void The_counts_are_those_of_the_tables()
    {
        int from = Page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = Page.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from > Begin.Length && to >= from, "the README has no place for the counts");
        DocPage.Hold("README.md", Page[..from] + Counts() + Page[to..]);
    }

    [Fact]
    public void The_first_screen_is_a_screen()
    {
        string[] top = Page[..Page.IndexOf("\n## What it judges", StringComparison.Ordinal)].Split('\n');
        Assert.True(top.Length <= 60, $"{top.Length} lines come before what it judges");
        Assert.All(top, l => Assert.True(l.Length <= 700, l));
    }

    private static string Counts()
    {
        StringBuilder table = new();
        int published = SourcesPage.OfValues.Count(s => !s.IsUnpublished);
        table.Head("what", "how many", "page");
        Line("standards", $"{StandardTables.All.Length} closed sets with {SourcesPage.OfValues.Length - StandardTables.Nominal.Sum(t => t.Rows.Length)} values, {StandardTables.Nominal.Length} open sizes", "standards.md");
        Line("joints", $"{JointTable.All.Length}, {JointTable.All.Count(j => j.IsSystemCheck)} of them over parts in three slots or more", "joints.md");
        Line("bridges", $"{SourcesPage.Bridges.Length} bought parts or jobs that make an unlike pair mate", "standards.md");
        Line("sums", $"{SumsPage.Types.Length}, with {SumsPage.Functions} functions", "sums.md");
        Line("torques", $"{TorqueTable.All.Length} fasteners, {SourcesPage.OfTorques.Length} figures", "sources.md");
        Line("sources", $"{Sources.All.Length}; {100.0 * published / SourcesPage.OfValues.Length:0} % of the values rest on a page that was read", "sources.md");
        return table.ToString().TrimStart('\n');

        void Line(string what, string howMany, string page) => table.Row(what, howMany, string.Create(CultureInfo.InvariantCulture, $"[{page}](src/Lugwork/docs/{page})"));
    }

    private static void Excerpt(string shown, string printed)
    {
        string[] lines = printed.ReplaceLineEndings("\n").Split('\n');
        int at = 0;
        foreach (string line in shown.TrimEnd('\n').Split('\n').Where(l => l != "..."))
        {
            int found = Array.FindIndex(lines, at, l => line.EndsWith(" ...", StringComparison.Ordinal) ? l.StartsWith(line[..^4], StringComparison.Ordinal) : l == line);
            Assert.True(found >= 0, $"the README shows a line that is not printed there:\n{line}\nprinted:\n{printed}");
            at = found + 1;
        }
    }

    private static Build Build(string path) => BuildFile.Read(File.ReadAllText(Path.Combine(DocPage.Root, path)));
}
