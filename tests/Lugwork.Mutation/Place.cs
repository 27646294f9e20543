using System.Text.RegularExpressions;

namespace Lugwork.Mutation;

/// <summary>A place where the code can be changed, and what stands there instead.</summary>
/// <param name="Path">The file, from the root of the project.</param>
/// <param name="Start">Where the expression or statement begins, in characters.</param>
/// <param name="Length">How long it is.</param>
/// <param name="Line">Its line, from one.</param>
/// <param name="Code">That line, without blanks before and behind.</param>
/// <param name="Kind">What is changed, in a word or two.</param>
/// <param name="Was">The text that stands there.</param>
/// <param name="Text">The text that stands there instead.</param>
/// <param name="IsStatement">Whether a whole statement is left out.</param>
internal sealed partial record Place(string Path, int Start, int Length, int Line, string Code, string Kind, string Was, string Text, bool IsStatement)
{
    /// <summary>The same place has the same name in every run.</summary>
    public string Name => $"{Path}:{Line} @{Start} {Change}";

    /// <summary>The change without its place in the file.</summary>
    public string Change => $"{Kind}: {Flat(Was)} -> {(Text.Length == 0 ? "nothing" : Flat(Text))}";

    /// <summary>The folder of the file.</summary>
    public string Area => Path.Split('/')[^2];

    private static string Flat(string text) => Blanks().Replace(text, " ");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
