using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What may be measured and cut on a part, and what the part is then.</summary>
internal static class AsBuiltRules
{
    /// <summary>What is only ever made shorter: a saw puts nothing back, and a part with another length is another part.</summary>
    private static readonly ImmutableArray<(Slot Slot, string Field, string Called)> Cuttable =
    [
        (Slot.Fork, "steererLength", "a steerer"),
        (Slot.Seatpost, "length", "a post"),
        (Slot.Handlebar, "width", "a bar"),
        (Slot.Chain, "pitches", "a chain"),
        (Slot.FrontLever, "hoseLength", "a hose or housing"),
        (Slot.RearLever, "hoseLength", "a hose or housing"),
        (Slot.Shifter, "housingLength", "a housing"),
        (Slot.FrontShifter, "housingLength", "a housing"),
    ];

    /// <summary>The part with the value, and the value; null with the problem where that cannot be.</summary>
    public static (Part Part, AsBuiltValue Value)? Set(Part part, Slot slot, string field, string text, AsBuiltKind kind, string note, DateOnly? on, AsBuiltValue? earlier, out SpecProblem? problem)
    {
        problem = null;
        IPartForm form = PartForms.Of(slot);
        string before = form.TextOf(part, field) ?? "unknown";
        string? called = Called(slot, field);
        if (kind == AsBuiltKind.Cut && called is null)
        {
            problem = new(field, 0, $"the {field} of a {slot.Name} is nothing that is cut", "one of " + string.Join(", ", Cuttable.Select(c => $"{c.Field} of the {c.Slot.Name}").Distinct()));
            return null;
        }

        if (!form.TrySet(part, field, text, new Evidence(EvidenceKind.Measured, Words(text, kind, note, on)), out Part changed, out problem))
        {
            return null;
        }

        string value = form.TextOf(changed, field) ?? "unknown";
        if (value == "unknown")
        {
            problem = new(field, 0, "unknown was neither measured nor cut", "what it is now");
            return null;
        }

        if (called is not null && IsLonger(form.CodesOf(changed, field), form.CodesOf(part, field)))
        {
            problem = new(field, 0, $"{called} is only made shorter: it was {before}, and {value} is longer", $"at most {before}, or another part by With");
            return null;
        }

        return (changed, new(slot, field, value, kind, earlier?.Was ?? before, note, on));
    }

    /// <summary>The part with the evidence of a value that it has.</summary>
    public static Part Marked(Part part, AsBuiltValue value) =>
        PartForms.Of(value.Slot).TrySet(part, value.Field, value.Value, new Evidence(EvidenceKind.Measured, Words(value.Value, value.Kind, value.Note, value.On)), out Part marked, out _) ? marked : part;

    /// <summary>Of a value that a file remembers: what it was must not have been shorter.</summary>
    public static SpecProblem? Shorter(AsBuiltValue value)
    {
        IPartForm form = PartForms.Of(value.Slot);
        if (!form.TrySet(form.Empty, value.Field, value.Value, Evidence.AsValue, out Part now, out SpecProblem? problem) || !form.TrySet(form.Empty, value.Field, value.Was, Evidence.AsValue, out Part was, out problem))
        {
            return problem;
        }

        return Called(value.Slot, value.Field) is { } called && IsLonger(form.CodesOf(now, value.Field), form.CodesOf(was, value.Field))
            ? new(value.Field, 0, $"{called} is only made shorter: it was {value.Was}, and {value.Value} is longer", "what was stated before it was cut")
            : null;
    }

    public static bool IsCuttable(Slot slot, string field) => Called(slot, field) is not null;

    private static string? Called(Slot slot, string field)
    {
        foreach ((Slot place, string key, string called) in Cuttable)
        {
            if (place == slot && key == field)
            {
                return called;
            }
        }

        return null;
    }

    /// <summary>All that it can be now is more than all that it could be before.</summary>
    private static bool IsLonger(Candidates now, Candidates before) => IsFigure(now.State) && IsFigure(before.State) && now.Low > before.High;

    private static bool IsFigure(KnownState state) => state is KnownState.Value or KnownState.OneOf or KnownState.Measured;

    private static string Words(string text, AsBuiltKind kind, string note, DateOnly? on) =>
        $"{(kind == AsBuiltKind.Cut ? "cut to " : "")}{text}{(on is { } day ? $" on {AsBuiltValue.Day(day)}" : "")}{(note.Length > 0 ? $", {note}" : "")}";
}
