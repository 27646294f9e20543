namespace Lugwork.Reading;

/// <summary>Two figures of one hub that a compact line sets apart: "rear 142, axle 12", "HR 142 Ø12", "eje 12, ancho 142", "AV 12-100". Each is told as the pair with the times sign between.</summary>
/// <remarks>Only where an end or an axle is named right before, so that the figures are of no other thing. Common practice, no source.</remarks>
internal static class CompactPairs
{
    public static void Mend(List<SpecToken> tokens)
    {
        for (int i = 0; i + 2 < tokens.Count; i++)
        {
            if (!tokens[i].IsNumber || tokens[i].IsFraction || tokens[i].IsBroken || (i > 0 && (tokens[i - 1].Is('x') || tokens[i - 1].Is('/') || (tokens[i - 1].Is('-') && tokens[i - 1].Glued))))
            {
                continue;
            }

            if (tokens[i].Value == 116 && BoltBehind(tokens, i) is > 0 and int bolt)
            {
                Join(tokens, i, bolt);
            }
            else if (IsWidth(tokens[i].Value) && IsBehindEnd(tokens, i) && AxleBehind(tokens, i) is > 0 and int axle)
            {
                Join(tokens, i, axle);
            }
            else if (IsAxle(tokens[i].Value) && tokens[i + 1].Is('-') && tokens[i + 1].Glued && tokens[i + 2] is { Glued: true, IsNumber: true, IsFraction: false } && IsWidth(tokens[i + 2].Value) && IsBehindEndOrSign(tokens, i) && Ends(tokens, i + 3))
            {
                SpecToken sign = tokens[i + 1];
                sign.Text = "x";
                tokens[i + 1] = sign;
            }
            else if (IsAxle(tokens[i].Value) && i > 0 && IsAxleWord(tokens[i - 1].Text) && WidthBehind(tokens, i) is > 0 and int width)
            {
                Join(tokens, i, width);
            }
        }
    }

    /// <summary>The figures with a times sign alone between them.</summary>
    private static void Join(List<SpecToken> tokens, int first, int second)
    {
        SpecToken sign = new() { Kind = SpecTokenKind.Sign, Text = "x", Start = tokens[first].End, End = tokens[first].End, Glued = true };
        tokens[first + 1] = sign;
        tokens.RemoveRange(first + 2, second - first - 2);
        SpecToken last = tokens[first + 2];
        last.Glued = true;
        tokens[first + 2] = last;
    }

    private static bool IsAxle(decimal value) => value is 12 or 15 or 20;

    private static bool IsWidth(decimal value) => value is 100 or 110 or 135 or 142 or 148 or 150 or 157 or 177 or 197;

    public static bool IsAxleWord(string word) => WordLists.CompactPairsIsAxleWord.Contains(word);

    private static bool IsWidthWord(string word) => WordLists.CompactPairsIsWidthWord.Contains(word);

    private static bool IsEndWord(string word) => WordLists.CompactPairsIsEndWord.Contains(word);

    /// <summary>"Rear 142", "HR-Nabe 142", "tras. 142": a word for an end before the figure, with a point, a colon or a word for the hub between.</summary>
    private static bool IsBehindEnd(List<SpecToken> tokens, int i)
    {
        int at = i - 1;
        at -= at >= 0 && (tokens[at].Is('.') || tokens[at].Is(':')) ? 1 : 0;
        if (at > 0 && WordLists.CompactPairsIsBehindEnd.Contains(tokens[at].Text))
        {
            at--;
            at -= at > 0 && (tokens[at].Is('-') || tokens[at].Is('.')) ? 1 : 0;
        }

        return at >= 0 && tokens[at].Kind == SpecTokenKind.Word && IsEndWord(tokens[at].Text);
    }

    private static bool IsBehindEndOrSign(List<SpecToken> tokens, int i) =>
        i == 0 || IsPart(tokens[i - 1]) || (tokens[i - 1].Kind == SpecTokenKind.Word && (IsEndWord(tokens[i - 1].Text) || IsAxleWord(tokens[i - 1].Text) || tokens[i - 1].Text is "thru" or "ta")) || (i > 1 && tokens[i - 1].Is('.') && IsEndWord(tokens[i - 2].Text));

    /// <summary>The axle behind a width: "142, as 12", "142 Ø12"; 0 where it is none.</summary>
    private static int AxleBehind(List<SpecToken> tokens, int i)
    {
        int at = i + 1;
        at += at < tokens.Count && tokens[at].Text == "mm" ? 1 : 0;
        at += at < tokens.Count && tokens[at].Is(',') ? 1 : 0;
        bool said = at < tokens.Count && tokens[at].Kind == SpecTokenKind.Word && IsAxleWord(tokens[at].Text);
        at += said ? 1 : 0;
        at += said && at < tokens.Count && (tokens[at].Is('.') || tokens[at].Is(':')) ? 1 : 0;
        bool round = at < tokens.Count && tokens[at].Is('\u00F8');
        at += round ? 1 : 0;
        return (said || round) && at < tokens.Count && tokens[at] is { IsNumber: true, IsFraction: false } && IsAxle(tokens[at].Value) && Ends(tokens, at + 1) ? at : 0;
    }

    /// <summary>"116 mm, M10 bolts", "116 mm, vis M10": the hub of trials, and the bolts that hold it; 0 where they are none.</summary>
    private static int BoltBehind(List<SpecToken> tokens, int i)
    {
        int at = i + 1;
        at += at < tokens.Count && tokens[at].Text == "mm" ? 1 : 0;
        at += at < tokens.Count && tokens[at].Is(',') ? 1 : 0;
        bool said = at < tokens.Count && IsBolt(tokens[at].Text);
        at += said ? 1 : 0;
        at += said && at < tokens.Count && tokens[at].Is('.') ? 1 : 0;
        if (at + 1 >= tokens.Count || tokens[at].Text != "m" || tokens[at + 1] is not { IsNumber: true, Glued: true, Value: 10 } || at < i + 2)
        {
            return 0;
        }

        int behind = at + 2 < tokens.Count && tokens[at + 2].Is('-') ? at + 3 : at + 2;
        return said || (behind < tokens.Count && IsBolt(tokens[behind].Text)) ? at + 1 : 0;
    }

    private static bool IsBolt(string word) => WordLists.CompactPairsIsBolt.Contains(word);

    /// <summary>The width behind an axle: "12, ancho 142"; 0 where it is none.</summary>
    private static int WidthBehind(List<SpecToken> tokens, int i)
    {
        int at = i + 1;
        at += at < tokens.Count && tokens[at].Text == "mm" ? 1 : 0;
        at += at < tokens.Count && tokens[at].Is(',') ? 1 : 0;
        return at + 1 < tokens.Count && IsWidthWord(tokens[at].Text) && tokens[at + 1] is { IsNumber: true, IsFraction: false } && IsWidth(tokens[at + 1].Value) && Ends(tokens, at + 2) ? at + 1 : 0;
    }

    private static bool IsPart(SpecToken token) => token.Is(';') || token.Is('|') || token.Is(',') || token.Is('\u2022') || token.Is('\u00B7') || token.Is('(') || (token.Is('/') && !token.Glued) || (token.Is('-') && !token.Glued);

    private static bool Ends(List<SpecToken> tokens, int i)
    {
        i += i < tokens.Count && tokens[i].Text == "mm" ? 1 : 0;
        return i >= tokens.Count || IsPart(tokens[i]) || tokens[i].Is(')') || (tokens[i].Is('.') && (i + 1 >= tokens.Count || !tokens[i + 1].Glued)) || tokens[i].Text is "boost" or "ta" or "thru";
    }
}
