namespace Lugwork.Reading;

/// <summary>Brackets and dashes between a figure and the one name that says what it is of: "27.2 mm (seatpost)", "max rotor (180 mm)", "max fork travel - 140". They part nothing.</summary>
internal static class BracketWords
{
    private const int MostWords = 8;

    public static void Mend(List<SpecItem> items)
    {
        HashSet<SpecItem> gone = [];
        for (int open = 1; open < items.Count; open++)
        {
            int close = items[open].IsSign('(') || items[open].IsSign('[') ? Closing(items, open) : -1;
            if (close == open + 2 && close + 1 < items.Count && (items[close + 1].IsSign(':') || items[close + 1].IsSign('=')) && (items[open + 1].Is("m:inside") || items[open + 1].Is("m:outside") || items[open + 1].Is("t:inner")) && items[open - 1].Is("t:seattube"))
            {
                // "Sitzrohr (innen): 34,9".
                int end = close + 1;
                while (end < items.Count && items[end].Clause == items[close].Clause)
                {
                    end++;
                }

                Join(items, open + 1, end, items[open - 1].Clause);
                gone.Add(items[open]);
                gone.Add(items[close]);
                continue;
            }

            if (close == open + 2 && close + 1 < items.Count && (items[close + 1].IsSign(':') || items[close + 1].IsSign('=')) && (items[open + 1].Is("m:rear") || items[open + 1].Is("m:front")) && (items[open - 1].Is("t:brake") || items[open - 1].Is("m:mounttabs") || items[open - 1].Text is "mount"))
            {
                // "Disc mount (rear): IS".
                int end = close + 1;
                while (end < items.Count && items[end].Clause == items[close + 1].Clause)
                {
                    end++;
                }

                Join(items, open + 1, end, items[open - 1].Clause);
                gone.Add(items[open]);
                gone.Add(items[close]);
                continue;
            }

            if (close < 0 || !(close + 1 >= items.Count || items[close + 1] is { Kind: SpecTokenKind.Sign, IsFraction: true }))
            {
                continue;
            }

            int from = Start(items, open - 1);
            if ((IsFigure(items, from, open) && IsName(items, open + 1, close) && !IsFor(items[open + 1]) && (from == 0 || !IsPlace(items, open + 1, close))) || (IsName(items, from, open) && IsFigure(items, open + 1, close)))
            {
                Join(items, open + 1, close, items[open - 1].Clause);
                gone.Add(items[open]);
                gone.Add(items[close]);
                items[open + 1].Glued = false;
                if (close + 1 < items.Count)
                {
                    items[close + 1].Glued = false;
                }
            }
        }

        if (gone.Count > 0)
        {
            items.RemoveAll(gone.Contains);
        }

        Dash(items);
    }

    /// <summary>"Front mech - clamp 31.8": the one dash of a line, behind nothing but a name, parts a key from its value.</summary>
    private static void Dash(List<SpecItem> items)
    {
        int dash = items.FindIndex(i => i is { Kind: SpecTokenKind.Sign, IsFraction: true });
        if (dash < 1 || !items[dash].IsSign('-') || items.FindIndex(dash + 1, i => (i.IsSign('-') && i.IsFraction) || i.IsSign(':') || i.IsSign('=')) >= 0 || !IsName(items, 0, dash))
        {
            return;
        }

        int end = dash + 1;
        while (end < items.Count && items[end].Clause == items[dash].Clause)
        {
            end++;
        }

        for (int i = dash + 1; i < end; i++)
        {
            if (items[i].Is("m:not") || items[i].Terms.Any(t => t[0] is 'd' or 'o'))
            {
                return;
            }
        }

        SpecItem sign = items[dash];
        Join(items, dash + 1, end, items[dash - 1].Clause);
        items[dash] = new() { Kind = SpecTokenKind.Sign, Text = ":", Start = sign.Start, End = sign.End, Glued = sign.Glued, Clause = items[dash - 1].Clause };
    }

    private static int Closing(List<SpecItem> items, int open)
    {
        for (int i = open + 1; i < items.Count && i <= open + MostWords; i++)
        {
            if (items[i].IsSign(')') || items[i].IsSign(']'))
            {
                return i > open + 1 ? i : -1;
            }
        }

        return -1;
    }

    /// <summary>The first item of the clause in which an item stands, as far as a name or a figure can be long.</summary>
    private static int Start(List<SpecItem> items, int at)
    {
        int start = at;
        while (start > 0 && items[start - 1].Clause == items[at].Clause && at - start <= MostWords)
        {
            start--;
        }

        return start < items.Count && items[start] is { Kind: SpecTokenKind.Sign, IsFraction: true } && start < at ? start + 1 : start;
    }

    /// <summary>Words alone, of which one is a topic and none takes anything back.</summary>
    private static bool IsName(List<SpecItem> items, int from, int to)
    {
        bool topic = false;
        for (int i = from; i < to; i++)
        {
            bool shortened = items[i].IsSign('.') && !items[i].IsFraction;
            if (!shortened && (items[i].Kind != SpecTokenKind.Word || items[i].Is("m:not") || items[i].Is("m:or") || items[i].Terms.Any(t => t[0] is 'd' or 'o')))
            {
                return false;
            }

            topic |= items[i].Text is not ("as" or "band") && items[i].Terms.Any(t => t[0] == 't');
        }

        return topic && to - from <= MostWords;
    }

    /// <summary>"(for bars)": what the part goes to.</summary>
    private static bool IsFor(SpecItem item) => item.Text is "for" or "fits" or "fur" or "pour" or "para" or "per" or "voor";

    /// <summary>"(inside)": where it was measured, and what that is of stands before.</summary>
    private static bool IsPlace(List<SpecItem> items, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (items[i].Terms.Any(t => t[0] == 't' && t != "t:inner"))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A figure or a word of value, and nothing that says of what.</summary>
    private static bool IsFigure(List<SpecItem> items, int from, int to)
    {
        bool figure = false;
        for (int i = from; i < to; i++)
        {
            if (items[i].IsTopic || items[i].Is("m:not") || items[i].Is("m:or") || items[i].Terms.Any(t => t[0] is 'd' or 'o') || items[i].IsSign(':') || items[i].IsSign('='))
            {
                return false;
            }

            figure |= (items[i].IsNumber && items[i].Unit != "other") || items[i].Terms.Any(t => t[0] == 'v');
        }

        return figure && to - from <= MostWords;
    }

    private static void Join(List<SpecItem> items, int from, int to, int clause)
    {
        for (int i = from; i < to; i++)
        {
            items[i].Clause = clause;
        }
    }
}
