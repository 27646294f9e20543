namespace Lugwork.Reading;

/// <summary>Inner tubes.</summary>
internal sealed partial class LineScan
{
    /// <summary>"28-622 to 40-622": the narrowest and the widest tyre, each whole.</summary>
    private bool TubeFromTo()
    {
        for (int i = 0; i + 6 < _items.Count; i++)
        {
            bool seven = Free(i) && Free(i + 2) && Free(i + 4) && Free(i + 6) && _items[i + 1].IsSign('-') && _items[i + 5].IsSign('-')
                && (_items[i + 3].IsSign('-') || _items[i + 3].Is("m:to") || _items[i + 3].Is("m:max") || _items[i + 3].Is("m:and"));
            if (seven && IsSeat(_items[i + 2].Value) && IsSeat(_items[i + 6].Value) && _items[i + 2].Value >= 200 && _items[i + 6].Value >= 200 && _items[i].Value < _items[i + 4].Value && _items[i].Value >= 10 && _items[i + 4].Value <= 132)
            {
                Length("narrowestTyre", i);
                Length("widestTyre", i + 4);
                Take("seat", _items[i + 2].Text, i + 2, i + 2);
                if (_items[i + 6].Value != _items[i + 2].Value)
                {
                    Take("otherSeat", _items[i + 6].Text, i + 6, i + 6);
                }

                _items[i + 6].Used = true;
                return true;
            }
        }

        return false;
    }

    /// <summary>"700C x 18/25", "700x18-25C": the label with the narrowest and the widest tyre.</summary>
    private bool TubeLabel()
    {
        for (int i = 0; i + 4 < _items.Count; i++)
        {
            if (!Free(i) || _items[i].Value != 700)
            {
                continue;
            }

            bool letter = _items[i + 1] is { Glued: true, Text: "c" };
            int at = i + (letter ? 2 : 1);
            if (at + 3 >= _items.Count || !_items[at].IsSign('x') || !Free(at + 1) || !(_items[at + 2].IsSign('/') || _items[at + 2].IsSign('-')) || !Free(at + 3))
            {
                continue;
            }

            bool behind = at + 4 < _items.Count && _items[at + 4] is { Glued: true, Text: "c" };
            letter |= IsSeatInBrackets(at + 4, 622);
            bool whole = _items[at + 1].Value == decimal.Truncate(_items[at + 1].Value) && _items[at + 3].Value == decimal.Truncate(_items[at + 3].Value);
            if ((letter || behind) && whole && _items[at + 1].Value is >= 16 and < 60 && _items[at + 3].Value > _items[at + 1].Value && _items[at + 3].Value <= 64)
            {
                Length("narrowestTyre", at + 1);
                Length("widestTyre", at + 3);
                Keep("seat", "622", i, behind ? at + 4 : at + 3);
                return true;
            }
        }

        return false;
    }

    /// <summary>"700x32/47 (622)": the bead seat of a label right behind it.</summary>
    private bool IsSeatInBrackets(int at, int seat)
    {
        bool said = at + 2 < _items.Count && _items[at].IsSign('(') && _items[at + 1] is { IsNumber: true, IsFraction: false, Unit: "" or "mm" } && _items[at + 1].Value == seat && _items[at + 2].IsSign(')');
        if (said)
        {
            _items[at + 1].Used = true;
        }

        return said;
    }

    private static bool IsRangeWord(SpecItem item) => item.Is("m:to") || item.Text is "alle" or "al" or "aux" or "ai" || (item.Is("m:max") && item.Text is "bis" or "hasta" or "tot" or "fino" or "jusqu" or "up" or "t");

    /// <summary>"Bead seat 622, tyres 28 to 47 mm": the narrowest and the widest tyre apart from the bead seat.</summary>
    private void TubeApart()
    {
        if (!Values.ContainsKey("seat"))
        {
            return;
        }

        for (int i = 0; i + 2 < _items.Count; i++)
        {
            bool joined = _items[i + 1].IsSign('-') || _items[i + 1].IsSign('/') || _items[i + 1].Is("m:and") || IsRangeWord(_items[i + 1]);
            bool pair = Free(i) && Free(i + 2) && joined && _items[i].IsMillimetre && _items[i + 2].IsMillimetre && !_items[i].IsFraction && !_items[i + 2].IsFraction
                && _items[i].Value is >= 16 and < 100 && _items[i + 2].Value > _items[i].Value && _items[i + 2].Value <= 132;
            bool open = (i > 0 && Links(_items[i - 1])) || (i + 3 < _items.Count && Links(_items[i + 3]));
            if (pair && !open && (TopicOf(i) is "t:tyre" or "n:width" || TopicOf(i + 2) is "t:tyre" or "n:width"))
            {
                Length("narrowestTyre", i);
                Length("widestTyre", i + 2);
                return;
            }
        }
    }

