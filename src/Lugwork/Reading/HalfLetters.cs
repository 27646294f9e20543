namespace Lugwork.Reading;

/// <summary>Letters for the halves of a head tube beside the codes of its cups: "ZS44 o. / ZS56 u.", "EC34 h/b", "IS41 arr. / IS52 ab.", "EC34 b./o.". A letter counts only where the other one of its language stands there too.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class HalfLetters
{
    private static readonly (string Upper, string Lower, string Above, string Below)[] Pairs =
    [
        ("o", "u", "oben", "unten"), ("ob", "unt", "oben", "unten"), ("h", "b", "haut", "bas"), ("b", "o", "boven", "onder"), ("t", "b", "top", "bottom"), ("s", "i", "superiore", "inferiore"),
        ("arr", "ab", "arriba", "abajo"), ("arr", "abj", "arriba", "abajo"), ("bov", "ond", "boven", "onder"), ("upr", "lwr", "upper", "lower"), ("top", "btm", "top", "bottom"), ("top", "bot", "top", "bottom"), ("ht", "bas", "haut", "bas"),
    ];

    public static void Mend(List<SpecToken> tokens)
    {
        Spanish(tokens);
        int first = -1;
        int second = -1;
        int codes = 0;
        for (int i = 0; i + 1 < tokens.Count && codes < 3; i++)
        {
            if (tokens[i].Kind != SpecTokenKind.Word || tokens[i].Text is not ("ec" or "zs" or "is") || !IsCode(tokens, i, out int behind))
            {
                continue;
            }

            codes++;
            if (i > 1 && behind < tokens.Count && tokens[i - 1].Is('(') && tokens[behind].Is(')') && IsHalf(tokens[i - 2]))
            {
                // "Unten (ZS44/30)": the code of the half before the bracket.
                tokens.RemoveAt(behind);
                tokens.RemoveAt(i - 1);
                i--;
                behind--;
            }

            int letter = LetterAt(tokens, i, behind);
            (first, second) = first < 0 ? (letter, second) : (first, letter);
            i = behind - 1;
        }

        if (codes == 1 && first >= 0)
        {
            int slash = IsPoint(tokens, first + 1) ? first + 2 : first + 1;
            if (slash + 1 < tokens.Count && (tokens[slash].Is('/') || tokens[slash].Is('+') || tokens[slash].Is('-')) && tokens[slash + 1].Kind == SpecTokenKind.Word)
            {
                second = slash + 1;
                if (Halves(tokens, first, second))
                {
                    SpecToken and = tokens[slash];
                    (and.Kind, and.Text, and.Glued) = (SpecTokenKind.Word, "and", false);
                    tokens[slash] = and;
                    Unpoint(tokens, second);
                    Unpoint(tokens, first);
                }
            }
        }
        else if (codes == 2 && first >= 0 && second >= 0 && Halves(tokens, first, second))
        {
            Unpoint(tokens, second);
            Unpoint(tokens, first);
        }
    }

    /// <summary>"1 1/8 arr. - 1 1/4 ab.": upper and lower in Spanish, where "ab." stands behind a figure; no other language cuts a word so.</summary>
    private static void Spanish(List<SpecToken> tokens)
    {
        int below = -1;
        int above = -1;
        for (int i = 1; i < tokens.Count; i++)
        {
            below = tokens[i].Text is "ab" && IsPoint(tokens, i + 1) && (tokens[i - 1].IsNumber || tokens[i - 1].Is('"')) ? i : below;
            above = above < 0 && tokens[i].Text is "arr" && IsPoint(tokens, i + 1) && (tokens[i - 1].IsNumber || tokens[i - 1].Is('"')) ? i : above;
        }

        if (above >= 0 && below > above)
        {
            Word(tokens, above, "arriba");
            Word(tokens, below, "abajo");
            Unpoint(tokens, below);
            Unpoint(tokens, above);
        }
    }

    /// <summary>"ZS44", "ZS44/28.6", and the place behind it.</summary>
    private static bool IsCode(List<SpecToken> tokens, int i, out int behind)
    {
        int figure = tokens[i + 1].Is('-') && tokens[i + 1].Glued ? i + 2 : i + 1;
        behind = figure + 1;
        if (figure >= tokens.Count || !tokens[figure].IsNumber || tokens[figure].Value is < 25 or > 65)
        {
            return false;
        }

        behind += behind + 1 < tokens.Count && tokens[behind].Is('/') && tokens[behind].Glued && tokens[behind + 1].IsNumber ? 2 : 0;
        return true;
    }

    /// <summary>The letter behind a code, or else before it; -1 where none of those stands there.</summary>
    private static int LetterAt(List<SpecToken> tokens, int code, int behind)
    {
        if (behind < tokens.Count && IsLetter(tokens[behind]))
        {
            return behind;
        }

        if (behind + 2 < tokens.Count && tokens[behind].Is('(') && IsLetter(tokens[behind + 1]) && tokens[behind + 2].Is(IsPoint(tokens, behind + 2) ? '.' : ')'))
        {
            // "EC34/30 (u.), EC34/28,6 (o.)".
            return behind + 1;
        }

        int before = code - 1;
        before -= before >= 0 && (tokens[before].Is('.') || tokens[before].Is(':') || tokens[before].Is('=')) ? 1 : 0;
        return before >= 0 && IsLetter(tokens[before]) ? before : -1;
    }

    private static bool IsHalf(SpecToken token) =>
        token.Kind == SpecTokenKind.Word && Array.Exists(Pairs, p => p.Above == token.Text || p.Below == token.Text);

    private static bool IsLetter(SpecToken token) =>
        token.Kind == SpecTokenKind.Word && Array.Exists(Pairs, p => p.Upper == token.Text || p.Lower == token.Text);

    /// <summary>Puts the words in where the two letters are of one language.</summary>
    private static bool Halves(List<SpecToken> tokens, int first, int second)
    {
        foreach ((string upper, string lower, string above, string below) in Pairs)
        {
            bool order = tokens[first].Text == upper && tokens[second].Text == lower;
            if (order || (tokens[first].Text == lower && tokens[second].Text == upper && upper != "b"))
            {
                // Of "o" and "b" the French and the Dutch mean different halves only in the other order, which is not taken.
                Word(tokens, first, order ? above : below);
                Word(tokens, second, order ? below : above);
                return true;
            }
        }

        return false;
    }

    private static void Word(List<SpecToken> tokens, int i, string text)
    {
        SpecToken token = tokens[i];
        token.Text = text;
        tokens[i] = token;
    }

    private static void Unpoint(List<SpecToken> tokens, int i)
    {
        if (IsPoint(tokens, i + 1))
        {
            tokens.RemoveAt(i + 1);
        }
    }

    private static bool IsPoint(List<SpecToken> tokens, int i) => i < tokens.Count && tokens[i].Is('.') && tokens[i].Glued;
}
