namespace Lugwork.Reading;

/// <summary>Parts the clause where "and" leads to another thing with a figure of its own: "15 x 110 Boost and a rim of 25 mm", "104er Lochkreis und einen Q-Faktor von 146 mm", "naaf 142 en een zitting van 26,4".</summary>
internal static class Conjunctions
{
    /// <summary>How far the figure and the word for the other thing may stand behind, in items.</summary>
    private const int Near = 8;

    public static void Mend(List<SpecItem> items)
    {
        int parted = 0;
        int figure = -1;
        for (int i = 0; i < items.Count; i++)
        {
            if (i > 0 && items[i].Clause + parted != items[i - 1].Clause)
            {
                figure = -1;
            }

            if (figure >= 0 && items[i].Is("m:and") && items[i].Kind == SpecTokenKind.Word && LeadsToOther(items, i))
            {
                parted++;
                figure = -1;
            }

            figure = items[i].IsNumber || items[i].Terms.Any(t => t[0] == 'v') ? i : figure;
            items[i].Clause += parted;
        }
    }

    /// <summary>An article stands behind, and then in the same clause a figure and the name of a part or of what is measured, in either order.</summary>
    private static bool LeadsToOther(List<SpecItem> items, int and)
    {
        if (and + 2 < items.Count && items[and].Text is "and" or "und" or "y" or "e" or "et" or "en" && (items[and + 1].Is("t:bb") || items[and + 1].Terms.Any(t => t.StartsWith("v:ShellFamily=", StringComparison.Ordinal))) && HasFigureBehind(items, and + 1))
        {
            return true;
        }

        if (and + 1 < items.Count && items[and + 1].Is("n:weight"))
        {
            // "Misura 39 mm e pesa pochissimo".
            return true;
        }

        if (and + 2 >= items.Count || items[and + 1].Kind != SpecTokenKind.Word || !IsArticle(items[and].Text, items[and + 1].Text))
        {
            return false;
        }

        bool topic = false;
        bool figure = false;
        for (int j = and + 2; j < items.Count && j <= and + Near && items[j].Clause == items[and].Clause && !(topic && figure); j++)
        {
            topic |= items[j].IsTopic || items[j].Is("m:rear") || items[j].Is("m:front");
            figure |= items[j].IsNumber || items[j].Is("m:fm") || items[j].Is("m:pm");
        }

        return topic && figure;
    }

    /// <summary>"And bottom bracket 68", "und Thompson-Tretlager in 68 mm": a figure close behind the name, in its clause.</summary>
    private static bool HasFigureBehind(List<SpecItem> items, int name)
    {
        for (int j = name + 1; j < items.Count && j <= name + 3 && items[j].Clause == items[name].Clause; j++)
        {
            if (items[j].IsNumber)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"And a", "und die", "en het". "En el" says where in Spanish.</summary>
    private static bool IsArticle(string and, string word) => and switch
    {
        "and" or "plus" => word is "a" or "an" or "the" or "its",
        "und" => WordLists.ConjunctionsIsArticle.Contains(word),
        "en" => word is "een" or "het" or "de",
        "et" => word is "un" or "une" or "le" or "la" or "les",
        "y" => word is "un" or "una" or "el" or "la" or "los" or "las",
        "e" or "ed" => WordLists.ConjunctionsIsArticle2.Contains(word),
        _ => false,
    };
}
