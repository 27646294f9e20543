using System.Runtime.InteropServices;

namespace Lugwork.Catalogues;

/// <summary>The parts of a slot by what they say to the joints with a bare frame: those that say the same are one group. What is to be said of a part alone is settled here.</summary>
internal sealed class PartGroups
{
    private const byte NotYet = 255;

    private readonly List<byte> _worst = [];
    private readonly List<int> _parts = [];
    private readonly List<int>[] _answers;

    public PartGroups(SlotIndex frames, SlotIndex parts, CancellationToken cancellationToken)
    {
        ScreenedJoint[] all = [.. Enumerable.Range(0, parts.Table.Ports.Length)
            .Where(p => parts.Table.Ports[p].Joint.Slots.All(s => s == parts.Slot || s == Slot.Frame))
            .Select(p => new ScreenedJoint(frames, parts, p))];
        ScreenedJoint[] alone = [.. all.Where(j => j.FramePort < 0)];

        // What few answers settle comes first: a group that is refused there is asked nothing more.
        Joints = [.. all.Where(j => j.FramePort >= 0).OrderBy(j => j.FrameAnswers)];
        _answers = [.. Joints.Select(_ => new List<int>())];
        Gather(parts, alone, cancellationToken);
    }

    /// <summary>The joints with the frame.</summary>
    public ScreenedJoint[] Joints { get; }

    /// <summary>How many groups there are, those that are refused by themselves left out.</summary>
    public int Count => _parts.Count;

    /// <summary>What is to be said of each group by itself.</summary>
    public ReadOnlySpan<byte> Worst => CollectionsMarshal.AsSpan(_worst);

    /// <summary>How many parts each group has.</summary>
    public ReadOnlySpan<int> Parts => CollectionsMarshal.AsSpan(_parts);

    /// <summary>What each group says to a joint, by the joint's number.</summary>
    public ReadOnlySpan<int> Answers(int joint) => CollectionsMarshal.AsSpan(_answers[joint]);

    private void Gather(SlotIndex parts, ScreenedJoint[] alone, CancellationToken cancellationToken)
    {
        byte[][] told = [.. alone.Select(j => Unasked(j.PartAnswers))];
        ByteSet seen = new();
        ByteWriter key = new();
        int[] all = new int[parts.Table.Ports.Length];
        for (int kind = 0; kind < parts.Table.Count; kind++)
        {
            if (parts.CountOf(kind) == 0)
            {
                continue;
            }

            cancellationToken.ThrowIfCancellationRequested();
            byte worst = Read(parts.Table.AnswersOf(kind), all) ? (byte)Verdict.NeedsMeasuring : (byte)Verdict.NotJudged;
            for (int i = 0; i < alone.Length; i++)
            {
                ref byte verdict = ref told[i][all[alone[i].PartPort]];
                verdict = verdict == NotYet ? alone[i].Judge(all[alone[i].PartPort]) : verdict;
                worst = Math.Max(worst, verdict);
            }

            if (worst < (byte)Verdict.DoesNotFit)
            {
                Put(seen, key, worst, all, parts.CountOf(kind));
            }
        }
    }

    private void Put(ByteSet seen, ByteWriter key, byte worst, int[] all, int count)
    {
        key.Clear();
        key.Byte(worst);
        foreach (ScreenedJoint joint in Joints)
        {
            key.Number((ulong)all[joint.PartPort]);
        }

        int number = seen.Add(key.Written, out bool isNew);
        if (!isNew)
        {
            _parts[number] += count;
            return;
        }

        _worst.Add(worst);
        _parts.Add(count);
        for (int i = 0; i < Joints.Length; i++)
        {
            _answers[i].Add(all[Joints[i].PartPort]);
        }
    }

    private static bool Read(ReadOnlySpan<byte> row, int[] answers)
    {
        ByteReader reader = new(row, 0);
        bool asked = reader.Byte() != 0;
        for (int i = 0; i < answers.Length; i++)
        {
            answers[i] = (int)reader.Number();
        }

        return asked;
    }

    private static byte[] Unasked(int count)
    {
        byte[] verdicts = new byte[count];
        Array.Fill(verdicts, NotYet);
        return verdicts;
    }
}