    private void ReadTube()
    {
        bool sizes = TubeFromTo() || TubeLabel();
        for (int i = 0; i + 4 < _items.Count && !sizes; i++)
        {
            // 18/25-622, 18-25 x 622, 622 x 18/25, 28 to 47-622.
            bool worded = IsRangeWord(_items[i + 1]) && (_items[i + 3].IsSign('-') || _items[i + 3].IsSign('x')) && IsSeat(_items[i + 4].Value) && _items[i].Value < _items[i + 2].Value && !(i > 0 && Links(_items[i - 1]));
            worded |= _items[i + 1].IsSign('x') && IsRangeWord(_items[i + 3]) && _items[i].Value >= 300 && IsSeat(_items[i].Value) && _items[i + 2].Value < _items[i + 4].Value && !(i + 5 < _items.Count && Links(_items[i + 5]));
            bool five = Free(i) && Free(i + 2) && Free(i + 4) && (worded || (Links(_items[i + 1]) && Links(_items[i + 3])));
            if (!five)
            {
                continue;
            }

            (int narrow, int wide, int seat) = IsSeat(_items[i + 4].Value) ? (i, i + 2, i + 4) : (i + 2, i + 4, i);
            if (IsSeat(_items[seat].Value) && _items[narrow].Value < _items[wide].Value && _items[wide].Value <= 132 && _items[narrow].Value >= 10
                && !(seat == i && (_items[i + 1].IsSign('/') || _items[i + 3].IsSign('x'))))
            {
                Length("narrowestTyre", narrow);
                Length("widestTyre", wide);
                Take("seat", _items[seat].Text, seat, seat);
                if (i + 6 == _items.Count && Links(_items[i + 5]))
                {
                    Refuse("seat", i, i + 5, "a figure is missing behind the last sign", LineDoubtKind.Broken);
                }

                if (seat == i + 4 && seat + 2 < _items.Count && (_items[seat + 1].IsSign('/') || (_items[seat + 1].IsSign('-') && _items[seat + 1].Glued)) && Free(seat + 2) && IsSeat(_items[seat + 2].Value) && _items[seat + 2].Value >= 200)
                {
                    Take("otherSeat", _items[seat + 2].Text, seat + 2, seat + 2);
                }

                sizes = true;
            }
            else if (_items[seat].Value >= 200)
            {
                Refuse("seat", i, i + 4, "narrowest and widest tyre and the bead seat are expected, such as 18/25-622");
                sizes = true;
            }
            else
            {
                continue;
            }

            break;
        }

        for (int i = 0; i + 2 < _items.Count && !sizes && !Values.ContainsKey("seat"); i++)
        {
            if (Free(i) && Free(i + 2) && _items[i + 1].IsSign('/') && !InTriple(i) && _items[i].Value >= 300 && _items[i + 2].Value >= 300 && _items[i].IsMillimetre && _items[i + 2].IsMillimetre && IsSeat(_items[i].Value) && IsSeat(_items[i + 2].Value) && Math.Abs(_items[i].Value - _items[i + 2].Value) is > 0 and < 20)
            {
                // "28\" 622/635": one tube for both.
                Take("seat", _items[i].Text, i, i);
                Take("otherSeat", _items[i + 2].Text, i + 2, i + 2);
            }
        }

        if (!sizes)
        {
            ReadSeat("seat");
            SettleSeat("seat");
            TubeApart();
            TubeRangeAlone();
        }

        Words("ValveStem", "valve");
        StemByPlace();
        SettleShortValve();
        for (int i = 0; i < _items.Count; i++)
        {
            bool stem = Free(i) && TopicOf(i) == "t:stem" && _items[i] is { Unit: "mm", Places: 0, Value: >= 30 and <= 120 and not 35 } && !JoinsClosely(i) && (Values.ContainsKey("valve") || Values.ContainsKey("seat"));
            if (stem || (Free(i) && !JoinsClosely(i) && _items[i].Value is >= 20 and <= 120 && _items[i].IsMillimetre && IsBehindStem(i)))
            {
                Length("valveLength", i);
            }
            else if (Free(i) && (_items[i].Unit == "mm" || TopicOf(i) is "t:valvelength" || (TopicOf(i) is "t:length" && Clause(i, "t:valve"))) && (TopicOf(i) is "" or "t:valve" or "t:valvelength" or "t:length" or "t:tube" || (_items[i].Places == 0 && IsValveStem(i))) && Free(i) && _items[i].IsMillimetre && _items[i].Value is >= 20 and <= 120 && !JoinsClosely(i))
            {
                Length("valveLength", i);
            }
        }

        ValveLengthByHand();
    }

