namespace Lugwork.Catalogues;

/// <summary>
/// One joint, seen from one slot: what the parts of the slot say to it, each different answer once. A joint is judged once for an
/// answer, however many parts give it, and by the joint itself.
/// </summary>
internal sealed class JointPort
{
    private readonly ByteSet _answers = new();
    private Candidates[] _inputs = [];
    private byte[] _stated = [];

    public JointPort(Joint joint, Slot slot)
    {
        Joint = joint;
        Own = [.. Enumerable.Range(0, joint.Inputs.Length).Where(i => joint.Inputs[i].Slot == slot)];
    }

    public Joint Joint { get; }

    /// <summary>Numbers of the inputs that the slot gives.</summary>
    public int[] Own { get; }

    public int Count => _answers.Count;

    public long Memory => _answers.Memory + (32L * _inputs.Length) + _stated.Length;

    public PortAnswers View => new(_inputs, _stated, Own.Length, Count);

    /// <summary>The number of what a part says to the joint.</summary>
    /// <param name="part">The part.</param>
    /// <param name="key">Room to write in.</param>
    public int Add(Part part, ByteWriter key)
    {
        ReadOnlySpan<int> own = Own;
        key.Clear();
        uint stated = 0;
        for (int i = 0; i < own.Length; i++)
        {
            stated |= Joint.IsOnlyWhereLooked && Joint.IsStated(own[i], part) ? 1u << own[i] : 0;
            key.Candidates(Joint.Inputs[own[i]].Read(part));
        }

        key.Byte((byte)stated);
        int number = _answers.Add(key.Written, out bool isNew);
        if (isNew)
        {
            Keep(number, part, (byte)stated);
        }

        return number;
    }

    public void CutTo(int count) => _answers.CutTo(count);

    private void Keep(int number, Part part, byte stated)
    {
        if (number >= _stated.Length)
        {
            int room = ByteRows.Grown(_stated.Length, number + 1);

            // Both are there before either is taken: one that is short of memory is not left half grown.
            Candidates[] inputs = new Candidates[checked(room * Own.Length)];
            byte[] all = new byte[room];
            _inputs.CopyTo(inputs, 0);
            _stated.CopyTo(all, 0);
            (_inputs, _stated) = (inputs, all);
        }

        _stated[number] = stated;
        for (int i = 0; i < Own.Length; i++)
        {
            _inputs[(number * Own.Length) + i] = Joint.Inputs[Own[i]].Read(part);
        }
    }
}

/// <summary>The answers to one joint as they were at one time.</summary>
internal readonly struct PortAnswers(Candidates[] inputs, byte[] stated, int width, int count)
{
    public int Count => count;

    public ReadOnlySpan<Candidates> this[int number] => inputs.AsSpan(number * width, width);

    public uint Stated(int number) => stated[number];
}
