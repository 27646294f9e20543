using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Bottom-bracket shells, bottom brackets, spindles and pedals.</summary>
internal sealed partial class LineScan
{
    private const string FamilyPrefix = "v:ShellFamily=";
    private const string ShellPrefix = "v:Shell=";

    private static readonly string[] PlaceNames = ["french", "spanish", "american", "italian", "swiss", "english", "italiano", "italiana", "italien", "italiaans", "inglesa", "inglese", "ingles", "british", "anglaise", "engelse", "englische", "italienne", "italiaanse", "italienische", "italienischer", "italienisches", "italienischen", "italienischem", "englischem", "englischer", "englisches", "englischen", "ital", "anglais", "engels", "englisch", "italienisch", "americano", "americana", "americain", "americaine", "amerikanisch", "amerikanisches", "amerikaans", "suisse", "schweizer", "suizo", "suiza", "svizzero", "svizzera", "zwitsers", "frances", "francese", "frans", "espanol", "espagnol", "spagnolo", "spaans", "mid", "thompson"];

    /// <summary>"Swiss made bottom bracket", "Italian bottom bracket maker": where it comes from, and no thread.</summary>
    private bool IsOfMaker(int i)
    {
        for (int j = i + 1; j < _items.Count && j <= i + 4 && _items[j].Clause == _items[i].Clause; j++)
        {
            if (_items[j].Kind == SpecTokenKind.Word && WordLists.ScanBracketIsOfMaker.Contains(_items[j].Text))
            {
                return true;
            }
        }

        return false;
    }

    private void ReadShell(string field)
    {
        List<(ImmutableArray<string> Families, int At)> families = [];
        int place = -1;
        for (int i = 0; i < _items.Count && families.Count < 8; i++)
        {
            if (Negated(i) || (_items[i].Is("v:ShellFamily=threaded-insert") && (Clause(i, "t:hanger") || Clause(i, "t:axle")) && !Clause(i, "t:bb")))
            {
                continue;
            }

            string? shell = Term(i, ShellPrefix);
            string? family = WithoutPreposition(Term(i, FamilyPrefix), i);
            if (shell is not null)
            {
                families.Add(([shell], i));
            }
            else if (family is not null && (Array.IndexOf(PlaceNames, _items[i].Text) < 0 || (OfShell(i) && !IsOfMaker(i))))
            {
                families.Add(([.. family.Split('|')], i));
            }
            else if (family is not null)
            {
                place = i;
            }
        }

        for (int i = 0; i < _items.Count && families.Count == 0; i++)
        {
            if (FamilyOfThread(i) is { } threaded && (_slot == Slot.Frame || Anywhere("t:bb") >= 0))
            {
                MarkAll(i, i + 2);
                families.Add(([threaded], i + 2));
            }
        }

        if (families.Count == 0 && TurnsOfShell() is >= 0 and int turns)
        {
            _items[turns].Used = true;
            families.Add((["26tpi"], turns));
        }

        if (families.Exists(f => f.Families[0] == "BBright-direct" && f.Families.Length > 1) && families.Exists(f => f.Families[0] == "PF41" && f.Families.Length > 1))
        {
            // "BBright, press-fit": the word says which of the two it is.
            families = [.. families.Where(f => f.Families[0] == "BBright-direct").Select(f => (ImmutableArray.Create("BBright-press"), f.At))];
        }

        if (families is [{ Families: ["BBright-direct", _] } bright] && bright.At + 1 < _items.Count && bright.At + (_items[bright.At + 1].IsSign(',') && bright.At + 2 < _items.Count ? 2 : 1) is int straight && _items[straight] is { Terms.IsEmpty: true, Text: "direct" or "directversie" or "direktversion" or "directe" or "directa" or "diretta" } && (straight + 1 >= _items.Count || _items[straight + 1].Kind != SpecTokenKind.Word || _items[straight + 1].Is("t:bb") || _items[straight + 1].Text is "fit" or "in" or "version" or "versie" or "versione" or "uitvoering"))
        {
            // "BBright, Direktversion": bearings straight in.
            families = [(["BBright-direct"], bright.At)];
        }

        if (families.TrueForAll(f => f.Families.Length > 1) && ShellByBore(field))
        {
            return;
        }

        // "Pressfit" beside the name of a shell says less than the name.
        if (families.Exists(f => f.Families.Length == 1))
        {
            families.RemoveAll(f => f.Families.Length > 1);
        }

        if (families.Count == 0)
        {
            ShellWithoutFamily(field);
            return;
        }

        HashSet<string> names = [.. families.Select(f => f.Families[0].Split('-')[0])];
        if (names.Count > 1 || (place >= 0 && IsKindBeside(place, families[0].At, families[0].Families[0])) || families.Exists(f => IsInName(f.At) || IsBesideOtherPlace(f.At, f.Families[0])))
        {
            Refuse(field, families[0].At, families[^1].At, "the line names two kinds of shell");
            return;
        }

        foreach ((ImmutableArray<string> kinds, int at) in families)
        {
            TakeShell(field, kinds, at);
        }

        Settle(field);
    }

