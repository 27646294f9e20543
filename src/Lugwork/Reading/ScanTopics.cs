using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>What a figure is of: the word before or behind it that says so.</summary>
internal sealed partial class LineScan
{
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

        // "Seat post size 27.2": the part, not the word for sizes behind it.
        if (here && _items[before].Is("n:size") && _before[before] is >= 0 and int head && before - head <= 2 && _items[head].Clause == item.Clause && IsHead(_items[head]) && !_items[head].Is("t:frame") && !_items[head].Is("t:wheel") && !Parted(head, before))
        {
            before = head;
        }

        if (here && after >= 0)
        {
            bool adjacent = after == i + 1 || (after == i + 2 && _items[i + 1].Kind == SpecTokenKind.Word && !_items[i + 1].Is("m:and") && !_items[i + 1].Is("m:or")) || (after == i + 2 && _items[i + 1].IsSign('-') && _items[i + 1].Glued && _items[i + 2].Glued);
            bool next = after + 1 < _items.Count && (_items[after + 1].IsNumber || _items[after + 1].IsSign(':') || _items[after + 1].IsSign('='));
            return Claimed(before, i) || ((IsHead(_items[before]) || IsOfFigureBefore(before)) && adjacent && !next) ? after : before;
        }

        // "31.6 travel 125": the word belongs to the figure behind it.
        if (!here && after >= 0 && after + 1 < _items.Count && _items[after + 1].IsNumber && TopicIn(_items[after]) is "t:travel" or "t:length" or "t:insertion")
        {
            after = -1;
        }

        if (here || after >= 0)
        {
            return here ? before : after;
        }

        // "Max ring (1x only): 34": the bracket parts the heading from its colon.
        int back = BracketBefore(i) ? 2 : 1;
        if (before < 0 || _items[before].Clause < item.Clause - back)
        {
            return -1;
        }

        // "Seat post size - 31.6mm": the part, not the word for sizes behind it.
        if (_items[before].Is("n:size") && _before[before] is >= 0 and int sized && before - sized <= 2 && _items[sized].Clause == _items[before].Clause && IsHead(_items[sized]) && !_items[sized].Is("t:frame") && !_items[sized].Is("t:wheel") && !Parted(sized, before))
        {
            before = sized;
        }

        // "Travel of the fork, max: 160": the quantity, not the part that it is of.
        if (IsHead(_items[before]) && _before[before] is >= 0 and int quantity && _items[quantity].Clause == _items[before].Clause && !IsHead(_items[quantity]) && before - quantity <= 3 && (!Claimed(quantity, i) || HasMark(i, "m:max") || HasMark(i, "m:min")) && !Parted(quantity, before))
        {
            before = quantity;
        }

        if (back == 2 && !Claimed(before, i))
        {
            return before;
        }

        return !(Claimed(before, i) || IsOfFigureBefore(before) || IsPartOfFigureBefore(before)) || HasMark(i, "m:max") || HasMark(i, "m:min") ? before : -1;
    }

    private bool BracketBefore(int i)
    {
        int at = i - 1;
        return at > 1 && (_items[at].IsSign(':') || _items[at].IsSign('=')) && (_items[at - 1].IsSign(')') || _items[at - 1].IsSign(']'));
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
            if (_items[j].IsNumber && !IsOneRing(j) && !(j == number - 2 && _items[number - 1].IsSign('x')))
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

    /// <summary>"27.2 post, ...": the part right behind its figure, which starts the clause, is not the next clause's.</summary>
    private bool IsPartOfFigureBefore(int topic)
    {
        int figure = topic - 1;
        return figure >= 0 && _items[figure].IsNumber && _items[figure].Clause == _items[topic].Clause && _items[topic].Is("t:post")
            && (figure == 0 || _items[figure - 1].Clause != _items[topic].Clause || (figure == 1 && _items[0].Terms.IsEmpty));
    }

    /// <summary>Names of parts, beside which a closer word says more.</summary>
    private static bool IsHead(SpecItem item)
    {
        foreach (string term in item.Terms)
        {
            if (WordLists.ScanTopicsIsHead.Contains(term))
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
}
