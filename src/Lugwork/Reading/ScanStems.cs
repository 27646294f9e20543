using Lugwork.Steering;

namespace Lugwork.Reading;

/// <summary>Stems.</summary>
internal sealed partial class LineScan
{
    /// <summary>A stem has a clamp at either end: each figure is told by its word, by its list, or as the one that is left.</summary>
    private void ReadStem()
    {
        ReadUse();
        int step = _items.FindIndex(o => o.Kind == SpecTokenKind.Word && o.Text is "auf" or "op" && !o.IsFraction);
        if (step > 0 && step + 1 < _items.Count && _items[step - 1] is { IsNumber: true, Unit: "" or "mm" } && _items[step + 1] is { IsNumber: true, Unit: "" or "mm" } && Free(step - 1))
        {
            // "28.6 auf 31.8": from one size to another.
            Several("fixing", [], step - 1, step + 1, "one size is led to another");
            return;
        }

        List<int> bare = [];
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].Unit is not ("" or "mm" or "in"))
            {
                continue;
            }

            bool inch = _items[i].IsFraction || _items[i].IsInch || _items[i].Value == 1.125m;
            if (!inch && i > 1 && _items[i - 1].IsSign('(') && _items[i > 2 && _items[i - 2].Is("t:steerer") ? i - 3 : i - 2] is { IsNumber: true, Used: true } same && (same.IsInch || same.IsFraction) && Math.Abs((same.Value * 25.4m) - _items[i].Value) < 0.4m && Values.TryGetValue("fixing", out LineFinding? round) && round.Key.StartsWith("clamp", StringComparison.Ordinal))
            {
                // 1" (25,4 mm): said again.
                _items[i].Used = true;
                continue;
            }

            if (!inch && _items[i].Value is < 20 or > 41)
            {
                continue;
            }

            if (inch && i + 3 < _items.Count && _items[i + 1].IsSign('(') && _items[i + 3].IsSign(')') && _items[i + 2] is { IsNumber: true, IsFraction: false, Unit: "" or "mm" } other && (other.Unit == "mm" || (other.Value is 22.2m or 25.4m or 28.6m && Anywhere("m:quill") >= 0)) && Math.Abs((_items[i].Value * 25.4m) - other.Value) > 1)
            {
                Several("fixing", [], i, i + 2, "the inches and the millimetres are two sizes");
                continue;
            }

            string topic = TopicOfStem(i);
            if (IsShaft(i))
            {
                if (_items.Exists(o => o is { IsNumber: true, IsFraction: false, Unit: "" or "mm", Value: 31.8m or 35 }))
                {
                    Fixing(i, inch);
                }
                else
                {
                    Several("fixing", ["clamp-28.6", "quill-28.6"], i, i, "the word is of a quill and of a steerer");
                }

                continue;
            }

            if (inch && _items[i].Value is 1m or 1.25m or 1.5m && topic is "" or "t:stem" && HasMark(i, "m:threadless") && !HasMark(i, "m:quill") && !Values.ContainsKey("fixing"))
            {
                // "Ahead 1 1/4": what it goes round is the steerer.
                Fixing(i, inch);
                continue;
            }

            bool foot = (inch && _items[i].Value == 1.125m) || (!inch && _items[i].Value == 28.6m);
            if (foot && (topic is "t:bar" or "t:clamp" || (topic is "t:stem" && !HasMark(i, "m:quill"))))
            {
                // No bar has this size, and a quill of it is said to be one.
                Fixing(i, inch);
                continue;
            }

            if (topic is "t:clamp" && Clause(i, "t:steerer") && !Clause(i, "t:bar") && !_items.Exists(o => o != _items[i] && o.IsNumber))
            {
                Fixing(i, inch);
                continue;
            }

            if (topic is "t:clamp" && !Clause(i, "t:bar") && !Clause(i, "t:stem") && ((inch && _items[i].Value == 1m) || (!inch && _items[i].Value == 25.4m)))
            {
                // The clamp of a bar or of a one-inch steerer.
                bare.Add(i);
                continue;
            }

            if (inch && Values.TryGetValue("fixing", out LineFinding? shaft) && shaft.Key.StartsWith("quill", StringComparison.Ordinal) && (topic is "t:fork" or "t:steerer" or "t:headtube" || HasMark(i, "m:threaded")))
            {
                // "Quill 25.4 mm for a 1-1/8 threaded steerer": what it goes into.
                _items[i].Used = true;
                continue;
            }

            bool quill = (i + 1 < _items.Count && _items[i + 1].Is("m:quill") && _items[i + 1].Clause == _items[i].Clause) || (i > 0 && _items[i - 1].Is("m:quill") && !IsOfBarBehind(i)) || (i > 1 && _items[i - 1].Text is "de" or "da" or "di" or "van" or "von" or "of" && _items[i - 2].Is("m:quill")) || (HasMark(i, "m:quill") && FindMark(i, "m:quill", 0) is int q && (q < i ? !Claimed(q, i) : inch || _items[i].Value is not (25.8m or 26 or 31.8m or 35)) && topic is not "t:bar" && !(topic is "t:steerer" && !inch && _items[i].Value is 25.4m or 28.6m && _items[Link(i)].Text is not ("schaft" or "schacht"))) || (_items[i].Value is 22.2m or 22 or 21.15m && FindMark(i, "m:quill", 1) is >= 0 and int before && before < i && topic is "" or "t:headtube" or "t:stem");
            quill |= !inch && _items[i].Value is 22.2m or 21.15m && IsOnShaft(i);
            quill |= !inch && _items[i].Value == 25.4m && i > 0 && _items[i - 1].Text == "pen" && !HasMark(i, "m:threadless") && !Clause(i, "t:bar") && !Clause(i, "t:clamp");
            if (quill && inch && _items[i].Value == 1m && _items.Exists(o => o is { IsNumber: true, IsFraction: false, Value: 22.2m or 22 }))
            {
                // The quill of a one-inch fork is 22.2 mm.
                _items[i].Used = true;
                continue;
            }

            if (quill && !inch && _items[i] is { Value: 22, Places: 0 })
            {
                Several("fixing", ["quill-22.0", "quill-22.2"], i, i, "quills of 22.0 and of 22.2 mm are both called so");
            }
            else if (quill)
            {
                Take("fixing", (inch && _items[i].Value == 0.833m ? "21.15" : inch ? InchName(_items[i].Value) + " in" : _items[i].Value == 22 ? "22.0" : _items[i].Text) + " quill", i, i);
                if (FindMark(i, "m:quill", 0) is >= 0 and int mark)
                {
                    _claimed[mark] = true;
                }
            }
            else if (topic is "t:headset" && Values.TryGetValue("fixing", out LineFinding? fixing) && fixing.Key.StartsWith("quill", StringComparison.Ordinal))
            {
                // A quill goes into a headset of another size than its own.
                _items[i].Used = true;
            }
            else if (topic is "t:steerer" or "t:headset" or "t:headtube" or "t:fork" || (Link(i) is > 0 and int at && _items[at - 1].Start == _items[at].Start && _items[at - 1].Is("t:steerer")))
            {
                _claimed[Link(i)] = true;
                if (!inch && Anywhere("m:quill") >= 0 && Anywhere("m:threadless") < 0 && Values.ContainsKey("fixing"))
                {
                    _items[i].Used = true;
                }
                else if (!inch && Anywhere("m:quill") >= 0 && Anywhere("m:threadless") < 0)
                {
                    // "Schaft 25,4 gesteckt (quill)": its own shaft; "steerer 25.4" can be what it goes into.
                    if (_items[Link(i)] is { Text: "schaft" or "schacht", IsFraction: false })
                    {
                        Take("fixing", _items[i].Text + " quill", i, i);
                    }
                    else
                    {
                        Several("fixing", ["quill-22.2", "quill-25.4"], i, i, "the figure can be the quill or what it goes into");
                    }
                }
                else
                {
                    Fixing(i, inch);
                }
            }
            else if (topic is "t:bar" or "t:clamp" || (Link(i) >= 0 && _items[Link(i)].Is("t:bar")))
            {
                _claimed[Link(i)] = true;
                Take("bar", inch ? InchName(_items[i].Value) + " in" : _items[i].Text, i, i);
            }
            else if (topic is "" or "t:stem" && i > 0 && _items[i - 1].Is("m:oversize") && _items[i].Value == 31.8m)
            {
                Take("bar", _items[i].Text, i, i);
            }
            else if (topic is "" or "t:stem")
            {
                bare.Add(i);
            }
        }

        BareStem(bare);
    }

    /// <summary>What a figure of a stem is of: "old" before a bar is no spacing, "avance" a stem, and "35 pour fourche en 1-1/8" is of the stem and not of what it goes to.</summary>
    private string TopicOfStem(int i)
    {
        int link = Link(i);
        string topic = link < 0 ? "" : TopicIn(_items[link]);
        if (link >= 0 && _items[link].Text == "old" && topic == "t:spacing")
        {
            return _after[i] >= 0 && _items[_after[i]].Is("t:bar") ? "t:bar" : "";
        }

        if (link > i && topic is "t:headset" or "t:headtube" or "t:fork" or "t:steerer" && link + 1 < _items.Count && _items[link + 1].IsNumber && _items[i].Value is 25.8m or 26 or 31.8m or 35)
        {
            // "31.8 sterzo 1 1/8": the word is of the figure behind it.
            return "";
        }

        if (link >= 0 && topic == "t:thickness" && (Clause(i, "t:bar") || (_after[i] >= 0 && _items[_after[i]].Is("t:bar"))) && _items[i].Value is 25.4m or 26 or 31.8m or 35)
        {
            // "Für dicke 35er Lenker", "stuur 35 dik".
            return "t:bar";
        }

        if (link >= 0 && ((_items[link].Text is "avance" && (_items[i].IsFraction || _items[i].IsInch || _items[i].Value is 25.4m or 25.8m or 26 or 31.8m)) || (_items[link] is { Text: "pipa", IsFraction: false } && topic == "t:headtube")))
        {
            return "t:stem";
        }

        return link == i + 2 && SetAside.IsFor(_items[i + 1]) && link + 1 < _items.Count && _items.Exists(o => o.Start > _items[link].Start && o.IsNumber) && topic is "t:fork" or "t:steerer" or "t:headtube" or "t:headset" && _items[i].Value is 25.8m or 26 or 31.8m or 35 ? "t:stem" : topic;
    }

    /// <summary>"Quill 25.4 bar": the word behind a figure that a quill and a bar have.</summary>
    private bool IsOfBarBehind(int i) =>
        _items[i].Value is 25.4m && i + 1 < _items.Count && (_items[i + 1].Is("t:bar") || _items[i + 1].Text is "manubrio" or "stuur" or "cintre" or "manillar" or "lenker") && _items[i + 1].Clause == _items[i].Clause && !(i + 2 < _items.Count && (_items[i + 2].IsNumber || _items[i + 2].IsSign(':')));

    /// <summary>"Caña 28.6": in Spanish the word is of the steerer and of the quill; with "de caña" it is the quill. No quill goes with an oversized bar.</summary>
    private bool IsShaft(int i)
    {
        int word = i - 1;
        while (word > i - 4 && word > 0 && (_items[word].Text is "de" || _items[word].IsSign(':')))
        {
            word--;
        }

        return word >= 0 && _items[word] is { Text: "cana", IsFraction: false } && !(word > 0 && _items[word - 1].Text is "de" or "con" or "a") && _items[i].Value is 28.6m or 1.125m;
    }

    /// <summary>A word for the shaft of a quill beside a figure that no clamp round a steerer has.</summary>
    private bool IsOnShaft(int i)
    {
        for (int j = Math.Max(0, i - 3); j < _items.Count && j <= i + 3; j++)
        {
            if (_items[j].Clause == _items[i].Clause && _items[j].Text is "shaft" or "schacht" or "pen" or "plongeur" or "gambo" or "vastago")
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A clamp round the steerer; 22.2 and the like are sizes of quills alone.</summary>
    private void Fixing(int i, bool inch) => Take("fixing", !inch && _items[i].Value is 22.2m or 22 or 21.15m or 21.1m ? (_items[i].Value == 22 ? "22.0" : _items[i].Value == 21.1m ? "21.15" : _items[i].Text) + " quill" : inch && _items[i].Value == 1m && (Anywhere("m:threadless") >= 0 || IsClampedRound(i)) ? "25.4 clamp" : inch ? "clamp " + InchName(_items[i].Value) : "clamp-" + ItemCutter.Plain(_items[i].Value), i, i);

    /// <summary>"Clamps a 1\" steerer", "klemmt 1\" Schaft", "serre un pivot 1\"": what it goes round, by the verb or by an oversized bar, where no quill is named.</summary>
    private bool IsClampedRound(int i) =>
        Anywhere("m:quill") < 0 && Anywhere("m:threaded") < 0 && Clauses(_items[i].Clause).Any(o => o.Is("t:steerer")) && ((_items[Math.Max(Link(i), 0)].Text is not ("schaft" or "schacht") && _items.Exists(o => o is { IsNumber: true, IsFraction: false, Unit: "" or "mm", Value: 31.8m })) || Clauses(_items[i].Clause).TakeWhile(o => o != _items[i]).Any(o => WordLists.ScanStemsClampedRound.Contains(o.Text)));

    private bool IsLengthOrBar(int i) =>
        _items[i] is { Value: 35, IsFraction: false, IsDiameter: false, Unit: "mm" } && !_items.Exists(o => o.Is("t:bar") || o.Is("t:clamp") || o.Is("t:diameter") || o.Is("m:oversize") || o.Text is "diametro" or "durchmesser" or "diameter" or "diametre")
        && !_items.Exists(o => o != _items[i] && o is { IsNumber: true, IsFraction: false, Unit: "" or "mm", Value: >= 30 and <= 150 });

    private void BareStem(List<int> bare)
    {
        foreach (int i in bare)
        {
            bool inch = _items[i].IsFraction || _items[i].IsInch || _items[i].Value == 1.125m;
            if ((inch && _items[i].Value == 1.125m) || _items[i].Value == 28.6m)
            {
                Fixing(i, inch);
            }
        }

        foreach (int i in bare)
        {
            if (_items[i].Used || _items.Exists(o => o != _items[i] && o is { IsNumber: true, Used: true } && o.Value == _items[i].Value))
            {
                continue;
            }

            bool inch = _items[i].IsFraction || _items[i].IsInch;
            string text = inch ? InchName(_items[i].Value) + " in" : _items[i].Text;
            bool bar = _fields["bar"].Read(text).Keys.Length == 1;
            bool foot = inch || _items[i].Value is 25.4m or 28.6m or 31.8m or 38.1m or 22.2m or 22 or 21.15m or 21.1m;
            if (inch && _items[i].Value is 1.25m or 1.5m && Values.ContainsKey("bar") && inch)
            {
                Fixing(i, inch);
            }
            else if (inch && _items[i].Value != 1.125m && _items[i].Value != 1m)
            {
                Several("bar", [text], i, i, "the figure can be the bar or the steerer");
            }
            else if (Values.ContainsKey("fixing") && bar)
            {
                Take("bar", text, i, i);
            }
            else if (Values.ContainsKey("bar") && !inch && _items[i].Value == 25.4m && Anywhere("t:steerer") < 0 && Anywhere("t:fork") < 0 && Anywhere("t:headset") < 0 && Anywhere("m:threadless") < 0)
            {
                // Another bar, or the clamp of a one-inch steerer.
                Several("bar", [text], i, i, "the figure can be another bar or the clamp round a one-inch steerer");
            }
            else if (Values.ContainsKey("bar") && foot)
            {
                Fixing(i, inch);
            }
            else if (bar && !foot && IsLengthOrBar(i))
            {
                Several("bar", [text], i, i, "the figure can be the bar or the length");
            }
            else if (bar && !foot)
            {
                Take("bar", text, i, i);
            }
            else if (bar || foot)
            {
                Several("bar", [text], i, i, "the figure can be the bar, a clamp round a steerer or a quill");
            }
        }
    }
}
