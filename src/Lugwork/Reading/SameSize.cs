namespace Lugwork.Reading;

/// <summary>The steerer of a stem in inches and in brackets in millimetres, or the other way about: "1″ (25,4 mm)", "25.4 mm (1")". The two are one size, and the inches say which: 25.4 is a bar too.</summary>
internal static class SameSize
{
    public static void Mend(List<SpecToken> tokens)
    {
        for (int i = 0; i + 3 < tokens.Count; i++)
        {
            if (!tokens[i].IsNumber || tokens[i].IsBroken)
            {
                continue;
            }

            int open = End(tokens, i, out bool firstInch, out _);
            if (open >= tokens.Count || !tokens[open].Is('('))
            {
                continue;
            }

            int second = open + 1 < tokens.Count && tokens[open + 1].Is('\u00F8') ? open + 2 : open + 1;
            if (second >= tokens.Count || !tokens[second].IsNumber || tokens[second].IsBroken)
            {
                continue;
            }

            int close = End(tokens, second, out bool secondInch, out bool secondMetric);
            if (close >= tokens.Count || !tokens[close].Is(')') || firstInch == secondInch || (!secondMetric && !secondInch && tokens[second].Places != 1))
            {
                continue;
            }

            SpecToken inch = firstInch ? tokens[i] : tokens[second];
            SpecToken metric = firstInch ? tokens[second] : tokens[i];
            if (Metric(inch.Value) != metric.Value || !IsOfSteerer(tokens))
            {
                continue;
            }

            if (firstInch)
            {
                tokens.RemoveRange(open, close + 1 - open);
            }
            else
            {
                List<SpecToken> kept = tokens.GetRange(second, close - second);
                int from = i > 0 && tokens[i - 1].Is('\u00F8') ? i - 1 : i;
                tokens.RemoveRange(from, close + 1 - from);
                tokens.InsertRange(from, kept);
            }
        }
    }

    private static decimal Metric(decimal inch) => inch switch
    {
        1m => 25.4m,
        1.125m => 28.6m,
        1.25m => 31.8m,
        _ => 0,
    };

    /// <summary>Behind the unit of a figure.</summary>
    private static int End(List<SpecToken> tokens, int number, out bool inch, out bool metric)
    {
        int at = number + 1;
        at += at + 1 < tokens.Count && tokens[at].Is('-') && tokens[at].Glued ? 1 : 0;
        inch = at < tokens.Count && (tokens[at].Is('"') || (tokens[at].Kind == SpecTokenKind.Word && tokens[at].Text != "in" && SpelledFractions.IsInch(tokens[at].Text)));
        metric = at < tokens.Count && tokens[at].Text == "mm";
        return inch || metric ? at + 1 : number + 1;
    }

    /// <summary>A word for a stem or the tube that it is clamped to.</summary>
    private static bool IsOfSteerer(List<SpecToken> tokens)
    {
        for (int i = 0; i < tokens.Count && i < 60; i++)
        {
            if (WordLists.SameSizeIsOfSteerer.Contains(tokens[i].Text))
            {
                return true;
            }
        }

        return false;
    }
}
