namespace Lugwork.Planning;

/// <summary>Numbers for sequences of whole numbers: equal sequences have one number, given in the order of their first coming.</summary>
internal sealed class ChoiceInterner
{
    private readonly List<long> _store = [];
    private readonly List<int> _starts = [0];
    private readonly List<int> _hashes = [];
    private int[] _table = NewTable(16);

    public int Count => _hashes.Count;

    public ReadOnlySpan<long> this[int number] =>
        System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_store)[_starts[number].._starts[number + 1]];

    public int NumberOf(ReadOnlySpan<long> sequence)
    {
        ulong mixed = 14_695_981_039_346_656_037;
        foreach (long value in sequence)
        {
            mixed = (mixed ^ (ulong)value) * 0x9E37_79B9_7F4A_7C15;
            mixed ^= mixed >> 29;
        }

        int hash = (int)(mixed ^ (mixed >> 32));
        int mask = _table.Length - 1;
        int at = hash & mask;
        while (_table[at] >= 0)
        {
            int number = _table[at];
            if (_hashes[number] == hash && this[number].SequenceEqual(sequence))
            {
                return number;
            }

            at = (at + 1) & mask;
        }

        int added = Count;
        _table[at] = added;
        _hashes.Add(hash);
        _store.AddRange(sequence);
        _starts.Add(_store.Count);
        if (Count * 2 > _table.Length)
        {
            Grow();
        }

        return added;
    }

    private void Grow()
    {
        int[] larger = NewTable(_table.Length * 2);
        int mask = larger.Length - 1;
        for (int number = 0; number < Count; number++)
        {
            int at = _hashes[number] & mask;
            while (larger[at] >= 0)
            {
                at = (at + 1) & mask;
            }

            larger[at] = number;
        }

        _table = larger;
    }

    private static int[] NewTable(int size)
    {
        int[] table = new int[size];
        Array.Fill(table, -1);
        return table;
    }
}
