using System.Globalization;

namespace Lugwork.Mutation;

/// <summary>What each test takes and comes by when nothing is changed.</summary>
internal sealed class Baseline
{
    /// <summary>A test that takes longer is left out: it could not be run for each change.</summary>
    private const int MostMilliseconds = 20_000;

    private readonly Dictionary<int, List<int>> _by = [];
    private readonly Dictionary<string, List<int>> _ofClass = [];
    private readonly List<(string Class, string Name, int Milliseconds)> _tests = [];

    public List<string> LeftOut { get; } = [];

    public int Count => _tests.Count;

    /// <summary>Runs what was not run before, class by class, and reads all of it.</summary>
    public static Baseline Of(string folder, WorkerProcess worker, IEnumerable<string> renewed, bool above)
    {
        string file = Path.Combine(folder, "tests.txt");
        HashSet<string> stale = [.. renewed.Select(r => Path.GetFileNameWithoutExtension(r)!)];
        List<string> kept = File.Exists(file) ? [.. File.ReadLines(file).Where(l => !stale.Contains(l.Split('\t')[0].Split('.')[^1]))] : [];
        File.WriteAllLines(file, kept);
        HashSet<string> done = [.. kept.Where(l => l.EndsWith("\tend", StringComparison.Ordinal)).Select(l => l.Split('\t')[0])];
        string[] classes = [];
        if (worker.Ask(above ? "list\tabove" : "list", l => { classes = l.Split('\t'); return (true, 0); }, 60_000) is { } ended)
        {
            throw new InvalidOperationException($"the worker does not start: {ended}");
        }

        string[] open = [.. classes.Where(c => !done.Contains(c))];
        Console.WriteLine($"{classes.Length} classes of tests, {open.Length} of them to be run without a change.");
        foreach (string name in open)
        {
            File.AppendAllLines(file, Watch(name, worker));
        }

        Baseline baseline = new();
        foreach (string line in File.ReadLines(file))
        {
            baseline.Add(line.Split('\t'));
        }

        return baseline;
    }

    /// <summary>A test that found so many changes, wherever, is among the likely ones everywhere: such are those of keys, codes and printed figures.</summary>
    private const int OftenFound = 3;

    /// <summary>The tests that come by a change, the likeliest to find it soon first: what came by itself, found another in its file or many elsewhere; of these the quick ones, and more so if they found more or are of its area.</summary>
    public IEnumerable<(string Name, int Milliseconds)> For(int number, Place place, Finders finders)
    {
        if (!_by.TryGetValue(number, out List<int>? direct))
        {
            return [];
        }

        // What a table is made of is come by once, by the first test of a class; every other test of the class may read it.
        HashSet<int> itself = [.. direct];
        return direct.SelectMany(d => _ofClass[_tests[d].Class]).Distinct()
            .OrderBy(t => itself.Contains(t) || finders.InFile(_tests[t].Name) > 0 || finders.Anywhere(_tests[t].Name) >= OftenFound ? 0 : 1)
            .ThenBy(t => (_tests[t].Milliseconds + 20.0) / (1 + finders.InFile(_tests[t].Name) + (finders.Anywhere(_tests[t].Name) / 4.0)) / (_tests[t].Class.Contains("." + place.Area + ".", StringComparison.Ordinal) ? 4 : 1))
            .ThenBy(t => _tests[t].Name, StringComparer.Ordinal)
            .Select(t => (_tests[t].Name, _tests[t].Milliseconds));
    }

    private static List<string> Watch(string name, WorkerProcess worker)
    {
        List<string> lines = [];
        List<string> without = [];
        while (true)
        {
            List<string> told = [];
            string at = "";
            string? ended = worker.Ask(
                string.Join('\t', ["watch", name, .. without]),
                line =>
                {
                    if (line.StartsWith("at\t", StringComparison.Ordinal))
                    {
                        at = line[3..];
                    }
                    else if (line != "end")
                    {
                        told.Add($"{name}\t{line}");
                    }

                    return (line == "end", MostMilliseconds);
                },
                60_000);
            if (ended is null)
            {
                return [.. lines, .. told, $"{name}\tend"];
            }

            if (at.Length == 0)
            {
                return [.. lines, $"{name}\tall\t0\tfailed {ended}\t", $"{name}\tend"];
            }

            lines.Add($"{name}\t{at}\t{MostMilliseconds}\tfailed {ended}\t");
            without.Add(at);
        }
    }

    private void Add(string[] words)
    {
        if (words.Length < 5)
        {
            return;
        }

        string name = $"{words[0]}.{words[1]}";
        if (words[3] != "passed")
        {
            LeftOut.Add($"{name}: {words[3]}");
            return;
        }

        int test = _tests.Count;
        _tests.Add((words[0], name, int.Parse(words[2], CultureInfo.InvariantCulture)));
        if (!_ofClass.TryGetValue(words[0], out List<int>? others))
        {
            _ofClass[words[0]] = others = [];
        }

        others.Add(test);
        foreach (string word in words[4].Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            int number = int.Parse(word, CultureInfo.InvariantCulture);
            if (!_by.TryGetValue(number, out List<int>? tests))
            {
                _by[number] = tests = [];
            }

            tests.Add(test);
        }
    }
}
