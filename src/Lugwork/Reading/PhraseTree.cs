using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Phrases by their words; the longest one at a place is found in time that does not depend on how many there are.</summary>
internal sealed class PhraseTree
{
    private readonly PhraseNode _root = new();

    private readonly Dictionary<string, string> _near = new(StringComparer.Ordinal);

    private readonly HashSet<string> _alone = new(StringComparer.Ordinal);

    /// <summary>Every word of a phrase.</summary>
    private readonly HashSet<string> _words = new(StringComparer.Ordinal);

    /// <summary>Words of values and marks with one letter missing; empty where two words become the same.</summary>
    private readonly Dictionary<string, string> _short = new(StringComparer.Ordinal);

    private readonly Lazy<NearWords> _nearWords;

    /// <summary>Words for what is counted: teeth, holes, speeds.</summary>
    private readonly Lazy<List<string>> _units;

    public PhraseTree() => (_nearWords, _units) = (new(() => new(_words)), new(Units));

    private PhraseTree(Lazy<NearWords> near) => (_nearWords, _units) = (near, new(Units));

    /// <summary>The word of the library's own phrases that a misspelt one stands for; null where there is none. A user's words are taken as they are written.</summary>
    public string? Near(string word) => _nearWords.Value.Of(word, SaysTheSame);

    /// <summary>Both are phrases by themselves, and of the same.</summary>
    private bool SaysTheSame(string one, string other) =>
        _alone.Contains(one) && _alone.Contains(other) && _root.Next[one].Terms is { IsDefault: false } a && _root.Next[other].Terms is { IsDefault: false } b && a.SequenceEqual(b);

    public PhraseTree Copy()
    {
        PhraseTree copy = new(_nearWords);
        Copy(_root, copy._root);
        foreach ((string key, string word) in _near)
        {
            copy._near[key] = word;
        }

        foreach ((string key, string word) in _short)
        {
            copy._short[key] = word;
        }

        foreach ((string key, string word) in _stems)
        {
            copy._stems[key] = word;
        }

        copy._alone.UnionWith(_alone);
        copy._words.UnionWith(_words);
        return copy;
    }

    /// <summary>Small words that a phrase may have or not: "foro della valvola" is "foro valvola".</summary>
    private static readonly HashSet<string> Small = new(StringComparer.Ordinal) { "de", "du", "des", "la", "le", "les", "del", "della", "dello", "dell", "dei", "delle", "di", "da", "el", "los", "las", "the", "der", "die", "das", "den", "dem", "van", "het", "il", "lo", "al", "of" };

    /// <summary>Adds the terms to a phrase; false where it is empty or too long. A word of the user's own takes the place of what the library says.</summary>
    public bool TryAdd(string phrase, ImmutableArray<string> terms, bool own)
    {
        return Put(phrase, terms, own, keep: false);
    }

    /// <summary>Adds a phrase without its small words, where nothing stands for that.</summary>
    public void AddPlain(string phrase, ImmutableArray<string> terms)
    {
        string[] words = phrase.Split(' ');
        string[] plain = [.. words.Where(w => !Small.Contains(w))];
        if (plain.Length > 1 && plain.Length < words.Length && !Small.Contains(words[0]) && terms[0] != "m:not")
        {
            Put(string.Join(' ', plain), terms, own: false, keep: true);
        }
    }

    private bool Put(string phrase, ImmutableArray<string> terms, bool own, bool keep)
    {
        PhraseNode at = _root;
        int words = 0;
        bool letters = false;
        string only = "";
        foreach (SpecToken token in SpecLexer.Cut(phrase))
        {
            if (Passed(token))
            {
                continue;
            }

            letters |= token.Kind == SpecTokenKind.Word || terms[0].StartsWith("v:", StringComparison.Ordinal);
            only = token.Text;
            if (++words > SpecVocabulary.MostWords)
            {
                return false;
            }

            _words.Add(token.Text);
            at = at.Next.TryGetValue(token.Text, out PhraseNode? next) ? next : at.Next[token.Text] = new PhraseNode();
        }

        if (words == 0 || !letters)
        {
            return false;
        }

        if (words == 1)
        {
            _alone.Add(only);
            Spell(only, terms[0]);
        }

        at.Terms = own || at.Terms.IsDefault ? terms : keep || at.Terms.Contains(terms[0]) ? at.Terms : [.. at.Terms, .. terms];
        return true;
    }

    /// <summary>The longest phrase that starts at a token; its terms, and the token behind it.</summary>
    public ImmutableArray<string> Longest(List<SpecToken> tokens, int from, out int behind)
    {
        ImmutableArray<string> found = Exactly(tokens, from, out behind);
        return found.IsDefault && !_words.Contains(tokens[from].Text) ? found : Misspelt(tokens, from, found, ref behind);
    }

