namespace Lugwork.Reading;

/// <summary>Short words that mean a thing by the place where they stand: letters for upper and lower in brackets, "post" of a brake, the Dutch "standaard" before a name, the "motor" of a bottom bracket.</summary>
internal static class PlacedWords
{
    /// <summary>How far the letter for the lower half may stand behind the one for the upper half, in items.</summary>
    private const int Apart = 14;

    public static void Mend(List<SpecItem> items)
    {
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i].Kind != SpecTokenKind.Word)
            {
                continue;
            }

            switch (items[i].Text)
            {
                case "o":
                    Letters(items, i);
                    break;
                case "b" when i > 0 && items[i - 1].IsSign('(') && i + 3 < items.Count && items[i + 1].IsSign('/') && items[i + 2].Text == "o" && items[i + 3].IsSign(')'):
                    // "IS41 / IS52 (b/o)": in Dutch, upper before lower, as the codes stand.
                    items[i] = Word(items[i], "m:nothing");
                    items[i + 2] = Word(items[i + 2], "m:nothing");
                    break;
                case "post" when IsPostOfBrake(items, i):
                    items[i] = Word(items[i], "m:pm");
                    break;
                case "standaard" when i + 1 < items.Count && items[i + 1] is { Kind: SpecTokenKind.Word, Terms.IsEmpty: false } named && named.Terms.Any(t => t.StartsWith("v:Shell", StringComparison.Ordinal) || t.StartsWith("v:Hanger", StringComparison.Ordinal)):
                    items[i] = Word(items[i], "m:nothing");
                    break;
                case "old" when items[i].Is("t:spacing") && i + 1 < items.Count && items[i + 1] is { IsNumber: true } figure && (figure.IsInch || figure.IsFraction):
                    // "Old 1 inch threaded": an adjective, for no hub is measured in inches over its locknuts.
                    items[i] = Word(items[i], "m:nothing");
                    break;
                case "franzosisch" or "francais" or "francese" or "frances" or "frans" when IsOfThread(items, i):
                    items[i] = Word(items[i], "v:ShellFamily=French");
                    break;
                case "frans" or "franz" or "francais" or "francese" or "frances" or "french" when IsBeforeOldWidth(items, i):
                    items[i] = Word(items[i], "v:ShellFamily=French");
                    break;
                case "englisch" or "anglais" or "inglese" or "ingles" or "engels" or "english" when items[i].Terms.IsEmpty && IsOfThread(items, i):
                    items[i] = Word(items[i], "v:ShellFamily=BSA");
                    break;
            }
        }
    }

    /// <summary>The words that mean a thing by the place where they stand on a frame.</summary>
    public static void MendFrame(List<SpecItem> items)
    {
        OfThisFrame(items);
        bool? isSpanish = null;
        for (int i = 0; i < items.Count && isSpanish != false; i++)
        {
            if (items[i] is { Kind: SpecTokenKind.Word, Text: "motor" } && IsBeforeShell(items, i) && (isSpanish ??= IsOfBicycleInSpanish(items)))
            {
                items[i] = Word(items[i], "t:bb");
            }
        }
    }

    /// <summary>"STECKACHSE HR;M12x1,75": the letters for a wheel say the end that an axle goes to.</summary>
    public static void MendEnds(List<SpecItem> items)
    {
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i] is { Kind: SpecTokenKind.Word, IsFraction: false, Text: "hr" or "vr" } letters && letters.Is("t:wheel"))
            {
                items[i] = Word(letters, letters.Text == "hr" ? "m:rear" : "m:front");
            }
        }
    }

    /// <summary>"Zadelpen in dat frame is 27.2", "die Stütze im Rahmen hat 31,6": where a line about the frame says that another word is of it, the word says nothing more.</summary>
    private static void OfThisFrame(List<SpecItem> items)
    {
        int topic = -1;
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i].Is("t:frame") && topic >= 0 && items[topic].Clause == items[i].Clause && i - topic <= 4 && IsBehindPreposition(items, i, topic))
            {
                items[i] = Word(items[i], "m:nothing");
            }
            else if (items[i].IsTopic)
            {
                topic = i;
            }
            else if (items[i].IsNumber)
            {
                topic = -1;
            }
        }
    }

    private static bool IsBehindPreposition(List<SpecItem> items, int i, int after)
    {
        int at = i - 1;
        at -= at > after && items[at].Text is "the" or "that" or "this" or "my" or "dat" or "dit" or "het" or "mijn" or "dem" or "diesem" or "der" or "meinem" or "ce" or "le" or "mon" or "este" or "ese" or "el" or "mi" or "il" or "questo" or "quel" ? 1 : 0;
        return at > after && items[at].Text is "in" or "of" or "im" or "am" or "vom" or "von" or "van" or "aan" or "op" or "du" or "de" or "dans" or "del" or "en" or "nel" or "al" or "di" or "su" or "sul";
    }

    /// <summary>"IS41 (o.), IS52 (u.)", "IS41/IS52 (o/u)": upper and lower in German, each by its letter in brackets.</summary>
    private static void Letters(List<SpecItem> items, int upper)
    {
        int lower = -1;
        for (int j = upper + 1; lower < 0 && j < items.Count && j <= upper + Apart && IsInBrackets(items, upper); j++)
        {
            lower = items[j] is { Kind: SpecTokenKind.Word, Text: "u" } ? j : -1;
        }

        if (lower > 0 && IsInBrackets(items, lower))
        {
            items[upper] = Word(items[upper], "m:upper");
            items[lower] = Word(items[lower], "m:lower");
        }
    }

    private static bool IsInBrackets(List<SpecItem> items, int i)
    {
        int close = i + 1 < items.Count && items[i + 1].IsSign('.') ? i + 2 : i + 1;
        return i > 0 && items[i - 1].IsSign('(') && close < items.Count && items[close].IsSign(')');
    }

    /// <summary>"Rear brake: post 140", "disc mount rear - post 180mm": behind the brake and its sign, and before the size of a rotor.</summary>
    private static bool IsPostOfBrake(List<SpecItem> items, int i) =>
        i > 1 && i + 1 < items.Count && items[i + 1] is { IsNumber: true, Unit: "" or "mm", Value: 140 or 160 or 180 or 200 or 203 } && (i + 2 >= items.Count || items[i + 2].IsSign(',') || items[i + 2].IsSign(';') || items[i + 2].IsSign(')') || items[i + 2].IsSign('.'))
        && (items[i - 1].IsSign(':') || items[i - 1].IsSign('-') || items[i - 1].IsSign('='))
        && (IsOfBrake(items[i - 2]) || (i > 2 && items[i - 2].Kind == SpecTokenKind.Word && (items[i - 2].Is("m:rear") || items[i - 2].Is("m:front") || items[i - 2].Text is "mount" or "type" or "standard") && IsOfBrake(items[i - 3])));

    /// <summary>"Innenlagergewinde: französisch": behind the name of the bottom bracket and its sign.</summary>
    private static bool IsOfThread(List<SpecItem> items, int i) =>
        i > 1 && (items[i - 1].IsSign(':') || items[i - 1].IsSign('=') || items[i - 1].IsSign('-')) && items[i - 2].Is("t:bb");

    /// <summary>"Frans 68", "franz. 68": right before the width that the old threads are cut in.</summary>
    private static bool IsBeforeOldWidth(List<SpecItem> items, int i)
    {
        int width = i + 1 < items.Count && items[i + 1].IsSign('.') ? i + 2 : i + 1;
        return items[i].Terms.IsEmpty && width < items.Count && items[width] is { IsNumber: true, Value: 68, Unit: "" or "mm" } && !(width + 1 < items.Count && items[width + 1].IsSign('x'));
    }

    private static bool IsOfBrake(SpecItem item) => item.Is("t:brake") || item.Is("t:caliper") || item.Is("m:disc") || item.Is("m:mounttabs");

    /// <summary>"Motor BSA de 68", "el motor es T47", "motor inglés": where the name of a shell follows, the word is the bottom bracket of South America and no motor.</summary>
    private static bool IsBeforeShell(List<SpecItem> items, int i)
    {
        int name = i + 1 < items.Count && items[i + 1].Text is "es" or "de" or "tipo" or "va" or "con" ? i + 2 : i + 1;
        return name < items.Count && items[name].Terms.Any(t => t.StartsWith("v:ShellFamily=", StringComparison.Ordinal));
    }

    /// <summary>The line has Spanish words and none of an electric motor.</summary>
    private static bool IsOfBicycleInSpanish(List<SpecItem> items)
    {
        bool electric = items.Exists(o => o.Text is "electrico" or "ebike" or "bateria" or "central" or "watt" or "w" or "e" or "mittelmotor" or "akku" or "kit" || o.Is("u:w") || o.Unit is "w" or "V" or "other");
        return !electric && items.Exists(o => o.Kind == SpecTokenKind.Word && o.Text is "es" or "de" or "el" or "del" or "la" or "para" or "rosca" or "ingles" or "italiano" or "frances" or "caja" or "cuadro" or "tipo");
    }

    private static SpecItem Word(SpecItem item, string term) =>
        new() { Kind = SpecTokenKind.Word, Text = item.Text, Start = item.Start, End = item.End, Glued = item.Glued, Clause = item.Clause, Terms = [term] };
}
