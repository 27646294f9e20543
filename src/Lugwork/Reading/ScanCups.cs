using Lugwork.Steering;

namespace Lugwork.Reading;

/// <summary>Headsets, their cups and bearings.</summary>
internal sealed partial class LineScan
{
    /// <summary>SHIS codes: of a headset with steerer and race, of a frame the bores alone.</summary>
    private void ReadCups()
    {
        List<(string Cup, decimal Size, int First, int Last)> found = [];
        for (int i = 0; i < _items.Count && found.Count < 8; i++)
        {
            if (_items[i].Kind != SpecTokenKind.Word || _items[i].Text is not ("ec" or "zs" or "is") || _items[i].IsFraction || (_slot == Slot.Frame && _items[i].Text == "is" && i > 0 && _items[i - 1].Is("m:rear")))
            {
                continue;
            }

            int at = i + 1;
            at += at < _items.Count && _items[at].IsSign('-') && _items[at].Glued ? 1 : 0;
            bool number = Free(at) && _items[at].Value is >= 25 and <= 65;
            if (!number)
            {
                if (_items[i].Text != "is" && at < _items.Count)
                {
                    Refuse(_slot == Slot.Frame ? "headTubeUpper" : "upperCup", i, Math.Min(at, _items.Count - 1), "the code of a cup is broken off or has no such bore");
                }

                continue;
            }

            int last = at;
            decimal size = 0;
            if (at + 2 < _items.Count && _items[at + 1].IsSign('/') && Free(at + 2))
            {
                last = at + 2;
                size = _items[last].Value;
            }

            else if (SizeBehindCup(at) is > 0 and int behind)
            {
                last = behind;
                size = _items[last].Value;
            }

            string cup = _items[i].Text.ToUpperInvariant() + _items[at].Text;
            if (HeadsetCup.Find(cup) is null && _items[i].Text == "is" && !_items[at].Glued && last == at)
            {
                // "The head tube is 44": a verb.
                continue;
            }

            if (HeadsetCup.Find(cup) is null)
            {
                Refuse(_slot == Slot.Frame ? "headTubeUpper" : "upperCup", i, last, "no cup has this bore");
                continue;
            }

            MarkAll(i, last);
            if (SecondBore(i, at, last) is { } second)
            {
                found.Add((cup, 0, i, at));
                found.Add((second, 0, last, last));
                continue;
            }

            found.Add((cup, size, i, last));
        }

        if (found.Count > 0)
        {
            TakeCups(found);
        }
    }

    /// <summary>"ZS44/56": two bores behind one code, upper before lower; null where the figure behind the slash is a steerer or a race, or a word for a half stands in the line.</summary>
    private string? SecondBore(int code, int at, int last)
    {
        bool pair = last == at + 2 && _items[at + 1].IsSign('/') && _items[last].Value is 41 or 42 or 44 or 47 or 49 or 52 or 55 or 56 && _items[last].Value >= _items[at].Value && !(last + 1 < _items.Count && (_items[last + 1].IsSign('/') || _items[last + 1].IsSign('x')));
        string cup = pair ? _items[code].Text.ToUpperInvariant() + _items[last].Text : "";
        return pair && Anywhere("m:upper") < 0 && Anywhere("m:lower") < 0 && HeadsetCup.Find(cup) is not null ? cup : null;
    }

    /// <summary>"ZS44 28.6", "ZS44-28.6", "ZS56 (40)": the steerer or the race behind a code without its slash; -1 where the figure is none of them.</summary>
    private int SizeBehindCup(int at)
    {
        if (SizeWithCup(at) is > 0 and int with)
        {
            return with;
        }

        int behind = at + 1 < _items.Count && (_items[at + 1].IsSign('-') || _items[at + 1].IsSign('(') || _items[at + 1].IsSign('x')) ? at + 2 : at + 1;
        bool size = Free(behind) && _items[behind].IsMillimetre && _items[behind].Value is 25.4m or 26.4m or 27 or 28.6m or 30 or 33 or 37 or 39.8m or 40;
        return size && !(behind + 1 < _items.Count && Links(_items[behind + 1]) && _items[behind + 1].Glued) ? behind : -1;
    }

