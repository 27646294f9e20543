namespace Lugwork.Reading;

/// <summary>Takes out of a line what it says of something else, before it is read: what is denied, what is past, adapters, extras, other things, other parts and the other end.</summary>
/// <remarks>Each item is looked at a bounded number of times. What was taken out is kept, for a value that is denied elsewhere in its line is in doubt.</remarks>
internal sealed partial class SetAside
{
    private const int Scope = 10;

    private readonly Slot _slot;
    private readonly List<SpecItem> _items;
    private readonly string _mates;

    private readonly string _own;
    private readonly bool _strict;

    /// <summary>The line started with another thing: what follows is of it, until the part itself is named.</summary>
    private bool _away;

    private SetAside(Slot slot, List<SpecItem> items, bool strict)
    {
        _slot = slot;
        _items = items;
        NamedParts words = NamedParts.Of(slot);
        _strict = strict;
        _own = words.Own;
        _mates = strict && slot != Slot.Frame && slot != Slot.Fork ? words.Itself : words.Mates;
    }

    /// <summary>What was denied.</summary>
    public List<SpecItem> Denied { get; } = [];

    /// <summary>A fork was named in what was taken out.</summary>
    public bool NamesFork { get; private set; }

    /// <param name="slot">The part that is read.</param>
    /// <param name="items">The items; those that are taken out are replaced.</param>
    /// <param name="strict">The part was only guessed from the line: what names another one is of that one, also where the two mate.</param>
    public static SetAside From(Slot slot, List<SpecItem> items, bool strict)
    {
        SetAside aside = new(slot, items, strict);
        if (slot == Slot.FrontDerailleur)
        {
            aside.Reducers();
        }

        aside.GluedTube();
        for (int first = 0; first < items.Count;)
        {
            int last = first;
            while (last + 1 < items.Count && items[last + 1].Clause == items[first].Clause)
            {
                last++;
            }

            aside.Clause(first, last);
            first = last + 1;
        }

        return aside;
    }

    private void Clause(int first, int last)
    {
        Tolerances(first, last);
        NotBoost(first, last);
        NutsOfAxle(first, last);
        SaddleOfBrake(first, last);
        CrownsOfCassette(first, last);
        NotMoreThan(first, last);
        Than(first, last);
        Emphasis(first, last);
        SleeveTo(first, last);
        if (IsAdapterNotThere(first, last))
        {
            Hide(first, last);
            return;
        }

        if (WithoutThings(first, last) || IsNoteOfSpacer(first, last) || IsOnOtherSide(first, last))
        {
            Hide(first, last);
            return;
        }

        if (Any(first, last, "d:hedge") || Any(first, last, "d:unsure") || Any(first, last, "d:condition") || Any(first, last, "d:option") || (Find(first, last, "m:or") is >= 0 and int or && !(Find(first, last, "m:not") is >= 0 and int not && not < or && NothingSaid(first, not) && NumberAround(or, last))))
        {
            return;
        }

        if (Any(first, last, "m:endcaps"))
        {
            Adapters(first, last);
        }

        last = WithoutExtra(first, last);
        bool spacers = _slot == Slot.Fork && Any(first, last, "m:spacers") && Any(first, last, "m:max");
        bool thing = _slot != Slot.HeadsetCover && !(_slot == Slot.Fork && Any(first, last, "m:spacers") && Any(first, last, "m:max")) && NamesThing(first, last);
        bool other = thing || (!spacers && IsOfOtherPart(first, last, _mates) && !(_own == "t:chain" && IsFor(_items[first].Kind == SpecTokenKind.Sign && first < last ? _items[first + 1] : _items[first]) && IsForSpeeds(first, last)) && !IsForChainWidth(first, last));
        _away = (_away && !NamesPart(first, last)) || (other && first == 0 && !(thing && !_strict && (_slot == Slot.Frame || _slot == Slot.Fork)));
        if (other || _away || (Any(first, last, "d:extra") && !IsNoExtra(first, last)) || (Any(first, last, "d:past") && !IsDrilled(first, last) && !IsReamedTo(first, last) && !IsForChainWidth(first, last)) || IsOfOtherEnd(first, last) || IsForOther(first, last) || IsTyreThatComesWith(first, last))
        {
            Hide(first, last);
            return;
        }

        for (int i = first; i <= last; i++)
        {
            if (_items[i].Is("m:not") || IsPas(i, last))
            {
                Deny(first, i, last);
            }
        }

        Adapters(first, last);
    }

