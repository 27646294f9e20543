namespace Lugwork.Reading;

/// <summary>Tapers as they are written by hand: the two ends of a steerer, each by a word for its end or joined by one.</summary>
internal sealed partial class LineScan
{
    /// <summary>How far the two ends of a taper stand from each other, items.</summary>
    private const int TaperReach = 9;

    /// <summary>"1.5 at the crown, 1.125 up top", "taper, 1.5 down to 1 1/8", "28,6 arriba y 38,1 abajo": a figure that has the other end of a taper beside it, where the line says that it tapers or which end each is of.</summary>
    private bool IsEndOfTaper(int i)
    {
        if (_slot != Slot.Fork || !IsTaperSize(i))
        {
            return false;
        }

        bool tapered = Anywhere("m:tapered") >= 0 && Anywhere("m:straight") < 0;
        for (int j = Math.Max(0, i - TaperReach); j < _items.Count && j <= i + TaperReach; j++)
        {
            if (j == i || !IsTaperSize(j) || _items[j].Value == _items[i].Value || (_items[i].Value > 20) != (_items[j].Value > 20))
            {
                continue;
            }

            (int small, int large) = _items[i].Value < _items[j].Value ? (i, j) : (j, i);
            bool ends = IsOfEnd(small, "m:upper") && (IsOfEnd(large, "m:lower") || IsOfCrown(large));
            bool joined = tapered && Math.Abs(i - j) <= 4 && _items[i].Clause == _items[j].Clause;
            if (ends || joined)
            {
                return !IsOfEnd(large, "m:upper") || ends;
            }
        }

        return false;
    }

    /// <summary>"Threadless steerer, 1 1/8" straight, 220 mm": a length by itself, longer than any travel, in a line about a steerer and nothing else; -1 where it is none.</summary>
    private int SteererLengthAlone()
    {
        int found = -1;
        bool threaded = Values.TryGetValue("steererKind", out LineFinding? kind) && kind.Key == "threaded" && Values.ContainsKey("steerer");
        for (int i = 0; i < _items.Count; i++)
        {
            if (_items[i].IsTopic && !(threaded && (_items[i].Is("t:crownrace") || _items[i].Is("t:thread"))) && TopicIn(_items[i]) is not ("t:steerer" or "t:fork" or "t:kind" or "n:colour"))
            {
                return -1;
            }

            bool left = i > 0 && WordLists.ScanTapersLeft.Contains(_items[i - 1].Text) && _items[i - 1].Kind == SpecTokenKind.Word;
            if (Free(i) && _items[i] is { Unit: "mm", IsFraction: false, Places: 0, Value: >= 120 and <= 320 } && (left || threaded || _items[i].Value >= 205) && !Joins(i))
            {
                found = found < 0 && (left || IsAloneInClause(i)) ? i : _items.Count;
            }
        }

        return found < _items.Count && Anywhere("t:steerer") >= 0 && Anywhere("m:max") < 0 && Anywhere("m:min") < 0 && Anywhere("m:pm") < 0 && Anywhere("m:fm") < 0 ? found : -1;
    }

    private bool IsTaperSize(int i) =>
        Free(i) && !_items[i].IsBroken && (_items[i] is { Unit: "" or "in", Value: 1.125m or 1.25m or 1.375m or 1.5m } || _items[i] is { Unit: "" or "mm", IsFraction: false, Value: 28.6m or 31.8m or 38.1m });

    /// <summary>A word for the end right before or behind the figure, small words between.</summary>
    private bool IsOfEnd(int i, string end) => WordBeside(i, item => item.Is(end));

    private bool IsOfCrown(int i) => WordBeside(i, item => item.Is("t:crownrace") || WordLists.ScanTapersIsOfCrown.Contains(item.Text));

    private bool WordBeside(int i, Func<SpecItem, bool> says)
    {
        foreach (int step in (ReadOnlySpan<int>)[1, -1])
        {
            for (int j = i + step; j >= 0 && j < _items.Count && Math.Abs(j - i) <= 4 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j += step)
            {
                if (says(_items[j]))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
