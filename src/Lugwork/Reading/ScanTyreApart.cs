namespace Lugwork.Reading;

/// <summary>A tyre whose width and bead seat stand apart from each other.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Width 47, bead 622": each by its word, and each the only one of its kind in the line.</summary>
    private void TyreApart(string field)
    {
        if (Values.ContainsKey(field) || Doubts.Count > 0)
        {
            return;
        }

        int width = -1;
        int seat = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction || JoinsClosely(i))
            {
                continue;
            }

            if (IsSeat(_items[i].Value) && _items[i].Value >= 300 && TopicOf(i) is "t:beadseat" or "t:rim" or "t:wheel" or "")
            {
                if (seat >= 0)
                {
                    return;
                }

                seat = i;
            }
            else if (_items[i].Value is >= 18 and <= 132 && (TopicOf(i) is "n:width" || (Link(i) >= 0 && _items[Link(i)].Is("m:tyrewidth")) || IsTyreWidthWord(i - 1) || IsTyreWidthWord(i + 1) || (i > 0 && _items[i - 1].IsSign(':') && IsTyreWidthWord(i - 2))))
            {
                if (width >= 0)
                {
                    return;
                }

                width = i;
            }
        }

        if (width >= 0 && seat >= 0 && !IsOfRimAlone())
        {
            Take(field, $"{_items[width].Text}-{_items[seat].Text}", Math.Min(width, seat), Math.Max(width, seat));
            _items[width].Used = true;
            _items[seat].Used = true;
        }
    }

    /// <summary>"Section 25": a word for the width of a tyre right beside its figure.</summary>
    private bool IsTyreWidthWord(int i) => i >= 0 && i < _items.Count && _items[i].Is("m:tyrewidth");
}
