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
        (Slot.FrontBrakeLever, "hoseLength", "a hose or housing"),
        (Slot.RearBrakeLever, "hoseLength", "a hose or housing"),
        (Slot.RearShifter, "housingLength", "a housing"),
        (Slot.FrontShifter, "housingLength", "a housing"),
        (Slot.Dropper, "housingLength", "a housing"),
    ];

    /// <summary>By how much a reading may be over what the part was cut to: saw and rule. Our own bound, no source.</summary>
    private const long Margin = 3 * Nanometres.PerMillimetre;

    /// <summary>The part with the value, and the value; null with the problem where that cannot be.</summary>
    public static (Part Part, AsBuiltValue Value)? Set(Part part, Slot slot, string field, string text, AsBuiltKind kind, string note, DateOnly? on, AsBuiltValue? earlier, out SpecProblem? problem)
    {
        problem = null;
        IPartForm form = PartForms.Of(slot);
        string before = form.TextOf(part, field) ?? "unknown";
        if (kind == AsBuiltKind.Cut && Called(slot, field) is null)
        {
            problem = new(field, 0, $"the {field} of a {slot.Name} is nothing that is cut", "one of " + string.Join(", ", Cuttable.Select(c => $"{c.Field} of the {c.Slot.Name}").Distinct()));
            return null;
        }

        if (!form.TrySet(part, field, text, Evidence.AsValue, out Part changed, out problem))
        {
            return null;
        }

        string value = form.TextOf(changed, field) ?? "unknown";
        if (value == "unknown")
        {
            problem = new(field, 0, "unknown was neither measured nor cut", "what it is now");
            return null;
        }

        AsBuiltCut? cut = earlier is { Kind: AsBuiltKind.Cut } last ? new(last.Value, last.Note, last.On) : earlier?.Cut;
        string was = earlier?.Was ?? before;
        if (kind == AsBuiltKind.Cut)
        {
            problem = Problem(slot, field, value, before);
            if (problem is not null)
            {
                return null;
            }

            // Cut from a measured length that is more than was stated: the measured one was the truth.
            was = Problem(slot, field, value, was) is null ? was : before;
            cut = null;
        }

        AsBuiltValue built = new(slot, field, value, kind, was, note, on) { Cut = cut };
        problem = Check(built) ?? ReadingBounds.Problem(changed, built);
        return problem is null ? (Marked(changed, built), built) : null;
    }

    /// <summary>The part with the evidence of a value that it has.</summary>
    public static Part Marked(Part part, AsBuiltValue value) =>
        PartForms.Of(value.Slot).TrySet(part, value.Field, value.Value, EvidenceOf(value), out Part marked, out _) ? marked : part;

    /// <summary>Whether a part still has the value, and has it from what was measured or cut there.</summary>
    public static bool IsOf(Part part, AsBuiltValue value) =>
        PartForms.Of(value.Slot).TextOf(part, value.Field) == value.Value && PartForms.Of(value.Slot).EvidenceOf(part, value.Field) == EvidenceOf(value);

    /// <summary>What a value says against itself, given now or remembered by a file: a field that is cut has one figure; a cut is no longer than what was there before it; a reading after a cut no longer than the cut and a margin.</summary>
    public static SpecProblem? Check(AsBuiltValue value)
    {
        if (Called(value.Slot, value.Field) is null)
        {
            return value.Cut is null ? Readable(value, value.Was) : new(value.Field, 0, $"the {value.Field} of a {value.Slot.Name} is nothing that is cut", "no cut");
        }

        if (Read(value, value.Value, out SpecProblem? problem) is not { } now)
        {
            return problem;
        }

        if (now.State is not (KnownState.Value or KnownState.Measured))
        {
            return new(value.Field, 0, $"{value.Value} is no length to which a thing is cut or at which it is measured", "one figure, or one with its error");
        }

        if (value.Kind == AsBuiltKind.Cut)
        {
            return value.Cut is not null ? new(value.Field, 0, "a cut is the last cut by itself", "no other cut") : Problem(value.Slot, value.Field, value.Value, value.Was);
        }

        if (value.Cut is not { } cut)
        {
            return Readable(value, value.Was);
        }

        if (Read(value, cut.Value, out problem) is not { } sawn)
        {
            return problem;
        }

        return Problem(value.Slot, value.Field, cut.Value, value.Was)
            ?? (sawn.State is not (KnownState.Value or KnownState.Measured) ? new(value.Field, 0, $"{cut.Value} is no length to which a thing is cut", "one figure, or one with its error")
            : now.Low > sawn.High + Margin ? new(value.Field, 0, $"{Called(value.Slot, value.Field)} is only made shorter: it was cut to {cut.Value}, and {value.Value} is longer by more than 3 mm (our own bound, no source)", $"about {cut.Value}, or another part by With")
            : null);
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

    private static SpecProblem? Problem(Slot slot, string field, string value, string before)
    {
        AsBuiltValue named = new(slot, field, value, AsBuiltKind.Cut, before, "", null);
        return Read(named, value, out SpecProblem? problem) is not { } now || Read(named, before, out problem) is not { } was ? problem
            : IsLonger(now, was) ? new(field, 0, $"{Called(slot, field)} is only made shorter: it was {before}, and {value} is longer", $"at most {before}, or another part by With")
            : null;
    }

    private static SpecProblem? Readable(AsBuiltValue value, string text) => Read(value, text, out SpecProblem? problem) is null ? problem : null;

    private static Candidates? Read(AsBuiltValue value, string text, out SpecProblem? problem)
    {
        IPartForm form = PartForms.Of(value.Slot);
        return form.TrySet(form.Empty, value.Field, text, Evidence.AsValue, out Part part, out problem) ? form.CodesOf(part, value.Field) : null;
    }

    private static Evidence EvidenceOf(AsBuiltValue value) => new(EvidenceKind.Measured, Words(value.Value, value.Kind, value.Note, value.On)) { IsAsBuilt = true };

    /// <summary>All that it can be now is more than all that it could be before.</summary>
    private static bool IsLonger(Candidates now, Candidates before) => IsFigure(now.State) && IsFigure(before.State) && now.Low > before.High;

    private static bool IsFigure(KnownState state) => state is KnownState.Value or KnownState.OneOf or KnownState.Measured;

    private static string Words(string text, AsBuiltKind kind, string note, DateOnly? on) =>
        $"{(kind == AsBuiltKind.Cut ? "cut to " : "")}{text}{(on is { } day ? $" on {AsBuiltValue.Day(day)}" : "")}{(note.Length > 0 ? $", {note}" : "")}";
}
