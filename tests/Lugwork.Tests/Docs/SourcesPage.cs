using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Lugwork.Workshop;

namespace Lugwork.Tests.Docs;

/// <summary>sources.md: every citation with how many rows rest on it, by kind.</summary>
internal static class SourcesPage
{
    private static readonly SourceKind[] Kinds = [.. Enum.GetValues<SourceKind>().OrderDescending()];

    /// <summary>Rows of closed sets and listed sizes.</summary>
    public static Source[] OfValues { get; } = [.. StandardTables.All.Concat(StandardTables.Nominal).SelectMany(t => t.Rows).Select(r => r.Source)];

    public static Joint[] Joints { get; } = [.. JointTable.All];

    public static Bridge[] Bridges { get; } = [.. JointTable.All.SelectMany(j => j.Relation.Bridges).DistinctBy(b => b.Id)];

    public static Source[][] OfSums { get; } = [.. SumsPage.Types.Select(SumsPage.SourcesOf)];

    public static Source[] OfTorques { get; } = [.. TorqueTable.All.SelectMany(t => t.Ranges).Select(r => r.Source)];

    /// <summary>Rows of the other public tables: those that list themselves as All and name their source.</summary>
    public static Source[] OfFigures { get; } =
    [
        .. typeof(Build).Assembly.GetExportedTypes()
            .Where(t => !t.ContainsGenericParameters && t != typeof(Sources) && t != typeof(JointTable) && t != typeof(TorqueTable) && !StandardTables.All.Concat(StandardTables.Nominal).Any(s => $"{s.Home}.{s.Name}" == t.FullName))
            .OrderBy(t => t.FullName, StringComparer.Ordinal)
            .Select(t => t.GetProperty("All", BindingFlags.Public | BindingFlags.Static))
            .Where(p => p is not null && typeof(IEnumerable).IsAssignableFrom(p.PropertyType))
            .SelectMany(p => ((IEnumerable)p!.GetValue(null)!).Cast<object>())
            .Select(row => row.GetType().GetProperty("Source")?.GetValue(row)).OfType<Source>(),
    ];

    public static string Write()
    {
        StringBuilder page = new();
        page.Append("# Where does it come from?\n\n");
        page.Append(CultureInfo.InvariantCulture, $"Made from the tables. {Sources.All.Length} sources. A page was mostly read as a stored opening, so a figure deeper in it may have been missed. \"Memory\" and \"common practice\" say that there is no page; a row of memory alone never makes a verdict milder where someone can be hurt. What is open stands in [what-we-do-not-know.md](what-we-do-not-know.md), how to move a row up in [challenge-a-value.md](challenge-a-value.md).\n");
        page.Append("\n## How many rows rest on what\n\nA joint, bridge or sum counts by the strongest of its sources.\n");
        page.Head("kind", "sources", "values", "joints", "bridges", "sums", "torques", "other figures");
        foreach (SourceKind kind in Kinds)
        {
            page.Row(
                SourceKinds.InWords(kind),
                Text(Sources.All.Count(s => s.Kind == kind)),
                Share(OfValues, kind),
                Share([.. Joints.Select(j => JointsPage.SourcesOf(j)[0])], kind),
                Share([.. Bridges.Select(b => b.Sources.MaxBy(s => s.Strength)!)], kind),
                Share([.. OfSums.Where(s => s.Length > 0).Select(s => s[0])], kind),
                Share(OfTorques, kind),
                Share(OfFigures, kind));
        }

        page.Row("in all", Text(Sources.All.Length), Text(OfValues.Length), Text(Joints.Length), Text(Bridges.Length), Text(OfSums.Count(s => s.Length > 0)), Text(OfTorques.Length), Text(OfFigures.Length));
        foreach (SourceKind kind in Kinds)
        {
            Source[] here = [.. Sources.All.Where(s => s.Kind == kind).OrderBy(s => s.Id, StringComparer.Ordinal)];
            page.Append(CultureInfo.InvariantCulture, $"\n## {char.ToUpperInvariant(SourceKinds.InWords(kind)[0])}{SourceKinds.InWords(kind)[1..]}: {here.Length}\n");
            page.Head("id", "citation", "confidence", "found at", "values", "joints", "bridges", "sums", "torques", "other figures");
            foreach (Source source in here)
            {
                page.Row(
                    source.Id, MarkdownText.Plain(source.ToString()), source.Confidence.ToString().ToLowerInvariant(), MarkdownText.Plain(source.Address),
                    Text(OfValues.Count(s => s == source)), Text(Joints.Count(j => JointsPage.SourcesOf(j).Contains(source))), Text(Bridges.Count(b => b.Sources.Contains(source))),
                    Text(OfSums.Count(s => s.Contains(source))), Text(OfTorques.Count(s => s == source)), Text(OfFigures.Count(s => s == source)));
            }
        }

        page.Append("\n\"Other figures\" are rows of tables such as measuring rims, rim widths or pressures. A source with no count is named by a reason, a caution or a step of the work plan.\n");
        return page.ToString();
    }

    private static string Share(Source[] rows, SourceKind kind)
    {
        int count = rows.Count(s => s.Kind == kind);
        return count == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{count} ({100.0 * count / rows.Length:0} %)");
    }

    private static string Text(int count) => count == 0 ? "" : count.ToString(CultureInfo.InvariantCulture);
}
