using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Lugwork;

/// <summary>The reference page of the whole library, as Markdown: every table with its sources, every joint, and openly what rests on memory or common practice alone.</summary>
public static class StandardsPage
{
    /// <summary>Writes the page from the tables, anew each time it is called. Lines end with a line feed.</summary>
    public static string Write()
    {
        ImmutableArray<StandardTable> closed = StandardTables.All;
        ImmutableArray<StandardTable> nominal = StandardTables.Nominal;
        StringBuilder page = new();
        page.Append("# Standards and joints\n\n");
        page.Append("Made from the tables of the library; the text of `StandardsPage.Write()`. Keys and codes are permanent. Each row names its source by id; the sources stand at the end.\n\n");
        page.Append(CultureInfo.InvariantCulture, $"{closed.Length} closed sets with {closed.Sum(t => t.Rows.Length)} values, {nominal.Length} open sizes with {nominal.Sum(t => t.Rows.Length)} nominal ones, {JointTable.All.Length} joints.\n");
        page.Append("\n## Closed sets\n");
        Tables(page, closed);
        page.Append("\n## Open sizes\n\nOther sizes are read too; the code is the size in nanometres.\n");
        Tables(page, nominal);
        page.Append("\n## Joints\n");
        foreach (Joint joint in JointTable.All)
        {
            page.Append('\n');
            ReferencePage.Append(page, joint, "###");
        }

        Unpublished(page, [.. closed, .. nominal]);
        Cited(page, [.. closed, .. nominal]);
        return page.ToString();
    }

    private static void Tables(StringBuilder page, ImmutableArray<StandardTable> tables)
    {
        foreach (StandardTable table in tables)
        {
            page.Append(CultureInfo.InvariantCulture, $"\n### {char.ToUpperInvariant(table.Called[0])}{table.Called[1..]}\n\n`{table.Home}.{table.Name}`, {Count(table.Rows.Length, "value")}.\n");
            page.Head("code", "key", "trade name", "other spellings", "source");
            foreach (StandardRow row in table.Rows)
            {
                page.Row(
                    row.Code.ToString(CultureInfo.InvariantCulture),
                    MarkdownText.Code(row.Key),
                    MarkdownText.Plain(row.TradeName),
                    string.Join(", ", row.Names.Select(MarkdownText.Code)),
                    $"{row.Source.Id} ({InWords(row.Source)})");
            }
        }
    }

    /// <summary>Rows that no page supports, table by table, then bridges of which no source is a page.</summary>
    private static void Unpublished(StringBuilder page, ImmutableArray<StandardTable> tables)
    {
        page.Append("\n## What no published page supports\n\nThis list is open on purpose. A row from memory alone never makes a verdict milder where someone can be hurt.\n");
        ImmutableArray<Bridge> bridges = [.. JointTable.All.SelectMany(j => j.Relation.Bridges).DistinctBy(b => b.Id)];
        foreach (SourceKind kind in new[] { SourceKind.Memory, SourceKind.CommonPractice })
        {
            (string Where, string[] What)[] rows = [.. tables.Select(t => ($"{t.Home}.{t.Name}", (string[])[.. t.Rows.Where(r => r.Source.Kind == kind).Select(r => r.Key)])).Where(t => t.Item2.Length > 0)];
            string[] bridged = [.. bridges.Where(b => b.Sources.All(s => s.IsUnpublished) && b.Sources.Max(s => s.Kind) == kind).Select(b => b.Id)];
            page.Append(CultureInfo.InvariantCulture, $"\n### From {SourceKinds.InWords(kind)}: {Count(rows.Sum(r => r.What.Length), "value")} of {tables.Sum(t => t.Rows.Length)}, {Count(bridged.Length, "bridge")} of {bridges.Length}\n\n");
            foreach ((string where, string[] what) in bridged.Length > 0 ? [.. rows, ("Bridges", bridged)] : rows)
            {
                page.Append(CultureInfo.InvariantCulture, $"- {where} ({what.Length}): {string.Join(", ", what.Select(w => $"`{w}`"))}\n");
            }

            if (rows.Length == 0 && bridged.Length == 0)
            {
                page.Append("None.\n");
            }
        }
    }

    private static void Cited(StringBuilder page, ImmutableArray<StandardTable> tables)
    {
        page.Append("\n## Sources of the tables\n");
        page.Head("id", "title", "kind and confidence", "found at");
        foreach (Source source in tables.SelectMany(t => t.Rows).Select(r => r.Source).Distinct().OrderBy(s => s.Id, StringComparer.Ordinal))
        {
            page.Row(source.Id, MarkdownText.Plain(source.ToString()), InWords(source), MarkdownText.Plain(source.Address));
        }
    }

    private static string InWords(Source source) => $"{SourceKinds.InWords(source.Kind)}, {source.Confidence.ToString().ToLowerInvariant()}";

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : string.Create(CultureInfo.InvariantCulture, $"{count} {what}s");
}
