using Lugwork.Steering;

namespace Lugwork.Reading;

/// <summary>Headsets, head tubes, steerers and stems.</summary>
internal sealed partial class LineScan
{
    private bool IsSteererInch(int i) => Free(i) && (_items[i].IsInch || _items[i].IsFraction) && _items[i].Value is >= 0.8m and <= 1.9m;

    /// <summary>A figure of inches as the readers of steerers take it.</summary>
    private string Inches(int i) => InchName(_items[i].Value) + " in";

    private static string InchName(decimal value) => value switch
    {
        0.875m => "7/8",
        1m => "1",
        1.125m => "1-1/8",
        1.25m => "1-1/4",
        0.9375m => "15/16",
        1.375m => "1-3/8",
        1.5m => "1.5",
        _ => ItemCutter.Plain(value),
    };

    private void ReadKind(string field)
    {
        int threadless = Anywhere("m:threadless");
        int threaded = ThreadedSteerer();
        for (int i = Math.Max(threadless, 0); threadless >= 0 && i < _items.Count && i <= threadless + Reach; i++)
        {
            if (_items[i].Is("m:threadless") && !Negated(i))
            {
                Keep(field, "threadless", i, i);
            }
        }

        if (threaded >= 0)
        {
            Keep(field, "threaded", threaded, threaded);
        }
    }

    /// <summary>A word for a thread that is not said of an axle, a shell or a brake.</summary>
    private int ThreadedSteerer()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if ((_items[i].Is("m:threaded") || IsThreadOfSteerer(i) || IsThreadOfInch(i)) && !Negated(i) && IsOfSteerer(i) && !(i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && WordLists.ScanSteeringThreadedSteerer.Contains(_items[i + 1].Text)) && !Clause(i, "t:axle") && !Clause(i, "m:thru") && !Clause(i, "t:axlethread") && !Clause(i, "t:hub") && !Clause(i, "t:brake"))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>"Serraggio a vite" on a fork is of anything; "cannotto a vite" is of the steerer.</summary>
    private bool IsOfSteerer(int i) =>
        _slot != Slot.Fork || !(_items[i].IsFraction && _items[i].Text is "a" or "con" or "avec") || Clause(i, "t:steerer") || Clause(i, "t:fork") || Clause(i, "t:headtube") || Clauses(_items[i].Clause).Any(o => o.IsNumber && (o.IsFraction || (o.IsInch && o.Value == 1))) || (IsAloneInClause(i) && IsBehindSteerer(i));

    /// <summary>"Tubo de dirección recto 1\", con rosca": the clause before is of the steerer.</summary>
    private bool IsBehindSteerer(int i) =>
        Clauses(_items[i].Clause - 1).Any(o => o.Is("t:steerer") || (o.IsNumber && o.IsInch && o.Value is 1m or 1.125m or 1.25m));

    /// <summary>"Gabelschaft 1 1/8 Zoll, Gewinde": the German word for a thread by itself.</summary>
    private bool IsThreadOfSteerer(int i) =>
        _slot == Slot.Fork && _items[i].Is("t:thread") && (_items[i].IsFraction ? _items[i].Text is not ("screw" or "schraub") : _items[i].Text is "gewinde" or "schroefdraad" or "aussengewinde" or "buitendraad") && Anywhere("t:steerer") >= 0 && Anywhere("t:axlethread") < 0 && Anywhere("m:thru") < 0
        && (Clause(i, "t:steerer") || AloneInClause(i)) && !(i + 1 < _items.Count && (_items[i + 1].IsNumber || _items[i + 1].Text == "m" || SetAside.IsFor(_items[i + 1]) || _items[i + 1].IsSign(':') || _items[i + 1].IsSign('=')));

    /// <summary>"1 in thread" on a headset or fork: the word against the size of a steerer, which no other figure joins.</summary>
    private bool IsThreadOfInch(int i) =>
        (_slot == Slot.Headset || _slot == Slot.Fork) && _items[i].Is("t:thread") && !(i > 0 && _items[i - 1].Is("m:not")) && !(_slot == Slot.Fork && i + 1 < _items.Count && _items[i + 1].Is("t:headset")) && ((i > 0 && IsInchAlone(i - 1)) || (i + 1 < _items.Count && IsInchAlone(i + 1)) || (_slot == Slot.Headset && AloneInClause(i) && (_firstInch ??= _items.FindIndex(o => o.IsNumber && o.Value is 1m or 1.125m or 1.25m)) is >= 0 and int size && IsSteererSize(size)));

    /// <summary>The first figure that is a size of a steerer in inches, looked for once.</summary>
    private int? _firstInch;

