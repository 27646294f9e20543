using System.Globalization;
using System.Text;

namespace Lugwork.Tests.Architecture;

/// <summary>
/// What a joint says over drawn rows of settled values: each input in turn goes through all values that it can have, and through lengths, of which
/// each place is found to its last unit where the answer changes.
/// </summary>
internal sealed class VerdictRecord
{
    /// <summary>So many rows are told whatever they say, and of the rest those that say something new.</summary>
    private const int Kept = 8;
    private const int Draws = 32;
    private const long Most = 200_000_000_000;

    private readonly Joint _joint;
    private readonly StringBuilder _told = new();
    private readonly SortedDictionary<Verdict, int> _counts = [];
    private readonly HashSet<string> _said = [];
    private readonly List<(string Line, string Said)> _row = [];
    private readonly List<long> _places = [];

    private VerdictRecord(Joint joint) => _joint = joint;

    /// <summary>Every answer, a line each.</summary>
    public string Told => _told.ToString();

    /// <summary>The joint, how often it said what, and a number that any other answer changes.</summary>
    public string Line => $"{_joint.Id} {string.Join(' ', _counts.Select(c => FormattableString.Invariant($"{c.Key}:{c.Value}")))} {Hash(Told):x16}";

    public static VerdictRecord Of(Joint joint)
    {
        VerdictRecord record = new(joint);
        for (int draw = 0; draw < Draws; draw++)
        {
            long[] row = record.Row(draw);
            for (int input = 0; input < row.Length; input++)
            {
                record.Vary(row, input);
            }

            record.Keep(draw);
        }

        return record;
    }

    /// <summary>A drawn row and, for a length of it, every place found from which on the answer is another; the first is the shortest length.</summary>
    public static (long[] Row, long[] Places) PlacesOf(Joint joint, int draw, int length)
    {
        VerdictRecord record = new(joint);
        long[] row = record.Row(draw);
        record.Vary(row, length);
        return (row, [.. record._places.Where(p => p > 0)]);
    }

    private long[] Row(int draw)
    {
        long[] row = new long[_joint.Inputs.Length];
        for (int i = 0; i < row.Length; i++)
        {
            JointInput input = _joint.Inputs[i];
            ulong drawn = Hash(FormattableString.Invariant($"{draw} {i}"));
            int mate = Enumerable.Range(0, i).LastOrDefault(o => _joint.Inputs[o].Family == input.Family && _joint.Inputs[o].IsLength == input.IsLength && input.Family != 0, -1);
            // What is read on the finished bicycle judges in place of a sum; every second row is of one on which nobody read it.
            row[i] = input.IsReadWhenBuilt && draw % 2 == 1 ? 0
                : input.IsLength ? (long)((drawn >> 8) % 9_000 + 100) * (drawn % 4 == 0 ? 500 : 50_000)
                : mate >= 0 && draw % 3 != 0 && input.Domain.Contains(row[mate]) ? row[mate]
                : input.Domain.MinBy(c => Hash(FormattableString.Invariant($"{draw} {i} {c}")));
        }

        return row;
    }

    private void Vary(long[] row, int input)
    {
        long[] at = [.. row];
        string Said(long value)
        {
            at[input] = value;
            Outcome outcome = _joint.Relation.Judge(at);
            return $"{outcome.Verdict} {outcome.Reason?.Id} {outcome.Bridge?.Id} {outcome.Second?.Id} {string.Join(' ', outcome.Reason?.Offers.Select(b => b.Id) ?? [])}".TrimEnd();
        }

        if (!_joint.Inputs[input].IsLength)
        {
            foreach (long code in _joint.Inputs[input].Domain.Prepend(0))
            {
                Tell(row, input, code, Said(code));
            }

            return;
        }

        Tell(row, input, 0, Said(0));
        long last = 1;
        string said = Said(last);
        Tell(row, input, last, said);
        foreach (long next in Lengths(row).Where(l => l > 1).Distinct().Order())
        {
            string then = Said(next);
            while (then != said)
            {
                // The first value above "last" with another answer lies at or below "next".
                long low = last;
                long high = next;
                while (high - low > 1)
                {
                    long middle = low + ((high - low) / 2);
                    (low, high) = Said(middle) == said ? (middle, high) : (low, middle);
                }

                last = high;
                said = Said(high);
                Tell(row, input, high, said);
            }

            last = next;
        }
    }

    /// <summary>Lengths of many sizes, and what is near the other inputs.</summary>
    private static IEnumerable<long> Lengths(long[] row)
    {
        for (long length = 3; length < Most; length += length / 3)
        {
            yield return length;
        }

        foreach (long other in row.Where(o => o is > 0 and < Most))
        {
            foreach (long beside in new long[] { 0, 1, 50_000, 1_000_000, 4_000_000, 20_000_000 })
            {
                yield return other + beside;
                yield return Math.Max(1, other - beside);
            }
        }
    }

    private void Tell(long[] row, int input, long value, string said)
    {
        _places.Add(value);
        _row.Add((string.Create(CultureInfo.InvariantCulture, $"{string.Join(' ', row.Select((v, i) => i == input ? $"[{value}]" : v.ToString(CultureInfo.InvariantCulture)))}: {said}\n"), said));
    }

    private void Keep(int draw)
    {
        int known = _said.Count;
        _said.UnionWith(_row.Select(r => r.Said));
        bool isNew = _said.Count > known;
        foreach ((string line, string said) in draw < Kept || isNew ? _row : [])
        {
            Verdict verdict = Enum.Parse<Verdict>(said.Split(' ')[0]);
            _counts[verdict] = _counts.GetValueOrDefault(verdict) + 1;
            _told.Append(line);
        }

        _row.Clear();
    }

    /// <summary>FNV-1a, which is the same on every machine.</summary>
    private static ulong Hash(string text)
    {
        ulong hash = 14_695_981_039_346_656_037;
        foreach (byte b in Encoding.UTF8.GetBytes(text))
        {
            hash = (hash ^ b) * 1_099_511_628_211;
        }

        return hash;
    }
}
