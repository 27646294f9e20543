namespace Lugwork.Reading;

/// <summary>Lengths that a part has a field for and few joints ask for. They are read where the line says nothing else, so that a list of sizes keeps to its interfaces.</summary>
internal sealed partial class LineScan
{
    private void NamedLengths()
    {
        if (Doubts.Count > 0 || Full)
        {
            return;
        }

        if (_slot == Slot.Fork && Values.Values.All(v => _fields[v.Field].Type.Name == "Material"))
        {
            MostSpacers();
        }

        if (_slot == Slot.Crankset && Values.Count > 0)
        {
            LengthByName("m:qfactor", "qFactor");
        }

        if (Values.Count > 0 && _slot != Slot.Frame)
        {
            return;
        }

        if (_slot == Slot.Frame)
        {
            LengthByName("m:chainstay", "chainstay");
            LengthByName("m:headtubelength", "headTubeLength");
            LengthOfHeadTube();
        }
        else if (_slot == Slot.Crankset)
        {
            LengthByName("m:cranklength", "crankLength");
            LengthByName("m:qfactor", "qFactor");
            LengthOfCranks();
        }
        else if (_slot == Slot.Fork)
        {
            LengthOfSteerer();
        }
    }

    /// <summary>The one figure beside the name of a length.</summary>
    private void LengthByName(string mark, string field)
    {
        int found = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!IsLoneLength(i) || Link(i) is not (>= 0 and int link) || !_items[link].Is(mark) || Negated(link))
            {
                continue;
            }

            if (found >= 0)
            {
                return;
            }

