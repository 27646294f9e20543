namespace Lugwork.Mutation;

/// <summary>How many changes each test found before: what found some is likely to find the next.</summary>
internal sealed class Finders(Dictionary<string, int> inFile, Dictionary<string, int> anywhere)
{
    public int InFile(string test) => inFile.GetValueOrDefault(test);

    public int Anywhere(string test) => anywhere.GetValueOrDefault(test);
}