    private bool IsSteererSize(int i) => (_items[i].IsInch || _items[i].IsFraction) && !Joins(i) && !_items[i].IsBroken;

    private bool IsInchAlone(int i) => IsSteererInch(i) && _items[i].Value is 1m or 1.125m or 1.25m && !Joins(i);

    /// <summary>"Steerer 1-1/8, length 220 mm", "165 long": a length in a line about a steerer, which names nothing else that is long.</summary>
    private void ReadSteererLength()
    {
        bool steerer = (Anywhere("t:steerer") >= 0 || Values.ContainsKey("steerer") || Values.ContainsKey("steererShape")) && Anywhere("t:axle") < 0 && Anywhere("t:axletocrown") < 0 && Anywhere("t:thread") < 0;
        for (int i = 0; i < _items.Count && steerer && !Full; i++)
        {
            if (Free(i) && _items[i].IsMillimetre && !_items[i].IsFraction && _items[i].Value is >= 120 and <= 350 && TopicOf(i) == "t:length" && _items[i].Value == decimal.Truncate(_items[i].Value) && !Joins(i))
            {
                Length("steererLength", i);
            }
        }
    }

    /// <summary>"Pivot droit de 210 mm", "1-1/8 steerer, 185 mm left": a length by the word for the steerer before it or for its cut, beside a steerer that was read.</summary>
    private void SteererLengthBeside()
    {
        if (Values.ContainsKey("steererLength") || !(Values.ContainsKey("steerer") || Values.ContainsKey("steererShape") || Values.ContainsKey("steererKind") || Values.ContainsKey("steererMaterial")))
        {
            return;
        }

        int found = -1;
        bool onlySteerer = HasNoOtherCut();
        bool plain = Anywhere("t:axletocrown") < 0 && Anywhere("m:thru") < 0;
        if ((Anywhere("t:headtube") >= 0 && Anywhere("n:cut") >= 0) || _items.Exists(o => o.Text is "shortened"))
        {
            return;
        }

        for (int i = 0; i < _items.Count && found < _items.Count; i++)
        {
            bool length = Free(i) && _items[i].IsMillimetre && !_items[i].IsFraction && _items[i].Value is >= 140 and <= 350 && _items[i].Value == decimal.Truncate(_items[i].Value) && !Joins(i);
            bool said = length && ((TopicOf(i) is "n:cut" && IsCutTo(i)) || (TopicOf(i) is "t:steerer" or "t:length" or "t:steererlength" && (Clause(i, "t:steerer") || Clause(i, "t:steererlength") || (TopicOf(i) is "t:length" && Values.ContainsKey("steererMaterial") && plain))) || (TopicOf(i) is "t:steerer" && _items[i].Unit == "mm"));
            if (said && (TopicOf(i) != "n:cut" || onlySteerer) && !Clause(i, "t:axle") && !Clause(i, "t:axletocrown") && !Clause(i, "t:travel"))
            {
                found = found < 0 ? i : _items.Count;
            }
        }

        found = found < 0 ? SteererLengthAlone() : found;
        if (found >= 0 && found < _items.Count)
        {
            Length("steererLength", found);
        }
    }

    /// <summary>"Cut to 150 mm", "gekürzt auf 150 mm", "uncut, 300 mm": what is left of a steerer, and not what was cut off.</summary>
    private bool IsCutTo(int i)
    {
        int before = i > 0 && _items[i - 1].Kind == SpecTokenKind.Sign ? i - 2 : i - 1;
        string text = before >= 0 ? _items[before].Text : "";
        if (before >= 0 && _items[before].Is("n:cut"))
        {
            // A phrase is told by its first word: each says what is left.
            return (_items[before].IsFraction || text is "uncut" or "ungekurzt") && !IsCutThatMayCome(i);
        }

        // "Auf 175 mm gekürzt", "op 180 mm afgezaagd".
        return text is "auf" or "op" or "tot" && i + 1 < _items.Count && _items[i + 1].Is("n:cut") && _items[i + 1].Clause == _items[i].Clause && !IsCutThatMayCome(i);
    }

