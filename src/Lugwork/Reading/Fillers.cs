namespace Lugwork.Reading;

/// <summary>What a line told by mouth says around a value and that says nothing: "das ist 42 lang", "zadelpen, eh, 31,6 mm is dat", "let me look". It is taken out, so that the value stands where it would stand in writing.</summary>
internal static class Fillers
{
    private const int Most = 40;


    /// <summary>At the head of a clause, also behind its "and".</summary>
    private static readonly Dictionary<string, List<string[]>> Heads = Build(
        "that ' s, that is, it ' s, it is, its, so it ' s, so that ' s, so, well, yeah, ok, okay, right so, let me look, let me see, let me think, let me check, as far as i can see, in other words, they ' re, they are, these are",
        "das ist, das sind, das ist es, das war es, es ist, es sind, ist das, sind das, und zwar, also, also das ist, also das, naja, na ja, ja, nun, mal sehen, mal schauen, lass mal sehen, lass mich schauen, moment, warte, ahm, ganz einfach, ganz normal, ist einfach, sinds, da sind, da ist",
        "dat is, dat zijn, het is, het zijn, ' t is, t is, is dat, is het, dus, dus dat is, nou, nou ja, ja, even kijken, eens kijken, wacht even, gewoon, namelijk, te weten, en wel, het gaat om",
        "c ' est, c ' est du, c ' est un, c ' est une, ce sont, donc, bon, bah, ben, alors, voyons, attends, a savoir, en fait, es decir, o sea, pues, bueno, a ver, vamos a ver, vamos, son, es un, es una, cioe, quindi, allora, dunque, beh, vediamo, fammi vedere, insomma, ecco, sono, e un, e una, vale a dire");

    /// <summary>At the end of a clause.</summary>
    private static readonly Dictionary<string, List<string[]>> Tails = Build(
        "that ' s it, that ' s the one, that ' s what it is, that ' s that, that is, yeah, of course, obviously, you know, mate, i mean, so yeah, as usual, right enough",
        "also, halt, eben, ist das, ist es, sind das, sind es, ist das ding, das ist alles, ist dran, ist drauf, ist drin, ist verbaut, ist, sind, wie gesagt, naturlich, na klar, klar, wie ublich",
        "dus, hoor, is dat, is het, zijn het, zijn dat, zeg maar, toch, natuurlijk, zoals gewoonlijk, is die, is ie, meer niet",
        "quoi, voila, bien sur, hein, vamos, claro, por supuesto, desde luego, ecco, insomma, ovviamente, certo");

    /// <summary>Between a word and its value.</summary>
    private static readonly Dictionary<string, List<string[]>> Within = Build("of the type, of type, vom typ, du type, de type, del tipo, de tipo, di tipo, van het type, comes out at, comes to, kommt auf, komm ich auf, komme ich auf, komt uit op, komt op, kom ik op, on arrive a, sale a");

    /// <summary>Anywhere in the line: sounds, and words for "simply".</summary>
    private static readonly HashSet<string> Sounds = new(StringComparer.Ordinal) { "eh", "ehm", "uh", "uhm", "um", "ah", "ahm", "hm", "hmm", "euh", "er" };

    /// <summary>What data sheets and drawings put beside the name of a size, and which leaves the name as it is: "nominal diameter", "Nenn-Ø", "cote nominale".</summary>
    private static readonly HashSet<string> Nominal = new(StringComparer.Ordinal) { "nominal", "nominale", "nominaler", "nominales", "nominalen", "nominalem", "nominaux", "nominali", "nominales", "nominaal", "nenn" };

    /// <summary>What they put between the name and a word for its form: "Ausfallenden, Bauform: senkrecht", "dropouts - type: vertical".</summary>
    private static readonly HashSet<string> Forms = new(StringComparer.Ordinal) { "type", "typ", "tipo", "style", "form", "forme", "forma", "vorm", "design", "bauform", "bauart", "ausfuhrung", "execution", "ejecucion", "esecuzione", "uitvoering", "bouwvorm", "version", "versione", "versie", "norm", "norme", "norma", "standard", "standaard", "estandar", "modele", "model" };

    public static void Mend(List<SpecToken> tokens, ReadOnlySpan<char> text)
    {
        int left = Most;
        for (int i = tokens.Count - 1; i >= 0 && left > 0; i--)
        {
            if (tokens[i].Kind != SpecTokenKind.Word)
            {
                continue;
            }

            if (IsOfSheet(tokens, i, out int from, out int many))
            {
                left--;
                tokens.RemoveRange(from, many);
                i = Math.Min(i, tokens.Count);
                continue;
            }

            bool head = IsHead(tokens, i);
            int words = IsSound(tokens, i) || (head && IsArticle(tokens, i)) ? 1 : head ? Length(Heads, tokens, i, false) : 0;
            words = words == 0 ? Length(Tails, tokens, i, true) : words;
            words = words == 0 && i > 0 && i + 1 < tokens.Count && Length(Within, tokens, i, false) is > 0 and int within && !(i + within < tokens.Count && tokens[i + within].Text is "e") ? within : words;
            if (words == 0 || words >= tokens.Count || (words == 1 && IsShouted(tokens[i], text)))
            {
                continue;
            }

            left--;
            bool empty = IsEdge(tokens, i - 1) && IsEdge(tokens, i + words);
            if (empty && i + words < tokens.Count && tokens[i + words].Is(',') && !(i > 0 && tokens[i - 1].Is('(')))
            {
                words++;
            }

            if (i + words < tokens.Count && tokens[i + words].Glued)
            {
                SpecToken next = tokens[i + words];
                next.Glued = tokens[i].Glued;
                tokens[i + words] = next;
            }

            tokens.RemoveRange(i, words);
        }
    }

