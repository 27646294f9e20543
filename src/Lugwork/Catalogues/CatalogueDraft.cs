using System.Collections.Immutable;

namespace Lugwork.Catalogues;

/// <summary>A change of a catalogue on its way: nobody sees it before it is finished, and given up it leaves nothing behind.</summary>
internal sealed class CatalogueDraft(SlotTable?[] tables, CatalogueView before)
{
    private readonly PendingParts?[] _pending = new PendingParts?[tables.Length];
    private readonly Type?[] _types = new Type?[tables.Length];
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
        else
        {
            Keep(row.Id, row.Slot, row.Part, isRead: false);
        }
    }

    public void Put(CatalogueLine? line)
    {
        if (line is null || line.SlotKey is null || line.Text is null || Slot.Find(line.SlotKey) is not { } slot)
        {
            Skip(++_row, line?.Id ?? 0, line is null ? "the row is null" : line.Text is null ? "there is no text" : "there is no such slot");
        }
        else if (PartForms.Of(slot).TryReadAny(line.Text, out Part part, out ImmutableArray<SpecProblem> problems))
        {
            _row++;
            Keep(line.Id, slot, part, isRead: true);
        }
        else
        {
            Skip(++_row, line.Id, problems[0].ToString());
        }
    }

    public void Remove(CatalogueKey key)
    {
        // A key without a slot, the default of one, names no part: nothing is there to take out.
        if (key.Slot is { } slot && before.IndexOf(slot) is not null)
        {
            PendingOf(slot).Add(key.Id, PendingParts.Gone, -1);
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

            Keep(slot, pending);
            (long[] ids, int[] kinds) = pending.Sorted((row, id) => Skip(row, id, "an earlier row of this slot has the same number"));
            SlotMerge merge = new(indexes[slot.Number], ids, kinds);
            added += merge.Added;
            replaced += merge.Replaced;
            removed += merge.Removed;
            if (merge.Added + merge.Replaced + merge.Removed == 0)
            {
                continue;
            }

            SlotTable table = pending.Table;
            SlotIndex index = new(slot, table.View(), merge.Ids, merge.Kinds);
            if (table.Count > 1_024 && index.Live < table.Count / 2)
            {
                (renewed[slot.Number], index) = Renewed(index);
            }

            indexes[slot.Number] = index.Count == 0 ? null : index;
            renewed[slot.Number] ??= table;
        }

        _ = indexes.Aggregate(0, (all, index) => SlotMerge.Room(all, index?.Count ?? 0));
        report = new(added, replaced, removed, _skipped, [.. _problems.OrderBy(p => p.Row).Take(CatalogueReport.MostProblems)]);
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
        foreach (PendingParts? pending in _done ? [] : _pending)
        {
            pending?.Table.BackTo(pending.Before);
        }
    }

    private void Keep(long id, Slot slot, Part part, bool isRead)
    {
        PendingParts pending = PendingOf(slot);
        if (pending.Wait(new(id, part, _row, isRead)))
        {
            Keep(slot, pending);
        }
    }

    /// <summary>Looks at the parts that wait.</summary>
    private void Keep(Slot slot, PendingParts pending)
    {
        Span<WaitingPart> waiting = pending.Waiting();
        KindReader reader = pending.Reader;
        int count = 0;
        foreach (ref readonly WaitingPart part in waiting)
        {
            if (GoesTo(part.Part, slot))
            {
                reader.Put(part.Part);
                waiting[count++] = part;
            }
            else
            {
                Skip(part.Row, part.Id, $"a {part.Part.GetType().Name} goes to {string.Join(" or ", part.Part.Places)}, not to {slot}");
            }
        }

        reader.Read();
        for (int at = 0; at < count; at++)
        {
            ref readonly WaitingPart part = ref waiting[at];
            try
            {
                int kind = reader.Find(at);
                if (kind >= 0 || IsKept(slot, reader, at, part, out kind))
                {
                    pending.Add(part.Id, kind, part.Row);
                }
            }
            catch (Exception e) when (e is not (OutOfMemoryException or OperationCanceledException))
            {
                Skip(part.Row, part.Id, e.Message);
            }
        }

        reader.Clear();
    }

    /// <summary>Text was held against itself when it was read; a part that was made by hand is now, where none that says the same was lately.</summary>
    private bool IsKept(Slot slot, KindReader reader, int at, in WaitingPart part, out int kind)
    {
        kind = -1;
        Part alone = reader.Alone(at);
        if (!part.IsRead && PartForms.Of(slot).WrongOf(alone) is { } wrong)
        {
            Skip(part.Row, part.Id, wrong.ToString());
            return false;
        }

        kind = reader.Keep(at, alone);
        return true;
    }

    /// <summary>Where a part goes follows from its type: asked once for many of one type.</summary>
    private bool GoesTo(Part part, Slot slot)
    {
        if (_types[slot.Number] == part.GetType())
        {
            return true;
        }

        bool goes = part.Places.Contains(slot);
        _types[slot.Number] = goes ? part.GetType() : _types[slot.Number];
        return goes;
    }

    private void Skip(long row, long id, string reason)
    {
        _skipped++;
        _problems.Add(new(row, id, reason));
        if (_problems.Count > 2 * CatalogueReport.MostProblems)
        {
            // Slots are looked at in turn, not row by row: the first thousand are those of the least rows.
            _problems.Sort((one, other) => one.Row.CompareTo(other.Row));
            _problems.RemoveRange(CatalogueReport.MostProblems, _problems.Count - CatalogueReport.MostProblems);
        }
    }

    private PendingParts PendingOf(Slot slot) => _pending[slot.Number] ??= new(tables[slot.Number] ?? new SlotTable(slot));

    /// <summary>The same parts with the kinds that are left: kinds of parts that are gone do not pile up.</summary>
    private static (SlotTable Table, SlotIndex Index) Renewed(SlotIndex index)
    {
        SlotTable table = new(index.Slot);
        KindReader reader = new(table);
        int[] moved = new int[index.Table.Count];
        for (int kind = 0; kind < moved.Length; kind++)
        {
            moved[kind] = index.CountOf(kind) > 0 ? reader.Add(index.Table.PartOf(kind)) : -1;
        }

        return (table, new(index.Slot, table.View(), index.Ids.ToArray(), [.. index.Kinds.ToArray().Select(k => moved[k])]));
    }
}
