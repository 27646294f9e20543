using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Phrases by their words; the longest one at a place is found in time that does not depend on how many there are.</summary>
internal sealed class PhraseTree
{
    private readonly PhraseNode _root = new();

    private readonly Dictionary<string, string> _near = new(StringComparer.Ordinal);

    private readonly HashSet<string> _alone = new(StringComparer.Ordinal);

    public PhraseTree Copy()
    {
        PhraseTree copy = new();
        Copy(_root, copy._root);
        foreach ((string key, string word) in _near)
        {
            copy._near[key] = word;
        }

        copy._alone.UnionWith(_alone);
        return copy;
    }

    /// <summary>Adds the terms to a phrase; false where it is empty or too long. A word of the user's own takes the place of what the library says.</summary>
    public bool TryAdd(string phrase, ImmutableArray<string> terms, bool own)
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

        at.Terms = own || at.Terms.IsDefault ? terms : [.. at.Terms, .. terms];
        return true;
    }

    /// <summary>The longest phrase that starts at a token; its terms, and the token behind it.</summary>
    public ImmutableArray<string> Longest(List<SpecToken> tokens, int from, out int behind)
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

    /// <summary>The terms of one word, as it stands or with one letter wrong or missing where it names a part; default where it is not known.</summary>
    public ImmutableArray<string> Nearly(string word)
    {
        if (word.Length < 6)
        {
            return default;
        }

        if (!_near.TryGetValue(word, out string? meant))
        {
            for (int i = 0; i < word.Length && meant is null; i++)
            {
                _near.TryGetValue(word.Remove(i, 1), out meant);
            }
        }

        return meant is { Length: > 0 } && _root.Next.TryGetValue(meant, out PhraseNode? node) ? node.Terms : default;
    }

    /// <summary>The terms of one whole word; default where it is no phrase by itself.</summary>
    public ImmutableArray<string> Alone(string word) =>
        _alone.Contains(word) && _root.Next.TryGetValue(word, out PhraseNode? node) ? node.Terms : default;

    private void Spell(string word, string term)
    {
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
    }
}
