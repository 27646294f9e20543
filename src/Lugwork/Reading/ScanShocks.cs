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
        Free(i) && i + 2 < _items.Count && _items[i + 1].IsSign('/') && Free(i + 2) && _items[i].IsMillimetre && _items[i + 2].IsMillimetre && _items[i].Value is >= 140 and <= 280 && _items[i + 2].Value is >= 25 and <= 100;

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
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction || JoinsClosely(i))
            {
                continue;
            }

            string topic = TopicOf(i);
            if (_slot == Slot.Shock && i + 1 < _items.Count && (_items[i + 1].Is("t:stroke") || _items[i + 1].Is("t:length")) && _items[i + 1].Clause == _items[i].Clause && !(i + 2 < _items.Count && (_items[i + 2].IsNumber || _items[i + 2].IsSign(':'))))
            {
                // "185 mm lang, 50 mm slag": the word right behind its figure.
                topic = _items[i + 1].Is("t:stroke") ? "t:stroke" : "t:length";
            }

            bool hub = Link(i) is >= 0 and int link && (_items[link].Is("t:stroke") || _items[link].Text is "hub" or "course" or "corsa" or "recorrido") || (i + 1 < _items.Count && _items[i + 1].Text == "de" && _items[i + 1].Is("m:road"));
            bool eye = Link(i) is >= 0 and int of && _items[of].Is("t:eye");
            length = length < 0 && (eye || topic is "t:eye" or "t:axletocrown" or "t:length" or "t:spacing") && _items[i].Value is >= 140 and <= 280 ? i : length;
            stroke = stroke < 0 && (topic is "t:stroke" or "t:travel" || hub) && _items[i].Value is >= 25 and <= 100 ? i : stroke;
        }

        for (int i = 0; i < _items.Count && length < 0 && stroke >= 0; i++)
        {
            // "Dämpfer 210 mm, Hub 55 mm": the one figure that can be a length, of the shock itself.
            bool own = Free(i) && i != stroke && _items[i].IsMillimetre && !_items[i].IsFraction && _items[i].Value is >= 140 and <= 280 && !JoinsClosely(i) && (TopicOf(i) is "t:shock" || (_slot == Slot.Shock && TopicOf(i) is ""));
            length = own && !_items.Exists(o => o != _items[i] && o is { IsNumber: true, Value: >= 140 and <= 280 }) ? i : length;
        }

        if (length >= 0 && stroke >= 0)
        {
            bool trunnion = Anywhere("m:trunnion") >= 0;
            bool eyelet = HasEyelet(trunnion) || _items.Exists(i => i.Is("t:eye") && i.Text is "eye" or "eyelet" or "e" or "i" or "auge" or "ose" or "augenabstand" or "oeil" or "ojo" or "occhio" or "oog");
            Take(field, $"{(trunnion ? "trunnion " : eyelet ? "eyelet " : "")}{_items[length].Text} x {_items[stroke].Text}", Math.Min(length, stroke), Math.Max(length, stroke));
            _items[length].Used = true;
            _items[stroke].Used = true;
        }
    }

    private void ShockSize(string field, int i, int second)
    {
        bool trunnion = Anywhere("m:trunnion") >= 0;
        bool eyelet = HasEyelet(trunnion);
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

    /// <summary>A word for eyelets; the lower eye of a trunnion shock is none.</summary>
    private bool HasEyelet(bool trunnion)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            bool lower = trunnion && ((i > 0 && _items[i - 1].Is("m:lower")) || (i + 1 < _items.Count && _items[i + 1].Is("m:lower")));
            if ((_items[i].Is("m:eyelet") || (_slot == Slot.Shock && IsEyes(_items[i].Text))) && !Negated(i) && !lower)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Eyes of a shock; on a frame the same words are of bosses for racks.</summary>
    private static bool IsEyes(string word) => word is "eyelets" or "augen" or "osen" or "oeillets" or "oillets" or "oillet" or "ojales" or "ojos" or "occhielli" or "occhi" or "ogen";

    /// <summary>"Bottom hardware 8 mm bolt, 35 mm wide": bolt and width of one end, each by its word.</summary>
    private void HardwareApart(string lower, string upper)
    {
        int hardware = Anywhere("t:hardware");
        bool low = Anywhere("m:lower") >= 0;
        if (hardware < 0 || low == Anywhere("m:upper") >= 0 || Values.ContainsKey(lower) || Values.ContainsKey(upper))
        {
            return;
        }

        int bolt = -1;
        int width = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction || JoinsClosely(i) || Math.Abs(_items[i].Clause - _items[hardware].Clause) > 1)
            {
                continue;
            }

            bool ofBolt = _items[i].Value is 6 or 8 or 10 && (IsBoltWord(i + 1) || IsBoltWord(i - 1) || (i > 1 && _items[i - 1].IsSign(':') && IsBoltWord(i - 2)));
            bool ofWidth = _items[i].Value is >= 12 and <= 70 && ((i + 1 < _items.Count && _items[i + 1].Is("n:width")) || (i > 0 && _items[i - 1].Is("n:width")) || (i > 1 && _items[i - 1].IsSign(':') && _items[i - 2].Is("n:width")));
            if ((ofBolt && bolt >= 0) || (ofWidth && width >= 0))
            {
                return;
            }

            bolt = ofBolt ? i : bolt;
            width = ofWidth ? i : width;
        }

        if (bolt >= 0 && width >= 0)
        {
            Take(low ? lower : upper, $"{_items[width].Text}x{_items[bolt].Text}", Math.Min(bolt, width), Math.Max(bolt, width));
            _items[bolt].Used = true;
            _items[width].Used = true;
        }
    }

    private bool IsBoltWord(int i) =>
        i >= 0 && i < _items.Count && _items[i].Text is "bolt" or "bolts" or "schraube" or "schrauben" or "bolzen" or "vis" or "boulon" or "axe" or "tornillo" or "tornillos" or "perno" or "eje" or "vite" or "viti" or "bullone" or "bout" or "bouten";

    private void ReadHardware(string lower, string upper)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Pair(i, out int second) || InTriple(i) || _items[i].IsFraction)
            {
                continue;
            }

            (decimal width, decimal bolt) = (Math.Max(_items[i].Value, _items[second].Value), Math.Min(_items[i].Value, _items[second].Value));
            bool topic = TopicOf(i) is "t:hardware" || Clause(i, "t:hardware") || (width <= 70 && bolt is 6 or 8 or 10 && (HasMark(i, "m:upper") || HasMark(i, "m:lower")) && (Values.ContainsKey(lower) || Values.ContainsKey(upper) || Anywhere("t:hardware") >= 0))
                || (_slot == Slot.Shock && width is >= 12 and <= 70 && bolt is 6 or 8 or 10 && (HasMark(i, "m:upper") || HasMark(i, "m:lower")));
            if (!topic || width > 70 || bolt > 12)
            {
                continue;
            }

            int around = Anywhere("m:upper") >= 0 && Anywhere("m:lower") >= 0 ? 0 : 2;
            int low = FindMark(i, "m:lower", around);
            int up = FindMark(i, "m:upper", around);
            if (low < 0 && up < 0)
            {
                Several(lower, [], i, second, "the end of the shock is not said: upper or lower");
                continue;
            }

            bool isLower = low >= 0 && (up < 0 || Math.Abs(low - i) < Math.Abs(up - i));
            Take(isLower ? lower : upper, $"{ItemCutter.Plain(width)}x{ItemCutter.Plain(bolt)}", i, second);
        }
    }

    private void ReadShockOfFrame()
    {
        ReadHardware("lowerShockHardware", "upperShockHardware");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Pair(i, out int second) || InTriple(i))
            {
                continue;
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
