using System.Collections.Immutable;

namespace Lugwork;

/// <summary>
/// The joint table laid out for judging without allocation. A build packs its parts by it when one is put in: a verdict for each joint
/// of which all is known, and a mark where something is open, which is asked about when the build is judged. Holds no logic of a
/// joint: every answer comes from the relation, asked once for each combination of listed values.
/// </summary>
internal sealed class JudgePlan
{
    private readonly PlanLine[] _lines;
    private readonly int[][] _linesOf;

    // A verdict a cell, 0 where it was not asked for yet. The answer never changes, so two threads at once write the same.
    private readonly byte[] _verdicts;

    private JudgePlan(ImmutableArray<Joint> joints)
    {
        _lines = new PlanLine[joints.Length];
        int cells = PlanLine.Verdicts;
        for (int i = 0; i < joints.Length; i++)
        {
            _lines[i] = new PlanLine(joints[i], Codes, cells);
            Codes += joints[i].Inputs.Length;
            cells += _lines[i].Size;
        }

        _verdicts = new byte[cells];

        _linesOf = new int[Slot.All.Length][];
        for (int slot = 0; slot < _linesOf.Length; slot++)
        {
            List<int> touching = [];
            for (int i = 0; i < joints.Length; i++)
            {
                if (_lines[i].Touches(slot))
                {
                    touching.Add(i);
                }
            }

            _linesOf[slot] = [.. touching];
        }
    }

    /// <summary>The plan of the whole table.</summary>
    public static JudgePlan Whole { get; } = new(JointTable.All);

    /// <summary>How many input codes a build holds.</summary>
    public int Codes { get; }

    /// <summary>How many joints there are.</summary>
    public int Joints => _lines.Length;

    public Joint JointAt(int number) => _lines[number].Joint;

    /// <summary>Packs the part in a slot: its codes, and for each joint that it takes part in the verdict, or that it is open or empty.</summary>
    public void Pack(IParts parts, Slot slot, long[] codes, int[] cells)
    {
        foreach (int number in _linesOf[slot.Number])
        {
            int cell = _lines[number].Pack(parts, slot, codes);
            cells[number] = cell < PlanLine.Verdicts ? cell : (int)Settled(number, cell, codes);
        }
    }

    /// <summary>A judgement of every joint whose slots are filled, without its verdict.</summary>
    public static Fit[] Blank(IParts parts, ReadOnlySpan<int> cells)
    {
        int count = 0;
        foreach (int cell in cells)
        {
            count += cell == PlanLine.Empty ? 0 : 1;
        }

        Fit[] blank = new Fit[count];
        int at = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            if (cells[i] != PlanLine.Empty)
            {
                blank[at++] = new Fit(parts, i, Verdict.NotJudged);
            }
        }

        return blank;
    }

    /// <summary>Judges every joint whose slots are filled.</summary>
    public int Judge(IParts parts, ReadOnlySpan<int> cells, Fit[] blank, Span<Fit> fits)
    {
        if (fits.Length < blank.Length)
        {
            throw new ArgumentException($"room for {Joints} judgements is needed", nameof(fits));
        }

        blank.CopyTo(fits);
        int at = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            int cell = cells[i];
            if (cell > 0)
            {
                fits[at++].Become((Verdict)cell);
            }
            else if (cell != PlanLine.Empty)
            {
                fits[at++].Become(_lines[i].Joint.Judge(parts));
            }
        }

        return at;
    }

    /// <summary>Judges the joints that one slot takes part in, in the order of the table.</summary>
    public List<Fit> Judge(IParts parts, ReadOnlySpan<int> cells, Slot slot)
    {
        List<Fit> fits = [];
        foreach (int number in _linesOf[slot.Number])
        {
            int cell = cells[number];
            Joint joint = _lines[number].Joint;
            if (cell != PlanLine.Empty && joint.Slots.Contains(slot))
            {
                fits.Add(new Fit(parts, number, cell > 0 ? (Verdict)cell : joint.Judge(parts)));
            }
        }

        return fits;
    }

    /// <summary>The verdict of one joint; not judged where a slot is empty, or where nobody looked at what it asks.</summary>
    public Verdict Judge(IParts parts, ReadOnlySpan<int> cells, int number)
    {
        int cell = cells[number];
        return cell > 0 ? (Verdict)cell : cell == PlanLine.Empty ? Verdict.NotJudged : _lines[number].Joint.Judge(parts);
    }

    private Verdict Settled(int number, int cell, ReadOnlySpan<long> codes)
    {
        if (_verdicts[cell] == 0)
        {
            _verdicts[cell] = (byte)_lines[number].Settle(codes);
        }

        return (Verdict)_verdicts[cell];
    }
}
