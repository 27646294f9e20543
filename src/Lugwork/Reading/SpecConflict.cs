using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>A field for which a sheet says different values. All are kept, none is accepted.</summary>
/// <param name="Slot">The part.</param>
/// <param name="Field">Key of the field: "seatTube".</param>
/// <param name="Values">The values with their words, in the order of the sheet.</param>
public sealed record SpecConflict(Slot Slot, string Field, ImmutableArray<SpecValue> Values)
{
    /// <summary>"frame.seatTube: 27.2 ('27,2 mm') or 31.6 ('31,6 mm')".</summary>
    public override string ToString() => $"{Slot.Key}.{Field}: {string.Join(" or ", Values.Select(v => $"{v.Key} ('{v.Words}')"))}";
}
