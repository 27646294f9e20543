namespace Lugwork.Databases;

/// <summary>The recipes as they stand in the documentation: what is run here is what a reader copies.</summary>
internal static class Recipes
{
    private static readonly string[] Lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "databases.md"));

    public static string Of(string name)
    {
        int start = Array.IndexOf(Lines, $"```sql {name}");
        Assert.True(start >= 0, $"databases.md has no recipe '{name}'");
        int end = Array.IndexOf(Lines, "```", start);
        return string.Join('\n', Lines[(start + 1)..end]);
    }
}
