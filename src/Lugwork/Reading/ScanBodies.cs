namespace Lugwork.Reading;

/// <summary>Freehub bodies that are told by what they do or measure, and hubs with a thread.</summary>
internal sealed partial class LineScan
{
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

    /// <summary>"Track hub with lockring thread", "short body for one sprocket", "threaded for a freewheel": where no body is named by its name.</summary>
    private void ReadBodyByWords()
    {
        ReadNamedThread();
        if (Values.ContainsKey("body") || Doubts.Exists(d => d.Field == "body") || Anywhere("m:hg") >= 0)
        {
            return;
        }

        if (Anywhere("m:eightspline") is >= 0 and int splines)
        {
            List<int> speeds = NumbersOfSpeeds(splines, out int first, out int last);
            string old = speeds.Count == 0 ? "" : speeds.TrueForAll(s => s is 7 or 8) ? "C8-old" : speeds.TrueForAll(s => s is >= 9 and <= 12) ? "C9-12" : "";
            if (old.Length > 0)
            {
                Keep("body", old, Math.Min(first, splines), Math.Max(last, splines));
                for (int i = first; i <= last; i++)
                {
                    if (_items[i].Is("m:or") || _items[i].Is("m:and"))
                    {
                        _joined.Add(i);
                    }
                }
            }

            return;
        }

        int lockring = Anywhere("m:lockringthread");
        int fixedHub = Anywhere("m:fixedhub") is >= 0 and int named ? named : Anywhere("v:CassettePattern=fixed-sprocket") is >= 0 and int sprocketOfHub && !_items.Exists(o => IsFreewheel(o) || o.Text is "flip" or "flop" or "flipflop") ? sprocketOfHub : Anywhere("t:hub") >= 0 ? Anywhere("m:track") : -1;
        int body = Anywhere("t:freehub");
        if (lockring >= 0 && fixedHub >= 0 && Anywhere("v:RotorFixing=center-lock") < 0)
        {
            Together("TRACK", lockring, fixedHub);
        }
        else if (body >= 0 && Anywhere("m:bmx") is >= 0 and int bmx && _items[body].Text is "driver" or "mitnehmer" or "antreiber" or "entraineur" or "arrastre" or "trascinatore" or "meenemer")
        {
            Together("BMX-driver", body, bmx);
        }
        else if (body >= 0 && Anywhere("m:threelug") is >= 0 and int lugs)
        {
            Together("IGH-3lug", body, lugs);
        }
        else if (body >= 0 && Anywhere("m:single") is >= 0 and int single && _items[single].Clause == _items[body].Clause && Anywhere("m:bmx") < 0)
        {
            Together("SS-short", body, single);
        }
        else if (body >= 0 && Anywhere("m:onesprocket") is >= 0 and int sprocket && Math.Abs(_items[sprocket].Clause - _items[body].Clause) <= 1 && Anywhere("m:bmx") < 0 && _items[body].Text is not ("driver" or "mitnehmer" or "antreiber" or "entraineur" or "arrastre" or "trascinatore" or "meenemer"))
        {
            Together("SS-short", body, sprocket);
        }
        else if (Anywhere("v:CassettePattern=3-lug") is >= 0 and int three)
        {
            Keep("body", "IGH-3lug", three, three);
        }
        else if (!Values.ContainsKey("thread") && (body < 0 || _items[body].Text is "roue" or "rueda" or "ruota") && !IsOfEngagement() && Freewheel() is >= 0 and int screwed)
        {
            Keep("body", "FW-thread", screwed, screwed);
        }
    }

    private void Together(string key, int one, int other) => Keep("body", key, Math.Min(one, other), Math.Max(one, other));

    /// <summary>A phrase that says that a freewheel is screwed on; the bare word is of any freewheel.</summary>
    private int Freewheel()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (_items[i].Is("v:CassettePattern=freewheel") && !Negated(i) && ((_items[i].IsFraction && !IsAnyFreewheel(_items[i])) || _items[i].Text.StartsWith("schraub", StringComparison.Ordinal) || _items[i].Text.StartsWith("schroef", StringComparison.Ordinal) || Clause(i, "t:thread") || HasMark(i, "m:threaded")))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>"Ruota libera", "rueda libre": what runs free, of a freehub as well as of a freewheel.</summary>
    private static bool IsAnyFreewheel(SpecItem item) => (item.Text == "ruota" && item.End - item.Start == "ruota libera".Length) || (item.Text == "rueda" && item.End - item.Start == "rueda libre".Length);

    /// <summary>"Screw-on freewheel, ISO thread": the thread by its name. "English" is several.</summary>
    private void ReadNamedThread()
    {
        if (Values.ContainsKey("thread") || !_items.Exists(IsFreewheel))
        {
            return;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            bool beside = (i + 1 < _items.Count && (_items[i + 1].Is("t:thread") || IsFreewheel(_items[i + 1]))) || (i > 0 && (_items[i - 1].Is("t:thread") || IsFreewheel(_items[i - 1])))
                || (i > 1 && _items[i - 1].IsSign(':') && IsFreewheel(_items[i - 2]));
            if (beside && _items[i].Text is "iso" or "bsa" or "bsc" && !Negated(i) && !(i + 1 < _items.Count && _items[i + 1].IsNumber))
            {
                Take("thread", "ISO", i, i);
            }
            else if ((_items[i].IsFraction || (beside && _items[i].Terms.Length == 1)) && _items[i].Text != "iso" && (_items[i].Is("v:ShellFamily=Italian") || _items[i].Is("v:ShellFamily=French")) && !Negated(i))
            {
                Take("thread", _items[i].Is("v:ShellFamily=French") ? "French" : "Italian", i, i);
            }
        }
    }

    /// <summary>"Ruota libera a innesto rapido": how the pawls engage, of any body that runs free.</summary>
    private bool IsOfEngagement() =>
        _items.Exists(o => o.Is("n:engagement") || (o.Kind == SpecTokenKind.Word && WordLists.ScanBodiesIsOfEngagement.Contains(o.Text)));

    private static bool IsFreewheel(SpecItem item) => item.Is("v:CassettePattern=freewheel") || item.Is("v:FreehubBody=FW-thread");

    /// <summary>An HG body of which the length is said instead of the speeds: 34.9 or 36.75 mm.</summary>
    private string BodyByLength(ref int first, ref int last)
    {
        int found = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && (_items[i].Unit == "mm" || _items[i] is { Unit: "", Value: 36.75m or 34.95m }) && _items[i].Value is 31 or (>= 34.9m and <= 35m) or (>= 36.7m and <= 36.8m) && !Joins(i) && TopicOf(i) is "" or "t:length" or "t:freehub" or "n:width")
            {
                if (found >= 0)
                {
                    return "";
                }

                found = i;
            }
        }

        if (found < 0)
        {
            return "";
        }

        (first, last) = (Math.Min(first, found), Math.Max(last, found));
        _items[found].Used = true;
        return _items[found].Value < 32 ? "HG-S" : _items[found].Value < 36 ? "HG-M" : "HG-L";
    }
}