    /// <summary>"ZS44 con 28,6", "IS41, pero con la de 30", "EC34 mit 28,6": a word leads from the code to the steerer or the race, and no word for another quantity follows; -1 where none does.</summary>
    private int SizeWithCup(int at)
    {
        int i = at + 1;
        i += i < _items.Count && _items[i].IsSign(',') ? 1 : 0;
        i += i < _items.Count && _items[i].Text is "pero" or "ma" or "mais" or "aber" or "but" or "maar" ? 1 : 0;
        i += i < _items.Count && _items[i].Text is "dan" or "dann" or "luego" or "poi" ? 1 : 0;
        if (i + 1 >= _items.Count || _items[i].Text is not ("con" or "col" or "with" or "mit" or "avec" or "met"))
        {
            return -1;
        }

        i++;
        for (int words = 0; words < 2 && i + 1 < _items.Count && _items[i].Kind == SpecTokenKind.Word && WordLists.ScanCupsSizeWithCup.Contains(_items[i].Text); words++)
        {
            i++;
        }

        bool size = Free(i) && _items[i].IsMillimetre && _items[i].Value is 25.4m or 26.4m or 27 or 28.6m or 30 or 33 or 37 or 39.8m or 40 && !(i + 1 < _items.Count && Links(_items[i + 1]) && _items[i + 1].Glued);
        bool ends = i + 1 >= _items.Count || (_items[i + 1].Kind == SpecTokenKind.Sign && !_items[i + 1].IsSign('(')) || _items[i + 1].Is("m:and") || _items[i + 1].Is("m:upper") || _items[i + 1].Is("m:lower") || _items[i + 1].Text is "y" or "e" or "et" or "und" or "en" or "and";
        return size && ends ? i : -1;
    }

    /// <summary>"ZS56/30, reducer for a straight steerer": the code says what the race is, and the word is of no figure.</summary>
    private bool IsReducedRace(int word) =>
        _slot == Slot.Headset && (Values.ContainsKey("crownRace") || Values.ContainsKey("steerer")) && (Values.ContainsKey("lowerCup") || Values.ContainsKey("upperCup")) && !Clauses(_items[word].Clause).Any(o => o.IsNumber && !o.Used);

    /// <summary>"Both", "top and bottom", and the bare "cups" where nothing else says the half; one "upper cup" is no pair.</summary>
    private bool SaysBothCups(int code, bool half) =>
        FindMark(code, "m:cups", 1) is >= 0 and int mark && (_items[mark].IsFraction || (Anywhere("m:upper") < 0 == Anywhere("m:lower") < 0 && (WordLists.ScanCupsBoth.Contains(_items[mark].Text) || (mark > 0 && _items[mark - 1].Is("m:cups")) || (mark + 2 < _items.Count && (_items[mark + 1].Is("m:cups") || _items[mark + 2].Is("m:cups"))))) || (!half && WordLists.ScanCupsSaysBothCups.Contains(_items[mark].Text) && !Clauses(_items[mark].Clause).Any(o => o.Text == "\u0001") && Anywhere("m:upper") < 0 == Anywhere("m:lower") < 0 && !(code > 1 && WordLists.ScanCupsOneOf.Contains(_items[code - 2].Text)) && !(code > 2 && WordLists.ScanCupsOneOf.Contains(_items[code - 3].Text))));

    private void MarkAll(int from, int to)
    {
        for (int i = from; i <= to; i++)
        {
            _items[i].Used = true;
        }
    }

    /// <summary>"Both EC34, the top 28.6, the bottom 30: EC34/28.6 and EC34/30": a code that stands again with its size, or twice with the same, is one.</summary>
    private static void SaidAgain(List<(string Cup, decimal Size, int First, int Last)> found)
    {
        for (int k = found.Count - 1; k >= 0 && found.Count > 2; k--)
        {
            (string Cup, decimal Size, int First, int Last) one = found[k];
            bool again = one.Size == 0 ? found.Count(f => f.Cup == one.Cup && f.Size != 0) > 1 : found.FindIndex(f => f.Cup == one.Cup && f.Size == one.Size) < k;
            if (again)
            {
                found.RemoveAt(k);
            }
        }
    }

