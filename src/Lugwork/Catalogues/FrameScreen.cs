using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Lugwork.Catalogues;

/// <summary>
/// All kinds of frames against all kinds of parts of one slot. The joints are gone through one after the other; after each, frames that
/// came to the same verdicts of all parts are one, so that what they say to the next joint is judged for them together.
/// </summary>
internal sealed class FrameScreen
{
    private const byte NotYet = 255;
    private const int Lanes = 32;

    // So many groups of parts and kinds of frames are held at once: what it takes of memory does not grow with the catalogue.
    private const int MostGroups = 256;
    private const int MostFrames = 1 << 15;

    private const int Each = (int)Verdict.DoesNotFit;

    private readonly FrameAnswers _frames;
    private readonly PartGroups _groups;
    private readonly int _mostGroups;
    private readonly int _total;
    private readonly int[] _numbers;
    private readonly Dictionary<(int, int, int, int), int> _known = [];
    private readonly List<FitCounts> _counts = [];

    // What each frame of a turn has come to, by number of the row.
    private readonly int[] _state;
    private readonly int[] _order;
    private int[] _seenFor = [];
    private int[] _moved = [];

    /// <param name="frames">What the frames say.</param>
    /// <param name="parts">The slot.</param>
    /// <param name="mostGroups">How many groups are held at once; no more than where nothing is said.</param>
    /// <param name="mostFrames">How many kinds of frames are held at once.</param>
    /// <param name="cancellationToken">Ends it.</param>
    public FrameScreen(FrameAnswers frames, SlotIndex parts, int mostGroups = MostGroups, int mostFrames = MostFrames, CancellationToken cancellationToken = default)
    {
        _frames = frames;
        _mostGroups = mostGroups;
        _groups = new(frames.Frames, parts, cancellationToken);
        _total = parts.Count;
        _numbers = new int[frames.Count];
        _state = new int[Math.Min(mostFrames, frames.Count)];
        _order = new int[_state.Length];
        for (int from = 0; from < frames.Count; from += mostFrames)
        {
            Span<int> numbers = _numbers.AsSpan(from, Math.Min(mostFrames, frames.Count - from));
            if (_groups.Count <= mostGroups)
            {
                // Frames that came to the same verdicts have the same counts: they are told once for each row.
                int[] told = Told(Screen(from, numbers.Length, 0, _groups.Count, cancellationToken));
                for (int frame = 0; frame < numbers.Length; frame++)
                {
                    numbers[frame] = told[_state[frame]];
                }
            }
            else
            {
                InTurns(from, numbers, cancellationToken);
            }
        }
    }

    public FitCounts Of(int kind) => _counts[_numbers[_frames.PlaceOf(kind)]];

    private void InTurns(int from, Span<int> numbers, CancellationToken cancellationToken)
    {
        int[] all = new int[numbers.Length * Each];
        for (int group = 0; group < _groups.Count; group += _mostGroups)
        {
            int[] sums = Screen(from, numbers.Length, group, Math.Min(_mostGroups, _groups.Count - group), cancellationToken);
            for (int i = 0; i < all.Length; i++)
            {
                all[i] += sums[(_state[i / Each] * Each) + (i % Each)];
            }
        }

        Told(all).CopyTo(numbers);
    }

    /// <summary>The numbers of the counts that these sums are, four a time.</summary>
    private int[] Told(int[] sums)
    {
        int[] told = new int[sums.Length / Each];
        for (int i = 0; i < told.Length; i++)
        {
            ReadOnlySpan<int> one = sums.AsSpan(i * Each, Each);
            (int fits, int needsPart, int needsMeasuring, int notJudged) = (one[(int)Verdict.Fits], one[(int)Verdict.NeedsPart], one[(int)Verdict.NeedsMeasuring], one[(int)Verdict.NotJudged]);
            if (!_known.TryGetValue((fits, needsPart, needsMeasuring, notJudged), out told[i]))
            {
                _known.Add((fits, needsPart, needsMeasuring, notJudged), told[i] = _counts.Count);
                _counts.Add(new(fits, needsPart, needsMeasuring, notJudged, _total - fits - needsPart - needsMeasuring - notJudged));
            }
        }

        return told;
    }

    /// <summary>Some frames against some groups: how many parts of each verdict there are, for every row that a frame came to.</summary>
    private int[] Screen(int from, int count, int group, int groups, CancellationToken cancellationToken)
    {
        int width = (groups + Lanes - 1) / Lanes * Lanes;
        VerdictRows rows = new(width);
        VerdictRows next = new(width);
        Span<byte> first = stackalloc byte[MostGroups];
        first.Fill((byte)Verdict.DoesNotFit);
        _groups.Worst.Slice(group, groups).CopyTo(first);
        rows.Add(first[..width]);
        Array.Clear(_state);
        for (int joint = 0; joint < _groups.Joints.Length; joint++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            Settle(joint, _frames.Of(_groups.Joints[joint].FramePort).Slice(from, count), _groups.Answers(joint).Slice(group, groups), rows, next, cancellationToken);
            (rows, next) = (next, rows);
        }

        return Sums(_groups.Parts.Slice(group, groups), rows);
    }

