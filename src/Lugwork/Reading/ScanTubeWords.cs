namespace Lugwork.Reading;

/// <summary>Inner tubes as they are written by hand: the range beside the bead seat, and how long the valve is.</summary>
internal sealed partial class LineScan
{
    /// <summary>"622 da 28-47", "Schlauch 622, 18/25": the one range of the line, beside a bead seat that was read.</summary>
    private void TubeRangeAlone()
    {
        if (!Values.ContainsKey("seat") || Values.ContainsKey("narrowestTyre") || Values.ContainsKey("widestTyre"))
        {
            return;
        }

        int found = -1;
        for (int i = 0; i + 2 < _items.Count; i++)
        {
            if (!IsTubeRange(i))
            {
                continue;
            }

            if (found >= 0 || IsStrange(i - 1) || IsStrange(i + 3))
            {
                return;
            }

            found = i;
        }

        if (found >= 0)
        {
            Length("narrowestTyre", found);
            Length("widestTyre", found + 2);
        }
    }

    /// <summary>"Ages 18-25", "dal 28 al 47 marzo": a word that says nothing here, beside a figure.</summary>
    private bool IsStrange(int i) =>
        i >= 0 && i < _items.Count && _items[i].Kind == SpecTokenKind.Word && _items[i].Terms.IsEmpty && _items[i].Text.Length > 3 && !WordLists.ScanTubeWordsIsStrange.Contains(_items[i].Text);

    /// <summary>28-47, 28/47, 28 to 47, "du 28 au 47": two whole widths of tyres, and no sizes in inches.</summary>
    private bool IsTubeRange(int i)
    {
        bool joined = _items[i + 1].IsSign('-') || _items[i + 1].IsSign('/') || IsRangeWord(_items[i + 1]) || (_items[i + 1].Kind == SpecTokenKind.Word && _items[i + 1].Text is "au" or "al");
        if (!joined || !Free(i) || !Free(i + 2) || !_items[i].IsMillimetre || !_items[i + 2].IsMillimetre || _items[i].IsFraction || _items[i + 2].IsFraction || _items[i].Places > 0 || _items[i + 2].Places > 0)
        {
            return false;
        }

        bool widths = _items[i].Value is >= 16 and < 100 && _items[i + 2].Value >= _items[i].Value + 3 && _items[i + 2].Value <= 132;
        bool inches = _items[i].Value is 24 or 26 or 27 or 28 or 29 && _items[i + 2].Value is 27 or 28 or 29;
        bool open = (i > 0 && (Links(_items[i - 1]) || _items[i - 1].IsSign('-')) && !IsSeatBefore(i)) || (i + 3 < _items.Count && Links(_items[i + 3]));
        return widths && !inches && !open && !IsOfValve(i) && !IsOfValve(i + 2);
    }

    /// <summary>"622 - 18/25": a dash between blanks leads from the bead seat.</summary>
    private bool IsSeatBefore(int i) => i > 1 && _items[i - 1].IsSign('-') && !_items[i].Glued && _items[i - 2] is { IsNumber: true, Used: true } && IsSeat(_items[i - 2].Value);

    private bool IsOfValve(int i) => TopicOf(i) is "t:valve" or "t:valvelength" or "t:length" or "t:stem" || IsBehindStem(i);

    /// <summary>"SV (Sclaverand)": two letters that are short for two valves, beside the name of one.</summary>
    private void SettleShortValve()
    {
        if (Values.TryGetValue("valve", out LineFinding? valve) && valve.Key == "presta")
        {
            Doubts.RemoveAll(d => d.Field == "valve" && d.Kind == LineDoubtKind.Several && d.Keys.Length == 2 && d.End - d.Start <= 3 && Math.Abs(d.Start - valve.Start) <= 20 && d.Keys.Contains("presta"));
        }
    }

    /// <summary>"Valve auto (Schrader) L35", "valvola francese da 60", "48er Franzosenventil": a whole figure against the name of the valve, with small words or a bracket between.</summary>
    private void ValveLengthByHand()
    {
        if (!Values.TryGetValue("valve", out LineFinding? valve) || Values.ContainsKey("valveLength"))
        {
            return;
        }

        int found = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || _items[i] is not { Unit: "" or "mm", IsFraction: false, Places: 0, Value: >= 30 and <= 120 } || Joins(i) || !IsAgainstValve(i, valve))
            {
                continue;
            }

            if (found >= 0)
            {
                return;
            }

            found = i;
        }

        found = found < 0 ? LengthBehindValve(valve) : found;
        if (found >= 0)
        {
            Length("valveLength", found);
        }
    }

    /// <summary>"Autoventil, 40 lang", "Sclaverand, 60er Ventil", "Presta | 48": the clause behind the valve is one figure, with a word for how long it is, or one of the lengths that valves are made in.</summary>
    private int LengthBehindValve(LineFinding valve)
    {
        int found = -1;
        bool word = false;
        foreach (SpecItem item in Clauses(_items[valve.Last].Clause + 1))
        {
            if (item.IsNumber)
            {
                if (found >= 0)
                {
                    return -1;
                }

                found = _items.IndexOf(item, valve.Last);
                word |= item.End - item.Start > item.Text.Length;
            }
            else if (item.Kind == SpecTokenKind.Word)
            {
                if (!IsSmallWord(item) && !item.Is("t:length") && !item.Is("t:valvelength") && !item.Is("t:valve") && !IsStemOfValve(item))
                {
                    return -1;
                }

                word |= item.Is("t:length") || item.Is("t:valvelength") || item.Is("t:valve") || IsStemOfValve(item) || WordLists.ScanTubeWordsLengthBehindValve.Contains(item.Text);
            }
        }

        bool length = found >= 0 && Free(found) && _items[found] is { Unit: "" or "mm", IsFraction: false, Places: 0, Value: >= 30 and <= 120 } && !Joins(found) && Values.ContainsKey("seat");
        return length && (word || _items[found].Value is 40 or 42 or 48 or 60 or 80) ? found : -1;
    }

    private bool IsAgainstValve(int i, LineFinding valve)
    {
        int before = i - 1;
        while (before >= 0 && before >= i - 5 && (i < valve.First || before > valve.Last) && (IsSmallWord(_items[before]) || _items[before].IsSign('(') || _items[before].IsSign(')') || _items[before].IsSign(':') || _items[before].Is("t:valve") || _items[before].Is("t:valvelength") || _items[before].Is("t:length") || _items[before].Is("v:ValveStem=" + valve.Key)))
        {
            before--;
        }

        if (before + 1 < i && _items[before + 1].Is("t:valve") && _items[before + 1].Clause == _items[i].Clause)
        {
            // "Valve de 80, presta"
            return true;
        }

        if (before <= valve.Last && before >= valve.First - 1 && i > valve.Last)
        {
            return true;
        }

        // "48er Franzosenventil", "a 48 mm French valve", "40 AV = 54/62-584": right before it, and no figure behind that would be the one.
        int behind = i + 1;
        bool word = _items[i].End - _items[i].Start > _items[i].Text.Length;
        word |= i == 0 && _items[i].Value is 35 or 40 or 42 or 48 or 50 or 60 or 80 && Values.ContainsKey("seat") && valve.Last + 1 < _items.Count && _items[valve.Last + 1].Kind == SpecTokenKind.Sign;
        return word && behind == valve.First && !(valve.Last + 1 < _items.Count && _items[valve.Last + 1].IsNumber);
    }

    private static bool IsSmallWord(SpecItem item) => item.Kind == SpecTokenKind.Word && !item.IsFraction && WordLists.ScanTubeWordsIsSmallWord.Contains(item.Text);
}
