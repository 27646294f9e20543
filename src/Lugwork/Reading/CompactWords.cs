namespace Lugwork.Reading;

/// <summary>Short forms of the compact lines of a workshop, each by the figure or word beside it: "SR innen 27,2", "EBB 148 SA 12", "post. 135 QR", "140 trav", "C/lock", "MW 25", "Felge h. 50". Each stands for the words written out.</summary>
/// <remarks>Common practice, no source. Where the figure beside it is none of the kind, the letters stay as they are.</remarks>
internal static class CompactWords
{
    public static void Mend(List<SpecToken> tokens)
    {
        HalfLetters.Mend(tokens);
        for (int i = 0; i < tokens.Count; i++)
        {
            if (tokens[i].Is('<') && i + 3 < tokens.Count && tokens[i + 1].Text is "ou" or "or" or "oder" or "of" or "o" && tokens[i + 2].Is('=') && tokens[i + 3].IsNumber)
            {
                // "< ou = 50-584": at most.
                SpecToken sign = tokens[i];
                (sign.Kind, sign.Text, sign.End) = (SpecTokenKind.Word, "max", tokens[i + 2].End);
                tokens[i] = sign;
                tokens.RemoveRange(i + 1, 2);
            }

            if (i > 3 && tokens[i - 1].IsNumber && tokens[i - 2].Is('x') && tokens[i - 3].IsNumber && CompactPairs.IsAxleWord(tokens[i - 4].Text) && IsSupplied(tokens, i))
            {
                // "Rear axle 12x148 incl.": the axle is there, and of the size of its hub.
                tokens.RemoveRange(i, IsPoint(tokens, i + 1) ? 2 : 1);
                i--;
                continue;
            }

            if (tokens[i].Kind == SpecTokenKind.Word && Whole(tokens, i) is { } whole)
            {
                Say(tokens, i, whole);
            }
            else if (tokens[i].Is('~') && i > 0 && i + 1 < tokens.Count && tokens[i + 1].Kind == SpecTokenKind.Word && !tokens[i].Glued && !tokens[i + 1].Glued)
            {
                // "BB30/68mm ~ Schaltauge M10x1": between blanks and before a word the sign parts two things.
                SpecToken sign = tokens[i];
                sign.Text = ";";
                tokens[i] = sign;
            }
        }
    }

