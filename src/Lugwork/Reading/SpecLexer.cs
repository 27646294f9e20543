using System.Globalization;

namespace Lugwork.Reading;

/// <summary>Cuts a line into words, figures and signs, each with its place in the original. Linear in the text; nothing throws.</summary>
internal static class SpecLexer
{
    /// <summary>More words, figures and signs than this are no line.</summary>
    public const int MostTokens = 50_000;

    /// <summary>No line of a sheet has as many figures. Each of them is held against the words around it, so that their number bounds the work.</summary>
    public const int MostNumbers = 500;

    /// <summary>Nor as many words that say something of a part.</summary>
    public const int MostKnown = 3_000;

    private const int MostFigures = 9;

    public static List<SpecToken> Cut(ReadOnlySpan<char> text)
    {
        List<SpecToken> tokens = new(Math.Min(64, (text.Length / 4) + 4));
        int i = 0;
        bool glued = false;
        bool tabs = OnlyTabs(text);
        while (i < text.Length && tokens.Count <= MostTokens)
        {
            char c = SpecFold.Of(text[i]);
            if (c == SpecFold.Nothing)
            {
                i++;
            }
            else if (c == ' ' || (tabs && c == '\t'))
            {
                glued = false;
                i++;
            }
            else
            {
                int start = i;
                SpecToken token = SmallFraction(text, ref i, out SpecToken small) ? small : char.IsAsciiDigit(c) || SpecFold.IsFraction(text[i], out _, out _) ? Figure(text, ref i, tokens, glued)
                    : char.IsLetter(c) && c != '\u00F8' || (c == '\u00F8' && !BeforeFigure(text, i) && !Alone(text, i)) ? Letters(text, ref i)
                    : Sign(text, ref i, c);
                token.Start = start;
                token.End = i;
                token.Glued = glued;
                tokens.Add(token);
                glued = true;
            }
        }

        ShortUnits.Mend(tokens, text);
        Joined(tokens);
        Numbered(tokens);
        return tokens;
    }

    /// <summary>"1) ...", "3. ...": the number of the line in a list is taken away. A point and a blank before one figure may be a decimal that was torn apart.</summary>
    private static void Numbered(List<SpecToken> tokens)
    {
        if (tokens.Count > 3 && tokens[0] is { IsNumber: true, IsFraction: false, Places: 0, Value: > 0 and <= 30 } && tokens[1].Glued && !tokens[2].Glued
            && (tokens[1].Is(')') || (tokens[1].Is('.') && tokens[2].Kind != SpecTokenKind.Word && !IsTorn(tokens))))
        {
            tokens.RemoveRange(0, 2);
        }
    }

    /// <summary>"9. 5": a decimal that was torn apart; not "3. 8-fach" and "3. 7-7/8".</summary>
    private static bool IsTorn(List<SpecToken> tokens) =>
        tokens[2].IsNumber && (tokens[0].Value > 12 || (tokens[2].Value < 10 && !(tokens[2].IsFraction && tokens[2].Value > 1) && !(tokens.Count > 4 && tokens[3] is { Glued: true } && tokens[3].Is('-') && tokens[4] is { Glued: true, Kind: SpecTokenKind.Word })));

    /// <summary>Tabs stand between all the words, and no blank: they part no cells.</summary>
    private static bool OnlyTabs(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> line = text.Trim();
        int tab = line.IndexOf('\t');
        return tab >= 0 && line[(tab + 1)..].Contains('\t') && line.IndexOfAny(' ', '\u00A0') < 0;
    }

    /// <summary>A letter, a sign of diameter, or a bracket or point that closes behind a letter: "(BSA) →", "ARR. →".</summary>
    private static bool IsKeyBefore(ReadOnlySpan<char> text, int at) =>
        char.IsLetter(text[at]) || SpecFold.Of(text[at]) == '\u00F8' || (at > 0 && text[at] is ')' or ']' or '.' && char.IsLetter(text[at - 1]));

