namespace Lugwork.Reading;

/// <summary>Which language a line is in, decided once, for short words that mean another thing in another one: "of" is no Dutch "or" in an English line, and "also" no English one in a German line.</summary>
internal static class LineTongue
{
    /// <summary>Takes the meaning of another language off the short words of a line.</summary>
    public static void Mend(List<SpecItem> items)
    {
        bool? isEnglish = null;
        bool? isGerman = null;
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i] is { IsNumber: true, Unit: "in", UnitWord: "in", Value: >= 300 })
            {
                // "Er gaat maximaal 50-622 in": no inches.
                items[i].Unit = "";
            }

            if (items[i] is not { Kind: SpecTokenKind.Word, IsFraction: false, Terms.IsEmpty: false })
            {
                continue;
            }

            bool other = items[i].Text switch
            {
                "of" => !IsBetweenValues(items, i) && (isEnglish ??= IsEnglish(items, 1)),
                "as" => items[i].Is("t:axle") && (isEnglish ??= IsEnglish(items, 1)),
                "also" => isGerman ??= IsGerman(items),
                _ => false,
            };
            if (other)
            {
                items[i] = new() { Kind = SpecTokenKind.Word, Text = items[i].Text, Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause };
            }
        }
    }

    /// <summary>The line has words of English, so many at least, and none of Dutch.</summary>
    public static bool IsEnglish(List<SpecItem> items, int least)
    {
        int english = 0;
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i].Kind != SpecTokenKind.Word)
            {
                continue;
            }

            if (WordLists.LineTongueIsEnglish.Contains(items[i].Text))
            {
                return false;
            }

            bool article = items[i].Text is "a" && i + 1 < items.Count && items[i + 1] is { Kind: not SpecTokenKind.Sign, Glued: false };
            english += article || WordLists.LineTongueIsEnglish2.Contains(items[i].Text) ? 1 : 0;
        }

        return english >= least;
    }

    /// <summary>The line has words that only German has.</summary>
    private static bool IsGerman(List<SpecItem> items) =>
        items.Exists(o => o.Kind == SpecTokenKind.Word && WordLists.LineTongueIsGerman.Contains(o.Text))
        && !items.Exists(o => o.Kind == SpecTokenKind.Word && o.Text is "the" or "and" or "with" or "available");

    /// <summary>A figure on each side, or a value by its word on each side: two of one thing.</summary>
    private static bool IsBetweenValues(List<SpecItem> items, int i) =>
        i > 0 && i + 1 < items.Count && ((items[i - 1].IsNumber && items[i + 1].IsNumber) || (IsValue(items[i - 1]) && IsValue(items[i + 1])));

    private static bool IsValue(SpecItem item) => !item.Terms.IsEmpty && (item.Terms[0][0] == 'v' || (item.Terms[0][0] == 'm' && item.Terms[0] is not ("m:and" or "m:or" or "m:nothing")));
}
