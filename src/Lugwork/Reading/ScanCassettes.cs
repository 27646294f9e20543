using System.Globalization;

namespace Lugwork.Reading;

/// <summary>Freehub bodies and cassettes.</summary>
internal sealed partial class LineScan
{
    private void ReadBody()
    {
        Words("FreehubBody", "body");
        ReadTrackThread();
        ReadBodyByWords();
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
        int around = ItemsShort ? 3 : 1;
        bool road = FindMark(hg, "m:road", around) >= 0;
        bool off = FindMark(hg, "m:offroad", around) >= 0;
        first = Math.Min(first < 0 ? hg : first, hg);
        last = Math.Max(last, hg);
        string key = speeds switch
        {
            [] => BodyByLength(ref first, ref last),
            [7] => "HG-S",
            _ when speeds.Count > 0 && speeds.TrueForAll(s => s is 8 or 9 or 10) && (speeds.Contains(8) || speeds.Contains(9)) => "HG-M",
            [11] when road && !off => "HG-L",
            _ when road && !off && speeds.Contains(11) && speeds.TrueForAll(s => s is >= 8 and <= 11) => "HG-L",
            [12] when road && !off => "HG-L2",
            [10] when IsOnly(first, last) => "HG-10only",
            _ => "",
        };
        if (key.Length > 0)
        {
            Keep("body", key, first, last);
            for (int i = first; i <= last; i++)
            {
                if (_items[i].Is("m:or") || _items[i].Is("m:and"))
                {
                    _joined.Add(i);
                }
            }
        }
        else
        {
            Several("body", speeds.Count == 1 && speeds[0] == 10 ? ["HG-M", "HG-10only"] : ["HG-S", "HG-M", "HG-L", "HG-L2"], first, last, "bodies of this name differ in length or splines");
        }
    }

    /// <summary>"10-speed only", "nur 10-fach": a word right before or behind the figure that rules the others out, and that is of nothing else.</summary>
    private bool IsOnly(int first, int last)
    {
        int figure = first;
        while (figure < last && !(_items[figure].IsNumber && _items[figure].Value == 10))
        {
            figure++;
        }

        int before = figure - 1;
        before -= before > 0 && _items[before].Text is "for" or "fur" or "pour" or "para" or "per" or "voor" ? 1 : 0;
        if (before >= 0 && _items[before].Clause == _items[figure].Clause && ExcludesOthers(_items[before].Text) && _items[figure].Unit == "speed")
        {
            return true;
        }

        int behind = figure + 1;
        behind += behind < _items.Count && _items[behind].IsSign('-') && _items[behind].Glued ? 1 : 0;
        if (behind >= _items.Count || _items[behind].Clause != _items[figure].Clause || !ExcludesOthers(_items[behind].Text))
        {
            return false;
        }

        return behind + 1 >= _items.Count || _items[behind + 1].Kind == SpecTokenKind.Sign || _items[behind + 1].Is("t:freehub") || _items[behind + 1].Is("m:hg");
    }

    private static bool ExcludesOthers(string word) =>
        WordLists.ScanCassettesExcludesOthers.Contains(word);

    private void ReadCassette()
    {
        NumberSprockets();
        Words("SpeedClass", "speeds");
        ReadWheelThreadOf("thread");
        if (_items.Exists(i => i.Is("v:CassettePattern=fixed-sprocket") || i.Is("v:CassettePattern=3-lug") || i.Is("v:FreehubBody=IGH-3lug") || i.Is("m:single")))
        {
            TakeSingleWidth("speeds");
            if (Anywhere("v:FreehubBody=IGH-3lug") is >= 0 and int lugs)
            {
                Keep("pattern", "3-lug", lugs, lugs);
            }
        }

        int hg = Anywhere("m:hg");
        int spline = Anywhere("m:eightspline");
        int at = _items.FindIndex(i => i.Is("v:FreehubBody=XD") || i.Is("v:FreehubBody=XDR") || i.Is("v:FreehubBody=MS"));
        int anchor = hg >= 0 ? hg : spline >= 0 ? spline : at;
        if (anchor < 0)
        {
            Words("CassettePattern", "pattern");
            TakeSpeeds("speeds");
            ThirteenOnNarrow();
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
                if (speed > 0 && key[0] == 'X' && _fields["speeds"].Read(speed.ToString(CultureInfo.InvariantCulture)).Keys is [string count])
                {
                    // The splines alone do not say of how many sprockets it is.
                    Keep("speeds", count, first, last);
                }
            }
            else
            {
                Refuse("pattern", first, last, "no cassette of these splines has this number of sprockets");
            }

            return;
        }

        int around = ItemsShort ? 3 : 1;
        int offroad = FindMark(anchor, "m:offroad", around);
        int onroad = FindMark(anchor, "m:road", around);
        if (offroad >= 0 && onroad >= 0)
        {
            Several("pattern", [], Math.Min(offroad, onroad), Math.Max(offroad, onroad), "two uses are named, and the patterns differ");
            return;
        }

        string use = offroad >= 0 || FindMark(anchor, "m:wide", 1) >= 0 ? " off-road" : onroad >= 0 || FindMark(anchor, "m:close", 1) >= 0 ? " road" : "";
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

        if (speed == 12 && hg >= 0 && offroad >= 0 && Anywhere("t:freehub") >= 0 && !(hg + 1 < _items.Count && _items[hg + 1].IsSign('+')))
        {
            // Off-road cassettes of twelve for the common body are of one pattern.
            Keep("pattern", "HG-12-fit", first, last);
            return;
        }

        bool good = _fields["pattern"].Read($"{speed}-speed {splines}{use}{old}") is { Keys.Length: > 0 };
        Take("pattern", good ? $"{speed}-speed {splines}{use}{old}" : $"{speed}-speed {splines}", first, last);
    }

    /// <summary>Thirteen sprockets for the body that only they are made for.</summary>
    private void ThirteenOnNarrow()
    {
        if (Anywhere("v:FreehubBody=N3W") is >= 0 and int body && _items.FindAll(i => i.Unit == "speed") is [{ Value: 13 } thirteen])
        {
            int at = _items.IndexOf(thirteen);
            Keep("pattern", "8-spline-13", Math.Min(body, at), Math.Max(body, at));
        }
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
}
