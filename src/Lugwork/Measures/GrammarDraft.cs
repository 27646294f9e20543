using System.Runtime.CompilerServices;

namespace Lugwork;

/// <summary>Puts a <see cref="Grammar"/> together, state by state; a text starts in the first one.</summary>
internal sealed class GrammarDraft
{
    private const int MostStates = 128;
    private const int MostWhole = 9;
    private const int MostDecimals = 6;

    private readonly ushort[] _table = new ushort[MostStates * Grammar.Row];
    private readonly string[] _expected = new string[MostStates];
    private int _states;

    public Grammar Done() => new(_table, _expected);

    /// <summary>A state that leaves the number alone.</summary>
    /// <param name="expected">What would have to follow: the reason of a refusal here.</param>
    /// <param name="ends">The text may end here.</param>
    public byte State(string expected, bool ends = false) => Add(expected, new(0, 1, 0, ends ? (byte)1 : (byte)0, 0));

    /// <summary>A state that keeps its letter, by the low four bits.</summary>
    public byte Kept(int slot, string expected, bool ends = false) => Add(expected, new((byte)slot, 0, 15, ends ? (byte)1 : (byte)0, 1));

    /// <summary>A row of digits into a slot.</summary>
    public byte[] Digits(int most, int slot, string expected, int scale = 1, bool ends = false, int step = 1, byte first = 0)
    {
        byte[] states = new byte[most];
        for (int i = 0; i < most; i++)
        {
            scale /= step;
            states[i] = Add(expected, new((byte)slot, i == 0 ? first : (byte)10, 15, ends ? (byte)1 : (byte)0, scale));
            if (i > 0)
            {
                On(Letter.Digit, states[i], states[i - 1]);
            }
        }

        return states;
    }

    /// <summary>A length into a slot, nanometres: up to nine digits, and up to six behind a point or comma.</summary>
    public Number Length(int slot, string expected, bool ends = false)
    {
        byte[] whole = Digits(MostWhole, slot, expected, (int)Nanometres.PerMillimetre, ends);
        byte[] part = Digits(MostDecimals, slot, expected, (int)Nanometres.PerMillimetre, ends, step: 10, first: 10);
        return Join(whole, part, expected);
    }

    /// <summary>The same number in two slots, whole millimetres and the digits behind the mark, for values that have to be whole.</summary>
    public Number Millimetres(int slot, int decimals, string expected, bool ends = false) =>
        Join(Digits(MostWhole, slot, expected, ends: ends), Digits(MostDecimals, decimals, expected, ends: ends), expected);

    private Number Join(byte[] whole, byte[] part, string expected)
    {
        byte point = State(expected);
        byte comma = State(expected);
        On(Letter.Point, point, whole);
        On(Letter.Comma, comma, whole);
        On(Letter.Digit, part[0], point, comma);
        return new(whole, comma, part, [.. whole, .. part]);
    }

    /// <summary>A letter leads from each of some states to one.</summary>
    public void On(Letter letter, byte to, params ReadOnlySpan<byte> from)
    {
        foreach (byte state in from)
        {
            _table[(state * Grammar.Row) + Grammar.FirstLetter + (int)letter] = (ushort)(to * Grammar.RowBytes);
        }
    }

    private byte Add(string expected, Grammar.Act act)
    {
        int state = ++_states;
        Unsafe.As<ushort, Grammar.Act>(ref _table[state * Grammar.Row]) = act;
        _expected[state] = expected;
        return (byte)state;
    }

    /// <summary>The states of a length: whole digits, behind a comma, decimals, and all in which it may end.</summary>
    internal readonly record struct Number(byte[] Whole, byte Comma, byte[] Decimals, byte[] Ends)
    {
        public byte First => Whole[0];
    }
}
