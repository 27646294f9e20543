namespace Lugwork.Reading;

/// <summary>Figures of adapters, shims and reducers.</summary>
internal sealed partial class SetAside
{
    /// <summary>"27.2 with a shim to 30.9", "180 with adapter": the figure of the adapter is not the part's. Without a figure or a kind it says nothing for certain, and stays.</summary>
    private void Adapters(int first, int last)
    {
        if (_slot == Slot.ShellAdapter)
        {
            return;
        }

        int adapter = Find(first, last, "m:adapt");
        if (adapter < 0)
        {
            return;
        }

        if ((_slot == Slot.FrontCaliper || _slot == Slot.RearCaliper) && Enumerable.Range(first, last - first).Any(i => _items[i].IsSign('+') && _items[i + 1] is { IsNumber: true, Glued: true }) && _items.Exists(i => WordLists.CompactWordsIsSupplied.Contains(i.Text) || WordLists.ScanDoubtsIsKitOfBody.Contains(i.Text)) && !Any(first, last, "m:not"))
        {
            // "Adapter +20 mm included": what it adds, and no size of the caliper.
            Replace(adapter, "m:increment");
            return;
        }

        if (_slot == Slot.Headset && NamesCode(first, adapter) && Numbers(first, adapter) == 2 && Numbers(adapter, last) == 0 && Enumerable.Range(first, adapter - first).Any(i => _items[i].IsSign('/')))
        {
            // "ZS56/30 with reducer": the code says what the race is.
            Replace(adapter, "m:nothing");
            return;
        }

        if ((_slot == Slot.Frame || _slot == Slot.Fork) && (Any(first, adapter, "t:rotor") || IsRotorOfMountBefore(first, adapter)) && Any(first, adapter, "m:max"))
        {
            // "Up to 203 mm rotor with an adapter": the largest rotor is one however it is got there.
            Replace(adapter, "m:nothing");
            return;
        }

        if (_slot == Slot.BottomBracket && _items[adapter].Text == "reduced" && adapter < last && (_items[adapter + 1].Is("m:to") || IsFor(_items[adapter + 1])))
        {
            // "PF30, cups reduced to a 24 mm spindle": what the bearings take.
            Replace(adapter, "m:nothing");
            return;
        }

        int with = -1;
        for (int i = first; i < adapter; i++)
        {
            with = i > first && IsWith(_items[i]) ? i : with;
        }

        // End caps that can be changed are a property of the hub; so are large ones.
        if (_items[adapter].Is("m:endcaps") && (_slot == Slot.FrontWheel || _slot == Slot.RearWheel || (_slot == Slot.Fork && HasLargeCaps(first, last))) && (Any(first, last, "m:swap") || Any(first, last, "d:option") || HasLargeCaps(first, last) || !Says(first, last)))
        {
            return;
        }

        int from = with >= 0 && Says(first, with) && Says(with, last) ? with : first;
        if (from > first && adapter < last && _items[adapter + 1].Text is "from" or "von" or "de" or "depuis" or "da" or "desde" or "van")
        {
            from = first;
        }

        if ((Says(from, last) || Any(first, last, "d:kit")) && IsSureBesideShim(from, last))
        {
            Hide(from, last);
        }
    }

    private bool HasLargeCaps(int first, int last)
    {
        for (int i = first; i <= last; i++)
        {
            if (_items[i] is { IsNumber: true, Value: 31 })
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>On a post, a bar, a clamp or a bore two diameters of which a shim joins one to the other can each be the part's own: the line stays in doubt.</summary>
    private bool IsSureBesideShim(int from, int last) =>
        _slot != Slot.Seatpost && _slot != Slot.Chain && _slot != Slot.Handlebar && _slot != Slot.Grips && _slot != Slot.Stem && _slot != Slot.SeatClamp
        && !(_slot == Slot.Frame && Any(from, last, "m:adapt") && _items.Exists(i => i.Is("t:frontmech")) && !_items.Exists(i => i.Is("t:brake") || i.Is("m:pm") || i.Is("m:fm") || i.Is("m:is")))
        && !(_slot == Slot.Frame && _items.Exists(i => i.Is("t:post") || i.Is("t:seattube") || i.Text == "sp") && Any(from, last, "m:adapt") && !_items.Exists(i => i.Is("t:brake") || i.Is("m:pm") || i.Is("m:fm") || i.Is("m:is")));

    internal static bool IsWith(SpecItem item) => item.Kind == SpecTokenKind.Word && WordLists.SetAsideIsWith.Contains(item.Text);

    /// <summary>A figure or a word for a kind or value stands there.</summary>
    private bool Says(int first, int last)
    {
        for (int i = first; i <= last; i++)
        {
            if (_items[i].IsNumber || (!_items[i].Terms.IsEmpty && !_items[i].Is("m:adapt") && (_items[i].Terms[0].StartsWith("v:", StringComparison.Ordinal) || IsKind(_items[i]))))
            {
                return true;
            }
        }

        return false;
    }
}
