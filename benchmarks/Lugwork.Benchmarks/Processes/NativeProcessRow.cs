namespace Lugwork.Benchmarks.Processes;

/// <summary>Row 14: a whole native process that judges one build. The probe is published on the spot.</summary>
internal sealed class NativeProcessRow : IRow, IDisposable
{
    private const string Peer = "/bin/true";

    private string _folder = "";
    private string? _missing;
    private double _ours;
    private double _theirs;

    public IReadOnlyList<Claim> Claims { get; } = [new("14", "whole native process judging one build", $"`{Peer}`", 4, LimitKind.AtMostTimes)];

    public string Note => _missing is null ? $"Row 14: the native process took {_ours / 1e6:0.00} ms, `{Peer}` {_theirs / 1e6:0.00} ms, both with starting and waiting (medians of the last repeat)." : "";

    private string Published => Path.Combine(_folder, "published");

    private string Probe => Path.Combine(Published, "Lugwork.AotProbe");

    public void Prove()
    {
        _folder = Directory.CreateTempSubdirectory("lugwork-native").FullName;
        _missing = Publish();
        if (_missing is not null)
        {
            return;
        }

        // A post that fits, and one that does not: the process says which by its exit code.
        if (Started.Run(Probe, "27.2").Code != 0 || Started.Run(Probe, "30.9").Code == 0)
        {
            throw new InvalidOperationException("the native process does not tell a post that fits from one that does not");
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        if (_missing is not null)
        {
            return [new(0, Missing: _missing)];
        }

        double[] medians = Timing.InTurn(effort == Effort.Full ? 1_000 : 250, () => Started.Whole(Probe, "27.2"), () => Started.Whole(Peer));
        (_ours, _theirs) = (medians[0], medians[1]);
        return [new(_ours / _theirs)];
    }

    public void Dispose()
    {
        if (_folder.Length > 0)
        {
            Directory.Delete(_folder, recursive: true);
        }
    }

    /// <summary>Null, or why there is no native process.</summary>
    private string? Publish()
    {
        if (!File.Exists(Peer))
        {
            return $"not measured: there is no {Peer}";
        }

        try
        {
            _ = Started.Run("gcc", "--version");
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return "not measured: there is no gcc to link with";
        }

        (int code, string output) = Started.Run(Started.Dotnet, "publish", "tests/Lugwork.AotProbe", "-c", "Release", "-p:CppCompilerAndLinker=gcc", "-p:JudgeOnly=true", "--artifacts-path", Path.Combine(_folder, "artifacts"), "-o", Published);
        return code == 0 ? null : "not measured: the native publish failed: " + (output.Split('\n').FirstOrDefault(l => l.Contains("error", StringComparison.Ordinal)) ?? $"exit {code}").Replace('|', '/');
    }
}
