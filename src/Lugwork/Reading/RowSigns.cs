namespace Lugwork.Reading;

/// <summary>Rows of an export whose cells a comma or a slash parts with no blank: "FRAME/rear brk IS2000/dk red/#4402/1 pc/£120", "Frame,rear 141 QR,blue,SKU FR42,qty 6". The signs that part cells become semicolons; each character keeps its place.</summary>
internal static class RowSigns
{
    private const int FewestSigns = 4;

    /// <summary>No row is longer, and a page of text is no row.</summary>
    private const int Longest = 400;

    /// <summary>The line with semicolons between its cells; null where it is no such row.</summary>
    /// <param name="text">The line.</param>
    public static string? Of(ReadOnlySpan<char> text)
    {
        if (text.Length > Longest || text.ContainsAny(";|\t"))
        {
            return null;
        }

        return Parted(text, ',') ?? Parted(text, '/');
    }

    private static string? Parted(ReadOnlySpan<char> text, char sign)
    {
        int count = 0;
        bool blank = false;
        for (int i = 0; i < text.Length; i++)
        {
            count += text[i] == sign && Ends(text, i, sign) ? 1 : 0;
            blank |= sign == ',' && text[i] == ',' && (i + 1 == text.Length || text[i + 1] == ' ');
        }

        if (blank || count < FewestSigns || !(sign == '/' ? IsPriced(text[(text.LastIndexOf(sign) + 1)..]) : (HasPoint(text) || !HasDecimalComma(text)) && HasTrade(text)))
        {
            return null;
        }

        return string.Create(text.Length, text, (row, source) =>
        {
            for (int i = 0; i < row.Length; i++)
            {
                row[i] = source[i] == sign && Ends(source, i, sign) ? ';' : source[i];
            }
        });
    }

    /// <summary>The sign parts two cells: no fraction, no two figures that belong together, no two letters of a short form.</summary>
    private static bool Ends(ReadOnlySpan<char> text, int at, char sign)
    {
        if (at == 0 || at + 1 >= text.Length || text[at - 1] == ' ' || text[at + 1] == ' ')
        {
            return false;
        }

        bool figures = char.IsDigit(text[at - 1]) && char.IsDigit(text[at + 1]);
        if (sign == ',')
        {
            return !figures || !IsThousands(text, at);
        }

        return !(figures && !IsCounted(text[(at + 1)..])) && !(char.IsLetter(text[at - 1]) && char.IsLetter(text[at + 1]) && (IsOneLetter(text, at - 1, -1) || IsOneLetter(text, at + 1, 1)));
    }

    /// <summary>"1 pc", "20 pcs", "2 sets": how many there are, in a cell of its own.</summary>
    private static bool IsCounted(ReadOnlySpan<char> behind)
    {
        ReadOnlySpan<char> word = behind.TrimStart("0123456789").TrimStart(' ');
        int slash = word.IndexOf('/');
        return slash is > 1 and < 8 && ExportWords.IsQuantity(word[..slash].TrimEnd('.').ToString().ToLowerInvariant());
    }

    /// <summary>A comma between two figures, which may be of a decimal.</summary>
    private static bool HasDecimalComma(ReadOnlySpan<char> text)
    {
        for (int i = 1; i + 1 < text.Length; i++)
        {
            if (text[i] == ',' && char.IsDigit(text[i - 1]) && char.IsDigit(text[i + 1]) && !IsThousands(text, i))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsOneLetter(ReadOnlySpan<char> text, int at, int step) => at + step < 0 || at + step >= text.Length || !char.IsLetter(text[at + step]);

    /// <summary>"$1,050": a sum with its currency in front.</summary>
    private static bool IsThousands(ReadOnlySpan<char> text, int at)
    {
        int from = at - 1;
        while (from > 0 && char.IsDigit(text[from - 1]))
        {
            from--;
        }

        return from > 0 && text[from - 1] is '$' or '\u20AC' or '\u00A3';
    }

    /// <summary>A decimal with a point: the comma is no sign of decimals here.</summary>
    private static bool HasPoint(ReadOnlySpan<char> text)
    {
        for (int i = 1; i + 1 < text.Length; i++)
        {
            if (text[i] == '.' && char.IsDigit(text[i - 1]) && char.IsDigit(text[i + 1]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Some cell starts with a word for an article or a quantity, or with the sign of a currency.</summary>
    private static bool HasTrade(ReadOnlySpan<char> text)
    {
        for (int i = 1; i < text.Length; i++)
        {
            if (text[i - 1] != ',')
            {
                continue;
            }

            int to = i;
            while (to < text.Length && char.IsLetter(text[to]))
            {
                to++;
            }

            if (text[i] is '#' or '$' or '\u20AC' or '\u00A3' || (to - i is >= 2 and < 12 && ExportWords.IsArticle(text[i..to].ToString().ToLowerInvariant())) || (to - i is 3 && text[i..to].Equals("qty", StringComparison.OrdinalIgnoreCase)))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsPriced(ReadOnlySpan<char> cell) =>
        cell.ContainsAnyInRange('0', '9') && (cell.ContainsAny('$', '\u20AC', '\u00A3') || cell.Contains("EUR", StringComparison.OrdinalIgnoreCase) || cell.Contains("USD", StringComparison.Ordinal) || cell.Contains("GBP", StringComparison.Ordinal) || cell.Contains("CHF", StringComparison.Ordinal));
}
