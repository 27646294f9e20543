using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Lugwork;

/// <summary>A build as a JSON file: parts by slot, interface values as canonical text.</summary>
/// <remarks>
/// A file carries the number of its format, 1; one without is read as 1, and a larger number is refused as written by a newer version. New
/// slots and new fields may come in a minor version of the library under the same number: an older one says which it does not know.
/// </remarks>
public static class BuildFile
{
    /// <summary>Largest file, bytes of UTF-8; a byte-order mark does not count.</summary>
    public static int MostBytes => 1_000_000;

    /// <summary>How many objects and lists may stand in one another, wherever they stand.</summary>
    public static int MostDepth => DepthLimit;

    // For patterns and attributes, which take constants alone; a public one would be copied into callers.
    internal const int DepthLimit = 32;

    /// <summary>The JSON Schema (draft 2020-12) of a build file, as text that ends with a line feed; the package holds the same as schema/build-file.schema.json. Made when it is first asked for.</summary>
    /// <remarks>
    /// What it refuses, reading refuses. Reading refuses more: text of a value that is not understood, contradictions, repeated properties, files too large or too deep.
    /// Reading also takes comments and trailing commas, of which a schema cannot speak.
    /// </remarks>
    public static string Schema => BuildSchema.Text;

    /// <summary>Reads a build.</summary>
    /// <param name="json">The text of the file; a byte-order mark is accepted.</param>
    /// <exception cref="SpecException">With all problems at once, each with its JSON path.</exception>
    public static Build Read(string json) => TryRead(json, out Build? build, out ImmutableArray<SpecProblem> problems) ? build : throw new SpecException(problems);

    /// <summary>Reads a build; problems as data.</summary>
    /// <param name="json">The text of the file; a byte-order mark is accepted.</param>
    /// <param name="build">The build; null where there is a problem.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out Build? build, out ImmutableArray<SpecProblem> problems)
    {
        ArgumentNullException.ThrowIfNull(json);
        build = null;
        ReadOnlySpan<char> text = json.AsSpan().TrimStart('\uFEFF');

        // No character takes less than a byte, so that nothing far too large is walked or copied.
        if (text.Length > MostBytes || Encoding.UTF8.GetByteCount(text) > MostBytes)
        {
            problems = [new("$", 0, "the file is too large", "at most 1,000,000 bytes")];
            return false;
        }

        byte[] utf8 = new byte[Encoding.UTF8.GetByteCount(text)];
        Encoding.UTF8.GetBytes(text, utf8);

        BuildSheet? sheet;
        try
        {
            sheet = JsonSerializer.Deserialize(utf8, BuildJson.Default.BuildSheet);
        }
        catch (JsonException e)
        {
            if (FileFormat.NewerThanThis(utf8) is { } newer)
            {
                problems = [newer];
                return false;
            }

            bool repeated = e.Message.StartsWith("Duplicate propert", StringComparison.Ordinal);
            string reason = repeated ? "this property stands twice, or one inside it does" : Plain(e);
            problems = [new(e.Path ?? "$", (int)(e.BytePositionInLine ?? 0), $"line {(e.LineNumber ?? 0) + 1}: {reason}", repeated ? "each property once" : "a build file: an object with name and parts")];
            return false;
        }

        if (FileFormat.Problem(sheet?.Format) is { } format)
        {
            problems = [format];
            return false;
        }

        List<SpecProblem> found = [];
        build = sheet is null ? null : Assemble(sheet, found);
        if (sheet is null)
        {
            found.Add(new("$", 0, "the file holds null", "an object with parts"));
        }

        problems = [.. found];
        build = problems.IsEmpty ? build : null;
        return build is not null;
    }

    /// <summary>Writes a build; reads back to the same parts. A small part that has lapsed is not written: the file says what is there for the parts beside it.</summary>
    /// <param name="build">The build.</param>
    /// <param name="schema">Address of the schema for editors, a path or a URI, written first as "$schema"; null leaves it out. Reading skips it.</param>
    public static string Write(Build build, string? schema = null)
    {
        ArgumentNullException.ThrowIfNull(build);
        BuildSheet sheet = new() { Schema = schema, Format = FileFormat.Now, Name = build.Name.Length == 0 ? null : build.Name, Parts = [] };
        foreach (Slot slot in Slot.All)
        {
            if (build[slot] is { } part)
            {
                sheet.Parts[slot.Key] = PartForms.Of(slot).Write(part).ToDictionary(p => p.Key, p => JsonSerializer.SerializeToElement(p.Value, BuildJson.Default.String));
            }
        }

        sheet.SmallParts = build.SmallPartsThatHold() is { IsEmpty: false } there ? [.. there] : null;
        sheet.Waivers = build.Waivers is { IsEmpty: false } waivers ? [.. waivers.Select(w => new WaiverSheet { Joint = w.JointId, Reason = w.Reason, Parts = w.Parts })] : null;
        AsBuiltSheet[] built = [.. build.AsBuilt.Select(v => AsBuiltSheet.Of(v, build)), .. build.OldReadings.Select(AsBuiltSheet.OfOld)];
        sheet.AsBuilt = built.Length > 0 ? built : null;
        return JsonSerializer.Serialize(sheet, BuildJson.Default.BuildSheet);
    }

