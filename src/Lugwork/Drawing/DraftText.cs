using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Lugwork.Drawing;

/// <summary>Text on a sheet: what may stand on it, how wide it is, where it breaks.</summary>
/// <remarks>
/// The width is an estimate by a fixed table, thousandths of the size of the letters: the advance widths of a plain sans-serif face for ASCII, one whole size for
/// everything else. Every line carries its width in the drawing, and a viewer fits the letters into it: so the boxes of the layout are the boxes that are shown, whatever the face.
/// </remarks>
internal static class DraftText
{
    /// <summary>More letters than this of one text are never laid out.</summary>
    public const int MostLetters = 2_000;

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

    /// <summary>Width of one line.</summary>
    public static double Width(string line, double size)
    {
        int thousandths = 0;
        foreach (Rune letter in line.EnumerateRunes())
        {
            thousandths += letter.Value is >= ' ' and <= '~' ? Ascii[letter.Value - ' '] : 1_000;
        }

        return thousandths * size / 1_000;
    }

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
    public static string Number(double number, int places = 3)
    {
        double rounded = Math.Round(number, places, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString(places > 2 ? "0.###" : places == 2 ? "0.##" : places == 1 ? "0.#" : "0", CultureInfo.InvariantCulture);
    }

    /// <summary>How many characters go into a line: whole words where one does.</summary>
    private static int Taken(string text, double most, double size)
    {
        double width = 0;
        int at = 0;
        int word = 0;
        foreach (Rune letter in text.EnumerateRunes())
        {
            width += Width(letter.ToString(), size);
            if (width > most && at > 0)
            {
                return word > 0 ? word : at;
            }

            word = letter.Value == ' ' ? at : word;
            at += letter.Utf16SequenceLength;
        }

        return at;
    }

    private static bool IsBlank(Rune letter) =>
        letter.Value is '\t' or '\n' or '\r' || Rune.GetUnicodeCategory(letter) is UnicodeCategory.SpaceSeparator or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
}
