using System.Text;
using Lugwork.Tests.Architecture;

namespace Lugwork.Tests.Builds;

/// <summary>The reference page is made from the tables, whole and fresh.</summary>
public sealed class StandardsPageTests
{
    private static readonly string Committed = Path.Combine(SchemaBench.Root, "src", "Lugwork", "docs", "standards.md");

    private static readonly string Page = StandardsPage.Write();

    private static readonly string[] Lines = Page.Split('\n');

    [Fact]
    public void The_committed_page_is_the_one_that_is_written()
    {
        byte[] made = Encoding.UTF8.GetBytes(Page);
        byte[] committed = File.Exists(Committed) ? File.ReadAllBytes(Committed) : [];
        if (made.AsSpan().SequenceEqual(committed))
        {
            return;
        }

        string renewed = Path.Combine(AppContext.BaseDirectory, "standards.md");
        File.WriteAllBytes(renewed, made);
        Assert.Fail($"The reference page is stale. Look at the change, then copy {renewed} over {Committed}.");
    }

    [Fact]
    public void Every_closed_set_is_on_the_page_under_its_own_name()
    {
        (string?, string)[] sets = [.. Values.ClosedTypes.Select(t => (t.Namespace, t.Name))];
        (string?, string)[] listed = [.. StandardTables.All.Select(t => ((string?)t.Home, t.Name))];
        Assert.True(!sets.Except(listed).Any(), "StandardTables lacks " + string.Join(' ', sets.Except(listed).Select(s => $"Of<{s.Item2}>(\"{s.Item1}\", nameof({s.Item2})),")));
        Assert.Equal(sets.Order(), listed.Order());
        Assert.Equal(listed.Length, StandardTables.All.Select(t => t.Called).Distinct().Count());
    }

    [Fact]
    public void Every_open_size_with_nominal_ones_is_on_the_page()
    {
        IEnumerable<string> open = Values.InterfaceTypes.Where(t => t.IsValueType && ((System.Collections.ICollection)t.GetProperty("All")!.GetValue(null)!).Count > 0).Select(t => t.FullName!);
        Assert.Equal(open.Order(), StandardTables.Nominal.Select(t => $"{t.Home}.{t.Name}").Order());
    }

