using System.Globalization;
using System.Text;

namespace Lugwork;

/// <summary>The reference page of a joint, as Markdown.</summary>
public static class ReferencePage
{
    /// <summary>Writes the page: what meets, the relation, how to measure, bridges, sources and how much rests on memory.</summary>
    /// <param name="joint">A joint of <see cref="JointTable.All"/>.</param>
    public static string Of(Joint joint)
    {
        ArgumentNullException.ThrowIfNull(joint);
        StringBuilder page = new();
        page.Append("# ").AppendLine(joint.Name);
        page.AppendLine().Append("Id `").Append(joint.Id).Append("`. Relation: ").Append(joint.RelationKind).AppendLine(".");
        page.AppendLine().AppendLine("| of the | what | measure |").AppendLine("| --- | --- | --- |");
        foreach (JointInput input in joint.Inputs)
        {
            page.Append(CultureInfo.InvariantCulture, $"| {input.Slot.Name} | {input.Called} | {input.Measure} |").AppendLine();
        }

        if (!joint.Relation.Bridges.IsEmpty)
        {
            page.AppendLine().AppendLine("| bridge | result | sources |").AppendLine("| --- | --- | --- |");
            foreach (Bridge bridge in joint.Relation.Bridges)
            {
                page.Append(CultureInfo.InvariantCulture, $"| {bridge.What} (`{bridge.Id}`) | {Verdicts.InWords(bridge.Result)} | {string.Join("; ", bridge.Sources)} |").AppendLine();
            }
        }

        Source[] sources = [.. joint.Sources.Concat(joint.Relation.RestsOn).Concat(joint.Relation.Bridges.SelectMany(b => b.Sources)).Distinct().OrderByDescending(s => s.Strength)];
        page.AppendLine().AppendLine("Sources, strongest first:").AppendLine();
        foreach (Source source in sources)
        {
            page.Append(CultureInfo.InvariantCulture, $"- {source} ({source.Kind}, {source.Confidence} confidence)").AppendLine();
        }

        int weak = sources.Count(s => s.Kind is SourceKind.Memory or SourceKind.CommonPractice);
        page.AppendLine().Append(CultureInfo.InvariantCulture, $"{weak} of {sources.Length} are memory or common practice.").AppendLine();
        return page.ToString();
    }
}
