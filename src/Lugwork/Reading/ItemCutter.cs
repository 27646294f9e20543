using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork.Reading;

/// <summary>Finds the phrases and units among the tokens and numbers the clauses.</summary>
internal static class ItemCutter
{
    public static List<SpecItem> Cut(ReadOnlySpan<char> text, SpecVocabulary vocabulary) => Cut(text, vocabulary, out _);

    /// <param name="text">The line.</param>
    /// <param name="vocabulary">The words to read by.</param>
    /// <param name="tooMuch">There is more in it than in any line, and the rest was not looked at.</param>
    public static List<SpecItem> Cut(ReadOnlySpan<char> text, SpecVocabulary vocabulary, out bool tooMuch)
    {
        if (RowSigns.Of(text) is { } row)
        {
            text = row;
        }

        List<SpecToken> tokens = SpecLexer.Cut(text);
        tooMuch = tokens.Count > SpecLexer.MostTokens || tokens.Count(t => t.IsNumber) > SpecLexer.MostNumbers;
        if (tooMuch)
        {
            return [];
        }

        Prepositions(tokens, text);
        RowWords.Mend(tokens);
        CompactWords.Mend(tokens);
        CompactPairs.Mend(tokens);
        PointedWords.Mend(tokens, vocabulary.Tree);
        OtherSpelling.Mend(tokens, text, vocabulary.Tree);
        ShortWords.Mend(tokens, vocabulary.Tree);
        Misspelt.Mend(tokens, vocabulary.Tree);
        ShortWords.Bracketed(tokens);
        TickBoxes.Mend(tokens);
        SaidTwice.Mend(tokens, vocabulary.Tree);
        SameSize.Mend(tokens);
        Fillers.Mend(tokens, text);
        SpokenNames.Mend(tokens);
        SpokenSizes.Mend(tokens, vocabulary.Tree);
        SpelledTens.Mend(tokens, vocabulary.Tree);
        SpelledNumbers.Mend(tokens, vocabulary.Tree);
        SpokenSizes.Signs(tokens);
        if (tokens.Count > 3 && tokens[0].Is('"') && tokens[^1].Is('"') && tokens[1].Glued && (text[tokens[0].Start] is '\u201C' or '\u201D' or '\u201E' || tokens.Count(t => t.Is('"')) % 2 == 0))
        {
            // The whole line is a quotation.
            tokens.RemoveAt(tokens.Count - 1);
            tokens.RemoveAt(0);
        }

        List<SpecItem> items = new(tokens.Count);
        int clause = 0;
        bool diameter = false;
        for (int i = 0; i < tokens.Count;)
        {
            SpecToken token = tokens[i];
            if (i == 0 && token.Is('x') && text[token.Start] == '*' && tokens.Count > 1 && !tokens[1].Glued)
            {
                // A bullet, no times sign.
                i++;
                continue;
            }

            // "Seatpost diameter (mm): 27.2" is "seatpost diameter: 27.2".
            if (IsOfColumn(tokens, i) is > 0 and int column)
            {
                i += column;
                continue;
            }

            ImmutableArray<string> terms = token.Kind == SpecTokenKind.Sign ? default : vocabulary.Tree.Longest(tokens, i, out int end) is { IsDefault: false } found && !Unit(found, out _, true) ? Kept(found, tokens, i, end) : default;
            if (!terms.IsDefault)
            {
                vocabulary.Tree.Longest(tokens, i, out end);
                terms = tokens[end - 1].Text == "is" && end <= i + 2 && terms[0] == "m:is" && IsVerb(text, tokens, end - 1) ? [] : terms;
                items.Add(new() { Kind = SpecTokenKind.Word, Text = token.Text, Start = token.Start, End = tokens[end - 1].End, Glued = token.Glued, Terms = terms, Clause = clause, IsFraction = end - i > 1, Guess = Guess(tokens, i, end, text, vocabulary.Tree) });
                i = end;
                diameter = false;
                continue;
            }

            if (token.Is('|') && IsOneBar(tokens, i))
            {
                token.Text = ":";
                tokens[i] = token;
            }

            if (token.Is(';') && i > 0 && tokens[i - 1].Kind == SpecTokenKind.Word && i + 1 < tokens.Count && tokens[i + 1].Is(';') && tokens[i + 1].Glued)
            {
                // Two of them part a key from its value.
                token.Text = ":";
                tokens[i] = token;
                SpecToken second = tokens[i + 1];
                second.Text = ":";
                tokens[i + 1] = second;
            }

            if (token.Is('\u2264') && i > 0 && i + 1 < tokens.Count && (tokens[i + 1].IsNumber || (tokens[i + 1].Is('\u00F8') && i + 2 < tokens.Count && tokens[i + 2].IsNumber)))
            {
                // "Rotor ≤ 160", "disque ≤ Ø 203": at most.
                items.Add(new() { Kind = SpecTokenKind.Word, Text = "max", Start = token.Start, End = token.End, Glued = token.Glued, Terms = ["m:max"], Clause = clause });
                i++;
                continue;
            }

            if (token.Kind == SpecTokenKind.Sign)
            {
                bool separates = Separates(tokens, i);
                clause += separates ? 1 : 0;
                items.Add(new() { Kind = SpecTokenKind.Sign, Text = token.Text, Start = token.Start, End = token.End, Glued = token.Glued, Clause = clause, IsFraction = separates });
                diameter = token.Is('\u00F8') || (diameter && (token.Is(':') || token.Is('.')));
                i++;
                continue;
            }

            if (token.IsNumber)
            {
                SpecItem number = new() { Kind = SpecTokenKind.Number, Text = token.Text, Value = token.Value, IsFraction = token.IsFraction, IsBroken = token.IsBroken, Places = token.Places, Start = token.Start, End = token.End, Glued = token.Glued, Clause = clause, IsDiameter = diameter };
                int before = i - 1;
                i = Behind(number, tokens, i + 1, vocabulary);
                number.Guess = Guess(tokens, before + 2, i, text, vocabulary.Tree);
                if (before >= 0 && (tokens[before].Is('$') || tokens[before].Is('\u20AC') || tokens[before].Is('\u00A3') || tokens[before].Is('#')))
                {
                    number.Unit = "other";
                }

                // "82 1/2 kg": a mass is told in decimals.
                items.Add(number is { IsFraction: true, Unit: "kg" or "lb" } ? new() { Kind = SpecTokenKind.Number, Text = Plain(number.Value), Value = number.Value, Unit = number.Unit, UnitWord = number.UnitWord, Places = 1, IsBroken = number.IsBroken, Start = number.Start, End = number.End, Glued = number.Glued, Clause = clause } : number);
                diameter = false;
                continue;
            }

            i = Unknown(token, tokens, i, clause, vocabulary, items, text);
            diameter = false;
        }

        if (items.Count > SpecLexer.MostKnown && items.Count(i => !i.Terms.IsEmpty) > SpecLexer.MostKnown)
        {
            tooMuch = true;
            return [];
        }

        Numbers(items);
        Conjunctions.Mend(items);
        ExportRows.Mend(items);
        EndCapPairs.Mend(items);
        ItemNotes.Mend(items);
        PlacedWords.Mend(items);
        Headings.Mend(items);
        BracketWords.Mend(items);
        LineTongue.Mend(items);
        TradeTalk.Mend(items, text);
        return items;
    }

