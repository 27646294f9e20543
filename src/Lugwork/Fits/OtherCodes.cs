using System.Numerics;

namespace Lugwork;

/// <summary>
/// What a property can be as one number each: 0 where it is unknown, the code of its one value, and a number below zero for all else
/// (none, one of several, a range, outside the library), each of which is kept here once. Equal numbers of one of these say the same.
/// </summary>
internal sealed class OtherCodes
{
    private const long None = -1;

    // With a seed of the process, so that nobody can choose ranges that fall on one place.
    private static readonly ulong Seed = ((ulong)(uint)HashCode.Combine(3) << 32) | (uint)HashCode.Combine(4);

    private Candidates[] _values = [];

    // Number of the value and one more; 0 where a place is free.
    private int[] _places = [];

    public int Count { get; private set; }

    /// <summary>What a number stands for.</summary>
    public Candidates this[long packed] => packed switch
    {
        > 0 => new(KnownState.Value, packed, packed, null),
        0 => default,
        None => new(KnownState.None, 0, 0, null),
        _ => _values[-2 - packed],
    };

    /// <summary>The number of something that is no single value.</summary>
    public long Of(in Candidates other)
    {
        if (other.State == KnownState.None)
        {
            return None;
        }

        if (Count >= _places.Length / 2)
        {
            Lay(Math.Max(16, 2 * _places.Length));
        }

        int place = PlaceOf(other);
        if (_places[place] == 0)
        {
            if (Count == _values.Length)
            {
                Array.Resize(ref _values, _places.Length / 2);
            }

            _values[Count] = other;
            _places[place] = ++Count;
        }

        return -1L - _places[place];
    }

    /// <summary>Forgets all numbers.</summary>
    public void Clear() => (_values, _places, Count) = ([], [], 0);

    private void Lay(int places)
    {
        _places = new int[places];
        for (int number = 0; number < Count; number++)
        {
            _places[PlaceOf(_values[number])] = number + 1;
        }
    }

    private int PlaceOf(in Candidates value)
    {
        int mask = _places.Length - 1;
        int place = Hash(value) & mask;
        while (_places[place] != 0 && !IsSame(_values[_places[place] - 1], value))
        {
            place = (place + 1) & mask;
        }

        return place;
    }

    private static bool IsSame(in Candidates one, in Candidates other) =>
        one.State == other.State && one.Low == other.Low && one.High == other.High
        && (ReferenceEquals(one.Codes, other.Codes) || one.Codes.AsSpan().SequenceEqual(other.Codes));

    private static int Hash(in Candidates value)
    {
        ulong hash = Mixed(Mixed(Seed ^ (ulong)value.State, value.Low), value.High);
        foreach (long code in value.Codes.AsSpan())
        {
            hash = Mixed(hash, code);
        }

        return (int)(hash >> 33);
    }

    private static ulong Mixed(ulong hash, long code) => BitOperations.RotateLeft((hash ^ (ulong)code) * 0x9E3779B97F4A7C15UL, 27);
}
