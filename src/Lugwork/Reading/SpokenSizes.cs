namespace Lugwork.Reading;

/// <summary>Sizes as they are spoken in a workshop, digit by digit or in two halves: "two-oh-three", "one-ten", "six-two-two", "five eighty-four", "by a hundred", "zweiundvierziger".</summary>
internal static class SpokenSizes
{
    private const int Most = 40;

    /// <summary>Sizes that are said in three digits with blanks between, which other digits are not.</summary>
    private static readonly HashSet<int> InDigits = [100, 110, 120, 126, 130, 135, 141, 142, 148, 150, 157, 177, 197, 622, 584, 559, 571, 590, 597, 630, 635, 507, 520, 540, 451, 406, 349, 305, 355, 175, 125];

    public static void Mend(List<SpecToken> tokens, PhraseTree tree)
    {
        int left = Most;
        for (int i = 0; i < tokens.Count && left > 0; i++)
        {
            if (tokens[i].Kind != SpecTokenKind.Word)
            {
                continue;
            }

            if (IsArticleOfHundred(tokens, i))
            {
                SpecToken hundred = tokens[i + 1];
                (hundred.Start, hundred.Glued) = (tokens[i].Start, tokens[i].Glued);
                tokens[i + 1] = hundred;
                tokens.RemoveAt(i);
                left--;
            }

            if (tokens[i].Text is "oh" or "o" or "null" or "nul" or "zero" or "cero" && i > 0 && tokens[i - 1].Text == "iscg" && Next(tokens, i + 1, out _) is >= 0 and int five && NumberWords.Of(tokens[five].Text) == 5)
            {
                // "ISCG oh-five"
                Put(tokens, i, 5, five + 1);
            }
            else if (Digits(tokens, tree, i, out decimal value, out int behind) || Halves(tokens, tree, i, out value, out behind))
            {
                left--;
                Put(tokens, i, value, behind);
            }
            else if (SizeOf(tokens, tree, i) is > 0 and int size)
            {
                left--;
                SpecToken word = tokens[i];
                int cut = Math.Max(word.Start + 1, word.End - 2);
                if (size is 700 or 650 && i + 1 < tokens.Count && tokens[i + 1].Text is "c" or "b")
                {
                    SpecToken letter = tokens[i + 1];
                    letter.Glued = true;
                    tokens[i + 1] = letter;
                    SpelledNumbers.Put(tokens, i, size, word.End);
                    continue;
                }

                tokens.Insert(i + 1, new() { Kind = SpecTokenKind.Word, Text = "er", Start = cut, End = word.End, Glued = true });
                SpelledNumbers.Put(tokens, i, size, cut);
            }
        }
    }

    private static void Put(List<SpecToken> tokens, int i, decimal value, int behind)
    {
        int end = tokens[behind - 1].End;
        tokens.RemoveRange(i + 1, behind - i - 1);
        SpelledNumbers.Put(tokens, i, value, end);
    }

    /// <summary>"One-forty slash one-sixty", "sixty-five dash five eighty-four": the name of a sign between two figures.</summary>
    public static void Signs(List<SpecToken> tokens)
    {
        for (int i = 1; i < tokens.Count; i++)
        {
            if (tokens[i].Kind != SpecTokenKind.Word || !tokens[i - 1].IsNumber)
            {
                continue;
            }

            if (IsNounOfSize(tokens, i))
            {
                tokens.RemoveAt(i--);
                continue;
            }

            if (i > 1 && IsBesideCup(tokens, i) is > 0 and int led)
            {
                tokens.RemoveRange(i, led);
                i--;
                continue;
            }

            if (i + 1 >= tokens.Count || !tokens[i + 1].IsNumber)
            {
                continue;
            }

            string sign = tokens[i].Text is "slash" or "schragstrich" or "barra" or "stroke" ? "/" : tokens[i].Text is "dash" or "bindestrich" or "strich" or "tiret" or "guion" or "trattino" or "streepje" ? "-" : "";
            if (sign.Length > 0)
            {
                (SpecToken named, SpecToken behind) = (tokens[i], tokens[i + 1]);
                (named.Kind, named.Text, named.Glued, behind.Glued) = (SpecTokenKind.Sign, sign, true, true);
                (tokens[i], tokens[i + 1]) = (named, behind);
            }
        }
    }

