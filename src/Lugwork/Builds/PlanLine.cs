namespace Lugwork;

/// <summary>One joint of the plan: how its inputs become a cell, and the verdicts of the cells that were asked for.</summary>
internal sealed class PlanLine
{
    /// <summary>A slot of the joint is empty, nobody has looked at what it is judged by, or another row speaks in its place.</summary>
    public const int Empty = -1;

    /// <summary>Something is unknown, one of several, measured, or in no list: the joint is judged from the parts.</summary>
    private const int Open = -2;

    /// <summary>The cells below it belong to no joint: a number there is a verdict itself.</summary>
    public const int Verdicts = (int)Verdict.Unsafe + 1;

    private const int MostCells = 40_000;

    private readonly int _first;
    private readonly long[][]? _sides;

    public PlanLine(Joint joint, int first, int start)
    {
        Joint = joint;
        Start = start;
        _first = first;
        int size = 1;
        foreach (JointInput input in joint.Inputs)
        {
            size = input.IsLength || size > MostCells ? MostCells + 1 : size * (input.Domain.Length + 1);
        }

        if (size > MostCells)
        {
            return;
        }

        Size = size;
        _sides = new long[joint.Inputs.Length][];
        for (int i = 0; i < _sides.Length; i++)
        {
            _sides[i] = [0, .. joint.Inputs[i].Domain];
            Array.Sort(_sides[i]);
        }
    }

    public Joint Joint { get; }

    /// <summary>Its first cell.</summary>
    public int Start { get; }

    /// <summary>How many cells it has: one for each combination of listed values; none where lengths take part.</summary>
    public int Size { get; }

    public bool Touches(int slot)
    {
        foreach (JointInput input in Joint.Inputs)
        {
            if (input.Slot.Number == slot)
            {
                return true;
            }
        }

        foreach ((Slot Slot, Func<Part, bool> Speaks) other in Joint.GivesWay)
        {
            if (other.Slot.Number == slot)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Writes the codes of the part in a slot and gives the joint's cell. Where lengths take part and all is known the relation is asked
    /// here, when the last part of the joint is put in, and the cell is that of its verdict.
    /// </summary>
    public int Pack(IParts parts, Slot slot, Span<long> codes)
    {
        int cell = 0;
        bool open = false;
        bool empty = false;
        for (int i = 0; i < Joint.Inputs.Length; i++)
        {
            JointInput input = Joint.Inputs[i];
            Part? part = parts.At(input.Slot);
            empty |= part is null;
            ref long code = ref codes[_first + i];
            if (input.Slot == slot && part is not null)
            {
                code = input.Read(part) is { IsSettled: true } known ? known.Low : Open;
            }

            open |= code == Open;
            if (_sides is not null && !open)
            {
                int side = Array.BinarySearch(_sides[i], code);
                open |= side < 0;
                cell = (cell * _sides[i].Length) + side;
            }
        }

        return empty || !Joint.IsSeen(parts) || Joint.GivesWayIn(parts) ? Empty : open ? Open : _sides is null ? (int)Settle(codes) : Start + cell;
    }

    /// <summary>Asks the relation, where all is known.</summary>
    public Verdict Settle(ReadOnlySpan<long> codes) => Joint.Relation.Settle(codes.Slice(_first, Joint.Inputs.Length));
}