    /// <summary>What an arrow stands for: it opens a line as a bullet does, leads from a key to its value, or goes on behind a figure with its unit; otherwise '>'.</summary>
    private static char Arrow(ReadOnlySpan<char> text, int at)
    {
        ReadOnlySpan<char> before = text[..at].TrimEnd();
        ReadOnlySpan<char> behind = text[(at + 1)..].TrimStart();
        bool quotes = text[at] is '\u00BB' or '\u203A' && (before.Length == at || before.ContainsAny('\u00AB', '\u2039'));
        if (quotes || behind.IsEmpty)
        {
            return '>';
        }

        if (before.IsEmpty)
        {
            return '\u2022';
        }

        ReadOnlySpan<char> whole = before.TrimEnd('.');
        bool measured = whole.Length > 2 && whole[^2..] is "mm" or "MM" or "in" or "cm" && whole[..^2].TrimEnd() is [.., >= '0' and <= '9'];
        return measured ? (char.IsLetter(behind[0]) ? ';' : '>') : IsKeyBefore(before, before.Length - 1) ? ':' : '>';
    }

    private static bool IsArrow(char c) => c is '\u2192' or '\u21D2' or '\u279D' or '\u2794' or '\u27A1' or '\u27F6' or '\u2190' or '\u2194' or '\u21C4' or '\u2195' or '\u00BB' or '\u25B8' or '\u25BA' or '\u25B6' or '\u25B7' or '\u203A';

    /// <summary>A fraction of raised and lowered figures.</summary>
    private static bool SmallFraction(ReadOnlySpan<char> text, ref int i, out SpecToken fraction)
    {
        fraction = default;
        int at = i;
        int over = SmallNumber(text, ref at);
        if (over <= 0 || at >= text.Length || SpecFold.Of(text[at]) != '/')
        {
            return false;
        }

        at++;
        int under = SmallNumber(text, ref at);
        if (under is not (2 or 4 or 8 or 16 or 32 or 64) || over >= under)
        {
            return false;
        }

        i = at;
        fraction = Fraction(0, over, under);
        return true;
    }

    private static int SmallNumber(ReadOnlySpan<char> text, ref int at)
    {
        int value = 0;
        for (int figures = 0; at < text.Length && figures < 3 && SpecFold.SmallFigure(text[at]) >= 0; figures++, at++)
        {
            value = (value * 10) + SpecFold.SmallFigure(text[at]);
        }

        return value;
    }

