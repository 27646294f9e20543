namespace Lugwork.Reading;

/// <summary>Words of a frame that count only where what stands beside them says what they are of.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Vertical, horizontal": a second word for the slot right beside the first is of the slot too.</summary>
    private bool IsBesideSlot(int i)
    {
        foreach (int j in (ReadOnlySpan<int>)[i - 2, i - 1, i + 1, i + 2])
        {
            if (j >= 0 && j < _items.Count && Math.Abs(_items[j].Clause - _items[i].Clause) <= 1 && (_items[j].Is("v:DropoutSlot=vertical") || _items[j].Is("v:DropoutSlot=horizontal")))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Altezza 56 cm - orizzontale 565 mm": the bare word and a length is a top tube that is measured level.</summary>
    private bool IsTubeAcross(int i)
    {
        int at = i + 1;
        while (at < _items.Count && at <= i + 3 && (_items[at].IsSign(':') || _items[at].IsSign('=') || IsJoiningWord(_items[at])))
        {
            at++;
        }

        return !_items[i].IsFraction && at < _items.Count && _items[at] is { IsNumber: true, Value: (>= 400 and <= 700) or (>= 40 and <= 70) };
    }

    /// <summary>"Single crown fork not included", "with dual crown fork included": what the frame is sold with or without says nothing of what it allows.</summary>
    private bool ComesWithIt() => Anywhere("d:kit") >= 0 || _denied.Exists(d => d.Is("d:kit"));

    /// <summary>"Reamed and faced" beside the head tube is of the head tube.</summary>
    private bool IsOfShell(int i) =>
        Clause(i, "t:bb") || _items[i].Text is not ("faced" or "bare" or "plangefrast" or "faces") || (_items[i].Text is not "faced" && _items[i].IsFraction)
        || (Anywhere("t:headtube") < 0 && Anywhere("t:headset") < 0 && !Values.ContainsKey("headTubeUpper") && !Values.ContainsKey("headTubeLower") && Anywhere("t:brake") < 0);

    /// <summary>"1/4 in bolt, nut outside": the bolt by its size; another size is none of the list.</summary>
    private void NutOfBolt(string field)
    {
        if (!Values.TryGetValue(field, out LineFinding? bolt))
        {
            return;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            bool near = Math.Abs(_items[i].Clause - _items[bolt.First].Clause) <= 1;
            if (!near || !Free(i) || TopicOf(i) is "t:reach" or "t:rotor" or "t:tyre" or "t:post" or "n:size" || JoinsClosely(i) || Clause(i, "t:axle") || Clause(i, "t:axlethread"))
            {
                continue;
            }

            bool quarter = (_items[i].IsFraction && _items[i].Value == 0.25m) || (_items[i] is { Unit: "mm", Value: 6.35m });
            bool isBolt = quarter || _items[i].IsInch || (i > 0 && _items[i - 1].Text == "m" && _items[i].Glued && _items[i].Value != 6) || _items[i] is { Unit: "mm", Value: 5 or 7 or 8 or 10 };
            if (quarter && bolt.Key == "nutted-6")
            {
                (int first, int last) = (Math.Min(i, bolt.First), Math.Max(i, bolt.Last));
                _items[i].Used = true;
                Values[field] = bolt with { Key = "nutted-1/4", Start = _items[first].Start, End = _items[last].End, First = first, Last = last };
                return;
            }

            if (isBolt)
            {
                Refuse(field, i, i, "no bolt of a brake has this size and nut");
                return;
            }
        }
    }

    /// <summary>"Fork max. 160 mm": between 80 and 220 mm a limit of the fork can only be its travel, where its clause names nothing else.</summary>
    private void ForkByLimit()
    {
        for (int i = 0; i < _items.Count && !Values.ContainsKey("mostForkTravel"); i++)
        {
            bool crowns = Values.TryGetValue("forkCrowns", out LineFinding? crown) && FigureCount == 1 && Free(i) && _items[i] is { Unit: "" or "mm", IsFraction: false, Value: >= 80 and <= 220 } && _items[i].Value % 10 == 0 && !JoinsClosely(i) && (LimitBeside(i) == "m:max" || (i + 2 < _items.Count && _items[i + 1].Is("t:fork") && _items[i + 2].Is("m:max") && _items[i + 2].Clause == _items[i].Clause)) && Math.Abs(_items[i].Clause - _items[crown.First].Clause) <= 1 && IsForkAlone(i) && (TopicOf(i) == "t:fork" || !IsSizeOfOther(i));
            if (crowns && (TopicOf(i) is "t:fork" || _items[i].Clause == _items[crown!.First].Clause || Clause(i, "t:fork") || IsLineOfCrowns()) && (crown!.Key == "dual" ? _items[i].Value >= 150 : _items[i].Value <= 180))
            {
                // "Single crown forks up to 150", "forcella fino a 150, solo monopiastra", "dual crown OK, 200 mm max".
                Length("mostForkTravel", i);
            }
            else if (Free(i) && _items[i] is { Unit: "mm", IsFraction: false, Value: >= 80 and <= 220 } && TopicOf(i) is "t:fork" && _items[Link(i)].Clause == _items[i].Clause && !JoinsClosely(i) && LimitOf(i) == "m:max" && HasMark(i, "m:max") && IsForkAlone(i) && !IsSizeOfOther(i))
            {
                Length("mostForkTravel", i);
            }
        }
    }

    /// <summary>Nothing in the line but the crowns, one figure and its limit.</summary>
    private bool IsLineOfCrowns() =>
        _items.TrueForAll(o => o.Kind != SpecTokenKind.Word || o.Terms.Any(t => t is "v:CrownsAllowed=dual" or "v:CrownsAllowed=single" or "v:CrownType=dual" or "v:CrownType=single" or "m:max" or "m:front" or "t:fork" or "t:frame") || IsSmallWord(o.Text) || IsLeave(o.Text));

    private bool IsForkAlone(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if ((item.IsTopic && !item.Is("t:fork") && !item.Is("t:frame")) || item.Is("m:rear") || (item.IsNumber && item != _items[i]) || IsUnknown(item) || item.Is("m:pm") || item.Is("m:fm") || item.Is("m:is"))
            {
                return false;
            }
        }

        return true;
    }
}
