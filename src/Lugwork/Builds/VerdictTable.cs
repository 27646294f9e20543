namespace Lugwork;

/// <summary>
/// The verdicts of one joint by its listed values: a cell for each combination, filled with the relation's own answer when that is first asked for.
/// Holds no logic of a joint. The answers never change, so two threads at once write the same.
/// </summary>
internal sealed class VerdictTable
{
    private const int MostCells = 40_000;

    private readonly Relation _relation;
    private readonly long[][] _sides;

    // 0 where it was not asked for yet. None where a length takes part, or where there would be too many.
    private readonly byte[] _verdicts;

    public VerdictTable(Joint joint)
    {
        _relation = joint.Relation;
        _sides = new long[joint.Inputs.Length][];
        int size = 1;
        for (int i = 0; i < _sides.Length && size <= MostCells; i++)
        {
            JointInput input = joint.Inputs[i];
            size = input.IsLength ? MostCells + 1 : size * (input.Domain.Length + 1);
            _sides[i] = input.IsLength ? [] : [0, .. input.Domain];
            Array.Sort(_sides[i]);
        }

        _verdicts = size > MostCells ? [] : new byte[size];
    }

    /// <summary>What the relation says of these codes; a code that no list has is asked about anew.</summary>
    public Verdict Settle(ReadOnlySpan<long> codes)
    {
        int cell = _verdicts.Length > 0 ? CellOf(codes) : -1;
        if (cell < 0)
        {
            return _relation.Settle(codes);
        }

        if (_verdicts[cell] == 0)
        {
            _verdicts[cell] = (byte)_relation.Settle(codes);
        }

        return (Verdict)_verdicts[cell];
    }

    private int CellOf(ReadOnlySpan<long> codes)
    {
        int cell = 0;
        for (int i = 0; i < codes.Length; i++)
        {
            int side = Array.BinarySearch(_sides[i], codes[i]);
            if (side < 0)
            {
                return -1;
            }

            cell = (cell * _sides[i].Length) + side;
        }

        return cell;
    }
}
