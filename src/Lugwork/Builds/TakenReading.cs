using System.Collections.Immutable;

namespace Lugwork;

/// <summary>A reading that holds for the parts it was taken with.</summary>
/// <param name="Slot">Where the part is that has it.</param>
/// <param name="Field">Field of the part.</param>
/// <param name="Value">What was read, as a build file writes it.</param>
/// <param name="Parts">Mark of the parts, as <see cref="TakenWith.MarkOf"/> makes it.</param>
internal sealed record TakenReading(Slot Slot, string Field, string Value, string Parts);

/// <summary>
/// Readings that are of no one part: the room before the pedal is of the frame, the fork, the wheel and the crank together. Each row says with which
/// parts one is taken; where one of them is another, nobody knows the reading any more. What is of one part alone, such as a length to which it was
/// cut, has no row.
/// </summary>
internal static class TakenWith
{
    private static readonly ImmutableArray<ReadTogether> Rows =
    [
        new(Slot.Crankset, "toeClearance", p => ((Crankset)p).ToeClearance, [Slot.Frame, Slot.Fork, Slot.Headset, Slot.FrontWheel, Slot.FrontTyre, Slot.Crankset]),
        new(Slot.Pedals, "groundHeight", p => ((Pedals)p).GroundHeight, [Slot.Frame, Slot.Fork, Slot.Headset, Slot.Shock, Slot.FrontWheel, Slot.RearWheel, Slot.FrontTyre, Slot.RearTyre, Slot.Crankset, Slot.Pedals]),
        new(Slot.Crankset, "measuredChainline", p => ((Crankset)p).MeasuredChainline, [Slot.Frame, Slot.BottomBracket, Slot.Crankset, Slot.Chainring]),
        new(Slot.RearWheel, "cassetteChainline", p => ((Wheel)p).CassetteChainline, [Slot.Frame, Slot.RearWheel, Slot.Cassette]),
        new(Slot.Seatpost, "binderGap", p => ((Seatpost)p).BinderGap, [Slot.Frame, Slot.SeatClamp, Slot.Seatpost]),
    ];

    /// <summary>Fields that move none of these readings: what is read on the finished bicycle, what is worn, cut and looked over.</summary>
    private static readonly ImmutableArray<string> Idle =
        ["toeClearance", "groundHeight", "measuredChainline", "cassetteChainline", "binderGap", "mountedWidth", "mountedRim", "condition", "made", "insertion", "rimWall", "spacersBelow", "spacersAbove"];

    /// <summary>The parts with which a field is read; empty for what is of its part alone.</summary>
    public static ImmutableArray<Slot> SlotsOf(Slot slot, string field)
    {
        foreach (ReadTogether row in Rows)
        {
            if (row.Slot == slot && row.Field == field)
            {
                return row.With;
            }
        }

        return [];
    }

    /// <summary>By which another part, or another figure of one, is seen. Names count: an article with the same figures is another one.</summary>
    public static string MarkOf(Slot slot, string field, Build build) => Waiver.PartsOf(SlotsOf(slot, field), build, static (place, key) => Idle.Contains(key) || AsBuiltRules.IsCuttable(place, key));

    /// <summary>What the parts of a build state of such readings.</summary>
    public static IEnumerable<(Slot Slot, string Field)> StatedIn(Build build) =>
        Rows.Where(r => build[r.Slot] is { } part && r.Get(part).State != KnownState.Unknown).Select(r => (r.Slot, r.Field));

    /// <summary>Fields of a part that were read on a bicycle, as the part itself remembers it.</summary>
    public static IEnumerable<string> ReadOn(Part part, Slot slot)
    {
        foreach (ReadTogether row in Rows)
        {
            if (row.Slot == slot && row.Get(part).Evidence is { IsAsBuilt: true })
            {
                yield return row.Field;
            }
        }
    }

    /// <summary>The part of which the reading is unknown.</summary>
    public static Part Unset(Part part, Slot slot, string field) =>
        PartForms.Of(slot).TrySet(part, field, "unknown", Evidence.AsValue, out Part changed, out _) ? changed : part;

    private sealed record ReadTogether(Slot Slot, string Field, Func<Part, Known<Dimension>> Get, ImmutableArray<Slot> With);
}
