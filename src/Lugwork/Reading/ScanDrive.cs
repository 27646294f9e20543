using System.Globalization;

namespace Lugwork.Reading;

/// <summary>Freehubs, cassettes, chains, derailleurs, shifters, cranks and rings.</summary>
internal sealed partial class LineScan
{
    private void ReadChain()
    {
        NumberSprockets();
        JoinUses();
        foreach (SpecItem item in _items)
        {
            // "116 pasos": links, by a word that is one for gears too.
            item.Used |= item is { Unit: "speed", UnitWord: "pasos", Value: >= 80 and <= 160, IsFraction: false };
        }

        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (Pair(i, out int second) && !InTriple(i) && _items[i].Value == 0.5m && _items[second].IsFraction)
            {
                ReadChainWidth(i, second);
            }
            else if (Free(i) && _items[i] is { IsFraction: true, Value: 0.5m } && _items.Exists(o => o is { IsNumber: true, IsFraction: true, Text: "1/8" or "3/32" or "5/32" or "11/128" }) && Anywhere("m:or") < 0)
            {
                // "Teilung 1/2, Breite 1/8": the pitch, which is the same for all.
                _items[i].Used = true;
            }
            else if (Free(i) && _items[i].IsFraction && _items[i].Text is "1/8" or "3/32" or "5/32" or "11/128" && Free(i) && !(i > 0 && _items[i - 1].IsSign('x')))
            {
                ReadChainWidth(i, i);
            }
        }

        Words("ChainSize", "size");
        bool said = Values.ContainsKey("size");
        string before = said ? Values["size"].Key : "";
        LineFinding? width = said ? Values["size"] : null;
        Values.Remove("size");
        bool speeds = !(_items.Exists(i => i.Text is "cassette" or "kassette") && SpeedsOfOther("t:cassette", "t:chain")) && TakeSpeeds("size");
        if (speeds && said && Values["size"].Key != before)
        {
            Refuse("size", 0, 0, "width and speeds of the chain do not go together");
        }
        else if (width is not null && (!speeds || Anywhere("m:max") >= 0))
        {
            Values["size"] = width;
        }

        if (speeds)
        {
            Settle("size");
        }