    /// <summary>What the short form stands for at this place; null where it is none.</summary>
    private static string? Whole(List<SpecToken> tokens, int i) => tokens[i].Text switch
    {
        "sr" when IsSide(Next(tokens, i + 1)) => "sattelrohr",
        "sr" when Next(tokens, i + 1) is "stutze" => "sattelrohr",
        "st" when IsSide(Next(tokens, i + 1)) => "seattube",
        "inn" when i > 0 && tokens[i - 1].Text is "sr" or "sattelrohr" or "sattelr" or "sitzrohr" && IsPoint(tokens, i + 1) => "innen",
        "sattelr" or "sitzr" => "sattelrohr",
        "post" when IsPoint(tokens, i + 1) && IsRearInItalian(tokens, i) => "posteriore",
        "forc" when IsPoint(tokens, i + 1) && i + 3 < tokens.Count && tokens[i + 2].Text is "post" or "posteriori" or "posteriore" or "ant" or "anteriori" && IsPoint(tokens, i + 3) => "forcellini",
        "rs" when Figure(tokens, i + 1) is 27.2m or 30.9m or 31.6m && EndsOrBracket(tokens, i + 2) => "reggisella",
        "pr" when IsPoint(tokens, i + 1) && i + 2 < tokens.Count && WordLists.CompactWordsWhole.Contains(tokens[i + 2].Text) => "pour",
        "del" when IsPoint(tokens, i + 1) && i > 0 && i + 2 < tokens.Count && tokens[i + 2].IsNumber && WordLists.CompactWordsWhole2.Contains(tokens[i - 1].Text) => "delantero",
        "foret" when i > 0 && tokens[i - 1].Text is "en" or "la" => "campagne",
        "sele" when i > 1 && tokens[i - 1].Text is "de" && tokens[i - 2].Text is "tube" or "tige" or "collier" => "selle",
        "sela" when i > 0 && tokens[i - 1].Text is "tubo" or "collare" or "di" => "sella",
        "rales" when i + 1 < tokens.Count && tokens[i + 1].Text is "redondos" or "ovalados" or "ovales" or "carbono" or "acero" => "railes",
        "coll" when (IsPoint(tokens, i + 1) || (i + 1 < tokens.Count && tokens[i + 1].Is('-') && tokens[i + 1].Glued)) && i + 2 < tokens.Count && tokens[i + 2].Text is "sella" or "reggisella" => "collare",
        "tras" when IsPoint(tokens, i + 1) && i > 0 && i + 2 < tokens.Count && tokens[i + 2].IsNumber && tokens[i - 1].Text is "disco" or "buje" or "freno" or "rotor" => "trasero",
        "hi" when IsPoint(tokens, i + 1) && i > 0 && IsOfMount(tokens[i - 1]) => "hinten",
        "vo" when IsPoint(tokens, i + 1) && i > 0 && IsOfMount(tokens[i - 1]) => "vorn",
        "l" when IsPoint(tokens, i + 1) && i > 0 && Figure(tokens, i - 1) is 16 or 18 or 20 or 24 or 28 or 32 or 36 or 40 or 48 => "loch",
        "t" when i > 1 && tokens[i].Glued && Figure(tokens, i - 1) is 6 && IsBehindHub(tokens, i - 2) && !(i + 1 < tokens.Count && tokens[i + 1].Glued && tokens[i + 1].Kind != SpecTokenKind.Sign) => "tornillos",
        "tr" when IsPoint(tokens, i + 1) && i > 0 && Figure(tokens, i - 1) is 16 or 18 or 20 or 24 or 28 or 32 or 36 or 40 or 48 => "trous",
        "p" when i > 0 && i + 2 < tokens.Count && tokens[i + 1].Is('/') && tokens[i + 1].Glued && tokens[i + 2].Text is "disco" or "disque" or "rotor" or "cubierta" or "tija" or "eje" => "para",
        "to" when i > 0 && i + 1 < tokens.Count && tokens[i + 1].IsNumber && tokens[i - 1].Text is "tyre" or "tyres" or "tire" or "tires" => "max",
        "udh" when IsSupplied(tokens, i + 1) => "udh",
        "q" when !(i > 0 && tokens[i].Glued && tokens[i - 1].Kind == SpecTokenKind.Word) && Figure(tokens, After(tokens, i + 1)) is >= 120 and <= 220 && !(i > 0 && tokens[i - 1].IsNumber) => "qfactor",
        "post" when IsPoint(tokens, i + 1) && IsRearBehind(tokens, i) => "posteriore",
        "br" when IsPoint(tokens, i + 1) && i > 0 && Figure(tokens, i - 1) is >= 3 and <= 6 => "branches",
        "br" when IsPoint(tokens, i + 1) && Figure(tokens, i > 1 && tokens[i - 1].Text == "mm" ? i - 2 : i - 1) is >= 55 and <= 135 => "breed",
        "asimm" or "asim" when IsPoint(tokens, i + 1) => "asimmetrica",
        "moz" when IsPoint(tokens, i + 1) => "mozzo",
        "ebb" when HubWidth(tokens, IsEnd(Next(tokens, i + 1)) ? After(tokens, i + 2) : i + 1) => "einbaubreite",
        "sa" when IsAxleInGerman(tokens, i) => "steckachse",
        "ax" when IsPoint(tokens, i + 1) && Figure(tokens, i + 2) is 12 or 15 or 20 => "axle",
        "mw" when Figure(tokens, After(tokens, i + 1)) is >= 12 and <= 60 => "maulweite",
        "schaltaugengew" => "schaltauge",
        "felgenh" or "felgenhoh" => "felgenhohe",
        "h" or "alt" or "prof" when IsPoint(tokens, i + 1) && Figure(tokens, i + 2) is >= 18 and <= 110 && IsBehindRim(tokens, i) => "hauteur",
        "trav" when IsTravel(tokens, i) => "travel",
        "rec" when IsPoint(tokens, i + 1) && Figure(tokens, i + 2) is >= 60 and <= 230 && (i == 0 || IsPart(tokens[i - 1])) && Ends(tokens, i + 3) => "recorrido",
        "c" when IsSlashed(tokens, i, "lock") => "centerlock",
        "o" when IsSlashed(tokens, i, "a") => "overall",
        "p" when IsSlashed(tokens, i, "m") => "postmount",
        "p" when i + 2 < tokens.Count && (tokens[i + 1].Is('=') || tokens[i + 1].Is(':')) && Figure(tokens, i + 2) is 1 or 1.5m or 1.75m => "pitch",
        "ober" when IsCupBehind(tokens, i) => "oben",
        "unter" when IsCupBehind(tokens, i) => "unten",
        "tot" when i > 0 && (IsPoint(tokens, i + 1) ? Figure(tokens, i + 2) < 0 : Ends(tokens, i + 1)) && (tokens[i - 1].IsNumber || tokens[i - 1].Text is "mm") => "total",
        "o" when IsSlashed(tokens, i, "ends") => "dropout",
        "d" when IsSlashed(tokens, i, "o") || IsSlashed(tokens, i, "outs") => "dropout",
        "o" when IsPoint(tokens, i + 1) && i + 2 < tokens.Count && WordLists.CompactWordsWhole3.Contains(tokens[i + 2].Text) => "ohne",
        "s" when i + 2 < tokens.Count && tokens[i + 1].Is('/') && tokens[i + 1].Glued && tokens[i + 2].Text is "guardabarros" or "adaptador" or "tija" or "eje" or "patilla" => "sin",
        "g" when i + 3 < tokens.Count && IsPoint(tokens, i + 1) && tokens[i + 2].Is('-') && tokens[i + 3].Text == "boue" => "garde",
        "schutzbl" => "schutzblech",
        "sist" when IsPoint(tokens, i + 1) && i > 0 && tokens[i - 1].Text is "max" or "peso" or "del" or "maximo" or "." => "sistema",
        "syst" when IsPoint(tokens, i + 1) && i + 2 < tokens.Count && tokens[i + 2].Text is "wt" or "weight" => "system",
        "wt" when i > 0 && (tokens[i - 1].Text is "system" or "max" || (i > 1 && tokens[i - 2].Text == "system")) => "weight",
        "foro" or "taladro" or "loch" or "trou" or "gat" when !(i > 0 && tokens[i - 1].Kind == SpecTokenKind.Word) && Figure(tokens, After(tokens, i + 1)) is 6.5m or 8.5m && EndsOrBracket(tokens, After(tokens, i + 1) + 1) => "valvehole",
        _ => null,
    };