    /// <summary>A longer phrase with one of its later words misspelt: "center lok", "seat pots".</summary>
    private ImmutableArray<string> Misspelt(List<SpecToken> tokens, int from, ImmutableArray<string> found, ref int behind)
    {
        PhraseNode at = _root;
        bool guessed = false;
        int words = 0;
        for (int i = from; i < tokens.Count && words < 5; i++)
        {
            SpecToken token = tokens[i];
            if (words > 0 && Passed(token) && i + 1 < tokens.Count)
            {
                continue;
            }

            if (token.Kind != SpecTokenKind.Word)
            {
                break;
            }

            if (!at.Next.TryGetValue(token.Text, out PhraseNode? next))
            {
                next = guessed || words == 0 || token.Text.Length < 3 || _words.Contains(token.Text) ? null : at.Nearest(token.Text);
                guessed = true;
            }

            if (next is null)
            {
                break;
            }

            at = next;
            words++;
            if (guessed && !at.Terms.IsDefault && i + 1 > behind)
            {
                found = at.Terms;
                behind = i + 1;
            }
        }

        return found;
    }

    /// <summary>Whether the word, parted at a place, is the two words of a phrase.</summary>
    public bool IsPhrase(string word, int cut) =>
        _root.Next.TryGetValue(word[..cut], out PhraseNode? first) && first.Next.TryGetValue(word[cut..], out PhraseNode? second) && !second.Terms.IsDefault;

    /// <summary>The word for what is counted that a misspelt one behind a figure stands for: two letters exchanged, one doubled or one left out; null where there is none, or several of different things.</summary>
    public string? NearUnit(string word)
    {
        string? found = null;
        foreach (string known in _units.Value)
        {
            if (known[0] != word[0] || Math.Abs(known.Length - word.Length) > 1 || !NearWords.IsTyped(word, known))
            {
                continue;
            }

            if (found is not null && !_root.Next[found].Terms.SequenceEqual(_root.Next[known].Terms))
            {
                return null;
            }

            found ??= known;
        }

        return found;
    }

    private List<string> Units() =>
        [.. _alone.Where(w => w.Length >= 4 && _root.Next[w].Terms is { IsDefaultOrEmpty: false } terms && terms[0] is "u:teeth" or "u:holes" or "u:speed" or "u:arms" or "u:in" or "u:bolts")];

    /// <summary>The word of a phrase for which a misspelt one behind its first is taken; null where there is none.</summary>
    public string? Meant(List<SpecToken> tokens, int from, int misspelt)
    {
        PhraseNode at = _root;
        for (int i = from; i < misspelt; i++)
        {
            if (at.Next.TryGetValue(tokens[i].Text, out PhraseNode? next))
            {
                at = next;
            }
            else if (!Passed(tokens[i]))
            {
                return null;
            }
        }

        PhraseNode? meant = at.Nearest(tokens[misspelt].Text);
        foreach ((string word, PhraseNode node) in at.Next)
        {
            if (node == meant)
            {
                return word;
            }
        }

        return null;
    }

    private ImmutableArray<string> Exactly(List<SpecToken> tokens, int from, out int behind)
    {
        ImmutableArray<string> found = default;
        behind = from;
        PhraseNode at = _root;
        int words = 0;
        for (int i = from; i < tokens.Count && words < SpecVocabulary.MostWords; i++)
        {
            SpecToken token = tokens[i];
            if (words > 0 && Passed(token) && i + 1 < tokens.Count)
            {
                continue;
            }

            if (!at.Next.TryGetValue(token.Text, out PhraseNode? next) || (token.IsNumber && token.IsFraction))
            {
                if (words > 0 && i + 1 < tokens.Count && IsSmall(tokens, i))
                {
                    words++;
                    continue;
                }

                break;
            }

            at = next;
            words++;
            if (!at.Terms.IsDefault)
            {
                found = at.Terms;
                behind = i + 1;
            }
        }

        return found;
    }

    /// <summary>A small word, or the letter of one before an apostrophe: "de l'axe".</summary>
    private static bool IsSmall(List<SpecToken> tokens, int i) =>
        tokens[i].Kind == SpecTokenKind.Word && (Small.Contains(tokens[i].Text) || (tokens[i].Text is "d" or "l" && tokens[i + 1].Is('\'') && tokens[i + 1].Glued));

    /// <summary>The terms of one word, as it stands or with one letter wrong or missing where it names a part; default where it is not known.</summary>
    public ImmutableArray<string> Nearly(string word, out string? meant)
    {
        meant = null;
        if (word.Length < 6)
        {
            return default;
        }

        if (!_near.TryGetValue(word, out meant))
        {
            for (int i = 0; i < word.Length && meant is null; i++)
            {
                _near.TryGetValue(word.Remove(i, 1), out meant);
            }
        }

        return meant is { Length: > 0 } && _root.Next.TryGetValue(meant, out PhraseNode? node) ? node.Terms : default;
    }

    /// <summary>Whether the word is one of a phrase.</summary>
    public bool Knows(string word) => _words.Contains(word);

