using Lugwork;
using Lugwork.Reading;

namespace SpecToNeeds;

/// <summary>What was read of a frame, word by word; the frame as a build file; what it needs; and what to ask next.</summary>
internal static class SheetReport
{
    private const int MostQuestions = 3;

    public static void Write(SpecSheet sheet, TextWriter output)
    {
        output.WriteLine("Read:");
        foreach (SpecValue value in sheet.Values)
        {
            output.WriteLine($"  {value.Field} = {value.Key}, from \"{value.Words}\"");
        }

        foreach (SpecConflict conflict in sheet.Conflicts)
        {
            output.WriteLine($"Conflict: {conflict}");
        }

        foreach (SpecDoubt doubt in sheet.Doubts)
        {
            output.WriteLine($"In doubt: {doubt}");
        }

        foreach (string left in sheet.Leftovers)
        {
            output.WriteLine($"Left over: {left}");
        }

        Build build = Build.From(sheet.Frame);
        output.WriteLine();
        output.WriteLine(BuildFile.Write(build));
        output.WriteLine();
        output.WriteLine("Needs:");
        foreach (Need need in build.Needs())
        {
            output.WriteLine($"  {need}");
        }

        output.WriteLine();
        output.WriteLine("Ask next:");
        foreach (RankedMeasurement question in SpecQuestions.Of(sheet.Frame).Take(MostQuestions))
        {
            output.WriteLine($"  {question}");
        }
    }
}
