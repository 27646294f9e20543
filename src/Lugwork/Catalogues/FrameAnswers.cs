namespace Lugwork.Catalogues;

/// <summary>What every kind of frame says to the joints between a bare frame and one part, by number, read once for all slots. Never changes.</summary>
internal sealed class FrameAnswers
{
    private const int Some = 64;

    private readonly int[] _kinds;
    private readonly int[] _places;
    private readonly int _first;
    private readonly int _columns;
    private readonly int[] _said;

    /// <param name="frames">The frames.</param>
    /// <param name="threads">How many threads may read.</param>
    /// <param name="cancellationToken">Ends it.</param>
    public FrameAnswers(SlotIndex frames, int threads, CancellationToken cancellationToken)
    {
        Frames = frames;
        _places = new int[frames.Table.Count];
        _kinds = new int[frames.Live];
        int count = 0;
        for (int kind = 0; kind < _places.Length; kind++)
        {
            _places[kind] = count;
            if (frames.CountOf(kind) > 0)
            {
                _kinds[count++] = kind;
            }
        }

        // They stand together: behind what asks for the frame alone, before what asks for several parts.
        JointPort[] ports = frames.Table.Ports;
        _first = ports.Count(p => p.Joint.Slots.Length == 1);
        _columns = ports.Count(p => p.Joint.Slots.Length == 2);
        _said = new int[_columns * Count];
        int turns = (Count + Some - 1) / Some;
        int each = (turns + threads - 1) / threads;
        Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellationToken }, thread =>
        {
            int[] read = new int[Some * _columns];
            for (int turn = thread * each; turn < Math.Min(turns, (thread + 1) * each); turn++)
            {
                cancellationToken.ThrowIfCancellationRequested();
                Read(turn * Some, Math.Min(Count, (turn + 1) * Some), read);
            }
        });
    }

    public SlotIndex Frames { get; }

    /// <summary>How many kinds there are of which there is a frame.</summary>
    public int Count => _kinds.Length;

    /// <summary>The place of a kind among those of which there is a frame.</summary>
    public int PlaceOf(int kind) => _places[kind];

    /// <summary>What each of these kinds says to the joint of a port that takes one part beside the frame.</summary>
    public ReadOnlySpan<int> Of(int port) => _said.AsSpan((port - _first) * Count, Count);

    /// <summary>How many different things the frames say to the joints with one slot: what has most to judge is begun first.</summary>
    public long AnswersTo(Slot slot)
    {
        long answers = 0;
        for (int port = _first; port < _first + _columns; port++)
        {
            answers += Frames.Table.Ports[port].Joint.Slots.Contains(slot) ? Frames.Table.Said[port].Count : 0;
        }

        return answers;
    }

    /// <summary>Some rows, and then what they say to each joint put where the joint's answers stand.</summary>
    private void Read(int from, int to, int[] read)
    {
        for (int place = from; place < to; place++)
        {
            ByteReader reader = new(Frames.Table.AnswersOf(_kinds[place]), 0);
            reader.Byte();
            for (int port = 0; port < _first; port++)
            {
                reader.Number();
            }

            Span<int> row = read.AsSpan((place - from) * _columns, _columns);
            for (int column = 0; column < row.Length; column++)
            {
                row[column] = (int)reader.Number();
            }
        }

        for (int column = 0; column < _columns; column++)
        {
            Span<int> said = _said.AsSpan((column * Count) + from, to - from);
            for (int place = 0; place < said.Length; place++)
            {
                said[place] = read[(place * _columns) + column];
            }
        }
    }
}
