namespace Lugwork.Reading;

/// <summary>The largest tyre of a frame or fork whose width and bead seat stand apart from each other.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Tyres up to 45 mm on 622 rims": one width beside a word for the largest tyre, and one bead seat; a size of the wheel in inches says none.</summary>
    private void ReadTyreLimitApart(string field)
    {
        if (Values.ContainsKey(field) || Anywhere("t:tyre") < 0 || Anywhere("m:or") >= 0)
        {
            return;
        }

        int width = -1;
        int seat = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction)
            {
                continue;
            }

            if (_items[i].Value >= 300 && IsSeat(_items[i].Value) && !JoinsClosely(i) && TopicOf(i) is "t:rim" or "t:wheel" or "t:beadseat" or "t:tyre" or "")
            {
                if (seat >= 0)
                {
                    return;
                }

                seat = i;
            }
            else if (_items[i].Value is >= 18 and <= 132 && !JoinsClosely(i) && TopicOf(i) is "t:tyre" or "n:width" && HasMark(i, "m:max"))
            {
                if (width >= 0)
                {
                    return;
                }

                width = i;
            }
        }

        if (width >= 0 && seat > width && _items[seat].Clause - _items[width].Clause <= 1 && Take(field, $"{_items[width].Text}-{_items[seat].Text}", width, seat))
        {
            _items[width].Used = true;
            _items[seat].Used = true;
        }
    }
}
