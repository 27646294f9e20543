using System.Collections.Immutable;

namespace Lugwork;

/// <summary>
/// The joint table laid out for judging without allocation. A build packs its parts by it when one is put in: a verdict for each joint
/// of which all is known, and a mark where something is open, which is asked about when the build is judged. Holds no logic of a
/// joint: every answer comes from the relation.
/// </summary>
internal sealed class JudgePlan
{
    private readonly PlanLine[] _lines;
    private readonly short[][] _linesOf;

    private JudgePlan(ImmutableArray<Joint> joints)
    {
        _lines = new PlanLine[joints.Length];
        for (int i = 0; i < _lines.Length; i++)
        {
            _lines[i] = new PlanLine(joints[i]);
        }

        _linesOf = LinesBySlot(joints);
    }

    /// <summary>The plan of the whole table.</summary>
    public static JudgePlan Whole { get; } = new(JointTable.All);

    /// <summary>How many joints there are.</summary>
    public int Joints => _lines.Length;

    public Joint JointAt(int number) => _lines[number].Joint;

    /// <summary>Packs the part in a slot: for each joint that it takes part in the verdict, or that it is open or empty.</summary>
    public void Pack(IParts parts, Slot slot, sbyte[] cells)
    {
        foreach (short number in _linesOf[slot.Number])
        {
            cells[number] = _lines[number].Pack(parts);
        }
    }

    /// <summary>How many joints are judged.</summary>
    private static int Filled(ReadOnlySpan<sbyte> cells)
    {
        int filled = 0;
        foreach (sbyte cell in cells)
        {
            filled += cell == PlanLine.Empty ? 0 : 1;
        }

        return filled;
    }

    /// <summary>A judgement of every joint whose slots are filled, without its verdict.</summary>
    public static Fit[] Blank(IParts parts, ReadOnlySpan<sbyte> cells)
    {
        Fit[] blank = new Fit[Filled(cells)];
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

    /// <summary>Gives each judgement of a list that was laid out its verdict.</summary>
    public void Judge(IParts parts, ReadOnlySpan<sbyte> cells, Span<Fit> blank)
    {
        int at = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            int cell = cells[i];
            if (cell > 0)
            {
                blank[at++].Become((Verdict)cell);
            }
            else if (cell != PlanLine.Empty)
            {
                blank[at++].Become(_lines[i].Joint.Judge(parts));
            }
        }
    }

    /// <summary>Judges the joints that one slot takes part in, in the order of the table.</summary>
    public List<Fit> Judge(IParts parts, ReadOnlySpan<sbyte> cells, Slot slot)
    {
        List<Fit> fits = [];
        foreach (short number in _linesOf[slot.Number])
        {
            Verdict verdict = Judge(parts, cells, number);
            if (verdict != Verdict.NotJudged && JointAt(number).Slots.Contains(slot))
            {
                fits.Add(new Fit(parts, number, verdict));
            }
        }

        return fits;
    }

    /// <summary>The verdict of one joint; not judged where a slot is empty, or where nobody looked at what it asks.</summary>
    public Verdict Judge(IParts parts, ReadOnlySpan<sbyte> cells, int number)
    {
        int cell = cells[number];
        return cell > 0 ? (Verdict)cell : cell == PlanLine.Empty ? Verdict.NotJudged : _lines[number].Joint.Judge(parts);
    }

    /// <summary>For each slot the joints that ask for its part, or give way to it, in the order of the table.</summary>
    private static short[][] LinesBySlot(ImmutableArray<Joint> joints)
    {
        Span<ulong> slots = stackalloc ulong[joints.Length];
        for (int i = 0; i < slots.Length; i++)
        {
            slots[i] = SlotsOf(joints[i]);
        }

        short[][] lines = new short[Slot.All.Length][];
        Span<short> touching = stackalloc short[joints.Length];
        for (int slot = 0; slot < lines.Length; slot++)
        {
            int count = 0;
            for (short i = 0; i < slots.Length; i++)
            {
                if ((slots[i] & (1UL << slot)) != 0)
                {
                    touching[count++] = i;
                }
            }

            lines[slot] = touching[..count].ToArray();
        }

        return lines;
    }

    /// <summary>The slots that a joint reads, a bit each; there are no more than 64.</summary>
    private static ulong SlotsOf(Joint joint)
    {
        ulong slots = 0;
        foreach (JointInput input in joint.Inputs)
        {
            slots |= 1UL << input.Slot.Number;
        }

        foreach ((Slot slot, _) in joint.GivesWay)
        {
            slots |= 1UL << slot.Number;
        }

        return slots;
    }
}
