using System.Text.Json.Nodes;

namespace Lugwork.Tests.Builds;

/// <summary>What the schema refuses, reading refuses; so whatever is read is taken.</summary>
public sealed class SchemaLaws
{
    private static readonly string[] Keys =
        [.. Slot.All.Select(s => s.Key), .. SchemaBench.Fields.Select(f => f.Field.Key).Distinct(), "name", "$schema", "parts", "basket", "Rear", ""];

    private static readonly string[] Values =
    [
        "null", "true", "5", "-5", "0", "160", "160.5", "1e300", "-0.0", "\"\"", "\"unknown\"", "\"none\"", "\"not covered\"", "\"frame-specific\"", "\"12x142\"", "\"27.2\"", "\"80 ± 1\"", "\"HG\"", "\"27.2 x 350\"", "\"a: b\"",
        "[]", "[null]", "[1, 2]", "[80]", "[0]", "[\"27.2\"]", "[\"27.2 x 350\"]", "[\"27.2 x 350\", \"1\"]", "[[1]]", "[\"unknown\"]", "[\"not covered\"]", "[\"none\", \"none\"]", "{}", "{ \"rear\": \"12x142\" }", "{ \"frame\": {} }",
        $"[{string.Join(", ", Enumerable.Repeat("\"27.2\"", 81))}]", $"[{string.Join(", ", Enumerable.Repeat("27.2", 80))}]",
    ];

    [Fact]
    public void What_the_schema_refuses_reading_refuses()
    {
        Random random = new(11);
        int refused = 0;
        int taken = 0;
        int stricter = 0;
        for (int i = 0; i < 4_000; i++)
        {
            JsonNode? file = JsonNode.Parse(BuildFile.Write(Bicycles.Any(random), random.Next(2) == 0 ? null : "s"));
            for (int change = random.Next(1, 4); change > 0; change--)
            {
                Change(file!.AsObject(), random);
            }

            string text = file!.ToJsonString();
            bool takes = SchemaBench.Takes(text);
            bool reads = SchemaBench.Reads(text);
            Assert.True(takes || !reads, text);
            refused += takes ? 0 : 1;
            taken += reads ? 1 : 0;
            stricter += takes && !reads ? 1 : 0;
        }

        Assert.True(refused > 500 && taken > 500 && stricter > 100, $"{refused} refused, {taken} read, {stricter} refused by reading alone");
    }

    [Fact]
    public void Every_value_in_every_field_is_refused_by_reading_where_the_schema_refuses_it()
    {
        foreach ((Slot slot, IPartField field) in SchemaBench.Fields)
        {
            foreach (string value in Values)
            {
                string text = SchemaBench.With(slot, field.Key, value);
                Assert.True(SchemaBench.Takes(text) || !SchemaBench.Reads(text), text);
            }

            foreach (IPartField other in PartForms.Of(slot).Fields.Where(o => o != field))
            {
                string text = SchemaBench.With(slot, $$"""{ "{{field.Key}}": null, "{{other.Key}}": "{{other.Values().Keys.FirstOrDefault() ?? "80"}}" }""");
                Assert.True(SchemaBench.Takes(text) || !SchemaBench.Reads(text), text);
            }
        }
    }

    /// <summary>Takes out, puts in or replaces one property at the top, among the parts or of a part.</summary>
    private static void Change(JsonObject file, Random random)
    {
        JsonObject at = file;
        if (random.Next(8) > 0 && file["parts"] is JsonObject parts)
        {
            JsonObject[] some = [.. parts.Select(p => p.Value).OfType<JsonObject>()];
            at = random.Next(6) > 0 && some.Length > 0 ? some[random.Next(some.Length)] : parts;
        }

        string[] there = [.. at.Select(p => p.Key)];
        JsonNode? value = JsonNode.Parse(Values[random.Next(Values.Length)]);
        string key = there.Length > 0 && random.Next(3) > 0 ? there[random.Next(there.Length)] : Keys[random.Next(Keys.Length)];
        if (random.Next(4) == 0)
        {
            at.Remove(key);
        }
        else
        {
            at[key] = value;
        }
    }
}
