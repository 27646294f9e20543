namespace Lugwork.Reading;

/// <summary>Headsets.</summary>
internal sealed partial class LineScan
{
    /// <summary>"26.4 race": the word behind its figure.</summary>
    private bool IsRace(int i) => i < _items.Count && (_items[i].Is("t:crownrace") || _items[i].Text is "race" or "konus" or "cono" or "conus" or "ralla");

    private void ReadHeadset()
    {
        ReadBearings("upperBearing", "lowerBearing");
        ReadCups();
        Words("SteererKind", "kind");
        ReadKind("kind");
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i))
            {
                continue;
            }

            string topic = TopicOf(i);
            if (IsRace(i + 1) && _items[i].IsMillimetre && _items[i].Value is 26.4m or 27 or 30 or 33 or 37 or 39.8m or 40 && !Joins(i) && _items[i + 1].Clause == _items[i].Clause && !(i + 2 < _items.Count && _items[i + 2].Kind != SpecTokenKind.Sign))
            {
                Take("crownRace", _items[i].Figure, i, i);
            }
            else if (i > 0 && _items[i - 1].Text is "race" or "konus" or "cone" or "cono" or "conus" or "pista" or "ralla" && _items[i].IsMillimetre && _items[i].Value is > 25 and < 42)
            {
                Take("crownRace", _items[i].Figure, i, i);
            }
            else if (topic is "t:inner" && Link(i) is > 0 and int inside && _before[inside] is >= 0 and int race && _items[race].Is("t:crownrace") && _items[race].Clause == _items[i].Clause && _items[i].Value is > 25 and < 42)
            {
                // "Crown race, inner diameter 39.8".
                Take("crownRace", _items[i].Figure, i, i);
            }
            else if (topic is "t:crownrace")
            {
                _claimed[Link(i)] = true;
                Take("crownRace", _items[i].Figure, i, i);
            }
            else if ((IsSteererInch(i) && (topic is "" or "t:headset" or "t:steerer" || (topic is "t:thread" && IsInchAlone(i)))) || (topic is "t:steerer" && Free(i) && _items[i].IsMillimetre))
            {
                Take("steerer", _items[i].IsMillimetre && !_items[i].IsFraction ? _items[i].Text : Inches(i), i, i);
            }
        }
    }
}
