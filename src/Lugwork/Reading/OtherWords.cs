namespace Lugwork.Reading;

/// <summary>Words of six languages that are near to a word of a bicycle and mean another thing: they are never taken for a slip of the pen.</summary>
/// <remarks>Found by going through published word lists for spelling; <c>SpellingTests</c> does it anew where they are installed. Those of the trade, which such lists do not have, stand in a file of their own.</remarks>
internal static class OtherWords
{
    private static readonly Lazy<HashSet<string>> Words = new(Read);

    public static bool Has(string word) => Words.Value.Contains(word);

    private static HashSet<string> Read()
    {
        Dictionary<string, List<string>> files = WordFile.Read();
        return new(files["other-words"].Concat(files["other-words-of-the-trade"]).SelectMany(r => r.Split(' ')), StringComparer.Ordinal);
    }
}