    /// <summary>The terms of a word for a value or a kind with one letter missing or too many; default where it is not known.</summary>
    public ImmutableArray<string> NearlyValue(string word, out string? meant)
    {
        meant = null;
        if (word.Length < 7)
        {
            return default;
        }

        meant = _short.GetValueOrDefault(word);
        for (int i = 0; i < word.Length && meant is null; i++)
        {
            meant = word.Length > 8 && _short.GetValueOrDefault(word.Remove(i, 1)) is { } known && known == word.Remove(i, 1) ? known : null;
        }

        return meant is { Length: > 0 } && _root.Next.TryGetValue(meant, out PhraseNode? node) ? node.Terms : default;
    }

    /// <summary>The terms of one whole word; default where it is no phrase by itself.</summary>
    public ImmutableArray<string> Alone(string word) =>
        _alone.Contains(word) && _root.Next.TryGetValue(word, out PhraseNode? node) ? node.Terms : default;

    /// <summary>The terms of a word with another ending: a plural, a gender, a German case; default where it is not known, or where words of one stem say different things.</summary>
    public ImmutableArray<string> Inflected(string word)
    {
        return word.Length >= 6 && Stem(word) is { } stem && _stems.TryGetValue(stem, out string? meant) && meant.Length > 0 && _root.Next.TryGetValue(meant, out PhraseNode? node) ? node.Terms : default;
    }

    /// <summary>The word without an ending; null where too little is left.</summary>
    private static string? Stem(string word)
    {
        foreach (string ending in Endings)
        {
            if (word.Length - ending.Length >= 5 && word.EndsWith(ending, StringComparison.Ordinal))
            {
                return word[..^ending.Length];
            }
        }

        return word.Length >= 5 ? word : null;
    }

    private static readonly string[] Endings = ["er", "es", "en", "em", "os", "as", "e", "s", "n", "o", "a", "i"];

    private readonly Dictionary<string, string> _stems = new(StringComparer.Ordinal);

    private void Bend(string word, string term)
    {
        if (term[0] is not ('v' or 'm' or 't') || term is "m:not" || word.Length < 6 || Stem(word) is not { } stem)
        {
            return;
        }

        if (!_stems.TryGetValue(stem, out string? other))
        {
            _stems[stem] = word;
        }
        else if (other.Length > 0 && _root.Next.TryGetValue(other, out PhraseNode? node) && !node.Terms.IsDefault && node.Terms[0] != term)
        {
            _stems[stem] = "";
        }
    }

    private void Spell(string word, string term)
    {
        Bend(word, term);
        if (word.Length >= 8 && (term.StartsWith("v:", StringComparison.Ordinal) || term is "m:qr" or "m:thru" or "m:tapered" or "m:threadless" or "m:trunnion"))
        {
            _short[word] = word;
            for (int i = 0; i < word.Length; i++)
            {
                string shorter = word.Remove(i, 1);
                _short[shorter] = _short.TryGetValue(shorter, out string? other) && other != word ? "" : word;
            }
        }

        if (word.Length < 6 || !term.StartsWith("t:", StringComparison.Ordinal))
        {
            return;
        }

        _near[word] = word;
        for (int i = 0; i < word.Length; i++)
        {
            string shorter = word.Remove(i, 1);
            _near[shorter] = _near.TryGetValue(shorter, out string? other) && other != word ? "" : word;
        }
    }

    /// <summary>Hyphens and the like between the words of a phrase say nothing.</summary>
    private static bool Passed(SpecToken token) => token.Glued && (token.Is('-') || token.Is('_') || token.Is('.') || token.Is('\'')) ;

    private static void Copy(PhraseNode from, PhraseNode to)
    {
        to.Terms = from.Terms;
        foreach ((string word, PhraseNode next) in from.Next)
        {
            Copy(next, to.Next[word] = new PhraseNode());
        }
    }

    private sealed class PhraseNode
    {
        public Dictionary<string, PhraseNode> Next { get; } = new(StringComparer.Ordinal);

        public ImmutableArray<string> Terms { get; set; }

        /// <summary>The one word behind this one that differs from another by a letter; null where none or several do.</summary>
        public PhraseNode? Nearest(string word)
        {
            PhraseNode? nearest = null;
            foreach ((string known, PhraseNode node) in Next)
            {
                if (known.Length >= 4 && Math.Abs(known.Length - word.Length) <= 1 && known[0] == word[0] && IsNear(known, word))
                {
                    if (nearest is not null)
                    {
                        return null;
                    }

                    nearest = node;
                }
            }

            return nearest;
        }

        /// <summary>One letter missing, too many, wrong, or two of them exchanged.</summary>
        private static bool IsNear(string one, string other)
        {
            int same = 0;
            while (same < one.Length && same < other.Length && one[same] == other[same])
            {
                same++;
            }

            ReadOnlySpan<char> a = one.AsSpan(same);
            ReadOnlySpan<char> b = other.AsSpan(same);
            return a.Length == b.Length
                ? a.Length > 1 && (a[1..].SequenceEqual(b[1..]) || (a[0] == b[1] && a[1] == b[0] && a[2..].SequenceEqual(b[2..])))
                : a.Length > b.Length ? a[1..].SequenceEqual(b) : b[1..].SequenceEqual(a);
        }
    }
}
