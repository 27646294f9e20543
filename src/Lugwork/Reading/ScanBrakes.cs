namespace Lugwork.Reading;

/// <summary>Brake mounts, calipers, levers, rim brakes and rotors.</summary>
internal sealed partial class LineScan
{
    /// <summary>Post mount, flat mount or IS tabs, with the rotor that it is made for.</summary>
    private void ReadMount(string field, bool rear)
    {
        OldMounts(field, rear);
        if (Values.ContainsKey(field))
        {
            return;
        }

        for (int i = 0; i < _items.Count && !Full; i++)
        {
            SpecItem item = _items[i];
            if (Negated(i) || (_slot == Slot.Frame && OtherEnd(i, true)))
            {
                continue;
            }

            if (item.Is("m:is") && item.End - item.Start <= 2 && i + 1 < _items.Count && (_items[i + 1].Is("m:pm") || _items[i + 1].Is("m:fm")))
            {
                // "The mount is PM180": a verb.
                continue;
            }

            if (item.Is("m:is") && item is { Text: "standard" or "type" or "norme", IsFraction: true } && i + 1 < _items.Count && _items[i + 1].Kind != SpecTokenKind.Sign && Clause(i, "t:bb"))
            {
                // "The bottom bracket standard is 386EVO": a verb.
                continue;
            }

            if (item.Is("m:is"))
            {
                bool named = item.Text is "i" || item.End - item.Start > 2 && !(item.End - item.Start < 6 && i > 0 && _items[i - 1] is { Kind: SpecTokenKind.Word } before && before.Terms.IsEmpty && before.Clause == item.Clause);
                bool holes = i + 1 < _items.Count && _items[i + 1] is { IsNumber: true, Glued: false, Unit: "mm", Value: 51 } && Anywhere("t:headtube") < 0 && Anywhere("t:headset") < 0;
                bool code = !holes && i + 1 < _items.Count && _items[i + 1] is { IsNumber: true } && _items[i + 1].Value is > 30 and < 60;
                bool brake = Clause(i, "t:brake") || Clause(i, "t:rotor") || Clause(i, "t:caliper");
                if (!code && (named || brake || Alone(i) || AloneBesidePrice(i) || IsMountOfEnd(i, rear)))
                {
                    int other = FindMark(i, rear ? "m:front" : "m:rear", 0);
                    if (other < 0 && !(rear && _slot == Slot.Frame && IsOnFork(i)))
                    {
                        // "IS, 51 mm": how far the two holes are apart.
                        MarkAll(i + 1, holes ? i + 1 : i);
                        Keep(field, !rear && FindMark(i, "m:dh", 1) >= 0 ? "IS-front-DH" : rear ? "IS-rear" : "IS-front", i, i);
                    }
                }
            }
            else if (item.Is("m:pm") && OldEyes(i, 68, 68.8m) is >= 0 and int posts)
            {
                Keep(field, "PM-old", Math.Min(i, posts), Math.Max(i, posts));
            }
            else if (item.Is("m:pm") || item.Is("m:fm"))
            {
                TakeMount(field, rear, i, item.Is("m:pm"));
            }
        }

        if (!Values.ContainsKey(field) && !Doubts.Exists(d => d.Field == field) && Anywhere("t:brake") is >= 0 and int tabs && Anywhere("m:pm") < 0 && Anywhere("m:fm") < 0 && Anywhere("m:is") < 0 && OldEyes(tabs, 22, 22) is >= 0 and int apart && IsDistance(apart) && !Mentions(apart, NotOfMount) && (Mentions(apart, PostsOrTabs) || Anywhere("m:mounttabs") >= 0))
        {
            Keep(field, "DM-22", Math.Min(tabs, apart), Math.Max(tabs, apart));
        }

        Settle(field);
    }

