namespace Lugwork.Tyres;

/// <summary>"ISO" or "ETRTO" in front of a size: what follows is a size of the standard and no label.</summary>
internal static class IsoMark
{
    /// <summary>In front of a size whose numbers alone are nearly always a label: "ISO 28-700".</summary>
    public const string Written = "ISO ";

    /// <summary>Does the text begin with a letter of a mark, or with a blank? Most texts end here.</summary>
    public static bool MayBe<TChar>(ReadOnlySpan<TChar> text)
        where TChar : unmanaged =>
        !text.IsEmpty && (typeof(TChar) == typeof(char) ? (int)(char)(object)text[0] : (byte)(object)text[0]) is 'I' or 'i' or 'E' or 'e' or <= ' ' or >= 0x80;

    /// <summary>Takes the mark off, with a colon or blanks behind it, where there is one and a figure follows.</summary>
    /// <param name="text">Characters or UTF-8.</param>
    /// <param name="rest">What follows the mark; the text itself where there is none.</param>
    public static bool TryStrip<TChar>(ReadOnlySpan<TChar> text, out ReadOnlySpan<TChar> rest)
        where TChar : unmanaged
    {
        rest = text;
        int start = SkipBlanks(text, 0);
        int at = Behind(text, start, "iso") is > 0 and var iso ? iso : Behind(text, start, "etrto");
        if (at < 0)
        {
            return false;
        }

        at = SkipBlanks(text, at);
        if (at < text.Length && Unit(text, at) == ':')
        {
            at = SkipBlanks(text, at + 1);
        }

        if (at == text.Length || Letters.Of(text, at, out _, out _) != Letter.Digit)
        {
            return false;
        }

        rest = text[at..];
        return true;
    }

    private static int SkipBlanks<TChar>(ReadOnlySpan<TChar> text, int at)
        where TChar : unmanaged
    {
        while (at < text.Length && Letters.Of(text, at, out _, out int length) == Letter.Blank)
        {
            at += length;
        }

        return at;
    }

    /// <summary>Where a word of small letters ends that stands here in any case; -1 where it does not.</summary>
    private static int Behind<TChar>(ReadOnlySpan<TChar> text, int at, string word)
        where TChar : unmanaged
    {
        foreach (char letter in word)
        {
            if (at >= text.Length || (Unit(text, at) | 0x20) != letter)
            {
                return -1;
            }

            at++;
        }

        return at;
    }

    private static uint Unit<TChar>(ReadOnlySpan<TChar> text, int at)
        where TChar : unmanaged
    {
        _ = Letters.Of(text, at, out uint unit, out _);
        return unit;
    }
}
