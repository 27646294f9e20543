using System.Collections.Immutable;

namespace Lugwork;

/// <summary>A need on one line that can be read: the first things it asks for, what else decides, and how many more lines there are.</summary>
internal static class NeedText
{
    private const int Most = 3;

    public static string OneLine(Need need)
    {
        string[] names = [.. need.Lines.SelectMany(l => l.Follows).Distinct().Select(s => $"the {s.Name}")];
        NeedLine[] own = [.. need.Lines.Where(l => l.Follows.IsEmpty).OrderBy(Rank)];
        NeedLine[] first = [.. own.DistinctBy(l => l.Input.Called).Take(Most)];
        string[] told =
        [
            .. first.Select(l => l.InShort()),
            names.Length == 0 ? "" : $"goes by {string.Join(", ", names.Take(Most))}{(names.Length > Most ? $" and {names.Length - Most} more" : "")}",
            own.Length == first.Length ? "" : $"and {own.Length - first.Length} more",
        ];
        return $"{need.Slot.Name}{(need.IsFilled ? " (there is one)" : "")}: {string.Join("; ", told.Where(t => t.Length > 0))}";
    }

    /// <summary>What keeps some part out stands first, then what is to be measured, then what only asks for a look.</summary>
    private static int Rank(NeedLine line) => line.KeepsSomeOut ? 0 : line.IsOpen ? 1 : 2;
}