    /// <summary>Posts 68 mm and tabs 22 mm apart: the mounts from before the post mount and the IS tabs of today; -1 where no such distance stands there.</summary>
    private int OldEyes(int mark, decimal one, decimal other)
    {
        for (int j = Math.Max(0, mark - Reach); j < _items.Count && j <= mark + Reach; j++)
        {
            if (Free(j) && _items[j].Unit == "mm" && (_items[j].Value == one || _items[j].Value == other) && Math.Abs(_items[j].Clause - _items[mark].Clause) <= 2 && !JoinsClosely(j) && TopicOf(j) is not ("t:bb" or "t:spacing" or "t:shellbore" or "n:width" or "t:bar" or "t:grip" or "t:inner") && !(_items[j].Clause != _items[mark].Clause && Clauses(_items[j].Clause).Any(o => o.Terms.Any(t => t.StartsWith(FamilyPrefix, StringComparison.Ordinal)))))
            {
                return j;
            }
        }

        return -1;
    }

    /// <summary>A word for a distance stands in the clause of a figure.</summary>
    private bool IsDistance(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item.Kind == SpecTokenKind.Word && (WordLists.ScanBrakesIsDistance.Contains(item.Text) || item.Is("n:apart")))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"45 € : IS, ...": nothing in its clause but a price and signs.</summary>
    private bool AloneBesidePrice(int at)
    {
        foreach (SpecItem item in Clauses(_items[at].Clause))
        {
            if (item != _items[at] && item.Kind != SpecTokenKind.Sign && !(item.IsNumber && item.Unit == "other"))
            {
                return false;
            }
        }

        return at + 1 < _items.Count && (_items[at + 1].IsSign(',') || _items[at + 1].IsSign(';') || _items[at + 1].IsSign('|')) && at > 0;
    }

    /// <summary>"Posts 68 mm apart", "tabs 22 mm apart": the mounts before the standards, by how far apart they stand.</summary>
    private void OldMounts(string field, bool rear)
    {
        bool brake = Anywhere("t:bb") < 0 && (Anywhere("t:brake") >= 0 || Anywhere("t:rotor") >= 0 || Anywhere("m:pm") >= 0 || Anywhere("t:caliper") >= 0);
        for (int i = 0; i < _items.Count && brake; i++)
        {
            if (Free(i) && _items[i].Value is 68 or 22 && _items[i].Unit == "mm" && !Joins(i) && HasMark(i, "n:apart") && IsBetweenMounts(i) && !OtherEnd(i, rear) && !Clause(i, "n:bottle") && !Clause(i, "t:bosses") && !Clause(i, "d:thing"))
            {
                int apart = FindMark(i, "n:apart", 0);
                Keep(field, _items[i].Value == 68 ? "PM-old" : "DM-22", Math.Min(i, apart), Math.Max(i, apart));
            }
        }
    }

    /// <summary>Nothing but the word itself and signs in the line.</summary>
    private bool Alone(int at)
    {
        for (int i = 0; i < _items.Count && i < 12; i++)
        {
            if (i != at && _items[i].Kind != SpecTokenKind.Sign && !_items[i].Is("m:rear") && !_items[i].Is("m:front"))
            {
                return false;
            }
        }

        return _items.Count < 12;
    }

    /// <summary>"PF92 / IS AR / UDH", "15x110; IS; rotor max. 180": alone in its clause with a word for its end, or alone in a line that names a rotor or a brake.</summary>
    private bool IsMountOfEnd(int at, bool rear)
    {
        bool end = false;
        foreach (SpecItem item in Clauses(_items[at].Clause))
        {
            bool own = item.Is(rear ? "m:rear" : "m:front") && !item.IsTopic;
            end |= own;
            if (item != _items[at] && item.Kind != SpecTokenKind.Sign && !own)
            {
                return false;
            }
        }

        return end || ((Anywhere("t:rotor") >= 0 || Anywhere("t:brake") >= 0) && Anywhere("t:headset") < 0 && Anywhere("t:headtube") < 0);
    }

