using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;

namespace Lugwork;

/// <summary>Makes the JSON Schema of a build file: the outer shape from the type that is read, the parts from the forms by which they are read.</summary>
internal static class BuildSchema
{
    private const string TopDescription =
        "A bicycle as far as it is put together: a frame and parts by slot. A property left out is unknown.";

    private const string TextDescription =
        "Text, or a number that is kept as text. Null says nothing.";

    private const string ValueDescription =
        "A value as text or number; several as a list or with ' | ' between; \"27.18 ± 0.05\" for something measured in millimetres; \"none\" for a part that has none; \"frame-specific\" where only the frame maker's own part goes; \"not covered\" or the name of a family outside this library, such as \"motor mount\"; \"unknown\" or null.";

    private const string LengthDescription =
        "Millimetres above zero as text or number; several as a list or with ' | ' between; \"80 ± 1\" for something measured; \"none\" where there is none; \"frame-specific\" where only the frame maker's own part goes; \"not covered\" or the name of a family outside this library, such as \"motor mount\"; \"unknown\" or null.";

    private const string MassDescription =
        "Kilograms above zero as text or number, or text with kg, lb or st; several as a list or with ' | ' between; \"none\" where there is none; \"frame-specific\" where only the frame maker's own part goes; \"not covered\" or the name of a family outside this library, such as \"motor mount\"; \"unknown\" or null.";

    private const string AngleDescription =
        "Degrees above zero as text or number, or text with \u00B0 or deg; several as a list or with ' | ' between; \"none\" where there is none; \"frame-specific\" where only the frame maker's own part goes; \"not covered\" or the name of a family outside this library, such as \"motor mount\"; \"unknown\" or null.";

    private const string WordsDescription =
        "Text.";

    /// <summary>Made when it is first asked for.</summary>
    public static string Text { get; } = Write(Make());

