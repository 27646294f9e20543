namespace Lugwork.Reading;

/// <summary>Mounts of brakes and other sizes that are told loosely: the figure stands in its own piece of the line, and small words lead to it.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Post mount, la de 180", "flat mount, el de 140", "post mount natif, version 180", "flat mount, celui en 160": a pronoun for the mount and the rotor that it is made for, and no other figure in the line; -1 where they are not.</summary>
    private int RotorOfThatOne(int mark, bool post)
    {
        if (Anywhere("m:max") >= 0 || Anywhere("m:min") >= 0 || Anywhere("m:or") >= 0 || Anywhere("t:caliper") > mark || _items.Count > ShortLine)
        {
            return -1;
        }

        int size = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!_items[i].IsNumber)
            {
                continue;
            }

            bool same = size >= 0 && RotorOf(_items[i]) == RotorOf(_items[size]);
            if (i < mark || (size >= 0 && !same) || (size < 0 && !MountSize(i, post) && !IsInchesOfMount(i, post)))
            {
                return -1;
            }

            size = size < 0 ? i : size;
        }

        if (size < 0 || size > mark + TaperReach || _items[size].Clause > _items[mark].Clause + 1 || JoinsClosely(size))
        {
            return -1;
        }

        bool told = false;
        for (int i = mark + 1; i < size; i++)
        {
            bool small = _items[i].Kind == SpecTokenKind.Sign ? _items[i].IsSign(',') || _items[i].IsSign('-') || _items[i].IsSign(':') || _items[i].IsSign('(')
                : WordLists.ScanMountsToldRotorOfThatOne.Contains(_items[i].Text);
            if (!small)
            {
                return -1;
            }

            bool one = WordLists.ScanMountsToldRotorOfThatOne2.Contains(_items[i].Text) || (_items[i].Text is "pour" or "du" && i + 1 < size);
            told |= one && i < size;
        }

        return told && !IsRotorNamed(size) ? size : -1;
    }

    /// <summary>"El de ciento cuarenta o ciento sesenta, 140/160": the same two figures twice, each pair joined.</summary>
    private bool IsPairAgain()
    {
        if (FigureCount != 4)
        {
            return false;
        }

        int first = _items.FindIndex(i => i.IsNumber);
        int third = first + 2 < _items.Count && _items[first + 2].IsNumber ? _items.FindIndex(first + 3, i => i.IsNumber) : -1;
        return third > 0 && third + 2 < _items.Count && _items[third].Value == _items[first].Value && _items[third + 2].IsNumber && _items[third + 2].Value == _items[first + 2].Value && (Links(_items[third + 1]) || _items[third + 1].Is("m:or") || _items[third + 1].Is("m:and"));
    }

    private bool IsInchesOfMount(int i, bool post) => post && Free(i) && !(i > 0 && _items[i].Glued && _items[i - 1].Text == "m") && _items[i] is { IsFraction: false, IsInch: true, Value: 5 or 6 or 7 or 8 };

    private static decimal RotorOf(SpecItem item) => item.Value switch { 5 => 140, 6 => 160, 7 => 180, 8 => 203, _ => item.Value };

    /// <summary>"Post mount, the 180 rotor": a rotor is named behind the figure, and can be the one that is mounted.</summary>
    private bool IsRotorNamed(int size)
    {
        for (int i = size + 1; i < _items.Count && i <= size + 3 && _items[i].Clause == _items[size].Clause; i++)
        {
            if (_items[i].IsTopic || _items[i].Is("t:rotor") || _items[i].Is("m:adapt"))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"De los anchos, de cien milímetros", "version 86,5 mm": nothing in its clause but small words.</summary>
    private bool IsAloneBesideSmall(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item != _items[i] && item.Kind != SpecTokenKind.Sign && !item.Is("n:width") && !(item.Kind == SpecTokenKind.Word && WordLists.ScanMountsToldIsAloneBesideSmall.Contains(item.Text)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>An old post, a new one or another one is not the one that goes into this frame for certain.</summary>
    private static bool IsOfOtherOne(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanMountsToldIsOfOtherOne.Contains(item.Text);

    /// <summary>"La tija que entra en ese cuadro es de 27,2", "le tube de selle, à l'intérieur, fait 34,9 mm": one size in the line, and no part named but the post or the tube it goes into.</summary>
    private void SeatTubeToldLoosely()
    {
        if (Values.Count > 0 || Doubts.Count > 0 || _denied.Count > 0 || _items.Count > ShortLine)
        {
            return;
        }

        int size = -1;
        bool post = false;
        bool tube = false;
        bool inside = false;
        for (int i = 0; i < _items.Count; i++)
        {
            SpecItem item = _items[i];
            if (item.IsNumber)
            {
                if (size >= 0 ? item.Value != _items[size].Value : !Free(i) || !item.IsMillimetre || item.Value is < 22 or > 36 || JoinsClosely(i))
                {
                    return;
                }

                size = size < 0 ? i : size;
                continue;
            }

            post |= item.Is("t:post");
            tube |= item.Is("t:seattube");
            bool within = item.Is("m:inside") || item.Is("t:inner") || item.Is("v:DropperRouting=internal");
            inside |= within;
            if (within || (item.Is("d:hedge") && IsMeasureWord(item.Text)))
            {
                continue;
            }

            if (IsOfOtherOne(item) || item.Is("m:outside") || item.Is("t:seatclamp") || item.Is("m:band") || item.Is("m:adapt") || item.Is("m:max") || item.Is("m:min") || item.Is("m:not") || item.Is("m:pas") || item.Is("t:dropper") || item.IsSign('?') || item.Terms.Any(t => t[0] is 'd' or 'v') || (item.IsTopic && TopicIn(item) is not ("t:post" or "t:seattube" or "t:inner" or "t:frame" or "n:size")))
            {
                return;
            }
        }

        if (size >= 0 && ((post && !tube) || (tube && inside)) && IsNominal(_items[size].Text) && !Mentions(size, OfOtherPost))
        {
            Take("seatTube", _items[size].Text, size, size);
        }
    }
}
