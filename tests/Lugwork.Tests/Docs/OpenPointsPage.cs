using System.Globalization;
using System.Text;
using System.Text.Json;
using Lugwork.Tyres;
using Lugwork.Workshop;

namespace Lugwork.Tests.Docs;

/// <summary>what-we-do-not-know.md: rows of memory, pages that disagree, and the open points that a person wrote down.</summary>
internal static class OpenPointsPage
{
    private static readonly (string What, string Why)[] Open =
    [
        ("How the lever of a dropper pulls its post", "Which end of the cable is clamped, and how much of it is pulled, was read of no post. Lever and post are not judged against each other; only the way of the cable into the frame is."),
        ("Where the bosses of a U-brake stand", "That they stand above the rim has a source; their distance from the axle and from each other has none. The joint asks for the boss family and does not measure it."),
        ("How much cable a centre-pull brake wants", "No figure was found. Lever and centre-pull caliper need measuring."),
        ("Shapes of disc pads", "Pads are named by brake, and no published list was read that says which brakes share one. Pads of disc brakes are not judged."),
        ("The way of hoses and housing", "No chart gives the points of tubes and stays. Lengths are estimated to buy by, never to cut by, and what goes through which hole is not judged."),
        ("Worked examples of angle headsets", "The sum is trigonometry. No page was found that prints one with all its figures, so its tests are arithmetic of our own."),
    ];

