using Lugwork.PublishedTables.Traps;

namespace Lugwork.PublishedTables;

/// <summary>No check over several parts is without its example or the word that none was found.</summary>
public sealed class SystemRowsTests
{
    private static readonly string[] Checks = [.. SystemChecks.All.Concat(PairRows.All).Select(j => j.Id)];

    [Fact]
    public void Every_check_has_a_published_example_or_is_listed_as_one_without()
    {
        string[] shown = [.. SystemRowsChecks.Rows.Select(r => r.Data.Item1).Distinct()];
        string[] listed = [.. shown, .. SystemRowsChecks.RunElsewhere.Keys, .. SystemRowsChecks.NoneFound.Keys];
        Assert.Equal(Checks.Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
        Assert.All(SystemRowsChecks.NoneFound.Values, why => Assert.True(why.Length > 20, why));
    }

    [Fact]
    public void What_is_said_to_run_elsewhere_does()
    {
        HashSet<string> classes = [.. typeof(SystemRowsTests).Assembly.GetTypes().Select(t => t.Name)];
        foreach ((string joint, string where) in SystemRowsChecks.RunElsewhere)
        {
            Assert.All(where.Split(", "), w => Assert.True(classes.Contains(w) || Array.Exists(TrapTable.All, t => t.Id == w && t.And.Append(t).Any(r => r.Joint == joint)), $"{joint}: {w}"));
        }
    }

    /// <summary>Each row is shown from both sides where the page has a figure: more than one verdict for most of them.</summary>
    [Fact]
    public void Most_rows_are_shown_on_both_sides_of_their_figure() =>
        Assert.True(SystemRowsChecks.Rows.GroupBy(r => r.Data.Item1).Count(g => g.Select(r => r.Data.Item3).Distinct().Skip(1).Any()) >= 12);
}