    /// <summary>"The 31.8 kind", "a 203 one": what stands behind the size at the end of its clause says no more.</summary>
    private static bool IsNounOfSize(List<SpecToken> tokens, int i) =>
        tokens[i].Text is "kind" or "sort" or "one" or "ones" && i > 1 && tokens[i - 2].Kind == SpecTokenKind.Word && WordLists.SpokenSizesIsNounOfSize.Contains(tokens[i - 2].Text)
        && IsEnd(tokens, i + 1);

    private static bool IsEnd(List<SpecToken> tokens, int at) =>
        at >= tokens.Count || (tokens[at].Kind == SpecTokenKind.Sign && !tokens[at].Is('-') && !tokens[at].Is('/') && !tokens[at].Is('x'));

    /// <summary>"ZS44 with 28.6", "ZS56 with a 40": what a slash says between the code of a cup and the steerer or the race; how many words it has, 0 where it is none.</summary>
    private static int IsBesideCup(List<SpecToken> tokens, int i)
    {
        bool cup = tokens[i - 2].Text is "zs" or "ec" or "is" && tokens[i - 1] is { Glued: true, Value: >= 34 and <= 62 };
        if (!cup || tokens[i].Text is not ("with" or "mit" or "avec" or "con" or "met"))
        {
            return 0;
        }

        int at = i + 1;
        at += at < tokens.Count && WordLists.SpokenSizesIsBesideCup.Contains(tokens[at].Text) ? 1 : 0;
        return at < tokens.Count && tokens[at] is { IsNumber: true, IsFraction: false, Value: 25.4m or 26.4m or 27m or 28.6m or 30m or 31.8m or 33m or 38.1m or 40m or 39.8m or 52m } && !(at + 1 < tokens.Count && WordLists.SpokenSizesIsBesideCup2.Contains(tokens[at + 1].Text)) ? at - i : 0;
    }

    /// <summary>"By a hundred", "a hundred and fifty": the article says one.</summary>
    private static bool IsArticleOfHundred(List<SpecToken> tokens, int i) =>
        tokens[i].Text is "a" && i + 1 < tokens.Count && tokens[i + 1].Text is "hundred";

    /// <summary>"Two-oh-three", "one four two", "M12 by one seven five": single digits, one behind the other.</summary>
    private static bool Digits(List<SpecToken> tokens, PhraseTree tree, int i, out decimal value, out int behind)
    {
        value = Digit(tokens[i].Text);
        behind = i + 1;
        if (value < 1 || IsBehindNumber(tokens, i))
        {
            return false;
        }

        bool pitch = IsPitch(tokens, i);
        bool oh = false;
        bool dashes = true;
        int count = 1;
        for (int at = Next(tokens, behind, out bool dash); at >= 0 && count < 4; at = Next(tokens, behind, out dash))
        {
            bool nought = tokens[at].Text is "oh" or "o" or "zero" or "nought";
            int digit = nought ? 0 : Digit(tokens[at].Text);
            if (digit < 0 || (digit == 0 && !nought) || (count == 3 && digit == 1 && !dash && IsEnd(tokens, at + 1)))
            {
                break;
            }

            oh |= nought && count == 1;
            dashes &= dash;
            value = (value * 10) + digit;
            behind = at + 1;
            count++;
        }

        if (pitch && count is 2 or 3 && value is 15 or 10 or 125 or 150 or 175 or 100 && !IsBeforeNumber(tokens, behind))
        {
            value /= count == 2 ? 10 : 100;
            return true;
        }

        return count == 3 && (oh || dashes || InDigits.Contains((int)value)) && !IsBeforeNumber(tokens, behind) && !IsCount(tokens, behind, tree);
    }

    /// <summary>"One-ten", "seven eighty", "five fifty-nine": hundreds and the rest, as English says them.</summary>
    private static bool Halves(List<SpecToken> tokens, PhraseTree tree, int i, out decimal value, out int behind)
    {
        int hundreds = Digit(tokens[i].Text);
        value = 0;
        behind = i + 1;
        if (hundreds < 1 || IsBehindNumber(tokens, i) || Next(tokens, behind, out bool dash) is not (>= 0 and int second))
        {
            return false;
        }

        int rest = Tens(tokens[second].Text);
        behind = second + 1;
        if (rest < 10 || (rest < 14 && hundreds > 4 && !dash))
        {
            // "Nine ten eleven speed"
            return false;
        }

        if (rest >= 20 && Next(tokens, behind, out bool joined) is >= 0 and int unit && Digit(tokens[unit].Text) is > 0 and int ones && !(ones == 1 && !joined && IsEnd(tokens, unit + 1)) && (joined || !IsTenthOf(tokens, unit, rest)))
        {
            rest += ones;
            behind = unit + 1;
        }

        value = (hundreds * 100) + rest;
        return !IsBeforeNumber(tokens, behind) && !IsCount(tokens, behind, tree) && !(Next(tokens, behind, out _) is >= 0 and int part && tokens[part].Text is "second" or "seconds" or "sixteenths" or "sixteenth" or "point");
    }