    /// <summary>"12v con falsamaglia": what comes with the part is taken out, and what stands before it stays. The last item that is left.</summary>
    private int WithoutExtra(int first, int last)
    {
        if (_slot == Slot.HeadsetCover || _slot == Slot.Rider)
        {
            return last;
        }

        int with = -1;
        for (int i = first + 1; i < last; i++)
        {
            with = IsWith(_items[i]) || _items[i].Text is "w" or "plus" ? i : with;
        }

        if (with < 0 || !Says(first, with - 1) || NamesThing(first, with - 1) || !NamesThing(with, last))
        {
            return last;
        }

        for (int i = with; i <= last; i++)
        {
            if (_items[i].IsNumber || _items[i].Is("m:not") || LineScan.IsMate(_items[i], _mates))
            {
                return last;
            }
        }

        Hide(with, last);
        return with - 1;
    }

    /// <summary>A thing without an interface; not where the word is one for the part too ("camera"), nor bags in a sum of masses.</summary>
    private bool NamesThing(int first, int last)
    {
        bool rider = Any(first, last, "t:rider") || (first > 1 && _items[first - 1].Is("t:rider")) || (first > 2 && _items[first - 2].Is("t:rider")) || Any(first, last, "t:systemweight") || Any(first, last, "t:loadlimit") || _slot == Slot.Rider;
        for (int i = first; i <= last; i++)
        {
            if (_items[i].Text == "standaard" && i > first && _slot == Slot.Pedals && _items[i - 1].IsFraction && i == last)
            {
                // "9/16 standaard".
                continue;
            }

            if (_items[i].Text == "standaard" && i < last && (_items[i + 1].IsNumber || WordLists.SetAsideNamesThing.Contains(_items[i + 1].Text) || _items[i + 1].Is("t:post") || _items[i + 1].Is("t:bb")))
            {
                // "Standaard 27,2 zadelpen": the Dutch word for a kickstand, here of what is usual.
                continue;
            }

            if (_items[i].Text == "carrier" && (_slot == Slot.FrontRotor || _slot == Slot.RearRotor))
            {
                // "Splined carrier": the middle of a disc.
                continue;
            }

            if (_items[i].Text is "cover" or "covers" && (_slot == Slot.FrontTyre || _slot == Slot.RearTyre) && IsCoverOfRim(i, last))
            {
                continue;
            }

            if (_items[i].Is("d:thing") && !(_items[i].Text is "luce" && (_slot == Slot.FrontRimBrake || _slot == Slot.RearRimBrake || ((_slot == Slot.Fork || _slot == Slot.Frame) && Any(first, last, "t:tyre")))) && !(i > first && _items[i - 1].Is("m:not")) && !LineScan.IsMate(_items[i], _mates) && !((_items[i].Is("t:hardware") && (_slot == Slot.Shock || (_slot == Slot.Frame && Any(first, Math.Min(last, first + LongestClause), "t:shock")))) || (_slot == Slot.Shock && (i > 0 || last <= 1) && _items[i].Text is "spring" or "feder" or "ressort" or "muelle" or "molla" or "veer" && !NumberBehind(i, last))) && !(_items[i].Is("t:tube") && (_slot == Slot.FrontInnerTube || _slot == Slot.RearInnerTube)) && !(rider && LineScan.IsLuggage(_items[i])))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Cover, wire beads, 57-559", "small-wheel cover, 349 seat: 37-349": the word for a tyre at the head of the line, whose ISO size stands further behind.</summary>
    private bool IsHeadBeforeSize(int cover)
    {
        for (int i = 0; i < cover; i++)
        {
            if (_items[i].Kind != SpecTokenKind.Sign && !_items[i].Is("c:colour") && !WordLists.SetAsideCoverOf.Contains(_items[i].Text) && !(_items[i].Text == "wheel" && i > 0 && _items[0].Text == "small"))
            {
                return false;
            }
        }

        return cover <= 4 && _items.FindIndex(cover + 1, o => o.IsNumber && LineScan.IsSeat(o.Value)) is > 0;
    }

    /// <summary>"Roadster cover 37-590", "cover, 27 x 1 1/4", "26 x 2.10 cover": the old English word for a tyre, beside its size.</summary>
    private bool IsCoverOfRim(int i, int last)
    {
        if ((i == last || _items[i + 1].Kind == SpecTokenKind.Sign) && ((i > 2 && _items[i - 1].IsNumber && (_items[i - 2].IsSign('x') || _items[i - 2].IsSign('-')) && _items[i - 3].IsNumber) || IsHeadBeforeSize(i)))
        {
            return true;
        }

        int size = i + 1;
        size += size < _items.Count && (_items[size].IsSign(',') || _items[size].IsSign(':')) ? 1 : 0;
        return size + 1 < _items.Count && (size <= last || _items[i + 1].IsSign(',')) && _items[size].IsNumber && (_items[size + 1].IsSign('x') || _items[size + 1].IsSign('-')) && !(i > 0 && (_items[i - 1].Is("m:with") || _items[i - 1].Text is "bike" or "bicycle" or "rain" or "dust" or "storage" or "wheel" || _items[i - 1].IsTopic && !_items[i - 1].Is("t:tyre") && !_items[i - 1].Is("m:front") && !_items[i - 1].Is("m:rear") && !_items[i - 1].Is("n:colour")));
    }

    private bool NumberBehind(int i, int last)
    {
        for (int j = i + 1; j <= last && j <= i + LongestClause; j++)
        {
            if (_items[j].IsNumber)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Will not take 142x12 or 148x12": the denial stands first, and both are denied.</summary>
    private bool NothingSaid(int first, int not)
    {
        for (int i = first; i < not; i++)
        {
            if (_items[i].IsNumber || (!_items[i].Terms.IsEmpty && _items[i].Terms[0][0] == 'v'))
            {
                return false;
            }
        }

        return true;
    }

    private bool NumberAround(int or, int last) => or > 0 && or < last && _items[or - 1].IsNumber && _items[or + 1].IsNumber;

    /// <summary>"3/8 in nuts" on a frame, fork or wheel: the nuts of a solid axle, which say how the wheel is held and are no part of their own.</summary>
    private void NutsOfAxle(int first, int last)
    {
        if (_slot != Slot.Frame && _slot != Slot.Fork && _slot != Slot.FrontWheel && _slot != Slot.RearWheel)
        {
            return;
        }

        for (int i = first; i <= last; i++)
        {
            if (_items[i].Is("t:nuts") && ((i > first && IsAxleFraction(_items[i - 1])) || (i < last && IsAxleFraction(_items[i + 1]))))
            {
                Replace(i, "m:nutted");
            }
        }
    }

    /// <summary>"Hydraulischer Sattel, PM": the caliper, by a word that is one for a saddle too.</summary>
    private void SaddleOfBrake(int first, int last)
    {
        for (int i = first; i <= last && (_slot == Slot.FrontCaliper || _slot == Slot.RearCaliper); i++)
        {
            if (_items[i] is { Text: "sattel", IsFraction: false } && _items[i].Is("t:saddle"))
            {
                Replace(i, "t:caliper");
            }
        }
    }

    /// <summary>"Lleva nueve coronas", "11 corone 10-42": as many sprockets of a cassette, by a word that is one for a chainring too.</summary>
    private void CrownsOfCassette(int first, int last)
    {
        for (int i = first + 1; i <= last && _slot == Slot.Cassette; i++)
        {
            if (_items[i] is { Text: "coronas" or "corone" or "couronnes" } && _items[i].Is("t:chainring") && _items[i - 1] is { IsNumber: true, IsFraction: false, Value: >= 5 and <= 13 })
            {
                Replace(i, "t:cassette");
            }
        }
    }

    /// <summary>"34,9 (réductions 31,8 et 28,6 incluses)": smaller sizes that a band is made for with rings that come with it.</summary>
    private void Reducers()
    {
        int word = _items.FindIndex(i => i.Kind == SpecTokenKind.Word && WordLists.SetAsideReducers.Contains(i.Text));
        int size = word < 0 ? -1 : _items.FindIndex(i => i is { IsNumber: true, Value: 34.9m or 31.8m });
        if (size < 0 || size > word)
        {
            return;
        }

        int first = word;
        for (int i = size + 1; i < first; i++)
        {
            first = _items[i].IsSign('(') || _items[i].IsSign('+') || IsWith(_items[i]) ? i : first;
        }

        int last = _items.FindIndex(word, i => i.IsSign(')')) is >= 0 and int bracket ? bracket : _items.Count - 1;
        for (int i = size + 1; i <= last; i++)
        {
            if (_items[i].IsNumber && (_items[i].Value >= _items[size].Value || _items[i].Value is not (28.6m or 31.8m) || i < first))
            {
                return;
            }
        }

        if (last - first <= LongestClause)
        {
            Hide(first, last);
        }
    }

    private static bool IsAxleFraction(SpecItem item) => item is { IsNumber: true, IsFraction: true, Value: 0.375m or 0.3125m };

    /// <summary>27.2 ±0.05: the figure behind the sign is a tolerance.</summary>
    private void Tolerances(int first, int last)
    {
        for (int i = first; i < last; i++)
        {
            if (_items[i].IsSign('\u00B1') && _items[i + 1] is { IsNumber: true, Value: < 0.2m })
            {
                Hide(i, i + 1);
            }
        }
    }

    private void Replace(int i, string term)
    {
        SpecItem item = _items[i];
        _items[i] = new() { Kind = item.Kind, Text = item.Text, Start = item.Start, End = item.End, Glued = item.Glued, Clause = item.Clause, Terms = term == "m:max" && item.Is("t:rotor") ? ["t:rotor", term] : [term] };
    }

    private bool IsPas(int i, int last) => _items[i].Is("m:pas") && i < last && !_items[i + 1].IsNumber && _items[i + 1].Kind != SpecTokenKind.Sign;

    /// <summary>Takes out what stands behind a word of denial; what it denies has to be told: "not 31.6", not "not possible".</summary>
    private void Deny(int first, int not, int last)
    {
        if (_slot == Slot.Rider && not < last && LineScan.IsLuggage(_items[not + 1]) && !_items.Exists(o => o.Is("t:systemweight") || WordLists.ScanMassesSumIn.Contains(o.Text)))
        {
            // "Senza zaino 67,5 kg": what is not weighed, and no more is denied.
            Hide(not, not + 1);
            return;
        }

        int end = not;
        bool told = false;
        for (int i = not + 1; i <= last && i <= not + Scope && !_items[i].IsSign(':') && !IsTurn(_items[i]); i++)
        {
            told |= _items[i].IsNumber || !_items[i].Terms.IsEmpty;
            end = i;
        }

        if (!told)
        {
            return;
        }

        if (_slot != Slot.Frame && _slot != Slot.Fork && IsOnlyKit(not + 1, end))
        {
            // "Chainring 46/30 not included": what is named before is not there.
            Hide(first, end);
            return;
        }

        for (int i = not + 1; i <= end; i++)
        {
            Denied.Add(_items[i]);
        }

        Hide(not, end);
    }

    /// <summary>Nothing is told but that it comes with the part.</summary>
    private bool IsOnlyKit(int from, int end)
    {
        bool kit = false;
        for (int i = from; i <= end; i++)
        {
            if (_items[i].IsNumber || (!_items[i].Terms.IsEmpty && !_items[i].Is("d:kit")))
            {
                return false;
            }

            kit |= _items[i].Is("d:kit");
        }

        return kit;
    }

    /// <summary>"Not 31.6 but 27.2": what follows is no longer denied.</summary>
    private static bool IsTurn(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.SetAsideIsTurn.Contains(item.Text);

    private static bool IsKind(SpecItem item) => item.Is("m:pm") || item.Is("m:fm") || item.Is("m:is") || item.Is("m:qr") || item.Is("m:hg") || item.Is("m:boost");

    /// <summary>Anything of the part itself, or what mates with it, is named.</summary>
    private bool NamesPart(int first, int last)
    {
        for (int i = first; i <= last; i++)
        {
            if (LineScan.IsMate(_items[i], _mates) || IsOwnField(_items[i]) || (!_items[i].Terms.IsEmpty && _slot == Slot.Frame && (_items[i].Terms[0].StartsWith("v:Shell", StringComparison.Ordinal) || _items[i].Terms[0].StartsWith("v:Hanger", StringComparison.Ordinal))))
            {
                return true;
            }
        }

        return false;
    }

    private bool Any(int first, int last, string term) => Find(first, last, term) >= 0;

    private int Find(int first, int last, string term)
    {
        for (int i = first; i <= last; i++)
        {
            if (_items[i].Is(term))
            {
                return i;
            }
        }

        return -1;
    }

    private void Hide(int first, int last)
    {
        for (int i = first; i <= last; i++)
        {
            SpecItem item = _items[i];
            NamesFork |= item.Is("t:fork");
            _items[i] = new() { Kind = SpecTokenKind.Word, Text = "\u0001", Start = item.Start, End = item.End, Glued = item.Glued, Clause = item.Clause, Terms = ["m:nothing"] };
        }
    }
}
