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
            frame = taken.Frame;
            SpecLine line = taken.Line;
            foreach (SpecDoubt doubt in line.Doubts)
            {
                output.WriteLine($"  {doubt}");
            }

            if (line.Outcome == SpecOutcome.Read && line.Values.All(v => v.Field != question.What.Field))
            {
                output.WriteLine("  That says something else.");
            }
        }

        output.WriteLine(BuildFile.Write(Build.From(frame)));
        foreach (Need need in Build.From(frame).Needs())
        {
            output.WriteLine(need);
        }
    }
}
