namespace Lugwork.Reading;

/// <summary>Chain guides by the place that they are mounted on.</summary>
internal sealed partial class LineScan
{
    /// <summary>"ISCG (antiguo, no 05)", "ISCG, alt": the older one by a word behind the name.</summary>
    private bool IsOldGuide(int i)
    {
        bool old = _items[i].Is("v:ChainGuideMount=ISCG|ISCG05") && i + 2 < _items.Count && (_items[i + 1].IsSign('(') || _items[i + 1].IsSign(',')) && (_items[i + 2].Is("m:old") || WordLists.ScanGuidesOld.Contains(_items[i + 2].Text))
            && (i + 3 >= _items.Count || _items[i + 3].Kind == SpecTokenKind.Sign || _items[i + 3].Text is "standard" or "standaard" or "norm") && !_items[i + 2].Is("d:extra") && _items[i + 2].End - _items[i + 2].Start <= _items[i + 2].Text.Length && Anywhere("m:or") < 0 && !Enumerable.Range(i + 3, _items.Count - i - 3).Any(j => Free(j) && _items[j].Value == 5 && IsJoin(j - 1));
        if (old)
        {
            Keep("mount", "ISCG", i, i + 2);
        }

        return old;
    }

    /// <summary>"Montage op trapas (bottom bracket)", "BB/ISCG05": the bracket said again beside its mount, or as the other one of two.</summary>
    private void GuideOnBracket()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (!_items[i].Is("t:bb") || Negated(i))
            {
                continue;
            }

            int other = i > 1 && (_items[i - 1].IsSign('/') || _items[i - 1].Is("m:or")) ? i - 2 : i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].Is("m:or")) ? i + 2 : -1;
            if (other >= 0 && Values.TryGetValue("mount", out LineFinding? one) && one.Key != "BB-mount" && one.First <= other && other <= one.Last)
            {
                Several("mount", ["BB-mount", one.Key], Math.Min(i, one.First), Math.Max(i, one.Last), "two mounts are named");
                return;
            }

            if (Values.TryGetValue("mount", out LineFinding? same) && same.Key == "BB-mount" && i > same.Last && i <= same.Last + 3)
            {
                Keep("mount", "BB-mount", i, i);
            }
        }

        string key = "";
        int at = -1;
        for (int i = 0; i < _items.Count && !Values.ContainsKey("mount"); i++)
        {
            string place = _items[i].Is("t:bb") ? "BB-mount" : _items[i].Is("t:seattube") || _items[i].Is("t:frontmech") ? "derailleur-mount" : "";
            if (place.Length == 0 || Negated(i) || !IsMountedOn(i) || (i + 1 < _items.Count && (_items[i + 1].IsNumber || _items[i + 1].Text is "area")))
            {
                continue;
            }

            if (at >= 0 && key != place)
            {
                Several("mount", [key, place], at, i, "two mounts are named");
                return;
            }

            (key, at) = (place, i);
        }

        if (at >= 0 && Doubts.Count == 0 && !Values.ContainsKey("mount"))
        {
            bool direct = at + 1 < _items.Count && (_items[at + 1].Is("v:DerailleurMount=direct-mount") || _items[at + 1].Is("v:DirectMountRing=3-bolt|8-bolt|own"));
            Keep("mount", key, at, direct ? at + 1 : at);
        }
    }

    /// <summary>"Sur boîtier de pédalier", "fissaggio al tubo piantone": a word for mounting, or for on what, right before the place.</summary>
    private bool IsMountedOn(int place)
    {
        for (int j = place - 1; j >= 0 && j >= place - 4 && _items[j].Clause == _items[place].Clause && !_items[j].IsNumber; j--)
        {
            if (WordLists.ScanGuidesIsMountedOn.Contains(_items[j].Text))
            {
                return !Negated(j);
            }
        }

        return WordLists.ScanGuidesIsMountedOn2.Contains(_items[place].Text) || (place + 1 < _items.Count && _items[place + 1].Text is "mount" or "mounted" or "montage" or "montiert");
    }
}
