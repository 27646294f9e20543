namespace Lugwork.Reading;

/// <summary>Notes beside what a line says: comparisons, sleeves to another size, spacers behind a cassette, and what the rider does not carry.</summary>
internal sealed partial class SetAside
{
    /// <summary>"1.85 mm longer than XD": what it is compared with is not what it is. A figure behind it is a limit.</summary>
    private void Than(int first, int last)
    {
        for (int i = first; i < last; i++)
        {
            if (_items[i].Is("m:than") && !Numbered(i + 1, last))
            {
                Hide(i > first && _items[i - 1].IsNumber ? i - 1 : i, last);
                return;
            }

            // "Pre-142": what came before a size.
            if (_items[i].Text == "pre" && _items[i].Terms.IsEmpty && i + 1 <= last)
            {
                int figure = _items[i + 1].IsSign('-') ? i + 2 : i + 1;
                if (figure <= last && _items[figure].IsNumber)
                {
                    Hide(i, figure);
                }
            }
        }
    }

    private bool Numbered(int first, int last)
    {
        for (int i = first; i <= last; i++)
        {
            if (_items[i].IsNumber)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"No, not the R one": the first word only lends weight to the second.</summary>
    private void Emphasis(int first, int last)
    {
        int only = -1;
        for (int i = first; i <= last; i++)
        {
            if (_items[i].Kind == SpecTokenKind.Sign)
            {
                continue;
            }

            if (only >= 0 || !_items[i].Is("m:not"))
            {
                return;
            }

            only = i;
        }

        int next = last + 1;
        while (next < _items.Count && next <= last + 2 && _items[next].IsSign(','))
        {
            next++;
        }

        if (only >= 0 && next > last + 1 && next < _items.Count && _items[next].Is("m:not"))
        {
            Replace(only, "m:nothing");
        }
    }

    /// <summary>"205 lb without kit": what is left off a rider is no denial of the figure.</summary>
    private bool WithoutThings(int first, int last)
    {
        if (_slot != Slot.Rider)
        {
            return false;
        }

        for (int i = first; i < last; i++)
        {
            if (_items[i].Text is "without" or "ohne" or "sans" or "sin" or "senza" or "zonder" && _items[i].Is("m:not") && !Numbered(i, last))
            {
                Hide(i, last);
                return false;
            }
        }

        return false;
    }

    /// <summary>"Or 8/9/10 with a spacer behind": which other cassettes a freehub body takes.</summary>
    private bool IsNoteOfSpacer(int first, int last) =>
        first > 0 && _slot == Slot.RearWheel && Any(first, last, "m:spacers") && !Any(first, last, "t:freehub") && Any(0, Math.Min(first - 1, Scope * 3), "m:hg")
        && Any(first, last, "m:and");

    /// <summary>A sleeve or ring that fills a bore, a frame or a clamp which was named before with its size: the smaller size is of the post in it, the larger one of the frame round it.</summary>
    private bool IsOnOtherSide(int first, int last)
    {
        if (first == 0 || !(Any(first, last, "m:adapt") || Any(first, last, "m:sleeve")) || (_slot != Slot.Frame && _slot != Slot.Seatpost))
        {
            return false;
        }

        decimal own = 0;
        bool bore = false;
        for (int i = Math.Max(0, first - (Scope * 3)); i < first; i++)
        {
            if (_items[i].IsNumber && _items[i].IsMillimetre && _items[i].Value is > 20 and < 40)
            {
                if (own > 0 && own != _items[i].Value)
                {
                    return false;
                }

                own = _items[i].Value;
            }

            bore |= _items[i].Is("m:inside") || _items[i].Is("t:inner");
        }

        if (own > 0 && _slot == Slot.Frame && IsSleeveTo(Math.Max(0, first - (Scope * 3)), first, last, own))
        {
            return true;
        }

        bool inside = _slot == Slot.Frame && bore && Any(Math.Max(0, first - (Scope * 3)), first - 1, "t:seattube");
        bool round = _slot == Slot.Seatpost && Any(first, last, "t:frame");
        bool figure = false;
        for (int i = first; i <= last && own > 0; i++)
        {
            if (_items[i].IsNumber && _items[i].Value > 20)
            {
                figure = true;
                if (inside ? _items[i].Value >= own : _items[i].Value <= own)
                {
                    return false;
                }
            }
        }

        return own > 0 && figure && (inside || round);
    }

    /// <summary>"Seatpost size 31.6 (reducer to 27.2 supplied)": a post or a seat tube with its figure, and behind a word for a sleeve, "to" and one smaller figure. The sleeve is in the frame of the larger one.</summary>
    private bool IsSleeveTo(int from, int first, int last, decimal own)
    {
        bool post = false;
        for (int i = from; i < first && !post; i++)
        {
            post = _items[i].Is("t:post") || _items[i].Is("t:seattube");
        }

        int sleeve = Find(first, last, "m:adapt");
        int to = sleeve + 1;
        while (sleeve >= 0 && to < last && to <= sleeve + 3 && !IsTo(_items[to]))
        {
            to++;
        }

        return post && sleeve >= 0 && to < last && IsTo(_items[to]) && Numbers(first, last) == 1 && _items[to + 1] is { IsNumber: true, IsMillimetre: true, Value: > 20 } && _items[to + 1].Value < own && !Any(first, last, "m:not");
    }

    private static bool IsTo(SpecItem item) => item.Kind == SpecTokenKind.Word && WordLists.SetAsideNotesIsTo.Contains(item.Text);

    /// <summary>"Penmaat 31,6 incl. vulbus naar 27,2": the same within one clause; what comes with the frame is taken out.</summary>
    private void SleeveTo(int first, int last)
    {
        int sleeve = _slot == Slot.Frame ? Find(first, last, "m:adapt") : -1;
        int own = sleeve < 0 ? -1 : _items.FindIndex(first, sleeve - first, i => i.IsNumber);
        if (own >= 0 && Numbers(first, sleeve) == 1 && _items[own] is { IsMillimetre: true, Value: > 24 and < 40 } && IsSleeveTo(first, own + 1, last, _items[own].Value))
        {
            Hide(sleeve > own + 1 && (IsWith(_items[sleeve - 1]) || _items[sleeve - 1].Is("d:kit")) ? sleeve - 1 : sleeve, last);
        }
    }

    /// <summary>"Post mount for 160 discs, up to 180 with an adapter".</summary>
    private bool IsRotorOfMountBefore(int first, int adapter)
    {
        bool rotor = false;
        for (int i = first; i < adapter; i++)
        {
            rotor |= _items[i].IsNumber && _items[i].IsMillimetre && _items[i].Value is >= 140 and <= 230;
        }

        int from = Math.Max(0, first - Scope);
        return rotor && first > 0 && (Any(from, first - 1, "m:pm") || Any(from, first - 1, "m:fm") || Any(from, first - 1, "m:is"));
    }
}
