using Lugwork;
using ShopWeb.Api;

namespace ShopWeb.Judging;

/// <summary>The four lists of a slot, by the words that stand for them in an address.</summary>
internal static class Lists
{
    public const int UsualRows = 50;
    public const int MostRows = 10_000;
    private const int MostPage = 100_000;

    private static readonly (Verdict Verdict, string Called, string Meaning)[] All =
    [
        (Verdict.Fits, "fit as they are", "These fit as they are, as far as they meet what is in the cart."),
        (Verdict.NeedsPart, "fit with another part", "These fit with another part or with work of a shop, which is named."),
        (Verdict.NeedsMeasuring, "to measure first", "What is known does not decide these. Measure or ask what is named before you buy."),
        (Verdict.NotJudged, "meet nothing yet", "Nothing in the cart meets these yet, so nothing is said of them."),
    ];

    /// <summary>The word of a list: its verdict as a report spells it.</summary>
    public static string Word(Verdict verdict) => verdict.ToString();

    public static string Called(Verdict verdict) => All.First(l => l.Verdict == verdict).Called;

    public static string Meaning(Verdict verdict) => All.First(l => l.Verdict == verdict).Meaning;

    /// <exception cref="ShopException">There is no such list, page or size, or no such slot.</exception>
    public static (Slot Slot, Verdict Verdict, int Page, int Size) Read(string slot, string? list, int? page, int? size)
    {
        Slot place = Slot.Find(slot) is { } found && found != Slot.Frame ? found : throw ShopException.Missing("There is no such slot.");
        (Verdict Verdict, string Called, string) wanted = list is null ? All[0] : All.FirstOrDefault(l => string.Equals(Word(l.Verdict), list, StringComparison.OrdinalIgnoreCase));
        return wanted.Called is null ? throw ShopException.Bad("There is no such list.", "list", "one of " + string.Join(", ", All.Select(l => Word(l.Verdict))))
            : page is < 1 or > MostPage ? throw ShopException.Bad("There is no such page.", "page", "1 to 100,000")
            : size is < 1 or > MostRows ? throw ShopException.Bad("There is no such size.", "size", "1 to 10,000 rows")
            : (place, wanted.Verdict, page ?? 1, size ?? UsualRows);
    }
}
