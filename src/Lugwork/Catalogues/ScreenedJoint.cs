namespace Lugwork.Catalogues;

/// <summary>One joint between frames and the parts of a slot, asked by the numbers of what both say. One thread at a time.</summary>
internal sealed class ScreenedJoint
{
    private readonly Joint _joint;
    private readonly PortAnswers _frames;
    private readonly PortAnswers _parts;
    private readonly int[] _frameOwn;
    private readonly int[] _partOwn;
    private readonly long[] _values;
    private CandidateRow _row;
    private uint _stated;
    private bool _settled = true;

    public ScreenedJoint(SlotIndex frames, SlotIndex parts, int port)
    {
        PartPort = port;
        _joint = parts.Table.Ports[port].Joint;
        _parts = parts.Table.Said[port];
        _partOwn = parts.Table.Ports[port].Own;
        FramePort = Array.FindIndex(frames.Table.Ports, p => p.Joint == _joint);
        _frames = FramePort < 0 ? default : frames.Table.Said[FramePort];
        _frameOwn = FramePort < 0 ? [] : frames.Table.Ports[FramePort].Own;
        _values = new long[_joint.Inputs.Length];
    }

    /// <summary>The port of the joint among those of the frame; negative where the joint asks for nothing but the part.</summary>
    public int FramePort { get; }

    public int PartPort { get; }

    /// <summary>How many different things the frames say to it.</summary>
    public int FrameAnswers => _frames.Count;

    /// <summary>How many different things the parts say to it.</summary>
    public int PartAnswers => _parts.Count;

    /// <summary>Takes what a frame says, for all the parts that are judged beside it.</summary>
    public void Take(int frame)
    {
        _stated = _frames.Stated(frame);
        _settled = true;
        ReadOnlySpan<Candidates> said = _frames[frame];
        for (int i = 0; i < said.Length; i++)
        {
            _settled &= said[i].IsSettled;
            _values[_frameOwn[i]] = said[i].Low;
            _row[_frameOwn[i]] = said[i];
        }
    }

    /// <summary>The verdict beside the frame that was taken: not judged where nobody has looked, and what is unsafe as what does not fit.</summary>
    public byte Judge(int part)
    {
        if (_joint.IsOnlyWhereLooked && !_joint.IsSeen(_stated | _parts.Stated(part)))
        {
            return (byte)Verdict.NotJudged;
        }

        bool settled = _settled;
        ReadOnlySpan<Candidates> said = _parts[part];
        for (int i = 0; i < said.Length; i++)
        {
            settled &= said[i].IsSettled;
            _values[_partOwn[i]] = said[i].Low;
        }

        return Math.Min((byte)(settled ? _joint.Relation.Settle(_values) : Open(said)), (byte)Verdict.DoesNotFit);
    }

    private Verdict Open(ReadOnlySpan<Candidates> said)
    {
        for (int i = 0; i < said.Length; i++)
        {
            _row[_partOwn[i]] = said[i];
        }

        return _joint.Common(_row);
    }
}
