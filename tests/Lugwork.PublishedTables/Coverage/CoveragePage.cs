namespace Lugwork.PublishedTables.Coverage;

/// <summary>A line of coverage.md: the rows it speaks of, where they are, remarks.</summary>
internal sealed record CoverageLine(string File, string From, string To, string Where, string Remarks)
{
    private const string NotTaken = "not taken: ";

    public string? Reason => Where.StartsWith(NotTaken, StringComparison.Ordinal) ? Where[NotTaken.Length..] : null;

    /// <summary>What is named on the line; nothing where the rows are not taken.</summary>
    public string[] Named => Reason is null ? Where.Split("; ", StringSplitOptions.TrimEntries) : [];

    /// <summary>The sources that confirm a row from memory.</summary>
    public string[] Confirmed => [.. Remark("confirmed ").SelectMany(r => r.Split(", "))];

    /// <summary>The columns that are admitted to differ.</summary>
    public string[] Differs => [.. Remark("differs ").Select(r => r.Split(':')[0])];

    private IEnumerable<string> Remark(string word) =>
        Remarks.Split("; ").Where(r => r.StartsWith(word, StringComparison.Ordinal)).Select(r => r[word.Length..]);

    public override string ToString() => From == To ? $"{File} | {From}" : $"{File} | {From} .. {To}";
}

/// <summary>coverage.md, read once.</summary>
internal static class CoveragePage
{
    private const string LastHeading = "Values without a row in the tables, and why";

    private static readonly (List<CoverageLine> Lines, List<(string Values, string Why)> Without) Read = Parse(File.ReadAllLines(FactFile.Page));

    public static IReadOnlyList<CoverageLine> Lines => Read.Lines;

    /// <summary>Values that no row names, with the reason.</summary>
    public static IReadOnlyList<(string Values, string Why)> Without => Read.Without;

    /// <summary>The rows of a file that a line speaks of; none where an end of it is no row.</summary>
    public static string[] RowsOf(CoverageLine line, FactFile file)
    {
        List<string> ids = [.. file.Ids.Select(AsWritten)];
        int from = ids.IndexOf(line.From);
        int to = ids.IndexOf(line.To);
        return from < 0 || to < from ? [] : [.. ids[from..(to + 1)]];
    }

    // A pipe would end a cell of the table.
    public static string AsWritten(string id) => id.Replace('|', '/');

    private static (List<CoverageLine> Lines, List<(string Values, string Why)> Without) Parse(string[] text)
    {
        List<CoverageLine> lines = [];
        List<(string, string)> without = [];
        string heading = "";
        foreach (string line in text)
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                heading = line[3..];
            }
            else if (heading.Length > 0 && line.StartsWith("| ", StringComparison.Ordinal) && !line.StartsWith("| row ", StringComparison.Ordinal)
                && !line.StartsWith("| values ", StringComparison.Ordinal) && !line.StartsWith("| ---", StringComparison.Ordinal))
            {
                string[] cells = line.Split('|')[1..^1].Select(c => c.Trim()).ToArray();
                if (heading == LastHeading)
                {
                    without.Add((cells[0], cells[1]));
                }
                else
                {
                    string[] ends = cells[0].Split(" .. ");
                    lines.Add(new(heading, ends[0], ends[^1], cells[1], cells[2]));
                }
            }
        }

        return (lines, without);
    }
}
