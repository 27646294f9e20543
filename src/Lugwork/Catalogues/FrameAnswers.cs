namespace Lugwork.Catalogues;

/// <summary>What every kind of frame says to the joints between a bare frame and one part, by number, read once for all slots. Never changes.</summary>
internal sealed class FrameAnswers
{
    private const int Some = 2_048;

    private readonly int[] _columns;
    private readonly int[] _said;
    private readonly int[] _places;

    /// <param name="frames">The frames.</param>
    /// <param name="threads">How many threads may read.</param>
    /// <param name="cancellationToken">Ends it.</param>
    public FrameAnswers(SlotIndex frames, int threads, CancellationToken cancellationToken)
    {
        Frames = frames;
        _places = new int[frames.Table.Count];
        int[] kinds = new int[frames.Live];
        for (int kind = 0; kind < _places.Length; kind++)
        {
            _places[kind] = Count;
            if (frames.CountOf(kind) > 0)
            {
                kinds[Count++] = kind;
            }
        }

        _columns = new int[frames.Table.Ports.Length];
        int columns = 0;
        int last = 0;
        for (int port = 0; port < _columns.Length; port++)
        {
            bool isAsked = frames.Table.Ports[port].Joint.Slots.Length == 2;
            _columns[port] = isAsked ? columns++ : -1;
            last = isAsked ? port + 1 : last;
        }

        _said = new int[columns * Count];
        Parallel.For(0, (Count + Some - 1) / Some, new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellationToken }, some =>
        {
            for (int place = some * Some; place < Math.Min(Count, (some + 1) * Some); place++)
            {
                Read(frames.Table.AnswersOf(kinds[place]), place, last);
            }
        });
    }

    public SlotIndex Frames { get; }

    /// <summary>How many kinds there are of which there is a frame.</summary>
    public int Count { get; private set; }

    /// <summary>The place of a kind among those of which there is a frame.</summary>
    public int PlaceOf(int kind) => _places[kind];

    /// <summary>What each of these kinds says to the joint of a port that takes one part beside the frame.</summary>
    public ReadOnlySpan<int> Of(int port) => _said.AsSpan(_columns[port] * Count, Count);

    /// <summary>How many different things the frames say to the joints with one slot: what has most to judge is begun first.</summary>
    public long AnswersTo(Slot slot)
    {
        long answers = 0;
        for (int port = 0; port < _columns.Length; port++)
        {
            answers += _columns[port] >= 0 && Frames.Table.Ports[port].Joint.Slots.Contains(slot) ? Frames.Table.Said[port].Count : 0;
        }

        return answers;
    }

    private void Read(ReadOnlySpan<byte> row, int place, int last)
    {
        ByteReader reader = new(row, 0);
        reader.Byte();
        for (int port = 0; port < last; port++)
        {
            int answer = (int)reader.Number();
            if (_columns[port] >= 0)
            {
                _said[(_columns[port] * Count) + place] = answer;
            }
        }
    }
}
