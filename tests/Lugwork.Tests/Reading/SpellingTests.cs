using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Outside check of what the reader takes for a slip of the pen: no word of published word lists for spelling may be one.</summary>
/// <remarks>Source: the word lists of American and British English, German, French, Spanish, Italian and Dutch that Debian publishes for spelling checkers (packages wamerican, wbritish, wngerman, wfrench, wspanish, witalian, wdutch). Without them the test is skipped; the gate installs them. LUGWORK_WORD_LISTS names another folder.</remarks>
public sealed class SpellingTests
{
    private static string Folder => Environment.GetEnvironmentVariable("LUGWORK_WORD_LISTS") ?? "/usr/share/dict";

    [Theory]
    [InlineData("american-english")]
    [InlineData("british-english")]
    [InlineData("ngerman")]
    [InlineData("french")]
    [InlineData("spanish")]
    [InlineData("italian")]
    [InlineData("dutch")]
    public void No_word_of_a_published_list_is_taken_for_a_slip_of_the_pen(string list)
    {
        string path = Path.Combine(Folder, list);
        Assert.SkipUnless(File.Exists(path), $"{path} is not installed");
        PhraseTree tree = SpecVocabulary.Default.Tree;
        SortedSet<string> taken = new(StringComparer.Ordinal);
        int words = 0;
        foreach (string line in File.ReadLines(path))
        {
            foreach (SpecToken token in SpecLexer.Cut(line).Where(t => t.Kind == SpecTokenKind.Word))
            {
                List<SpecToken> alone = [token];
                Misspelt.Mend(alone, tree);
                words++;
                if (alone is [{ Meant: { Length: > 0 } meant }] && !meant.Contains(' ', StringComparison.Ordinal))
                {
                    taken.Add($"{token.Text} {meant}");
                }
            }
        }

        Assert.True(words > 50_000, $"{words} words");
        if (taken.Count > 0)
        {
            File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, $"other-words-{list}.txt"), taken);
        }

        Assert.True(taken.Count == 0, $"{taken.Count} words are taken for others, and are to be added to OtherWords: {string.Join(", ", taken.Take(20))}");
    }

    /// <summary>Slips that the trade's own words suffer. Common practice, no source.</summary>
    [Theory]
    [InlineData("rear tubeless valve", "Preesta 44 mm", "presta", "length=44 valve=presta")]
    [InlineData("frame", "Tretlgaer BSA 68 mm", "tretlager", "shell=BSA-68")]
    [InlineData("front rotor", "disco 180 mm, 6 tonrillos", "tornillos", "fixing=six-bolt size=180")]
    [InlineData("fork", "tapred 1-1/8 1.5", "tapered", "steererShape=tapered-1-1/8-1.5")]
    [InlineData("front tyre", "copertone pigehevole 23-622", "pieghevole", "bead=folding size=23-622")]
    public void A_slip_is_read_and_said(string slot, string text, string meant, string expected)
    {
        SpecLine line = SpecLine.Read(Slot.All.Single(s => s.Name == slot), text);

        Assert.Equal(expected, string.Join(' ', line.Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)));
        Assert.Contains(line.Values, v => v.Confidence == SpecConfidence.Assumed && v.Assumed.Any(a => a.Contains(meant, StringComparison.Ordinal)));
    }
}
