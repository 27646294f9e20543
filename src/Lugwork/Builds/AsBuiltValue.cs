namespace Lugwork;

/// <summary>How a value of a part came to be what it is on the bicycle.</summary>
public enum AsBuiltKind
{
    /// <summary>Measured on the part.</summary>
    Measured = 0,

    /// <summary>Cut, or taken off, to this length.</summary>
    Cut,
}

/// <summary>A value that was measured on a part of a build, or to which the part was cut: from here on it is the truth, and what was stated before is only remembered.</summary>
public sealed record AsBuiltValue
{
    internal AsBuiltValue(Slot slot, string field, string value, AsBuiltKind kind, string was, string note, DateOnly? on)
    {
        Slot = slot;
        Field = field;
        Value = value;
        Kind = kind;
        Was = was;
        Note = note;
        On = on;
    }

    /// <summary>Where the part is.</summary>
    public Slot Slot { get; internal init; }

    /// <summary>Field of the part in a build file: "steererLength".</summary>
    public string Field { get; internal init; }

    /// <summary>What it is, as a build file writes it: millimetres for a length, pitches for a chain.</summary>
    public string Value { get; internal init; }

    /// <summary>Measured or cut.</summary>
    public AsBuiltKind Kind { get; internal init; }

    /// <summary>What was stated before the first of these values; "unknown" where nothing was. Where it was cut from a measured length that is more than was stated, that length.</summary>
    public string Was { get; internal init; }

    /// <summary>A note of the owner's own, at most 500 characters; may be empty.</summary>
    public string Note { get; internal init; }

    /// <summary>The day; null where none was given.</summary>
    public DateOnly? On { get; internal init; }

    /// <summary>Longest note, characters.</summary>
    public static int MostNote => NoteLimit;

    // For patterns and attributes, which take constants alone; a public one would be copied into callers.
    internal const int NoteLimit = 500;

    /// <summary>The last cut, where the part was measured again after it; null where this is the cut, or where nothing was cut.</summary>
    public AsBuiltCut? Cut { get; internal init; }

    /// <summary>What the field is called: "steerer length".</summary>
    public string Called => JointTable.All.SelectMany(j => j.Inputs).FirstOrDefault(i => i.Slot == Slot && i.Field == Field)?.Called ?? InWords(Field);

    /// <summary>"fork, steerer length: 182, cut, was 300 (2026-05-01): note".</summary>
    public override string ToString() =>
        $"{Slot.Name}, {Called}: {Value}, {(Kind == AsBuiltKind.Cut ? "cut" : "measured")}, was {Was}{(Cut is { } cut ? $", cut to {cut.Value}" : "")}{(On is { } day ? $" ({Day(day)})" : "")}{(Note.Length > 0 ? $": {Note}" : "")}";

    private static string InWords(string key) => string.Concat(key.Select(c => char.IsAsciiLetterUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{c}"));

    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>A cut that was made before a part was measured again.</summary>
public sealed record AsBuiltCut
{
    internal AsBuiltCut(string value, string note, DateOnly? on)
    {
        Value = value;
        Note = note;
        On = on;
    }

    /// <summary>To what it was cut, as a build file writes it.</summary>
    public string Value { get; internal init; }

    /// <summary>The note of the cut; may be empty.</summary>
    public string Note { get; internal init; }

    /// <summary>The day; null where none was given.</summary>
    public DateOnly? On { get; internal init; }
}
