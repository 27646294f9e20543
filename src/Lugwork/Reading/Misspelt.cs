using System.Collections.Frozen;

namespace Lugwork.Reading;

/// <summary>Words with a slip of the pen stand for the word that they are near to, where there is one and they are no word of their own; words that run together or are cut apart, for the known phrase.</summary>
internal static class Misspelt
{
    private const int ShortestWhole = 7;

    private const int ShortestTogether = 8;

    /// <summary>Slips in short words, which are no words of any of the six languages.</summary>
    private static readonly FrozenDictionary<string, string> Short = new Dictionary<string, string>
    {
        ["raear"] = "rear", ["frotn"] = "front", ["fornt"] = "front", ["frok"] = "fork", ["fokr"] = "fork", ["tyer"] = "tyre", ["tyrre"] = "tyre", ["whele"] = "wheel", ["wheeel"] = "wheel", ["raod"] = "road", ["bosot"] = "boost", ["cabel"] = "cable", ["fraem"] = "frame", ["rottor"] = "rotor",
        ["seet"] = "seat", ["theeth"] = "teeth", ["strok"] = "stroke", ["blid"] = "bild", ["fooot"] = "foto", ["axel"] = "axle", ["naabe"] = "nabe", ["kettte"] = "kette", ["ketet"] = "kette", ["kurbl"] = "kurbel", ["rahmn"] = "rahmen", ["gabbel"] = "gabel", ["lenekr"] = "lenker", ["zuhg"] = "zug",
        ["diske"] = "disque", ["disqe"] = "disque", ["routte"] = "route", ["traversan"] = "traversant",
        ["silin"] = "sillin", ["trasro"] = "trasero", ["trasreo"] = "trasero", ["nucelo"] = "nucleo", ["nuceo"] = "nucleo", ["dientse"] = "dientes", ["rutoa"] = "ruota", ["tealio"] = "telaio",
        ["vrok"] = "vork", ["vokr"] = "vork", ["vegl"] = "velg", ["vleg"] = "velg", ["kabell"] = "kabel", ["naff"] = "naaf",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static void Mend(List<SpecToken> tokens, PhraseTree tree)
    {
        for (int i = 0; i < tokens.Count; i++)
        {
            SpecToken token = tokens[i];
            if (token.Kind != SpecTokenKind.Word || token.Text.Length < 3)
            {
                continue;
            }

            bool known = tree.Knows(token.Text);
            if (IsOneWord(tokens, i, known, tree))
            {
                string whole = token.Text + tokens[i + 1].Text;
                tokens[i] = token with { Text = whole, Meant = whole, End = tokens[i + 1].End };
                tokens.RemoveAt(i + 1);
                continue;
            }

            if (known || token.Text.Length < 4)
            {
                continue;
            }

            if (token.Text == "stoke" && i > 0 && (tokens[i - 1].IsNumber || tokens[i - 1].Text == "mm"))
            {
                tokens[i] = token with { Text = "stroke", Meant = "stroke" };
            }
            else if (IsBehindFigure(tokens, i) && tree.NearUnit(token.Text) is { } unit)
            {
                tokens[i] = token with { Text = unit, Meant = unit };
            }
            else if (Short.TryGetValue(token.Text, out string? plain) && tree.Knows(plain))
            {
                tokens[i] = token with { Text = plain, Meant = plain };
            }
            else if (tree.Inflected(token.Text).IsDefault && !OtherWords.Has(token.Text) && ShortSlips.Of(token.Text) is { } near && tree.Knows(near))
            {
                tokens[i] = token with { Text = near, Meant = near };
            }
            else if (token.Text.Length < 5 || !tree.Inflected(token.Text).IsDefault || OtherWords.Has(token.Text))
            {
                continue;
            }
            else if (tree.Near(token.Text) is { } meant)
            {
                tokens[i] = token with { Text = meant, Meant = meant };
            }
            else if (Together(token.Text, tree) is > 0 and int cut)
            {
                string phrase = $"{token.Text[..cut]} {token.Text[cut..]}";
                tokens[i] = token with { Text = token.Text[..cut], Meant = phrase };
                tokens.Insert(i + 1, token with { Text = token.Text[cut..], Meant = phrase, Glued = false });
                i++;
            }
        }
    }

    /// <summary>"zit buis": two words of which one is unknown, and which joined are one that is known.</summary>
    private static bool IsOneWord(List<SpecToken> tokens, int i, bool known, PhraseTree tree) =>
        i + 1 < tokens.Count && tokens[i + 1] is { Kind: SpecTokenKind.Word, Text.Length: >= 3, Glued: false } next && tokens[i].Text.Length + next.Text.Length is >= ShortestWhole and < 28
        && (!known || !tree.Knows(next.Text)) && tree.Knows(tokens[i].Text + next.Text);

    /// <summary>"11-fahc", "6 botls": what stands behind a figure counts something.</summary>
    private static bool IsBehindFigure(List<SpecToken> tokens, int i) =>
        i > 0 && (tokens[i - 1].IsNumber || (i > 1 && tokens[i - 1].Is('-') && tokens[i - 1].Glued && tokens[i - 2].IsNumber));

    /// <summary>Where an unknown word parts into the two words of a known phrase; 0 where it does not, or in two ways.</summary>
    private static int Together(string word, PhraseTree tree)
    {
        int found = 0;
        for (int cut = 3; word.Length is >= ShortestTogether and < 40 && cut <= word.Length - 3; cut++)
        {
            if (tree.IsPhrase(word, cut))
            {
                if (found > 0)
                {
                    return 0;
                }

                found = cut;
            }
        }

        return found;
    }
}
