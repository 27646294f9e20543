namespace Lugwork.Catalogues;

/// <summary>Rows of bytes one behind the other. Rows are only ever put behind: who holds the arrays and a count reads the same for ever.</summary>
internal class ByteRows
{
    private byte[] _bytes = [];
    private int[] _ends = [];

    public int Count { get; private set; }

    public ReadOnlySpan<byte> this[int row] => _bytes.AsSpan(Start(row).._ends[row]);

    /// <summary>What is there now; later rows do not change it.</summary>
    public ByteRowsView View => new(_bytes, _ends, Count);

    /// <summary>Bytes of memory that the rows take.</summary>
    public virtual long Memory => _bytes.Length + (4L * _ends.Length);

    /// <summary>Puts a row behind the others; its number.</summary>
    /// <exception cref="InvalidOperationException">The rows would take more than 2 GB.</exception>
    public int Append(ReadOnlySpan<byte> row)
    {
        int from = Start(Count);
        if (from > Array.MaxLength - row.Length)
        {
            throw new InvalidOperationException("a slot has more kinds of parts than a catalogue holds");
        }

        if (from + row.Length > _bytes.Length)
        {
            Array.Resize(ref _bytes, Grown(_bytes.Length, from + row.Length));
        }

        if (Count == _ends.Length)
        {
            Array.Resize(ref _ends, Grown(_ends.Length, Count + 1));
        }

        row.CopyTo(_bytes.AsSpan(from));
        _ends[Count] = from + row.Length;
        return Count++;
    }

    /// <summary>Takes rows back that nobody was shown.</summary>
    public virtual void CutTo(int count) => Count = Math.Min(Count, count);

    /// <summary>A little more room each time: what is held for later stays small beside what is there.</summary>
    public static int Grown(int length, int least) => (int)Math.Min(Array.MaxLength, Math.Max(least, length + (length / 32L) + 4));

    private int Start(int row) => row == 0 ? 0 : _ends[row - 1];
}

/// <summary>Rows as they were at one time.</summary>
internal readonly struct ByteRowsView(byte[] bytes, int[] ends, int count)
{
    public int Count => count;

    public ReadOnlySpan<byte> this[int row] => bytes.AsSpan((row == 0 ? 0 : ends[row - 1])..ends[row]);
}

/// <summary>Rows of bytes, each different row once, found by what they hold.</summary>
internal sealed class ByteSet : ByteRows
{
    // Number of the row and one more; 0 where a place is free.
    private int[] _places = new int[16];

    public override long Memory => base.Memory + (4L * _places.Length);

    /// <summary>The number of a row, which is put in where it is new.</summary>
    public int Add(ReadOnlySpan<byte> row, out bool isNew)
    {
        int place = PlaceOf(row);
        isNew = _places[place] == 0;
        if (!isNew)
        {
            return _places[place] - 1;
        }

        int number = Append(row);
        _places[place] = number + 1;
        if (Count > _places.Length / 8 * 7)
        {
            Lay(_places.Length * 2);
        }

        return number;
    }

    public override void CutTo(int count)
    {
        if (count < Count)
        {
            // Cleared in place: taking back asks for no memory.
            base.CutTo(count);
            Array.Clear(_places);
            Fill();
        }
    }

    private void Lay(int places)
    {
        _places = new int[places];
        Fill();
    }

    private void Fill()
    {
        for (int row = 0; row < Count; row++)
        {
            _places[PlaceOf(this[row])] = row + 1;
        }
    }

    private int PlaceOf(ReadOnlySpan<byte> row)
    {
        int mask = _places.Length - 1;
        int place = Hash(row) & mask;
        while (_places[place] != 0 && !this[_places[place] - 1].SequenceEqual(row))
        {
            place = (place + 1) & mask;
        }

        return place;
    }

    /// <summary>With a seed of the process, so that nobody can choose rows that fall on one place.</summary>
    private static int Hash(ReadOnlySpan<byte> row)
    {
        HashCode hash = default;
        hash.AddBytes(row);
        return hash.ToHashCode();
    }
}
