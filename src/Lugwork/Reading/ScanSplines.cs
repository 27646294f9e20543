namespace Lugwork.Reading;

/// <summary>Splines of a spindle, and pedals by the name of their thread.</summary>
internal sealed partial class LineScan
{
    /// <summary>"One-piece spider": in one piece is what stands behind, and not the cranks.</summary>
    private bool IsOfSpider(int i) =>
        _items[i].Is("v:SpindleSeat=one-piece") && i + 1 < _items.Count && (_items[i + 1].Is("t:chainring") || WordLists.ScanSplinesIsOfSpider.Contains(_items[i + 1].Text));

    /// <summary>"Acht Keile, 9 mm lang", "eight splines, short (5 mm)": the length of the splines apart from their number.</summary>
    private void SplinesApart(string field)
    {
        int mark = Anywhere("m:eightspline");
        string said = Values.TryGetValue(field, out LineFinding? before) ? before.Key : "";
        if (!said.StartsWith("8-spline", StringComparison.Ordinal) && (mark < 0 || said.Length > 0))
        {
            return;
        }

        int at = said.Length > 0 ? before!.First : mark;
        int figure = -1;
        int word = -1;
        string key = said;
        for (int i = Math.Max(0, at - 6); i < _items.Count && i <= at + 8; i++)
        {
            bool depth = Free(i) && _items[i] is { Unit: "mm", Value: 5 or 9 };
            bool isShort = depth ? _items[i].Value == 5 : WordLists.ScanSplinesSplinesApart.Contains(_items[i].Text);
            bool isLong = depth ? _items[i].Value == 9 : WordLists.ScanSplinesSplinesApart2.Contains(_items[i].Text);
            if ((!isShort && !isLong) || Math.Abs(_items[i].Clause - _items[at].Clause) > 1 || Negated(i))
            {
                continue;
            }

            if (!depth && !IsOfSplines(i, at))
            {
                continue;
            }

            // "9 mm lang": the word is of the figure.
            if (!depth && i > 0 && _items[i - 1] is { IsNumber: true, Unit: "mm" })
            {
                continue;
            }

            string one = isShort ? "8-spline-short" : "8-spline-long";
            if (key.Length > 0 && key != one)
            {
                Several(field, [key, one], Math.Min(at, i), Math.Max(at, i), "the splines are said to be short and long");
                return;
            }

            key = one;
            figure = depth ? i : figure;
            word = i;
        }

        if (word >= 0)
        {
            Keep(field, key, Math.Min(at, word), Math.Max(at, word));
            if (figure >= 0)
            {
                _items[figure].Used = true;
            }
        }
    }

    /// <summary>"For a 79 mm shell": where the only width of a shell is that one.</summary>
    private int OfShell79()
    {
        int at = _items.FindIndex(i => i is { IsNumber: true, Used: false, Value: 79, IsFraction: false });
        return at >= 0 && TopicOf(at) is "t:bb" && !Joins(at) && !_items.Exists(i => i is { IsNumber: true, Value: 68 or 73 or 83 or 86 or 86.5m or 89.5m or 92 }) ? at : -1;
    }

    /// <summary>"14 mm P1.25", "rosca francesa de 14 mm": the one metric thread of pedals, by its pitch or its name.</summary>
    private bool IsFrenchPedal(int i, out int last)
    {
        last = i;
        if (!Free(i) || _items[i].Value != 14 || !_items[i].IsMillimetre || _items[i].IsFraction || Joins(i))
        {
            return false;
        }

        for (int j = i + 1; j < _items.Count && j <= i + 4; j++)
        {
            if (Free(j) && _items[j] is { Value: 1.25m, IsFraction: false } && (_items[j - 1].Text is "p" || _items[j - 1].Is("t:pitch") || TopicOf(j) is "t:pitch"))
            {
                last = j;
                return true;
            }
        }

        for (int j = Math.Max(0, i - 5); j < _items.Count && j <= i + 5; j++)
        {
            if (Math.Abs(_items[j].Clause - _items[i].Clause) <= 1 && !Negated(j) && (_items[j].Is("v:ShellFamily=French") || WordLists.ScanSplinesIsFrenchPedal.Contains(_items[j].Text)))
            {
                return true;
            }
        }

        return false;
    }
}
