using System.Runtime.CompilerServices;

namespace Lugwork;

/// <summary>What the completions of a joint come to, and which inputs make the difference.</summary>
internal sealed class OutcomeSurvey(int inputs)
{
    private readonly Dictionary<Others, Outcome>[] _seen = [.. Enumerable.Range(0, inputs).Select(_ => new Dictionary<Others, Outcome>())];
    private Outcome _last;

    /// <summary>Every outcome, once.</summary>
    public List<Outcome> Outcomes { get; } = [];

    /// <summary>With the rest as it is, the input alone changes the verdict.</summary>
    public bool[] Matters { get; } = new bool[inputs];

    /// <summary>With the rest as it is, the input alone changes what has to be bought.</summary>
    public bool[] Decides { get; } = new bool[inputs];

    /// <summary>Takes one completion; always goes on.</summary>
    public bool Add(ReadOnlySpan<long> values, Outcome outcome)
    {
        if (outcome != _last && !Outcomes.Contains(outcome))
        {
            Outcomes.Add(outcome);
        }

        _last = outcome;
        for (int i = 0; i < inputs; i++)
        {
            if ((Matters[i] && Decides[i]) || _seen[i].TryAdd(new Others(values, i), outcome))
            {
                continue;
            }

            Outcome before = _seen[i][new Others(values, i)];
            Matters[i] |= before.Verdict != outcome.Verdict;
            Decides[i] |= before.Bridge != outcome.Bridge || before.Second != outcome.Second;
        }

        return true;
    }

    /// <summary>The values of all inputs but one.</summary>
    private readonly struct Others : IEquatable<Others>
    {
        private readonly OtherValues _values;
        private readonly int _hash;

        public Others(ReadOnlySpan<long> values, int without)
        {
            ulong hash = 14_695_981_039_346_656_037;
            for (int i = 0; i < values.Length; i++)
            {
                _values[i] = i == without ? -1 : values[i];
                hash = (hash ^ (ulong)_values[i]) * 1_099_511_628_211;
                hash ^= hash >> 29;
            }

            _hash = (int)(hash ^ (hash >> 32));
        }

        public bool Equals(Others other) => ((ReadOnlySpan<long>)_values).SequenceEqual(other._values);

        public override bool Equals(object? obj) => obj is Others other && Equals(other);

        public override int GetHashCode() => _hash;

        [InlineArray(Joint.MostInputs)]
        private struct OtherValues
        {
            private long _first;
        }
    }
}
