using System.Globalization;
using Lugwork.Tests.Hostile;

namespace Lugwork.Tests.Architecture;

/// <summary>Other ways to write a text that mean the same, and texts that nearly mean something.</summary>
internal static class Spellings
{
    private const string Blanks = " \t\u00A0\u2007\u2009\u202F\u3000\u200B";

    private static readonly string[] TimesSigns = ["x", "X", "\u00D7", "*", " x ", " \u00D7 ", "\u00A0x\u00A0"];

    /// <summary>Case, blanks round it, blanks of another kind inside, another times sign, a decimal comma.</summary>
    public static IEnumerable<string> Alike(string text)
    {
        yield return text.ToUpperInvariant();
        yield return text.ToLowerInvariant();
        yield return Mixed(text);
        foreach (char blank in Blanks)
        {
            yield return blank + text + blank + blank;
            yield return text.Replace(' ', blank);
        }

        foreach (string sign in TimesSigns)
        {
            yield return WithTimes(text, sign);
        }

        yield return WithComma(text);
        yield return WithComma(WithTimes(text, "\u00D7")).ToUpperInvariant();
    }

    /// <summary>A plain number of millimetres with its unit.</summary>
    public static IEnumerable<string> WithUnit(string number) => new[] { "mm", " mm", " MM", "\u00A0mm", " mm ", "Mm" }.Select(unit => number + unit);

    /// <summary>The text with a few characters taken out, doubled, turned round or put in.</summary>
    public static string Broken(string text, Random random)
    {
        const string Foreign = "0159x\u00D7-/|.,;()\"' \u00A0\u200B\uD800\uFFFD\u0661\u0131\u017Fi\u00B1\0AM";
        List<char> broken = [.. text];
        for (int turns = random.Next(1, 4); turns > 0; turns--)
        {
            int at = random.Next(broken.Count + 1);
            switch (random.Next(4))
            {
                case 0 when at < broken.Count:
                    broken.RemoveAt(at);
                    break;
                case 1 when at < broken.Count:
                    broken.Insert(at, broken[at]);
                    break;
                case 2 when at < broken.Count:
                    broken.Reverse(at, Math.Min(2, broken.Count - at));
                    break;
                default:
                    broken.Insert(at, Foreign[random.Next(Foreign.Length)]);
                    break;
            }
        }

        return new string([.. broken]);
    }

    public static bool IsNumber(string text) => decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);

    /// <summary>Texts that nobody means.</summary>
    public static IEnumerable<string> Hostile => HostileTextTests.Texts;

    private static string Mixed(string text) => string.Concat(text.Select((c, i) => i % 2 == 0 ? char.ToUpperInvariant(c) : char.ToLowerInvariant(c)));

    /// <summary>A times sign is an x between two figures.</summary>
    private static string WithTimes(string text, string sign)
    {
        string[] words = text.Split(' ');
        for (int i = 0; i < words.Length; i++)
        {
            int x = words[i].IndexOf('x', StringComparison.Ordinal);
            bool between = x > 0 && x + 1 < words[i].Length && char.IsAsciiDigit(words[i][x - 1]) && char.IsAsciiDigit(words[i][x + 1]);
            bool alone = words[i] == "x" && i > 0 && i + 1 < words.Length && char.IsAsciiDigit(words[i + 1][0]);
            words[i] = between ? words[i][..x] + sign + words[i][(x + 1)..] : alone ? sign.Trim() : words[i];
        }

        return string.Join(' ', words);
    }

    private static string WithComma(string text)
    {
        char[] chars = text.ToCharArray();
        for (int i = 1; i + 1 < chars.Length; i++)
        {
            chars[i] = chars[i] == '.' && char.IsAsciiDigit(chars[i - 1]) && char.IsAsciiDigit(chars[i + 1]) ? ',' : chars[i];
        }

        return new(chars);
    }
}
