namespace Lugwork.Reading;

/// <summary>Parts that are mates only in the clause where they stand.</summary>
internal sealed partial class SetAside
{
    /// <summary>What names a mate only in such a clause: the cassettes that a body is for, the stem that a bar needs, the tube that a collar goes round, the rim that a tyre is for.</summary>
    private bool IsMateHere(SpecItem item, int first, int last)
    {
        if (_slot == Slot.SeatClamp)
        {
            return item.Is("t:tube");
        }

        if (_slot == Slot.Handlebar)
        {
            return item.Is("t:stem") && Any(first, last, "m:needs");
        }

        if ((_slot == Slot.FrontTyre || _slot == Slot.RearTyre) && (item.Is("t:rim") || item.Is("t:wheel")))
        {
            return NamesSeat(first, last);
        }

        return _slot == Slot.RearWheel && item.Is("t:cassette") && (Any(first, last, "m:hg") || _items[first].Text is "fits" or "takes" && HasBody(first, last))
            && (IsFor(_items[first]) || _items[first].Text is "takes" or "accepts" or "accepte" or "acepta" or "accetta" || (first < last && IsFor(_items[first + 1])));
    }

    private bool HasBody(int first, int last)
    {
        for (int i = first; i <= last; i++)
        {
            foreach (string term in _items[i].Terms)
            {
                if (term.StartsWith("v:FreehubBody=", StringComparison.Ordinal))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private bool NamesSeat(int first, int last)
    {
        for (int i = first; i <= last; i++)
        {
            if (_items[i].IsNumber && _items[i].IsMillimetre && _items[i].Value >= 300 && LineScan.IsSeat(_items[i].Value))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"27,5 Zoll, also 584": the German word says what follows from the size before it. "110 mm apart": a distance.</summary>
    private bool IsNoExtra(int first, int last)
    {
        bool wheel = _slot == Slot.FrontWheel || _slot == Slot.RearWheel || _slot == Slot.FrontTyre || _slot == Slot.RearTyre;
        for (int i = first; i <= last; i++)
        {
            bool also = wheel && first > 0 && _items[i].Text == "also" && i < last && _items[i + 1].IsNumber && LineScan.IsSeat(_items[i + 1].Value);
            bool apart = _items[i].Text == "apart" && i > first && _items[i - 1].IsNumber;
            if (_items[i].Is("d:extra") && !also && !apart)
            {
                return false;
            }
        }

        return true;
    }
}
