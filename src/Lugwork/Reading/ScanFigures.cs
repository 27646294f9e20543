namespace Lugwork.Reading;

/// <summary>Figures beside the word that says what they are of, words of the user's own, and families outside the library.</summary>
internal sealed partial class LineScan
{
    /// <summary>A family outside the library, where it is said of the part itself.</summary>
    private bool Outside()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if ((_items[i].Is("b:motor") || (_items[i].IsNumber && _items[i].Unit == "w")) && _slot == Slot.Frame && !Negated(i))
            {
                Refuse("", i, i, "a frame for a motor is outside the library", LineDoubtKind.Outside);
                return true;
            }

            foreach (string term in _items[i].Terms)
            {
                if (!term.StartsWith("o:", StringComparison.Ordinal) || Negated(i) || (term == "o:cargo" && (_slot == Slot.Chain || _slot == Slot.FrontTyre || _slot == Slot.RearTyre || _slot == Slot.FrontInnerTube || _slot == Slot.RearInnerTube)))
                {
                    continue;
                }

                OutsideFamily? family = OutsideFamily.Find(term.AsSpan(2));
                Refuse("", i, i, family is null ? "this is outside the library" : $"{family.TradeName}: {(family.State == KnownState.FrameSpecific ? "only the frame maker's own part goes here" : "outside the library")}", LineDoubtKind.Outside);
                return true;
            }
        }

