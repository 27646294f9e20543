namespace Lugwork.Catalogues;

/// <summary>
/// The parts of one slot, never changed: numbers of the shop in order, the kind of each, and for each kind the places of its parts in
/// order. Sixteen bytes a part: eight for its number, four for its kind, four for its place in the list of the kind.
/// </summary>
internal sealed class SlotIndex
{
    private readonly long[] _ids;
    private readonly int[] _kinds;
    private readonly int[] _starts;
    private readonly int[] _places;

    public SlotIndex(Slot slot, SlotTableView table, long[] ids, int[] kinds)
    {
        Slot = slot;
        Table = table;
        _ids = ids;
        _kinds = kinds;
        _starts = new int[table.Count + 1];
        foreach (int kind in kinds)
        {
            _starts[kind + 1]++;
        }

        for (int kind = 0; kind < table.Count; kind++)
        {
            Live += _starts[kind + 1] > 0 ? 1 : 0;
            _starts[kind + 1] += _starts[kind];
        }

        _places = new int[kinds.Length];
        int[] next = _starts.AsSpan(0, table.Count).ToArray();
        for (int place = 0; place < kinds.Length; place++)
        {
            _places[next[kinds[place]]++] = place;
        }
    }

    public Slot Slot { get; }

    public SlotTableView Table { get; }

    public int Count => _ids.Length;

    /// <summary>Kinds of which there is a part.</summary>
    public int Live { get; }

    public ReadOnlySpan<long> Ids => _ids;

    public ReadOnlySpan<int> Kinds => _kinds;

    /// <summary>Bytes of memory of what is kept for each part.</summary>
    public long Memory => (16L * _ids.Length) + (4L * _starts.Length);

    public int CountOf(int kind) => _starts[kind + 1] - _starts[kind];

    /// <summary>The places of the parts of a kind, in order.</summary>
    public ReadOnlySpan<int> PlacesOf(int kind) => _places.AsSpan(_starts[kind], CountOf(kind));

    /// <summary>The place of a part; negative where there is none of the number.</summary>
    public int Find(long id) => Array.BinarySearch(_ids, id);

    /// <summary>
    /// The places of parts whose kind has a verdict, in the order of their numbers, as many as are asked for. Where few kinds have it
    /// their own lists are merged; else all parts are gone through.
    /// </summary>
    public int[] Places(ReadOnlySpan<byte> verdicts, Verdict least, Verdict most, int total, int atMost)
    {
        int[] found = new int[Math.Min(total, atMost)];
        int count = 0;
        if (total > _ids.Length / 16)
        {
            for (int place = 0; place < _kinds.Length && count < found.Length; place++)
            {
                Verdict verdict = (Verdict)verdicts[_kinds[place]];
                if (verdict >= least && verdict <= most)
                {
                    found[count++] = place;
                }
            }

            return found;
        }

        int[] all = new int[total];
        for (int kind = 0; kind < verdicts.Length; kind++)
        {
            if ((Verdict)verdicts[kind] >= least && (Verdict)verdicts[kind] <= most)
            {
                PlacesOf(kind).CopyTo(all.AsSpan(count));
                count += CountOf(kind);
            }
        }

        Array.Sort(all);
        return all.Length == found.Length ? all : all[..found.Length];
    }
}
