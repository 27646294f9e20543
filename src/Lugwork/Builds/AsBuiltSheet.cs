using System.Globalization;

namespace Lugwork;

/// <summary>The shape of a measured or cut value in a build file and in a report. In a file the value stands with the part, in a report beside it too.</summary>
internal sealed class AsBuiltSheet
{
    private const string ByMeasuring = "measured";
    private const string ByCutting = "cut";

    public string? Slot { get; set; }

    public string? Field { get; set; }

    public string? Value { get; set; }

    public string? Kind { get; set; }

    public string? Was { get; set; }

    public string? Note { get; set; }

    public string? On { get; set; }

    public static AsBuiltSheet Of(AsBuiltValue value) => new()
    {
        Slot = value.Slot.Key,
        Field = value.Field,
        Kind = value.Kind == AsBuiltKind.Cut ? ByCutting : ByMeasuring,
        Was = value.Was,
        Note = value.Note.Length == 0 ? null : value.Note,
        On = value.On is { } day ? AsBuiltValue.Day(day) : null,
    };

    public static AsBuiltSheet WithValue(AsBuiltValue value)
    {
        AsBuiltSheet sheet = Of(value);
        sheet.Value = value.Value;
        return sheet;
    }

    /// <summary>A build with what its file remembers.</summary>
    public static Build Read(Build build, AsBuiltSheet[] sheets, List<SpecProblem> found)
    {
        for (int at = 0; at < sheets.Length; at++)
        {
            string path = $"$.asBuilt[{at}]";
            if (ReadOne(build, sheets[at], path, out SpecProblem? problem) is { } value)
            {
                build = build.Remembering(value);
            }
            else
            {
                found.Add(problem!);
            }
        }

        return build;
    }

    private static AsBuiltValue? ReadOne(Build build, AsBuiltSheet? sheet, string path, out SpecProblem? problem)
    {
        DateOnly day = default;
        problem =
            sheet?.Slot is not { } key || Lugwork.Slot.Find(key) is not { } slot || slot.Key != key || build[slot] is not { } part ? new($"{path}.slot", 0, "there is no such part in this file", "the slot of a part")
            : sheet.Field is not { } field || PartForms.Of(slot).TextOf(part, field) is not { } text ? new($"{path}.field", 0, "the part has no such field of its own", "a field of the part")
            : text == "unknown" ? new($"{path}.field", 0, "the part does not say what was measured or cut", "the value, with the part")
            : sheet.Kind is not (ByMeasuring or ByCutting) || (sheet.Kind == ByCutting && !AsBuiltRules.IsCuttable(slot, field)) ? new($"{path}.kind", 0, "this is not how it came to be", "measured, or cut for what is cut")
            : sheet.Value is not null && sheet.Value != text ? new($"{path}.value", 0, $"the part says {text}", "the same, or no value")
            : sheet.Note is { Length: > AsBuiltValue.MostNote } ? new($"{path}.note", 0, "the note is too long", $"at most {AsBuiltValue.MostNote} characters")
            : sheet.On is not null && !DateOnly.TryParseExact(sheet.On, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day) ? new($"{path}.on", 0, "this is no day", "such as 2026-05-01")
            : build.AsBuilt.Any(v => v.Slot == slot && v.Field == field) ? new($"{path}.field", 0, "it stands twice", "each field once")
            : null;
        if (problem is not null)
        {
            return null;
        }

        Slot place = Lugwork.Slot.Find(sheet!.Slot!)!;
        string value = PartForms.Of(place).TextOf(build[place]!, sheet.Field!)!;
        AsBuiltValue read = new(place, sheet.Field!, value, sheet.Kind == ByCutting ? AsBuiltKind.Cut : AsBuiltKind.Measured, sheet.Was ?? "unknown", sheet.Note ?? "", sheet.On is null ? null : day);
        problem = AsBuiltRules.Shorter(read) is { } wrong ? new($"{path}.was", wrong.Position, wrong.Reason, wrong.Expected) : null;
        return problem is null ? read : null;
    }
}
