namespace Lugwork.Reading;

/// <summary>Lengths of seatposts without a unit.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Tige de selle de 400 en 30.9", "350 long, 27.2", "27.2, mide 300": beside the diameter that was read the one other figure is a length that posts are sold in, and a word binds it as a measure. A price or a travel has a word or sign of its own.</summary>
    private void LengthOfPostByWord()
    {
        if (!Values.TryGetValue("diameter", out LineFinding? diameter) || Values.ContainsKey("length") || Doubts.Count > 0 || Anywhere("t:dropper") >= 0 || Anywhere("t:travel") >= 0 || Anywhere("m:adapt") >= 0)
        {
            return;
        }

        if (IsCellBeside(diameter.First + 2))
        {
            Length("length", diameter.First + 2);
            return;
        }

        int found = -1;
        for (int i = 0; i < _items.Count; i++)
        {
            if (!_items[i].IsNumber || _items[i].Used || _items[i].Unit is "other" or "g")
            {
                continue;
            }

            if (found >= 0 || _items[i] is not { Unit: "", IsFraction: false, Value: >= 200 and <= 500 } || _items[i].Value % 10 != 0 || JoinsClosely(i))
            {
                return;
            }

            found = i;
        }

        if (found >= 0 && Math.Abs(_items[found].Clause - _items[diameter.First].Clause) <= (TopicOf(found) == "t:length" ? 2 : 1) && TopicOf(found) is "" or "t:post" or "t:seattube" or "t:material" or "t:length" && ((IsMeasured(found - 1) && !(found + 1 < _items.Count && _items[found + 1] is { Kind: SpecTokenKind.Word } unit && (unit.Terms.IsEmpty || unit.Text is "auf" or "on") && unit.Clause == _items[found].Clause && !IsLengthWord(found + 1))) || IsLengthWord(found + 1) || (_items[found].Value is >= 250 and <= 450 && found + 1 < _items.Count && _items[found + 1] is { IsGuessed: false, Text: not ("posted" or "posts" or "seatposts" or "stutzen" or "sattelstutzen" or "tiges" or "tijas" or "pennen") } && _items[found + 1].Is("t:post") && _items[found + 1].Clause == _items[found].Clause)))
        {
            Length("length", found);
        }
    }

    /// <summary>"ZADELPEN;31.6;400;zwart": alone in the cell right behind that of the diameter, and a length that posts are sold in.</summary>
    private bool IsCellBeside(int figure) =>
        figure < _items.Count && _items[figure] is { IsNumber: true, Used: false, Unit: "", IsFraction: false, Places: 0, Value: >= 250 and <= 600 } && _items[figure].Value % 50 == 0 && IsCellEnd(figure - 1) && IsCellEnd(figure + 1);

    private bool IsCellEnd(int i) => i < _items.Count && (_items[i].IsSign(';') || _items[i].IsSign('|'));

    /// <summary>A preposition or verb before a measure.</summary>
    private bool IsMeasured(int i) =>
        i >= 0 && _items[i].Kind == SpecTokenKind.Word && WordLists.ScanPostLengthsIsMeasured.Contains(_items[i].Text);

    private bool IsLengthWord(int i) =>
        i < _items.Count && _items[i].Kind == SpecTokenKind.Word && WordLists.ScanPostLengthsIsLengthWord.Contains(_items[i].Text);
}
