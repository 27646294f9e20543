namespace Lugwork.Reading;

/// <summary>Covers of headsets.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Hoses pass through", and no more: "pass through the stem" is of another way.</summary>
    private bool IsThroughHere(int i)
    {
        bool bare = _items[i].Text is "cables" && _items[i].End - _items[i].Start == "cables pass through".Length || (_items[i].Text is "hoses" && _items[i].End - _items[i].Start == "hoses pass through".Length);
        int next = i + 1 < _items.Count && _items[i + 1].Text is "the" ? i + 2 : i + 1;
        return !bare || next >= _items.Count || _items[next].Kind == SpecTokenKind.Sign || _items[next].Text is "top" or "cover" or "headset" or "bearing" or "it" or "upper";
    }

    /// <summary>"Passage de gaines : externe", "cavi: esterni": the word for the way of a cable beside the cables.</summary>
    private void CoverByRouting()
    {
        for (int i = 1; i < _items.Count && !Full && !Values.ContainsKey("cables"); i++)
        {
            bool inside = _items[i].Is("v:DropperRouting=internal");
            bool way = inside || _items[i].Is("v:DropperRouting=external");
            int name = _items[i - 1].IsSign(':') || _items[i - 1].IsSign('=') ? i - 2 : i - 1;
            if (way && name >= 0 && IsCables(_items[name].Text) && !Negated(i) && Anywhere("m:or") < 0)
            {
                Keep("cables", inside ? "through" : "outside", i, i);
            }
        }

        CablesThroughCover();
        OtherWayOfCover();
    }

    /// <summary>"Leitungen laufen durch die Abdeckung", "gaines par le JDD": what runs, a word for through, and the cover or the bearing.</summary>
    private void CablesThroughCover()
    {
        for (int i = 2; i < _items.Count && !Full && !Values.ContainsKey("cables"); i++)
        {
            if (_items[i].Kind != SpecTokenKind.Word || (_items[i].IsFraction && _items[i].Text != "top") || !(_items[i].Is("t:headset") || _items[i] is { IsFraction: true, Text: "top" } || WordLists.ScanCoversIsPlace.Contains(_items[i].Text)))
            {
                continue;
            }

            int way = _items[i - 1].Text is "die" or "das" or "den" or "the" or "this" or "le" or "la" or "el" or "il" or "de" or "het" ? i - 2 : i - 1;
            if (way > 0 && (_items[way].Is("m:upper") || _items[way].Text is "top" or "oberen" or "bovenste"))
            {
                // "Durch den oberen Deckel".
                way -= way > 0 && _items[way - 1].Text is "die" or "den" or "the" or "de" ? 2 : 1;
            }

            if (way < 1 || !(_items[way].Text is "durch" or "durchs" or "im" or "par" or "dans" or "por" or "attraverso" or "dal" or "nel" or "door" or "through" or "travers"))
            {
                continue;
            }

            for (int name = way - 1; name >= 0 && name >= way - 4 && _items[name].Clause == _items[i].Clause && !_items[name].Is("m:not"); name--)
            {
                if (IsCables(_items[name].Text) && !HasMark(i, "m:not") && !(i + 2 < _items.Count && _items[i + 1].Text is "of" or "der" or "des" or "du" or "del" or "della" or "van" && !_items[i + 2].Is("t:headset") && !(i + 3 < _items.Count && _items[i + 3].Is("t:headset"))))
                {
                    Keep("cables", "through", name, i);
                    break;
                }
            }
        }
    }

    /// <summary>"Brake outside, gears inside": two ways in one line.</summary>

    private void OtherWayOfCover()
    {
        if (!Values.TryGetValue("cables", out LineFinding? way))
        {
            return;
        }

        string other = way.Key == "through" ? "v:DropperRouting=external" : "v:DropperRouting=internal";
        int at = _items.FindIndex(i => i.Is(other) && i != _items[way.First]);
        if (at >= 0 && !Negated(at))
        {
            Several("cables", ["through", "outside"], Math.Min(at, way.First), Math.Max(at, way.Last), "the line says two different values");
        }
    }

    private static bool IsCables(string word) =>
        WordLists.ScanCoversIsCables.Contains(word);
}
