using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>What to ask about a frame of which half is known: only what can still change what fits, and first what settles most.</summary>
public static class SpecQuestions
{
    /// <summary>The questions about a frame, the one that settles most needs first.</summary>
    /// <param name="frame">The frame as far as it is known.</param>
    /// <returns>Fields of the frame with what they are called, how to measure or ask, and how many needs they settle alone or help to settle. Empty where nothing more can change an answer.</returns>
    public static ImmutableArray<RankedMeasurement> Of(Frame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        Dictionary<string, RankedMeasurement> ranked = new(StringComparer.Ordinal);
        foreach (Need need in Build.From(frame).Needs())
        {
            foreach (NeedLine line in need.Lines)
            {
                Count(frame, line, ranked);
            }
        }

        return [.. ranked.Values.OrderByDescending(r => r.Settles).ThenByDescending(r => r.Touches).ThenBy(r => r.What.Field, StringComparer.Ordinal)];
    }

    /// <summary>The frame with the answer to a question taken in, and what came of the answer; the frame is unchanged where the answer is not one value.</summary>
    /// <param name="frame">The frame as far as it is known.</param>
    /// <param name="field">Key of the field that was asked for: "seatTube".</param>
    /// <param name="answer">Any text: the value alone, or a line that says it.</param>
    /// <param name="vocabulary">The words to read by; those of the library where left out.</param>
    /// <exception cref="ArgumentException">A frame has no such field.</exception>
    public static SpecAnswer Answer(Frame frame, string field, string answer, SpecVocabulary? vocabulary = null)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(answer);
        SpecFields.Of(Slot.Frame, field);
        string named = $"{field}: {answer.Trim()}";
        SpecLine line = SpecLine.Read(Slot.Frame, named.AsSpan(), vocabulary);
        if (line.Outcome != SpecOutcome.Read)
        {
            line = SpecLine.Read(Slot.Frame, answer.AsSpan(), vocabulary);
        }

        if (line.Values.FirstOrDefault(v => v.Field == field) is not { } value)
        {
            return new(frame, line);
        }

        List<SpecProblem> problems = [];
        Dictionary<string, string> said = PartForms.Frame.Write(frame).ToDictionary(p => p.Key, p => p.Value, StringComparer.Ordinal);
        said[field] = value.Key;
        Part part = PartForms.Frame.ReadProperties(said, Slot.Frame.Key, problems);
        return new(problems.Count == 0 ? (Frame)part : frame, line);
    }

    private static void Count(Frame frame, NeedLine line, Dictionary<string, RankedMeasurement> ranked)
    {
        if (line.OpenBecause is null)
        {
            return;
        }

        // What follows another part is not the frame's to answer; what is said to lie outside the library is answered.
        ImmutableArray<JointInput> open = [.. line.Joint.Inputs.Where(i => i.Slot == Slot.Frame && !i.Read(frame).IsSettled && !i.Read(frame).IsOutside).DistinctBy(i => i.Field)];
        bool alone = open.Length == 1 && !line.Joint.Inputs.Any(i => i.Slot != Slot.Frame && i.Slot != line.Input.Slot);
        foreach (JointInput input in open)
        {
            RankedMeasurement before = ranked.GetValueOrDefault(input.Field) ?? new(new(Slot.Frame, input.Field, input.Called, input.Measure), 0, 0);
            ranked[input.Field] = before with { Settles = before.Settles + (alone ? 1 : 0), Touches = before.Touches + (alone ? 0 : 1) };
        }
    }
}
