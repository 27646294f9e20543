namespace Lugwork.Reading;

/// <summary>Looks once more at values whose everyday words have another meaning beside certain words: a rise and no clamp, a drop and no shell, the inside of a post and not its size.</summary>
internal sealed partial class LineScan
{
    private void OtherMeanings()
    {
        for (int i = 1; i < _items.Count; i++)
        {
            // "30.9 pcs", "12x148 stk": no count is written so.
            if (_items[i].IsNumber && WordLists.ScanOtherMeaningsOtherMeanings.Contains(_items[i].UnitWord) && (_items[i] is { Places: 1, Value: > 6 and < 60 } || _items[i].IsFraction || (i > 1 && (_items[i - 1].IsSign('x') || _items[i - 1].IsSign('-')) && _items[i - 2].IsNumber)))
            {
                Several("", [], i, i, "a count that is written like a size");
                return;
            }
        }

        if (Values.TryGetValue("frontDerailleurMount", out LineFinding? brazed) && IsBrazedOther(brazed))
        {
            Values.Remove("frontDerailleurMount");
        }

        if (Values.TryGetValue("cableGuides", out LineFinding? stops) && IsPlaceOfDamage(stops))
        {
            Values.Remove("cableGuides");
        }

        foreach (LineFinding value in Values.Values)
        {
            if (value.Field is "shell" or "family" && IsSpindleOfBracket(value))
            {
                Refuse(value.Field, value.First, value.Last, "the figure can be the length of a spindle", LineDoubtKind.Conflict);
                return;
            }

            string? reason = OtherMeaning(value);
            if (reason is not null)
            {
                Several(value.Field, [value.Key], value.First, value.Last, reason);
                return;
            }
        }
    }

