namespace Lugwork.Tests.Architecture;

/// <summary>Dependencies run one way, read from the sources themselves.</summary>
public sealed class DirectionTests
{
    private static readonly string[] Areas = ["Hubs", "Tyres", "Seating", "Brakes", "Drivetrain", "Steering", "Cockpit", "BottomBrackets", "Suspension"];

    private static readonly string Root = FindRoot();

    [Fact]
    public void A_folder_knows_only_the_folders_below_it()
    {
        Dictionary<string, string[]> files = Directory.GetDirectories(Path.Combine(Root, "src", "Lugwork"))
            .Where(d => Path.GetFileName(d) is not ("bin" or "obj"))
            .ToDictionary(d => Path.GetFileName(d), d => Directory.GetFiles(d, "*.cs"));
        Dictionary<string, string> homes = [];

        // Notebooks only adds an attribute to types that have their home below.
        foreach ((string folder, string[] paths) in files.OrderBy(f => f.Key == "Notebooks"))
        {
            foreach (string type in paths.SelectMany(p => Declared(File.ReadAllText(p))))
            {
                homes.TryAdd(type, folder);
            }
        }

        Assert.True(homes.Count > 60, $"only {homes.Count} types found");
        List<string> wrong = [];
        foreach ((string folder, string[] paths) in files)
        {
            foreach (string path in paths)
            {
                string text = File.ReadAllText(path);
                string code = Code(text);

                // What a file declares itself is its own, such as the reasons that stand apart in each area.
                foreach (string word in Words(code).Distinct().Except(Members(code)).Except(Declared(text)))
                {
                    if (homes.TryGetValue(word, out string? home) && home != folder && !MayKnow(folder, home))
                    {
                        wrong.Add($"{folder}/{Path.GetFileName(path)} knows {word} of {home}");
                    }
                }
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void The_median_file_is_short()
    {
        int[] lengths = [.. Directory.GetFiles(Path.Combine(Root, "src", "Lugwork"), "*.cs", SearchOption.AllDirectories).Select(f => File.ReadAllLines(f).Length).Order()];
        Assert.InRange(lengths[lengths.Length / 2], 1, 110);
    }

    private static bool MayKnow(string folder, string other) => folder == "Notebooks" || (other != "Notebooks" && IsBelow(folder, other));

    private static bool IsBelow(string folder, string other) => folder switch
    {
        "Measures" or "Sources" => false,
        "Fits" => other is "Measures" or "Sources",
        "Builds" => other is not ("Geometry" or "Reading" or "Workshop" or "Planning" or "Catalogues" or "Drawing"),
        "Geometry" => other is not ("Reading" or "Workshop" or "Planning" or "Catalogues" or "Drawing"),
        "Reading" => other is not ("Geometry" or "Workshop" or "Planning" or "Catalogues" or "Drawing"),
        "Workshop" => other is not ("Planning" or "Catalogues"),
        "Planning" => other is not ("Geometry" or "Reading" or "Workshop" or "Catalogues" or "Drawing"),
        "Catalogues" => other is not ("Geometry" or "Reading" or "Workshop" or "Planning" or "Drawing"),
        "Drawing" => other is not ("Reading" or "Workshop" or "Catalogues"),
        _ => other is "Measures" or "Sources" or "Fits" && Areas.Contains(folder),
    };

    private static IEnumerable<string> Declared(string text)
    {
        string[] words = [.. Words(Code(text))];
        for (int i = 0; i + 1 < words.Length; i++)
        {
            if (words[i] is "class" or "struct" or "interface" or "enum" || (words[i] == "record" && words[i + 1] is not ("struct" or "class")))
            {
                yield return words[i + 1];
            }
        }
    }

    /// <summary>Properties, fields and enum members that the file declares: they may carry the name of a type elsewhere.</summary>
    private static IEnumerable<string> Members(string code)
    {
        foreach (string line in code.Split('\n').Select(l => l.Trim()))
        {
            int property = line.IndexOf(" { get", StringComparison.Ordinal);
            int arrow = line.IndexOf(" =>", StringComparison.Ordinal);
            int field = line.Contains(" static readonly ", StringComparison.Ordinal) ? line.IndexOf(" = ", StringComparison.Ordinal) : -1;
            int end = property > 0 ? property : field > 0 ? field : arrow;
            string head = end > 0 ? line[..end] : line.TrimEnd(',');
            bool enumMember = end < 0 && line.EndsWith(',') && !head.Contains(' ', StringComparison.Ordinal);
            if (end > 0 || enumMember)
            {
                yield return head[(head.LastIndexOf(' ') + 1)..];
            }
        }
    }

    /// <summary>Without comments, strings, member names after a point and the member that a copy sets.</summary>
    private static string Code(string text)
    {
        System.Text.StringBuilder code = new();
        foreach (string line in text.Split('\n'))
        {
            string bare = line.TrimStart().StartsWith("//", StringComparison.Ordinal) ? "" : line;
            string[] pieces = bare.Split('"');
            for (int i = 0; i < pieces.Length; i += 2)
            {
                code.Append(pieces[i]).Append(' ');
            }

            code.Append('\n');
        }

        return System.Text.RegularExpressions.Regex.Replace(code.ToString(), @"with \{ \w+ =", "with { =");
    }

    private static IEnumerable<string> Words(string code)
    {
        int start = -1;
        for (int i = 0; i <= code.Length; i++)
        {
            bool part = i < code.Length && (char.IsLetterOrDigit(code[i]) || code[i] == '_');
            if (part && start < 0)
            {
                start = i;
            }
            else if (!part && start >= 0)
            {
                if (start == 0 || code[start - 1] != '.')
                {
                    yield return code[start..i];
                }

                start = -1;
            }
        }
    }

    private static string FindRoot()
    {
        string? at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "Lugwork.slnx")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at ?? throw new DirectoryNotFoundException("Lugwork.slnx is in no folder above the tests");
    }
}
