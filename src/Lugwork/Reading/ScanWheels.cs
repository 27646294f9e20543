using Lugwork.Tyres;

namespace Lugwork.Reading;

/// <summary>Wheels and rims.</summary>
internal sealed partial class LineScan
{
    /// <summary>A bead seat: the ISO diameter, 29er, 700C or 650B; an inch size is shared by several.</summary>
    private void ReadSeat(string field)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].IsFraction)
            {
                continue;
            }

            if (_items[i].IsMillimetre && IsSeat(_items[i].Value) && (_items[i].Value >= 300 || TopicOf(i) is "t:rim" or "t:beadseat") && !(i > 0 && _items[i - 1].IsSign('x')) && TopicOf(i) is not "t:length" && !TopicOf(i).StartsWith("n:", StringComparison.Ordinal))
            {
                Take(field, _items[i].Text, i, i);
            }
            else if (Label(i, out int last, out string text) && (last > i || _items[i].IsInch))
            {
                string named = IsMountainSeat(i, out string mountain) ? mountain : text switch
                {
                    "29er" => "622",
                    "700C" => "622",
                    "650B" => "584",
                    _ => "",
                };
                if (named.Length > 0)
                {
                    Keep(field, named, i, last);
                    if (i > 1 && _items[i - 1].IsSign('(') && _items[i - 2] is { IsNumber: true, Unit: "" or "in" } inches && IsInchesOfSeat(inches.Value, named))
                    {
                        // "27,5 (650B)".
                        inches.Used = true;
                    }
                }
                else if (_items[i].Value is >= 12 or >= 400)
                {
                    TextReading<BeadSeat> seats = BeadSeat.Read(text);
                    if (Values.TryGetValue(field, out LineFinding? known) && seats.Values.Any(v => v.FitKey == known.Key))
                    {
                        i = last;
                    }
                    else if (seats.Values.IsEmpty || last == i)
                    {
                        Several(field, [.. seats.Values.Select(v => v.FitKey)], i, last, "the size is shared by several bead seats");
                    }
                    else
                    {
                        Take(field, text, i, last);
                    }
                }
            }
        }
    }

    private void ReadWheel(bool rear)
    {
        ReadEndCaps();
        ReadRimSize();
        ReadRimSizeTurned();
        ReadRimLetters();
        ReadWheelThreads();
        ReadHub("hub", rear);
        ReadSeat("beadSeat");
        RimHeight();
        ReadInside();
        InsideInWords();
        ReadBody();
        ReadHoles();
        HolesOfOnlyPart();
        Words("RotorFixing", "rotorFixing");
        if (Anywhere("t:rotor") >= 0 || Anywhere("t:brake") >= 0)
        {
            FourOrFiveBolts("rotorFixing");
        }

        Words("RimType", "rimType", i => !(_items[i].Is("v:RimType=C") && IsBesideHooks(i)));
        Words("TyreHold", "hold", i => !(_items[i].IsFraction && _items[i].Text is "llanta" or "llantas" && i + 1 < _items.Count && _items[i + 1].IsNumber && !(_items[i].Is("v:TyreHold=tubular") && IsSeat(_items[i + 1].Value) && !Joins(i + 1))));
        Words("BrakeTrack", "brakeTrack", i => !_items[i].Is("v:BrakeTrack=none"));
        BrakeTrackApart();
        Words("Material", "rimMaterial", IsOfRim);
        Words("HubEnds", "ends", i => !_items[i].Is("m:bareends") || (Values.TryGetValue("hub", out LineFinding? own) && _items[i].Clause - _items[own.Last].Clause is 0 or 1 && AloneInClause(i)));
        Words("BrakeType", "hubBrake", i => (_items[i].Is("v:BrakeType=drum") && !IsDrumOfBody(i) && !(_items[i].Text is "remnaaf" && (Anywhere("v:BrakeType=coaster") >= 0 || Anywhere("v:BrakeType=roller") >= 0))) || _items[i].Is("v:BrakeType=roller") || _items[i].Is("v:BrakeType=coaster"));
        ReadUse();
        SettleSeat("beadSeat");
        OtherSeats();
        HoleOfOtherValve();
        InnerWidthAlone();
        ValveHoleByName();
        ValveHoleByDrill();
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && _items[i].Unit is "" or "mm" && (_items[i].Value < 12 || _items[i].Unit == "mm") && TopicOf(i) == "t:valvehole" && !Values.ContainsKey("valveHole"))
            {
                Take("valveHole", _items[i].Figure, i, i);
            }
        }
    }

    /// <summary>"Crochet type TC", "TC (crochet)": the hooks of a rim that goes without a tube.</summary>
    private bool IsBesideHooks(int i)
    {
        for (int j = Math.Max(0, i - 2); j < _items.Count && j <= i + 2; j++)
        {
            if (_items[j].Is("v:RimType=TC"))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"30 mm breit, innen schwarz", "inside is rusty": how it looks there.</summary>
    private bool IsLookInside()
    {
        int at = _items.FindIndex(i => i.Is("t:inner") || i.Is("m:inside")) + 1;
        return at > 0 && at < _items.Count && _items[at].Clause == _items[at - 1].Clause && (_items[at].Is("c:colour") || IsStrange(at));
    }

    /// <summary>"Across the hooks I got 21 mm": the only figure of a line that is about an inner width, or about the hole of a valve, and nothing else.</summary>
    private void InnerWidthAlone()
    {
        // "Inside the 700C rim it is 17 mm": the bead seat stands before it.
        int seat = Values.TryGetValue("beadSeat", out LineFinding? known) ? known.Last : -1;
        int only = _items.FindIndex(seat + 1, i => i.IsNumber);
        bool behind = seat >= 0 && only > seat && _items[only].Clause == _items[seat].Clause && !Values.ContainsKey("innerWidth") && _items.FindIndex(i => i.IsNumber) >= known!.First && Clause(only, "t:rim") && !_items.Exists(o => WordLists.ScanWheelsInRim.Contains(o.Text));
        if ((Values.Count > 0 && !behind) || Doubts.Count > 0 || only < 0 || !Free(only) || _items.FindLastIndex(i => i.IsNumber) != only || !_items[only].IsMillimetre || _items[only].IsFraction)
        {
            return;
        }

        bool inner = (Anywhere("t:inner") is >= 0 and int word ? !behind || _items[word].Clause == _items[only].Clause : behind && HasMark(only, "m:inside")) && _items.TrueForAll(i => !i.IsTopic || (behind && i.Clause != _items[only].Clause) || TopicIn(i) is "t:inner" or "t:rim" or "t:wheel" or "t:beadseat" or "n:width") && !IsLookInside();
        bool valve = (Anywhere("t:valvehole") >= 0 || (Anywhere("t:valve") >= 0 && _items.Exists(i => i.Text is "hole" or "loch" or "trou" or "agujero" or "foro" or "gat"))) && _items.TrueForAll(i => !i.IsTopic || TopicIn(i) is "t:valvehole" or "t:valve" or "t:rim" or "t:wheel" or "n:size");
        valve |= _items.Exists(i => i.Text is "hole" or "loch" or "trou" or "agujero" or "foro" or "gat") && ((_items[only].Value == 8.5m && Anywhere("v:ValveStem=schrader") >= 0 && Anywhere("v:ValveStem=presta") < 0) || (_items[only].Value == 6.5m && Anywhere("v:ValveStem=presta") >= 0 && Anywhere("v:ValveStem=schrader") < 0)) && Anywhere("t:valvehole") < 0;
        if (inner && !valve && _items[only].Unit == "mm" && _items[only].Value is >= 12 and <= 60)
        {
            Length("innerWidth", only);
        }
        else if (valve && !inner && _items[only].Value is 6.5m or 8.5m)
        {
            Take("valveHole", _items[only].Text, only, only);
        }
    }

    /// <summary>"Remvlak van de velg: carbon", "alloy rim with carbon brake track": the material beside the word for where the pads go.</summary>
    private void BrakeTrackApart()
    {
        for (int i = 0; i < _items.Count && !Values.ContainsKey("brakeTrack"); i++)
        {
            if (!_items[i].Is("m:braketrack") || Negated(i))
            {
                continue;
            }

            int behind = i + 1 < _items.Count && (_items[i + 1].IsSign(':') || _items[i + 1].IsSign('=') || _items[i + 1].IsSign('(') || (_items[i + 1].Kind == SpecTokenKind.Word && WordLists.ScanWheelsBrakeTrackApart.Contains(_items[i + 1].Text))) ? i + 2 : i + 1;
            string key = behind < _items.Count && _items[behind].Is("v:Material=carbon") ? "carbon" : behind < _items.Count && _items[behind].Is("v:Material=aluminium") ? "aluminium" : "";
            if (key.Length > 0 && !(behind + 1 < _items.Count && (_items[behind + 1].IsSign('/') || _items[behind + 1].Is("m:or") || _items[behind + 1].Text is "free" or "frei")))
            {
                Keep("brakeTrack", key, i, behind);
            }
        }
    }

    /// <summary>"Alloy rim", "Stahlfelge", "cerchio in carbonio", "rims: carbon": the word right before the rim, or behind it with small words between, and of no other part that follows.</summary>
    private bool IsOfRim(int i)
    {
        if (_items[i].Is("v:Material=titanium") || Clause(i, "n:colour") || (i > 0 && SetAside.IsFor(_items[i - 1])))
        {
            return false;
        }

        if (i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && (_items[i + 1].IsTopic || _items[i + 1].Is("m:braketrack") || _items[i + 1].Is("m:or")))
        {
            // "Alu rim liner": what goes onto the rim.
            return _items[i + 1].Is("t:rim") && !(i + 2 < _items.Count && WordLists.ScanRimLiner.Contains(_items[i + 2].Text));
        }

        if (IsStrange(i + 1) && _items[i + 1].Clause == _items[i].Clause && !IsFinish(_items[i + 1].Text) && _items[i + 1].Text is not ("double" or "doble" or "doppia" or "doppio" or "dubbele"))
        {
            // "Rim, alloy nipples".
            return false;
        }

        int before = i - 1;
        while (before >= 0 && before >= i - 4 && (_items[before].IsSign(':') || _items[before].IsSign('=') || WordLists.ScanFrameIsOfSteererSaid.Contains(_items[before].Text)))
        {
            before--;
        }

        return before >= 0 && _items[before].Is("t:rim") && _items[before].Clause == _items[i].Clause;
    }

    /// <summary>"Haute de 50 mm", "alto 38 mm", "haut. 24 mm": how high a rim is, by a word that is one for an upper half elsewhere.</summary>
    private void RimHeight()
    {
        bool rim = Anywhere("t:rim") >= 0;
        for (int i = 1; i < _items.Count && rim && !Values.ContainsKey("rimDepth"); i++)
        {
            int word = _items[i - 1].IsSign('.') || _items[i - 1].IsSign(':') || _items[i - 1].Text is "de" or "da" or "di" or "van" or "um" ? i - 2 : i - 1;
            bool high = word >= 0 && _items[word].Clause == _items[i].Clause && WordLists.ScanWheelsRimHeight.Contains(_items[word].Text);
            high |= i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && WordLists.ScanWheelsRimHeight2.Contains(_items[i + 1].Text) && _items[i].Unit == "mm";
            if (high && Free(i) && _items[i].IsMillimetre && !_items[i].IsFraction && _items[i].Value is >= 12 and <= 120 && !Joins(i) && !Clause(i, "t:hub"))
            {
                Length("rimDepth", i);
            }
        }
    }

    private void OtherSeats()
    {
        MountainSeat();
        // 29", 28": the size in inches is on the rim beside what was read, and says no bead seat for certain.
        if (Values.Count > 0 && Doubts.Count > 0 && Doubts.TrueForAll(d => d.Field == "beadSeat" && d.Kind == LineDoubtKind.Several))
        {
            bool goes = !Values.TryGetValue("beadSeat", out LineFinding? seat) || Doubts.TrueForAll(d => d.Keys.Contains(seat.Key));
            if (goes)
            {
                Doubts.Clear();
            }
        }
    }

    /// <summary>622x21TC, 584-25C, 622 x 19: bead seat, inside width and the letters of the profile.</summary>
    private void ReadRimSize()
    {
        for (int i = 0; i + 2 < _items.Count && !Full; i++)
        {
            if (!Free(i) || !Free(i + 2) || !(_items[i + 1].IsSign('x') || _items[i + 1].IsSign('-')) || InTriple(i) || _items[i].Value is < 300 or >= 800 || _items[i].Value is 700 or 650 || !_items[i].IsMillimetre)
            {
                continue;
            }

            if (!IsSeat(_items[i].Value) || !_items[i + 2].IsMillimetre || _items[i + 2].IsFraction || _items[i + 2].Value is < 10 or > 115 || (_items[i].Value == 622 && _items[i + 2].Value > 60))
            {
                Refuse("beadSeat", i, i + 2, "a bead seat and an inside width are expected, such as 622x21TC");
                continue;
            }

            Take("beadSeat", _items[i].Text, i, i);
            Length("innerWidth", i + 2);
            if (i + 3 < _items.Count && _items[i + 3].Kind == SpecTokenKind.Word && _items[i + 3].Text is "tc" or "c" or "tss" or "ss" or "hb")
            {
                Keep("rimType", _items[i + 3].Text.ToUpperInvariant(), i + 3, i + 3);
            }
        }
    }

    /// <summary>"Rim 19-622": the width of a rim before its bead seat, where the line names a rim and no tyre.</summary>
    private void ReadRimSizeTurned()
    {
        for (int i = 0; i + 2 < _items.Count && !Full; i++)
        {
            bool size = Free(i) && Free(i + 2) && _items[i + 1].IsSign('-') && _items[i + 1].Glued && _items[i + 2].Glued && !InTriple(i)
                && _items[i] is { Unit: "" or "mm", IsFraction: false, Value: >= 13 and <= 45 } && _items[i + 2].Value >= 300 && IsSeat(_items[i + 2].Value);
            bool joined = (i > 0 && Links(_items[i - 1]) && !_items[i - 1].IsSign('-')) || (i + 3 < _items.Count && Links(_items[i + 3]) && _items[i + 3].Glued);
            if (size && !joined && Clause(i, "t:rim") && Anywhere("t:tyre") < 0)
            {
                Length("innerWidth", i);
                Take("beadSeat", _items[i + 2].Text, i + 2, i + 2);
            }
        }
    }

    /// <summary>"External 26 mm, internal 19 mm": the figure right behind the word for the inside.</summary>
    private void ReadInside()
    {
        for (int i = 0; i < _items.Count && !Values.ContainsKey("innerWidth") && !Full; i++)
        {
            int word = i > 1 && (_items[i - 1].IsSign('.') || _items[i - 1].IsSign(':')) ? i - 2 : Math.Max(0, i - 1);
            while (word > 0 && word > i - 4 && _items[word].Clause == _items[i].Clause && _items[word].Kind == SpecTokenKind.Word && WordLists.ScanWheelsReadInside.Contains(_items[word].Text))
            {
                word--;
            }

            bool letter = word == i - 1 && _items[i].Glued && _items[word].Text == "i" && _items[i].Unit is "mm" or "";
            bool behind = i + 1 < _items.Count && (_items[i + 1].Is("m:inside") || _items[i + 1].Is("t:inner")) && _items[i + 1].Clause == _items[i].Clause && !(i + 2 < _items.Count && (_items[i + 2].IsNumber || _items[i + 2].IsSign(':') || (IsStrange(i + 2) && _items[i + 2].Clause == _items[i].Clause))) && TopicOf(i) is "" or "t:rim" or "t:wheel" or "t:inner" or "n:width" or "t:beadseat" && !IsSeat(_items[i].Value);
            bool bracketed = i + 2 < _items.Count && _items[i + 1].IsSign('(') && (_items[i + 2].Is("m:inside") || _items[i + 2].Is("t:inner")) && TopicOf(i) is "n:width" or "t:rim";
            bool lettered = i + 1 < _items.Count && _items[i + 1] is { Glued: true, Text: "i", Kind: SpecTokenKind.Word } && _items[i].Unit.Length == 0 && _items[i].Value is >= 15 and <= 45 && !(i + 2 < _items.Count && _items[i + 2] is { Glued: true, Kind: not SpecTokenKind.Sign });
            if (Free(i) && (_items[word].Is("m:inside") || letter || lettered || bracketed || behind) && _items[i].IsMillimetre && _items[i].Value is >= 12 and <= 80 && !(Joins(i) && (JoinsClosely(i) || (i + 2 < _items.Count && _items[i + 2].IsNumber))) && TopicOf(i) is not ("t:hub" or "t:axle" or "t:spacing"))
            {
                Length("innerWidth", i);
            }
        }
    }

    private void ReadWheelThreads()
    {
        for (int i = 0; i + 2 < _items.Count; i++)
        {
            if (!Pair(i, out int second) || InTriple(i))
            {
                continue;
            }

            decimal a = _items[i].Value;
            decimal b = _items[second].Value;
            if (!_items[i].IsFraction && b == 24 && a is > 1.2m and < 1.5m)
            {
                bool track = a is 1.37m or 1.370m && Anywhere("m:lockringthread") >= 0 && (Anywhere("v:FreehubBody=TRACK") >= 0 || Anywhere("m:fixedhub") >= 0 || Anywhere("m:track") >= 0)
                    && !_items.Exists(o => IsFreewheel(o) || o.Text is "flip" or "flop" or "flipflop" or "reversible");
                bool british = a is 1.37m && Anywhere("m:oldbritish") is >= 0 and int old && Anywhere("m:track") < 0 && !IsMadeThere(old) && !_items.Exists(IsFixedWord) && _items.Exists(o => (o == _items[old] && o.IsFraction) || IsFreewheel(o) || (o.Is("t:thread") && o.Text is not "iso"));
                Take("thread", track ? "track-1.37x24" : british ? "British-1.370x24" : $"{_items[i].Text}x24", i, second);
            }
            else if ((a is 34.7m or 30 && b == 1) || (a == 35 && b == 24))
            {
                Take("thread", $"{_items[i].Text}x{_items[second].Text}", i, second);
            }
        }

        ReadHubAxleThread("axleThread", bare: false);
    }

    /// <summary>"British made", "British brand": where a part is from, and no thread.</summary>
    private bool IsMadeThere(int i) => i + 1 < _items.Count && _items[i + 1].Text is "made" or "brand" or "built" or "maker" or "hub" or "bike";

    /// <summary>A word for a sprocket that does not turn free, which goes on the same first thread of a track hub.</summary>
    private static bool IsFixedWord(SpecItem item) =>
        item.Is("m:fixedhub") || item.Is("v:CassettePattern=fixed-sprocket") || WordLists.ScanWheelsIsFixedWord.Contains(item.Text);

    /// <summary>"Tambor Micro Spline", "tamburo XD": the drum that the cassette goes on, and no brake.</summary>
    private bool IsDrumOfBody(int i) => _items[i].Text is "tambor" or "tamburo" or "tambour" && (IsBodyWord(i + 1) || IsBodyWord(i - 1) || (i + 2 < _items.Count && _items[i + 1].Kind == SpecTokenKind.Word && IsBodyWord(i + 2)));

    private bool IsBodyWord(int i) => i >= 0 && i < _items.Count && (_items[i].Is("t:freehub") || _items[i].Is("m:hg") || _items[i].Terms.Any(t => t.StartsWith("v:FreehubBody=", StringComparison.Ordinal)));
}
