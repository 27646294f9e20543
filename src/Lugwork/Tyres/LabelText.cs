using System.Runtime.InteropServices;
using System.Text;

namespace Lugwork.Tyres;

/// <summary>How a number of a label is written; equal values of different forms are different labels.</summary>
internal enum NumberForm
{
    None = 0,
    Whole,
    Decimal,
    Fraction,
}

/// <summary>A label without its spelling: up to three numbers in hundred-thousandths, the letter, the mark.</summary>
internal readonly record struct LabelKey(long Outer, long Second, NumberForm SecondForm, long Third, NumberForm ThirdForm, char Letter, LabelMark Mark)
{
    /// <summary>An outer diameter with nothing behind it.</summary>
    public bool IsBare => SecondForm == NumberForm.None && Letter == 0 && Mark == LabelMark.None;
}

/// <summary>What stands behind a label to tell it from another of the same numbers.</summary>
internal enum LabelMark
{
    None = 0,
    EA3,
    E5,
    F13,
    S5,
    S6,
    S7,
    Old,
    Us,
    Cs,
    French300By55,
}

/// <summary>Reads labels of the trade; allocates nothing.</summary>
internal static class LabelText
{
    public const long One = 100_000;

    private const int MostLength = 48;

    public static bool TryRead<TChar>(ReadOnlySpan<TChar> text, out LabelKey key)
        where TChar : unmanaged
    {
        if (typeof(TChar) == typeof(char))
        {
            return TryRead(MemoryMarshal.Cast<TChar, char>(text), out key);
        }

        ReadOnlySpan<byte> bytes = MemoryMarshal.AsBytes(text);
        Span<char> room = stackalloc char[3 * MostLength];
        if (bytes.Length > room.Length)
        {
            key = default;
            return false;
        }

        return TryRead(room[..Encoding.UTF8.GetChars(bytes, room)], out key);
    }

    public static bool TryRead(ReadOnlySpan<char> text, out LabelKey key)
    {
        key = default;
        TextCursor cursor = new(text);
        if (text.Length > MostLength || !TryNumber(ref cursor, out long outer, out _))
        {
            return false;
        }

        (long second, NumberForm secondForm) = (0, NumberForm.None);
        (long third, NumberForm thirdForm) = (0, NumberForm.None);
        SkipInches(ref cursor);

        // Shops put the letter of a French label behind the diameter too: "700C x 25".
        char early = outer >= 100 * One ? Letter(ref cursor) : default;
        if (cursor.TryTimes())
        {
            if (!TryNumber(ref cursor, out second, out secondForm))
            {
                return false;
            }

            SkipInches(ref cursor);
            if (cursor.TryTimes())
            {
                if (!TryNumber(ref cursor, out third, out thirdForm))
                {
                    return false;
                }

                SkipInches(ref cursor);
            }
        }

        cursor.SkipMillimetres();
        char letter = early == default ? Letter(ref cursor) : early;
        if (!TryMark(ref cursor, out LabelMark mark))
        {
            return false;
        }

        key = new(outer, second, secondForm, third, thirdForm, letter, mark);
        return true;
    }

    /// <summary>"26", "27.5", "7/8", "1 3/8", "1-3/8", "1⅜", in hundred-thousandths.</summary>
    private static bool TryNumber(ref TextCursor cursor, out long value, out NumberForm form)
    {
        form = NumberForm.Whole;
        value = 0;
        if (TrySign(ref cursor, out long sign))
        {
            (value, form) = (sign, NumberForm.Fraction);
            return true;
        }

        ReadOnlySpan<char> rest = cursor.Rest;
        if (!cursor.TryNumber(out long nanometres) || nanometres > 1_000 * Nanometres.PerMillimetre)
        {
            return false;
        }

        // "2.00" is a decimal label although it is a whole number.
        value = nanometres / (Nanometres.PerMillimetre / One);
        if (rest[..^cursor.Rest.Length].ContainsAny('.', ','))
        {
            form = NumberForm.Decimal;
            return true;
        }

        if (TryBelow(ref cursor, out long below))
        {
            (value, form) = (value / below, NumberForm.Fraction);
            return true;
        }

        int back = cursor.Position;
        cursor.SkipBlanks();
        cursor.TryDash();
        if (TrySign(ref cursor, out sign))
        {
            (value, form) = (value + sign, NumberForm.Fraction);
            return true;
        }

        if (cursor.Position > back && cursor.TryNumber(out long above) && above < 100 * Nanometres.PerMillimetre && TryBelow(ref cursor, out below))
        {
            (value, form) = (value + (above / (Nanometres.PerMillimetre / One) / below), NumberForm.Fraction);
            return true;
        }

        cursor.Position = back;
        return true;
    }

