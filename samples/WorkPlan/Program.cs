using System.Collections.Immutable;
using Lugwork;

const string Help = """
    WorkPlan prints the steps by which a build becomes a bicycle.

    dotnet run --project samples/WorkPlan [-- [FILE] [--html PAGE] [--why EARLIER LATER] [--help]]

      FILE      a build file (JSON); without one, a carbon road frame with new parts
      --html    writes the plan to PAGE too, to be read on a screen and printed
      --why     why the step EARLIER comes before the step LATER, instead of the plan
      --help    this text

    Exit code: 0 the plan is written, 1 parts of the build do not mate: do not work it off, 2 bad input.
    """;

string? path = null;
string? page = null;
(string Earlier, string Later)? why = null;
for (int i = 0; i < args.Length; i++)
{
    switch (args[i])
    {
        case "--help" or "-h":
            Console.WriteLine(Help);
            return 0;
        case "--html" when page is null && i + 1 < args.Length:
            page = args[++i];
            break;
        case "--why" when why is null && i + 2 < args.Length:
            why = (args[++i], args[++i]);
            break;
        default:
            if (args[i].StartsWith('-') || path is not null)
            {
                return Bad($"'{args[i]}' is not understood; --help tells what is.");
            }

            path = args[i];
            break;
    }
}

path ??= Path.Combine(AppContext.BaseDirectory, "builds", "road-disc-all-new.json");
try
{
    if (new FileInfo(path) is { Exists: true, Length: > 2L * BuildFile.MostBytes })
    {
        return Bad($"{path}: the file is too large; a build file is at most 1 MB.");
    }

    if (!BuildFile.TryRead(File.ReadAllText(path), out Build? build, out ImmutableArray<SpecProblem> problems))
    {
        return Bad($"{path}: {string.Join(Environment.NewLine + "  ", problems.Select(p => p.ToString()).Prepend($"{problems.Length} problem{(problems.Length == 1 ? "" : "s")}"))}");
    }

    WorkPlan plan = build!.WorkPlan();
    if (why is { } asked)
    {
        if (plan.Find(asked.Earlier) is null || plan.Find(asked.Later) is null)
        {
            return Bad($"the steps are {string.Join(", ", plan.Steps.Select(s => s.Id))}");
        }

        ImmutableArray<WorkLink> chain = plan.WhyBefore(asked.Earlier, asked.Later);
        Console.WriteLine(chain.IsEmpty ? $"nothing asks for {asked.Earlier} before {asked.Later}" : string.Join(Environment.NewLine, chain));
    }
    else
    {
        Console.Write(plan);
    }

    if (page is not null)
    {
        File.WriteAllText(page, plan.ToHtml());
    }

    return plan.Report.Fits.Any(f => f.Verdict is Verdict.DoesNotFit or Verdict.Unsafe) ? 1 : 0;
}
catch (Exception e) when (e is IOException or UnauthorizedAccessException)
{
    return Bad(e.Message);
}

static int Bad(string message)
{
    Console.Error.WriteLine(message);
    return 2;
}
