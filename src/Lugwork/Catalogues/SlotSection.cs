namespace Lugwork.Catalogues;

/// <summary>The parts of one slot in a snapshot.</summary>
internal static class SlotSection
{
    private const int Between = 1_024;

    public static void Write(ByteWriter writer, SlotIndex index, CancellationToken cancellationToken)
    {
        SlotTableView table = index.Table;
        string[] keys = [.. PartForms.Of(index.Slot).OwnFields];
        writer.Text(index.Slot.Key);
        writer.Number((ulong)keys.Length);
        for (int field = 0; field < keys.Length; field++)
        {
            writer.Text(keys[field]);
            ReadOnlySpan<Candidates> values = table.ValuesOf(field);
            writer.Number((ulong)values.Length - 1);
            foreach (Candidates value in values[1..])
            {
                writer.Candidates(value);
            }
        }

        int[] numbers = new int[table.Count];
        int[] said = new int[keys.Length];
        writer.Number((ulong)index.Live);
        for (int kind = 0, live = 0; kind < numbers.Length; kind++)
        {
            if (index.CountOf(kind) == 0)
            {
                continue;
            }

            numbers[kind] = live++;
            table.Read(kind, said);
            foreach (int value in said)
            {
                writer.Number((ulong)value);
            }
        }

        writer.Number((ulong)index.Count);
        long before = 0;
        for (int place = 0; place < index.Count; place++)
        {
            if (place % Between == 0)
            {
                cancellationToken.ThrowIfCancellationRequested();
            }

            writer.Number(unchecked((ulong)(index.Ids[place] - before)));
            before = index.Ids[place];
            writer.Number((ulong)numbers[index.Kinds[place]]);
        }
    }

    public static SlotIndex Read(ref ByteReader reader, out SlotTable table, CancellationToken cancellationToken)
    {
        string key = reader.Text();
        if (Slot.Find(key) is not { } slot || slot.Key != key)
        {
            throw reader.Wrong($"this version knows no slot '{key}'");
        }

        table = new(slot);
        (int[] fields, Candidates[][] values) = ReadValues(ref reader, slot, table.Keys);
        int[] kinds = ReadKinds(ref reader, slot, table, fields, values, cancellationToken);
        long[] ids = new long[reader.Count(2)];
        if (ids.Length == 0)
        {
            throw reader.Wrong($"a section of the {slot} without a part");
        }

        int[] kindOf = new int[ids.Length];
        for (int place = 0; place < ids.Length; place++)
        {
            if (place % Between == 0)
            {
                cancellationToken.ThrowIfCancellationRequested();
            }

            ids[place] = unchecked((place == 0 ? 0 : ids[place - 1]) + (long)reader.Number());
            ulong kind = reader.Number();
            kindOf[place] = kind < (ulong)kinds.Length ? kinds[kind] : throw reader.Wrong($"there is no kind {kind} of a {slot}");
            if (place > 0 && ids[place] <= ids[place - 1])
            {
                throw reader.Wrong($"the numbers of the parts of the {slot} are not in order");
            }
        }

        return new(slot, table.View(), ids, kindOf);
    }

    /// <summary>The fields of the file, each where this version has it, with their values.</summary>
    private static (int[] Fields, Candidates[][] Values) ReadValues(ref ByteReader reader, Slot slot, string[] keys)
    {
        IPartForm form = PartForms.Of(slot);
        int[] fields = new int[reader.Count(2)];
        Candidates[][] values = new Candidates[fields.Length][];
        for (int i = 0; i < fields.Length; i++)
        {
            string key = reader.Text();
            fields[i] = Array.IndexOf(keys, key);
            if (fields[i] < 0 || fields.AsSpan(0, i).Contains(fields[i]))
            {
                throw reader.Wrong(fields[i] < 0 ? $"this version knows no field '{key}' of a {slot}" : $"the field '{key}' of a {slot} comes twice");
            }

            // Grown as values come: a number in a file makes no room.
            List<Candidates> said = [default];
            for (int left = reader.Count(1); left > 0; left--)
            {
                Candidates value = reader.Candidates();
                if (Refused(form, keys.Length, fields[i], value) is { } reason)
                {
                    throw reader.Wrong($"the field '{key}' of a {slot}: {reason}");
                }

                said.Add(value);
            }

            values[i] = [.. said];
        }

        return (fields, values);
    }

    private static int[] ReadKinds(ref ByteReader reader, Slot slot, SlotTable table, int[] fields, Candidates[][] values, CancellationToken cancellationToken)
    {
        IPartForm form = PartForms.Of(slot);
        int[] kinds = new int[reader.Count(fields.Length)];
        Candidates[] codes = new Candidates[table.Keys.Length];
        KindReader reading = new(table);
        for (int kind = 0; kind < kinds.Length; kind++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            for (int i = 0; i < fields.Length; i++)
            {
                ulong value = reader.Number();
                codes[fields[i]] = value < (ulong)values[i].Length ? values[i][value] : throw reader.Wrong($"there is no value {value} of the field '{table.Keys[fields[i]]}'");
            }

            try
            {
                kinds[kind] = reading.Add(form.OfCodes(codes));
            }
            catch (Exception e) when (e is ArgumentException or OverflowException or InvalidOperationException or IndexOutOfRangeException)
            {
                throw reader.Wrong($"kind {kind} of a {slot}: {e.Message}");
            }
        }

        return kinds;
    }

    /// <summary>Why this version takes no such value; null where it does.</summary>
    private static string? Refused(IPartForm form, int fields, int field, in Candidates value)
    {
        Candidates[] codes = new Candidates[fields];
        codes[field] = value;
        try
        {
            form.ReadCodes(form.OfCodes(codes), codes);
        }
        catch (Exception e) when (e is ArgumentException or OverflowException or InvalidOperationException or IndexOutOfRangeException)
        {
            return e.Message;
        }

        return codes[field].State == value.State && codes[field].Low == value.Low && codes[field].High == value.High
            && codes[field].Codes.AsSpan().SequenceEqual(value.Codes) ? null : "a code of it stands for another value";
    }
}
