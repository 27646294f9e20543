namespace Lugwork.Reading;

/// <summary>How far a seatpost goes in, said with a verb.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Pen minstens 80 mm erin, hooguit 210": a line about a post and nothing else, with a verb of going in, a least figure and a most figure.</summary>
    private void InsertionByVerb()
    {
        if (Values.Count > 0 || Doubts.Count > 0 || _items.Count > 24 || !_items.Exists(IsPostWord) || !_items.Exists(IsGoingIn) || _items.Exists(o => o.IsTopic && !IsPostWord(o) && TopicIn(o) is not ("t:insertion" or "t:length" or "t:depth" or "t:frame" or "t:seattube")))
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

    private static bool IsGoingIn(SpecItem item) =>
        item.Is("t:insertion") || (item.Kind == SpecTokenKind.Word && item.Text is "erin" or "rein" or "hinein" or "reinstecken" or "stecken" or "entra" or "entrar" or "meter" or "mete" or "metida" or "meterla" or "entrare" or "infilare" or "infilato" or "infilata" or "rentre" or "rentrer" or "entrer" or "enfoncer" or "enfoncez" or "steken" or "insteken" or "inside");
}