    /// <summary>"Can be cut to 180", "muss auf 180 gekürzt werden": it is not that long yet.</summary>
    private bool IsCutThatMayCome(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item.Kind == SpecTokenKind.Word && WordLists.ScanSteeringIsCutThatMayCome.Contains(item.Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>No other part is named that could be cut.</summary>
    private bool HasNoOtherCut() => !_items.Exists(o => o.Is("t:bar") || o.Is("t:post"));

    private void ReadCrownSeat()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (IsTurnedForRace(i))
            {
                Take("crownSeat", _items[i].Figure, i, i);
                continue;
            }

            if (!Free(i) || !(_items[i].IsMillimetre || _items[i].IsInch) || !(TopicOf(i) == "t:crownrace" || IsOfTurnedCrown(i) || IsOfBareSeat(i)) || IsPairOfTaper(i))
            {
                continue;
            }

            if (IsSteererInch(i) && _items.Exists(o => o is { IsNumber: true, IsFraction: false, IsInch: false, Value: >= 26 and <= 40 }))
            {
                // 1.5" (39.8 mm): the inches are of the steerer.
                _items[i].Used |= i + 2 < _items.Count && _items[i + 1].IsSign('(') && _items[i + 2].IsNumber;
            }
            else
            {
                _claimed[Math.Max(Link(i), 0)] |= Link(i) >= 0;
                Take("crownSeat", _items[i].Figure, i, i);
            }
        }
    }

    /// <summary>"Crown turned to 33 mm", "Gabelkopf auf 26,4 gedreht": the seat of the race, which is what a lathe cuts there.</summary>
    private bool IsOfTurnedCrown(int i) =>
        TopicOf(i) == "t:crown" && _items[i].Value is 26.4m or 26.5m or 27 or 30 or 33 or 37 or 39.8m && Clauses(_items[i].Clause).Any(o => WordLists.ScanSteeringIsOfTurnedCrown.Contains(o.Text)) && !Clauses(_items[i].Clause).Any(o => (SetAside.IsFor(o) && !Clauses(o.Clause).Any(p => p.Is("t:crownrace") || p.Text is "race" or "konus" or "cone" or "cono" or "conus" or "pista")) || o.Is("n:width") || o.Text is "large" or "larga" or "largo" or "from" or "von" or "not" or "nicht" || (o.Text is not "to" && WordLists.ScanSteeringIsCutThatMayCome.Contains(o.Text)));

    /// <summary>"1\" threaded, 26.4 crown", "Schaft 1\", Sitz 26,4": a size that only a seat of a race has, beside a short word for it.</summary>
    private bool IsOfBareSeat(int i) =>
        _items[i] is { Unit: "" or "mm", Places: 1, Value: 26.4m or 26.5m or 27 or 30 or 39.8m } && !JoinsClosely(i)
        && ((IsSeatWord(i - 1) && !(i + 1 < _items.Count && _items[i + 1].Kind == SpecTokenKind.Word && _items[i + 1].Clause == _items[i].Clause) && !(i > 1 && _items[i - 2] is { Kind: SpecTokenKind.Word, Terms.IsEmpty: true } before && before.Clause == _items[i].Clause)) || (IsSeatWord(i + 1) && !(i + 2 < _items.Count && (_items[i + 2].IsNumber || _items[i + 2].IsSign(':') || (_items[i + 2].IsTopic && _items[i + 2].Clause == _items[i].Clause)))));

    private bool IsSeatWord(int j) =>
        j >= 0 && j < _items.Count && !_items[j].IsFraction && WordLists.ScanSteeringSeatWord.Contains(_items[j].Text);

