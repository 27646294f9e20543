namespace Lugwork.Reading;

/// <summary>Every figure of a line has to be accounted for: read, known to be of something without an interface, or in doubt.</summary>
internal sealed partial class LineScan
{
    private void LeftFigures()
    {
        for (int i = 0; i < _items.Count && Doubts.Count == 0; i++)
        {
            if (_items[i].IsNumber && !Taken(i) && !IsAccounted(i))
            {
                Several("", [], i, i, "a figure is left over that may change what the line says");
            }
        }
    }

    /// <summary>The figure stands in the words of a value.</summary>
    private bool Taken(int i) => _items[i].Used;

    /// <summary>What a figure is of that no value was read from.</summary>
    private bool IsAccounted(int i)
    {
        SpecItem item = _items[i];
        if (WordLists.ScanLeftFiguresIsAccounted.Contains(item.Unit))
        {
            return true;
        }

        if (item.Unit is "kg" or "lb")
        {
            // A bicycle or a part weighs little; another load makes the one that was read doubtful.
            return item.Value <= 35 || TopicOf(i) == "n:weight" || TopicOf(i) is "t:rider" or "t:riderweight" || !Values.Values.Any(v => _fields[v.Field].Type.Name == nameof(Load));
        }

        if (item.Unit == "speed")
        {
            return _slot == Slot.Frame || _slot == Slot.RearWheel || _slot == Slot.FrontWheel || _slot == Slot.Chainring || _slot == Slot.RearShifter || _slot == Slot.FrontShifter || _slot == Slot.BottomBracket || _slot == Slot.Pedals || _slot == Slot.FrontTyre || _slot == Slot.RearTyre;
        }

        if (item.Unit.Length == 0 && i + 1 < _items.Count && _items[i + 1] is { Kind: SpecTokenKind.Word, Glued: true, Text: "u" or "uhr" or "uur" } && item.Value is >= 0 and <= 24)
        {
            // A time of the day.
            return true;
        }

        if (item.Value is >= 1950 and <= 2060 && item.Unit.Length == 0)
        {
            return true;
        }

        if (OnlyWords() || IsLargeNumber(i) || IsThreadOfShell(i) || IsOneRing(i) || IsOfRider(i) || IsAxleOfHub(i) || IsOfBrake(i) || IsCutSteerer(i) || IsInchesOfRead(i) || IsLinkedToAccounted(i) || IsLabelOfTyre(i) || IsBeforeLength(i) || IsRise(i) || IsWidthInCentimetres(i) || IsSprocketOfDriver(i) || IsOfOnePiece(i))
        {
            return true;
        }

        if (_slot == Slot.Frame && IsOfFrameBeside(i))
        {
            return true;
        }

        if ((_slot == Slot.Frame && OtherEnd(i, true)) || (_slot == Slot.Fork && OtherEnd(i, false)))
        {
            return true;
        }

        return IsSaidAgain(i) || IsMillimetresOfRead(i) || IsLengthOfBody(i) || IsInchPairOfRead(i) || IsBoreOfCup(i) || IsSealOfBearing(i) || IsOutside(i) || IsGears(i) || IsOfSomethingElse(i) || IsBolt(i) || IsOfThisPart(i) || IsLabelBesideSize(i) || IsPieceOfLabel(i) || IsCount(i) || IsOfSet(i) || (_slot == Slot.Crankset && (IsOfPieces(i) || IsDepthOfSplines(i)));
    }

    /// <summary>The same figure was read elsewhere in the line.</summary>
    private bool IsSaidAgain(int i) => ReadFigures.Contains((_items[i].Value, _items[i].IsFraction)) || IsRotorOfMount(i);

    /// <summary>PM 6" (160 mm): the rotor of the mount that was read, in the other unit.</summary>
    private bool IsRotorOfMount(int i) =>
        IsInchesOfMount(i) || (_items[i].Value >= 140 && _items[i].IsMillimetre && Values.Values.Any(v => _fields[v.Field].Type.Name == nameof(Brakes.BrakeMount) && v.Key.EndsWith("-" + _items[i].Text, StringComparison.Ordinal)));

