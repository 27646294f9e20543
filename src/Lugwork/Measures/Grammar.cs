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
/// Nothing is allocated; a refusal is a place and a literal.
/// </summary>
internal sealed class Grammar(ushort[] table, string[] expected)
{
    public const int Slots = 8;

    /// <summary>A row of the table is one state: its <see cref="Act"/>, then the row at which the next state begins for each letter; 0 refuses.</summary>
    internal const int Row = 32;

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

    public bool Read<TChar>(ReadOnlySpan<TChar> text, ref Findings found, out Slip slip)
        where TChar : unmanaged
    {
        // The table holds only rows of its own and the letters are fewer than its columns, so neither look-up can leave it.
        ref ushort table = ref MemoryMarshal.GetArrayDataReference(_table);
        ref byte letters = ref MemoryMarshal.GetReference(Letters.Table);
        nuint state = Row;
        long number = 0;
        int at = 0;
        for (; at < text.Length; at++)
        {
            uint unit = Unsafe.SizeOf<TChar>() == 1 ? Unsafe.BitCast<TChar, byte>(text[at]) : Unsafe.BitCast<TChar, ushort>(text[at]);
            if (unit >= (Unsafe.SizeOf<TChar>() == 1 ? Letters.Ascii : Letters.Latin))
            {
                return ReadWide(text, at, state, number, ref found, out slip);
            }

            nuint to = Unsafe.Add(ref table, state + Unsafe.Add(ref letters, unit) + FirstLetter);
            if (to == 0)
            {
                break;
            }

            state = to;
            number = Enter(ref Unsafe.Add(ref table, state), unit, number, ref found);
        }

        return End(text.Length, at, state, out slip);
    }

    /// <summary>The same walk from the first character on that the table of letters does not hold; apart, so that the calls do not slow the other.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private bool ReadWide<TChar>(ReadOnlySpan<TChar> text, int at, nuint state, long number, ref Findings found, out Slip slip)
        where TChar : unmanaged
    {
        while (at < text.Length)
        {
            Letter letter = Letters.Of(text, at, out uint unit, out int length);
            nuint to = _table[(int)state + FirstLetter + (int)letter];
            if (to == 0)
            {
                break;
            }

            state = to;
            number = Enter(ref _table[(int)state], unit, number, ref found);
            at += length;
        }

        return End(text.Length, at, state, out slip);
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
    private bool End(int length, int at, nuint state, out Slip slip)
    {
        if (at >= length && Unsafe.As<ushort, Act>(ref _table[(int)state]).Ends != 0)
        {
            slip = default;
            return true;
        }

        slip = new(expected[(int)state / Row], at);
        return false;
    }
}
