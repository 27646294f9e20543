namespace Lugwork.Mutation;

/// <summary>One change: the tests that come by it, in turn, until one fails.</summary>
internal static class Trial
{
    /// <summary>So many times as long as without a change, and what it takes to make all tables, counts as found.</summary>
    private const int TimesAsLong = 5;
    private const int MillisecondsMore = 20_000;
    private const int MillisecondsToStart = 60_000;

    public static (string How, string Test) Run(int number, IEnumerable<(string Name, int Milliseconds)> tests, WorkerProcess worker, int budget)
    {
        List<string> taken = [];
        Dictionary<string, int> most = [];
        long sum = 0;
        foreach ((string name, int milliseconds) in tests)
        {
            sum += milliseconds;
            if (taken.Count > 0 && sum > budget * 1000L)
            {
                break;
            }

            taken.Add(name);
            most[name] = (TimesAsLong * milliseconds) + MillisecondsMore;
        }

        if (taken.Count == 0)
        {
            return ("unreached", "");
        }

        // What brings the worker down does so twice.
        string at = "";
        string found = "";
        string? Ask() => worker.Ask(
            string.Join('\t', ["run", number.ToString(System.Globalization.CultureInfo.InvariantCulture), .. taken]),
            line =>
            {
                string[] words = line.Split('\t');
                if (words[0] == "at")
                {
                    at = words[1];
                    return (false, most[at]);
                }

                found = words[0] == "found" ? words[1] : "";
                return (true, 0);
            },
            MillisecondsToStart);
        string? ended = Ask();
        ended = ended == "crash" ? Ask() : ended;
        if (ended is { } && at.Length == 0)
        {
            throw new InvalidOperationException($"the worker does not start: {ended}");
        }

        return ended is { } ? (ended, at) : found.Length > 0 ? ("found", found) : ("survived", $"{taken.Count} tests");
    }
}
