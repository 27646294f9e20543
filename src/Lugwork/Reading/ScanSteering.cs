using Lugwork.Steering;

namespace Lugwork.Reading;

/// <summary>Headsets, head tubes, steerers and stems.</summary>
internal sealed partial class LineScan
{
    /// <summary>SHIS codes: of a headset with steerer and race, of a frame the bores alone.</summary>
    private void ReadCups()
    {
        List<(string Cup, decimal Size, int First, int Last)> found = [];
        for (int i = 0; i < _items.Count && found.Count < 8; i++)
        {
            if (_items[i].Kind != SpecTokenKind.Word || _items[i].Text is not ("ec" or "zs" or "is"))
            {
                continue;
            }

            int at = i + 1;
            at += at < _items.Count && _items[at].IsSign('-') && _items[at].Glued ? 1 : 0;
            bool number = Free(at) && _items[at].Value is >= 25 and <= 65;
            if (!number)
            {
                if (_items[i].Text != "is" && at < _items.Count)
                {
                    Refuse(_slot == Slot.Frame ? "headTubeUpper" : "upperCup", i, Math.Min(at, _items.Count - 1), "the code of a cup is broken off or has no such bore");
                }

                continue;
            }

            int last = at;
            decimal size = 0;
            if (at + 2 < _items.Count && _items[at + 1].IsSign('/') && Free(at + 2))
            {
                last = at + 2;
                size = _items[last].Value;
            }

            string cup = _items[i].Text.ToUpperInvariant() + _items[at].Text;
            if (HeadsetCup.Find(cup) is null)
            {
                Refuse(_slot == Slot.Frame ? "headTubeUpper" : "upperCup", i, last, "no cup has this bore");
                continue;
            }

            MarkAll(i, last);
            found.Add((cup, size, i, last));
        }

        if (found.Count > 0)
        {
            TakeCups(found);
        }
    }

    private void MarkAll(int from, int to)
    {
        for (int i = from; i <= to; i++)
        {
            _items[i].Used = true;
        }
    }

    private void TakeCups(List<(string Cup, decimal Size, int First, int Last)> found)
    {
        bool frame = _slot == Slot.Frame;
        (string upperField, string lowerField) = frame ? ("headTubeUpper", "headTubeLower") : ("upperCup", "lowerCup");
        if (found.Count > 2)
        {
            Refuse(upperField, found[0].First, found[^1].Last, "there are more than two halves");
            return;
        }

        int[] halves = new int[found.Count];
        for (int k = 0; k < found.Count; k++)
        {
            halves[k] = HalfOf(found, k);
        }

        if (found.Count == 2 && halves[0] == halves[1])
        {
            if (halves[0] != 0)
            {
                Refuse(upperField, found[0].First, found[1].Last, "both halves are said to be the same one");
                return;
            }

            (halves[0], halves[1]) = (1, 2);
        }
        else if (found.Count == 2)
        {
            halves[0] = halves[0] == 0 ? 3 - halves[1] : halves[0];
            halves[1] = halves[1] == 0 ? 3 - halves[0] : halves[1];
        }

        for (int k = 0; k < found.Count; k++)
        {
            (string cup, decimal size, int first, int last) = found[k];
            bool both = found.Count == 1 && FindMark(first, "m:cups", 1) >= 0;
            if (both)
            {
                Take(upperField, cup, first, first + 1);
                Take(lowerField, cup, first, first + 1);
                continue;
            }

            if (halves[k] == 0 && size > 0 && !frame)
            {
                halves[k] = _fields["steerer"].Read(ItemCutter.Plain(size)).Keys.Length == 1 ? 1 : 2;
            }

            if (halves[k] == 0)
            {
                Several(upperField, [cup], first, last, "the half is not said: upper or lower");
                continue;
            }

            Take(halves[k] == 1 ? upperField : lowerField, cup, first, last);
            if (size > 0 && !frame)
            {
                Take(halves[k] == 1 ? "steerer" : "crownRace", ItemCutter.Plain(size), last, last);
            }
        }
    }

