using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Figures that are written as words: "nine-speed", "zwölffach", "doce velocidades", "twelve by 142". A word for a number counts only where a unit, a times sign or another such word beside it makes it a figure.</summary>
internal static class SpelledNumbers
{
    /// <summary>More of them are in no line; each is moved about.</summary>
    private const int Most = 60;

    private static readonly Dictionary<string, int> Words = Build(
        "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen",
        "ein zwei drei vier funf sechs sieben acht neun zehn elf zwolf dreizehn vierzehn funfzehn sechzehn siebzehn achtzehn neunzehn",
        "une deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize",
        "una dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciseis diecisiete dieciocho diecinueve",
        "una due tre quattro cinque sei sette otto nove dieci undici dodici tredici quattordici quindici sedici diciassette diciotto diciannove",
        "een twee drie vier vijf zes zeven acht negen tien elf twaalf dertien veertien vijftien zestien zeventien achttien negentien");

    private static readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> Spans = Words.GetAlternateLookup<ReadOnlySpan<char>>();

    public static void Mend(List<SpecToken> tokens, PhraseTree tree)
    {
        int left = Most;
        for (int i = tokens.Count - 1; i >= 0 && left > 0; i--)
        {
            if (tokens[i].Kind != SpecTokenKind.Word)
            {
                continue;
            }

            if (tokens[i].Text == "u" && i > 0 && i + 1 < tokens.Count && tokens[i - 1].IsNumber && tokens[i + 1] is { IsNumber: true, IsFraction: false, Value: 8 or 11 })
            {
                // "7 u 8": the Spanish "or" before a word that starts with an o.
                SpecToken or = tokens[i];
                or.Text = "o";
                tokens[i] = or;
                continue;
            }

            if (SpelledFractions.Put(tokens, i))
            {
                left--;
                continue;
            }

            if (IsTimesWord(tokens, i, out string times))
            {
                PutTimes(tokens, i, times);
                left -= 2;
            }
            else if (Words.TryGetValue(tokens[i].Text, out int value))
            {
                if (value > 1 && (IsCounted(tokens, i, tree) || IsListed(tokens, i) || IsMeasured(tokens, i, value) || IsOfDrive(tokens, i, value) || (value is >= 7 and <= 13 && IsOfBody(tokens, i))))
                {
                    Put(tokens, i, value);
                }
            }
            else if (!tree.Knows(tokens[i].Text) && CountCompounds.Part(tokens, i, tree, out string head))
            {
                left--;
                if (head.Length > 0)
                {
                    Put(tokens, i, Words[head]);
                }
            }
        }
    }

    /// <summary>"Eighteen wide", "fünfzehn dick", "condition three", "eleven to twenty-eight", "HG, elf tot vierendertig": a word for what was measured behind the number, for a class before it, or a range of sprockets.</summary>
    private static bool IsMeasured(List<SpecToken> tokens, int i, int value)
    {
        if (value <= 5 && i > 0 && tokens[i - 1].Text is "condition" or "category" or "kategorie" or "categorie" or "categoria" or "condicion" or "condizione")
        {
            return true;
        }

        if (value < 8 || i + 1 >= tokens.Count)
        {
            return false;
        }

        bool range = value is >= 9 and <= 16 && i + 2 < tokens.Count && tokens[i + 2] is { IsNumber: true, IsFraction: false, Value: >= 18 and <= 60 } && WordLists.SpelledNumbersIsMeasured.Contains(tokens[i + 1].Text);
        return range || WordLists.SpelledNumbersIsMeasured2.Contains(tokens[i + 1].Text);
    }

    /// <summary>"Cambio da dieci", "catena da undici", "da undici, ...", "cambio trasero de once": a word for a number of sprockets behind a preposition, at the end of its piece, behind the name of a part of the drive or at the head of the line.</summary>
    private static bool IsOfDrive(List<SpecToken> tokens, int i, int value)
    {
        bool ends = i + 1 >= tokens.Count || (tokens[i + 1].Kind == SpecTokenKind.Sign && !tokens[i + 1].Is('-') && !tokens[i + 1].Is('/'));
        if (value is >= 3 and <= 5 && i > 1 && ends)
        {
            return tokens[i - 1].Text is "de" or "a" or "con" && tokens[i - 2].Text is "arana" or "ragno" or "etoile";
        }

        if (value is >= 7 and <= 13 && ends && i > 1 && tokens[i - 1].Text is "de" or "da" or "du" or "en" or "di" && (tokens[i - 2].Is(',') || (i > 2 && tokens[i - 2].Is(':')) || tokens[i - 2].Is('(') || WordLists.SpelledNumbersIsOfDrive.Contains(tokens[i - 2].Text)))
        {
            // "Mecánico, de diez", "è da dodici", "c'est du onze".
            return true;
        }

        if (value is < 7 or > 13 || i < 1 || tokens[i - 1].Text is not ("a" or "da" or "de"))
        {
            return ends && value is >= 7 and <= 13 && i > 0 && tokens[i - 1].Text is "double" or "triple" or "doppelt" or "doble" or "doppio" or "doppia" or "dubbel";
        }

        return ends && (i == 1 || WordLists.SpelledNumbersIsOfDrive2.Contains(tokens[i - 2].Text));
    }

