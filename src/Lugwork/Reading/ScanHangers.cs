namespace Lugwork.Reading;

/// <summary>Hangers of derailleurs.</summary>
internal sealed partial class LineScan
{
    /// <summary>M10 x 1 is the thread of a hanger on a frame.</summary>
    private void ReadHangerThread()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            bool metric = i > 0 && _items[i - 1].Text == "m" && _items[i].Glued;
            bool hanger = Clause(i, "t:hanger") || Clause(i, "t:rearmech");
            if (Pair(i, out int second) && _items[i].Value == 10 && _items[second].Value is 1 or 26 && (metric || hanger))
            {
                Take("hanger", $"{(_items[second].Value == 1 ? "M" : "")}10x{_items[second].Text}", metric ? i - 1 : i, second);
            }
            else if (Free(i) && metric && _items[i].Value == 10 && hanger)
            {
                Take("hanger", "M10", i - 1, i);
            }
        }
    }

    /// <summary>"Direct mount" of a hanger, and nothing else that is mounted so.</summary>
    private void HangerMount()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            // A universal hanger is mounted direct: the words say less than its name.
            bool universal = Values.TryGetValue("hanger", out LineFinding? said) && said.Key == "UDH";
            if (!universal && _items[i].Is("v:DerailleurMount=direct-mount") && Clause(i, "t:hanger") && !Clause(i, "t:frontmech") && !Negated(i))
            {
                Keep("hanger", "direct-mount", i, i);
            }
        }
    }
}