    private void TakeCups(List<(string Cup, decimal Size, int First, int Last)> found)
    {
        bool frame = _slot == Slot.Frame;
        (string upperField, string lowerField) = frame ? ("headTubeUpper", "headTubeLower") : ("upperCup", "lowerCup");
        SaidAgain(found);
        if (found.Count > 2)
        {
            Refuse(upperField, found[0].First, found[^1].Last, "there are more than two halves");
            return;
        }

        if (found.Count == 2 && found[0].Cup != found[1].Cup && found[1].First == found[0].Last + 2 && WordLists.ScanCupsBoth.Contains(_items[found[0].Last + 1].Text))
        {
            Refuse(upperField, found[0].First, found[1].Last, "one code is said, and another of both halves");
            return;
        }

        int[] halves = new int[found.Count];
        for (int k = 0; k < found.Count; k++)
        {
            halves[k] = HalfOf(found, k) is > 0 and int half ? half : HalfBehindBracket(found[k].Last);
        }

        if (found.Count == 2 && HeadOrder(found[0].First) is > 0 and int order)
        {
            (halves[0], halves[1]) = (order, 3 - order);
        }
        else if (found.Count == 2 && halves[0] == halves[1])
        {
            if (halves[0] != 0)
            {
                Refuse(upperField, found[0].First, found[1].Last, "both halves are said to be the same one");
                return;
            }

            (halves[0], halves[1]) = (1, 2);
        }
        else if (found.Count == 2 && found[1].First == found[0].Last + 2 && _items[found[0].Last + 1].IsSign('/') && IsBearingOfOneHalf(found[0].First))
        {
            Several(upperField, [found[0].Cup, found[1].Cup], found[0].First, found[1].Last, "one half is said, and two codes");
            return;
        }
        else if (found.Count == 2)
        {
            halves[0] = halves[0] == 0 ? 3 - halves[1] : halves[0];
            halves[1] = halves[1] == 0 ? 3 - halves[0] : halves[1];
        }

        for (int k = 0; k < found.Count; k++)
        {
            (string cup, decimal size, int first, int last) = found[k];
            bool both = found.Count == 1 && (SaysBothCups(first, halves[k] != 0 || size > 0) || (size == 0 && (AreBothHalves(BehindCups(last + 1)) || AreBothHalves(first - 3) || AreBothHalves(first - 4))));
            if (both)
            {
                Take(upperField, cup, first, first + 1);
                Take(lowerField, cup, first, first + 1);
                continue;
            }

            if (size > 0 && !frame)
            {
                int told = _fields["steerer"].Read(ItemCutter.Plain(size)).Keys.Length == 1 ? 1 : 2;
                if (halves[k] != 0 && halves[k] != told)
                {
                    Refuse(halves[k] == 1 ? upperField : lowerField, first, last, "the half that is said and the size behind the code do not go together", LineDoubtKind.Conflict);
                    return;
                }

                halves[k] = told;
            }

            if (halves[k] == 0)
            {
                Several(upperField, [cup], first, last, "the half is not said: upper or lower");
                continue;
            }

            Take(halves[k] == 1 ? upperField : lowerField, cup, first, last);
            if (size > 0 && !frame)
            {
                Take(halves[k] == 1 ? "steerer" : "crownRace", ItemCutter.Plain(size), last, last);
            }
        }
    }

    /// <summary>"Upper / lower: ZS44 / ZS56": which half is named first, where both are before the codes; 0 where they are not.</summary>
    private int HeadOrder(int before)
    {
        int upper = -1;
        int lower = -1;
        for (int j = before - 1; j >= 0 && j >= before - 6 && !_items[j].IsNumber; j--)
        {
            upper = _items[j].Is("m:upper") ? j : upper;
            lower = _items[j].Is("m:lower") ? j : lower;
        }

        return upper < 0 || lower < 0 ? 0 : upper < lower ? 1 : 2;
    }

