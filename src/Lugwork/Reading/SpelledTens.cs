namespace Lugwork.Reading;

/// <summary>Larger figures and decimals that are written as words: "one thirty-five", "twenty-seven point two", "fünfunddreißig", "cent trente-cinq", "treinta y uno coma ocho", "centoquarantotto".</summary>
internal static partial class SpelledTens
{
    private const int Most = 60;
    private const int MostWords = 7;
    private const int Longest = 30;

    private static readonly string[] Points = ["point", "komma", "virgule", "coma", "virgola"];

    public static void Mend(List<SpecToken> tokens, PhraseTree tree)
    {
        int left = Most;
        for (int i = 0; i < tokens.Count && left > 0; i++)
        {
            if (tokens[i].Kind == SpecTokenKind.Word && tokens[i].Text.Length < Longest && Read(tokens, i, tree, out decimal value, out int behind))
            {
                left--;
                int end = tokens[behind - 1].End;
                tokens.RemoveRange(i + 1, behind - i - 1);
                SpelledNumbers.Put(tokens, i, value, end);
                JoinSeat(tokens, i);
            }
        }
    }

    /// <summary>The words of one figure from a token on. Small whole ones are left to those that know their units.</summary>
    private static bool Read(List<SpecToken> tokens, int from, PhraseTree tree, out decimal value, out int behind)
    {
        behind = from + 1;
        value = NumberWords.Of(tokens[from].Text);
        if (value < 1)
        {
            return false;
        }

        if (Hundredths(tokens, from, ref behind, ref value))
        {
            return true;
        }

        int sum = Whole(tokens, from, out behind, out int words);
        value = sum;
        bool decimals = Decimals(tokens, ref behind, ref value) || Tenth(tokens, tree, sum, ref behind, ref value) || LinkedTenth(tokens, sum, tree, ref behind, ref value);
        if (!decimals && sum is > 20 and < 37 && sum % 10 != 0 && Next(tokens, behind) is >= 0 and int digit && NumberWords.Of(tokens[digit].Text) is > 0 and < 10 && tokens[digit].Text != "one")
        {
            // "Twenty-seven two" before anything else is no figure of its first words alone.
            return false;
        }

        if (Next(tokens, behind) is >= 0 and int next && WordLists.SpelledTensRead.Contains(tokens[next].Text))
        {
            return false;
        }

        return decimals || (sum >= 20 && !(words == 1 && sum == 100)) || ((sum == 100 || (words > 1 && sum >= 13)) && IsUnit(tokens, behind, tree)) || (sum == 100 && (IsTravel(tokens, behind, tree) || IsOfPair(tokens, from, behind)));
    }

    /// <summary>The whole number from a token on, which is a word for one.</summary>
    private static int Whole(List<SpecToken> tokens, int from, out int behind, out int words)
    {
        int sum = NumberWords.Of(tokens[from].Text);
        behind = from + 1;
        words = 1;
        for (int at = Next(tokens, behind); at >= 0 && words < MostWords && Joined(tokens, at, sum) is { Sum: > 0 } joined; at = Next(tokens, behind), words++)
        {
            sum = joined.Sum;
            behind = joined.Behind;
        }

        return sum;
    }

    /// <summary>What the next word makes of the sum so far; zero where it does not belong to it.</summary>
    public static (int Sum, int Behind) Joined(List<SpecToken> tokens, int at, int sum)
    {
        string text = tokens[at].Text;
        int and = text is "and" or "et" or "y" ? Next(tokens, at + 1) : -1;
        if (and >= 0)
        {
            int behind = NumberWords.Of(tokens[and].Text);
            bool fits = text == "and" ? sum % 100 == 0 && behind is > 0 and < 100 : (sum % 10 == 0 && sum % 100 >= 20 && behind is > 0 and < 10) || (text == "et" && sum % 100 == 60 && behind == 11);
            return fits ? (sum + behind, and + 1) : default;
        }

        if (text is "hundred" or "cent" or "cents" && sum is > 1 and < 10 or 1)
        {
            return (sum * 100, at + 1);
        }

        if (text is "vingt" or "vingts" && sum % 100 == 4)
        {
            return (sum + 76, at + 1);
        }

        int word = NumberWords.Of(text);
        if (word < 1)
        {
            return default;
        }

        // "One thirty-five", "two oh three" is said of sizes in English alone.
        bool english = sum is 1 or 2 && word is >= 20 and < 100 && text[^1] == 'y';
        bool fitting = (sum % 100 == 0 && word < 100) || (sum % 10 == 0 && sum % 100 >= 20 && word < 10) || (sum % 100 is 60 or 80 && word is >= 10 and < 20) || (sum % 100 is 10 or 70 or 90 && word is >= 7 and < 10);
        return english ? ((sum * 100) + word, at + 1) : fitting ? (sum + word, at + 1) : default;
    }

