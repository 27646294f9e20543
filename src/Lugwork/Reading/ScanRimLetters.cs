namespace Lugwork.Reading;

/// <summary>Rims as they are written by hand: the letters of the profile against the width, holes of a line about a rim or a hub alone, how wide it is inside in words.</summary>
internal sealed partial class LineScan
{
    /// <summary>"21TC-622", "25C de 584": inside width, letters of the profile and bead seat.</summary>
    private void ReadRimLetters()
    {
        bool rim = Anywhere("t:rim") >= 0 || Anywhere("t:beadseat") >= 0;
        bool tyre = Anywhere("t:tyre") >= 0;
        for (int i = 0; i + 3 < _items.Count && !tyre && !Full; i++)
        {
            bool letters = Free(i) && _items[i] is { Unit: "", IsFraction: false, Value: >= 12 and <= 60 } && _items[i + 1] is { Glued: true, Kind: SpecTokenKind.Word, Text: "tc" or "c" or "tss" or "ss" or "hb" };
            bool joined = _items[i + 2].IsSign('-') || _items[i + 2].IsSign('x') || _items[i + 2].IsSign('/') || (_items[i + 2].Kind == SpecTokenKind.Word && WordLists.ScanRimLettersReadRimLetters.Contains(_items[i + 2].Text));
            if (!letters || !joined || !Free(i + 3) || !_items[i + 3].IsMillimetre || _items[i + 3].Value < 300 || !IsSeat(_items[i + 3].Value) || (i > 0 && Links(_items[i - 1])) || (i + 4 < _items.Count && Links(_items[i + 4])) || (_items[i + 1].Text == "c" && !rim))
            {
                continue;
            }

            Length("innerWidth", i);
            Keep("rimType", _items[i + 1].Text.ToUpperInvariant(), i, i + 1);
            Take("beadSeat", _items[i + 3].Text, i + 3, i + 3);
            return;
        }

        if (rim && !tyre)
        {
            LettersApart();
        }
    }

    /// <summary>"Rim is 21TC, 622", "584er Felge, 25C": the width with the letters of the profile in another clause than the bead seat; "25C" beside 622 can be a tyre.</summary>
    private void LettersApart()
    {
        int width = -1;
        int seat = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || _items[i].IsFraction || _items[i].Places > 0 || Joins(i))
            {
                continue;
            }

