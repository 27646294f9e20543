using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>A field for which a sheet says different values. All are kept, none is accepted.</summary>
public sealed class SpecConflict
{
    internal SpecConflict(Slot slot, string field, ImmutableArray<SpecValue> values)
    {
        Slot = slot;
        Field = field;
        Values = values;
    }

    /// <summary>The part.</summary>
    public Slot Slot { get; internal init; }

    /// <summary>Key of the field: "seatTube".</summary>
    public string Field { get; internal init; }

    /// <summary>The values with their words, in the order of the sheet.</summary>
    public ImmutableArray<SpecValue> Values { get; internal init; }

    /// <summary>"frame.seatTube: 27.2 ('27,2 mm') or 31.6 ('31,6 mm')".</summary>
    public override string ToString() => $"{Slot.Key}.{Field}: {string.Join(" or ", Values.Select(v => $"{v.Key} ('{v.Words}')"))}";
}
