namespace Lugwork.Reading;

/// <summary>Words that say what the figure behind a colon counts, and small words that look like others.</summary>
internal static class Headings
{
    public static void Mend(List<SpecItem> items)
    {
        for (int i = 0; i < items.Count; i++)
        {
            Limit(items, i);
            if (items[i].Kind != SpecTokenKind.Word)
            {
                continue;
            }

            // "Ca" without its cedilla is "about" only before a figure.
            if (items[i].Text == "ca" && items[i].Is("d:hedge") && !IsFigure(items, i + 1))
            {
                items[i] = Plain(items[i]);
            }

            // "No. of sprockets": a number, no denial.
            if (items[i].Text == "no" && i + 2 < items.Count && items[i + 1].IsSign('.') && items[i + 2].Text == "of")
            {
                items[i] = Plain(items[i]);
                items[i + 2] = Plain(items[i + 2]);
            }

            // "Previous poster: no, that freehub is ...": an answer, and what is the case behind it.
            if (items[i].Text is "no" or "nein" or "non" or "nee" && items[i].Is("m:not") && i + 2 < items.Count && items[i + 1].IsSign(',') && IsAnswer(items, i)
                && WordLists.HeadingsMend.Contains(items[i + 2].Text))
            {
                items[i] = Plain(items[i]);
            }

            Count(items, i);
        }

        LabelBehind(items);
    }

    /// <summary>"160 max. - rear disc", "73 br. - BSA - bracketpot": a row whose last cell is the name of what the others say; it stands in one clause with them.</summary>
    private static void LabelBehind(List<SpecItem> items)
    {
        int at = items.Count - 1;
        bool topic = false;
        while (at > 0 && items.Count - at <= 6 && items[at].Kind == SpecTokenKind.Word && !items[at].Terms.Any(t => t[0] is 'v' or 'd' or 'o'))
        {
            topic |= items[at].IsTopic;
            at--;
        }

        if (!topic || at <= 0 || at > 12 || !items[at].IsSign('-') || !items[at].IsFraction || items[at].Glued)
        {
            return;
        }

        bool figure = false;
        for (int i = 0; i < at; i++)
        {
            if (items[i].IsTopic || items[i].Terms.Any(t => t[0] is 'd' or 'n'))
            {
                return;
            }

            figure |= items[i].IsNumber;
        }

        for (int i = 0; i < items.Count && figure; i++)
        {
            items[i].Clause = items[0].Clause;
        }
    }

    /// <summary>"Fork travel \u2264 160 mm": the sign for at most or at least between a word and its figure is a word of limit.</summary>
    private static void Limit(List<SpecItem> items, int i)
    {
        bool two = i + 1 < items.Count && (items[i].IsSign('<') || items[i].IsSign('>')) && items[i + 1].IsSign('=') && items[i + 1].Glued;
        bool sign = items[i].IsSign('\u2264') || items[i].IsSign('\u2265') || two;
        int figure = two ? i + 2 : i + 1;
        if (!sign || i == 0 || items[i - 1].Kind != SpecTokenKind.Word && !items[i - 1].IsSign(':') || figure >= items.Count || !items[figure].IsNumber)
        {
            return;
        }

        SpecItem item = items[i];
        items[i] = new() { Kind = SpecTokenKind.Word, Text = item.IsSign('\u2264') || item.IsSign('<') ? "max" : "min", Start = item.Start, End = items[figure - 1].End, Glued = item.Glued, Clause = item.IsFraction ? item.Clause - 1 : item.Clause, Terms = [item.IsSign('\u2264') || item.IsSign('<') ? "m:max" : "m:min"] };
        if (two)
        {
            items.RemoveAt(i + 1);
        }
    }

    /// <summary>Nothing that says anything stands before the word.</summary>
    private static bool IsAnswer(List<SpecItem> items, int at)
    {
        for (int i = 0; i < at; i++)
        {
            if (items[i].IsNumber || !items[i].Terms.IsEmpty)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>"Speeds: 12", "nombre de dents : 34", "tooth count 32".</summary>
    private static void Count(List<SpecItem> items, int i)
    {
        bool speeds = WordLists.HeadingsCount.Contains(items[i].Text);
        bool teeth = WordLists.HeadingsCount2.Contains(items[i].Text);
        if (!speeds && !teeth)
        {
            return;
        }

        int at = i + 1;
        at += at < items.Count && items[at].Text is "count" or "number" ? 1 : 0;
        bool counted = at > i + 1;
        if (at < items.Count && (items[at].IsSign(':') || items[at].IsSign('=')))
        {
            counted = true;
            at++;
        }

        bool open = at + 1 < items.Count && (items[at + 1].IsSign('-') || items[at + 1].IsSign('/') || items[at + 1].IsSign('x'));
        if (!counted || open || at >= items.Count || items[at] is not { IsNumber: true, Unit: "", IsFraction: false } || items[at].Value != decimal.Truncate(items[at].Value))
        {
            return;
        }

        if (speeds && items[at].Value is >= 5 and <= 13)
        {
            items[at].Unit = "speed";
        }
        else if (teeth && items[at].Value is >= 8 and <= 80)
        {
            items[at].Unit = "teeth";
        }
    }

    private static bool IsFigure(List<SpecItem> items, int at)
    {
        at += at < items.Count && (items[at].IsSign('.') || items[at].IsSign(':')) ? 1 : 0;
        return at >= items.Count || items[at].IsNumber || items[at].Kind == SpecTokenKind.Sign;
    }

    private static SpecItem Plain(SpecItem item) =>
        new() { Kind = item.Kind, Text = item.Text, Start = item.Start, End = item.End, Glued = item.Glued, Clause = item.Clause, IsFraction = item.IsFraction };
}
