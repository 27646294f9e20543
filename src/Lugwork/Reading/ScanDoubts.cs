namespace Lugwork.Reading;

/// <summary>Looks at a line once more after it was read: words that take the certainty out of what stands beside them make the line ambiguous.</summary>
internal sealed partial class LineScan
{
    /// <summary>In a line of more items than this, a word of doubt counts only close to a value.</summary>
    private const int ShortLine = 60;

    /// <summary>So much of a clause is looked at; longer ones are no clauses of a sheet.</summary>
    private const int LongestClause = 200;

    /// <summary>Words between the members of one list that all say the same: "6, 7 or 8 speeds".</summary>
    private readonly HashSet<int> _joined = [];

    /// <summary>Clauses in which something was read.</summary>
    private HashSet<int> _read = [];

    /// <summary>Everything in the line that could change what was read.</summary>
    private void Audit()
    {
        if (Values.Count == 0 || Doubts.Count > 0)
        {
            return;
        }

        if (_slot == Slot.Fork && Values.ContainsKey("travel") && Anywhere("m:rigid") is >= 0 and int rigid)
        {
            Refuse("travel", rigid, rigid, "a rigid fork has no travel", LineDoubtKind.Conflict);
            return;
        }

        _read = [];
        foreach (LineFinding value in Values.Values)
        {
            for (int clause = _items[value.First].Clause; clause <= _items[value.Last].Clause; clause++)
            {
                _read.Add(clause);
            }
        }

        DoubtfulWords();
        Denied();
        Limits();
        OtherPart();
        LeftFigures();
        DoubtfulFigures();
        if (Doubts.Count == 0)
        {
            OtherMeanings();
        }
    }

