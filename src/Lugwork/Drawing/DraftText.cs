using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Lugwork.Drawing;

/// <summary>Text on a sheet: what may stand on it, how wide it is, where it breaks.</summary>
/// <remarks>
/// The width is an estimate by a fixed table, thousandths of the size of the letters: the advance widths of a plain sans-serif face for ASCII and a few signs, two
/// thirds of the size for other Latin letters, one whole size for everything else. Every line carries its width in the drawing, and a viewer fits the letters into it: so the boxes of the layout are the boxes that are shown, whatever the face.
/// </remarks>
internal static class DraftText
{
    /// <summary>More letters than this of one text are never laid out.</summary>
    public const int MostLetters = 2_000;

    /// <summary>Room for the digits, point and sign of a number.</summary>
    private const int Digits = 24;

    private static ReadOnlySpan<short> Ascii =>
    [
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
    ];

    /// <summary>The text in one line, without what cannot stand in a drawing or would turn its order round: control and format characters, halves of surrogates, and what is no character. Blanks of every kind are one blank.</summary>
    public static string Clean(string text)
    {
        if (IsPlain(text))
        {
            return text;
        }

        StringBuilder clean = new(Math.Min(text.Length, MostLetters));
        bool blank = false;
        foreach (Rune letter in text.EnumerateRunes())
        {
            if (clean.Length >= MostLetters)
            {
                break;
            }

            if (IsBlank(letter))
            {
                blank = clean.Length > 0;
                continue;
            }

            if (letter == Rune.ReplacementChar || Rune.GetUnicodeCategory(letter) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned)
            {
                continue;
            }

            if (blank)
            {
                clean.Append(' ');
                blank = false;
            }

            clean.Append(letter.ToString());
        }

        return clean.ToString();
    }

    /// <summary>Nothing in it has to be taken out or changed: visible ASCII with single blanks between.</summary>
    private static bool IsPlain(string text)
    {
        char before = ' ';
        foreach (char letter in text)
        {
            if (letter is < ' ' or > '~' || (letter == ' ' && before == ' '))
            {
                return false;
            }

            before = letter;
        }

        return text.Length <= MostLetters && (before != ' ' || text.Length == 0);
    }

    /// <summary>Width of one line.</summary>
    public static double Width(string line, double size)
    {
        int thousandths = 0;
        for (int at = 0; at < line.Length;)
        {
            thousandths += Advance(line, ref at);
        }

        return thousandths * size / 1_000;
    }

    /// <summary>Advance of the letter at a place, which moves behind it.</summary>
    private static int Advance(string text, ref int at)
    {
        char plain = text[at];
        if (plain is >= ' ' and <= '~')
        {
            at++;
            return Ascii[plain - ' '];
        }

        Rune.DecodeFromUtf16(text.AsSpan(at), out Rune letter, out int length);
        at += length;
        return Advance(letter);
    }

    private static int Advance(Rune letter) => letter.Value switch
    {
        '\u00B0' => 400,
        '\u00B1' or '\u00D7' => 584,
        >= '\u00A1' and < '\u0180' => 667,
        _ => 1_000,
    };

    /// <summary>The text in lines of at most a width; a word that is wider is cut, and what does not go into the lines is left out behind an ellipsis.</summary>
    public static ImmutableArray<string> Wrap(string text, double most, double size, int lines)
    {
        List<string> wrapped = [];
        string rest = Clean(text);
        while (rest.Length > 0)
        {
            int taken = Taken(rest, most, size);
            if (wrapped.Count == lines - 1 && taken < rest.Length)
            {
                int room = Taken(rest, most - Width("\u2026", size), size);
                wrapped.Add(rest[..room].TrimEnd() + "\u2026");
                break;
            }

            wrapped.Add(rest[..taken].TrimEnd());
            rest = rest[taken..].TrimStart();
        }

        return [.. wrapped];
    }

    /// <summary>A number without trailing zeros and never "-0", the same in every culture.</summary>
    /// <param name="number">Any number below a million millions.</param>
    /// <param name="places">Most digits behind the point, 0 to 3.</param>
    public static string Number(double number, int places = 3)
    {
        long scale = places switch { 0 => 1, 1 => 10, 2 => 100, _ => 1_000 };
        double scaled = Math.Round(number * scale, MidpointRounding.AwayFromZero);
        if (!(Math.Abs(scaled) < 1e15))
        {
            return number.ToString("0.###", CultureInfo.InvariantCulture);
        }

        Span<char> text = stackalloc char[Digits];
        return new string(text[Written(text, scaled, scale)..]);
    }

    /// <summary>The same number with three places, behind a text.</summary>
    public static void Number(StringBuilder text, double number)
    {
        double scaled = Math.Round(number * 1_000, MidpointRounding.AwayFromZero);
        if (!(Math.Abs(scaled) < 1e15))
        {
            text.Append(Number(number));
            return;
        }

        Span<char> digits = stackalloc char[Digits];
        text.Append(digits[Written(digits, scaled, 1_000)..]);
    }

    /// <summary>Writes a whole number of parts to the end of a room for it; says where it begins.</summary>
    private static int Written(Span<char> text, double scaled, long scale)
    {
        int at = text.Length;
        (long whole, long rest) = Math.DivRem((long)Math.Abs(scaled), scale);
        for (long step = scale; step > 1; step /= 10)
        {
            (rest, long digit) = Math.DivRem(rest, 10);
            if (digit > 0 || at < text.Length)
            {
                text[--at] = (char)('0' + digit);
            }
        }

        if (at < text.Length)
        {
            text[--at] = '.';
        }

        do
        {
            (whole, long digit) = Math.DivRem(whole, 10);
            text[--at] = (char)('0' + digit);
        }
        while (whole > 0);
        if (scaled < 0)
        {
            text[--at] = '-';
        }

        return at;
    }

    /// <summary>How many characters go into a line: whole words where one does.</summary>
    private static int Taken(string text, double most, double size)
    {
        double width = 0;
        int at = 0;
        int word = 0;
        while (at < text.Length)
        {
            int from = at;
            width += Advance(text, ref at) * size / 1_000;
            if (width > most && from > 0)
            {
                return word > 0 ? word : from;
            }

            // A figure keeps its unit.
            word = text[from] == ' ' && !text.AsSpan(from).StartsWith(" mm") ? from : word;
        }

        return at;
    }

    private static bool IsBlank(Rune letter) =>
        letter.Value is '\t' or '\n' or '\r' || Rune.GetUnicodeCategory(letter) is UnicodeCategory.SpaceSeparator or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
}
