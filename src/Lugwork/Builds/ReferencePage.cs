using System.Globalization;
using System.Text;

namespace Lugwork;

/// <summary>The reference page of a joint, as Markdown.</summary>
public static class ReferencePage
{
    /// <summary>Writes the page: what meets, the relation, how to measure, bridges, sources and how much rests on memory. Lines end with a line feed.</summary>
    /// <param name="joint">A joint of <see cref="JointTable.All"/>.</param>
    public static string Of(Joint joint)
    {
        ArgumentNullException.ThrowIfNull(joint);
        StringBuilder page = new();
        Append(page, joint, "#");
        return page.ToString();
    }

    /// <summary>Writes the page under a heading of any level.</summary>
    internal static void Append(StringBuilder page, Joint joint, string heading)
    {
        page.Append(CultureInfo.InvariantCulture, $"{heading} {joint.Name}\n\nId `{joint.Id}`. Rule: {joint.RelationInWords}.{(joint.IsOnlyWhereLooked ? " Judged only where one of its findings is stated." : "")}\n");
        page.Head("of the", "what", "measure");
        foreach (JointInput input in joint.Inputs)
        {
            page.Row(MarkdownText.Plain(input.Slot.Name), MarkdownText.Plain(input.Called), MarkdownText.Plain(input.Measure));
        }

        if (!joint.Relation.Bridges.IsEmpty)
        {
            page.Head("bridge", "result", "sources");
            foreach (Bridge bridge in joint.Relation.Bridges)
            {
                page.Row($"{MarkdownText.Plain(bridge.What)} ({MarkdownText.Code(bridge.Id)})", Verdicts.InWords(bridge.Result), MarkdownText.Plain(string.Join("; ", bridge.Sources)));
            }
        }

        Source[] sources = [.. joint.Sources.Concat(joint.Relation.RestsOn).Concat(joint.Relation.Bridges.SelectMany(b => b.Sources)).Distinct().OrderByDescending(s => s.Strength).ThenBy(s => s.Id, StringComparer.Ordinal)];
        page.Append("\nSources, strongest first:\n\n");
        foreach (Source source in sources)
        {
            page.Append(CultureInfo.InvariantCulture, $"- {MarkdownText.Plain(source.ToString())} ({source.Kind}, {source.Confidence} confidence)\n");
        }

        int weak = sources.Count(s => s.IsUnpublished);
        page.Append(CultureInfo.InvariantCulture, $"\n{weak} of {sources.Length} are memory or common practice.\n");
    }
}
