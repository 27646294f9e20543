namespace Lugwork.Reading;

/// <summary>Holes of hubs and rims.</summary>
internal sealed partial class LineScan
{
    /// <summary>A hole that is named after its valve.</summary>
    private void ValveHoleByName()
    {
        for (int i = 0; i < _items.Count && !Values.ContainsKey("valveHole"); i++)
        {
            if (!(_items[i].Is("t:valvehole") || _items[i].Is("m:drilled")) || Negated(i))
            {
                continue;
            }

            bool figure = false;
            for (int j = i - 3; j <= i + 4; j++)
            {
                figure |= j >= 0 && j < _items.Count && _items[j].IsNumber && _items[j].Unit != "other" && _items[j].Clause == _items[i].Clause;
            }

            int named = _items[i].Is("v:ValveStem=presta") || _items[i].Is("v:ValveStem=schrader") ? i : -1;
            foreach (int j in (ReadOnlySpan<int>)[i - 1, i + 1, i + 2])
            {
                named = named < 0 && j >= 0 && j < _items.Count && _items[j].Clause == _items[i].Clause && (_items[j].Is("v:ValveStem=presta") || _items[j].Is("v:ValveStem=schrader")) ? j : named;
            }

            if (named >= 0 && !figure && !(Anywhere("v:ValveStem=presta") >= 0 && Anywhere("v:ValveStem=schrader") >= 0))
            {
                Take("valveHole", _items[named].Is("v:ValveStem=presta") ? "6.5" : "8.5", Math.Min(i, named), Math.Max(i, named));
            }
        }
    }

    /// <summary>"Hub: 12x142, 32h": the part before the colon that the line starts with; empty where it is neither hub nor rim, or both are named.</summary>
    private string HeadOfLine()
    {
        for (int i = 0; i < _items.Count && i < 5; i++)
        {
            if (_items[i].IsSign(':') || _items[i].IsSign('=') || _items[i].IsSign('\t'))
            {
                bool hub = Anywhere("t:hub") is >= 0 and int h && h < i;
                bool rim = Anywhere("t:rim") is >= 0 and int r && r < i;
                bool both = Anywhere("t:hub") >= 0 && Anywhere("t:rim") >= 0;
                return both || hub == rim ? "" : hub ? "t:hub" : "t:rim";
            }
        }

        return "";
    }

