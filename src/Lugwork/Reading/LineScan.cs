using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Reads the items of one line for the part of one slot. Every step is bounded, so that the whole is linear in the line.</summary>
internal sealed partial class LineScan
{
    /// <summary>How far marks of one value may stand from each other, items.</summary>
    private const int Reach = 14;

    private const int MostFindings = 200;

    /// <summary>A line with more figures that would be values than this is no line of a sheet.</summary>
    private const int MostTakes = 1_000;

    /// <summary>More figures than this are no line either: each is looked at with what stands around it.</summary>
    private const int MostFigures = 5_000;

    private int _takes;

    private readonly Slot _slot;
    private readonly List<SpecItem> _items;
    private readonly Dictionary<string, SpecField> _fields;
    private readonly int[] _before;
    private readonly int[] _after;
    private readonly bool[] _claimed;

    /// <summary>What the line denies.</summary>
    private readonly List<SpecItem> _denied;

    /// <summary>The field that one figure alone was read for.</summary>
    private readonly Dictionary<int, string> _fieldOf = [];

    public LineScan(Slot slot, List<SpecItem> items, bool guessed = false)
    {
        _slot = slot;
        _items = items;
        _denied = SetAside.From(slot, items, guessed).Denied;
        _fields = SpecFields.Of(slot);
        _before = new int[items.Count];
        _after = new int[items.Count];
        _claimed = new bool[items.Count];
        Topics();
    }

    /// <summary>Values by field, one each.</summary>
    public Dictionary<string, LineFinding> Values { get; } = new(StringComparer.Ordinal);

    /// <summary>What can be several, and what was refused.</summary>
    public List<LineDoubt> Doubts { get; } = [];

    private bool Full => Values.Count + Doubts.Count > MostFindings || _takes > MostTakes;

    public void Run()
    {
        if (_items.Count(i => i.IsNumber) > MostFigures)
        {
            Doubts.Add(new("", [], _items[0].Start, _items[^1].End, LineDoubtKind.Refused, "there are too many figures for one line"));
            return;
        }

        if (Outside())
        {
            return;
        }

        Own();
        ReadSlot();
        if (!Full)
        {
            Figures();
            Alternatives();
            Broken();
            Audit();
        }
    }

    private void ReadSlot()
    {
        if (_slot == Slot.Frame)
        {
            ReadFrame();
        }
        else if (_slot == Slot.Fork)
        {
            ReadFork();
        }
        else if (_slot == Slot.FrontWheel || _slot == Slot.RearWheel)
        {
            ReadWheel(_slot == Slot.RearWheel);
        }
        else if (_slot == Slot.FrontTyre || _slot == Slot.RearTyre)
        {
            ReadTyre();
        }
        else if (_slot == Slot.FrontTube || _slot == Slot.RearTube)
        {
            ReadTube();
        }
        else if (_slot == Slot.Headset)
        {
            ReadHeadset();
        }
        else if (_slot == Slot.Stem)
        {
            ReadStem();
        }
        else if (_slot == Slot.BottomBracket)
        {
            ReadBracket();
        }
        else if (_slot == Slot.Crankset || _slot == Slot.Chainring)
        {
            ReadRings();
        }
        else if (_slot == Slot.Cassette)
        {
            ReadCassette();
        }
        else if (_slot == Slot.Chain)
        {
            ReadChain();
        }
        else
        {
            ReadSmaller();
        }
    }

    /// <summary>The nearest topic before each item, and behind it in its clause before another figure.</summary>
    private void Topics()
    {
        int last = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            _before[i] = last;
            if (_items[i].IsTopic)
            {
                last = i;
            }
        }

