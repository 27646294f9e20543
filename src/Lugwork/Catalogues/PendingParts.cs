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

    // Pieces of a list, so that nothing is copied as it grows.
    private const int MostInPiece = 2_048;

    private readonly List<Pending[]> _full = [];
    private WaitingPart[] _waiting = new WaitingPart[4];
    private int _waits;
    private Pending[] _piece = new Pending[16];
    private int _inPiece;
    private long _last;
    private bool _isMixed;

    public SlotTable Table => table;

    public KindReader Reader { get; } = new(table);

    public SlotTableMark Before { get; } = table.Here();

    private int Count => (_full.Count * MostInPiece) + _inPiece;

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

    /// <summary>Those that wait, in the order in which they came; none waits any more. They stand until the next is put in.</summary>
    public Span<WaitingPart> Waiting()
    {
        Span<WaitingPart> waiting = _waiting.AsSpan(0, _waits);
        _waits = 0;
        return waiting;
    }

    public void Add(long id, int kind, long row)
    {
        if (_inPiece == _piece.Length)
        {
            if (_inPiece == MostInPiece)
            {
                _full.Add(_piece);
                (_piece, _inPiece) = (new Pending[MostInPiece], 0);
            }
            else
            {
                Array.Resize(ref _piece, 2 * _inPiece);
            }
        }

        _isMixed |= id <= _last && Count > 0;
        _last = id;
        _piece[_inPiece++] = new(id, row, kind);
    }

    /// <summary>Numbers and kinds by number, each number once: a part that comes stands before one that goes, and of two that come the earlier.</summary>
    /// <param name="twice">Told the row and the number of a part whose number came before.</param>
    public (long[] Ids, int[] Kinds) Sorted(Action<long, long> twice)
    {
        long[] ids = GC.AllocateUninitializedArray<long>(Count);
        int[] kinds = GC.AllocateUninitializedArray<int>(Count);
        long[] rows = _isMixed ? new long[Count] : [];
        int at = 0;
        for (int number = 0; number <= _full.Count; number++)
        {
            foreach (ref readonly Pending one in number < _full.Count ? _full[number] : _piece.AsSpan(0, _inPiece))
            {
                (ids[at], kinds[at]) = (one.Id, one.Kind);
                if (_isMixed)
                {
                    rows[at] = one.Row;
                }

                at++;
            }
        }

        return _isMixed ? Ordered(ids, kinds, rows, twice) : (ids, kinds);
    }

    private static (long[] Ids, int[] Kinds) Ordered(long[] ids, int[] kinds, long[] rows, Action<long, long> twice)
    {
        int[] order = [.. Enumerable.Range(0, ids.Length)];
        Array.Sort(ids, order);
        int[] inOrder = new int[ids.Length];
        int kept = 0;
        for (int from = 0; from < ids.Length;)
        {
            int to = from + 1;
            for (; to < ids.Length && ids[to] == ids[from]; to++)
            {
            }

            // Places in the order in which they came; those that go came first.
            Span<int> same = order.AsSpan(from, to - from);
            same.Sort();
            int first = -1;
            foreach (int at in same)
            {
                if (first < 0 || kinds[first] == Gone)
                {
                    first = at;
                }
                else if (kinds[at] != Gone)
                {
                    twice(rows[at], ids[from]);
                }
            }

            ids[kept] = ids[from];
            inOrder[kept] = kinds[first];
            kept++;
            from = to;
        }

        return kept == ids.Length ? (ids, inOrder) : (ids[..kept], inOrder[..kept]);
    }

    private readonly record struct Pending(long Id, long Row, int Kind);
}
