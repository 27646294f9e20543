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

    public AsBuiltCutSheet? Cut { get; set; }

    /// <summary>The mark of the parts with which it was read, where it is of several.</summary>
    public string? Parts { get; set; }

    /// <summary>It was read with other parts than are there now: the part does not say it.</summary>
    public bool? Old { get; set; }

    public static AsBuiltSheet Of(AsBuiltValue value) => new()
    {
        Slot = value.Slot.Key,
        Field = value.Field,
        Kind = value.Kind == AsBuiltKind.Cut ? ByCutting : ByMeasuring,
        Was = value.Was,
        Note = value.Note.Length == 0 ? null : value.Note,
        On = value.On is { } day ? AsBuiltValue.Day(day) : null,
        Cut = value.Cut is { } cut ? new() { Value = cut.Value, Note = cut.Note.Length == 0 ? null : cut.Note, On = cut.On is { } then ? AsBuiltValue.Day(then) : null } : null,
    };

    /// <summary>The same with the mark of the parts.</summary>
    public static AsBuiltSheet Of(AsBuiltValue value, Build build)
    {
        AsBuiltSheet sheet = Of(value);
        sheet.Parts = build.MarkOf(value);
        return sheet;
    }

    /// <summary>A reading that is old, with its value, which stands nowhere else.</summary>
    public static AsBuiltSheet OfOld(AsBuiltValue value)
    {
        AsBuiltSheet sheet = WithValue(value);
        sheet.Old = true;
        return sheet;
    }

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
                build = sheets[at].Old == true ? build.WithOld(value) : build.Remembering(value, sheets[at].Parts);
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
        DateOnly sawn = default;
        problem =
            sheet?.Slot is not { } key || Lugwork.Slot.Find(key) is not { } slot || slot.Key != key || build[slot] is not { } part ? new($"{path}.slot", 0, "there is no such part in this file", "the slot of a part")
            : sheet.Field is not { } field || PartForms.Of(slot).TextOf(part, field) is not { } text ? new($"{path}.field", 0, "the part has no such field of its own", "a field of the part")
            : sheet.Old == true && TakenWith.SlotsOf(slot, field).IsEmpty ? new($"{path}.old", 0, "it is of its part alone, so that no other part makes it old", "a reading of several parts")
            : sheet.Old == true && text != "unknown" ? new($"{path}.old", 0, $"the part says {text}", "a part that does not say it")
            : sheet.Old == true && sheet.Value is null ? new($"{path}.value", 0, "an old reading says what was read", "the value")
            : text == "unknown" && sheet.Old != true ? new($"{path}.field", 0, "the part does not say what was measured or cut", "the value, with the part")
            : sheet.Kind is not (ByMeasuring or ByCutting) || (sheet.Kind == ByCutting && !AsBuiltRules.IsCuttable(slot, field)) ? new($"{path}.kind", 0, "this is not how it came to be", "measured, or cut for what is cut")
            : sheet.Old != true && sheet.Value is not null && sheet.Value != text ? new($"{path}.value", 0, $"the part says {text}", "the same, or no value")
            : sheet.Note is { Length: > AsBuiltValue.NoteLimit } ? new($"{path}.note", 0, "the note is too long", $"at most {AsBuiltValue.MostNote} characters")
            : sheet.On is not null && !DateOnly.TryParseExact(sheet.On, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day) ? new($"{path}.on", 0, "this is no day", "such as 2026-05-01")
            : sheet.Cut is { Value: null } ? new($"{path}.cut.value", 0, "a cut has a length", "the length to which it was cut")
            : sheet.Cut is { Note.Length: > AsBuiltValue.NoteLimit } ? new($"{path}.cut.note", 0, "the note is too long", $"at most {AsBuiltValue.MostNote} characters")
            : sheet.Cut is { On: { } then } && !DateOnly.TryParseExact(then, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out sawn) ? new($"{path}.cut.on", 0, "this is no day", "such as 2026-05-01")
            : build.AsBuilt.Concat(build.OldReadings).Any(v => v.Slot == slot && v.Field == field) ? new($"{path}.field", 0, "it stands twice", "each field once")
            : null;
        if (problem is not null)
        {
            return null;
        }

        Slot place = Lugwork.Slot.Find(sheet!.Slot!)!;
        string value = sheet.Old == true ? sheet.Value! : PartForms.Of(place).TextOf(build[place]!, sheet.Field!)!;
        AsBuiltValue read = new(place, sheet.Field!, value, sheet.Kind == ByCutting ? AsBuiltKind.Cut : AsBuiltKind.Measured, sheet.Was ?? "unknown", sheet.Note ?? "", sheet.On is null ? null : day)
        {
            Cut = sheet.Cut is { } cut ? new(cut.Value!, cut.Note ?? "", cut.On is null ? null : sawn) : null,
        };
        problem = AsBuiltRules.Check(read) is { } wrong ? new($"{path}.was", wrong.Position, wrong.Reason, wrong.Expected)
            : sheet.Old != true && ReadingBounds.Problem(build[place]!, read) is { } never ? new($"{path}.value", never.Position, never.Reason, never.Expected)
            : null;
        return problem is null ? read : null;
    }
}

/// <summary>The last cut before a part was measured again.</summary>
internal sealed class AsBuiltCutSheet
{
    public string? Value { get; set; }

    public string? Note { get; set; }

    public string? On { get; set; }
}