            found = i;
        }

        if (found >= 0 && Fits(found, field))
        {
            Length(field, found);
        }
    }

    /// <summary>"Head tube 140 mm long", "head tube IS42 | IS42, length 125": a length in a line about a head tube alone.</summary>
    private void LengthOfHeadTube()
    {
        int found = -1;
        if (Values.ContainsKey("chainstay") && !Values.ContainsKey("headTubeLength"))
        {
            // "Bases 430 mm, douille 140 mm": no bore is so wide.
            found = Enumerable.Range(0, _items.Count).FirstOrDefault(i => _items[i] is { Unit: "mm", Value: >= 80 and <= 250 } && IsLoneLength(i) && TopicOf(i) == "t:headtube" && Clauses(_items[i].Clause).All(o => o.Kind == SpecTokenKind.Sign || o == _items[i] || o.Is("t:headtube")), -1);
            if (found >= 0)
            {
                Length("headTubeLength", found);
            }

            return;
        }

        for (int i = 0; i < _items.Count && Anywhere("t:headtube") >= 0 && Values.Keys.All(k => k is "headTubeUpper" or "headTubeLower"); i++)
        {
            if (_items[i].Used && !_items[i].IsTopic)
            {
                continue;
            }

            if (_items[i].IsNumber || (_items[i].IsTopic && TopicIn(_items[i]) is not ("t:headtube" or "t:length")))
            {
                if (found >= 0 || !IsLoneLength(i) || (Clause(i, "t:headtube") ? !HasMark(i, "t:length") : !IsLengthBehindHeadTube(i)))
                {
                    return;
                }

                found = i;
            }
        }

        if (found >= 0 && Fits(found, "headTubeLength"))
        {
            Length("headTubeLength", found);
        }
    }

    /// <summary>A clause of the length alone, behind the one of the head tube and its cups.</summary>
    private bool IsLengthBehindHeadTube(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item.Kind == SpecTokenKind.Word && !item.Is("t:length") && item.Text.Length > 3)
            {
                return false;
            }
        }

        return HasMark(i, "t:length") && FindMark(i, "t:headtube", 2) is >= 0 and int tube && tube < i;
    }

    /// <summary>"Bielas, largo 165 mm": a length in a line about cranks alone.</summary>
    private void LengthOfCranks()
    {
        if ((Anywhere("t:crank") < 0 && !_items.Exists(o => o.Text is "manivelle" or "manivelles")) || Values.Count > 0 || Anywhere("t:spindle") >= 0 || Anywhere("t:bb") >= 0)
        {
            return;
        }

        int found = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (IsLoneLength(i) && ((TopicOf(i) == "t:length" && _items[i].Value is >= 100 and <= 200) || IsBehindCranks(i) || IsArmSize(i)))
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
            Length("crankLength", found);
        }
    }

    /// <summary>"Manivelles 170", "bielas de 172,5": a length that only arms have, right behind their name.</summary>
    private bool IsBehindCranks(int i)
    {
        int word = i > 0 && (_items[i - 1].IsSign(':') || _items[i - 1].Text is "de") ? i - 2 : i - 1;
        return word >= 0 && (_items[word].Is("t:crank") || _items[word].Text is "manivelle" or "manivelles") && _items[i].Value is >= 150 and <= 185 && !_items.Exists(o => o.IsNumber && o != _items[i]);
    }

    /// <summary>"Cranks 172.5": a length that arms are sold in, beside the cranks themselves and no other figure.</summary>
    private bool IsArmSize(int i) =>
        TopicOf(i) == "t:crank" && (_items[i].Unit == "mm" || _items[i].Places == 1) && _items[i].Value is >= 160 and <= 180 && _items[i].Value % 2.5m == 0 && !_items.Exists(o => o.IsNumber && o != _items[i]);

    /// <summary>"Steerer cut to 205 mm", "vorkbuis nog 210 mm lang": one length in a line about a steerer.</summary>
    private void LengthOfSteerer()
    {
        bool steerer = (Anywhere("t:steerer") >= 0 || Anywhere("t:headtube") >= 0) && Anywhere("t:axle") < 0 && Anywhere("t:axletocrown") < 0 && Anywhere("t:thread") < 0 && Anywhere("t:travel") < 0;
        int found = -1;
        for (int i = 0; i < _items.Count && steerer; i++)
        {
            if (!IsLoneLength(i) || _items[i].Value is < 100 or > 350 || !(TopicOf(i) is "n:cut" or "t:length" or "t:steerer" || Clause(i, "n:cut") || Clause(i, "t:length")))
            {
                continue;
            }

            if (found >= 0)
            {
                return;
            }

            found = i;
        }

        if (found >= 0)
        {
            Length("steererLength", found);
        }
    }

    /// <summary>"At most 30 mm of spacers".</summary>
    private void MostSpacers()
    {
        int found = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (IsLoneLength(i) && _items[i].Unit == "mm" && _items[i].Value is >= 5 and <= 80 && Clause(i, "m:spacers") && HasMark(i, "m:max"))
            {
                found = found < 0 ? i : _items.Count;
            }
        }

        if (found >= 0 && found < _items.Count)
        {
            Length("mostSpacers", found);
        }
    }

    /// <summary>"1x" stands in the line.</summary>
    private bool OneRing()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (_items[i].Value == 1 && IsOneRing(i))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsLoneLength(int i) => Free(i) && _items[i].IsMillimetre && !_items[i].IsFraction && !JoinsClosely(i);

    private bool Fits(int i, string field) => TopicFields.Range(_slot, field) is var (least, most) && _items[i].Value >= least && _items[i].Value <= most;

    /// <summary>The chainlines of one figure that go with the use and the number of rings that the line names.</summary>
    private string[] ChainlinesBy(IEnumerable<string> keys)
    {
        string use = Anywhere("m:gravel") >= 0 ? "gravel" : Anywhere("m:offroad") >= 0 ? "off-road" : Anywhere("m:road") >= 0 ? "road" : "";
        string rings = Anywhere("m:onering") >= 0 || OneRing() ? "1x" : Anywhere("m:tworings") >= 0 ? "2x" : Anywhere("m:threerings") >= 0 ? "3x" : "";
        return use.Length == 0 || rings.Length == 0 ? [] : [.. keys.Where(k => k.StartsWith(use + "-", StringComparison.Ordinal) && k.Contains("-" + rings, StringComparison.Ordinal))];
    }
}
