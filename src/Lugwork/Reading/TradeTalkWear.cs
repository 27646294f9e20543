namespace Lugwork.Reading;

/// <summary>What is denied, counted, paid or carried in the talk of an advertisement, and is none of the part.</summary>
internal static partial class TradeTalk
{
    /// <summary>"About a year", "menos de un año", "etwa eine Saison", "ridden perhaps ten times": how long, how often or how much, behind a word for about or a limit.</summary>
    private static bool IsAmount(List<SpecItem> items, int i, int last)
    {
        int at = i + 1;
        at += at <= last && items[at].IsSign('.') && items[at].Glued ? 1 : 0;
        at += at <= last && WordLists.TradeTalkWearIsAmount.Contains(items[at].Text) ? 1 : 0;
        int figure = -1;
        for (int step = 0; at <= last && step < 3; at++, step++)
        {
            if (items[at].IsNumber)
            {
                if (figure >= 0 || items[at].IsFraction || items[at].Unit is not ("" or "other") || items[at].Value > 5000)
                {
                    return false;
                }

                figure = at;
            }
            else if (items[at].Kind != SpecTokenKind.Word)
            {
                return false;
            }
            else if (TalkWords.Time.Contains(items[at].Text))
            {
                if (step == 0 && figure < 0)
                {
                    return false;
                }

                if (figure >= 0)
                {
                    items[figure].Unit = "other";
                }

                return true;
            }
            else if (!items[at].Terms.IsEmpty && !(WordLists.TradeTalkWearIsAmount2.Contains(items[at].Text)))
            {
                return false;
            }
        }

        return figure >= 0 && items[figure].Unit == "other" && at <= last && at == figure + 1;
    }

