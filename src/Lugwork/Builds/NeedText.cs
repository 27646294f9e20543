using System.Collections.Immutable;

namespace Lugwork;

/// <summary>A need on one line that can be read: the first things it asks for, what else decides, and how many more lines there are.</summary>
internal static class NeedText
{
    private const int MostLines = 4;

    private const int MostNames = 3;

    private const int ToMeasure = 2;

    public static string OneLine(Need need)
    {
        string[] names = [.. need.Lines.SelectMany(l => l.Follows).Distinct().Select(s => $"the {s.Name}")];
        NeedLine[] own = [.. need.Lines.Where(l => l.Follows.IsEmpty && !l.IsCovered).OrderBy(Rank)];
        NeedLine[] first = [.. own.Where(l => Rank(l) < ToMeasure).Concat(own.Where(l => Rank(l) >= ToMeasure).DistinctBy(l => l.Input.Called)).Take(MostLines)];
        string[] told =
        [
            .. first.Select(l => l.InShort()),
            names.Length == 0 ? "" : $"goes by {string.Join(", ", names.Take(MostNames))}{(names.Length > MostNames ? $" and {names.Length - MostNames} more" : "")}",
            own.Length == first.Length ? "" : $"and {own.Length - first.Length} more",
        ];
        return $"{need.Slot.Name}{(need.IsFilled ? " (there is one)" : "")}: {string.Join("; ", told.Where(t => t.Length > 0))}";
    }

    /// <summary>What nothing suits stands first, then what keeps some part out, then what is to be measured, then what only asks for a look.</summary>
    private static int Rank(NeedLine line) => line.KeepsAllOut ? 0 : line.KeepsSomeOut ? 1 : line.IsOpen ? ToMeasure : ToMeasure + 1;
}