    /// <summary>"Cono 28,6/38,1", "conus 1 1/8 - 1.5": the word is of the taper whose ends are joined behind it.</summary>
    private bool IsPairOfTaper(int i)
    {
        bool first = i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].IsSign('-')) && IsTaperSize(i) && IsTaperSize(i + 2) && _items[i].Value != _items[i + 2].Value;
        return first || (i > 1 && (_items[i - 1].IsSign('/') || _items[i - 1].IsSign('-')) && IsTaperSize(i) && IsTaperSize(i - 2) && _items[i].Value != _items[i - 2].Value);
    }

    /// <summary>"26.4 seat", "turned to 27.0 for the race": a size that only the seat on the crown has, by the word behind it.</summary>
    private bool IsTurnedForRace(int i) =>
        Free(i) && _items[i] is { IsFraction: false, Unit: "" or "mm", Value: 26.4m or 26.5m or 27m or 30m or 33m or 39.8m, Places: > 0 } && !Joins(i) && i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause
        && (!_items[i + 1].IsFraction && _items[i + 1].Text is "seat" or "sitz" or "assise" or "siege" or "zitting" || (i + 3 < _items.Count && SetAside.IsFor(_items[i + 1]) && _items[i + 3].Text is "race" or "konus" or "cone" or "pista" or "cono" or "conus"));

    /// <summary>The sizes of a fork's steerer: one, or a taper from one to another.</summary>
    private void ReadSteerer()
    {
        ReadKind("steererKind");
        List<(string Size, int At)> sizes = [];
        for (int i = 0; i < _items.Count && sizes.Count < 8; i++)
        {
            if (!Free(i) || IsOfOtherBehind(i))
            {
                continue;
            }

            string topic = Link(i) is >= 0 and int link && _items[link].Clause == _items[i].Clause ? TopicIn(_items[link]) : "";
            topic = topic == "t:crownrace" && IsPairOfTaper(i) ? "t:steerer" : topic;
            topic = topic == "n:reach" && _items[Link(i)].Text is "base" && HasMark(i, "m:tapered") ? "" : topic;
            bool steerer = topic is "t:steerer" or "t:headtube" || TopicOf(i) == "t:steerer" || Clause(i, "t:steerer") || HasMark(i, "m:tapered") || HasMark(i, "m:straight") || HasMark(i, "m:threaded") || HasMark(i, "m:threadless");
            steerer |= (_items[i].Value is 1.125m && _items[i].Unit.Length == 0) || (_items[i].Value is 28.6m && i + 2 < _items.Count && _items[i + 2] is { IsNumber: true, Value: 39.8m } && (Anywhere("m:tapered") >= 0 || Anywhere("t:steerer") >= 0));
            steerer |= IsEndOfTaper(i) || (topic == "t:thread" && IsInchAlone(i) && Math.Abs(Link(i) - i) == 1);
            bool follows = sizes.Count > 0 && i - sizes[^1].At <= 3 && _items[i].Value is 1m or 1.125m or 1.25m or 1.375m or 1.5m or 1.8m;
            if (_items[i].IsFraction || _items[i].IsInch || ((steerer || follows) && _items[i].Unit.Length == 0 && _items[i].Value < 2))
            {
                if (_items[i].Value >= 2.5m)
                {
                    if (steerer && topic is "t:steerer")
                    {
                        Refuse("steerer", i, i, "no steerer has this diameter");
                    }

                    continue;
                }

                if (topic is "" or "t:steerer" or "t:headtube" or "t:fork" || steerer || follows)
                {
                    sizes.Add((InchName(_items[i].Value), i));
                }
            }
            else if (_items[i].IsMillimetre && _items[i].Value is 39.8m or 38.1m && sizes is [{ Size: "1-1/8" } upper] && _items[upper.At] is { Value: 28.6m } && (i - upper.At <= 3 || HasMark(i, "m:lower")))
            {
                // Where the taper ends, by the race that goes there.
                sizes.Add(("1.5", i));
            }
            else if (_items[i].IsMillimetre && _items[i].Value == 25 && topic is "t:steerer" && sizes.Count == 0 && !IsOffsetOfSteerer(i) && (_items.Exists(o => o is { IsNumber: true, Value: 26.5m }) || Anywhere("v:ShellFamily=French") >= 0 || _items.Exists(o => WordLists.ScanSteeringReadSteerer.Contains(o.Text))))
            {
                // The French steerer, by the race that goes with it.
                Take("steerer", "25", i, i);
                return;
            }
            else if (_items[i].IsMillimetre && (steerer || (sizes.Count == 1 && i - sizes[0].At <= 3 && _items[sizes[0].At].IsMillimetre && !_items[sizes[0].At].IsFraction && _items[i].Value > _items[sizes[0].At].Value && HasMark(sizes[0].At, "m:tapered"))) && !(_items[i].Value == 23.8m && IsOffsetOfSteerer(i)) && MetricSteerer(_items[i].Value) is { } name)
            {
                sizes.Add((name, i));
            }
        }

        if (sizes.Count > 0)
        {
            TakeSteerer(sizes);
        }
        else if (Anywhere("m:tapered") is >= 0 and int tapered && !(_items[tapered].Text is "getapt" && Values.ContainsKey("frontAxleThread")))
        {
            Several("steererShape", ["tapered-1-1/8-1-1/4", "tapered-1-1/8-1.5"], tapered, tapered, "the sizes of the taper are not said");
        }
    }

    /// <summary>"Gewindegabel 25,4 lang", "forcella filettata 25.4 attacco": the word right behind a figure in millimetres is of a stem, a bar, a stanchion or a length.</summary>
    private bool IsOfOtherBehind(int i) =>
        _items[i].IsMillimetre && !_items[i].IsFraction && i + 1 < _items.Count && _items[i + 1].Kind == SpecTokenKind.Word && _items[i + 1].Clause == _items[i].Clause && !(i + 2 < _items.Count && (_items[i + 2].IsNumber || _items[i + 2].IsSign(':')))
        && (_items[i + 1].Text is "lang" or "attacco" or "standrohre" or "standrohr" || TopicIn(_items[i + 1]) is "t:stem" or "t:bar");

    /// <summary>"25 mm shorter", "25 mm above the crown": a length along the steerer, by the word behind it.</summary>
    private bool IsOffsetOfSteerer(int i) =>
        i + 1 < _items.Count && (_items[i + 1].Is("m:inside") || _items[i + 1].Is("t:inner") || WordLists.ScanSteeringIsOffsetOfSteerer.Contains(_items[i + 1].Text));

    private static string? MetricSteerer(decimal value) => value switch
    {
        22.2m => null,
        25.4m => "1",
        28.6m => "1-1/8",
        31.8m => "1-1/4",
        38.1m => "1.5",
        34.9m => "1-3/8",
        23.8m => "7/8",
        _ => null,
    };

    private void TakeSteerer(List<(string Size, int At)> sizes)
    {
        int first = sizes[0].At;
        int last = sizes[^1].At;
        for (int i = first; i <= last && i < first + 40; i++)
        {
            if (_items[i].Is("m:or") && sizes.Count > 1)
            {
                Several("steererShape", [.. sizes.Select(s => s.Size)], first, last, "the line offers several steerers");
                return;
            }
        }

        if (IsOfHeadAndOther(sizes))
        {
            // "Head tube 1.5, steerer 1 1/8": the larger one is of the frame.
            Several("steererShape", [.. sizes.Select(s => s.Size)], first, last, "one size is of the head tube");
            return;
        }

        bool tapered = Shaped(first, last, "m:tapered");
        bool straight = Shaped(first, last, "m:straight");
        int distinct = sizes.Select(s => s.Size).Distinct(StringComparer.Ordinal).Count();
        if (distinct == 2 && (sizes.Count == 3 ? tapered || Anywhere("m:tapered") >= 0 : sizes.Count == 4 && sizes[0].Size != sizes[1].Size && sizes[2].Size != sizes[3].Size) && !straight)
        {
            // "Un pouce un huitième en haut, un pouce et demi en bas, 1-1/8 à 1-1/2": both ends, and both again.
            sizes = [sizes[0], sizes.Find(s => s.Size != sizes[0].Size) with { At = last }];
        }

        if (distinct == 1 && Anywhere("m:tapered") is >= 0 and int one && Anywhere("m:straight") is >= 0 and int other)
        {
            Several("steererShape", [.. sizes.Select(s => s.Size)], Math.Min(one, other), Math.Max(one, other), "two shapes are named");
        }
        else if (distinct == 2 && sizes.Count == 2 && !straight)
        {
            (string a, string b) = string.CompareOrdinal(Order(sizes[0].Size), Order(sizes[1].Size)) < 0 ? (sizes[0].Size, sizes[1].Size) : (sizes[1].Size, sizes[0].Size);
            Take("steererShape", $"tapered {a} to {b}", first, last);
        }
        else if (distinct > 1 || (tapered && straight))
        {
            Refuse("steererShape", first, last, "the sizes do not go together");
        }
        else if (tapered)
        {
            Several("steererShape", [.. SteererShape.All.Where(s => s.FitKey.StartsWith("tapered", StringComparison.Ordinal) && s.FitKey.Contains(sizes[0].Size, StringComparison.Ordinal)).Select(s => s.FitKey)], first, last, "only one end of the taper is said");
        }
        else if (straight)
        {
            Take("steererShape", "straight " + sizes[0].Size, first, last);
        }
        else
        {
            Take("steerer", sizes[0].Size + " in", first, last);
        }
    }

    /// <summary>A word of shape in the clause of the size, or in the one beside it where that says nothing else: "straight, 1-1/8".</summary>
    private bool Shaped(int first, int last, string shape)
    {
        if (HasMark(first, shape) || HasMark(last, shape))
        {
            return true;
        }

        int mark = FindMark(first, shape, 1);
        mark = mark < 0 ? FindMark(last, shape, 1) : mark;
        if (mark < 0)
        {
            return false;
        }

        foreach (SpecItem item in Clauses(_items[mark].Clause))
        {
            bool own = item.Kind == SpecTokenKind.Sign || (item.Kind == SpecTokenKind.Word && item.Terms.IsEmpty) || item.Is(shape) || item.Is("t:steerer") || item.Is("t:fork") || item.Is("m:threadless") || item.Is("m:threaded") || item.Is("v:Material=steel") || item.Is("v:Material=aluminium") || item.Is("v:Material=carbon");
            if (!own)
            {
                return false;
            }
        }

        return true;
    }

    private static string Order(string size) => size switch { "1" => "a", "1-1/8" => "b", "1-1/4" => "c", "1-3/8" => "d", "1.5" => "e", _ => "f" };
}
