namespace Lugwork.Reading;

/// <summary>The material of a whole part.</summary>
internal sealed partial class LineScan
{
    /// <summary>A material of the part itself, not of another part that is named beside it.</summary>
    private bool OfWhole(int i)
    {
        if (Clause(i, "n:colour"))
        {
            return false;
        }

        for (int j = Math.Max(0, i - 2); j < i; j++)
        {
            if (_items[j].Clause == _items[i].Clause && WordLists.ScanMaterialsOfWhole.Contains(_items[j].Text))
            {
                return false;
            }
        }

        string own = _slot == Slot.Frame ? "t:frame" : "t:post";
        if (i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && _items[i + 1].Text is "bolts" or "bolt" or "screws" or "hardware" or "schrauben")
        {
            return false;
        }

        if ((i > 0 && _items[i - 1].Is(own) && _items[i - 1].Clause == _items[i].Clause && (i + 1 >= _items.Count || _items[i + 1].Kind == SpecTokenKind.Sign)) || (i + 1 < _items.Count && _items[i + 1].Is(own) && _items[i + 1].Clause == _items[i].Clause))
        {
            return true;
        }
        for (int j = Math.Max(0, i - 4); j < _items.Count && j <= i + 3; j++)
        {
            if (j != i && _items[j].Clause == _items[i].Clause && _items[j].IsTopic && TopicIn(_items[j]) is string topic && topic != own && topic != "t:material" && topic != "t:kind" && (j < i || j <= i + 2)
                && !(_slot == Slot.Seatpost && (topic is "t:dropper" || _items[j].Text is "cannotto" or "canotto")) && !(topic is "t:length" or "n:weight"))
            {
                return false;
            }
        }

        if (_slot == Slot.Seatpost && i + 1 < _items.Count && IsFinish(_items[i + 1].Text))
        {
            return !_items.Exists(o => o.Text is "kloben");
        }

        return i + 1 >= _items.Count || _items[i + 1].Kind != SpecTokenKind.Word || _items[i + 1].Clause != _items[i].Clause || _items[i + 1].Terms.Length > 0 || _items[i + 1].Text.Length < 4 || Clause(i, own) || Clause(i, "t:material");
    }

    /// <summary>How the material was worked: forged, chromed, polished.</summary>
    private static bool IsFinish(string word) =>
        WordLists.ScanMaterialsIsFinish.Contains(word);

    /// <summary>A word that is not known stands in its clause.</summary>
    private bool HasUnknownWord(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item.Kind == SpecTokenKind.Word && item.Terms.IsEmpty)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>No other word stands in its clause.</summary>
    private bool AloneInClause(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item.Kind == SpecTokenKind.Word && item != _items[i] && !item.Is("t:frame") && !item.Is("m:rear"))
            {
                return false;
            }
        }

        return true;
    }
}
