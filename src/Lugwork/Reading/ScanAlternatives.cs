namespace Lugwork.Reading;

/// <summary>Figures that are offered beside one that was read, and broken ones.</summary>
internal sealed partial class LineScan
{
    /// <summary>A figure that was read, and beside it another of its kind that was not: the line offers two.</summary>
    private void Alternatives()
    {
        int last = -1;
        for (int j = 0; j < _items.Count && !Full; j++)
        {
            if (!_items[j].IsNumber)
            {
                continue;
            }

            if (last >= 0 && _items[last].Used != _items[j].Used)
            {
                Beside(last, j);
            }

            last = j;
        }
    }

    private void Beside(int first, int second)
    {
        bool offered = second == first + 2 && (_items[first + 1].Is("m:or") || _items[first + 1].IsSign('/'));
        (int used, int other) = _items[first].Used ? (first, second) : (second, first);
        if (TopicOf(other).StartsWith("n:", StringComparison.Ordinal) || _items[other].Unit is not ("" or "mm" or "in") || _slot == Slot.Rider)
        {
            return;
        }

        if (offered && _items[used].Unit == "speed" && other > used && IsRangeOfTeeth(other))
        {
            // "12V / 10-45".
            return;
        }

        if (offered && IsLabelOfSize(other))
        {
            return;
        }

        decimal ratio = _items[used].Value > 0 ? _items[other].Value / _items[used].Value : 0;
        if (offered && ratio is > 0.4m and < 2.5m)
        {
            Several("", [], first, second, "two figures are offered for one thing");
            return;
        }

        // A list: 27.2, 30.9, 31.6. The second would be read for the same field, and nothing between says that it is of another.
        bool listed = second - first <= 3;
        for (int k = first + 1; k < second && listed; k++)
        {
            listed = _items[k].Kind == SpecTokenKind.Sign || _items[k].Is("m:and") || _items[k].Is("m:or");
        }

        if (listed && _fieldOf.TryGetValue(used, out string? field) && _fields[field].Type.Name != nameof(Dimension)
            && _fields[field].Read(_items[other].Figure).Keys is [string key] && Values.TryGetValue(field, out LineFinding? value) && value.Key != key
            && (Link(other) < 0 || Link(other) == Link(used) || _claimed[Link(other)]))
        {
            Several(field, [value.Key, key], first, second, "two sizes are listed for one thing");
        }
    }

    /// <summary>"25-622 / 700x25C": the printed label of the size that was read.</summary>
    private bool IsLabelOfSize(int i)
    {
        if (!Values.TryGetValue("size", out LineFinding? size) || _fields["size"].Type.Name != "TyreSize" || !Label(i, out int last, out string text) || last <= i || !_fields["size"].Read(text).Keys.Contains(size.Key))
        {
            return false;
        }

        MarkAll(i, last);
        return true;
    }

    /// <summary>A broken figure makes the whole line doubtful, save where it is known to be of no interface.</summary>
    private void Broken()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (_items[i] is { IsNumber: true, IsBroken: true } item && item.Unit is not ("g" or "kg" or "w") && !TopicOf(i).StartsWith("n:", StringComparison.Ordinal))
            {
                Refuse("", i, i, "a figure is broken off, doubtful or far too long", LineDoubtKind.Broken);
                return;
            }
        }
    }
}
