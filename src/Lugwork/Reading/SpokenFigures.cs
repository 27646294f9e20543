using System.Globalization;

namespace Lugwork.Reading;

/// <summary>Whether words say a figure that is known, as it is spoken in a workshop: "one forty-eight" is 148, "twenty-seven two" 27.2, "five eighty-four" 584, "an inch and a half" 1.5 or 1 1/2. Only for words that stand beside the figure: by themselves many of them can be several.</summary>
internal static class SpokenFigures
{
    private const int MostSteps = 400;

    private static readonly HashSet<string> Noughts = new(StringComparer.Ordinal) { "oh", "o", "zero", "null", "nul", "nought", "cero", "nulla" };

    private static readonly HashSet<string> Signs = new(StringComparer.Ordinal)
    {
        "point", "komma", "virgule", "coma", "virgola", "punt", "punkt", "punto", "and", "und", "et", "y", "e", "en", "by", "mal", "par", "por", "per", "bij", "op", "auf", "sur", "x", "dash", "slash", "strich", "bindestrich", "schragstrich", "tiret", "barre", "guion", "barra", "trattino", "streepje", "streep", "to", "bis", "tot", "hasta", "a", "an", "ein", "eine", "einen", "een", "un", "une", "una", "uno", "of", "de", "di", "d", "the", "inch", "zoll", "pouce", "pulgada", "pollice", "duim", "c", "b",
    };

    private static readonly HashSet<string> Ones = new(StringComparer.Ordinal) { "a", "an", "ein", "eine", "einen", "een", "un", "une", "una", "uno" };

    private static readonly Dictionary<string, string> Parts = Build(
        ("5 12 2", "half halb halbe halber halben demi demie medio media mezzo mezza halve einhalb"),
        ("4 25 14", "quarter quarters viertel quart quarts cuarto cuartos quarto quarti kwart vierde einviertel"),
        ("8 125 18", "eighth eighths achtel huitieme huitiemes octavo octavos ottavo ottavi achtste achtsten einachtel"),
        ("16", "sixteenth sixteenths sechzehntel seizieme seiziemes dieciseisavo dieciseisavos sedicesimo sedicesimi zestiende zestienden"),
        ("32", "zweiunddreissigstel zweiunddreisigstel treintaidosavos treintaidosavo trentaduesimi trentaduesimo tweeendertigste"),
        ("2", "second seconds deuxieme deuxiemes dosavo dosavos"));

    private static readonly (string Tail, string Digits)[] Tails = [("einhalb", "5 12"), ("enhalf", "5 12"), ("enhalve", "5 12"), ("einviertel", "25 14"), ("einachtel", "125 18")];

    /// <summary>The figures of a chain, one behind the other, without points and signs; with and without noughts at the end of decimals.</summary>
    public static string[] Targets(List<SpecToken> tokens, int from, int behind)
    {
        string plain = "";
        string full = "";
        for (int i = from; i < behind; i++)
        {
            if (!tokens[i].IsNumber)
            {
                continue;
            }

            string digits = tokens[i].Text.Replace(".", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal).Replace("/", "", StringComparison.Ordinal);
            plain += digits;
            int point = tokens[i].Text.IndexOf('.', StringComparison.Ordinal);
            int places = point < 0 ? 0 : tokens[i].Text.Length - point - 1;
            full += digits.PadRight(digits.Length + Math.Max(0, tokens[i].Places - places), '0');
        }

        return full == plain ? [plain] : [plain, full];
    }

    /// <summary>A word of a number or of a part of an inch can start here.</summary>
    public static bool StartsAt(List<SpecToken> tokens, int at)
    {
        if (tokens[at].Kind != SpecTokenKind.Word)
        {
            return false;
        }

        string word = tokens[at].Text;
        bool one = Ones.Contains(word) && at + 1 < tokens.Count && tokens[at + 1].Kind == SpecTokenKind.Word && (Parts.ContainsKey(tokens[at + 1].Text) || NumberWords.Of(tokens[at + 1].Text) == 100 || SpelledFractions.IsInch(tokens[at + 1].Text));
        return one || (IsNumeral(word) && !(Ones.Contains(word) && !one)) || (IsNumeral(word) && at + 2 < tokens.Count && Signs.Contains(tokens[at + 1].Text) && IsNumeral(tokens[at + 2].Text));
    }

    /// <summary>A word of a number can end here.</summary>
    public static bool Ends(List<SpecToken> tokens, int at) => IsNumeral(tokens[at].Text) || Noughts.Contains(tokens[at].Text);

    /// <summary>A word before these belongs to the number, so that they are not the whole of it.</summary>
    public static bool GoesOnBefore(List<SpecToken> tokens, int start)
    {
        int at = start - 1;
        while (at > 0 && at >= start - 3 && (tokens[at].Is('-') || tokens[at].Is('x') || tokens[at].Is('/') || (tokens[at].Kind == SpecTokenKind.Word && Signs.Contains(tokens[at].Text) && !Ones.Contains(tokens[at].Text))))
        {
            at--;
        }

        return at >= 0 && (tokens[at].IsNumber || (tokens[at].Kind == SpecTokenKind.Word && IsNumeral(tokens[at].Text) && !(Ones.Contains(tokens[at].Text) && at == start - 1)));
    }

