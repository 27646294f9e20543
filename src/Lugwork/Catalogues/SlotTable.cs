namespace Lugwork.Catalogues;

/// <summary>
/// The kinds of parts of one slot: parts that say the same in every field are one kind. Of a kind it keeps what each field is, by
/// number, and what it says to each joint of the slot, by number. Only one thread may add; what a view holds never changes.
/// </summary>
internal sealed class SlotTable
{
    private readonly IPartForm _form;
    private readonly ByteSet _kinds = new();
    private readonly ByteRows _answers = new();
    private readonly ValueTable[] _fields;
    private readonly JointPort[] _ports;
    private readonly ByteWriter _row = new();
    private readonly ByteWriter _key = new();

    public SlotTable(Slot slot)
    {
        Slot = slot;
        _form = PartForms.Of(slot);
        Keys = [.. _form.OwnFields];
        _fields = [.. Keys.Select(_ => new ValueTable())];
        _ports = [.. JointTable.All.Where(j => j.Slots.Contains(slot)).OrderBy(Asked).Select(j => new JointPort(j, slot))];
    }

    /// <summary>What is asked most stands first in a row of answers, which is read up to the last that is asked: the part by itself, then a bare frame, then one other part.</summary>
    private static int Asked(Joint joint) => joint.Slots.Length switch
    {
        1 => 0,
        2 when joint.Slots.Contains(Slot.Frame) => 1,
        2 => 2,
        _ => 3,
    };

    public Slot Slot { get; }

    /// <summary>Keys of the fields, in the order in which a kind keeps them.</summary>
    public string[] Keys { get; }

    public int Count => _kinds.Count;

    /// <summary>Bytes of memory that the kinds take.</summary>
    public long Memory => _kinds.Memory + _answers.Memory + _fields.Sum(f => f.Memory) + _ports.Sum(p => p.Memory);

    /// <summary>The number of a part's kind, whatever the part says against itself. A part that cannot be kept leaves everything as it was.</summary>
    /// <param name="part">The part.</param>
    /// <param name="codes">What each of its fields is, packed.</param>
    /// <param name="others">What the numbers below zero stand for.</param>
    /// <exception cref="ArgumentException">A field is nothing that can be kept.</exception>
    public int Add(Part part, ReadOnlySpan<long> codes, OtherCodes others)
    {
        _row.Clear();
        int said = 0;
        for (int i = 0; i < _fields.Length; i++)
        {
            if (codes[i] == 0)
            {
                continue;
            }

            // What is unknown behind the last thing said is left out.
            for (; said < i; said++)
            {
                _row.Number(0);
            }

            _row.Number((ulong)_fields[i].Add(others[codes[i]]));
            said++;
        }

        int kind = _kinds.Add(_row.Written, out bool isNew);
        if (isNew)
        {
            try
            {
                KeepAnswers(part);
            }
            catch
            {
                _kinds.CutTo(kind);
                throw;
            }
        }

        return kind;
    }

    public SlotTableView View() => new(_form, _kinds.View, _answers.View, [.. _fields.Select(f => f.View)], [.. _ports.Select(p => p.View)], _ports);

    /// <summary>How far it has come, to go back to where a change is given up.</summary>
    public SlotTableMark Here() => new(_kinds.Count, [.. _fields.Select(f => f.Count)], [.. _ports.Select(p => p.Count)]);

    /// <summary>Takes back all that came later and was shown to nobody.</summary>
    public void BackTo(SlotTableMark mark)
    {
        _kinds.CutTo(mark.Kinds);
        _answers.CutTo(mark.Kinds);
        for (int i = 0; i < _fields.Length; i++)
        {
            _fields[i].CutTo(mark.Values[i]);
        }

        for (int i = 0; i < _ports.Length; i++)
        {
            _ports[i].CutTo(mark.Answers[i]);
        }
    }

    private void KeepAnswers(Part part)
    {
        _row.Clear();
        _row.Byte(PartAlone.IsAskedAbout(Slot, part) ? (byte)1 : (byte)0);
        foreach (JointPort port in _ports)
        {
            _row.Number((ulong)port.Add(part, _key));
        }

        _answers.Append(_row.Written);
    }
}

/// <summary>How many of everything there were.</summary>
internal sealed record SlotTableMark(int Kinds, int[] Values, int[] Answers);

/// <summary>The kinds of parts of a slot as they were at one time.</summary>
internal sealed class SlotTableView(IPartForm form, ByteRowsView kinds, ByteRowsView answers, ReadOnlyMemory<Candidates>[] fields, PortAnswers[] said, JointPort[] ports)
{
    public int Count => kinds.Count;

    public JointPort[] Ports => ports;

    public PortAnswers[] Said => said;

    /// <summary>Whether the maker has to be asked, then what the kind says to each joint, by number.</summary>
    public ReadOnlySpan<byte> AnswersOf(int kind) => answers[kind];

    /// <summary>The values that a field has among these kinds.</summary>
    public ReadOnlySpan<Candidates> ValuesOf(int field) => fields[field].Span;

    public int Fields => fields.Length;

    /// <summary>What each field of a kind is.</summary>
    public void Read(int kind, Span<int> values)
    {
        values.Clear();
        ByteReader reader = new(kinds[kind], 0);
        for (int i = 0; reader.Left > 0; i++)
        {
            values[i] = (int)reader.Number();
        }
    }

    /// <summary>A part of the kind.</summary>
    public Part PartOf(int kind)
    {
        Span<int> values = stackalloc int[fields.Length];
        Read(kind, values);
        Candidates[] codes = new Candidates[fields.Length];
        for (int i = 0; i < codes.Length; i++)
        {
            codes[i] = fields[i].Span[values[i]];
        }

        return form.OfCodes(codes);
    }
}
