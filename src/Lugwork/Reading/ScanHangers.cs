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
            bool hanger = Clause(i, "t:hanger") || Clause(i, "t:rearmech") || IsBehindHanger(i);
            if (Pair(i, out int second) && _items[i].Value == 10 && _items[second].Value is 1 or 26 && (metric || hanger))
            {
                if (second + 2 < _items.Count && _items[second].Value == 1 && IsPitchWord(_items[second + 1]) && _items[second + 2] is { IsNumber: true, Value: not 1 })
                {
                    // "M10x1 pas 1.25"
                    Refuse("hanger", i, second + 2, "the line says two pitches");
                    return;
                }

                Take("hanger", $"{(_items[second].Value == 1 ? "M" : "")}10x{_items[second].Text}", metric ? i - 1 : i, second);
            }
            else if (Free(i) && _items[i].Value == 10 && hanger && HangerPitch(i) is >= 0 and int pitch)
            {
                Take("hanger", $"{(_items[pitch].Value == 1 ? "M" : "")}10x{_items[pitch].Text}", metric ? i - 1 : i, pitch);
                _items[i].Used = true;
            }
            else if (Free(i) && metric && _items[i].Value == 10 && hanger)
            {
                Take("hanger", "M10", i - 1, i);
            }
        }
    }

    /// <summary>"Gear hanger, tapped 10 mm x 26 tpi": the clause before names the hanger, and this one nothing.</summary>
    private bool IsBehindHanger(int i) =>
        _items[i] is { IsNumber: true, Value: 10 } && Clauses(_items[i].Clause - 1).Any(o => o.Is("t:hanger")) && !Clauses(_items[i].Clause).Any(o => o.IsTopic && TopicIn(o) is not ("t:thread" or "t:pitch"));

    /// <summary>"M10, pitch 1", "10 mm, 26 tpi": the pitch or the turns of a hanger apart from its size, behind it; -1 where none stands there.</summary>
    private int HangerPitch(int i)
    {
        for (int j = i + 1; j < _items.Count && j <= i + 6 && _items[j].Clause <= _items[i].Clause + 1; j++)
        {
            if (_items[j].IsNumber)
            {
                bool turns = Free(j) && _items[j] is { Value: 26, Unit: "tpi" };
                bool pitch = Free(j) && _items[j] is { Value: 1, IsFraction: false, Unit: "" or "mm" } && (TopicOf(j) is "t:pitch" || IsPitchWord(_items[j - 1]) || IsPitchWord(_items[j - 2]) || (_items[j - 1].Text == "p" && _items[j].Glued));
                return turns || pitch ? j : -1;
            }
        }

        return -1;
    }

    private static bool IsPitchWord(SpecItem item) => item.Is("t:pitch") || WordLists.ScanHangersIsPitchWord.Contains(item.Text);

    private bool IsDirectWord(int i) => _items[i].Is("v:DirectMountRing=3-bolt|8-bolt|own");

    /// <summary>"Patte de dérailleur AR, type direct-mount": the hanger in the clause before, and neither clause names anything else.</summary>
    private bool IsOnlyHangerBefore(int i)
    {
        bool hanger = false;
        foreach (SpecItem item in Clauses(_items[i].Clause).Concat(Clauses(_items[i].Clause - 1)))
        {
            hanger |= item.Is("t:hanger");
            if (item.IsNumber || (item.IsTopic && !item.Is("t:hanger") && !item.Is("t:rearmech") && !item.Is("t:frame") && !item.Is("t:kind")) || item.Is("m:not") || item.Is("m:or"))
            {
                return false;
            }
        }

        return hanger;
    }

    /// <summary>"Direct mount" of a hanger, and nothing else that is mounted so.</summary>
    private void HangerMount()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            // A universal hanger is mounted direct: the words say less than its name.
            bool universal = Values.TryGetValue("hanger", out LineFinding? said) && said.Key == "UDH";
            if (_items[i].Is("m:plainhole") && !(i + 1 < _items.Count && (SetAside.IsFor(_items[i + 1]) || _items[i + 1].Text is "of" or "der" or "des" or "de" or "du" or "del" or "di" or "della" or "van" || IsJoin(i + 1))) && !Values.ContainsKey("hanger") && (Clause(i, "t:hanger") || IsOnlyHangerBefore(i)) && !Negated(i) && !Mentions(i, OfHangerInDoubt))
            {
                Keep("hanger", "plain", i, i);
            }

            bool direct = _items[i].Is("v:DerailleurMount=direct-mount") || IsDirectWord(i);
            if (!universal && direct && (Clause(i, "t:hanger") || (IsDirectWord(i) && !Values.ContainsKey("hanger") && IsOnlyHangerBefore(i))) && !Clause(i, "t:frontmech") && !Clause(i, "t:chainring") && !Clause(i, "t:crank") && !Clause(i, "t:brake") && !Clause(i, "t:stem") && !Negated(i))
            {
                Keep("hanger", "direct-mount", i, i);
            }
        }
    }
}
