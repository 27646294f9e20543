using System.IO.Compression;
using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>The packed word tables are those of the text files; where they are not, the new file is written beside the tests.</summary>
public sealed class WordFileTests
{
    private static string Source => Path.Combine(SpecCorpus.Folder, "..", "..", "..", "..", "src", "Lugwork", "Reading");

    [Fact]
    public void The_packed_tables_say_what_the_text_files_say()
    {
        Dictionary<string, List<string>> packed = WordFile.Read();
        bool same = packed.Keys.SequenceEqual(WordFile.Names) && WordFile.Names.All(n => packed[n].SequenceEqual(Packed(n)));
        if (!same)
        {
            File.WriteAllBytes(Path.Combine(AppContext.BaseDirectory, "words.br"), Pack());
        }

        Assert.True(same, "words.br is written beside the tests: put it into src/Lugwork/Reading");
    }

    /// <summary>No file is left out, no term is misspelt, no phrase is empty or twice in one row.</summary>
    [Fact]
    public void Every_row_has_terms_and_phrases()
    {
        Assert.Equal(WordFile.Names.Order(StringComparer.Ordinal), Directory.GetFiles(Path.Combine(Source, "Words"), "*.txt").Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal));
        foreach (string name in WordFile.Names.Where(n => !IsFolded(n)))
        {
            foreach (string[] row in Lines(name).Select(l => l.Split('\t')))
            {
                Assert.InRange(row.Length, 2, 4);
                Assert.All(row[0].Split(' '), t => Assert.Matches(name == "lists" ? "^[A-Z][A-Za-z0-9]+$" : "^[a-z]:.+", t));
                Assert.All(row[1].Split(", "), p => Assert.False(string.IsNullOrWhiteSpace(p), row[0]));
            }
        }
    }

    /// <summary>Plain words, whose order says nothing, are packed by what each shares with the one before it.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("a")]
    [InlineData("bolt bolts boltz a")]
    [InlineData("abcdefghijklmnopqrstuvwxyzabc abcdefghijklmnopqrstuvwxyzabd")]
    public void Folded_words_unfold(string words)
    {
        string[] plain = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(plain.Order(StringComparer.Ordinal), WordFile.Unfold(WordFile.Fold(plain)));
    }

    private static IEnumerable<string> Packed(string name) => IsFolded(name) ? [WordFile.Fold(Lines(name).SelectMany(l => l.Split(' ')))] : Lines(name);

    private static bool IsFolded(string name) => name.StartsWith("other-words", StringComparison.Ordinal);

    private static IEnumerable<string> Lines(string name) =>
        File.ReadLines(Path.Combine(Source, "Words", name + ".txt")).Where(l => l.Length > 0 && l[0] != '#');

    private static byte[] Pack()
    {
        using MemoryStream packed = new();
        using (BrotliStream plain = new(packed, CompressionLevel.SmallestSize))
        using (StreamWriter writer = new(plain, new System.Text.UTF8Encoding(false)) { NewLine = "\n" })
        {
            foreach (string name in WordFile.Names)
            {
                writer.WriteLine(WordFile.Mark + name);
                foreach (string line in Packed(name))
                {
                    writer.WriteLine(line);
                }
            }
        }

        return packed.ToArray();
    }
}