    private static bool TryBelow(ref TextCursor cursor, out long below)
    {
        int back = cursor.Position;
        below = 0;
        if (!cursor.AtEnd && cursor.Rest[0] is '/' or '\u2044')
        {
            cursor.Position++;
            if (cursor.TryNumber(out long number) && number / Nanometres.PerMillimetre is 2 or 4 or 8 or 16 or 32)
            {
                below = number / Nanometres.PerMillimetre;
                return true;
            }
        }

        cursor.Position = back;
        return false;
    }

    private static bool TrySign(ref TextCursor cursor, out long value)
    {
        long eighths = cursor.AtEnd ? 0 : cursor.Rest[0] switch
        {
            '\u215B' => 1,
            '\u00BC' => 2,
            '\u215C' => 3,
            '\u00BD' => 4,
            '\u215D' => 5,
            '\u00BE' => 6,
            '\u215E' => 7,
            _ => 0,
        };
        value = eighths * One / 8;
        cursor.Position += eighths == 0 ? 0 : 1;
        return eighths != 0;
    }

    private static void SkipInches(ref TextCursor cursor)
    {
        cursor.SkipBlanks();
        if (!cursor.AtEnd && cursor.Rest[0] is '"' or '\u2033' or '\u201D')
        {
            cursor.Position++;
        }
        else if (cursor.Rest.StartsWith("in", StringComparison.OrdinalIgnoreCase) && (cursor.Rest.Length == 2 || !char.IsLetterOrDigit(cursor.Rest[2])))
        {
            cursor.Position += 2;
        }
    }

    /// <summary>The French letter, A to D, where it stands alone; 0 where there is none.</summary>
    private static char Letter(ref TextCursor cursor)
    {
        cursor.SkipBlanks();
        ReadOnlySpan<char> rest = cursor.Rest;
        if (rest.Length > 0 && char.ToUpperInvariant(rest[0]) is >= 'A' and <= 'D' && (rest.Length == 1 || !(char.IsLetterOrDigit(rest[1]) || rest[1] == '.')))
        {
            cursor.Position++;
            return char.ToUpperInvariant(rest[0]);
        }

        return '\0';
    }

    /// <summary>The rest of the text is a mark that the trade knows, or nothing.</summary>
    private static bool TryMark(ref TextCursor cursor, out LabelMark mark)
    {
        Span<char> room = stackalloc char[8];
        int length = 0;
        foreach (char c in cursor.Rest)
        {
            if (TextCursor.IsBlank(c) || TextCursor.IsDash(c) || c is '.' or '(' or ')' or ',')
            {
                continue;
            }

            if (length == room.Length)
            {
                mark = default;
                return false;
            }

            room[length++] = TextCursor.IsTimes(c) ? 'X' : char.ToUpperInvariant(c);
        }

        LabelMark? known = room[..length] switch
        {
            "" => LabelMark.None,
            "EA3" => LabelMark.EA3,
            "E5" => LabelMark.E5,
            "F13" => LabelMark.F13,
            "S5" => LabelMark.S5,
            "S6" => LabelMark.S6,
            "S7" => LabelMark.S7,
            "OLD" => LabelMark.Old,
            "US" => LabelMark.Us,
            "CS" => LabelMark.Cs,
            "300X55A" => LabelMark.French300By55,
            _ => null,
        };
        mark = known ?? default;
        return known is not null;
    }
}
