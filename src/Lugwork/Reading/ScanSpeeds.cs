using System.Globalization;

namespace Lugwork.Reading;

/// <summary>Numbers of speeds.</summary>
internal sealed partial class LineScan
{
    /// <summary>The speeds that a line names, each once, and where: "11-speed", "8/9/10", "9v". A number of gears beyond 13 is kept, so that it is refused.</summary>
    private List<int> Speeds(out int first, out int last)
    {
        List<int> speeds = [];
        first = -1;
        last = -1;
        for (int i = 0; i < _items.Count && speeds.Count < 12; i++)
        {
            bool plain = Free(i) && !_items[i].IsFraction && _items[i].Value == decimal.Truncate(_items[i].Value) && _items[i].Value is >= 1 and < 100;
            if (!plain || _items[i].Unit != "speed")
            {
                continue;
            }

            // Those that are joined to it by a slash or dash belong to it: 6/7/8-speed.
            int from = i;
            while (from >= 2 && (_items[from - 1].IsSign('/') || (_items[from - 1].IsSign('-') && _items[from - 1].Glued)) && Free(from - 2) && _items[from - 2].Value is >= 5 and <= 13 && _items[from - 2].Unit.Length == 0)
            {
                from -= 2;
            }

            // "5-/6-/7-/8-fach".
            while (from >= 3 && _items[from - 1].IsSign('/') && _items[from - 2].IsSign('-') && Free(from - 3) && _items[from - 3] is { IsFraction: false, Unit: "", Value: >= 5 and <= 13 })
            {
                from -= 3;
            }

            while (from >= 2 && JoinOfList(from - 1) is >= 1 and int join && Free(join - 1) && _items[join - 1] is { IsFraction: false, Unit: "" or "speed", Value: >= 5 and <= 13 } && !_items[join - 1].IsInch)
            {
                for (int j = join; j < from; j++)
                {
                    _joined.Add(j);
                }

                from = join - 1;
            }

            // "6 à 8 vitesses", "6- bis 8-fach": from one to another.
            if (RangeBefore(from) is >= 0 and int least)
            {
                from = least;
            }

            // 2x11: the second is the number of sprockets.
            bool times = i >= 2 && _items[i - 1].IsSign('x') && Free(i - 2) && _items[i - 2].Value is 1 or 2 or 3;
            for (int j = times ? i : from; j <= i; j++)
            {
                if (_items[j].IsNumber)
                {
                    speeds.Add((int)_items[j].Value);
                }
            }

            first = first < 0 ? from : first;
            last = i;
            MarkAll(from, i);
        }

        if (speeds.Count == 0)
        {
            for (int i = 0; i < _items.Count; i++)
            {
                if (Pair(i, out int second) && !InTriple(i) && _items[i].Value is 1 or 2 or 3 && Free(i) && Free(second) && _items[second].Value is >= 5 and <= 13 && !_items[second].IsFraction && !_items[i].IsFraction && _items[second].Unit is "" && _items[second].Value == decimal.Truncate(_items[second].Value))
                {
                    speeds.Add((int)_items[second].Value);
                    (first, last) = (i, second);
                    MarkAll(i, second);
                    break;
                }
            }
        }

        return speeds;
    }

    /// <summary>The figure from which a range of speeds goes to another; -1 where a figure is the end of none.</summary>
    private int RangeBefore(int end)
    {
        int word = end - 1;
        if (word < 1 || !(_items[word].Is("m:to") || _items[word].Text is "bis" or "tot" or "hasta" or "al"))
        {
            return -1;
        }

        int least = word - 1;
        least -= least > 0 && _items[least].IsSign('-') && _items[least].Glued ? 1 : 0;
        return Free(least) && _items[least] is { IsNumber: true, IsFraction: false, Unit: "" or "speed", Value: >= 5 and <= 13 } && _items[least].Value < _items[end].Value && _items[least].Clause == _items[end].Clause ? least : -1;
    }

    /// <summary>The first item of what joins two members of a list, from its last item back: a comma, "or", "and", or both; -1 where it is nothing of that kind.</summary>
    private int JoinOfList(int last)
    {
        int at = last;
        at -= at > 0 && (_items[at].Is("m:or") || _items[at].Is("m:and")) ? 1 : 0;
        while (at > 0 && at > last - 3 && (_items[at].IsSign(',') || _items[at].IsSign('-') || _items[at].IsSign('&') || _items[at].IsSign('+')))
        {
            at--;
        }

        return at < last && _items[at].IsNumber ? at + 1 : -1;
    }