    /// <summary>Puts the word in, and takes the marks of the short form away.</summary>
    private static void Say(List<SpecToken> tokens, int i, string whole)
    {
        SpecToken token = tokens[i];
        if (whole is "udh" || (whole is "sin" or "para" && i + 1 < tokens.Count))
        {
            // "UDH incl.": the hanger is there with its frame. "s/", "p/": the slash is of the letter.
            int behind = whole is "udh" ? (IsPoint(tokens, i + 2) ? 2 : 1) : 1;
            SpecToken word = tokens[i];
            word.Text = whole;
            tokens[i] = word;
            tokens.RemoveRange(i + 1, behind);
            return;
        }

        int marks = whole is "collare" ? 1 : whole is "centerlock" or "dropout" or "overall" or "postmount" ? 2 : whole is "garde" ? 2 : IsPoint(tokens, i + 1) || (whole is "sattelrohr" && i + 1 < tokens.Count && (tokens[i + 1].Is('/') || tokens[i + 1].Is('-')) && tokens[i + 1].Glued) ? 1 : 0;
        if (whole is "sattelrohr" && Next(tokens, i + 1) is "stutze")
        {
            // "SR-Stütze": one word for the post.
            marks = After(tokens, i + 1) - i;
            whole = "sattelstutze";
        }

        (token.Text, token.End) = (whole, marks > 0 && whole is not "garde" ? tokens[i + marks].End : token.End);
        tokens[i] = token;
        tokens.RemoveRange(i + 1, marks);
    }

    private static bool IsCupBehind(List<SpecToken> tokens, int i) => i + 2 < tokens.Count && tokens[i + 1].Is(':') && tokens[i + 2].Text is "ec" or "zs" or "is";

