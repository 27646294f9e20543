using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>Slots that say more of a part in another slot: a dropper is its seatpost, and the clamps of levers and shifters are those levers and shifters. The two are one article.</summary>
internal static class OneArticle
{
    /// <summary>Each such slot with the slots of the parts that it may be.</summary>
    public static ImmutableArray<(Slot Companion, ImmutableArray<Slot> Hosts)> All { get; } =
    [
        (Slot.Dropper, [Slot.Seatpost]),
        (Slot.Controls, [Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter]),
    ];

    /// <summary>The slot that says more of the part in a slot; null where none does.</summary>
    public static Slot? CompanionOf(Slot host)
    {
        foreach ((Slot companion, ImmutableArray<Slot> hosts) in All)
        {
            if (hosts.Contains(host))
            {
                return companion;
            }
        }

        return null;
    }

    /// <summary>The parts in a build that the part of a slot is one article with; empty where it stands for itself.</summary>
    public static ImmutableArray<Slot> HostsOf(Slot companion, Build build)
    {
        foreach ((Slot own, ImmutableArray<Slot> hosts) in All)
        {
            if (own == companion && build[own] is not null)
            {
                return [.. hosts.Where(h => build[h] is not null)];
            }
        }

        return [];
    }
}