    /// <summary>"One twenty-seven two": the last digit would be a tenth; here only where a dash does not bind it.</summary>
    private static bool IsTenthOf(List<SpecToken> tokens, int at, int tens) => tens < 20 || IsBeforeNumber(tokens, at + 1);

    /// <summary>"Zweiundvierziger Blatt", "zwölfer Achse": a German size by its number; 0 where the word is none, or of years.</summary>
    private static int SizeOf(List<SpecToken> tokens, PhraseTree tree, int i)
    {
        string word = tokens[i].Text;
        if (word.Length < 5 || !word.EndsWith("er", StringComparison.Ordinal) || word == "tener" || tree.Knows(word))
        {
            return 0;
        }

        int size = NumberWords.Of(word[..^2]);
        bool years = i + 1 < tokens.Count && (tokens[i + 1].Text.StartsWith("jahr", StringComparison.Ordinal) || tokens[i + 1].Text is "pack" or "packung" or "set" or "karton" or "schein");
        bool decade = size % 10 == 0 && size is >= 20 and < 100 && !(i + 1 < tokens.Count && tokens[i + 1].Kind == SpecTokenKind.Word && tree.Knows(tokens[i + 1].Text));
        return size >= 10 && !years && !decade ? size : 0;
    }

    /// <summary>"M12 by one seven five": digits behind the times word of a metric thread.</summary>
    private static bool IsPitch(List<SpecToken> tokens, int i) =>
        i > 2 && tokens[i - 1].Text is "by" or "x" && tokens[i - 2] is { IsNumber: true, Glued: true } && tokens[i - 3].Text == "m";

    private static int Digit(string word) => word switch
    {
        "one" => 1,
        "two" => 2,
        "three" => 3,
        "four" => 4,
        "five" => 5,
        "six" => 6,
        "seven" => 7,
        "eight" => 8,
        "nine" => 9,
        _ => -1,
    };

    /// <summary>The English words from ten to ninety; 0 for others.</summary>
    private static int Tens(string word) => word is "ten" or "eleven" or "twelve" || word.EndsWith("teen", StringComparison.Ordinal) || (word.Length > 4 && word[^1] == 'y') ? NumberWords.Of(word) : 0;

    private static int Next(List<SpecToken> tokens, int at, out bool dash)
    {
        dash = at + 1 < tokens.Count && tokens[at].Is('-') && tokens[at].Glued && tokens[at + 1].Glued;
        at += dash ? 1 : 0;
        return at < tokens.Count && tokens[at].Kind == SpecTokenKind.Word ? at : -1;
    }

    /// <summary>A number stands right before, of which these words would be the rest.</summary>
    private static bool IsBehindNumber(List<SpecToken> tokens, int i)
    {
        int before = i > 1 && tokens[i - 1].Is('-') && tokens[i].Glued ? i - 2 : i - 1;
        return before >= 0 && tokens[before].Kind == SpecTokenKind.Word && (Digit(tokens[before].Text) > 0 || Tens(tokens[before].Text) is > 0 and < 20 || tokens[before].Text is "hundred" or "oh" or "point");
    }

    private static bool IsBeforeNumber(List<SpecToken> tokens, int at) =>
        Next(tokens, at, out bool dash) is >= 0 and int next && !(tokens[next].Text == "one" && !dash && IsEnd(tokens, next + 1)) && (Digit(tokens[next].Text) > 0 || Tens(tokens[next].Text) > 0 || tokens[next].Text is "oh" or "hundred");

    /// <summary>Something is counted: "two thirty-two hole rims", "nine ten speed", "three forty tooth".</summary>
    private static bool IsCount(List<SpecToken> tokens, int at, PhraseTree tree)
    {
        if (Next(tokens, at, out _) is not (>= 0 and int next))
        {
            return false;
        }

        return tokens[next].Text is "spoke" or "spokes" or "spoked" or "inch" or "inches" or "pack" || (tree.Longest(tokens, next, out _) is { IsDefault: false } terms && terms.Any(t => t is "u:speed" or "u:holes" or "u:teeth" or "u:arms" or "u:in"));
    }
}
