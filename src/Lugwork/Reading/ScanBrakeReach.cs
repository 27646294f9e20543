namespace Lugwork.Reading;

/// <summary>Classes of reach of rim brakes by the word "drop".</summary>
internal sealed partial class LineScan
{
    /// <summary>"140 ou 160 selon la platine": the plate of a flat mount fork, which is turned for the other of its two rotors.</summary>
    private bool IsTurnOfPlate(int i)
    {
        if (_slot != Slot.Fork || Values.Count != 1 || !Values.TryGetValue("frontBrake", out LineFinding? mount) || !mount.Key.StartsWith("FM-front", StringComparison.Ordinal) || !_items[i].Is("d:condition"))
        {
            return false;
        }

        for (int j = i + 1; j < _items.Count && j <= i + 5 && _items[j].Clause == _items[i].Clause; j++)
        {
            if (_items[j].Kind == SpecTokenKind.Word && WordLists.ScanBrakeReachIsTurnOfPlate.Contains(_items[j].Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Pads for alloy and carbon rims", "per carbonio e alluminio": pads for both, which no value says.</summary>
    private bool IsForBothRims(int i)
    {
        if (i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && (_items[i + 1].Is("t:frame") || _items[i + 1].Is("t:bar") || WordLists.ScanBrakeReachIsForBothRims.Contains(_items[i + 1].Text)))
        {
            // "Pads for carbon backing plates", "inserts for carbon frame"
            return true;
        }

        int at = i + 1;
        int also = _items.FindIndex(i + 1, o => o.Text is "auch" or "also" or "aussi" or "tambien" or "anche" or "ook");
        at = also > i && also <= i + 4 ? also + 1 : at;
        while (at < _items.Count && at <= i + 6 && !_items[at].Is("v:RimPads=for-carbon") && !_items[at].Is("v:RimPads=for-aluminium") && (_items[at].Is("m:and") || _items[at].Is("m:or") || _items[at].IsSign('/') || _items[at].IsSign('+') || _items[at].IsSign('&') || SetAside.IsFor(_items[at])))
        {
            at++;
        }

        bool other = at > i + 1 && at < _items.Count && (IsRimMaterial(_items[at].Text) || _items[at].Is("v:RimPads=for-carbon") || _items[at].Is("v:RimPads=for-aluminium") || _items[at].Is("v:Material=carbon") || _items[at].Is("v:Material=aluminium"));
        if (other && Doubts.Count == 0)
        {
            Several("pads", ["for-aluminium", "for-carbon"], i, at, "both kinds of rims are named");
        }

        return other;
    }

    private static bool IsRimMaterial(string word) =>
        WordLists.ScanBrakeReachIsRimMaterial.Contains(word);

    /// <summary>"Pads: alloy rims": the rim that they are for, behind a colon.</summary>
    private void PadsBehindColon()
    {
        for (int i = 0; i + 2 < _items.Count && !Values.ContainsKey("pads"); i++)
        {
            bool pads = _items[i].Kind == SpecTokenKind.Word && WordLists.ScanBrakeReachPadsBehindColon.Contains(_items[i].Text) && _items[i + 1].IsSign(':');
            int at = i + 2 < _items.Count && SetAside.IsFor(_items[i + 2]) ? i + 3 : i + 2;
            string rim = pads && at < _items.Count ? _items[at].Text : "";
            string key = WordLists.ScanBrakeReachPadsBehindColon2.Contains(rim) ? "for-aluminium" : rim is "carbon" or "carbone" or "carbono" or "carbonio" or "carbonfelgen" or "carbonvelgen" ? "for-carbon" : "";
            bool other = at + 1 < _items.Count && (_items[at + 1].IsSign('/') || _items[at + 1].Is("m:or") || _items[at + 1].Is("m:and") || (_items[at + 1].Kind == SpecTokenKind.Word && !_items[at + 1].Is("t:rim")));
            if (key.Length > 0 && !other)
            {
                Keep("pads", key, i, at);
            }
        }
    }

    /// <summary>"Long drop caliper", "short-drop brake": a class that makers draw differently, as that of the reach.</summary>
    private void DropClass()
    {
        for (int i = 1; i < _items.Count; i++)
        {
            bool drop = _items[i].Kind == SpecTokenKind.Word && _items[i].Text is "drop" or "drops";
            string word = _items[i - 1].IsSign('-') && i > 1 ? _items[i - 2].Text : _items[i - 1].Text;
            if (drop && (IsReachClass(word) || word is "deep" or "medium" or "standard") && !_items.Exists(o => o is { IsNumber: true, Value: >= 35 and <= 80 }))
            {
                Several("reach", word[0] is 'l' or 'd' ? ["long-55-73", "long-57-73"] : [], i - 1, i, "makers draw this class differently, and no millimetres are given");
                return;
            }
        }
    }
}
