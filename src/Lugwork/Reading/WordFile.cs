using System.Collections.Immutable;
using System.IO.Compression;

namespace Lugwork.Reading;

/// <summary>The word tables of the reader, in six languages: text files of the folder <c>Words</c>, packed into one file that the assembly carries.</summary>
/// <remarks>A row has a term and its phrases, parted by a tab; a row of <c>pairs.txt</c> has the words for a thing, those for its state, and whether they stand in either order. Words of the trade are common practice, no source.</remarks>
internal static class WordFile
{
    /// <summary>Which files there are, in the order in which they are packed.</summary>
    public static ImmutableArray<string> Names => ["topics", "noise", "marks", "values", "doubts", "outside", "lengths", "pairs", "lists", "other-words", "other-words-of-the-trade"];

    /// <summary>All rows by the name of their file.</summary>
    public static Dictionary<string, List<string>> Read()
    {
        using Stream packed = typeof(WordFile).Assembly.GetManifestResourceStream("Lugwork.Reading.words.br")!;
        using BrotliStream plain = new(packed, CompressionMode.Decompress);
        using StreamReader reader = new(plain, System.Text.Encoding.UTF8);
        Dictionary<string, List<string>> files = new(StringComparer.Ordinal);
        List<string> rows = [];
        while (reader.ReadLine() is { } line)
        {
            if (line[0] == Mark)
            {
                files[line[1..]] = rows = [];
            }
            else
            {
                rows.Add(line);
            }
        }

        return files;
    }

    /// <summary>Sorted words in one row, each by a capital letter for how many letters it shares with the one before it, and the rest.</summary>
    public static string Fold(IEnumerable<string> words)
    {
        System.Text.StringBuilder row = new();
        string before = "";
        foreach (string word in words.Order(StringComparer.Ordinal))
        {
            int shared = Math.Min(word.AsSpan().CommonPrefixLength(before), MostShared);
            row.Append((char)('A' + shared)).Append(word.AsSpan(shared));
            before = word;
        }

        return row.ToString();
    }

    /// <summary>The words of a row that <see cref="Fold"/> made.</summary>
    public static IEnumerable<string> Unfold(string row)
    {
        string word = "";
        for (int i = 0; i < row.Length;)
        {
            int end = i + 1;
            while (end < row.Length && !char.IsAsciiLetterUpper(row[end]))
            {
                end++;
            }

            word = string.Concat(word.AsSpan(0, row[i] - 'A'), row.AsSpan(i + 1, end - i - 1));
            yield return word;
            i = end;
        }
    }

    private const int MostShared = 'Z' - 'A';

    /// <summary>Stands before the name of a file.</summary>
    internal const char Mark = '>';
}
