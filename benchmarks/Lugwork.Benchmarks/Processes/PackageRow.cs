namespace Lugwork.Benchmarks.Processes;

/// <summary>Row 14b: the size of the package. Its other half, the index, is a row of its own.</summary>
internal sealed class PackageRow : IRow
{
    private Measured _size;

    public IReadOnlyList<Claim> Claims { get; } = [new("14b", "package size", "none", 2, LimitKind.UnderMegabytes)];

    /// <summary>There is one candidate; it is packed here.</summary>
    public void Prove()
    {
        string folder = Directory.CreateTempSubdirectory("lugwork-package").FullName;
        try
        {
            (int code, string output) = Started.Run(Started.Dotnet, "pack", "src/Lugwork", "-c", "Release", "-o", folder);
            string[] packages = code == 0 ? Directory.GetFiles(folder, "*.nupkg") : [];
            _size = packages is [var only] ? new(new FileInfo(only).Length / 1e6) : throw new InvalidOperationException($"there is no package: {output}");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort) => [_size];
}
