namespace Lugwork.Tests.Reading;

/// <summary>All sets of the corpus by the same code: never a wrong value. Of the open half, and of the half set aside, which nobody who writes the grammar looks at, at least 97 % of the readable lines are read.</summary>
public sealed class CorpusTests(ITestOutputHelper output)
{
    /// <summary>Of the hostile lines so many hundredths are read at least; the others are called ambiguous, which is right for a reader that does not guess.</summary>
    private const int MostlyRead = 92;

    /// <summary>The same of the third set.</summary>
    private const int ThirdRead = 99;

    /// <summary>And of the fourth.</summary>
    private const int FourthRead = 98;

    /// <summary>And of the fifth, lines and sheets.</summary>
    private const int FifthRead = 99;

    /// <summary>And of the sixth.</summary>
    private const int SixthRead = 100;

    /// <summary>And of the seventh.</summary>
    private const int SeventhRead = 100;

    /// <summary>And of the eighth.</summary>
    private const int EighthRead = 99;

    /// <summary>And of the ninth.</summary>
    private const int NinthRead = 95;

    /// <summary>And of the tenth.</summary>
    private const int TenthRead = 100;

    /// <summary>And of the eleventh.</summary>
    private const int EleventhRead = 99;

    /// <summary>And of the twelfth.</summary>
    private const int TwelfthRead = 98;

    /// <summary>And of the thirteenth.</summary>
    private const int ThirteenthRead = 100;

    /// <summary>And of the fourteenth.</summary>
    private const int FourteenthRead = 99;

    [Fact]
    public void The_half_set_aside_is_as_it_was_committed() => Assert.Empty(SpecCorpus.Changed());

    [Fact]
    public void The_open_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Open.RunLines, 100);

    [Fact]
    public void The_open_sheets_are_read_without_a_wrong_value() => HoldSheets(SpecCorpus.Open.RunSheets, 100);

    [Fact]
    public void The_hostile_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.More.RunLines, MostlyRead);

    [Fact]
    public void The_hostile_sheets_are_read_without_a_wrong_value() => HoldSheets(SpecCorpus.More.RunSheets, 99);

    [Fact]
    public void The_third_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Third.RunLines, ThirdRead);

    [Fact]
    public void The_third_sheets_are_read_without_a_wrong_value() => HoldSheets(SpecCorpus.Third.RunSheets, 98);

    [Fact]
    public void The_fourth_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Fourth.RunLines, FourthRead);

    [Fact]
    public void The_fourth_sheets_are_read_without_a_wrong_value() => HoldSheets(SpecCorpus.Fourth.RunSheets, 100);

    [Fact]
    public void The_fifth_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Fifth.RunLines, FifthRead);

    [Fact]
    public void The_fifth_sheets_are_read_without_a_wrong_value() => HoldSheets(SpecCorpus.Fifth.RunSheets, FifthRead);

    [Fact]
    public void The_sixth_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Sixth.RunLines, SixthRead);

    [Fact]
    public void The_seventh_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Seventh.RunLines, SeventhRead);

    [Fact]
    public void The_eighth_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Eighth.RunLines, EighthRead);

    [Fact]
    public void The_ninth_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Ninth.RunLines, NinthRead);

    [Fact]
    public void The_tenth_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Tenth.RunLines, TenthRead);

    [Fact]
    public void The_eleventh_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Eleventh.RunLines, EleventhRead);

    [Fact]
    public void The_twelfth_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Twelfth.RunLines, TwelfthRead);

    [Fact]
    public void The_thirteenth_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Thirteenth.RunLines, ThirteenthRead);

    [Fact]
    public void The_fourteenth_lines_are_read_without_a_wrong_value() => Hold(SpecCorpus.Fourteenth.RunLines, FourteenthRead);

    /// <summary>Ten open sets by ten hands: six for some of the parts each, leaning to values and words that no earlier set has, and four for all of them.</summary>
    [Theory]
    [InlineData("fifteenth", 100)]
    [InlineData("sixteenth", 98)]
    [InlineData("seventeenth", 98)]
    [InlineData("eighteenth", 99)]
    [InlineData("nineteenth", 100)]
    [InlineData("twentieth", 99)]
    [InlineData("twenty-first", 99)]
    [InlineData("twenty-second", 98)]
    [InlineData("twenty-third", 98)]
    [InlineData("twenty-fourth", 99)]
    public void The_sets_of_ten_hands_are_read_without_a_wrong_value(string set, int read) => Hold(SpecCorpus.Named(set).RunLines, read);

    /// <summary>Some 9,900 siblings of the lines of the open half, by twenty-seven hands: other values, words and languages on the same conventions. Spans are not labelled.</summary>
    [Theory]
    [InlineData("twenty-fifth", 99)]
    [InlineData("twenty-sixth", 97)]
    [InlineData("twenty-seventh", 96)]
    [InlineData("twenty-eighth", 97)]
    [InlineData("twenty-ninth", 98)]
    [InlineData("thirtieth", 96)]
    public void The_siblings_by_many_hands_are_read_without_a_wrong_value(string set, int read) => Hold(SpecCorpus.Named(set).RunLines, read);

    /// <summary>Some 15,000 lines by twenty hands that say anew in six languages what lines of the open sets say.</summary>
    [Theory]
    [InlineData("first", 99)]
    [InlineData("second", 98)]
    [InlineData("third", 98)]
    [InlineData("fourth", 98)]
    [InlineData("fifth", 96)]
    [InlineData("sixth", 95)]
    [InlineData("seventh", 93)]
    [InlineData("eighth", 91)]
    public void The_lines_said_anew_are_read_without_a_wrong_value(string set, int read) => Hold(SpecCorpus.Named(set).RunAnew, read);

    [Fact]
    public void The_lines_set_aside_are_read_without_a_wrong_value() => Hold(SpecCorpus.Aside.RunLines, 97);

    [Fact]
    public void The_sheets_set_aside_are_read_without_a_wrong_value() => HoldSheets(SpecCorpus.Aside.RunSheets, 96);

    private void Hold(Func<SpecCorpus> run, int read)
    {
        SpecCorpus corpus = run();
        Told(corpus);
        Assert.Empty(corpus.Wrong);
        Assert.True(corpus.Read * 100 >= corpus.Readable * read, corpus.Note);
    }

    private void HoldSheets(Func<SpecCorpus> run, int found)
    {
        SpecCorpus corpus = run();
        Told(corpus);
        Assert.Empty(corpus.Wrong);
        Assert.True(corpus.Found * 100 >= corpus.Expected * found, corpus.Note);
    }

    private void Told(SpecCorpus corpus)
    {
        output.WriteLine(corpus.Note);
        Console.WriteLine(corpus.Note);
        // Which lines of the half set aside are missing stays unsaid, for whoever mends is not to know it.
        foreach (string missed in corpus.IsAside ? [] : corpus.Missed)
        {
            output.WriteLine("missed " + missed);
        }
    }
}