    private void TakeMount(string field, bool rear, int mark, bool post)
    {
        int size = -1;
        for (int j = mark + 1; j < _items.Count && j <= mark + 4; j++)
        {
            if (_items[j].IsTopic && !_items[j].Is("t:brake") && !_items[j].Is("t:caliper") && !_items[j].Is("t:rotor"))
            {
                break;
            }

            if (SetAside.IsWith(_items[j]) && Enumerable.Range(j + 1, Math.Min(3, _items.Count - j - 1)).Any(k => _items[k].Is("t:rotor")))
            {
                // "Flat mount mit 160er Scheibe": what is mounted.
                break;
            }

            if (MountSize(j, post) && IsOfQuantityBehind(j))
            {
                // "Post mount, 160 travel at the back"
                break;
            }

            if (MountSize(j, post) && !HasLimit(mark, j))
            {
                size = j;
                break;
            }

            if (_items[j].IsSign(',') || _items[j].IsSign(';') || _items[j].IsSign('|') || _items[j].IsNumber)
            {
                break;
            }
        }

        size = size < 0 ? RotorAlone(mark, post) : size;
        for (int j = mark - 1; size < 0 && j >= 0 && j >= mark - 3 && _items[j].Clause == _items[mark].Clause; j--)
        {
            size = MountSize(j, post) && !JoinsClosely(j) && (TopicOf(j) is "" or "t:brake" or "t:rotor" || (j == mark - 1 && _items[j].End - _items[j].Start > _items[j].Text.Length && _items[j].Unit.Length == 0 && TopicOf(j) is "t:fork" or "t:frame" or "t:spacing")) ? j : -1;
        }

        size = size < 0 ? RotorBeside(mark, post) : size;
        size = size < 0 ? RotorAmong(mark, post) : size;
        size = _items[mark].Is("t:caliper") ? -1 : size;
        if (size < 0 && !post && !rear && RotorsOfFork() is >= 0 and int both)
        {
            Keep(field, _items[both].Value == 140 ? "FM-front-140" : "FM-front-160", Math.Min(mark, both), Math.Max(mark, both + 2));
            _items[both].Used = _items[both + 2].Used = true;
            _joined.Add(both + 1);
            if (FigureCount == 4)
            {
                int again = _items.FindIndex(both + 3, i => i.IsNumber);
                _items[again].Used = _items[again + 2].Used = true;
                _joined.Add(again + 1);
            }

            return;
        }

        if (size < 0)
        {
            FieldReading any = _fields[field].Read(post ? "post mount" : "flat mount");
            Several(field, any.Keys.Length > 1 ? any.Keys : post ? ["PM-140", "PM-160", "PM-180", "PM-200", "PM-203"] : rear ? ["FM-rear-140", "FM-rear-160"] : ["FM-front-140", "FM-front-160"], mark, mark, "the rotor size that tells the mounts of this name apart is not said");
            return;
        }

        decimal value = _items[size].Value;
        string rotor = _items[size].IsInch || value < 10 ? value switch { 5 => "140", 6 => "160", 7 => "180", 8 => "203", _ => "" } : _items[size].Text;
        int last = size;
        int second = size + 2 < _items.Count && (_items[size + 1].IsSign('/') || _items[size + 1].IsSign('-') || _items[size + 1].Is("m:or") || (_slot == Slot.Fork && !post && _items[size + 1].Is("m:and"))) && MountSize(size + 2, post) && !(size + 3 < _items.Count && _items[size + 3].IsSign('x')) ? size + 2 : -1;
        if (second >= 0)
        {
            (decimal a, decimal b) = (value, _items[second].Value);
            if (!post && b == a + 20 && !rear)
            {
                Keep(field, a == 140 ? "FM-front-140" : "FM-front-160", Math.Min(mark, size), second);
                _items[size].Used = _items[second].Used = true;
                if (_items[size + 1].Is("m:or"))
                {
                    _joined.Add(size + 1);
                }

                return;
            }

            if (post && ((a == 8 && b == 203) || (a == 7 && b == 180) || (a == 6 && b == 160)) && _items[size + 1].IsSign('/'))
            {
                // "PM 8″/203": one size, said in inches and in millimetres.
                Keep(field, "PM-" + _items[second].Text, Math.Min(mark, size), second);
                _items[size].Used = _items[second].Used = true;
                return;
            }

            Several(field, [], Math.Min(mark, size), second, "two rotor sizes are named");
            return;
        }

        if (!post && !rear && rotor == "160")
        {
            Several(field, ["FM-front-140", "FM-front-160"], Math.Min(mark, size), Math.Max(mark, last), "a flat mount of a fork is made for two rotors, and one is named");
            return;
        }

        string text = post ? "PM-" + rotor : rear ? "FM-rear-" + rotor : "FM-front-" + rotor;
        Take(field, text, Math.Min(mark, size), Math.Max(mark, last));
    }

