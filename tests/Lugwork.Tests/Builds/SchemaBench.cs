using System.Text.Json;
using Json.Schema;

namespace Lugwork.Tests.Builds;

/// <summary>The schema of a build file on the bench, beside the reader.</summary>
internal static class SchemaBench
{
    private static readonly JsonDocumentOptions AsRead = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    public static JsonSchema Schema { get; } = JsonSchema.FromText(BuildFile.Schema);

    public static string Root { get; } = FindRoot();

    public static string File { get; } = Path.Combine(Root, "src", "Lugwork", "build-file.schema.json");

    public static string Samples { get; } = Path.Combine(Root, "samples", "FrameUp", "builds");

    public static bool Takes(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json, AsRead);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    public static bool Reads(string json) => BuildFile.TryRead(json, out _, out _);

    /// <summary>A file with one part in one slot, and a bare frame beside it.</summary>
    public static string With(Slot slot, string part) =>
        slot == Slot.Frame ? $$"""{ "parts": { "frame": {{part}} } }""" : $$"""{ "parts": { "frame": {}, "{{slot.Key}}": {{part}} } }""";

    public static string With(Slot slot, string field, string value) => With(slot, $$"""{ "{{field}}": {{value}} }""");

    /// <summary>Every field of every slot.</summary>
    public static IEnumerable<(Slot Slot, IPartField Field)> Fields => Slot.All.SelectMany(s => PartForms.Of(s).Fields.Select(f => (s, f)));

    private static string FindRoot()
    {
        string? at = AppContext.BaseDirectory;
        while (at is not null && !System.IO.File.Exists(Path.Combine(at, "Lugwork.slnx")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at ?? throw new DirectoryNotFoundException("Lugwork.slnx is in no folder above the tests");
    }
}
