using Lugwork.Hubs;

namespace Lugwork.Reading;

/// <summary>Axle and width of a hub in one clause of a line that says other things too: "hinten 142 mm mit 12er Achse", "steekas van 12 mm bij 197 breed", "148 with a 12 mm thru axle".</summary>
internal sealed partial class LineScan
{
    /// <summary>How far axle and width may stand apart, in items.</summary>
    private const int HubSpan = 8;

    private void HubInClause(bool rear, List<(decimal Width, decimal Axle, int First, int Last)> found)
    {
        if (!(_slot == Slot.Frame || _slot == Slot.Fork || _slot == Slot.RearWheel || _slot == Slot.FrontWheel) || found.Count > 0)
        {
            return;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            if (!IsAxleFigure(i) || OtherEnd(i, rear))
            {
                continue;
            }

            int width = -1;
            foreach (int step in (ReadOnlySpan<int>)[1, -1])
            {
                int other = WidthBeside(i, step, rear);
                if (other >= 0 && width >= 0 && _items[other].Value != _items[width].Value)
                {
                    return;
                }

                width = other >= 0 ? other : width;
            }

            if (width >= 0)
            {
                found.Add((_items[width].Value, _items[i].Value, Math.Min(i, width), Math.Max(i, width)));
                _items[i].Used = true;
                _items[width].Used = true;
                return;
            }
        }
    }

    /// <summary>A thickness that thru-axles have, against a word for an axle: "12er Achse", "steekas van 12 mm", "12 mm thru axle".</summary>
    private bool IsAxleFigure(int i)
    {
        if (!Free(i) || _items[i].Value is not (12 or 15 or 20) || !_items[i].IsMillimetre || _items[i].IsFraction || Joins(i) || (i > 0 && _items[i].Glued && _items[i - 1].Text == "m"))
        {
            return false;
        }

        int behind = i + 1 < _items.Count && _items[i + 1] is { Glued: true, Text: "er" or "mm" } ? i + 2 : i + 1;
        if (behind < _items.Count && _items[behind].Clause == _items[i].Clause && IsAxleWord(_items[behind]))
        {
            return true;
        }

        int before = i - 1;
        before -= before > 0 && WordLists.ScanHubClauseIsAxleFigure.Contains(_items[before].Text) ? 1 : 0;
        return before >= 0 && _items[before].Clause == _items[i].Clause && IsAxleWord(_items[before]);
    }

    private static bool IsAxleWord(SpecItem item) => item.Is("m:thru") || item.Is("t:axle");

    /// <summary>The width of a hub of this end on one side of the axle, in its clause, with nothing of another part between; -1 where there is none.</summary>
    private int WidthBeside(int axle, int step, bool rear)
    {
        for (int j = axle + step; j >= 0 && j < _items.Count && Math.Abs(j - axle) <= HubSpan && _items[j].Clause == _items[axle].Clause; j += step)
        {
            SpecItem item = _items[j];
            if (item.IsNumber)
            {
                return Free(j) && item.IsMillimetre && !item.IsFraction && IsHubWidth(item.Value, rear) && !Joins(j) && !OtherEnd(j, rear) && !IsTravelOfFork(j) && IsWidthOfHub(axle, j, rear) ? j : -1;
            }

            if (item.Kind == SpecTokenKind.Sign ? !item.IsSign('-') && !item.IsSign('(') && !item.IsSign(')') : (item.IsTopic && !IsOfHub(item)) || item.Is("m:or") || item.Is("m:not") || item.Is("m:adapt") || item.Is("m:max") || item.Is("m:min") || item.Is("m:to") || item.Is(rear ? "m:front" : "m:rear") || item.Terms.Any(t => t[0] is 'v' or 'd'))
            {
                return -1;
            }
        }

        return -1;
    }

    /// <summary>A word for the hub or its end; the name of the rear triangle is one of the stays too, which are never as short as a hub.</summary>
    private static bool IsOfHub(SpecItem item) => item.Is("m:chainstay") || IsHubWord(TopicIn(item));

    /// <summary>Nothing beside the figure says that it is of another thing; on a fork, where travel is as long, a word says that it is the width.</summary>
    private bool IsWidthOfHub(int axle, int width, bool rear)
    {
        string topic = TopicOf(width);
        bool said = topic.StartsWith("n:width", StringComparison.Ordinal) || (width > axle && WordLists.ScanHubClauseIsWidthOfHub.Contains(_items[width - 1].Text))
            || (width + 1 < _items.Count && _items[width + 1].Text is "wide" or "breed" or "breit" or "large" or "largo" or "ancho" or "across");
        bool isLength = (width + 1 < _items.Count && _items[width + 1].Is("t:length")) || (IsLengthWord(width + 1) && _items[width + 1].Text != "largo") || (width + 1 < _items.Count && _items[width + 1].Text is "de" or "di" && IsLengthWord(width + 2));
        if (isLength || (!rear && !said))
        {
            // "Eje pasante de 12 y 148 de largo": how long the axle is.
            return false;
        }

        foreach (int j in (ReadOnlySpan<int>)[width - 1, width + 1])
        {
            if (j >= 0 && j < _items.Count && _items[j].Clause == _items[width].Clause && !_items[j].IsNumber && ((_items[j].IsTopic && !IsOfHub(_items[j])) || _items[j].Is("m:pm") || _items[j].Is("m:fm") || _items[j].Terms.Any(t => t[0] is 'v' or 'd')))
            {
                return false;
            }
        }

        return said || topic.Length == 0 || IsOfHub(_items[Link(width)]) || _items[Link(width)].Clause != _items[width].Clause;
    }
}