    /// <summary>A word behind these belongs to the number.</summary>
    public static bool GoesOnBehind(List<SpecToken> tokens, int end)
    {
        int at = end;
        while (at < tokens.Count && at < end + 2 && (tokens[at].Is('-') || tokens[at].Is('x') || tokens[at].Is('/') || (tokens[at].Kind == SpecTokenKind.Word && Signs.Contains(tokens[at].Text) && !Ones.Contains(tokens[at].Text))))
        {
            at++;
        }

        return at < tokens.Count && (tokens[at].IsNumber || (tokens[at].Kind == SpecTokenKind.Word && (IsNumeral(tokens[at].Text) || Noughts.Contains(tokens[at].Text))));
    }

    /// <summary>The words from one token to another say these figures and nothing else.</summary>
    public static bool Says(List<SpecToken> tokens, int from, int behind, string digits)
    {
        int steps = MostSteps;
        SpecToken last = tokens[behind - 1];
        return last.Kind == SpecTokenKind.Word && (IsNumeral(last.Text) || Noughts.Contains(last.Text)) && Match(tokens, from, behind, digits, 0, ref steps);
    }

    private static bool Match(List<SpecToken> tokens, int at, int behind, string digits, int done, ref int steps)
    {
        if (at >= behind || --steps < 0)
        {
            return at == behind && done == digits.Length;
        }

        SpecToken token = tokens[at];
        if (token.Kind != SpecTokenKind.Word)
        {
            return (token.Is('-') || token.Is('x') || token.Is('/') || token.Is('"') || token.Is('\'')) && Match(tokens, at + 1, behind, digits, done, ref steps);
        }

        if (Noughts.Contains(token.Text) && Piece(tokens, at + 1, behind, digits, done, "0", ref steps))
        {
            return true;
        }

        if (Parts.TryGetValue(token.Text, out string? parts))
        {
            foreach (string part in parts.Split(' '))
            {
                if (Piece(tokens, at + 1, behind, digits, done, part, ref steps))
                {
                    return true;
                }
            }
        }

        if (Compound(token.Text, out int whole, out string tail))
        {
            string head = whole.ToString(CultureInfo.InvariantCulture);
            foreach (string part in tail.Split(' '))
            {
                if (Piece(tokens, at + 1, behind, digits, done, head + part, ref steps))
                {
                    return true;
                }
            }
        }

        int sum = NumberWords.Of(Stem(token.Text));
        for (int next = at + 1; sum > 0 && next <= behind;)
        {
            if (Piece(tokens, next, behind, digits, done, sum.ToString(CultureInfo.InvariantCulture), ref steps))
            {
                return true;
            }

            next = SpelledTens.Next(tokens, next);
            (int more, int end) = next >= 0 && next < behind ? SpelledTens.Joined(tokens, next, sum) : default;
            (sum, next) = (more, end);
        }

        return Signs.Contains(token.Text) && Match(tokens, at + 1, behind, digits, done, ref steps);
    }

    private static bool Piece(List<SpecToken> tokens, int next, int behind, string digits, int done, string piece, ref int steps) =>
        digits.AsSpan(done).StartsWith(piece, StringComparison.Ordinal) && Match(tokens, next, behind, digits, done + piece.Length, ref steps);

    private static bool IsNumeral(string word) => NumberWords.Of(Stem(word)) > 0 || Parts.ContainsKey(word) || Compound(word, out _, out _);

    /// <summary>"Siebenhunderter", "neunundzwanziger": a German size by its number.</summary>
    private static string Stem(string word) => word.Length > 7 && word.EndsWith("er", StringComparison.Ordinal) ? word[..^2] : word;

    /// <summary>"Achteinhalb", "zweieinviertel", "eineinachtel", "anderthalb": a whole and its part in one word.</summary>
    private static bool Compound(string word, out int whole, out string part)
    {
        whole = 1;
        part = "5 12";
        if (word is "anderthalb" or "anderthalve" or "anderhalf" or "anderhalve")
        {
            return true;
        }

        foreach ((string tail, string digits) in Tails)
        {
            if (word.Length > tail.Length && word.EndsWith(tail, StringComparison.Ordinal))
            {
                string head = word[..^tail.Length];
                whole = NumberWords.Of(head.EndsWith("und", StringComparison.Ordinal) ? head[..^3] : head);
                part = digits;
                return whole > 0;
            }
        }

        return false;
    }

    private static Dictionary<string, string> Build(params (string Digits, string Words)[] rows)
    {
        Dictionary<string, string> parts = new(StringComparer.Ordinal);
        foreach ((string digits, string words) in rows)
        {
            foreach (string word in words.Split(' '))
            {
                parts[word] = digits;
            }
        }

        return parts;
    }
}
