namespace Lugwork.Fuzz;

/// <summary>The committed inputs.</summary>
internal static class FuzzSeeds
{
    /// <summary>The files of a target, by name.</summary>
    public static IEnumerable<byte[]> Of(string target) => In("tests", "Lugwork.Fuzz", "Seeds", target);

    /// <summary>The files of a folder of the repository, by name.</summary>
    public static IEnumerable<byte[]> In(params string[] folder)
    {
        string path = Path.Combine([Root(), .. folder]);
        return Directory.Exists(path) ? Directory.GetFiles(path).Order(StringComparer.Ordinal).Select(File.ReadAllBytes) : [];
    }

    private static string Root()
    {
        string? at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "Lugwork.slnx")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at ?? throw new DirectoryNotFoundException("Lugwork.slnx is in no folder above this program");
    }
}