    /// <summary>1 upper, 2 lower, 0 where no word beside it says.</summary>
    private int HalfOf(List<(string Cup, decimal Size, int First, int Last)> found, int k)
    {
        (_, _, int first, int last) = found[k];
        if (HalfBeforeBracket(found[0].First) > 0 && HalfBeforeBracket(first) is > 0 and int own)
        {
            return own;
        }

        if (k + 1 < found.Count && HalfRightBefore(found[k + 1].First) > 0)
        {
            // "IS42 y abajo IS52": the word is of the code behind it.
            return HalfIn(first - 1, Math.Max(first - 5, 0), -1, first);
        }

        int from = k > 0 ? found[k - 1].Last + 1 : Math.Max(0, first - 5);
        int to = k + 1 < found.Count ? found[k + 1].First - 1 : Math.Min(_items.Count - 1, last + 5);

        // "IS42 upper, IS52 lower": the words stand behind the codes where one stands behind the last.
        bool behind = false;
        for (int j = found[^1].Last + 1; j < _items.Count && j <= found[^1].Last + 3 && !behind; j++)
        {
            behind = _items[j].Is("m:upper") || _items[j].Is("m:lower");
        }

        return behind ? HalfIn(last + 1, Math.Min(last + 5, to), 1, last) : HalfIn(first - 1, Math.Max(first - 5, from), -1, first) is > 0 and int half ? half : HalfIn(last + 1, Math.Min(last + 5, to), 1, last);
    }

    /// <summary>"... and below IS52": a word for a half right before a code and behind a word that joins; 0 where there is none.</summary>
    private int HalfRightBefore(int code) =>
        code < 2 || !_items[code - 2].Is("m:and") || _items[code - 2].Is("m:cups") ? 0 : _items[code - 1].Is("m:upper") ? 1 : _items[code - 1].Is("m:lower") ? 2 : 0;

    /// <summary>"(top) ZS44 (bottom) EC44": the word in brackets right before a code; 0 where none is.</summary>
    private int HalfBeforeBracket(int first) =>
        first < 3 || !_items[first - 1].IsSign(')') || !_items[first - 3].IsSign('(') ? 0 : _items[first - 2].Is("m:upper") ? 1 : _items[first - 2].Is("m:lower") ? 2 : 0;

    /// <summary>"Lower bearing ZS55/ZS56": a bearing of one half, right before the codes.</summary>
    private bool IsBearingOfOneHalf(int first)
    {
        bool half = false;
        bool bearing = false;
        for (int j = first - 1; j >= 0 && j >= first - 4 && _items[j].Clause == _items[first].Clause; j--)
        {
            half |= _items[j].Is("m:upper") || _items[j].Is("m:lower");
            bearing |= _items[j].Is("t:bearing") || _items[j].Is("m:cups");
        }

        return half && bearing;
    }

    /// <summary>"Upper and lower": both halves stand there, joined.</summary>
    private bool AreBothHalves(int at) =>
        at >= 0 && at + 2 < _items.Count && (_items[at + 1].Is("m:and") || _items[at + 1].IsSign('+') || _items[at + 1].IsSign('&')) && _items[at].Clause == _items[at + 2].Clause
        && ((_items[at].Is("m:upper") && _items[at + 2].Is("m:lower")) || (_items[at].Is("m:lower") && _items[at + 2].Is("m:upper")))
        && !_items[at].IsTopic && !_items[at + 2].IsTopic && !(at + 3 < _items.Count && _items[at + 3].IsTopic && _items[at + 3].Clause == _items[at].Clause && !_items[at + 3].Is("t:headset"));

    /// <summary>"EC30 cups at top and bottom": past the word for cups and a small one.</summary>
    private int BehindCups(int at)
    {
        if (at + 3 < _items.Count && _items[at].Is("m:cups"))
        {
            at++;
        }

        return at + 3 < _items.Count && _items[at] is { Text: "at" or "on" or "the" or "for", IsFraction: false } ? at + 1 : at;
    }

    /// <summary>"ZS44 (40) upper": the word behind the bracket of the size; 0 where none is.</summary>
    private int HalfBehindBracket(int last)
    {
        int word = last + 1 < _items.Count && (_items[last + 1].IsSign(')') || (_items[last + 1].IsSign('(') && last + 3 < _items.Count && _items[last + 3].IsSign(')'))) ? last + 2 : last + 1;
        return word >= _items.Count ? 0 : _items[word].Is("m:upper") ? 1 : _items[word].Is("m:lower") ? 2 : 0;
    }

    /// <summary>The first word for a half from one item to another, in the clause of the code.</summary>
    private int HalfIn(int start, int end, int step, int code)
    {
        for (int j = start; j >= 0 && j < _items.Count && (end - j) * step >= 0; j += step)
        {
            if (_items[j].Clause == _items[code].Clause && (_items[j].Is("m:upper") || _items[j].Is("m:lower")))
            {
                return _items[j].Is("m:upper") ? 1 : 2;
            }
        }

        return 0;
    }
}
