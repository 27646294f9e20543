#region sheet
using Lugwork;
using Lugwork.Reading;
#endregion

namespace Answers;

/// <summary>How do I read a spec sheet?</summary>
internal static class SpecSheets
{
    public static void Sheet()
    {
        #region sheet

        SpecSheet sheet = SpecSheet.ReadFrame("""
            Rear spacing: 142 x 12 mm thru axle
            Bottom bracket: BSA threaded, 68 mm
            Seatpost: 27.2 mm
            Headset: integrated 1 1/8 - 1.5
            Max tire: 700 x 40C
            Disc mount: flat mount, rotor up to 160 mm
            Colour: moss
            """);

        foreach (SpecValue value in sheet.Values)
        {
            Console.WriteLine($"{value.Field} = {value.Key}, from \"{value.Words}\"");
        }

        foreach (SpecDoubt doubt in sheet.Doubts)
        {
            Console.WriteLine($"in doubt: {doubt}");
        }

        Console.WriteLine($"left over: {string.Join("; ", sheet.Leftovers)}");
        #endregion
    }

    public static void AskNext()
    {
        #region next
        Frame frame = SpecSheet.ReadFrame("Rahmen: Stahl\nHinterbau: 135 mm Schnellspanner\nSattelstütze: 27,2 mm").Frame;
        RankedMeasurement question = SpecQuestions.Of(frame)[0];
        Console.WriteLine(question);

        SpecAnswer answer = SpecQuestions.Answer(frame, question.What.Field, "BSA 68");
        Console.WriteLine($"{answer.Line.Outcome}: {string.Join(", ", answer.Line.Values)}");
        Console.WriteLine(SpecQuestions.Of(answer.Frame)[0]);
        #endregion
    }

    public static void Line()
    {
        #region line
        foreach (string text in new[] { "Seatpost 27.2 x 350 mm", "Freewheel or cassette, 7 speed", "fits 27.2 mm posts with a shim (not supplied)" })
        {
            SpecLine line = SpecLine.Read(null, text);
            Console.WriteLine($"{line.Outcome}: {string.Join(", ", line.Values)}{line.Reason}");
        }
        #endregion
    }
}