    /// <summary>"Four unevenly spaced arms": one or two words for how they stand between the number and what is counted.</summary>
    private static bool IsOfArms(List<SpecToken> tokens, int next)
    {
        string word = tokens[next].Text;
        bool spread = word.StartsWith("uneven", StringComparison.Ordinal) || word.StartsWith("ungleich", StringComparison.Ordinal) || word.StartsWith("ongelijk", StringComparison.Ordinal) || word.StartsWith("asym", StringComparison.Ordinal) || word.StartsWith("unregelm", StringComparison.Ordinal) || word is "equally" or "evenly" or "gleich" or "gelijke";
        for (int i = next + 1; spread && i < tokens.Count && i <= next + 2; i++)
        {
            if (tokens[i].Text is "arms" or "arme" or "armen" or "bolts" or "bouten")
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Zweimal zehn", "tweemaal elf": the word for how often, before another figure.</summary>
    private static bool IsTimesWord(List<SpecToken> tokens, int i, out string head)
    {
        string word = tokens[i].Text;
        head = word is "einmal" or "zweimal" or "dreimal" ? word[..^3] : word is "eenmaal" or "tweemaal" or "driemaal" ? word[..^4] : "";
        return head.Length > 0 && i + 1 < tokens.Count && IsFigure(tokens[i + 1]);
    }

    private static void PutTimes(List<SpecToken> tokens, int i, string head)
    {
        SpecToken word = tokens[i];
        int cut = Math.Min(word.End - 1, word.Start + head.Length);
        if (!tokens[i + 1].IsNumber)
        {
            Put(tokens, i + 1, Words[tokens[i + 1].Text]);
        }

        tokens.Insert(i + 1, new() { Kind = SpecTokenKind.Word, Text = "mal", Start = cut, End = word.End, Glued = false });
        word.End = cut;
        tokens[i] = word;
        Put(tokens, i, Words[head]);
    }

    /// <summary>The value of a word for a small number; 0 where it is none.</summary>
    public static int Small(ReadOnlySpan<char> word) => Spans.TryGetValue(word, out int value) ? value : 0;

    private static Dictionary<string, int> Build(params string[] languages)
    {
        Dictionary<string, int> words = new(StringComparer.Ordinal);
        foreach (string language in languages)
        {
            string[] numbers = language.Split(' ');
            for (int i = 0; i < numbers.Length; i++)
            {
                words.TryAdd(numbers[i], i + 1);
            }
        }

        return words;
    }

    private static void Put(List<SpecToken> tokens, int i, int value) => Put(tokens, i, value, tokens[i].End);

    /// <summary>Puts a figure in the place of a word; a word for times between two figures becomes its sign.</summary>
    public static void Put(List<SpecToken> tokens, int i, decimal value, int end)
    {
        SpecToken token = tokens[i];
        tokens[i] = new() { Kind = SpecTokenKind.Number, Value = value, Text = ItemCutter.Plain(value), Start = token.Start, End = end, Glued = token.Glued };
        JoinTimes(tokens, i);
    }

    /// <summary>A word for times between a figure and the one before or behind it becomes its sign.</summary>
    public static void JoinTimes(List<SpecToken> tokens, int i)
    {
        foreach (int sign in (ReadOnlySpan<int>)[i - 1, i + 1])
        {
            bool label = sign > 1 && tokens[sign - 1] is { Kind: SpecTokenKind.Word, Text: "c" or "b" } && tokens[sign - 2] is { IsNumber: true, Value: 700 or 650 };
            if (sign > 0 && sign + 1 < tokens.Count && tokens[sign].Kind == SpecTokenKind.Word && IsTimes(tokens[sign]) && (tokens[sign - 1].IsNumber || label) && tokens[sign + 1].IsNumber)
            {
                SpecToken times = tokens[sign];
                times.Kind = SpecTokenKind.Sign;
                times.Text = "x";
                tokens[sign] = times;
            }
        }
    }

    /// <summary>"HG strada, da undici", "Micro Spline en douze": the speeds of a freehub body that was named right before.</summary>
    private static bool IsOfBody(List<SpecToken> tokens, int i)
    {
        if (i < 2 || tokens[i - 1].Kind != SpecTokenKind.Word || !WordLists.SpelledNumbersIsOfBody.Contains(tokens[i - 1].Text))
        {
            return false;
        }

        for (int j = i - 2; j >= 0 && j >= i - 5; j--)
        {
            if (tokens[j].Text is "hg" or "spline" or "microspline" or "xd" or "xdr")
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A unit stands behind it, or a times sign and a figure, or a figure and a times sign before it.</summary>
    private static bool IsCounted(List<SpecToken> tokens, int i, PhraseTree tree)
    {
        int next = i + 1;
        if (next + 1 < tokens.Count && tokens[next].Is('-') && tokens[next].Glued && tokens[next + 1].Glued)
        {
            next++;
        }

        bool times = (next + 1 < tokens.Count && IsTimes(tokens[next]) && IsFigure(tokens[next + 1])) || (i >= 2 && IsTimes(tokens[i - 1]) && IsFigure(tokens[i - 2]));
        if (times || next >= tokens.Count || tokens[next].Kind != SpecTokenKind.Word || tokens[next].Text.Length == 1 || tokens[next].Text == "in")
        {
            return times;
        }

        // "Six bolt" is a phrase of its own in some places; there it says more than the number.
        ImmutableArray<string> whole = tree.Longest(tokens, i, out int behind);
        if (!whole.IsDefault && behind > next)
        {
            return false;
        }

        if (LineScan.IsSprockets(tokens[next].Text) || (tokens[next].Text is "cog" or "sprocket" && next + 1 < tokens.Count && tokens[next + 1].Text is "block" or "cassette" or "set" or "cluster" or "stack"))
        {
            return true;
        }

        if (IsOfArms(tokens, next))
        {
            return true;
        }

        ImmutableArray<string> terms = tree.Longest(tokens, next, out _);
        return !terms.IsDefault && terms.Any(t => WordLists.SpelledNumbersIsCounted.Contains(t));
    }

    /// <summary>"Six, seven or eight speeds": a word for a number before one that is counted, joined by a sign or a word.</summary>
    private static bool IsListed(List<SpecToken> tokens, int i) =>
        IsStartOfRange(tokens, i) || i + 2 < tokens.Count && tokens[i + 2].IsNumber && tokens[i + 2].Value is >= 2 and <= 16
        && (tokens[i + 1].Is(',') || tokens[i + 1].Is('/') || WordLists.SpelledNumbersIsListed.Contains(tokens[i + 1].Text));

    /// <summary>"Acht- bis zehnfach", "acht-, neun- und zehnfach", "zes tot acht": a word for a number that a dash or a word leads on from to one that is counted.</summary>
    private static bool IsStartOfRange(List<SpecToken> tokens, int i)
    {
        int at = i + 1;
        bool dash = at < tokens.Count && tokens[at].Is('-') && tokens[at].Glued;
        at += dash ? 1 : 0;
        if (at + 1 < tokens.Count && WordLists.SpelledNumbersIsStartOfRange.Contains(tokens[at].Text) && Small(tokens[i].Text) is >= 9 and <= 14)
        {
            // "Dall'undici al ventotto", "de once a treinta y cuatro": from the least teeth to the most.
            for (int to = at + 1; to < tokens.Count && to <= at + 3; to++)
            {
                if (tokens[to].IsNumber)
                {
                    return tokens[to] is { IsFraction: false, Value: >= 18 and <= 60 } || (to == at + 1 && tokens[to].Value is >= 5 and <= 13 && tokens[at].Text is "bis" or "tot" or "hasta" or "to");
                }
            }
        }

        return at + 1 < tokens.Count && tokens[at + 1].IsNumber && tokens[at + 1].Value is >= 5 and <= 13
            && (tokens[at].Text is "bis" or "tot" or "hasta" or "to" || (dash && (tokens[at].Is(',') || tokens[at].Text is "und" or "en" or "and" or "oder" or "of" or "or")));
    }

    public static bool IsTimes(SpecToken token) => token.Is('x') || WordLists.SpelledNumbersIsTimes.Contains(token.Text);

    public static bool IsFigure(SpecToken token) => token.IsNumber || (token.Kind == SpecTokenKind.Word && Words.ContainsKey(token.Text));
}
