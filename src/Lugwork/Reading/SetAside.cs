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
        bool other = thing || (!spacers && IsOfOtherPart(first, last, _mates) && !(_own == "t:chain" && IsFor(_items[first].Kind == SpecTokenKind.Sign && first < last ? _items[first + 1] : _items[first]) && IsForSpeeds(first, last)));
        _away = (_away && !NamesPart(first, last)) || (other && first == 0 && !(thing && !_strict && (_slot == Slot.Frame || _slot == Slot.Fork)));
        if (other || _away || (Any(first, last, "d:extra") && !IsNoExtra(first, last)) || (Any(first, last, "d:past") && !IsDrilled(first, last) && !IsReamedTo(first, last)) || IsOfOtherEnd(first, last) || IsForOther(first, last) || IsTyreThatComesWith(first, last))
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

            if (_items[i].Is("d:thing") && !(_items[i].Text is "luce" && (_slot == Slot.FrontRimBrake || _slot == Slot.RearRimBrake || ((_slot == Slot.Fork || _slot == Slot.Frame) && Any(first, last, "t:tyre")))) && !(i > first && _items[i - 1].Is("m:not")) && !LineScan.IsMate(_items[i], _mates) && !((_items[i].Is("t:hardware") && (_slot == Slot.Shock || (_slot == Slot.Frame && Any(first, Math.Min(last, first + LongestClause), "t:shock")))) || (_slot == Slot.Shock && i > 0 && _items[i].Text is "spring" or "feder" or "ressort" or "muelle" or "molla" or "veer" && !NumberBehind(i, last))) && !(_items[i].Is("t:tube") && (_slot == Slot.FrontInnerTube || _slot == Slot.RearInnerTube)) && !(rider && LineScan.IsLuggage(_items[i])))
            {
                return true;
            }
        }

        return false;
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

    /// <summary>"Groter dan 180 gaat niet", "größer als 180 passt nicht": a comparison, its figure, and right behind that it does not go.</summary>
    private void MoreThanIsNot(int first, int last)
    {
        for (int i = first; i < last; i++)
        {
            int than = i + 2 < last && (_items[i + 1].Is("t:rotor") || _items[i + 1].Is("t:tyre") || _items[i + 1].Is("t:chainring")) ? i + 1 : i;
            int figure = than + 1 < last && _items[than + 1].Text is "di" or "de" or "que" or "als" or "dan" or "than" ? than + 2 : i + 1;
            bool over = _items[i].Is("m:over") || (_items[i].Is("m:min") && _items[i].IsFraction) || (_items[i].Is("m:max") && _items[i].Is("t:rotor") && figure == i + 2)
                || (than > i && figure == than + 2 && _items[i].Text is "grotere" or "grossere" or "bigger" or "larger");
            if (!over || !_items[figure].IsNumber)
            {
                continue;
            }

            int at = figure + 1;
            while (at < last && (_items[at].IsNumber || (_items[at].Kind == SpecTokenKind.Sign && _items[at].Glued) || _items[at].Is("t:rotor") || _items[at].Is("m:rear") || _items[at].Is("m:front") || _items[at].Text is "de" or "di" or "mm" or "will" or "can" or "do"))
            {
                at++;
            }

            bool verbFirst = at < last && IsFitting(_items[at].Text) && Enumerable.Range(at + 1, Math.Min(3, last - at)).Any(j => _items[j].Is("m:not")) && !Numbered(at, Math.Min(last, at + 3));
            verbFirst |= at < last && _items[at].Text is "sollte" or "darf" or "soll" or "mag" or "moet" && Enumerable.Range(at + 1, Math.Min(4, last - at)).Any(j => _items[j].Is("m:not")) && !Numbered(at, last);
            bool notFirst = at < last && (_items[at].Is("m:not") || _items[at].Is("m:pas") || _items[at].Text is "ne" or "won" or "doesn") && Enumerable.Range(at + 1, Math.Min(4, last - at)).Any(j => IsFitting(_items[j].Text));
            if (verbFirst || notFirst)
            {
                if (!_items[i].Is("m:max"))
                {
                    Replace(i, "m:max");
                }

                for (int j = at; j <= last && j <= at + 4 && !_items[j].IsNumber && _items[j].Clause == _items[i].Clause; j++)
                {
                    if (_items[j].Is("m:not") || _items[j].Is("m:pas"))
                    {
                        Replace(j, "m:nothing");
                    }
                }
            }
        }
    }

    private static bool IsFitting(string word) =>
        WordLists.SetAsideIsFitting.Contains(word);

    /// <summary>"Do not fit rotors bigger than 203": a denied comparison is a limit, and nothing is denied.</summary>
    private void NotMoreThan(int first, int last)
    {
        MoreThanIsNot(first, last);
        for (int i = first; i < last; i++)
        {
            if (IsNeverDone(_items[i]))
            {
                Untried(i, last);
                continue;
            }

            bool duty = IsDuty(i + 1, last) || IsDuty(i + 2, last) || (i > first && IsDuty(i - 1, last));
            if (!_items[i].Is("m:not") && !(duty && _items[i].Is("m:pas")))
            {
                continue;
            }

            if (!duty && IsOnlyUntried(first, i, last))
            {
                Untried(i, last);
                continue;
            }

            for (int j = i + 1; j <= last && j <= i + Scope && !_items[j].IsNumber; j++)
            {
                if (duty && IsGreaterThan(j, last))
                {
                    Replace(i, "m:nothing");
                    break;
                }

                if (_items[j].Is("m:over") || (_items[j].Is("m:min") && j < last && (_items[j + 1].IsNumber || (j + 1 < last && WordLists.SetAsideNotMoreThan.Contains(_items[j + 1].Text) && _items[j + 2].IsNumber)) && _items[j].Text is not ("min" or "minimum" or "least" or "from" or "ab" or "desde" or "vanaf")))
                {
                    Replace(i, "m:nothing");
                    Replace(j, "m:max");
                    break;
                }
            }
        }
    }

    /// <summary>"Have never run a rotor bigger than 180", "nie eine größere als 180 gefahren": what was not done so far is no limit.</summary>
    private bool IsOnlyUntried(int first, int not, int last)
    {
        for (int i = Math.Max(first, not - 4); i <= last && i <= not + Scope + 6; i++)
        {
            if (_items[i].Kind == SpecTokenKind.Word && (WordLists.SetAsideIsOnlyUntried.Contains(_items[i].Text) || TalkWords.Done.Contains(_items[i].Text))
                && !(_items[i].Text == "run" && !(i == not + 1 && _items[not].Text == "never")))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Mai montato", "never ridden" as one phrase.</summary>
    private static bool IsNeverDone(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && !item.Is("m:not") && item.Text is "mai" or "never" or "nie" or "nunca" or "jamais" or "nooit";

    /// <summary>A comparison behind what was not done is one with a figure that is no limit.</summary>
    private void Untried(int not, int last)
    {
        for (int j = not + 1; j <= last && j <= not + Scope && !_items[j].IsNumber; j++)
        {
            if (IsGreaterThan(j, last) || _items[j].Is("t:riderweight"))
            {
                Replace(j, "m:over");
                return;
            }
        }
    }

    /// <summary>"No debe", "non si può": what may not be is a limit, where "no he probado" is only what was not tried.</summary>
    private bool IsDuty(int i, int last) =>
        i <= last && _items[i].Kind == SpecTokenKind.Word && WordLists.SetAsideIsDuty.Contains(_items[i].Text);

    /// <summary>"Un plato mayor de 34", "un disco mayor que 180": the word for the largest, compared with the figure right behind.</summary>
    private bool IsGreaterThan(int j, int last) =>
        j + 2 <= last && _items[j].Is("m:max") && (_items[j].Text == "mayor" || _items[j].Is("t:rotor") || _items[j].Is("t:chainring")) && _items[j + 1].Text is "de" or "que" or "di" or "del" && _items[j + 2].IsNumber;

    private void Replace(int i, string term)
    {
        SpecItem item = _items[i];
        _items[i] = new() { Kind = item.Kind, Text = item.Text, Start = item.Start, End = item.End, Glued = item.Glued, Clause = item.Clause, Terms = [term] };
    }

    private bool IsPas(int i, int last) => _items[i].Is("m:pas") && i < last && !_items[i + 1].IsNumber && _items[i + 1].Kind != SpecTokenKind.Sign;

    /// <summary>Takes out what stands behind a word of denial; what it denies has to be told: "not 31.6", not "not possible".</summary>
    private void Deny(int first, int not, int last)
    {
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

        if (_own == "t:cassette" && HasBody(first, last))
        {
            // "For N3W": the splines of the cassette.
            return false;
        }

        if (_own == "t:tyre" && NamesSeat(first, last))
        {
            return false;
        }

        bool other = IsOfOtherPart(first, end - (colon < 0 ? 0 : 1), _own) || Any(first, end, "t:freehub") || (_own == "t:axle" && !Any(first, end, "t:axle"));
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
