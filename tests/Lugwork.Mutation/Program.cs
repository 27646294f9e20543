using System.Diagnostics;
using System.Globalization;
using Lugwork.Mutation;

switch (args)
{
    case ["--worker", var most, .. var folders]:
        return Worker.Serve(folders, int.Parse(most, CultureInfo.InvariantCulture));
    case ["--self-test"]:
        return SelfTest.Run();
    case ["--help" or "-h"]:
        Console.WriteLine(Options.Help);
        return 0;
    case [] or ["", ..]:
        Console.WriteLine(Options.Help);
        return 2;
}

if (Options.Read(args) is not { } options)
{
    return 2;
}

Stopwatch clock = Stopwatch.StartNew();
WorkingCopy copy = new(options.Folder, options.Above);
List<Place> places = copy.Places();
Console.WriteLine($"{places.Count} places that can be changed.");
HashSet<int> code = copy.Build(places);
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{code.Count} of them are code that builds ({clock.Elapsed.TotalMinutes:0.0} min)."));

using WorkerProcess worker = new([.. copy.Built], options.Cases);
Baseline baseline = Baseline.Of(options.Folder, worker, copy.Renewed, options.Above);
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{baseline.Count} tests run without a change ({clock.Elapsed.TotalMinutes:0.0} min); left out:"));
baseline.LeftOut.ForEach(l => Console.WriteLine($"  {l[..Math.Min(l.Length, 200)]}"));

List<(int Number, Place Place)> drawn = [];
foreach (IGrouping<string, int> area in code.Order().Where(n => options.Takes(places[n].Path)).GroupBy(n => places[n].Area))
{
    int[] all = [.. area];
    new Random(options.Seed).Shuffle(all);
    drawn.AddRange(all.Take(options.Sample).Order().Select(n => (n, places[n])));
}

Results results = new(options.Folder, options.Again);
Equivalents equivalents = Equivalents.Read();
(int Number, Place Place)[] open = [.. drawn.Where(d => results.How(d.Place) is null)];
Console.WriteLine($"{drawn.Count} changes drawn, {open.Length} of them to be run.");
int run = 0;
foreach ((int number, Place place) in open)
{
    long start = Stopwatch.GetTimestamp();
    (string how, string test) = Trial.Run(number, baseline.For(number, place, results.Finders(place.Path)), worker, options.Budget);
    results.Tell(place, how, test, Stopwatch.GetElapsedTime(start));
    if (++run % 25 == 0)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {run} run ({clock.Elapsed.TotalMinutes:0.0} min)"));
    }
}

foreach ((_, Place place) in drawn.Where(d => !Results.IsFound(results.How(d.Place)!) && !equivalents.Have(d.Place)))
{
    Console.WriteLine($"{results.How(place)}: {place.Name}");
}

Console.WriteLine("area: drawn, found (of these by time or crash), equivalent, survived, found of those that are not equivalent");
foreach (IGrouping<string, Place> area in drawn.Select(d => d.Place).GroupBy(p => p.Area).Append(drawn.Select(d => d.Place).GroupBy(_ => "all").First()))
{
    int found = area.Count(p => Results.IsFound(results.How(p)!));
    int hard = area.Count(p => results.How(p) is "time" or "crash");
    int same = area.Count(p => !Results.IsFound(results.How(p)!) && equivalents.Have(p));
    int all = area.Count();
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{area.Key}: {all}, {found} ({hard}), {same}, {all - found - same}, {100.0 * found / Math.Max(1, all - same):0.0} %"));
}

return 0;
