namespace Lugwork.Catalogues;

/// <summary>What one field of the parts of a slot can be, each different value once, numbered as they came. 0 is unknown.</summary>
internal sealed class ValueTable
{
    private readonly Dictionary<long, int> _plain = [];
    private readonly Dictionary<Candidates, int> _others = new(CandidatesEquality.Values);
    private Candidates[] _values = new Candidates[4];
    private long _several;

    public int Count { get; private set; } = 1;

    /// <summary>The values as they are now; later ones do not change it.</summary>
    public ReadOnlyMemory<Candidates> View => _values.AsMemory(0, Count);

    /// <summary>Bytes of memory, as near as can be told from outside.</summary>
    public long Memory => (32L * _values.Length) + (28L * _plain.Capacity) + (52L * _others.Capacity) + _several;

    public int Add(in Candidates value)
    {
        if (value.State == KnownState.Unknown)
        {
            return 0;
        }

        if (value.State == KnownState.Value ? _plain.TryGetValue(value.Low, out int number) : _others.TryGetValue(value, out number))
        {
            return number;
        }

        if (Count == _values.Length)
        {
            Array.Resize(ref _values, ByteRows.Grown(Count, Count + 1));
        }

        _values[Count] = value;
        if (value.State == KnownState.Value)
        {
            _plain.Add(value.Low, Count);
        }
        else
        {
            _others.Add(value, Count);
            _several += value.Codes is { } codes ? 24 + (8L * codes.Length) : 0;
        }

        return Count++;
    }

    /// <summary>Takes values back that nobody was shown.</summary>
    public void CutTo(int count)
    {
        for (int number = count; number < Count; number++)
        {
            _plain.Remove(_values[number].State == KnownState.Value ? _values[number].Low : -1);
            _several -= _others.Remove(_values[number]) && _values[number].Codes is { } codes ? 24 + (8L * codes.Length) : 0;
        }

        Count = Math.Min(Count, count);
    }

    private sealed class CandidatesEquality : IEqualityComparer<Candidates>
    {
        public static CandidatesEquality Values { get; } = new();

        public bool Equals(Candidates x, Candidates y) =>
            x.State == y.State && x.Low == y.Low && x.High == y.High && x.Codes.AsSpan().SequenceEqual(y.Codes);

        public int GetHashCode(Candidates value)
        {
            HashCode hash = default;
            hash.Add(value.State);
            hash.Add(value.Low);
            hash.Add(value.High);
            foreach (long code in value.Codes ?? [])
            {
                hash.Add(code);
            }

            return hash.ToHashCode();
        }
    }
}
