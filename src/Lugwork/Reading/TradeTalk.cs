namespace Lugwork.Reading;

/// <summary>Takes the doubt off words that stand in the talk of an advertisement and are of no value: "ridden perhaps ten times", "sin estrenar", "looks like new", "etwa eine Saison".</summary>
/// <remarks>A word keeps its doubt where a figure, a part, a value or a word of knowing stands with it. Each item is looked at a bounded number of times.</remarks>
internal static partial class TradeTalk
{
    private const int Near = 4;
    private const int LongestClause = 60;

    public static void Mend(List<SpecItem> items, ReadOnlySpan<char> text)
    {
        bool? english = null;
        for (int first = 0; first < items.Count;)
        {
            int last = first;
            while (last + 1 < items.Count && items[last + 1].Clause == items[first].Clause)
            {
                last++;
            }

            Figures(items, first, last);
            for (int i = first; i <= last; i++)
            {
                if (items[i] is { Kind: SpecTokenKind.Word, Terms.IsEmpty: false } && last - first < LongestClause)
                {
                    Word(items, i, first, last, text, ref english);
                }
            }

            Topics(items, first, last);
            first = last + 1;
        }
    }

    /// <summary>"5 minutes from the station", "bieden vanaf 120": figures of time and money.</summary>
    private static void Figures(List<SpecItem> items, int first, int last)
    {
        int only = -1;
        int figures = 0;
        bool money = false;
        bool says = false;
        for (int i = first; i <= last; i++)
        {
            if (items[i].IsNumber)
            {
                only = i;
                figures++;
                if (items[i] is { Unit: "", IsFraction: false, Places: 0 } && i < last && items[i + 1] is { Kind: SpecTokenKind.Word, Text.Length: > 2, Glued: false } && TalkWords.Time.Contains(items[i + 1].Text) && !(i > 0 && items[i - 1].Kind == SpecTokenKind.Sign && items[i].Glued) && !(i > 0 && items[i - 1].IsSign('x')))
                {
                    items[i].Unit = "other";
                }
            }
            else if (items[i].Kind == SpecTokenKind.Word)
            {
                money |= TalkWords.Money.Contains(items[i].Text);
                says |= Says(items[i]) && !IsLimit(items[i]);
            }
        }

        if (money && figures == 1 && !says && items[only] is { Unit: "", IsFraction: false, Value: >= 1 })
        {
            items[only].Unit = "other";
        }
    }

    /// <summary>"Spedizione a carico dell'acquirente", "acheté il y a deux ans": a price, years or use in a clause without a figure are no topic of a figure in the next one.</summary>
    private static void Topics(List<SpecItem> items, int first, int last)
    {
        int words = 0;
        for (int i = first; i <= last; i++)
        {
            if ((items[i].IsNumber && items[i].Unit is not "other") || items[i].IsSign(':') || items[i].IsSign('=') || (!items[i].Terms.IsEmpty && items[i].Terms[0][0] is 'v'))
            {
                return;
            }

            words += items[i].Kind == SpecTokenKind.Word ? 1 : 0;
        }

        for (int i = first; i <= last && words > 1; i++)
        {
            if (items[i].Is("n:price") || items[i].Is("n:year") || (words > 2 && items[i].Is("n:colour")) || (items[i].Is("n:bottle") && TalkWords.Time.Contains(items[i].Text)) || (i > first + 1 && items[i].Is("t:use") && items[i].Text is "uso" or "use" or "usage" or "gebrauch" or "gebruik"))
            {
                items[i] = new() { Kind = SpecTokenKind.Word, Text = items[i].Text, Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause, Terms = ["m:nothing"] };
            }
        }
    }

