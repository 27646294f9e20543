namespace Lugwork.Reading;

/// <summary>What a figure of a handlebar is of.</summary>
internal sealed partial class LineScan
{
    /// <summary>"800 breed met 35 mm klem", "780 wide, 31.8": a quantity right behind its own figure says nothing of the next one.</summary>
    private string TopicOfBar(int i)
    {
        int centre = i > 1 && _items[i - 1].Text is "de" or "da" or "di" or "von" or "van" or "of" ? i - 2 : i - 1;
        if (centre >= 0 && _items[centre].Clause == _items[i].Clause && _items[centre].Text is "centro" or "centre" or "center" or "mitte" or "midden" or "milieu")
        {
            // "Doble altura, centro de 31,8".
            return "t:clamp";
        }

        int link = Link(i);
        if (link <= 0 || link > i || TopicIn(_items[link]) is not ("n:width" or "n:angle" or "t:length") || !_items[link - 1].IsNumber || _items[link - 1].Clause != _items[link].Clause || Parted(link, i) || (link == i - 1 && _after[i] != i + 1))
        {
            return link < 0 ? "" : TopicIn(_items[link]);
        }

        return _after[i] >= 0 ? TopicIn(_items[_after[i]]) : "";
    }

    /// <summary>"Piega 31,8 da 42": how wide a bar is, in centimetres, which no clamp measures.</summary>
    private bool IsWidthInCentimetres(int i) =>
        _slot == Slot.Handlebar && _items[i] is { Unit: "", IsFraction: false, Value: 36 or 38 or 40 or 42 or 44 or 46 or 48, Places: 0 } && !Joins(i) && Values.ContainsKey("clamp");

    /// <summary>"20 up": how far a bar goes up.</summary>
    private bool IsRise(int i) =>
        _slot == Slot.Handlebar && _items[i] is { Unit: "" or "mm", IsFraction: false, Value: >= 5 and <= 120 } && !Joins(i) && (IsRaised(i) || i + 1 < _items.Count && _items[i + 1].Text is "up" or "hoch" or "omhoog" or "back" or "zuruck" or "terug" && _items[i + 1].Clause == _items[i].Clause && !(i + 2 < _items.Count && _items[i + 2].IsSign(':')));

    /// <summary>"Alta 20", "relevé 20 mm", "20 de alza": the rise before or behind its word, where another figure can be the clamp.</summary>
    private bool IsRaised(int i)
    {
        bool before = i > 0 && IsRiseWord(_items[i - 1].Text) && _items[i - 1].Clause == _items[i].Clause;
        bool behind = i + 2 < _items.Count && _items[i + 1].Text is "de" or "di" && _items[i + 2].Text is "alza" or "altura" or "alto" or "rialzo" or "montee" or "releve";
        return (before || behind) && _items[i].Value is >= 5 and <= 120 and not (25.4m or 26 or 31.8m or 35) && _items.Exists(o => o != _items[i] && o is { IsNumber: true, Value: 25.4m or 26 or 31.8m or 35 });
    }

    private static bool IsRiseWord(string word) => WordLists.ScanBarsIsRiseWord.Contains(word);
}
