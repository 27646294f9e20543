namespace Lugwork.Reading;

/// <summary>Units that are written short with a point: "1 1/8 in.", "180 mm. maximum". The point ends no sentence where the line goes on in small letters, with a figure or with a sign.</summary>
internal static class ShortUnits
{
    public static void Mend(List<SpecToken> tokens, ReadOnlySpan<char> text)
    {
        for (int i = 1; i + 1 < tokens.Count; i++)
        {
            SpecToken unit = tokens[i];
            if (!tokens[i + 1].Is('.') || !tokens[i + 1].Glued || unit.Text is not ("mm" or "in" or "cm") || !tokens[i - 1].IsNumber || (i + 2 < tokens.Count && tokens[i + 2].Is('.')))
            {
                continue;
            }

            bool ofInches = unit.Text == "in" && (tokens[i - 1].IsFraction || (i > 2 && tokens[i - 2].Is('/')));
            bool goesOn = ofInches || i + 2 >= tokens.Count ? ofInches : tokens[i + 2].Kind != SpecTokenKind.Word || char.IsLower(text[tokens[i + 2].Start]);
            if (!goesOn)
            {
                continue;
            }

            if (unit.Text == "in")
            {
                // The mark of inches, which is never the preposition.
                (unit.Kind, unit.Text) = (SpecTokenKind.Sign, "\"");
            }

            unit.End = tokens[i + 1].End;
            tokens[i] = unit;
            tokens.RemoveAt(i + 1);
        }
    }
}