    /// <summary>"PF30 a pressione": the letter is a word of the sentence.</summary>
    private string? WithoutPreposition(string? family, int i) =>
        family is "PF30A" or "BB30A" or "T47A" && _items[i].End - _items[i].Start > family.Length && i + 1 < _items.Count && _items[i + 1] is { Kind: SpecTokenKind.Word, Glued: false } && _items[i + 1].Clause == _items[i].Clause ? family[..^1] : family;

    /// <summary>"BB30 73 Italian", "Swiss BSA 68": the place of another shell right beside the name of one.</summary>
    private bool IsKindBeside(int place, int at, string family) =>
        Term(place, FamilyPrefix) is { } other && other.Split('|')[0] != family.Split('-')[0] && _items[place].Clause == _items[at].Clause
        && !(place > 0 && _items[place - 1].Is("t:frame"))
        && (place == at - 1 || (place > at && place <= at + 2 && (place + 1 == _items.Count || _items[place + 1].Kind == SpecTokenKind.Sign)));

    /// <summary>"Filetage suisse et français", "English thread, French too", "Engelse en Franse draad": two threads are no one. A frame of another country says nothing.</summary>
    private bool IsBesideOtherPlace(int at, string family) =>
        (at > 1 && IsJoin(at - 1) && IsOtherPlace(at - 2, family))
        || (at + 2 < _items.Count && (IsJoin(at + 1) || (_items[at + 1].IsSign(',') && (at + 3 >= _items.Count || _items[at + 3].Kind == SpecTokenKind.Sign || _items[at + 3].Text is "too" or "auch" or "aussi" or "tambien" or "anche" or "ook"))) && IsOtherPlace(at + 2, family) && !(at + 3 < _items.Count && _items[at + 3].Is("t:frame")));

    private bool IsJoin(int i) => _items[i].Is("m:and") || _items[i].Is("m:or") || _items[i].IsSign('/') || _items[i].IsSign('&') || _items[i].IsSign('+');

    /// <summary>The name of a country, in any of the languages and endings, whose thread is not of this family.</summary>
    private bool IsOtherPlace(int i, string family)
    {
        string word = _items[i].Text;
        string place = _items[i].Kind != SpecTokenKind.Word ? ""
            : Starts(word, "engl", "ingles", "anglais", "engels", "brit") ? "BSA"
            : Starts(word, "ital") ? "Italian"
            : Starts(word, "french", "franzos", "francais", "frances", "frans") ? "French"
            : Starts(word, "swiss", "schweiz", "suisse", "suiz", "svizz", "zwits") ? "Swiss"
            : "";
        return place.Length > 0 && family.Split('-')[0] != place;
    }

