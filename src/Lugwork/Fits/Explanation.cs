using System.Globalization;
using System.Text;

namespace Lugwork;

/// <summary>The reasoning behind one judged joint, in full.</summary>
internal static class Explanation
{
    public static string Of(Fit fit, IParts parts)
    {
        Joint joint = fit.Joint!;
        Account account = fit.Tell();
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"{joint.Name}: {Verdicts.InWords(fit.Verdict)} ({joint.Id})").AppendLine();
        text.AppendLine("Compared:");
        foreach (JointInput input in joint.Inputs.DistinctBy(i => (i.Slot, i.Called)))
        {
            Part part = parts.At(input.Slot)!;
            string owner = part.Name.Length > 0 ? $"{input.Slot.Name} ({part.Name})" : input.Slot.Name;
            text.Append(CultureInfo.InvariantCulture, $"  {owner}, {input.Called}: {input.ShowKnown(part)}; {Evidence(input.Evidence(part))}").AppendLine();
        }

        text.Append("Rule: ").Append(joint.RelationInWords).AppendLine(".");
        text.Append("Reason: ").Append(account.Sentence).Append(account.Reason is { } reason ? $" ({reason.Id})" : "").AppendLine();
        Listed(text, "From the list of adapters, shims and shop work", account.Bridges.Select(b => $"{b.Id}: {b.What}; {Verdicts.InWords(b.Result)}{Moves(b.Effects)}"));
        Listed(text, "Remedy", account.Remedies.Select(r => r.What));
        Listed(text, "Measure", account.Measurements.Select(m => m.ToString()));
        Listed(text, "Cautions", account.Cautions.Select(c => c.Text));
        Listed(text, "Sources, strongest first", account.Sources.Reverse().Select(Named));
        text.Append(account.Sources is [var weakest, ..] ? $"Weakest leg: {Named(weakest)}." : "Weakest leg: none.");
        return text.ToString();
    }

    private static string Evidence(Evidence? evidence) => evidence switch
    {
        null => "not known",
        { Words.Length: 0 } => InWords(evidence.Kind),
        _ => $"{InWords(evidence.Kind)}: \"{evidence.Words}\"",
    };

    private static string InWords(EvidenceKind kind) => kind switch
    {
        EvidenceKind.Measured => "measured",
        EvidenceKind.Assumed => "assumed",
        _ => "stated",
    };

    private static string Named(Source source) =>
        $"{source} ({SourceKinds.InWords(source.Kind)}, {source.Confidence.ToString().ToLowerInvariant()} confidence)";

    private static string Moves(SideEffects effects)
    {
        StringBuilder text = new();
        void Say(string what, int micrometres)
        {
            if (micrometres != 0)
            {
                text.Append(CultureInfo.InvariantCulture, $"; {what} {micrometres / 1000m:+0.###;-0.###} mm");
            }
        }

        Say("stack", effects.StackMicrometres);
        Say("chainline", effects.ChainlineMicrometres);
        Say("rotor", effects.RotorMicrometres);
        Say("each hub end", effects.PerSideMicrometres);
        return text.ToString();
    }

    private static void Listed(StringBuilder text, string title, IEnumerable<string> lines)
    {
        bool any = false;
        foreach (string line in lines)
        {
            if (!any)
            {
                text.Append(title).AppendLine(":");
                any = true;
            }

            text.Append("  ").AppendLine(line);
        }
    }
}
