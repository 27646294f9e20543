using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Looks once more at the line of which values were read, for words by which a value is one that the part does not have.</summary>
/// <remarks>Where the words stand decides: "almost 27.2" is a doubt, "27.2, almost new" is none. Linear in the line.</remarks>
internal static class OtherBike
{
    /// <summary>So many words on is a value still what a phrase speaks of.</summary>
    private const int FarAhead = 6;

    /// <summary>So many words behind a value is it still taken back.</summary>
    private const int FarAfter = 24;

    private const int MostTokens = 400;

    private static readonly FrozenSet<string> Small = FrozenSet.ToFrozenSet(["a", "an", "the", "of", "to", "as", "for", "on", "be", "ein", "eine", "einen", "der", "die", "das", "den", "mit", "un", "une", "de", "d", "le", "la", "les", "du", "una", "el", "los", "il", "lo", "i", "gli", "di", "een", "het", "al", "mal", "seat", "tube", "post", "hub", "shell", "flat", "bike", "rad", "fiets", "velo", "bici"], StringComparer.Ordinal);

    private static readonly string[] Limits = ["most", "largest", "widest", "longest", "tallest", "least", "smallest", "narrowest", "shortest"];

    private static readonly FrozenDictionary<string, ImmutableArray<Phrase>> Phrases = All();

    /// <summary>Figures that begin a phrase, as in "1/2 price".</summary>
    private static readonly ImmutableArray<string> Figures = [.. Phrases.Keys.Where(k => !k.All(char.IsLetter))];

    /// <summary>Longer than any word that begins a phrase.</summary>
    private const int LongestFirst = 32;

    private enum PhrasePlace
    {
        Before,
        Ahead,
        Than,
        Behind,
        After,
        Within,
    }

    /// <summary>Where in the text a phrase takes a value away; null where none does.</summary>
    public static SpecSpan? Of(ReadOnlySpan<char> text, ImmutableArray<SpecValue> values)
    {
        if (!Begins(text))
        {
            return null;
        }

        List<SpecToken> tokens = SpecLexer.Cut(text);
        tokens.RemoveAll(t => t.Is('\'') || t.Is('\u2019'));
        HashSet<int> starts = [.. values.Where(v => !IsLimit(v)).Select(v => v.Span.Start)];
        HashSet<int> all = [.. values.Select(v => v.Span.Start)];
        HashSet<int> ends = [.. values.Select(v => v.Span.End)];
        int since = int.MaxValue;
        for (int i = 0; i < tokens.Count && i < MostTokens; i++)
        {
            since = i > 0 && ends.Contains(tokens[i - 1].End) ? 0 : since == int.MaxValue ? since : since + 1;
            if (tokens[i].Kind == SpecTokenKind.Sign || !Phrases.TryGetValue(tokens[i].Text, out ImmutableArray<Phrase> phrases))
            {
                continue;
            }

            foreach (Phrase phrase in phrases)
            {
                int behind = i + phrase.Words.Length;
                if (!IsAt(tokens, i, phrase) || (phrase.IsLast && behind < tokens.Count && !(tokens[behind].Kind == SpecTokenKind.Sign && tokens[behind].Text[0] is '.' or ';' or '!' or ')' or '|')))
                {
                    continue;
                }

                bool counts = phrase.PhrasePlace switch
                {
                    PhrasePlace.Before => IsNext(tokens, behind, all),
                    PhrasePlace.Than => IsNext(tokens, behind, starts),
                    PhrasePlace.Within => all.Contains(tokens[i].Start),
                    PhrasePlace.Ahead => IsNear(tokens, behind, all),
                    PhrasePlace.Behind => since <= Signs(tokens, i),
                    _ => since <= FarAfter,
                };
                if (counts)
                {
                    return new(tokens[i].Start, tokens[behind - 1].End - tokens[i].Start);
                }
            }
        }

        return null;
    }