    private static JsonObject Make()
    {
        JsonObject sheet = JsonSchemaExporter.GetJsonSchemaAsNode(BuildJson.Default.BuildSheet, new() { TreatNullObliviousAsNonNullable = true }).AsObject();
        JsonObject properties = [];
        foreach ((string key, JsonNode? shape) in sheet["properties"]!.AsObject())
        {
            JsonObject described = new() { ["description"] = Describe(key) };
            foreach ((string word, JsonNode? value) in key == "parts" ? Parts() : shape!.AsObject())
            {
                described[word] = value?.DeepClone();
            }

            if (key == "format")
            {
                described["minimum"] = 1;
                described["maximum"] = FileFormat.Now;
            }

            properties[key] = described;
        }

        return new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = "urn:lugwork:build-file:1",
            ["title"] = "Lugwork build file",
            ["description"] = TopDescription,
            ["type"] = sheet["type"]!.DeepClone(),
            ["properties"] = properties,
            ["required"] = new JsonArray("parts"),
            ["additionalProperties"] = false,
            ["$defs"] = Definitions(),
        };
    }

    private static string Describe(string key) => key switch
    {
        "$schema" => "Address of this schema, for editors. Never read.",
        "format" => "Number of the format. A file without it has format 1; a larger number is of a newer version.",
        "name" => "The owner's name for the build.",
        "parts" => "The parts by slot; a slot that is null or left out is empty.",
        "smallParts" => "Ids of the small parts that are there, as the list of small parts gives them.",
        "waivers" => "Findings that were accepted: the joint, the reason, and the mark of the parts that writing a build gives. A waiver whose parts have changed, or without the mark, has lapsed.",
        "asBuilt" => "What was measured on the parts and cut: slot and field, measured or cut, what was stated before, a note, and the day as yyyy-mm-dd. The value itself stands with the part. What was read with several parts has their mark, as writing a build gives it; where one of them is another the reading is unknown again, and is kept as old.",
        _ => throw new InvalidOperationException($"the schema has no words for {key}"),
    };

    /// <summary>Every slot; all but the frame's may be empty.</summary>
    private static JsonObject Parts()
    {
        JsonObject slots = [];
        foreach (Slot slot in Slot.All)
        {
            JsonObject shape = new() { ["description"] = $"The {slot.Name}." };
            if (slot == Slot.Frame)
            {
                shape["type"] = "object";
            }

            shape["$ref"] = Reference(Name(PartForms.Of(slot)));
            slots[slot.Key] = shape;
        }

        return new() { ["type"] = "object", ["properties"] = slots, ["required"] = new JsonArray(Slot.Frame.Key), ["additionalProperties"] = false };
    }

    private static JsonObject Definitions()
    {
        JsonObject all = [];
        foreach (IPartForm form in Slot.All.Select(PartForms.Of).Distinct())
        {
            all.Add(Name(form), Part(form));
        }

        JsonObject text = new() { ["type"] = new JsonArray("string", "number") };
        JsonObject length = new() { ["type"] = new JsonArray("string", "number"), ["exclusiveMinimum"] = 0 };
        all.Add(FieldValues.AnyText, Value(TextDescription, ["string", "number", "null", "array"], text.DeepClone(), null));
        all.Add(FieldValues.AnyValue, Value(ValueDescription, ["string", "number", "null", "array"], text, Known<Dimension>.MostValues));
        all.Add(FieldValues.AnyLength, Value(LengthDescription, ["string", "number", "null", "array"], length, Known<Dimension>.MostValues, 0));
        all.Add(FieldValues.AnyMass, Value(MassDescription, ["string", "number", "null", "array"], length.DeepClone(), Known<Load>.MostValues, 0));
        all.Add(FieldValues.AnyAngle, Value(AngleDescription, ["string", "number", "null", "array"], length.DeepClone(), Known<FrameAngle>.MostValues, 0));
        all.Add(FieldValues.OnlyWords, Value(WordsDescription, ["string", "array"], new JsonObject { ["type"] = "string" }, 1));
        return all;
    }

    /// <summary>One kind of part: its fields, and which of them are two names of one thing.</summary>
    private static JsonObject Part(IPartForm form)
    {
        JsonObject fields = new() { ["name"] = new JsonObject { ["description"] = "A name of the owner's own. Never judged.", ["$ref"] = Reference(FieldValues.AnyText) } };
        JsonObject apart = [];
        foreach (IPartField field in form.Fields)
        {
            fields.Add(field.Key, Field(field));
            JsonObject others = [];
            foreach (IPartField other in form.Fields.Where(o => o != field && Said(o).Intersect(Said(field)).Any()))
            {
                others[other.Key] = false;
            }

            if (others.Count > 0)
            {
                apart[field.Key] = new JsonObject { ["properties"] = others };
            }
        }

        JsonObject part = new() { ["type"] = new JsonArray("object", "null"), ["properties"] = fields, ["additionalProperties"] = false };
        if (apart.Count > 0)
        {
            part["dependentSchemas"] = apart;
        }

        return part;
    }

    /// <summary>A closed set offers its keys and leaves room for the spellings that reading takes; an open one gives its usual sizes as examples.</summary>
    private static JsonObject Field(IPartField field)
    {
        FieldValues values = field.Values();
        JsonObject shape = new() { ["description"] = field.Expected };
        JsonArray keys = [.. values.Keys.Select(k => (JsonNode)k)];
        if (values.IsClosed && keys.Count > 0)
        {
            shape["anyOf"] = new JsonArray(new JsonObject { ["enum"] = keys }, new JsonObject { ["$ref"] = Reference(values.Shape) });
            return shape;
        }

        shape["$ref"] = Reference(values.Shape);
        if (keys.Count > 0)
        {
            shape["examples"] = keys;
        }

        return shape;
    }

    private static IEnumerable<string> Said(IPartField field) => (field.Sets.IsEmpty ? [field.Key] : field.Sets).Select(key => field.Rough ? "rough " + key : key);

    private static JsonObject Value(string description, string[] kinds, JsonNode items, int? most, int? above = null)
    {
        JsonObject value = new() { ["description"] = description, ["type"] = new JsonArray([.. kinds.Select(k => (JsonNode)k)]) };
        if (above is { } limit)
        {
            value["exclusiveMinimum"] = limit;
        }

        value["items"] = items;
        value["minItems"] = 1;
        if (most is { } count)
        {
            value["maxItems"] = count;
        }

        return value;
    }

    private static string Name(IPartForm form) => form.Kind.Replace(' ', '-');

    private static string Reference(string name) => $"#/$defs/{name}";

    private static string Write(JsonObject schema)
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter writer = new(bytes, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            schema.WriteTo(writer);
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan) + "\n";
    }
}