        return false;
    }

    /// <summary>Words that a user gave, and fields that are named as in a build file.</summary>
    private void Own()
    {
        string named = "f:" + _slot.Key + ".";
        string valued = "w:" + _slot.Key + ".";
        for (int i = 0; i < _items.Count; i++)
        {
            foreach (string term in _items[i].Terms)
            {
                if (term.StartsWith(valued, StringComparison.Ordinal) && !Negated(i))
                {
                    int equals = term.IndexOf('=', StringComparison.Ordinal);
                    Keep(term[valued.Length..equals], term[(equals + 1)..], i, i);
                }
                else if (term.StartsWith(named, StringComparison.Ordinal))
                {
                    OwnFigure(term[named.Length..], i);
                }
            }
        }
    }

    private void OwnFigure(string field, int topic)
    {
        for (int j = topic + 1; j < _items.Count && j <= topic + 3; j++)
        {
            if (Pair(j, out int second))
            {
                Take(field, $"{_items[j].Text}x{_items[second].Figure}", j, second);
                return;
            }

            if (Free(j))
            {
                Take(field, _items[j].Figure, j, j);
                return;
            }
        }
    }

    /// <summary>What is left: each figure goes to the field that its topic names for this part, or to none.</summary>
    private void Figures()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].Unit is "teeth" or "holes" or "speed" or "g" or "deg" or "w" or "other" || (_items[i] is { Unit: "", IsFraction: false, Value: >= 1950 and <= 2060 }))
            {
                continue;
            }

            int link = Link(i);
            string topic = link < 0 ? "" : TopicIn(_items[link]);
            string? field = topic.Length > 0 && topic[0] == 't' ? TopicFields.Of(_slot, topic, LimitOf(i) == "m:max", LimitOf(i) == "m:min", HasMark(i, "m:lower"), HasMark(i, "m:upper")) : null;
            if (field is null && _slot == Slot.Frame && topic == "t:fork" && link >= 0 && _items[i] is { Unit: "mm", Value: >= 60 and <= 220, IsFraction: false } && IsLimited(i) && !Joins(i) && !Clause(i, "t:axletocrown") && !Clause(i, "n:offset") && !Clause(i, "t:steerer") && !Clause(i, "t:rotor") && !Clause(i, "t:axle") && !Clause(i, "t:length") && !IsSizeOfOther(i))
            {
                // "Federgabel max. 120 mm": a fork is named by its travel.
                field = "mostForkTravel";
            }

            if (field is null && _slot == Slot.Fork && topic == "t:spacing" && _items[link].Text is "einbaumass" or "inbouwmaat" && _items[i].Value is >= 300 and <= 620)
            {
                // The length of a fork, which no width of a hub is.
                field = "axleToCrown";
            }

            if (field == "length" && topic == "t:axle" && _slot.Key.EndsWith("ThruAxle", StringComparison.Ordinal) && _items[i].Value is 12 or 15 or 20 && Values.ContainsKey("thread"))
            {
                continue;
            }

            if (field == "largestRearRotor" && IsRotorOfFork(i))
            {
                continue;
            }

            if (field is null || !_fields.TryGetValue(field, out SpecField? known))
            {
                continue;
            }

            SpecItem item = _items[i];
            if (known.Type.Name == nameof(Load))
            {
                if (item.Unit is "kg" or "lb" && !(field == "riderLimit" && IsOfHeavier(i)))
                {
                    Mass(field, i);
                }

                continue;
            }

            if (item.Unit is "kg" or "lb")
            {
                continue;
            }

            if (IsOneRing(i))
            {
                continue;
            }

            if (field == "rimDepth" && Clause(i, "t:hub") && !Clause(i, "t:rim"))
            {
                continue;
            }

            if (field == "seatTube" && _items[i].Value is < 15 or > 60)
            {
                continue;
            }

            if (field == "seatTubeOutside" && !_items[i].IsFraction && _items[i].Value is > 60)
            {
                // "130 de cierre": no seat tube is so thick.
                continue;
            }

            if (field == "seatTubeOutside" && (topic == "t:clamp" || _items[link].Text is "collier") && FindMark(i, "t:frontmech", 1) >= 0)
            {
                // The clamp of the front derailleur, which its mount says.
                continue;
            }

            _claimed[link] = true;
            if (known.Type.Name != nameof(Dimension))
            {
                if (item.IsFraction || item.IsInch || item.IsMillimetre)
                {
                    Take(field, item.Figure, i, i);
                }

                continue;
            }

            Length(field, i);
        }
    }

    /// <summary>A word of limit by itself, before the figure in its clause or right behind it.</summary>
    private bool IsLimited(int i)
    {
        for (int j = i - 1; j >= 0 && j >= i - Reach && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j--)
        {
            if (_items[j].Is("m:max") && !_items[j].IsTopic)
            {
                return true;
            }
        }

        return i + 1 < _items.Count && _items[i + 1].Is("m:max") && !_items[i + 1].IsTopic && _items[i + 1].Clause == _items[i].Clause && !(i + 2 < _items.Count && _items[i + 2].IsTopic && _items[i + 2].Clause == _items[i].Clause);
    }

    /// <summary>"ASTM category: 3": one to five beside the word for it.</summary>
    private void ReadUseByFigure()
    {
        for (int i = 0; i < _items.Count && _fields.ContainsKey("use") && !Values.ContainsKey("use") && !Full; i++)
        {
            if (Free(i) && _items[i] is { Value: 1 or 2 or 3 or 4 or 5, Unit: "", IsFraction: false } && TopicOf(i) == "t:use" && !Joins(i) && _items[Link(i)].Text is not ("uso" or "classe" or "clase" or "klasse"))
            {
                Keep("use", "condition-" + _items[i].Text, i, i);
            }
        }
    }

    /// <summary>The word of limit that is about a figure: the last one before it in its clause, else one with its topic, else one behind it; empty where there is none.</summary>
    private string LimitOf(int i)
    {
        for (int j = i - 1; j >= 0 && j >= i - Reach && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j--)
        {
            if (_items[j].Is("m:max") || _items[j].Is("m:min"))
            {
                return _items[j].Is("m:max") ? "m:max" : "m:min";
            }
        }

        int link = Link(i);
        if (link >= 0 && link < i && _items[link].Clause < _items[i].Clause && LimitOfWord(_items[Math.Min(i + 1, _items.Count - 1)]) is { Length: > 0 } own && (i + 2 >= _items.Count || _items[i + 2].Clause > _items[i].Clause || _items[i + 2].Kind == SpecTokenKind.Sign))
        {
            // "230 mm max. insertion - 100 mm min.": the word right behind the figure.
            return own;
        }

        if (link >= 0 && (_items[link].Is("m:max") || _items[link].Is("m:min")))
        {
            return _items[link].Is("m:max") ? "m:max" : "m:min";
        }

        return HasMark(i, "m:max") ? "m:max" : HasMark(i, "m:min") ? "m:min" : "";
    }

    /// <summary>"For riders over 100 kg", "für Fahrer ab 100 kg", "ridden by a rider of 100 kg": for whom it is made or who rode it, which is no limit. "Not for riders over 100 kg" is one, by a phrase of its own.</summary>
    private bool IsOfHeavier(int i)
    {
        bool over = i > 0 && (_items[i - 1].Is("m:over") || _items[i - 1].Is("m:min") || (i > 1 && _items[i - 1].Text is "de" or "di" or "than" or "dan" or "que" or "als" && (_items[i - 2].Is("m:over") || _items[i - 2].Is("m:min"))));
        return over || _items.Exists(o => o.Clause == _items[i].Clause && WordLists.ScanFiguresIsOfHeavier.Contains(o.Text));
    }

    /// <summary>A mass, refused where no such load or rider is to be expected.</summary>
    private void Mass(string field, int i)
    {
        decimal kilograms = _items[i].Unit == "lb" ? _items[i].Value * 0.45359237m : _items[i].Value;
        (decimal least, decimal most) = field switch
        {
            "loadLimit" => (3m, 250m),
            "mass" => (20m, 250m),
            _ => (40m, 400m),
        };
        if (kilograms < least || kilograms > most)
        {
            Refuse(field, i, i, $"the figure is outside {least} to {most} kg");
        }
        else
        {
            Take(field, _items[i].Figure, i, i);
        }
    }

    /// <summary>A plain length, refused outside what such a part can measure.</summary>
    private bool Length(string field, int i)
    {
        SpecItem item = _items[i];
        (decimal least, decimal most) = TopicFields.Range(_slot, field);
        if (!item.IsMillimetre || item.IsFraction || item.Value < least || item.Value > most)
        {
            Refuse(field, i, i, item.IsMillimetre ? $"the figure is outside {least} to {most} mm" : "millimetres are expected");
            return false;
        }

        return Take(field, item.Text, i, i);
    }
}
