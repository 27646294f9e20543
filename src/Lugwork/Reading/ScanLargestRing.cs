namespace Lugwork.Reading;

/// <summary>The largest ring of a frame.</summary>
internal sealed partial class LineScan
{
    private void ReadRingOfFrame()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            // "46/30": the outer ring of two is the largest.
            if (Free(i) && i + 2 < _items.Count && (_items[i + 1].IsSign('/') || (_items[i + 1].IsSign('-') && _items[i + 1].Glued)) && Free(i + 2) && _items[i + 2].Unit is "teeth" or "" && _items[i].Unit is "teeth" or "" && _items[i].Value is > 20 and < 60 && _items[i].Value - _items[i + 2].Value is >= 8 and <= 24 && TopicOf(i) is "t:chainring")
            {
                _items[i + 2].Used = true;
            }

            if (Free(i) && TopicOf(i) is "t:chainring" && (HasMark(i, "m:max") || _items[Link(i)].Is("m:max")) && !IsOneRing(i) && _items[i].Unit is "teeth" or "" && _items[i].Value is > 7 and < 81)
            {
                for (int j = 0; j < _items.Count; j++)
                {
                    if (j != i && _items[j] is { IsNumber: true, Unit: "teeth", Value: > 20 } && !(j == i + 2 && _items[j].Used) && _items[j].Value != _items[i].Value && TopicOf(j) is "" or "t:chainring" && LimitOf(j) != "m:min")
                    {
                        Several("largestRing", [_items[i].Text, _items[j].Text], Math.Min(i, j), Math.Max(i, j), "two rings are named");
                        return;
                    }
                }

                Take("largestRing", _items[i].Text, i, i);
            }
        }
    }
}