        if (speeds && width is not null && Values.TryGetValue("size", out LineFinding? size) && size.Key == width.Key)
        {
            Values["size"] = size with { Start = Math.Min(size.Start, width.Start), End = Math.Max(size.End, width.End), First = Math.Min(size.First, width.First), Last = Math.Max(size.Last, width.Last) };
        }
    }

    private void ReadChainWidth(int first, int last)
    {
        string text = _items[last].Text;
        if (text == "11/128")
        {
            Several("size", ["9", "10", "11"], first, last, "chains for 9, 10 and 11 speeds are sold under this width");
            return;
        }

        Take("size", text, first, last);
    }

    private void ReadFrontMount(string field, bool needTopic)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            bool context = !needTopic || Clause(i, "t:frontmech") || (TopicOf(i) is "t:clamp" && FindMark(i, "t:frontmech", 1) >= 0 && Anywhere("t:seatclamp") < 0 && Anywhere("t:post") < 0);
            if (Free(i) && _items[i].IsMillimetre && _items[i].Value is 28.6m or 31.8m or 34.9m or 35 && Free(i) && (TopicOf(i) is "t:frontmech" || (!needTopic && IsTubeForBand(i)) || (context && TopicOf(i) is "" or "t:clamp" or "t:seatclamp" or "t:tyre") || (HasMark(i, "m:band") && context) || (needTopic && IsTubeOfBand(i))))
            {
                if (TopicOf(i) is "t:frontmech" && Link(i) is >= 0 and int link)
                {
                    _claimed[link] = true;
                }

                Take(field, _items[i].Value == 35 ? "34.9" : _items[i].Text, i, i, _items[i].Value == 35 ? "35 was taken as 34.9" : "");
            }
            else if (Free(i) && needTopic && IsBandApart(i))
            {
                Take(field, _items[i].IsFraction || _items[i].IsInch ? _items[i].Text + " in band" : _items[i].Text, i, i);
            }
            else if (Free(i) && (_items[i].IsFraction || _items[i].IsInch) && BandSize(_items[i]) > 0 && TopicOf(i) is "t:frontmech")
            {
                Take(field, _items[i].Text + " in band", i, i);
            }
            else if (Free(i) && context && _items[i].IsFraction && HasMark(i, "m:band"))
            {
                Take(field, _items[i].Text + " in band", i, i);
            }
        }

        Words("FrontDerailleurMount", field, i => !(needTopic && IsBrazedOther(i)) && (!needTopic || Clause(i, "t:frontmech") || _items[i].IsFraction || (_items[i].Text is "hdm" && Anywhere("t:frontmech") >= 0)) && !Clause(i, "t:hanger") && !(needTopic && _items[i].Terms.Length > 0 && _items[i].Text is "s1" or "s2" or "s3" && !Clause(i, "t:frontmech")));
        if (!Values.ContainsKey(field) && Anywhere("t:frontmech") is >= 0 and int mech)
        {
            DirectApart(field, mech);
        }

        Settle(field);
    }

    /// <summary>"Bottle bosses: brazed-on", "pump peg, brazed on": said of another piece, in its clause or right behind it, where no front derailleur is named.</summary>
    private bool IsBrazedOther(int i)
    {
        if (!_items[i].Is("v:FrontDerailleurMount=braze-on") || Anywhere("t:frontmech") >= 0)
        {
            return false;
        }

        if (IsOtherPiece(i - 1, i) || IsOtherPiece(i + 1, i) || (i + 1 < _items.Count && SetAside.IsFor(_items[i + 1])))
        {
            // "Dynamo bracket braze-on", "braze-on rack mounts", "braze-on for a lamp".
            return true;
        }

        for (int j = i - 1; j >= 0 && j >= i - 6 && _items[j].Clause >= _items[i].Clause - 1; j--)
        {
            if (_items[j].Text is "\u0001" or "binder" or "peg" || _items[j].Is("n:bottle") || _items[j].Is("t:bosses") || _items[j].Is("m:pinch") || _items[j].Is("t:seatclamp") || _items[j].Terms.Any(t => t.StartsWith("v:CableGuide=", StringComparison.Ordinal)))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsOtherPiece(int j, int i) =>
        j >= 0 && j < _items.Count && _items[j].Clause == _items[i].Clause && (IsStrange(j) || _items[j].Is("m:hubdynamo") || (_items[j].IsTopic && TopicIn(_items[j]) is not ("t:frame" or "t:seattube" or "t:tube" or "t:frontmech" or "n:colour")));

    /// <summary>"Front mech: band-on, 1 3/8 (34.9) tube", "34.9 clip, front changer": the one size of a band in a line about a front derailleur and nothing else.</summary>
    private bool IsBandApart(int i)
    {
        decimal size = BandSize(_items[i]);
        if (size <= 0 || Anywhere("t:frontmech") is not (>= 0 and int mech))
        {
            return false;
        }

        int band = Anywhere("m:band") is >= 0 and int named ? named : _items.FindIndex(o => o.Text == "clip");
        return band >= 0 && Math.Abs(_items[band].Clause - _items[mech].Clause) <= 1 && Math.Abs(_items[band].Clause - _items[i].Clause) <= 1
            && _items.TrueForAll(o => !o.IsNumber || BandSize(o) == size) && (TopicOf(i) is "" or "t:tube" or "t:seattube" or "t:frontmech" or "t:clamp" or "t:seatclamp" || _items[Link(i)].Is("m:band")) && Anywhere("t:post") < 0;
    }

    private static decimal BandSize(SpecItem item) => item switch
    {
        { IsFraction: false, IsInch: false, Unit: "" or "mm", Value: 28.6m or 31.8m or 34.9m } => item.Value,
        { Value: 1.125m } => 28.6m,
        { Value: 1.25m } => 31.8m,
        { Value: 1.375m } => 34.9m,
        _ => 0,
    };

    /// <summary>"Clamp-on front mech, 28.6 seat tube": the outside of the tube that the band goes round, the only figure of the line.</summary>
    private bool IsTubeOfBand(int i) =>
        TopicOf(i) is "t:seattube" && Anywhere("m:band") >= 0 && Anywhere("t:frontmech") >= 0 && Anywhere("m:inside") < 0 && Anywhere("t:inner") < 0 && !_items.Exists(o => o != _items[i] && o.IsNumber && o.Value is > 20 and < 45);

    /// <summary>"Klemt op een zitbuis van 31.8": in the line of a front derailleur, the outside of the tube, where no other mount is named.</summary>
    private bool IsTubeForBand(int i) =>
        TopicOf(i) is "t:seattube" or "t:tube" or "t:seattubeouter" && !Joins(i) && !HasMark(i, "m:inside") && !_items.Exists(o => o.Terms.Any(t => t.StartsWith("v:FrontDerailleurMount=", StringComparison.Ordinal) || t.StartsWith("v:DerailleurMount=", StringComparison.Ordinal)));

    /// <summary>"FD mount: direct, high": the two words of the name apart from each other.</summary>
    private void DirectApart(string field, int mech)
    {
        int direct = -1;
        int high = -1;
        for (int i = Math.Max(0, mech - Reach); i < _items.Count && i <= mech + Reach; i++)
        {
            direct = _items[i].Text is "direct" or "direkt" or "directo" or "diretto" or "directe" && !Negated(i) ? i : direct;
            high = _items[i].Text is "high" or "hoch" or "haut" or "alto" or "hoog" or "oben" && !Negated(i) ? i : high;
        }

        if (direct >= 0 && high >= 0 && Anywhere("m:lower") < 0 && !_items.Exists(i => i.Text is "low" or "tief" or "bas" or "basso" or "bajo" or "laag"))
        {
            Keep(field, "high-direct", Math.Min(direct, high), Math.Max(direct, high));
        }
    }
}
