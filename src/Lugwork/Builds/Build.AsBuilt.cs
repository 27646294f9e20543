using System.Collections.Immutable;

namespace Lugwork;

public sealed partial class Build
{
    /// <summary>What was measured on the parts and cut, in the order of slots and fields. A value goes when its part leaves, or when another part takes its place, with the same figure too. What was read with several parts goes when one of them is another: see <see cref="OldReadings"/>.</summary>
    public ImmutableArray<AsBuiltValue> AsBuilt => _notes.AsBuilt;

    /// <summary>The same with a value as it was measured on a part: the part has it from here on, and what was stated before is remembered.</summary>
    /// <param name="slot">Where the part is.</param>
    /// <param name="field">Field of the part in a build file, such as "steererLength" or "innerWidth".</param>
    /// <param name="value">Text as in a build file: "182", "182 ± 0.5", "ZS44".</param>
    /// <param name="note">A note, at most 500 characters.</param>
    /// <param name="on">The day it was measured.</param>
    /// <exception cref="ArgumentException">The slot is empty, or the note is too long.</exception>
    /// <exception cref="SpecException">No such field, the text is not understood, a length that is cut is not one figure, or a part that was cut would be longer by more than 3 mm than it was cut to.</exception>
    public Build WithMeasured(Slot slot, string field, string value, string note = "", DateOnly? on = null) => Built(slot, field, value, AsBuiltKind.Measured, note, on);

    /// <summary>The same with a part that was cut, or from which links were taken. Cutting only shortens.</summary>
    /// <param name="slot">Where the part is.</param>
    /// <param name="field">"steererLength" of the fork, "length" of the seatpost, "width" of the handlebar, "pitches" of the chain, "hoseLength" of a brake lever or "housingLength" of a shifter.</param>
    /// <param name="value">Text as in a build file: millimetres, or pitches of a chain.</param>
    /// <param name="note">A note, at most 500 characters.</param>
    /// <param name="on">The day it was cut.</param>
    /// <exception cref="ArgumentException">The slot is empty, or the note is too long.</exception>
    /// <exception cref="SpecException">The field is none that is cut, the text is not understood or not one figure, or it would become longer than it was.</exception>
    public Build WithCut(Slot slot, string field, string value, string note = "", DateOnly? on = null) => Built(slot, field, value, AsBuiltKind.Cut, note, on);

    /// <summary>The same with a value as a file remembers it: the part has it already, and is told now how it came to it.</summary>
    /// <param name="value">The value.</param>
    /// <param name="parts">Mark of the parts with which it was read; null for those that are there.</param>
    internal Build Remembering(AsBuiltValue value, string? parts = null)
    {
        Build build = Placed(AsBuiltRules.Marked(this[value.Slot]!, value), value.Slot, _notes.With(value));
        if (TakenWith.SlotsOf(value.Slot, value.Field).IsEmpty)
        {
            return build;
        }

        TakenReading taken = build.Taken(value.Slot, value.Field);
        return build.Noting(build._notes.With(parts is null ? taken : taken with { Parts = parts })).Held(value.Slot);
    }

    private Build Built(Slot slot, string field, string value, AsBuiltKind kind, string note, DateOnly? on)
    {
        ArgumentNullException.ThrowIfNull(slot);
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(value);
        ArgumentNullException.ThrowIfNull(note);
        if (this[slot] is null)
        {
            throw new ArgumentException($"there is no {slot.Name} to be measured or cut", nameof(slot));
        }

        string said = note.Trim();
        if (said.Length > AsBuiltValue.MostNote)
        {
            throw new ArgumentException($"a note has at most {AsBuiltValue.MostNote} characters", nameof(note));
        }

        return TryBuilt(slot, field, value, kind, said, on, out Build built, out SpecProblem? problem) ? built : throw new SpecException([problem!]);
    }

    /// <summary>The same with a value, of a slot that is filled; false with the problem, and the build as it is, where that cannot be.</summary>
    internal bool TryBuilt(Slot slot, string field, string value, AsBuiltKind kind, string note, DateOnly? on, out Build built, out SpecProblem? problem)
    {
        AsBuiltValue? earlier = _notes.AsBuilt.FirstOrDefault(v => v.Slot == slot && v.Field == field);
        (Part Part, AsBuiltValue Value)? set = AsBuiltRules.Set(this[slot]!, slot, field, value, kind, note, on, earlier, out problem);
        built = this;
        if (set is not { } done)
        {
            return false;
        }

        // The part is the same one. Where nothing was known before, more is known now, and what was read with it holds.
        bool isNews = PartForms.Of(slot).TextOf(this[slot]!, field) == "unknown";
        Build changed = Placed(done.Part, slot, _notes.With(done.Value));
        changed = isNews ? changed.KnownCloser(slot) : changed.Held(slot);
        bool isOfItsPart = TakenWith.SlotsOf(slot, field).IsEmpty;
        problem = isOfItsPart ? ReadingBounds.ProblemOf(changed, slot, field) : ReadingBounds.Problem(changed, slot, field);
        built = problem is not null ? this : isOfItsPart ? changed : changed.Noting(changed._notes.With(changed.Taken(slot, field)));
        return problem is null;
    }

    private Build Put(Part? part, Slot slot, BuildNotes notes) => Placed(part, slot, notes).Held(slot);

    private Build Placed(Part? part, Slot slot, BuildNotes notes)
    {
        Part?[] parts = (Part?[])_parts.Clone();
        parts[slot.Number] = part;
        return new(parts, Name, (sbyte[])_cells.Clone(), slot, notes);
    }
}
