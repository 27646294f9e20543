namespace Lugwork.Catalogues;

/// <summary>Parts of one slot on their way into its table, some at a time: read together, then each held against what came lately. It lives as long as one change.</summary>
internal sealed class KindReader(SlotTable table)
{
    // Ranges and choices that came once each are not kept for ever.
    private const int MostOthers = 65_536;

    private readonly PartBatch _parts = PartForms.Of(table.Slot).Batch();
    private readonly OtherCodes _others = new();
    private readonly (int At, Func<Part, bool> IsOn)[] _readings = [.. TakenWith.ReadingsOf(table.Slot).Select(r => (Array.IndexOf(table.Keys, r.Field), r.IsOn))];
    private RecentKinds? _recent;

    private RecentKinds Recent => _recent ??= new(_parts.Width);

    /// <summary>Puts a part behind those that wait.</summary>
    public void Put(Part part) => _parts.Put(part);

    /// <summary>Reads all that wait.</summary>
    public void Read()
    {
        if (_others.Count > MostOthers)
        {
            // Numbers of other rows mean other things from here on.
            _others.Clear();
            Recent.Clear();
        }

        _parts.Read(_others);

        // A reading of some bicycle is none of the part by itself.
        foreach ((int field, Func<Part, bool> isOn) in _readings)
        {
            for (int at = 0; at < _parts.Count; at++)
            {
                if (isOn(_parts[at]))
                {
                    _parts.CodesOf(at)[field] = 0;
                }
            }
        }
    }

    public void Clear() => _parts.Clear();

    /// <summary>The number of the kind of a part that was read, where that came lately: a part that says the same was kept then. Else negative, and the part is to be kept.</summary>
    public int Find(int at) => Recent.Find(_parts.CodesOf(at));

    /// <summary>A part that was read, by itself, without readings of some bicycle.</summary>
    public Part Alone(int at)
    {
        Part part = TakenWith.Alone(_parts[at], table.Slot);

        // One that contradicts itself does not let go of a reading: it is made of what is left of its fields.
        return TakenWith.ReadOn(part, table.Slot).Any() ? PartForms.Of(table.Slot).OfCodes(Codes(at)) : part;
    }

    private Candidates[] Codes(int at)
    {
        Candidates[] codes = new Candidates[table.Keys.Length];
        for (int field = 0; field < codes.Length; field++)
        {
            codes[field] = _others[_parts.CodesOf(at)[field]];
        }

        return codes;
    }

    /// <summary>Keeps a part that was read and not found; the number of its kind.</summary>
    /// <param name="at">Which of those that were read.</param>
    /// <param name="alone">The same by itself.</param>
    /// <exception cref="ArgumentException">A field is nothing that can be kept.</exception>
    public int Keep(int at, Part alone)
    {
        int kind = table.Add(alone, _parts.CodesOf(at), _others);
        Recent.Put(_parts.CodesOf(at), kind);
        return kind;
    }

    /// <summary>The number of one part's kind, whatever the part says against itself. A part that cannot be kept leaves everything as it was.</summary>
    /// <exception cref="ArgumentException">A field is nothing that can be kept.</exception>
    public int Add(Part part)
    {
        Clear();
        Put(part);
        Read();
        return Find(0) is >= 0 and int kind ? kind : Keep(0, Alone(0));
    }
}