    /// <summary>A word of the text begins a phrase; few lines have one, and the others need not be cut anew.</summary>
    private static bool Begins(ReadOnlySpan<char> text)
    {
        FrozenDictionary<string, ImmutableArray<Phrase>>.AlternateLookup<ReadOnlySpan<char>> phrases = Phrases.GetAlternateLookup<ReadOnlySpan<char>>();
        foreach (string figure in Figures)
        {
            if (text.Contains(figure, StringComparison.Ordinal) || text.ContainsAny('\u00BC', '\u00BD', '\u00BE'))
            {
                return true;
            }
        }

        Span<char> word = stackalloc char[LongestFirst];
        int length = 0;
        for (int i = 0; i <= text.Length; i++)
        {
            char c = i < text.Length ? SpecFold.Of(text[i]) : ' ';
            if (c == SpecFold.Nothing)
            {
                continue;
            }

            if (char.IsLetter(c))
            {
                word[Math.Min(length++, LongestFirst - 1)] = c;
                continue;
            }

            if (length is > 0 and < LongestFirst && phrases.ContainsKey(word[..length]))
            {
                return true;
            }

            length = 0;
        }

        return false;
    }

    private static bool IsLimit(SpecValue value) => Limits.Any(l => value.Field.StartsWith(l, StringComparison.Ordinal)) || value.Field.Contains("insertion", StringComparison.OrdinalIgnoreCase);

    private static bool IsAt(List<SpecToken> tokens, int i, Phrase phrase)
    {
        if (i + phrase.Words.Length > tokens.Count)
        {
            return false;
        }

        for (int k = 0; k < phrase.Words.Length; k++)
        {
            if (tokens[i + k].Kind == SpecTokenKind.Sign || tokens[i + k].Text != phrase.Words[k])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A value begins here, behind at most two small words or a colon.</summary>
    private static bool IsNext(List<SpecToken> tokens, int i, HashSet<int> starts)
    {
        for (int k = i; k < tokens.Count && k <= i + 2; k++)
        {
            if (starts.Contains(tokens[k].Start))
            {
                return true;
            }

            if (!Small.Contains(tokens[k].Text) && !(tokens[k].Kind == SpecTokenKind.Sign && tokens[k].Text[0] is ':' or '\u00F8' or '"' or '-' or '(' or '!'))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>A value begins a few words on, before the sentence ends.</summary>
    private static bool IsNear(List<SpecToken> tokens, int i, HashSet<int> starts)
    {
        for (int k = i; k < tokens.Count && k <= i + FarAhead; k++)
        {
            if (starts.Contains(tokens[k].Start))
            {
                return true;
            }

            if (tokens[k].Kind == SpecTokenKind.Sign && tokens[k].Text[0] is '.' or ';' or '!' or '|' or '\n')
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>How many signs stand before a word, of which the first stands behind a value.</summary>
    private static int Signs(List<SpecToken> tokens, int i)
    {
        int signs = 0;
        while (signs < 3 && i - signs > 0 && tokens[i - signs - 1].Kind == SpecTokenKind.Sign)
        {
            signs++;
        }

        return signs;
    }

    private static FrozenDictionary<string, ImmutableArray<Phrase>> All()
    {
        Dictionary<string, List<Phrase>> phrases = [];
        foreach ((PhrasePlace place, ImmutableArray<string> rows) in new[] { (PhrasePlace.Before, OtherBikeWords.Before), (PhrasePlace.Ahead, OtherBikeWords.Ahead), (PhrasePlace.Than, OtherBikeWords.Than), (PhrasePlace.Behind, OtherBikeWords.Behind), (PhrasePlace.After, OtherBikeWords.After), (PhrasePlace.Within, OtherBikeWords.Within) })
        {
            foreach (string phrase in rows.SelectMany(r => r.Split(", ")))
            {
                string[] words = phrase.TrimEnd('$').Split(' ');
                (phrases.TryGetValue(words[0], out List<Phrase>? list) ? list : phrases[words[0]] = []).Add(new(words, place, phrase.EndsWith('$')));
            }
        }

        return phrases.ToFrozenDictionary(p => p.Key, p => p.Value.ToImmutableArray(), StringComparer.Ordinal);
    }

    private sealed record Phrase(string[] Words, PhrasePlace PhrasePlace, bool IsLast);
}
