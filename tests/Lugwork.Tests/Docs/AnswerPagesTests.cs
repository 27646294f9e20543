using Answers;

namespace Lugwork.Tests.Docs;

/// <summary>What runs here prints to the console that all tests share: these run by themselves.</summary>
[CollectionDefinition(nameof(AnswerPagesTests), DisableParallelization = true)]
public sealed class AnswersAlone;

/// <summary>Code of the pages is that of the samples, and what they show is what it prints.</summary>
[Collection(nameof(AnswerPagesTests))]
public sealed class AnswerPagesTests
{
    /// <summary>Its SQL is run by tests/Lugwork.Databases.</summary>
    private const string Databases = "databases.md";

    public static TheoryData<string> Pages => [.. DocPage.Names.Where(n => n != Databases)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_shows_its_samples_as_they_are(string name)
    {
        string page = File.ReadAllText(Path.Combine(DocPage.Folder, name));
        DocPage.Hold($"src/Lugwork/docs/{name}", Snippets.Fresh(page));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void No_code_is_typed_into_a_page(string name) =>
        Assert.All(
            Snippets.Of(File.ReadAllText(Path.Combine(DocPage.Folder, name))).Where(b => b.Language is "csharp" or "fsharp" or "text" or "json"),
            b => Assert.True(b.Of.Length > 0, $"{name} has a block of {b.Language} that no sample holds:\n{b.Body}"));

    [Fact]
    public void Every_answer_is_shown_with_its_code_and_what_it_prints()
    {
        (string Language, string Of, string Body)[] shown = [.. DocPage.Names.SelectMany(n => Snippets.Of(File.ReadAllText(Path.Combine(DocPage.Folder, n))))];
        foreach (string answer in AnswerList.All.Keys.Where(k => k != "TenLines.cs#ten-lines"))
        {
            Assert.Contains(shown, b => b.Of == $"samples/Answers/{answer}" && b.Language == "csharp");
            Assert.Contains(shown, b => b.Of == $"samples/Answers/{answer}" && b.Language == "text");
        }
    }
}
