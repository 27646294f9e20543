namespace Lugwork.Reading;

/// <summary>Words of limit beside a size.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Up to" or "at least" beside a figure that was read as a size: a limit is no size.</summary>
    private void Limits()
    {
        for (int i = 0; i < _items.Count && Doubts.Count == 0; i++)
        {
            if (!(_items[i].Is("m:max") || _items[i].Is("m:min")) || _items[i].Used)
            {
                continue;
            }

            int of = Governed(i);
            foreach (LineFinding value in Values.Values)
            {
                if (of >= 0 && value.First <= of && of <= value.Last && !IsLimit(value.Field) && !IsFromTo(i, value) && !IsRoomOfWheel(i, value) && !(_items[i].Is("t:tyre") && value.Field is "rear" or "front" && value.First < value.Last && _items[i].Text is "passage" or "passaggio"))
                {
                    Several(value.Field, [value.Key], i, i, "a limit is said where a size is expected");
                    break;
                }
            }
        }
    }

    /// <summary>"Passage de roue avant 15/110", "Bandmaat: 700x50C": a word for room is one for the width of a hub end, and for the size of the tyre itself.</summary>
    private bool IsRoomOfWheel(int i, LineFinding value) =>
        _items[i].Is("t:tyre") && ((_fields[value.Field].Type.Name == nameof(Hubs.HubStandard) && _items[i].Text is "passage" or "paso" or "passaggio" or "wielruimte") || (value.Field == "size" && _items[i].Text is "bandmaat"));

    /// <summary>The figure that a word of limit is about: the next one in its clause, or else the last one.</summary>
    private int Governed(int i)
    {
        for (int j = i + 1; j < _items.Count && j <= i + 6 && _items[j].Clause == _items[i].Clause; j++)
        {
            if (_items[j].IsNumber)
            {
                return j;
            }
        }

        for (int j = i - 1; j >= 0 && j >= i - 6 && _items[j].Clause == _items[i].Clause; j--)
        {
            if (_items[j].IsNumber)
            {
                return j;
            }
        }

        return -1;
    }

    /// <summary>"From 1-1/8 to 1-3/8", "1-1/8 bis 1-1/2": the words of the two ends of one value are no limits.</summary>
    private bool IsFromTo(int i, LineFinding value)
    {
        if (value.First == value.Last || !_items[value.First].IsNumber || !_items[value.Last].IsNumber)
        {
            return false;
        }

        bool between = i > value.First && i < value.Last && _items[i].Text is "bis" or "hasta" or "tot" or "fino" or "jusqu" or "up";
        bool from = i >= value.First - 2 && i < value.First && _items[i].Text is "from" or "desde" or "a" or "vanaf" or "ab";
        return between || from;
    }

    private static bool IsLimit(string field) =>
        field.StartsWith("largest", StringComparison.Ordinal) || field.StartsWith("most", StringComparison.Ordinal) || field.StartsWith("least", StringComparison.Ordinal)
        || field.StartsWith("longest", StringComparison.Ordinal) || field.StartsWith("narrowest", StringComparison.Ordinal) || field.StartsWith("widest", StringComparison.Ordinal)
        || field.EndsWith("Limit", StringComparison.Ordinal) || field is "mark" or "capacity" or "difference" or "insertion" or "reach" or "systemMass" or "forkCrowns";

    /// <summary>"Rider and panniers together": the sum of what is named, not of the whole.</summary>
    private bool Together(int i)
    {
        for (int j = Math.Max(0, i - SumReach); j < _items.Count && j <= i + SumReach; j++)
        {
            if (_items[j].Is("t:systemweight") || WordLists.ScanLimitsTogether.Contains(_items[j].Text))
            {
                return false;
            }
        }

        return true;
    }
}