        int next = -1;
        for (int i = _items.Count - 1; i >= 0; i--)
        {
            _after[i] = next >= 0 && _items[next].Clause == _items[i].Clause ? next : -1;
            if (_items[i].IsTopic)
            {
                next = i;
            }
            else if (_items[i].IsNumber)
            {
                next = -1;
            }
        }
    }

    /// <summary>The item that says what a figure is of; -1 where none does.</summary>
    private int Link(int i)
    {
        SpecItem item = _items[i];
        int before = _before[i];
        int after = _after[i];
        bool here = before >= 0 && _items[before].Clause == item.Clause;

        // "Inner width of the rim 30": the closer word, not the part behind it.
        if (here && IsHead(_items[before]) && _before[before] is >= 0 and int closer && _items[closer].Clause == item.Clause && !IsHead(_items[closer]) && before - closer <= 4 && !Claimed(closer, i) && !Parted(closer, before))
        {
            before = closer;
        }

        if (here && after >= 0)
        {
            bool adjacent = after == i + 1 || (after == i + 2 && _items[i + 1].Kind == SpecTokenKind.Word);
            bool next = after + 1 < _items.Count && (_items[after + 1].IsNumber || _items[after + 1].IsSign(':') || _items[after + 1].IsSign('='));
            return Claimed(before, i) || ((IsHead(_items[before]) || IsOfFigureBefore(before)) && adjacent && !next) ? after : before;
        }

        if (here || after >= 0)
        {
            return here ? before : after;
        }

        if (before < 0 || _items[before].Clause < item.Clause - 1)
        {
            return -1;
        }

        return !(Claimed(before, i) || IsOfFigureBefore(before)) || HasMark(i, "m:max") || HasMark(i, "m:min") ? before : -1;
    }

    /// <summary>A colon or a sign of equality stands between: what is before it is a heading.</summary>
    private bool Parted(int from, int to)
    {
        for (int j = from + 1; j < to; j++)
        {
            if (_items[j].IsSign(':') || _items[j].IsSign('='))
            {
                return true;
            }
        }

        return false;
    }

    private bool Claimed(int topic, int number)
    {
        if (_claimed[topic])
        {
            return true;
        }

        for (int j = topic + 1; j < number && j < topic + Reach; j++)
        {
            if (_items[j].IsNumber && !(j == number - 2 && _items[number - 1].IsSign('x')))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"20 mm rise": the figure right before a quantity is the one it is of, where no other word is before that.</summary>
    private bool IsOfFigureBefore(int topic)
    {
        int figure = topic - 1;
        return figure >= 0 && _items[figure].IsNumber && _items[figure].Clause == _items[topic].Clause && !IsHead(_items[topic])
            && (_before[figure] < 0 || _items[_before[figure]].Clause != _items[topic].Clause);
    }

    /// <summary>Names of parts, beside which a closer word says more.</summary>
    private static bool IsHead(SpecItem item)
    {
        foreach (string term in item.Terms)
        {
            if (term is "t:frame" or "t:fork" or "t:wheel" or "t:rim" or "t:tyre" or "t:tube" or "t:stem" or "t:bar" or "t:post" or "t:saddle" or "t:crank" or "t:rotor"
                or "t:bearing" or "t:headset" or "t:shock" or "t:chain" or "t:cassette" or "t:hub" or "t:bb" or "t:brake" or "t:valve" or "t:dropper" or "t:chainring" or "t:pedal")
            {
                return true;
            }
        }

        return false;
    }

    private string TopicOf(int i)
    {
        int link = Link(i);
        return link < 0 ? "" : TopicIn(_items[link]);
    }

    private static string TopicIn(SpecItem item)
    {
        foreach (string term in item.Terms)
        {
            if (term[0] is 't' or 'n' or 'f')
            {
                return term;
            }
        }

        return "";
    }

    /// <summary>A mark stands in the clause of an item, within reach.</summary>
    private bool HasMark(int i, string term) => FindMark(i, term, 0) >= 0;

    private int FindMark(int i, string term, int clauses)
    {
        int clause = _items[i].Clause;
        for (int step = 0; step <= Reach; step++)
        {
            foreach (int j in (ReadOnlySpan<int>)[i - step, i + step])
            {
                if (j >= 0 && j < _items.Count && Math.Abs(_items[j].Clause - clause) <= clauses && _items[j].Is(term) && !Negated(j))
                {
                    return j;
                }
            }
        }

        return -1;
    }

    /// <summary>A mark anywhere in the line.</summary>
    private int Anywhere(string term)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (_items[i].Is(term) && !Negated(i))
            {
                return i;
            }
        }

        return -1;
    }

    private bool Negated(int i) =>
        (i > 0 && _items[i - 1].Is("m:not") && _items[i - 1].Clause == _items[i].Clause)
        || (i > 1 && _items[i - 2].Is("m:not") && _items[i - 1].Kind == SpecTokenKind.Word && !_items[i - 1].IsTopic && _items[i - 2].Clause == _items[i].Clause);

    /// <summary>Reads the text for a field and keeps what comes of it: a value, a doubt or a refusal.</summary>
    private bool Take(string field, string text, int first, int last, string assumed = "")
    {
        if (!_fields.TryGetValue(field, out SpecField? known) || Counted())
        {
            return false;
        }

        MarkRead(first, last);
        FieldReading reading = known.Read(text);
        if (known.Type.Name is "SeatpostDiameter" or "SeatTubeBore" && reading.Keys.Length == 1 && !IsNominal(reading.Keys[0]))
        {
            Refuse(field, first, last, "no post of this diameter is listed, and the nearest is not guessed");
            return false;
        }

        if (reading.Keys is [string key])
        {
            if (first == last)
            {
                _fieldOf[first] = field;
            }

            Keep(field, key, first, last, assumed);
            return true;
        }

        Doubts.Add(new(field, reading.Keys, _items[first].Start, _items[last].End, reading.Keys.IsEmpty ? LineDoubtKind.Refused : LineDoubtKind.Several, reading.Reason));
        return false;
    }

    /// <summary>Counts what would be a value; true where there are too many of them, which is a doubt of its own.</summary>
    private bool Counted()
    {
        if (++_takes == MostTakes + 1)
        {
            Doubts.Add(new("", [], _items[0].Start, _items[^1].End, LineDoubtKind.Refused, "there are too many figures for one line"));
        }

        return _takes > MostTakes;
    }

    private static bool IsNominal(string diameter)
    {
        foreach (Seating.SeatpostDiameter known in Seating.SeatpostDiameter.All)
        {
            if (known.FitKey == diameter)
            {
                return true;
            }
        }

        return false;
    }

    private void Keep(string field, string key, int first, int last, string assumed = "")
    {
        if (Full || Counted())
        {
            return;
        }

        MarkRead(first, last);
        LineFinding finding = new(field, key, _items[first].Start, _items[last].End, assumed, first, last);
        if (!Values.TryGetValue(field, out LineFinding? before))
        {
            Values[field] = finding;
        }
        else if (before.Key == key && finding.Start >= before.Start && finding.End - before.Start <= 60 && assumed.Length == 0)
        {
            // Said twice beside each other: the words of both.
            Values[field] = before with { End = Math.Max(before.End, finding.End), Last = Math.Max(before.Last, last), Assumed = before.Assumed.Length > 0 ? assumed : before.Assumed };
        }
        else if (before.Key != key)
        {
            Doubts.Add(new(field, [before.Key, key], finding.Start, finding.End, LineDoubtKind.Conflict, "the line says two different values"));
        }
        else if (before.Assumed.Length > 0 && assumed.Length == 0)
        {
            Values[field] = finding;
        }
    }

    /// <summary>Marks what a value was read from. A figure in between counts only where a sign joins it to another one of them: any other is still open.</summary>
    private void MarkRead(int first, int last)
    {
        for (int i = first; i <= last; i++)
        {
            bool joined = (i - 2 >= first && Links(_items[i - 1]) && _items[i - 2].IsNumber) || (i + 2 <= last && Links(_items[i + 1]) && _items[i + 2].IsNumber);
            _items[i].Used |= joined || !_items[i].IsNumber || i == first || i == last;
        }
    }

    private void Several(string field, ImmutableArray<string> keys, int first, int last, string reason)
    {
        for (int i = first; i <= last; i++)
        {
            _items[i].Used = true;
        }

        Doubts.Add(new(field, keys, _items[first].Start, _items[last].End, LineDoubtKind.Several, reason));
    }

    private void Refuse(string field, int first, int last, string reason, LineDoubtKind kind = LineDoubtKind.Refused)
    {
        for (int i = first; i <= last; i++)
        {
            _items[i].Used = true;
        }

        Doubts.Add(new(field, [], _items[first].Start, _items[last].End, kind, reason));
    }

    private bool Free(int i) => i >= 0 && i < _items.Count && _items[i] is { IsNumber: true, Used: false, IsBroken: false };

    /// <summary>A figure, a times sign and a figure, none of them used; the place of the last one.</summary>
    private bool Pair(int i, out int second)
    {
        second = i + 2;
        if (Free(i) && i + 3 < _items.Count && _items[i + 1].IsSign('x') && _items[i + 2].IsSign('\u00F8'))
        {
            second = i + 3;
        }

        return Free(i) && i + 2 < _items.Count && _items[i + 1].IsSign('x') && Free(second);
    }

    private bool Triple(int i) => Pair(i, out int second) && second == i + 2 && i + 4 < _items.Count && _items[i + 3].IsSign('x') && Free(i + 4);

    private bool InTriple(int i) => Triple(i) || (i >= 2 && Free(i - 2) && _items[i - 1].IsSign('x'));

    /// <summary>Words that are values of one type go to one field of that type.</summary>
    private void Words(string type, string field, Func<int, bool>? where = null)
    {
        string prefix = "v:" + type + "=";
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            SpecItem item = _items[i];
            if (item.Used && item.IsNumber)
            {
                continue;
            }

            foreach (string term in item.Terms)
            {
                if (!term.StartsWith(prefix, StringComparison.Ordinal) || (where is not null && !where(i)))
                {
                    continue;
                }

                if (Negated(i))
                {
                    item.Used = true;
                    break;
                }

                string[] keys = term[prefix.Length..].Split('|');
                if (keys.Length == 1)
                {
                    Keep(field, keys[0], i, i);
                }
                else
                {
                    Several(field, [.. keys], i, i, "the words stand for several");
                }

                break;
            }
        }
    }

    /// <summary>Drops what a closer reading of the same field makes needless: a kind without its size beside one with it.</summary>
    private void Settle(string field)
    {
        if (Values.TryGetValue(field, out LineFinding? found))
        {
            Doubts.RemoveAll(d => d.Field == field && d.Kind == LineDoubtKind.Several && d.Keys.Contains(found.Key));
        }
    }
}

/// <summary>A value that was read, before it is told.</summary>
/// <param name="Field">Key of the field.</param>
/// <param name="Key">The value.</param>
/// <param name="Start">First character.</param>
/// <param name="End">Behind the last character.</param>
/// <param name="Assumed">What was taken for granted; empty where nothing was.</param>
/// <param name="First">First item.</param>
/// <param name="Last">Last item.</param>
internal sealed record LineFinding(string Field, string Key, int Start, int End, string Assumed, int First = 0, int Last = 0);

/// <summary>Why something was not accepted.</summary>
internal enum LineDoubtKind
{
    Several,
    Conflict,
    Refused,
    Outside,
    Broken,
}

/// <summary>What was not accepted, and what it can be.</summary>
internal sealed record LineDoubt(string Field, ImmutableArray<string> Keys, int Start, int End, LineDoubtKind Kind, string Reason);