    /// <summary>A word of data sheets that leaves the name it stands with unchanged, and its signs.</summary>
    private static bool IsOfSheet(List<SpecToken> tokens, int i, out int from, out int many)
    {
        (from, many) = (i, 1);
        if (tokens[i].Text.Length < 3 || tokens.Count < 3)
        {
            return false;
        }

        if (Nominal.Contains(tokens[i].Text))
        {
            many = i + 1 < tokens.Count && tokens[i + 1].Is('-') && tokens[i + 1].Glued ? 2 : 1;
            return tokens[i].Text is not "nenn" || many == 2;
        }

        if (i > 1 && i + 2 < tokens.Count && (tokens[i + 1].Is(':') || tokens[i + 1].Is('=')) && (tokens[i - 1].Is(',') || (tokens[i - 1].Is('-') && !tokens[i - 1].Glued)) && tokens[i - 2].Kind == SpecTokenKind.Word && Forms.Contains(tokens[i].Text))
        {
            (from, many) = (i - 1, 2);
            return true;
        }

        return false;
    }

    /// <summary>"Mit dem Prestaventil, das 48 lang ist": before a figure that starts the clause.</summary>
    private static bool IsArticle(List<SpecToken> tokens, int i) =>
        tokens[i].Text is "das" or "der" or "die" or "dat" or "den" && i > 0 && i + 1 < tokens.Count && tokens[i + 1].IsNumber && !tokens[i + 1].Glued;

    /// <summary>Large letters are a name or a code.</summary>
    private static bool IsShouted(SpecToken token, ReadOnlySpan<char> text) => token.End - token.Start > 1 && char.IsUpper(text[token.End - 1]);

    private static bool IsSound(List<SpecToken> tokens, int i) =>
        Sounds.Contains(tokens[i].Text) && !tokens[i].Glued && !(i + 1 < tokens.Count && tokens[i + 1].Glued && !tokens[i + 1].Is(',')) && (tokens[i].Text is not "er" and not "um" || (IsEdge(tokens, i - 1) && IsEdge(tokens, i + 1)));

    private static bool IsHead(List<SpecToken> tokens, int i)
    {
        int before = i - 1;
        before -= before >= 0 && tokens[before].Text is "and" or "und" or "en" or "et" or "y" ? 1 : 0;
        return IsEdge(tokens, before) && (before >= 0 || i > 0 || tokens.Count > 1);
    }

    private static bool IsEdge(List<SpecToken> tokens, int i) =>
        i < 0 || i >= tokens.Count || tokens[i].Is(',') || tokens[i].Is(';') || tokens[i].Is(':') || tokens[i].Is('(') || tokens[i].Is(')') || tokens[i].Is('.') || tokens[i].Is('!') || (tokens[i].Is('-') && !tokens[i].Glued);

    /// <summary>How many tokens the longest phrase at a place has; 0 where there is none.</summary>
    private static int Length(Dictionary<string, List<string[]>> phrases, List<SpecToken> tokens, int i, bool tail)
    {
        if (!phrases.TryGetValue(tokens[i].Text, out List<string[]>? starting))
        {
            return 0;
        }

        int longest = 0;
        foreach (string[] phrase in starting)
        {
            bool same = phrase.Length > longest && i + phrase.Length <= tokens.Count;
            for (int k = 1; k < phrase.Length && same; k++)
            {
                same = tokens[i + k].Text == phrase[k];
            }

            bool ends = IsEdge(tokens, i + phrase.Length);
            if (same && (tail ? ends && i > 0 && !IsEdge(tokens, i - 1) : IsFollowed(tokens, i + phrase.Length)))
            {
                longest = phrase.Length;
            }
        }

        return longest;
    }

    /// <summary>What follows goes on with the clause: not a word that denies or doubts what the filler led to.</summary>
    private static bool IsFollowed(List<SpecToken> tokens, int at) =>
        at >= tokens.Count || tokens[at].Kind != SpecTokenKind.Word || !WordLists.FillersIsFollowed.Contains(tokens[at].Text);

    private static Dictionary<string, List<string[]>> Build(params string[] rows)
    {
        Dictionary<string, List<string[]>> phrases = new(StringComparer.Ordinal);
        foreach (string row in rows)
        {
            foreach (string phrase in row.Split(", "))
            {
                string[] words = phrase.Split(' ');
                if (!phrases.TryGetValue(words[0], out List<string[]>? starting))
                {
                    phrases[words[0]] = starting = [];
                }

                starting.Add(words);
            }
        }

        return phrases;
    }
}
