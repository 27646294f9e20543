namespace Lugwork.Reading;

/// <summary>Bearings of a headset: by three figures and two angles, by number, or by what each figure is.</summary>
internal sealed partial class LineScan
{
    /// <summary>A bearing: bore, outside and height, with its two angles where they are said.</summary>
    private void ReadBearings(string upper, string lower)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (Triple(i) || SlashedBearing(i))
            {
                TakeBearing(upper, lower, i, i + 2, i + 4, i, i + 4);
            }
        }

        NumberedBearings(upper, lower);
        Settle(upper);
        Settle(lower);
        if (upper == lower && !Values.ContainsKey(upper) && Doubts.Count == 0)
        {
            BearingByFigures(upper);
        }
    }

    /// <summary>37/49/6.5: only where the figures can be those of a bearing.</summary>
    private bool SlashedBearing(int i) =>
        Free(i) && i + 4 < _items.Count && _items[i + 1].IsSign('/') && Free(i + 2) && _items[i + 3].IsSign('/') && Free(i + 4) && (IsBearing(_items[i].Value, _items[i + 2].Value, _items[i + 4].Value) || IsBearing(_items[i + 2].Value, _items[i].Value, _items[i + 4].Value));

    private static bool IsBearing(decimal inside, decimal outside, decimal height) => inside is >= 24 and <= 45 && outside is >= 36 and <= 56 && outside > inside + 5 && height is >= 5 and <= 10;

    private void TakeBearing(string upper, string lower, int a, int b, int c, int from, int to)
    {
        (decimal one, decimal two) = (_items[a].Value, _items[b].Value);
        string text = $"{ItemCutter.Plain(Math.Min(one, two))}x{ItemCutter.Plain(Math.Max(one, two))}x{_items[c].Text}";
        int last = to;
        int first = AnglesFrom(to + 1, out int second);
        if (first >= 0)
        {
            text += $"-{_items[first].Text}/{_items[second].Text}";
            last = second;
        }
        else if (from >= 4 && _items[from - 1].Kind == SpecTokenKind.Sign && IsAngles(from - 4))
        {
            // "45/45 - 30.5 x 41.8 x 8"
            text += $"-{_items[from - 4].Text}/{_items[from - 2].Text}";
            from -= 4;
        }
        else if (BothAngles(to + 1) is > 0 and int both)
        {
            text += $"-{_items[both].Text}/{_items[both].Text}";
            last = both;
        }
        else if (Anywhere("m:radial") >= 0)
        {
            text += "-radial";
        }

        string field = upper == lower ? upper : HalfAt(from, upper, lower);
        if (field.Length == 0)
        {
            Several(upper, [], from, last, "the half is not said: upper or lower");
            return;
        }

        Take(field, text, from, last);
        MarkAll(from, last);
    }

    /// <summary>The half by the word nearest to it in its clause; empty where none says.</summary>
    private string HalfAt(int i, string upper, string lower)
    {
        int up = FindMark(i, "m:upper", 0);
        int low = FindMark(i, "m:lower", 0);
        return up < 0 && low < 0 ? "" : low < 0 || (up >= 0 && Math.Abs(up - i) < Math.Abs(low - i)) ? upper : lower;
    }

    /// <summary>36/45, 45 x 45, "inside 36°, outside 45°" within a few words behind the size.</summary>
    private int AnglesFrom(int at, out int second)
    {
        int first = at;
        while (first < _items.Count && first < at + 5 && !_items[first].IsNumber)
        {
            first++;
        }

        second = first + 2;
        if (IsAngles(first))
        {
            return first;
        }

        while (second < _items.Count && second < first + 5 && !_items[second].IsNumber)
        {
            second++;
        }

        return second < _items.Count && IsAngleOf(first, "m:inside") && IsAngleOf(second, "m:outside") ? first : -1;
    }

    private bool IsAngleOf(int i, string side) => i > 0 && Free(i) && _items[i].Value is 36 or 45 && _items[i].Unit == "deg" && _items[i - 1].Is(side);

    /// <summary>"45 graden beide", "deux chanfreins à 45°", "both sides 45": the one angle behind the size that both of its faces have; -1 where none is.</summary>
    private int BothAngles(int at)
    {
        int angle = -1;
        bool both = false;
        for (int i = at; i < _items.Count && i < at + 8; i++)
        {
            if (_items[i].IsNumber)
            {
                if (angle >= 0 || !Free(i) || _items[i].Unit is not ("deg" or "") || _items[i].Value is not (36 or 45))
                {
                    return -1;
                }

                angle = i;
            }

            both |= WordLists.ScanBearingsBothAngles.Contains(_items[i].Text) || _items[i].IsFraction && _items[i].Is("m:cups") && WordLists.ScanBearingsBothAngles2.Contains(_items[i].Text)
                || (_items[i].Text is "chanfreins" or "chaflanes" or "smussi" or "fasen" or "chamfers" && i > 0 && _items[i - 1] is { Text: "deux" or "dos" or "due" or "zwei" or "two" or "both" });
            if (_items[i].Is("m:or") || _items[i].Is("m:not"))
            {
                return -1;
            }
        }

        return both ? angle : -1;
    }

    private bool IsAngles(int i) =>
        i >= 0 && i + 2 < _items.Count && Free(i) && _items[i].Value is 36 or 45 && (_items[i + 1].IsSign('/') || _items[i + 1].IsSign('x') || _items[i + 1].IsSign('-') || _items[i + 1].Is("m:and") || _items[i + 1].Text is "auf" or "op" or "by") && Free(i + 2) && _items[i + 2].Value is 36 or 45;

    /// <summary>6808, 6808 2RS: the number of a bearing, which says its size.</summary>
    private void NumberedBearings(string upper, string lower)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].Unit.Length > 0 || _items[i].Value < 1000 || _fields[upper].Read(_items[i].Text).Keys is not [string key])
            {
                continue;
            }

            string field = upper == lower ? upper : HalfAt(i, upper, lower);
            if (field.Length == 0)
            {
                Several(upper, [key], i, i, "the half is not said: upper or lower");
                continue;
            }

            Keep(field, key, i, i);
        }
    }

    /// <summary>The seals behind the number of a bearing: 2RS, ZZ.</summary>
    private bool IsSealOfBearing(int i) =>
        _items[i] is { Value: 1 or 2, Unit: "" } && i + 1 < _items.Count && _items[i + 1] is { Glued: true, Text: "rs" or "z" or "rsr" or "rz" or "zz" or "rsh" or "rd" };

    /// <summary>"ID 30.15, OD 41, H 6.5, 36x45": of a bearing three lengths are said, and each is the only one of its kind.</summary>
    private void BearingByFigures(string field)
    {
        // "ID 30.5 H 8": a bearing has no holes, and the letter is that of the height behind it.
        List<int> lengths = [];
        int angles = -1;
        int other = 0;
        for (int i = 0; i < _items.Count && lengths.Count < 4; i++)
        {
            if (angles < 0 && IsAngleOf(i, "m:inside") && AnglesFrom(i, out other) == i)
            {
                angles = i;
                i = other;
                continue;
            }

            if (IsAngles(i) && angles < 0 && (lengths.Count > 0 || HasMark(i, "n:angle") || _items[i + 2].Unit == "deg"))
            {
                (angles, other) = (i, i + 2);
                i += 2;
            }
            else if (Free(i) && (_items[i].IsMillimetre || _items[i].Unit == "holes") && !_items[i].IsFraction && !IsSealOfBearing(i))
            {
                lengths.Add(i);
            }
        }

        if (lengths.Count != 3)
        {
            return;
        }

        int[] sorted = [.. lengths.OrderBy(i => _items[i].Value)];
        if (!IsBearing(_items[sorted[1]].Value, _items[sorted[2]].Value, _items[sorted[0]].Value) || HasOtherRole(sorted[1], "m:outside", "m:inside") || HasOtherRole(sorted[2], "m:inside", "m:outside"))
        {
            return;
        }

        (int first, int last) = (angles < 0 ? lengths.Min() : Math.Min(angles, lengths.Min()), Math.Max(lengths.Max(), angles < 0 ? 0 : other));
        string text = $"{_items[sorted[1]].Text}x{_items[sorted[2]].Text}x{_items[sorted[0]].Text}" + (angles >= 0 ? $"-{_items[angles].Text}/{_items[other].Text}" : Anywhere("m:radial") >= 0 ? "-radial" : "");
        Take(field, text, first, last);
        MarkAll(first, last);
    }

    /// <summary>The word against a figure says the other side than the one it would be read for.</summary>
    private bool HasOtherRole(int i, string other, string own) =>
        (i > 0 && _items[i - 1].Is(other) && !(i + 1 < _items.Count && _items[i + 1].Is(own))) || (i + 1 < _items.Count && _items[i + 1].Is(other) && !(i > 0 && _items[i - 1].Is(own)));
}
