using System.Diagnostics;

namespace Lugwork.Databases;

/// <summary>This program, started once more as a process of its own.</summary>
internal static class OwnProcess
{
    public static Process Start(params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet", [typeof(OwnProcess).Assembly.Location, .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        return Process.Start(start) ?? throw new InvalidOperationException("it was not started");
    }
}
