using System.Globalization;
using System.Text.RegularExpressions;

namespace Lugwork.Mutation;

/// <summary>What the program was asked for.</summary>
internal sealed class Options
{
    public const string Help = """
        Changes the library in many small places, one at a time, and counts how many of the changes a test finds.

        dotnet run --project tests/Lugwork.Mutation -- FOLDER [--files GLOB] [--sample N] [--seed N] [--budget SECONDS] [--cases N] [--again] [--above]
        dotnet run --project tests/Lugwork.Mutation -- --self-test

          FOLDER        a working copy is made, changed and built there, and what came out is written to FOLDER/results.txt; a second run goes on from it
          --files       which files, with * for a part of a name and ** for folders, several parted by commas; src/Lugwork/Fits/**
          --sample      so many places of each folder, drawn by the seed; all
          --seed        another draw; 1
          --budget      most seconds of tests for one change, as they take when nothing is changed; 20
          --cases       most cases of a law; 300
          --again       runs once more what no test failed on before, such as after one was written
          --above       what is built from the answers, and not what judges: catalogues, plans, readers, records, drawings, with their tests; a folder of its own

        A test that takes five times as long as without a change, and 20 seconds more, counts as found by time.
        """;

    private readonly Dictionary<string, int> _numbers = new() { ["--sample"] = int.MaxValue, ["--seed"] = 1, ["--budget"] = 20, ["--cases"] = 300 };
    private Regex _files = Globs("src/Lugwork/Fits/**");

    public required string Folder { get; init; }

    public int Sample => _numbers["--sample"];

    public int Seed => _numbers["--seed"];

    public int Budget => _numbers["--budget"];

    public int Cases => _numbers["--cases"];

    public bool Again { get; private set; }

    public bool Above { get; private set; }

    public bool Takes(string path) => _files.IsMatch(path);

    /// <summary>The options, or nothing where one is not understood; what it is has been said.</summary>
    public static Options? Read(string[] words)
    {
        Options options = new() { Folder = Path.GetFullPath(words[0]) };
        for (int i = 1; i < words.Length; i++)
        {
            string value = i + 1 < words.Length ? words[i + 1] : "";
            if (words[i] == "--again")
            {
                options.Again = true;
            }
            else if (words[i] == "--above")
            {
                options.Above = true;
                options._files = options._files.IsMatch("src/Lugwork/Fits/Fit.cs") ? Globs("src/Lugwork/**") : options._files;
            }
            else if (words[i] == "--files" && value.Length > 0)
            {
                options._files = Globs(value);
                i++;
            }
            else if (options._numbers.ContainsKey(words[i]) && int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number > 0)
            {
                options._numbers[words[i]] = number;
                i++;
            }
            else
            {
                Console.Error.WriteLine($"'{words[i]} {value}' is not understood; --help tells what is.");
                return null;
            }
        }

        return options;
    }

    private static Regex Globs(string globs) =>
        new("^(" + string.Join('|', globs.Split(',').Select(g => Regex.Escape(g).Replace(@"\*\*", ".+").Replace(@"\*", "[^/]*"))) + ")$", RegexOptions.CultureInvariant);
}
