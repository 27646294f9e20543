namespace Lugwork.Reading;

/// <summary>Parts that are mates only in the clause where they stand.</summary>
internal sealed partial class SetAside
{
    /// <summary>So much of a clause is looked at for each of its items; longer ones are no clauses of a sheet.</summary>
    private const int LongestClause = 60;

    /// <summary>What names a mate only in such a clause: the cassettes that a body is for, the stem that a bar needs, the tube that a collar goes round, the rim that a tyre is for.</summary>
    private bool IsMateHere(SpecItem item, int first, int last)
    {
        if (_slot == Slot.Headset && item.Is("t:fork"))
        {
            if (_codes.First != first || _codes.Last != last)
            {
                _codes = (first, last, NamesCode(first, last));
            }

            return _codes.Named;
        }

        if (_slot == Slot.SeatClamp)
        {
            return item.Is("t:tube");
        }

        if (_slot == Slot.Frame && item.Is("t:bearing"))
        {
            return NamesCupOrShell(first, last);
        }

        if ((_slot == Slot.RearWheel || _slot == Slot.FrontWheel) && (item.Is("t:rotor") || (item.Is("t:brake") && !item.Is("m:front") && !item.Is("m:rear"))))
        {
            return HasFixing(first, last);
        }

        if ((_slot == Slot.RearWheel && item.Is("t:frame")) || (_slot == Slot.FrontWheel && item.Is("t:fork")))
        {
            return (IsFor(_items[first]) || IsTaking(_items[first])) && NamesAxle(first, last);
        }

        if (_slot == Slot.Chainring && item.Is("t:chain"))
        {
            return IsFor(_items[first]) || IsTaking(_items[first]) || (first < last && (IsFor(_items[first + 1]) || IsTaking(_items[first + 1])));
        }

        if (_slot == Slot.Handlebar)
        {
            return item.Is("t:stem") && (IsAtStem(_items, _items.IndexOf(item, first)) || Any(first, last, "m:needs") || IsFor(_items[first]) || (first < last && IsFor(_items[first + 1])) || (first + 1 < last && IsFor(_items[first + 2])));
        }

        if ((_slot == Slot.FrontTyre || _slot == Slot.RearTyre) && (item.Is("t:rim") || item.Is("t:wheel")))
        {
            return NamesSeat(first, last);
        }

        if (_slot == Slot.RearWheel && item.Is("t:cassette") && Any(first, last, "t:thread") && _items.FindIndex(first, last - first + 1, i => i is { IsNumber: true, Value: 24 }) > 0)
        {
            // "Rosca para piñón 1.375 x 24": the thread that it goes on.
            return true;
        }

        if (_slot == Slot.RearWheel && item.Is("t:cassette") && first > 0 && Any(Math.Max(0, first - 8), first, "m:hg") && _items.FindIndex(Math.Max(0, first - 5), Math.Min(first, 5) + 1, IsTaking) >= 0)
        {
            // "HG body, takes 8, 9 and 10 speed cassettes".
            return true;
        }

        return _slot == Slot.RearWheel && item.Is("t:cassette") && (Any(first, last, "m:hg") || Any(first, last, "m:eightspline") || HasBody(first, last))
            && (IsFor(_items[first]) || IsTaking(_items[first]) || (first < last && (IsFor(_items[first + 1]) || IsTaking(_items[first + 1]))) || IsOfAnyCassette(item, first, last));
    }

    /// <summary>"Ø potence 31,8", "26.0 at the stem", "35 por la potencia": the stem is the place of the figure.</summary>
    public static bool IsAtStem(List<SpecItem> items, int stem) =>
        stem > 0 && items[stem].Is("t:stem")
        && (items[stem - 1].IsSign('\u00F8') || WordLists.SetAsideMatesIsAtStem.Contains(items[stem - 1].Text) || (stem > 1 && items[stem - 1].IsSign('\'') && items[stem - 2].Text is "all" or "sull" or "nell")
            || (stem > 1 && items[stem - 1].Text is "the" or "la" or "de" or "der" or "dem" && WordLists.SetAsideMatesIsAtStem2.Contains(items[stem - 2].Text)));

