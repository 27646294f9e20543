using System.Reflection;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>The published worked examples as they are committed, against the rows that the classes beside this one run: none is lost, none is changed.</summary>
public sealed class EveryRowTests
{
    /// <summary>Rows that no class runs, each with its reason. All can be run today; a row that cannot gets its line here.</summary>
    private static readonly Dictionary<string, string> NotRun = [];

    /// <summary>Rows of classes that are not in the committed copy: tables of their own and examples that were found later.</summary>
    private static readonly string[] TablesOfTheirOwn = ["pressure-by-load", "rollout-charts", "spoke-table", "tyre-rules"];

    private const string FoundLater = "slip-7";

    private static readonly (Type Class, string Topic, string[] Ids)[] Run = [.. typeof(EveryRowTests).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(WorkedExample)) && !t.IsAbstract).Select(t => (t, TopicOf(t), IdsRunBy(t)))];

    private static readonly Coverage.FactFile Facts = Coverage.FactFile.All.Single(f => f.Name == "calc-examples.csv");

    private static readonly Dictionary<string, string> Committed = Facts.Rows.ToDictionary(r => r[0], r => Facts.Cell(r, "published_value"));

    [Fact]
    public void Every_committed_row_is_run_or_listed_with_its_reason_and_no_other_is_listed()
    {
        HashSet<string> run = [.. Run.SelectMany(r => r.Ids)];
        Assert.DoesNotContain(Committed.Keys, id => run.Contains(id) == NotRun.ContainsKey(id));
        Assert.DoesNotContain(NotRun.Keys, id => !Committed.ContainsKey(id));
        Assert.All(NotRun.Values, why => Assert.True(why.Length > 10, why));
    }

    [Fact]
    public void A_row_that_is_run_stands_in_the_committed_copy_or_in_a_table_of_its_own() =>
        Assert.DoesNotContain(Run.Where(r => !TablesOfTheirOwn.Contains(r.Topic)).SelectMany(r => r.Ids), id => !Committed.ContainsKey(id) && id != FoundLater);

    /// <summary>Each class runs all of its table, so that a row put into a file alone cannot pass for one that is run.</summary>
    [Fact]
    public void A_class_runs_every_row_of_its_table()
    {
        Assert.All(Run, r => Assert.Equal(Rows(r.Topic).Select(w => w.Id).Order(StringComparer.Ordinal), r.Ids.Order(StringComparer.Ordinal)));
        Assert.Equal(Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "WorkedExamples"), "*.csv").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal), Run.Select(r => r.Topic).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_is_printed_is_what_is_asked_for()
    {
        foreach (WorkedRow row in Run.SelectMany(r => Rows(r.Topic)).Where(r => Committed.ContainsKey(r.Id)))
        {
            Assert.True(Committed[row.Id] == row.PublishedText, $"{row.Id} is committed as {Committed[row.Id]} and run as {row.PublishedText}");
        }
    }

    /// <summary>The floor of what is shown: printed values that are met, each with the page that prints it.</summary>
    [Fact]
    public void At_least_two_hundred_and_fifty_printed_rows_are_met_and_each_names_its_source()
    {
        WorkedRow[] rows = [.. Run.SelectMany(r => Rows(r.Topic))];
        Assert.True(rows.Count(r => r.Use is "usable") >= 280, $"{rows.Count(r => r.Use == "usable")}");
        Assert.True(rows.Count(r => r.Use is "usable" or "low" && Committed.ContainsKey(r.Id)) >= 284, $"{rows.Count(r => r.Use is "usable" or "low" && Committed.ContainsKey(r.Id))}");
        Assert.Equal(12, rows.Count(r => r.Use == "slip"));
        Assert.All(rows, r => Assert.True(r.Source.Length > 5, $"{r.Id} names no source"));
        Assert.All(rows.Where(r => r.Use is "slip" or "outside" or "open"), r => Assert.True(r.Note.Length > 20, $"{r.Id} says not why the print is not met"));
    }

    private static string TopicOf(Type type) => (string)type.GetField("Topic", BindingFlags.NonPublic | BindingFlags.Static)!.GetRawConstantValue()!;

    /// <summary>Ids that theories of a class are given.</summary>
    private static string[] IdsRunBy(Type type)
    {
        string[] members = [.. type.GetMethods().Where(m => m.GetCustomAttribute<TheoryAttribute>() is not null).SelectMany(m => m.GetCustomAttributes<MemberDataAttribute>()).Select(a => a.MemberName)];
        return [.. members.SelectMany(m => ((TheoryData<string>)type.GetProperty(m)!.GetValue(null)!).Select(r => r.Data)).Distinct()];
    }

    private static IReadOnlyList<WorkedRow> Rows(string topic) => WorkedExample.Table(topic);
}