    /// <summary>One class of speeds for a field, or several: the readings.</summary>
    private bool TakeSpeeds(string field)
    {
        List<int> speeds = Speeds(out int first, out int last);
        if (_slot == Slot.FrontDerailleur)
        {
            // "Zweifach, 10 Gänge": the rings before the sprockets.
            speeds.RemoveAll(s => s is 1 or 2 or 3);
        }

        if (speeds.Count == 0)
        {
            return false;
        }

        SpecField known = _fields[field];
        SortedSet<string> keys = new(StringComparer.Ordinal);
        foreach (int speed in speeds)
        {
            FieldReading reading = known.Read(speed.ToString(CultureInfo.InvariantCulture));
            if (reading.Keys is not [string key] || speed < 5)
            {
                Refuse(field, first, last, "no such number of sprockets is listed; the number of gears is another one");
                return false;
            }

            keys.Add(key);
        }

        if (keys.Count == 1)
        {
            Keep(field, keys.Min!, first, last);
            return true;
        }

        Several(field, [.. keys], first, last, "several numbers of speeds are named");
        return false;
    }

    /// <summary>"8 to 10-speed", "8-, 9- und 10-fach": a figure of a list that ends in speeds.</summary>
    private bool EndsInSpeeds(int i)
    {
        for (int j = i + 1; j < _items.Count && j <= i + 10; j++)
        {
            if (_items[j].IsNumber)
            {
                if (_items[j].Unit == "speed" || (j + 1 < _items.Count && IsSprockets(_items[j + 1].Text)))
                {
                    return true;
                }
            }
            else if (_items[j].Is("t:cassette") && _items[j - 1].UnitWord == "er")
            {
                // "8er, 9er und 10er Kassetten".
                return true;
            }
            else if (!(_items[j].IsSign('-') || _items[j].IsSign('/') || _items[j].IsSign(',') || _items[j].Is("m:to") || _items[j].Is("m:and") || _items[j].Is("m:or") || _items[j].Text == "bis" || _items[j].Text == "tot" || _items[j].Text == "hasta"))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>Whole figures of 7 to 13 beside a mark, joined by slashes, dashes, commas or words of speed.</summary>
    /// <summary>"HG da 8, 9 e 10": the figures of a list, of which the first stands against the body.</summary>
    private bool IsListSign(int i) => _items[i].IsSign(',') || _items[i].IsSign('/') || _items[i].Is("m:and") || _items[i].Is("m:or");

    /// <summary>"HG road, for 11", "corpetto HG strada, da 11": the clause behind the body is a figure with a word that the body is made for it.</summary>
    private bool IsSpeedsAlone(int figure, int mark)
    {
        bool made = false;
        foreach (SpecItem item in Clauses(_items[figure].Clause))
        {
            bool small = item.Kind == SpecTokenKind.Word && WordLists.ScanSpeedsIsSpeedsAlone.Contains(item.Text);
            made |= small;
            if (item != _items[figure] && !small && item.Kind != SpecTokenKind.Sign)
            {
                return false;
            }
        }

        return made && figure > mark && _items[figure] is { Unit: "", Places: 0 };
    }

    private List<int> NumbersOfSpeeds(int mark, out int first, out int last)
    {
        List<int> speeds = [];
        first = -1;
        last = -1;
        for (int j = Math.Max(0, mark - Reach); j < _items.Count && j <= mark + Reach; j++)
        {
            bool near = Math.Abs(_items[j].Clause - _items[mark].Clause) <= (_items[j].Unit == "speed" || EndsInSpeeds(j) || (j + 1 < _items.Count && IsSprockets(_items[j + 1].Text)) ? 2 : IsSpeedsAlone(j, mark) || (last >= 0 && j - last <= 2 && IsListSign(j - 1)) ? 1 : 0);
            if (near && Free(j) && !_items[j].IsFraction && _items[j].Unit is "" or "speed" && Free(j) && _items[j].Value is >= 7 and <= 13 && _items[j].Value == decimal.Truncate(_items[j].Value)
                && !(j + 2 < _items.Count && _items[j + 1].IsSign('-') && _items[j + 2].IsNumber && _items[j + 2].Value > 13) && !(j + 1 < _items.Count && _items[j + 1].IsSign('x')))
            {
                if (last >= 0 && j - last == 2 && (_items[j - 1].Is("m:and") || _items[j - 1].Is("m:or")))
                {
                    _joined.Add(j - 1);
                }

                speeds.Add((int)_items[j].Value);
                first = first < 0 ? j : first;
                last = j;
            }
        }

        if (speeds.Count > 0)
        {
            for (int j = first; j <= last; j++)
            {
                _items[j].Used |= _items[j].IsNumber && _items[j].Value is >= 7 and <= 13;
            }
        }

        return speeds;
    }
}
