using System.Collections.Frozen;

namespace Lugwork.Reading;

/// <summary>Words cut short with a point ("6 torn.", "Steig. 1,5", "débatt. 160"), initials with points ("U.D.H."), and a word in brackets between a name and its figure ("seat tube (inner) 27.2"). Each stands for the word written out, without its marks.</summary>
internal static class PointedWords
{
    private static readonly FrozenDictionary<string, string> Whole = new Dictionary<string, string>
    {
        ["schr"] = "schrauben", ["sattelst"] = "sattelstutze", ["sattelstz"] = "sattelstutze", ["steig"] = "steigung", ["stg"] = "steigung", ["tretl"] = "tretlager", ["klemmd"] = "klemmdurchmesser", ["einbaubr"] = "einbaubreite", ["lochkr"] = "lochkreis", ["kass"] = "kassette",
        ["ob"] = "oben", ["unt"] = "unten", ["hydr"] = "hydraulisch", ["mech"] = "mechanisch", ["elektr"] = "elektronisch", ["bohr"] = "bohrung",
        ["arr"] = "arriere", ["trav"] = "traversant", ["debatt"] = "debattement", ["debat"] = "debattement", ["filet"] = "filetage", ["roul"] = "roulement", ["boit"] = "boitier", ["entr"] = "entraxe",
        ["torn"] = "tornillos", ["aguj"] = "agujeros", ["hidr"] = "hidraulico", ["recorr"] = "recorrido", ["horq"] = "horquilla", ["valv"] = "valvola",
        ["escurs"] = "escursione", ["cop"] = "copertone", ["reggi"] = "reggisella", ["regg"] = "reggisella", ["deragl"] = "deragliatore", ["fasc"] = "fascetta", ["ant"] = "anteriore", ["centr"] = "centrale", ["idr"] = "idraulico", ["cusc"] = "cuscinetto", ["filett"] = "filettatura",
        ["spd"] = "speed", ["hyd"] = "hydraulic", ["brg"] = "bearing", ["versn"] = "versnellingen",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Initials = FrozenSet.ToFrozenSet(["udh", "dv", "sv", "fv", "bsa", "qr", "bb", "pf", "bcd", "jis", "iso", "xd", "hg", "pm", "fm", "cl"], StringComparer.Ordinal);

    private static readonly FrozenSet<string> Between = FrozenSet.ToFrozenSet(
        ["innen", "aussen", "inner", "outer", "inside", "outside", "internal", "external", "intern", "extern", "interior", "exterior", "interne", "externe", "interno", "esterno", "externo", "interieur", "exterieur", "binnen", "buiten", "gabel", "fork", "fourche", "horquilla", "forcella", "vork", "achse", "krone", "axle", "crown", "axe", "couronne", "eje", "corona", "as", "kroon", "stutze", "post", "max", "maxi", "maximum", "road", "strasse", "route"], StringComparer.Ordinal);

    public static void Mend(List<SpecToken> tokens, PhraseTree tree)
    {
        for (int i = 0; i + 1 < tokens.Count; i++)
        {
            if (tokens[i].Kind != SpecTokenKind.Word)
            {
                continue;
            }

            if (tokens[i].Text.Length == 1)
            {
                JoinInitials(tokens, i, tree);
            }
            else if (tokens[i + 1].Is('.') && tokens[i + 1].Glued && Whole.TryGetValue(tokens[i].Text, out string? whole) && tree.Knows(whole) && !(i + 2 < tokens.Count && tokens[i + 2].Is('.')))
            {
                SpecToken token = tokens[i];
                (token.Text, token.End) = (whole, tokens[i + 1].End);
                tokens[i] = token;
                tokens.RemoveAt(i + 1);
            }

            Unbracket(tokens, i);
        }
    }

    /// <summary>"U.D.H.", "D.V.": letters with a point behind each.</summary>
    private static void JoinInitials(List<SpecToken> tokens, int from, PhraseTree tree)
    {
        int behind = from;
        Span<char> letters = stackalloc char[4];
        int length = 0;
        while (length < letters.Length && behind + 1 < tokens.Count && tokens[behind] is { Kind: SpecTokenKind.Word, Text.Length: 1 } && (length == 0 || tokens[behind].Glued) && tokens[behind + 1].Is('.') && tokens[behind + 1].Glued)
        {
            letters[length++] = tokens[behind].Text[0];
            behind += 2;
        }

        if (length < 2)
        {
            return;
        }

        string word = letters[..length].ToString();
        if (Initials.Contains(word) && tree.Knows(word))
        {
            SpecToken token = tokens[from];
            (token.Text, token.End) = (word, tokens[behind - 1].End);
            tokens[from] = token;
            tokens.RemoveRange(from + 1, behind - from - 1);
        }
    }

    /// <summary>Takes the brackets away around words that only say which side or end is measured, where a figure follows.</summary>
    private static void Unbracket(List<SpecToken> tokens, int name)
    {
        if (!tokens[name + 1 < tokens.Count ? name + 1 : name].Is('('))
        {
            return;
        }

        int close = name + 2;
        bool words = false;
        while (close < tokens.Count && close < name + 7 && (Between.Contains(tokens[close].Text) || tokens[close].Is('\u00F8') || tokens[close].Is('-') || tokens[close].Is(':') || tokens[close].Is('.')))
        {
            words |= tokens[close].Kind == SpecTokenKind.Word;
            close++;
        }

        int figure = close + 1;
        while (figure < tokens.Count && figure < close + 4 && (tokens[figure].Is('\u00F8') || tokens[figure].Is(':') || tokens[figure].Is('=') || tokens[figure].Is('-')))
        {
            figure++;
        }

        if (!words || close >= tokens.Count || !tokens[close].Is(')') || figure >= tokens.Count || !tokens[figure].IsNumber)
        {
            return;
        }

        for (int i = figure - 1; i > name; i--)
        {
            // A dash or colon between the words, too: "(Achse→Krone) – 567".
            if (tokens[i].Kind == SpecTokenKind.Sign && !tokens[i].Is('\u00F8'))
            {
                tokens.RemoveAt(i);
            }
        }
    }
}
