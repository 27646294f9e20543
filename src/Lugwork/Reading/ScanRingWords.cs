namespace Lugwork.Reading;

/// <summary>Cranks and rings by everyday words: "Zähne: 42", "four unevenly spaced arms", "110 (5)", "araña 104 de 4", "26/36/48".</summary>
internal sealed partial class LineScan
{
    private static bool IsTeethWord(string word) =>
        WordLists.ScanRingWordsIsTeethWord.Contains(word);

    private static bool IsArmWord(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && (WordLists.ScanRingWordsIsArmWord.Contains(item.Text) || item.Text.EndsWith("bohrungen", StringComparison.Ordinal) || item.Text.EndsWith("gaten", StringComparison.Ordinal));

    private static bool IsSpider(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanRingWordsIsSpider.Contains(item.Text);

    /// <summary>Units of bare figures by the words before or behind them.</summary>
    private void UnitsByWord(int i)
    {
        SpecItem item = _items[i];
        int before = i - 1;
        before -= before > 0 && (_items[before].IsSign(':') || _items[before].IsSign('=')) ? 1 : 0;
        before -= before > 0 && WordLists.ScanRingWordsVerb.Contains(_items[before].Text) ? 1 : 0;
        if (item.Value is >= 20 and <= 60 && before >= 0 && (IsTeethWord(_items[before].Text) || (_items[before] is { Text: "z", Glued: false } && before < i - 1) || (before < i - 1 && _items[before].Is("m:teethcount"))) && !(before > 0 && _items[before - 1].IsNumber) && !JoinsClosely(i) && !IsOfferedWith(i) && EndsClause(i))
        {
            item.Unit = "teeth";
        }
        else if (item.Value is 3 or 4 or 5 && !Joins(i) && (IsArmsBehind(i) || IsArmsInBracket(i) || IsArmsCounted(i) || IsArmsOfSpider(i)))
        {
            item.Unit = "arms";
        }
    }

    /// <summary>"Four unevenly spaced arms": a word or two for how they stand between.</summary>
    private bool IsArmsBehind(int i)
    {
        if (Clauses(_items[i].Clause).Any(o => o.Is("d:gone")))
        {
            return false;
        }

        if (i + 3 < _items.Count && _items[i + 1].Kind == SpecTokenKind.Sign && WordLists.ScanRingWordsIsArmsCounted.Contains(_items[i + 2].Text))
        {
            // "5 (Anzahl Bohrungen)", "5 = number of bolts".
            return IsArmWord(_items[i + 3]) || (i + 4 < _items.Count && IsArmWord(_items[i + 4]));
        }

        for (int j = i + 1; j < _items.Count && j <= i + 3 && _items[j].Kind == SpecTokenKind.Word && _items[j].Clause == _items[i].Clause; j++)
        {
            if (IsArmWord(_items[j]))
            {
                return true;
            }

            if (!(_items[j].Is("m:uneven") || _items[j].Is("m:even") || WordLists.ScanRingWordsIsArmsBehind.Contains(_items[j].Text)))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>"Anzahl Arme 5", "numero de brazos: 5", "number of bolts 4": a word for how many, and for the arms, right before the figure at the end of its clause.</summary>
    private bool IsArmsCounted(int i)
    {
        int word = i - 1;
        word -= word > 0 && (_items[word].IsSign(':') || _items[word].IsSign('=')) ? 1 : 0;
        word -= word > 2 && _items[word].Text is "fixation" or "fissaggio" or "fijacion" or "bevestiging" && _items[word - 1].Text is "de" or "di" or "voor" ? 2 : 0;
        int count = word - 1;
        count -= count > 0 && _items[count].Text is "of" or "de" or "di" or "dei" or "der" or "van" ? 1 : 0;
        count -= count > 0 && _items[count].IsSign('.') ? 1 : 0;
        return count >= 0 && EndsClause(i) && IsArmWord(_items[word]) && WordLists.ScanRingWordsIsArmsCounted.Contains(_items[count].Text);
    }

    /// <summary>"Araña de 5, BCD 94": how many arms the spider has, beside a circle that is named.</summary>
    private bool IsArmsOfSpider(int i) =>
        i > 1 && EndsClause(i) && WordLists.ScanRingWordsIsArmsOfSpider.Contains(_items[i - 1].Text) && IsSpider(_items[i - 2]) && Anywhere("t:bcd") >= 0;

    /// <summary>"BCD 110 (5)": how many arms, in brackets right behind the circle.</summary>
    private bool IsArmsInBracket(int i) =>
        i >= 2 && i + 1 < _items.Count && _items[i - 1].IsSign('(') && _items[i + 1].IsSign(')') && _items[i - 2] is { IsNumber: true, IsFraction: false, Unit: "" or "mm", Value: >= 58 and <= 151 } && IsCircle(i - 2);

    /// <summary>"Araña 104 de 4", "spider de cuatro, 104": the circle and the arms beside the word for what carries the ring, the only figures that can be either.</summary>
    private void ReadSpider()
    {
        int spider = _items.FindIndex(IsSpider);
        if (spider < 0 || Values.ContainsKey("boltCircle") || Anywhere("t:bcd") >= 0)
        {
            return;
        }

        int circle = -1;
        int arms = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || _items[i].IsFraction || Math.Abs(_items[i].Clause - _items[spider].Clause) > 1)
            {
                continue;
            }

            if (_items[i] is { Unit: "" or "mm", Value: >= 58 and <= 151 } && !Joins(i))
            {
                circle = circle < 0 ? i : int.MaxValue;
            }
            else if (_items[i] is { Unit: "" or "arms" or "holes", Value: 3 or 4 or 5 } && !Joins(i) && (_items[i].Unit.Length > 0 || EndsClause(i)))
            {
                arms = arms < 0 ? i : int.MaxValue;
            }
        }

        if (circle is >= 0 and < int.MaxValue && arms is >= 0 and < int.MaxValue && !_items.GetRange(Math.Min(circle, arms), Math.Abs(circle - arms)).Exists(o => o.Kind == SpecTokenKind.Word && ((o.Text.Length > 3 && o.Terms.IsEmpty) || o.Text == "size" || o.Is("n:size"))) && _fields["boltCircle"].Read($"{_items[arms].Text}x{_items[circle].Text}").Keys.Length == 1)
        {
            Take("boltCircle", $"{_items[arms].Text}x{_items[circle].Text}", Math.Min(circle, arms), Math.Max(circle, arms));
        }
    }

    /// <summary>"26/36/48": the rings of a triple from the smallest on; the last is the largest.</summary>
    private bool IsTripleUp(int i) =>
        i >= 4 && Free(i) && Free(i - 2) && Free(i - 4) && IsRingJoin(i - 1) && IsRingJoin(i - 3) && IsRing(i) && IsRing(i - 2) && IsRing(i - 4)
        && _items[i].Value - _items[i - 2].Value >= 6 && _items[i - 2].Value - _items[i - 4].Value >= 6 && _items[i - 4].Value <= 34 && !(i + 1 < _items.Count && IsRingJoin(i + 1)) && !(i > 4 && Links(_items[i - 5]));

    private bool IsRing(int i) => _items[i] is { IsFraction: false, Places: 0, Unit: "" or "teeth", Value: >= 20 and <= 56 };

    private bool IsRingJoin(int i) => _items[i].IsSign('/') || (_items[i].IsSign('-') && _items[i].Glued);

    /// <summary>"Bladen 53 en 39": the smaller of two rings behind the word for them, which an "and" joins.</summary>
    private void SmallerRing()
    {
        for (int i = 1; i + 2 < _items.Count; i++)
        {
            if (_items[i - 1].Is("t:chainring") && _items[i + 1].Is("m:and") && Free(i) && Free(i + 2) && IsRing(i) && IsRing(i + 2) && _items[i].Value - _items[i + 2].Value is >= 8 and <= 24 && !(i + 3 < _items.Count && (_items[i + 3].Is("m:or") || _items[i + 3].Is("m:and") || Links(_items[i + 3]))))
            {
                _items[i + 2].Used = true;
            }
        }
    }

    /// <summary>"Grand plateau 52, petit 36", "large ring 50, small ring 34": the smaller one behind its word.</summary>
    private void SmallerByWord()
    {
        for (int i = 1; i < _items.Count && Values.TryGetValue("largestRing", out LineFinding? largest); i++)
        {
            int word = i - 1;
            word -= word > 0 && _items[word].IsSign(':') ? 1 : 0;
            word -= word > 0 && (_items[word].Is("t:chainring") || _items[word].Text is "de" or "da" or "van") ? 1 : 0;
            if (Free(i) && i > largest.Last && IsRing(i) && !Joins(i) && EndsClause(i) && _items[i].Value < _items[largest.First].Value && WordLists.ScanRingWordsSmaller.Contains(_items[word].Text))
            {
                _items[i].Used = true;
            }
        }
    }

    /// <summary>"Cranks, armen 170": the length by the word for the arms right before it.</summary>
    private void LengthOfArms()
    {
        for (int i = 1; i < _items.Count; i++)
        {
            int word = i - 1;
            word -= word > 0 && _items[word].Text is "de" or "da" or "di" or "van" or "von" or "of" or ":" ? 1 : 0;
            if (Free(i) && _items[i] is { IsFraction: false, Unit: "" or "mm", Value: >= 160 and <= 180 } && !Joins(i) && EndsClause(i) && !Values.ContainsKey("crankLength")
                && _items[word].Text is "arms" or "arme" or "armen" or "brazos" or "bras" or "bracci" or "kurbelarme" or "crank" or "cranks" or "kurbel" or "kurbeln" or "manivelle" or "manivelles" or "biela" or "bielas" or "pedivella" or "pedivelle" or "crankarmen" && !(word > 0 && _items[word - 1].IsNumber))
            {
                Take("crankLength", _items[i].Text, i, i);
            }
        }
    }

    /// <summary>"Es un plato de 34", "ein 34er": nothing but small words and the word for a ring stand around the one figure.</summary>
    private bool IsRingAlone(int i)
    {
        if (_slot != Slot.Chainring || _items.Count > 8 || _items[i] is not { Unit: "", IsFraction: false, Places: 0, Value: >= 26 and <= 56 } || _items[i].IsDiameter)
        {
            return false;
        }

        bool ring = _items[i].End - _items[i].Start == _items[i].Text.Length + 2;
        foreach (SpecItem item in _items)
        {
            bool small = item.Kind == SpecTokenKind.Word && WordLists.ScanRingWordsIsRingAlone.Contains(item.Text);
            bool rings = (item.Is("t:chainring") || item.Is("m:onering")) && !item.Is("m:max");
            if (!small && !rings && item != _items[i] && item is not { Kind: SpecTokenKind.Sign, Text: "'" or "." or "!" })
            {
                return false;
            }

            ring |= rings;
        }

        return ring;
    }

    /// <summary>"Eight splines, short (5 mm)": how deep the splines are cut, beside those that were read.</summary>
    private bool IsDepthOfSplines(int i) =>
        _items[i] is { Unit: "mm", IsFraction: false, Value: 5 or 10 } && i > 0 && _items[i - 1].IsSign('(') && Values.TryGetValue("spindle", out LineFinding? spindle) && spindle.Key.StartsWith("8-spline", StringComparison.Ordinal);

    /// <summary>"3-teilig", "3-delig": of how many pieces a crank is.</summary>
    private bool IsOfPieces(int i)
    {
        int word = i + 1;
        word += word + 1 < _items.Count && _items[word].IsSign('-') && _items[word].Glued ? 1 : 0;
        return _items[i] is { Value: 1 or 2 or 3 or 4, Unit: "", IsFraction: false } && !(i > 0 && Links(_items[i - 1])) && word < _items.Count
            && WordLists.ScanRingWordsIsOfPieces.Contains(_items[word].Text);
    }
}
