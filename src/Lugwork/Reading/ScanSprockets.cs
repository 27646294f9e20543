namespace Lugwork.Reading;

/// <summary>Numbers of speeds that are told by the sprockets, by a German size, or behind the name of the part.</summary>
internal sealed partial class LineScan
{
    /// <summary>A word for more than one sprocket of a cassette: as many of them are as many speeds.</summary>
    internal static bool IsSprockets(string word) =>
        WordLists.ScanSprocketsIsSprockets.Contains(word);

    private static bool IsSprocket(string word) => IsSprockets(word) || WordLists.ScanSprocketsIsSprocket.Contains(word);

    /// <summary>"HG cassette, 7 sprockets", "number of sprockets: 11", "12er Kette", "cadena de 9": each is a number of speeds.</summary>
    private void NumberSprockets()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            SpecItem item = _items[i];
            if (item is not { IsNumber: true, Used: false, Unit: "", IsFraction: false, Value: >= 5 and <= 13 } || item.Value != decimal.Truncate(item.Value))
            {
                continue;
            }

            int behind = i + 1;
            behind += behind + 1 < _items.Count && _items[behind].IsSign('-') && _items[behind].Glued && _items[behind + 1].Glued ? 1 : 0;
            bool counted = item.UnitWord is not "er" && behind < _items.Count && _items[behind].Kind == SpecTokenKind.Word && (IsSprockets(_items[behind].Text) || IsPieces(behind)) && !IsForSprockets(i);
            if (counted || IsSizeOfDrive(i) || IsSpeedByWord(i) || (!Joins(i) && (IsBehindCount(i) || IsBehindName(i))))
            {
                item.Unit = "speed";
            }
        }
    }

    /// <summary>"Twelve cog block", "9-delige tandwielset", "9-teiliges Ritzelpaket": so many sprockets make the cassette up.</summary>
    private bool IsPieces(int word) =>
        _slot == Slot.Cassette && word + 1 < _items.Count && _items[word + 1].Clause == _items[word].Clause
        && ((_items[word].Text is "cog" or "sprocket" && (_items[word + 1].Text is "block" or "set" or "stack" or "cluster" || _items[word + 1].Is("t:cassette")))
            || (_items[word].Text is "delige" or "delig" or "teilige" or "teiliges" or "teiliger" && (_items[word + 1].Text is "tandwielset" or "tandwielpakket" or "ritzelblock" || (_items[word + 1].Is("t:cassette") && !IsSprocketOnly(word + 1)))));

    /// <summary>"Lockring for 11 sprockets": a thing of another name that goes with so many.</summary>
    private bool IsForSprockets(int i)
    {
        if (_slot != Slot.Cassette || i < 2 || !WordLists.ScanSprocketsIsForSprockets.Contains(_items[i - 1].Text))
        {
            return false;
        }

        for (int j = i - 2; j >= 0 && _items[j].Clause == _items[i].Clause && j > i - Reach; j--)
        {
            if (_items[j].Is("t:cassette") || _items[j].Is("t:freehub") || _items[j].Is("m:hg"))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>"12er Kette", "9er-Kassette": a German size before a part of the drive that is told by its speeds.</summary>
    private bool IsSizeOfDrive(int i)
    {
        // "Kassette 10er, 11-36".
        if (_items[i].End - _items[i].Start == _items[i].Text.Length + 2 && i > 0 && (_items[i - 1].Is("t:chain") || _items[i - 1].Is("t:rearmech") || (_items[i - 1].Is("t:cassette") && !IsSprocketOnly(i - 1))) && (i + 1 >= _items.Count || _items[i + 1] is { Kind: SpecTokenKind.Sign, IsFraction: true }))
        {
            return true;
        }

        // "6er, braun", "direct mount 10er, schwarz": the whole clause, or behind the mount.
        if (_items[i].End - _items[i].Start == _items[i].Text.Length + 2 && (_slot == Slot.Chain || _slot == Slot.RearDerailleur || _slot == Slot.RearShifter) && EndsClause(i)
            && (i == 0 || _items[i - 1] is { Kind: SpecTokenKind.Sign, IsFraction: true } || (_slot == Slot.RearDerailleur && _items[i - 1].Terms.Any(t => t.StartsWith("v:DerailleurMount=", StringComparison.Ordinal)))))
        {
            return true;
        }

        // "Mechanisches 10er mit Zug".
        if (_items[i].End - _items[i].Start == _items[i].Text.Length + 2 && _slot == Slot.RearDerailleur && (i == 0 || IsSignal(_items[i - 1]) || _items[i - 1].Is("m:electronic") || _items[i - 1].Text is "ein" or "eine") && (EndsClause(i) || _items[i + 1].Text == "mit"))
        {
            return true;
        }

        int behind = i + 1;
        behind += behind + 1 < _items.Count && _items[behind].IsSign('-') && _items[behind].Glued ? 1 : 0;
        return _items[i].End - _items[i].Start == _items[i].Text.Length + 2 && behind < _items.Count && _items[behind].Clause == _items[i].Clause && !IsSprocketOnly(behind)
            && (_items[behind].Is("t:chain") || _items[behind].Is("t:cassette") || _items[behind].Is("t:rearmech") || _items[behind].Is("t:shifter") || _items[behind].Text is "schaltung" or "wechsler" or "antrieb" or "gruppe" or "schaltgruppe" or "elektroschaltwerk" or "funkschaltwerk");
    }

    private bool IsSprocketOnly(int i) => _items[i].Is("t:cassette") && !_items[i].IsFraction && IsSprocket(_items[i].Text);

    /// <summary>"Anzahl Ritzel: 10", "nombre de pignons 11", "sprocket count = 12", "Ritzelzahl 9".</summary>
    private bool IsBehindCount(int i)
    {
        bool sprocket = false;
        bool count = false;
        for (int j = i - 1; j >= 0 && j >= i - 6 && !_items[j].IsNumber && !(_items[j].Kind == SpecTokenKind.Sign && j < i - 1 && _items[j].Text[0] is ',' or ';' or ':' or '|'); j--)
        {
            string word = _items[j].Text;
            if (_items[j].Kind == SpecTokenKind.Sign)
            {
                continue;
            }

            if (_items[j].Is("m:teethcount") || WordLists.ScanSprocketsIsBehindCount.Contains(word))
            {
                return false;
            }

            bool whole = word is "ritzelanzahl" or "ritzelzahl" || (word is "count" or "anzahl" && j > 0 && IsSprocket(_items[j - 1].Text));
            sprocket |= whole || IsSprockets(word) || WordLists.ScanSprocketsIsBehindCount2.Contains(word);

            // A number before the word for sprockets is of how many; behind it, of which.
            count |= whole || (sprocket && WordLists.ScanSprocketsIsBehindCount3.Contains(word));
            if (!sprocket)
            {
                return false;
            }
        }

        return sprocket && count;
    }

    /// <summary>"Cadena de 9", "dérailleur arrière de 11", "cambio da 10": the last word of its clause, the only figure of that, behind the name of the part. A single sprocket of eleven is one of eleven teeth.</summary>
    private bool IsBehindName(int i)
    {
        bool ends = i + 1 >= _items.Count || _items[i + 1] is { Kind: SpecTokenKind.Sign, IsFraction: true } || _items[i + 1].Terms.Any(t => t.StartsWith("v:ShiftSignal=", StringComparison.Ordinal));
        if (i < 2 || !ends || _items[i - 1].Text is not ("de" or "da") || _items.Exists(o => o.Unit == "speed"))
        {
            return false;
        }

        for (int j = i - 2; j >= 0 && j >= i - 6 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j--)
        {
            bool own = _slot == Slot.Chain ? _items[j].Is("t:chain") : _slot == Slot.Cassette ? _items[j].Is("t:cassette") && !IsSprocketOnly(j)
                : _slot == Slot.RearDerailleur && (_items[j].Is("t:rearmech") || _items[j].Text is "derailleur" or "descarrilador" or "tensor" or "desviador");
            if (own)
            {
                // "Tensor de cadena de 10": a thing of the part, and not the part.
                return !(j > 0 && _items[j - 1].Kind == SpecTokenKind.Word && WordLists.ScanSprocketsIsBehindName.Contains(_items[j - 1].Text));
            }

            if ((_items[j].IsTopic && !_items[j].Is("m:rear") && !_items[j].Is("n:colour")) || _items[j].Text is "de" or "da" or "di")
            {
                // "Cambio de pastillas de 10": a change of something.
                return false;
            }
        }

        return false;
    }

    /// <summary>"Copes with up to 42T", "schaltet bis 50 Zähne": the most teeth that a rear derailleur is said to go over, where nothing says what else they are of.</summary>
    private void MostTeethOfCage()
    {
        int at = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && _items[i] is { Unit: "teeth", IsFraction: false, Value: >= 23 and <= 60 } && !Joins(i))
            {
                if (at >= 0 || !HasMark(i, "m:max") || TopicOf(i) is not ("" or "t:rearmech"))
                {
                    return;
                }

                at = i;
            }
        }

        if (at >= 0 && !Values.ContainsKey("largestSprocket") && !_items.Exists(o => o.Is("t:chainring") || o.Is("t:crank") || o.Is("t:frontmech") || o.Is("t:difference") || o.Is("m:front") || o.Text is "total" or "totale" or "totaal" or "gesamt" or "wrap" or "verschil" or "ecart" || o.Text.StartsWith("dif", StringComparison.Ordinal)))
        {
            Take("largestSprocket", _items[at].Text, at, at);
        }
    }

    /// <summary>"Handles a 36 cog", "schafft hinten 36er Ritzel", "encaisse un pignon de 36": the one sprocket that a rear derailleur is said to be able to shift to.</summary>
    private void SprocketThatGoes()
    {
        if (Values.ContainsKey("largestSprocket"))
        {
            return;
        }

        for (int i = 1; i < _items.Count; i++)
        {
            if (!Free(i) || _items[i] is not { Unit: "" or "teeth", IsFraction: false, Places: 0, Value: >= 23 and <= 56 } || Joins(i) || LimitOf(i) == "m:min")
            {
                continue;
            }

            int behind = i + 1;
            behind += behind < _items.Count && _items[behind].Text is "big" or "large" or "low" or "rear" ? 1 : 0;
            bool sprocket = (behind < _items.Count && _items[behind].Clause == _items[i].Clause && IsSprocket(_items[behind].Text) && !_items[behind].Is("t:chainring"))
                || (i > 1 && _items[i - 1].Text is "de" or "da" or "di" or "van" or "von" or "mit" or "of" && (IsSprocket(_items[i - 2].Text) || _items[i - 2].Is("m:onesprocket") && _items[i - 2].Text is "un" or "ein" or "een" or "uno")) || (IsSprocket(_items[i - 1].Text) && _items[i - 1].Text is not ("sprockets" or "cogs"));
            if (sprocket && Clauses(_items[i].Clause).Any(o => IsAble(o.Text)) && Clauses(_items[i].Clause).All(o => !o.IsNumber || o == _items[i] || o.Unit == "speed") && !Clauses(_items[i].Clause).Any(o => o.Is("m:not") || o.Is("m:or") || o.Is("m:max") || o.Is("t:chainring") || o.Is("d:hedge") || o.Is("d:past") || WordLists.ScanSprocketsSprocketThatGoes.Contains(o.Text)) && !_items.Exists(o => o.Text is "vroeger" or "fruher" or "formerly" or "avant" or "antes" or "prima"))
            {
                Take("largestSprocket", _items[i].Text, i, i);
                return;
            }
        }
    }

    private static bool IsAble(string word) =>
        WordLists.ScanSprocketsIsAble.Contains(word);

    /// <summary>"Max. Differenz 16 Zähne", "maximaal verschil 16 tanden": what the rings differ by, in a clause without another figure.</summary>
    private void DifferenceByWord()
    {
        for (int i = 0; i < _items.Count && !Values.ContainsKey("difference"); i++)
        {
            bool teeth = Free(i) && _items[i] is { Unit: "teeth", IsFraction: false, Value: >= 6 and <= 26 } && !Joins(i);
            if (teeth && Clauses(_items[i].Clause).Any(o => o.Text is "verschil" or "ecart" or "differenz" or "difference" or "diferencia" or "differenza") && Clauses(_items[i].Clause).All(o => !o.IsNumber || o == _items[i]))
            {
                Take("difference", _items[i].Text, i, i);
            }
        }
    }

    /// <summary>"1/8 chain for fixed or singlespeed": a word between two uses that have the same chain offers nothing.</summary>
    private void JoinUses()
    {
        for (int i = 1; i + 1 < _items.Count; i++)
        {
            if (_items[i].Is("m:or") && IsSingleUse(_items[i - 1]) && (IsSingleUse(_items[i + 1]) || (i + 2 < _items.Count && _items[i + 1].Kind == SpecTokenKind.Word && _items[i + 1].Text.Length <= 4 && IsSingleUse(_items[i + 2]))))
            {
                _joined.Add(i);
            }
        }
    }

    private static bool IsSingleUse(SpecItem item) =>
        item.Is("m:single") || item.Is("m:track") || WordLists.ScanSprocketsIsSingleUse.Contains(item.Text);
}
