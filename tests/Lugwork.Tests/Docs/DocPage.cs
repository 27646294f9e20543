using System.Text;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Docs;

/// <summary>The pages under src/Lugwork/docs, and how a made one is held against the committed one.</summary>
internal static class DocPage
{
    public static string Root => SchemaBench.Root;

    public static string Folder { get; } = Path.Combine(Root, "src", "Lugwork", "docs");

    public static string[] Names => [.. Directory.GetFiles(Folder, "*.md").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    /// <summary>Fails where the committed file is another, and leaves the fresh one beside the tests.</summary>
    /// <param name="committed">Path from the root of the repository.</param>
    /// <param name="made">What it has to be.</param>
    public static void Hold(string committed, string made)
    {
        string there = Path.Combine(Root, committed);
        if (File.Exists(there) && File.ReadAllText(there) == made)
        {
            return;
        }

        string renewed = Path.Combine(AppContext.BaseDirectory, "docs", Path.GetFileName(committed));
        Directory.CreateDirectory(Path.GetDirectoryName(renewed)!);
        File.WriteAllText(renewed, made, new UTF8Encoding(false));
        Assert.Fail($"{committed} is stale. Look at the change, then copy {renewed} over it.");
    }

    public static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
