namespace Lugwork.Reading;

/// <summary>The other end of a part: a line about it gives no value.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Front" in a line for the rear wheel, or in the clause of what was read for the rear of a frame.</summary>
    private void OtherEndOfPart()
    {
        if (_slot == Slot.UpperBearing || _slot == Slot.LowerBearing)
        {
            int other = Anywhere(_slot == Slot.UpperBearing ? "m:lower" : "m:upper");
            if (other >= 0)
            {
                Several("", [], other, other, "the line names the other half");
            }

            return;
        }

        if (_slot == Slot.FrontDerailleur)
        {
            // "10 Gänge hinten": the sprockets that it is for.
            return;
        }

        bool rear = _slot.Key.StartsWith("rear", StringComparison.Ordinal) || _slot == Slot.Frame || _slot == Slot.RearShifter;
        bool front = _slot.Key.StartsWith("front", StringComparison.Ordinal) || _slot == Slot.Fork;
        if (!rear && !front)
        {
            return;
        }

        bool whole = _slot != Slot.Frame && _slot != Slot.Fork;
        for (int i = 0; i < _items.Count; i++)
        {
            SpecItem item = _items[i];
            if (!item.Is(rear ? "m:front" : "m:rear") || item.Is(rear ? "m:rear" : "m:front") || item.Text is "voor" or "av" or "ar" or "vr" or "hr" or "back" || Negated(i) || item.Is("t:frontmech") || item.Is("t:rearmech"))
            {
                continue;
            }

            if (whole ? ReadAround(item.Clause, ItemsShort ? 8 : 1) : OfEnd(item.Clause))
            {
                Several("", [], i, i, "the line names the other end");
                return;
            }
        }
    }

    private bool ItemsShort => _items.Count <= ShortLine;

    /// <summary>A value that has an end was read in the clause.</summary>
    private bool OfEnd(int clause)
    {
        foreach (LineFinding value in Values.Values)
        {
            bool ended = value.Field.StartsWith("rear", StringComparison.Ordinal) || value.Field.StartsWith("front", StringComparison.Ordinal) || value.Field.Contains("Rotor", StringComparison.Ordinal) || value.Field.Contains("Tyre", StringComparison.Ordinal);
            if (ended && value.Field != "frontDerailleurMount" && _items[value.First].Clause <= clause && clause <= _items[value.Last].Clause && !OwnEndCloser(value, clause))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Front 12x100 rear 12x142": the word before the value says its own end.</summary>
    private bool OwnEndCloser(LineFinding value, int clause)
    {
        string own = _slot == Slot.Frame ? "m:rear" : "m:front";
        string other = _slot == Slot.Frame ? "m:front" : "m:rear";
        for (int i = value.First; i >= 0 && _items[i].Clause == clause; i--)
        {
            if (_items[i].Is(own))
            {
                return true;
            }

            if (_items[i].Is(other))
            {
                return false;
            }
        }

        return false;
    }
}
