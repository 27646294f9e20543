using System.Numerics;

namespace Lugwork.Catalogues;

/// <summary>
/// The kinds of parts of one slot: parts that say the same in every field are one kind. Of a kind it keeps what each field is, by
/// number, and what it says to each joint of the slot, by number. Only one thread may add; what a view holds never changes.
/// </summary>
internal sealed class SlotTable
{
    private const int MostRecent = 4_096;

    private readonly IPartForm _form;
    private readonly ByteSet _kinds = new();
    private readonly ByteRows _answers = new();
    private readonly ValueTable[] _fields;
    private readonly JointPort[] _ports;
    private readonly Candidates[] _read;
    private readonly ByteWriter _row = new();
    private readonly ByteWriter _key = new();

    // With a seed of the process, so that nobody can choose rows that fall on one place.
    private readonly ulong _seed = ((ulong)(uint)HashCode.Combine(1) << 32) | (uint)HashCode.Combine(2);

    // The kind that came last with a hash, and one more: most rows of a shop are of a kind that came before. It says nothing by itself.
    private (uint Hash, int Kind)[] _recent = new (uint, int)[16];
    private uint _hash;
    private int _missed;

    public SlotTable(Slot slot)
    {
        Slot = slot;
        _form = PartForms.Of(slot);
        Keys = [.. _form.OwnFields];
        _read = new Candidates[Keys.Length];
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
    public long Memory => (8L * _recent.Length) + _kinds.Memory + _answers.Memory + _fields.Sum(f => f.Memory) + _ports.Sum(p => p.Memory);

    /// <summary>The number of the part's kind, whatever the part says against itself. A part that cannot be kept leaves everything as it was.</summary>
    /// <exception cref="ArgumentException">A field is nothing that can be kept.</exception>
    public int Add(Part part) => Recent(part) is >= 0 and int kind ? kind : Keep(part);

    /// <summary>Reads a part, and gives the number of its kind where that came lately: a part that says the same was kept then. Else negative, and the part is to be kept.</summary>
    public int Recent(Part part)
    {
        _form.ReadCodes(part, _read);
        _hash = Hash();
        (uint Hash, int Kind) recent = _recent[_hash & (_recent.Length - 1)];
        return recent.Kind > 0 && recent.Hash == _hash && Says(recent.Kind - 1) ? recent.Kind - 1 : -1;
    }

    /// <summary>Forgets what came lately, as it was not held against itself: the next part of each kind is.</summary>
    public void Forget() => Array.Clear(_recent);

    /// <summary>Keeps the part that was read last; the number of its kind.</summary>
    /// <exception cref="ArgumentException">A field is nothing that can be kept.</exception>
    public int Keep(Part part)
    {
        _row.Clear();
        int said = 0;
        for (int i = 0; i < _read.Length; i++)
        {
            // What is unknown behind the last thing said is left out.
            for (; _read[i].State != KnownState.Unknown && said < i; said++)
            {
                _row.Number(0);
            }

            if (_read[i].State != KnownState.Unknown)
            {
                _row.Number((ulong)_fields[i].Add(_read[i]));
                said++;
            }
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

        // More room where kinds come back and push each other out; none where hardly two parts are alike.
        _missed += isNew ? 0 : 1;
        if (_recent.Length < MostRecent && 4 * _missed > _recent.Length)
        {
            _missed = 0;
            _recent = new (uint, int)[2 * _recent.Length];
        }

        _recent[_hash & (_recent.Length - 1)] = (_hash, kind + 1);
        return kind;
    }

    /// <summary>Whether a kind says in every field what was read last.</summary>
    private bool Says(int kind)
    {
        ReadOnlySpan<byte> row = _kinds[kind];
        int field = 0;
        for (int at = 0; at < row.Length; field++)
        {
            if (row[at] >= 0x80)
            {
                return SaysFrom(row, at, field);
            }

            if (!_fields[field].Is(row[at++], _read[field]))
            {
                return false;
            }
        }

        return IsUnknownFrom(field);
    }

    /// <summary>The same of a row with numbers of several bytes, from a field on.</summary>
    private bool SaysFrom(ReadOnlySpan<byte> row, int at, int field)
    {
        ByteReader reader = new(row[at..], 0);
        for (; reader.Left > 0; field++)
        {
            if (!_fields[field].Is((int)reader.Number(), _read[field]))
            {
                return false;
            }
        }

        return IsUnknownFrom(field);
    }

    private bool IsUnknownFrom(int field)
    {
        for (; field < _read.Length; field++)
        {
            if (_read[field].State != KnownState.Unknown)
            {
                return false;
            }
        }

        return true;
    }

    private uint Hash()
    {
        ulong hash = _seed;
        for (int field = 0; field < _read.Length; field++)
        {
            // What is unknown is mixed in too: no branch is dearer than one that is guessed wrong.
            ref readonly Candidates read = ref _read[field];
            hash = BitOperations.RotateLeft((hash ^ (ulong)read.Low ^ ((ulong)read.High << 20) ^ ((ulong)read.State << 50)) * 0x9E3779B97F4A7C15UL, 27);
        }

        return (uint)(hash >> 32);
    }

    public SlotTableView View() => new(_form, _kinds.View, _answers.View, [.. _fields.Select(f => f.View)], [.. _ports.Select(p => p.View)], _ports);

    /// <summary>How far it has come, to go back to where a change is given up.</summary>
    public SlotTableMark Here() => new(_kinds.Count, [.. _fields.Select(f => f.Count)], [.. _ports.Select(p => p.Count)]);

    /// <summary>Takes back all that came later and was shown to nobody.</summary>
    public void BackTo(SlotTableMark mark)
    {
        Forget();
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
