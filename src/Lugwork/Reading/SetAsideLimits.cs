namespace Lugwork.Reading;

/// <summary>What a comparison says that is denied: a limit, where it is not only what was not tried.</summary>
internal sealed partial class SetAside
{
    /// <summary>"Groter dan 180 gaat niet", "größer als 180 passt nicht": a comparison, its figure, and right behind that it does not go.</summary>
    private void MoreThanIsNot(int first, int last)
    {
        for (int i = first; i < last; i++)
        {
            int figure = i + 1 < last && _items[i + 1].Text is "di" or "de" or "que" or "als" or "dan" or "than" ? i + 2 : i + 1;
            bool over = _items[i].Is("m:over") || (_items[i].Is("m:min") && _items[i].IsFraction) || (_items[i].Is("m:max") && _items[i].Is("t:rotor") && figure == i + 2);
            if (!over || !_items[figure].IsNumber)
            {
                continue;
            }

            int at = figure + 1;
            while (at < last && (_items[at].IsNumber || (_items[at].Kind == SpecTokenKind.Sign && _items[at].Glued) || _items[at].Is("t:rotor") || _items[at].Is("m:rear") || _items[at].Is("m:front") || _items[at].Text is "de" or "di" or "mm" or "will" or "can" or "do"))
            {
                at++;
            }

            bool verbFirst = at < last && IsFitting(_items[at].Text) && Enumerable.Range(at + 1, Math.Min(3, last - at)).Any(j => _items[j].Is("m:not")) && !Numbered(at, Math.Min(last, at + 3));
            verbFirst |= at < last && _items[at].Text is "sollte" or "darf" or "soll" or "mag" or "moet" && Enumerable.Range(at + 1, Math.Min(4, last - at)).Any(j => _items[j].Is("m:not")) && !Numbered(at, last);
            bool notFirst = at < last && (_items[at].Is("m:not") || _items[at].Is("m:pas") || _items[at].Text is "ne" or "won" or "doesn") && Enumerable.Range(at + 1, Math.Min(4, last - at)).Any(j => IsFitting(_items[j].Text));
            if (verbFirst || notFirst)
            {
                if (!_items[i].Is("m:max"))
                {
                    Replace(i, "m:max");
                }

                for (int j = at; j <= last && j <= at + 4 && !_items[j].IsNumber && _items[j].Clause == _items[i].Clause; j++)
                {
                    if (_items[j].Is("m:not") || _items[j].Is("m:pas"))
                    {
                        Replace(j, "m:nothing");
                    }
                }
            }
        }
    }

    private static bool IsFitting(string word) =>
        WordLists.SetAsideIsFitting.Contains(word);

    /// <summary>"Do not fit rotors bigger than 203": a denied comparison is a limit, and nothing is denied.</summary>
    private void NotMoreThan(int first, int last)
    {
        Parted(first, last);
        if (!Compares(first, last) || IsOtherwise(first, last))
        {
            return;
        }

        MoreThanIsNot(first, last);
        bool stock = Any(first, last, "m:stock");
        for (int i = first; i < last; i++)
        {
            if (stock && _items[i].Is("m:max") && _items[i].Text[0] is 'n' or 'k')
            {
                // "No bigger rotor than 180 in stock".
                Replace(i, "m:over");
                continue;
            }

            if (IsCannot(i, last))
            {
                DeniedComparison(i, last);
                continue;
            }

            if (IsNeverDone(_items[i]))
            {
                Untried(i, last);
                continue;
            }

            bool duty = IsDuty(i + 1, last) || IsDuty(i + 2, last) || (i > first && IsDuty(i - 1, last));
            if (!_items[i].Is("m:not") && !(duty && _items[i].Is("m:pas")))
            {
                continue;
            }

            if (!duty && (stock || IsOnlyUntried(first, i, last)))
            {
                Untried(i, last);
                continue;
            }

            for (int j = i + 1; j <= last && j <= i + Scope && !_items[j].IsNumber; j++)
            {
                if ((duty || _items[j].Text == "mayor") && IsGreaterThan(j, last))
                {
                    Replace(i, "m:nothing");
                    break;
                }

                if (_items[j].Is("m:over") || (_items[j].Is("m:min") && j < last && (_items[j + 1].IsNumber || (j + 1 < last && WordLists.SetAsideNotMoreThan.Contains(_items[j + 1].Text) && _items[j + 2].IsNumber)) && _items[j].Text is not ("min" or "minimum" or "least" or "from" or "ab" or "desde" or "vanaf")))
                {
                    Replace(i, "m:nothing");
                    Replace(j, "m:max");
                    break;
                }
            }
        }
    }

