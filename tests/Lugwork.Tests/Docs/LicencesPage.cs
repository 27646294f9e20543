using System.Text;
using System.Text.Json;
using System.Xml.Linq;

namespace Lugwork.Tests.Docs;

/// <summary>licences.md: every package that is restored for this repository, out of the lock files, under the licence that the package itself names.</summary>
internal static class LicencesPage
{
    public const string Committed = "src/Lugwork/docs/licences.md";

    /// <summary>Licences under which a package may be passed on with one under MIT.</summary>
    public static string[] Free { get; } = ["MIT", "MIT-0", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "PostgreSQL"];

    /// <summary>What is used as it is and never passed on: the licence asks for the source of its own files alone; the last package names an address and no licence.</summary>
    public static Dictionary<string, string> OfTestsAlone { get; } = new() { ["Deque.AxeCore.Commons"] = "MPL-2.0", ["Microsoft.AspNetCore.Html.Abstractions"] = "names an address alone" };

    public static LockedPackage[] All { get; } = [.. Read().OrderBy(p => p.Id, StringComparer.OrdinalIgnoreCase).ThenBy(p => p.Version, StringComparer.Ordinal)];

    public static string Write()
    {
        StringBuilder page = new();
        page.Append("# What does it depend on, and under which licences?\n\n");
        page.Append("Made from the lock files and from what each restored package says of itself. Lugwork is under MIT. Whoever adds the package gets UnitsNet with it and nothing else; whoever adds Lugwork.EntityFrameworkCore gets what the second table lists. All other packages build, test, measure or show the library and are passed on with none of it.\n");
        Table(page, "With the package", p => p.Uses.Contains("package"));
        Table(page, "With Lugwork.EntityFrameworkCore, besides", p => p.Uses.Contains("satellite") && !p.Uses.Contains("package"));
        Table(page, "In this repository alone", p => !p.Uses.Contains("satellite") && !p.Uses.Contains("package"));
        page.Append("\nMPL-2.0 asks for the source of its own files where they are passed on; here a test uses them as they are, and nothing of them is passed on. A package that names an address alone says nothing of its licence by itself; a test of notebooks restores it with another one.\n");
        return page.ToString();
    }

    private static void Table(StringBuilder page, string title, Func<LockedPackage, bool> where)
    {
        page.Append("\n## ").Append(title).Append('\n');
        page.Head("package", "version", "licence", "for");
        foreach (LockedPackage package in All.Where(where))
        {
            page.Row(package.Id, package.Version, package.Licence, string.Join(", ", package.Uses.Order(StringComparer.Ordinal)));
        }
    }

    private static IEnumerable<LockedPackage> Read()
    {
        Dictionary<(string Id, string Version), HashSet<string>> uses = [];
        foreach (string area in new[] { "src", "tests", "samples", "benchmarks" })
        {
            foreach (string file in Directory.GetFiles(Path.Combine(DocPage.Root, area), "packages.lock.json", SearchOption.AllDirectories))
            {
                using JsonDocument locked = JsonDocument.Parse(File.ReadAllText(file));
                foreach (JsonProperty framework in locked.RootElement.GetProperty("dependencies").EnumerateObject())
                {
                    Dictionary<string, JsonElement> packages = framework.Value.EnumerateObject().Where(p => p.Value.GetProperty("type").GetString() != "Project").ToDictionary(p => p.Name, p => p.Value, StringComparer.OrdinalIgnoreCase);
                    string home = Path.GetFileName(Path.GetDirectoryName(file)!);
                    HashSet<string> shipped = home switch { "Lugwork" => With(packages, "UnitsNet"), "Lugwork.EntityFrameworkCore" => With(packages, "UnitsNet", "Microsoft.EntityFrameworkCore"), _ => [] };
                    foreach ((string id, JsonElement package) in packages)
                    {
                        string use = !shipped.Contains(id) ? area == "src" ? "building" : area : home == "Lugwork" ? "package" : "satellite";
                        string version = package.GetProperty("resolved").GetString()!;
                        (uses.TryGetValue((id, version), out HashSet<string>? of) ? of : uses[(id, version)] = []).Add(use);
                    }
                }
            }
        }

        return uses.Select(u => new LockedPackage(u.Key.Id, u.Key.Version, [.. u.Value], LicenceOf(u.Key.Id, u.Key.Version)));
    }

    /// <summary>The packages and all that they bring along.</summary>
    private static HashSet<string> With(Dictionary<string, JsonElement> packages, params string[] of)
    {
        HashSet<string> all = new(StringComparer.OrdinalIgnoreCase);
        Stack<string> next = new(of);
        while (next.TryPop(out string? id))
        {
            if (packages.TryGetValue(id, out JsonElement package) && all.Add(id) && package.TryGetProperty("dependencies", out JsonElement more))
            {
                foreach (JsonProperty dependency in more.EnumerateObject())
                {
                    next.Push(dependency.Name);
                }
            }
        }

        return all;
    }

    /// <summary>What the package says: an expression, or the licence whose text it carries. Where it was not restored (the native compiler, before the probe is published) the committed row stands.</summary>
    private static string LicenceOf(string id, string version)
    {
        foreach (string folder in Folders)
        {
            string package = Path.Combine(folder, id.ToLowerInvariant(), version);
            string nuspec = Path.Combine(package, id.ToLowerInvariant() + ".nuspec");
            if (File.Exists(nuspec))
            {
                XElement? licence = XDocument.Load(nuspec).Descendants().FirstOrDefault(e => e.Name.LocalName == "license");
                return ((string?)licence?.Attribute("type"), licence?.Value) switch
                {
                    ("expression", { } expression) => expression,
                    ("file", { } file) when IsMit(File.ReadAllText(Path.Combine(package, file))) => "MIT",
                    ("file", { } file) => $"in its file {file}",
                    _ => "names an address alone",
                };
            }
        }

        string row = $"| {id} | {version} | ";
        return File.ReadAllLines(Path.Combine(DocPage.Root, Committed)).FirstOrDefault(l => l.StartsWith(row, StringComparison.Ordinal))?[row.Length..].Split(" |")[0] ?? "not restored";
    }

    private static bool IsMit(string text) => text.TrimStart('\uFEFF').StartsWith("The MIT License (MIT)", StringComparison.Ordinal) && text.Contains("without restriction", StringComparison.Ordinal);

    private static string[] Folders => field ??= ReadFolders();

    private static string[] ReadFolders()
    {
        using JsonDocument assets = JsonDocument.Parse(File.ReadAllText(Path.Combine(DocPage.Root, "artifacts", "obj", "Lugwork.Tests", "project.assets.json")));
        return [.. assets.RootElement.GetProperty("packageFolders").EnumerateObject().Select(f => f.Name)];
    }
}

/// <summary>A package of a lock file.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Version">Its version.</param>
/// <param name="Uses">What it is there for.</param>
/// <param name="Licence">What it says of its licence.</param>
internal sealed record LockedPackage(string Id, string Version, string[] Uses, string Licence);
