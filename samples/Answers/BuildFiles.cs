#region read
using Lugwork;
#endregion
using System.Collections.Immutable;

namespace Answers;

/// <summary>How do I describe a build in a file?</summary>
internal static class BuildFiles
{
    public static void ReadFile()
    {
        #region read

        Build build = BuildFile.Read("""
            {
              "name": "Frame of a friend",
              "parts": {
                "frame": { "seatTube": "27.18 ± 0.05", "rear": "12x142", "rearBrake": "unknown" },
                "seatpost": { "name": "post from the box", "diameter": "27.2", "mark": "75" },
                "cassette": { "pattern": "HG-9 | HG-10" }
              }
            }
            """);

        foreach (Fit fit in build.Check().Findings)
        {
            Console.WriteLine($"{fit.Joint}: {Verdicts.InWords(fit.Verdict)}");
        }
        #endregion
    }

    public static void Problems()
    {
        #region problems
        string text = """{ "parts": { "frame": { "seatTube": "27.2.5", "rear": "12x14" }, "seatpost": { "diameter": "-27.2" } } }""";
        if (!BuildFile.TryRead(text, out _, out ImmutableArray<SpecProblem> problems))
        {
            foreach (SpecProblem problem in problems)
            {
                Console.WriteLine(problem);
            }
        }
        #endregion
    }

    public static void WriteFile()
    {
        #region write
        Build build = Build.From(Frame.Read("seat tube 27.2; shell BSA 68"), "Bare frame");
        Console.WriteLine(BuildFile.Write(build));
        #endregion
    }
}
