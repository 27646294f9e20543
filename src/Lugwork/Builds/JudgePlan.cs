using System.Collections.Immutable;

namespace Lugwork;

/// <summary>
/// The joint table laid out for judging without allocation: every input of every joint has a place in one row of codes,
/// which a build fills when a part is put in. Holds no logic of a joint: what it answers comes from the relations.
/// </summary>
internal sealed class JudgePlan
{
    /// <summary>A joint with an empty slot.</summary>
    public const byte Empty = 0;

    /// <summary>A joint whose inputs are all settled.</summary>
    public const byte Settled = 1;

    /// <summary>A joint with an input that is unknown, one of several or measured.</summary>
    public const byte Open = 2;

    private const long OpenCode = -1;

    private readonly PlanLine[] _rows;
    private readonly int[][] _rowsOf;

    private JudgePlan(ImmutableArray<Joint> joints)
    {
        _rows = new PlanLine[joints.Length];
        for (int i = 0; i < joints.Length; i++)
        {
            _rows[i] = new PlanLine(joints[i], Codes);
            Codes += joints[i].Inputs.Length;
        }

        _rowsOf = [.. Slot.All.Select(slot => Enumerable.Range(0, joints.Length).Where(i => joints[i].Inputs.Any(input => input.Slot == slot)).ToArray())];
    }

    /// <summary>The plan of the whole table.</summary>
    public static JudgePlan Whole { get; } = new(JointTable.All);

    /// <summary>How many codes a build holds.</summary>
    public int Codes { get; }

    /// <summary>How many joints there are.</summary>
    public int Joints => _rows.Length;

    public Joint JointAt(int number) => _rows[number].Joint;

    /// <summary>Writes the codes of the part in a slot, and how far each of its joints is known.</summary>
    public void Pack(IParts parts, Slot slot, long[] codes, byte[] states)
    {
        Part? part = parts.At(slot);
        foreach (int number in _rowsOf[slot.Number])
        {
            ref readonly PlanLine row = ref _rows[number];
            byte state = row.Joint.IsFilled(parts) ? Settled : Empty;
            for (int i = 0; i < row.Joint.Inputs.Length; i++)
            {
                JointInput input = row.Joint.Inputs[i];
                ref long code = ref codes[row.First + i];
                if (input.Slot == slot)
                {
                    code = part is not null && input.Read(part) is { IsSettled: true } known ? known.Low : OpenCode;
                }

                state = state == Settled && code == OpenCode ? Open : state;
            }

            states[number] = state;
        }
    }

    /// <summary>Judges every joint whose slots are filled.</summary>
    public int Judge(IParts parts, ReadOnlySpan<long> codes, ReadOnlySpan<byte> states, Span<Fit> fits)
    {
        int count = 0;
        PlanLine[] rows = _rows;
        for (int i = 0; i < rows.Length; i++)
        {
            byte state = states[i];
            if (state == Empty)
            {
                continue;
            }

            if (count >= fits.Length)
            {
                throw new ArgumentException($"room for {Joints} judgements is needed", nameof(fits));
            }

            ref readonly PlanLine row = ref rows[i];
            fits[count++] = new Fit(parts, i, state == Settled ? row.Settle(codes) : row.Joint.Judge(parts));
        }

        return count;
    }

    /// <summary>One joint: where its codes are, and the shortest way to its verdict.</summary>
    private readonly struct PlanLine
    {
        private const int MostCodes = 128;

        private readonly Relation _relation;
        private readonly byte[]? _verdicts;
        private readonly int _width;
        private readonly int _count;
        private readonly int _seat;
        private readonly int _part;

        public PlanLine(Joint joint, int first)
        {
            Joint = joint;
            First = first;
            _relation = joint.Relation;
            _count = joint.Inputs.Length;
            _seat = -1;
            if (_relation is SameKey { HasLooseKeys: false } same)
            {
                (_seat, _part) = (first + same.Seat, first + same.Part);
            }
            else if (_relation is Matrix matrix && _count == 2 && IsSmall(joint.Inputs[0]) && IsSmall(joint.Inputs[1]))
            {
                (_seat, _part) = (first + matrix.Row, first + matrix.Column);
                (_verdicts, _width) = Verdicts(matrix, joint.Inputs[matrix.Row].Domain, joint.Inputs[matrix.Column].Domain);
            }
        }

        public Joint Joint { get; }

        public int First { get; }

        public Verdict Settle(ReadOnlySpan<long> codes)
        {
            if (_seat >= 0)
            {
                long seat = codes[_seat];
                long part = codes[_part];
                if (_verdicts is not null)
                {
                    int cell = (int)((seat * _width) + part);
                    if ((ulong)part < (ulong)_width && (uint)cell < (uint)_verdicts.Length && _verdicts[cell] != 0)
                    {
                        return (Verdict)_verdicts[cell];
                    }
                }
                else if (seat == part && seat != 0)
                {
                    return Verdict.Fits;
                }
            }

            return _relation.Settle(codes.Slice(First, _count));
        }

        private static bool IsSmall(JointInput input) => input is { IsLength: false, Family: 0, Domain.IsEmpty: false } && input.Domain.All(c => c is > 0 and < MostCodes);

        // A cell that no row and column name stays 0: it is asked of the relation.
        private static (byte[] Verdicts, int Width) Verdicts(Matrix matrix, ImmutableArray<long> rows, ImmutableArray<long> columns)
        {
            int width = (int)columns.Max() + 1;
            byte[] verdicts = new byte[(rows.Max() + 1) * width];
            Span<long> values = stackalloc long[2];
            foreach (long row in rows)
            {
                foreach (long column in columns)
                {
                    values[matrix.Row] = row;
                    values[matrix.Column] = column;
                    verdicts[(row * width) + column] = (byte)matrix.Settle(values);
                }
            }

            return (verdicts, width);
        }
    }
}
