using System.Globalization;

namespace Lugwork.Mutation;

/// <summary>What came of each change, kept in a file that a second run goes on with.</summary>
internal sealed class Results
{
    private readonly string _file;
    private readonly Dictionary<string, (string How, string Test)> _told = [];

    /// <param name="folder">Where the file is.</param>
    /// <param name="again">Whether what no test failed on is open again.</param>
    public Results(string folder, bool again)
    {
        _file = Path.Combine(folder, "results.txt");
        foreach (string[] words in File.Exists(_file) ? File.ReadLines(_file).Select(l => l.Split('\t')).Where(w => w.Length == 4) : [])
        {
            _told[words[0]] = (words[1], words[2]);
        }

        if (again)
        {
            foreach (string name in _told.Where(t => t.Value.How != "found").Select(t => t.Key).ToArray())
            {
                _told.Remove(name);
            }
        }
    }

    public static bool IsFound(string how) => how is "found" or "time" or "crash";

    public string? How(Place place) => _told.TryGetValue(place.Name, out (string How, string Test) told) ? told.How : null;

    /// <summary>How often each test found a change, in a file and anywhere.</summary>
    public Finders Finders(string path) => new(Count(path + ":"), Count(""));

    public void Tell(Place place, string how, string test, TimeSpan took)
    {
        _told[place.Name] = (how, test);
        File.AppendAllText(_file, string.Create(CultureInfo.InvariantCulture, $"{place.Name}\t{how}\t{test}\t{took.TotalSeconds:0.0}\n"));
    }

    private Dictionary<string, int> Count(string start) =>
        _told.Where(t => IsFound(t.Value.How) && t.Key.StartsWith(start, StringComparison.Ordinal)).GroupBy(t => t.Value.Test).ToDictionary(g => g.Key, g => g.Count());
}