    /// <summary>"Flat mount, 160 mm": the figure that is all of the next clause, in a line about nothing but the mount.</summary>
    private int RotorAlone(int mark, bool post)
    {
        if (RotorOfThatOne(mark, post) is >= 0 and int told)
        {
            return told;
        }

        int figures = _items.Count > 14 ? 0 : _items.Count(i => i.IsNumber);
        if (figures == 2 && !post && _slot == Slot.Fork)
        {
            // "Flat mount, 160/180": both rotors that a fork is made for.
            int pair = _items.FindIndex(i => i.IsNumber);
            return pair > mark && pair <= mark + 5 && pair + 2 < _items.Count && (Links(_items[pair + 1]) || _items[pair + 1].Is("m:or")) && _items[pair + 2].Value == _items[pair].Value + 20 && MountSize(pair, false) && MountSize(pair + 2, false) && _items[pair].Clause <= _items[mark].Clause + 1 && Anywhere("m:max") < 0 ? pair : -1;
        }

        if (figures != 1)
        {
            return -1;
        }

        int size = _items.FindIndex(i => i.IsNumber);
        if (size > mark && size <= mark + 5 && MountSize(size, post) && _items[size].Clause <= _items[mark].Clause + 1 && Anywhere("m:max") < 0 && Anywhere("m:or") < 0 && IsNativeSize(size))
        {
            return size;
        }

        bool whole = size > mark && size <= mark + 3 && MountSize(size, post) && _items[size].Unit == "mm" && IsAloneInClause(size) && Anywhere("m:max") < 0 && Anywhere("t:rotor") < 0;
        return whole ? size : -1;
    }

    /// <summary>"160 mm rotor direct", "140er direkt ohne Adapter", "de 160", "160 native": small words, and one of them says that the mount is made for the rotor.</summary>
    private bool IsNativeSize(int size)
    {
        bool native = _denied.Exists(d => d.Is("m:adapt"));
        foreach (SpecItem item in Clauses(_items[size].Clause))
        {
            bool own = item.Kind == SpecTokenKind.Word && WordLists.ScanBrakesIsNativeSize.Contains(item.Text);
            native |= own || (item.Kind == SpecTokenKind.Word && item.Text is "de" or "da" or "van" or "von");
            if (item != _items[size] && item.Kind == SpecTokenKind.Word && !own && !item.Is("m:nothing") && !item.Is("t:rotor") && !item.Is("m:fm") && !item.Is("m:pm") && item.Text is not ("de" or "da" or "van" or "von" or "er" or "mm"))
            {
                return false;
            }
        }

        return native;
    }

    /// <summary>A word for a travel or a width right behind a figure, which is of no figure behind it.</summary>
    private bool IsOfQuantityBehind(int j) =>
        j + 1 < _items.Count && _items[j + 1].Clause == _items[j].Clause && (_items[j + 1].Is("t:travel") || _items[j + 1].Is("n:width")) && !(j + 2 < _items.Count && (_items[j + 2].IsNumber || _items[j + 2].IsSign(':')));

    private bool MountSize(int j, bool post) =>
        Free(j) && ((_items[j].IsMillimetre && _items[j].Value is >= 100 and <= 230) || (post && !(j > 0 && _items[j].Glued && _items[j - 1].Text == "m") && (_items[j].IsInch || _items[j].Glued || (j > 0 && _items[j - 1].Is("m:pm") && _items[j].Unit.Length == 0)) && _items[j].Value is 5 or 6 or 7 or 8 && !_items[j].IsFraction));

