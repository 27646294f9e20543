namespace Lugwork.Reading;

/// <summary>The English "of" between what is measured and its figure.</summary>
internal sealed partial class LineScan
{
    private const int BeforeOf = 4;

    /// <summary>A word of Dutch so near makes the "of" an "or".</summary>
    private const int DutchWithin = 20;

    /// <summary>The name of what is measured stands before the word, a figure behind it, and no other size before the two.</summary>
    private bool IsOfFigure(int i)
    {
        if (i == 0 || i + 1 >= _items.Count || !_items[i + 1].IsNumber || _items[i - 1].Kind != SpecTokenKind.Word || !(_items[i - 1].IsTopic || _items[i - 1].Text is "valve" or "clamp" || (_items[i - 1].IsFraction && (_items[i - 1].Is("v:ValveStem=schrader") || _items[i - 1].Is("v:ValveStem=presta")))))
        {
            return false;
        }

        for (int j = i - 1; j >= 0 && j > i - 1 - BeforeOf && _items[j].Clause == _items[i].Clause; j--)
        {
            if (_items[j].IsNumber && _items[j].Unit is "" or "mm" or "in")
            {
                return false;
            }
        }

        for (int j = Math.Max(0, i - DutchWithin); j < _items.Count && j < i + DutchWithin; j++)
        {
            if (WordLists.ScanOfFigureIsOfFigure.Contains(_items[j].Text))
            {
                return false;
            }
        }

        return true;
    }
}
