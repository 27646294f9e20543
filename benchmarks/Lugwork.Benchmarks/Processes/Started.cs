using System.Diagnostics;
using System.Globalization;

namespace Lugwork.Benchmarks.Processes;

/// <summary>Processes that a row starts itself.</summary>
internal static class Started
{
    /// <summary>Root of the repository: where the solution lies.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Runs to the end; output and exit code.</summary>
    public static (int Code, string Output) Run(string program, params IEnumerable<string> arguments)
    {
        ProcessStartInfo start = new(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = Root };

        // A build server that stays behind would hold the pipe open, and reading it would never end.
        foreach ((string name, string value) in ((string, string)[])[("MSBUILDDISABLENODEREUSE", "1"), ("UseSharedCompilation", "false"), ("DOTNET_CLI_USE_MSBUILD_SERVER", "0")])
        {
            start.Environment[name] = value;
        }

        using Process process = Process.Start(start) ?? throw new InvalidOperationException($"{program} does not start");
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + errors.Result);
    }

    /// <summary>Nanoseconds from before a process is started until it is gone.</summary>
    public static double Whole(string program, params IEnumerable<string> arguments)
    {
        long start = Stopwatch.GetTimestamp();
        using Process process = Process.Start(program, arguments);
        process.WaitForExit();
        double elapsed = Stopwatch.GetElapsedTime(start).TotalNanoseconds;
        return process.ExitCode == 0 ? elapsed : throw new InvalidOperationException($"{program} ended with {process.ExitCode}");
    }

    /// <summary>Nanoseconds that a probe of this program measured inside itself.</summary>
    public static double Probe(string probe)
    {
        (int code, string output) = Run(Dotnet, typeof(Started).Assembly.Location, probe);
        return code == 0 ? double.Parse(output, CultureInfo.InvariantCulture) : throw new InvalidOperationException($"{probe} ended with {code}: {output}");
    }

    public static string Dotnet => Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") is { Length: > 0 } path ? path : "dotnet";

    private static string FindRoot()
    {
        string? at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "Lugwork.slnx")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at ?? throw new DirectoryNotFoundException("Lugwork.slnx is in no folder above this program");
    }
}
