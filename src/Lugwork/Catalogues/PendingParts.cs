namespace Lugwork.Catalogues;

/// <summary>What is to come into one slot or to leave it.</summary>
internal sealed class PendingParts(SlotTable table)
{
    /// <summary>In the place of a kind: the part leaves.</summary>
    public const int Gone = -1;

    private long[] _ids = new long[16];
    private int[] _kinds = new int[16];
    private long[] _rows = new long[16];
    private int _count;

    public SlotTable Table => table;

    public SlotTableMark Before { get; } = table.Here();

    public ReadOnlySpan<long> Ids => _ids.AsSpan(0, _count);

    public ReadOnlySpan<int> Kinds => _kinds.AsSpan(0, _count);

    public void Add(long id, int kind, long row)
    {
        if (_count == _ids.Length)
        {
            int room = (int)Math.Min(Array.MaxLength, Math.Max(_count + 1L, 2L * _count));
            Array.Resize(ref _ids, room);
            Array.Resize(ref _kinds, room);
            Array.Resize(ref _rows, room);
        }

        (_ids[_count], _kinds[_count], _rows[_count]) = (id, kind, row);
        _count++;
    }

    /// <summary>They came in the order of their numbers, each once.</summary>
    private bool IsSorted()
    {
        for (int i = 1; i < _count; i++)
        {
            if (_ids[i] <= _ids[i - 1])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>By number, each number once: a part that comes stands before one that goes, and of two that come the earlier.</summary>
    public void Sort(Action<long, long> twice)
    {
        if (IsSorted())
        {
            return;
        }

        int[] order = [.. Enumerable.Range(0, _count)];
        Array.Sort(_ids, order, 0, _count);
        int[] kinds = new int[_count];
        long[] rows = new long[_count];
        int kept = 0;
        for (int from = 0; from < _count;)
        {
            int to = from + 1;
            for (; to < _count && _ids[to] == _ids[from]; to++)
            {
            }

            // Places in the order in which they came; those that go came first.
            Span<int> same = order.AsSpan(from, to - from);
            same.Sort();
            int first = -1;
            foreach (int at in same)
            {
                if (first < 0 || _kinds[first] == Gone)
                {
                    first = at;
                }
                else if (_kinds[at] != Gone)
                {
                    twice(_rows[at], _ids[from]);
                }
            }

            _ids[kept] = _ids[from];
            kinds[kept] = _kinds[first];
            rows[kept] = _rows[first];
            kept++;
            from = to;
        }

        (_kinds, _rows, _count) = (kinds, rows, kept);
    }
}
