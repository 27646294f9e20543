namespace Lugwork.Reading;

/// <summary>One form for the many ways in which a character is typed: case, accents, blanks, dashes, times signs, primes.</summary>
internal static class SpecFold
{
    /// <summary>Stands for a character that says nothing: a mark of direction, a soft hyphen, a combining accent.</summary>
    public const char Nothing = '\0';

    private const string Accented =
        "\u00E0a\u00E1a\u00E2a\u00E3a\u00E4a\u00E5a\u00E7c\u00E8e\u00E9e\u00EAe\u00EBe\u00ECi\u00EDi\u00EEi\u00EFi\u00F1n\u00F2o\u00F3o\u00F4o\u00F5o\u00F6o\u00F9u\u00FAu\u00FBu\u00FCu\u00FDy\u00FFy\u00DFs\u0153o\u00E6a\u0131i\u0142l\u015Fs\u011Fg";

    /// <summary>The folded character; a letter without case and accent, a blank, or a plain sign.</summary>
    public static char Of(char c)
    {
        if (c < 0x80)
        {
            return c is >= 'A' and <= 'Z' ? (char)(c | 0x20) : c == '*' ? '\u00D7' : c < ' ' && c is not ('\n' or '\r' or '\t') ? ' ' : c;
        }

        if (TextCursor.IsDash(c) || c is '\u2212' or '\u2043' or '\uFE58' or '\uFE63' or '\uFF0D' or '\u00F7')
        {
            return '-';
        }

        if (c is '\u00AD' or '\uFEFF' or '\u061C' or (>= '\u0300' and <= '\u036F') or (>= '\u200B' and <= '\u200F') or (>= '\u202A' and <= '\u202E') or (>= '\u2060' and <= '\u2069'))
        {
            return Nothing;
        }

        if (char.IsWhiteSpace(c))
        {
            return c is '\u2028' or '\u2029' or '\u0085' ? '\n' : ' ';
        }

        if (c is '\u0445' or '\u0425')
        {
            return 'x';
        }

        if (TextCursor.IsTimes(c) || c is '\u00D7' or '\u2715' or '\u2716' or '\u2A2F' or '\u2217' or '\u22C5' or '\uFF0A')
        {
            return '\u00D7';
        }

        if (c is '\u2033' or '\u201C' or '\u201D' or '\u201E' or '\u201F' or '\u3003' or '\u02BA' or '\u2036')
        {
            return '"';
        }

        if (c is '\u2032' or '\u2018' or '\u2019' or '\u201A' or '\u201B' or '\u00B4' or '\u02B9' or '\u2035')
        {
            return '\'';
        }

        if (c is '\u2044' or '\u2215' or '\uFF0F')
        {
            return '/';
        }

        if (c is '\u2300' or '\u2205' or '\u00D8' or '\u00F8')
        {
            return '\u00F8';
        }

        if (c is '\u2192' or '\u21D2' or '\u279D' or '\u2794' or '\u27A1')
        {
            return '>';
        }

        if (c is '\u2A7D' or '\u2A7E')
        {
            return c == '\u2A7D' ? '\u2264' : '\u2265';
        }

        if (c is '\u2236' or '\uA789')
        {
            return ':';
        }

        if (c is '\u2016' or '\u2502' or '\u2503' or '\u00A6' or '\u205E' or '\u01C0' or '\u2758')
        {
            return '|';
        }

        if (c is '\u25AA' or '\u25AB' or '\u25E6' or '\u2023' or '\u2219' or '\u25A0' or '\u25A1' or '\u25C6' or '\u25C7' or '\u2605' or '\u2606' or '\u2714' or '\u2713')
        {
            return '\u2022';
        }

        if (c is '\u203C' or '\u00A1' or '\uFE57')
        {
            return '!';
        }

        if (c is '\u066B' or '\u066C')
        {
            return c == '\u066B' ? '.' : ',';
        }

        if (c is '\u00B0' or '\u00BA' or '\u02DA')
        {
            return '\u00B0';
        }

        if (c is >= '\uFF01' and <= '\uFF5E')
        {
            return Of((char)(c - 0xFEE0));
        }

        if (char.IsDigit(c))
        {
            return (char)('0' + (int)char.GetNumericValue(c));
        }

        char lower = char.ToLowerInvariant(c);
        int at = Accented.IndexOf(lower, StringComparison.Ordinal);
        return at >= 0 && at % 2 == 0 ? Accented[at + 1] : lower;
    }

    /// <summary>The text in the one form, with single blanks and without those at its ends.</summary>
    public static string Line(ReadOnlySpan<char> text)
    {
        System.Text.StringBuilder line = new(text.Length);
        foreach (char c in text)
        {
            char folded = Of(c) is '\u00D7' ? 'x' : Of(c);
            if (folded != Nothing && !(folded == ' ' && (line.Length == 0 || line[^1] == ' ')))
            {
                line.Append(folded);
            }
        }

        return line.ToString().TrimEnd();
    }

    /// <summary>The value of a raised or lowered figure; -1 for any other character.</summary>
    public static int SmallFigure(char c) => c switch
    {
        '\u00B9' => 1,
        '\u00B2' => 2,
        '\u00B3' => 3,
        '\u2070' => 0,
        >= '\u2074' and <= '\u2079' => c - '\u2070',
        >= '\u2080' and <= '\u2089' => c - '\u2080',
        _ => -1,
    };

    /// <summary>The parts of a fraction that has a sign of its own; false for any other character.</summary>
    public static bool IsFraction(char c, out int over, out int under)
    {
        (over, under) = c switch
        {
            '\u00BC' => (1, 4),
            '\u00BD' => (1, 2),
            '\u00BE' => (3, 4),
            '\u215B' => (1, 8),
            '\u215C' => (3, 8),
            '\u215D' => (5, 8),
            '\u215E' => (7, 8),
            _ => (0, 0),
        };
        return under > 0;
    }
}
