using System.Collections.Frozen;

namespace Lugwork.Reading;

/// <summary>Short forms that only a row of an export has, and only before what they are short for: "SR 31,6", "o IS41/28.6", "h/w up. 30x8". Common practice, no source.</summary>
internal static class RowWords
{
    private const int FewestSigns = 3;

    /// <summary>What no other word can be short for in the cells of a row.</summary>
    private static readonly FrozenDictionary<string, string> Whole = new Dictionary<string, string>
    {
        ["ebb"] = "einbaubreite", ["nb"] = "nabenbreite", ["inn"] = "innen", ["moz"] = "mozzo", ["hi"] = "hinten", ["zitb"] = "zitbuis",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static void Mend(List<SpecToken> tokens)
    {
        Anywhere(tokens);
        if (!IsRow(tokens))
        {
            return;
        }

        bool shock = tokens[0].Text is "shock" or "shk" or "shox" or "dampfer" or "demper";
        for (int i = 0; i + 1 < tokens.Count; i++)
        {
            if (tokens[i].Kind != SpecTokenKind.Word)
            {
                continue;
            }

            bool first = i == 0 || IsEnd(tokens[i - 1]);
            int next = tokens[i + 1].Is('.') && tokens[i + 1].Glued && i + 2 < tokens.Count ? i + 2 : i + 1;
            string? whole = Meant(tokens, i, next, first, shock) ?? (Whole.TryGetValue(tokens[i].Text, out string? word) ? word : null);
            if (whole is null)
            {
                continue;
            }

            SpecToken token = tokens[i];
            (token.Text, token.End) = (whole, tokens[next - 1].End);
            tokens[i] = token;
            tokens.RemoveRange(i + 1, next - i - 1);
        }
    }

    private static string? Meant(List<SpecToken> tokens, int i, int next, bool first, bool shock) => tokens[i].Text switch
    {
        "o" when first && IsCup(tokens[next]) => "oben",
        "u" when first && IsCup(tokens[next]) => "unten",
        "o" when first && next > i + 1 && tokens[next].Kind == SpecTokenKind.Word && tokens[next].Text.Length > 3 => "ohne",
        "sr" or "st" when IsBore(tokens, next) => "seattube",
        "str" when shock && tokens[next].IsNumber => "stroke",
        "post" when next > i + 1 && i > 0 && tokens[next] is { IsNumber: true, Value: 135 or 141 or 142 or 148 or 157 or 12 } => "posteriore",
        "kl" when next > i + 1 && tokens[next] is { IsNumber: true, Value: 25.4m or 26m or 31.8m or 35m } => "klemmung",
        "zp" when first && IsBore(tokens, next) => "zadelpen",
        "rs" when first && IsBore(tokens, next) => "reggisella",
        "up" when next > i + 1 => "upper",
        "low" when next > i + 1 => "lower",
        "br" when i > 0 && tokens[i - 1].IsNumber && tokens[0].Text is "bielas" or "biela" => "brazos",
        _ => null,
    };

    private static bool IsCup(SpecToken token) => token.Text is "is" or "zs" or "ec";

    /// <summary>A bore of a seat tube in tenths, with or without its sign of diameter and the word for inside: a length of a tube has no tenths of its millimetres.</summary>
    private static bool IsBore(List<SpecToken> tokens, int at)
    {
        while (at < tokens.Count && (tokens[at].Is('\u00F8') || tokens[at].Is('.') || tokens[at].Is(':') || tokens[at].Text is "inn" or "innen" or "int"))
        {
            at++;
        }

        return at < tokens.Count && tokens[at] is { IsNumber: true, Places: 1, Value: >= 25 and < 36 } && !(at + 1 < tokens.Count && tokens[at + 1].Text is "cm" or "in" or "\"");
    }

    /// <summary>Short forms of any line: "h/w 30x8", "P/N 60441", "4kt JIS", "t.s. 26,8", "travel" and "through" cut short before what tells them.</summary>
    private static void Anywhere(List<SpecToken> tokens)
    {
        for (int i = 0; i + 1 < tokens.Count; i++)
        {
            SpecToken token = tokens[i];
            if (token.Text is "h" && i + 2 < tokens.Count && tokens[i + 1].Is('/') && tokens[i + 2] is { Text: "w", Glued: true } && tokens[i + 1].Glued)
            {
                (token.Text, token.End) = ("hardware", tokens[i + 2].End);
                tokens[i] = token;
                tokens.RemoveRange(i + 1, 2);
            }
            else if (token.Text is "p" or "s" && i + 3 < tokens.Count && tokens[i + 1].Is('/') && tokens[i + 2] is { Text: "n", Glued: true } && tokens[i + 1].Glued && (tokens[i + 3].IsNumber || tokens[i + 3].Is(':')))
            {
                (token.Text, token.End) = (token.Text == "p" ? "pn" : "sn", tokens[i + 2].End);
                tokens[i] = token;
                tokens.RemoveRange(i + 1, 2);
            }
            else if (token.Text is "f" && i + 2 < tokens.Count && tokens[i + 1].Is('.') && tokens[i + 1].Glued && (tokens[i + 2].Kind == SpecTokenKind.Word ? IsGermanPart(tokens[i + 2].Text) : tokens[i + 2].IsNumber && i > 0 && tokens[i - 1].Text is "platz" or "raum" or "freigang" or "freiraum" or "passend" or "geeignet" or "passt" or "zugelassen" or "freigegeben"))
            {
                (token.Text, token.End) = ("fur", tokens[i + 1].End);
                tokens[i] = token;
                tokens.RemoveAt(i + 1);
            }
            else if (token.Text is "hg" && tokens[i + 1].Is('(') && ClosingOfSpeeds(tokens, i + 2) is > 0 and int close)
            {
                tokens.RemoveAt(close);
                tokens.RemoveAt(i + 1);
            }
            else if (token is { IsNumber: true, Value: 4, Places: 0 } && tokens[i + 1] is { Text: "kt", Glued: true })
            {
                tokens[i] = new() { Kind = SpecTokenKind.Word, Text = "vierkant", Start = token.Start, End = tokens[i + 1].End, Glued = token.Glued };
                tokens.RemoveAt(i + 1);
            }
            else if (token.Text is "t" && i + 4 < tokens.Count && tokens[i + 1].Is('.') && tokens[i + 2] is { Text: "s", Glued: true } && tokens[i + 3].Is('.') && tokens[i + 3].Glued && IsBore(tokens, i + 4))
            {
                (token.Text, token.End) = ("seattube", tokens[i + 3].End);
                tokens[i] = token;
                tokens.RemoveRange(i + 1, 3);
            }
            else if (token is { Text: "t", Glued: false } && i + 2 < tokens.Count && tokens[i + 1].Is('.') && IsNamedTube(tokens[i + 2].Text))
            {
                // "t.sella Ø int. 28,0", "t. sterzo sup. IS42": the tube that the word behind it names.
                (token.Text, token.End) = ("tubo", tokens[i + 1].End);
                tokens[i] = token;
                tokens.RemoveAt(i + 1);
                SpecToken named = tokens[i + 1];
                named.Glued = false;
                tokens[i + 1] = named;
            }
            else if (token is { Text: "esc", Glued: false } && Figure(tokens, i) is > 0 and int figure && tokens[figure] is { Places: 0, Value: >= 60 and <= 220 } && !(figure + 1 < tokens.Count && (tokens[figure + 1].Is('x') || tokens[figure + 1].Is('/') || tokens[figure + 1].Is('-'))))
            {
                (token.Text, token.End) = ("escursione", tokens[figure - 1].End);
                tokens[i] = token;
                tokens.RemoveRange(i + 1, figure - i - 1);
            }
            else if (token.Text is "trav" && tokens[i + 1] is { IsNumber: true, Places: 0, Value: >= 60 and <= 250 } && !(i + 2 < tokens.Count && (tokens[i + 2].Is('x') || tokens[i + 2].Is('/') || tokens[i + 2].Is('-'))) && (i == 0 || tokens[i - 1].Kind == SpecTokenKind.Sign || tokens[i - 1].Text is "fork"))
            {
                token.Text = "travel";
                tokens[i] = token;
            }
            else if (token.Text is "thru" && (tokens[i + 1].Text is "headset" || (tokens[i + 1].Text is "the" && i + 2 < tokens.Count && tokens[i + 2].Text is "headset")))
            {
                token.Text = "through";
                tokens[i] = token;
            }
        }
    }

    /// <summary>The figure behind a word and its point or colon; -1 where there is none.</summary>
    private static int Figure(List<SpecToken> tokens, int word)
    {
        int at = word + 1;
        at += at < tokens.Count && (tokens[at].Is('.') || tokens[at].Is(':')) ? 1 : 0;
        return at < tokens.Count && tokens[at].IsNumber ? at : -1;
    }

    private static bool IsNamedTube(string word) => word is "sella" or "sterzo" or "sillin" or "direccion" or "dir";

    /// <summary>What "f." is "f\u00FCr" before, and no front.</summary>
    private static bool IsGermanPart(string word) => word.StartsWith("alu", StringComparison.Ordinal) || word.StartsWith("carbonf", StringComparison.Ordinal) || WordLists.RowWordsIsGermanPart.Contains(word);

    /// <summary>"HG (8/9/10)": where the bracket behind the speeds closes.</summary>
    private static int ClosingOfSpeeds(List<SpecToken> tokens, int at)
    {
        while (at + 1 < tokens.Count && tokens[at] is { IsNumber: true, IsFraction: false, Places: 0, Value: >= 7 and <= 12 })
        {
            if (tokens[at + 1].Is(')'))
            {
                return at + 1;
            }

            if (!tokens[at + 1].Is('/') && !tokens[at + 1].Is(',') && !tokens[at + 1].Is('-'))
            {
                break;
            }

            at += 2;
        }

        return -1;
    }

    private static bool IsEnd(SpecToken token) => token.Is(';') || token.Is('|') || token.Is('\t');

    /// <summary>Three signs between cells, and a word or sign of trade.</summary>
    private static bool IsRow(List<SpecToken> tokens)
    {
        (int ends, bool trade) = (0, false);
        for (int i = 0; i < tokens.Count; i++)
        {
            ends += IsEnd(tokens[i]) ? 1 : 0;
            trade |= tokens[i].Is('#') || tokens[i].Is('\u20AC') || tokens[i].Is('\u00A3') || tokens[i].Is('$') || (tokens[i].Kind == SpecTokenKind.Word && (ExportWords.IsCurrency(tokens[i].Text) || ((tokens[i].Text.Length > 2 || (tokens[i].Text is "nr" && i + 1 < tokens.Count && tokens[i + 1].Is('.'))) && ExportWords.IsArticle(tokens[i].Text)) || ExportWords.IsQuantity(tokens[i].Text)));
        }

        return ends >= FewestSigns && trade;
    }
}
