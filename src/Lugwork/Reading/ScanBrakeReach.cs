namespace Lugwork.Reading;

/// <summary>Classes of reach of rim brakes by the word "drop".</summary>
internal sealed partial class LineScan
{
    /// <summary>"Long drop caliper", "short-drop brake": a class that makers draw differently, as that of the reach.</summary>
    private void DropClass()
    {
        for (int i = 1; i < _items.Count; i++)
        {
            bool drop = _items[i].Kind == SpecTokenKind.Word && _items[i].Text is "drop" or "drops";
            string word = _items[i - 1].IsSign('-') && i > 1 ? _items[i - 2].Text : _items[i - 1].Text;
            if (drop && (IsReachClass(word) || word is "deep" or "medium" or "standard") && !_items.Exists(o => o is { IsNumber: true, Value: >= 35 and <= 80 }))
            {
                Several("reach", word[0] is 'l' or 'd' ? ["long-55-73", "long-57-73"] : [], i - 1, i, "makers draw this class differently, and no millimetres are given");
                return;
            }
        }
    }
}
