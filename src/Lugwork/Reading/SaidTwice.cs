namespace Lugwork.Reading;

/// <summary>A figure that a line says in words and again in figures: "one forty-eight by twelve, 148x12", "siebenundzwanzig zwei, also 27,2", "265 lb, two hundred and sixty-five pounds". Where the two agree in every figure they are one, and stand once.</summary>
internal static class SaidTwice
{
    /// <summary>More of them are in no line; each moves what stands behind it.</summary>
    private const int Most = 20;

    private const int MostFigures = 9;
    private const int MostBetween = 8;
    private const int MostWords = 18;

    /// <summary>Words that lead from the one to the other, and fillers.</summary>
    private static readonly HashSet<string> Leading = new(StringComparer.Ordinal)
    {
        "so", "ie", "i", "e", "meaning", "that", "s", "is", "it", "right", "yeah", "figures", "in", "digits", "numbers", "as", "thus", "namely",
        "also", "heisst", "sprich", "dh", "d", "h", "das", "ist", "sind", "ergo", "zahlen", "ziffern", "genau", "eben", "quasi", "sozusagen", "macht",
        "donc", "soit", "c", "est", "dire", "alors", "chiffres", "autrement", "dit", "fait",
        "es", "decir", "sea", "osea", "cifras", "numeros", "esto", "entonces", "vamos", "son", "pues",
        "cioe", "ossia", "quindi", "ovvero", "dunque", "cifre", "vale", "sarebbe", "allora", "insomma",
        "dus", "oftewel", "ofwel", "dat", "dwz", "zeg", "maar", "cijfers", "zijn", "te", "weten",
        "eh", "ehm", "uh", "um", "uhm", "ah", "ahm", "hm", "euh", "bueno", "beh",
    };

    /// <summary>Words that part two things, so that what stands on both sides is not one.</summary>
    private static readonly HashSet<string> Parting = new(StringComparer.Ordinal)
    {
        "or", "not", "but", "for", "and", "plus", "with", "instead", "than", "oder", "nicht", "kein", "aber", "fur", "und", "mit", "statt", "sondern", "als", "ou", "pas", "mais", "pour", "et", "avec", "que", "no", "pero", "para", "y", "con", "sino", "non", "ma", "per", "niet", "geen", "maar", "voor", "met", "dan",
    };

    public static void Mend(List<SpecToken> tokens, PhraseTree tree)
    {
        int left = Most;
        for (int i = 0; i < tokens.Count && left > 0; i++)
        {
            if (!tokens[i].IsNumber || tokens[i].IsBroken)
            {
                continue;
            }

            int behind = EndOfFigures(tokens, i);
            if (Before(tokens, tree, i, ref behind) || Behind(tokens, tree, i, behind))
            {
                left--;
                behind = Math.Min(behind, tokens.Count);
            }

            i = Math.Max(i, behind - 1);
        }
    }

    /// <summary>The words stand before the figures.</summary>
    private static bool Before(List<SpecToken> tokens, PhraseTree tree, int from, ref int behind)
    {
        int end = Between(tokens, tree, from, out int others, out bool signed, out bool bracket);
        if (end <= 0 || (bracket && !IsClosed(tokens, tree, behind, out _)))
        {
            return false;
        }

        string[] wanted = SpokenFigures.Targets(tokens, from, behind);
        int start = -1;
        for (int at = Math.Max(0, end - MostWords); at < end && start < 0; at++)
        {
            if (SpokenFigures.StartsAt(tokens, at) && Array.Exists(wanted, w => SpokenFigures.Says(tokens, at, end, w)))
            {
                start = at;
            }
        }

        if (start < 0 || SpokenFigures.GoesOnBefore(tokens, start) || !IsSure(tokens, tree, start, end, signed, others, wanted[0]))
        {
            return false;
        }

        if (others == 0)
        {
            // What stands in brackets stays in them.
            int kept = bracket ? from - 1 : from;
            tokens.RemoveRange(start, kept - start);
            behind -= kept - start;
            return true;
        }

        if (bracket && IsClosed(tokens, tree, behind, out int closing))
        {
            tokens.RemoveAt(closing);
        }

        Put(tokens, tree, (start, end), (from, behind));
        behind = start + (behind - from);
        return true;
    }

