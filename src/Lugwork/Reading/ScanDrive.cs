using System.Globalization;

namespace Lugwork.Reading;

/// <summary>Freehubs, cassettes, chains, derailleurs, shifters, cranks and rings.</summary>
internal sealed partial class LineScan
{
    /// <summary>The speeds that a line names, each once, and where: "11-speed", "8/9/10", "9v". A number of gears beyond 13 is kept, so that it is refused.</summary>
    private List<int> Speeds(out int first, out int last)
    {
        List<int> speeds = [];
        first = -1;
        last = -1;
        for (int i = 0; i < _items.Count && speeds.Count < 12; i++)
        {
            bool plain = Free(i) && !_items[i].IsFraction && _items[i].Value == decimal.Truncate(_items[i].Value) && _items[i].Value is >= 1 and < 100;
            if (!plain || _items[i].Unit != "speed")
            {
                continue;
            }

            // Those that are joined to it by a slash or dash belong to it: 6/7/8-speed.
            int from = i;
            while (from >= 2 && (_items[from - 1].IsSign('/') || (_items[from - 1].IsSign('-') && _items[from - 1].Glued)) && Free(from - 2) && _items[from - 2].Value is >= 5 and <= 13 && _items[from - 2].Unit.Length == 0)
            {
                from -= 2;
            }

            if (i >= 2 && from == i && _items[i - 1].Is("m:or") && Free(i - 2))
            {
                from = i - 2;
            }

            // 2x11: the second is the number of sprockets.
            bool times = i >= 2 && _items[i - 1].IsSign('x') && Free(i - 2) && _items[i - 2].Value is 1 or 2 or 3;
            for (int j = times ? i : from; j <= i; j += 2)
            {
                speeds.Add((int)_items[j].Value);
            }

            first = first < 0 ? from : first;
            last = i;
            MarkAll(from, i);
        }

        if (speeds.Count == 0)
        {
            for (int i = 0; i < _items.Count; i++)
            {
                if (Pair(i, out int second) && !InTriple(i) && _items[i].Value is 1 or 2 or 3 && Free(i) && Free(second) && _items[second].Value is >= 5 and <= 13 && !_items[second].IsFraction && !_items[i].IsFraction && _items[second].Unit is "" && _items[second].Value == decimal.Truncate(_items[second].Value))
                {
                    speeds.Add((int)_items[second].Value);
                    (first, last) = (i, second);
                    MarkAll(i, second);
                    break;
                }
            }
        }

        return speeds;
    }

    /// <summary>One class of speeds for a field, or several: the readings.</summary>
    private bool TakeSpeeds(string field)
    {
        List<int> speeds = Speeds(out int first, out int last);
        if (speeds.Count == 0)
        {
            return false;
        }

        SpecField known = _fields[field];
        SortedSet<string> keys = new(StringComparer.Ordinal);
        foreach (int speed in speeds)
        {
            FieldReading reading = known.Read(speed.ToString(CultureInfo.InvariantCulture));
            if (reading.Keys is not [string key] || speed < 5)
            {
                Refuse(field, first, last, "no such number of sprockets is listed; the number of gears is another one");
                return false;
            }

            keys.Add(key);
        }

        if (keys.Count == 1)
        {
            Keep(field, keys.Min!, first, last);
            return true;
        }

        Several(field, [.. keys], first, last, "several numbers of speeds are named");
        return false;
    }

    private void ReadBody()
    {
        Words("FreehubBody", "body");
        ReadTrackThread();
        int hg = Anywhere("m:hg");
        if (hg < 0)
        {
            int speedOnly = _items.FindIndex(i => i.Unit == "speed" && !i.Used);
            if (speedOnly >= 0 && !Values.ContainsKey("body") && Values.Count == 0 && !Clause(speedOnly, "t:thread"))
            {
                Several("body", ["HG-M", "HG-L", "XD"], speedOnly, speedOnly, "the number of speeds alone says no freehub body");
            }

            return;
        }

        List<int> speeds = NumbersOfSpeeds(hg, out int first, out int last);
        bool road = HasMark(hg, "m:road") || FindMark(hg, "m:road", 1) >= 0;
        bool off = HasMark(hg, "m:offroad");
        first = Math.Min(first < 0 ? hg : first, hg);
        last = Math.Max(last, hg);
        string key = speeds switch
        {
            [7] => "HG-S",
            _ when speeds.Count > 0 && speeds.TrueForAll(s => s is 8 or 9 or 10) && (speeds.Contains(8) || speeds.Contains(9)) => "HG-M",
            [11] when road && !off => "HG-L",
            [12] when road && !off => "HG-L2",
            _ => "",
        };
        if (key.Length > 0)
        {
            Keep("body", key, first, last);
        }
        else
        {
            Several("body", speeds.Count == 1 && speeds[0] == 10 ? ["HG-M", "HG-10only"] : ["HG-S", "HG-M", "HG-L", "HG-L2"], first, last, "bodies of this name differ in length or splines");
        }
    }