    [Fact]
    public void Every_value_has_one_row_with_its_code_key_name_spellings_and_source()
    {
        int rows = 0;
        foreach (StandardTable table in StandardTables.All.AddRange(StandardTables.Nominal))
        {
            int from = Array.FindIndex(Lines, l => l.StartsWith($"`{table.Home}.{table.Name}`", StringComparison.Ordinal));
            Assert.True(from > 0, table.Name);
            string[] there = [.. Lines.Skip(from + 4).TakeWhile(l => l.StartsWith('|'))];
            Assert.Equal(table.Rows.Length, there.Length);
            foreach ((StandardRow row, string line) in table.Rows.Zip(there))
            {
                string[] cells = Cells(line);
                Assert.Equal([$"{row.Code}", $"`{row.Key}`", row.TradeName, string.Join(", ", row.Names.Select(n => $"`{n}`"))], cells[..4].Select(Unescaped));
                Assert.StartsWith(row.Source.Id + " (", cells[4], StringComparison.Ordinal);
                Assert.EndsWith($", {row.Source.Confidence}".ToLowerInvariant() + ")", cells[4], StringComparison.Ordinal);
                rows++;
            }
        }

        Assert.True(rows > 500, $"{rows} rows");
        Assert.Contains($"with {StandardTables.All.Sum(t => t.Rows.Length)} values", Page, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_joint_is_there_as_on_its_own_page()
    {
        foreach (Joint joint in JointTable.All)
        {
            string own = ReferencePage.Of(joint);
            Assert.StartsWith($"# {joint.Name}\n", own, StringComparison.Ordinal);
            Assert.Contains("\n##" + own, Page, StringComparison.Ordinal);
            Assert.All(joint.Relation.Bridges, b => Assert.Contains($"(`{b.Id}`)", own, StringComparison.Ordinal));
            Assert.All(joint.Inputs, i => Assert.Contains(i.Called, own, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void What_rests_on_memory_or_practice_is_listed_and_counted()
    {
        StandardTable[] tables = [.. StandardTables.All, .. StandardTables.Nominal];
        foreach ((SourceKind kind, string words) in new[] { (SourceKind.Memory, "memory"), (SourceKind.CommonPractice, "common practice") })
        {
            int from = Array.FindIndex(Lines, l => l.StartsWith($"### From {words}: ", StringComparison.Ordinal));
            string[] listed = [.. Lines.Skip(from + 2).TakeWhile(l => l.StartsWith("- ", StringComparison.Ordinal))];
            int values = 0;
            foreach (StandardTable table in tables)
            {
                string[] keys = [.. table.Rows.Where(r => r.Source.Kind == kind).Select(r => $"`{r.Key}`")];
                string line = $"- {table.Home}.{table.Name} ({keys.Length}): {string.Join(", ", keys)}";
                Assert.Equal(keys.Length > 0, listed.Contains(line));
                values += keys.Length;
            }

            Assert.StartsWith($"### From {words}: {values} value", Lines[from], StringComparison.Ordinal);
            string[] bridges = [.. JointTable.All.SelectMany(j => j.Relation.Bridges).Where(b => b.Sources.All(s => s.Kind is SourceKind.Memory or SourceKind.CommonPractice) && b.Sources.Any(s => s.Kind == kind) && !b.Sources.Any(s => s.Kind > kind)).Select(b => b.Id).Distinct()];
            Assert.Equal(bridges.Length, listed.Where(l => l.StartsWith("- Bridges (", StringComparison.Ordinal)).Sum(l => l.Split(", ").Length));
            Assert.All(bridges, b => Assert.Contains($"`{b}`", listed[^1], StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Every_source_of_a_row_is_cited()
    {
        int from = Array.IndexOf(Lines, "## Sources of the tables");
        string[] cited = [.. Lines.Skip(from + 4).TakeWhile(l => l.StartsWith('|')).Select(l => Cells(l)[0])];
        Assert.Equal(StandardTables.All.AddRange(StandardTables.Nominal).SelectMany(t => t.Rows).Select(r => r.Source.Id).Distinct().Order(StringComparer.Ordinal), cited);
    }

    [Fact]
    public void Every_table_is_even_and_no_bar_breaks_a_cell()
    {
        int columns = 0;
        foreach (string line in Lines)
        {
            int here = line.StartsWith('|') ? Cells(line).Length : 0;
            Assert.True(columns == 0 || here == 0 || here == columns, line);
            columns = here;
        }

        Assert.DoesNotContain('\r', Page);
        Assert.EndsWith("|\n", Page, StringComparison.Ordinal);
        Assert.Equal("\\|\\*\\`\\\\\\[\\]&lt; ", MarkdownText.Plain("|*`\\[]<\n"));
        Assert.Equal("`a\\|b`", MarkdownText.Code("a|b"));
        Assert.Equal("| a | b \\| c | | `d\\|e` |\n", MarkdownText.Row(new(), "a", MarkdownText.Plain("b | c"), "", MarkdownText.Code("d|e")).ToString());
    }

    /// <summary>The cells of a row, cut at bars that are not escaped.</summary>
    private static string[] Cells(string line)
    {
        List<string> cells = [];
        int start = 1;
        for (int i = 1; i < line.Length; i++)
        {
            if (line[i] == '|' && line[i - 1] != '\\')
            {
                cells.Add(line[start..i].Trim());
                start = i + 1;
            }
        }

        Assert.Equal(line.Length, start);
        return [.. cells];
    }

    private static string Unescaped(string cell) => cell.Replace("&lt;", "<", StringComparison.Ordinal).Replace("\\", "", StringComparison.Ordinal);
}