    private static bool IsPoint(List<SpecToken> tokens, int i) => i < tokens.Count && tokens[i].Is('.') && tokens[i].Glued;

    /// <summary>The place behind marks that say nothing: a point, a colon, a dash, the sign of diameter.</summary>
    private static int After(List<SpecToken> tokens, int i)
    {
        while (i < tokens.Count && (tokens[i].Is('.') || tokens[i].Is(':') || tokens[i].Is('-') || tokens[i].Is('=') || tokens[i].Is('\u00F8')))
        {
            i++;
        }

        return i;
    }

    private static string Next(List<SpecToken> tokens, int i) => After(tokens, i) is int at && at < tokens.Count && tokens[at].Kind == SpecTokenKind.Word ? tokens[at].Text : "";

    private static decimal Figure(List<SpecToken> tokens, int i) => i < tokens.Count && tokens[i] is { IsNumber: true, IsFraction: false, IsBroken: false } ? tokens[i].Value : -1;

    private static bool IsSide(string word) => word is "innen" or "inn" or "int" or "inside" or "bohrung" or "innendurchmesser" or "aussen";

    private static bool IsOfMount(SpecToken token) => token.IsNumber || WordLists.CompactWordsIsOfMount.Contains(token.Text);

    /// <summary>"15x100 6T", "15x110 Boost, 6T": bolts of a rotor, right behind the size of a hub.</summary>
    private static bool IsBehindHub(List<SpecToken> tokens, int i)
    {
        i -= tokens[i].Is(',') || tokens[i].Is('/') ? 1 : 0;
        i -= i > 0 && tokens[i].Text is "boost" or "qr" or "mm" or "ta" ? 1 : 0;
        return i > 0 && tokens[i].IsNumber && tokens[i - 1].Is('x') && (HubWidth(tokens, i) || (i > 1 && HubWidth(tokens, i - 2)));
    }

    private static bool IsEnd(string word) => word is "hi" or "hinten" or "vo" or "vorn" or "vorne" or "hr" or "vr";

    private static bool HubWidth(List<SpecToken> tokens, int i) => Figure(tokens, After(tokens, i)) is 100 or 110 or 116 or 120 or 126 or 130 or 135 or 141 or 142 or 145 or 148 or 150 or 157 or 170 or 177 or 190 or 197;

    /// <summary>"post. 135 QR", "moz. post. 12x142": behind nothing that a seatpost is called by, and before the size of a rear hub.</summary>
    private static bool IsRearInItalian(List<SpecToken> tokens, int i)
    {
        if (i > 0 && tokens[i - 1].Kind == SpecTokenKind.Word && !WordLists.CompactWordsIsRearInItalian.Contains(tokens[i - 1].Text))
        {
            return false;
        }

        if (i > 0 && i + 2 < tokens.Count && tokens[i + 2].IsNumber && WordLists.CompactWordsIsRearInItalian2.Contains(tokens[i - 1].Text))
        {
            // "Copertone post. 40-635".
            return true;
        }

        int told = After(tokens, i + 2);
        told += told < tokens.Count && told == i + 2 && tokens[told].Kind == SpecTokenKind.Sign ? 1 : 0;
        if (told < tokens.Count && tokens[told].Text is "qr" or "pp" or "boost" && HubWidth(tokens, told + 1) && Figure(tokens, told + 1) >= 116)
        {
            // "post. > QR 130 mm".
            return true;
        }

        if (HubWidth(tokens, i + 2) && Figure(tokens, i + 2) >= 116)
        {
            int behind = i + 3 < tokens.Count && tokens[i + 3].Text == "mm" ? i + 4 : i + 3;
            return behind < tokens.Count && (tokens[behind].Text is "qr" or "pp" or "boost" or "sgancio" || (tokens[behind].Is('x') && Figure(tokens, behind + 1) is 10 or 12));
        }

        return Figure(tokens, i + 2) is 10 or 12 && i + 3 < tokens.Count && tokens[i + 3].Is('x') && HubWidth(tokens, i + 4);
    }

