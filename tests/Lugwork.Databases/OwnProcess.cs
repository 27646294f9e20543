using System.Diagnostics;

namespace Lugwork.Databases;

/// <summary>This program, started once more as a process of its own. It ends with whoever started it, and is waited for with an end.</summary>
internal sealed class OwnProcess : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);
    private readonly Process _process;
    private readonly Task<string> _wrong;

    private OwnProcess(Process process)
    {
        _process = process;
        _wrong = process.StandardError.ReadToEndAsync();
    }

    public static OwnProcess Start(params string[] arguments)
    {
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", [typeof(OwnProcess).Assembly.Location, .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        return new(Process.Start(start) ?? throw new InvalidOperationException("it was not started"));
    }

    /// <summary>All that it says until it ends well.</summary>
    public async Task<string> Said()
    {
        string said = await _process.StandardOutput.ReadToEndAsync().WaitAsync(Patience);
        await _process.WaitForExitAsync().WaitAsync(Patience);
        Assert.True(_process.ExitCode == 0, await _wrong);
        return said;
    }

    /// <summary>The next line that it says; null where it ended.</summary>
    public async Task<string?> Line() => await _process.StandardOutput.ReadLineAsync().WaitAsync(Patience);

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
            _process.WaitForExit();
        }

        _process.Dispose();
    }
}
