namespace Lugwork.Reading;

/// <summary>Fractions of an inch that are written as words: "half-inch", "nine sixteenths", "un pouce et demi", "anderthalb Zoll".</summary>
internal static class SpelledFractions
{
    private const int MostWords = 6;

    private static readonly string[] Inches = ["in", "inch", "zoll", "pouce", "pouces", "pulgada", "pulgadas", "pollice", "pollici", "duim"];

    private static readonly Dictionary<string, string> Phrases = Build(
        ("1/2", "half, half an, halb, halber, halbes, demi, un demi, media, mezzo, halve, een halve, one half"),
        ("9/16", "nine sixteenths, nine sixteenth, nine sixteenths of an, neun sechzehntel, neuf seiziemes, neuf seiziemes de, nueve dieciseisavos, nueve dieciseisavos de, nove sedicesimi, nove sedicesimi di, negen zestiende"),
        ("5/16", "five sixteenths, five sixteenths of an, funf sechzehntel, cinq seiziemes, cinco dieciseisavos, cinque sedicesimi, vijf zestiende"),
        ("3/8", "three eighths, three eighths of an, drei achtel, dreiachtel, trois huitiemes, tres octavos, tre ottavi, drie achtste"),
        ("1/8", "one eighth, an eighth, one eighth of an, ein achtel, einachtel, un huitieme, un huitieme de, un octavo, un octavo de, un ottavo, un ottavo di, een achtste"),
        ("3/32", "three thirty seconds, three thirty second, drei zweiunddreissigstel, trois trente deuxiemes, tres treintaidosavos, tre trentaduesimi, drei zweiunddreissigstel, drei zweiunddreisigstel, drie tweeendertigste, drie tweeendertigsten, tres treinta y dosavos"),
        ("5/32", "five thirty seconds, five thirty second, funf zweiunddreissigstel, cinq trente deuxiemes, cinco treintaidosavos, cinque trentaduesimi, vijf tweeendertigste"),
        ("1-1/8", "one and one eighth, one and an eighth, one and a eighth, one inch and an eighth, an inch and an eighth, inch and an eighth, eineinachtel, ein einachtel, einundeinachtel, ein und ein achtel, un pouce un huitieme, un pouce et un huitieme, una pulgada y un octavo, pulgada y un octavo, pulgada y octavo, una pulgada y octavo, una y un octavo, uno y un octavo, un un huitieme, uno e un ottavo, un pollice e un ottavo, pollice e un ottavo, een en een achtste, een eenachtste, een een achtste, one one eighth"),
        ("1-1/4", "one and one quarter, one and a quarter, an inch and a quarter, inch and a quarter, eineinviertel, un pouce et quart, un pouce un quart, pulgada y cuarto, una pulgada y cuarto, una y cuarto, una y un cuarto, uno e un quarto, un un quart, un et quart, un pollice e un quarto, pollice e un quarto, een en een kwart, een en een vierde, een een kwart, een een vierde, one one quarter, ein einviertel, ein und ein viertel, einundeinviertel, un pouce et un quart, una pulgada y un cuarto, una pulgada y cuarto"),
        ("1-1/2", "one and one half, one and a half, an inch and a half, inch and a half, eineinhalb, einundeinhalb, anderthalb, un pouce et demi, pouce et demi, pulgada y media, una pulgada y media, una y media, uno e mezzo, un et demi, un pollice e mezzo, pollice e mezzo, anderhalve, anderhalf"),
        ("1-5/8", "one and five eighths, one and five eighth, one five eighths, ein funf achtel, eins funf achtel, eins und funf achtel, einfunfachtel, un pouce cinq huitiemes, un cinq huitiemes, un et cinq huitiemes, una pulgada y cinco octavos, uno y cinco octavos, uno cinco octavos, un pollice e cinque ottavi, uno e cinque ottavi, uno cinque ottavi, een vijf achtste, een en vijf achtste"),
        ("1-3/4", "one and three quarters, one and three quarter, one three quarters, ein drei viertel, eindreiviertel, eins drei viertel, un trois quarts, un et trois quarts, uno y tres cuartos, uno tres cuartos, uno e tre quarti, uno tre quarti, een drie kwart, een en drie kwart"),
        ("1-3/8", "one three eighths, ein drei achtel, eins drei achtel, eins und drei achtel, un trois huitiemes, un et trois huitiemes, uno y tres octavos, uno tres octavos, uno e tre ottavi, uno tre ottavi, een drie achtste, one and three eighths, one and three eighth, eindreiachtel, un pouce trois huitiemes, una pulgada y tres octavos, una y tres octavos, un pollice e tre ottavi, een en drie achtste"),
        ("1", "one, ein, einem, un, una, een"));

    private static readonly HashSet<string> Half = ["half", "halb", "halber", "halbes", "demi", "media", "medio", "mezzo", "mezza", "halve"];

    private static readonly HashSet<string> Firsts = [.. Phrases.Keys.Select(p => p.Split(' ')[0])];

