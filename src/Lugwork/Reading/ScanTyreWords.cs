namespace Lugwork.Reading;

/// <summary>Tyres as they are written by hand: labels with other signs, a suffix that stands apart, width and bead seat in words.</summary>
internal sealed partial class LineScan
{
    /// <summary>The suffix E.A.3 that stands apart from its label, looked for once.</summary>
    private int? _partedSuffix;

    /// <summary>"Pneu de pliant", "gomma per pieghevole": the bicycle that folds, and not the tyre.</summary>
    private bool IsOfFoldingBike(int i)
    {
        if (!_items[i].Is("v:TyreBead=folding") || !WordLists.ScanTyreWordsIsOfFoldingBike.Contains(_items[i].Text))
        {
            return false;
        }

        if (_items[i].Text is "falter" or "folder" or "folders" && _items.Exists(o => o.IsNumber && o.Value is 406 or 355 or 349 or 305 or 451 or 16 or 18 or 20))
        {
            // "Reifen Falter 16 Zoll": a wheel of the bicycle.
            return true;
        }

        int word = i - 1;
        while (word >= 0 && word > i - 3 && _items[word].Kind == SpecTokenKind.Word && WordLists.ScanTyreWordsIsOfFoldingBike2.Contains(_items[word].Text))
        {
            word--;
        }

        return word >= 0 && _items[word].Kind == SpecTokenKind.Word && WordLists.ScanTyreWordsIsOfFoldingBike3.Contains(_items[word].Text);
    }

    /// <summary>700-47C, 650-47B: a dash in the place of the times sign, and the letter behind.</summary>
    private bool DashedLabel(int first, ref int last, ref string text)
    {
        bool dashed = _items[first] is { Value: 700 or 650, Unit: "" } && first + 3 < _items.Count && (_items[first + 1].IsSign('-') || (_items[first + 1].IsSign('/') && _items[first + 1].Glued)) && Free(first + 2)
            && _items[first + 2] is { IsFraction: false, Places: 0, Value: >= 18 and <= 70 } && (_items[first + 2].Glued || !_items[first + 1].Glued) && _items[first + 3] is { Glued: true, Kind: SpecTokenKind.Word, Text: "c" or "b" };
        if (!dashed || (first > 0 && Links(_items[first - 1]) && _items[first].Glued))
        {
            return false;
        }

        text = $"{_items[first].Text}x{_items[first + 2].Text}{_items[first + 3].Text.ToUpperInvariant()}";
        last = first + 3;
        return true;
    }

    /// <summary>28" 1 5/8 x 1 3/8: no times sign behind the inches, and a comma or a bracket in its place.</summary>
    private bool SplitLabel(int first, ref int last, ref string text)
    {
        int word = first + 1;
        word += word < _items.Count && _items[word] is { Glued: true, Text: "er" } ? 1 : 0;
        word += word < _items.Count && _items[word].Is("t:tyre") ? 1 : 0;
        int at = word < _items.Count && (_items[word].IsSign(',') || _items[word].IsSign('(')) ? word + 1 : word;
        bool split = _items[first] is { IsFraction: false, Value: 28 } && (_items[first].IsInch || at == first + 1 || word > first + 1) && at + 2 < _items.Count && Free(at) && _items[at] is { IsFraction: true, Value: > 1 and < 3 }
            && _items[at + 1].IsSign('x') && Free(at + 2) && _items[at + 2] is { IsFraction: true, Value: > 1 and < 3 };
        if (!split)
        {
            return false;
        }

        text = word > first + 1 ? "28" : text;
        text += $" x {_items[at].Text} x {_items[at + 2].Text}";
        last = at + 2;
        if (first + 1 < _items.Count && _items[first + 1] is { Glued: true, Text: "er" })
        {
            _items[first + 1].Glued = false;
        }

        return true;
    }

    /// <summary>"26 x 1 3/8 (E.A.3)", "EA3 26 x 1 3/8": the suffix before the label, in brackets or behind a word.</summary>
    private bool HasPartedSuffix(string label)
    {
        if (label != "26 x 1-3/8")
        {
            return false;
        }

        _partedSuffix ??= Enumerable.Range(0, _items.Count).FirstOrDefault(IsEaThree, -1);
        if (_partedSuffix < 0)
        {
            return false;
        }

        _items[_partedSuffix.Value].Used = true;
        return true;
    }

    /// <summary>The figure of "EA3" or "E.A.3".</summary>
    private bool IsEaThree(int i) =>
        _items[i] is { Value: 3, IsFraction: false, Unit: "" } && ((i > 0 && _items[i].Glued && _items[i - 1] is { Kind: SpecTokenKind.Word, Text: "ea" })
            || (i > 3 && _items[i - 1].IsSign('.') && _items[i - 2].Text == "a" && _items[i - 3].IsSign('.') && _items[i - 4].Text == "e"));

