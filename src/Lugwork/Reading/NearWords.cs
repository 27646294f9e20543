using System.Numerics;

namespace Lugwork.Reading;

/// <summary>The words of a vocabulary by their first letter and their length, to find the one that a misspelt word is near to.</summary>
/// <remarks>A letter is missing, doubled or too many, two stand in each other's place, or one is another; the first letter is right. Never the last letter alone: that is another form of a word.</remarks>
internal sealed class NearWords
{
    /// <summary>The shortest word that is known again.</summary>
    private const int Shortest = 6;

    /// <summary>The shortest word in which a letter may be another one.</summary>
    private const int ShortestOfOther = 8;

    /// <summary>The shortest word whose last letter may be missing.</summary>
    private const int ShortestWithoutEnd = 7;

    private const int Longest = 28;

    private readonly Dictionary<int, List<(string Word, uint Letters)>> _words = [];

    public NearWords(IEnumerable<string> words)
    {
        foreach (string word in words)
        {
            if (word.Length >= Shortest && word.Length <= Longest && Letters(word) is > 0 and uint letters)
            {
                int key = Key(word[0], word.Length);
                (_words.TryGetValue(key, out List<(string, uint)>? row) ? row : _words[key] = []).Add((word, letters));
            }
        }
    }

    /// <summary>The word that differs from this by a slip of the pen; null where none does, or several that say different things.</summary>
    /// <param name="word">The misspelt word.</param>
    /// <param name="same">Whether two words say the same.</param>
    public string? Of(string word, Func<string, string, bool> same)
    {
        if (word.Length < Shortest - 1 || word.Length > Longest || Letters(word) is not (> 0 and uint letters))
        {
            return null;
        }

        string? found = null;
        for (int length = Math.Max(Shortest, word.Length - 1); length <= word.Length + 1; length++)
        {
            if (!_words.TryGetValue(Key(word[0], length), out List<(string Word, uint Letters)>? row))
            {
                continue;
            }

            foreach ((string known, uint own) in row)
            {
                if (BitOperations.PopCount(own ^ letters) <= 2 && IsSlip(word, known))
                {
                    if (found is not null && !same(found, known))
                    {
                        return null;
                    }

                    found ??= known;
                }
            }
        }

        return found;
    }

    private static int Key(char first, int length) => (first << 5) | length;

    /// <summary>Which letters stand in the word; 0 where there is anything else in it.</summary>
    private static uint Letters(string word)
    {
        uint letters = 0;
        foreach (char c in word)
        {
            if (c is < 'a' or > 'z')
            {
                return 0;
            }

            letters |= 1u << (c - 'a');
        }

        return letters;
    }

    /// <summary>Two letters are exchanged, one is doubled, or one of a longer word is left out.</summary>
    public static bool IsTyped(string word, string known)
    {
        int same = word.AsSpan().CommonPrefixLength(known);
        ReadOnlySpan<char> a = word.AsSpan(same);
        ReadOnlySpan<char> b = known.AsSpan(same);
        return a.Length == b.Length ? a.Length > 1 && a[0] == b[1] && a[1] == b[0] && a[2..].SequenceEqual(b[2..])
            : a.Length > b.Length ? a[0] == word[same - 1] && a[1..].SequenceEqual(b)
            : known.Length >= 5 && a.Length > 0 && b[1..].SequenceEqual(a);
    }

    private static bool IsSlip(string word, string known)
    {
        int same = word.AsSpan().CommonPrefixLength(known);
        ReadOnlySpan<char> a = word.AsSpan(same);
        ReadOnlySpan<char> b = known.AsSpan(same);
        if (a.Length == b.Length)
        {
            return a.Length > 1 && ((a[0] == b[1] && a[1] == b[0] && a[2..].SequenceEqual(b[2..])) || (known.Length >= ShortestOfOther && a[1..].SequenceEqual(b[1..])));
        }

        // The last letter alone: "cups" is no slip of "cup", though "straightt" is one.
        return a.Length > b.Length
            ? (b.Length > 0 || a[0] == word[same - 1]) && a[1..].SequenceEqual(b)
            : (a.Length > 0 || known.Length >= ShortestWithoutEnd) && b[1..].SequenceEqual(a);
    }
}
