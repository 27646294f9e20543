namespace Lugwork.Reading;

/// <summary>Teeth and bolts of rings.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Direct mount, 3 bolts": the number beside the words.</summary>
    private void DirectMountBolts()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            bool direct = _items[i].Is("v:DirectMountRing=3-bolt|8-bolt|own") || (_items[i].Text == "direct" && !_items.Exists(o => WordLists.ScanTeethSpider.Contains(o.Text)) && ((i > 0 && _items[i - 1].Is("t:chainring")) || (i + 1 < _items.Count && _items[i + 1].Is("t:chainring")))) || IsMountedDirect(i) || _items[i].Text is "directo" or "diretto" or "direkt" or "dm" || (_items[i].Text is "direct" or "directe" or "directa" or "diretta" && i + 1 < _items.Count && _items[i + 1].Text is "montage" or "mount" or "bevestiging" or "fijacion" or "fixation") || (_items[i].Is("v:DerailleurMount=direct-mount") && !_items[i].Is("v:DirectMountRing=3-bolt"));
            bool seated = !direct && IsSeatedDirect(i);
            direct |= seated;
            for (int j = i - 7; direct && j <= i + 7 && !Values.ContainsKey("directMount"); j++)
            {
                if (j >= 0 && j < _items.Count && Free(j) && _items[j] is { Value: 3 or 8, Unit: "arms" or "holes" } && Math.Abs(_items[j].Clause - _items[i].Clause) <= (seated || _items[i].IsFraction ? 3 : 1) && !(seated && IsArmWord(_items[j].UnitWord)))
                {
                    Keep("directMount", _items[j].Text + "-bolt", Math.Min(i, j), Math.Max(i, j));
                }
            }
        }
    }

    /// <summary>"Ring seats direct on the arm", "rechtstreeks gemonteerd", "se fixe directement sur la manivelle": an adverb, or the word before what the ring sits on.</summary>
    private bool IsSeatedDirect(int i) =>
        i + 1 < _items.Count && _items[i].Text is "direct" or "directly" or "directement" or "directamente" or "direttamente" or "rechtstreeks" && !Negated(i) && WordLists.ScanTeethIsSeatedDirect.Contains(_items[i + 1].Text) && !_items.Exists(o => WordLists.ScanTeethSpider.Contains(o.Text))
        && (_items[i + 1].Text.Length > 5 || Enumerable.Range(i + 1, Math.Min(4, _items.Count - i - 1)).Any(j => _items[j].Is("t:crank") || WordLists.ScanTeethArm.Contains(_items[j].Text)));

    /// <summary>"Ring mount: direct, 8-bolt": the way the ring is held, behind the word for that and a colon.</summary>
    private bool IsMountedDirect(int i) =>
        i > 1 && _items[i].Text is "direct" or "directe" or "direkte" && (_items[i - 1].IsSign(':') || _items[i - 1].IsSign('=')) && (_items[i - 2].Text is "mount" or "mounting" or "montage" or "fixation" or "bevestiging" or "befestigung" or "interface" || _items[i - 2].Is("t:chainring"));

    private void ReadTeeth(string field, bool largest)
    {
        int best = -1;
        int others = 0;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!Free(i) || _items[i].Value is < 20 or > 80 || _items[i].Value != decimal.Truncate(_items[i].Value) || _items[i].IsFraction)
            {
                continue;
            }

            bool teeth = _items[i].Unit == "teeth" || (i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].IsSign('-') || _items[i + 1].IsSign('x')) && _items[i + 2].IsNumber && (_items[i + 2].Unit == "teeth" || Chained(i + 2)));
            bool pair = largest && _items[i].Unit.Length == 0 && _items[i].Value >= 34 && i + 2 < _items.Count && (_items[i + 1].IsSign('/') || (_items[i + 1].IsSign('x') && !(IsStrange(i + 3) && _items[i + 3].Clause == _items[i].Clause) && !(i + 3 < _items.Count && _items[i + 3].Text == "x" && !(i + 4 < _items.Count && _items[i + 4].IsNumber))) || (_items[i + 1].IsSign('-') && _items[i + 1].Glued)) && Free(i + 2) && _items[i + 2].Unit.Length == 0 && _items[i + 2].Value >= 22 && _items[i].Value - _items[i + 2].Value >= 8 && TopicOf(i) is "" or "t:crank" or "t:chainring" or "t:bb";
            if (pair)
            {
                _items[i + 2].Used = true;
                if (i + 4 < _items.Count && (_items[i + 3].IsSign('/') || _items[i + 3].IsSign('-') || _items[i + 3].IsSign('x')) && Free(i + 4) && _items[i + 4].Value is >= 20 and < 45)
                {
                    _items[i + 4].Used = true;
                }
            }

            bool alone = !largest && (IsRingOf(i) || IsRingAlone(i));
            bool triple = largest && IsTripleUp(i);
            if (triple)
            {
                _items[i - 2].Used = true;
                _items[i - 4].Used = true;
            }

            bool ringed = pair || alone || triple || largest && _items[i].Unit.Length == 0 && _items[i].Value <= 62 && TopicOf(i) is "t:chainring";
            bool named = largest && _slot == Slot.Crankset && IsLargestByName(i);
            ringed |= named;
            if (!teeth && !ringed)
            {
                continue;
            }

            if (largest && _slot == Slot.Crankset && !named && HasMark(i, "m:max"))
            {
                continue;
            }

            others += best >= 0 ? 1 : 0;
            best = best < 0 || _items[i].Value > _items[best].Value ? i : best;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            _items[i].Used |= _items[i].Unit == "teeth";
        }

        if (best >= 0 && (largest || others == 0))
        {
            for (int j = best; j + 2 < _items.Count && (_items[j + 1].IsSign('/') || (_items[j + 1].IsSign('-') && _items[j + 1].Glued)) && Free(j + 2) && _items[j + 2] is { Value: >= 20 and <= 60, Unit: "" } && largest; j += 2)
            {
                // "Rings 34/50": the larger one behind.
                best = _items[j + 2].Value > _items[best].Value ? j + 2 : best;
            }

            for (int j = best; j + 2 < _items.Count && (_items[j + 1].IsSign('/') || _items[j + 1].IsSign('-')) && _items[j + 2] is { IsNumber: true, Value: >= 20 and <= 60 } && largest; j += 2)
            {
                _items[j + 2].Used = true;
            }

            for (int j = best; j >= 2 && (_items[j - 1].IsSign('/') || (_items[j - 1].IsSign('-') && _items[j - 1].Glued)) && _items[j - 2] is { IsNumber: true, Value: >= 20 and <= 60, Unit: "" or "teeth" } && _items[j - 2].Value < _items[best].Value && largest; j -= 2)
            {
                _items[j - 2].Used = true;
            }

            Take(field, _items[best].Text, best, best);
        }
        else if (best >= 0)
        {
            Several(field, [], best, best, "several numbers of teeth are named");
        }
    }

    /// <summary>"Größtes Blatt 44", "plato mayor: 44": the larger of the rings by a word that is no limit, at the head of a clause.</summary>
    private bool IsLargestByName(int i)
    {
        int last = i > 0 && (_items[i - 1].IsSign(':') || _items[i - 1].IsSign('=')) ? i - 2 : i - 1;
        int first = last > 0 && _items[last].Is("t:chainring") != _items[last].Is("m:max") && _items[last - 1].Clause == _items[last].Clause ? last - 1 : last;
        if (last < 0 || _items[i] is not { Places: 0, Value: <= 62 } || Joins(i) || !(_items[last].Is("t:chainring") || _items[first].Is("t:chainring")) || (first > 0 && _items[first - 1] is not { Kind: SpecTokenKind.Sign, IsFraction: true }))
        {
            return false;
        }

        SpecItem most = _items[first].Is("m:max") ? _items[first] : _items[last];
        return most.Is("m:max") && most.Text is "largest" or "biggest" or "grosstes" or "grosste" or "grootste" or "plus" or "mayor" or "piu" && (i + 1 >= _items.Count || _items[i + 1].Kind == SpecTokenKind.Sign);
    }

    /// <summary>"Plateau 42", "plato de 38", "nombre de dents 42": right behind the word for a ring or for its teeth, which the line starts with, and the only figure beside the bolt circle that was read.</summary>
    private bool IsRingOf(int i)
    {
        int word = i > 0 && (_items[i - 1].IsSign(':') || _items[i - 1].Text is "de" or "da" or "van" or "mit") ? i - 2 : i - 1;
        word -= word == 1 && (_items[1].Is("m:teethcount") || _items[1].Is("m:track") || _items[1].Is("m:road")) && _items[0].Is("t:chainring") ? 1 : 0;
        return word == 0 && _items[i] is { Unit: "", IsFraction: false, Places: 0, Value: >= 20 and <= 56 } && (_items[i].Value >= 26 || HasSmallCircle) && !HasMark(i, "m:max") && !HasMark(i, "m:min")
            && (_items[word].Is("t:chainring") || _items[word].Is("m:teethcount")) && !_items.Exists(o => o.IsNumber && o != _items[i] && !(Values.ContainsKey("boltCircle") && (o.Used || o.Unit is "arms" or "holes" or "speed" || o.Text is "1/8" or "3/32")));
    }

    /// <summary>The circle that was read is one of the small rings of a triple.</summary>
    private bool HasSmallCircle =>
        Values.TryGetValue("boltCircle", out LineFinding? circle) && (circle.Key.EndsWith("x64", StringComparison.Ordinal) || circle.Key.EndsWith("x58", StringComparison.Ordinal) || circle.Key.EndsWith("x74", StringComparison.Ordinal));

    /// <summary>Another step of a list that ends in teeth: 50/34T, 42-32-24T.</summary>
    private bool Chained(int i) => i + 2 < _items.Count && (_items[i + 1].IsSign('/') || _items[i + 1].IsSign('-')) && _items[i + 2].IsNumber && _items[i + 2].Unit == "teeth";
}