    private static void Word(List<SpecItem> items, int i, int first, int last, ReadOnlySpan<char> text, ref bool? english)
    {
        SpecItem item = items[i];
        if (IsBoxOrVerb(items, i, last))
        {
            Quiet(items, i);
            return;
        }

        if (item is { IsGuessed: true } && item.Is("d:unsure"))
        {
            Quiet(items, i);
            return;
        }

        if (IsLimit(item) || item.Is("d:hedge") || item.Is("d:unsure"))
        {
            if ((IsAmount(items, i, last) && !SpeaksOfKnowing(items, i, last)) || IsPlace(items, i) || IsGivenAway(items, i, first))
            {
                Quiet(items, i);
                return;
            }
        }

        if (item.Is("m:not") && IsNotWorn(items, i, last))
        {
            return;
        }

        if (item.Is("m:or") && IsOrOfTalk(items, i, first, last, text, ref english))
        {
            Quiet(items, i);
        }
        else if (item.Is("d:hedge") && (IsComparison(items, i, last) || IsOfTalk(items, i, first, last, isCondition: false)))
        {
            Quiet(items, i);
        }
        else if (item.Is("d:condition") && (IsButForWear(items, i, last) || IsByLight(items, i, last) || IsOfTalk(items, i, first, last, isCondition: true)))
        {
            Quiet(items, i);
        }
        else if (item.Is("o:cargo") && item.Text == "cargo" && i > 0 && items[i - 1].Text is "a" or "al" or "su" && i < last && items[i + 1].Text is "del" or "de" or "mio" or "tuyo" or "vuestro" or "suyo")
        {
            Quiet(items, i);
        }
        else if (item.Is("o:cargo") && item.Text == "cargo" && i > 1 && items[i - 1].Text == "a" && items[i - 2].Text is "gastos" or "portes" or "envio" or "transporte")
        {
            Quiet(items, i);
        }
        else if (item.Text is "carico" or "charge" or "charges" or "kosten" or "lasten" or "cargo" && IsAtCostOf(items, i, last))
        {
            Quiet(items, i);
        }
        else if (item.Is("o:proprietary") && item.Text.StartsWith("prop", StringComparison.Ordinal) && IsOwner(items, i, first))
        {
            Quiet(items, i);
        }
    }

    private static bool IsTalk(SpecItem item) => item.Kind == SpecTokenKind.Word && (TalkWords.Sale.Contains(item.Text) || TalkWords.Life.Contains(item.Text)) && !SaysValue(item);

    private static bool IsLimit(SpecItem item) => item.Is("m:max") || item.Is("m:min") || item.Is("m:over");

    /// <summary>A figure, a part, a value or what an interface is told by.</summary>
    private static bool Says(SpecItem item)
    {
        if (item.IsNumber)
        {
            return item.Unit is not "other";
        }

        foreach (string term in item.Terms)
        {
            if (term[0] is 'v' or 't' or 'u' or 'o' || (term[0] == 'm' && term is not ("m:nothing" or "m:and" or "m:or" or "m:not" or "m:pas" or "m:needs" or "m:to") && !(item.Text is "i" or "a" or "o" or "e" or "u")) || term is "d:option" or "d:gone" or "d:refused" or "d:loose" or "d:cups" or "d:unsure")
            {
                return true;
            }
        }

        return false;
    }

    private static bool Says(List<SpecItem> items, int first, int last, bool limits)
    {
        for (int i = first; i <= last; i++)
        {
            if (Says(items[i]) && !(limits && IsLimit(items[i])))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A figure, or a word that is a value or names a part.</summary>
    private static bool SaysValue(SpecItem item) => item.IsNumber || (!item.Terms.IsEmpty && item.Terms[0][0] is 'v' or 't' or 'm' && item.Terms[0] is not ("m:and" or "m:or" or "m:not" or "m:nothing" or "m:to") && item.Text is not ("i" or "a" or "o" or "e" or "u"));

    private static void Quiet(List<SpecItem> items, int i) =>
        items[i] = new() { Kind = SpecTokenKind.Word, Text = items[i].Text, Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause };
}
