namespace Lugwork.Reading;

/// <summary>Cranks and chainrings: teeth, bolt circles, chainline.</summary>
internal sealed partial class LineScan
{
    private void ReadRings()
    {
        UnitsOfRings();
        NumberSprockets();
        Words("SpeedClass", "speeds");
        ReadBoltCircle();
        ReadSpider();
        if (_slot == Slot.Chainring)
        {
            ReadTeeth("teeth", largest: false);
            if (Anywhere("v:ChainSize=belt") is >= 1 and int belt && SetAside.IsFor(_items[belt - 1]) && !Negated(belt) && !Values.ContainsKey("speeds"))
            {
                // "Plateau 46 dents pour courroie".
                Keep("speeds", "belt", belt - 1, belt);
            }

            int speeds = _items.FindIndex(i => i is { IsNumber: true, Unit: "speed" });
            if (speeds >= 0 && !JoinsClosely(speeds) && !IsOfferedWith(speeds) && _items.FindLastIndex(i => i is { IsNumber: true, Unit: "speed" }) == speeds && LimitOf(speeds).Length == 0)
            {
                TakeSpeeds("speeds");
            }
            else if (speeds < 0 && !TakeSpeeds("speeds") && !Values.ContainsKey("speeds"))
            {
                TakeSingleWidth("speeds");
            }

        }
        else
        {
            ReadPedalThread("pedalThread", needTopic: true);
            ReadSpindle();
            ReadChainline();
            LengthOfArms();
            SmallerRing();
            ReadTeeth("largestRing", largest: true);
            SmallerByWord();
            if (!TakeSpeeds("speeds") && !Values.ContainsKey("speeds"))
            {
                TakeSingleWidth("speeds");
            }

        }

        DirectMountBolts();
        Words("DirectMountRing", "directMount");
        Settle("directMount");
    }

    /// <summary>"28er Blatt", "40 d.", "arms: 4": teeth and arms by what stands beside the figure.</summary>
    private void UnitsOfRings()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            SpecItem item = _items[i];
            if (item is not { IsNumber: true, Unit: "", IsFraction: false } || item.Value != decimal.Truncate(item.Value))
            {
                continue;
            }

            UnitsByWord(i);
            int behind = i + 1;
            bool sized = item.End - item.Start > item.Text.Length || (behind < _items.Count && _items[behind] is { Glued: true, Text: "er" or "ers" });
            behind += behind < _items.Count && _items[behind] is { Glued: true, Text: "er" or "ers" } ? 1 : 0;
            bool ring = sized && behind < _items.Count && _items[behind].Is("t:chainring") && _items[behind].Clause == item.Clause;
            bool letter = behind < _items.Count && _items[behind].Text == "d" && _items[behind].Kind == SpecTokenKind.Word && (behind + 1 >= _items.Count || _items[behind + 1].Kind == SpecTokenKind.Sign || _items[behind].Glued) && !Joins(i);
            if (item.Value is 70 or 80 or 90 && sized && !ring)
            {
                // "70er": when it was made.
                item.Unit = "other";
            }
            else if (item.Value is >= 20 and <= 60 && (ring || letter))
            {
                item.Unit = "teeth";
            }

