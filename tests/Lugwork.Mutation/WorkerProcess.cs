using System.Diagnostics;
using System.Globalization;

namespace Lugwork.Mutation;

/// <summary>The other side of the worker: asks it, ends it where it takes too long, and starts the next.</summary>
internal sealed class WorkerProcess(string[] folders, int cases) : IDisposable
{
    /// <summary>What is loaded is not always let go of: so many questions, then a new process.</summary>
    private const int MostAsked = 80;

    /// <summary>So many times the time that it has, where it hardly gets any of the machine.</summary>
    private const int MostTurns = 20;

    private Process? _process;
    private int _asked;

    /// <summary>Asks, and hands every line to the listener until it says that it was the last; each line has so many milliseconds of the worker's own time. Says what ended it: nothing, "time" or "crash".</summary>
    public string? Ask(string line, Func<string, (bool Last, int Most)> listen, int most)
    {
        if (_process is null || _asked++ >= MostAsked)
        {
            End();
            _process = Start();
            _asked = 0;
        }

        _process.StandardInput.WriteLine(line);
        _process.StandardInput.Flush();
        while (true)
        {
            Task<string?> next = _process.StandardOutput.ReadLineAsync();
            if (!Comes(next, _process, most) || next.Result is null)
            {
                bool late = !next.IsCompleted;
                End();
                return late ? "time" : "crash";
            }

            (bool last, most) = listen(next.Result);
            if (last)
            {
                return null;
            }
        }
    }

    public void Dispose() => End();

    /// <summary>What counts is the worker's own time, so that a busy machine finds nothing; one that waits for ever is given up too.</summary>
    private static bool Comes(Task<string?> next, Process process, int most)
    {
        TimeSpan before = process.TotalProcessorTime;
        for (int turn = 0; turn < MostTurns; turn++)
        {
            if (next.Wait(most))
            {
                return true;
            }

            process.Refresh();
            if (process.HasExited || (process.TotalProcessorTime - before).TotalMilliseconds >= most)
            {
                return next.Wait(1_000);
            }
        }

        return false;
    }

    private Process Start()
    {
        ProcessStartInfo start = new(Environment.ProcessPath!) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        if (Path.GetFileNameWithoutExtension(start.FileName) == "dotnet")
        {
            start.ArgumentList.Add(typeof(WorkerProcess).Assembly.Location);
        }

        foreach (string word in (string[])["--worker", cases.ToString(CultureInfo.InvariantCulture), .. folders])
        {
            start.ArgumentList.Add(word);
        }

        start.Environment["DOTNET_TieredPGO"] = "0";
        Process process = Process.Start(start)!;
        process.ErrorDataReceived += static (_, _) => { };
        process.BeginErrorReadLine();
        return process;
    }

    private void End()
    {
        if (_process is not null)
        {
            _process.Kill(entireProcessTree: true);
            _process.WaitForExit();
            _process.Dispose();
            _process = null;
        }
    }
}
