namespace Lugwork.Reading;

/// <summary>What stands around a spec in lists, shops and advertisements and is none: numbers of lines and articles, quantities, years, alloys, sizes by letter, receipts.</summary>
internal static class ItemNotes
{
    public static void Mend(List<SpecItem> items)
    {
        NumberOfLine(items);
        bool? fraction = null;
        for (int i = 0; i < items.Count; i++)
        {
            SpecItem item = items[i];
            if (item.Kind == SpecTokenKind.Word)
            {
                Posteriore(items, i);
                Shortened(items, i);
                Small(items, i);
                Manifold(items, i);
                LetterSize(items, i);
                Quantity(items, i);
                Warranty(items, i);
                Age(items, i);
                Decade(items, i);
            }
            else if (item is { IsNumber: true, IsFraction: false, Unit: "" } && item.Value == decimal.Truncate(item.Value))
            {
                item.Unit = IsYear(items, i) || IsAlloy(items, i) || IsTimes(items, i) || IsDecade(items, i) || IsTool(items, i) || IsPriceWithDash(items, i) ? "other" : "";
            }
            else if (item is { IsNumber: true, IsFraction: false, Unit: "" or "mm", Value: 7.9m or 9.5m or 10.5m } && i > 0 && items[i - 1].Text == "fg" && (fraction ??= items.Exists(o => o is { IsNumber: true, IsFraction: true })))
            {
                // "FG 7,9 = 5/16 x 26": the German name of the thread beside its inches.
                item.Unit = "other";
            }
        }
    }

    /// <summary>"1. front axle ...": the number of a line in a list.</summary>
    private static void NumberOfLine(List<SpecItem> items)
    {
        if (items.Count > 2 && items[0] is { IsNumber: true, IsFraction: false, Unit: "", Value: >= 1 and < 100 } && (items[1].IsSign('.') || items[1].IsSign(')')) && items[1].Glued && !items[2].Glued && (items[2].Kind == SpecTokenKind.Word || items[2] is { IsNumber: true, Value: >= 10 }))
        {
            items[0].Unit = "other";
        }
        else if (items.Count > 4 && items[0] is { IsNumber: true, IsFraction: false, Unit: "", Value: >= 2 and <= 10 } && items[1].IsSign('x') && items[1].Glued && items[2] is { IsNumber: true, Glued: false } && items[3].IsSign('x'))
        {
            // "2x 12x142": two of them.
            items[0].Unit = "other";
            items[1] = Bullet(items[1]);
        }
    }

    private static readonly HashSet<string> ItalianParts = new(StringComparer.Ordinal) { "copertone", "copertoni", "copertoncino", "copertoncini", "gomma", "gomme", "pneumatico", "pneumatici", "tubolare", "tubolari", "camera", "camere", "mozzo", "mozzi", "ruota", "ruote", "cerchio", "cerchi", "disco", "dischi", "rotore", "freno", "freni", "pinza", "pinze", "perno", "perni", "pass", "passante", "passanti", "cambio", "comando", "leva", "bloccaggio", "asse", "dado", "dadi", "nastro", "flap", "valvola" };

    /// <summary>"Disco post. 180": behind an Italian part and with a point it is the rear one, no seatpost.</summary>
    private static void Posteriore(List<SpecItem> items, int i)
    {
        if (i > 0 && items[i].Text == "post" && items[i].Is("t:post") && (i + 1 == items.Count || items[i + 1].IsSign(';') || items[i + 1].IsSign('|') || items[i + 1].IsSign(',') || items[i + 1].IsSign('/')) && ItalianParts.Contains(items[i - 1].Text))
        {
            // "COPERTONI POST;37-622", "MOZZO POST | 12x148".
            items[i] = Word(items[i], "m:rear");
            return;
        }

        bool post = i + 2 < items.Count && items[i].Text == "post" && items[i].Is("t:post") && items[i + 1].IsSign('.') && items[i + 1].Glued;
        int figure = post && items[i + 2].IsSign(':') ? i + 3 : i + 2;
        if (post && figure < items.Count && items[figure] is { IsNumber: true, Value: >= 110 and <= 200 } && (i == 0 || items[i - 1].Is("m:fm") || items[i - 1].Is("m:pm")))
        {
            // "Post.: 141 mm QR", "flat mount post. 140 mm".
            items[i] = Word(items[i], "m:rear");
            return;
        }

        if (i > 1 && post && (items[i - 1].IsSign(';') || items[i - 1].IsSign('|')) && WordLists.ItemNotesPosteriore.Contains(items[0].Text))
        {
            // "DISCHI;post. 200 mm": of a part that no post goes into.
            items[i] = Word(items[i], "m:rear");
            return;
        }

        if (i > 0 && i + 1 < items.Count && items[i].Text == "post" && items[i].Is("t:post") && items[i + 1].IsSign('.') && items[i + 1].Glued
            && WordLists.ItemNotesPosteriore2.Contains((i > 1 && items[i - 1].Text is "tandem" or "bici" or "fat" or "boost" ? items[i - 2] : items[i - 1]).Text))
        {
            items[i] = Word(items[i], "m:rear");
        }
    }