    /// <summary>Puts the figures, with their unit, in the place of the words.</summary>
    private static void Put(List<SpecToken> tokens, PhraseTree tree, (int From, int Behind) words, (int From, int Behind) figures)
    {
        int unit = UnitEnd(tokens, tree, figures.Behind);
        bool twice = unit > figures.Behind && UnitEnd(tokens, tree, words.Behind) > words.Behind;
        List<SpecToken> moved = tokens.GetRange(figures.From, (twice ? figures.Behind : unit) - figures.From);
        int first = tokens[words.From].Start;
        int last = tokens[words.Behind - 1].End;
        int kept = words.Behind;
        for (int i = figures.From - 1; i >= words.Behind; i--)
        {
            bool other = tokens[i].Kind == SpecTokenKind.Word && (!Leading.Contains(tokens[i].Text) || IsUnit(tokens, tree, i));
            if (other)
            {
                kept = i + 1;
                break;
            }
        }

        tokens.RemoveRange(kept, unit - kept);
        tokens.RemoveRange(words.From, words.Behind - words.From);
        for (int i = 0; i < moved.Count; i++)
        {
            SpecToken token = moved[i];
            token.Start = Math.Min(first + i, last);
            token.End = i == moved.Count - 1 ? last : Math.Min(first + i + 1, last);
            token.Glued = i > 0 && token.Glued;
            moved[i] = token;
        }

        tokens.InsertRange(words.From, moved);
    }

    /// <summary>The words stand behind the figures.</summary>
    private static bool Behind(List<SpecToken> tokens, PhraseTree tree, int from, int behind)
    {
        int unit = UnitEnd(tokens, tree, behind);
        int start = unit;
        bool led = false;
        bool bracket = false;
        while (start < tokens.Count && start <= unit + MostBetween && !SpokenFigures.StartsAt(tokens, start))
        {
            bool sign = tokens[start].Is(',') || tokens[start].Is('(') || tokens[start].Is(':') || tokens[start].Is('=') || tokens[start].Is(';') || (tokens[start].Is('-') && !tokens[start].Glued) || (led && tokens[start].Is('\''));
            if (!sign && !(tokens[start].Kind == SpecTokenKind.Word && Leading.Contains(tokens[start].Text)))
            {
                return false;
            }

            led = true;
            bracket |= tokens[start].Is('(');
            start++;
        }

        if (!led || start >= tokens.Count || !SpokenFigures.StartsAt(tokens, start))
        {
            return false;
        }

        string[] wanted = SpokenFigures.Targets(tokens, from, behind);
        int end = -1;
        for (int at = Math.Min(tokens.Count, start + MostWords); at > start && end < 0; at--)
        {
            end = Array.Exists(wanted, w => SpokenFigures.Says(tokens, start, at, w)) ? at : -1;
        }

        if (end < 0 || SpokenFigures.GoesOnBehind(tokens, end))
        {
            return false;
        }

        int second = UnitEnd(tokens, tree, end);
        if (second > end && unit > behind && !IsSameUnit(tokens, tree, behind, end))
        {
            return false;
        }

        int drop = unit > behind ? second : end;
        if (second == end && !(end >= tokens.Count || tokens[end].Kind == SpecTokenKind.Sign) && wanted[0].Length < 3)
        {
            // "12, twelve spokes": what is counted is not what was measured.
            return false;
        }

        if (bracket)
        {
            if (!IsClosed(tokens, tree, end, out int closing))
            {
                return false;
            }

            tokens.RemoveAt(closing);
        }

        tokens.RemoveRange(unit, drop - unit);
        return true;
    }

    /// <summary>Behind the last word before the figures that can be of a number; 0 where too much stands between, or what parts them.</summary>
    private static int Between(List<SpecToken> tokens, PhraseTree tree, int from, out int others, out bool signed, out bool bracket)
    {
        others = 0;
        signed = false;
        bracket = false;
        int at = from - 1;
        for (; at >= 0 && at >= from - MostBetween; at--)
        {
            if (tokens[at].Kind == SpecTokenKind.Number)
            {
                return 0;
            }

            if (tokens[at].Kind == SpecTokenKind.Sign)
            {
                bool known = tokens[at].Is(',') || tokens[at].Is('(') || tokens[at].Is(':') || tokens[at].Is('=') || tokens[at].Is('\'') || tokens[at].Is('.') || (tokens[at].Is('-') && !tokens[at].Glued);
                if (!known || (tokens[at].Is('(') && at != from - 1))
                {
                    return 0;
                }

                bracket |= tokens[at].Is('(');
                signed |= !tokens[at].Is('\'') && !tokens[at].Is('.');
                continue;
            }

            if (SpokenFigures.Ends(tokens, at) && !(Leading.Contains(tokens[at].Text) && tokens[at].Text.Length < 3))
            {
                return at + 1;
            }

            bool unit = IsUnit(tokens, tree, at);
            if (Leading.Contains(tokens[at].Text) && !unit)
            {
                signed |= tokens[at].Text.Length > 2 || tokens[at].Text is "so" or "ie";
                continue;
            }

            if (Parting.Contains(tokens[at].Text) || ++others > 3)
            {
                return 0;
            }
        }

        return 0;
    }