    /// <summary>PM160 (6"): the same rotor in inches, as it is spoken of.</summary>
    private bool IsInchesOfMount(int i) =>
        _items[i] is { IsInch: true, IsFraction: false, Value: 6 or 7 or 8 } && Values.Values.Any(v => _fields[v.Field].Type.Name == nameof(Brakes.BrakeMount) && v.Last < i && i - v.Last <= 3 && (_items[i].Value == 6 ? v.Key.EndsWith("-160", StringComparison.Ordinal) : _items[i].Value == 7 ? v.Key.EndsWith("-180", StringComparison.Ordinal) : v.Key.EndsWith("-200", StringComparison.Ordinal) || v.Key.EndsWith("-203", StringComparison.Ordinal)));

    private HashSet<(decimal Value, bool IsFraction)>? _readFigures;

    /// <summary>The figures from which values were read, each once.</summary>
    private HashSet<(decimal Value, bool IsFraction)> ReadFigures
    {
        get
        {
            if (_readFigures is null)
            {
                _readFigures = [];
                foreach (LineFinding value in Values.Values)
                {
                    for (int j = value.First; j <= value.Last; j++)
                    {
                        if (_items[j].IsNumber && _items[j].Used)
                        {
                            _readFigures.Add((_items[j].Value, _items[j].IsFraction));
                        }
                    }
                }
            }

            return _readFigures;
        }
    }

    /// <summary>A word close to it says a thing without an interface, or one that this part has no field for.</summary>
    private bool IsOfSomethingElse(int i)
    {
        int link = Link(i);
        if (link < 0 || Math.Abs(link - i) > 8)
        {
            return false;
        }

        string topic = TopicIn(_items[link]);
        if (topic.StartsWith("n:", StringComparison.Ordinal))
        {
            return true;
        }

        bool quantity = WordLists.ScanLeftFiguresIsOfSomethingElse.Contains(topic);
        if (quantity && _items[link].Clause == _items[i].Clause && !(_items[link].Text is "l" && IsLikeOneRead(i) && !Values.ContainsKey("rearAxleThread") && !Values.ContainsKey("frontAxleThread")))
        {
            return TopicFields.Of(_slot, topic, true, false, true, false) is not string field || !Values.ContainsKey(field);
        }

        bool part = topic.StartsWith("t:", StringComparison.Ordinal) && _items[link].Clause == _items[i].Clause && Parts.Contains(topic) && !NamedParts.Of(_slot).Mates.Contains(topic, StringComparison.Ordinal);
        return part && !IsLikeOneRead(i);
    }

    private bool? _onlyWords;

    /// <summary>Everything that was read was read from words, and none of it is a number of speeds: a figure changes nothing.</summary>
    private bool OnlyWords() => _onlyWords ??= Values.Values.All(v => !Enumerable.Range(v.First, v.Last - v.First + 1).Any(i => _items[i].IsNumber) && _fields[v.Field].Type.Name is not ("FreehubBody" or "CassettePattern" or "SpeedClass" or "HubStandard"));

    /// <summary>"30 mm external" beside an inner width.</summary>
    private bool IsOutside(int i) =>
        Values.ContainsKey("innerWidth") && ((i > 1 && _items[i - 1].IsSign('.') && _items[i - 2].Is("m:outside")) || (i + 1 < _items.Count && (_items[i + 1].Is("m:outside") || _items[i + 1].Is("v:DropperRouting=external"))) || (i > 0 && (_items[i - 1].Is("m:outside") || _items[i - 1].Is("v:DropperRouting=external"))));

    /// <summary>1x12, 3x9: the rings before the sprockets.</summary>
    private bool IsGears(int i)
    {
        bool rings = _items[i].Value is 1 or 2 or 3 && i + 2 < _items.Count && _items[i + 1].IsSign('x') && _items[i + 2].IsNumber && _items[i + 2].Value is >= 5 and <= 13;
        bool sprockets = _items[i].Value is >= 5 and <= 13 && i >= 2 && _items[i - 1].IsSign('x') && _items[i - 2].IsNumber && _items[i - 2].Value is 1 or 2 or 3;
        return (rings || (sprockets && !HasSpeeds())) && !_items[i].IsFraction && _slot != Slot.RearWheel;
    }

