using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using FinishTheFrame;
using Lugwork.Workshop;
using Lugwork;
using Lugwork.Planning;

const string Help = """
    FinishTheFrame plans how a bare frame becomes a bicycle: what moves over from an old one,
    and the cheapest parts of a shop's list that fit with it. Frame, donor and list are invented.

    dotnet run --project samples/FinishTheFrame [-- [FRAME.json DONOR.json] [--rows N] [--seed N] [--complete PRICE] [--help]]

      FRAME.json DONOR.json  build files; without them, a steel gravel frame and an old commuter
      --rows N               articles on the shop's list, 1 to 100,000; 2,000
      --seed N               another list; 10
      --complete PRICE       a complete bicycle to compare with; 1499
      --help                 this text

    Ctrl+C stops it. Exit code: 0 planned, 1 nothing on the list finishes the frame, 2 bad input, 130 stopped.
    """;

int rows = 2_000;
int seed = 10;
decimal complete = 1_499;
List<string> files = [];
for (int i = 0; i < args.Length; i++)
{
    string next = i + 1 < args.Length ? args[i + 1] : "";
    switch (args[i])
    {
        case "--help" or "-h":
            Console.WriteLine(Help);
            return 0;
        case "--rows" when int.TryParse(next, NumberStyles.None, CultureInfo.InvariantCulture, out rows) && rows is >= 1 and <= 100_000:
        case "--seed" when int.TryParse(next, NumberStyles.None, CultureInfo.InvariantCulture, out seed):
        case "--complete" when decimal.TryParse(next, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out complete) && complete <= 1_000_000 && decimal.Round(complete, 2) == complete:
            i++;
            break;
        default:
            if (args[i].StartsWith('-') || files.Count == 2)
            {
                Console.Error.WriteLine($"'{args[i]}' is not understood; --help tells what is.");
                return 2;
            }

            files.Add(args[i]);
            break;
    }
}

string folder = Path.Combine(AppContext.BaseDirectory, "builds");
Build[] given = new Build[2];
for (int i = 0; i < given.Length; i++)
{
    string path = files.Count == 0 ? Path.Combine(folder, i == 0 ? "frame.json" : "donor.json") : i < files.Count ? files[i] : "";
    if (path.Length == 0)
    {
        Console.Error.WriteLine("a frame and a donor are expected; --help tells how.");
        return 2;
    }

    try
    {
        if (!BuildFile.TryRead(File.ReadAllText(path), out Build? build, out ImmutableArray<SpecProblem> problems))
        {
            Console.Error.WriteLine($"{path}: {string.Join(Environment.NewLine, problems)}");
            return 2;
        }

        given[i] = build!;
    }
    catch (Exception e) when (e is IOException or UnauthorizedAccessException)
    {
        Console.Error.WriteLine($"{path}: {e.Message}");
        return 2;
    }
}

int step = 0;
using CancellationTokenSource stop = new();
Console.CancelKeyPress += (_, pressed) =>
{
    pressed.Cancel = true;
    stop.Cancel();
};

try
{
    CarryOver over = Work("judging the donor's parts", () => CarryOver.Of(given[1], given[0], stop.Token));
    Console.WriteLine($"{Named(given[1], "The donor")} onto {Named(given[0], "the frame")}");
    Console.WriteLine(over);
    Console.WriteLine();

    // What has to be measured first is no part of the plan: the list may have something that fits for certain.
    Build certain = over.Open.Aggregate(over.Moved, (b, p) => b.Without(p.Slot));
    ImmutableArray<ChoiceOffer> offers = Work("reading the shop's list", () => ShopList.Make(rows, seed).ToImmutableArray());
    ImmutableArray<ChoiceBridgePrice> bridges = Work("pricing shims and adapters", PriceList.Bridges);
    ChoiceResult result = Work("choosing", () => BuildChooser.Of(new() { Build = certain, Offers = offers, Bridges = bridges }).Cheapest(stop.Token));
    if (result.Best is not { } best)
    {
        Console.WriteLine($"Nothing on the list of {rows} articles finishes this frame: {result}.");
        return 1;
    }

    Console.WriteLine($"Plan from {rows.ToString("N0", CultureInfo.InvariantCulture)} articles, {(result.Status == ChoiceStatus.Optimal ? "the cheapest there is" : $"not proven the cheapest; none costs less than {result.Bound}")}:");
    CostSheet sheet = PriceList.Fill(CostSheet.Of(best.Build), best);
    Shopping.Write(sheet, best, over, Console.Out);
    Console.WriteLine();
    Console.WriteLine($"Check: {Verdicts.InWords(best.Report.Verdict)}, {best.Report.Findings.Length} joints.");
    Console.WriteLine(sheet.Against(PriceList.Of(complete)));
    Console.WriteLine(Saved(best, Work("choosing without the donor", () => BuildChooser.Of(new() { Build = given[0], Offers = offers, Bridges = bridges }).Cheapest(stop.Token))));
    return 0;
}
catch (OperationCanceledException)
{
    Console.Error.WriteLine("stopped");
    return 130;
}

// The same frame and list, and no old bicycle; small parts and postage left out on both sides.
static string Saved(ChosenBuild best, ChoiceResult without) => without.Best is not { } alone ? "Without the donor nothing on the list finishes this frame."
    : string.Create(CultureInfo.InvariantCulture, $"Without the donor parts, shims and adapters come to {(without.Status == ChoiceStatus.Optimal ? "" : "at most ")}{alone.Price}, with it to {best.Price}: the donor saves {alone.Price.Amount - best.Price.Amount:0.00} {best.Price.Currency}.");

static string Named(Build build, string otherwise) => build.Name.Length > 0 ? build.Name : otherwise;

// Long work runs beside a clock, which says every second which of the five steps goes on.
T Work<T>(string what, Func<T> work)
{
    step++;
    Stopwatch clock = Stopwatch.StartNew();
    Task<T> task = Task.Run(work, stop.Token);
    Task stopped = Task.Delay(Timeout.Infinite, stop.Token);
    while (Task.WaitAny([task, stopped], 1_000) < 0)
    {
        Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  step {step} of 5, {what}: {clock.Elapsed.TotalSeconds:0} s; Ctrl+C stops it"));
    }

    stop.Token.ThrowIfCancellationRequested();
    return task.GetAwaiter().GetResult();
}