            if (_items[i] is { Unit: "", Value: >= 12 and <= 60 } && i + 1 < _items.Count && !(_items[i + 1].Text == "c" && Clauses(_items[i].Clause).Any(o => o.Kind == SpecTokenKind.Word && WordLists.ScanRimLettersLettersApart.Contains(o.Text))) && _items[i + 1] is { Glued: true, Kind: SpecTokenKind.Word, Text: "tc" or "c" or "tss" or "ss" or "hb" } && !(i + 2 < _items.Count && _items[i + 2] is { Glued: true, Kind: not SpecTokenKind.Sign }))
            {
                width = width < 0 ? i : _items.Count;
            }
            else if (_items[i].IsMillimetre && _items[i].Value >= 300 && IsSeat(_items[i].Value))
            {
                seat = seat < 0 ? i : _items.Count;
            }
        }

        if (width >= 0 && seat >= 0 && width < _items.Count && seat < _items.Count && !(_items[width + 1].Text == "c" && _items[seat].Value == 622) && Math.Abs(_items[width].Clause - _items[seat].Clause) <= 1)
        {
            Length("innerWidth", width);
            Keep("rimType", _items[width + 1].Text.ToUpperInvariant(), width, width + 1);
        }
    }

    /// <summary>"Rim 622x21TC, 28 holes": the count in a clause of its own, where the line is about a rim or about a hub and never about the other.</summary>
    private void HolesOfOnlyPart()
    {
        bool hub = Anywhere("t:hub") >= 0 || Anywhere("v:BrakeType=coaster") >= 0 || Anywhere("v:BrakeType=roller") >= 0;
        bool rim = Anywhere("t:rim") >= 0;
        if (!hub && !rim && Anywhere("t:wheel") < 0 && Doubts.Count == 0)
        {
            // "650B / inner 27 / 28 holes": what else is said is all of the rim, or all of the hub.
            bool ofHub = Values.ContainsKey("hub") || Values.ContainsKey("body") || Values.ContainsKey("rotorFixing");
            bool ofRim = Values.ContainsKey("beadSeat") || Values.ContainsKey("innerWidth") || Values.ContainsKey("rimType");
            (hub, rim) = (ofHub && !ofRim, ofRim && !ofHub);
        }

        if (hub == rim || Values.ContainsKey("hubHoles") || Values.ContainsKey("rimHoles") || (rim && (Values.ContainsKey("hub") || Values.ContainsKey("body") || Values.ContainsKey("rotorFixing"))) || (hub && (Values.ContainsKey("beadSeat") || Values.ContainsKey("innerWidth"))))
        {
            return;
        }

        if (_items.Exists(o => o.Kind == SpecTokenKind.Word && (IsSide(o.Text) || WordLists.ScanRimLettersHolesOfOnlyPart.Contains(o.Text))))
        {
            // "20 spokes left, 20 right", "16 holes a side"
            return;
        }

        int found = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            bool drilled = i > 0 && _items[i].Unit.Length == 0 && (rim || IsSpokeCount(_items[i].Value)) && _items[i - 1].Clause == _items[i].Clause && (IsDrilledWord(_items[i - 1].Text) || (rim && i > 2 && _items[i - 1].Is("t:rim") && _items[i - 3].Clause == _items[i].Clause && IsDrilledWord(_items[i - 3].Text)));
            drilled |= i + 1 < _items.Count && _items[i].Unit.Length == 0 && IsSpokeCount(_items[i].Value) && _items[i + 1].Clause == _items[i].Clause && IsDrilledWord(_items[i + 1].Text) && !(i + 2 < _items.Count && _items[i + 2].IsNumber);
            if (!Free(i) || _items[i].IsFraction || _items[i].Places > 0 || _items[i].Value is < 16 or > 48 || !(_items[i].Unit == "holes" || drilled || IsCountOfSpokes(i)) || JoinsClosely(i) || (TopicOf(i) is "t:rotor" or "t:brake" or "t:valvehole" && (_items[Link(i)].Clause == _items[i].Clause || TopicOf(i) is "t:valvehole")))
            {
                continue;
            }

            if (found >= 0)
            {
                return;
            }

            found = i;
        }

        if (found >= 0 && !(rim && !Clause(found, "t:rim") && Clauses(_items[found].Clause).Any(o => o.Terms.Any(t => t.StartsWith("v:BrakeType=", StringComparison.Ordinal)))))
        {
            Take(hub ? "hubHoles" : "rimHoles", _items[found].Text, found, found);
        }
    }

    /// <summary>Holes that hubs are drilled with and that are no axle.</summary>
    private static bool IsSpokeCount(decimal count) => count is 16 or 18 or 24 or 28 or 32 or 36 or 40 or 48;

    private static bool IsDrilledWord(string word) =>
        WordLists.ScanRimLettersIsDrilledWord.Contains(word);

    /// <summary>"Jante percée à 6.5 mm pour la valve", "drilled 6.5 for Presta": the hole of a valve by its size, where drilling and valve are both said and no other figure is like it.</summary>
    private void ValveHoleByDrill()
    {
        if (Values.ContainsKey("valveHole"))
        {
            return;
        }

        int only = _items.FindIndex(i => i.IsNumber && i.Value is 6.5m or 8.5m);
        if (only < 0 || !Free(only) || !_items[only].IsMillimetre || Joins(only) || _items.FindLastIndex(i => i.IsNumber && i.Value is 6.5m or 8.5m) != only || Anywhere("m:adapt") >= 0)
        {
            return;
        }

        bool drill = false;
        int valve = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (Math.Abs(_items[i].Clause - _items[only].Clause) > 1)
            {
                continue;
            }

            drill |= _items[i].Clause == _items[only].Clause && (IsDrilledWord(_items[i].Text) || _items[i].Is("m:drilled") || _items[i].Text is "hole" or "loch" or "trou" or "agujero" or "orificio" or "foro" or "gat") || _items[i].Is("t:valvehole") || _items[i].Is("t:rimholes");
            bool stem = _items[i].Is("v:ValveStem=presta") || _items[i].Is("v:ValveStem=schrader");
            valve = stem || (valve < 0 && (_items[i].Is("t:valve") || _items[i].Is("t:valvehole"))) ? i : valve;
        }

        bool other = valve >= 0 && (_items[valve].Is("v:ValveStem=presta") ? _items[only].Value != 6.5m : _items[valve].Is("v:ValveStem=schrader") && _items[only].Value != 8.5m);
        if (drill && valve >= 0 && !other && !Negated(valve))
        {
            Take("valveHole", _items[only].Text, only, only);
        }
    }

    /// <summary>"Valve hole drilled 8.5, presta": the hole of one valve and the name of the other.</summary>
    private void HoleOfOtherValve()
    {
        int hole = _items.FindIndex(i => i is { IsNumber: true, Value: 6.5m or 8.5m });
        string other = hole < 0 ? "" : _items[hole].Value == 8.5m ? "presta" : "schrader";
        if (hole >= 0 && Free(hole) && TopicOf(hole) == "t:valvehole" && Anywhere("v:ValveStem=" + other) is >= 0 and int named && Anywhere("v:ValveStem=" + (other == "presta" ? "schrader" : "presta")) < 0 && !Negated(named))
        {
            Several("valveHole", ["6.5", "8.5"], Math.Min(hole, named), Math.Max(hole, named), "the hole of one valve and the name of the other");
        }
    }

    /// <summary>"30 de ancho interior", "innen 30 mm breit", "23 wide inside": small words and one for the width between the figure and the word for the inside.</summary>
    private void InsideInWords()
    {
        if (Values.ContainsKey("innerWidth") || Anywhere("t:tyre") >= 0)
        {
            return;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction || _items[i].Value is < 12 or > 60 || Joins(i))
            {
                continue;
            }

            int behind = i + 1;
            bool wide = false;
            while (behind < _items.Count && behind <= i + 4 && _items[behind].Clause == _items[i].Clause && _items[behind].Kind == SpecTokenKind.Word && (_items[behind].Is("n:width") || (!_items[behind].IsFraction && WordLists.ScanRimLettersInsideInWords.Contains(_items[behind].Text))))
            {
                wide |= _items[behind].Is("n:width") || _items[behind].Text is "large";
                behind++;
            }

            bool inner = behind < _items.Count && behind > i + 1 && _items[behind].Clause == _items[i].Clause && (_items[behind].Is("t:inner") || _items[behind].Is("m:inside"));
            wide |= inner && (_items[behind].IsFraction || Anywhere("t:rim") >= 0);
            if (inner && wide && !IsInsideOther(behind) && !(behind + 1 < _items.Count && _items[behind + 1].Clause == _items[behind].Clause && IsStrange(behind + 1)) && !(behind + 1 < _items.Count && (_items[behind + 1].IsNumber || _items[behind + 1].IsSign(':'))) && !Clause(i, "m:outside"))
            {
                Length("innerWidth", i);
                return;
            }
        }
    }
}
