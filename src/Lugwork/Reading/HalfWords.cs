namespace Lugwork.Reading;

/// <summary>Halves that are said behind a figure: "82 chili e mezzo", "82 and a half kilos", "ochenta kilos y medio".</summary>
internal static class HalfWords
{
    /// <summary>Adds the half behind a whole figure to it; where the token behind its words stands, or the place itself where there is none.</summary>
    public static int Add(SpecItem number, List<SpecToken> tokens, int at)
    {
        if (number.IsFraction || number.Value < 2 || number.Value != decimal.Truncate(number.Value) || at + 1 >= tokens.Count || tokens[at].Text is not ("and" or "und" or "et" or "y" or "e" or "en"))
        {
            return at;
        }

        int half = at + 1;
        half += tokens[half].Text is "a" or "ein" or "eine" or "een" or "un" or "una" or "uno" ? 1 : 0;
        if (half >= tokens.Count || !WordLists.HalfWordsAdd.Contains(tokens[half].Text))
        {
            return at;
        }

        if (number.Unit.Length > 0 && half + 1 < tokens.Count && tokens[half + 1].Kind != SpecTokenKind.Sign)
        {
            // "82 kg and a half marathon", "82 kg en half leeg": the half of the word behind it.
            return at;
        }

        number.Value += 0.5m;
        number.Text = ItemCutter.Plain(number.Value);
        number.End = tokens[half].End;
        return half + 1;
    }
}
