namespace Lugwork.Reading;

/// <summary>The largest ring of a frame.</summary>
internal sealed partial class LineScan
{
    private void ReadRingOfFrame()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            // "46/30": the outer ring of two is the largest.
            if (Free(i) && i + 2 < _items.Count && (_items[i + 1].IsSign('/') || (_items[i + 1].IsSign('-') && _items[i + 1].Glued)) && Free(i + 2) && _items[i + 2].Unit is "teeth" or "" && _items[i].Unit is "teeth" or "" && _items[i].Value is > 20 and < 60 && _items[i].Value - _items[i + 2].Value is >= 8 and <= 24 && TopicOf(i) is "t:chainring")
            {
                _items[i + 2].Used = true;
            }

            if (Free(i) && ((TopicOf(i) is "t:chainring" && (HasMark(i, "m:max") || _items[Link(i)].Is("m:max"))) || IsRingBesideTabs(i) || IsOnlyRing(i)) && !IsOneRing(i) && _items[i].Unit is "teeth" or "" && _items[i].Value is > 7 and < 81)
            {
                for (int j = 0; j < _items.Count; j++)
                {
                    if (j != i && _items[j] is { IsNumber: true, Unit: "teeth", Value: > 20 } && !(j == i + 2 && _items[j].Used) && _items[j].Value != _items[i].Value && TopicOf(j) is "" or "t:chainring" && LimitOf(j) != "m:min")
                    {
                        Several("largestRing", [_items[i].Text, _items[j].Text], Math.Min(i, j), Math.Max(i, j), "two rings are named");
                        return;
                    }
                }

                Take("largestRing", _items[i].Text, i, i);
            }
        }
    }

    /// <summary>"1x: max 34T": teeth at most in a line about one ring that names no other thing and no other figure.</summary>
    private bool IsOnlyRing(int i) =>
        _items[i] is { Unit: "teeth", Value: >= 24 and <= 60 } && HasMark(i, "m:max") && TopicOf(i) is "" && (OneRing() || Anywhere("m:onering") >= 0)
        && !_items.Exists(o => o != _items[i] && ((o.IsNumber && o.Value != 1) || o.IsTopic || o.Is("m:rear")));

    /// <summary>"ISCG 05 tabs, 34T max": teeth beside the tabs of a chain guide are of the ring, where nothing names a sprocket.</summary>
    private bool IsRingBesideTabs(int i) =>
        _items[i].Unit == "teeth" && HasMark(i, "m:max") && TopicOf(i) is "" or "t:guidetabs" && _items.Exists(o => o.Is("t:guidetabs") || o.Terms.Any(t => t.StartsWith("v:ChainGuideMount=", StringComparison.Ordinal)))
        && Anywhere("t:cassette") < 0 && Anywhere("t:largestsprocket") < 0 && Anywhere("t:capacity") < 0 && Anywhere("t:difference") < 0 && Anywhere("t:rearmech") < 0 && Anywhere("t:frontmech") < 0
        && !HasMark(i, "m:rear") && !_items.Exists(o => o.Is("m:nothing") && o.Text == "\u0001" && Math.Abs(o.Clause - _items[i].Clause) <= 1);
}