    /// <summary>One joint: what the frames had come to before becomes what they come to with it.</summary>
    private void Settle(int number, ReadOnlySpan<int> frames, ReadOnlySpan<int> groups, VerdictRows before, VerdictRows after, CancellationToken cancellationToken)
    {
        ScreenedJoint joint = _groups.Joints[number];
        Span<int> local = stackalloc int[MostGroups];
        Span<int> parts = stackalloc int[MostGroups];
        Span<byte> told = stackalloc byte[MostGroups];
        Span<byte> row = stackalloc byte[MostGroups];
        row = row[..before[0].Length];
        told = told[..Localise(groups, local, parts)];
        after.Clear();
        Room(before.Count);
        Sort(frames, joint.FrameAnswers);
        int answer = -1;
        foreach (int frame in _order.AsSpan(0, frames.Length))
        {
            if (frames[frame] != answer)
            {
                cancellationToken.ThrowIfCancellationRequested();
                answer = frames[frame];
                joint.Take(answer);
                told.Fill(NotYet);
            }

            ref int state = ref _state[frame];
            if (_seenFor[state] != answer + 1)
            {
                _seenFor[state] = answer + 1;
                before[state].CopyTo(row);
                Worsen(joint, row, local, parts, told);
                _moved[state] = after.Add(row);
            }

            state = _moved[state];
        }
    }

    /// <summary>The verdicts of a row with those of one joint; what is refused already is not asked for.</summary>
    private static void Worsen(ScreenedJoint joint, Span<byte> row, ReadOnlySpan<int> local, ReadOnlySpan<int> parts, Span<byte> told)
    {
        for (int lane = 0; lane < row.Length; lane += Lanes)
        {
            uint left = Left(row[lane..]);
            for (; left != 0; left &= left - 1)
            {
                int at = lane + BitOperations.TrailingZeroCount(left);
                ref byte verdict = ref told[local[at]];
                if (verdict == NotYet)
                {
                    verdict = joint.Judge(parts[local[at]]);
                }

                row[at] = Math.Max(row[at], verdict);
            }
        }
    }

    private static int[] Sums(ReadOnlySpan<int> parts, VerdictRows rows)
    {
        int[] sums = new int[rows.Count * Each];
        for (int row = 0; row < rows.Count; row++)
        {
            Span<byte> verdicts = rows[row];
            for (int lane = 0; lane < verdicts.Length; lane += Lanes)
            {
                for (uint left = Left(verdicts[lane..]); left != 0; left &= left - 1)
                {
                    int at = lane + BitOperations.TrailingZeroCount(left);
                    sums[(row * Each) + verdicts[at]] += parts[at];
                }
            }
        }

        return sums;
    }

    /// <summary>A bit for each verdict of a lane that is no refusal.</summary>
    private static uint Left(ReadOnlySpan<byte> lane) =>
        Vector256.LessThan(Vector256.Create(lane), Vector256.Create((byte)Verdict.DoesNotFit)).ExtractMostSignificantBits();

    /// <summary>The different answers of some groups, each once, and the place of each group's among them.</summary>
    private static int Localise(ReadOnlySpan<int> groups, Span<int> local, Span<int> parts)
    {
        Dictionary<int, int> known = [];
        for (int i = 0; i < groups.Length; i++)
        {
            ref int at = ref CollectionsMarshal.GetValueRefOrAddDefault(known, groups[i], out bool there);
            at = there ? at : known.Count - 1;
            parts[at] = groups[i];
            local[i] = at;
        }

        return known.Count;
    }

    /// <summary>The frames by what they say, those that say the same together.</summary>
    private void Sort(ReadOnlySpan<int> frames, int answers)
    {
        int[] next = new int[answers + 1];
        foreach (int answer in frames)
        {
            next[answer + 1]++;
        }

        for (int answer = 0; answer < answers; answer++)
        {
            next[answer + 1] += next[answer];
        }

        for (int frame = 0; frame < frames.Length; frame++)
        {
            _order[next[frames[frame]]++] = frame;
        }
    }

    private void Room(int states)
    {
        if (states > _seenFor.Length)
        {
            _seenFor = new int[2 * states];
            _moved = new int[2 * states];
        }

        Array.Clear(_seenFor, 0, states);
    }
}
