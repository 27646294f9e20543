namespace Lugwork.Reading;

/// <summary>Covers of headsets.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Passage de gaines : externe", "cavi: esterni": the word for the way of a cable beside the cables.</summary>
    private void CoverByRouting()
    {
        for (int i = 1; i < _items.Count && !Full && !Values.ContainsKey("cables"); i++)
        {
            bool inside = _items[i].Is("v:DropperRouting=internal");
            bool way = inside || _items[i].Is("v:DropperRouting=external");
            int name = _items[i - 1].IsSign(':') || _items[i - 1].IsSign('=') ? i - 2 : i - 1;
            if (way && name >= 0 && IsCables(_items[name].Text) && !Negated(i) && Anywhere("m:or") < 0)
            {
                Keep("cables", inside ? "through" : "outside", i, i);
            }
        }
    }

    private static bool IsCables(string word) =>
        word is "gaines" or "gaine" or "cables" or "cable" or "cavi" or "cavo" or "guaine" or "kabels" or "kabel" or "leidingen" or "zuge" or "leitungen" or "fundas" or "latiguillos" or "hoses" or "passage" or "passaggio" or "paso" or "guiado" or "routing" or "fuhrung" or "leitungsfuhrung" or "kabelfuhrung" or "zugfuhrung" or "kabelgeleiding";
}
