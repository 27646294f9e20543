namespace Lugwork.Reading;

/// <summary>Words of six languages that are near to a word of a bicycle and mean another thing: they are never taken for a slip of the pen.</summary>
/// <remarks>Found by going through published word lists for spelling; <c>SpellingTests</c> does it anew where they are installed. Those of the trade, which such lists do not have, stand in a file of their own.</remarks>
internal static class OtherWords
{
    private const string ByHand = "other-words-of-the-trade";

    private static readonly Lazy<HashSet<string>> Words = new(() => Read("other-words", ByHand));

    private static readonly Lazy<HashSet<string>> OfTheTrade = new(() => Read(ByHand));

    public static bool Has(string word) => Words.Value.Contains(word);

    /// <summary>One of those kept by hand, which are no other form of a known word either: "presto" is no "presta".</summary>
    public static bool IsOfTheTrade(string word) => OfTheTrade.Value.Contains(word);

    private static HashSet<string> Read(params ReadOnlySpan<string> names)
    {
        Dictionary<string, List<string>> files = WordFile.Read();
        HashSet<string> words = new(StringComparer.Ordinal);
        foreach (string name in names)
        {
            words.UnionWith(files[name].SelectMany(WordFile.Unfold));
        }

        return words;
    }
}