    /// <summary>What was guessed in a phrase; empty where it is spelled as it is known.</summary>
    private static string Guess(List<SpecToken> tokens, int from, int behind, ReadOnlySpan<char> text, PhraseTree tree)
    {
        for (int i = from; i < behind; i++)
        {
            if (tokens[i].Meant is { } word)
            {
                return ReadAs(text[tokens[i].Start..tokens[i].End], word);
            }

            if (i > from && tokens[i].Kind == SpecTokenKind.Word && !tree.Knows(tokens[i].Text) && tree.Meant(tokens, from, i) is { } meant)
            {
                return ReadAs(text[tokens[i].Start..tokens[i].End], meant);
            }
        }

        return "";
    }

    private static string ReadAs(ReadOnlySpan<char> word, string meant) => $"'{word}' is read as '{meant}'";

    /// <summary>"T47 à visser": the letter is a preposition, and of no name.</summary>
    private static void Prepositions(List<SpecToken> tokens, ReadOnlySpan<char> text)
    {
        for (int i = 0; i < tokens.Count; i++)
        {
            // "Là où on met les poignées", "c'est ça": with their marks they are no "or" and no "circa".
            string other = tokens[i].Kind != SpecTokenKind.Word || tokens[i].End - tokens[i].Start != 2 ? "" : tokens[i].Text == "ou" && text[tokens[i].Start + 1] is '\u00F9' or '\u00D9' ? "o\u00F9" : tokens[i].Text == "ca" && text[tokens[i].Start] is '\u00E7' or '\u00C7' ? "cela" : "";
            if (other.Length > 0)
            {
                SpecToken word = tokens[i];
                word.Text = other;
                tokens[i] = word;
            }
        }

        for (int i = 2; i + 1 < tokens.Count; i++)
        {
            if (tokens[i] is { Text: "a", Glued: false } && text[tokens[i].Start] is '\u00E0' or 'a' && tokens[i - 1] is { IsNumber: true, Value: 47, Glued: true } && tokens[i - 2].Text == "t")
            {
                SpecToken letter = tokens[i];
                letter.Text = "\u00E0";
                tokens[i] = letter;
            }
        }
    }