    /// <summary>"Perhaps ten years ago somebody changed it": the doubt is of more than the time.</summary>
    private static bool SpeaksOfKnowing(List<SpecItem> items, int i, int last)
    {
        for (int j = i + 1; j <= last; j++)
        {
            if (TalkWords.IsOfKnowing(items[j].Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Bis ans Schwarze Meer", "up to the lake": a way, and no figure near.</summary>
    private static bool IsPlace(List<SpecItem> items, int i)
    {
        if (items[i].Text != "bis" || i + 1 >= items.Count || !WordLists.TradeTalkWearIsPlace.Contains(items[i + 1].Text))
        {
            return false;
        }

        for (int j = i + 1; j < items.Count && j <= i + Near; j++)
        {
            if (items[j].IsNumber)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>"Ich gebe sie ab: 203 mm": the end of a verb, which stands before it in the clause.</summary>
    private static bool IsGivenAway(List<SpecItem> items, int i, int first)
    {
        if (items[i].Text != "ab" || (i + 1 < items.Count && items[i + 1].IsNumber))
        {
            return false;
        }

        for (int j = i - 1; j >= first; j--)
        {
            if (WordLists.TradeTalkWearIsGivenAway.Contains(items[j].Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Sin golpes ni arañazos", "mai aperta", "never fitted": what is denied is wear or use, and neither the part nor a value.</summary>
    private static bool IsNotWorn(List<SpecItem> items, int i, int last)
    {
        int at = i + 1;
        while (at <= last && at <= i + 2 && items[at] is { Kind: SpecTokenKind.Word, Terms.IsEmpty: true } && !IsWear(items[at].Text) && !TalkWords.Done.Contains(items[at].Text))
        {
            at++;
        }

        if (at > last || items[at].Kind != SpecTokenKind.Word || !(IsWear(items[at].Text) || TalkWords.Done.Contains(items[at].Text)))
        {
            return false;
        }

        // "Never fitted with a hanger", "ohne Kratzer am 12x148": what stands behind is denied with it.
        if (at < last && items[at + 1].Kind == SpecTokenKind.Word && (items[at + 1].Is("m:and") && items[at + 1].Text is "with" or "mit" or "avec" or "con" or "met" || items[at + 1].Text is "to" or "for" or "fur" or "pour" or "para" or "per" or "voor"))
        {
            return false;
        }

        if (!items[at].Terms.IsEmpty && items[at].Terms[0][0] is 'v')
        {
            return false;
        }

        Quiet(items, i);
        Quiet(items, at);
        if (at + 2 <= last && items[at + 1].Text is "de" or "di" or "of" or "von" or "van" && items[at + 2].Is("d:thing"))
        {
            Quiet(items, at + 2);
        }

        for (int j = at + 1; j < last && j <= at + 3; j++)
        {
            if (WordLists.TradeTalkWearIsNotWorn.Contains(items[j].Text) && IsWear(items[j + 1].Text))
            {
                Quiet(items, j);
                Quiet(items, j + 1);
            }
        }

        return true;
    }

    private static bool IsWear(string word) => TalkWords.Wear.Contains(word);

    /// <summary>"A carico dell'acquirente", "à la charge de l'acheteur": who pays, and no load.</summary>
    private static bool IsAtCostOf(List<SpecItem> items, int i, int last) =>
        i > 0 && items[i - 1].Text is "a" or "la" or "al" or "su" && i < last && WordLists.TradeTalkWearIsAtCostOf.Contains(items[i + 1].Text)
        && !items[Math.Min(last, i + 2)].IsNumber;

    /// <summary>"Dans sa boîte", "con su caja", "nella scatola": what it lies in, and no shell. "Foto's stuur ik", "doe het weg": Dutch verbs.</summary>
    private static bool IsBoxOrVerb(List<SpecItem> items, int i, int last)
    {
        string before = i > 0 ? items[i - 1].Text : "";
        string next = i < last ? items[i + 1].Text : "";
        return items[i].Text switch
        {
            "boite" or "caja" or "scatola" when items[i].Is("t:bb") => before is "sa" or "su" or "sua" or "nella" && (i == last || items[i + 1].Kind == SpecTokenKind.Sign || next is "d" or "original" or "originale" or "origine" or "de" && i + 2 <= last && items[i + 2].Text is "origen" or "origine" or "carton"),
            "stuur" when items[i].Is("t:bar") => before is "ik" || (WordLists.TradeTalkWearIsBoxOrVerb.Contains(next) && !(i + 2 <= last && items[i + 2].IsNumber)),
            "souple" or "souples" => WordLists.TradeTalkWearIsBoxOrVerb2.Contains(before) || (next == "et" && before is not ("tringle" or "tringles" or "pneu" or "pneus")),
            "sencillo" or "simple" => WordLists.TradeTalkWearIsBoxOrVerb3.Contains(before),
            "mesure" when items[i].Is("d:hedge") => before == "sur",
            "licht" when items[i].Is("d:thing") => WordLists.TradeTalkWearIsBoxOrVerb4.Contains(before),
            "spring" when items[i].Is("d:thing") => before is "last" or "this" or "next" or "every" or "early" or "late" || next is "sale" or "clean" or "clear" or "break" or "weather" or "sunshine",
            "press" when items[i].Is("d:thing") => before is "you" or "i" or "we" or "they" or "to" && next is "down" or "it" or "on" or "the",
            "weg" when items[i].Is("m:road") => WordLists.TradeTalkWearIsBoxOrVerb5.Contains(before) && (i == last || items[i + 1].Kind != SpecTokenKind.Number),
            "bolt" or "bolts" or "schraube" or "schrauben" or "vis" or "tornillo" or "tornillos" or "vite" or "viti" or "bout" or "bouten" or "bosses" => IsAfterWear(items, i),
            _ => false,
        };
    }

    /// <summary>"A bit of rust on one bolt", "quelques bosses": what is worn, and how; no figure stands between.</summary>
    private static bool IsAfterWear(List<SpecItem> items, int i)
    {
        if (items[i].Text == "bosses")
        {
            return i > 0 && items[i - 1].Text is "quelques" or "petites" or "des" or "ni" or "plusieurs" or "sans" or "de";
        }

        for (int j = i - 1; j >= 0 && j >= i - Near - 1 && items[j].Clause == items[i].Clause && !items[j].IsNumber; j--)
        {
            if (WordLists.TradeTalkWearIsAfterWear.Contains(items[j].Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The owner of a thing: "futur propriétaire", "al proprietario".</summary>
    private static bool IsOwner(List<SpecItem> items, int i, int first) =>
        i > first && WordLists.TradeTalkWearIsOwner.Contains(items[i - 1].Text)
        && !(i > first + 1 && (SaysValue(items[i - 2]) || items[i - 2].Text.StartsWith("stand", StringComparison.Ordinal) || items[i - 2].Text.StartsWith("estand", StringComparison.Ordinal) || items[i - 2].Text is "sistema" or "systeme" or "formato" or "format"));
}