    /// <summary>"No bigger than 180 without an adapter": with it there is more room. "Wider than 42 won't fit the fork": on a frame, of another part.</summary>
    private bool IsOtherwise(int first, int last)
    {
        for (int i = first + 2; i <= last; i++)
        {
            if ((_items[i].Is("t:fork") && _slot == Slot.Frame && Numbers(first, i) > 0 && _items[i - 1].Text is "the" or "my" or "a" or "in" or "der" or "die" or "de" or "la" or "nella") || (WordLists.EndCapPairsIsDenied.Contains(_items[i].Text) && _items[i].Text[0] is 'w' or 'o' or 's' or 'z' && Enumerable.Range(i, Math.Min(4, last - i + 1)).Any(j => _items[j].Is("m:adapt"))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A word of comparison or of a limit stands there; few clauses have one, and there is nothing to set aside in the others.</summary>
    private bool Compares(int first, int last)
    {
        for (int i = first; i <= last; i++)
        {
            if (!_items[i].Terms.IsEmpty && (_items[i].Is("m:over") || _items[i].Is("m:min") || _items[i].Is("m:max") || _items[i].Is("t:riderweight")))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Keine größere Scheibe als 180": the comparison in two pieces around its thing.</summary>
    private void Parted(int first, int last)
    {
        for (int i = first; i + 3 <= last; i++)
        {
            if (_items[i + 3].IsNumber && _items[i + 2].Text is "als" or "dan" or "than" && (_items[i].Terms.IsEmpty || _items[i].Is("m:over")) && WordLists.SetAsideGreater.Contains(_items[i].Text))
            {
                Replace(i, "m:nothing");
                Replace(i + 2, "m:over");
            }
        }
    }

    /// <summary>"Won't take", "can't run": what cannot be is a limit, "can't recall" and "won't ride" are none.</summary>
    private bool IsCannot(int i, int last)
    {
        int verb = _items[i].Text == "cannot" ? i + 1 : _items[i].Text is "won" or "can" && i + 3 < last && _items[i + 2].Text == "t" ? i + 3 : last;
        return verb < last && (WordLists.SetAsideCannot.Contains(_items[verb].Text) || (_items[i].Text != "won" && _items[verb].Text is "run" or "use" or "mount"));
    }

    private void DeniedComparison(int not, int last)
    {
        for (int j = not + 1; j < last && j <= not + Scope && !_items[j].IsNumber; j++)
        {
            if (_items[j].Is("m:over") || (_items[j].Is("m:min") && _items[j].Text is "over" or "above" && _items[j + 1].IsNumber))
            {
                Replace(j, "m:max");
                return;
            }
        }
    }

    /// <summary>"Have never run a rotor bigger than 180", "nie eine größere als 180 gefahren": what was not done so far is no limit.</summary>
    private bool IsOnlyUntried(int first, int not, int last)
    {
        for (int i = Math.Max(first, not - 4); i <= last && i <= not + Scope + 6; i++)
        {
            if (_items[i].Kind == SpecTokenKind.Word && (WordLists.SetAsideIsOnlyUntried.Contains(_items[i].Text) || (_items[i].Text == "will" && i > first && _items[i - 1].Text is "ich" or "man" or "wer") || TalkWords.Done.Contains(_items[i].Text))
                && !(_items[i].Text == "run" && !(i == not + 1 && _items[not].Text == "never")))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Mai montato", "never ridden" as one phrase.</summary>
    private static bool IsNeverDone(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && !item.Is("m:not") && item.Text is "mai" or "never" or "nie" or "nunca" or "jamais" or "nooit";

    /// <summary>A comparison behind what was not done is one with a figure that is no limit.</summary>
    private void Untried(int not, int last)
    {
        for (int j = not + 1; j <= last && j <= not + Scope && !_items[j].IsNumber; j++)
        {
            if (IsGreaterThan(j, last) || _items[j].Is("t:riderweight"))
            {
                Replace(j, "m:over");
                return;
            }
        }
    }

    /// <summary>"No debe", "non si può": what may not be is a limit, where "no he probado" is only what was not tried.</summary>
    private bool IsDuty(int i, int last) =>
        i <= last && _items[i].Kind == SpecTokenKind.Word && WordLists.SetAsideIsDuty.Contains(_items[i].Text);

    /// <summary>"Un plato mayor de 34", "un disco mayor que 180": the word for the largest, compared with the figure right behind.</summary>
    private bool IsGreaterThan(int j, int last) =>
        j + 2 <= last && _items[j].Is("m:max") && (_items[j].Text == "mayor" || _items[j].Is("t:rotor") || _items[j].Is("t:chainring")) && _items[j + 1].Text is "de" or "que" or "di" or "del" && _items[j + 2].IsNumber;
}
