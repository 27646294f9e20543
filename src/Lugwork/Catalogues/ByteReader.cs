using System.Text;

namespace Lugwork.Catalogues;

/// <summary>Reads what <see cref="ByteWriter"/> wrote and trusts none of it: every length is held against what is left.</summary>
internal ref struct ByteReader(ReadOnlySpan<byte> bytes, long at)
{
    private const int MostText = 200;

    private readonly ReadOnlySpan<byte> _bytes = bytes;
    private int _next;

    public readonly int Left => _bytes.Length - _next;

    /// <summary>Where in the file the next byte stands.</summary>
    public readonly long Position => at + _next;

    public byte Byte() => _next < _bytes.Length ? _bytes[_next++] : throw Wrong("it ends too early");

    public ulong Number()
    {
        // Most are small: one byte.
        byte first = Byte();
        return first < 0x80 ? first : Longer(first);
    }

    private ulong Longer(byte first)
    {
        ulong value = first & 0x7Fu;
        for (int shift = 7; shift < 64; shift += 7)
        {
            byte next = Byte();
            if (shift == 63 && next > 1)
            {
                break;
            }

            value |= (ulong)(next & 0x7F) << shift;
            if (next < 0x80)
            {
                return value;
            }
        }

        throw Wrong("a number has more than 64 bits");
    }

    /// <summary>How many things follow, each of at least so many bytes.</summary>
    public int Count(int least)
    {
        ulong count = Number();
        return count <= (ulong)(Left / Math.Max(1, least)) ? (int)count : throw Wrong($"{count} things cannot follow in {Left} bytes");
    }

    public long Code() => Number() is <= long.MaxValue and var code ? (long)code : throw Wrong("a code is above all codes");

    public string Text()
    {
        int length = Count(1);
        if (length > MostText)
        {
            throw Wrong("a name is too long");
        }

        string text = Encoding.UTF8.GetString(_bytes.Slice(_next, length));
        _next += length;
        return text;
    }

    public Candidates Candidates()
    {
        KnownState state = (KnownState)Byte();
        switch (state)
        {
            case KnownState.Unknown or KnownState.None:
                return new(state, 0, 0, null);
            case KnownState.Value or KnownState.FrameSpecific or KnownState.NotCovered:
                long code = Code();
                return new(state, code, code, null);
            case KnownState.Measured:
                long low = Code();
                long width = Code();
                return width <= long.MaxValue - low ? new(state, low, low + width, null) : throw Wrong("a range ends above all lengths");
            case KnownState.OneOf:
                long[] codes = new long[Count(1) is <= Known<Dimension>.MostValues and int several ? several : throw Wrong($"one of several has at most {Known<Dimension>.MostValues} values")];
                long before = 0;
                for (int i = 0; i < codes.Length; i++)
                {
                    long more = Code();
                    before = more > 0 && more <= long.MaxValue - before ? before + more : throw Wrong("the values of one field are not in order");
                    codes[i] = before;
                }

                return codes.Length > 1 ? new(state, codes[0], codes[^1], codes) : throw Wrong("one of several has at least two values");
            default:
                throw Wrong($"there is no state of knowledge {(byte)state}");
        }
    }

    public readonly CatalogueFileException Wrong(string what) => new(what, Position);
}
