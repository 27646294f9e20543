namespace Lugwork.PublishedTables;

/// <summary>The page on which the case of a check is printed, where its rows have no source of their own.</summary>
/// <param name="source">Title and publisher; or "from memory", "common practice, no source", "arithmetic on ...", which count for nothing.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
internal sealed class PrintedInAttribute(string source) : Attribute
{
    public string Source => source;
}