    private bool ReadAround(int clause, int clauses)
    {
        for (int k = clause - clauses; k <= clause + clauses; k++)
        {
            if (_read.Contains(k))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A hedge, a condition, an option, an adapter, an alternative, another thing.</summary>
    private void DoubtfulWords()
    {
        bool isShort = _items.Count <= ShortLine;
        for (int i = 0; i < _items.Count && Doubts.Count == 0; i++)
        {
            SpecItem item = _items[i];
            if (item.Kind == SpecTokenKind.Sign)
            {
                if ((item.Text[0] == '\u00B1' && i + 1 < _items.Count && _items[i + 1] is { Unit: "deg", Used: false }) || IsQuestion(i) || IsOrnament(i) || IsAskedOfBuyer(i) || (item.Text[0] == '\u00B1' && Values.TryGetValue("rear", out LineFinding? bent) && bent.Key == "R145-flex" && i + 1 < _items.Count && _items[i + 1].Value == 3))
                {
                    continue;
                }

                if ((item.Text[0] is '?' or '~' or '\u2248' or '\u00B1' && ReadAround(item.Clause, 1)) || (item.Text[0] is '<' or '>' or '\u2264' or '\u2265' && i + 1 < _items.Count && _items[i + 1].IsNumber && !(i > 0 && _items[i - 1].IsNumber)))
                {
                    Several("", [], i, i, "a sign makes the figure doubtful");
                }

                if ((item.Text[0] == '\u2717' && ReadAround(item.Clause, 1)) || (item.Text[0] == '-' && i > 1 && _items[i - 1].Kind == SpecTokenKind.Sign && _items[i - 1].Text[0] is ':' or '=' && IsFlag(i)))
                {
                    Several("", [], i, i, "a sign can say that it is not there");
                }

                if (item.Text[0] == '+' && IsOrMore(i))
                {
                    Several("", [], i, i, "a sign makes the figure doubtful");
                }

                continue;
            }

            if ((item is { IsNumber: true, Value: 0, Unit: "", Used: false } || (item.Text == "n" && (item.Terms.IsEmpty || item.Is("m:not")) && i > 0 && _items[i - 1].Kind == SpecTokenKind.Sign)) && IsFlag(i))
            {
                Several("", [], i, i, "what stands behind the name can say that it is not there");
                continue;
            }

            if ((item.Text == "of" && i > 0 && _items[i - 1].Text == "out" && i + 1 < _items.Count && _items[i + 1].IsNumber) || (item.IsFraction && item.Is("t:spacing") && i > 0 && WordLists.ScanDoubtsNotYet.Contains(_items[i - 1].Text)) || (item.IsFraction && item.Is("t:spacing") && item.Text is "cold" or "coldset" or "bases" or "ecarte" or "ecartee" or "ecartees" && Clauses(item.Clause).Any(o => WordLists.ScanDoubtsWished.Contains(o.Text)))
                || (i + 2 < _items.Count && _items[i + 2].IsNumber && _items[i + 1].Text is "a" or "to" or "auf" or "hasta" or "fino" or "tot" or "naar" && item.Is("v:RearTriangle=opens")))
            {
                // "Out of 27.2 posts", "could be cold set to 130", "se puede abrir a 130".
                Several("", [], i, i, "a word makes it doubtful");
                continue;
            }

            string? reason = item.Terms.IsEmpty ? null : Reason(item, i, isShort);
            if (reason is not null)
            {
                Several("", [], i, i, reason);
            }
        }
    }

    /// <summary>"27.2+": that size or more; "29+" is a size of tyre.</summary>
    private bool IsOrMore(int i) =>
        _items[i].Glued && i > 0 && _items[i - 1] is { IsNumber: true, Used: true, Value: not (26 or 27.5m or 29) } && (i + 1 == _items.Count || !_items[i + 1].Glued || _items[i + 1].Kind == SpecTokenKind.Sign);

    /// <summary>"UDH: 0", "UDH: N": an export that says so what there is not.</summary>
    private bool IsFlag(int i) =>
        i > 0 && (i + 1 == _items.Count || _items[i + 1].Kind == SpecTokenKind.Sign) && _items[_items[i - 1].Kind == SpecTokenKind.Sign && i > 1 ? i - 2 : i - 1] is { Kind: SpecTokenKind.Word, Used: true };

    /// <summary>"Nur mit DOT 4 entlüften", "uniquement avec de l'huile minérale": the one fluid that goes in.</summary>
    private bool IsOnlyFluid(SpecItem item, int i) =>
        item.IsFraction && WordLists.ScanCassettesExcludesOthers.Contains(item.Text) && Enumerable.Range(i + 1, 3).Any(j => j < _items.Count && _items[j].Clause == item.Clause && _items[j].Terms.Any(t => t.StartsWith("v:BrakeFluid=", StringComparison.Ordinal)));

    /// <summary>"Compact-ish double": the word makes a name without an interface doubtful, and no figure.</summary>
    private bool IsLikeName(SpecItem item, int i) =>
        item is { Text: "ish", Glued: true } && i > 1 && _items[i - 1].IsSign('-') && _items[i - 2] is { Kind: SpecTokenKind.Word, Used: false } name && !name.Terms.Any(t => t[0] is 'v' or 'm' or 't');

    private string? Reason(SpecItem item, int i, bool isShort)
    {
        int around = isShort ? 2 : 1;
        if (_caps.Contains(i))
        {
            return null;
        }

        if (item.Is("d:hedge") || item.Is("d:condition"))
        {
            if (IsOnlyFluid(item, i) || IsLikeName(item, i))
            {
                return null;
            }

            // A length may be measured; a size by its name may not.
            bool measured = IsMeasureWord(item.Text) && Values.Values.All(v => _fields[v.Field].Type.Name is nameof(Dimension) or nameof(Hubs.HubStandard) || (IsMeasuredTube(v) && IsPlain() && Anywhere("t:post") < 0) || (isShort && Math.Abs(_items[v.First].Clause - item.Clause) > 1 && Math.Abs(_items[v.Last].Clause - item.Clause) > 1));
            measured |= IsMeasureWord(item.Text) && (IsOfMeasure(i) || IsMeasuredAndKnown(i));
            if ((item.Text is "style" or "look" && i + 1 < _items.Count && _items[i + 1].IsSign(':')) || (item.Text == "check" && i + 1 < _items.Count && _items[i + 1].Text is "your" or "fit" or "compatibility"))
            {
                return null;
            }

            return ReadAround(item.Clause, isShort ? 1 : 0) && !measured && !IsTurnOfPlate(i) ? "a word makes it doubtful" : null;
        }

        // Of the value, wherever it stands near: "12x148. I have not measured it."
        if (item.Is("d:unsure"))
        {
            return ReadAround(item.Clause, 3) ? "a word makes it doubtful" : null;
        }

        if (item.Is("d:refused"))
        {
            return ReadAround(item.Clause, isShort ? 1 : 0) ? "the line forbids something" : null;
        }

        if (item.Is("d:gone") || item.Is("m:removed"))
        {
            return IsGone(i) ? "what is named is no longer there" : null;
        }

        if (item.Is("d:loose"))
        {
            return Values.Values.Any(IsBore) ? "a post that was tried is no bore" : null;
        }

        // A code of a cup says which kind of integrated it is.
        if (item.Is("d:cups"))
        {
            return ReadAround(item.Clause, 1) && !Values.ContainsKey("upperCup") && !Values.ContainsKey("lowerCup") && !Values.ContainsKey("headTubeUpper") && !Values.ContainsKey("headTubeLower") ? "a word makes it doubtful" : null;
        }

        if (item.Is("d:option"))
        {
            return ReadAround(item.Clause, isShort ? 1 : 0) && !Negated(i) && !OfClauseWithoutValue(item.Clause) && !IsOfHanger(item) ? "it is said to be one of several" : null;
        }

        if (item.Is("m:adapt"))
        {
            return ReadAround(item.Clause, around) && !Negated(i) && _slot != Slot.ShellAdapter && !IsReducedRace(i) && !IsAdapterOfCaliper(i) ? "an adapter is named, and the figure can be of either side" : null;
        }

        if (item.Is("d:kit"))
        {
            return OnlyWordsRead(item.Clause) && !IsOfUnknown(i) && !IsKitOfBody(i) && !(item.Text is "comes" && Values.TryGetValue("body", out LineFinding? body) && _items[body.First].IsFraction) && !(Values.TryGetValue("hanger", out LineFinding? hanger) && hanger.Key != "no-hanger" && Values.Count == 1) && !Values.ContainsKey("lockring") ? "what is named can be supplied with the part instead of a property of it" : null;
        }

        if (item.Is("m:or"))
        {
            if (_joined.Contains(i) || (item.Text == "of" && i + 1 < _items.Count && _items[i + 1].Text is "the" or "a" or "this"))
            {
                return null;
            }

            // "150 mm of travel": what the figure is of.
            if (item.Text == "of" && i > 0 && i + 1 < _items.Count && _items[i - 1].IsNumber && (_items[i + 1].IsTopic || _items[i + 1].Is("m:spacers")))
            {
                return null;
            }

            // "A rotor of 203 mm", "car valve of 40": no Dutch "or", which has a figure on both its sides.
            if (item.Text == "of" && IsOfFigure(i))
            {
                return null;
            }

            if (item.Text == "of" && i > 0 && WordLists.ScanDoubtsReason.Contains(_items[i - 1].Text))
            {
                return null;
            }

            // "Bore of the seat tube", "or it hits the stay": the English word, and what happens otherwise.
            if ((item.Text == "of" && i > 0 && i + 1 < _items.Count && (_items[i - 1].Is("m:inside") || _items[i - 1].Is("m:outside")) && _items[i + 1].IsTopic) || (i + 1 < _items.Count && OpensConsequence(i + 1)))
            {
                return null;
            }

            bool opens = i == 0 || _items[i - 1].Clause != item.Clause || _items[i - 1].Kind == SpecTokenKind.Sign;
            return _read.Contains(item.Clause) || (opens && _read.Contains(item.Clause - 1)) ? "the line offers several" : null;
        }

        return null;
    }

    /// <summary>"IS tabs at the back, adapter needed for the caliper": tabs with their screws across take every caliper of today with an adapter, and stay what they are.</summary>
    private bool IsAdapterOfCaliper(int i)
    {
        if (_slot != Slot.Frame && _slot != Slot.Fork || FigureCount > 1 || Values.Count != 1 || !Values.Values.All(v => v.Key is "IS-rear" or "IS-front" && _items[v.First].Clause < _items[i].Clause))
        {
            return false;
        }

        return Clauses(_items[i].Clause).Any(o => WordLists.ScanDoubtsIsAdapterOfCaliper.Contains(o.Text) || o.Is("m:needs"));
    }

    private static bool IsMeasureWord(string word) => WordLists.ScanDoubtsIsMeasureWord.Contains(word);

    /// <summary>"BB30 68 mm, bore measured 41.96 mm": the figure that the word is closest to is a bare length, and one that was named otherwise than by it.</summary>
    private bool IsOfMeasure(int i)
    {
        int near = -1;
        for (int step = 1; step <= Reach && near < 0; step++)
        {
            near = i + step < _items.Count && _items[i + step].IsNumber && _items[i + step].Clause - _items[i].Clause <= 1 ? i + step : i - step >= 0 && _items[i - step].IsNumber && _items[i - step].Clause == _items[i].Clause ? i - step : -1;
        }

        if (near == i + 1 && Values.TryGetValue("length", out LineFinding? length) && length.First <= near && near <= length.Last && _fields["length"].Type.Name == nameof(Dimension))
        {
            // "M12x1.5, measures 125 mm overall".
            return true;
        }

        if (near >= 0 && IsMeasuredBeside(i, near))
        {
            return true;
        }

        if (near > 0 && !_items[near - 1].IsSign('x') && Values.Values.Any(v => v.First <= near && near <= v.Last && _fields[v.Field].Type.Name == nameof(Dimension)))
        {
            // "160 mm, Center Lock, 1,8 mm dick gemessen".
            return true;
        }

        return near >= 0 && Values.TryGetValue("shellBore", out LineFinding? bore) && bore.First <= near && near <= bore.Last && Values.Values.All(v => v == bore || (_fields[v.Field].Type.Name is "Shell" or nameof(Dimension)));
    }

    /// <summary>"Felge 559, innen 24 mm gemessen", "BSA, Breite 68, zweimal gemessen", "the bolt circle measures 110": what was measured is a bare length, the width of a shell whose family is said or a bolt circle, and no size by its name stands beside the word.</summary>
    private bool IsMeasuredBeside(int i, int near)
    {
        bool of = false;
        foreach (LineFinding value in Values.Values)
        {
            string type = _fields[value.Field].Type.Name;
            bool here = value.First <= near && near <= value.Last;
            bool width = type is "Shell" && (_items[near].Value is 68 or 70 or 73 or 83 or 86.5m or 89.5m or 92 or 100) && Clauses(_items[near].Clause).Any(o => o.Is("n:width") || o.Text is "across" or "shell" or "gehause" or "breite" || o.Is("t:bb"));
            bool circle = type is "BoltCircle" && Clause(near, "t:bcd");
            bool length = type is nameof(Dimension) or nameof(Hubs.HubStandard);
            if (here && !(width || circle || length))
            {
                return false;
            }

            of |= here;
            if (!here && !length && (_items[value.First].Clause == _items[i].Clause || _items[value.Last].Clause == _items[i].Clause))
            {
                return false;
            }
        }

        return of;
    }

    /// <summary>"Inkl. Rechnung": what comes with it is the word behind, which is of no part, and nothing follows.</summary>
    private bool IsOfUnknown(int i)
    {
        int at = i + 1 < _items.Count && _items[i + 1].IsSign('.') && _items[i + 1].Glued ? i + 2 : i + 1;
        bool before = WordLists.ScanDoubtsIsOfUnknown.Contains(_items[i].Text);
        return before && at < _items.Count && _items[at] is { Kind: SpecTokenKind.Word, Terms.IsEmpty: true } && at + 1 >= _items.Count && Values.Values.All(v => v.Last < i);
    }

    /// <summary>"Wechselbares Schaltauge": a hanger that comes off is one of no several.</summary>
    private bool IsOfHanger(SpecItem item) =>
        Values.ContainsKey("hanger") && Values.Count == 1
        && WordLists.ScanDoubtsIsOfHanger.Contains(item.Text);

    /// <summary>A pronoun, and behind it in its clause neither a figure nor a word for a value: no alternative.</summary>
    private bool OpensConsequence(int from)
    {
        if (!WordLists.ScanDoubtsOpensConsequence.Contains(_items[from].Text))
        {
            return false;
        }

        for (int j = from; j < _items.Count && j < from + LongestClause && _items[j].Clause == _items[from].Clause; j++)
        {
            if (_items[j].IsNumber || (!_items[j].Terms.IsEmpty && _items[j].Terms[0][0] == 'v'))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Marks of quotations around a size, "~~ used ~~", the end of a tag: signs that stand around words and compare nothing.</summary>
    private bool IsOrnament(int i)
    {
        if (_items[i].Text[0] is not ('<' or '>' or '~'))
        {
            return false;
        }

        char sign = _items[i].Text[0];
        if (sign == '~' && i > 0 && i + 1 < _items.Count && _items[i - 1].IsNumber && _items[i + 1].Text is "is" or "zs" or "ec")
        {
            // "IS42/28.6~IS49/37": from the upper cup to the lower.
            return true;
        }

        bool again = (i + 1 < _items.Count && _items[i + 1].IsSign(sign) && _items[i + 1].Glued) || (i > 0 && _items[i - 1].IsSign(sign) && _items[i].Glued);
        return (again && !ComparesFigure(i)) || (sign == '>' && i > 1 && _items[i].Glued && _items[i - 1].Kind == SpecTokenKind.Word && (_items[i - 2].IsSign('<') || _items[i - 2].IsSign('/')) && _items[i - 1].Glued);
    }

    /// <summary>"Bars? 31.8 only": a question behind a word, before which nothing was read, and its answer.</summary>
    private bool IsQuestion(int i)
    {
        if (i == 0 || _items[i - 1].Kind != SpecTokenKind.Word || i + 1 >= _items.Count || _items[i + 1].Glued || _items[i].Text[0] != '?')
        {
            return false;
        }

        for (int j = 0; j < i; j++)
        {
            if (_items[j].IsNumber || (!_items[j].Terms.IsEmpty && _items[j].Terms[0][0] == 'v') || _items[j].IsSign('?'))
            {
                return false;
            }
        }

        return !_items.Exists(o => o != _items[i] && o.IsSign('?'));
    }

    /// <summary>"..., anyone got a wheel?": the clause asks for something, and has no figure and no value.</summary>
    private bool IsAskedOfBuyer(int i)
    {
        if (_items[i].Text[0] != '?' || _read.Contains(_items[i].Clause))
        {
            return false;
        }

        bool asks = false;
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item.IsNumber || item.Used || (!item.Terms.IsEmpty && item.Terms[0][0] is 'v' or 'd'))
            {
                return false;
            }

            asks |= WordLists.ScanDoubtsIsAskedOfBuyer.Contains(item.Text);
        }

        return asks;
    }

    /// <summary>A value was read in the clause, and from words without a figure.</summary>
    private bool OnlyWordsRead(int clause)
    {
        foreach (LineFinding value in Values.Values)
        {
            bool figure = _items[value.First].Clause != clause;
            for (int i = value.First; i <= value.Last && !figure; i++)
            {
                figure = _items[i].IsNumber;
            }

            if (!figure)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Corps Micro Spline fourni", "núcleo XD incluido": a wheel that comes with a freehub body, and the body is named as one.</summary>
    private bool IsKitOfBody(int i)
    {
        bool named = WordLists.ScanDoubtsIsKitOfBody.Contains(_items[i].Text) && Values.TryGetValue("body", out LineFinding? body)
            && _items[body.First].Clause == _items[i].Clause && _items[body.First].Text is "corps" or "nucleo" or "cuerpo" or "corpetto" or "cassettebody" && !_items.Exists(o => o.Is("d:extra") || o.Is("d:option") || o.Is("m:adapt"));
        return named || (_items[i].Text is "comes" or "supplied" or "livre" or "fourni" && Clause(i, "t:freehub"));
    }
}
