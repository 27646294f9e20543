namespace Lugwork.Reading;

/// <summary>A line about another part than the one that was asked for, or about the other end, gives no value.</summary>
internal sealed partial class LineScan
{
    /// <summary>Names of parts; a line that starts with one is about it.</summary>
    private static readonly HashSet<string> Parts = new(StringComparer.Ordinal)
    {
        "t:frame", "t:fork", "t:wheel", "t:tyre", "t:tube", "t:rimtape", "t:cassette", "t:chain", "t:chainring", "t:crank", "t:bb", "t:pedal", "t:rearmech", "t:frontmech", "t:shifter", "t:lever",
        "t:brake", "t:caliper", "t:rotor", "t:headset", "t:stem", "t:bar", "t:grip", "t:seatclamp", "t:post", "t:dropper", "t:saddle", "t:rails", "t:shock", "t:hub", "t:rim", "t:axle", "t:nuts", "t:guidetabs", "t:valve", "t:bearing",
    };

    /// <summary>"Vale para cassettes HG", "prend les cassettes Micro Spline", "per cassette XD", "casete compatible: HG": what the body takes, by a word beside the cassette, where none comes with the wheel.</summary>
    private bool TakesCassette(int head)
    {
        bool takes = head + 1 < _items.Count && (_items[head + 1].Text.StartsWith("compat", StringComparison.Ordinal) || _items[head + 1].Text.StartsWith("kompat", StringComparison.Ordinal));
        for (int i = head - 1; i >= 0 && i >= head - 3 && _items[i].Clause == _items[head].Clause && !takes; i--)
        {
            takes = SetAside.IsFor(_items[i]) || WordLists.ScanHeadTakesCassette.Contains(_items[i].Text);
        }

        return takes && !_items.Exists(i => i.Is("d:kit") || i.Is("d:extra") || i.Unit == "teeth");
    }

