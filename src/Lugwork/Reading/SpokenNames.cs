namespace Lugwork.Reading;

/// <summary>Figures of a name or of an axle that are told apart from it: "ISCG, the 05 one", "pattes ISCG, le standard 05", "Steckachse fünfzehn".</summary>
/// <remarks>Between the two stand only words of the lists here; what denies, offers another or counts further leaves the words as they are.</remarks>
internal static class SpokenNames
{
    private const int Farthest = 7;

    /// <summary>What may stand between the letters of a mount and its year.</summary>
    private static readonly HashSet<string> BeforeYear = new(StringComparer.Ordinal)
    {
        "the", "a", "tabs", "tab", "mount", "mounts", "standard", "kind", "type", "version", "it", "is", "s", "that",
        "der", "die", "das", "den", "dem", "norm", "laschen", "aufnahme", "variante", "typ", "und", "zwar",
        "le", "la", "les", "l", "norme", "pattes", "type", "en", "c", "est", "modele",
        "el", "las", "los", "estandar", "orejas", "norma", "tipo", "version", "anclaje", "es",
        "lo", "il", "gli", "attacchi", "tipo", "versione", "e", "het", "de", "standaard", "soort", "versie", "dat",
    };

    public static void Mend(List<SpecToken> tokens)
    {
        for (int i = 0; i < tokens.Count; i++)
        {
            if (tokens[i].Kind == SpecTokenKind.Number)
            {
                if (tokens[i].Text == "05" || tokens[i] is { Value: 5, Places: 0, IsFraction: false } && tokens[i].End - tokens[i].Start == 2)
                {
                    YearOfMount(tokens, i);
                }
            }
            else if (tokens[i].Kind == SpecTokenKind.Word && Thickness(tokens[i].Text) is > 0 and int thickness && IsBehindAxle(tokens, i) && Stops(tokens, i + 1))
            {
                SpelledNumbers.Put(tokens, i, thickness, tokens[i].End);
            }
        }
    }

    private static void YearOfMount(List<SpecToken> tokens, int year)
    {
        if (!Stops(tokens, year + 1) && !(year + 1 < tokens.Count && tokens[year + 1].Text is "one" or "ones" or "standard" or "tabs" or "mount" or "type" or "version"))
        {
            return;
        }

        for (int i = year - 1; i >= 0 && i >= year - Farthest; i--)
        {
            if (tokens[i].Text == "iscg")
            {
                if (i < year - 1)
                {
                    if (tokens[year - 1].Is('('))
                    {
                        tokens.RemoveAt(year + 1);
                    }

                    tokens.RemoveRange(i + 1, year - i - 1);
                }

                return;
            }

            if (tokens[i].Kind == SpecTokenKind.Word ? !BeforeYear.Contains(tokens[i].Text) : !(tokens[i].Is(',') || (tokens[i].Is('-') && tokens[i].Glued && tokens[i - 1 < 0 ? i : i - 1].Text == "iscg") || tokens[i].Is('(') || tokens[i].Is('\'')) || (tokens[i].Is('(') && !(i == year - 1 && year + 1 < tokens.Count && tokens[year + 1].Is(')'))))
            {
                return;
            }
        }
    }

    private static int Thickness(string word) => word switch
    {
        "twelve" or "zwolf" or "douze" or "doce" or "dodici" or "twaalf" => 12,
        "fifteen" or "funfzehn" or "quinze" or "quince" or "quindici" or "vijftien" => 15,
        _ => 0,
    };

    /// <summary>"Steckachse", "axe traversant de", "perno passante è da": the name of an axle that goes through, and at most three small words.</summary>
    private static bool IsBehindAxle(List<SpecToken> tokens, int i)
    {
        int at = i - 1;
        for (int left = 3; at >= 0 && left > 0; left--)
        {
            bool small = tokens[at].Kind == SpecTokenKind.Word && WordLists.SpokenNamesIsBehindAxle.Contains(tokens[at].Text);
            if (!small && !tokens[at].Is(':'))
            {
                break;
            }

            at--;
        }

        if (at < 0 || tokens[at].Kind != SpecTokenKind.Word)
        {
            return false;
        }

        string before = at > 0 ? tokens[at - 1].Text : "";
        return tokens[at].Text switch
        {
            "steckachse" or "steekas" => true,
            "axle" => before is "thru" or "through",
            "traversant" => before == "axe",
            "pasante" => before == "eje",
            "passante" => before is "perno" or "asse",
            _ => false,
        };
    }

    /// <summary>The figure ends here: nothing counts on.</summary>
    private static bool Stops(List<SpecToken> tokens, int i) =>
        i >= tokens.Count || tokens[i].Is(',') || tokens[i].Is('.') || tokens[i].Is(';') || tokens[i].Is(')') || tokens[i].Text is "mm" or "millimetres" or "millimeter" or "millimetri" or "milimetros";
}
