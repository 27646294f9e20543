namespace Lugwork.Benchmarks.Judging;

/// <summary>
/// The least work by which builds of known parts can be judged: every joint a table of verdicts over the values that occur, every
/// build a row of table offsets made beforehand. Judging is a sum of eight offsets and one look-up a joint, without a branch on data.
/// It answers with a verdict a joint and nothing else: no unknowns, no reasons, no empty slots.
/// </summary>
internal sealed class Floor
{
    private const int Inputs = 8;

    private readonly int[] _starts;
    private readonly byte[] _verdicts;
    private readonly Dictionary<long, int>[][] _offsets;

    /// <param name="builds">The builds that will be judged: their distinct values are the tables' sides.</param>
    public Floor(IReadOnlyList<Build> builds)
    {
        _starts = new int[JointTable.All.Length];
        _offsets = new Dictionary<long, int>[JointTable.All.Length][];
        List<byte> verdicts = [];
        for (int j = 0; j < JointTable.All.Length; j++)
        {
            Joint joint = JointTable.All[j];
            long[][] sides = [.. joint.Inputs.Select(input => builds.Select(b => Code(b, input)).Distinct().Order().ToArray())];
            _starts[j] = verdicts.Count;
            int stride = 1;
            _offsets[j] = new Dictionary<long, int>[sides.Length];
            for (int i = sides.Length - 1; i >= 0; i--)
            {
                _offsets[j][i] = [];
                for (int v = 0; v < sides[i].Length; v++)
                {
                    _offsets[j][i][sides[i][v]] = v * stride;
                }

                stride *= sides[i].Length;
            }

            verdicts.AddRange(Table(joint, sides));
        }

        _verdicts = [.. verdicts];
    }

    /// <summary>The offsets of a build: eight a joint, the unused ones 0, the table's start added to the first.</summary>
    public int[] Pack(Build build)
    {
        int[] packed = new int[JointTable.All.Length * Inputs];
        for (int j = 0; j < JointTable.All.Length; j++)
        {
            Joint joint = JointTable.All[j];
            for (int i = 0; i < joint.Inputs.Length; i++)
            {
                packed[(j * Inputs) + i] = _offsets[j][i][Code(build, joint.Inputs[i])];
            }

            packed[j * Inputs] += _starts[j];
        }

        return packed;
    }

    /// <summary>A verdict a joint.</summary>
    public void Judge(ReadOnlySpan<int> packed, Span<byte> into)
    {
        byte[] verdicts = _verdicts;
        for (int j = 0; j < into.Length; j++)
        {
            ReadOnlySpan<int> own = packed.Slice(j * Inputs, Inputs);
            into[j] = verdicts[own[0] + own[1] + own[2] + own[3] + own[4] + own[5] + own[6] + own[7]];
        }
    }

    private static IEnumerable<byte> Table(Joint joint, long[][] sides)
    {
        IEnumerable<long[]> cells = [[]];
        foreach (long[] side in sides)
        {
            cells = cells.SelectMany(cell => side.Select(v => (long[])[.. cell, v]));
        }

        return cells.Select(cell => (byte)joint.Relation.Judge(cell).Verdict);
    }

    private static long Code(Build build, JointInput input)
    {
        Candidates known = input.Read(build[input.Slot]!);
        return known.IsSettled ? known.Low : throw new InvalidOperationException($"the {input.Called} is not known");
    }
}