    private void OtherPart()
    {
        if (Doubts.Count > 0)
        {
            return;
        }

        OtherEndOfPart();
        string mates = NamedParts.Of(_slot).Mates;
        int head = mates.Length == 0 ? -1 : Head();
        if (head < 0 || Doubts.Count > 0)
        {
            return;
        }

        if (_slot == Slot.RearWheel && _items[head].Is("t:cassette") && head == 0 && Values.ContainsKey("body") && Values.Count == 1 && TakesCassette(head))
        {
            return;
        }

        if (_slot == Slot.RearWheel && _items[head].Is("t:cassette") && head > 0 && Values.ContainsKey("body") && _items[head - 1].Kind == SpecTokenKind.Word
            && (_items[head - 1].Text.StartsWith("compat", StringComparison.Ordinal) || _items[head - 1].Text.StartsWith("kompat", StringComparison.Ordinal) || _items[head - 1].Text is "for" or "fits" or "takes" || TakesCassette(head)))
        {
            // "Compatible cassettes: 8, 9 and 10-speed HG": what its body takes.
            return;
        }

        if (_slot == Slot.RearWheel && _items[head].Is("t:cassette") && Values.Count == 1 && Values.ContainsKey("body") && head + 1 < _items.Count && (_items[head + 1].IsSign(':') || _items[head + 1].IsSign('=')) && _items.Count <= head + 4)
        {
            // "Cassette: XD": which ones it takes.
            return;
        }

        if (_slot == Slot.Handlebar && _items[head].Is("t:stem") && head + 1 < _items.Count && _items[head + 1].Is("t:clamp"))
        {
            // "Stem clamp 31.8": where the stem clamps the bar.
            return;
        }

        if (_slot == Slot.Handlebar && _items[head].Is("t:stem") && head > 0 && (SetAside.IsFor(_items[head - 1]) || SetAside.IsAtStem(_items, head)) && Values.ContainsKey("clamp"))
        {
            // "Pour potence 31,8": the clamp that the bar is for.
            return;
        }

        if (_slot == Slot.Cassette && _items[head].Text == "coronas" && Values.ContainsKey("speeds"))
        {
            // "N.º de coronas: 9": the sprockets, by a word that is one for rings too.
            return;
        }

        if (_slot == Slot.RearWheel && _items[head].Is("t:cassette") && Values.TryGetValue("body", out LineFinding? body) && _items[body.First].Clause == _items[head].Clause)
        {
            // "Cassettes HG 8 / 9 / 10": what goes on the body.
            return;
        }

        if (_slot == Slot.Chain && _items[head].Is("t:rearmech") && head > 0 && SetAside.IsFor(_items[head - 1]))
        {
            // "Per cambio 10v", "voor derailleur met 9 kransjes": what the chain runs over.
            return;
        }

        if (_slot == Slot.Rider && IsBicycle(_items[head]))
        {
            // "Mit Rad und Taschen": one of the things that are weighed.
            return;
        }

        if (IsMate(_items[head], mates) || (IsRimOfTyre(head) && Values.ContainsKey("size")))
        {
            return;
        }

        if (_slot == Slot.Frame && _items[head].Is("t:bearing") && (Values.ContainsKey("headTubeUpper") || Values.ContainsKey("headTubeLower") || Values.ContainsKey("shell")))
        {
            // "Upper bearing IS42": the seat of the bearing.
            return;
        }

        if (_items[head].Text is "vr" or "hr" && !_items[head].IsFraction)
        {
            // "VR 148 lang": the end that the part goes to.
            return;
        }

        if (_slot == Slot.Fork && Values.ContainsKey("mostSpacers"))
        {
            return;
        }

        bool limited = Values.Values.Any(v => IsOfFork(v.Field) && Math.Abs(_items[v.First].Clause - _items[head].Clause) <= 1);
        foreach (LineFinding value in Values.Values)
        {
            // What a frame says of the fork that goes into it, and what other clauses say of the frame.
            if (!(_slot == Slot.Frame && _items[head].Is("t:fork") && (IsOfFork(value.Field) || (limited && _items[value.First].Clause > _items[head].Clause))))
            {
                Several(value.Field, [value.Key], head, head, "the line is about another part");
                return;
            }
        }
    }

    private static bool IsOfFork(string field) => field is "mostForkTravel" or "longestFork" or "forkCrowns";

    /// <summary>"For rims 622, width 40": the rim whose bead seat the tyre was read by.</summary>
    private bool IsRimOfTyre(int head) =>
        _slot.Key.EndsWith("Tyre", StringComparison.Ordinal) && _items[head].Is("t:rim") && Values.TryGetValue("size", out LineFinding? size) && ((_items[head].Text is "llanta" or "llantas" && !_items[head].IsFraction) || _items[size.First].Clause <= _items[head].Clause && _items[head].Clause <= _items[size.Last].Clause);

    internal static bool IsMate(SpecItem item, string mates)
    {
        foreach (string term in item.Terms)
        {
            if (term[0] == 't' && (mates.EndsWith(term, StringComparison.Ordinal) || mates.Contains(term + " ", StringComparison.Ordinal)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The name of a part at the start of the line: before a colon, or before anything that has a meaning.</summary>
    private int Head()
    {
        for (int i = 0; i < _items.Count && i < 8; i++)
        {
            if (_items[i].IsNumber || _items[i].Used)
            {
                return _items[i].Used && IsPart(_items[i]) ? i : -1;
            }

            if (IsPart(_items[i]))
            {
                return i;
            }
        }

        return -1;
    }

    internal static bool IsPart(SpecItem item)
    {
        // "As" and "band" are words of other languages too.
        if (item.IsGuessed || item.Text is "as" or "band")
        {
            return false;
        }

        foreach (string term in item.Terms)
        {
            if (Parts.Contains(term))
            {
                return true;
            }
        }

        return false;
    }
}
