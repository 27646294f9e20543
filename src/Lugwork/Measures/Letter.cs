using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Text;

namespace Lugwork;

/// <summary>What a character means to the bulk readers. There are fewer than the columns of a <see cref="Grammar"/>.</summary>
internal enum Letter : byte
{
    /// <summary>Nothing that any grammar reads.</summary>
    Other = 0,
    Digit,
    Point,
    Comma,
    Blank,
    Times,
    Dash,
    Slash,

    /// <summary>A bar or a semicolon.</summary>
    Bar,

    /// <summary>The sign for inches.</summary>
    Inches,
    C,
    E,
    H,
    I,
    M,
    N,
    S,
    Z,
}

/// <summary>The meaning of characters out of UTF-16 and UTF-8. <see cref="TextCursor"/> knows the signs.</summary>
internal static class Letters
{
    /// <summary>Below it a byte is a character.</summary>
    public const int Ascii = 0x80;

    /// <summary>Below it a UTF-16 character is in the table, so that a times sign costs no more than a letter.</summary>
    public const int Latin = 0x100;

    private static readonly byte[] First = Meanings();

    public static ReadOnlySpan<byte> Table => First;

    /// <summary>The meaning of a character, its first unit, and how many units it takes.</summary>
    public static Letter Of<TChar>(ReadOnlySpan<TChar> text, int at, out uint unit, out int length)
        where TChar : unmanaged
    {
        length = 1;
        if (Unsafe.SizeOf<TChar>() != 1)
        {
            char c = Unsafe.BitCast<TChar, char>(text[at]);
            unit = c;
            return Meaning(c);
        }

        unit = Unsafe.BitCast<TChar, byte>(text[at]);
        if (unit < Ascii)
        {
            return (Letter)First[unit];
        }

        _ = Rune.DecodeFromUtf8(MemoryMarshal.Cast<TChar, byte>(text)[at..], out Rune rune, out length);
        return rune.IsBmp ? Meaning((char)rune.Value) : Letter.Other;
    }

    private static byte[] Meanings()
    {
        byte[] meanings = new byte[Latin];
        for (int c = 0; c < Latin; c++)
        {
            meanings[c] = (byte)Meaning((char)c);
        }

        return meanings;
    }

    private static Letter Meaning(char c) => c switch
    {
        >= '0' and <= '9' => Letter.Digit,
        '.' => Letter.Point,
        ',' => Letter.Comma,
        '/' => Letter.Slash,
        '|' or ';' => Letter.Bar,
        '"' or '\u2033' => Letter.Inches,
        'c' or 'C' => Letter.C,
        'e' or 'E' => Letter.E,
        'h' or 'H' => Letter.H,
        'i' or 'I' => Letter.I,
        'm' or 'M' => Letter.M,
        'n' or 'N' => Letter.N,
        's' or 'S' => Letter.S,
        'z' or 'Z' => Letter.Z,
        _ => TextCursor.IsTimes(c) ? Letter.Times : TextCursor.IsDash(c) ? Letter.Dash : TextCursor.IsBlank(c) ? Letter.Blank : Letter.Other,
    };
}
