using System.Text.RegularExpressions;
using Answers;

namespace Lugwork.Tests.Docs;

/// <summary>Blocks of a page that are not typed there: code and what it prints, named behind the language of the fence, such as <c>```csharp samples/Answers/PartOnFrame.cs#post</c>.</summary>
internal static partial class Snippets
{
    private const string Home = "samples/Answers/";

    /// <summary>The page as its samples have it: code from the region or file, text as the code prints it now.</summary>
    public static string Fresh(string page) => Block().Replace(page, block =>
        block.Groups["of"].Value is { Length: > 0 } of
            ? $"{block.Groups["open"].Value}{(block.Groups["language"].Value == "text" ? Printed(of) : Code(of))}```\n"
            : block.Value);

    /// <summary>Every block: language, what it names, body.</summary>
    public static IEnumerable<(string Language, string Of, string Body)> Of(string page) =>
        Block().Matches(page).Select(b => (b.Groups["language"].Value, b.Groups["of"].Value, b.Groups["body"].Value));

    /// <summary>A region of a file by "path#region", or the whole file.</summary>
    public static string Code(string of)
    {
        string[] parts = of.Split('#');
        string file = Path.Combine(DocPage.Root, parts[0]);
        Assert.True(File.Exists(file), $"{of}: there is no such file");
        return parts.Length == 1 ? File.ReadAllText(file) : Region(File.ReadAllLines(file), parts[1], of);
    }

    /// <summary>What the code of a region prints.</summary>
    public static string Printed(string of)
    {
        Assert.True(of.StartsWith(Home, StringComparison.Ordinal) && AnswerList.All.ContainsKey(of[Home.Length..]), $"{of}: no such answer can be run");
        TextWriter before = Console.Out;
        using StringWriter said = new() { NewLine = "\n" };
        Console.SetOut(said);
        try
        {
            AnswerList.All[of[Home.Length..]]();
        }
        finally
        {
            Console.SetOut(before);
        }

        return said.ToString().ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
    }

    /// <summary>All pieces of a region, each without the blanks that all of its lines begin with.</summary>
    private static string Region(string[] lines, string name, string of)
    {
        List<string> code = [];
        List<string>? piece = null;
        foreach (string line in lines)
        {
            if (line.Trim() == $"#region {name}")
            {
                piece = [];
            }
            else if (piece is not null && line.Trim() == "#endregion")
            {
                int margin = piece.Where(l => l.Length > 0).Min(l => l.Length - l.TrimStart().Length);
                code.AddRange(piece.Select(l => l.Length > 0 ? l[margin..] : l));
                piece = null;
            }
            else
            {
                piece?.Add(line);
            }
        }

        Assert.True(code.Count > 0 && piece is null, $"{of}: there is no such region, or it has no end");
        return string.Join('\n', code) + "\n";
    }

    [GeneratedRegex(@"^(?<open>```(?<language>[a-z#]+)(?: (?<of>[^\n]+))?\n)(?<body>.*?)^```\n", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();
}