    /// <summary>"Voor de remklauw", "achter voor schijfrem": before an article, or behind the rear and before a part, the Dutch word says for what and no end. "Plain old BSA": before a name the English word is no spacing.</summary>
    private static void Small(List<SpecItem> items, int i)
    {
        bool compound = i > 0 && i + 1 < items.Count && items[i].Text == "voor" && items[i + 1].IsNumber && items[i - 1] is { Text.Length: > 9, Clause: int clause } && clause == items[i].Clause && items[i - 1].Text.StartsWith("achter", StringComparison.Ordinal);
        if (i + 1 >= items.Count || (items[i + 1].Kind != SpecTokenKind.Word && !compound) || items[i].IsFraction)
        {
            return;
        }

        if (items[i].Text == "voor" && items[i].Is("m:front"))
        {
            bool rear = false;
            for (int j = i - 1; j >= 0 && j >= i - 5 && items[j].Clause == items[i].Clause && !items[j].IsNumber; j--)
            {
                rear |= items[j].Is("m:rear") || items[j].Text.StartsWith("achter", StringComparison.Ordinal);
            }

            if (items[i + 1].Text is "de" or "het" or "een" || compound || (rear && (items[i + 1].IsTopic || items[i + 1].Is("m:thru"))))
            {
                items[i] = new() { Kind = SpecTokenKind.Word, Text = items[i].Text, Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause };
            }
        }
        else if (items[i].Text == "old" && items[i].Is("t:spacing") && !items[i + 1].Terms.IsEmpty && (items[i + 1].Terms[0].StartsWith("v:Shell", StringComparison.Ordinal) || items[i + 1].Is("t:bar") || items[i + 1].Is("t:stem")))
        {
            items[i] = Word(items[i], "m:nothing");
        }
    }

    /// <summary>"Neunfach verschraubt", "11-fach gelagert": how many times something was done, and no speeds.</summary>
    private static void Manifold(List<SpecItem> items, int i)
    {
        bool done = WordLists.ItemNotesManifold.Contains(items[i].Text);
        if (done && i > 0 && items[i - 1] is { IsNumber: true, Unit: "speed", UnitWord: "fach" or "voudig" })
        {
            items[i - 1].Unit = "other";
        }
    }

    /// <summary>"Haut. 7": before a point and a figure the French word is a height and no half. "Condition no. 3": a number and no denial.</summary>
    private static void Shortened(List<SpecItem> items, int i)
    {
        if (i + 2 >= items.Count || !items[i + 1].IsSign('.') || !items[i + 1].Glued || !items[i + 2].IsNumber)
        {
            return;
        }

        if (items[i].Text == "haut" && items[i].Is("m:upper") && !items[i].IsFraction)
        {
            items[i] = Word(items[i], "t:depth");
        }
        else if (items[i].Text == "no" && i > 0 && items[i - 1].Is("t:use"))
        {
            items[i] = Word(items[i], "m:nothing");
        }
    }

