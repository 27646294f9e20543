namespace Lugwork.Reading;

/// <summary>Takes the doubt off words that stand in the talk of an advertisement and are of no value: "ridden perhaps ten times", "sin estrenar", "looks like new", "etwa eine Saison".</summary>
/// <remarks>A word keeps its doubt where a figure, a part, a value or a word of knowing stands with it. Each item is looked at a bounded number of times.</remarks>
internal static class TradeTalk
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

    /// <summary>"About a year", "menos de un año", "etwa eine Saison", "ridden perhaps ten times": how long, how often or how much, behind a word for about or a limit.</summary>
    private static bool IsAmount(List<SpecItem> items, int i, int last)
    {
        int at = i + 1;
        at += at <= last && items[at].IsSign('.') && items[at].Glued ? 1 : 0;
        at += at <= last && items[at].Text is "de" or "di" or "of" or "than" or "als" or "dan" or "que" or "so" ? 1 : 0;
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
            else if (!items[at].Terms.IsEmpty && !(items[at].Text is "un" or "una" or "une" or "a" or "one" or "ein" or "eine" or "einen" or "een" or "uno"))
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
        if (items[i].Text != "bis" || i + 1 >= items.Count || items[i + 1].Text is not ("ans" or "ins" or "nach" or "auf" or "heute" or "zuletzt" or "jetzt" or "dahin" or "vor"))
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
            if (items[j].Text is "gebe" or "geben" or "gibt" or "hole" or "holen" or "holt" or "lege" or "stelle" or "schicke" or "sende")
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
            if (items[j].Text is "ni" or "noch" or "ne" or "nor" or "or" or "oder" or "ou" or "o" or "of" && IsWear(items[j + 1].Text))
            {
                Quiet(items, j);
                Quiet(items, j + 1);
            }
        }

        return true;
    }

    private static bool IsWear(string word) => TalkWords.Wear.Contains(word);

    /// <summary>"Cash or card", "ophalen of verzenden", "où" written with its accent, "of" in a line that is English.</summary>
    private static bool IsOrOfTalk(List<SpecItem> items, int i, int first, int last, ReadOnlySpan<char> text, ref bool? english)
    {
        if (items[i].Text == "ou" && items[i].End - items[i].Start >= 2 && text[items[i].Start..items[i].End].IndexOfAny("ùÙ\u0300") >= 0)
        {
            return true;
        }

        bool before = i > 0 && IsTalk(items[i - 1]);
        bool behind = i < items.Count - 1 && IsTalk(items[i + 1]);
        if (before && behind)
        {
            return true;
        }

        if (items[i].Text == "of" && i > first && i < last && !(SaysValue(items[i - 1]) && SaysValue(items[i + 1])))
        {
            return items[i + 1].Text is "use" or "wear" or "riding" or "rust" || (english ??= IsEnglish(items));
        }

        return false;
    }

    /// <summary>"Looks like new", "feels like a go-kart", "it looks lovely", "who knows more than me": a likeness to no part, and no figure or value behind it in the clause.</summary>
    private static bool IsComparison(List<SpecItem> items, int i, int last)
    {
        string word = items[i].Text;
        if (i == last || items[i + 1].Kind != SpecTokenKind.Word || word is not ("like" or "look" or "who" or "about" or "check"))
        {
            return false;
        }

        string next = items[i + 1].Text;
        bool fits = word switch
        {
            "like" => i > 0 && !SaysValue(items[i - 1]) && !items[i - 1].Is("m:or"),
            "look" => next is "like" or "lovely" or "good" or "great" or "nice" or "better" or "new" or "clean" or "fine" or "worse" or "tired" or "rough" or "smart" or "as" or "very" or "really" or "so" or "much",
            "who" => next is "more" or "a" or "his" or "her" or "their" or "how" or "what",
            "about" => next is "to" or "the" or "my" or "it" or "colour" or "color" && i > 0 && items[i - 1].Text is "mind" or "crazy" or "fussy" or "picky" or "precious" or "worried" or "happy" or "excited" or "nothing" or "complain" or "questions",
            _ => next is "what" or "my" && i + 1 < last && items[i + 2].Text is "you" or "other" or "profile" or "ads" or "items" or "feedback",
        };
        return fits && !Says(items, i + 1, last, word == "who");
    }

    /// <summary>"Salvo el roce de la cadena", "except for a scratch".</summary>
    private static bool IsButForWear(List<SpecItem> items, int i, int last)
    {
        if (items[i].Text is not ("except" or "excluding" or "ausser" or "sauf" or "excepto" or "salvo" or "tranne" or "eccetto" or "behalve"))
        {
            return false;
        }

        for (int j = i + 1; j <= last && j <= i + Near && !items[j].IsNumber; j++)
        {
            if (IsWear(items[j].Text))
            {
                QuietParts(items, j, last);
                return true;
            }
        }

        return false;
    }

    /// <summary>"... el roce de la cadena": where the wear is, and no figure behind.</summary>
    private static void QuietParts(List<SpecItem> items, int from, int last)
    {
        for (int j = from; j <= last && !items[j].IsNumber; j++)
        {
            if (items[j].Kind == SpecTokenKind.Word && !items[j].Terms.IsEmpty && items[j].Terms[0][0] == 't')
            {
                Quiet(items, j);
            }
        }
    }

    /// <summary>"Je nach Licht", "depending on the weather", "según el día".</summary>
    private static bool IsByLight(List<SpecItem> items, int i, int last)
    {
        for (int j = i + 1; j <= last && j <= i + 3; j++)
        {
            if (TalkWords.Light.Contains(items[j].Text))
            {
                return j == last || items[j + 1].Kind == SpecTokenKind.Sign || !SaysValue(items[j + 1]);
            }

            if (items[j].Kind != SpecTokenKind.Word || SaysValue(items[j]))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>The clause speaks of the sale or of use, names no figure, part or value, and nothing of knowing, measuring or changing; and the doubt is of what stands behind it there.</summary>
    private static bool IsOfTalk(List<SpecItem> items, int i, int first, int last, bool isCondition)
    {
        if (!IsWeak(items[i]))
        {
            return false;
        }

        bool near = false;
        int behind = 0;
        for (int j = first; j <= last; j++)
        {
            if (j == i || items[j].Kind == SpecTokenKind.Sign)
            {
                continue;
            }

            if (Says(items[j]) || TalkWords.IsOfKnowing(items[j].Text) || (items[j].Text is "ask" or "fragst" or "fragen" or "fragt" or "vraagt" or "vraag" && SaysMe(items, j, last)) || (items[j].Text is "mich" or "mij" && j < last && items[j + 1].Text is "fragst" or "fragen" or "fragt" or "vraagt"))
            {
                return false;
            }

            behind += j > i ? 1 : 0;
            near |= isCondition ? TalkWords.Sale.Contains(items[j].Text) : IsTalk(items[j]) && Math.Abs(j - i) <= Near;
        }

        return near && behind > 0 && !(isCondition && SentenceSays(items, i));
    }

    /// <summary>"If you ask me", "als je het mij vraagt": an opinion.</summary>
    private static bool SaysMe(List<SpecItem> items, int i, int last) =>
        (i < last && items[i + 1].Text is "me" or "mich" or "mij") || (i > 0 && items[i - 1].Text is "me" or "mich" or "mij");

    /// <summary>A figure or a value stands behind the condition in its sentence, or before it there: "12x148 possible, if you pay".</summary>
    private static bool SentenceSays(List<SpecItem> items, int i)
    {
        for (int step = -1; step <= 1; step += 2)
        {
            for (int j = i + step; j >= 0 && j < items.Count && Math.Abs(j - i) < LongestClause; j += step)
            {
                if (items[j] is { Kind: SpecTokenKind.Sign, IsFraction: true } && items[j].Text[0] is '.' or '!' or '?' or ';' or '\n')
                {
                    break;
                }

                if (step > 0 && Says(items[j]) && !items[j].Is("t:bike"))
                {
                    return true;
                }

                if (step < 0 && items[j].Text is "possible" or "can" or "could" or "konnen" or "kann" or "moglich" or "peut" or "puede" or "puedo" or "posible" or "possibile" or "posso" or "kan" or "mogelijk" && (items[j].Clause != items[i].Clause || j == i - 1))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>A doubt that talk has too; one of knowing or measuring is none.</summary>
    private static bool IsWeak(SpecItem item) => item.IsFraction
        ? item.Text is "rund" or "peut" or "tal" or "all"
        : IsWeak(item.Text);

    private static bool IsWeak(string word) =>
        word is "maybe" or "perhaps" or "approx" or "approximately" or "about" or "roughly" or "probably" or "possibly" or "likely" or "similar" or "look" or "style"
            or "vielleicht" or "evtl" or "eventuell" or "ungefahr" or "etwa" or "ca" or "circa" or "zirka" or "wahrscheinlich" or "optik"
            or "environ" or "probablement" or "quizas" or "quiza" or "aproximadamente" or "aprox" or "probablemente"
            or "forse" or "probabilmente" or "misschien" or "ongeveer" or "waarschijnlijk"
            or "if" or "unless" or "except" or "falls" or "wenn" or "ausser" or "sauf" or "excepto" or "salvo" or "tranne" or "eccetto" or "behalve" or "mits" or "tenzij";

    /// <summary>"A carico dell'acquirente", "à la charge de l'acheteur": who pays, and no load.</summary>
    private static bool IsAtCostOf(List<SpecItem> items, int i, int last) =>
        i > 0 && items[i - 1].Text is "a" or "la" or "al" or "su" && i < last && items[i + 1].Text is "de" or "del" or "dell" or "della" or "du" or "des" or "di" or "mio" or "tuo" or "suo" or "vostro" or "acquirente" or "acheteur" or "comprador"
        && !items[Math.Min(last, i + 2)].IsNumber;

    /// <summary>"Dans sa boîte", "con su caja", "nella scatola": what it lies in, and no shell. "Foto's stuur ik", "doe het weg": Dutch verbs.</summary>
    private static bool IsBoxOrVerb(List<SpecItem> items, int i, int last)
    {
        string before = i > 0 ? items[i - 1].Text : "";
        string next = i < last ? items[i + 1].Text : "";
        return items[i].Text switch
        {
            "boite" or "caja" or "scatola" when items[i].Is("t:bb") => before is "sa" or "su" or "sua" or "nella" && (i == last || items[i + 1].Kind == SpecTokenKind.Sign || next is "d" or "original" or "originale" or "origine" or "de" && i + 2 <= last && items[i + 2].Text is "origen" or "origine" or "carton"),
            "stuur" when items[i].Is("t:bar") => before is "ik" || (next is "ik" or "je" or "jij" or "u" or "me" or "mij" or "maar" or "gerust" or "even" or "graag" or "ze" or "dan" && !(i + 2 <= last && items[i + 2].IsNumber)),
            "mesure" when items[i].Is("d:hedge") => before == "sur",
            "licht" when items[i].Is("d:thing") => before is "rolt" or "verrassend" or "lekker" or "erg" or "heel" or "zeer" or "super" or "loopt" or "fietst" or "rijdt" or "trapt" or "zo",
            "spring" when items[i].Is("d:thing") => before is "last" or "this" or "next" or "every" or "early" or "late" || next is "sale" or "clean" or "clear" or "break" or "weather" or "sunshine",
            "press" when items[i].Is("d:thing") => before is "you" or "i" or "we" or "they" or "to" && next is "down" or "it" or "on" or "the",
            "weg" when items[i].Is("m:road") => before is "het" or "mag" or "moet" or "hem" or "ze" or "die" or "dit" or "kan" or "gaan" or "alles" && (i == last || items[i + 1].Kind != SpecTokenKind.Number),
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
            if (items[j].Text is "rust" or "rusty" or "rost" or "rostig" or "rouille" or "oxido" or "ruggine" or "roest" or "scratch" or "scratches" or "kratzer" or "rayure" or "rayures" or "roce" or "graffio" or "krasje" or "krasjes")
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The owner of a thing: "futur propriétaire", "al proprietario".</summary>
    private static bool IsOwner(List<SpecItem> items, int i, int first) =>
        i > first && items[i - 1].Text is "futur" or "ancien" or "premier" or "premiere" or "second" or "seul" or "unique" or "nouveau" or "prochain" or "precedent" or "son" or "le" or "du" or "au" or "un" or "primo" or "unico" or "secondo" or "precedente" or "vecchio" or "nuovo" or "futuro" or "prossimo" or "al" or "dal" or "del" or "suo" or "il" or "primer" or "anterior" or "nuevo" or "antiguo" or "el" or "solo" or "segundo"
        && !(i > first + 1 && (SaysValue(items[i - 2]) || items[i - 2].Text.StartsWith("stand", StringComparison.Ordinal) || items[i - 2].Text.StartsWith("estand", StringComparison.Ordinal) || items[i - 2].Text is "sistema" or "systeme" or "formato" or "format"));

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

    private static bool IsEnglish(List<SpecItem> items)
    {
        int english = 0;
        foreach (SpecItem item in items)
        {
            if (item.Kind != SpecTokenKind.Word)
            {
                continue;
            }

            if (item.Text is "de" or "het" or "een" or "met" or "en" or "voor" or "niet" or "ik" or "zijn" or "van" or "op" or "naar" or "te")
            {
                return false;
            }

            english += item.Text is "the" or "and" or "with" or "it" or "has" or "my" or "you" or "but" or "from" or "by" or "this" or "that" or "for" or "i" ? 1 : 0;
        }

        return english >= 2;
    }

    private static void Quiet(List<SpecItem> items, int i) =>
        items[i] = new() { Kind = SpecTokenKind.Word, Text = items[i].Text, Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause };
}
