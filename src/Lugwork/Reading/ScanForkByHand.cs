namespace Lugwork.Reading;

/// <summary>Forks as they are written by hand: the steerer by its diameter alone, and the travel by the German word for a stroke.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Ahead, Ø 28,6 mm", "canna da 28.6, ahead", "forcella filettata 25.4": the diameter of a steerer, the only figure of a line that says which kind of steerer it is.</summary>
    private void SteererByDiameter()
    {
        if (!Values.TryGetValue("steererKind", out LineFinding? kind) || Values.ContainsKey("steerer") || Values.ContainsKey("steererShape") || Doubts.Count > 0)
        {
            return;
        }

        int only = _items.FindIndex(i => i.IsNumber && i.Unit != "other");
        if (only < 0 || _items.FindLastIndex(i => i.IsNumber && i.Unit != "other") != only || !Free(only) || !_items[only].IsMillimetre || Joins(only) || IsOfOtherBehind(only) || Anywhere("m:tapered") >= 0 || Anywhere("m:max") >= 0)
        {
            return;
        }

        string name = (_items[only].Value, kind.Key) switch
        {
            (28.6m, _) => "1-1/8 in",
            (25.4m, _) => "1 in",
            // A threaded steerer of 25.0 mm is French; 25 alone can be an inch.
            (25m, "threaded") when !_items.Exists(o => o.Text is "english" or "englisch" or "anglais" or "ingles" or "inglese" or "engels") && _items[only].Places > 0 || Anywhere("v:ShellFamily=French") >= 0 || _items.Exists(o => o.Text is "francaise" or "french" or "francais" or "franzosisch" or "franzosische" or "francese" or "francesa" or "frances" or "franse" or "frans") => "25",
            (31.8m, "threadless") when _items[only].IsDiameter => "1-1/4 in",
            _ => "",
        };
        bool other = _items.Exists(o => o.IsTopic && !WordLists.ScanForkByHandSteererByDiameter.Contains(TopicIn(o)));
        if (name.Length > 0 && !other)
        {
            Take("steerer", name, only, only);
        }
    }

    /// <summary>"Gabel mit 120 mm Hub": the stroke of a fork in a line that is German by another word; a hub in English.</summary>
    private void TravelByStroke()
    {
        bool german = _items.Exists(IsGermanOfFork) && !_items.Exists(o => WordLists.ScanForkByHandTravelByStroke.Contains(o.Text));
        for (int i = 1; german && i < _items.Count && !Values.ContainsKey("travel"); i++)
        {
            bool hub = _items[i] is { Text: "hub", IsFraction: false, Kind: SpecTokenKind.Word } && !(i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && (_items[i + 1].IsNumber || _items[i + 1].Kind == SpecTokenKind.Word));
            if (hub && !(i > 1 && SetAside.IsFor(_items[i - 2])) && Anywhere("t:shock") < 0 && Free(i - 1) && _items[i - 1] is { Unit: "mm", IsFraction: false, Value: >= 30 and <= 220 } && !Joins(i - 1))
            {
                Length("travel", i - 1);
            }
        }
    }

    /// <summary>"Federgabel, Hub 130 mm", "Hub 160, Einbaulänge 567": behind the word, and as wide as no hub or in a line that is German.</summary>
    private void TravelBehindStroke()
    {
        bool length = Anywhere("t:axletocrown") >= 0;
        bool fork = length || _items.Exists(o => o.Text is "gabel" or "federgabel" or "luftgabel" or "stahlfedergabel" or "federweg");
        bool german = fork && _items.Exists(o => o.Text is not "mit" && IsGermanOfFork(o)) && !_items.Exists(o => WordLists.ScanForkByHandTravelByStroke.Contains(o.Text));
        for (int i = 0; fork && i + 1 < _items.Count && !Values.ContainsKey("travel"); i++)
        {
            int at = _items[i + 1].IsSign(':') || _items[i + 1].Text == "von" ? i + 2 : i + 1;
            if (_items[i] is { Text: "hub", IsFraction: false, Kind: SpecTokenKind.Word } && !(i > 0 && SetAside.IsFor(_items[i - 1])) && Free(at) && _items[at] is { IsFraction: false, Value: >= 60 and <= 220 } && (_items[at].Unit is "mm" || (length && _items[at].Unit is "")) && !Joins(at) && (german || !IsHubWidth(_items[at].Value, rear: false)))
            {
                Length("travel", at);
            }
        }
    }

    /// <summary>"Hub 150 mm" and no word beside it: the travel of a fork in German, a hub in English.</summary>
    private int StrokeOrHub() =>
        Anywhere("t:hub") is >= 0 and int hub && _items[hub].Text is "hub" && !_items.Exists(o => o.Kind == SpecTokenKind.Word && o != _items[hub] && o.Unit != "mm") && _items.FindIndex(o => o.IsNumber) is >= 0 and int at && _items[at] is { IsFraction: false, Value: 80 or 100 or 110 or 135 or 150 } && _items.FindLastIndex(o => o.IsNumber) == at ? at : -1;

    /// <summary>"120er Gabel": the German size of a fork is its travel, where no front hub is as wide and nothing else says it.</summary>
    private void TravelBySize()
    {
        for (int i = 0; i + 1 < _items.Count && !Values.ContainsKey("travel"); i++)
        {
            bool sized = Free(i) && _items[i] is { Unit: "", IsFraction: false, Value: 80 or 120 or 130 or 140 or 160 or 170 or 180 or 190 or 200 } && _items[i].End - _items[i].Start > _items[i].Text.Length && !Joins(i);
            bool behind = i > 0 && _items[i - 1].Is("m:sprung") && Free(i) && _items[i] is { Unit: "" or "mm", IsFraction: false, Value: 80 or 120 or 130 or 140 or 160 or 170 or 180 or 190 or 200 } && !Joins(i) && !(_items[i + 1].Kind == SpecTokenKind.Word && _items[i + 1].Clause == _items[i].Clause) && !IsOfNextClause(i);
            if (behind)
            {
                // "Federgabel 120 mm, 15x110": no hub is as wide.
                Length("travel", i);
                continue;
            }

            if (sized && _items[i + 1].Is("t:fork") && Anywhere("t:travel") < 0 && Anywhere("m:max") < 0 && Anywhere("t:rotor") < 0 && Anywhere("m:pm") < 0 && Anywhere("m:fm") < 0 && Anywhere("t:brake") < 0)
            {
                Length("travel", i);
            }
        }
    }

    /// <summary>"Federgabel 180, Disc", "200, Schaftlänge": a clause behind that says in words what the figure is of, and has none of its own.</summary>
    private bool IsOfNextClause(int i)
    {
        IEnumerable<SpecItem> next = Clauses(_items[i].Clause + 1);
        return next.Any(o => o.Is("t:rotor") || o.Is("t:brake") || o.Is("t:steerer") || o.Is("t:length") || o.Is("t:steererlength")) && !next.Any(o => o.IsNumber);
    }

    private static bool IsGermanOfFork(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanForkByHandIsGermanOfFork.Contains(item.Text);
}