    /// <summary>"(mm)", "[ETRTO]", "(Ø mm)": in which unit or by which norm a column is written; how many tokens it has, 0 where it is none.</summary>
    private static int IsOfColumn(List<SpecToken> tokens, int i)
    {
        if (!tokens[i].Is('(') && !tokens[i].Is('['))
        {
            return 0;
        }

        int at = i + 1;
        at += at < tokens.Count && (tokens[at].Is('\u00F8') || tokens[at].Text == "in") ? 1 : 0;
        bool known = at + 1 < tokens.Count && (tokens[at].Text == "mm" || (at == i + 1 && i > 0 && tokens[at].Text is "etrto" or "iso" or "shis"));
        return known && (tokens[at + 1].Is(')') || tokens[at + 1].Is(']')) ? at + 2 - i : 0;
    }

    /// <summary>"The rear brake is fine": between two words, or a word and a figure, and in small letters, "is" is no mount. Where the line has no small letters the case says nothing, and the mount is not taken.</summary>
    private static bool IsVerb(ReadOnlySpan<char> text, List<SpecToken> tokens, int i) =>
        i > 0 && i + 1 < tokens.Count && (tokens[i - 1].Kind == SpecTokenKind.Word || (tokens[i - 1].IsNumber && !tokens[i].Glued && tokens[i + 1].Kind == SpecTokenKind.Word && tokens[i + 1].Text is not ("mount" or "mounts" or "tab" or "tabs" or "standard" or "aufnahme" or "sockel"))) && tokens[i + 1].Kind != SpecTokenKind.Sign && !tokens[i + 1].Glued && (!text[tokens[i].Start..tokens[i].End].Contains('I') || (tokens[i + 1].Kind == SpecTokenKind.Word && !text.ContainsAnyInRange('a', 'z')));

    private static bool IsEnglishBeforeArticle(string word) =>
        WordLists.ItemCutterIsEnglishBeforeArticle.Contains(word);

