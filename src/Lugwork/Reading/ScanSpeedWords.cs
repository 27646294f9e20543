namespace Lugwork.Reading;

/// <summary>Numbers of speeds by the words before them: "Gänge: 11", "velocidades 12", "cambio a dieci", "da undici", "double 10".</summary>
internal sealed partial class LineScan
{
    /// <summary>Words for how many speeds there are, which stand before their number.</summary>
    private static bool IsSpeedWord(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanSpeedWordsIsSpeedWord.Contains(item.Text);

    private bool IsDrive => _slot == Slot.Chain || _slot == Slot.Cassette || _slot == Slot.RearDerailleur || _slot == Slot.FrontDerailleur || _slot == Slot.RearShifter || _slot == Slot.Crankset || _slot == Slot.Chainring;

    /// <summary>The number is the last of its clause, or what shifts it is said right behind.</summary>
    private bool EndsClause(int i) =>
        i + 1 >= _items.Count || _items[i + 1] is { Kind: SpecTokenKind.Sign, IsFraction: true } || IsSignal(_items[i + 1]) || (i + 2 < _items.Count && _items[i + 1].IsSign('/') && _items[i + 2].Kind == SpecTokenKind.Word);

    private static bool IsSignal(SpecItem item) => item.Terms.Any(t => t.StartsWith("v:ShiftSignal=", StringComparison.Ordinal));

    private bool IsSpeedByWord(int i) =>
        IsDrive && !JoinsClosely(i) && !IsOfferedWith(i) && EndsClause(i) && (IsBehindSpeedWord(i) || IsDoubled(i) || IsOpening(i) || IsBehindGroup(i));

    /// <summary>"10 / 11": the slash between blanks has a bare figure on its other side.</summary>
    private bool IsOfferedWith(int i) =>
        (i > 1 && _items[i - 1].IsSign('/') && _items[i - 2] is { IsNumber: true, Unit: "" }) || (i + 2 < _items.Count && _items[i + 1].IsSign('/') && _items[i + 2] is { IsNumber: true, Unit: "" or "speed" });

    /// <summary>"Gangzahl hinten: 11", "Speeds 10".</summary>
    private bool IsBehindSpeedWord(int i)
    {
        int word = i - 1;
        word -= word > 0 && (_items[word].IsSign(':') || _items[word].IsSign('=')) ? 1 : 0;
        word -= word > 0 && _items[word].IsSign('.') ? 1 : 0;
        word -= word > 0 && _items[word].Is("m:rear") && _items[word].Terms.Length == 1 ? 1 : 0;
        return word >= 0 && IsSpeedWord(_items[word]) && !(word > 0 && (_items[word - 1].IsNumber || _items[word - 1].Is("m:max") || _items[word - 1].Is("m:front") || _items[word - 1].Is("m:or")));
    }

    /// <summary>"Double 10", "dubbel 10": the rings and the sprockets of a front derailleur.</summary>
    private bool IsDoubled(int i)
    {
        int word = i - 1;
        word -= word > 0 && _items[word].Text is "de" or "da" or "di" ? 1 : 0;
        return _slot == Slot.FrontDerailleur && word >= 0 && _items[word].Clause == _items[i].Clause
            && WordLists.ScanSpeedWordsIsDoubled.Contains(_items[word].Text);
    }

    /// <summary>"Da 12, senza cavi", "inalámbrico, de 12": the whole clause, at the head of a line about a derailleur or behind how that is worked or mounted.</summary>
    private bool IsOpening(int i)
    {
        if (i < 1 || _items[i - 1].Text is not ("de" or "da" or "a") || !(_slot == Slot.RearDerailleur || _slot == Slot.FrontDerailleur || _slot == Slot.Cassette || _slot == Slot.Chain) || _items.Exists(o => o.Unit == "speed") || _items[i].Value < 7 || (_items[i].UnitWord.Length > 0 && !(i > 1 && _items[i - 2].Terms.Any(t => t.StartsWith("v:ShiftSignal=", StringComparison.Ordinal)))))
        {
            return false;
        }

        int before = i - 2;
        if (before < 0)
        {
            return _items[i - 1].Text != "a";
        }

        if (before == 0 && _items[0].Kind == SpecTokenKind.Word && _items[0].Text is "es" or "e" or "va" or "son" or "sono" && _items[i - 1].Text != "a")
        {
            // "Es de once, de carretera".
            return true;
        }

        if (_slot != Slot.RearDerailleur && _slot != Slot.FrontDerailleur)
        {
            return false;
        }

        if (_items[before] is not { Kind: SpecTokenKind.Sign, IsFraction: true })
        {
            // "Inalámbrico de 12".
            return _items[i - 1].Text != "a" && (_items[before].Is("v:ShiftSignal=wireless") || _items[before].Is("m:electronic") || _items[before].Text is "mecanico" or "meccanico" or "mecanique");
        }

        before -= before > 0 && _items[before - 1].Kind == SpecTokenKind.Sign ? 1 : 0;
        return before > 0 && _items[before - 1].Terms.Any(t => t is "t:rearmech" or "t:frontmech" || t.StartsWith("v:ShiftSignal=", StringComparison.Ordinal) || t.StartsWith("v:DerailleurMount=", StringComparison.Ordinal));
    }

    /// <summary>"Per cambio a 8", "para grupo de 12", "pacco pignoni a nove": the number right behind the name of the part or of the group that it is of.</summary>
    private bool IsBehindGroup(int i)
    {
        if (i < 2 || _items[i - 1].Text is not ("a" or "da" or "de" or "di" or "en" or "in" or "per") || _items.Exists(o => o.Unit == "speed"))
        {
            return false;
        }

        SpecItem name = _items[i - 2];
        bool group = WordLists.ScanSpeedWordsIsBehindGroup.Contains(name.Text);
        bool italian = _items[i - 1].Text is "a" or "da" && (name.Text is "cambio" or "cambi" || (_slot == Slot.Cassette && name.Text is "pignoni" or "pacco" or "cassetta"));
        return group || italian;
    }
}
