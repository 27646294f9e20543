using System.Numerics;

namespace Lugwork.Catalogues;

/// <summary>
/// Kinds of parts that came lately, found by all that a part says: most rows of a shop are of a kind that came before. Rows are held
/// against each other whole, so that a kind that is found is the very kind.
/// </summary>
internal sealed class RecentKinds(int width)
{
    private const int MostPlaces = 4_096;

    // A row stands in one of four places beside each other.
    private const int Ways = 4;

    // With a seed of the process, so that nobody can choose rows that fall on one place.
    private static readonly ulong Seed = ((ulong)(uint)HashCode.Combine(1) << 32) | (uint)HashCode.Combine(2);

    // Number of the kind and one more; 0 where a place is free.
    private int[] _kinds = new int[4 * Ways];
    private long[] _rows = new long[4 * Ways * width];

    /// <summary>The kind that says what a row of packed codes says; negative where none came lately.</summary>
    public int Find(ReadOnlySpan<long> row)
    {
        int place = PlaceOf(row);
        for (int end = place + Ways; place < end && _kinds[place] != 0; place++)
        {
            if (RowAt(place).SequenceEqual(row))
            {
                return _kinds[place] - 1;
            }
        }

        return -1;
    }

    /// <summary>Remembers a kind that was not found. More room where four places are taken; where there is no more, one is given up.</summary>
    public void Put(ReadOnlySpan<long> row, int kind)
    {
        int place = Free(row);
        while (place < 0 && _kinds.Length < MostPlaces)
        {
            Grow();
            place = Free(row);
        }

        place = place < 0 ? PlaceOf(row) + (kind & (Ways - 1)) : place;
        row.CopyTo(RowAt(place));
        _kinds[place] = kind + 1;
    }

    public void Clear() => Array.Clear(_kinds);

    private int Free(ReadOnlySpan<long> row)
    {
        int place = PlaceOf(row);
        int at = _kinds.AsSpan(place, Ways).IndexOf(0);
        return at < 0 ? -1 : place + at;
    }

    private void Grow()
    {
        (int[] kinds, long[] rows) = (_kinds, _rows);
        _rows = new long[2 * rows.Length];
        _kinds = new int[2 * kinds.Length];
        for (int old = 0; old < kinds.Length; old++)
        {
            if (kinds[old] != 0)
            {
                // Four places become twice four: there is always room.
                ReadOnlySpan<long> row = rows.AsSpan(old * width, width);
                int place = Free(row);
                row.CopyTo(RowAt(place));
                _kinds[place] = kinds[old];
            }
        }
    }

    private Span<long> RowAt(int place) => _rows.AsSpan(place * width, width);

    /// <summary>The first of the four places; four sums run side by side over the row.</summary>
    private int PlaceOf(ReadOnlySpan<long> row)
    {
        (ulong a, ulong b, ulong c, ulong d) = (Seed, Seed + 1, Seed + 2, Seed + 3);
        for (int i = 0; i + 3 < row.Length; i += 4)
        {
            a = BitOperations.RotateLeft((a ^ (ulong)row[i]) * 0x9E3779B97F4A7C15UL, 27);
            b = BitOperations.RotateLeft((b ^ (ulong)row[i + 1]) * 0xC2B2AE3D27D4EB4FUL, 27);
            c = BitOperations.RotateLeft((c ^ (ulong)row[i + 2]) * 0x165667B19E3779F9UL, 27);
            d = BitOperations.RotateLeft((d ^ (ulong)row[i + 3]) * 0x27D4EB2F165667C5UL, 27);
        }

        ulong all = (a ^ BitOperations.RotateLeft(b, 17) ^ BitOperations.RotateLeft(c, 31) ^ BitOperations.RotateLeft(d, 47)) * 0x9E3779B97F4A7C15UL;
        return (int)(all >> 40) & (_kinds.Length - Ways);
    }
}