    /// <summary>"Taille M", "talla L", "size XL": a size by its letter is of no figure.</summary>
    private static void LetterSize(List<SpecItem> items, int i)
    {
        if (items[i].Is("n:size") && i + 1 < items.Count && items[i + 1] is { Kind: SpecTokenKind.Word, Text: "s" or "m" or "l" or "xl" or "xxl" or "xs" or "xxs" } && !(i + 2 < items.Count && items[i + 2] is { IsNumber: true, Glued: true }))
        {
            items[i] = Word(items[i], "m:nothing");
            items[i + 1] = Word(items[i + 1], "m:nothing");
        }
    }

    /// <summary>"Qty 1", "Menge: 2": how many are sold.</summary>
    private static void Quantity(List<SpecItem> items, int i)
    {
        if (items[i].Is("m:stock") && i + 2 == items.Count - 1 && items[i + 1].Kind == SpecTokenKind.Sign && items[i + 1].Text[0] is '|' or ':' or '=' && items[i + 2] is { IsNumber: true, Unit: "", Value: >= 1 and <= 20 } many && many.Value == decimal.Truncate(many.Value))
        {
            // "In stock | 2", at the end of a row.
            many.Unit = "other";
            return;
        }

        if (!WordLists.ItemNotesQuantity.Contains(items[i].Text) || items[i].IsFraction)
        {
            return;
        }

        int at = i + 1 < items.Count && (items[i + 1].IsSign(':') || items[i + 1].IsSign('.') || items[i + 1].IsSign('=')) ? i + 2 : i + 1;
        if (at < items.Count && items[at] is { IsNumber: true, Unit: "" or "other", Value: >= 1 and <= 20 })
        {
            items[at].Unit = "other";
            items[i] = Word(items[i], "m:nothing");
        }
    }

    /// <summary>"2 jaar garantie": the years before the word are of it, and no figure before them.</summary>
    private static void Warranty(List<SpecItem> items, int i)
    {
        if (i > 0 && items[i].Text is "garantie" or "garantia" or "garanzia" or "warranty" && items[i - 1] is { IsNumber: true, Unit: "other" })
        {
            items[i] = Word(items[i], "m:nothing");
        }
    }

    /// <summary>"Années 60", "anni '70", "60er Jahre": when it was made.</summary>
    private static void Decade(List<SpecItem> items, int i)
    {
        int at = items[i].Text is "annees" or "anni" or "anos" or "jaren" ? i + 1 : items[i].Text is "jahre" or "jahren" ? i - 1 : -1;
        at += at > i && at < items.Count && items[at].Kind == SpecTokenKind.Sign ? 1 : 0;
        at = at < 0 && items[i].Text == "los" && i > 0 && items[i - 1].Text is "de" or "en" && !(i + 2 < items.Count && items[i + 2].IsNumber) ? i + 1 : at;
        at -= at > 0 && at < i && items[at].Text is "er" or "ern" ? 1 : 0;
        if (at >= 0 && at < items.Count && items[at] is { IsNumber: true, IsFraction: false, Unit: "", Value: 20 or 30 or 40 or 50 or 60 or 70 or 80 or 90 })
        {
            items[at].Unit = "other";
        }
    }

    /// <summary>"Approx. 2 years old", "ca. 250 g", "about 300 km": how old, heavy or far is about so, and no size.</summary>
    private static void Age(List<SpecItem> items, int i)
    {
        int at = i + 1 < items.Count && items[i + 1].IsSign('.') ? i + 2 : i + 1;
        if (!items[i].Is("d:hedge") || at >= items.Count || !items[at].IsNumber)
        {
            return;
        }

        bool age = at + 1 < items.Count && items[at].Unit.Length == 0 && WordLists.ItemNotesAge.Contains(items[at + 1].Text);
        if (age || items[at].Unit is "other" or "g")
        {
            items[at].Unit = age ? "other" : items[at].Unit;
            items[i] = Word(items[i], "m:nothing");
        }
    }

    /// <summary>1950 to 2060, by itself: no part has such a figure.</summary>
    private static bool IsYear(List<SpecItem> items, int i) => items[i].Value is >= 1950 and <= 2060 && !IsLinked(items, i);

