namespace Lugwork.Reading;

/// <summary>Decimals that are told without their point: "ventisette e due", "treinta y seis con cuatro", "uno setenta y cinco", "veintinueve por dos veinticinco".</summary>
internal static partial class SpelledTens
{
    /// <summary>Diameters of tubes, posts and bars that are told in tenths.</summary>
    private static readonly HashSet<decimal> TubeSizes =
        [22.2m, 23.5m, 23.8m, 25.4m, 25.8m, 26.2m, 26.4m, 26.6m, 26.8m, 27.2m, 27.4m, 28.6m, 28.8m, 29.2m, 29.4m, 29.6m, 29.8m, 30.2m, 30.4m, 30.9m, 31.4m, 31.6m, 31.8m, 34.9m, 36.4m, 38.6m, 39.8m];

    /// <summary>Words for parts of a whole: what stands before them is no figure of its own.</summary>
    private static readonly HashSet<string> Parts =
        ["second", "seconds", "quarter", "quarters", "eighth", "eighths", "sixteenth", "sixteenths", "deuxiemes", "quart", "quarts", "huitieme", "huitiemes", "seiziemes", "cuarto", "cuartos", "octavo", "octavos", "dieciseisavos", "quarto", "quarti", "ottavo", "ottavi", "sedicesimi", "viertel", "achtel", "sechzehntel", "kwart", "achtste", "zestiende"];

    /// <summary>"Ventisette e due", "trenta e nove", "treinta y cuatro con nueve": a word leads from the whole to the tenths, and the size is one of tubes. The figure is of nothing else that is counted.</summary>
    private static bool LinkedTenth(List<SpecToken> tokens, int sum, PhraseTree tree, ref int behind, ref decimal value)
    {
        int link = Next(tokens, behind);
        if (link < 0 || tokens[link].Text is not ("e" or "con") || tokens[behind - 1].Kind != SpecTokenKind.Word)
        {
            return false;
        }

        int digit = Next(tokens, link + 1);
        if (digit < 0 || NumberWords.Of(tokens[digit].Text) is not (> 0 and < 10 and int tenth) || !TubeSizes.Contains(sum + (tenth / 10m)))
        {
            return false;
        }

        int next = digit + 1;
        bool goesOn = next < tokens.Count && (tokens[next].IsNumber || tokens[next].Is('x') || tokens[next].Is('/') || (tokens[next].Is('-') && tokens[next].Glued) || NumberWords.Of(tokens[next].Text) > 0 || Parts.Contains(tokens[next].Text));
        if (goesOn || (next < tokens.Count && IsOtherCount(tokens, next, tree)))
        {
            return false;
        }

        value += tenth / 10m;
        behind = digit + 1;
        return true;
    }

    private static bool IsOtherCount(List<SpecToken> tokens, int at, PhraseTree tree) =>
        tokens[at].Kind == SpecTokenKind.Word && (WordLists.SpelledTenthsIsOtherCount.Contains(tokens[at].Text) || LineScan.IsSprockets(tokens[at].Text) || (tree.Longest(tokens, at, out _) is { IsDefault: false } terms && terms.Any(t => t.StartsWith("u:", StringComparison.Ordinal) && t != "u:mm")));

    /// <summary>"Passo uno e settantacinque", "grosor de uno ochenta y cinco", "par un vingt-cinq", "29 por dos veinticinco": the whole and its hundredths.</summary>
    private static bool Hundredths(List<SpecToken> tokens, int from, ref int behind, ref decimal value)
    {
        if (value > 3)
        {
            return false;
        }

        bool wide = from > 1 && (tokens[from - 1].Is('x') || WordLists.SpelledTenthsHundredths.Contains(tokens[from - 1].Text)) && tokens[from - 2] is { IsNumber: true, Value: 20 or 24 or 26 or 27.5m or 28 or 29 };
        bool fine = value == 1 && (IsOfPitch(tokens, from) || (tokens[from].Text == "uno" && !wide));
        int at = wide || fine ? Next(tokens, from + 1) : -1;
        bool linked = at >= 0 && tokens[at].Text is "e" or "y" or "con" or "et" or "und" or "en";
        at = linked ? Next(tokens, at + 1) : at;
        if (at < 0)
        {
            return false;
        }

        int next = at + 1;
        decimal more = 0;
        if (linked && tokens[at].Text is "medio" or "media" or "mezzo" or "mezza" or "demi" or "demie")
        {
            more = wide || IsOfPitch(tokens, from) ? 0.5m : 0;
        }
        else if (NumberWords.Of(tokens[at].Text) > 0)
        {
            int whole = Whole(tokens, at, out next, out _);
            more = whole is >= 10 and < 100 && whole % 5 == 0 && (wide || whole % 10 == 5) ? whole / 100m : whole < 10 && wide ? whole / 10m : 0;
        }

        bool goesOn = next < tokens.Count && (tokens[next].IsNumber || tokens[next].Is('x') || (tokens[next].Is('/') && tokens[next].Glued) || Parts.Contains(tokens[next].Text) || NumberWords.Of(tokens[next].Text) > 0);
        if (more == 0 || goesOn)
        {
            return false;
        }

        value += more;
        behind = next;
        return true;
    }

    /// <summary>A pitch or a thickness is told right before: "paso de uno y medio", "M12 par un soixante-quinze", "épaisseur : un quatre-vingt-cinq".</summary>
    private static bool IsOfPitch(List<SpecToken> tokens, int from)
    {
        for (int i = from - 1, words = 0; i >= 0 && words < 3; i--)
        {
            if (tokens[i].Kind == SpecTokenKind.Sign)
            {
                if (tokens[i].Is('x'))
                {
                    return i > 0 && tokens[i - 1].IsNumber && tokens[i - 1].Value is >= 9 and <= 20;
                }

                continue;
            }

            words++;
            string text = tokens[i].Text;
            if (WordLists.SpelledTenthsIsOfPitch.Contains(text))
            {
                return true;
            }

            if (text is "por" or "par" or "per" or "by" or "mal" or "fois")
            {
                return i > 0 && tokens[i - 1].IsNumber && tokens[i - 1].Value is >= 9 and <= 20;
            }

            if (tokens[i].IsNumber)
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>"Cincuenta quinientos cincuenta y nueve": the width and the bead seat of a tyre, one behind the other.</summary>
    private static void JoinSeat(List<SpecToken> tokens, int seat)
    {
        if (seat > 0 && tokens[seat].Value is 622 or 584 or 559 or 571 or 635 or 630 or 597 or 590 or 547 or 540 or 520 or 507 or 451 or 406 or 355 or 349 or 305
            && tokens[seat - 1] is { IsNumber: true, IsFraction: false, Value: >= 18 and <= 125 } && !tokens[seat].Glued && (seat < 2 || !(tokens[seat - 2].Is('-') || tokens[seat - 2].Is('x') || tokens[seat - 2].IsNumber)))
        {
            tokens.Insert(seat, new() { Kind = SpecTokenKind.Sign, Text = "-", Start = tokens[seat - 1].End, End = tokens[seat - 1].End, Glued = true });
            SpecToken figure = tokens[seat + 1];
            figure.Glued = true;
            tokens[seat + 1] = figure;
        }
    }
}
