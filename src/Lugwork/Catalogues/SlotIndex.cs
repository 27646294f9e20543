namespace Lugwork.Catalogues;

/// <summary>
/// The parts of one slot, never changed: numbers of the shop in order, the kind of each, and the same numbers by kind, those of a kind
/// together and in order, so that an answer hands them out where they stand. Twenty bytes a part: eight for its number, four for its
/// kind, eight for its number beside the others of the kind.
/// </summary>
internal sealed class SlotIndex
{
    private readonly long[] _ids;
    private readonly int[] _kinds;
    private readonly int[] _starts;
    private readonly long[] _byKind;

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

        _byKind = GC.AllocateUninitializedArray<long>(kinds.Length);
        int[] next = _starts.AsSpan(0, table.Count).ToArray();
        for (int place = 0; place < kinds.Length; place++)
        {
            _byKind[next[kinds[place]]++] = ids[place];
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
    public long Memory => (20L * _ids.Length) + (4L * _starts.Length);

    public int CountOf(int kind) => _starts[kind + 1] - _starts[kind];

    /// <summary>The numbers of the parts of a kind, in order; nothing is copied.</summary>
    public ReadOnlyMemory<long> IdsOf(int kind) => _byKind.AsMemory(_starts[kind], CountOf(kind));

    /// <summary>The place of the part of a kind with the least number.</summary>
    public int FirstOf(int kind) => Find(_byKind[_starts[kind]]);

    /// <summary>The place of a part; negative where there is none of the number.</summary>
    public int Find(long id) => Array.BinarySearch(_ids, id);

    /// <summary>Kinds of which there is a part and that are no worse than asked for, the best verdict first; not judged ones, where what needs measuring is asked for, last. Those of one verdict as they came.</summary>
    public int[] Ranked(ReadOnlySpan<byte> verdicts, Verdict worst)
    {
        Span<int> next = stackalloc int[(int)Verdict.Unsafe + 2];
        next.Clear();
        Verdict last = worst < Verdict.NeedsMeasuring ? worst : worst + 1;
        for (int kind = 0; kind < verdicts.Length; kind++)
        {
            next[Rank(verdicts[kind], kind, last)]++;
        }

        // Rank 0 is left out.
        int count = 0;
        next[0] = 0;
        for (int rank = 1; rank < next.Length; rank++)
        {
            (next[rank], count) = (count, count + next[rank]);
        }

        int[] kinds = new int[count];
        for (int kind = 0; kind < verdicts.Length; kind++)
        {
            int rank = Rank(verdicts[kind], kind, last);
            if (rank > 0)
            {
                kinds[next[rank]++] = kind;
            }
        }

        return kinds;
    }

    /// <summary>Where a verdict stands: fits 1, needs a part 2, needs measuring 3, not judged 4; 0 for what is left out.</summary>
    private int Rank(byte verdict, int kind, Verdict last)
    {
        Verdict rank = (Verdict)verdict switch
        {
            Verdict.NotJudged => Verdict.NeedsMeasuring + 1,
            > Verdict.NeedsMeasuring => last + 1,
            var judged => judged,
        };
        return rank <= last && _starts[kind + 1] > _starts[kind] ? (int)rank : 0;
    }

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

        long[] all = new long[total];
        for (int kind = 0; kind < verdicts.Length; kind++)
        {
            if ((Verdict)verdicts[kind] >= least && (Verdict)verdicts[kind] <= most)
            {
                IdsOf(kind).Span.CopyTo(all.AsSpan(count));
                count += CountOf(kind);
            }
        }

        Array.Sort(all);
        for (int i = 0, from = 0; i < found.Length; i++)
        {
            found[i] = Array.BinarySearch(_ids, from, _ids.Length - from, all[i]);
            from = found[i] + 1;
        }

        return found;
    }
}
