using System.Text;

namespace Lugwork;

/// <summary>Inches, fractions and thread counts as shops write them, brought to one form: 7/8", 7/8″, ⅞ in and 7/8 inch are one text.</summary>
/// <remarks>A whole or decimal number of inches keeps its "in", so that it is never taken for millimetres; a fraction needs none.</remarks>
internal static class InchText
{
    /// <summary>Text longer than this is no name of a size.</summary>
    public const int MostLetters = 60;

    /// <summary>The plain form.</summary>
    public static string Plain(ReadOnlySpan<char> text)
    {
        StringBuilder plain = new(text.Length + 8);
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            bool behindFigure = Last(plain) is { } last && char.IsAsciiDigit(last);
            if (Fraction(c) is { } fraction)
            {
                plain.Append(behindFigure ? " " : "").Append(fraction);
            }
            else if (behindFigure && (IsInchSign(c) || (c == '\'' && i + 1 < text.Length && text[i + 1] == '\'')))
            {
                i += c == '\'' ? 1 : 0;
                AppendInch(plain);
            }
            else if (behindFigure && TextCursor.IsDash(c) && BehindFraction(plain) && NextIsDigit(text[(i + 1)..]))
            {
                plain.Append('x');
            }
            else if (c is '\u00D8' or '\u00F8' or '\u2300' && NextIsDigit(text[(i + 1)..]))
            {
                continue;
            }
            else if (char.IsAsciiLetter(c) && behindFigure)
            {
                int end = i;
                while (end < text.Length && char.IsAsciiLetter(text[end]))
                {
                    end++;
                }

                ReadOnlySpan<char> word = text[i..end];
                if (Says(word, "in") || Says(word, "inch") || Says(word, "inches"))
                {
                    AppendInch(plain);
                    end += end < text.Length && text[end] == '.' && !NextIsDigit(text[(end + 1)..]) ? 1 : 0;
                }
                else if (!Says(word, "tpi"))
                {
                    plain.Append(word);
                }

                i = end - 1;
            }
            else
            {
                plain.Append(c);
            }
        }

        return plain.ToString();
    }

    /// <summary>A metric thread without its unit: "M10 x 1 mm" and "10mm x 1mm" are "10 x 1"; other text stays.</summary>
    public static string MetricThread(string text) =>
        text.Contains('x', StringComparison.OrdinalIgnoreCase) && !text.Contains('/', StringComparison.Ordinal) && !text.Contains('"', StringComparison.Ordinal)
            ? text.Replace("mm", "", StringComparison.OrdinalIgnoreCase)
            : text;

    /// <summary>The text with one sign for a fraction written out: "1⅛" is "1 1/8".</summary>
    public static string WithoutFractionSigns(ReadOnlySpan<char> text)
    {
        StringBuilder plain = new(text.Length + 8);
        foreach (char c in text)
        {
            _ = Fraction(c) is { } fraction
                ? plain.Append(plain.Length > 0 && char.IsAsciiDigit(plain[^1]) ? " " : "").Append(fraction)
                : plain.Append(c);
        }

        return plain.ToString();
    }

    private static void AppendInch(StringBuilder plain)
    {
        if (!BehindFraction(plain))
        {
            plain.Append(" in");
        }
    }

    /// <summary>The number that the text ends with has a fraction bar.</summary>
    private static bool BehindFraction(StringBuilder plain)
    {
        for (int i = plain.Length - 1; i >= 0; i--)
        {
            if (plain[i] == '/')
            {
                return true;
            }

            if (!char.IsAsciiDigit(plain[i]) && !(TextCursor.IsBlank(plain[i]) && i == plain.Length - 1))
            {
                return false;
            }
        }

        return false;
    }

    private static char? Last(StringBuilder plain)
    {
        for (int i = plain.Length - 1; i >= 0; i--)
        {
            if (!TextCursor.IsBlank(plain[i]))
            {
                return plain[i];
            }
        }

        return null;
    }

    private static bool NextIsDigit(ReadOnlySpan<char> rest)
    {
        TextCursor cursor = new(rest);
        cursor.SkipBlanks();
        return !cursor.AtEnd && char.IsAsciiDigit(cursor.Rest[0]);
    }

    private static bool IsInchSign(char c) => c is '"' or '\u2033' or '\u201D' or '\u02BA';

    private static bool Says(ReadOnlySpan<char> word, string meant) => word.Equals(meant, StringComparison.OrdinalIgnoreCase);

    private static string? Fraction(char c) => c switch
    {
        '\u00BC' => "1/4",
        '\u00BD' => "1/2",
        '\u00BE' => "3/4",
        '\u215B' => "1/8",
        '\u215C' => "3/8",
        '\u215D' => "5/8",
        '\u215E' => "7/8",
        _ => null,
    };
}
