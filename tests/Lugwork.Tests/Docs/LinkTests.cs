using System.Text.RegularExpressions;

namespace Lugwork.Tests.Docs;

/// <summary>Links between pages and to files go where they say, and no page names a file that is not there.</summary>
public sealed partial class LinkTests
{
    /// <summary>Every page of the repository, by its path.</summary>
    public static TheoryData<string> Pages =>
    [
        .. DocPage.Names.Select(n => $"src/Lugwork/docs/{n}"), "README.md", "DEVELOPERS.md", "CHANGELOG.md", "samples/README.md", "benchmarks/README.md", "src/Lugwork.EntityFrameworkCore/README.md",
    ];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_link_goes_to_a_file_and_a_heading_that_are_there(string path)
    {
        string text = WithoutCode(File.ReadAllText(Path.Combine(DocPage.Root, path)));
        foreach (string target in Link().Matches(text).Select(m => m.Groups["to"].Value).Where(t => !t.StartsWith("https://", StringComparison.Ordinal)))
        {
            string[] parts = target.Split('#');
            string file = parts[0].Length == 0 ? Path.Combine(DocPage.Root, path) : Path.GetFullPath(Path.Combine(DocPage.Root, Path.GetDirectoryName(path)!, parts[0]));
            Assert.True(File.Exists(file) || Directory.Exists(file), $"{path} links to {target}, which is not there");
            Assert.True(file.StartsWith(DocPage.Root, StringComparison.Ordinal), $"{path} links to {target}, outside the repository");
            if (parts.Length > 1)
            {
                Assert.Contains(parts[1], Headings(file));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void No_page_names_a_file_that_is_not_there(string path)
    {
        string text = File.ReadAllText(Path.Combine(DocPage.Root, path));
        foreach (string name in Named().Matches(text).Select(m => m.Groups["path"].Value))
        {
            string file = Path.Combine(DocPage.Root, name.TrimEnd('/'));
            Assert.True(File.Exists(file) || Directory.Exists(file) || (name.Contains('*', StringComparison.Ordinal) && Directory.GetFiles(Path.GetDirectoryName(file)!, Path.GetFileName(file)).Length > 0), $"{path} names {name}, which is not there");
        }
    }

    [Fact]
    public void Every_page_is_reached_from_the_README()
    {
        string readme = File.ReadAllText(Path.Combine(DocPage.Root, "README.md"));
        Assert.All(DocPage.Names, n => Assert.Contains($"(src/Lugwork/docs/{n})", readme, StringComparison.Ordinal));
    }

    [Fact]
    public void Pages_that_a_package_carries_link_only_to_what_it_carries()
    {
        foreach (string name in DocPage.Names)
        {
            foreach (string target in Link().Matches(WithoutCode(File.ReadAllText(Path.Combine(DocPage.Folder, name)))).Select(m => m.Groups["to"].Value.Split('#')[0]).Where(t => t.Length > 0 && !t.StartsWith("https://", StringComparison.Ordinal)))
            {
                Assert.True(!target.Contains('/', StringComparison.Ordinal) && File.Exists(Path.Combine(DocPage.Folder, target)), $"{name} links to {target}: name it as a path instead");
            }
        }
    }

    [Fact]
    public void Every_version_of_the_package_that_is_named_is_its_own()
    {
        string project = File.ReadAllText(Path.Combine(DocPage.Root, "src", "Lugwork", "Lugwork.csproj"));
        string version = project[(project.IndexOf("<Version>", StringComparison.Ordinal) + "<Version>".Length)..project.IndexOf("</Version>", StringComparison.Ordinal)];
        string[] files = [.. Directory.GetFiles(Path.Combine(DocPage.Root, "samples", "scripts")), .. Directory.GetFiles(DocPage.Folder, "*.md"), Path.Combine(DocPage.Root, "README.md")];
        (string File, string Version)[] named = [.. files.SelectMany(f => PackageVersion().Matches(File.ReadAllText(f)).Select(m => (Path.GetFileName(f), m.Groups["version"].Value)))];
        Assert.True(named.Length > 10);
        Assert.All(named, n => Assert.Equal((n.File, version), n));
    }

    private static string WithoutCode(string text) => InlineCode().Replace(Fence().Replace(text, ""), "");

    /// <summary>The anchors that the headings of a page have.</summary>
    private static HashSet<string> Headings(string file) =>
    [
        .. WithoutFences(File.ReadAllText(file)).Split('\n').Where(l => l.StartsWith('#')).Select(l => NotInAnchor().Replace(l.TrimStart('#').Trim().ToLowerInvariant(), "").Replace(' ', '-')),
    ];

    private static string WithoutFences(string text) => Fence().Replace(text, "");

    [GeneratedRegex(@"(?<!\\)\]\((?<to>[^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"(?<![\w./-])(?<path>(src|tests|samples|benchmarks|\.ci)/[A-Za-z0-9_./*-]*[A-Za-z0-9_*/-])(?![\w{<])")]
    private static partial Regex Named();

    [GeneratedRegex(@"(#:package Lugwork@|nuget: Lugwork, )(?<version>[0-9][^\s""`]*)")]
    private static partial Regex PackageVersion();

    [GeneratedRegex(@"^```.*?^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();

    [GeneratedRegex("`[^`\n]*`")]
    private static partial Regex InlineCode();

    [GeneratedRegex(@"[^\p{L}\p{N} _-]")]
    private static partial Regex NotInAnchor();
}