    /// <summary>"Up to" between a mount and a figure: the figure is the largest rotor, not the mount.</summary>
    private bool HasLimit(int from, int to)
    {
        for (int j = from; j < to; j++)
        {
            if (_items[j].Is("m:max"))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"1/4 in bolt, nut outside", "bolt 6 mm, recessed nut": the nut by its word, and the figure of the bolt beside it.</summary>
    private void ReadBrakeBolt()
    {
        int nut = Anywhere("v:BrakeBolt=nutted-6");
        int quarter = nut < 0 ? -1 : _items.FindIndex(i => i is { IsNumber: true, Used: false, IsFraction: true, Value: 0.25m });
        if (quarter >= 0 && Math.Abs(quarter - nut) <= Reach && !Joins(quarter))
        {
            Keep("bolt", "nutted-1/4", Math.Min(quarter, nut), Math.Max(quarter, nut));
            _items[quarter].Used = true;
            return;
        }

        Words("BrakeBolt", "bolt", i => !IsOfAnchor(i) && !IsNutWithin(i));
        for (int i = 0; i < _items.Count && Values.ContainsKey("bolt"); i++)
        {
            bool bolt = i > 0 && (_items[i - 1].Is("m:nutted") || _items[i - 1].Is("v:BrakeBolt=nutted-6") || WordLists.ScanBrakesReadBrakeBolt.Contains(_items[i - 1].Text));
            bolt |= i + 1 < _items.Count && (_items[i + 1].Is("m:nutted") || WordLists.ScanBrakesReadBrakeBolt2.Contains(_items[i + 1].Text));
            _items[i].Used |= bolt && Free(i) && _items[i] is { Value: 6, IsFraction: false, Unit: "" or "mm" } && !Joins(i);
        }
    }

    /// <summary>"Tabs for i.s. on fork": the mount of the other end, in a line of a frame.</summary>
    private bool IsOnFork(int i) =>
        _forkSetAside && i + 2 < _items.Count && _items[i + 1].Is("m:nothing") && _items[i + 2].Is("m:nothing") && _items[i + 2].Kind == SpecTokenKind.Word;

    /// <summary>"Fissaggio con dado a brugola incassato": fixed by a nut, which a word behind it puts inside the bridge.</summary>
    private bool IsNutWithin(int i) =>
        _items[i].Is("v:BrakeBolt=nutted-6") && Clauses(_items[i].Clause).Any(o => WordLists.ScanBrakesIsNutWithin.Contains(o.Text));

    /// <summary>"Hex nut outside for the cable anchor": the nut that holds the cable.</summary>
    private bool IsOfAnchor(int i) =>
        _items.Exists(o => o.Clause == _items[i].Clause && WordLists.ScanBrakesIsOfAnchor.Contains(o.Text))
        || (i + 2 < _items.Count && (SetAside.IsFor(_items[i + 1]) || _items[i + 1].Text is "du" or "del" or "de" or "of" or "van" or "della" or "des") && _items[i + 2].Is("v:ShiftSignal=cable"));

    /// <summary>A word for a class of reach that makers draw differently.</summary>
    private static bool IsReachClass(string word) =>
        WordLists.ScanBrakesIsReachClass.Contains(word);

    private void ReadRimBrake()
    {
        DropClass();
        Words("BrakeType", "type");
        if (!Values.ContainsKey("type") && Doubts.Count == 0 && Anywhere("t:caliper") is >= 0 and int caliper)
        {
            Keep("type", "rim-caliper", caliper, caliper);
        }

        ReadBrakeBolt();
        Words("RimPads", "pads", i => !IsForBothRims(i));
        PadsBehindColon();
        for (int i = 0; i + 2 < _items.Count; i++)
        {
            if (Free(i) && Free(i + 2) && (_items[i + 1].IsSign('-') || _items[i + 1].Is("m:to") || _items[i + 1].Is("m:max") || _items[i + 1].Is("m:and") || (_items[i + 1].IsSign('/') && !_items[i + 1].IsFraction)) && _items[i].Value is >= 35 and <= 65 && _items[i + 2].Value is >= 45 and <= 80)
            {
                Take("reach", $"{_items[i].Text}-{_items[i + 2].Text}", i, i + 2);
            }
        }

        for (int i = 0; i < _items.Count && !Values.ContainsKey("reach"); i++)
        {
            string word = i > 0 ? _items[i - 1].Text : "";
            word = i + 1 < _items.Count && _items[i].Is("t:reach") && IsReachClass(_items[i + 1].Text) ? _items[i + 1].Text : word;
            if (_items[i].Is("t:reach") && (IsReachClass(word) || word is "medium" or "standard"))
            {
                Several("reach", _fields["reach"].Read("reach " + word).Keys is { Length: > 1 } keys ? keys : word[0] is 'l' or 'g' ? ["long-55-73", "long-57-73"] : [], i, i, "makers draw this class differently, and no millimetres are given");
            }
        }
    }
}
