namespace Lugwork.Reading;

/// <summary>The bores of a head tube by their size in millimetres.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Head tube 44 mm top, 56 mm bottom", "head tube 44/56". A size that several bores have is left to doubt.</summary>
    private void ReadHeadTubeSizes()
    {
        if (Values.ContainsKey("headTubeUpper") || Values.ContainsKey("headTubeLower") || Doubts.Exists(d => d.Field.StartsWith("headTube", StringComparison.Ordinal)))
        {
            return;
        }

        bool topic = Anywhere("t:headtube") >= 0 || Anywhere("t:headset") >= 0 || (Anywhere("m:upper") >= 0 && Anywhere("m:lower") >= 0 && Anywhere("m:inside") >= 0 && Anywhere("t:shock") < 0 && Anywhere("t:hardware") < 0);
        List<(string Cup, decimal Size, int First, int Last)> found = [];
        for (int i = 0; i < _items.Count && found.Count < 4; i++)
        {
            if (IsHeadBore(i, topic))
            {
                found.Add((_items[i].Text, 0, i, i));
            }
        }

        if (found.Count is 0 or > 2 || (found.Count == 1 && (found[0].Cup is "34" or "37" ? HalfOf(found, 0) == 0 && !SaysBothCups(found[0].First, half: false) : false)))
        {
            return;
        }

        if (found.Count == 2)
        {
            bool pair = found[1].First == found[0].First + 2 && _items[found[0].First + 1].IsSign('/');
            bool said = HalfOf(found, 0) != 0 || HalfOf(found, 1) != 0 || HeadOrder(found[0].First) > 0 || (HalfInBracket(found[0].First) is > 0 and int one && HalfInBracket(found[1].First) == 3 - one);
            if (!said && !(pair && _items[found[0].First].Value <= _items[found[1].First].Value))
            {
                return;
            }
        }

        if (found.Count == 1 && HalfOf(found, 0) == 0 && !SaysBothCups(found[0].First, half: false))
        {
            Several("headTubeUpper", [found[0].Cup], found[0].First, found[0].First, "the end is not said: upper or lower");
            return;
        }

        MarkAll(found[0].First, found[0].First);
        MarkAll(found[^1].First, found[^1].First);
        TakeCups(found);
    }

    private bool IsHeadBore(int i, bool topic)
    {
        if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction || _items[i].Value is < 29 or > 63 || _fields["headTubeUpper"].Read(_items[i].Text).Keys.Length != 1)
        {
            return false;
        }

        if (!topic)
        {
            // 44/56 by itself is the two ends of a head tube.
            bool first = _items[i].Value == 44 && i + 2 < _items.Count && _items[i + 1].IsSign('/') && Free(i + 2) && _items[i + 2].Value is 56 or 55;
            bool second = i >= 2 && _items[i - 1].IsSign('/') && Free(i - 2) && _items[i - 2].Value == 44 && _items[i].Value is 56 or 55;
            return (first || second) && _items.Count <= 4;
        }

        // "Head tube: 44 mm / 56 mm".
        if (i >= 2 && _items[i - 1].IsSign('/') && Free(i - 2) && _items[i - 2].Value < _items[i].Value && TopicOf(i) is "" or "t:headtube" && IsHeadBore(i - 2, topic) && !(i >= 3 && _items[i - 3].IsSign('/')))
        {
            return true;
        }

        bool outside = (i > 0 && _items[i - 1].Is("m:outside")) || (i + 1 < _items.Count && _items[i + 1].Is("m:outside"));
        bool half = FindMark(i, "m:upper", 0) >= 0 || FindMark(i, "m:lower", 0) >= 0 || FindMark(i, "m:cups", 0) >= 0 || HalfInBracket(i) != 0;
        string of = TopicOf(i);
        return !outside && (of is "t:headtube" || (of is "t:headset" or "t:inner" && (Clause(i, "t:headtube") || Clause(i, "t:headset"))) || (of is "" && half && (Clause(i, "t:headtube") || _items[i].Clause <= 8)));
    }

    /// <summary>"44 mm (top)": the half in the bracket behind the figure; 0 where none is.</summary>
    private int HalfInBracket(int i) => i + 1 < _items.Count && _items[i + 1].IsSign('(') ? HalfBehindBracket(i) : 0;

    /// <summary>49.6 beside ZS49: the bore of the cup that was read.</summary>
    private bool IsBoreOfCup(int i)
    {
        foreach (string field in (ReadOnlySpan<string>)["headTubeUpper", "headTubeLower", "upperCup", "lowerCup"])
        {
            if (_items[i].IsMillimetre && Values.TryGetValue(field, out LineFinding? cup) && decimal.TryParse(cup.Key.AsSpan(char.IsLetter(cup.Key[0]) ? 2 : 0), System.Globalization.NumberStyles.Integer, System.Globalization.CultureInfo.InvariantCulture, out decimal bore) && _items[i].Value != bore && Math.Abs(_items[i].Value - bore) < 0.7m)
            {
                return true;
            }
        }

        return false;
    }
}