    /// <summary>"28 holes in the rim, 28 in the hub", "Löcher Nabe: 28": a count without its unit, in a line that names holes, and the only figure of its clause.</summary>
    private bool IsCountOfHoles(int i)
    {
        if (_items[i].Unit.Length > 0 || _items[i].IsFraction || _items[i].Value != decimal.Truncate(_items[i].Value) || Joins(i)
            || !(_namesHoles ??= _items.Exists(o => o.Unit == "holes" || (o.Kind == SpecTokenKind.Word && WordLists.ScanHolesIsCountOfHoles.Contains(o.Text)))))
        {
            return false;
        }

        foreach (SpecItem other in Clauses(_items[i].Clause))
        {
            if (other != _items[i] && other.IsNumber)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>"Llanta taladrada a 32", "forato 32", "percée en 36", "drilled 32", "36 gebohrt": a count right beside the word for drilling.</summary>
    private bool IsDrilledTo(int i)
    {
        int word = i > 1 && IsJoiningWord(_items[i - 1]) ? i - 2 : i - 1;
        bool behind = i + 1 < _items.Count && IsDrilledWord(_items[i + 1].Text) && _items[i + 1].Clause == _items[i].Clause && (i + 2 >= _items.Count || _items[i + 2].Kind == SpecTokenKind.Sign) && (i == 0 || _items[i - 1].Kind == SpecTokenKind.Sign || IsJoiningWord(_items[i - 1]));
        word = behind ? i + 1 : word;
        return _items[i] is { Unit: "", IsFraction: false, Value: 16 or 18 or 20 or 21 or 24 or 28 or 32 or 36 or 40 or 48 } && word >= 0 && _items[word].Clause == _items[i].Clause && IsDrilledWord(_items[word].Text) && !Joins(i)
            && !(i + 1 < _items.Count && !behind && _items[i + 1].Kind == SpecTokenKind.Word && (_items[i + 1].Is("m:or") || _items[i + 1].IsTopic));
    }

    /// <summary>"Cerchio da 36 fori montato su un mozzo da 141", "mozzo 148x12 e cerchio 584x25TSS a 32 fori": the holes follow the one, and the other has a figure of its own or stands well behind them. "Hub and rim 32 holes" are of both.</summary>
    private bool IsOfOneOfTwo(int i)
    {
        int link = Link(i);
        if (link < 0 || link > i || _items[link].Clause != _items[i].Clause)
        {
            return false;
        }

        string other = _items[link].Is("t:hub") ? "t:rim" : "t:hub";
        bool found = false;
        bool figure = false;
        for (int j = link - 1; j >= 0 && j >= link - Reach && _items[j].Clause == _items[i].Clause; j--)
        {
            figure |= _items[j].IsNumber;
            if (_items[j].Is(other))
            {
                found = true;
                break;
            }
        }

        if (found)
        {
            return figure && !(i + 1 < _items.Count && _items[i + 1].Is(other)) && !(i + 2 < _items.Count && _items[i + 2].Is(other));
        }

        for (int j = i + 1; j < _items.Count && j <= i + Reach && _items[j].Clause == _items[i].Clause; j++)
        {
            if (_items[j].Is(other))
            {
                return j > i + 2 && _items[i + 1].Text is not ("hub" or "rim");
            }
        }

        return false;
    }

    /// <summary>"28 radios", "32 spoke", "32L": a count of spokes or the German letter for holes.</summary>
    private bool IsCountOfSpokes(int i) =>
        _items[i] is { Unit: "", IsFraction: false } && _items[i].Value == decimal.Truncate(_items[i].Value) && !Joins(i) && i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause
        && ((_items[i + 1].Is("n:spokes") && !(i + 2 < _items.Count && ((_items[i + 2].IsNumber && _items[i + 2].Unit != "other") || _items[i + 2].IsSign(':')))) || (_items[i + 1].Text is "l" && (_items[i + 1].Glued || (IsSpokeCount(_items[i].Value) && (i + 2 >= _items.Count || _items[i + 2].Clause != _items[i].Clause)))));

    /// <summary>"36er Nabe", "32er Felge": a German count right before what has the holes. A 36er rim is one of 36 in as well, where its bead seat is not said.</summary>
    private string? HolesByEnding(int i) =>
        _items[i] is not { UnitWord: "er", Value: 32 or 36 or 40 or 48 } || i + 1 >= _items.Count || _items[i + 1].Clause != _items[i].Clause ? null
        : _items[i + 1].Is("t:hub") && !_items[i + 1].Is("t:stroke") ? "hubHoles"
        : _items[i + 1].Is("t:rim") && (_items[i].Value != 36 || Values.ContainsKey("beadSeat") || Values.ContainsKey("hubHoles")) ? "rimHoles" : null;

    /// <summary>"Moyeu 28 trous par côté", "flange 16 holes each", "28 holes on the left": half of the holes, or nobody knows.</summary>
    private bool IsPerSide(int i)
    {
        for (int j = i + 1; j < _items.Count && j <= i + 5 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j++)
        {
            if (_items[j].Kind == SpecTokenKind.Word && (IsSide(_items[j].Text) || WordLists.ScanHolesIsPerSide.Contains(_items[j].Text)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A drum in the clause of the holes, or right before it behind a comma.</summary>
    private bool IsOfDrum(int i)
    {
        for (int j = i - 1; j >= 0 && j >= i - 5; j--)
        {
            if (_items[j].Is("v:BrakeType=drum"))
            {
                return !IsDrumOfBody(j) && !Clause(i, "t:rim");
            }

            if (_items[j].IsNumber || (_items[j].IsTopic && !_items[j].Is("t:hub")) || (_items[j].Clause != _items[i].Clause && !_items[j].IsSign(',')) || _items[j].IsSign(';') || _items[j].IsSign('|'))
            {
                return false;
            }
        }

        return i + 1 < _items.Count && _items[i + 1].Is("v:BrakeType=drum") && _items[i + 1].Clause == _items[i].Clause && !IsDrumOfBody(i + 1) && !Clause(i, "t:rim");
    }

    /// <summary>"622x23TC, 32 holes": holes right behind the size of a rim are of the rim; null where a hub or another thing stands between.</summary>
    private string? HolesByBesideRim(int i)
    {
        if (!Values.TryGetValue("beadSeat", out LineFinding? seat) || seat.Last >= i || i - seat.Last > 8 || _items[i].Clause - _items[seat.Last].Clause > 1 || !Values.TryGetValue("rimType", out LineFinding? type) || type.First > seat.Last + 4 || type.First < seat.First)
        {
            return null;
        }

        for (int j = seat.Last + 1; j <= i + 3 && j < _items.Count; j++)
        {
            bool later = j > i && _items[j].Clause != _items[i].Clause;
            if (later)
            {
                break;
            }

            if (j != i && (_items[j].IsTopic || (_items[j].IsNumber && !_items[j].Used) || _items[j].IsSign(';') || _items[j].IsSign('|')))
            {
                return null;
            }
        }

        return "rimHoles";
    }

    private bool? _namesHoles;

    private void ReadHoles()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (_items[i] is { UnitWord: "g", Unit: "g" } && _items[i].End == _items[i].Start + _items[i].Text.Length + 1 && IsSpokeCount(_items[i].Value) && Clauses(_items[i].Clause).Any(o => o.Text is "naaf" or "velg" || o.Text.EndsWith("naaf", StringComparison.Ordinal)))
            {
                // "Naaf 36g": the Dutch letter for holes, for no hub weighs so little.
                _items[i].Unit = "holes";
            }

            if (!Free(i) || _items[i].Value is < 12 or > 56 || _items[i].Unit is not ("holes" or "") || IsPerSide(i))
            {
                continue;
            }

            if (HolesByEnding(i) is { } part)
            {
                Take(part, _items[i].Text, i, i);
                continue;
            }

            string topic = TopicOf(i);
            bool holes = _items[i].Unit == "holes" || (topic is "t:hub" or "t:rim" && (IsCountOfHoles(i) || IsDrilledTo(i)));
            bool drilledFor = _items[i].Unit.Length == 0 && i > 0 && _items[i - 1].Is("m:drilled") && IsSpokeCount(_items[i].Value) && !Joins(i);
            if (i > 0 && _items[i - 1].Is("t:rimholes") && _items[i].Unit is "" or "holes" && IsSpokeCount(_items[i].Value) && !Joins(i))
            {
                // "Rim drilled for 32".
                Take("rimHoles", _items[i].Text, i, i);
                continue;
            }

            if ((drilledFor && Clause(i, "t:hub") != Clause(i, "t:rim")) || (IsCountOfSpokes(i) && Clause(i, "t:hub") != (Clause(i, "t:rim") || Clause(i, "t:rimholes") || Clause(i, "m:drilled"))))
            {
                Take(Clause(i, "t:hub") ? "hubHoles" : "rimHoles", _items[i].Text, i, i);
                continue;
            }

            if (_items[i].Unit == "holes" && i > 0 && (_items[i - 1].Is("t:hub") || _items[i - 1].Is("t:rim")) && _items[i - 1].Clause == _items[i].Clause && topic is "t:hub" or "t:rim" && !(i + 1 < _items.Count && (_items[i + 1].Is("t:hub") || _items[i + 1].Is("t:rim"))))
            {
                Take(_items[i - 1].Is("t:hub") ? "hubHoles" : "rimHoles", _items[i].Text, i, i);
                continue;
            }

            if (_items[i].Unit == "holes" && topic is not ("t:rim" or "t:rimholes" or "t:rotor" or "t:valvehole") && IsOfDrum(i))
            {
                // "Drum brake hub 36h", "tambour 36 trous": the hub, which has the drum in it.
                Take("hubHoles", _items[i].Text, i, i);
                continue;
            }

            if (_items[i].Unit == "holes" && topic is not ("t:hub" or "t:hubholes" or "t:rimholes" or "t:rotor" or "t:brake") && Clause(i, "t:rim") && !Clause(i, "t:hub") && !Clause(i, "t:hubholes") && !Clause(i, "t:valvehole"))
            {
                Take("rimHoles", _items[i].Text, i, i);
                continue;
            }

            if ((_items[i].Unit == "holes" || IsDrilledTo(i)) && HolesByBesideRim(i) is { } of)
            {
                Take(of, _items[i].Text, i, i);
                continue;
            }

            if (_items[i].Unit == "holes" && topic is "t:hub" or "t:rim" && IsOfOneOfTwo(i))
            {
                Take(topic == "t:hub" ? "hubHoles" : "rimHoles", _items[i].Text, i, i);
                continue;
            }

            bool nextHub = i + 1 < _items.Count && _items[i + 1].Is("t:hub");
            bool nextRim = i + 1 < _items.Count && _items[i + 1].Is("t:rim");
            if (holes && topic.Length == 0 && HeadOfLine() is { Length: > 0 } head)
            {
                Take(head == "t:hub" ? "hubHoles" : "rimHoles", _items[i].Text, i, i);
            }
            else if (topic == "t:hubholes" || (holes && !nextRim && (nextHub || (topic == "t:hub" && !Clause(i, "t:rim")))))
            {
                Take("hubHoles", _items[i].Text, i, i);
            }
            else if (topic == "t:rimholes" || (holes && (nextRim || (topic == "t:rim" && !Clause(i, "t:hub")))))
            {
                Take("rimHoles", _items[i].Text, i, i);
            }
        }
    }
}