    private static bool BeforeFigure(ReadOnlySpan<char> text, int at)
    {
        for (int i = at + 1; i < text.Length && i < at + 12; i++)
        {
            char c = SpecFold.Of(text[i]);
            if (char.IsAsciiDigit(c))
            {
                return true;
            }

            if (c is not (' ' or ':' or '.' or ',' or SpecFold.Nothing))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>The sign of a diameter before a word: no letter stands against it.</summary>
    private static bool Alone(ReadOnlySpan<char> text, int at) =>
        (at == 0 || !char.IsLetter(text[at - 1])) && (at + 1 >= text.Length || !char.IsLetter(text[at + 1]));

    private static SpecToken Letters(ReadOnlySpan<char> text, ref int i)
    {
        Span<char> word = stackalloc char[40];
        int length = 0;
        bool more = true;
        while (more)
        {
            char c = SpecFold.Of(text[i]);
            c = c == '\u00F8' ? 'o' : c;
            if (c != SpecFold.Nothing && length < word.Length)
            {
                word[length++] = c;
                if (text[i] == '\u00DF' && length < word.Length)
                {
                    word[length++] = 's';
                }
            }

            i++;
            more = i < text.Length && !SpecFold.IsFraction(text[i], out _, out _)
                && (SpecFold.Of(text[i]) is SpecFold.Nothing || (char.IsLetter(SpecFold.Of(text[i])) && !(SpecFold.Of(text[i]) == '\u00F8' && BeforeFigure(text, i))));
        }

        return new SpecToken { Kind = SpecTokenKind.Word, Text = new string(word[..length]) };
    }

    private static SpecToken Sign(ReadOnlySpan<char> text, ref int i, char c)
    {
        // A row of points between blanks leads from a key to its value.
        if (c == '.' && i > 0 && (SpecFold.Of(text[i - 1]) == ' ' || (i + 4 < text.Length && (text[i..(i + 4)] is "...." || (text[i..(i + 3)] is "..." && char.IsAsciiDigit(text[i + 3]) && !text[..i].TrimStart().Contains(' '))) && char.IsLetter(text[i - 1]) && !char.IsLetter(text[i..].TrimStart('.') is [char next, ..] ? next : 'x'))))
        {
            int end = i;
            while (end < text.Length && text[end] == '.')
            {
                end++;
            }

            if (end < text.Length && (SpecFold.Of(text[end]) == ' ' || end - i >= 4 || (end - i == 3 && char.IsLetter(text[i - 1]))) && (end - i >= 2 || i == end - 1))
            {
                i = end;
                return new SpecToken { Kind = SpecTokenKind.Sign, Text = ":" };
            }
        }

        if (c == '/' && i > 0 && SpecFold.Of(text[i - 1]) == ' ' && i + 1 < text.Length && SpecFold.Of(text[i + 1]) == '/' && text[(i + 2)..] is [] or [' ', ..])
        {
            // Two slashes between blanks part what is said of two things.
            i += 2;
            return new SpecToken { Kind = SpecTokenKind.Sign, Text = ";" };
        }

        if (text[i] == '*' && ((i + 1 < text.Length && text[i + 1] == '*') || (i > 0 && text[i - 1] == '*') || text[(i + 1)..].IsWhiteSpace()))
        {
            // Two of them, or one at the end, stand around words and multiply nothing.
            i++;
            return new SpecToken { Kind = SpecTokenKind.Sign, Text = "\u2022" };
        }

        bool between = i > 0 && i + 1 < text.Length;
        if (between && ((text[i] == '\u2026' && char.IsAsciiDigit(text[i - 1]) && char.IsAsciiDigit(text[i + 1])) || (IsArrow(text[i]) && char.IsLetter(text[i - 1]) && char.IsLetter(text[i + 1]))))
        {
            // "10…45", "axle→crown": from one to the other.
            i++;
            return new SpecToken { Kind = SpecTokenKind.Sign, Text = "-" };
        }

        if (IsArrow(text[i]) && Arrow(text, i) is not '>' and char stands)
        {
            i++;
            return new SpecToken { Kind = SpecTokenKind.Sign, Text = stands.ToString() };
        }

        if (IsCross(text, i))
        {
            i++;
            return new SpecToken { Kind = SpecTokenKind.Sign, Text = "\u2717" };
        }

        i++;
        if (c is '-' or '=' && i < text.Length && text[i] == '>')
        {
            i++;
            return new SpecToken { Kind = SpecTokenKind.Sign, Text = ":" };
        }

        if (c == '\'' && i < text.Length && SpecFold.Of(text[i]) == '\'')
        {
            i++;
            c = '"';
        }

        return new SpecToken { Kind = SpecTokenKind.Sign, Text = c == '\u00D7' || (c == '\u00B7' && i > 1 && char.IsAsciiDigit(text[i - 2]) && (ThreeFigures(text, i) || IsBehindThree(text, i - 1))) ? "x" : c.ToString() };
    }

    /// <summary>"UDH ✗", "UDH ☐": a sign that says there is none; between two figures some of them multiply.</summary>
    private static bool IsCross(ReadOnlySpan<char> text, int i) =>
        (text[i] is '\u2717' or '\u2718' or '\u274C' or '\u26D4' or '\u2610' || (text[i] is '\u2715' or '\u2716' && text[(i + 1)..].TrimStart() is [] or [',' or ';' or '|' or ')' or ']', ..]))
        && !(HasFigure(text[Math.Max(0, i - 6)..i]) && HasFigure(text[i..Math.Min(text.Length, i + 5)]));

    private static bool HasFigure(ReadOnlySpan<char> text)
    {
        foreach (char c in text)
        {
            if (char.IsNumber(c))
            {
                return true;
            }
        }

        return false;
    }

    private static SpecToken Figure(ReadOnlySpan<char> text, ref int i, List<SpecToken> before, bool glued)
    {
        if (SpecFold.IsFraction(text[i], out int over, out int under))
        {
            i++;
            return Fraction(0, over, under);
        }

        Span<char> digits = stackalloc char[24];
        int length = 0;
        int whole = 0;
        int behind = -1;
        bool comma = false;
        bool tooLong = false;
        bool broken = glued && before.Count > 0 && (before[^1].Is('?')
            || (before[^1].Is('.') && (before.Count < 2 || !before[^1].Glued || (before[^2].Kind == SpecTokenKind.Sign && !before[^2].Is('.'))))
            || (before[^1].Is(',') && (before.Count < 2 || !before[^1].Glued || (before[^2].Kind == SpecTokenKind.Sign && !before[^2].Is(',')))));
        while (i < text.Length)
        {
            char c = SpecFold.Of(text[i]);
            if (c == SpecFold.Nothing)
            {
                i++;
                continue;
            }

            if (c == '\u00B7' && (ThreeFigures(text, i + 1) || IsBehindThree(text, i)) && !(behind < 0 && length == 1 && (digits[0] == '1' || (digits[0] == '7' && text[(i + 1)..].StartsWith("875")))))
            {
                break;
            }

            c = c == '\u00B7' || (c == '\'' && behind < 0 && whole == 2 && IsOneFigure(text, i + 1)) ? '.' : c;
            if (c is '.' or ',' && behind < 0 && i + 1 < text.Length && char.IsAsciiDigit(SpecFold.Of(text[i + 1])))
            {
                behind = 0;
                comma = c == ',';
                if (length < digits.Length)
                {
                    digits[length++] = '.';
                }
            }
            else if (char.IsAsciiDigit(c))
            {
                whole += behind < 0 ? 1 : 0;
                behind += behind >= 0 ? 1 : 0;
                tooLong |= length >= digits.Length || whole > MostFigures || behind > MostFigures;
                if (length < digits.Length)
                {
                    digits[length++] = c;
                }
            }
            else
            {
                break;
            }

            i++;
        }

        if (tooLong)
        {
            return new SpecToken { Kind = SpecTokenKind.Number, Text = "", Value = -1, IsBroken = true };
        }

        decimal value = decimal.Parse(digits[..length], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        if (broken && before[^1].Is('.') && !before[^1].Glued && behind < 0 && whole == 3 && i < text.Length && SpecFold.Of(text[i]) == '"')
        {
            // .833": inches without the nought.
            before.RemoveAt(before.Count - 1);
            (value, behind, broken) = (value / 1000, whole, false);
        }

        return new SpecToken
        {
            Kind = SpecTokenKind.Number,
            Value = value,
            Places = Math.Max(0, behind),
            Text = value.ToString("0.#########", CultureInfo.InvariantCulture),
            IsBroken = broken || (comma && behind == 3 && value >= 2m && value != 7.875m),
        };
    }

    /// <summary>15\u00B7110: a point in the middle before a whole of three figures stands for a times sign.</summary>
    private static bool ThreeFigures(ReadOnlySpan<char> text, int at) =>
        at + 2 < text.Length && char.IsAsciiDigit(text[at]) && char.IsAsciiDigit(text[at + 1]) && char.IsAsciiDigit(text[at + 2]) && (at + 3 >= text.Length || !char.IsAsciiDigit(text[at + 3]));

    /// <summary>150\u00B712: a point in the middle behind a whole of three figures and before one of two: no width is written to the hundredth so.</summary>
    private static bool IsBehindThree(ReadOnlySpan<char> text, int at) =>
        at >= 3 && at + 2 < text.Length && char.IsAsciiDigit(text[at - 1]) && char.IsAsciiDigit(text[at - 2]) && char.IsAsciiDigit(text[at - 3]) && !(at >= 4 && (char.IsAsciiDigit(text[at - 4]) || text[at - 4] is '.' or ','))
        && text[at + 1] == '1' && text[at + 2] is '0' or '2' or '5' && (at + 3 >= text.Length || (!char.IsAsciiDigit(text[at + 3]) && text[at + 3] is not ('.' or ',')));

    /// <summary>One figure and no more: 31'6 is written for 31.6 in Spain, and 5'11" is feet and inches.</summary>
    private static bool IsOneFigure(ReadOnlySpan<char> text, int at) =>
        at < text.Length && char.IsAsciiDigit(text[at]) && (at + 1 >= text.Length || (!char.IsAsciiDigit(text[at + 1]) && SpecFold.Of(text[at + 1]) is not ('"' or '\'')));

    private static SpecToken Fraction(decimal whole, int over, int under) => new()
    {
        Kind = SpecTokenKind.Number,
        IsFraction = true,
        Value = whole + ((decimal)over / under),
        Text = whole == 0 ? $"{over}/{under}" : $"{(int)whole}-{over}/{under}",
    };

    /// <summary>Joins "1", "/", "8" and the whole before it to a fraction; marks figures with a letter between them as broken; makes an x between figures a times sign.</summary>
    private static void Joined(List<SpecToken> tokens)
    {
        int kept = 0;
        int notes = Notes(tokens);
        for (int i = 0; i < tokens.Count; i++)
        {
            SpecToken token = tokens[i];

            // The mark of a note that the line itself explains: 180\u00B9 (\u00B9 native).
            if (token.Kind == SpecTokenKind.Sign && token.Glued && SpecFold.SmallFigure(token.Text[0]) is >= 0 and int note && (notes & (1 << note)) != 0 && i > 0 && tokens[i - 1].Kind != SpecTokenKind.Sign)
            {
                continue;
            }

            if (token is { Kind: SpecTokenKind.Word, Glued: true, Text: "th" or "ths" } && kept > 0 && tokens[kept - 1] is { IsNumber: true, IsFraction: true } part && tokens[kept - 1].Value % 0.125m == 0)
            {
                // "1 1/8th", "3/8ths".
                part.End = token.End;
                tokens[kept - 1] = part;
                continue;
            }

            if (token.IsNumber && Divided(tokens, i, kept, out SpecToken fraction))
            {
                token = fraction;
                i += 2;
            }

            if (token is { Glued: true, IsNumber: true, IsFraction: false, Text: "5" } && kept > 1 && tokens[kept - 1] is { Glued: true } && tokens[kept - 1].Is('"') && tokens[kept - 2] is { IsNumber: true, IsFraction: false, Value: 1 })
            {
                // 1"5: an inch and a half.
                token = Fraction(0, 1, 2);
                (token.Start, token.End, token.Glued) = (tokens[i].Start, tokens[i].End, true);
            }

            if (token is { IsNumber: true, IsFraction: true, IsBroken: false } && token.Value < 1 && Whole(tokens, ref kept, token, out SpecToken mixed))
            {
                token = mixed;
            }

            if (token is { Kind: SpecTokenKind.Word, Glued: true, Text: "xp" } && kept > 0 && tokens[kept - 1].IsNumber && i + 1 < tokens.Count && tokens[i + 1] is { IsNumber: true, Glued: true })
            {
                token.Kind = SpecTokenKind.Sign;
                token.Text = "x";
            }

            if (token.Kind == SpecTokenKind.Word && (token.Text is "x" or "by" || (token.Text is "mal" or "por" or "par" or "per" or "sur" or "bij" && kept > 0 && (tokens[kept - 1].IsNumber || (kept > 1 && tokens[kept - 1].Is('"') && tokens[kept - 2] is { IsNumber: true, IsFraction: true }) || tokens[kept - 1].Text is "mm" or "zoll" or "inch" or "pouce" or "pulgada" or "pollice" or "duim" || (kept > 1 && tokens[kept - 1] is { Glued: true, Text: "c" or "b" } && tokens[kept - 2] is { IsNumber: true, Value: 700 or 650 })))) && kept > 0 && i + 1 < tokens.Count && (tokens[i + 1].IsNumber || tokens[i + 1].Is('\u00F8') || tokens[i + 1].Text is "m" or "p"))
            {
                token.Kind = SpecTokenKind.Sign;
                token.Text = "x";
            }

            if (token is { Kind: SpecTokenKind.Word, Text: "op" or "auf" } && TimesByPlace.Joins(tokens, i, kept))
            {
                token.Kind = SpecTokenKind.Sign;
                token.Text = "x";
            }

            if (token is { Kind: SpecTokenKind.Word, Glued: true, Text: "o" or "l" or "i" } && kept > 0 && tokens[kept - 1].IsNumber && i + 1 < tokens.Count && tokens[i + 1] is { IsNumber: true, Glued: true })
            {
                SpecToken left = tokens[kept - 1];
                left.IsBroken = true;
                tokens[kept - 1] = left;
                SpecToken right = tokens[i + 1];
                right.IsBroken = true;
                tokens[i + 1] = right;
            }

            // A raised figure against a figure is a power or the mark of a note.
            if ((token.Is('?') || (token.Kind == SpecTokenKind.Sign && SpecFold.SmallFigure(token.Text[0]) >= 0)) && token.Glued && kept > 0 && tokens[kept - 1].IsNumber)
            {
                SpecToken left = tokens[kept - 1];
                left.IsBroken = true;
                tokens[kept - 1] = left;
            }

            // "28/47 - 622": the widths and the seat of a tube, torn apart.
            if (token is { IsNumber: true, Glued: false, Places: 0, Value: > 200 and < 700 } && kept > 3 && tokens[kept - 1] is { Glued: false } && tokens[kept - 1].Is('-') && tokens[kept - 2] is { IsNumber: true, Glued: true, Value: < 150 } && tokens[kept - 3] is { Glued: true } && tokens[kept - 3].Is('/') && tokens[kept - 4] is { IsNumber: true, Value: < 150 })
            {
                SpecToken dash = tokens[kept - 1];
                dash.Glued = true;
                tokens[kept - 1] = dash;
                token.Glued = true;
            }

            // 28.6.2019, 27..2, 12,5,3: a chain of points or commas is no figure.
            if (token is { IsNumber: true, Glued: true } && kept > 1 && tokens[kept - 1].Glued && (tokens[kept - 1].Is('.') || tokens[kept - 1].Is(',')) && tokens[kept - 2].IsNumber)
            {
                SpecToken left = tokens[kept - 2];
                left.IsBroken = true;
                tokens[kept - 2] = left;
                token.IsBroken = true;
            }

            tokens[kept++] = token;
        }

        tokens.RemoveRange(kept, tokens.Count - kept);
    }

    /// <summary>The raised figures that stand by themselves, before a note.</summary>
    private static int Notes(List<SpecToken> tokens)
    {
        int notes = 0;
        for (int i = 0; i + 1 < tokens.Count; i++)
        {
            bool alone = tokens[i].Kind == SpecTokenKind.Sign && (!tokens[i].Glued || tokens[i - 1].Kind == SpecTokenKind.Sign) && !tokens[i + 1].Glued;
            if (alone && SpecFold.SmallFigure(tokens[i].Text[0]) is >= 0 and int figure)
            {
                notes |= 1 << figure;
            }
        }

        return notes;
    }

    /// <summary>A numerator, a slash and a power of two, as inches are divided; not two sizes of tyres or speeds.</summary>
    private static bool Divided(List<SpecToken> tokens, int i, int kept, out SpecToken fraction)
    {
        fraction = default;
        if (i + 2 >= tokens.Count || !tokens[i + 1].Is('/') || !tokens[i + 2].IsNumber || tokens[i].IsFraction || tokens[i + 2].IsFraction)
        {
            return false;
        }

        // 1.1/8: a point between the whole and its part.
        decimal whole = tokens[i].Value is 1.1m or 1.3m or 1.5m && tokens[i + 1].Glued && tokens[i + 2].Glued && tokens[i + 2].Value is 2 or 4 or 8 ? 1 : 0;
        decimal over = whole == 0 ? tokens[i].Value : (tokens[i].Value - 1) * 10;
        decimal under = tokens[i + 2].Value;
        bool divides = under is 2 or 4 or 8 or 16 or 32 or 64 or 128 && over % 2 == 1 && over < under && over == decimal.Truncate(over);
        bool list = (kept > 0 && tokens[kept - 1].Is('/') && tokens[kept - 1].Glued && !(whole > 0 && kept > 1 && tokens[kept - 2].Is('"'))) || (i + 3 < tokens.Count && tokens[i + 3].Is('/') && tokens[i + 3].Glued);
        bool sizes = i + 4 < tokens.Count && (tokens[i + 3].Is('-') || tokens[i + 3].Is('x') || tokens[i + 3].Text == "x") && tokens[i + 4].IsNumber && tokens[i + 4].Value > 200;
        bool speeds = over is 7 && under == 8 && !(kept > 1 && tokens[kept - 1].Is('x')) && i + 3 < tokens.Count && (tokens[i + 3].Kind == SpecTokenKind.Word || (i + 4 < tokens.Count && tokens[i + 3].Is('-') && tokens[i + 4].Kind == SpecTokenKind.Word)) && !WordLists.SpecLexerDivided.Contains((tokens[i + 3].Kind == SpecTokenKind.Word ? tokens[i + 3].Text : tokens[i + 4].Text));
        if (!divides || list || sizes || speeds)
        {
            return false;
        }

        fraction = Fraction(whole, (int)over, (int)under);
        fraction.Start = tokens[i].Start;
        fraction.End = tokens[i + 2].End;
        fraction.Glued = tokens[i].Glued;
        fraction.IsBroken = tokens[i].IsBroken || tokens[i + 2].IsBroken;
        return true;
    }

    /// <summary>"Steerer, 1 e 1/8", "1 1/8 - 1 e 1/2": a sign that parts the figure from a word, or from the other end of a taper.</summary>
    private static bool IsBeforeWhole(List<SpecToken> tokens, int sign) =>
        sign > 0 && ((tokens[sign - 1].Kind == SpecTokenKind.Word && (tokens[sign].Is(',') || tokens[sign].Is(':') || tokens[sign].Is('('))) || (tokens[sign - 1] is { IsNumber: true, IsFraction: true, Value: > 1 and < 2 } && (tokens[sign].Is('-') || tokens[sign].Is('/'))));

    /// <summary>"1 inch 1/8", "1\" 1/8", "un pouce et 1/8": the whole before a mark or word of inches; the place before the fraction where there is none.</summary>
    private static int BeforeInch(List<SpecToken> tokens, int before)
    {
        int at = before;
        if (at > 0 && tokens[at].Text is "and" or "und" or "et" or "y" or "e" or "en" && tokens[at - 1] is { IsNumber: true, IsFraction: false, Value: 1, Places: 0 } && !(at > 1 && (tokens[at - 2].IsNumber || (tokens[at - 2].Kind == SpecTokenKind.Sign && !IsBeforeWhole(tokens, at - 2)))))
        {
            // "1 e 1/8", "1 y 1/8": the whole and its part, by a word.
            return at - 1;
        }

        at -= at > 1 && tokens[at].Text is "and" or "und" or "et" or "y" or "e" or "en" ? 1 : 0;
        bool inch = at > 0 && (tokens[at].Is('"') || tokens[at].Text is "in" or "inch" or "zoll" or "pouce" or "pulgada" or "pollice" or "duim");
        return inch && tokens[at - 1] is { IsNumber: true, IsFraction: false, Value: >= 1 and <= 3 } ? at - 1 : before;
    }

    /// <summary>Takes the whole before a fraction into it: "1 1/8", "1-1/8", "1" and an inch mark and "1/8".</summary>
    private static bool Whole(List<SpecToken> tokens, ref int kept, SpecToken fraction, out SpecToken mixed)
    {
        mixed = default;
        int at = BeforeInch(tokens, kept - 1);
        if (at > 0 && at == kept - 1 && (tokens[at].Is('-') || tokens[at].Is('"') || tokens[at].Is('.') || tokens[at].Is('_')) && fraction.Glued && tokens[at].Glued)
        {
            at--;
        }
        else if (at > 0 && at == kept - 1 && tokens[at].Is('-') && tokens[at - 1] is { IsNumber: true, IsFraction: false, Value: 1, Places: 0 } && fraction.Value < 1 && (at < 2 || !(tokens[at - 2].IsNumber || tokens[at - 2].Kind == SpecTokenKind.Sign && !IsBeforeWhole(tokens, at - 2))))
        {
            // "1 - 1/8": the dash between the whole and its part, torn off.
            at--;
        }

        if (at < 0 || tokens[at] is not { IsNumber: true, IsFraction: false } whole || whole.Value != decimal.Truncate(whole.Value) || whole.Value is < 1 or > 99 || whole.IsBroken)
        {
            return false;
        }

        bool inches = at > 1 && tokens[at - 1].Is('/') && (tokens[at - 2].Is('"') || tokens[at - 2].IsFraction);
        if (at > 0 && tokens[at].Glued && ((tokens[at - 1].Is('/') && !inches && (at < 2 || tokens[at - 2].Kind != SpecTokenKind.Word)) || tokens[at - 1].Is('.')))
        {
            return false;
        }

        string parts = fraction.Text;
        mixed = fraction;
        mixed.Value = whole.Value + fraction.Value;
        mixed.Text = whole.Text + "-" + parts;
        mixed.Start = whole.Start;
        mixed.Glued = whole.Glued;
        kept = at;
        return true;
    }
}
