namespace Lugwork.Reading;

/// <summary>Seat tube, limits and leftovers of a frame.</summary>
internal sealed partial class LineScan
{
    private void ReadSeatTube()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].Value is < 15 or > 60)
            {
                continue;
            }

            string topic = TopicOf(i);
            if (topic is "t:inner" && Clause(i, "t:seattube"))
            {
                Take("seatTube", _items[i].Text, i, i);
                continue;
            }

            if (topic is not ("t:seattube" or "t:post" or "t:dropper"))
            {
                continue;
            }

            bool outside = HasMark(i, "m:outside") || (_items[Link(i)].Clause != _items[i].Clause && HasMark(Link(i), "m:outside"));
            bool inside = HasMark(i, "m:inside") || FindMark(i, "t:inner", 1) >= 0 || FindMark(i, "m:inside", 1) >= 0 || topic is not "t:seattube";
            FieldReading clamp = _fields["seatTubeOutside"].Read(_items[i].Text);
            _claimed[Link(i)] = true;
            if (outside)
            {
                Take("seatTubeOutside", _items[i].Text, i, i);
            }
            else if (inside || clamp.Keys.Length != 1)
            {
                Take("seatTube", _items[i].Text, i, i);
            }
            else
            {
                Several("seatTube", [_items[i].Text], i, i, "the figure can be the bore or the outside of the seat tube");
            }
        }
    }

    /// <summary>"Seat tube 31.6 inside, outside 34.9": a figure right behind a word for its side, in a line about the seat tube.</summary>
    private void ReadSeatTubeSides()
    {
        OutsideInInches();
        bool tube = Anywhere("t:seattube") >= 0;
        if (!tube && Anywhere("t:post") < 0)
        {
            return;
        }

        for (int i = 1; i < _items.Count && !Full; i++)
        {
            int word = i - 1;
            while (word > i - 4 && word > 0 && (_items[word].IsSign('.') || _items[word].IsSign(':') || _items[word].IsSign('=') || _items[word].IsSign('\u00F8')))
            {
                word--;
            }

            if (!Free(i) || !_items[i].IsMillimetre || _items[i].Value is < 20 or > 45 || TopicOf(i) is "t:headtube" or "t:headset" or "t:steerer")
            {
                continue;
            }

            // "27.2 ID, 31.8 OD": the word behind, where none stands before.
            bool before = _items[word].Is("m:outside") || _items[word].Is("m:inside") || _items[word].Is("t:inner");
            word = !before && i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && _items[i + 1].Text is "id" or "od" or "int" or "ext" && !(i + 2 < _items.Count && _items[i + 2].IsNumber) ? i + 1 : word;
            bool collar = _items[word].Is("m:band") && Anywhere("t:frontmech") < 0 && _fields["seatTubeOutside"].Read(_items[i].Text).Keys.Length == 1;
            if (!tube && !(collar && IsRightBehindPost(i)))
            {
                // "Post 30.9, clamp 34.9": beside a post the collar alone says the outside.
                continue;
            }

            if (_items[word].Is("m:outside") || collar)
            {
                Take("seatTubeOutside", _items[i].Text, i, i);
            }
            else if (_items[word].Is("m:inside") || _items[word].Is("t:inner"))
            {
                Take("seatTube", _items[i].Text, i, i);
            }
        }
    }

    /// <summary>"Post 30.9, clamp 34.9": the last figure before is of the post, in this clause or the one before, and a little smaller.</summary>
    private bool IsRightBehindPost(int i)
    {
        int figure = i - 1;
        while (figure > 0 && figure > i - 6 && !_items[figure].IsNumber)
        {
            figure--;
        }

        return _items[figure].IsNumber && _items[i].Clause - _items[figure].Clause is 0 or 1 && _items[i].Value - _items[figure].Value is > 0 and < 9 && TopicOf(figure) is "t:post";
    }

    /// <summary>"Seat tube OD 1-1/4 in", "seat collar 1-3/8": the outside of a seat tube in inches, as it is listed in millimetres.</summary>
    private void OutsideInInches()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            bool inches = Free(i) && (_items[i].IsFraction || _items[i].IsInch) && BandSize(_items[i]) > 0;
            if (inches && ((TopicOf(i) is "t:seattube" && (HasMark(i, "m:outside") || _items[Link(i)].Is("m:outside"))) || TopicOf(i) is "t:seatclamp") && Anywhere("t:frontmech") < 0)
            {
                Take("seatTubeOutside", ItemCutter.Plain(BandSize(_items[i])), i, i);
            }
        }
    }

    /// <summary>"SP: 27.2": the letters of a seatpost before a sign and the size of one.</summary>
    private void PostByLetters()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            int pen = i + 1 < _items.Count && _items[i + 1] is { Text: "pen", Kind: SpecTokenKind.Word } && _items[i + 1].Clause == _items[i].Clause ? i + 1 : i > 1 && _items[i - 1].Text is "van" or "maat" or "da" or "di" ? i - 2 : i - 1;
            if (Free(i) && _items[i].IsMillimetre && _items[i].Value is > 24 and < 36 && pen >= 0 && IsPen(_items[pen], _items[i].Value) && IsNominal(_items[i].Text) && (IsOnlyFigureOfClause(i) || (pen < i && _items[i].Value is 27.2m or 30.9m or 31.6m && !JoinsClosely(i))) && !Mentions(i, OfOtherPost) && !Clause(i, "t:stem") && !Clause(i, "m:quill") && !Clause(i, "t:seatclamp") && !Clauses(_items[i].Clause).Any(o => o.Text is "te" or "troppo" or "dik" or "dun" or "los" or "past"))
            {
                // "Pen 27,2", "canotto da 27,2": so the Dutch and the Italians call a seatpost.
                Take("seatTube", _items[i].Text, i, i);
                continue;
            }

            if (i > 1 && Free(i) && _items[i].IsMillimetre && _items[i].Value is > 24 and < 36 && (_items[i - 1].IsSign(':') || _items[i - 1].IsSign('=')) && _items[i - 2].Text is "sp" or "stp" or "pen" && IsNominal(_items[i].Text) && IsOnlyFigureOfClause(i) && !Mentions(i, OfOtherPost))
            {
                Take("seatTube", _items[i].Text, i, i);
            }
        }
    }

    /// <summary>The Italian word is of a steerer too: with the size of one it says nothing.</summary>
    private static bool IsPen(SpecItem item, decimal size) =>
        !item.IsFraction && (item.Text is "pen" || (item.Text is "canotto" or "cannotto" or "canoto" or "reggi" && size is 26.8m or 27.2m or 27.4m or 29.4m or 29.6m or 29.8m or 30.2m or 30.4m or 30.6m or 30.9m or 31.4m or 31.6m));

    private bool IsOnlyFigureOfClause(int i) => Clauses(_items[i].Clause).Count(o => o.IsNumber) == 1;

    /// <summary>"Stütze mindestens 80 mm einstecken": a least or most figure in a clause about how far a post goes in.</summary>
    private void InsertionByLimit(string field, decimal most, string limit, string other)
    {
        for (int i = 0; i < _items.Count && !Full && !Values.ContainsKey(field); i++)
        {
            bool own = Free(i) && _items[i].IsMillimetre && !_items[i].IsFraction && _items[i].Value >= 40 && _items[i].Value <= most && !JoinsClosely(i) && LimitOf(i) == limit && HasMark(i, limit) && !HasMark(i, other);
            if (own && (Clause(i, "t:insertion") || (Anywhere("t:insertion") >= 0 && Clause(i, "t:post"))) && TopicOf(i) is "t:post" or "t:insertion" or "t:dropper" or "t:seattube" or "")
            {
                Length(field, i);
            }
        }
    }

    /// <summary>The figure of a rotor limit: beside a word for rotors, or "up to" behind the brake mount.</summary>
    private void ReadRotorLimit(string field)
    {
        InchesOfRotor(field);
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].Value is < 120 or > 250)
            {
                continue;
            }

            string topic = TopicOf(i);
            bool rotor = topic is "t:rotor" || (Clause(i, "t:rotor") && topic is not ("t:travel" or "t:axletocrown" or "t:insertion" or "t:fork" or "t:length"));
            bool mount = FindMark(i, "m:pm", 3) >= 0 || FindMark(i, "m:fm", 3) >= 0 || FindMark(i, "m:is", 3) >= 0;
            bool clears = topic == "t:tyre" && _items[Link(i)].Text == "clears" && IsNominalRotor(_items[i]);
            if ((HasMark(i, "m:max") || IsToFigure(i)) && !IsRotorOfFork(i) && (topic is "t:brake" or "t:rotor" || rotor || ((topic.Length == 0 || clears) && mount)))
            {
                Length(field, i);
            }
        }
    }

    /// <summary>"FM 140, rotors to 160": the rotor opens the clause, and the mount was told in the one before.</summary>
    private bool IsToFigure(int i) => i > 3 && _items[i - 1] is { Text: "ø" } ? IsBehindTo(i - 1, i) : IsBehindTo(i, i);

    private bool IsBehindTo(int at, int i) =>
        at > 2 && _items[at - 1].Text is "to" && _items[at - 2].Is("t:rotor") && _items[at - 2].Clause == _items[i].Clause && !(_items[at - 3].Clause == _items[i].Clause && _items[at - 3].Kind == SpecTokenKind.Word) && (FindMark(i, "m:pm", 1) >= 0 || FindMark(i, "m:fm", 1) >= 0 || FindMark(i, "m:is", 1) >= 0);

    /// <summary>"Forcella fino a 180 di disco": in a line of a frame the rotor of the other end.</summary>
    private bool IsRotorOfFork(int i) =>
        _slot == Slot.Frame && (Clause(i, "t:fork") || Clause(i, "v:CrownsAllowed=single") || Clause(i, "v:CrownsAllowed=dual")) && !Clause(i, "m:rear") && !Clause(i, "t:frame");

    /// <summary>"7 in (180 mm)": the inches of a rotor beside its millimetres say the same; another size beside them is left to doubt.</summary>
    private void InchesOfRotor(string field)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || _items[i] is not { Unit: "in", IsFraction: false } || MillimetresOfRotor(_items[i].Value) is not (> 0 and decimal size))
            {
                continue;
            }

            for (int j = Math.Max(0, i - 4); j < _items.Count && j <= i + 4; j++)
            {
                if (j != i && Free(j) && _items[j].IsMillimetre && (_items[j].Value == size || (size == 203 && _items[j].Value == 200)) && Math.Abs(_items[j].Clause - _items[i].Clause) <= 1 && (Clause(i, "t:rotor") || Clause(j, "t:rotor")))
                {
                    _items[i].Used = true;
                    if (HasMark(i, "m:max") && !Values.ContainsKey(field))
                    {
                        Length(field, j);
                    }
                }
            }
        }
    }

    private static bool IsNominalRotor(SpecItem item) => item is { IsFraction: false, Value: 140 or 160 or 180 or 200 or 203 or 220 or 223 };

    private static decimal MillimetresOfRotor(decimal inches) => inches switch { 5.5m => 140, 6 or 6.3m => 160, 7 => 180, 8 => 203, 9 => 220, _ => 0 };

    /// <summary>A size of the steerer is no bore of a frame: several head tubes take it.</summary>
    private void ReadSteererOfFrame()
    {
        if (Values.Count > 0)
        {
            return;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            bool inch = Free(i) && (_items[i].IsFraction || _items[i].IsInch) && _items[i].Value is >= 1 and < 2;
            bool topic = Clause(i, "t:headtube") || Clause(i, "t:headset") || Clause(i, "t:steerer");
            if ((inch && (TopicOf(i) is "t:headtube" or "t:headset" or "t:steerer" || topic)) || (_items[i].Is("m:tapered") && topic))
            {
                Several("headTubeUpper", ["44", "IS41", "IS42"], i, i, "a size of the steerer is no bore: several head tubes take it");
                return;
            }
        }
    }

    /// <summary>Words for limits of the frame that are said by one word and a figure elsewhere.</summary>
    private void ReadUpperLimits()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && TopicOf(i) is "t:travel" && _items[i].IsMillimetre && (Clause(i, "t:shock") || HasMark(i, "m:rear")) && !Clause(i, "t:fork"))
            {
                _items[i].Used = true;
            }
        }
    }

    /// <summary>27.2, 30.9 or 31.6 by itself in a list of what else a frame has: nothing but the post has such a size.</summary>
    private void BarePost()
    {
        if (Values.Count < 2 || Doubts.Count > 0 || Values.ContainsKey("seatTube") || Values.ContainsKey("seatTubeOutside"))
        {
            return;
        }

        int found = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && _items[i].Value is 27.2m or 30.9m or 31.6m && Free(i) && _items[i].IsMillimetre && IsAloneInClause(i))
            {
                if (found >= 0)
                {
                    return;
                }

                found = i;
            }
        }

        if (found >= 0)
        {
            Take("seatTube", _items[found].Text, found, found);
        }
    }

    private bool IsAloneInClause(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item != _items[i] && item.Kind != SpecTokenKind.Sign)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Bare figures of a frame say nothing by themselves: they are left over.</summary>
    private void OutsideOfLists()
    {
        if (Values.Count > 0 || Doubts.Count > 0)
        {
            return;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && _items[i].IsMillimetre && Link(i) < 0 && _fields["seatTube"].Read(_items[i].Text).Keys is [string key] && _items[i].Value is > 20 and < 36)
            {
                Several("seatTube", [key], i, i, "the figure is common on several places, and the line does not say of what");
                return;
            }
        }
    }
}
