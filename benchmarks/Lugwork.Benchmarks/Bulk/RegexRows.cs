using System.Globalization;
using System.Text.RegularExpressions;
using Lugwork.Reading;

namespace Lugwork.Benchmarks.Bulk;

/// <summary>The peer: one source-generated expression for each kind of row, which reads the rows of the benchmark and nothing else: no doubt, no reason, no other order.</summary>
internal static partial class RegexRows
{
    private const RegexOptions Loose = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;

    [GeneratedRegex("""^((seatpost|sattelst\u00FCtze|tige de selle|reggisella)\s+)?(?<d>\d{2}([.,]\d)?)\s*(mm)?(\s*[x*\u00D7]\s*(?<l>\d{3})\s*(mm)?)?\s*\z""", Loose)]
    private static partial Regex Post();

    [GeneratedRegex("""^((tyre|reifen|pneu|copertone)\s+)?(?<a>\d{2,3})\s*-\s*(?<b>\d{2,3})\s*\z""", Loose)]
    private static partial Regex Tyre();

    [GeneratedRegex("""^(?<s>\d{1,2})\s*(-?(speed|fach)|vitesses|v)(\s+(chain|kette))?\s*\z""", Loose)]
    private static partial Regex Chain();

    [GeneratedRegex("""^((handlebar|lenker|cintre|manillar)\s+)?(?<d>\d{2}([.,]\d)?)\s*(mm)?\s*\z""", Loose)]
    private static partial Regex Bar();

    [GeneratedRegex("""^((rotor|bremsscheibe|disque|disco)\s+)?(?<d>\d{3})\s*(mm)?\s*\z""", Loose)]
    private static partial Regex Rotor();

    /// <summary>The main value and, of a seatpost, its length; null where the row is not read.</summary>
    public static (string Key, string? Length)? Read(SpecRow row)
    {
        Slot slot = row.Slot!;
        if (slot == Slot.Seatpost)
        {
            return Post().Match(row.Text) is { Success: true } post ? (Number(post.Groups["d"]), post.Groups["l"].Success ? Number(post.Groups["l"]) : null) : null;
        }

        if (slot == Slot.RearTyre)
        {
            return Tyre().Match(row.Text) is { Success: true } tyre ? (Size(tyre), null) : null;
        }

        if (slot == Slot.Chain)
        {
            return Chain().Match(row.Text) is { Success: true } chain ? (chain.Groups["s"].Value, null) : null;
        }

        Match match = slot == Slot.Handlebar ? Bar().Match(row.Text) : Rotor().Match(row.Text);
        return match.Success ? (Number(match.Groups["d"]), null) : null;
    }

    private static string Number(Group group) => decimal.Parse(group.Value.Replace(',', '.'), CultureInfo.InvariantCulture).ToString("0.##", CultureInfo.InvariantCulture);

    private static string Size(Match match)
    {
        (string a, string b) = (match.Groups["a"].Value, match.Groups["b"].Value);
        return a.Length > b.Length ? $"{b}-{a}" : $"{a}-{b}";
    }
}
