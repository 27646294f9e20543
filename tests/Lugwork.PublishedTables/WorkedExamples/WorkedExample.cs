using System.Globalization;
using System.Text;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>
/// Worked examples of one topic. Each topic has a file of its own beside this one, and a class that runs the library on every row of it:
/// <c>usable</c> is a printed value with its own inputs, <c>low</c> one of a weak page or with an input that had to be inferred,
/// <c>slip</c> a print that is wrong, <c>own</c> arithmetic without a page. Rollout charts have two marks more: <c>outside</c>, a print that no convention of
/// ours explains, and <c>open</c>, one without the figures that a sum would need.
/// </summary>
public abstract class WorkedExample
{
    /// <summary>Ids of all rows of a topic, for a theory.</summary>
    private protected static TheoryData<string> IdsOf(string topic) => [.. RowsOf(topic).Select(r => r.Id)];

    /// <summary>One row.</summary>
    private protected static WorkedRow RowOf(string topic, string id) => RowsOf(topic).Single(r => r.Id == id);

    /// <summary>Every row of a topic, as it stands in the file.</summary>
    private protected static IReadOnlyList<WorkedRow> RowsOf(string topic)
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "WorkedExamples", topic + ".csv"));
        List<string> head = Cells(lines[0]);
        return [.. lines.Skip(1).Where(l => l.Length > 0).Select(l => new WorkedRow(head, Cells(l)))];
    }

    /// <summary>No row is lost, and none stands there twice.</summary>
    private protected static void Holds(string topic, int rows)
    {
        Assert.Equal(rows, RowsOf(topic).Select(r => r.Id).Distinct().Count());
        Assert.Equal(rows, RowsOf(topic).Count);
    }

    /// <summary>What is right for each kind of row: a printed value is met within its tolerance; a slip is not met, our own figure is, and the note says why; own arithmetic is met to its last digit.</summary>
    private protected static void Agrees(WorkedRow row, double computed)
    {
        switch (row.Use)
        {
            case "usable" or "low":
                Assert.True(Meets(computed, row.Published, row.Tolerance), row.Tell(computed));
                break;
            case "slip":
                Assert.False(Meets(computed, row.Published, row.Tolerance), row.Tell(computed));
                Assert.True(Meets(computed, row.Own, row.HalfOfTheLastDigit), row.Tell(computed));
                Assert.NotEqual("", row.Note);
                break;
            case "own":
                Assert.True(Meets(computed, row.Own, Math.Max(row.Tolerance, row.HalfOfTheLastDigit)), row.Tell(computed));
                break;
            default:
                Assert.Fail($"{row.Id}: '{row.Use}' is no use of a row");
                break;
        }
    }

    /// <summary>Every row of a topic, for the test of tests.</summary>
    internal static IReadOnlyList<WorkedRow> Table(string topic) => RowsOf(topic);

    private static bool Meets(double computed, double expected, double tolerance) => Math.Abs(computed - expected) <= tolerance + 1e-9;

    private static List<string> Cells(string line)
    {
        List<string> cells = [];
        StringBuilder cell = new();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            if (line[i] == '"')
            {
                if (quoted && i + 1 < line.Length && line[i + 1] == '"')
                {
                    cell.Append(line[++i]);
                }
                else
                {
                    quoted = !quoted;
                }
            }
            else if (line[i] == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(line[i]);
            }
        }

        cells.Add(cell.ToString());
        return cells;
    }
}

/// <summary>One worked example: inputs "front=52; rear=13", what is printed, and how near it has to be met.</summary>
internal sealed class WorkedRow(List<string> head, List<string> cells)
{
    public string Id => this["id", true];

    public string Quantity => this["quantity", true];

    public string Unit => this["unit", true];

    public string Source => this["source", true];

    public string Note => this["note", true];

    public string Use => this["use", true];

    public string Inputs => this["inputs", true];

    /// <summary>The printed value.</summary>
    public string PublishedText => this["published_value", true];

    /// <summary>The printed value as a number.</summary>
    public double Published => Number(this["published_value", true]);

    /// <summary>Our own figure, of slips and of own arithmetic.</summary>
    public double Own => Number(this["own_value", true]);

    public double Tolerance => Number(this["tolerance", true]);

    /// <summary>Half a unit of the last digit of our own figure.</summary>
    public double HalfOfTheLastDigit
    {
        get
        {
            string text = this["own_value", true];
            int point = text.IndexOf('.', StringComparison.Ordinal);
            return 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - text.Length);
        }
    }

    /// <summary>One input as a number: of "front=52; rear=13", "rear" is 13.</summary>
    public double this[string input] => Number(Text(input));

    private string this[string column, bool _] => head.IndexOf(column) is var at and >= 0 && at < cells.Count ? cells[at] : throw new ArgumentException($"no column {column}: {string.Join('|', cells)}");

    /// <summary>An input that may not be there.</summary>
    public bool Has(string input) => Pairs().Any(p => p.Name == input);

    /// <summary>One input as text.</summary>
    public string Text(string input) => Pairs().Single(p => p.Name == input).Value;

    /// <summary>One input that is a list: "front=53 39".</summary>
    public double[] List(string input) => [.. Text(input).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Number)];

    /// <summary>The source, what is printed, and what came out.</summary>
    public string Tell(double computed) => string.Create(CultureInfo.InvariantCulture, $"{Id}, {Source}: {Quantity} of {Inputs} is printed as {this["published_value", true]} {Unit} (own {this["own_value", true]}, within {Tolerance}, {Use}); computed {computed}. {Note}");

    private static double Number(string text) => text.Split('/') is [var over, var under] ? Number(over) / Number(under) : double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private IEnumerable<(string Name, string Value)> Pairs() => Inputs.Split(';').Select(p => p.Split('=')).Where(p => p.Length == 2).Select(p => (p[0].Trim(), p[1].Trim()));
}
