using System.Collections.Immutable;

namespace Lugwork.Catalogues;

/// <summary>A change of a catalogue on its way: nobody sees it before it is finished, and given up it leaves nothing behind.</summary>
internal sealed class CatalogueDraft(SlotTable?[] tables, CatalogueView before)
{
    private const int Gone = -1;

    private readonly Pending?[] _pending = new Pending?[tables.Length];
    private readonly List<CatalogueProblem> _problems = [];
    private long _row = -1;
    private long _skipped;
    private bool _done;

    public void Put(CatalogueRow? row)
    {
        _row++;
        if (row is null)
        {
            Skip(_row, 0, "the row is null");
        }
        else if (row.Slot is null || row.Part is null)
        {
            Skip(_row, row.Id, row.Slot is null ? "it names no slot" : "there is no part");
        }
        else if (!row.Part.Places.Contains(row.Slot))
        {
            Skip(_row, row.Id, $"a {row.Part.GetType().Name} goes to {string.Join(" or ", row.Part.Places)}, not to {row.Slot}");
        }
        else
        {
            Keep(row.Id, row.Slot, row.Part);
        }
    }

    public void Put(CatalogueLine? line)
    {
        if (line is null || line.Slot is null || line.Text is null || Slot.Find(line.Slot) is not { } slot)
        {
            Skip(++_row, line?.Id ?? 0, line is null ? "the row is null" : line.Text is null ? "there is no text" : "there is no such slot");
        }
        else if (PartForms.Of(slot).TryReadAny(line.Text, out Part part, out ImmutableArray<SpecProblem> problems))
        {
            Put(new CatalogueRow(line.Id, slot, part));
        }
        else
        {
            Skip(++_row, line.Id, problems[0].ToString());
        }
    }

    public void Remove(CatalogueKey key)
    {
        if (key.Slot is { } slot && before.IndexOf(slot) is not null)
        {
            PendingOf(slot).Add(key.Id, Gone, -1);
        }
    }

    /// <summary>The view after the change.</summary>
    public CatalogueView Finish(out CatalogueReport report)
    {
        (int added, int replaced, int removed) = (0, 0, 0);
        SlotIndex?[] indexes = before.Indexes.ToArray();
        SlotTable?[] renewed = new SlotTable?[tables.Length];
        foreach (Slot slot in Slot.All)
        {
            if (_pending[slot.Number] is not { } pending)
            {
                continue;
            }

            pending.Sort((row, id) => Skip(row, id, "an earlier row of this slot has the same number"));
            SlotMerge merge = new(indexes[slot.Number], pending.Ids, pending.Kinds);
            added += merge.Added;
            replaced += merge.Replaced;
            removed += merge.Removed;
            SlotTable table = pending.Table;
            SlotIndex index = new(slot, table.View(), merge.Ids, merge.Kinds);
            if (table.Count > 1_024 && index.Live < table.Count / 2)
            {
                (renewed[slot.Number], index) = Renewed(index);
            }

            indexes[slot.Number] = index.Count == 0 ? null : index;
            renewed[slot.Number] ??= table;
        }

        report = new(added, replaced, removed, _skipped, [.. _problems.OrderBy(p => p.Row)]);
        CatalogueView view = new(ImmutableArray.Create(indexes), before.Version + 1);

        // Nothing below asks for memory: it is taken over whole.
        _done = true;
        for (int i = 0; i < tables.Length; i++)
        {
            tables[i] = renewed[i] ?? tables[i];
        }

        return view;
    }

    /// <summary>Takes back what was kept on the way; nothing where it was finished.</summary>
    public void GiveUp()
    {
        foreach (Pending? pending in _done ? [] : _pending)
        {
            pending?.Table.BackTo(pending.Before);
        }
    }

    private void Keep(long id, Slot slot, Part part)
    {
        Pending pending = PendingOf(slot);
        try
        {
            pending.Add(id, pending.Table.Add(part), _row);
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException)
        {
            Skip(_row, id, e.Message);
        }
    }

    private void Skip(long row, long id, string reason)
    {
        _skipped++;
        if (_problems.Count < CatalogueReport.MostProblems)
        {
            _problems.Add(new(row, id, reason));
        }
    }

    private Pending PendingOf(Slot slot) => _pending[slot.Number] ??= new(tables[slot.Number] ?? new SlotTable(slot));

    /// <summary>The same parts with the kinds that are left: kinds of parts that are gone do not pile up.</summary>
    private static (SlotTable Table, SlotIndex Index) Renewed(SlotIndex index)
    {
        SlotTable table = new(index.Slot);
        int[] moved = new int[index.Table.Count];
        for (int kind = 0; kind < moved.Length; kind++)
        {
            moved[kind] = index.CountOf(kind) > 0 ? table.Add(index.Table.PartOf(kind)) : -1;
        }

        return (table, new(index.Slot, table.View(), index.Ids.ToArray(), [.. index.Kinds.ToArray().Select(k => moved[k])]));
    }

    /// <summary>What is to come into one slot or to leave it.</summary>
    private sealed class Pending(SlotTable table)
    {
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
                int room = ByteRows.Grown(_count, _count + 1);
                Array.Resize(ref _ids, room);
                Array.Resize(ref _kinds, room);
                Array.Resize(ref _rows, room);
            }

            (_ids[_count], _kinds[_count], _rows[_count]) = (id, kind, row);
            _count++;
        }

        /// <summary>By number, each number once: a part that comes stands before one that goes, and of two that come the earlier.</summary>
        public void Sort(Action<long, long> twice)
        {
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
}

/// <summary>The parts of a slot with a change put in: two lists in order become one.</summary>
internal sealed class SlotMerge
{
    public SlotMerge(SlotIndex? before, ReadOnlySpan<long> ids, ReadOnlySpan<int> kinds)
    {
        ReadOnlySpan<long> oldIds = before is null ? [] : before.Ids;
        ReadOnlySpan<int> oldKinds = before is null ? [] : before.Kinds;
        long[] allIds = new long[oldIds.Length + ids.Length];
        int[] allKinds = new int[allIds.Length];
        int count = 0;
        int old = 0;
        for (int next = 0; next <= ids.Length; next++)
        {
            for (; old < oldIds.Length && (next == ids.Length || oldIds[old] < ids[next]); old++)
            {
                (allIds[count], allKinds[count]) = (oldIds[old], oldKinds[old]);
                count++;
            }

            if (next == ids.Length)
            {
                break;
            }

            bool there = old < oldIds.Length && oldIds[old] == ids[next];
            old += there ? 1 : 0;
            if (kinds[next] >= 0)
            {
                (allIds[count], allKinds[count]) = (ids[next], kinds[next]);
                count++;
            }

            Added += !there && kinds[next] >= 0 ? 1 : 0;
            Replaced += there && kinds[next] >= 0 ? 1 : 0;
            Removed += there && kinds[next] < 0 ? 1 : 0;
        }

        Ids = count == allIds.Length ? allIds : allIds[..count];
        Kinds = count == allKinds.Length ? allKinds : allKinds[..count];
    }

    public long[] Ids { get; }

    public int[] Kinds { get; }

    public int Added { get; }

    public int Replaced { get; }

    public int Removed { get; }
}