    /// <summary>Dates, and numbers of articles and telephones, are of nothing.</summary>
    private static void Numbers(List<SpecItem> items)
    {
        for (int i = 0; i + 1 < items.Count; i++)
        {
            // "Pas de 1,75" and "pas M12x1,5" are a pitch, "pas de frein" is none.
            if (items[i].Text == "pas" && ((items[i].Is("m:not") && items[i + 1].IsNumber) || (items[i].Is("m:pas") && items[i + 1].Text == "m" && i + 2 < items.Count && items[i + 2] is { IsNumber: true, Glued: true })))
            {
                items[i] = new() { Kind = SpecTokenKind.Word, Text = items[i].Text, Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause, Terms = ["t:pitch"] };
            }
        }

        for (int i = 0; i < items.Count; i++)
        {
            if (items[i].IsNumber && i + 2 < items.Count && items[i + 1].IsSign('.') && items[i + 1].Glued && items[i + 2] is { IsNumber: true, Glued: true, Value: >= 1950 and <= 2060 } && items[i].Value is >= 1 and < 32 && items[i].Text.Contains('.', StringComparison.Ordinal))
            {
                (items[i].Unit, items[i + 2].Unit, items[i].IsBroken, items[i + 2].IsBroken) = ("other", "other", false, false);
            }

            if (i > 0 && i + 2 < items.Count && items[i] is { IsNumber: true, IsFraction: false, Places: 1 or 2, Unit: "", Value: >= 1 and < 32 } && items[i + 1].IsSign('.') && items[i + 1].Glued && items[i + 2].Kind == SpecTokenKind.Word && items[i - 1].Text is "am" or "vom" or "zum" or "bis")
            {
                // "Am 27.2. abholen": a day.
                (items[i].Unit, items[i].IsBroken) = ("other", false);
            }

            if (i == 0 && items.Count > 3 && items[0] is { Text: "post", IsFraction: false } && items[1].IsSign('.') && items[1].Glued && items[2].Kind == SpecTokenKind.Word)
            {
                // "Post. Boost 148x12": short for the rear in Italian.
                items[0] = new() { Kind = SpecTokenKind.Word, Text = "post", Start = items[0].Start, End = items[0].End, Glued = items[0].Glued, Clause = items[0].Clause, Terms = ["m:rear"] };
            }

            if ((items[i].Is("m:max") || items[i].Is("m:min")) && items[i].Text is "below" or "under" or "above" or "over" && !items[i].IsFraction && !NumberFollows(items, i))
            {
                // "IS52 below": a place, where no figure follows that it would limit.
                items[i] = new() { Kind = SpecTokenKind.Word, Text = items[i].Text, Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause, Terms = [items[i].Text is "below" or "under" ? "m:lower" : "m:upper"] };
            }

            if (items[i] is { Text: "a", IsFraction: true } && items[i].Is("m:threadless") && i > 0 && items[i - 1] is { Kind: SpecTokenKind.Word } word && word.Clause == items[i].Clause && IsEnglishBeforeArticle(word.Text))
            {
                // "Before you order a headset": an article, and no name of a steerer.
                items[i] = new() { Kind = SpecTokenKind.Word, Text = items[i].Text, Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause, IsFraction = true, Terms = ["t:headset"] };
            }

            if (items[i].Text == "over" && items[i].Is("m:min") && i > 0 && items[i - 1].IsNumber && i + 1 < items.Count && items[i + 1].Text is "ec" or "zs" or "is")
            {
                // "EC34/28.6 over EC34/30": one above the other.
                items[i] = new() { Kind = SpecTokenKind.Word, Text = items[i].Text, Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause, Terms = ["m:nothing"] };
            }

            bool phone = WordLists.ItemCutterNumbers.Contains(items[i].Text);
            if (items[i].Kind != SpecTokenKind.Word || !(phone || items[i].Text is "art" or "artikel" or "artikelnummer" or "ref" or "sku" or "ean"))
            {
                continue;
            }

            int at = i + 1;
            while (at < items.Count && at <= i + 6 && ((items[at].Kind == SpecTokenKind.Sign && !items[at].IsSign(';') && !items[at].IsSign('|')) || items[at].Text is "nr" or "no" or "num"))
            {
                at++;
            }

            if (!phone && at < items.Count && items[at] is { IsNumber: true, Unit: "" } && items[i].Is("n:price"))
            {
                items[i] = new() { Kind = SpecTokenKind.Word, Text = items[i].Text, Start = items[i].Start, End = items[i].End, Glued = items[i].Glued, Clause = items[i].Clause, Terms = ["m:nothing"] };
            }

            while (at < items.Count && items[at].IsNumber && (phone || (items[at].Unit.Length == 0 && !(items[at] is { Places: 1, Value: > 20 and < 60 } && at + 1 < items.Count && items[at + 1].Kind == SpecTokenKind.Sign) && !(at + 2 < items.Count && items[at].Value >= 18 && items[at + 1].IsSign('-') && ExportRows.IsBeadSeat(items[at + 2]) && !(at + 3 < items.Count && items[at + 3].IsSign('-'))))))
            {
                items[at].Unit = "other";
                bool chained = at + 2 < items.Count && items[at + 2].IsNumber && (items[at + 1].IsSign('-') || items[at + 1].IsSign('.') || items[at + 1].IsSign('/')) && items[at + 1].Glued && items[at + 2].Glued;
                at += chained ? 2 : phone ? 1 : items.Count;
            }
        }
    }

