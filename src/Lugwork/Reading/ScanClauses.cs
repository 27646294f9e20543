namespace Lugwork.Reading;

/// <summary>The items of a clause.</summary>
internal sealed partial class LineScan
{
    /// <summary>The items of one clause; its items stand together.</summary>
    private IEnumerable<SpecItem> Clauses(int clause)
    {
        int low = 0;
        int high = _items.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = _items[middle].Clause < clause ? (middle + 1, high) : (low, middle);
        }

        for (int i = low; i < _items.Count && i < low + LongestClause && _items[i].Clause == clause; i++)
        {
            yield return _items[i];
        }
    }

    /// <summary>A clause with neither a value nor a figure nor a word of value in it: "pedals sold separately".</summary>
    private bool OfClauseWithoutValue(int clause)
    {
        if (_read.Contains(clause))
        {
            return false;
        }

        bool part = false;
        foreach (SpecItem item in Clauses(clause))
        {
            if (item.IsNumber || (!item.Terms.IsEmpty && item.Terms[0][0] is 'v' or 'm'))
            {
                return false;
            }

            part |= IsPart(item);
        }

        return part;
    }
}