    /// <summary>"90s", "anni 80", "80er Jahre": a decade.</summary>
    private static bool IsDecade(List<SpecItem> items, int i)
    {
        if (items[i].Value is not (50 or 60 or 70 or 80 or 90) || IsLinked(items, i))
        {
            return false;
        }

        bool behind = i + 1 < items.Count && ((items[i + 1] is { Kind: SpecTokenKind.Word, Glued: true, Text: "s" or "ies" }) || items[i + 1].Text is "jahre" or "jahren" or "jaren" or "jahr" || (items[i + 1] is { Glued: true } quote && quote.IsSign('\'') && i + 2 < items.Count && items[i + 2] is { Text: "s", Glued: true }));
        int before = i > 0 && items[i - 1].IsSign('\'') ? i - 2 : i - 1;
        return behind || (before >= 0 && WordLists.ItemNotesIsDecade.Contains(items[before].Text) && (items[before].Text is "anni" or "annees" or "anos" or "jaren"));
    }

    /// <summary>"T25", "Inbus 6", "SW 15": the tool for a screw.</summary>
    private static bool IsTool(List<SpecItem> items, int i)
    {
        if (i == 0 || items[i].Value is < 2 or > 40)
        {
            return false;
        }

        string word = items[i - 1].Text;
        bool torx = items[i].Glued && word is "t" or "tx" && items[i].Value is 8 or 10 or 15 or 20 or 25 or 27 or 30 or 40 && !IsLinked(items, i);
        return torx || (WordLists.ItemNotesIsTool.Contains(word) && items[i].Value <= 17 && !(i + 1 < items.Count && items[i + 1].IsSign('x')));
    }

    /// <summary>6061, 7075: the number of an alloy beside the word for it.</summary>
    private static bool IsAlloy(List<SpecItem> items, int i)
    {
        if (items[i].Value is not (2014 or 2024 or 5083 or 6011 or 6013 or 6061 or 6063 or 6066 or 6069 or 6082 or 7000 or 7003 or 7005 or 7020 or 7046 or 7050 or 7075) || IsLinked(items, i))
        {
            return false;
        }

        return (i > 0 && IsMaterial(items[i - 1])) || (i + 1 < items.Count && IsMaterial(items[i + 1])) || (i > 1 && items[i - 1].IsSign('-') && IsMaterial(items[i - 2]));
    }

    /// <summary>"24,–": a price without its smaller coins.</summary>
    private static bool IsPriceWithDash(List<SpecItem> items, int i) =>
        i + 2 < items.Count && items[i + 1].IsSign(',') && items[i + 1].Glued && items[i + 2].IsSign('-') && items[i + 2].Glued && (i + 3 >= items.Count || !items[i + 3].Glued || items[i + 3].IsSign(')'));

    /// <summary>"... x2" at the end behind a word or a unit: two of them. The sign joins nothing then.</summary>
    private static bool IsTimes(List<SpecItem> items, int i)
    {
        bool times = i == items.Count - 1 && i > 1 && items[i].Value is >= 2 and <= 10 && items[i].Glued && items[i - 1].IsSign('x') && !items[i - 1].Glued && (items[i - 2].Kind == SpecTokenKind.Word || items[i - 2] is { IsNumber: true, Unit: "mm" });
        if (times)
        {
            items[i - 1] = Bullet(items[i - 1]);
        }

        return times;
    }

    private static bool IsMaterial(SpecItem item) => !item.Terms.IsEmpty && item.Terms[0].StartsWith("v:Material=", StringComparison.Ordinal);

    /// <summary>A sign joins it to what stands against it.</summary>
    private static bool IsLinked(List<SpecItem> items, int i) =>
        (i > 0 && items[i].Glued && items[i - 1].Kind == SpecTokenKind.Sign && items[i - 1].Glued && !items[i - 1].IsSign('(')) || (i > 0 && items[i - 1].IsSign('x')) || (i + 1 < items.Count && (items[i + 1].IsSign('x') || (items[i + 1].Glued && items[i + 1].Text is "-" or "/")));

    private static SpecItem Bullet(SpecItem item) => new() { Kind = SpecTokenKind.Sign, Text = "\u2022", Start = item.Start, End = item.End, Glued = item.Glued, Clause = item.Clause };

    private static SpecItem Word(SpecItem item, string term) => new() { Kind = SpecTokenKind.Word, Text = item.Text, Start = item.Start, End = item.End, Glued = item.Glued, Clause = item.Clause, Terms = [term] };
}