    /// <summary>"Upper bearing IS42", "BB95, bearings pressed in": the bearing of a head tube or a shell that is named in the same clause.</summary>
    private bool NamesCupOrShell(int first, int last)
    {
        for (int i = first; i <= last && i < first + LongestClause; i++)
        {
            bool cup = i < last && _items[i].Text is "is" or "zs" or "ec" && _items[i].Kind == SpecTokenKind.Word && _items[i + 1] is { IsNumber: true, Value: >= 25 and <= 65 };
            bool lager = i > first && _items[i - 1].Text is "lager" && !_items[i - 1].IsFraction && _items[i].Terms.Any(t => t.StartsWith("v:ShellFamily=", StringComparison.Ordinal));
            if (cup || lager || _items[i].Terms.Any(t => t.StartsWith("v:Shell=", StringComparison.Ordinal)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The clause that was last looked at for a code, each once.</summary>
    private (int First, int Last, bool Named) _codes = (-1, -1, false);

    /// <summary>"EC34/30 for a threadless fork": a code of a cup is of the headset.</summary>
    private bool NamesCode(int first, int last)
    {
        for (int i = first; i < last; i++)
        {
            int at = _items[i + 1].IsSign('-') ? i + 2 : i + 1;
            if (_items[i].Text is "ec" or "zs" or "is" && at <= last && _items[at] is { IsNumber: true, Value: >= 25 and <= 65 })
            {
                return true;
            }
        }

        return false;
    }

    private bool? _crowns;

    /// <summary>What a frame says of the fork that goes into it: its travel, its crowns, or one figure that is the most.</summary>
    private bool IsLimitOfFork(int first, int last)
    {
        bool figure = false;
        _crowns ??= _items.Exists(o => o.Is("v:CrownType=single") || (o.Is("v:CrownType=dual") && o.End - o.Start > 6) || o.Is("v:CrownsAllowed=single") || o.Is("v:CrownsAllowed=dual"));
        for (int i = first; i <= last && i < first + LongestClause; i++)
        {
            if (_items[i].Is("t:travel") || _items[i].Is("v:CrownType=single") || _items[i].Is("v:CrownType=dual") || _items[i].Is("v:CrownsAllowed=single") || _items[i].Is("v:CrownsAllowed=dual"))
            {
                return true;
            }

            figure |= _items[i] is { IsNumber: true, Unit: "mm", Value: >= 80 and <= 220 } || (_crowns.Value && _items[i] is { IsNumber: true, IsFraction: false, Unit: "", Value: >= 80 and <= 220 } && _items[i].Value % 10 == 0 && Numbers(first, last) == 1);
        }

        last = Math.Min(last, first + LongestClause);
        return figure && Any(first, last, "m:max") && !Any(first, last, "t:rotor") && !Any(first, last, "t:tyre") && !Any(first, last, "t:brake");
    }

    /// <summary>"For 12x148 frames": the hub by both of its figures.</summary>
    private bool NamesAxle(int first, int last)
    {
        for (int i = first + 1; i < last; i++)
        {
            if (_items[i].IsSign('x') && _items[i - 1] is { IsNumber: true, Unit: "" or "mm" } a && _items[i + 1] is { IsNumber: true, Unit: "" or "mm" } b && Math.Min(a.Value, b.Value) is >= 5 and <= 20 && Math.Max(a.Value, b.Value) is >= 70 and <= 200)
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsTaking(SpecItem item) => item.Kind == SpecTokenKind.Word && WordLists.SetAsideMatesIsTaking.Contains(item.Text);

    /// <summary>"Disco 6 fori": what a disc is fixed with is of the hub.</summary>
    private bool HasFixing(int first, int last)
    {
        bool fixing = false;
        for (int i = first; i <= last; i++)
        {
            if (_items[i].IsNumber)
            {
                return false;
            }

            fixing |= _items[i].Is("v:RotorFixing=six-bolt") || _items[i].Is("v:RotorFixing=center-lock");
        }

        return fixing;
    }

    /// <summary>"Adaptor not supplied", "bring your own adapter": what does not come with it changes nothing of what is said.</summary>
    private bool IsAdapterNotThere(int first, int last)
    {
        if (first == 0 || !Any(first, last, "m:adapt") || Any(first, last, "m:endcaps"))
        {
            return false;
        }

        bool lacking = false;
        for (int i = first; i <= last; i++)
        {
            if (_items[i].IsNumber || (!_items[i].Terms.IsEmpty && _items[i].Terms[0].StartsWith("v:", StringComparison.Ordinal)))
            {
                return false;
            }

            lacking |= _items[i].Is("m:not") || WordLists.SetAsideMatesIsAdapterNotThere.Contains(_items[i].Text);
        }

        return lacking;
    }

    /// <summary>"Head tube reamed to 29.9 mm": what a bore was reamed to is what it is; what it was reamed from is not.</summary>
    private bool IsReamedTo(int first, int last)
    {
        int reamed = Find(first, last, "d:past");
        int to = reamed + 1;
        bool word = reamed >= 0 && _slot == Slot.Frame && WordLists.SetAsideMatesIsReamedTo.Contains(_items[reamed].Text);
        bool sure = word && to < last && _items[to].Text is "to" or "auf" or "a" or "op" or "tot" && _items[to + 1].IsNumber && (Any(first, last, "t:headtube") || Any(first, last, "t:headset"));
        if (word && !sure && to < last && _items[to].Text is "for" or "fur" or "pour" or "para" or "per" or "voor" && Any(first, reamed, "t:seattube"))
        {
            // "Seat tube reamed for a 26.2 post".
            to += _items[to + 1].IsNumber ? 0 : 1;
            sure = to < last && _items[to + 1].IsNumber;
        }

        if (!sure || _items.GetRange(first, last - first + 1).Exists(i => WordLists.SetAsideMatesIsReamedTo2.Contains(i.Text)) || _items.GetRange(to + 2, last - to - 1).Exists(i => i.IsNumber || i.Is("d:past")))
        {
            return false;
        }

        Replace(reamed, "m:nothing");
        return true;
    }

    /// <summary>"Rim is drilled Schrader", "Ventilloch auf 8,5 aufgebohrt": how a hole is now.</summary>
    private bool IsDrilled(int first, int last) => IsRimDrilled(first, last)
        || ((_slot == Slot.Frame || _slot == Slot.Fork) && Any(first, last, "t:brake") && _items[Find(first, last, "d:past")].Text is "drilled" or "gebohrt" or "geboord" && !_items.GetRange(first, last - first + 1).Exists(i => WordLists.SetAsideMatesIsDrilled.Contains(i.Text)));

    private bool IsRimDrilled(int first, int last) =>
        (_slot == Slot.FrontWheel || _slot == Slot.RearWheel) && (Any(first, last, "t:valvehole") || (Any(first, last, "v:ValveStem=presta") || Any(first, last, "v:ValveStem=schrader") || Any(first, last, "t:valve")) && (Any(first, last, "t:rim") || _items.GetRange(first, last - first + 1).Exists(i => i.Value is 6.5m or 8.5m)) || (_items.GetRange(first, last - first + 1).FindAll(i => i.IsNumber) is [{ Unit: "" or "holes", Value: 16 or 18 or 20 or 24 or 28 or 32 or 36 or 40 or 48 }]) || (Any(first, last, "t:rim") && (Any(first, last, "v:ValveStem=schrader") || Any(first, last, "v:ValveStem=presta") || Any(first, last, "t:rimholes"))))
        && !_items.GetRange(first, last - first + 1).Exists(i => i.Text is "was" or "were" or "war" or "formerly" or "previously" or "originally" or "fruher");

    private bool HasBody(int first, int last)
    {
        bool NumberAfter(int from, int to) => _items.FindIndex(from, to - from + 1, i => i.IsNumber) >= 0;

        for (int i = first; i <= last; i++)
        {
            foreach (string term in _items[i].Terms)
            {
                if (term.StartsWith("v:FreehubBody=", StringComparison.Ordinal) || (term == "m:hg" && !NumberAfter(first, last)))
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

    /// <summary>"12x148, also 130 mm QR": a second hub that the same end is said to take, so that neither is certain.</summary>
    private bool IsSecondHub(int word, int last) =>
        _items[word].Text is "also" or "auch" or "ook" or "aussi" or "egalement" or "tambien" or "anche" && (Any(word, last, "m:qr") || Any(word, last, "m:thru"))
        && word < last && _items[word + 1] is { IsNumber: true, IsFraction: false, Value: >= 100 and <= 200 };

    /// <summary>"27,5 Zoll, also 584": the German word says what follows from the size before it. "110 mm apart": a distance.</summary>
    private bool IsNoExtra(int first, int last)
    {
        bool wheel = _slot == Slot.FrontWheel || _slot == Slot.RearWheel || _slot == Slot.FrontTyre || _slot == Slot.RearTyre;
        for (int i = first; i <= last; i++)
        {
            bool also = wheel && first > 0 && _items[i].Text == "also" && i < last && _items[i + 1].IsNumber && LineScan.IsSeat(_items[i + 1].Value);
            also |= _items[i].Text == "also" && first > 0 && i < last && _items[i + 1] is { IsNumber: true, IsFraction: true } && (_slot == Slot.FrontAxleNuts || _slot == Slot.RearAxleNuts);
            also |= _slot == Slot.Handlebar && _items[i].Text is "ook" or "auch" or "aussi" or "egalement" or "tambien" or "anche" or "also" && (Any(first, last, "t:grip") || Any(first, last, "t:clamp")) && Numbered(first, last);
            // "12x148, also 130 mm": said of the same end, and then the line says two things.
            also |= (_slot == Slot.Frame || _slot == Slot.Fork) && i <= first + 1 && _items[i].Text == "also" && i < last && _items[i + 1].IsNumber;
            also |= first > 0 && (_slot == Slot.Frame || _slot == Slot.Fork) && IsSecondHub(i, last);
            // "Post mount 180, tot 203 kan ook": how large the rotor may be.
            also |= (_slot == Slot.Frame || _slot == Slot.Fork) && _items[i].Text is "ook" or "auch" or "aussi" or "tambien" or "anche" or "too" && Any(first, last, "m:max") && IsRotorOfMountBefore(first, last + 1);
            // "Por arriba IS42, por abajo también IS42": the other half is of the same kind.
            also |= _slot == Slot.Headset && WordLists.SetAsideMatesIsNoExtra.Contains(_items[i].Text) && (Any(first, last, "m:upper") || Any(first, last, "m:lower")) && Numbered(first, last);
            bool apart = _items[i].Text == "apart" && i > first && _items[i - 1].IsNumber;
            if (_items[i].Is("d:extra") && !also && !apart)
            {
                return false;
            }
        }

        return true;
    }
}