    private static bool Starts(string word, params ReadOnlySpan<string> stems)
    {
        foreach (string stem in stems)
        {
            if (word.StartsWith(stem, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Swiss BB30": the word ends in the middle of another name.</summary>
    private bool IsInName(int at) =>
        at + 1 < _items.Count && Array.IndexOf(PlaceNames, _items[at].Text) >= 0 && _items[at + 1] is { IsNumber: true, Glued: true };

    /// <summary>"26 tpi, 71 mm shell": the turns of a shell in a clause about one or beside a width that only such a shell has; -1 where none are named.</summary>
    private int TurnsOfShell()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            bool turns = Free(i) && _items[i] is { Value: 26, Unit: "tpi" } && !(i > 0 && _items[i - 1].IsSign('x')) && !Clause(i, "t:hanger") && !Clause(i, "t:axle") && !Clause(i, "t:pedal") && !Clause(i, "t:headset") && !Clause(i, "t:tyre");
            if (turns && (Clause(i, "t:bb") || Clauses(_items[i].Clause).Any(o => o is { IsNumber: true, Unit: "mm", Value: 71 or 76 })))
            {
                return i;
            }
        }

        return -1;
    }

    private string? Term(int i, string prefix)
    {
        foreach (string term in _items[i].Terms)
        {
            if (term.StartsWith(prefix, StringComparison.Ordinal))
            {
                return term[prefix.Length..];
            }
        }

        return null;
    }

    /// <summary>A name of a place is a shell only beside a word for shells, a thread or a width.</summary>
    private bool OfShell(int i)
    {
        if (_items[i].IsFraction || Clause(i, "t:bb") || (Anywhere("t:bb") >= 0 && IsOnlyWord(i)) || HasMark(i, "m:threaded") || Clause(i, "t:thread"))
        {
            return true;
        }

        bool bracket = _slot == Slot.BottomBracket && (_items.Exists(o => o.Is("m:cups") || o.Is("t:bb")) || _items.Exists(o => o.Is("t:spindle")));
        return ShellWidth(i) is >= 0 and int width && (_items[width].Clause == _items[i].Clause || bracket || IsOnlyWord(i)) && !_items.Exists(o => o != _items[i] && o.Terms.Any(t => t.StartsWith(FamilyPrefix, StringComparison.Ordinal) || t.StartsWith(ShellPrefix, StringComparison.Ordinal)));
    }

    /// <summary>No other word stands in its clause.</summary>
    private bool IsOnlyWord(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            if (item != _items[i] && item.Kind == SpecTokenKind.Word)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A width of a shell behind its name, or before it in the same clause.</summary>
    private int ShellWidth(int at)
    {
        int topics = 0;
        int skipped = 0;
        bool beyond = false;
        for (int j = at + 1; j < _items.Count && j <= at + 8; j++)
        {
            topics += _items[j].IsTopic && TopicIn(_items[j]) is not ("t:bb" or "t:thread" or "n:width" or "t:inner") && _items[j].Text is not ("largo" or "larga") ? 1 : 0;
            beyond |= IsAndWord(_items[j]);
            if (topics > 0 || _items[j].Clause > _items[at].Clause + 1 + skipped || (beyond && (_items[j].Is("m:rear") || IsHold(_items[j]))))
            {
                // "386EVO et l'arrière reste en 135": the width of the rear end.
                break;
            }

            if (IsThreadSize(j))
            {
                // "BSA (1.37 x 24), 73 mm": brackets round the thread part nothing.
                skipped = 2;
                j += 2;
                continue;
            }

            if (Free(j))
            {
                if (ShellSize(j) || (j == at + 2 && _items[at + 1].IsSign('x') && IsShellWidth(j)))
                {
                    return j;
                }

                break;
            }
        }

        for (int j = at - 1; j >= 0 && j >= at - 6 && (_items[j].Clause == _items[at].Clause || (j == at - 2 && _items[at - 1].IsSign('/') && TopicOf(j) is "t:bb") || (_items[at - 1].IsSign('(') && _items[j].Clause == _items[at].Clause - 1)); j--)
        {
            if (Free(j))
            {
                return ShellSize(j) && (TopicOf(j) is "" or "t:bb" or "n:width" or "t:thread" || (TopicOf(j) is "t:frame" && j == at - 1 && (_items[Link(j)].Clause != _items[j].Clause || _items[j].End - _items[j].Start > _items[j].Text.Length || (j > 0 && _items[j - 1].Is("m:and"))))) ? j : -1;
            }
        }

        return -1;
    }

    /// <summary>1.37 x 24, 36 x 24, 1 3/8 x 26, 35 x 1: the size of the thread of a shell.</summary>
    private bool IsThreadSize(int j)
    {
        if (j < 0 || j + 2 >= _items.Count || !_items[j].IsNumber || !_items[j + 1].IsSign('x') || !_items[j + 2].IsNumber || _items[j].IsBroken)
        {
            return false;
        }

        return (_items[j].Value, _items[j + 2].Value) is (1.37m or 1.375m or 34.8m or 34.9m or 36 or 35 or 47, 24 or 26 or 1);
    }

    private bool IsShellWidth(int j) => Free(j) && _items[j].IsMillimetre && !_items[j].IsFraction && _items[j].Value is >= 55 and <= 135;

    private bool ShellSize(int j) =>
        IsShellWidth(j) && !(j + 1 < _items.Count && _items[j + 1].IsSign('x')) && !(j > 0 && _items[j - 1].IsSign('x'));

    private void TakeShell(string field, ImmutableArray<string> kinds, int at)
    {
        int width = ShellWidth(at);
        width = width < 0 ? WidthOfPair(at) : width;
        width = width < 0 ? WidthElsewhere() : width;
        width = width < 0 ? WidthByBore(kinds, at) : width;
        if (width >= 0)
        {
            _items[width].Used = true;
            if (OtherShellWidth(field, kinds, width) is >= 0 and int other)
            {
                Refuse(field, Math.Min(width, other), Math.Max(width, other), "two widths are said of one shell", LineDoubtKind.Conflict);
                return;
            }
        }

        int first = width < 0 ? at : Math.Min(at, width);
        int last = Math.Max(at, width);
        SpecField known = _fields[field];
        bool whole = kinds.Length == 1 && Term(at, ShellPrefix) is not null;
        if (whole && width >= 0 && (_items[width].Unit == "mm" || TopicOf(width) == "n:width") && FamilyOf(kinds[0]) is "Mid" or "Spanish" or "American" or "BSA")
        {
            // "Mid BMX bearings, 68 mm wide": the name tells the width only where none is said.
            kinds = [FamilyOf(kinds[0])];
            whole = false;
        }

        if (whole)
        {
            string said = kinds[0][(kinds[0].LastIndexOf('-') + 1)..];
            if (width >= 0 && !said.StartsWith(decimal.Truncate(_items[width].Value).ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal))
            {
                Refuse(field, first, last, "the shell of this name has another width");
                return;
            }

            Keep(field, kinds[0], first, last);
            return;
        }

        List<string> keys = [];
        foreach (string kind in kinds)
        {
            FieldReading reading = known.Read(width < 0 ? kind : $"{kind} {_items[width].Text}");
            keys.AddRange(reading.Keys);
            if (kind == "T47" && width >= 0 && reading.Keys.IsEmpty && _items[width].Value == 77)
            {
                keys.Add("T47A-77");
            }
        }

        if (kinds.Length == 1 && width >= 0 && keys.Contains($"{kinds[0]}-{_items[width].Text}"))
        {
            // "PF30 73" is also what the asymmetric kind is called by some; where it is meant, it is said.
            keys = [$"{kinds[0]}-{_items[width].Text}"];
        }

        if (keys.Count == 1 && width >= 0)
        {
            Keep(field, keys[0], first, last);
        }
        else if (keys.Count == 1)
        {
            // A family that is made in one width names its shell.
            Keep(field, keys[0], first, last, "the one width of this family");
        }
        else if (kinds is ["Mid" or "Spanish"] && width < 0 && BmxOfShell() is >= 0 and int bmx)
        {
            Keep(field, kinds[0] == "Mid" ? "Mid-73" : "Spanish-68", Math.Min(at, bmx), Math.Max(at, bmx));
        }
        else if (keys.Count == 0 && width >= 0)
        {
            Refuse(field, first, last, "no shell of this family has this width");
        }
        else
        {
            Several(field, [.. keys], first, last, "the width is not said, and shells of this name come in several");
        }
    }

    /// <summary>PF30 (46 x 68): the width behind the bore, close to the name.</summary>
    private int WidthOfPair(int at)
    {
        for (int j = at + 1; j + 2 < _items.Count && j <= at + 4; j++)
        {
            if (Pair(j, out int second) && !InTriple(j) && IsBore(_items[j].Value) && IsShellWidth(second) && _items[j].IsMillimetre)
            {
                _items[j].Used = true;
                return second;
            }

            if (Pair(j, out int bore) && !InTriple(j) && IsBore(_items[bore].Value) && IsShellWidth(j) && _items[bore].IsMillimetre)
            {
                // "68 x 46": the width first.
                _items[bore].Used = true;
                return j;
            }
        }

        if (at >= 3 && Pair(at - 3, out int width) && width == at - 1 && !InTriple(at - 3) && IsBore(_items[at - 3].Value) && IsShellWidth(width) && _items[at - 3].IsMillimetre)
        {
            // "46 x 68 PF30": the pair before the name.
            _items[at - 3].Used = true;
            return width;
        }

        return -1;
    }

    /// <summary>"68 mm wide and 73 mm wide": a second width that shells of this family have, with a word for widths or shells.</summary>
    private int OtherShellWidth(string field, ImmutableArray<string> kinds, int width)
    {
        for (int j = 0; j < _items.Count; j++)
        {
            bool said = j != width && ShellSize(j) && _items[j].Value != _items[width].Value && TopicOf(j) is "n:width" or "t:bb" && Math.Abs(_items[j].Clause - _items[width].Clause) <= 1;
            if (said && kinds.Any(k => _fields[field].Read($"{k} {_items[j].Text}").Keys.Length > 0))
            {
                return j;
            }
        }

        return -1;
    }

    private void ShellWithoutFamily(string field)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (ShellSize(i) && TopicOf(i) is "t:bb")
            {
                Several(field, [.. BottomBrackets.Shell.All.Where(s => s.FitKey.EndsWith("-" + _items[i].Text, StringComparison.Ordinal)).Select(s => s.FitKey)], i, i, "the family of the shell is not said");
            }
        }
    }
}
