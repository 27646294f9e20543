using System.Globalization;
using System.Text;
using Lugwork.Tests.Architecture;

namespace Lugwork.Tests.Docs;

/// <summary>joints.md: every joint with its slots, what is asked, what it says when it does not fit, and its sources.</summary>
internal static class JointsPage
{
    private const int MostReasons = 3;

    public static string Write()
    {
        StringBuilder page = new();
        page.Append("# Which joints does it judge?\n\n");
        page.Append(CultureInfo.InvariantCulture, $"Made from the joint table. {JointTable.All.Length} joints, {JointTable.All.Count(j => j.IsSystemCheck)} of them over parts in three slots or more. Ids are permanent. How each figure is measured, and which bought part bridges a gap, stands in [standards.md](standards.md); the sources in [sources.md](sources.md).\n\n");
        page.Append(CultureInfo.InvariantCulture, $"A name in slanted letters stands for the figure of that part. That a side has none of it is refused everywhere, and said only where nothing else is refused. Of the sentences by which a joint refuses, at most {MostReasons} are shown, the worst first.\n");
        foreach (Joint joint in JointTable.All)
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {joint.Name}\n\n`{joint.Id}`, between {string.Join(" and ", joint.Slots.Select(s => s.Name))}{(joint.IsOnlyWhereLooked ? "; only where one of its findings is stated" : "")}.\n\n");
            page.Append(CultureInfo.InvariantCulture, $"- Asked: {string.Join("; ", joint.Inputs.Select(i => i.Called).Distinct())}.\n");
            (Verdict verdict, string sentence)[] refusals = Refusals(joint);
            foreach ((Verdict verdict, string sentence) in refusals.Take(MostReasons))
            {
                page.Append(CultureInfo.InvariantCulture, $"- {char.ToUpperInvariant(Verdicts.InWords(verdict)[0])}{Verdicts.InWords(verdict)[1..]}: {sentence}\n");
            }

            page.Append(CultureInfo.InvariantCulture, $"- Sources: {string.Join(", ", SourcesOf(joint).Select(s => s.Id))}.\n");
        }

        return page.ToString();
    }

    /// <summary>The sentences of the worst verdicts that the joint comes to, worst first.</summary>
    internal static (Verdict Verdict, string Sentence)[] Refusals(Joint joint)
    {
        var reached = HouseTests.Reached(joint);
        (Verdict Verdict, string Sentence)[] said =
        [
            .. reached.Where(r => r.Outcome.Reason != Reasons.NothingToMate || reached.All(o => o.Outcome.Verdict < Verdict.DoesNotFit || o.Outcome.Reason == Reasons.NothingToMate))
                .Select(r => (r.Outcome.Verdict, Sentence(r.Outcome.Reason!, joint))).Distinct().OrderByDescending(r => r.Verdict),
        ];
        (Verdict, string)[] refused = [.. said.Where(r => r.Verdict >= Verdict.DoesNotFit)];
        return refused.Length > 0 ? refused : [.. said.Where(r => r.Verdict == Verdict.NeedsMeasuring)];
    }

    internal static Source[] SourcesOf(Joint joint) => [.. joint.Sources.Concat(joint.Relation.RestsOn).Distinct().OrderByDescending(s => s.Strength).ThenBy(s => s.Id, StringComparer.Ordinal)];

    private static string Sentence(Reason reason, Joint joint)
    {
        string[] names = [.. joint.Inputs.Select(i => $"*{i.Called}*")];
        string template = MarkdownText.Plain(reason.Template).Replace("\\[bridge\\]", "*the part to buy*", StringComparison.Ordinal).Replace("\\[sum\\]", "*the sum*", StringComparison.Ordinal).Replace("\\[over\\]", "*the difference*", StringComparison.Ordinal);
        string told = string.Format(CultureInfo.InvariantCulture, template, names);
        int first = told[0] == '*' ? 1 : 0;
        return told[..first] + char.ToUpperInvariant(told[first]) + told[(first + 1)..];
    }
}
