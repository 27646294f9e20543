using System.Numerics;
using System.Runtime.InteropServices;

namespace Lugwork.Catalogues;

/// <summary>Rows of verdicts of one width, a byte each, every different row once.</summary>
internal sealed class VerdictRows(int width)
{
    private byte[] _rows = new byte[16 * width];

    // Number of the row and one more; 0 where a place is free.
    private int[] _places = new int[32];

    public int Count { get; private set; }

    public Span<byte> this[int row] => _rows.AsSpan(row * width, width);

    public void Clear()
    {
        Count = 0;
        Array.Clear(_places);
    }

    /// <summary>The number of a row, which is put in where it is new.</summary>
    public int Add(ReadOnlySpan<byte> row)
    {
        int mask = _places.Length - 1;
        int place = Hash(row) & mask;
        while (_places[place] != 0)
        {
            if (this[_places[place] - 1].SequenceEqual(row))
            {
                return _places[place] - 1;
            }

            place = (place + 1) & mask;
        }

        if ((Count + 1) * width > _rows.Length)
        {
            Array.Resize(ref _rows, 2 * _rows.Length);
        }

        row.CopyTo(this[Count]);
        _places[place] = ++Count;
        if (Count > _places.Length / 2)
        {
            Lay();
        }

        return Count - 1;
    }

    private void Lay()
    {
        _places = new int[2 * _places.Length];
        int mask = _places.Length - 1;
        for (int row = 0; row < Count; row++)
        {
            int place = Hash(this[row]) & mask;
            while (_places[place] != 0)
            {
                place = (place + 1) & mask;
            }

            _places[place] = row + 1;
        }
    }

    // The rows are verdicts of the library, so that nobody can choose ones that fall on one place; four sums run side by side.
    private static int Hash(ReadOnlySpan<byte> row)
    {
        ReadOnlySpan<ulong> words = MemoryMarshal.Cast<byte, ulong>(row);
        (ulong a, ulong b, ulong c, ulong d) = (1, 2, 3, 4);
        for (int i = 0; i + 3 < words.Length; i += 4)
        {
            a = BitOperations.RotateLeft(a ^ words[i], 23) * 0x9E3779B97F4A7C15UL;
            b = BitOperations.RotateLeft(b ^ words[i + 1], 23) * 0xC2B2AE3D27D4EB4FUL;
            c = BitOperations.RotateLeft(c ^ words[i + 2], 23) * 0x165667B19E3779F9UL;
            d = BitOperations.RotateLeft(d ^ words[i + 3], 23) * 0x27D4EB2F165667C5UL;
        }

        ulong all = (a ^ BitOperations.RotateLeft(b, 17) ^ BitOperations.RotateLeft(c, 31) ^ BitOperations.RotateLeft(d, 47)) * 0x9E3779B97F4A7C15UL;
        return (int)(all >> 33);
    }
}
