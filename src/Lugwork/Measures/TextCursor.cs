namespace Lugwork;

/// <summary>Walks a piece of text: numbers (decimal point or comma, fractions), words and times signs.</summary>
internal ref struct TextCursor(ReadOnlySpan<char> text)
{
    private readonly ReadOnlySpan<char> _text = text;

    public int Position { get; set; }

    public readonly bool AtEnd => Position >= _text.Length;

    public readonly ReadOnlySpan<char> Rest => _text[Position..];

    public void SkipBlanks()
    {
        while (Position < _text.Length && IsBlank(_text[Position]))
        {
            Position++;
        }
    }

    /// <summary>Spaces of every width and the invisible marks that copied text brings along.</summary>
    public static bool IsBlank(char c) =>
        char.IsWhiteSpace(c) || c is '\u00A0' or '\u2007' or '\u2009' or '\u200A' or '\u202F' or '\u200B' or '\u200E' or '\u200F' or '\uFEFF';

    public static bool IsTimes(char c) => c is 'x' or 'X' or '*' or '\u00D7' or '\u2715' or '\u2A2F';

    public static bool IsDash(char c) => c is '-' or '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\u2212';

    /// <summary>A dash right before a digit: a negative number, where nothing stands before it that the dash could join.</summary>
    public static bool IsNegative(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        cursor.SkipBlanks();
        return cursor.Rest.Length > 1 && IsDash(cursor.Rest[0]) && char.IsAsciiDigit(cursor.Rest[1]);
    }

    public bool TryTimes()
    {
        SkipBlanks();
        if (!AtEnd && IsTimes(_text[Position]))
        {
            Position++;
            SkipBlanks();
            return true;
        }

        return false;
    }

    public bool TryDash()
    {
        SkipBlanks();
        if (!AtEnd && IsDash(_text[Position]))
        {
            Position++;
            SkipBlanks();
            return true;
        }

        return false;
    }

    /// <summary>A run of letters and digits that starts with a letter, or a single sign.</summary>
    public ReadOnlySpan<char> Word()
    {
        SkipBlanks();
        int start = Position;
        while (Position < _text.Length && (char.IsLetterOrDigit(_text[Position]) || _text[Position] is '.' or '_'))
        {
            Position++;
        }

        if (Position == start && !AtEnd)
        {
            Position++;
        }

        return _text[start..Position];
    }

    /// <summary>
    /// Reads a number that is not negative into nanometres of a millimetre scale: at most nine digits before and six after the point.
    /// A point or a comma followed by a digit is the decimal mark.
    /// </summary>
    public bool TryNumber(out long nanometres)
    {
        SkipBlanks();
        nanometres = 0;
        int start = Position;
        int digits = 0;
        while (Position < _text.Length && char.IsAsciiDigit(_text[Position]))
        {
            if (++digits > 9)
            {
                Position = start;
                return false;
            }

            nanometres = (nanometres * 10) + (_text[Position++] - '0');
        }

        if (digits == 0)
        {
            return false;
        }

        nanometres *= Nanometres.PerMillimetre;
        if (Position + 1 < _text.Length && _text[Position] is '.' or ',' && char.IsAsciiDigit(_text[Position + 1]))
        {
            Position++;
            long place = Nanometres.PerMillimetre;
            while (Position < _text.Length && char.IsAsciiDigit(_text[Position]))
            {
                place /= 10;
                if (place == 0)
                {
                    Position = start;
                    nanometres = 0;
                    return false;
                }

                nanometres += place * (_text[Position++] - '0');
            }
        }

        return true;
    }

    /// <summary>Takes "mm" if it stands here.</summary>
    public void SkipMillimetres()
    {
        SkipBlanks();
        if (Rest.StartsWith("mm", StringComparison.OrdinalIgnoreCase) && (Rest.Length == 2 || !char.IsLetterOrDigit(Rest[2])))
        {
            Position += 2;
        }

        SkipBlanks();
    }
}
