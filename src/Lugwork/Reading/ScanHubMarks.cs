using System.Collections.Immutable;
using Lugwork.Hubs;

namespace Lugwork.Reading;

/// <summary>Words that tell hub standards apart, and the end that they are of.</summary>
internal sealed partial class LineScan
{
    private static void Say(List<string> words, int mark, string word)
    {
        if (mark >= 0)
        {
            words.Add(word);
        }
    }

    private void MarkUsed(int from, int to)
    {
        for (int i = from; i <= to; i++)
        {
            _items[i].Used |= !_items[i].IsNumber;
        }
    }

    /// <summary>A mark of the same clause, or of the next one where that says nothing else.</summary>
    private int Near(int first, int last, string term)
    {
        int at = FindMark(first, term, 0);
        at = at >= 0 ? at : FindMark(last, term, 0);
        if (at >= 0)
        {
            return at;
        }

        at = FindMark(last, term, (_onlyHub ??= OnlyHub()) ? 4 : 1);
        return at >= 0 && !OtherThing(at) ? at : -1;
    }

    /// <summary>The line is about hub ends and nothing else.</summary>
    private bool OnlyHub() => !_items.Exists(i => i.IsTopic && !WordLists.ScanHubMarksOnlyHub.Contains(TopicIn(i)));

    /// <summary>The clause of a mark is about another part or has its own hub figures.</summary>
    private bool OtherThing(int mark)
    {
        for (int j = Math.Max(0, mark - Reach); j < _items.Count && j <= mark + Reach; j++)
        {
            if (_items[j].Clause != _items[mark].Clause)
            {
                continue;
            }

            bool ofWheel = _slot != Slot.Frame && _slot != Slot.Fork && TopicIn(_items[j]) is "t:brake" or "t:rim" or "t:rotor";
            if (_items[j].IsTopic && !ofWheel && !WordLists.ScanHubMarksOnlyHub.Contains(TopicIn(_items[j])))
            {
                return true;
            }
        }

        return false;
    }

    private int HubMark(int i)
    {
        foreach (string term in new[] { "m:qr", "m:thru", "m:nutted", "m:boost", "m:superboost", "m:thrubolt", "m:tandem", "m:track", "m:dh", "m:wideflange", "m:flex" })
        {
            if (Near(i, i, term) is >= 0 and int at)
            {
                return at;
            }
        }

        return -1;
    }

    private bool HubTopic(int i) => TopicOf(i) is "t:spacing" or "t:hub" or "t:axle" or "t:wheel" or "t:axlestandard" || HubMark(i) >= 0;

    private bool Hardware(int i) => TopicOf(i) is "t:hardware";

    /// <summary>A lone axle size beside a word for axles.</summary>
    private int AxleNear(int width)
    {
        for (int step = 1; step <= Reach; step++)
        {
            foreach (int j in (ReadOnlySpan<int>)[width - step, width + step])
            {
                if (Free(j) && !EndsInSpeeds(j) && !IsOfSpeeds(j) && Math.Abs(_items[j].Clause - _items[width].Clause) <= 2 && (_items[j].IsMillimetre || (_items[j].IsInch && _items[j].IsFraction)) && (Array.IndexOf(AxleSizes, _items[j].Value) >= 0 || (_items[j].IsFraction && _items[j].Value is 0.375m or 0.3125m && (TopicOf(j) is "t:axle" || HasMark(j, "m:nutted") || step == 1)))
                    && !(j + 2 < _items.Count && _items[j + 1].IsSign('-') && _items[j + 1].Glued && _items[j + 2].IsNumber) && !(j > 1 && _items[j].Glued && _items[j - 1].IsSign('-') && _items[j - 2].IsNumber) && !(j > 0 && (_items[j - 1].IsSign('x') || (_items[j - 1].IsSign('/') && !_items[j - 1].IsFraction) || _items[j - 1].Is("m:hg"))) && !(j + 1 < _items.Count && _items[j + 1].IsSign('/') && !_items[j + 1].IsFraction) && !(j + 1 < _items.Count && _items[j + 1].IsSign('x')) && (HubMark(j) >= 0 || TopicOf(j) is "t:axle" || (j + 1 < _items.Count && _items[j + 1].Is("t:axle") && _items[j + 1].Clause == _items[j].Clause) || IsThickness(j) || (step == 1 && _items[j].IsFraction)))
                {
                    return j;
                }
            }
        }

        return -1;
    }

    /// <summary>"Le bruit est superbe en descente": what it is ridden on, which is no width of a flange.</summary>
    private bool IsRideDown(int i) => _items[i].Text is "descente" or "descenso" or "discesa" or "afdaling" || (_items[i].Text is "de" or "da" && _items[i].IsFraction);

    /// <summary>"HG para 8, 9 y 10 velocidades": one of several numbers of sprockets, of which the last has the word behind it.</summary>
    private bool IsOfSpeeds(int i)
    {
        if (_items[i] is not { Unit: "" or "speed", IsFraction: false, Value: >= 5 and <= 14 })
        {
            return false;
        }

        int at = i;
        while (at < i + 10 && at + 2 < _items.Count && _items[at].Unit is not "speed" && IsListSign(at + 1) && _items[at + 2] is { IsNumber: true, IsFraction: false, Value: >= 5 and <= 14 })
        {
            at += 2;
        }

        return _items[at].Unit == "speed" || (at > i && at + 1 < _items.Count && _items[at + 1].Is("u:speed"));
    }

    private static bool IsHubWidth(decimal width, bool rear)
    {
        foreach (HubStandard standard in HubStandard.All)
        {
            if (standard.IsRear == rear && standard.OldMicrometres == width * 1000)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The nearest word before it in its clause says the other end, or names another part.</summary>
    private bool OtherEnd(int i, bool rear)
    {
        for (int j = i - 1; j >= 0 && j >= i - 6 && _items[j].Clause == _items[i].Clause; j--)
        {
            if (_items[j].Is(rear ? "m:front" : "m:rear"))
            {
                return _slot == Slot.Frame || _slot == Slot.Fork;
            }

            if (_items[j].Is(rear ? "m:rear" : "m:front"))
            {
                return false;
            }

            if (_items[j].Is("t:fork") && _slot == Slot.Frame)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>17.5 mm beside the word for an offset: the rear end of a fat bicycle.</summary>
    private int OffsetFigure(int word)
    {
        for (int i = Math.Max(0, word - 3); i < _items.Count && i <= word + 4; i++)
        {
            if (Free(i) && _items[i].Value == 17.5m && _items[i].IsMillimetre)
            {
                return i;
            }
        }

        return -1;
    }
}
