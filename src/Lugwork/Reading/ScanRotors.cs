namespace Lugwork.Reading;

/// <summary>Rotors and calipers.</summary>
internal sealed partial class LineScan
{
    private void ReadCaliper()
    {
        foreach (string mark in new[] { "m:pm", "m:fm", "m:is" })
        {
            if (Anywhere(mark) is >= 0 and int at && (mark != "m:is" || _items[at].End - _items[at].Start > 2 || Clause(at, "t:caliper") || Clause(at, "t:brake") || HasMark(at, "m:is")))
            {
                Keep("mounting", mark switch { "m:pm" => "post", "m:fm" => "flat", _ => "IS" }, at, at);
            }
        }

        Words("BrakeType", "type", i => _items[i].Is("v:BrakeType=disc-hydraulic") || _items[i].Is("v:BrakeType=disc-cable-road") || _items[i].Is("v:BrakeType=disc-cable-off-road") || _items[i].Is("v:BrakeType=disc-cable-hydraulic"));
        Words("BrakeFluid", "fluid");
        CableDisc();
        for (int i = 1; i < _items.Count && Anywhere("m:increment") >= 0; i++)
        {
            if (_items[i - 1].IsSign('+') && _items[i].Glued && Free(i) && _items[i].IsMillimetre && Clause(i, "m:increment") && _fields["adapter"].Read("+" + _items[i].Text).Keys.Length == 1)
            {
                Take("adapter", "+" + _items[i].Text, i - 1, i);
            }
        }

        for (int i = 0; i < _items.Count && !Values.ContainsKey("type"); i++)
        {
            if (WordLists.ScanRotorsReadCaliper.Contains(_items[i].Text) && _items[i].Kind == SpecTokenKind.Word && !Negated(i) && !IsHalfHydraulic(i))
            {
                Keep("type", "disc-hydraulic", i, i);
            }
        }
    }

    /// <summary>A cable disc brake is for the levers of one use: the word for it has to be there.</summary>
    private void CableDisc()
    {
        int mechanical = Anywhere("m:mechanical");
        mechanical = mechanical < 0 && !_items.Exists(o => WordLists.ScanRotorsReadCaliper.Contains(o.Text)) ? Anywhere("v:ShiftSignal=cable") : mechanical;
        int road = Anywhere("m:road");
        int off = Anywhere("m:offroad");
        if (mechanical >= 0 && (road >= 0) != (off >= 0) && !Values.ContainsKey("type"))
        {
            int use = Math.Max(road, off);
            Keep("type", road >= 0 ? "disc-cable-road" : "disc-cable-off-road", Math.Min(mechanical, use), Math.Max(mechanical, use));
        }
    }

    /// <summary>"5 tornillos", "4-Loch": a disc of four or five bolts is one of the patterns before six.</summary>
    private void FourOrFiveBolts(string field)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && _items[i] is { Value: 4 or 5, IsFraction: false, Unit: "arms" or "holes" } && !IsArmWord(_items[i].UnitWord) && !Joins(i) && !Clause(i, "d:kit") && !(i > 0 && WordLists.ScanRotorsFourOrFiveBolts.Contains(_items[i - 1].Text)) && IsBesideDisc(i))
            {
                Keep(field, "old-bolt-pattern", i, i);
            }
        }
    }

    /// <summary>The word for a disc or its brake right beside a count of bolts, which may be any bolts elsewhere.</summary>
    private bool IsBesideDisc(int i)
    {
        int reach = i + 1 < _items.Count && _items[i + 1].Text is "hold" or "halten" or "tiennent" or "sujetan" or "tengono" or "houden" ? 4 : 2;
        for (int j = Math.Max(0, i - 2); j < _items.Count && j <= i + reach; j++)
        {
            if (_items[j].Clause == _items[i].Clause && (_items[j].Is("t:rotor") || _items[j].Is("t:brake")))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Arms of a carrier, which say nothing of its bolts.</summary>
    private static bool IsArmWord(string word) =>
        word.StartsWith("arm", StringComparison.Ordinal) || word.StartsWith("bra", StringComparison.Ordinal) || word.StartsWith("razz", StringComparison.Ordinal) || word is "spider" or "spoke" or "rayos" or "raggi" or "h";

    /// <summary>"Sp. 1,85", "ep. 1.8", "t = 2.0": short for how thick a disc is, before a figure of tenths.</summary>
    private bool IsBehindShortThickness(int i)
    {
        int word = i > 0 && (_items[i - 1].IsSign('.') || _items[i - 1].IsSign('=')) ? i - 2 : i - 1;
        return word >= 0 && _items[i] is { Value: >= 1.4m and <= 2.5m, Unit: "" or "mm", IsFraction: false } && _items[word] is { Kind: SpecTokenKind.Word, Text: "sp" or "ep" or "esp" or "st" or "spess" or "t" } && (_items[word].Text != "t" || (_items[i - 1].IsSign('=') && (word == 0 || _items[word - 1].Kind == SpecTokenKind.Sign || _items[word - 1].IsNumber || _items[word - 1].Is("t:rotor")))) && !Joins(i);
    }

    /// <summary>"2,3 mm dik en 223 mm groot": a size that no disc is thick by, in a clause with a figure that one is.</summary>
    private bool IsSizeBesideThickness(int i) =>
        _items[i].Value is >= 120 and <= 250 && Clauses(_items[i].Clause).Any(o => o is { IsNumber: true, IsFraction: false, Unit: "" or "mm", Value: >= 1.4m and <= 2.5m }) && Clauses(_items[i].Clause).Count(o => o.IsNumber && o.Value >= 3 && o.Unit is "" or "mm") == 1;

    private void ReadRotor()
    {
        Words("RotorFixing", "fixing");
        FourOrFiveBolts("fixing");
        Words("Lockring", "lockring");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction)
            {
                continue;
            }

            string topic = TopicOf(i);
            if (_items[i].Value >= 120 && i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].IsSign('x')) && Free(i + 2) && _items[i + 2].Value is >= 1.5m and <= 2.5m && !(_items[i + 2] is { Value: 2, Unit: "", Places: 0 } && _items[i + 1].IsSign('x')))
            {
                Take("size", _items[i].Text, i, i);
                Length("thickness", i + 2);
            }
            else if (_items[i].Value < 3 && LimitOf(i) == "m:min")
            {
                _items[i].Used = true;
            }
            else if (topic is "t:thickness" && !IsSizeBesideThickness(i) || IsBehindShortThickness(i) || (_items[i].Value is >= 1.4m and <= 2.5m && topic is "" or "t:rotor" && Free(i) && _items[i].Value < 3 && _items[i].Unit == "mm"))
            {
                Length("thickness", i);
            }
            else if (_items[i].Value >= 90 && !(i > 0 && (_items[i - 1].Is("m:pm") || _items[i - 1].Is("m:fm"))) && (!topic.StartsWith("n:", StringComparison.Ordinal) || topic == "n:size"))
            {
                Take("size", _items[i].Text, i, i);
            }
        }
    }

    /// <summary>"Half hydraulic", "frein hybride hydraulique": a cable works the pistons, and the bare word says no full hydraulics.</summary>
    private bool IsHalfHydraulic(int i) =>
        (i > 0 && _items[i - 1].Text is "half" or "halb" or "semi" or "demi" or "mezzo")
        || _items.Exists(o => o.Kind == SpecTokenKind.Word && (o.Text.StartsWith("hybrid", StringComparison.Ordinal) || o.Text.StartsWith("hibrid", StringComparison.Ordinal) || o.Text.StartsWith("ibrid", StringComparison.Ordinal)));
}
