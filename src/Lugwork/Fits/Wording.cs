using System.Globalization;

namespace Lugwork;

/// <summary>Fills the places of a reason's sentence with what is known of the inputs; a missing figure is said in words, never with a unit behind it.</summary>
internal static class Wording
{
    private const string None = "none";

    public static string Of(Outcome outcome, Joint joint, IParts parts)
    {
        int count = joint.Inputs.Length;
        KnownState[] states = new KnownState[count];
        string[] shown = new string[count];
        for (int i = 0; i < count; i++)
        {
            Part part = parts.At(joint.Inputs[i].Slot)!;
            states[i] = joint.Inputs[i].Read(part).State;
            shown[i] = joint.Inputs[i].ShowKnown(part);
        }

        string sentence = Filled(TemplateOf(joint, outcome.Reason!, states), states, shown).Replace("[bridge]", Bridge(outcome), StringComparison.Ordinal);
        CandidateRow row = default;
        if (joint.Relation is ITells sum && joint.TryRead(parts, ref row))
        {
            sentence = sum.Tell(sentence, joint.Inputs, row);
        }

        return char.ToUpperInvariant(sentence[0]) + sentence[1..];
    }

    /// <summary>The sentence of a template: "no figure" and "an unknown number of mm" where a figure is missing; of a choice whose sides are one, or of which one is none, the other alone.</summary>
    public static string Filled(string template, ReadOnlySpan<KnownState> states, string[] shown)
    {
        string text = template;
        for (int i = 0; i < shown.Length; i++)
        {
            for (int j = 0; j < shown.Length; j++)
            {
                if (i != j && (shown[i] == shown[j] || shown[i] == None || shown[j] == None))
                {
                    text = text.Replace($"{Place(i)} or {Place(j)}", Place(shown[i] == None ? j : i), StringComparison.Ordinal);
                }
            }

            if (states[i] == KnownState.Unknown)
            {
                text = text.Replace($" a {Place(i)}", $" an {Place(i)}", StringComparison.Ordinal);
                text = text.StartsWith($"A {Place(i)}", StringComparison.Ordinal) ? $"An{text[1..]}" : text;
            }

            if (states[i] == KnownState.None)
            {
                text = text.Replace("with " + Place(i) + " mm of spacers", "without stated spacers", StringComparison.Ordinal)
                    .Replace(Place(i) + " mm deep", "without a stated depth", StringComparison.Ordinal)
                    .Replace(Place(i) + " mm long", "without a stated length", StringComparison.Ordinal)
                    .Replace(Place(i) + " mm wide", "without a stated width", StringComparison.Ordinal)
                    .Replace("goes " + Place(i) + " mm in", "goes in by no stated depth", StringComparison.Ordinal);
            }

            if (Missing(states[i]) is { } missing)
            {
                text = text.Replace(Place(i) + " mm", missing, StringComparison.Ordinal);
            }
        }

        return string.Format(CultureInfo.InvariantCulture, text, shown);
    }

    /// <summary>Of more than two inputs the first two need not be the ones that are missing: the missing ones are named.</summary>
    internal static string TemplateOf(Joint joint, Reason reason, ReadOnlySpan<KnownState> states)
    {
        if (reason != Reasons.NothingToMate || states.Length == 2)
        {
            return reason.Template;
        }

        List<string> missing = [];
        for (int i = 0; i < states.Length; i++)
        {
            if (states[i] == KnownState.None && !missing.Contains(joint.Inputs[i].Called))
            {
                missing.Add(joint.Inputs[i].Called);
            }
        }

        return missing.Count == 0 ? reason.Template : $"One side has none of this: there is no {string.Join(", and no ", missing)}.";
    }

    private static string Place(int input) => string.Create(CultureInfo.InvariantCulture, $"{{{input}}}");

    private static string? Missing(KnownState state) => state switch
    {
        KnownState.None => "no figure",
        KnownState.Unknown => "an unknown number of mm",
        KnownState.FrameSpecific => "a figure of the maker's own",
        KnownState.NotCovered => "a figure outside the library",
        _ => null,
    };

    private static string Bridge(Outcome outcome) =>
        outcome.Bridge is null ? "" : outcome.Second is null ? outcome.Bridge.What : $"{outcome.Bridge.What}, then {outcome.Second.What}";
}
