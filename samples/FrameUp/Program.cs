using System.Collections.Immutable;
using FrameUp;
using Lugwork;

const string Help = """
    FrameUp judges a build file: does every part of the bicycle mate with its neighbours?

    dotnet run --project samples/FrameUp [-- [FILE] [--needs] [--reasons] [--json] [--help]]

      FILE      a build file (JSON); without one, a touring frame of our own
      --needs   what each slot has to be, instead of the judgement
      --reasons every joint with what was compared, its evidence, rows and sources
      --json    the judgement as JSON
      --help    this text

    Exit code: 0 everything fits, 1 something does not fit or is unsafe, 2 bad input,
    3 needs parts or is incomplete, 4 needs measuring. The worst wins: 2, then 1, 4, 3.
    """;

string? path = null;
bool needs = false;
bool json = false;
bool reasons = false;
foreach (string argument in args)
{
    switch (argument)
    {
        case "--help" or "-h":
            Console.WriteLine(Help);
            return 0;
        case "--needs":
            needs = true;
            break;
        case "--reasons":
            reasons = true;
            break;
        case "--json":
            json = true;
            break;
        default:
            if (argument.StartsWith('-') || path is not null)
            {
                Console.Error.WriteLine($"'{argument}' is not understood; --help tells what is.");
                return 2;
            }

            path = argument;
            break;
    }
}

if ((needs && json) || (needs && reasons) || (json && reasons))
{
    Console.Error.WriteLine("Of --needs, --reasons and --json only one at a time.");
    return 2;
}

path ??= Path.Combine(AppContext.BaseDirectory, "builds", "tourer-from-commuter.json");
string text;
try
{
    if (new FileInfo(path) is { Exists: true } given && given.Length > 2L * BuildFile.MostBytes)
    {
        Console.Error.WriteLine($"{path}: the file is too large; a build file is at most 1 MB.");
        return 2;
    }

    text = File.ReadAllText(path);
}
catch (Exception e) when (e is IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine($"{path}: {e.Message}");
    return 2;
}

if (!BuildFile.TryRead(text, out Build? build, out ImmutableArray<SpecProblem> problems))
{
    Console.Error.WriteLine($"{path}: {problems.Length} problem{(problems.Length == 1 ? "" : "s")}");
    foreach (SpecProblem problem in problems)
    {
        Console.Error.WriteLine($"  {problem}");
    }

    return 2;
}

FitReport report = build!.Check();
if (json)
{
    Console.WriteLine(report.ToJson());
}
else if (reasons)
{
    Sheet.WriteReasons(report, Console.Out);
}
else if (needs)
{
    Sheet.WriteNeeds(build, Console.Out);
}
else
{
    Sheet.WriteReport(report, Console.Out);
}

return Sheet.ExitCode(report);
