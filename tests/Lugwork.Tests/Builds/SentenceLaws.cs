using System.Text.RegularExpressions;

namespace Lugwork.Tests.Builds;

/// <summary>What people read shows no template: no field key, no noun behind a figure that is missing, no word said twice, no wrong article.</summary>
public sealed partial class SentenceLaws
{
    [Fact]
    public void No_sentence_of_a_sample_shows_its_template()
    {
        foreach (string file in Directory.GetFiles(SchemaBench.Samples, "*.json"))
        {
            Hold(BuildFile.Read(File.ReadAllText(file)));
        }
    }

    [Fact]
    public void No_sentence_of_a_random_bicycle_shows_its_template()
    {
        Random random = new(7);
        for (int i = 0; i < 150; i++)
        {
            Hold(Bicycles.Any(random));
        }
    }

    [Theory]
    [InlineData("A post is held by a unknown.")]
    [InlineData("A fork of 378 mm axle to crown and no figure travel.")]
    [InlineData("306.4 mm over 24 pitches of a chain for 11-speed chain.")]
    [InlineData("fork, steererLength: 206")]
    public void The_law_sees_what_it_is_for(string sentence) => Assert.NotNull(Fault(sentence));

    private static void Hold(Build build)
    {
        FitReport report = build.Check();
        IEnumerable<string> said =
        [
            .. report.Findings.Select(f => f.Sentence),
            .. report.Findings.SelectMany(f => f.Measurements).Select(m => m.ToString()[..m.ToString().IndexOf(':', StringComparison.Ordinal)]),
            .. report.Findings.SelectMany(f => f.Compared).Select(c => $"{c.Slot.Name}: {Measurement.CalledOn(c.Slot, c.Name)}"),
            .. build.AsBuilt.Select(v => v.ToString()[..v.ToString().IndexOf(':', StringComparison.Ordinal)]),
        ];
        string[] faults = [.. said.Select(Fault).OfType<string>().Distinct()];
        Assert.True(faults.Length == 0, string.Join(Environment.NewLine, faults));
    }

    private static string? Fault(string sentence) =>
        Article().IsMatch(sentence) ? $"wrong article: {sentence}"
        : NoFigure().IsMatch(sentence) ? $"a noun behind a missing figure: {sentence}"
        : Twice().IsMatch(sentence) ? $"a word twice: {sentence}"
        : Key().IsMatch(sentence) ? $"a field key: {sentence}"
        : null;

    [GeneratedRegex(@"\b[Aa] unknown\b")]
    private static partial Regex Article();

    [GeneratedRegex(@"\bno figure (?!and\b|or\b|is\b|to\b|of its own\b)[a-z]")]
    private static partial Regex NoFigure();

    [GeneratedRegex(@"\b([a-z]{4,}) (?:of|for) (?:the |a |an )?(?:[\w.-]+ )?\1\b|\b([a-z]{4,}): [a-z ]+ of the (?:front |rear )?\2$")]
    private static partial Regex Twice();

    [GeneratedRegex(@"\b[a-z]+[a-z][A-Z][a-z]{2,}")]
    private static partial Regex Key();
}
