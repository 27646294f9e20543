using System.Collections.Immutable;

namespace Lugwork;

/// <summary>One pair of a joint that is not refused: how it is judged, and what has to be bought for it beside the parts. It names no price.</summary>
public sealed class JointPair
{
    internal JointPair(string jointId, long seat, long part, Verdict verdict, ImmutableArray<Bridge> bridges)
    {
        JointId = jointId;
        SeatCode = seat;
        PartCode = part;
        Verdict = verdict;
        Bridges = bridges;
    }

    /// <summary>The joint.</summary>
    public string JointId { get; internal init; }

    /// <summary>Fit code of the first input.</summary>
    public long SeatCode { get; internal init; }

    /// <summary>Fit code of the second input.</summary>
    public long PartCode { get; internal init; }

    /// <summary>How the pair is judged; needs measuring where the joint's other inputs decide.</summary>
    public Verdict Verdict { get; internal init; }

    /// <summary>What has to be bought; empty where nothing.</summary>
    public ImmutableArray<Bridge> Bridges { get; internal init; }
}

/// <summary>The joints as tables of the pairs that are not refused, for planners.</summary>
public static class JointPairs
{
    /// <summary>Every pair of a joint of closed sets that is not refused. Empty for a joint of lengths, and for one part alone.</summary>
    /// <param name="joint">A joint of <see cref="JointTable.All"/>.</param>
    public static ImmutableArray<JointPair> Of(Joint joint)
    {
        ArgumentNullException.ThrowIfNull(joint);
        if (joint.IsOfCondition || joint.Inputs.Length < 2)
        {
            return [];
        }

        (JointInput seat, JointInput part) = (joint.Inputs[0], joint.Inputs[1]);
        ImmutableArray<JointPair>.Builder cells = ImmutableArray.CreateBuilder<JointPair>();
        foreach (long a in seat.Domain)
        {
            foreach (long b in part.Domain)
            {
                CandidateRow row = default;
                row[0] = new Candidates(KnownState.Value, a, a, null);
                row[1] = new Candidates(KnownState.Value, b, b, null);
                Verdict verdict = joint.Common(row);
                if (verdict is Verdict.Fits or Verdict.NeedsPart or Verdict.NeedsMeasuring)
                {
                    cells.Add(new(joint.Id, a, b, verdict, BridgesOf(joint, row)));
                }
            }
        }

        return cells.ToImmutable();
    }

    private static ImmutableArray<Bridge> BridgesOf(Joint joint, CandidateRow row)
    {
        SortedDictionary<string, Bridge> bridges = new(StringComparer.Ordinal);
        joint.Visit(row, (_, outcome) =>
        {
            foreach (Bridge? bridge in new[] { outcome.Bridge, outcome.Second })
            {
                if (bridge is not null && bridge.Kind != BridgeKind.MadeForBoth)
                {
                    bridges[bridge.Id] = bridge;
                }
            }

            return true;
        });
        return [.. bridges.Values];
    }
}