    private string? OtherMeaning(LineFinding value) => value.Field switch
    {
        "shell" when IsDropOfBracket(value) => "the figure can be how high or low the bottom bracket is",
        "shell" when IsSizeOfBicycle(value) => "the word can be the size of the bicycle",
        "shell" when IsBothOfDirect(value) => "both kinds of the shell are named",
        "shell" when IsOfRebuilding(value) => "the word can say where the part comes from",
        "rearAxleLength" or "frontAxleLength" when _items.Exists(IsLocknut) || _items.Exists(o => o.Text is "over" && o.Is("t:spacing")) => "a length over locknuts is the width of the hub",
        "rearBrake" or "frontBrake" when IsMountOfLackingPart(value) => "what is named can be a part that does not come with it",
        "front" when IsTravelOnAxle(value) => "the first figure can be the travel",
        "largestRearRotor" when IsRotorBesideFork(value) => "the rotor can be the one of the fork",
        "seatTubeOutside" when Clauses(_items[value.Last].Clause).Any(o => WordLists.ScanOtherMeaningsOtherMeaning.Contains(o.Text)) => "the figure can be another tube's",
        "body" when value.First > 0 && (_items[value.First - 1].Is("m:swap") || (value.First > 1 && SetAside.IsFor(_items[value.First - 1]) && _items[value.First - 2].Is("m:lockringthread"))) => "the body can be one that goes on, or one that a thing is for",
        "seatTube" when _slot == Slot.Frame && HasSleeveBehind(value) => "a sleeve is named, and the figure can be of either side",
        "frontLips" when IsLipsOfOther(value) => "the lips can be of another fork, or may change",
        "crownSeat" when IsBroughtTo(value.Last) => "one size is brought to another",
        "crownSeat" when Clauses(_items[value.Last].Clause).Any(o => o.Text is "too" or "zu" or "trop" or "demasiado" or "troppo" || (WordLists.ScanSteeringIsOfTurnedCrown.Contains(o.Text) && Clauses(o.Clause).Any(p => p.Text is not "to" && WordLists.ScanSteeringIsCutThatMayCome.Contains(p.Text)))) => "the seat may come to this size, or a race was tried",
        "bar" when _slot == Slot.Stem && IsLengthOrBar(value.First) => "the figure can be the bar or the length",
        "travel" when Clauses(_items[value.First].Clause).Any(o => WordLists.ScanOtherMeaningsOtherMeaning2.Contains(o.Text)) => "the travel can be a part of the whole",
        "travel" when value.First > 1 && SetAside.IsFor(_items[value.First - 1]) => "the fork can be one that a thing is for",
        "hub" or "front" or "rear" when IsSetEqualToOther(value) => "the line says two widths",
        "hub" or "front" or "rear" when IsHubOfOther(value) => "the word beside the width can mean another thing",
        "innerWidth" when IsInsideOfOther(value) => "the inside can be of another thing",
        "frontBrake" when _slot == Slot.Fork && value.Last + 1 == _items.Count - 1 && _items[^1].Is("t:caliper") => "the mount can be the one of a caliper",
        "frontBrake" when _slot == Slot.Fork && value.First + 1 < value.Last && _items[value.First + 1].Is("t:caliper") && _items[value.First + 2].IsNumber => "the mount can be the one of a caliper",
        "spindle" when value.Key == "square-JIS" && HasOtherTaper() => "both tapers are named",
        "boltCircle" when Anywhere("d:gone") >= 0 => "the bolts are no longer there",
        "steererShape" when Anywhere("t:steerer") < 0 && _items.Exists(o => o.Kind == SpecTokenKind.Word && WordLists.ScanOtherMeaningsOtherMeaning3.Contains(o.Text)) => "what tapers can be the legs",
        "steerer" when value.First > 0 && _items[value.First - 1].Is("n:bottle") => "the thread can be one of eyelets",
        "speeds" when value.Last + 2 < _items.Count && _items[value.Last].UnitWord == "pasos" && _items[value.Last + 1].Text == "de" => "the steps can be of another thing",
        "clamp" or "bar" when IsRise(value) => "the figure can be the rise",
        "diameter" when IsInsideOfPost(value) => "the figure can be the inside of the post",
        "steererLength" when Clauses(_items[value.First].Clause).Any(o => WordLists.ScanOtherMeaningsOtherMeaning4.Contains(o.Text)) => "the steerer can be brought to this length, and need not have it",
        "crankLength" when HasOtherLength(value) => "the line has two lengths",
        "mass" when Anywhere("t:loadlimit") >= 0 || Anywhere("t:limit") >= 0 || Clauses(_items[value.First].Clause).Any(o => o.Text is "limit" or "limite" or "limiet") => "a limit is no mass",
        "signal" or "mount" or "steererKind" or "actuation" or "hubBrake" or "hold" or "bead" when IsWordOfOther(value) => "an unknown word beside it can change what it says",
        _ => null,
    };

    /// <summary>"Brazed-on: canti bosses": what is brazed on is named behind the word, and is no derailleur.</summary>
    private bool IsBrazedOther(LineFinding value)
    {
        if (value.Key != "braze-on" || Anywhere("t:frontmech") >= 0)
        {
            return false;
        }

        int next = value.Last + 1;
        next += next < _items.Count && _items[next].Kind == SpecTokenKind.Sign ? 1 : 0;
        return next < _items.Count && Values.Values.Any(v => v.Field is "rearBosses" or "frontBosses" or "cableGuides" && v.First <= next && next <= v.Last);
    }

    /// <summary>"A small chip by the cable stop": where it is, beside which a thing of the kind is one of several.</summary>
    private bool IsPlaceOfDamage(LineFinding value) =>
        value.First > 1 && (_items[value.First - 1].Text is "the" or "one" or "a" || _items[value.First - 1].Is("m:nothing")) && WordLists.ScanOtherMeaningsIsPlaceOfDamage.Contains(_items[value.First - 2].Text);

