using System.Collections.Immutable;
using System.Globalization;
using Lugwork.Workshop;
using Lugwork;
using Lugwork.Geometry;
using UnitsNet;

// The chart of the carbon road frame: reach, stack, head angle, fork offset, radius of the wheels, seat angle.
const string RoadChart = "387, 545, 73, 45, 341, 73.5";

const string Help = """
    WorkPlan prints the steps by which a build becomes a bicycle.

    dotnet run --project samples/WorkPlan [-- [FILE] [--chart FIGURES] [--html PAGE] [--why EARLIER LATER] [--help]]

      FILE      a build file (JSON); without one, a carbon road frame with new parts, a rider, and a steerer that is still long
      --chart   what the maker's chart says beside the build, five or six figures with commas between: reach, stack, head
                angle, fork offset, radius of the wheels with their tyres, and the seat angle where the chart has it (mm and
                degrees); hoses and housing are estimated by it
      --html    writes the plan to PAGE too, to be read on a screen and printed
      --why     why the step EARLIER comes before the step LATER, instead of the plan
      --help    this text

    Exit code: 0 the plan is written, 1 parts of the build do not mate: do not work it off, 2 bad input.
    """;

string? path = null;
string? page = null;
string? chart = null;
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
        case "--chart" when chart is null && i + 1 < args.Length:
            chart = args[++i];
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

if (path is null)
{
    path = Path.Combine(AppContext.BaseDirectory, "builds", "road-frame-to-cut.json");
    chart ??= RoadChart;
}

try
{
    if (new FileInfo(path) is { Exists: true } found && found.Length > 2L * BuildFile.MostBytes)
    {
        return Bad($"{path}: the file is too large; a build file is at most 1 MB.");
    }

    if (!BuildFile.TryRead(File.ReadAllText(path), out Build? build, out ImmutableArray<SpecProblem> problems))
    {
        return Bad($"{path}: {string.Join(Environment.NewLine + "  ", problems.Select(p => p.ToString()).Prepend($"{problems.Length} problem{(problems.Length == 1 ? "" : "s")}"))}");
    }

    WorkPlan plan = chart is null ? build!.WorkPlan() : build!.WorkPlan(Geometry(build!, chart));
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

    return plan.Report.Findings.Any(f => f.Verdict is Verdict.DoesNotFit or Verdict.Unsafe) ? 1 : 0;
}
catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException or InvalidOperationException)
{
    return Bad(e.Message);
}

// The frame as a figure: five figures of its chart, or six, the others as the build states them.
static FrameGeometry Geometry(Build build, string chart)
{
    double[] figures = [.. chart.Split(',').Select(f => double.Parse(f, NumberStyles.Float, CultureInfo.InvariantCulture))];
    if (figures is not [var reach, var stack, var headAngle, var offset, var radius, .. var seatAngle] || seatAngle.Length > 1)
    {
        throw new FormatException("a chart has five figures, reach, stack, head angle, fork offset and radius of the wheels, and a sixth where it has the seat angle");
    }

    Fork? fork = build[Slot.Fork] as Fork;
    Headset? headset = build[Slot.Headset] as Headset;
    return new FrameChart
    {
        Reach = Length.FromMillimeters(reach),
        Stack = Length.FromMillimeters(stack),
        HeadAngle = Angle.FromDegrees(headAngle),
        SeatAngle = seatAngle is [var degrees] ? Angle.FromDegrees(degrees) : null,
        ForkOffset = Length.FromMillimeters(offset),
        RearRadius = Length.FromMillimeters(radius),
        FrontRadius = Length.FromMillimeters(radius),
        HeadTube = Stated(build.Frame.HeadTubeLength),
        Chainstay = Stated(build.Frame.Chainstay),
        AxleToCrown = Stated(fork?.AxleToCrown ?? default),
        LowerStack = Stated(headset?.LowerStack ?? default),
    }.ToGeometry();
}

static Length? Stated(Known<Dimension> known) => known.State == KnownState.Value ? known.Value.Length : null;

static int Bad(string message)
{
    Console.Error.WriteLine(message);
    return 2;
}