    private static bool NumberFollows(List<SpecItem> items, int i)
    {
        for (int j = i + 1; j < items.Count && j <= i + 3 && items[j].Clause == items[i].Clause; j++)
        {
            if (items[j].Is("m:and") && j + 2 < items.Count && items[j + 1].Text is "ec" or "zs" or "is" && items[j + 2].IsNumber)
            {
                // "EC44/40 below and EC44/28.6 above": the next one.
                return false;
            }

            if (items[j].IsNumber)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A word that is no phrase: a compound of two known words, a misspelt name of a part, or not known.</summary>
    private static int Unknown(SpecToken token, List<SpecToken> tokens, int i, int clause, SpecVocabulary vocabulary, List<SpecItem> items, ReadOnlySpan<char> text)
    {
        PhraseTree tree = vocabulary.Tree;
        ImmutableArray<string> bent = tree.Knows(token.Text) || OtherWords.IsOfTheTrade(token.Text) ? default : tree.Inflected(token.Text);
        string? meant = null;
        ImmutableArray<string> near = !bent.IsDefault && !Unit(bent, out _, true) ? bent : token.Text.Length < 8 && OtherWords.Has(token.Text) ? default : tree.Nearly(token.Text, out meant) is { IsDefault: false } part ? part : tree.NearlyValue(token.Text, out meant);
        string guess = meant is not null && meant != token.Text && !near.IsDefault ? ReadAs(text[token.Start..token.End], meant) : "";
        near = near.IsDefault && OfBicycle(token.Text) is { Length: > 2 } piece && tree.Alone(piece) is { IsDefault: false } own && !Unit(own, out _, true) ? own : near;
        for (int cut = 3; near.IsDefault && token.Text.Length >= 8 && cut <= token.Text.Length - 3; cut++)
        {
            ImmutableArray<string> tail = tree.Alone(token.Text[cut..]);
            if (tail.IsDefault || Unit(tail, out _, true))
            {
                continue;
            }

            string head = token.Text[..cut];
            ImmutableArray<string> first = tree.Alone(head) is { IsDefault: false } whole ? whole
                : head.Length > 4 && head[^1] is 's' or 'n' or 'e' && tree.Alone(head[..^1]) is { IsDefault: false } linked ? linked : default;
            if (!first.IsDefault && !Unit(first, out _, true))
            {
                items.Add(new() { Kind = SpecTokenKind.Word, Text = token.Text, Start = token.Start, End = token.End, Glued = token.Glued, Terms = first, Clause = clause, IsFraction = true });
                near = tail;
            }
        }

        items.Add(new() { Kind = SpecTokenKind.Word, Text = token.Text, Start = token.Start, End = token.End, Glued = token.Glued, Terms = near.IsDefault ? [] : near, Guess = guess, Clause = clause });
        return i + 1;
    }

    /// <summary>"Fietsstuur", "Fahrradkette": the part of a bicycle, whose name that says nothing more.</summary>
    private static string OfBicycle(string word) =>
        word.StartsWith("fiets", StringComparison.Ordinal) ? word[5..] : word.StartsWith("fahrrad", StringComparison.Ordinal) ? word[7..] : "";

    /// <summary>Phrases that start with a figure are taken only whole; a lone letter says nothing by itself.</summary>
    private static ImmutableArray<string> Kept(ImmutableArray<string> terms, List<SpecToken> tokens, int from, int behind)
    {
        bool single = behind == from + 1;
        if (single && tokens[from].Text is "l" or "d" && from + 1 < tokens.Count && tokens[from + 1].Is('\'') && tokens[from + 1].Glued)
        {
            // "À l'arrière": the letter of an article is no length.
            return default;
        }

        if (single && tokens[from].Text.Length == 1 && !terms[0].StartsWith("m:", StringComparison.Ordinal) && terms[0] != "t:length" && !terms[0].StartsWith("f:", StringComparison.Ordinal))
        {
            return default;
        }

        if (!single && tokens[behind - 1].Text == "a" && !tokens[behind - 1].Glued && terms[0].Contains("T47A", StringComparison.Ordinal))
        {
            // "T47 à ...": a preposition.
            return default;
        }

        // "t47" is a word with a figure in it; "6 bolt" too. A figure alone is a figure unless it is 28.99.
        return single && tokens[from].IsNumber && tokens[from].Text != "28.99" ? default : terms;
    }

    /// <summary>Whether the terms are of a unit alone, and which.</summary>
    private static bool Unit(ImmutableArray<string> terms, out string unit, bool only)
    {
        unit = "";
        foreach (string term in terms)
        {
            if (term.StartsWith("u:", StringComparison.Ordinal))
            {
                unit = unit.Length == 0 ? term[2..] : unit;
            }
            else if (only)
            {
                return false;
            }
        }

        return unit.Length > 0;
    }

    /// <summary>Takes the unit behind a figure into it.</summary>
    private static int Behind(SpecItem number, List<SpecToken> tokens, int at, SpecVocabulary vocabulary)
    {
        at = HalfWords.Add(number, tokens, at);
        if (at < tokens.Count && tokens[at].Is('"') && IsClosingQuote(tokens, at))
        {
            return at;
        }

        if (number.IsFraction && at + 1 < tokens.Count && tokens[at].Text is "de" or "di" && tokens[at + 1].Text is "pouce" or "pouces" or "pulgada" or "pulgadas" or "pollice" or "pollici")
        {
            // "7/8 de pouce".
            at++;
        }

        // "10 - FACH": a dash torn off its figure.
        if (at + 1 < tokens.Count && tokens[at].Is('-') && !tokens[at].Glued && tokens[at + 1].Text is "fach" or "speed" or "spd" or "voudig" && !tokens[at + 1].Glued && number.Value is >= 5 and <= 13)
        {
            at++;
        }

        // "9f.": the German word for speeds cut short. "30e": a price.
        int cut = at < tokens.Count && tokens[at].Is('-') && tokens[at].Glued ? at + 1 : at;
        if (cut < tokens.Count && tokens[cut] is { Kind: SpecTokenKind.Word, Text: "f", Glued: true } && number.Value is >= 5 and <= 13 && number.Value == decimal.Truncate(number.Value) && (cut + 1 >= tokens.Count || tokens[cut + 1].Kind == SpecTokenKind.Sign || (!tokens[cut + 1].Glued && WordLists.ItemCutterBehind.Contains(tokens[cut + 1].Text))))
        {
            number.Unit = "speed";
            number.End = tokens[cut].End;
            return cut + 1;
        }

        if (at < tokens.Count && tokens[at] is { Kind: SpecTokenKind.Word, Text: "e", Glued: true } && number.Value is >= 15 and <= 5000 && number.Value == decimal.Truncate(number.Value) && !(at + 1 < tokens.Count && tokens[at + 1].Glued && tokens[at + 1].Kind != SpecTokenKind.Sign) && number.Value is not (559 or 571 or 584 or 590 or 622))
        {
            number.Unit = "other";
            number.End = tokens[at].End;
            return at + 1;
        }

        // "10 m roll", "10-m-Rolle": metres of a tape.
        int metre = at < tokens.Count && tokens[at].Is('-') && tokens[at].Glued ? at + 1 : at;
        if (metre < tokens.Count && IsMetre(tokens, metre) && number.Value is >= 2 and <= 100 && !number.IsFraction)
        {
            number.Unit = "other";
            number.End = tokens[metre].End;
            return metre + 1;
        }

        // "135er Hinterbau", "31,6er Stütze": a German size. 29er and the like are wheels.
        if (at < tokens.Count && tokens[at] is { Kind: SpecTokenKind.Word, Text: "er" or "ers", Glued: true } && !(number.Value is 16 or 18 or 20 or 24 or 26 or 27 or 27.5m or 28 or 29 or 650 or 700))
        {
            number.UnitWord = "er";
            number.End = tokens[at].End;
            return at + 1;
        }

        // "Flat mount for 160s", "170s in silver": discs or cranks of that size.
        if (at < tokens.Count && tokens[at] is { Kind: SpecTokenKind.Word, Text: "s", Glued: true } && number.Value is 140 or 160 or 180 or 203 or 165 or 170 or 172.5m or 175)
        {
            number.Unit = "mm";
            number.End = tokens[at].End;
            return at + 1;
        }

        // "24er Welle": no wheel where a word for a spindle stands behind.
        if (at + 1 < tokens.Count && tokens[at] is { Kind: SpecTokenKind.Word, Text: "er", Glued: true } && number.Value is 20 or 24 && IsSpindle(tokens, at + 1, vocabulary))
        {
            number.End = tokens[at].End;
            return at + 1;
        }

        // "20er Boost-Achse": an axle, with the word for its kind between.
        if (at + 2 < tokens.Count && tokens[at] is { Kind: SpecTokenKind.Word, Text: "er", Glued: true } && number.Value is 20 && tokens[at + 1].Text == "boost" && (tokens[at + 2].Text is "achse" or "steckachse" || (at + 3 < tokens.Count && tokens[at + 2].Is('-') && tokens[at + 3].Text is "achse" or "steckachse")))
        {
            number.End = tokens[at].End;
            return at + 1;
        }

        // 29"er is what 29er is.
        if (at + 1 < tokens.Count && tokens[at].Is('"') && tokens[at + 1] is { Kind: SpecTokenKind.Word, Text: "er" or "ers", Glued: true })
        {
            return at + 1;
        }

        if (at < tokens.Count && (tokens[at].Is('"') || tokens[at].Is('\u00B0')))
        {
            number.Unit = tokens[at].Is('"') ? "in" : "deg";
            number.End = tokens[at].End;
            return at + 1;
        }

        // "1 1/2 £25": the sign is of the price behind it.
        if (at + 1 < tokens.Count && (tokens[at].Is('$') || tokens[at].Is('\u20AC') || tokens[at].Is('\u00A3')) && !tokens[at].Glued && tokens[at + 1] is { IsNumber: true, Glued: true })
        {
            return at;
        }

        if (at < tokens.Count && (tokens[at].Is('%') || tokens[at].Is('\u20AC') || tokens[at].Is('$') || tokens[at].Is('\u00A3')))
        {
            number.Unit = "other";
            number.End = tokens[at].End;
            return at + 1;
        }

        int from = at < tokens.Count && (tokens[at].Is('-') || tokens[at].Is('.')) && tokens[at].Glued && at + 1 < tokens.Count && tokens[at + 1].Kind == SpecTokenKind.Word && tokens[at + 1].Glued ? at + 1 : at;
        if (from >= tokens.Count || tokens[from].Kind != SpecTokenKind.Word)
        {
            return at;
        }

        ImmutableArray<string> terms = vocabulary.Tree.Longest(tokens, from, out int end);
        if (terms.IsDefault || !Unit(terms, out string unit, false))
        {
            return at;
        }

        // "35 mil" are millimetres to a mechanic; a smaller figure is of anything.
        if (tokens[from].Text is "mil" && number.Value < 20)
        {
            return at;
        }

        // "26 x 1-3/8 S-6": no inch has speeds.
        if (tokens[from].Text == "s" && number.IsFraction)
        {
            return at;
        }

        // One letter is a unit only against the figure or as the last of its words: "34 t", "12 s", not "26 h ...".
        bool letter = tokens[from].Text.Length == 1 && end == from + 1;
        if (letter && !tokens[from].Glued && unit is not ("teeth" or "speed" or "holes" or "g"))
        {
            return at;
        }

        // "5 in 1", "27.2 in Alu": a preposition unless it is against the figure or the figure is one of inches.
        if (tokens[from].Text == "in" && !tokens[from].Glued && end < tokens.Count && tokens[end].Kind == SpecTokenKind.Word && !WordLists.ItemCutterBehind2.Contains(tokens[end].Text) && !number.IsFraction)
        {
            return at;
        }

        // "Een pen van 34.9 in", "een demper van 230x65 in": no part has so many inches with a decimal, and the word is a particle.
        if (tokens[from].Text == "in" && !tokens[from].Glued && (end >= tokens.Count || tokens[end].Is(',')) && !number.IsFraction && ((number.Value > 20 && number.Places > 0 && number.Value != 27.5m) || (at > 2 && tokens[at - 2].Is('x') && tokens[at - 3].Value > 60)))
        {
            return at;
        }

        // "PM140 S" is no number of speeds, and "160 h" no number of holes.
        if (tokens[from].Text.Length == 1 && number.Value > (unit == "speed" ? 40 : unit == "teeth" ? 80 : unit == "holes" ? 60 : 100_000))
        {
            return at;
        }

        number.Unit = unit;
        number.UnitWord = tokens[from].Text;
        number.End = tokens[end - 1].End;
        if (unit is "kg" or "lb" or "mm" or "in")
        {
            end = HalfWords.Add(number, tokens, end);
        }

        if (unit == "cm")
        {
            number.Value *= 10;
            number.Text = Plain(number.Value);
            number.Unit = "mm";
            return end;
        }

        return end;
    }

    /// <summary>"24er Welle", "24er Hohlachse", "24er holle as": what stands behind is a spindle or an axle.</summary>
    private static bool IsSpindle(List<SpecToken> tokens, int at, SpecVocabulary vocabulary) =>
        tokens[at].Text is "hohlachse" or "hohlwelle" or "hollow" or "holle" or "hohle" or "integrierte" or "doorlopende" || (vocabulary.Tree.Longest(tokens, at, out _) is { IsDefault: false } of && (of.Contains("t:spindle") || of.Contains("t:axle") || of.Contains("m:thru")));

    /// <summary>A word for metres: the letter only against its figure or where a word for a roll follows.</summary>
    private static bool IsMetre(List<SpecToken> tokens, int at)
    {
        if (tokens[at].Text is "meter" or "metre" or "metres" or "meters" or "metros" or "metri" or "mtr")
        {
            return true;
        }

        if (tokens[at].Text is not "m" || (at + 1 < tokens.Count && tokens[at + 1].IsNumber))
        {
            return false;
        }

        int behind = at + 1 < tokens.Count && tokens[at + 1].Is('-') ? at + 2 : at + 1;
        bool roll = behind < tokens.Count && WordLists.ItemCutterIsMetre.Contains(tokens[behind].Text);
        return roll || (tokens[at].Glued && behind >= tokens.Count);
    }

    /// <summary>The mark closes a quotation: an open one stands before it, which is against no figure. Otherwise it says inches.</summary>
    private static bool IsClosingQuote(List<SpecToken> tokens, int at)
    {
        for (int i = at - 1; i >= 0 && i >= at - 12; i--)
        {
            if (tokens[i].Is('"'))
            {
                return i == 0 || !tokens[i].Glued || tokens[i - 1].Kind == SpecTokenKind.Sign;
            }
        }

        return false;
    }

    private static bool Separates(List<SpecToken> tokens, int i)
    {
        SpecToken token = tokens[i];
        char sign = token.Text[0];
        bool blankBehind = i + 1 >= tokens.Count || !tokens[i + 1].Glued;
        return sign switch
        {
            ';' or '\n' or '\r' or '|' or '(' or ')' or '[' or ']' or '{' or '}' or '!' or '\u2022' or '\u00B7' or '\u25CF' => true,
            '<' => !(i + 1 < tokens.Count && tokens[i + 1].Is('=') && tokens[i + 1].Glued),
            '.' when token.Glued && i > 0 && IsShortened(tokens[i - 1].Text) && !(tokens[i - 1].Text == "no" && blankBehind && i + 1 < tokens.Count && tokens[i + 1].Kind == SpecTokenKind.Word && tokens[i + 1].Text != "of") => false,
            '.' when token.Glued && i > 0 && tokens[i - 1].Text is "haut" or "alt" or "larg" or "prof" or "epais" or "esp" && i + 1 < tokens.Count && tokens[i + 1].IsNumber => false,
            ',' or '.' => blankBehind || (i + 1 < tokens.Count && tokens[i + 1].Kind != SpecTokenKind.Number),
            '-' => blankBehind && !token.Glued,
            '/' => blankBehind && (!token.Glued || (i > 0 && tokens[i - 1].Is('/') && !tokens[i - 1].Glued)),
            '+' when !token.Glued && i > 0 && i + 1 < tokens.Count && tokens[i + 1] is { IsNumber: true, Glued: true } => false,
            '+' or '&' => true,
            _ => false,
        };
    }

    /// <summary>The one bar of a line, with no figure before it, parts a key from its value.</summary>
    private static bool IsOneBar(List<SpecToken> tokens, int at)
    {
        if (at is 0 or > 12)
        {
            return false;
        }

        for (int i = 0; i < tokens.Count && i < at + 60; i++)
        {
            if (i != at && (tokens[i].Is('|') || (i < at && tokens[i].IsNumber)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A word that is written short with a point behind it.</summary>
    private static bool IsShortened(string word) => WordLists.ItemCutterIsShortened.Contains(word);

    /// <summary>The figure as text without needless zeros.</summary>
    public static string Plain(decimal value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
