namespace Lugwork.Reading;

/// <summary>How far a seatpost goes in, said with a verb.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Pen minstens 80 mm erin, hooguit 210": a line about a post and nothing else, with a verb of going in, a least figure and a most figure.</summary>
    private void InsertionByVerb()
    {
        if (Values.Count > 0 || Doubts.Count > 0 || _items.Count > 24 || !_items.Exists(o => IsPostWord(o) || IsDepthNoun(o)) || !GoesIn() || _items.Exists(o => o.IsTopic && !IsPostWord(o) && TopicIn(o) is not ("t:insertion" or "t:length" or "t:depth" or "t:frame" or "t:seattube")))
        {
            return;
        }

        if (InsertionOfTwo())
        {
            return;
        }

        (int least, int most) = (-1, -1);
        for (int i = 0; i < _items.Count; i++)
        {
            if (!_items[i].IsNumber)
            {
                continue;
            }

            string limit = LimitBeside(i);
            if (Clause(i, "t:frame") && !Clauses(_items[i].Clause).Any(o => IsPostWord(o) || IsGoingIn(o)))
            {
                // "Frame max 120": of what it carries.
                return;
            }

            if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction || JoinsClosely(i) || _items[i].Value is < 40 or > 400 || limit.Length == 0 || (limit == "m:min" ? least : most) >= 0)
            {
                return;
            }

            (least, most) = limit == "m:min" ? (i, most) : (least, i);
        }

        if (least >= 0 && most >= 0 && _items[least].Value >= _items[most].Value)
        {
            return;
        }

        if (least >= 0 && _items[least].Value <= 250)
        {
            Length("leastInsertion", least);
        }

        if (most >= 0)
        {
            Length("mostInsertion", most);
        }
    }

    /// <summary>"Seatpost goes in 80 min, 210 max", "mini 75, maxi 195", "insertion depth 75-195": two figures and a word for the least and one for the most, each figure with the word of its place, or one range behind a word for the depth. The least is the smaller one.</summary>
    private bool InsertionOfTwo()
    {
        List<int> figures = [];
        List<int> limits = [];
        int must = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (_items[i].IsNumber)
            {
                figures.Add(i);
            }
            else if (LimitOfWord(_items[i]).Length > 0)
            {
                limits.Add(i);
            }

            must = must < 0 && _items[i].Kind == SpecTokenKind.Word && WordLists.ScanInsertionInsertionOfTwo.Contains(_items[i].Text) ? i : must;
        }

        if (figures.Count != 2 || !figures.TrueForAll(f => Free(f) && _items[f].IsMillimetre && !_items[f].IsFraction && _items[f].Value is >= 40 and <= 400))
        {
            return false;
        }

        (int first, int second) = (figures[0], figures[1]);
        if (limits.Count == 0 && second == first + 2 && (_items[first + 1].IsSign('-') || _items[first + 1].Is("m:to")) && first > 0 && _items.Exists(o => o.Is("t:insertion") && !o.Is("m:min") && !o.Is("m:max")))
        {
            return TakeInsertion(first, second);
        }

        if (limits.Count == 1 && must >= 0 && must < limits[0] && _items[limits[0]].Is("m:max"))
        {
            limits.Insert(0, must);
        }

        if (limits.Exists(l => Clause(l, "t:frame") && !Clauses(_items[l].Clause).Any(o => IsPostWord(o) || IsGoingIn(o))))
        {
            // "Frame max 120": of what it carries.
            return false;
        }

        if (limits.Count != 2 || JoinsByTimes(first) || !((limits[0] < first && first < limits[1]) || (first < limits[0] && limits[0] < second && second < limits[1])))
        {
            return false;
        }

        bool leastFirst = LimitOfWord(_items[limits[0]]) != "m:max";
        bool mostSecond = LimitOfWord(_items[limits[1]]) == "m:max";
        return leastFirst == mostSecond && (leastFirst ? TakeInsertion(first, second) : TakeInsertion(second, first));
    }

    private bool JoinsByTimes(int i) => (i > 0 && _items[i - 1].IsSign('x')) || (i + 1 < _items.Count && _items[i + 1].IsSign('x'));

    private bool TakeInsertion(int least, int most)
    {
        if (_items[least].Value >= _items[most].Value || _items[least].Value > 250)
        {
            return false;
        }

        Length("leastInsertion", least);
        Length("mostInsertion", most);
        return true;
    }

    /// <summary>A verb of going in, or a word for in before the seat tube.</summary>
    private bool GoesIn()
    {
        for (int i = 0; i < _items.Count; i++)
        {
            bool into = i + 1 < _items.Count && _items[i].Text is "goes" or "go" or "slides" && (_items[i].IsFraction || _items[i + 1].Text is "in" or "into");
            // "Post in the frame: 90 min, 250 max".
            bool frame = i > 0 && _items[i].Text is "frame" or "tube" or "cadre" or "telaio" && Clauses(_items[i].Clause).Any(IsPostWord);
            bool tube = i > 0 && (_items[i].Is("t:seattube") || frame) && (_items[i - 1].Text is "in" or "im" or "ins" or "dans" or "nel" or "into" || (i > 1 && _items[i - 1].Text is "de" or "het" or "the" or "das" or "le" or "el" or "il" && _items[i - 2].Text is "in" or "into" or "dans" or "en"));
            if (into || tube || IsGoingIn(_items[i]) || (_items[i].Is("v:DropperRouting=internal") && _items[i].Text is "im" or "in" or "dans" or "nel" or "en" && i > 0 && IsPostWord(_items[i - 1]) && Anywhere("m:min") >= 0))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The word of limit right before a figure or right behind it; empty where there is none.</summary>
    private string LimitBeside(int i)
    {
        string behind = i + 1 < _items.Count && _items[i + 1].Clause == _items[i].Clause && !(i + 2 < _items.Count && _items[i + 2].IsNumber) ? LimitOfWord(_items[i + 1]) : "";
        for (int j = i - 1; j >= 0 && j >= i - 3 && !_items[j].IsNumber && _items[j].Clause == _items[i].Clause; j--)
        {
            if (LimitOfWord(_items[j]) is { Length: > 0 } before)
            {
                // "80 mini et 210 maxi": the word right behind a figure is that figure's.
                return behind.Length > 0 && j > 0 && _items[j - 1].IsNumber ? behind : before;
            }
        }

        return behind;
    }

    private static string LimitOfWord(SpecItem item) => item.Is("m:max") ? "m:max" : item.Is("m:min") ? "m:min" : "";

    private static bool IsPostWord(SpecItem item) => item.Is("t:post") || item is { Text: "pen", IsFraction: false };

    /// <summary>The depth that a post goes in, by its noun.</summary>
    private static bool IsDepthNoun(SpecItem item) =>
        item.Is("t:insertion") && WordLists.ScanInsertionIsDepthNoun.Contains(item.Text);

    private static bool IsGoingIn(SpecItem item) =>
        item.Is("t:insertion") || (item.Kind == SpecTokenKind.Word && WordLists.ScanInsertionIsGoingIn.Contains(item.Text));
}
