using System.Collections.Immutable;

namespace Lugwork;

/// <summary>One joint of the plan: how the parts become its verdict, and the verdicts that were asked for often.</summary>
internal struct PlanLine(Joint joint)
{
    /// <summary>A slot of the joint is empty, nobody has looked at what it is judged by, or another row speaks in its place.</summary>
    public const sbyte Empty = -1;

    /// <summary>Something is unknown, one of several or measured: the joint is judged from the parts.</summary>
    public const sbyte Open = -2;

    /// <summary>A table of verdicts is made for a joint that was asked as often as this: a program that judges one build makes none.</summary>
    private const int Often = 16;

    private int _asked;
    private VerdictTable? _table;

    public readonly Joint Joint { get; } = joint;

    /// <summary>The verdict of the parts, or that the joint is open or empty. Where all is known the relation is asked here, when the last part of the joint is put in.</summary>
    public sbyte Pack(IParts parts)
    {
        Span<long> codes = stackalloc long[Joint.MostInputs];
        ImmutableArray<JointInput> inputs = Joint.Inputs;
        foreach (JointInput input in inputs)
        {
            if (parts.At(input.Slot) is null)
            {
                return Empty;
            }
        }

        if (!Joint.IsSeen(parts) || Joint.GivesWayIn(parts))
        {
            return Empty;
        }

        for (int i = 0; i < inputs.Length; i++)
        {
            if (inputs[i].Read(parts.At(inputs[i].Slot)!) is not { IsSettled: true } known)
            {
                return Open;
            }

            codes[i] = known.Low;
        }

        return (sbyte)Settle(codes[..inputs.Length]);
    }

    private Verdict Settle(ReadOnlySpan<long> codes)
    {
        if (_table is null)
        {
            // Two threads at once may count one less or make the same table twice; what they answer is the same.
            if (++_asked < Often)
            {
                return Joint.Relation.Settle(codes);
            }

            _table = new VerdictTable(Joint);
        }

        return _table.Settle(codes);
    }
}
