namespace Lugwork.Reading;

/// <summary>The bore and the outside of a seat tube, said in one line.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Seat tube 31.4 inside, 34.9 outside", "piantone: dentro 31,4, fuori 34,9": two figures and two words for a side, each figure with the word of its place in the line, and the bore the smaller one. Anything else is left to the other readers.</summary>
    private void SeatTubeBothSides()
    {
        if (Anywhere("t:seattube") < 0 || _items.Count > 40)
        {
            return;
        }

        List<int> figures = [];
        List<int> sides = [];
        for (int i = 0; i < _items.Count; i++)
        {
            if (Free(i) && _items[i] is { IsMillimetre: true, IsFraction: false, Value: > 22 and < 45 } && !JoinsClosely(i))
            {
                figures.Add(i);
            }
            else if (_items[i].Kind == SpecTokenKind.Word && (IsInsideWord(_items[i]) || _items[i].Is("m:outside")))
            {
                sides.Add(i);
            }
            else if (WordLists.ScanSeatTubeSidesSeatTubeBothSides.Contains(_items[i].Text) || (_items[i].IsTopic && TopicIn(_items[i]) is "t:headtube" or "t:headset" or "t:fork" or "t:steerer" or "t:bb" or "t:stem" or "t:bar"))
            {
                return;
            }
        }

        if (figures.Count != 2 || sides.Count != 2 || IsInsideWord(_items[sides[0]]) == IsInsideWord(_items[sides[1]]))
        {
            return;
        }

        (int bore, int outside) = IsInsideWord(_items[sides[0]]) ? (figures[0], figures[1]) : (figures[1], figures[0]);
        bool interlaced = (sides[0] < figures[0] && figures[0] < sides[1]) || (figures[0] < sides[0] && sides[0] < figures[1] && figures[1] < sides[1]) || (figures[0] < sides[0] && sides[1] < figures[1]);
        if (interlaced && figures[1] - figures[0] <= 8 && IsNominal(_items[bore].Text) && _items[bore].Value < _items[outside].Value && _fields["seatTubeOutside"].Read(_items[outside].Text).Keys.Length == 1)
        {
            Take("seatTube", _items[bore].Text, bore, bore);
            Take("seatTubeOutside", _items[outside].Text, outside, outside);
        }
    }

    /// <summary>No tube is wider inside than outside: two figures that say so were taken the wrong way round, or one of them is of something else.</summary>
    private void BoreWithinTube()
    {
        if (_slot == Slot.Frame && Values.TryGetValue("seatTube", out LineFinding? bore) && Values.TryGetValue("seatTubeOutside", out LineFinding? outside)
            && decimal.TryParse(bore.Key, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out decimal within)
            && decimal.TryParse(outside.Key, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out decimal without) && within >= without)
        {
            Doubts.Add(new("seatTube", [bore.Key, outside.Key], Math.Min(bore.Start, outside.Start), Math.Max(bore.End, outside.End), LineDoubtKind.Conflict, "a seat tube is narrower inside than outside"));
        }
    }

    private static bool IsInsideWord(SpecItem item) => item.Is("m:inside") || item.Is("t:inner");
}
