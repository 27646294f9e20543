namespace Lugwork.Reading;

/// <summary>Shocks and their hardware.</summary>
internal sealed partial class LineScan
{
    private void ReadShock()
    {
        ReadHardware("lowerHardware", "upperHardware");
        HardwareApart("lowerHardware", "upperHardware");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (Pair(i, out int second) && !InTriple(i))
            {
                ShockSize("size", i, second);
            }
            else if (IsSlashedShock(i))
            {
                ShockSize("size", i, i + 2);
            }
        }

        ReadShockApart("size");
    }

    /// <summary>205/65: a length and a stroke that a slash joins.</summary>
    private bool IsSlashedShock(int i) =>
        Free(i) && i + 2 < _items.Count && (_items[i + 1].IsSign('/') || (_slot == Slot.Shock && _items[i + 1].IsSign('-'))) && Free(i + 2) && _items[i].IsMillimetre && _items[i + 2].IsMillimetre && _items[i].Value is >= 140 and <= 280 && _items[i + 2].Value is >= 25 and <= 100;

    /// <summary>"Eye to eye 210 mm, stroke 50 mm": length and stroke, each by its word.</summary>
    private void ReadShockApart(string field)
    {
        if (Values.ContainsKey(field) || (_slot == Slot.Frame && Anywhere("t:shock") < 0 && !(Anywhere("t:eye") >= 0 && Anywhere("t:stroke") >= 0)))
        {
            return;
        }

        int length = -1;
        int stroke = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            bool inches = _items[i].IsInch || _items[i].IsFraction || _items[i] is { Unit: "", Value: < 12 };
            if (!Free(i) || (!inches && !_items[i].IsMillimetre) || (JoinsClosely(i) && !IsTimesWord(i)))
            {
                continue;
            }

            string topic = TopicOf(i);
            if ((_slot == Slot.Shock || Clause(i, "t:shock")) && i + 1 < _items.Count && (_items[i + 1].Is("t:stroke") || _items[i + 1].Is("t:length")) && _items[i + 1].Clause == _items[i].Clause && !(i + 2 < _items.Count && (_items[i + 2].IsNumber || _items[i + 2].IsSign(':') || (i + 3 < _items.Count && _items[i + 3].IsNumber && _items[i + 2].Text is "de" or "da" or "di" or "of" or "von" or "van"))))
            {
                // "185 mm lang, 50 mm slag": the word right behind its figure.
                topic = _items[i + 1].Is("t:stroke") ? "t:stroke" : "t:length";
            }

            bool hub = Link(i) is >= 0 and int link && (_items[link].Is("t:stroke") || _items[link].Text is "hub" or "course" or "corsa" or "recorrido") || (i + 1 < _items.Count && _items[i + 1].Text == "de" && _items[i + 1].Is("m:road"));
            bool eye = Link(i) is >= 0 and int of && _items[of].Is("t:eye");
            bool isLength = inches ? _items[i].Value is >= 5 and <= 11 : _items[i].Value is >= 140 and <= 280;
            bool isStroke = inches ? _items[i].Value is >= 1 and <= 3.5m : _items[i].Value is >= 25 and <= 100;
            length = length < 0 && (eye || topic is "t:eye" or "t:axletocrown" or "t:length" or "t:spacing") && isLength ? i : length;
            isStroke &= !(Link(i) is >= 0 and int travel && !_items[travel].Is("t:shock") && Enumerable.Range(Math.Max(0, travel - 1), Math.Min(_items.Count - Math.Max(0, travel - 1), 4)).Any(j => _items[j].Is("t:frame") && _items[j].Clause == _items[i].Clause));
            stroke = stroke < 0 && (topic is "t:stroke" or "t:travel" || hub) && isStroke ? i : stroke;
        }

        for (int i = 0; i < _items.Count && length < 0 && stroke >= 0; i++)
        {
            // "Dämpfer 210 mm, Hub 55 mm": the one figure that can be a length, of the shock itself.
            bool own = Free(i) && i != stroke && _items[i].IsMillimetre && !_items[i].IsFraction && _items[i].Value is >= 140 and <= 280 && !JoinsClosely(i) && (TopicOf(i) is "t:shock" || (_slot == Slot.Shock && (TopicOf(i) is "" || (TopicOf(i) is "t:stroke" && i < stroke) || IsLengthOfStroke(i, stroke))));
            length = own && !_items.Exists(o => o != _items[i] && o is { IsNumber: true, Value: >= 140 and <= 280 }) ? i : length;
        }

        if (length < 0 && stroke >= 0 && _items[stroke].Value < 4 && _slot == Slot.Shock)
        {
            // "8,5er mit 2,5" Hub": the one other figure, of inches as the stroke.
            length = _items.FindIndex(o => o != _items[stroke] && o is { IsNumber: true, Used: false, Unit: "" or "in", Value: >= 5 and <= 11 });
            length = length >= 0 && _items.Count(o => o.IsNumber) == 2 && !JoinsClosely(length) && (_items[length].UnitWord == "er" || _items[length].IsInch) && TopicOf(length) is "" or "t:shock" or "t:stroke" ? length : -1;
        }

        if (length >= 0 && stroke >= 0 && _items[length].Value < 12 == _items[stroke].Value < 12)
        {
            bool trunnion = Anywhere("m:trunnion") >= 0;
            bool eyelet = HasEyelet(trunnion) || FromEyeToEye();
            Take(field, $"{(trunnion ? "trunnion " : eyelet ? "eyelet " : "")}{ItemCutter.Plain(_items[length].Value)} x {ItemCutter.Plain(_items[stroke].Value)}{(_items[length].Value < 12 ? " in" : "")}", Math.Min(length, stroke), Math.Max(length, stroke));
            _items[length].Used = true;
            _items[stroke].Used = true;
        }
    }

    /// <summary>"52,5 Hub auf 185", "corsa 55 su 210": the length that a stroke is made on.</summary>
    private bool IsLengthOfStroke(int i, int stroke) => i > stroke + 1 && i <= stroke + 4 && WordLists.ScanShocksLengthOfStroke.Contains(_items[i - 1].Text);

    /// <summary>A length that is said from eye to eye.</summary>
    private bool FromEyeToEye() => _items.Exists(i => i.Is("t:eye") && WordLists.ScanShocksFromEyeToEye.Contains(i.Text));

    /// <summary>"Länge 230 mm × Hub 65 mm": the sign joins the word behind it and no figure.</summary>
    private bool IsTimesWord(int i)
    {
        bool before = i > 1 && _items[i - 1].IsSign('x') && _items[i - 2].IsNumber;
        bool behind = i + 2 < _items.Count && Links(_items[i + 1]) && _items[i + 2].IsNumber;
        return !before && !behind && !(i > 0 && Links(_items[i - 1]) && !(i > 1 && _items[i - 1].Kind == SpecTokenKind.Sign && (_items[i - 2].Is("t:length") || _items[i - 2].Is("t:eye"))));
    }

    private void ShockSize(string field, int i, int second)
    {
        bool trunnion = Anywhere("m:trunnion") >= 0;
        bool eyelet = HasEyelet(trunnion) || (!trunnion && FromEyeToEye());
        bool inch = _items[i].IsInch || _items[second].IsInch || _items[i].IsFraction || _items[second].IsFraction;
        (decimal a, decimal b) = (Math.Max(_items[i].Value, _items[second].Value), Math.Min(_items[i].Value, _items[second].Value));
        if (trunnion && eyelet)
        {
            Refuse(field, i, second, "the line says both eyelet and trunnion", LineDoubtKind.Conflict);
            return;
        }

        string size = $"{ItemCutter.Plain(a)} x {ItemCutter.Plain(b)}{(inch ? " in" : "")}";
        Take(field, (trunnion ? "trunnion " : eyelet ? "eyelet " : "") + size, i, second);
    }

    private void ReadShockOfFrame()
    {
        ReadHardware("lowerShockHardware", "upperShockHardware");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Pair(i, out int second) || InTriple(i))
            {
                if (!IsSlashedShock(i) || !(HasMark(i, "m:trunnion") || HasMark(i, "m:eyelet") || Clause(i, "t:shock")))
                {
                    continue;
                }

                second = i + 2;
            }

            (decimal large, decimal small) = (Math.Max(_items[i].Value, _items[second].Value), Math.Min(_items[i].Value, _items[second].Value));
            bool inch = large < 15 && (_items[i].IsFraction || _items[i].IsInch || _items[second].IsInch || TopicOf(i) is "t:shock" or "t:eye" || (Clause(i, "t:shock") && TopicOf(i) is "")) && (Clause(i, "t:shock") || Clause(i, "t:eye"));
            if ((large is >= 140 and <= 280 && small is >= 25 and <= 100 && (!IsSeat(large) || HasMark(i, "m:eyelet") || HasMark(i, "m:trunnion") || Clause(i, "t:shock"))) || (inch && large >= 5))
            {
                ShockSize("shock", i, second);
            }
        }

        ReadShockApart("shock");
    }
}
