using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Lugwork;

/// <summary>A member of a closed set of standards: sealed, hand-listed, compared by identity.</summary>
/// <typeparam name="TSelf">The type itself.</typeparam>
public abstract class Standard<TSelf> : ISpanParsable<TSelf>, ISpanFormattable, IRow
    where TSelf : Standard<TSelf>, IInterfaceValue<TSelf>
{
    private protected Standard(int code, string key, string tradeName, Source source, params ImmutableArray<string> names)
    {
        FitCode = code;
        FitKey = key;
        TradeName = tradeName;
        Source = source;
        Names = names;
    }

    /// <summary>Canonical text, also the fit key for a database column. Frozen once published.</summary>
    public string FitKey { get; }

    /// <summary>Stable positive integer code. Frozen once published.</summary>
    public long FitCode { get; }

    /// <summary>What the trade calls it.</summary>
    public string TradeName { get; }

    /// <summary>Other spellings that are read as this one.</summary>
    public ImmutableArray<string> Names { get; }

    /// <summary>Where the row comes from.</summary>
    public Source Source { get; }

    /// <summary>The one main diameter or width, for the formats in millimetres and inches; null where there is none or more than one.</summary>
    internal virtual Nanometres? MainLength => null;

    /// <summary>Finds a member by key, trade name or another spelling; null where there is none. Case, blanks, hyphens, the kind of times sign and the decimal mark do not matter.</summary>
    /// <param name="text">A key or a name; a negative number is none.</param>
    public static TSelf? Find(ReadOnlySpan<char> text)
    {
        // Hyphens do not matter either, but "-160" is not the size 160.
        if (TextCursor.IsNegative(text))
        {
            return null;
        }

        foreach (TSelf member in TSelf.All)
        {
            if (Same(text, member.FitKey) || Same(text, member.TradeName))
            {
                return member;
            }
        }

        foreach (TSelf member in TSelf.All)
        {
            foreach (string name in member.Names)
            {
                if (Same(text, name))
                {
                    return member;
                }
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public static TSelf Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<TSelf>(s);

    /// <inheritdoc/>
    public static TSelf Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<TSelf>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, [MaybeNullWhen(false)] out TSelf result) =>
        InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, [MaybeNullWhen(false)] out TSelf result) =>
        InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, [MaybeNullWhen(false)] out TSelf result) => TryParse(s, null, out result);

    /// <summary>The fit key.</summary>
    public override string ToString() => FitKey;

    /// <summary>The fit key for "G" or nothing, the trade name for "T"; where there is one main diameter or width, its millimetres for "M" ("28.6 mm") and its inches for "I" ("9/16 in", "1.126 in").</summary>
    /// <param name="format">"G", "T", "M", "I", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format, or "M" or "I" of a value without one main length.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, TradeName, MainLength, TSelf.Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(ToString(format.ToString(), null), destination, out charsWritten);

    private protected static TSelf ByCode(long code)
    {
        foreach (TSelf member in TSelf.All)
        {
            if (member.FitCode == code)
            {
                return member;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(code), code, $"no {TSelf.Called} has this code");
    }

    private protected static TextReading<TSelf> ByName(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> trimmed = Trim(text);
        if (trimmed.IsEmpty)
        {
            return TextReading<TSelf>.Refused("the text is empty");
        }

        return (Find(trimmed) ?? FindInInches(trimmed)) is { } found
            ? TextReading<TSelf>.Of(found)
            : TextReading<TSelf>.Refused($"no such name; the known ones are {Listed()}");
    }

    /// <summary>Inch marks, signs for fractions and "tpi" in text and names brought to one form; null where that is no member or more than one.</summary>
    private static TSelf? FindInInches(ReadOnlySpan<char> text)
    {
        if (text.Length > InchText.MostLetters || TextCursor.IsNegative(text))
        {
            return null;
        }

        string plain = InchText.Plain(text);
        TSelf? found = null;
        foreach (TSelf member in TSelf.All)
        {
            bool same = Same(plain, InchText.Plain(member.FitKey)) || Same(plain, InchText.Plain(member.TradeName));
            foreach (string name in member.Names)
            {
                same = same || Same(plain, InchText.Plain(name));
            }

            if (same && found is not null)
            {
                return null;
            }

            found = same ? member : found;
        }

        return found;
    }

    /// <summary>The text without "mm" behind its last figure, for sets whose names are diameters: elsewhere a figure may be a count.</summary>
    private protected static ReadOnlySpan<char> WithoutMillimetres(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> trimmed = Trim(text);
        ReadOnlySpan<char> bare = trimmed.EndsWith("mm", StringComparison.OrdinalIgnoreCase) ? Trim(trimmed[..^2]) : trimmed;
        return !bare.IsEmpty && char.IsAsciiDigit(bare[^1]) ? bare : trimmed;
    }

    private protected static ReadOnlySpan<char> Trim(ReadOnlySpan<char> text)
    {
        int start = 0;
        int end = text.Length;
        while (start < end && TextCursor.IsBlank(text[start]))
        {
            start++;
        }

        while (end > start && TextCursor.IsBlank(text[end - 1]))
        {
            end--;
        }

        return text[start..end];
    }

    private static string Listed()
    {
        string[] keys = new string[TSelf.All.Length];
        for (int i = 0; i < keys.Length; i++)
        {
            keys[i] = TSelf.All[i].FitKey;
        }

        return string.Join(", ", keys);
    }

    /// <summary>Equal but for case, blanks, hyphens, underscores, the kind of times sign and the decimal mark.</summary>
    private protected static bool Same(ReadOnlySpan<char> a, ReadOnlySpan<char> b)
    {
        int i = 0;
        int j = 0;
        while (true)
        {
            while (i < a.Length && Skipped(a[i]))
            {
                i++;
            }

            while (j < b.Length && Skipped(b[j]))
            {
                j++;
            }

            if (i == a.Length || j == b.Length)
            {
                return i == a.Length && j == b.Length;
            }

            if (Plain(a, i++) != Plain(b, j++))
            {
                return false;
            }
        }
    }

    /// <summary>The letter in upper case; a times sign before a figure is an X, a comma inside a figure a point.</summary>
    private static char Plain(ReadOnlySpan<char> text, int at)
    {
        char c = text[at];
        if (char.IsAsciiLetterOrDigit(c))
        {
            return char.ToUpperInvariant(c);
        }

        if (c == ',' && at > 0 && at + 1 < text.Length && char.IsAsciiDigit(text[at - 1]) && char.IsAsciiDigit(text[at + 1]))
        {
            return '.';
        }

        if (TextCursor.IsTimes(c))
        {
            int next = at + 1;
            while (next < text.Length && Skipped(text[next]))
            {
                next++;
            }

            return next < text.Length && char.IsAsciiDigit(text[next]) ? 'X' : c;
        }

        return char.ToUpperInvariant(c);
    }

    private static bool Skipped(char c) => TextCursor.IsBlank(c) || TextCursor.IsDash(c) || c == '_';
}

/// <summary>A row of a table, with its source.</summary>
internal interface IRow
{
    Source Source { get; }
}