    private void ReadTrackThread()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (_items[i].Is("v:FreehubBody=TRACK"))
            {
                _items[i].Used = true;
            }
        }
    }

    /// <summary>Whole figures of 7 to 13 beside a mark, joined by slashes, dashes, commas or words of speed.</summary>
    private List<int> NumbersOfSpeeds(int mark, out int first, out int last)
    {
        List<int> speeds = [];
        first = -1;
        last = -1;
        for (int j = Math.Max(0, mark - Reach); j < _items.Count && j <= mark + Reach; j++)
        {
            bool near = Math.Abs(_items[j].Clause - _items[mark].Clause) <= (_items[j].Unit == "speed" ? 1 : 0);
            if (near && Free(j) && !_items[j].IsFraction && _items[j].Unit is "" or "speed" && Free(j) && _items[j].Value is >= 7 and <= 13 && _items[j].Value == decimal.Truncate(_items[j].Value)
                && !(j + 2 < _items.Count && _items[j + 1].IsSign('-') && _items[j + 2].IsNumber && _items[j + 2].Value > 13) && !(j + 1 < _items.Count && _items[j + 1].IsSign('x')))
            {
                speeds.Add((int)_items[j].Value);
                first = first < 0 ? j : first;
                last = j;
            }
        }

        if (speeds.Count > 0)
        {
            for (int j = first; j <= last; j++)
            {
                _items[j].Used |= _items[j].IsNumber && _items[j].Value is >= 7 and <= 13;
            }
        }

        return speeds;
    }

    private void ReadCassette()
    {
        ReadWheelThreadOf("thread");
        int hg = Anywhere("m:hg");
        int spline = Anywhere("m:eightspline");
        int at = _items.FindIndex(i => i.Is("v:FreehubBody=XD") || i.Is("v:FreehubBody=XDR") || i.Is("v:FreehubBody=MS"));
        int anchor = hg >= 0 ? hg : spline >= 0 ? spline : at;
        if (anchor < 0)
        {
            Words("CassettePattern", "pattern");
            TakeSpeeds("sprockets");
            return;
        }

        int also = _items.FindIndex(anchor + 1, i => (i.Is("v:FreehubBody=XD") || i.Is("v:FreehubBody=XDR") || i.Is("v:FreehubBody=MS") || i.Is("m:hg")) && !SameBody(i, _items[anchor]));
        if (also >= 0 && !Negated(also))
        {
            Several("pattern", [], anchor, also, "two kinds of splines are named");
            return;
        }

        List<int> speeds = Speeds(out int first, out int last);
        if (speeds.Count == 0)
        {
            speeds = NumbersOfSpeeds(anchor, out first, out last);
        }

        int distinct = speeds.Distinct().Count();
        first = Math.Min(first < 0 ? anchor : first, anchor);
        last = Math.Max(last, anchor);
        if (distinct > 1)
        {
            Several("pattern", [], first, last, "several numbers of speeds are named");
            return;
        }

        int speed = distinct == 1 ? speeds[0] : 0;
        if (hg < 0 && spline < 0)
        {
            (string key, int least, int most) = _items[at].Is("v:FreehubBody=MS") ? ("MS-12", 12, 12) : _items[at].Is("v:FreehubBody=XDR") ? ("XDR", 12, 12) : ("XD", 11, 12);
            if (speed == 0 || (speed >= least && speed <= most))
            {
                Keep("pattern", key, first, last);
            }
            else
            {
                Refuse("pattern", first, last, "no cassette of these splines has this number of sprockets");
            }

            return;
        }

        int offroad = FindMark(anchor, "m:offroad", 1);
        int onroad = FindMark(anchor, "m:road", 1);
        if (offroad >= 0 && onroad >= 0)
        {
            Several("pattern", [], Math.Min(offroad, onroad), Math.Max(offroad, onroad), "two uses are named, and the patterns differ");
            return;
        }

        string use = FindMark(anchor, "m:offroad", 1) >= 0 || FindMark(anchor, "m:wide", 1) >= 0 ? " off-road" : FindMark(anchor, "m:road", 1) >= 0 || FindMark(anchor, "m:close", 1) >= 0 ? " road" : "";
        string old = FindMark(anchor, "m:old", 1) >= 0 ? " old" : "";
        if (speed is 7 or 8 or 9)
        {
            use = "";
        }

        string splines = spline >= 0 ? "8-spline" : "HG";
        if (speed == 0)
        {
            Several("pattern", [], first, last, "the number of speeds is not said");
            return;
        }

        bool good = _fields["pattern"].Read($"{speed}-speed {splines}{use}{old}") is { Keys.Length: > 0 };
        Take("pattern", good ? $"{speed}-speed {splines}{use}{old}" : $"{speed}-speed {splines}", first, last);
    }

    private static bool SameBody(SpecItem a, SpecItem b) =>
        (a.Is("m:hg") && b.Is("m:hg")) || (a.Terms.Length > 0 && b.Terms.Contains(a.Terms[0]));

    private void ReadWheelThreadOf(string field)
    {
        for (int i = 0; i + 2 < _items.Count; i++)
        {
            if (Pair(i, out int second) && !_items[i].IsFraction && ((_items[second].Value == 24 && _items[i].Value is > 1.2m and < 1.5m) || (_items[i].Value is 34.7m or 30 && _items[second].Value == 1)))
            {
                Take(field, $"{_items[i].Text}x{_items[second].Text}", i, second);
            }
        }
    }

    private void ReadChain()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (Pair(i, out int second) && !InTriple(i) && _items[i].Value == 0.5m && _items[second].IsFraction)
            {
                ReadChainWidth(i, second);
            }
            else if (Free(i) && _items[i].IsFraction && _items[i].Text is "1/8" or "3/32" or "5/32" or "11/128" && Free(i) && !(i > 0 && _items[i - 1].IsSign('x')))
            {
                ReadChainWidth(i, i);
            }
        }

        Words("ChainSize", "size");
        bool said = Values.ContainsKey("size");
        string before = said ? Values["size"].Key : "";
        LineFinding? width = said ? Values["size"] : null;
        Values.Remove("size");
        bool speeds = TakeSpeeds("size");
        if (speeds && said && Values["size"].Key != before)
        {
            Refuse("size", 0, 0, "width and speeds of the chain do not go together");
        }
        else if (!speeds && width is not null)
        {
            Values["size"] = width;
        }

        if (speeds)
        {
            Settle("size");
        }
    }

    private void ReadChainWidth(int first, int last)
    {
        string text = _items[last].Text;
        if (text == "11/128")
        {
            Several("size", ["9", "10", "11"], first, last, "chains for 9, 10 and 11 speeds are sold under this width");
            return;
        }

        Take("size", text, first, last);
    }

    private void ReadFrontMount(string field, bool needTopic)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            bool context = !needTopic || Clause(i, "t:frontmech");
            if (Free(i) && _items[i].IsMillimetre && _items[i].Value is 28.6m or 31.8m or 34.9m or 35 && Free(i) && (TopicOf(i) is "t:frontmech" || (context && TopicOf(i) is "" or "t:clamp" or "t:seatclamp" or "t:tyre") || (HasMark(i, "m:band") && context)))
            {
                if (TopicOf(i) is "t:frontmech" && Link(i) is >= 0 and int link)
                {
                    _claimed[link] = true;
                }

                Take(field, _items[i].Value == 35 ? "34.9" : _items[i].Text, i, i, _items[i].Value == 35 ? "35 was taken as 34.9" : "");
            }
            else if (Free(i) && context && _items[i].IsFraction && HasMark(i, "m:band"))
            {
                Take(field, _items[i].Text + " in band", i, i);
            }
        }

        Words("FrontDerailleurMount", field, i => (!needTopic || Clause(i, "t:frontmech") || _items[i].IsFraction) && !Clause(i, "t:hanger") && !(needTopic && _items[i].Terms.Length > 0 && _items[i].Text is "s1" or "s2" or "s3" && !Clause(i, "t:frontmech")));
        Settle(field);
    }

    private void ReadRings()
    {
        ReadBoltCircle();
        if (_slot == Slot.Chainring)
        {
            ReadTeeth("teeth", largest: false);
        }
        else
        {
            ReadPedalThread("pedalThread", needTopic: true);
            ReadSpindle();
            ReadChainline();
            ReadTeeth("largestRing", largest: true);
            TakeSpeeds("rings");
        }

        Words("DirectMountRing", "directMount");
        Settle("directMount");
    }

    private void ReadTeeth(string field, bool largest)
    {
        int best = -1;
        int others = 0;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || _items[i].Value is < 20 or > 80 || _items[i].Value != decimal.Truncate(_items[i].Value) || _items[i].IsFraction)
            {
                continue;
            }

            bool teeth = _items[i].Unit == "teeth" || (i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].IsSign('-') || _items[i + 1].IsSign('x')) && _items[i + 2].IsNumber && (_items[i + 2].Unit == "teeth" || Chained(i + 2)));
            bool pair = largest && _items[i].Unit.Length == 0 && _items[i].Value >= 34 && i + 2 < _items.Count && (_items[i + 1].IsSign('/') || (_items[i + 1].IsSign('-') && _items[i + 1].Glued)) && Free(i + 2) && _items[i + 2].Unit.Length == 0 && _items[i + 2].Value >= 22 && _items[i].Value - _items[i + 2].Value >= 8 && TopicOf(i) is "" or "t:crank" or "t:chainring";
            if (pair)
            {
                _items[i + 2].Used = true;
            }

            bool ringed = pair || largest && _items[i].Unit.Length == 0 && TopicOf(i) is "t:chainring";
            if (!teeth && !ringed)
            {
                continue;
            }

            if (largest && _slot == Slot.Crankset && HasMark(i, "m:max"))
            {
                continue;
            }

            others += best >= 0 ? 1 : 0;
            best = best < 0 || _items[i].Value > _items[best].Value ? i : best;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            _items[i].Used |= _items[i].Unit == "teeth";
        }

        if (best >= 0 && (largest || others == 0))
        {
            Take(field, _items[best].Text, best, best);
        }
        else if (best >= 0)
        {
            Several(field, [], best, best, "several numbers of teeth are named");
        }
    }

    /// <summary>Another step of a list that ends in teeth: 50/34T, 42-32-24T.</summary>
    private bool Chained(int i) => i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].IsSign('-')) && _items[i + 2].IsNumber && _items[i + 2].Unit == "teeth";

    private void ReadBoltCircle()
    {
        bool said = false;
        for (int i = 0; i < _items.Count && !said; i++)
        {
            said = Free(i) && TopicOf(i) is "t:bcd" && _items[i].IsMillimetre && _items[i].Value is >= 50 and <= 160;
        }

        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].IsFraction || !_items[i].IsMillimetre || _items[i].Value is < 50 or > 160)
            {
                continue;
            }

            bool topic = TopicOf(i) is "t:bcd" || (!said && Clause(i, "t:bcd"));
            if (said && TopicOf(i) is not "t:bcd")
            {
                continue;
            }

            if (i + 2 < _items.Count && _items[i + 1].IsSign('/') && Free(i + 2) && _items[i + 2].Value is >= 50 and <= 160)
            {
                Several("boltCircle", [], i, i + 2, "two bolt circles are named");
                continue;
            }

            int arms = -1;
            if (i >= 2 && _items[i - 1].IsSign('x') && Free(i - 2) && _items[i - 2].Value is 3 or 4 or 5)
            {
                arms = i - 2;
            }
            else if (i + 2 < _items.Count && _items[i + 1].IsSign('x') && Free(i + 2) && _items[i + 2].Value is 3 or 4 or 5)
            {
                arms = i + 2;
            }
            else
            {
                for (int j = Math.Max(0, i - 8); j < _items.Count && j <= i + 8 && arms < 0; j++)
                {
                    arms = _items[j] is { IsNumber: true, Used: false, Unit: "arms" or "holes" } && _items[j].Value is 3 or 4 or 5 && Math.Abs(_items[j].Clause - _items[i].Clause) <= 1 ? j : -1;
                }
            }

            if (!topic && arms < 0)
            {
                continue;
            }

            // The length of the arms is no bolt circle.
            if (!topic && TopicOf(i) is not ("" or "t:crank" or "t:chainring"))
            {
                continue;
            }

            bool uneven = FindMark(i, "m:uneven", 1) >= 0;
            bool even = FindMark(i, "m:even", 1) >= 0;
            string text = arms < 0 ? _items[i].Text : $"{_items[arms].Text}x{_items[i].Text}";
            if (arms >= 0 && (uneven || even))
            {
                string named = text + (uneven ? "-uneven" : "-even");
                text = _fields["boltCircle"].Read(named).Keys.Length == 1 ? named : text;
            }

            Take("boltCircle", text, arms < 0 ? i : Math.Min(i, arms), Math.Max(i, arms));
        }
    }

    private void ReadChainline()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && TopicOf(i) is "t:chainline")
            {
                FieldReading reading = _fields["chainline"].Read(_items[i].Text);
                if (reading.Keys.Length > 1)
                {
                    Several("chainline", reading.Keys, i, i, "several uses have this chainline");
                }
                else if (reading.Keys.Length == 1)
                {
                    Take("chainline", _items[i].Text, i, i);
                }
                else
                {
                    _items[i].Used = true;
                }
            }
        }
    }
}
