namespace Lugwork.Reading;

/// <summary>Hub ends of which axle and width stand apart, each by its own word or as the only one of its kind.</summary>
internal sealed partial class LineScan
{
    /// <summary>148/12, 12/142, 15-110: an axle and a width of a hub that a slash or a dash joins.</summary>
    private bool IsJoinedAxle(int i, bool rear)
    {
        if (!Free(i) || i + 2 >= _items.Count || !Free(i + 2) || _items[i].IsFraction || _items[i + 2].IsFraction || !_items[i].IsMillimetre || !_items[i + 2].IsMillimetre
            || (i > 0 && (_items[i - 1].IsSign('x') || _items[i - 1].IsSign('/'))) || (i + 3 < _items.Count && (_items[i + 3].IsSign('x') || _items[i + 3].IsSign('/'))))
        {
            return false;
        }

        (decimal axle, decimal width) = _items[i].Value < _items[i + 2].Value ? (_items[i].Value, _items[i + 2].Value) : (_items[i + 2].Value, _items[i].Value);
        if (axle is 5 or 9 or 10)
        {
            // "135/5 Schnellspanner".
            return _items[i + 1].IsSign('/') && IsHubWidth(width, rear) && Anywhere("m:qr") >= 0;
        }

        if (axle is not (12 or 15 or 20))
        {
            return false;
        }

        bool known = IsHubWidth(width, rear) || IsHubWidth(width, !rear);
        bool wheel = _slot == Slot.RearWheel || _slot == Slot.FrontWheel;
        return _items[i + 1].IsSign('/') ? known || (!wheel && _items[i].Value >= 60 && _items[i].Unit.Length == 0 && _items[i + 1].Glued && _items[i + 2].Glued)
            : _items[i + 1].IsSign('-') && _items[i + 1].Glued && _items[i + 2].Glued && known && HubTopic(i);
    }

    /// <summary>"Rear axle is 12 mm, hub 142 mm wide": one width of a hub and one axle at most, in a line that is about nothing else.</summary>
    private void HubApart(bool rear, List<(decimal Width, decimal Axle, int First, int Last)> found)
    {
        int width = -1;
        int axle = -1;
        bool evidence = false;
        for (int i = 0; i < _items.Count; i++)
        {
            SpecItem item = _items[i];
            if (item.IsTopic && !IsHubWord(TopicIn(item)) && !(item.Is("t:tyre") && item.Is("m:max") && item.IsFraction && item.Text is "passage" or "paso" or "passaggio") && !(IsOfWheel(TopicIn(item)) && _slot != Slot.Frame && _slot != Slot.Fork))
            {
                return;
            }

            evidence |= item.Is("m:trial") || (item.Text is "slots" or "slot" or "dropouts" && item.Kind == SpecTokenKind.Word) || TopicIn(item) is "t:axle" or "t:hub" or "t:spacing" or "t:axlestandard" || item.Is("m:qr") || item.Is("m:thru") || item.Is("m:nutted") || item.Is("m:boost") || item.Is("m:thrubolt");
            if (!Free(i) || (IsOfWheel(TopicOf(i)) && _items[Link(i)] is not { IsFraction: true, Text: "passage" or "paso" or "passaggio" }) || TopicOf(i) is "t:pitch" or "t:thread" or "t:axlethread" || JoinsClosely(i) || OtherEnd(i, rear) || IsTravelOfFork(i) || item.Unit is not ("" or "mm") && !(item.IsFraction && item.IsInch) || (i > 0 && _items[i - 1].Text == "m" && item.Glued))
            {
                continue;
            }

            if (!item.IsFraction && IsHubWidth(item.Value, rear) && !IsLengthOfAxle(i))
            {
                if (width >= 0 && _items[width].Value != item.Value)
                {
                    return;
                }

                width = width < 0 ? i : width;
            }
            else if ((item.IsFraction && item.Value is 0.375m or 0.3125m) || (!item.IsFraction && Array.IndexOf(AxleSizes, item.Value) >= 0 && (item.Unit == "mm" || item.IsDiameter || IsThickness(i) || TopicOf(i) is "t:axle" || HubMark(i) >= 0)))
            {
                if (axle >= 0 && _items[axle].Value != item.Value)
                {
                    return;
                }

                axle = axle < 0 ? i : axle;
            }
        }

        if (width >= 0 && (evidence || IsWideBehind(width, rear)))
        {
            found.Add((_items[width].Value, axle < 0 ? 0 : _items[axle].Value, axle < 0 ? width : Math.Min(width, axle), Math.Max(width, axle)));
            if (axle >= 0)
            {
                _items[axle].Used = true;
            }
        }
    }