    /// <summary>"JIS / ISO": the word of the other square taper, which is no number of a standard and is not denied.</summary>
    private bool HasOtherTaper()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (_items[i].Text == "iso" && !(i + 1 < _items.Count && _items[i + 1].IsNumber && _items[i + 1].Value > 1000) && !(i > 0 && (_items[i - 1].Is("m:not") || _items[i - 1].Is("m:pas") || WordLists.ScanOtherMeaningsHasOtherTaper.Contains(_items[i - 1].Text))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"26.4 to 27", "26,4 auf 27": from one size to another.</summary>
    private bool IsBroughtTo(int i) =>
        i + 2 < _items.Count && _items[i + 2].IsNumber && _items[i + 1].Text is "to" or "auf" or "a" or "op" or "naar";

    /// <summary>A second length that a crank can have.</summary>
    private bool HasOtherLength(LineFinding value)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && _items[i] is { Unit: "" or "mm", IsFraction: false, Value: >= 160 and <= 180 } && _items[i].Value != _items[value.Last].Value)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"BB 86 mm drop", "bb 92 height 335", "BB 92 cm": the name of a shell that is a word and a figure.</summary>
    private bool IsDropOfBracket(LineFinding value)
    {
        int next = value.Last + 1;
        bool name = value.Key.StartsWith("PF41", StringComparison.Ordinal) || (next < _items.Count && _items[next].Text == "drop" && (next + 1 == _items.Count || _items[next + 1].Kind != SpecTokenKind.Word));
        return name && next < _items.Count && _items[next].Clause == _items[value.Last].Clause && _items[next].Kind == SpecTokenKind.Word
            && (_items[next].Text is "cm" || IsHeightWord(_items[next].Text) || (_items[next].Text == "mm" && next + 1 < _items.Count && IsHeightWord(_items[next + 1].Text)));
    }

    /// <summary>"BB 107 mm", "bb 121 spindle": a figure that spindles are sold by as well, apart from the letters.</summary>
    private bool IsSpindleOfBracket(LineFinding value) =>
        _items[value.First] is { Text: "bb" } name && name.Terms.FirstOrDefault(t => t is "v:Shell=PF41-104.5" or "v:Shell=PF41-107" or "v:Shell=PF41-121" or "v:Shell=PF41-132") is { } shell
        && name.End - name.Start == shell.Length - "v:Shell=PF".Length && !_items.Exists(o => o.Text.StartsWith("press", StringComparison.Ordinal));

    /// <summary>"Mid size BMX frame": how large the bicycle is, and no bracket.</summary>
    private bool IsSizeOfBicycle(LineFinding value) =>
        value.Key.StartsWith("Mid", StringComparison.Ordinal) && value.Last + 1 < _items.Count && (_items[value.Last + 1].Is("t:frame") || _items[value.Last + 1].Is("t:fork") || _items[value.Last + 1].Text is "bike" or "bicycle" or "rad" or "velo" or "bici" or "fiets");

    /// <summary>"BBright, Direktversion oder Pressfit".</summary>
    private bool IsBothOfDirect(LineFinding value) =>
        value.Key.StartsWith("BBright", StringComparison.Ordinal) && _items.Exists(o => o.Text.StartsWith("dire", StringComparison.Ordinal) && o.Terms.IsEmpty) && _items.Exists(o => o.Text.StartsWith("press", StringComparison.Ordinal));

    private static bool IsHeightWord(string word) =>
        WordLists.ScanOtherMeaningsIsHeightWord.Contains(word);

    /// <summary>"Rebuilt with american bottom bracket 68": the name of a place, and a word for the work of a mechanic.</summary>
    private bool IsOfRebuilding(LineFinding value) =>
        value.Key.StartsWith("American", StringComparison.Ordinal)
        && _items.Exists(o => WordLists.ScanOtherMeaningsIsOfRebuilding.Contains(o.Text));

    private static bool IsLocknut(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanOtherMeaningsIsLocknut.Contains(item.Text);

    /// <summary>"Soporte pinza PM 160 no incluido": a mount of a frame or fork is part of it.</summary>
    private bool IsMountOfLackingPart(LineFinding value) =>
        (_slot == Slot.Frame || _slot == Slot.Fork) && _denied.Exists(d => d.Is("d:kit") && d.Clause == _items[value.Last].Clause);

    /// <summary>"Fork 100 mm on 15 mm axle", "horquilla 100 mm eje 15": the figure with its unit right behind the fork, and the axle by a word of its own.</summary>
    private bool IsTravelOnAxle(LineFinding value)
    {
        int width = value.First;
        return _slot == Slot.Fork && width > 0 && width < value.Last && _items[width - (_items[width - 1].Kind == SpecTokenKind.Sign && width > 1 ? 2 : 1)].Is("t:fork") && _items[width] is { IsNumber: true, Unit: "mm" } && width + 1 < _items.Count
            && (_items[width + 1].IsSign('x') ? _items[width + 1].End - _items[width + 1].Start > 1 : !Links(_items[width + 1])) && Anywhere("t:spacing") < 0 && Anywhere("n:width") < 0 && Anywhere("t:hub") < 0 && Anywhere("t:travel") < 0 && Anywhere("m:boost") < 0;
    }

    /// <summary>"Single crown fork, up to 180 disc": nothing of the line is of the rear.</summary>
    private bool IsRotorBesideFork(LineFinding value)
    {
        int from = _items[value.First].Clause - 1;
        return _slot == Slot.Frame && Anywhere("m:rear") < 0 && (_forkSetAside || _items.Exists(o => o.Clause >= from && o.Clause <= _items[value.First].Clause && o.Start < value.Start && (o.Is("t:fork") || o.Terms.Any(t => t.StartsWith("v:CrownsAllowed=", StringComparison.Ordinal) || t.StartsWith("v:CrownType=", StringComparison.Ordinal)))));
    }

    /// <summary>"Tija 27.2 con casquillo", "tige 27,2 avec bague".</summary>
    private bool HasSleeveBehind(LineFinding value)
    {
        for (int j = value.Last + 1; j < _items.Count && j <= value.Last + 3 && _items[j].Clause == _items[value.Last].Clause && !_items[j].IsNumber; j++)
        {
            if (_items[j].Is("m:sleeve") || (j + 1 < _items.Count && SetAside.IsWith(_items[j]) && WordLists.ScanOtherMeaningsHasSleeveBehind.Contains(_items[j + 1].Text)))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsLipsOfOther(LineFinding value) =>
        Math.Abs(value.Last - value.First) < _items.Count && _items.Exists(o => o.Kind == SpecTokenKind.Word && WordLists.ScanOtherMeaningsIsLipsOfOther.Contains(o.Text));

    /// <summary>"Con cierre magnético 135", "fourche avec blocage 100", "12x157 descente en ville", "convertible en axe traversant 12x142".</summary>
    private bool IsHubOfOther(LineFinding value)
    {
        if (value.First > 0 && _items[value.First - 1].Is("v:HubEnds=swappable"))
        {
            return true;
        }

        for (int j = 0; j < _items.Count; j++)
        {
            bool word = (_items[j].Is("m:qr") && value.Key is "R130" or "R135-QR" or "F100-QR9") || (_items[j].Is("m:dh") && _items[j].Text is "descenso" or "descente" or "discesa" or "afdaling" && value.Key == "R157-12DH");
            if (!word || _items[j].Clause != _items[value.First].Clause)
            {
                continue;
            }

            bool of = j + 2 < _items.Count && _items[j + 1].Text is "de" or "di" or "del" or "della" or "en" && _items[j + 2].Clause == _items[j].Clause && !_items[j + 2].IsNumber;
            bool weak = WordLists.ScanOtherMeaningsIsHubOfOther.Contains(_items[j].Text) && _items[j].End - _items[j].Start <= (_items[j].Text is "blocage" or "bloccaggio" ? 10 : 14) && !(j + 1 < _items.Count && _items[j + 1].Text is "rapide" or "rapido");
            bool bare = _slot == Slot.Fork && weak && !_items.Exists(o => o is { IsNumber: true, Value: 9 }) && Anywhere("t:wheel") < 0 && Anywhere("t:hub") < 0;
            if (bare || ((of || (j + 1 < _items.Count && _items[j + 1].Clause == _items[j].Clause && IsStrange(j + 1))) && (weak || _items[j].Is("m:dh"))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"QR 130 mm (= Boost 12x148)": another width in front of the bracket that is said to be the same.</summary>
    private bool IsSetEqualToOther(LineFinding value)
    {
        int equal = value.First - 1;
        while (equal >= 0 && equal >= value.First - 3 && _items[equal].Kind == SpecTokenKind.Word)
        {
            equal--;
        }

        if (equal < 1 || !_items[equal].IsSign('=') || !_items[equal - 1].IsSign('('))
        {
            return false;
        }

        for (int i = 0; i < equal; i++)
        {
            if (_items[i] is { IsNumber: true, IsFraction: false, Value: >= 100 and <= 200 } width && !Enumerable.Range(value.First, value.Last - value.First + 1).Any(j => _items[j].IsNumber && _items[j].Value == width.Value))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"30 de ancho interior del cuadro", "innen 30 mm Schlauch".</summary>
    private bool IsInsideOfOther(LineFinding value)
    {
        int next = value.Last + 1;
        next += next < _items.Count && (_items[next].Is("t:inner") || _items[next].Is("m:inside")) ? 1 : 0;
        bool of = next + 1 < _items.Count && WordLists.ScanOtherMeaningsIsInsideOfOther.Contains(_items[next].Text);
        next += of ? 1 : 0;
        next += of && next < _items.Count && _items[next].Text is "la" or "het" or "de" or "the" or "le" ? 1 : 0;
        return next < _items.Count && next > value.Last && _items[next].Clause == _items[value.Last].Clause && Anywhere("t:rim") < 0 && Anywhere("t:wheel") < 0
            && ((of && (IsStrange(next) || _items[next].Is("t:frame") || _items[next].Text == "caja")) || (_items[next].Is("t:tube") && next + 1 >= _items.Count) || (of && _items[next].Is("t:hub")));
    }

    /// <summary>"Manillar 35 mm de subida".</summary>
    private bool IsRise(LineFinding value)
    {
        int next = value.Last + 1;
        next += next < _items.Count && _items[next].Text is "de" or "di" or "of" or "d" or "van" ? 1 : 0;
        return next < _items.Count && _items[next].Clause == _items[value.Last].Clause && WordLists.ScanOtherMeaningsIsRise.Contains(_items[next].Text);
    }

    /// <summary>"Seatpost outside 27.2 inside 24": how wide it is inside is no size of a post. "Canotto 25.4 sterzo": nor is a steerer.</summary>
    private bool IsInsideOfPost(LineFinding value)
    {
        if (_slot != Slot.Seatpost)
        {
            return false;
        }

        int before = value.First - (value.First > 1 && _items[value.First - 1].Text is "of" or "de" or "di" or "von" or "van" ? 2 : 1);
        bool beside = FigureCount == 1 && before >= 0 && (_items[before].Is("t:inner") || _items[before].Is("m:inside"));
        bool sides = _items.Exists(o => o.Is("m:outside")) && _items.Exists(o => o.Is("m:inside") || o.Is("t:inner")) && _items.Exists(o => o.IsNumber && o.Value is > 20 and < 40 && o.Value != _items[value.First].Value);
        bool steerer = value.Last + 1 < _items.Count && _items[value.Last + 1].Text is "sterzo" or "direccion" or "steuersatz" or "balhoofd";
        bool clamp = value.First > 0 && _items[value.First - 1].Kind == SpecTokenKind.Word && WordLists.ScanOtherMeaningsIsInsideOfPost.Contains(_items[value.First - 1].Text);
        return sides || beside || steerer || clamp;
    }

    /// <summary>"Via cable TV", "nessun filo scoperto", "Faltmantel Jacke", "glue for tubular": a value that was read from words alone, a word that is not known right behind it or a thing that it is for before it.</summary>
    private bool IsWordOfOther(LineFinding value)
    {
        if (Enumerable.Range(value.First, value.Last - value.First + 1).Any(j => _items[j].IsNumber && _items[j].Value != 1))
        {
            return false;
        }

        int next = value.Last + 1;
        next += next < _items.Count && WordLists.ScanOtherMeaningsIsWordOfOther.Contains(_items[next].Text) ? 1 : 0;
        next += next < _items.Count && _items[next].Text is "te" or "het" or "la" or "le" ? 1 : 0;
        bool behind = next < _items.Count && _items[next].Clause == _items[value.Last].Clause && IsStrange(next) && !_items[next].Used && IsWeak(value);
        int before = value.First - 1;
        bool aim = value.Field is "hold" or "hubBrake" && before == 1 && SetAside.IsFor(_items[before]) && _items[0].Kind == SpecTokenKind.Word && _items[0].Terms.IsEmpty && _items[0].Text.Length > 3;
        bool brake = value.Field == "mount" && _slot == Slot.RearDerailleur && _items.Exists(o => o.Clause == _items[value.Last].Clause && o.Start > value.Start && (o.Is("t:brake") || o.Is("t:frontmech")));
        aim |= value.Field == "hold" && value.First == 1 && SetAside.IsFor(_items[1]) && _items[0].Kind == SpecTokenKind.Word && _items[0].Terms.IsEmpty && _items[0].Text.Length > 3;
        aim |= value.Field == "hubBrake" && before > 0 && SetAside.IsFor(_items[before]);
        return behind || aim || brake;
    }

    /// <summary>The everyday words of which a word behind them can make another thing.</summary>
    private bool IsWeak(LineFinding value)
    {
        string word = _items[value.First].Text;
        return value.Field switch
        {
            "signal" => _slot == Slot.RearDerailleur && _items[value.Last + 1].Text is not ("geschaltet" or "betatigt" or "bediend" or "commande" or "bedient") && StartsWithWord(word, "via", "per", "senza", "sin", "ohne", "zonder", "sans", "uber", "mit", "con", "met", "col", "filo", "comando", "kabeltje", "piola", "kein", "nessun", "aucun", "ningun", "ganz", "a"),
            "mount" => _slot == Slot.RearDerailleur && _items[value.Last + 1].Text is not ("type" or "fixing" or "bevestiging" or "aufnahme" or "befestigung" or "fixation" or "style") && !StartsWithWord(word, "hangerless", "udh"),
            "steererKind" => StartsWithWord(word, "senza", "sin", "sans", "filetage", "gewindefrei", "draadloze", "draadloos", "liscio"),
            "actuation" => true,
            "bead" => WordLists.ScanOtherMeaningsIsWeak.Contains(_items[value.Last + 1].Text),
            "hold" => _items[value.Last + 1].Text is "glue" or "cement" or "kitt" or "kleber" or "mastic" or "colla",
            "hubBrake" => _items[value.Last + 1].Text is "ausgebaut" or "gewunscht" or "gesucht" or "shoes" or "shoe" or "arm" or "tausch",
            _ => false,
        };
    }

    private static bool StartsWithWord(string text, params ReadOnlySpan<string> words)
    {
        foreach (string word in words)
        {
            if (text.StartsWith(word, StringComparison.Ordinal) && (text.Length == word.Length || text[word.Length] == ' '))
            {
                return true;
            }
        }

        return false;
    }
}
