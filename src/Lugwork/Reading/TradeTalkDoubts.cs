namespace Lugwork.Reading;

/// <summary>Alternatives, comparisons, exceptions and conditions in the talk of an advertisement.</summary>
internal static partial class TradeTalk
{
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
            return items[i + 1].Text is "use" or "wear" or "riding" or "rust" || (english ??= LineTongue.IsEnglish(items, 2));
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
            "look" => WordLists.TradeTalkDoubtsIsComparison.Contains(next),
            "who" => next is "more" or "a" or "his" or "her" or "their" or "how" or "what",
            "about" => next is "to" or "the" or "my" or "it" or "colour" or "color" && i > 0 && WordLists.TradeTalkDoubtsIsComparison2.Contains(items[i - 1].Text),
            _ => next is "what" or "my" && i + 1 < last && items[i + 2].Text is "you" or "other" or "profile" or "ads" or "items" or "feedback",
        };
        return fits && !Says(items, i + 1, last, word == "who");
    }

    /// <summary>"Salvo el roce de la cadena", "except for a scratch".</summary>
    private static bool IsButForWear(List<SpecItem> items, int i, int last)
    {
        if (!WordLists.TradeTalkDoubtsIsButForWear.Contains(items[i].Text))
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

                if (step < 0 && WordLists.TradeTalkDoubtsSentenceSays.Contains(items[j].Text) && (items[j].Clause != items[i].Clause || j == i - 1))
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
        WordLists.TradeTalkDoubtsIsWeak.Contains(word);
}