    /// <summary>"65 mm stem": of a valve, where no bar is.</summary>
    private bool IsValveStem(int i) => Link(i) is >= 0 and int link && IsStemOfValve(_items[link]) && _items[link].Clause == _items[i].Clause && (Values.ContainsKey("valve") || _items.Exists(o => o.Is("t:valve")));

    private static bool IsStemOfValve(SpecItem item) => item.Kind == SpecTokenKind.Word && WordLists.ScanTubesIsStemOfValve.Contains(item.Text);

    /// <summary>"Tubeless valve, French": a valve by the country that it is named after, of a valve or beside the word for one, and not where it was made.</summary>
    private void StemByPlace()
    {
        bool valve = (_slot == Slot.FrontTubelessValve || _slot == Slot.RearTubelessValve) && (Anywhere("t:valve") >= 0 || _items.Count(o => o.Kind == SpecTokenKind.Word && o.Terms.IsEmpty) <= 1);
        for (int i = 0; i < _items.Count && !Values.ContainsKey("valve"); i++)
        {
            string key = _items[i].Text switch
            {
                "french" or "francaise" or "francais" or "franzosisch" or "franzosisches" or "franzosischem" or "franzosischen" or "franz" or "frances" or "francesa" or "francese" or "frans" or "franse" => "presta",
                "american" or "americaine" or "americana" or "amerikanisch" or "amerikanisches" or "amerikaans" or "amerikaanse" => "schrader",
                "auto" when IsBeforeValveLength(i) => "schrader",
                _ => "",
            };
            bool near = valve || IsNearValve(i) || IsBeforeValveLength(i);
            bool made = (i > 0 && _items[i - 1].Text is "made" or "in" or "aus" or "marque" or "marca" or "merk" or "marke") || (i + 1 < _items.Count && WordLists.ScanTubesStemByPlace.Contains(_items[i + 1].Text));
            if (key.Length > 0 && near && !made && !Negated(i))
            {
                Keep("valve", key, i, i);
            }
        }
    }

    /// <summary>"28/32-622 francese 60 mm", "auto 35 mm": the length of a valve right behind the word, where the sizes of the tube were read.</summary>
    private bool IsBeforeValveLength(int i) =>
        (_slot == Slot.FrontInnerTube || _slot == Slot.RearInnerTube) && Values.ContainsKey("seat") && i + 1 < _items.Count && _items[i + 1] is { IsNumber: true, Unit: "mm", Places: 0, Value: >= 30 and <= 100 } && _items[i + 1].Clause == _items[i].Clause && !Joins(i + 1);

    private bool IsNearValve(int i)
    {
        for (int j = Math.Max(0, i - 3); j < _items.Count && j <= i + 3; j++)
        {
            if (_items[j].Clause == _items[i].Clause && _items[j].Is("t:valve"))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Presta valve 48 mm", "valvola Presta da 60": the figure right behind the name of a valve.</summary>
    private bool IsBehindStem(int i)
    {
        for (int j = i + 1; j < _items.Count && j <= i + 2 && _items[i].Unit == "mm" && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j++)
        {
            if (!_items[j].Terms.IsEmpty && _items[j].Terms[0].StartsWith("v:ValveStem=", StringComparison.Ordinal) && !(j + 1 < _items.Count && _items[j + 1].IsNumber))
            {
                return true;
            }
        }

        for (int j = i - 1; j >= 0 && j >= i - 3 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j--)
        {
            if (SetAside.IsFor(_items[j]) || (SetAside.IsWith(_items[j]) && i + 1 < _items.Count && _items[i + 1] is { Kind: SpecTokenKind.Word, Terms.IsEmpty: true } && _items[i + 1].Clause == _items[i].Clause))
            {
                // "Presta for 50 mm rims", "presta con 40 parches"
                return false;
            }

            if (!_items[j].Terms.IsEmpty && _items[j].Terms[0].StartsWith("v:ValveStem=", StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
