namespace Lugwork.Reading;

/// <summary>Eyes and hardware of shocks.</summary>
internal sealed partial class LineScan
{
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
    private static bool IsEyes(string word) => WordLists.ScanShockHardwareIsEyes.Contains(word);

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

            bool ofBolt = _items[i].Value is 6 or 8 or 10 && (IsBoltWord(i + 1) || IsBoltWord(i - 1) || (i > 1 && (_items[i - 1].IsSign(':') || _items[i - 1].Text is "da" or "de" or "of" or "von" or "van") && IsBoltWord(i - 2)));
            bool ofWidth = _items[i].Value is >= 12 and <= 70 && ((i + 1 < _items.Count && _items[i + 1].Is("n:width")) || (i > 0 && _items[i - 1].Is("n:width")) || (i > 1 && _items[i - 1].IsSign(':') && _items[i - 2].Is("n:width")));
            // "Distanziali da 22.2 con bullone da 8": right behind the hardware.
            ofWidth |= !ofBolt && _items[i].Value is >= 12 and <= 70 && (_items[Math.Max(0, i - 1)].Is("t:hardware") || (i > 1 && _items[i - 1].Text is "da" or "de" or "of" or "von" or "van" && _items[i - 2].Is("t:hardware")));
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

    private bool IsEndWord(int i) => _items[i].Is("m:lower") || _items[i].Is("m:upper");

    private bool IsBoltWord(int i) =>
        i >= 0 && i < _items.Count && WordLists.ScanShockHardwareIsBoltWord.Contains(_items[i].Text);

    /// <summary>"Bolts 8x30 top mount", "untere Befestigung Schraube 8x30": how long a screw is.</summary>
    private bool IsScrew(int i) =>
        i >= 0 && WordLists.ScanShockScrew.Contains(_items[i].Text);

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
                || (_slot == Slot.Shock && width is >= 12 and <= 70 && bolt is 6 or 8 or 10 && (HasMark(i, "m:upper") || HasMark(i, "m:lower") || Anywhere("t:hardware") >= 0));
            bool screw = (_slot == Slot.Shock && IsScrew(i - 1)) || (i > 1 && _items[i - 1].Text == "m" && IsScrew(i - 2));
            if (!topic || screw || width > 70 || bolt > 12)
            {
                continue;
            }

            int around = Anywhere("m:upper") >= 0 && Anywhere("m:lower") >= 0 ? 0 : _slot == Slot.Shock ? 4 : 2;
            int low = FindMark(i, "m:lower", around);
            int up = FindMark(i, "m:upper", around);
            if (low < 0 && up < 0)
            {
                Several(lower, [], i, second, "the end of the shock is not said: upper or lower");
                continue;
            }

            bool isLower = low >= 0 && (up < 0 || Math.Abs(low - i) < Math.Abs(up - i));
            if (low >= 0 && up >= 0 && second + 1 < _items.Count && IsEndWord(second + 1) && !(i > 0 && IsEndWord(i - 1)))
            {
                // "30x8 arriba y 25x8 abajo": the word right behind the pair.
                isLower = _items[second + 1].Is("m:lower");
            }

            Take(isLower ? lower : upper, $"{ItemCutter.Plain(width)}x{ItemCutter.Plain(bolt)}", i, second);
        }
    }
}