    /// <summary>1 upper, 2 lower, 0 where no word beside it says.</summary>
    private int HalfOf(List<(string Cup, decimal Size, int First, int Last)> found, int k)
    {
        (_, _, int first, int last) = found[k];
        int from = k > 0 ? found[k - 1].Last + 1 : Math.Max(0, first - 5);
        int to = k + 1 < found.Count ? found[k + 1].First - 1 : Math.Min(_items.Count - 1, last + 5);

        // "IS42 upper, IS52 lower": the words stand behind the codes where one stands behind the last.
        bool behind = false;
        for (int j = found[^1].Last + 1; j < _items.Count && j <= found[^1].Last + 3 && !behind; j++)
        {
            behind = _items[j].Is("m:upper") || _items[j].Is("m:lower");
        }

        for (int step = 1; step <= 5; step++)
        {
            foreach (int j in behind ? (ReadOnlySpan<int>)[last + step] : [first - step, last + step])
            {
                bool before = j < first;
                if (j < from || j > to || _items[j].Clause != _items[before ? first : last].Clause)
                {
                    continue;
                }

                if (_items[j].Is("m:upper") || _items[j].Is("m:lower"))
                {
                    return _items[j].Is("m:upper") ? 1 : 2;
                }
            }
        }

        return 0;
    }

