namespace Lugwork.PublishedTables.Traps;

/// <summary>Every edge case of the tables: judged as published, or listed as judged otherwise, or counted as open.</summary>
public sealed class TrapTests
{
    private static readonly Trap[] All = TrapTable.All;

    public static TheoryData<string> Run => [.. All.Where(t => t.IsRun).Select(t => t.Id)];

    [Theory]
    [MemberData(nameof(Run))]
    public void A_trap_is_answered_as_published_or_as_listed(string id)
    {
        Trap trap = All.Single(t => t.Id == id);
        Check(trap, trap, trap.Expected, trap.Caution);
        foreach (TrapRun further in trap.And)
        {
            Check(trap, further, further.Verdict ?? trap.Expected, false);
        }
    }

    [Fact]
    public void Every_row_of_the_tables_is_here_once() => Assert.Equal(TrapTable.Ids.Order(StringComparer.Ordinal), All.Select(t => t.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_row_says_what_it_is_about_and_where_it_comes_from() => Assert.All(All, t =>
    {
        Assert.True(t.Says.Length > 15 && t.Source.Length > 5, t.Id);
        Assert.Contains(t.Confidence, new[] { "A", "B", "C", "D", "P", "M" });
        Assert.NotNull(t.Verdict);
        Assert.Equal(t.Open is null ? 0 : 2, t.Between.Length);
    });

    [Fact]
    public void Every_row_is_run_or_names_what_is_missing() => Assert.All(All, t =>
    {
        int ways = new[] { t.Joint, t.Read, t.Identify, t.Figure, t.Relation }.Count(w => w is not null);
        int missing = new[] { t.Open, t.System, t.Sum }.Count(w => w is not null);
        Assert.True(ways <= 1 && missing <= 1 && ways + missing >= 1, t.Id);
        Assert.True(t.Open is not null || ways + missing == 1, t.Id);
        Assert.True(t.Relation is null || t.Open is not null, t.Id);
        Assert.True((t.Joint ?? t.Relation) is null || t.Remedy is { Length: > 0 }, $"{t.Id} says nothing of the remedy");
        Assert.All(t.And, a => Assert.True(a.IsRun, t.Id));
    });

    [Fact]
    public void A_joint_that_is_named_as_missing_is_missing() =>
        Assert.Empty(All.Select(t => t.Open).Intersect(JointTable.All.Select(j => j.Id)));

    /// <summary>The numbers go down as joints, sums and checks are added; they are changed with the rows.</summary>
    [Fact]
    public void What_cannot_be_judged_yet_is_counted() => Assert.Equal(
        "0 rows wait for 0 joints, 0 for checks of several parts, 12 for sums; 349 run",
        $"{All.Count(t => t.Open is not null)} rows wait for {All.Select(t => t.Open).OfType<string>().Distinct().Count()} joints, {All.Count(t => t.System is not null)} for checks of several parts, {All.Count(t => t.Sum is not null)} for sums; {All.Count(t => t.IsRun)} run");

    [Fact]
    public void What_is_judged_otherwise_says_why() => Assert.All(All.Where(t => t.Otherwise is not null), t =>
    {
        Assert.True(t.IsRun, t.Id);
        Assert.NotEqual(t.Verdict, t.Otherwise!.Verdict);
        Assert.True(t.Otherwise.Because.Length > 40 && t.Otherwise.Source.Length > 5, t.Id);
    });

    /// <summary>Whoever lets a row come out milder than its table has to name it here.</summary>
    [Fact]
    public void Only_these_rows_are_judged_milder_than_published() =>
        Assert.Equal(["C006", "C044", "C067", "D20", "E61", "H51", "H54"], All.Where(t => t.Otherwise is { } o && o.Verdict < t.Verdict).Select(t => t.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void No_row_that_is_refused_or_asked_about_is_judged_as_a_fit() =>
        Assert.DoesNotContain(All, t => t.Verdict >= Verdict.NeedsMeasuring && t.Otherwise?.Verdict is Verdict.Fits);

    private static void Check(Trap trap, TrapRun run, Verdict expected, bool caution)
    {
        string source = $"{trap.Id} ({trap.Source}): {trap.Says}";
        if (run.Read is { } type)
        {
            Assert.NotEmpty(run.Text);
            Assert.All(run.Text, text => Keys(source, run, TrapRunner.Read(type, text)));
        }
        else if (run.Identify is { } thing)
        {
            Keys(source, run, TrapRunner.Identify(thing, run.Readings));
        }
        else if (run.Figure is { } figure)
        {
            object gives = TrapRunner.Figure(figure, run.Values);
            Assert.True(gives.ToString() == (run.Gives ?? expected.ToString()), $"{source}: {run.Gives ?? expected.ToString()} is published, told: {gives}");
        }
        else
        {
            (Verdict verdict, string told, bool cautions) = TrapRunner.Judge(run);
            Assert.True(verdict == expected, $"{source}: {expected} is published, judged: {verdict}: {told}");
            Assert.True(cautions || !caution, $"{source}: a caution is wanted, told: {told}");
            Assert.True(told.Contains(run.Remedy ?? trap.Remedy!, StringComparison.OrdinalIgnoreCase), $"{source}: \"{run.Remedy ?? trap.Remedy}\" is not told: {told}");
        }
    }

    private static void Keys(string source, TrapRun run, string[] keys)
    {
        if (run.As is { } exactly)
        {
            Assert.True(exactly.Order(StringComparer.Ordinal).SequenceEqual(keys.Order(StringComparer.Ordinal)), $"{source}: {string.Join(", ", exactly)} is published, found: {string.Join(", ", keys)}");
        }
        else
        {
            Assert.True(run.Among!.All(keys.Contains) && (run.Among!.Length == 1 || keys.Length > 1), $"{source}: {string.Join(", ", run.Among!)} are published, found: {string.Join(", ", keys)}");
        }
    }
}
