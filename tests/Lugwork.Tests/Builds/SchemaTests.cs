using System.Text;
using System.Text.Json;
using Json.Schema;

namespace Lugwork.Tests.Builds;

/// <summary>The JSON Schema of a build file says what reading takes, as far as a schema can.</summary>
public sealed class SchemaTests
{
    [Fact]
    public void The_committed_file_is_the_schema()
    {
        byte[] made = Encoding.UTF8.GetBytes(BuildFile.Schema);
        byte[] committed = File.Exists(SchemaBench.File) ? File.ReadAllBytes(SchemaBench.File) : [];
        if (made.AsSpan().SequenceEqual(committed))
        {
            return;
        }

        string renewed = Path.Combine(AppContext.BaseDirectory, "build-file.schema.json");
        File.WriteAllBytes(renewed, made);
        Assert.Fail($"The schema of build files has changed. Look at the change, then copy {renewed} over {SchemaBench.File}.");
    }

    [Fact]
    public void It_is_a_schema_of_draft_2020_12_with_line_feeds_alone()
    {
        using JsonDocument schema = JsonDocument.Parse(BuildFile.Schema);
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema.RootElement.GetProperty("$schema").GetString());
        Assert.Equal("urn:lugwork:build-file:1", schema.RootElement.GetProperty("$id").GetString());
        Assert.DoesNotContain('\r', BuildFile.Schema);
        Assert.EndsWith("}\n", BuildFile.Schema, StringComparison.Ordinal);
        Assert.Same(BuildFile.Schema, BuildFile.Schema);
    }

    [Fact]
    public void Every_slot_and_every_field_is_there_with_words_of_its_own()
    {
        using JsonDocument schema = JsonDocument.Parse(BuildFile.Schema);
        JsonElement parts = schema.RootElement.GetProperty("properties").GetProperty("parts").GetProperty("properties");
        Assert.Equal(Slot.All.Select(s => s.Key), parts.EnumerateObject().Select(p => p.Name));
        foreach (Slot slot in Slot.All)
        {
            string reference = parts.GetProperty(slot.Key).GetProperty("$ref").GetString()!;
            JsonElement fields = schema.RootElement.GetProperty("$defs").GetProperty(reference["#/$defs/".Length..]).GetProperty("properties");
            Assert.Equal(PartForms.Of(slot).Fields.Select(f => f.Key).Prepend("name"), fields.EnumerateObject().Select(p => p.Name));
            Assert.All(fields.EnumerateObject(), f => Assert.NotEmpty(f.Value.GetProperty("description").GetString()!));
        }

        Assert.All(schema.RootElement.GetProperty("properties").EnumerateObject(), p => Assert.NotEmpty(p.Value.GetProperty("description").GetString()!));
    }

    public static TheoryData<string> Samples => [.. Directory.GetFiles(SchemaBench.Samples, "*.json").Select(f => Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_sample_is_taken_and_names_the_schema_first(string name)
    {
        string text = File.ReadAllText(Path.Combine(SchemaBench.Samples, name));
        Assert.True(SchemaBench.Takes(text));
        using JsonDocument sample = JsonDocument.Parse(text);
        JsonProperty first = sample.RootElement.EnumerateObject().First();
        Assert.Equal("$schema", first.Name);
        Assert.Equal(SchemaBench.File, Path.GetFullPath(Path.Combine(SchemaBench.Samples, first.Value.GetString()!)));
    }

    [Fact]
    public void What_is_written_is_taken()
    {
        Random random = new(3);
        for (int i = 0; i < 300; i++)
        {
            string text = BuildFile.Write(Bicycles.Any(random), i % 2 == 0 ? null : "build-file.schema.json");
            Assert.True(SchemaBench.Reads(text));
            Assert.True(SchemaBench.Takes(text), text);
        }
    }

    [Fact]
    public void The_address_of_the_schema_is_written_first_where_it_is_given()
    {
        Build build = Build.From(Frame.Read("steel"), "a name");
        Assert.DoesNotContain("$schema", BuildFile.Write(build), StringComparison.Ordinal);
        string text = BuildFile.Write(build, "../a b.json");
        using JsonDocument written = JsonDocument.Parse(text);
        Assert.Equal(["$schema", "format", "name", "parts"], written.RootElement.EnumerateObject().Select(p => p.Name));
        Assert.Equal("../a b.json", written.RootElement.GetProperty("$schema").GetString());
        Assert.Equal(BuildFile.Write(build), BuildFile.Write(BuildFile.Read(text)));
    }

    [Theory]
    [InlineData("12x142", "HG", "six bolt", "27,2", "POST")]
    [InlineData("r142 12", "HG-M | HG-L", "Center Lock", "27.18 ± 0.05", "unknown")]
    [InlineData("142 x 12 mm", "XD", "none", "27.2 mm", "?")]
    public void Spellings_that_reading_takes_are_taken(string rear, string body, string fixing, string bore, string mounting)
    {
        string text = $$"""
            { /* as found */ "parts": { "frame": { "rear": "{{rear}}", "seatTube": "{{bore}}" }, "rearCaliper": { "mounting": "{{mounting}}" },
              "rearWheel": { "body": "{{body}}", "rotorFixing": "{{fixing}}", "beadSeat": 622, "innerWidth": [19, "21"], }, "fork": null, } }
            """;
        Assert.True(SchemaBench.Reads(text));
        Assert.True(SchemaBench.Takes(text));
    }

    [Theory]
    [InlineData("an unknown slot", """{ "parts": { "frame": {}, "basket": {} } }""")]
    [InlineData("an unknown slot that is empty", """{ "parts": { "frame": {}, "basket": null } }""")]
    [InlineData("a slot in capitals", """{ "parts": { "frame": {}, "RearWheel": {} } }""")]
    [InlineData("an unknown field", """{ "parts": { "frame": { "saddle": "1" } } }""")]
    [InlineData("a field of another part", """{ "parts": { "frame": { "hub": "12x142" } } }""")]
    [InlineData("a field in capitals", """{ "parts": { "frame": { "Rear": "12x142" } } }""")]
    [InlineData("a boolean", """{ "parts": { "frame": { "rear": true } } }""")]
    [InlineData("a boolean as name", """{ "parts": { "frame": { "name": false } } }""")]
    [InlineData("an object", """{ "parts": { "frame": { "rear": { "axle": 12 } } } }""")]
    [InlineData("an empty list", """{ "parts": { "frame": { "rear": [] } } }""")]
    [InlineData("a list in a list", """{ "parts": { "frame": { "rear": [["12x142"]] } } }""")]
    [InlineData("null in a list", """{ "parts": { "frame": { "rear": [null] } } }""")]
    [InlineData("no frame", """{ "parts": { "seatpost": { "diameter": "27.2" } } }""")]
    [InlineData("a frame that is null", """{ "parts": { "frame": null } }""")]
    [InlineData("a frame that is text", """{ "parts": { "frame": "12x142" } }""")]
    [InlineData("no parts", """{ "name": "bare" }""")]
    [InlineData("parts that are null", """{ "parts": null }""")]
    [InlineData("parts in a list", """{ "parts": [] }""")]
    [InlineData("an extra property", """{ "colour": "red", "parts": { "frame": {} } }""")]
    [InlineData("an extra property that is null", """{ "colour": null, "parts": { "frame": {} } }""")]
    [InlineData("a name that is a number", """{ "name": 1, "parts": { "frame": {} } }""")]
    [InlineData("an address that is a number", """{ "$schema": 1, "parts": { "frame": {} } }""")]
    [InlineData("a part that is a list", """{ "parts": { "frame": {}, "fork": [] } }""")]
    [InlineData("a length of zero", """{ "parts": { "frame": { "leastInsertion": 0 } } }""")]
    [InlineData("a length below zero in a list", """{ "parts": { "frame": { "leastInsertion": [80, -1] } } }""")]
    [InlineData("one thing under two names", """{ "parts": { "frame": {}, "rearWheel": { "hub": null, "rear": "12x142" } } }""")]
    [InlineData("a size beside a length", """{ "parts": { "frame": {}, "seatpost": { "length": 350, "size": "27.2 x 350" } } }""")]
    [InlineData("two sizes", """{ "parts": { "frame": {}, "seatpost": { "size": ["27.2 x 350", "27.2 x 400"] } } }""")]
    [InlineData("a null file", "null")]
    [InlineData("a list", "[]")]
    public void Bad_files_are_refused_by_schema_and_reader(string what, string text)
    {
        Assert.False(SchemaBench.Takes(text), what);
        Assert.False(SchemaBench.Reads(text), what);
    }

    [Theory]
    [InlineData("nulls", """{ "$schema": null, "name": null, "parts": { "frame": {}, "fork": null } }""")]
    [InlineData("an address", """{ "$schema": "build-file.schema.json", "parts": { "frame": {} } }""")]
    [InlineData("a name of a part that is a number", """{ "parts": { "frame": { "name": 5 } } }""")]
    [InlineData("a name of a part that is a list", """{ "parts": { "frame": { "name": ["a", 5] } } }""")]
    public void Odd_but_good_files_are_taken_by_both(string what, string text)
    {
        Assert.True(SchemaBench.Takes(text), what);
        Assert.True(SchemaBench.Reads(text), what);
    }

    [Fact]
    public void Every_field_takes_the_kinds_of_JSON_that_reading_takes()
    {
        foreach ((Slot slot, IPartField field) in SchemaBench.Fields)
        {
            foreach (string value in new[] { "true", "false", "{}", "[]", "[[\"1\"]]", "[null]", "[true]", "[{}]", "{ \"a\": 1 }" })
            {
                string text = SchemaBench.With(slot, field.Key, value);
                Assert.False(SchemaBench.Reads(text), text);
                Assert.False(SchemaBench.Takes(text), text);
            }

            string empty = SchemaBench.With(slot, field.Key, "null");
            Assert.True(SchemaBench.Reads(empty) == SchemaBench.Takes(empty), $"{empty}: tell the kinds in the field's Values");
        }
    }

    [Fact]
    public void Every_key_that_is_offered_is_read_and_taken_alone_and_in_a_list()
    {
        int offered = 0;
        foreach ((Slot slot, IPartField field) in SchemaBench.Fields)
        {
            string[] keys = [.. field.Values().Keys.Select(k => JsonSerializer.Serialize(k))];
            foreach (string value in keys.Concat(keys.Select(k => $"[{k}]")))
            {
                string text = SchemaBench.With(slot, field.Key, value);
                Assert.True(SchemaBench.Reads(text), text);
                Assert.True(SchemaBench.Takes(text), text);
                offered++;
            }
        }

        Assert.True(offered > 400, $"only {offered} keys are offered");
    }

    [Fact]
    public void Every_slot_but_the_frame_may_be_null_and_takes_no_field_of_another_kind()
    {
        string[] keys = [.. SchemaBench.Fields.Select(f => f.Field.Key).Distinct()];
        foreach (Slot slot in Slot.All)
        {
            Assert.Equal(slot != Slot.Frame, SchemaBench.Reads(SchemaBench.With(slot, "null")));
            Assert.Equal(slot != Slot.Frame, SchemaBench.Takes(SchemaBench.With(slot, "null")));
            foreach (string key in keys.Except(PartForms.Of(slot).Fields.Select(f => f.Key)))
            {
                Assert.False(SchemaBench.Reads(SchemaBench.With(slot, key, "null")), $"{slot}: {key}");
                Assert.False(SchemaBench.Takes(SchemaBench.With(slot, key, "null")), $"{slot}: {key}");
            }
        }
    }

    [Fact]
    public void As_many_values_are_taken_as_are_read()
    {
        foreach (int count in new[] { 1, 80, 81 })
        {
            string text = SchemaBench.With(Slot.Frame, "seatTube", $"[{string.Join(", ", Enumerable.Range(0, count).Select(i => 20 + (i / 10m)))}]");
            Assert.Equal(count <= 80, SchemaBench.Reads(text));
            Assert.Equal(count <= 80, SchemaBench.Takes(text));
        }
    }
}
