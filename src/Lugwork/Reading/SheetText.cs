using System.Net;
using System.Text;

namespace Lugwork.Reading;

/// <summary>The lines of a sheet without tags and bullets, each with the place of its characters in the original.</summary>
internal static class SheetText
{
    public static List<SheetLine> Lines(string text)
    {
        List<SheetLine> lines = [];
        StringBuilder line = new();
        List<int> at = [];
        bool tagged = IsTagged(text);

        // Behind the last end of a tag there is none: a sign that would begin one is text, and nothing is looked for again and again.
        int lastEnd = text.LastIndexOf('>');
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (tagged && c == '<' && i < lastEnd && (char.IsAsciiLetter(text[i + 1]) || text[i + 1] is '/' or '!'))
            {
                int end = text.IndexOf('>', i);
                Tag(text.AsSpan(i + 1, end - i - 1), i, line, at, lines);
                i = end;
            }
            else if (tagged && c == '&' && text.IndexOf(';', i, Math.Min(12, text.Length - i)) is > 0 and int semicolon)
            {
                foreach (char decoded in WebUtility.HtmlDecode(text[i..(semicolon + 1)]))
                {
                    line.Append(decoded);
                    at.Add(i);
                }

                i = semicolon;
            }
            else if (c is '\n' or '\r' or '\u2028' or '\u2029')
            {
                Break(line, at, lines);
            }
            else
            {
                line.Append(c);
                at.Add(i);
            }
        }

        Break(line, at, lines);
        return lines;
    }

    private static bool IsTagged(string text)
    {
        int open = text.IndexOf('<', StringComparison.Ordinal);
        int close = text.LastIndexOf('>');
        while (open >= 0 && open + 1 < text.Length && open < close)
        {
            if (char.IsAsciiLetter(text[open + 1]))
            {
                return true;
            }

            open = text.IndexOf('<', open + 1);
        }

        return false;
    }

    /// <summary>A tag ends a line, parts a key from its value, or says nothing.</summary>
    private static void Tag(ReadOnlySpan<char> tag, int at, StringBuilder line, List<int> places, List<SheetLine> lines)
    {
        bool closes = tag.StartsWith("/");
        ReadOnlySpan<char> name = closes ? tag[1..] : tag;
        int length = 0;
        while (length < name.Length && char.IsAsciiLetterOrDigit(name[length]))
        {
            length++;
        }

        string plain = name[..length].ToString().ToUpperInvariant();
        if (plain is "TD" or "TH" or "DT" && closes)
        {
            line.Append('\t');
            places.Add(at);
        }
        else if (WordLists.SheetTextTag.Contains(plain) && !(plain == "DD" && !closes))
        {
            Break(line, places, lines);
        }
    }

    private static void Break(StringBuilder line, List<int> at, List<SheetLine> lines)
    {
        int start = 0;
        int end = line.Length;
        while (end > start && (char.IsWhiteSpace(line[end - 1]) || line[end - 1] == '\uFEFF'))
        {
            end--;
        }

        // A bullet with a blank behind it.
        while (start < end && (char.IsWhiteSpace(line[start]) || line[start] is '\uFEFF' or '\u2022' or '\u25CF' or '\u25AA' or '\u00B7' or '\u2713' or '\u25BA' || (line[start] is '-' or '*' or '+' or '\u2013' or '\u2014' && start + 1 < end && char.IsWhiteSpace(line[start + 1]))))
        {
            start++;
        }

        // A row of a table drawn with bars: the first column is the key.
        if (end - start > 3 && line[start] == '|')
        {
            start++;
            end -= line[end - 1] == '|' ? 1 : 0;
            for (int i = start; i < end; i++)
            {
                if (line[i] == '|')
                {
                    line[i] = ':';
                    break;
                }
            }

            while (start < end && line[start] == ' ')
            {
                start++;
            }

            while (end > start && line[end - 1] == ' ')
            {
                end--;
            }
        }

        if (end > start)
        {
            lines.Add(new(line.ToString(start, end - start), [.. at.GetRange(start, end - start)]));
        }

        line.Clear();
        at.Clear();
    }
}

/// <summary>A line as it is read, and where in the original each of its characters stands.</summary>
internal sealed record SheetLine(string Text, int[] At);
