using System.Text;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using Lugwork.Tests.Builds;
using Lugwork.Workshop;

namespace Lugwork.Tests.Architecture;

/// <summary>
/// What other programs read stays where it stands: every property of the report, the plan and the record, with its kind, is a line of
/// <c>json-paths.txt</c>. The build file has its schema.
/// </summary>
public sealed class JsonShapeTests
{
    private static readonly string Committed = Path.Combine(SchemaBench.Root, "tests", "Lugwork.Tests", "Architecture", "json-paths.txt");

    [Fact]
    public void Every_property_of_report_plan_and_record_stands_in_the_file_and_none_is_gone()
    {
        string[] now = [.. Paths("report", BuildJson.Default.ReportSheet), .. Paths("plan", WorkJson.Default.PlanSheet), .. Paths("record", WorkJson.Default.RecordSheet)];
        string[] frozen = File.Exists(Committed) ? File.ReadAllLines(Committed) : [];
        string[] gone = [.. frozen.Except(now)];
        if (now.SequenceEqual(frozen))
        {
            return;
        }

        string renewed = Path.Combine(AppContext.BaseDirectory, "json-paths.txt");
        File.WriteAllText(renewed, string.Concat(now.Select(p => p + "\n")), new UTF8Encoding(false));
        Assert.True(gone.Length == 0, $"Others read these; give them back, or raise the number of the format: {string.Join("; ", gone)}");
        Assert.Fail($"New properties: {string.Join("; ", now.Except(frozen))}. Look at them, then copy {renewed} over {Committed}.");
    }

    [Fact]
    public void A_list_holds_objects_wherever_what_it_names_has_an_id_and_words()
    {
        string[] paths = File.ReadAllLines(Committed);
        Assert.All(["report.joints[].sources[].id string", "report.joints[].remedies[].bridge null|string", "report.toMeasure[].field string", "report.cautions[].id string", "plan.consumables[].id string", "plan.steps[].cautions[].id string", "report.format integer", "plan.format integer", "record.format integer|null"], p => Assert.Contains(p, paths));
    }

    private static IEnumerable<string> Paths(string root, JsonTypeInfo shape)
    {
        JsonNode schema = JsonSchemaExporter.GetJsonSchemaAsNode(shape, new() { TreatNullObliviousAsNonNullable = true });
        return Walk(root, schema, schema).Order(StringComparer.Ordinal);
    }

    private static IEnumerable<string> Walk(string path, JsonNode node, JsonNode whole)
    {
        JsonNode shape = node;
        while (shape is JsonObject && (string?)shape["$ref"] is { } reference)
        {
            shape = reference == "#" ? whole : reference.Split('/')[1..].Aggregate(whole, (at, step) => at is JsonArray list ? list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]! : at[step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal)]!);
        }

        string[] kinds = shape is JsonObject && shape["type"] is { } type ? type is JsonArray several ? [.. several.Select(t => (string)t!).Order(StringComparer.Ordinal)] : [(string)type!] : ["any"];
        yield return $"{path} {string.Join('|', kinds)}";
        foreach ((string name, JsonNode? property) in shape is JsonObject ? shape["properties"]?.AsObject() ?? [] : [])
        {
            foreach (string inner in Walk($"{path}.{name}", property!, whole))
            {
                yield return inner;
            }
        }

        foreach ((string word, string mark) in new[] { ("items", "[]"), ("additionalProperties", ".*") })
        {
            if (shape is JsonObject && shape[word] is JsonObject inside)
            {
                foreach (string inner in Walk(path + mark, inside, whole))
                {
                    yield return inner;
                }
            }
        }
    }
}