    private void ReadHeadset()
    {
        ReadBearings("upperBearing", "lowerBearing");
        ReadCups();
        Words("SteererKind", "kind");
        ReadKind("kind");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i))
            {
                continue;
            }

            string topic = TopicOf(i);
            if (topic is "t:crownrace")
            {
                _claimed[Link(i)] = true;
                Take("crownRace", _items[i].Figure, i, i);
            }
            else if ((IsSteererInch(i) && topic is "" or "t:headset" or "t:steerer") || (topic is "t:steerer" && Free(i) && _items[i].IsMillimetre))
            {
                Take("steerer", _items[i].IsMillimetre && !_items[i].IsFraction ? _items[i].Text : Inches(i), i, i);
            }
        }
    }

    private bool IsSteererInch(int i) => Free(i) && (_items[i].IsInch || _items[i].IsFraction) && _items[i].Value is >= 0.8m and <= 1.9m;

    /// <summary>A figure of inches as the readers of steerers take it.</summary>
    private string Inches(int i) => InchName(_items[i].Value) + " in";

    private static string InchName(decimal value) => value switch
    {
        0.875m => "7/8",
        1m => "1",
        1.125m => "1-1/8",
        1.25m => "1-1/4",
        1.375m => "1-3/8",
        1.5m => "1.5",
        _ => ItemCutter.Plain(value),
    };

    private void ReadKind(string field)
    {
        int threadless = Anywhere("m:threadless");
        int threaded = Anywhere("m:threaded");
        if (threadless >= 0)
        {
            Keep(field, "threadless", threadless, threadless);
        }

        if (threaded >= 0)
        {
            Keep(field, "threaded", threaded, threaded);
        }
    }

    private void ReadCrownSeat()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && TopicOf(i) == "t:crownrace")
            {
                _claimed[Link(i)] = true;
                Take("crownSeat", _items[i].Figure, i, i);
            }
        }
    }

    /// <summary>The sizes of a fork's steerer: one, or a taper from one to another.</summary>
    private void ReadSteerer()
    {
        ReadKind("steererKind");
        List<(string Size, int At)> sizes = [];
        for (int i = 0; i < _items.Count && sizes.Count < 8; i++)
        {
            if (!Free(i))
            {
                continue;
            }

            string topic = Link(i) is >= 0 and int link && _items[link].Clause == _items[i].Clause ? TopicIn(_items[link]) : "";
            bool steerer = topic == "t:steerer" || TopicOf(i) == "t:steerer" || Clause(i, "t:steerer") || HasMark(i, "m:tapered") || HasMark(i, "m:straight") || HasMark(i, "m:threaded") || HasMark(i, "m:threadless");
            bool follows = sizes.Count > 0 && i - sizes[^1].At <= 3 && _items[i].Value is 1m or 1.125m or 1.25m or 1.375m or 1.5m or 1.8m;
            if (_items[i].IsFraction || _items[i].IsInch || ((steerer || follows) && _items[i].Unit.Length == 0 && _items[i].Value < 2))
            {
                if (_items[i].Value >= 2.5m)
                {
                    if (steerer && topic == "t:steerer")
                    {
                        Refuse("steerer", i, i, "no steerer has this diameter");
                    }

                    continue;
                }

                if (topic is "" or "t:steerer" or "t:fork" || steerer || follows)
                {
                    sizes.Add((InchName(_items[i].Value), i));
                }
            }
            else if (_items[i].IsMillimetre && steerer && MetricSteerer(_items[i].Value) is { } name)
            {
                sizes.Add((name, i));
            }
        }

        if (sizes.Count > 0)
        {
            TakeSteerer(sizes);
        }
        else if (Anywhere("m:tapered") is >= 0 and int tapered)
        {
            Several("steererShape", ["tapered-1-1/8-1-1/4", "tapered-1-1/8-1.5"], tapered, tapered, "the sizes of the taper are not said");
        }
    }

    private static string? MetricSteerer(decimal value) => value switch
    {
        22.2m => null,
        25.4m => "1",
        28.6m => "1-1/8",
        31.8m => "1-1/4",
        38.1m => "1.5",
        34.9m => "1-3/8",
        _ => null,
    };

    private void TakeSteerer(List<(string Size, int At)> sizes)
    {
        int first = sizes[0].At;
        int last = sizes[^1].At;
        for (int i = first; i <= last && i < first + 40; i++)
        {
            if (_items[i].Is("m:or") && sizes.Count > 1)
            {
                Several("steererShape", [.. sizes.Select(s => s.Size)], first, last, "the line offers several steerers");
                return;
            }
        }

        bool tapered = HasMark(first, "m:tapered") || HasMark(last, "m:tapered");
        bool straight = HasMark(first, "m:straight") || HasMark(last, "m:straight");
        int distinct = sizes.Select(s => s.Size).Distinct(StringComparer.Ordinal).Count();
        if (distinct == 2 && sizes.Count == 2 && !straight)
        {
            (string a, string b) = string.CompareOrdinal(Order(sizes[0].Size), Order(sizes[1].Size)) < 0 ? (sizes[0].Size, sizes[1].Size) : (sizes[1].Size, sizes[0].Size);
            Take("steererShape", $"tapered {a} to {b}", first, last);
        }
        else if (distinct > 1 || (tapered && straight))
        {
            Refuse("steererShape", first, last, "the sizes do not go together");
        }
        else if (tapered)
        {
            Several("steererShape", [.. SteererShape.All.Where(s => s.FitKey.StartsWith("tapered", StringComparison.Ordinal) && s.FitKey.Contains(sizes[0].Size, StringComparison.Ordinal)).Select(s => s.FitKey)], first, last, "only one end of the taper is said");
        }
        else if (straight)
        {
            Take("steererShape", "straight " + sizes[0].Size, first, last);
        }
        else
        {
            Take("steerer", sizes[0].Size + " in", first, last);
        }
    }

    private static string Order(string size) => size switch { "1" => "a", "1-1/8" => "b", "1-1/4" => "c", "1-3/8" => "d", "1.5" => "e", _ => "f" };

    /// <summary>A bearing: bore, outside and height, with its two angles where they are said.</summary>
    private void ReadBearings(string upper, string lower)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Triple(i))
            {
                continue;
            }

            (decimal a, decimal b) = (_items[i].Value, _items[i + 2].Value);
            string text = $"{ItemCutter.Plain(Math.Min(a, b))}x{ItemCutter.Plain(Math.Max(a, b))}x{_items[i + 4].Text}";
            int last = i + 4;
            int first = last + 1;
            while (first < _items.Count && first < last + 4 && !_items[first].IsNumber)
            {
                first++;
            }

            if (first + 2 < _items.Count && Free(first) && _items[first].Value is 36 or 45 && (_items[first + 1].IsSign('/') || _items[first + 1].IsSign('x') || _items[first + 1].IsSign('-')) && Free(first + 2) && _items[first + 2].Value is 36 or 45)
            {
                text += $"-{_items[first].Text}/{_items[first + 2].Text}";
                last = first + 2;
            }

            string field = upper == lower ? upper : HasMark(i, "m:lower") ? lower : upper;
            if (upper != lower && !HasMark(i, "m:lower") && !HasMark(i, "m:upper"))
            {
                Several(upper, [], i, last, "the half is not said: upper or lower");
                continue;
            }

            Take(field, text, i, last);
        }
    }

    /// <summary>A stem has a clamp at either end: each figure is told by its word, by its list, or as the one that is left.</summary>
    private void ReadStem()
    {
        Words("UseCategory", "use");
        List<int> bare = [];
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].Unit is not ("" or "mm" or "in"))
            {
                continue;
            }

            bool inch = _items[i].IsFraction || _items[i].IsInch;
            if (!inch && _items[i].Value is < 20 or > 41)
            {
                continue;
            }

            string topic = TopicOf(i);
            bool quill = HasMark(i, "m:quill") && FindMark(i, "m:quill", 0) is int q && (q < i ? !Claimed(q, i) : true) && topic is not "t:bar";
            if (quill)
            {
                Take("fixing", (inch ? InchName(_items[i].Value) + " in" : _items[i].Value == 22 ? "22.0" : _items[i].Text) + " quill", i, i);
                if (FindMark(i, "m:quill", 0) is >= 0 and int mark)
                {
                    _claimed[mark] = true;
                }
            }
            else if (topic is "t:steerer" or "t:headset" or "t:headtube" or "t:fork" || (Link(i) is > 0 and int at && _items[at - 1].Start == _items[at].Start && _items[at - 1].Is("t:steerer")))
            {
                _claimed[Link(i)] = true;
                Fixing(i, inch);
            }
            else if (topic is "t:bar" or "t:clamp" || (Link(i) >= 0 && _items[Link(i)].Is("t:bar")))
            {
                _claimed[Link(i)] = true;
                Take("bar", inch ? InchName(_items[i].Value) + " in" : _items[i].Text, i, i);
            }
            else if (topic is "" or "t:stem")
            {
                bare.Add(i);
            }
        }

        BareStem(bare);
    }

    private void Fixing(int i, bool inch) => Take("fixing", inch ? "clamp " + InchName(_items[i].Value) : ItemCutter.Plain(_items[i].Value) + " clamp", i, i);

    private void BareStem(List<int> bare)
    {
        foreach (int i in bare)
        {
            bool inch = _items[i].IsFraction || _items[i].IsInch;
            if ((inch && _items[i].Value == 1.125m) || _items[i].Value == 28.6m)
            {
                Fixing(i, inch);
            }
        }

        foreach (int i in bare)
        {
            if (_items[i].Used)
            {
                continue;
            }

            bool inch = _items[i].IsFraction || _items[i].IsInch;
            string text = inch ? InchName(_items[i].Value) + " in" : _items[i].Text;
            bool bar = _fields["bar"].Read(text).Keys.Length == 1;
            bool foot = inch || _items[i].Value is 25.4m or 28.6m or 31.8m or 38.1m or 22.2m or 22 or 21.15m or 21.1m;
            if (inch && _items[i].Value != 1.125m && _items[i].Value != 1m)
            {
                Several("bar", [text], i, i, "the figure can be the bar or the steerer");
            }
            else if (Values.ContainsKey("fixing") && bar)
            {
                Take("bar", text, i, i);
            }
            else if (Values.ContainsKey("bar") && foot)
            {
                Fixing(i, inch);
            }
            else if (bar && !foot)
            {
                Take("bar", text, i, i);
            }
            else if (bar || foot)
            {
                Several("bar", [text], i, i, "the figure can be the bar, a clamp round a steerer or a quill");
            }
        }
    }
}
