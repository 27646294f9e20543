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
    private const string Insertion = "insertion";

    /// <summary>What moves a line of the rings only by its plate under the drive-side cup.</summary>
    private static readonly ImmutableArray<Slot> Plated = [Slot.ChainGuide, Slot.FrontDerailleur];

    private static readonly ImmutableArray<ReadTogether> Rows =
    [
        new(Slot.Crankset, "toeClearance", p => ((Crankset)p).ToeClearance, [Slot.Frame, Slot.Fork, Slot.Headset, Slot.FrontWheel, Slot.FrontTyre, Slot.Crankset]),
        new(Slot.Pedals, "groundHeight", p => ((Pedals)p).GroundHeight, [Slot.Frame, Slot.Fork, Slot.Headset, Slot.Shock, Slot.FrontWheel, Slot.RearWheel, Slot.FrontTyre, Slot.RearTyre, Slot.Crankset, Slot.Pedals]),
        new(Slot.Crankset, "measuredChainline", p => ((Crankset)p).MeasuredChainline, [Slot.Frame, Slot.BottomBracket, Slot.ShellAdapter, Slot.Crankset, Slot.Chainring, Slot.ChainGuide, Slot.FrontDerailleur]),
        new(Slot.RearWheel, "cassetteChainline", p => ((Wheel)p).CassetteChainline, [Slot.Frame, Slot.RearWheel, Slot.Cassette]),
        new(Slot.Frame, "standover", p => ((Frame)p).Standover is { Evidence.IsAsBuilt: true } read ? read : default, [Slot.Frame, Slot.Fork, Slot.Headset, Slot.Shock, Slot.FrontWheel, Slot.RearWheel, Slot.FrontTyre, Slot.RearTyre]),
        new(Slot.Seatpost, Insertion, p => ((Seatpost)p).Insertion is { Evidence.IsAsBuilt: true } read ? read : default, [Slot.Frame, Slot.Seatpost]),
        new(Slot.Seatpost, "binderGap", p => ((Seatpost)p).BinderGap, [Slot.Frame, Slot.SeatClamp, Slot.Seatpost]),
    ];

    /// <summary>Fields that move none of these readings: what is read on the finished bicycle, what is worn, cut and looked over.</summary>
    private static readonly ImmutableArray<string> Idle =
        ["toeClearance", "groundHeight", "measuredChainline", "cassetteChainline", "binderGap", "mountedWidth", "mountedRim", "condition", "made", "standover", "insertion", "rimWall", "spacersBelow", "spacersAbove"];

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
    public static string MarkOf(Slot slot, string field, Build build)
    {
        ImmutableArray<Slot> slots = SlotsOf(slot, field);
        if (slots.Contains(Slot.ChainGuide))
        {
            slots = [.. slots.Except(Plated), .. Plated.Where(s => build[s] is { } part && (JointInputs.HasGuidePlate(part) || JointInputs.HasDerailleurPlate(part)))];
        }

        return Waiver.PartsOf(slots, build, (place, key) => Plated.Contains(place) || Idle.Contains(key) || (AsBuiltRules.IsCuttable(place, key) && !(field == Insertion && place == Slot.Seatpost)));
    }

    /// <summary>What the parts of a build state of such readings.</summary>
    public static IEnumerable<(Slot Slot, string Field)> StatedIn(Build build) =>
        Rows.Where(r => build[r.Slot] is { } part && r.Get(part).State != KnownState.Unknown).Select(r => (r.Slot, r.Field));

    /// <summary>Readings that a part states, however it came to them: each is of some bicycle. What lies outside the library is no reading.</summary>
    public static IEnumerable<string> ReadOn(Part part, Slot slot)
    {
        foreach (ReadTogether row in Rows)
        {
            if (row.Slot == slot && row.IsOn(part))
            {
                yield return row.Field;
            }
        }
    }

    /// <summary>It states any of them; nothing is allocated.</summary>
    public static bool HasReading(Part part, Slot slot)
    {
        foreach (ReadTogether row in Rows)
        {
            if (row.Slot == slot && row.IsOn(part))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The same of many parts of a slot: the fields that may hold such a reading, and whether the one of a part does.</summary>
    public static IEnumerable<(string Field, Func<Part, bool> IsOn)> ReadingsOf(Slot slot) => Rows.Where(r => r.Slot == slot).Select(r => (r.Field, (Func<Part, bool>)r.IsOn));

    /// <summary>What a part is by itself: the same one where it states no reading.</summary>
    public static Part Alone(Part part, Slot slot)
    {
        foreach (string field in ReadOn(part, slot))
        {
            part = Unset(part, slot, field);
        }

        return part;
    }

    /// <summary>The part of which the reading is unknown.</summary>
    public static Part Unset(Part part, Slot slot, string field) =>
        PartForms.Of(slot).TrySet(part, field, "unknown", Evidence.AsValue, out Part changed, out _) ? changed : part;

    private sealed record ReadTogether(Slot Slot, string Field, Func<Part, Known<Dimension>> Get, ImmutableArray<Slot> With)
    {
        public bool IsOn(Part part) => Get(part).State is var state && state != KnownState.Unknown && !state.IsOutside();
    }
}