    private bool HasSpeeds() => Values.ContainsKey("chain") || Values.ContainsKey("speeds") || _slot == Slot.Chain;

    /// <summary>1x: one ring, and no figure behind it.</summary>
    private bool IsOneRing(int i) =>
        _items[i] is { Value: 1 or 2 or 3, IsFraction: false, Unit: "" } && i + 1 < _items.Count && _items[i + 1] is { Glued: true, Text: "x" } && !(i + 2 < _items.Count && _items[i + 2].IsNumber);

    /// <summary>12 mm beside a hub end that has this axle.</summary>
    private bool IsAxleOfHub(int i)
    {
        if (_items[i] is { Value: 10, IsMillimetre: true } && Values.TryGetValue("rear", out LineFinding? trial) && trial.Key == "R116")
        {
            // "116 mm, 10-mm-Schrauben": the bolts that hold the one hub of this width.
            return true;
        }

        if (_items[i].Value is not (5 or 9 or 10 or 12 or 15 or 20) || !_items[i].IsMillimetre || Joins(i))
        {
            return false;
        }

        LineFinding? hub = Values.GetValueOrDefault("rear") ?? Values.GetValueOrDefault("front") ?? Values.GetValueOrDefault("hub");
        return hub is not null && (hub.Key.Contains("-" + _items[i].Text, StringComparison.Ordinal) || hub.Key.EndsWith("QR" + _items[i].Text, StringComparison.Ordinal));
    }

    /// <summary>The distance of the eyes of a mount, 51 or 74 mm, and the inside of a drum.</summary>
    private bool IsOfBrake(int i) =>
        (_items[i].Value is 51 or 74 or 74.2m && _items[i].Unit == "mm" && (FindMark(i, "m:is", 1) >= 0 || FindMark(i, "m:pm", 1) >= 0))
        || (_items[i].Value is 70 or 90 && i > 0 && _items[i - 1].Is("v:BrakeType=drum"));

    /// <summary>The length of a steerer, in a line about the steerer.</summary>
    private bool IsCutSteerer(int i) =>
        _slot == Slot.Fork && _items[i] is { Unit: "mm", Value: >= 150 and <= 350 } && Link(i) < 0 && Anywhere("t:steerer") >= 0 && (Values.ContainsKey("steerer") || Values.ContainsKey("steererShape")) && !Values.ContainsKey("travel") && !Values.ContainsKey("axleToCrown");

    /// <summary>The height of a rider beside a mass.</summary>
    private bool IsOfRider(int i) => _slot == Slot.Rider && _items[i].Unit is "" or "mm" or "in" && !Joins(i);

    /// <summary>As large as a figure that was read: it can be the other one of two.</summary>
    private bool IsLikeOneRead(int i)
    {
        foreach ((decimal value, _) in ReadFigures)
        {
            if (value > 0 && _items[i].Value / value is > 0.6m and < 1.7m)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>M3 to M8 is a bolt.</summary>
    private bool IsBolt(int i) => i > 0 && _items[i - 1].Text == "m" && _items[i].Glued && _items[i].Value is >= 3 and <= 8 && !_items[i].IsFraction;

    /// <summary>"Set of 2", "set van 2", "paar 2": a number of pieces.</summary>
    private bool IsOfSet(int i) =>
        _items[i] is { Value: 1 or 2 or 3 or 4 or 5 or 6 or 10, Unit: "", IsFraction: false } && !Joins(i) && i > 1 && WordLists.ScanLeftFiguresIsOfSet.Contains(_items[i - 1].Text)
        && WordLists.ScanLeftFiguresIsOfSet2.Contains(_items[i - 2].Text);

    /// <summary>One to four of something: "2 bottle cages", "pair of 2".</summary>
    private bool IsCount(int i) =>
        _items[i].Value is 1 or 2 or 3 or 4 && _items[i].Unit.Length == 0 && !_items[i].IsFraction && !Joins(i)
        && i + 1 < _items.Count && _items[i + 1] is { Kind: SpecTokenKind.Word, Glued: false } && !(i > 0 && _items[i - 1].IsNumber);
}