    /// <summary>"Point two", "Komma acht", "and a half".</summary>
    private static bool Decimals(List<SpecToken> tokens, ref int behind, ref decimal value)
    {
        int point = Next(tokens, behind);
        if (point < 0)
        {
            return false;
        }

        if (tokens[point].Text is "and" or "et" or "y" or "e" or "en")
        {
            int half = Next(tokens, point + 1);
            half = half >= 0 && tokens[half].Text is "a" or "een" or "un" ? Next(tokens, half + 1) : half;
            if (half < 0 || tokens[half].Text is not ("half" or "demi" or "demie" or "medio" or "media" or "mezzo" or "mezza") || value < 2)
            {
                return false;
            }

            value += 0.5m;
            behind = half + 1;
            return true;
        }

        if (Array.IndexOf(Points, tokens[point].Text) < 0)
        {
            return false;
        }

        string digits = "";
        for (int at = Next(tokens, point + 1); at >= 0 && digits.Length < 3; at = Next(tokens, at + 1))
        {
            int next = at + 1;
            int digit = tokens[at].Text is "zero" or "oh" or "null" or "cero" or "nul" ? 0 : NumberWords.Of(tokens[at].Text) > 0 ? Whole(tokens, at, out next, out _) : -1;
            if (digit is < 0 or > 99)
            {
                break;
            }

            digits += digit.ToString(System.Globalization.CultureInfo.InvariantCulture);
            behind = next;
            at = next - 1;
        }

        if (digits.Length == 0)
        {
            return false;
        }

        value += decimal.Parse("0." + digits, System.Globalization.CultureInfo.InvariantCulture);
        return true;
    }

    /// <summary>"Twenty-seven two", "thirty-one eight": a size of a tube in tenths, the last words of their line or clause.</summary>
    private static bool Tenth(List<SpecToken> tokens, PhraseTree tree, int sum, ref int behind, ref decimal value)
    {
        int digit = Next(tokens, behind);
        if (digit < 0 || sum is < 21 or > 36 || sum % 10 == 0 || tokens[behind - 1].Kind != SpecTokenKind.Word || tokens[digit].Text == "one" || NumberWords.Of(tokens[digit].Text) is not (> 0 and < 10 and int tenth))
        {
            return false;
        }

        int next = digit + 1;
        bool ends = next >= tokens.Count || (tokens[next].Kind == SpecTokenKind.Sign && !tokens[next].Is('-') && !tokens[next].Is('x') && !tokens[next].Is('/')) || tokens[next].Text is "mm" or "millimetre" or "millimetres" or "millimeter" or "millimeters" or "mill" or "mil";
        if (!ends && !(IsTubeSize(sum + (tenth / 10m)) && IsOfSize(tokens, next, tree)))
        {
            return false;
        }

        value += tenth / 10m;
        behind = digit + 1;
        return true;
    }

    private static bool IsTubeSize(decimal size) => size is 22.2m or 23.8m or 25.4m or 25.8m or 26.2m or 26.4m or 26.6m or 26.8m or 27.2m or 28.6m or 29.8m or 30.9m or 31.6m or 31.8m or 34.9m or 36.4m;

    /// <summary>"A twenty-seven two post", "the thirty-one eight kind", "siebenundzwanzig zwei im Durchmesser": behind a size of a tube stands a word of which nothing is counted.</summary>
    private static bool IsOfSize(List<SpecToken> tokens, int next, PhraseTree tree)
    {
        if (tokens[next].Kind != SpecTokenKind.Word || (NumberWords.Of(tokens[next].Text) > 0 && tokens[next].Text != "one"))
        {
            return false;
        }

        return IsOfTube(tokens[next].Text) || WordLists.SpelledTensIsOfSize.Contains(tokens[next].Text);
    }

    /// <summary>What is named by such a size, in the singular for posts, of which there are not two.</summary>
    private static bool IsOfTube(string word) =>
        WordLists.SpelledTensIsOfTube.Contains(word);

    /// <summary>"Twelve by a hundred", "fifteen mil by a hundred", "by hundred by fifteen": a figure of a pair.</summary>
    private static bool IsOfPair(List<SpecToken> tokens, int from, int behind) =>
        (from > 1 && SpelledNumbers.IsTimes(tokens[from - 1]) && SpelledNumbers.IsFigure(tokens[from > 2 && tokens[from - 2].Text is "mm" or "mil" ? from - 3 : from - 2])) || (behind + 1 < tokens.Count && SpelledNumbers.IsTimes(tokens[behind]) && SpelledNumbers.IsFigure(tokens[behind + 1]));

    /// <summary>The next word, over a hyphen that stands against both; -1 where something else follows.</summary>
    public static int Next(List<SpecToken> tokens, int at)
    {
        at += at + 1 < tokens.Count && tokens[at].Is('-') && tokens[at].Glued && tokens[at + 1].Glued ? 1 : 0;
        return at < tokens.Count && tokens[at].Kind == SpecTokenKind.Word && tokens[at].Text.Length < Longest ? at : -1;
    }

    /// <summary>"Cento di escursione", "cien de recorrido", "hundert Federweg": a travel of a hundred.</summary>
    private static bool IsTravel(List<SpecToken> tokens, int at, PhraseTree tree)
    {
        int next = Next(tokens, at);
        next = next >= 0 && tokens[next].Text is "de" or "di" or "of" or "van" or "von" ? Next(tokens, next + 1) : next;
        return next >= 0 && tree.Longest(tokens, next, out _) is { IsDefault: false } terms && (terms.Contains("t:travel") || terms.Contains("t:spacing"));
    }

    private static bool IsUnit(List<SpecToken> tokens, int at, PhraseTree tree) =>
        Next(tokens, at) is >= 0 and int next && tree.Longest(tokens, next, out _) is { IsDefault: false } terms && terms.Any(t => t.StartsWith("u:", StringComparison.Ordinal));
}
