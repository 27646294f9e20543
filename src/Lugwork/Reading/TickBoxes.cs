namespace Lugwork.Reading;

/// <summary>A form with boxes to tick, "[x] XD [ ] XDR": what stands behind an empty box is taken out, where another box is ticked.</summary>
internal static class TickBoxes
{
    public static void Mend(List<SpecToken> tokens)
    {
        bool ticked = false;
        bool empty = false;
        for (int i = 0; i + 1 < tokens.Count; i++)
        {
            ticked |= IsTicked(tokens, i);
            empty |= IsEmpty(tokens, i);
        }

        if (!ticked || !empty)
        {
            return;
        }

        int kept = 0;
        bool hidden = false;
        for (int i = 0; i < tokens.Count; i++)
        {
            if (IsTicked(tokens, i) || IsEmpty(tokens, i))
            {
                hidden = IsEmpty(tokens, i);
                i += hidden ? 1 : 2;
                continue;
            }

            hidden &= !(tokens[i].Is(';') || tokens[i].Is('\n') || tokens[i].Is('|'));
            if (!hidden)
            {
                tokens[kept++] = tokens[i];
            }
        }

        tokens.RemoveRange(kept, tokens.Count - kept);
    }

    private static bool IsTicked(List<SpecToken> tokens, int i) =>
        i + 2 < tokens.Count && tokens[i].Is('[') && tokens[i + 2].Is(']') && tokens[i + 1].Glued && tokens[i + 2].Glued && (tokens[i + 1].Is('x') || tokens[i + 1].Text is "x" or "v");

    private static bool IsEmpty(List<SpecToken> tokens, int i) => i + 1 < tokens.Count && tokens[i].Is('[') && tokens[i + 1].Is(']');
}