    /// <summary>"Aro de 29", "jante de 700", "27.5 en 2.25": the size of a rim behind its word, or before the width in inches.</summary>
    private bool IsInchesInWords(int i)
    {
        if (_items[i] is not { Value: 26 or 27.5m or 28 or 29 or 700 or 650, IsFraction: false, Unit: "" } || Joins(i))
        {
            return false;
        }

        bool wheel = i > 1 && _items[i - 1].Kind == SpecTokenKind.Word && _items[i - 1].Text is "de" or "da" or "van" or "von" or "en" && (_items[i - 2].Is("t:rim") || _items[i - 2].Is("t:wheel") || _items[i - 2].Is("t:tyre"));
        bool width = i + 2 < _items.Count && _items[i + 1].Kind == SpecTokenKind.Word && _items[i + 1].Text is "en" or "in" or "de" or "da" && _items[i + 2] is { IsNumber: true, IsFraction: false, Value: > 1 and < 5.5m, Places: > 0 };
        return wheel || width;
    }

    /// <summary>"650B, 650 x 38B": a label that says the bead seat alone, beside one of the same rim with its width.</summary>
    private bool HasFullerLabel(int bare, string text)
    {
        if (text.Length != 4 || _items[bare].Value is not (700 or 650))
        {
            return false;
        }

        for (int i = 0; i < _items.Count && i < 40; i++)
        {
            if (i != bare && Free(i) && _items[i].Value == _items[bare].Value && Label(i, out _, out string other) && other.Length > 4 && other[^1] == text[^1])
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Copertoncino da 28, cerchio 622", "40 mm tyre for 635 rims", "50 wide 700C": the two figures of a line, a width and a bead seat.</summary>
    private void TyreByTwoFigures(string field)
    {
        if (Values.ContainsKey(field) || Doubts.Count > 0 || _items.Count > 20)
        {
            return;
        }

        TurnedLabel(field);
        int width = -1;
        int seat = -1;
        for (int i = 0; i < _items.Count && !Values.ContainsKey(field); i++)
        {
            if (!_items[i].IsNumber || _items[i].Unit == "other")
            {
                continue;
            }

            if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction || JoinsClosely(i))
            {
                return;
            }

            bool named = _items[i].Value is 700 or 650 && Label(i, out int last, out string text) && last > i && text is "700C" or "650B";
            named |= _items[i] is { Value: 700, Unit: "" } && IsRimOfRoad(i) && _items.Exists(o => o is { IsNumber: true, Unit: "", Value: >= 18 and <= 70 } && IsFrenchWidth(_items.IndexOf(o)));
            if (seat < 0 && (named || (_items[i].Value >= 300 && IsSeat(_items[i].Value))))
            {
                seat = i;
            }
            else if (width < 0 && _items[i].Value is >= 18 and <= 132 && IsWidthOfTyre(i))
            {
                width = i;
            }
            else
            {
                return;
            }
        }

        if (width >= 0 && IsOfRimAlone())
        {
            return;
        }

        if (width >= 0 && seat >= 0 && TopicOf(seat) is "" or "t:tyre" or "t:rim" or "t:wheel" or "t:beadseat" or "n:width" or "n:size" && Anywhere("t:inner") < 0 && Anywhere("m:inside") < 0)
        {
            string size = _items[seat].Value is 700 or 650 ? $"{_items[seat].Text}x{_items[width].Text}{(_items[seat].Value == 700 ? "C" : "B")}" : $"{_items[width].Text}-{_items[seat].Text}";
            Take(field, size, Math.Min(width, seat), Math.Max(width, seat));
            _items[width].Used = true;
            _items[seat].Used = true;
        }
    }

    /// <summary>"700er Mantel, 47C", "pneu de 700, section 32": a width by its letter or its word, which a bare 700 is the rim of.</summary>
    private bool IsFrenchWidth(int i) =>
        (i + 1 < _items.Count && _items[i + 1] is { Glued: true, Text: "c" }) || IsTyreWidthWord(i - 1) || (i > 1 && _items[i - 1].Text is "de" or "di" or "da" or "van" && IsTyreWidthWord(i - 2));

    /// <summary>"700er Mantel", "pneu de 700", "op 700 maat": against a word for the tyre or the rim, or behind one that leads to it.</summary>
    private bool IsRimOfRoad(int i)
    {
        int behind = i + 1 < _items.Count && _items[i + 1] is { Glued: true, Text: "er" } ? i + 2 : i + 1;
        int before = i > 1 && _items[i - 1].Text is "de" or "da" or "di" or "van" ? i - 2 : i - 1;
        bool open = behind >= _items.Count || _items[behind].Kind == SpecTokenKind.Sign || _items[behind].Is("n:size");
        return (behind < _items.Count && IsTyreOrRim(behind)) || (open && before >= 0 && (IsTyreOrRim(before) || WordLists.ScanTyreWordsLeadsToSeat.Contains(_items[before].Text)));
    }

    private bool IsTyreOrRim(int i) => _items[i].Kind == SpecTokenKind.Word && (_items[i].Is("t:tyre") || _items[i].Is("t:rim") || _items[i].Is("t:wheel"));

    /// <summary>"Aro 622, ancho 25": how wide a rim is, and no tyre.</summary>
    private bool IsOfRimAlone() =>
        _items[0].Is("t:rim") && WordLists.ScanTyreWordsIsOfRimAlone.Contains(_items[0].Text) && Anywhere("t:tyre") < 0;

    /// <summary>"47 x 700C", "38x650B", "25C x 700": the label with its width first.</summary>
    private void TurnedLabel(string field)
    {
        for (int i = 0; i + 2 < _items.Count; i++)
        {
            int sign = i + 1 < _items.Count && IsLetterOfLabel(i + 1) ? i + 2 : i + 1;
            int rim = sign + 1;
            if (rim >= _items.Count || !_items[sign].IsSign('x') || !Free(i) || _items[i] is not { Unit: "" or "mm", IsFraction: false, Places: 0, Value: >= 18 and <= 70 } || !Free(rim) || _items[rim] is not { Unit: "", Value: 700 or 650 })
            {
                continue;
            }

            int last = rim + 1 < _items.Count && IsLetterOfLabel(rim + 1) ? rim + 1 : rim;
            string letter = _items[rim].Value == 700 ? "c" : "b";
            bool label = (sign > i + 1 || last > rim) && (sign == i + 1 || _items[i + 1].Text == letter) && (last == rim || _items[last].Text == letter);
            if (label && !(i > 0 && Links(_items[i - 1])) && !(last + 1 < _items.Count && Links(_items[last + 1])))
            {
                Take(field, $"{_items[rim].Text}x{_items[i].Text}{letter.ToUpperInvariant()}", i, last);
                return;
            }
        }
    }

    private bool IsLetterOfLabel(int i) => _items[i] is { Glued: true, Kind: SpecTokenKind.Word, Text: "b" or "c" };

    /// <summary>"47 per 700C", "28 mm su 622", "47c band op 700C": a small word leads from the width to the bead seat. A bare 28 can be inches.</summary>
    private bool LeadsToSeat(int i)
    {
        bool letter = i + 1 < _items.Count && _items[i + 1] is { Glued: true, Text: "c" };
        if (_items[i] is { Unit: "", Value: 20 or 24 or 26 or 27 or 28 or 29 } && !letter)
        {
            return false;
        }

        bool leads = false;
        for (int j = letter ? i + 2 : i + 1; j < _items.Count && j <= i + 5 && _items[j].Clause == _items[i].Clause; j++)
        {
            if (_items[j].IsNumber)
            {
                return leads && (_items[j].Value is 700 or 650 || (_items[j].Value >= 300 && IsSeat(_items[j].Value)));
            }

            leads |= _items[j].Kind == SpecTokenKind.Word && WordLists.ScanTyreWordsLeadsToSeat.Contains(_items[j].Text);
            if (!leads && !_items[j].Is("t:tyre") && !_items[j].Is("t:rim"))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>Millimetres, or a figure right beside the word for a tyre or for how wide it is; no limit.</summary>
    private bool IsWidthOfTyre(int i)
    {
        if (HasMark(i, "m:max") || HasMark(i, "m:min") || TopicOf(i) is not ("" or "t:tyre" or "n:width" or "n:size") && !(Link(i) is >= 0 and int of && _items[of].Text is "course" or "corsa" or "race"))
        {
            return false;
        }

        if (IsFrenchWidth(i) || (i + 1 < _items.Count && (_items[i + 1].Is("n:width") || _items[i + 1].Is("t:tyre"))) || LeadsToSeat(i))
        {
            return true;
        }

        int word = i > 0 && _items[i - 1].Kind == SpecTokenKind.Word && WordLists.ScanTyreWordsIsWidthOfTyre.Contains(_items[i - 1].Text) ? i - 2 : i - 1;
        return word >= 0 && (_items[word].Is("t:tyre") || _items[word].Is("n:width")) && _items[word].Clause == _items[i].Clause || (_items[i].Unit == "mm" && TopicOf(i) == "t:tyre");
    }
}
