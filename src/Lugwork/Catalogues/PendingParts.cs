namespace Lugwork.Catalogues;

/// <summary>A part that was put in and not looked at yet.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Part">The part.</param>
/// <param name="Row">The number of its row.</param>
/// <param name="IsRead">It was held against itself when its text was read.</param>
internal readonly record struct WaitingPart(long Id, Part Part, long Row, bool IsRead);

/// <summary>What is to come into one slot or to leave it.</summary>
internal sealed class PendingParts(SlotTable table)
{
    /// <summary>In the place of a kind: the part leaves.</summary>
    public const int Gone = -1;

    // Parts of one slot are looked at some at a time: what they are held against is near then, however the slots come in turn.
    private const int MostWaiting = 256;

    private WaitingPart[] _waiting = new WaitingPart[4];
    private int _waits;
    private long[] _ids = new long[16];
    private int[] _kinds = new int[16];
    private long[] _rows = new long[16];
    private int _count;

    public SlotTable Table => table;

    public SlotTableMark Before { get; } = table.Here();

    public ReadOnlySpan<long> Ids => _ids.AsSpan(0, _count);

    public ReadOnlySpan<int> Kinds => _kinds.AsSpan(0, _count);

    /// <summary>Puts a part behind those that wait; true where it is time to look at them.</summary>
    public bool Wait(in WaitingPart part)
    {
        if (_waits == _waiting.Length)
        {
            Array.Resize(ref _waiting, 2 * _waits);
        }

        _waiting[_waits++] = part;
        return _waits == MostWaiting;
    }

    /// <summary>Those that wait, in the order in which they came; none waits any more.</summary>
    public ReadOnlySpan<WaitingPart> Waiting()
    {
        ReadOnlySpan<WaitingPart> waiting = _waiting.AsSpan(0, _waits);
        _waits = 0;
        return waiting;
    }

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