    /// <summary>A word for an inch, in one of the six languages.</summary>
    public static bool IsInch(string word) => Array.IndexOf(Inches, word) >= 0;

    /// <summary>Puts a figure in the place of the words that start at a token; false where they are none. Words of inches have to stand in or behind them.</summary>
    public static bool Put(List<SpecToken> tokens, int from)
    {
        if (PutChain(tokens, from))
        {
            return true;
        }

        bool behindOne = from > 1 && tokens[from - 1].Text is "e" or "y" or "et" or "and" && tokens[from - 2].Text is "uno" or "una" or "un" or "one" && (Half.Contains(tokens[from].Text) || tokens[from].Text is "un" or "una");
        if (behindOne || !Firsts.Contains(tokens[from].Text))
        {
            return false;
        }

        bool paired = IsOfPair(tokens, from);
        string text = "";
        bool inch = false;
        (int Behind, string Fraction) best = (0, "");
        for (int i = from, words = 0; i < tokens.Count && words < MostWords; i++)
        {
            if (words > 0 && tokens[i].Glued && (tokens[i].Is('-') || tokens[i].Is('\'')))
            {
                continue;
            }

            if (tokens[i].Kind != SpecTokenKind.Word)
            {
                break;
            }

            text = words++ == 0 ? tokens[i].Text : text + " " + tokens[i].Text;
            inch |= Array.IndexOf(Inches, tokens[i].Text) >= 0;
            if (Phrases.TryGetValue(text, out string? fraction) && (inch || InchBehind(tokens, i + 1) || fraction == "9/16" || (fraction is "1/8" or "3/32" && from is > 1 and < 8 && tokens.Exists(t => t is { IsNumber: true, IsFraction: true, Value: 0.5m })) || (fraction is "3/8" or "5/16" && IsOfAxle(tokens, from)) || (paired && fraction.StartsWith("1-", StringComparison.Ordinal)) || IsBeforePitch(tokens, i + 1, fraction) || (fraction.StartsWith("1-", StringComparison.Ordinal) && i + 1 < tokens.Count && tokens[i + 1].Text is "steerer" or "straight" or "threadless" or "threaded" or "tapered") || (fraction.StartsWith("1-", StringComparison.Ordinal) && IsOfTaper(tokens))))
            {
                best = (i + 1, fraction);
            }
        }

        if (best.Behind == 0)
        {
            return false;
        }

        SpecToken first = tokens[from];
        int eighth = best.Behind + (InchBehind(tokens, best.Behind) ? 1 : 0);
        eighth += eighth > best.Behind && eighth + 1 < tokens.Count && tokens[eighth].Text is "and" or "und" or "et" or "y" or "e" or "en" && tokens[eighth + 1] is { IsNumber: true, IsFraction: true } ? 1 : 0;
        if (best.Fraction == "1" && eighth > best.Behind && eighth < tokens.Count && tokens[eighth] is { IsNumber: true, IsFraction: true, Value: < 1 })
        {
            // "Un pouce 1/8".
            tokens[from] = Figure("1-" + tokens[eighth].Text, first, tokens[eighth].End);
            tokens.RemoveRange(from + 1, eighth - from);
            tokens.Insert(from + 1, new() { Kind = SpecTokenKind.Sign, Text = "\"", Start = tokens[from].End, End = tokens[from].End, Glued = true });
            return true;
        }

        bool within = !InchBehind(tokens, best.Behind);
        tokens[from] = Figure(best.Fraction, first, tokens[best.Behind - 1].End);
        tokens.RemoveRange(from + 1, best.Behind - from - 1);
        if (paired)
        {
            SpelledNumbers.JoinTimes(tokens, from);
        }
        else if (IsBeforePitch(tokens, from + 1, best.Fraction))
        {
            SpelledNumbers.JoinTimes(tokens, from);
        }
        else if (within)
        {
            tokens.Insert(from + 1, new() { Kind = SpecTokenKind.Sign, Text = "\"", Start = tokens[from].End, End = tokens[from].End, Glued = true });
        }

        return true;
    }

    /// <summary>"Twenty-six by one and three eighths", "by one and five eighths by one and three eighths": inches of a tyre behind the diameter.</summary>
    private static bool IsOfPair(List<SpecToken> tokens, int from) =>
        from > 1 && SpelledNumbers.IsTimes(tokens[from - 1]) && (tokens[from - 2] is { IsNumber: true, Value: >= 12 and <= 29 } || SpelledNumbers.Small(tokens[from - 2].Text) >= 12 || (from > 3 && tokens[from - 2].Text is "eighths" or "achtel" or "huitiemes" or "octavos" or "ottavi" or "achtste"));

