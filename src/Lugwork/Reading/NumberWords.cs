namespace Lugwork.Reading;

/// <summary>Words for whole figures below a thousand in six languages, with the compounds of German, Dutch, Italian and Spanish.</summary>
internal static class NumberWords
{
    private static readonly Dictionary<string, int> Small = Build(1,
        "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen",
        "ein zwei drei vier funf sechs sieben acht neun zehn elf zwolf dreizehn vierzehn funfzehn sechzehn siebzehn achtzehn neunzehn",
        "un deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize",
        "uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciseis diecisiete dieciocho diecinueve",
        "uno due tre quattro cinque sei sette otto nove dieci undici dodici tredici quattordici quindici sedici diciassette diciotto diciannove",
        "een twee drie vier vijf zes zeven acht negen tien elf twaalf dertien veertien vijftien zestien zeventien achttien negentien");

    /// <summary>Spanish hundreds, which bend with what is counted.</summary>
    private static readonly Dictionary<string, int> Hundred = Build(3, "doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos novecientos", "doscientas trescientas cuatrocientas quinientas seiscientas setecientas ochocientas novecientas");

    private static readonly Dictionary<string, int> Tens = Build(2,
        "twenty thirty forty fifty sixty seventy eighty ninety",
        "zwanzig dreisig vierzig funfzig sechzig siebzig achtzig neunzig",
        "zwanzig dreissig vierzig fuenfzig sechzig siebzig achtzig neunzig",
        "vingt trente quarante cinquante soixante septante huitante nonante",
        "veinte treinta cuarenta cincuenta sesenta setenta ochenta noventa",
        "venti trenta quaranta cinquanta sessanta settanta ottanta novanta",
        "twintig dertig veertig vijftig zestig zeventig tachtig negentig");

    private static readonly Dictionary<string, int> SpanishHundreds = new(StringComparer.Ordinal) { ["quinientos"] = 500, ["setecientos"] = 700, ["novecientos"] = 900 };

    /// <summary>The tens with and without their last letter, which Italian drops before a vowel.</summary>
    private static readonly (string Word, string Elided, int Value)[] TensOf = [.. Tens.Select(t => (t.Key, t.Key[..^1], t.Value))];

    /// <summary>The first three letters of every word that a figure can start with, so that other words cost nothing.</summary>
    private static readonly HashSet<int> Starts = [.. Small.Keys.Concat(Tens.Keys).Concat(["hundert", "hundred", "honderd", "ciento", "cento", "cien", "cent", "veinti", .. SpanishHundreds.Keys]).Where(w => w.Length >= 3).Select(StartOf)];

    private static readonly string[] Hundreds = ["hundert", "hundred", "honderd", "cientos", "ciento", "cento", "cien", "cent"];

    /// <summary>A word or a compound, below a thousand; zero where it is none.</summary>
    public static int Of(string word)
    {
        if (Small.TryGetValue(word, out int value) || Tens.TryGetValue(word, out value) || Hundred.TryGetValue(word, out value))
        {
            return value;
        }

        if (word.Length < 4 || !Starts.Contains(StartOf(word)))
        {
            return 0;
        }

        if (SpanishHundreds.TryGetValue(word, out value))
        {
            return value;
        }

        foreach (string hundred in Hundreds)
        {
            int at = word.IndexOf(hundred, StringComparison.Ordinal);
            if (at >= 0)
            {
                string rest = word[(at + hundred.Length)..];
                rest = rest.StartsWith("und", StringComparison.Ordinal) ? rest[3..] : rest;
                int many = at == 0 ? 1 : Small.GetValueOrDefault(word[..at]);
                int more = rest.Length == 0 ? 0 : Below(rest);
                if (many is >= 1 and <= 9 && (rest.Length == 0 || more > 0))
                {
                    return (many * 100) + more;
                }
            }
        }

        return word.Length > 5 ? Below(word) : 0;
    }

    private static int Below(string word)
    {
        if (Small.TryGetValue(word, out int value) || Tens.TryGetValue(word, out value))
        {
            return value;
        }

        foreach ((string tens, string elided, int many) in TensOf)
        {
            // German and Dutch say the ones first, Italian and Spanish behind: "trentuno" without the last letter before a vowel.
            if (word.EndsWith(tens, StringComparison.Ordinal))
            {
                string head = word[..^tens.Length];
                head = head.EndsWith("und", StringComparison.Ordinal) ? head[..^3] : head.EndsWith("en", StringComparison.Ordinal) ? head[..^2] : "";
                if (Small.TryGetValue(head, out int ones) && ones < 10)
                {
                    return many + ones;
                }
            }

            if (word.StartsWith(elided, StringComparison.Ordinal) && Small.TryGetValue(word[(word.StartsWith(tens, StringComparison.Ordinal) ? tens.Length : tens.Length - 1)..], out int units) && units < 10)
            {
                return many + units;
            }
        }

        return word.StartsWith("veinti", StringComparison.Ordinal) && Small.TryGetValue(word[6..], out int twenties) && twenties < 10 ? 20 + twenties : 0;
    }

    private static int StartOf(string word) => (word[0] << 16) ^ (word[1] << 8) ^ word[2];

    private static Dictionary<string, int> Build(int first, params string[] languages)
    {
        Dictionary<string, int> words = new(StringComparer.Ordinal);
        foreach (string language in languages)
        {
            string[] numbers = language.Split(' ');
            for (int i = 0; i < numbers.Length; i++)
            {
                words.TryAdd(numbers[i], first == 1 ? i + 1 : (i + 2) * (first == 2 ? 10 : 100));
            }
        }

        return words;
    }
}