    /// <summary>Whether words and figures are one thing for certain: a sign or a word leads from the one to the other, and of a small number nothing is counted in between.</summary>
    private static bool IsSure(List<SpecToken> tokens, PhraseTree tree, int start, int end, bool signed, int others, string wanted)
    {
        if (!signed)
        {
            return false;
        }

        int unit = UnitEnd(tokens, tree, end);
        int figures = end;
        while (!tokens[figures].IsNumber)
        {
            figures++;
        }

        int behind = EndOfFigures(tokens, figures);
        if (unit > end && UnitEnd(tokens, tree, behind) > behind && !IsSameUnit(tokens, tree, end, behind))
        {
            return false;
        }

        return others <= (unit > end ? unit - end : 0) || wanted.Length > 2 || (end - start > 1 && wanted.Length > 1 && others == 1) || IsMeasure(tokens, tree, end);
    }

    /// <summary>"Seventy-three across, 73 mm", "vierzig lang, also 40": a word for what was measured.</summary>
    private static bool IsMeasure(List<SpecToken> tokens, PhraseTree tree, int at) =>
        at < tokens.Count && (WordLists.SaidTwiceIsMeasure.Contains(tokens[at].Text)
            || (tree.Longest(tokens, at, out _) is { IsDefault: false } terms && terms.Any(t => t is "t:length" or "t:inner" or "t:depth" or "n:width" or "m:diameter")));

    private static bool IsClosed(List<SpecToken> tokens, PhraseTree tree, int behind, out int closing)
    {
        closing = UnitEnd(tokens, tree, behind);
        return closing < tokens.Count && tokens[closing].Is(')');
    }

    private static bool IsUnit(List<SpecToken> tokens, PhraseTree tree, int at) => UnitEnd(tokens, tree, at) > at;

    /// <summary>Behind the unit that starts at a token; the token itself where none does.</summary>
    private static int UnitEnd(List<SpecToken> tokens, PhraseTree tree, int at)
    {
        at = Math.Min(at, tokens.Count);
        if (at < tokens.Count && tokens[at].Is('"'))
        {
            return at + 1;
        }

        bool word = at < tokens.Count && tokens[at].Kind == SpecTokenKind.Word && !(tokens[at].Text is "in" && at + 1 < tokens.Count && tokens[at + 1].Kind == SpecTokenKind.Word);
        return word && UnitOf(tokens, tree, at, out int end) is "u:mm" or "u:in" or "u:kg" or "u:lb" or "u:deg" ? end : at;
    }

    private static bool IsSameUnit(List<SpecToken> tokens, PhraseTree tree, int one, int other) =>
        UnitOf(tokens, tree, one, out _) == UnitOf(tokens, tree, other, out _);

    private static string UnitOf(List<SpecToken> tokens, PhraseTree tree, int at, out int end)
    {
        end = at + 1;
        if (tokens[at].Is('"'))
        {
            return "u:in";
        }

        if (tree.Longest(tokens, at, out int behind) is { IsDefault: false } terms)
        {
            foreach (string term in terms)
            {
                if (term.StartsWith("u:", StringComparison.Ordinal))
                {
                    end = behind;
                    return term;
                }
            }
        }

        return "";
    }

    /// <summary>Behind a chain of figures that signs join: 148x12, 28/32-630, 700Cx25.</summary>
    private static int EndOfFigures(List<SpecToken> tokens, int from)
    {
        int behind = from + 1;
        for (int i = behind; i < tokens.Count && i < from + (2 * MostFigures); i++)
        {
            if (tokens[i].IsNumber && i > from && tokens[i - 1].Kind == SpecTokenKind.Sign)
            {
                behind = i + 1;
                continue;
            }

            bool letter = tokens[i] is { Kind: SpecTokenKind.Word, Glued: true, Text: "c" or "b" or "a" };
            bool joins = tokens[i].Is('x') || tokens[i].Is('/') || (tokens[i].Is('-') && tokens[i].Glued);
            if (letter && behind == i)
            {
                behind = i + 1;
            }
            else if (!joins && !(tokens[i].Text == "mm" && i + 1 < tokens.Count && tokens[i + 1].Is('x')) && !(tokens[i].Is('"') && i + 1 < tokens.Count && tokens[i + 1].Is('x')))
            {
                break;
            }
        }

        return behind;
    }
}
