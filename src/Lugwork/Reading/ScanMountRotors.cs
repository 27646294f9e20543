namespace Lugwork.Reading;

/// <summary>The rotor that a mount is made for, said apart from the mount.</summary>
internal sealed partial class LineScan
{
    private int? _figureCount;

    /// <summary>How many figures the line has, counted once.</summary>
    private int FigureCount => _figureCount ??= _items.Count(i => i.IsNumber);

    /// <summary>"Flat mount, 140 disc at the back", "postmount achter, rechtstreeks voor 160": the one figure of the clause of the mount or of the one beside it, where both name nothing but the brake, its end and what the mount is made for; -1 where there is none. What is sold or mounted with it, a limit and an adapter have words of their own.</summary>
    private int RotorBeside(int mark, bool post)
    {
        int size = -1;
        for (int j = Math.Max(0, mark - Reach); j < _items.Count && j <= mark + Reach; j++)
        {
            if (!_items[j].IsNumber || Math.Abs(_items[j].Clause - _items[mark].Clause) is var apart && (apart > 2 || (apart == 2 && !IsOfMountOnly((_items[j].Clause + _items[mark].Clause) / 2, j, mark))) || (_items[j].Clause != _items[mark].Clause && !Clause(j, "t:rotor") && !IsMadeFor(j) && FigureCount > 1))
            {
                continue;
            }

            if (size >= 0 || !MountSize(j, post) || !IsRotorSize(_items[j], post) || JoinsClosely(j))
            {
                return -1;
            }

            size = j;
        }

        // "Federgabel 160 Postmount": the travel, where nothing says that the mount is made for it.
        return size >= 0 && (Anywhere("t:fork") is not (>= 0 and int fork) || Clauses(_items[size].Clause).Any(IsDirectWord) || IsBrakeOfFork(fork, mark)) && IsOfMountOnly(_items[size].Clause, size, mark) && (_items[size].Clause == _items[mark].Clause || IsOfMountOnly(_items[mark].Clause, size, mark)) ? size : -1;
    }

    /// <summary>"..., und zwar für 140 mm", "..., et c'est pour du 160": the figure stands right behind the word that says what the mount is made for.</summary>
    private bool IsMadeFor(int j) => j > 0 && _items[j - 1].Clause == _items[j].Clause && _items[j - 1].Text is "fur" or "for" or "pour" or "para" or "per" or "voor" && Clauses(_items[j].Clause).All(o => o == _items[j] || o.Kind == SpecTokenKind.Sign || IsOfMount(o) || o.Text is "voor");

    /// <summary>"Remopname op de vork is post mount, 180": the mount is what the clause is about, and the fork is what it is on.</summary>
    private bool IsBrakeOfFork(int fork, int mark) =>
        fork > 1 && fork < mark && _items[fork].Clause == _items[mark].Clause && Clauses(_items[mark].Clause).TakeWhile(o => o != _items[fork]).Any(o => o.Is("t:brake") || o.Is("t:caliper") || o.Is("m:mounttabs"))
        && (WordLists.ScanMountRotorsIsBrakeOfFork.Contains(_items[fork - 1].Text) || (fork > 2 && _items[fork - 1].Text is "de" or "the" or "der" or "la" && _items[fork - 2].Text is "op" or "on" or "an" or "aan" or "sur" or "en" or "a"));

    /// <summary>"Flat mount, für 140 und 160", "se gira la placa para 140 o 160": the only two figures of a line, which are the two rotors that a fork is made for by turning a plate; -1 where they are others.</summary>
    private int RotorsOfFork()
    {
        if (_slot != Slot.Fork || !(FigureCount == 2 || IsPairAgain()) || Anywhere("m:max") >= 0 || Anywhere("m:adapt") >= 0 || Anywhere("m:rear") >= 0 || _items.Exists(i => i.Terms.Any(t => t[0] == 'd') || WordLists.ScanMountRotorsRotorsOfFork.Contains(i.Text)))
        {
            return -1;
        }

        int first = _items.FindIndex(i => i.IsNumber);
        bool joined = first + 2 < _items.Count && _items[first + 2].IsNumber && (Links(_items[first + 1]) || _items[first + 1].Is("m:or") || _items[first + 1].Is("m:and"));
        return joined && _items[first].Value is 140 or 160 && _items[first + 2].Value == _items[first].Value + 20 && MountSize(first, false) && MountSize(first + 2, false) && !Negated(first) && TopicOf(first) is "" or "t:brake" or "t:rotor" or "t:caliper" or "t:fork" ? first : -1;
    }

    private static bool IsRotorSize(SpecItem item, bool post) =>
        item.IsInch || item.Value < 10 ? post && item.IsInch && item.Value is 5 or 6 or 7 or 8 : post ? item.Value is 140 or 160 or 180 or 200 or 203 : item.Value is 140 or 160;

    private static bool IsDirectWord(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanMountRotorsIsDirectWord.Contains(item.Text);

    private bool IsOfMountOnly(int clause, int size, int mark)
    {
        foreach (SpecItem item in Clauses(clause))
        {
            bool figure = item.IsNumber && item != _items[size];
            bool has = item == _items[0] && item.Text is "has" or "hat" or "tiene" or "trae" or "lleva" or "ha" or "heeft" && _items.Count > 1 && (_items[1].Is("m:pm") || _items[1].Is("m:fm"));
            bool led = (mark > 0 && item == _items[mark - 1] && item.Text is "met" or "mit" or "with" or "avec" or "con" or "to") || (size > 1 && item == _items[size - 1] && SetAside.IsWith(item) && _items[size - 2].Text is "das" or "dat" or "die" or "one" or "celui" or "quello");
            if (figure || (item.Kind == SpecTokenKind.Word && !has && !led && !IsOfMount(item) && !(item.Text == "voor" && size > 0 && _items[size - 1] == item && Anywhere("m:rear") >= 0)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Words of the mount itself: the brake, its end, and that it is made for the rotor.</summary>
    private static bool IsOfMount(SpecItem item) =>
        !item.Is("m:max") && !item.Is("m:min") && !item.Is("m:over") && !item.Is("m:front") && !item.Is("m:or") && !item.Is("m:adapt") && !item.Terms.Any(t => t[0] is 'd' or 'o')
        && (item.Is("m:fm") || item.Is("m:pm") || item.Is("m:rear") || item.Is("t:brake") || item.Is("t:caliper") || item.Is("t:rotor") || item.Is("t:frame") || item.Is("t:fork") || item.Is("m:nothing")
            || WordLists.ScanMountRotorsIsOfMount.Contains(item.Text));
}
