using System.Text;

namespace Lugwork.Reading;

/// <summary>Words of six languages that are near to a word of a bicycle and mean another thing: they are never taken for a slip of the pen.</summary>
/// <remarks>Found by going through published word lists for spelling; <c>SpellingTests</c> does it anew where they are installed.</remarks>
internal static partial class OtherWords
{
    /// <summary>Words of the trade, which lists for spelling do not have.</summary>
    private const string OfTheTrade = "boat boats luck presto schrade kloben krasje krasjes deukje deukjes plekje plekjes cambia cambian cambiano padre madre brosse brossee brosses brossees change changes changer changent charme charmes lekker lekkere cadeau cadeaux";

    private static readonly Lazy<HashSet<string>> Words = new(() => new((Encoding.ASCII.GetString(All) + ' ' + OfTheTrade).Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries), StringComparer.Ordinal));

    public static bool Has(string word) => Words.Value.Contains(word);
}
