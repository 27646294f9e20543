namespace Lugwork.Reading;

/// <summary>What was measured and is a size that there is.</summary>
internal sealed partial class LineScan
{
    /// <summary>How far the figure may stand from the word for measuring, in items.</summary>
    private const int NearMeasure = 6;

    /// <summary>"The seat tube measures 26.6 mm inside", "Sattelrohr innen mit 30,9 gemessen": every figure of the clause was read, and the one beside the word as a size that is listed. "..., hab ich zweimal gemessen": of the figures of the clause before.</summary>
    private bool IsMeasuredAndKnown(int i)
    {
        int clause = _items[i].Clause;
        bool figure = false;
        int near = -1;
        foreach (int step in (ReadOnlySpan<int>)[1, -1])
        {
            for (int j = i + step; j >= 0 && j < _items.Count && Math.Abs(j - i) < LongestClause && _items[j].Clause == clause; j += step)
            {
                if (_items[j].IsNumber)
                {
                    if (!_items[j].Used)
                    {
                        return false;
                    }

                    figure = true;
                    near = near < 0 && Math.Abs(j - i) <= NearMeasure ? j : near;
                }
                else if (_items[j].Is("d:loose") || _items[j].Is("m:adapt") || _items[j].Is("m:not") || _items[j].Is("m:over") || _items[j].Is("m:min") || IsTriedPost(j))
                {
                    return false;
                }
            }
        }

        if (figure)
        {
            return near >= 0 && !IsTriedWith(near) && Values.Values.Any(v => v.First <= near && near <= v.Last && _items[v.Last].Clause == clause && !(IsBore(v) && Anywhere("d:loose") >= 0));
        }

        return _items.Count <= ShortLine && clause > 0 && IsPlainTelling(clause) && Values.Values.Any(v => _items[v.Last].Clause == clause - 1 && IsOfFigures(v));
    }

    /// <summary>"With a 27.2 post": the post by which it was measured.</summary>
    private bool IsTriedPost(int j) =>
        _items[j].Is("t:post") && ((j > 0 && SetAside.IsWith(_items[j - 1])) || (j > 1 && SetAside.IsWith(_items[j - 2])) || (j > 2 && SetAside.IsWith(_items[j - 3])));

    /// <summary>"Met pen 27.2": what it was measured with stands between the word and the figure.</summary>
    private bool IsTriedWith(int figure) =>
        figure > 1 && _items[figure - 1].Kind == SpecTokenKind.Word && (SetAside.IsWith(_items[figure - 2]) || (figure > 2 && _items[figure - 2].Kind == SpecTokenKind.Word && SetAside.IsWith(_items[figure - 3])));

    /// <summary>"Measured it twice", "hab ich selbst gemessen": nothing of a part or a value.</summary>
    private bool IsPlainTelling(int clause)
    {
        bool told = false;
        foreach (SpecItem item in Clauses(clause))
        {
            if (item.Kind == SpecTokenKind.Word && !item.Terms.IsEmpty && !item.Is("d:hedge") && !item.Is("m:nothing") && !item.Is("m:and"))
            {
                return false;
            }

            told |= WordLists.ScanMeasuredIsPlainTelling.Contains(item.Text);
        }

        return told;
    }

    private bool IsOfFigures(LineFinding value)
    {
        for (int j = value.First; j <= value.Last; j++)
        {
            if (_items[j].IsNumber && _items[j].Used)
            {
                return true;
            }
        }

        return false;
    }
}