            bool arms = i > 1 && (_items[i - 1].IsSign(':') || _items[i - 1].IsSign('=')) && WordLists.ScanRingsUnitsOfRings.Contains(_items[i - 2].Text);
            if (item.Value is 3 or 4 or 5 && arms && (i + 1 >= _items.Count || _items[i + 1].Kind != SpecTokenKind.Word))
            {
                item.Unit = "arms";
            }
        }
    }

    /// <summary>A bolt circle by its name, or by a word for any distance between centres.</summary>
    private bool IsCircle(int i) => TopicOf(i) is "t:bcd" || (Link(i) is >= 0 and int link && _items[link].Clause == _items[i].Clause && _items[link].Text is "entraxe" or "interasse" && !Clause(i, "n:armlength") && !_items.Exists(o => o.Kind == SpecTokenKind.Word && o.Text.StartsWith("pedal", StringComparison.Ordinal)));

    private void ReadBoltCircle()
    {
        bool said = false;
        for (int i = 0; i < _items.Count && !said; i++)
        {
            said = Free(i) && IsCircle(i) && _items[i].IsMillimetre && _items[i].Value is >= 50 and <= 160;
        }

        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].IsFraction || !_items[i].IsMillimetre || _items[i].Value is < 50 or > 160 || IsRingOfPair(i) || (i > 0 && _items[i - 1] is { Text: "q", Kind: SpecTokenKind.Word }))
            {
                continue;
            }

            bool circle = IsCircle(i);
            bool topic = circle || (!said && Clause(i, "t:bcd"));
            if (said && !circle)
            {
                continue;
            }

            if (i + 2 < _items.Count && _items[i + 1].IsSign('/') && Free(i + 2) && _items[i + 2].Value is >= 50 and <= 160 && (TopicOf(i) is "t:bcd" || Clause(i, "t:bcd")))
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
            else if (i + 2 < _items.Count && _items[i + 1].IsSign('/') && _items[i + 2] is { Glued: true, Unit: "" or "arms" or "holes", Value: 3 or 4 or 5 } && Free(i + 2))
            {
                // "104/4", as it is told in German.
                arms = i + 2;
            }
            else
            {
                for (int j = Math.Max(0, i - 8); j < _items.Count && j <= i + 8 && arms < 0; j++)
                {
                    arms = _items[j] is { IsNumber: true, Used: false, Unit: "arms" or "holes" } && _items[j].Value is 3 or 4 or 5 && Math.Abs(_items[j].Clause - _items[i].Clause) <= 1 && !IsHolesFor(j) ? j : -1;
                }
            }

            int worded = arms < 0 ? _items.FindIndex(o => o.Text is "vierloch" or "funfloch" or "dreiloch" or "viergaats" or "vijfgaats" or "vierbouts" or "vijfbouts" && Math.Abs(o.Clause - _items[i].Clause) <= 1) : -1;
            if (!topic && arms < 0 && worded < 0)
            {
                continue;
            }

            // The length of the arms is no bolt circle.
            bool paired = arms >= 0 && arms == i - 2 && _items[i - 1].Text is "sur" or "auf" or "op" or "su" or "sobre" or "on" or "at" && _items[arms].Clause == _items[i].Clause;
            paired |= arms >= 0 && Math.Abs(arms - i) == 2 && Link(i) is >= 0 and int far && _items[far].Clause != _items[i].Clause;
            if (!topic && !paired && TopicOf(i) is not ("" or "t:crank" or "t:chainring" or "t:spacing") && !(TopicOf(i) is "t:bb" && Link(i) is >= 0 and int bracket && _items[bracket].Text == "pedalier"))
            {
                continue;
            }

            int around = arms >= 0 && _items[arms].Clause > _items[i].Clause ? 2 : 1;
            bool uneven = FindMark(i, "m:uneven", around) >= 0;
            bool even = FindMark(i, "m:even", around) >= 0;
            string text = arms < 0 ? _items[i].Text : $"{_items[arms].Text}x{_items[i].Text}";
            if (worded >= 0)
            {
                // "Vierloch", which is a word of its own.
                text = (_items[worded].Text[..3] switch { "vie" => "4x", "dre" => "3x", _ => "5x" }) + text;
                Take("boltCircle", text, Math.Min(i, worded), Math.Max(i, worded));
                continue;
            }

            if (arms >= 0 && (uneven || even))
            {
                string named = text + (uneven ? "-uneven" : "-even");
                text = _fields["boltCircle"].Read(named).Keys.Length == 1 ? named : text;
            }

            Take("boltCircle", text, arms < 0 ? i : Math.Min(i, arms), Math.Max(i, arms));
        }
    }

    /// <summary>53x39, 50/34: the larger of two rings, and no bolt circle.</summary>
    private bool IsRingOfPair(int i) =>
        _items[i].Value <= 62 && i + 2 < _items.Count && (_items[i + 1].IsSign('x') || _items[i + 1].IsSign('/') || _items[i + 1].IsSign('-')) && _items[i + 2] is { IsNumber: true, IsFraction: false, Value: >= 20 and <= 52 } && _items[i].Value > _items[i + 2].Value;

    /// <summary>1/8 or 3/32 of an inch: the inside width of the chain of a single sprocket, by itself in its clause.</summary>
    private void TakeSingleWidth(string field)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            bool pitch = i >= 2 && _items[i - 1].IsSign('x') && Free(i - 2) && _items[i - 2] is { IsFraction: true, Value: 0.5m } && !(i + 1 < _items.Count && Links(_items[i + 1]));
            if (Free(i) && _items[i].IsFraction && _items[i].Text is "1/8" or "3/32" && (pitch || !Joins(i)) && (TopicOf(i) is "" or "n:width" or "t:cassette" or "t:chain" or "t:chainring" or "t:crank" || (_slot == Slot.Cassette && TopicOf(i) is "t:hub")) && Free(i))
            {
                string text = _items[i].Text;
                Take(field, _fields[field].Read(text).Keys.Length == 1 ? text : text + "-single", pitch ? i - 2 : i, i);
            }
        }
    }

    private void ReadChainline()
    {
        for (int i = 1; i < _items.Count; i++)
        {
            if (Free(i) && _items[i - 1].Text == "cl" && !_items[i].Glued && _items[i].Value is >= 38 and <= 60)
            {
                _items[i].Used = true;
            }
        }

        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && TopicOf(i) is "t:chainline")
            {
                FieldReading reading = _fields["chainline"].Read(_items[i].Text);
                if (reading.Keys.Length > 1 && ChainlinesBy(reading.Keys) is [string only])
                {
                    Keep("chainline", only, i, i);
                }
                else if (reading.Keys.Length > 1)
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

    /// <summary>"4 Bohrungen für Kettenschutz": holes for another thing.</summary>
    private bool IsHolesFor(int i)
    {
        int behind = i + 1 < _items.Count && IsArmWord(_items[i + 1]) ? i + 2 : i + 1;
        return behind + 1 < _items.Count && SetAside.IsFor(_items[behind]) && _items[behind + 1].Kind == SpecTokenKind.Word && !_items[behind + 1].Is("t:chainring") && !_items[behind + 1].Is("t:crank") && !_items[behind + 1].Is("t:bcd");
    }
}
