namespace Lugwork.Catalogues;

/// <summary>
/// All kinds of frames against all kinds of parts of one slot. Frames that say the same to the joints of the slot are counted once, parts
/// that say the same to the joints of a bare frame too; each pair of answers to a joint is judged once, by the joint.
/// </summary>
internal sealed class FrameScreen
{
    private const byte NotYet = 255;
    private const byte Silent = 254;

    // Of a joint with more pairs of answers than this most are asked for once, if at all: nothing is kept of them.
    private const long MostPairs = 1 << 22;

    private readonly ScreenedJoint[] _pairs;
    private readonly List<(int[] Answers, bool IsAsked, int Parts)> _parts = [];
    private readonly int[] _numbers;
    private readonly List<FitCounts> _counts = [];

    public FrameScreen(SlotIndex frames, SlotIndex parts, CancellationToken cancellationToken)
    {
        _pairs = [.. Enumerable.Range(0, parts.Table.Ports.Length).Where(p => parts.Table.Ports[p].Joint.Slots.All(s => s == parts.Slot || s == Slot.Frame)).Select(p => new ScreenedJoint(frames, parts, p))];
        Gather(parts, cancellationToken);
        _numbers = new int[frames.Table.Count];
        ByteSet seen = new();
        ByteWriter key = new();
        int[] all = new int[frames.Table.Ports.Length];
        int[] own = new int[_pairs.Length];
        for (int kind = 0; kind < _numbers.Length; kind++)
        {
            if (frames.CountOf(kind) == 0)
            {
                continue;
            }

            cancellationToken.ThrowIfCancellationRequested();
            Read(frames.Table.AnswersOf(kind), all);
            key.Clear();
            for (int i = 0; i < own.Length; i++)
            {
                own[i] = _pairs[i].FramePort < 0 ? 0 : all[_pairs[i].FramePort];
                key.Number((ulong)own[i]);
            }

            _numbers[kind] = seen.Add(key.Written, out bool isNew);
            if (isNew)
            {
                _counts.Add(Count(own));
            }
        }
    }

    public FitCounts Of(int kind) => _counts[_numbers[kind]];

    /// <summary>Kinds of parts that say the same to the joints of a bare frame, with how many parts they are.</summary>
    private void Gather(SlotIndex parts, CancellationToken cancellationToken)
    {
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
            bool asked = Read(parts.Table.AnswersOf(kind), all);
            key.Clear();
            key.Byte(asked ? (byte)1 : (byte)0);
            int[] own = new int[_pairs.Length];
            for (int i = 0; i < own.Length; i++)
            {
                own[i] = all[_pairs[i].PartPort];
                key.Number((ulong)own[i]);
            }

            int number = seen.Add(key.Written, out bool isNew);
            if (isNew)
            {
                _parts.Add((own, asked, parts.CountOf(kind)));
            }
            else
            {
                _parts[number] = _parts[number] with { Parts = _parts[number].Parts + parts.CountOf(kind) };
            }
        }
    }

    private FitCounts Count(ReadOnlySpan<int> frame)
    {
        Span<int> counts = stackalloc int[(int)Verdict.Unsafe + 1];
        foreach ((int[] answers, bool asked, int parts) in _parts)
        {
            int worst = asked ? (int)Verdict.NeedsMeasuring : (int)Verdict.NotJudged;
            for (int i = 0; i < answers.Length && worst < (int)Verdict.DoesNotFit; i++)
            {
                byte verdict = _pairs[i].Of(frame[i], answers[i]);
                worst = verdict == Silent || verdict <= worst ? worst : verdict;
            }

            counts[worst] += parts;
        }

        return new(counts[(int)Verdict.Fits], counts[(int)Verdict.NeedsPart], counts[(int)Verdict.NeedsMeasuring], counts[(int)Verdict.NotJudged], counts[(int)Verdict.DoesNotFit] + counts[(int)Verdict.Unsafe]);
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

    /// <summary>One joint, with what frames and parts say to it.</summary>
    private sealed class ScreenedJoint
    {
        private readonly Joint _joint;
        private readonly PortAnswers _frames;
        private readonly PortAnswers _parts;
        private readonly int[] _frameOwn;
        private readonly int[] _partOwn;
        private readonly byte[] _verdicts;

        public ScreenedJoint(SlotIndex frames, SlotIndex parts, int port)
        {
            PartPort = port;
            _joint = parts.Table.Ports[port].Joint;
            _parts = parts.Table.Said[port];
            _partOwn = parts.Table.Ports[port].Own;
            FramePort = Array.FindIndex(frames.Table.Ports, p => p.Joint == _joint);
            _frames = FramePort < 0 ? default : frames.Table.Said[FramePort];
            _frameOwn = FramePort < 0 ? [] : frames.Table.Ports[FramePort].Own;
            long pairs = Math.Max(1L, _frames.Count) * _parts.Count;
            _verdicts = new byte[pairs > MostPairs ? 0 : pairs];
            Array.Fill(_verdicts, NotYet);
        }

        /// <summary>The port of the joint among those of the frame; negative where the joint asks for nothing but the part.</summary>
        public int FramePort { get; }

        public int PartPort { get; }

        public byte Of(int frame, int part)
        {
            if (_verdicts.Length == 0)
            {
                return Judge(frame, part);
            }

            ref byte verdict = ref _verdicts[(frame * _parts.Count) + part];
            if (verdict == NotYet)
            {
                verdict = Judge(frame, part);
            }

            return verdict;
        }

        private byte Judge(int frame, int part)
        {
            CandidateRow row = default;
            uint stated = _parts.Stated(part);
            for (int i = 0; i < _partOwn.Length; i++)
            {
                row[_partOwn[i]] = _parts[part][i];
            }

            if (FramePort >= 0)
            {
                stated |= _frames.Stated(frame);
                for (int i = 0; i < _frameOwn.Length; i++)
                {
                    row[_frameOwn[i]] = _frames[frame][i];
                }
            }

            return _joint.IsSeen(stated) ? (byte)_joint.Common(row) : Silent;
        }
    }
}
