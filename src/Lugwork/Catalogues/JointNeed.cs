namespace Lugwork.Catalogues;

/// <summary>What one joint accepts of the part in a slot, all other parts as they are. Every row is an answer of the joint itself.</summary>
internal sealed class JointNeed
{
    private readonly Joint _joint;
    private readonly JointInput _input;
    private readonly int _at;
    private readonly uint _stated;
    private readonly bool _settled;
    private readonly Verdict _worst;
    private CandidateRow _row;

    private JointNeed(Joint joint, int at, CandidateRow row, uint stated, bool settled, Verdict worst)
    {
        _joint = joint;
        _input = joint.Inputs[at];
        _at = at;
        _row = row;
        _stated = stated;
        _settled = settled;
        _worst = worst;
    }

    /// <summary>Null where the joint asks nothing yet: another slot is empty, another row speaks in its place, or nobody has looked and no part could change that.</summary>
    public static JointNeed? Of(Joint joint, int at, Build build, Verdict worst)
    {
        if (joint.GivesWayIn(build))
        {
            return null;
        }

        CandidateRow row = default;
        uint stated = 0;
        bool settled = true;
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            if (i == at)
            {
                continue;
            }

            if (build[joint.Inputs[i].Slot] is not { } part)
            {
                return null;
            }

            row[i] = joint.Inputs[i].Read(part);
            settled &= row[i].IsSettled;
            stated |= joint.IsOnlyWhereLooked && joint.IsStated(i, part) ? 1u << i : 0;
        }

        return joint.IsSeen(stated | (1u << at)) ? new(joint, at, row, stated, settled, worst) : null;
    }

    public IEnumerable<(string Key, long Least, long Most, string Bridge)> Rows()
    {
        List<(string Key, long Least, long Most, string Bridge)> rows = [];
        Put(rows, RelationKey.Unsaid(_joint), _input.Read(PartForms.Of(_input.Slot).Empty), isStated: false);
        if (_joint.IsOnlyWhereLooked)
        {
            Put(rows, RelationKey.Asked(_joint), default, isStated: true);
        }

        Put(rows, RelationKey.None(_joint), new(KnownState.None, 0, 0, null), isStated: true);
        Put(rows, RelationKey.Outside(_joint), new(KnownState.NotCovered, 0, 0, null), isStated: true);
        if (_input.IsLength)
        {
            rows.AddRange(Figures());
        }
        else
        {
            foreach (long code in _input.Domain)
            {
                Put(rows, RelationKey.Of(_joint, _input, code), Value(code), isStated: true);
            }

            rows.Add((RelationKey.Unlisted(_joint), 0, 0, Check));
        }

        return rows.Count == 0 ? [(RelationKey.Nothing(_joint), 0, 0, "")] : rows;
    }

    private const string Check = FitRelations.Check;

    private const int MostWays = 3;

    public const string ToldByCheck = "a part, told by the check";

    private void Put(List<(string Key, long Least, long Most, string Bridge)> rows, string key, Candidates own, bool isStated)
    {
        if (Accepts(own, isStated, out string bridge))
        {
            rows.Add((key, 0, 0, bridge));
        }
    }

    private bool Accepts(Candidates own, bool isStated, out string bridge)
    {
        bridge = "";
        if (!_joint.IsSeen(_stated | (isStated ? 1u << _at : 0)))
        {
            return true;
        }

        _row[_at] = own;
        Verdict verdict = _joint.Common(_row);
        bridge = verdict switch
        {
            Verdict.NeedsPart => Bridge(),
            Verdict.NeedsMeasuring => FitRelations.Measure,
            _ => "",
        };
        return verdict != Verdict.NotJudged && verdict <= _worst;
    }

    /// <summary>
    /// The ranges of figures that are right. The joint changes its mind only where it goes through the figures by itself; between two of
    /// these that it judges alike it judges all alike, and beside one that it judges otherwise the range is drawn too wide, never too narrow.
    /// </summary>
    private IEnumerable<(string Key, long Least, long Most, string Bridge)> Figures()
    {
        string key = RelationKey.Figure(_joint);
        if (!_settled)
        {
            _row[_at] = default;
            return _joint.Common(_row) switch
            {
                Verdict.DoesNotFit or Verdict.Unsafe => [],
                Verdict.Fits => [(key, 1, FitRelations.NoLimit, "")],
                _ => [(key, 1, FitRelations.NoLimit, Check)],
            };
        }

        SortedSet<long> places = [1, FitRelations.NoLimit];
        _row[_at] = default;
        _joint.Visit(_row, (values, _) =>
        {
            places.Add(Math.Clamp(values[_at], 1, FitRelations.NoLimit));
            return true;
        });
        return Ranges(key, [.. places]);
    }

    private List<(string Key, long Least, long Most, string Bridge)> Ranges(string key, long[] places)
    {
        List<(string Key, long Least, long Most, string Bridge)> ranges = [];
        (bool Right, string Bridge) before = (false, "");
        for (int i = 0; i < places.Length; i++)
        {
            (bool Right, string Bridge) here = (Accepts(Value(places[i]), isStated: true, out string bridge), bridge);
            long from = i > 0 && here != before ? places[i - 1] + 1 : places[i];
            if (here.Right && before == here)
            {
                ranges[^1] = (key, ranges[^1].Least, places[i], here.Bridge);
            }
            else
            {
                if (before.Right)
                {
                    ranges[^1] = (key, ranges[^1].Least, Math.Max(ranges[^1].Most, places[i] - 1), before.Bridge);
                }

                if (here.Right)
                {
                    ranges.Add((key, from, places[i], here.Bridge));
                }
            }

            before = here;
        }

        return ranges;
    }

    /// <summary>What it takes; where that depends on what is not known, each way of a few.</summary>
    private string Bridge()
    {
        List<string> ways = [];
        _joint.Visit(_row, (_, outcome) =>
        {
            string told = outcome.Bridge is not { } first ? outcome.Reason?.Mend ?? ""
                : outcome.Second is { } second ? $"{first.What} and {second.What}" : first.What;
            if (!ways.Contains(told))
            {
                ways.Add(told);
            }

            return ways.Count <= MostWays && told.Length > 0;
        });
        return ways is [{ Length: > 0 } one] ? one
            : ways.Count > MostWays || ways.Contains("") ? ToldByCheck
            : $"one of these, as it measures: {string.Join("; or ", ways)}";
    }

    private static Candidates Value(long code) => new(KnownState.Value, code, code, null);
}
