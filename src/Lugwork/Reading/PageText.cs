using System.Net;
using System.Text;

namespace Lugwork.Reading;

/// <summary>Text as it stands in the source of a page or in a file: signs by their names (&amp;times;), and signs of more than one byte that were read byte by byte. Each character keeps its place in the original.</summary>
internal static class PageText
{
    /// <summary>The longest name of a sign, with its marks: "&amp;DoubleLongLeftRightArrow;" and the like stand on no page about bicycles.</summary>
    private const int LongestName = 10;

    /// <summary>What Windows shows for the bytes from 80 to 9F.</summary>
    private const string Windows = "\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178";

    /// <summary>What a name, a mark in a file or the first of several bytes can begin with.</summary>
    private static readonly System.Buffers.SearchValues<char> Marks = System.Buffers.SearchValues.Create("&\\\u00C2\u00C3\u00C4\u00C5\u00CA\u00CC\u00CD\u00D1\u00E2\u00E3\u00EF");

    /// <summary>The characters that the text stands for; false where it stands for itself.</summary>
    /// <param name="text">The text as it was found.</param>
    /// <param name="plain">The text as it was meant.</param>
    /// <param name="at">For each character of it, and for its end, the place in the original.</param>
    public static bool Decode(ReadOnlySpan<char> text, out string plain, out int[] at)
    {
        plain = "";
        at = [];
        Quotation around = Quotation.Of(text);
        if (!around.IsThere && !IsCoded(text))
        {
            return false;
        }

        StringBuilder told = new(text.Length);
        List<int> places = new(text.Length + 1);
        for (int i = 0; i < text.Length;)
        {
            if (around.Passes(i))
            {
                told.Append(' ');
                places.Add(i++);
                continue;
            }

            int length = Named(text[i..], out string stands) is > 0 and int name ? name : Bytes(text[i..], out stands);
            foreach (char c in length > 0 ? stands : text.Slice(i, 1))
            {
                told.Append(c);
                places.Add(i);
            }

            i += text[i] == '"' && around.Doubles(i) ? 2 : Math.Max(1, length);
        }

        places.Add(text.Length);
        plain = told.ToString();
        at = [.. places];
        return true;
    }

    private static bool IsCoded(ReadOnlySpan<char> text)
    {
        for (int from = 0; text[from..].IndexOfAny(Marks) is >= 0 and int found; from += found + 1)
        {
            if (Named(text[(from + found)..], out _) > 0 || Bytes(text[(from + found)..], out _) > 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A sign by its name or number; how long that is, 0 where there is none. A page that was written twice over has the mark itself by its name.</summary>
    private static int Named(ReadOnlySpan<char> text, out string stands)
    {
        stands = "";
        if (text[0] == '\\')
        {
            // A mark of inches in a file of keys and values.
            stands = "\"";
            return text.StartsWith("\\\"") ? 2 : 0;
        }

        if (text[0] != '&')
        {
            return 0;
        }

        int from = text.StartsWith("&amp;", StringComparison.OrdinalIgnoreCase) ? 5 : 1;
        int semicolon = text[from..Math.Min(text.Length, from + LongestName)].IndexOf(';');
        if (semicolon > 1)
        {
            string name = text.Slice(from, semicolon).ToString();
            stands = Own(name) ?? WebUtility.HtmlDecode($"&{name};");
            if (stands.Length is 1 or 2 && stands[0] != '&')
            {
                return from + semicolon + 1;
            }
        }

        stands = "&";
        return from == 5 ? 5 : 0;
    }

    /// <summary>Names that are written in any case.</summary>
    private static string? Own(string name) => name.ToUpperInvariant() switch
    {
        "NBSP" => "\u00A0",
        "TIMES" => "\u00D7",
        "QUOT" => "\"",
        "AMP" => "&",
        "NDASH" => "\u2013",
        "DEG" => "\u00B0",
        _ => null,
    };

    /// <summary>The bytes of one sign, each shown as a character of its own; how many there are, 0 where they are none.</summary>
    private static int Bytes(ReadOnlySpan<char> text, out string stands)
    {
        stands = "";
        int lead = text[0];
        int more = lead switch
        {
            >= 0xC2 and <= 0xDF => 1,
            >= 0xE0 and <= 0xEF => 2,
            _ => 0,
        };
        if (more == 0)
        {
            return 0;
        }

        int code = lead & (more == 1 ? 0x1F : 0x0F);
        for (int i = 1; i <= more; i++)
        {
            int next = i < text.Length ? Byte(text[i]) : -1;
            if (next < 0)
            {
                return Cut(text, i, out stands);
            }

            code = (code << 6) | (next & 0x3F);
        }

        bool plausible = more == 1 ? code is (>= 0xA0 and < 0x180) or 0x445 or 0x425 or (>= 0x300 and < 0x370) or 0x2B9 or 0x2BA : code is (>= 0x2000 and < 0x2800) or 0xFEFF or (>= 0xFF00 and < 0xFFF0) or (>= 0x3000 and < 0x3020);
        stands = plausible ? ((char)code).ToString() : "";
        return plausible ? more + 1 : 0;
    }

    /// <summary>The last byte is shown as nothing, or became a plain blank: a hard blank, an a with its accent, a closing quotation mark.</summary>
    private static int Cut(ReadOnlySpan<char> text, int behind, out string stands)
    {
        (stands, int length) = (text[0], behind) switch
        {
            ('\u00C2', 1) when text.Length > 1 && text[1] == ' ' => (" ", 2),
            ('\u00C3', 1) when text.Length > 1 && text[1] == ' ' && text.Length > 2 && !char.IsAsciiDigit(text[2]) => ("\u00E0 ", 2),
            ('\u00E2', 2) when text[1] == '\u20AC' => ("\u201D", 2),
            _ => ("", 0),
        };
        return length;
    }

    /// <summary>The byte that follows in a sign of several, by the character that shows it; -1 where it is none.</summary>
    private static int Byte(char c) => c is >= '\u0080' and <= '\u00BF' ? c : Windows.IndexOf(c, StringComparison.Ordinal) is >= 0 and int at ? 0x80 + at : -1;
}
