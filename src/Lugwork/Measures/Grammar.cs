using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Lugwork;

/// <summary>What a grammar took out of a text, by slot: lengths in nanometres, letters by their low bits. Slot 0 is waste paper.</summary>
[InlineArray(Grammar.Slots)]
internal struct Findings
{
    private long _first;
}

/// <summary>
/// A grammar as a table: a state and a letter give the next state, and entering a state says what happens to the number under way. The walk
/// takes no decision of its own but when to stop, so lines of many forms cost no more than lines of one; UTF-16 and UTF-8 share the table.
/// Nothing is allocated; a refusal is a number, and told by <see cref="Why"/> when someone asks.
/// </summary>
internal sealed class Grammar(ushort[] table, string[] expected)
{
    public const int Slots = 8;

    /// <summary>A row of the table is one state: its <see cref="Act"/>, then the byte at which the next state's row begins for each letter; 0 refuses.</summary>
    internal const int Row = 32;

    internal const int RowBytes = Row * sizeof(ushort);

    internal const int FirstLetter = 4;

    private readonly ushort[] _table = table;

    /// <summary>What entering a state does: the number under way is multiplied, takes the low bits of the letter, and goes to a slot on a scale.</summary>
    /// <param name="Into">The slot it goes to; 0 for none.</param>
    /// <param name="Times">0 begins a number, 10 goes on with it, 1 leaves it.</param>
    /// <param name="Mask">15 takes the letter, 0 does not.</param>
    /// <param name="Ends">1 where the text may end.</param>
    /// <param name="Scale">What the slot counts in.</param>
    [StructLayout(LayoutKind.Sequential, Pack = 1)]
    internal readonly record struct Act(byte Into, byte Times, byte Mask, byte Ends, int Scale);

    /// <summary>What <see cref="Read"/> answers where the whole text was read.</summary>
    public const long Whole = -1;

    /// <summary>Reads a text from end to end.</summary>
    /// <returns><see cref="Whole"/>, or where and in which state it was refused.</returns>
    public long Read<TChar>(ReadOnlySpan<TChar> text, ref Findings found)
        where TChar : unmanaged
    {
        // The table holds only rows of its own and the letters are fewer than its columns, so neither look-up can leave it.
        ref ushort table = ref MemoryMarshal.GetArrayDataReference(_table);
        ref byte letters = ref MemoryMarshal.GetReference(Letters.Table);
        nuint state = RowBytes;
        long number = 0;
        int at = 0;
        for (; at < text.Length; at++)
        {
            uint unit = Unsafe.SizeOf<TChar>() == 1 ? Unsafe.BitCast<TChar, byte>(text[at]) : Unsafe.BitCast<TChar, ushort>(text[at]);
            if (unit >= (Unsafe.SizeOf<TChar>() == 1 ? Letters.Ascii : Letters.Latin))
            {
                return ReadWide(text, at, state, number, ref found);
            }

            // The column first: it does not wait for the state.
            ref ushort column = ref Unsafe.Add(ref table, Unsafe.Add(ref letters, unit) + FirstLetter);
            nuint to = Unsafe.AddByteOffset(ref column, state);
            if (to == 0)
            {
                break;
            }

            state = to;
            number = Enter(ref Unsafe.AddByteOffset(ref table, state), unit, number, ref found);
        }

        return End(text.Length, at, state);
    }

    /// <summary>The same walk from the first character on that the table of letters does not hold; apart, so that the calls do not slow the other.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private long ReadWide<TChar>(ReadOnlySpan<TChar> text, int at, nuint state, long number, ref Findings found)
        where TChar : unmanaged
    {
        while (at < text.Length)
        {
            Letter letter = Letters.Of(text, at, out uint unit, out int length);
            nuint to = _table[((int)state / sizeof(ushort)) + FirstLetter + (int)letter];
            if (to == 0)
            {
                break;
            }

            state = to;
            number = Enter(ref _table[(int)state / sizeof(ushort)], unit, number, ref found);
            at += length;
        }

        return End(text.Length, at, state);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static long Enter(ref ushort row, uint unit, long number, ref Findings found)
    {
        ref Act act = ref Unsafe.As<ushort, Act>(ref row);
        number = (number * act.Times) + (unit & act.Mask);
        found[act.Into & (Slots - 1)] = number * act.Scale;
        return number;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private long End(int length, int at, nuint state) =>
        at >= length && Unsafe.As<ushort, Act>(ref _table[(int)state / sizeof(ushort)]).Ends != 0 ? Whole : ((long)state << 32) | (uint)at;

    /// <summary>Why and where a text was refused.</summary>
    /// <param name="stop">What <see cref="Read"/> answered.</param>
    public Slip Why(long stop) => new(expected[(int)(stop >> 32) / RowBytes], (int)stop);
}