    /// <summary>"Axle three eighths", "de as is drie achtste": an axle with nuts, which is of an inch.</summary>
    private static bool IsOfAxle(List<SpecToken> tokens, int from)
    {
        for (int i = from - 1; i >= 0 && i >= from - 3 && tokens[i].Kind == SpecTokenKind.Word; i--)
        {
            if (WordLists.SpelledFractionsIsOfAxle.Contains(tokens[i].Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Five sixteenths by twenty-six", "three eighths by twenty-four": a thread of an axle by its turns an inch.</summary>
    private static bool IsBeforePitch(List<SpecToken> tokens, int behind, string fraction) =>
        fraction is "5/16" or "3/8" or "9/16" or "1/2" && behind + 1 < tokens.Count && SpelledNumbers.IsTimes(tokens[behind]) && (tokens[behind + 1] is { IsNumber: true, Value: 20 or 24 or 26 } && fraction != "1/2");

    /// <summary>"Halb Zoll mal Achtel", "media por un octavo", "half by three thirty-seconds": the pitch of a chain and its width, which no other part has.</summary>
    private static bool PutChain(List<SpecToken> tokens, int from)
    {
        int at = from;
        if (!Half.Contains(tokens[at].Text))
        {
            return false;
        }

        at++;
        at += InchBehind(tokens, at) || (at + 1 < tokens.Count && tokens[at].Is('-') && InchBehind(tokens, at + 1)) ? tokens[at].Is('-') ? 2 : 1 : 0;
        if (at + 1 >= tokens.Count || !WordLists.SpelledFractionsPutChain.Contains(tokens[at].Text) || !(tokens[at + 1].Kind == SpecTokenKind.Word || tokens[at + 1] is { IsNumber: true, IsFraction: true, Value: 0.125m or 0.09375m or 0.15625m }))
        {
            return false;
        }

        if (tokens[at + 1].IsNumber)
        {
            JoinPitch(tokens, from, at);
            return true;
        }

        string text = "";
        for (int i = at + 1; i < tokens.Count && i <= at + 4; i++)
        {
            if (tokens[i].Glued && tokens[i].Is('-'))
            {
                continue;
            }

            text = text.Length == 0 ? tokens[i].Text : text + " " + tokens[i].Text;
            string width = text is "achtel" or "octavo" or "ottavo" or "huitieme" or "eighth" or "achtste" ? "1/8" : Phrases.GetValueOrDefault(text, "");
            if (width is "1/8" or "3/32" or "5/32")
            {
                tokens[at + 1] = Figure(width, tokens[at + 1], tokens[i].End);
                tokens.RemoveRange(at + 2, i - at - 1);
                JoinPitch(tokens, from, at);
                return true;
            }
        }

        return false;
    }

    private static void JoinPitch(List<SpecToken> tokens, int from, int at)
    {
        SpecToken first = tokens[from];
        tokens[from] = Figure("1/2", first, first.End);
        tokens[at] = new() { Kind = SpecTokenKind.Sign, Text = "x", Start = tokens[at].Start, End = tokens[at].End, Glued = tokens[at].Glued };
        tokens.RemoveRange(from + 1, at - from - 1);
    }

    /// <summary>A line about a taper, of which both ends are inches: "konisch: oben eineinachtel, unten eineinviertel Zoll".</summary>
    private static bool IsOfTaper(List<SpecToken> tokens)
    {
        for (int i = 0; i < tokens.Count && i < 60; i++)
        {
            if (tokens[i] is { IsNumber: true, IsFraction: true, Value: 1.125m } && i + 2 < tokens.Count && WordLists.SpelledFractionsIsOfTaper.Contains(tokens[i + 1].Text) && tokens.Exists(t => t is { IsNumber: true, IsFraction: true, Value: 1.25m or 1.375m or 1.5m }))
            {
                return true;
            }

            if (tokens[i].Kind == SpecTokenKind.Word && WordLists.SpelledFractionsIsOfTaper2.Contains(tokens[i].Text))
            {
                return true;
            }
        }

        return false;
    }

    private static bool InchBehind(List<SpecToken> tokens, int at)
    {
        at += at + 1 < tokens.Count && tokens[at].Is('-') && tokens[at].Glued ? 1 : 0;
        return at < tokens.Count && tokens[at].Kind == SpecTokenKind.Word && Array.IndexOf(Inches, tokens[at].Text) >= 0 && !(tokens[at].Text == "in" && at + 1 < tokens.Count && tokens[at + 1].Kind == SpecTokenKind.Word);
    }

    private static SpecToken Figure(string text, SpecToken first, int end)
    {
        string[] parts = text.Split('-', '/');
        decimal value = parts.Length switch
        {
            1 => decimal.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture),
            2 => decimal.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture) / decimal.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture),
            _ => decimal.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture) + (decimal.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture) / decimal.Parse(parts[2], System.Globalization.CultureInfo.InvariantCulture)),
        };
        return new() { Kind = SpecTokenKind.Number, IsFraction = parts.Length > 1, Value = value, Text = text, Start = first.Start, End = end, Glued = first.Glued };
    }

    private static Dictionary<string, string> Build(params (string Fraction, string Words)[] rows)
    {
        Dictionary<string, string> phrases = new(StringComparer.Ordinal);
        foreach ((string fraction, string words) in rows)
        {
            foreach (string phrase in words.Split(", "))
            {
                phrases.TryAdd(phrase, fraction);
            }
        }

        return phrases;
    }
}
