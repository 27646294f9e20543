using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What a build carries beside its parts: the small parts that are there, each with what was asked for when it was said, findings that were accepted, and what was measured and cut.</summary>
internal sealed record BuildNotes(ImmutableSortedDictionary<string, string> SmallParts, ImmutableArray<Waiver> Waivers, ImmutableArray<AsBuiltValue> AsBuilt)
{
    public static BuildNotes None { get; } = new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal), [], []);

    /// <summary>Readings that hold for the parts they were taken with, each with its mark.</summary>
    public ImmutableArray<TakenReading> Taken { get; init; } = [];

    /// <summary>Readings that were taken with other parts than are there now.</summary>
    public ImmutableArray<AsBuiltValue> Old { get; init; } = [];

    /// <summary>The same with a value as built, in place of an earlier one of the same field.</summary>
    public BuildNotes With(AsBuiltValue value) => Without(value.Slot, value.Field) with { AsBuilt = Sorted(AsBuilt, value) };

    /// <summary>The same with a reading and its mark.</summary>
    public BuildNotes With(TakenReading taken) => this with { Taken = [.. Taken.Where(t => t.Slot != taken.Slot || t.Field != taken.Field), taken] };

    /// <summary>The same with a reading that is old.</summary>
    public BuildNotes WithOld(AsBuiltValue value) => this with { Old = Sorted(Old, value) };

    /// <summary>The same with nothing remembered of a field.</summary>
    public BuildNotes Without(Slot slot, string field) => this with
    {
        AsBuilt = AsBuilt.RemoveAll(v => v.Slot == slot && v.Field == field),
        Taken = Taken.RemoveAll(t => t.Slot == slot && t.Field == field),
        Old = Old.RemoveAll(v => v.Slot == slot && v.Field == field),
    };

    /// <summary>The same where a reading was taken with other parts.</summary>
    public BuildNotes Lapse(TakenReading taken) => Without(taken.Slot, taken.Field).WithOld(
        AsBuilt.FirstOrDefault(v => v.Slot == taken.Slot && v.Field == taken.Field) ?? new(taken.Slot, taken.Field, taken.Value, AsBuiltKind.Measured, "unknown", "", null));

    public TakenReading? TakenOf(Slot slot, string field)
    {
        foreach (TakenReading taken in Taken)
        {
            if (taken.Slot == slot && taken.Field == field)
            {
                return taken;
            }
        }

        return null;
    }

    /// <summary>What still holds with another part in a slot: the values that it has from the same measuring or cutting; another part with the same figure has not. None of them without a part. A reading of several parts that the new one does not say is old.</summary>
    public BuildNotes Beside(Slot slot, Part? part)
    {
        // Apart, so that its closure is not made where nothing is noted.
        return AsBuilt.IsEmpty && Taken.IsEmpty && Old.IsEmpty ? this : StillHolding(slot, part);
    }

    private BuildNotes StillHolding(Slot slot, Part? part)
    {
        BuildNotes notes = this with { AsBuilt = [.. AsBuilt.Where(v => v.Slot != slot || (part is not null && AsBuiltRules.IsOf(part, v)))] };
        foreach (TakenReading taken in Taken.Where(t => t.Slot == slot))
        {
            string? says = part is null ? null : PartForms.Of(slot).TextOf(part, taken.Field);
            notes = says == taken.Value ? notes
                : says == "unknown" ? (notes with { AsBuilt = AsBuilt }).Lapse(taken) with { AsBuilt = notes.AsBuilt }
                : notes.Without(slot, taken.Field);
        }

        return notes with { Old = [.. notes.Old.Where(v => v.Slot != slot || (part is not null && PartForms.Of(slot).TextOf(part, v.Field) == "unknown"))] };
    }

    private static ImmutableArray<AsBuiltValue> Sorted(ImmutableArray<AsBuiltValue> values, AsBuiltValue value) =>
        [.. values.Where(v => v.Slot != value.Slot || v.Field != value.Field).Append(value).OrderBy(v => v.Slot.Number).ThenBy(v => v.Field, StringComparer.Ordinal)];
}
