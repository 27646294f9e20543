namespace Lugwork.Reading;

/// <summary>Clauses that are about another part, the other end, or what the part is for.</summary>
internal sealed partial class SetAside
{
    /// <summary>"For 12x100 forks", "fits 8/9/10-speed bodies": said of what the part goes to, where the part has no figure of that.</summary>
    private bool IsForOther(int first, int last) => IsForOtherThan(first, last);

    /// <summary>"Per cambio a 10 velocità", "pour dérailleur 10 vitesses": the gears that a chain is for say its size, where no other part is named.</summary>
    private bool IsForSpeeds(int first, int last)
    {
        int speeds = 0;
        for (int i = first; i <= last; i++)
        {
            speeds += _items[i].IsNumber ? _items[i] is { Unit: "speed", Value: >= 5 and <= 13 } ? 1 : 2 : 0;
            if (LineScan.IsPart(_items[i]) && !_items[i].Is("t:rearmech") && !_items[i].Is("t:chain"))
            {
                return false;
            }
        }

        return speeds == 1;
    }

    /// <summary>"Fixed sprocket, for 1/8 chain", "cut for a 3/32 chain": the one figure is a width of chains, which is that of the sprocket or ring.</summary>
    private bool IsForChainWidth(int first, int last)
    {
        bool chain = false;
        bool made = false;
        int figures = 0;
        for (int i = first; i <= last; i++)
        {
            figures += _items[i].IsNumber ? _items[i].IsFraction && _items[i].Text is "1/8" or "3/32" ? 1 : 2 : 0;
            chain |= _items[i].Is("t:chain");
            made |= IsFor(_items[i]) || (_items[i].IsNumber && i < last && _items[i + 1].Is("t:chain"));
            if ((LineScan.IsPart(_items[i]) && !_items[i].Is("t:chain")) || _items[i].Is("m:not"))
            {
                return false;
            }
        }

        return figures == 1 && chain && made && (_slot == Slot.Cassette || _slot == Slot.Chainring || _slot == Slot.Crankset);
    }

    private bool IsForOtherThan(int first, int last)
    {
        if (_own is not ("t:cassette" or "t:axle" or "t:rotor" or "t:valve" or "t:chain" or "t:tyre") || !IsFor(_items[first]) && !(last > first && IsFor(_items[first + 1])))
        {
            return false;
        }

        int colon = -1;
        for (int i = first; i <= last && colon < 0; i++)
        {
            colon = _items[i].IsSign(':') ? i : -1;
        }

        int end = colon < 0 ? last : colon;
        if (_own == "t:chain" && IsForSpeeds(first, last))
        {
            return false;
        }

        if (IsForChainWidth(first, last) || (_own == "t:cassette" && HasBody(first, last)))
        {
            // "For N3W": the splines of the cassette.
            return false;
        }

        if (_own == "t:tyre" && NamesSeat(first, last))
        {
            return false;
        }

        bool other = IsOfOtherPart(first, end - (colon < 0 ? 0 : 1), _own) || Any(first, end, "t:freehub") || (_own == "t:axle" && !Any(first, end, "t:axle") && !(Any(first, end, "m:thru") && !(_slot == Slot.RearThruAxle && _items[first + 1].Text == "voor") && _items.FindIndex(first, end - first, o => o.Text == "m") >= 0));
        if (other && colon >= 0)
        {
            Hide(first, colon);
            return false;
        }

        return other;
    }

    internal static bool IsFor(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.SetAsideIsFor.Contains(item.Text);

    /// <summary>The tyre that a frame or fork is sold with is no limit.</summary>
    private bool IsTyreThatComesWith(int first, int last) =>
        (_slot == Slot.Frame || _slot == Slot.Fork) && Any(first, last, "d:kit") && Any(first, last, "t:tyre") && !Any(first, last, "m:max");

    /// <summary>A part is named that is neither the one that is read nor what mates with it, and none that is.</summary>
    private bool IsOfOtherPart(int first, int last, string mates)
    {
        if (mates.Length == 0)
        {
            return false;
        }

        bool other = false;
        for (int i = first; i <= last; i++)
        {
            SpecItem item = _items[i];
            if (item.IsSign(':') || IsMateHere(item, first, last) || (_slot == Slot.Frame && item.Is("t:fork") && IsLimitOfFork(first, last)) || LineScan.IsMate(item, mates) || (!_strict && IsOwnField(item)))
            {
                return false;
            }

            if (_slot == Slot.Frame && i > first && IsFor(item) && IsShell(_items[i - 1].IsNumber && i > first + 1 ? _items[i - 2] : _items[i - 1]))
            {
                // "PF92 for off-road cranks": the shell, by what goes into it.
                return false;
            }

            if (_own == "t:chain" && i > first && item.Is("t:cassette") && _items[i - 1] is { IsNumber: true, IsFraction: false, Value: >= 5 and <= 13 })
            {
                // "For 9 sprockets": what a chain is named by.
                return false;
            }

            if (_own == "t:cassette" && item.Terms.Any(t => t.StartsWith("v:CassettePattern=", StringComparison.Ordinal)))
            {
                // "Pignon à 3 ergots pour moyeu à vitesses": the sprocket is named by its kind.
                return false;
            }

            if (_own == "t:tyre" && item.Is("t:rim") && !item.IsFraction && item.Text is "llanta" or "llantas")
            {
                // In America the tyre.
                return false;
            }

            // Bars of pressure are no handlebar.
            other |= LineScan.IsPart(item) && !(item.Text == "bar" && i > first && _items[i - 1] is { IsNumber: true, Value: <= 20 });
        }

        return other;
    }

    private static bool IsShell(SpecItem item) => item.Terms.Any(t => t.StartsWith("v:Shell", StringComparison.Ordinal));

    /// <summary>A word for something that the part has a field of.</summary>
    private bool IsOwnField(SpecItem item)
    {
        foreach (string term in item.Terms)
        {
            if (term[0] == 't' && TopicFields.Of(_slot, term, true, false, true, false) is not null)
            {
                return true;
            }
        }

        return item.Is("t:steerer") || item.Is("t:clamp") || item.Is("t:crown") || item.Is("t:spindle") || item.Is("t:bcd") || item.Is("t:rails") || (item.Is("t:headtube") && _slot == Slot.Frame) || (item.Is("t:bosses") && (_slot == Slot.Frame || _slot == Slot.Fork));
    }

    private int Numbers(int first, int last)
    {
        int numbers = 0;
        for (int i = first; i <= last; i++)
        {
            numbers += _items[i].IsNumber ? 1 : 0;
        }

        return numbers;
    }

    private bool IsOfOtherEnd(int first, int last)
    {
        bool rear = _slot.Key.StartsWith("rear", StringComparison.Ordinal) && _slot != Slot.RearDerailleur;
        bool front = _slot.Key.StartsWith("front", StringComparison.Ordinal) && _slot != Slot.FrontDerailleur;
        if (!rear && !front)
        {
            return false;
        }

        bool other = false;
        for (int i = first; i <= last; i++)
        {
            SpecItem item = _items[i];
            if (item.Is(rear ? "m:rear" : "m:front"))
            {
                return false;
            }

            other |= item.Is(rear ? "m:front" : "m:rear") && item.Text is not ("voor" or "back") && !(item.Text is "av" or "ar" && (_slot.Key.Contains("Tube", StringComparison.Ordinal) || Any(first, last, "t:valvehole")));
        }

        return other;
    }
}
