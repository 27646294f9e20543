using System.Globalization;

namespace Lugwork.Reading;

/// <summary>Freehubs, cassettes, chains, derailleurs, shifters, cranks and rings.</summary>
internal sealed partial class LineScan
{
    private void ReadChain()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (Pair(i, out int second) && !InTriple(i) && _items[i].Value == 0.5m && _items[second].IsFraction)
            {
                ReadChainWidth(i, second);
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
        bool speeds = TakeSpeeds("size");
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
            bool context = !needTopic || Clause(i, "t:frontmech");
            if (Free(i) && _items[i].IsMillimetre && _items[i].Value is 28.6m or 31.8m or 34.9m or 35 && Free(i) && (TopicOf(i) is "t:frontmech" || (context && TopicOf(i) is "" or "t:clamp" or "t:seatclamp" or "t:tyre") || (HasMark(i, "m:band") && context)))
            {
                if (TopicOf(i) is "t:frontmech" && Link(i) is >= 0 and int link)
                {
                    _claimed[link] = true;
                }

                Take(field, _items[i].Value == 35 ? "34.9" : _items[i].Text, i, i, _items[i].Value == 35 ? "35 was taken as 34.9" : "");
            }
            else if (Free(i) && context && _items[i].IsFraction && HasMark(i, "m:band"))
            {
                Take(field, _items[i].Text + " in band", i, i);
            }
        }

        Words("FrontDerailleurMount", field, i => (!needTopic || Clause(i, "t:frontmech") || _items[i].IsFraction) && !Clause(i, "t:hanger") && !(needTopic && _items[i].Terms.Length > 0 && _items[i].Text is "s1" or "s2" or "s3" && !Clause(i, "t:frontmech")));
        Settle(field);
    }
}