    public static string Write()
    {
        StringBuilder page = new();
        page.Append("# What do we not know yet?\n\n");
        page.Append("Made from the tables and the tests, but for the first list. It is open on purpose. Who knows better: [how to challenge a value](challenge-a-value.md).\n");
        page.Append("\n## Open points\n\n");
        foreach ((string what, string why) in Open)
        {
            page.Append(CultureInfo.InvariantCulture, $"- **{what}.** {why}\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"\nEvery report says so too: \"{FitReport.NotYetJudged}\"\n");
        Unpublished(page);
        Torques(page);
        Hookless(page);
        OtherVerdicts(page);
        OtherFigures(page);
        Slips(page);
        return page.ToString();
    }

    private static void Unpublished(StringBuilder page)
    {
        StandardTable[] tables = [.. StandardTables.All, .. StandardTables.Nominal];
        foreach ((SourceKind kind, string heading) in new[] { (SourceKind.Memory, "Rows from memory"), (SourceKind.CommonPractice, "Rows of common practice") })
        {
            (string Where, string[] What)[] rows =
            [
                .. tables.Select(t => (Where: $"{t.Home}.{t.Name}", What: (string[])[.. t.Rows.Where(r => r.Source.Kind == kind).Select(r => r.Key)])),
                ("Bridges", [.. SourcesPage.Bridges.Where(b => b.Sources.All(s => s.IsUnpublished) && b.Sources.Max(s => s.Kind) == kind).Select(b => b.Id)]),
                ("Joints that no page supports", [.. JointTable.All.Where(j => JointsPage.SourcesOf(j) is var s && s.All(x => x.IsUnpublished) && s.Max(x => x.Kind) == kind).Select(j => j.Id)]),
                ("Torques without a printed figure", [.. TorqueTable.All.Where(t => t.IsUnpublished && t.Ranges.Max(r => r.Source.Kind) == kind).Select(t => t.Id)]),
            ];
            page.Append(CultureInfo.InvariantCulture, $"\n## {heading}: {rows.Sum(r => r.What.Length)}\n\n");
            page.Append(kind == SourceKind.Memory ? "No page was read. Alone they never make a verdict milder where someone can be hurt.\n\n" : "The trade does so, and no page was found that says it.\n\n");
            foreach ((string where, string[] what) in rows.Where(r => r.What.Length > 0))
            {
                page.Append(CultureInfo.InvariantCulture, $"- {where} ({what.Length}): {string.Join(", ", what.Select(MarkdownText.Code))}\n");
            }
        }
    }

    private static void Torques(StringBuilder page)
    {
        TorqueFigure[] apart = [.. TorqueTable.All.Where(t => t.Agreement == TorqueAgreement.Apart)];
        page.Append(CultureInfo.InvariantCulture, $"\n## Torques on which pages contradict each other: {apart.Length}\n\nAll are shown at their step of the work plan; the maker's figure rules.\n\n");
        foreach (TorqueFigure figure in apart)
        {
            page.Append(CultureInfo.InvariantCulture, $"- `{figure.Id}`, {MarkdownText.Plain(figure.Fastener)}: {string.Join("; ", figure.Ranges.Select(r => $"{r} ({MarkdownText.Plain(r.Source.ToString())})"))}\n");
        }
    }

    private static void Hookless(StringBuilder page)
    {
        HooklessMinimum[] unsure = [.. HooklessMinimum.All.Where(h => h.Standing < HooklessStanding.Superseded)];
        page.Append(CultureInfo.InvariantCulture, $"\n## Least tyres on hookless rims that nothing is built on: {unsure.Length}\n\n");
        foreach (HooklessMinimum row in unsure)
        {
            page.Append(CultureInfo.InvariantCulture, $"- {row.LeastTyre.Millimeters:0} mm on a rim {row.InnerWidth.Millimeters:0} mm wide inside, {row.Edition.TradeName}: {Standing(row.Standing)} ({MarkdownText.Plain(row.Source.ToString())})\n");
        }
    }

    private static string Standing(HooklessStanding standing) => standing switch
    {
        HooklessStanding.TypeNotStated => "the page does not say whether it covers hookless rims",
        HooklessStanding.Rumour => "hearsay",
        _ => "against others of the same year",
    };

    /// <summary>Published edge cases of which the library's verdict is another, with the reason.</summary>
    private static void OtherVerdicts(StringBuilder page)
    {
        List<string> lines = [];
        foreach (string file in Directory.GetFiles(Path.Combine(DocPage.Root, "tests", "Lugwork.PublishedTables", "Traps"), "*.json").Order(StringComparer.Ordinal))
        {
            using JsonDocument rows = JsonDocument.Parse(File.ReadAllText(file));
            foreach (JsonElement row in rows.RootElement.EnumerateArray().Where(r => r.TryGetProperty("otherwise", out _)))
            {
                JsonElement otherwise = row.GetProperty("otherwise");
                lines.Add($"- {row.GetProperty("id").GetString()}, \"{MarkdownText.Plain(row.GetProperty("says").GetString()!)}\": {MarkdownText.Plain(otherwise.GetProperty("because").GetString()!)}");
            }
        }

        page.Append(CultureInfo.InvariantCulture, $"\n## Published answers that the library does not follow: {lines.Count}\n\nEach with its reason; one that comes out milder is held by a test of its own.\n\n{string.Join('\n', lines)}\n");
    }

    /// <summary>Figures of the library that are not the printed ones, by tests/Lugwork.PublishedTables/coverage.md.</summary>
    private static void OtherFigures(StringBuilder page)
    {
        List<string> lines = [];
        string file = "";
        foreach (string line in File.ReadLines(Path.Combine(DocPage.Root, "tests", "Lugwork.PublishedTables", "coverage.md")))
        {
            file = line.StartsWith("## ", StringComparison.Ordinal) ? line[3..] : file;
            if (line.StartsWith("| ", StringComparison.Ordinal) && line.Split(" | ") is [var row, .., var remarks] && remarks.StartsWith("differs ", StringComparison.Ordinal))
            {
                lines.Add($"- {file}, {row[2..]}: {string.Join("; ", remarks.TrimEnd('|', ' ').Split("; ").Where(r => r.StartsWith("differs ", StringComparison.Ordinal)).Select(r => r["differs ".Length..]))}");
            }
        }

        page.Append(CultureInfo.InvariantCulture, $"\n## Figures that are not the printed ones: {lines.Count}\n\n{string.Join('\n', lines)}\n");
    }

    /// <summary>Printed examples that are wrong: the library must differ from them.</summary>
    private static void Slips(StringBuilder page)
    {
        List<string> lines = [];
        foreach (string file in Directory.GetFiles(Path.Combine(DocPage.Root, "tests", "Lugwork.PublishedTables", "WorkedExamples"), "*.csv").Order(StringComparer.Ordinal))
        {
            string[][] rows = [.. File.ReadLines(file).Select(Cells)];
            foreach (string[] row in rows.Skip(1).Where(r => r[Array.IndexOf(rows[0], "use")] == "slip"))
            {
                string Cell(string name) => MarkdownText.Plain(row[Array.IndexOf(rows[0], name)]);
                lines.Add($"- {Cell("quantity")} ({Cell("inputs")}): printed {Cell("published_value")} {Cell("unit")} ({Cell("source")}); {Cell("note")}");
            }
        }

        page.Append(CultureInfo.InvariantCulture, $"\n## Printed examples that we hold to be wrong: {lines.Count}\n\n{string.Join('\n', lines)}\n");
    }

    /// <summary>The cells of a line of CSV: a quoted one may hold commas and doubled quotes.</summary>
    private static string[] Cells(string line)
    {
        List<string> cells = [];
        StringBuilder cell = new();
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }
        }

        return [.. cells, cell.ToString()];
    }
}