    private static Build? Assemble(BuildSheet sheet, List<SpecProblem> found)
    {
        foreach (string key in sheet.Others?.Keys ?? Enumerable.Empty<string>())
        {
            found.Add(new($"$.{key}", 0, "a build file has no such property", "format, name, parts, smallParts, waivers, asBuilt or $schema"));
        }

        Dictionary<Slot, Part> parts = [];
        string slots = "one of " + string.Join(", ", Slot.All.Select(s => s.Key));
        foreach ((string key, Dictionary<string, JsonElement>? properties) in sheet.Parts ?? [])
        {
            string path = $"$.parts.{key}";
            if (Slot.Find(key) is not { } slot || slot.Key != key)
            {
                found.Add(new(path, 0, "there is no such slot", slots));
                continue;
            }

            // A slot that says null is an empty slot, not a part of which nothing is known.
            if (properties is null)
            {
                continue;
            }

            List<KeyValuePair<string, string>> texts = [];
            foreach ((string field, JsonElement value) in properties)
            {
                if (field == "name" && value.ValueKind == JsonValueKind.Null)
                {
                    continue;
                }

                if (Text(value) is { } text)
                {
                    texts.Add(new(field, text));
                }
                else
                {
                    found.Add(new($"{path}.{field}", 0, $"a {value.ValueKind} is no value", "text, a number, null, or an array of texts"));
                }
            }

            parts[slot] = PartForms.Of(slot).ReadProperties(texts, path, found);
        }

        if (!parts.TryGetValue(Slot.Frame, out Part? frame))
        {
            found.Add(new("$.parts.frame", 0, "there is no frame", "a frame: a build starts from one"));
            return null;
        }

        Build build = Build.From((Frame)frame, sheet.Name ?? "");
        foreach ((Slot slot, Part part) in parts.Where(p => p.Key != Slot.Frame))
        {
            build = build.With(part, slot);
        }

        return Noted(build, sheet, found);
    }

    /// <summary>The small parts, the waivers, and what was measured and cut.</summary>
    private static Build Noted(Build build, BuildSheet sheet, List<SpecProblem> found)
    {
        HashSet<string> there = [];
        foreach ((string id, int at) in (sheet.SmallParts ?? []).Select((id, at) => (id, at)))
        {
            if (id is not null && SmallPartTable.IsId(id))
            {
                there.Add(id);
            }
            else
            {
                found.Add(new($"$.smallParts[{at}]", 0, "there is no such small part", "an id that the list of small parts of a build gives"));
            }
        }

        foreach ((WaiverSheet waiver, int at) in (sheet.Waivers ?? []).Select((waiver, at) => (waiver, at)))
        {
            if (waiver?.Joint is not { } joint || Waiver.JointOf(joint) is null)
            {
                found.Add(new($"$.waivers[{at}].joint", 0, "there is no such joint", "the id of a joint or check"));
            }
            else if (waiver.Reason is not { } reason || reason.Trim().Length is 0 or > Waiver.ReasonLimit)
            {
                found.Add(new($"$.waivers[{at}].reason", 0, "a waiver says why", $"1 to {Waiver.MostReason} characters"));
            }
            else if (build.Waivers.Any(w => w.JointId == joint))
            {
                found.Add(new($"$.waivers[{at}].joint", 0, "it is waived twice", "each joint once"));
            }
            else
            {
                // Without the mark of the parts, or with another, it has lapsed: nobody knows what was accepted.
                build = build.Waived(new(joint, reason.Trim(), waiver.Parts ?? ""));
            }
        }

        return AsBuiltSheet.Read(build, sheet.AsBuilt ?? [], found).WithStatedReadings().WithSmallParts(there);
    }

    private static string? Text(JsonElement value)
    {
        try
        {
            return TextOf(value);
        }
        catch (InvalidOperationException)
        {
            // An escape that is half of a character.
            return null;
        }
    }

    private static string? TextOf(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => value.GetString(),
        JsonValueKind.Number => value.GetRawText(),
        JsonValueKind.Null => "unknown",
        JsonValueKind.Array when value.GetArrayLength() > 0 && value.EnumerateArray().All(v => v.ValueKind is JsonValueKind.String or JsonValueKind.Number) =>
            string.Join(" | ", value.EnumerateArray().Select(v => v.ValueKind == JsonValueKind.String ? v.GetString() : v.GetRawText())),
        _ => null,
    };

    private static string Plain(JsonException e)
    {
        int cut = e.Message.IndexOf(" Path:", StringComparison.Ordinal);
        return cut < 0 ? e.Message : e.Message[..cut];
    }
}

/// <summary>The shape of a build file.</summary>
internal sealed class BuildSheet
{
    [JsonPropertyName("$schema")]
    public string? Schema { get; set; }

    public int? Format { get; set; }

    public string? Name { get; set; }

    public Dictionary<string, Dictionary<string, JsonElement>>? Parts { get; set; }

    public string[]? SmallParts { get; set; }

    public WaiverSheet[]? Waivers { get; set; }

    public AsBuiltSheet[]? AsBuilt { get; set; }

    [JsonExtensionData]
    public Dictionary<string, JsonElement>? Others { get; set; }
}

/// <summary>The shape of a waiver in a build file.</summary>
internal sealed class WaiverSheet
{
    public string? Joint { get; set; }

    public string? Reason { get; set; }

    public string? Parts { get; set; }
}

[JsonSourceGenerationOptions(
    WriteIndented = true,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    AllowDuplicateProperties = false,
    MaxDepth = BuildFile.DepthLimit,
    ReadCommentHandling = JsonCommentHandling.Skip,
    AllowTrailingCommas = true)]
[JsonSerializable(typeof(BuildSheet))]
[JsonSerializable(typeof(ReportSheet))]
[JsonSerializable(typeof(string))]
internal sealed partial class BuildJson : JsonSerializerContext;
