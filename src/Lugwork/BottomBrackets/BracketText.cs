using System.Text;

namespace Lugwork.BottomBrackets;

/// <summary>The spellings around bottom brackets brought to one form: upper case, numbers plain, without blanks, dashes, units and words that say nothing.</summary>
internal static class BracketText
{
    /// <summary>Text longer than this is no name.</summary>
    public const int Longest = 200;

    /// <summary>"Press Fit BB 86,5 mm" is "BB86.5". Two numbers side by side stay apart.</summary>
    public static string Compact(ReadOnlySpan<char> text)
    {
        if (text.Length > Longest)
        {
            return "#";
        }

        StringBuilder compact = new();
        TextCursor cursor = new(WithPoints(text));
        bool number = false;
        cursor.SkipBlanks();
        if (cursor.Rest is [var sign, var next, ..] && TextCursor.IsDash(sign) && char.IsAsciiDigit(next))
        {
            // A negative figure is no size.
            return "#";
        }

        while (!cursor.AtEnd)
        {
            if (cursor.TryNumber(out long nanometres))
            {
                compact.Append(number ? "#" : "").Append(new Nanometres(nanometres));
                cursor.SkipMillimetres();
                number = true;
            }
            else
            {
                ReadOnlySpan<char> word = cursor.Word();
                bool says = !IsNoise(word);
                number &= !says;
                if (says)
                {
                    compact.Append(word is [var times] && TextCursor.IsTimes(times) ? "X" : word.ToString().ToUpperInvariant());
                }
            }

            cursor.SkipBlanks();
        }

        return compact.Replace("PRESSFIT30", "PF30").Replace("PRESSFITBB", "BB").ToString();
    }

    /// <summary>A comma inside a figure is its decimal mark, behind letters too: "BB86,5".</summary>
    private static string WithPoints(ReadOnlySpan<char> text)
    {
        char[] points = text.ToArray();
        for (int i = 1; i + 1 < points.Length; i++)
        {
            points[i] = points[i] == ',' && char.IsAsciiDigit(points[i - 1]) && char.IsAsciiDigit(points[i + 1]) ? '.' : points[i];
        }

        return new(points);
    }

    /// <summary>A number of the compact form, in nanometres; 0 where it is none.</summary>
    public static long Number(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        return cursor.TryNumber(out long nanometres) && cursor.AtEnd ? nanometres : 0;
    }

    private static bool IsNoise(ReadOnlySpan<char> word) => word switch
    {
        [var sign] => TextCursor.IsDash(sign) || sign is ',' or '(' or ')' or '_' or ':' or '"' or '\u2033' or '\u201D',
        _ => Says(word, "mm") || Says(word, "shell") || Says(word, "bottom") || Says(word, "bracket") || Says(word, "wide") || Says(word, "width")
            || Says(word, "spindle") || Says(word, "axle") || Says(word, "thread"),
    };

    private static bool Says(ReadOnlySpan<char> word, string noise) => word.Equals(noise, StringComparison.OrdinalIgnoreCase);
}
