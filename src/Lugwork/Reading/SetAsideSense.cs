namespace Lugwork.Reading;

/// <summary>Words whose sense the rest of their line tells: any cassette, the tube that is glued on, the standard before another one.</summary>
internal sealed partial class SetAside
{
    /// <summary>"Cassettes HG 8 / 9 / 10", "Micro Spline cassettes gaan erop", "cassette sur corps HG": what fits the body and not one cassette that is on it.</summary>
    private bool IsOfAnyCassette(SpecItem cassette, int first, int last)
    {
        int speeds = 0;
        for (int i = first; i <= last && i < first + LongestClause; i++)
        {
            if (WordLists.SetAsideSenseIsOfAnyCassette.Contains(_items[i].Text))
            {
                return false;
            }

            speeds += _items[i] is { IsFraction: false, Places: 0, Value: >= 7 and <= 12, Unit: "" or "speed" } && _items[i].IsNumber ? 1 : 0;
            bool on = i > first + 1 && _items[i - 1].Text is "sur" or "auf" or "on" or "op" or "su" or "sobre" && _items[i - 2] == cassette;
            if (on && (_items[i].Is("t:freehub") || _items[i].Terms.Any(t => t.StartsWith("v:FreehubBody=", StringComparison.Ordinal))))
            {
                return true;
            }
        }

        return speeds > 1 || cassette.Text is "cassettes" or "kassetten" or "casetes";
    }

    /// <summary>"20x110 (kein Boost)", "no Boost": the older of two standards, and no other one that is denied. "Kein Boost 15x110" denies figures.</summary>
    private void NotBoost(int first, int last)
    {
        for (int i = first; i < last; i++)
        {
            bool ends = i + 1 == last || (_items[i + 2].Kind == SpecTokenKind.Sign && !_items[i + 2].IsSign('-') && i + 2 == last);
            if (ends && (_items[i].Is("m:not") || _items[i].Is("m:pas")) && _items[i + 1].Is("m:boost"))
            {
                Replace(i, "m:nothing");
                Replace(i + 1, "m:preboost");
                return;
            }
        }
    }

    /// <summary>"Tube 28 inch, om te lijmen": what is glued on is the tyre.</summary>
    private void GluedTube()
    {
        if (_slot != Slot.FrontTyre && _slot != Slot.RearTyre)
        {
            return;
        }

        int tube = -1;
        bool glued = false;
        for (int i = 0; i < _items.Count && i < LongestClause; i++)
        {
            tube = tube < 0 && _items[i].Text is "tube" or "tubes" ? i : tube;
            glued |= tube >= 0 && _items[i] is { Kind: SpecTokenKind.Word, Text: "lijmen" or "gelijmd" or "opgelijmd" or "verlijmd" or "plakken" or "opplakken" or "om te lijmen" or "om te plakken" or "om op te lijmen" or "om op te plakken" or "om te verlijmen" };
            if (_items[i].Is("m:not") || _items[i].Text is "binnenband" or "lek" or "gat")
            {
                return;
            }
        }

        if (tube >= 0 && glued)
        {
            Replace(tube, "v:TyreHold=tubular");
        }
    }
}
