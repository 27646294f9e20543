namespace Lugwork.Reading;

/// <summary>Compounds of a number, a word for what is counted, and a part: "Neunfachkette", "11fachkassette", "twaalfspeedketting", "fünfarmige", "Vierlochkurbel".</summary>
internal static class CountCompounds
{
    private const int Shortest = 5;
    private const int Longest = 36;

    /// <summary>What is counted, and the longer spellings first.</summary>
    private static readonly string[] Stems = ["fach", "gang", "speed", "voudig", "versnelling", "velocita", "marce", "rapporti", "armig", "arm", "loch", "gaats", "gats", "bolt", "zahnig", "zoll"];

    private static readonly string[] Endings = ["", "e", "er", "es", "en", "em", "ig", "ige", "iger", "iges", "igen", "igem", "s"];

    /// <summary>Parts the word at a place into its figure, what is counted and the rest; false where it is no such compound.</summary>
    /// <param name="tokens">The line.</param>
    /// <param name="i">A word that is no phrase.</param>
    /// <param name="tree">The words that are known.</param>
    /// <param name="number">The figure that the head of the word spells; null where it has none and a figure stands against it.</param>
    public static bool Part(List<SpecToken> tokens, int i, PhraseTree tree, out string number)
    {
        number = "";
        SpecToken word = tokens[i];
        if (word.Text.Length is < Shortest or > Longest)
        {
            return false;
        }

        bool figure = word.Glued && ((i > 0 && tokens[i - 1].IsNumber) || (i > 1 && tokens[i - 1].Is('-') && tokens[i - 1].Glued && tokens[i - 2].IsNumber));
        bool loose = !word.Glued && i > 0 && tokens[i - 1] is { IsNumber: true, IsFraction: false, Places: 0, Value: >= 5 and <= 13 };
        foreach (string stem in Stems)
        {
            int at = word.Text.IndexOf(stem, StringComparison.Ordinal);
            if (at < 0 || ((at == 0) != figure && !(at == 0 && loose && stem is "speed" or "fach" or "gang" or "versnelling" && word.Text.Length > stem.Length + 4)) || (at > 0 && SpelledNumbers.Small(word.Text.AsSpan(0, at)) < (stem == "zoll" ? 1 : 2)))
            {
                continue;
            }

            string rest = word.Text[(at + stem.Length)..];
            if (Array.IndexOf(Endings, rest) >= 0)
            {
                rest = "";
            }
            else if (rest.Length < 4)
            {
                continue;
            }

            // "Achtgangsnabe", "3-versnellingsnaaf": the letter that joins them.
            rest = rest.Length > 0 && rest[0] == 's' && !tree.Knows(rest) && tree.Knows(rest[1..]) ? rest[1..] : rest;
            if (rest.Length > 0 && !tree.Knows(rest))
            {
                // "Vierlochflasche", "5fachsieger"
                continue;
            }

            number = word.Text[..at];
            Split(tokens, i, number, stem, rest);
            return true;
        }

        return false;
    }

    private static void Split(List<SpecToken> tokens, int i, string number, string stem, string rest)
    {
        SpecToken word = tokens[i];
        int last = word.End - rest.Length;
        int first = number.Length == 0 ? word.Start : Math.Max(word.Start + 1, Math.Min(last - 1, word.Start + number.Length));
        if (rest.Length > 0)
        {
            tokens.Insert(i + 1, new() { Kind = SpecTokenKind.Word, Text = rest, Start = last, End = word.End, Glued = false });
        }

        tokens.Insert(i + 1, new() { Kind = SpecTokenKind.Word, Text = stem, Start = first, End = rest.Length > 0 ? last : word.End, Glued = true });
        if (number.Length == 0)
        {
            tokens.RemoveAt(i);
        }
        else
        {
            word.End = first;
            tokens[i] = word;
        }
    }
}
