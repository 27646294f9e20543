using System.ComponentModel;
using Lugwork;
using Lugwork.Reading;

namespace SpecToNeeds;

/// <summary>For people who have no file: one question after the other, the one that settles most first.</summary>
internal static class Dialogue
{
    public static void Run(TextReader input, TextWriter output)
    {
        Frame frame = new();
        HashSet<string> passed = [];
        while (SpecQuestions.Of(frame).FirstOrDefault(q => !passed.Contains(q.What.Field)) is { } question)
        {
            output.WriteLine($"{question.What.Called}? {question.What.How} (Enter to pass, 'done' to end)");
            string? answer = input.ReadLine();
            if (answer is null or "done")
            {
                break;
            }

            if (answer.Trim().Length == 0)
            {
                passed.Add(question.What.Field);
                continue;
            }

            SpecAnswer taken = SpecQuestions.Answer(frame, question.What.Field, answer);
            Tell(question.What, taken, taken.Frame != frame, output);
            frame = taken.Frame;
        }

        output.WriteLine(BuildFile.Write(Build.From(frame)));
        foreach (Need need in Build.From(frame).Needs())
        {
            output.WriteLine(need);
        }
    }

    /// <summary>What was made of an answer: the value as the trade says it, what was taken for granted, or why it was not taken.</summary>
    private static void Tell(Measurement asked, SpecAnswer taken, bool isTaken, TextWriter output)
    {
        foreach (SpecDoubt doubt in taken.Line.Doubts)
        {
            output.WriteLine($"  {doubt}");
        }

        SpecValue? value = taken.Line.Values.FirstOrDefault(v => v.Field == asked.Field);
        if (value is not null && isTaken)
        {
            string assumed = value.Assumed.IsEmpty ? "" : $" (assumed: {string.Join("; ", value.Assumed)})";
            output.WriteLine($"  understood: {asked.Called} {InTradeWords(value)}{assumed}");
        }
        else if (value is null && taken.Line.Outcome == SpecOutcome.Read)
        {
            output.WriteLine("  That says something else.");
        }
        else
        {
            output.WriteLine("  Not taken: say it in another way, or pass.");
        }
    }

    /// <summary>The value by its trade name. Its type is known by name alone, so its own converter reads the key.</summary>
    private static string InTradeWords(SpecValue value)
    {
        return Array.Find(typeof(Frame).Assembly.GetExportedTypes(), t => t.Name == value.Type) is { } type && TypeDescriptor.GetConverter(type) is var converter
            && converter.IsValid(value.Key) && converter.ConvertFromInvariantString(value.Key) is IFormattable read ? read.ToString("T", null) : value.Key;
    }
}