    /// <summary>"Rear is 130 mm wide": a frame is as wide behind as its hub where the line says nothing else.</summary>
    private bool IsWideBehind(int width, bool rear) =>
        rear && _slot == Slot.Frame && _items[width].Unit == "mm" && TopicOf(width) == "n:width" && HasMark(width, "m:rear") && !_items.Exists(o => o.IsTopic && TopicIn(o) is not ("n:width" or "t:frame"))
        && !_items.Exists(o => (o.IsNumber && o != _items[width]) || o.Is("m:outside") || o.Is("m:max") || (o.Kind == SpecTokenKind.Word && o.Terms.IsEmpty && o.Text is not ("is" or "ist" or "the" or "am")));

    /// <summary>"Thru-axle 148 mm long": the axle is longer than the hub is wide, and nothing speaks of the hub.</summary>
    private bool IsLengthOfAxle(int i) =>
        (TopicOf(i) is "t:length" or "t:axlelength" || HasMark(i, "t:length")) && (Clause(i, "t:axle") || Clause(i, "m:thru")) && Anywhere("t:hub") < 0 && Anywhere("t:spacing") < 0 && Anywhere("m:boost") < 0;

    /// <summary>"150 mm fork, 15 mm axle": the figure right before the fork is its travel. "110er Gabel mit 15 mm Steckachse": 110 without its unit is the hub of such an axle, where the word is of any fork.</summary>
    private bool IsTravelOfFork(int i)
    {
        int fork = i + 1 < _items.Count && (_items[i + 1].Text == "er" || _items[i + 1].Is("m:boost")) ? i + 2 : i + 1;
        if (_slot == Slot.Fork && i > 0 && !Joins(i) && _items[i > 1 && _items[i - 1].Text is "da" or "de" or "von" or "van" or "mit" ? i - 2 : i - 1].Is("m:sprung"))
        {
            // "Luftgabel 110, Steckachse 15": right behind the name of a fork that is sprung.
            return true;
        }

        if (_items[i] is { Value: 110, Unit: "" } && fork < _items.Count && _items[fork].Is("t:fork") && !_items[fork].Is("m:sprung") && !Joins(i) && Anywhere("m:thru") >= 0 && Anywhere("t:travel") < 0 && _items.Exists(o => o is { IsNumber: true, Value: 15 }))
        {
            return false;
        }

        // "110/130 fork": two travels.
        int from = i + 2 < _items.Count && _items[i + 1].IsSign('/') && _items[i + 2] is { IsNumber: true, Value: >= 60 and <= 220 } ? i + 3 : i + 1;
        for (int j = from; j < _items.Count && j <= from + 1 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j++)
        {
            if (_items[j].Is("t:fork"))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsHubWord(string topic) =>
        WordLists.ScanHubApartIsHubWord.Contains(topic);

    /// <summary>What else a wheel has, whose figures are no width of a hub.</summary>
    private static bool IsOfWheel(string topic) => WordLists.ScanHubApartIsOfWheel.Contains(topic);

    /// <summary>"Diameter 12", "12 thick": a word for how thick it is stands against the figure.</summary>
    private bool IsThickness(int i)
    {
        foreach (int j in (ReadOnlySpan<int>)[i - 2, i - 1, i + 1, i + 2])
        {
            if (j == i + 2 && !(i + 1 < _items.Count && _items[i + 1].Text is "de" or "di" or "in" or "im" or "en" or "van" or "of"))
            {
                continue;
            }

            if (j >= 0 && j < _items.Count && _items[j].Clause == _items[i].Clause && (_items[j].Is("t:thickness") || IsDiameterWord(_items[j])))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsDiameterWord(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanHubApartIsDiameterWord.Contains(item.Text);
}