    /// <summary>"190 QR post. ; ...": behind the width of a hub and the word for its axle, and the last word of the clause.</summary>
    private static bool IsRearBehind(List<SpecToken> tokens, int i)
    {
        bool kind = i > 1 && tokens[i - 1].Text is "qr" or "pp" or "boost";
        int figure = kind ? i - 2 : -1;
        figure -= figure > 0 && tokens[figure].Text == "mm" ? 1 : 0;
        return figure >= 0 && HubWidth(tokens, figure) && Figure(tokens, figure) >= 116 && (i + 2 >= tokens.Count || IsPart(tokens[i + 2]));
    }

    /// <summary>"SA 12", "SA Ø15", "12x142 SA": beside the thickness of an axle or behind the size of a hub.</summary>
    private static bool IsAxleInGerman(List<SpecToken> tokens, int i)
    {
        int figure = After(tokens, i + 1);
        if (Figure(tokens, figure) is 12 or 15 or 20)
        {
            return true;
        }

        int before = i > 0 && tokens[i - 1].Text == "mm" ? i - 2 : i - 1;
        return before > 1 && tokens[before].IsNumber && tokens[before - 1].Is('x') && tokens[before - 2].IsNumber && (HubWidth(tokens, before) || HubWidth(tokens, before - 2));
    }

    /// <summary>A rim or the way it holds its tyre, within the four words before.</summary>
    private static bool IsBehindRim(List<SpecToken> tokens, int i)
    {
        for (int j = i - 1; j >= 0 && j >= i - 4 && !tokens[j].Is(';') && !tokens[j].Is('|'); j--)
        {
            if (WordLists.CompactWordsIsBehindRim.Contains(tokens[j].Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"140 trav", "trav 120": in English, beside a figure that is no width of a hub, or in a line with another English word of a fork. In French the word is of an axle.</summary>
    private static bool IsTravel(List<SpecToken> tokens, int i)
    {
        int before = i > 0 && tokens[i - 1].Text == "mm" ? i - 2 : i - 1;
        decimal figure = before >= 0 && tokens[before].IsNumber ? Figure(tokens, before) : Figure(tokens, After(tokens, i + 1));
        if (figure is < 40 or > 230 || (before > 0 && tokens[before].IsNumber && tokens[before - 1].Is('x')))
        {
            return false;
        }

        bool width = figure is 100 or 110 or 130 or 135 or 141 or 142 or 145 or 148 or 150 or 157 or 170 or 177 or 190 or 197;
        bool english = !width;
        for (int j = 0; j < tokens.Count; j++)
        {
            if (WordLists.CompactWordsIsTravel.Contains(tokens[j].Text))
            {
                return false;
            }

            english |= WordLists.CompactWordsIsTravel2.Contains(tokens[j].Text);
        }

        return english;
    }

    /// <summary>"Incl.", "inkl.", "meegeleverd" as the last word of its clause.</summary>
    private static bool IsSupplied(List<SpecToken> tokens, int i)
    {
        if (i >= tokens.Count || !WordLists.CompactWordsIsSupplied.Contains(tokens[i].Text))
        {
            return false;
        }

        int behind = IsPoint(tokens, i + 1) ? i + 2 : i + 1;
        return behind >= tokens.Count || IsPart(tokens[behind]) || tokens[behind].Is(')');
    }

    private static bool IsSlashed(List<SpecToken> tokens, int i, string word) =>
        i + 2 < tokens.Count && tokens[i + 1].Is('/') && tokens[i + 1].Glued && tokens[i + 2].Glued && tokens[i + 2].Text == word;

    /// <summary>A sign that parts two things.</summary>
    private static bool IsPart(SpecToken token) => token.Is(';') || token.Is('/') || token.Is('|') || token.Is(',') || token.Is('-') || token.Is('\u2022') || token.Is('\u00B7') || token.Is('+');

    private static bool EndsOrBracket(List<SpecToken> tokens, int i) => Ends(tokens, i) || tokens[i].Is('(');

    private static bool Ends(List<SpecToken> tokens, int i)
    {
        i += i < tokens.Count && tokens[i].Text == "mm" ? 1 : 0;
        return i >= tokens.Count || IsPart(tokens[i]) || tokens[i].Is('.') || tokens[i].Is(')');
    }
}
