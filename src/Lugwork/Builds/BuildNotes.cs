using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What a build carries beside its parts: the small parts that are there, each with what was asked for when it was said, findings that were accepted, and what was measured and cut.</summary>
internal sealed record BuildNotes(ImmutableSortedDictionary<string, string> SmallParts, ImmutableArray<Waiver> Waivers, ImmutableArray<AsBuiltValue> AsBuilt)
{
    public static BuildNotes None { get; } = new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal), [], []);

    /// <summary>The same with a value as built, in place of an earlier one of the same field.</summary>
    public BuildNotes With(AsBuiltValue value) =>
        this with { AsBuilt = [.. AsBuilt.Where(v => v.Slot != value.Slot || v.Field != value.Field).Append(value).OrderBy(v => v.Slot.Number).ThenBy(v => v.Field, StringComparer.Ordinal)] };

    /// <summary>What still holds with another part in a slot: the values that it has from the same measuring or cutting; another part with the same figure has not. None of them without a part.</summary>
    public BuildNotes Beside(Slot slot, Part? part) =>
        AsBuilt.IsEmpty ? this : this with { AsBuilt = [.. AsBuilt.Where(v => v.Slot != slot || (part is not null && AsBuiltRules.IsOf(part, v)))] };
}
