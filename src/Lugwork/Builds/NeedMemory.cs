using System.Collections.Concurrent;

namespace Lugwork;

/// <summary>
/// What joints answered about a slot, for needs sheets. To go through all that neighbours can be of which something is open takes long, and
/// most bicycles that are put together ask the same: what is not chosen yet is not chosen for all of them.
/// </summary>
internal static class NeedMemory
{
    // Forgotten all at once where there are more: a few hundred are asked of a bare frame, nearly all of them of every one.
    private const int Most = 2_048;

    private static readonly ConcurrentDictionary<Question, object> Known = new();

    /// <summary>The answer of a joint, worked out where it is not remembered. It follows from the joint, the input that is asked about and what the others can be, and from nothing else.</summary>
    public static T Of<T>(Joint joint, int at, in CandidateRow row, Func<CandidateRow, T> answer)
        where T : notnull
    {
        Question question = new(joint, at, Codes(joint, row));
        if (Known.TryGetValue(question, out object? known))
        {
            return (T)known;
        }

        T worked = answer(row);
        if (Known.Count >= Most)
        {
            Known.Clear();
        }

        Known[question] = worked;
        return worked;
    }

    /// <summary>All that the inputs can be, one after the other, each with its length.</summary>
    private static long[] Codes(Joint joint, in CandidateRow row)
    {
        List<long> codes = new(4 * joint.Inputs.Length);
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            codes.Add((long)row[i].State);
            codes.Add(row[i].Low);
            codes.Add(row[i].High);
            codes.Add(row[i].Codes?.Length ?? 0);
            codes.AddRange(row[i].Codes ?? []);
        }

        return [.. codes];
    }

    private readonly struct Question(Joint joint, int at, long[] row) : IEquatable<Question>
    {
        private readonly Joint _joint = joint;
        private readonly int _at = at;
        private readonly long[] _row = row;

        public bool Equals(Question other) => ReferenceEquals(_joint, other._joint) && _at == other._at && _row.AsSpan().SequenceEqual(other._row);

        public override bool Equals(object? obj) => obj is Question other && Equals(other);

        public override int GetHashCode()
        {
            HashCode hash = default;
            hash.Add(_joint.Id);
            hash.Add(_at);
            foreach (long code in _row)
            {
                hash.Add(code);
            }

            return hash.ToHashCode();
        }
    }
}
