using System.Diagnostics;
using System.Globalization;
using SharpFuzz;

namespace Lugwork.Fuzz;

/// <summary>Runs targets by what their inputs reach, and tells what came out.</summary>
internal static class FuzzRun
{
    public static int Of(FuzzArguments arguments)
    {
        FuzzTarget[] targets = [.. FuzzTargets.All.Where(t => arguments.Target == "all" || t.Name == arguments.Target)];
        if (targets.Length == 0)
        {
            Console.Error.WriteLine($"no target {arguments.Target}: {string.Join(", ", FuzzTargets.All.Select(t => t.Name))}");
            return 2;
        }

        // The library counts into this whoever runs it; afl-fuzz puts memory of its own in its place.
        BranchCounters counters = new();
        if (arguments.Replay is { } file)
        {
            byte[] input = File.ReadAllBytes(file);
            bool wrong = false;
            foreach (FuzzTarget target in targets)
            {
                wrong |= Told(FuzzFind.Of(target, input));
            }

            return wrong ? 1 : 0;
        }

        if (arguments.IsUnderAfl)
        {
            UnderAfl(targets[0]);
            return 0;
        }

        int finds = 0;
        foreach (FuzzTarget target in targets)
        {
            FuzzLoop loop = new(target, counters, arguments);
            loop.Run();
            finds += loop.Finds;
            Console.WriteLine(loop);
        }

        return finds == 0 ? 0 : 1;
    }

    private static bool Told(FuzzFind? find)
    {
        Console.WriteLine(find?.What ?? "nothing wrong");
        return find is not null;
    }

    private static void UnderAfl(FuzzTarget target) => Fuzzer.OutOfProcess.Run(stream =>
    {
        using MemoryStream input = new();
        stream.CopyTo(input);
        target.Run(input.ToArray());
    });
}

/// <summary>One target: seeds first, then changed inputs until the time is over.</summary>
internal sealed class FuzzLoop(FuzzTarget target, BranchCounters counters, FuzzArguments arguments)
{
    /// <summary>An input that takes more of a processor has hung; on a busy machine it may wait long for its turn.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    /// <summary>An input that takes longer by the clock waits for something that does not come.</summary>
    private static readonly TimeSpan LongestWait = TimeSpan.FromMinutes(10);

    private readonly Stopwatch _clock = new();
    private readonly List<byte[]> _corpus = [];
    private readonly HashSet<string> _kinds = [];
    private readonly int _reachedBefore = counters.Reached;
    private long _runs;
    private int _seeds;
    private long _started;
    private byte[] _running = [];
    private long _watched;
    private volatile bool _isWatched;
    private TimeSpan _taken;

    public int Finds => _kinds.Count;

    public void Run()
    {
        using Timer watch = new(_ => StopIfHung(), null, 1_000, 1_000);
        foreach (byte[] seed in target.Seeds.Concat(Kept()))
        {
            // The first time makes the tables; what that reaches, and how long it takes, is no doing of the input.
            Try(seed);
            _corpus.Add(seed);
        }

        _seeds = _corpus.Count;
        _isWatched = true;
        _clock.Start();
        Random random = new(arguments.Seed);
        Mutator mutator = new(random, [.. target.Words], target.MostBytes);
        while (_clock.Elapsed.TotalSeconds < arguments.Seconds)
        {
            // What came last leads on most often.
            int latest = Math.Max(1, _corpus.Count / 4);
            byte[] input = _corpus[random.Next(3) == 0 ? _corpus.Count - 1 - random.Next(latest) : random.Next(_corpus.Count)];
            byte[] next = mutator.Next(input, _corpus[random.Next(_corpus.Count)]);
            if (Try(next))
            {
                _corpus.Add(next);
                Keep(next);
            }
        }

        Volatile.Write(ref _started, 0);
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"{target.Name}: {_clock.Elapsed.TotalSeconds:0} s, {_runs} runs, {_seeds} seeds, {_corpus.Count - _seeds} inputs that reached something new, {counters.Reached - _reachedBefore} pairs of branches more ({counters.Reached} in all), {Finds} finds");

    /// <summary>Whether the input reached something new.</summary>
    private bool Try(byte[] input)
    {
        _runs++;
        _running = input;
        Volatile.Write(ref _started, Stopwatch.GetTimestamp());
        counters.Clear();
        FuzzFind? find = FuzzFind.Of(target, input);
        bool isNew = counters.TakeNew();
        if (find is not null && _kinds.Add(find.Kind))
        {
            // Made shorter, it runs often, and each run may take its time.
            Volatile.Write(ref _started, 0);
            find = find.Shorter(target);
            find.Save(arguments.Finds, target.Name, _kinds.Count);
            Console.WriteLine($"{target.Name}: {find.Kind}\n{find.What}");
        }

        return isNew;
    }

    /// <summary>Called each second: what the input that is running has taken since it was first seen here.</summary>
    private void StopIfHung()
    {
        long started = Volatile.Read(ref _started);
        TimeSpan taken = Environment.CpuUsage.TotalTime;
        if (started == 0 || started != _watched)
        {
            (_watched, _taken) = (started, taken);
        }
        else if (_isWatched && (taken - _taken > Longest || Stopwatch.GetElapsedTime(started) > LongestWait))
        {
            new FuzzFind("hang", _running, $"more than {Longest}").Save(arguments.Finds, target.Name, _kinds.Count + 1);
            Console.WriteLine($"{target.Name}: an input takes more than {Longest}");
            Environment.FailFast("an input hangs");
        }
    }

    private IEnumerable<byte[]> Kept() => arguments.Corpus is { } folder && Directory.Exists(Path.Combine(folder, target.Name))
        ? Directory.GetFiles(Path.Combine(folder, target.Name)).Order(StringComparer.Ordinal).Select(File.ReadAllBytes)
        : [];

    private void Keep(byte[] input)
    {
        if (arguments.Corpus is { } folder)
        {
            string name = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(input))[..16];
            File.WriteAllBytes(Path.Combine(Directory.CreateDirectory(Path.Combine(folder, target.Name)).FullName, name), input);
        }
    }
}
