using System.Text;

namespace Lugwork.PublishedTables.Coverage;

/// <summary>One committed file of facts: a header, then a row a line; the first column is the row's id.</summary>
internal sealed class FactFile
{
    private FactFile(string name, string[] columns, List<string[]> rows)
    {
        Name = name;
        Columns = columns;
        Rows = rows;
    }

    public static string Folder { get; } = Path.Combine(Root(), "tests", "Lugwork.PublishedTables", "facts");

    public static string Page { get; } = Path.Combine(Root(), "tests", "Lugwork.PublishedTables", "coverage.md");

    /// <summary>Every file, by name.</summary>
    public static IReadOnlyList<FactFile> All { get; } =
        [.. Directory.GetFiles(Folder, "*.csv").Order(StringComparer.Ordinal).Select(p => Read(Path.GetFileName(p), File.ReadAllText(p)))];

    public string Name { get; }

    public string[] Columns { get; }

    public List<string[]> Rows { get; }

    public IEnumerable<string> Ids => Rows.Select(r => r[0]);

    /// <summary>A cell; empty where the file has no such column.</summary>
    public string Cell(string[] row, string column) => Array.IndexOf(Columns, column) is var at && at < 0 ? "" : row[at];

    public static FactFile Read(string name, string text)
    {
        List<string[]> rows = [.. Records(text)];
        foreach (string[] row in rows)
        {
            Assert.True(row.Length == rows[0].Length, $"{name}: {rows[0].Length} cells a row, not {row.Length}: {string.Join(',', row)}");
        }

        return new(name, rows[0], rows[1..]);
    }

    private static IEnumerable<string[]> Records(string text)
    {
        List<string> cells = [];
        StringBuilder cell = new();
        bool quoted = false;
        foreach (char c in text)
        {
            if (c == '"')
            {
                // A doubled quote inside a quoted cell is one quote.
                if (!quoted && cell.Length > 0)
                {
                    cell.Append('"');
                }

                quoted = !quoted;
            }
            else if (!quoted && c is ',' or '\n')
            {
                cells.Add(cell.ToString());
                cell.Clear();
                if (c == '\n')
                {
                    yield return [.. cells];
                    cells.Clear();
                }
            }
            else
            {
                cell.Append(c);
            }
        }

        Assert.True(cell.Length == 0 && cells.Count == 0, "a file of facts ends with a line end");
    }

    private static string Root()
    {
        string? at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "Lugwork.slnx")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at ?? throw new InvalidOperationException("not inside the repository");
    }
}
