using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Planning;

/// <summary>What to choose from, and what the result has to be.</summary>
/// <remarks>Lists compare by being the same list: two that say the same are equal only where one was made from the other. Compare what is needed.</remarks>
public sealed record ChoiceRequest
{
    /// <summary>The bicycle as it is: its frame stays, its other parts are owned, and are kept where that is asked for or cheapest.</summary>
    public required Build Build { get; init; }

    /// <summary>The parts that can be had, in an order that decides between equal choices.</summary>
    public required ImmutableArray<ChoiceOffer> Offers { get; init; }

    /// <summary>What bridges cost; each id once.</summary>
    public ImmutableArray<ChoiceBridgePrice> Bridges { get; init; } = [];

    /// <summary>What the result has to be beside fitting.</summary>
    public ImmutableArray<ChoiceWish> Wishes { get; init; } = [];

    /// <summary>
    /// What the owned parts weigh, the frame among them, as far as it is known. Where masses count, an owned part without one is not chosen, and a frame without one is refused; a dropper or controls
    /// without one weigh what their seatpost, levers and shifters do.
    /// </summary>
    public ImmutableDictionary<Slot, Mass> OwnedMasses { get; init; } = ImmutableDictionary<Slot, Mass>.Empty;

    /// <summary>Names of owned parts that are offered for another slot too, such as the rear tyre for the front: of one <see cref="ChoiceOffer.Item"/> one is taken at most.</summary>
    public ImmutableDictionary<Slot, string> OwnedItems { get; init; } = ImmutableDictionary<Slot, string>.Empty;

    /// <summary>A bridge without a price may be needed: it counts as nothing, and the result says "at least". Without it such a joint is not chosen, and where masses count it is not chosen anyhow.</summary>
    public bool AllowsUnpricedBridges { get; init; }

    /// <summary>A joint may need measuring: what it may take then counts as nothing, and the result says "at least"; the default is that each fits, as it is or with a bridge. What does not fit or is unsafe is never chosen, nor is a part of which something is outside the library; a frame of such a kind makes the request impossible, and is named among what was left out.</summary>
    public bool AllowsMeasuring { get; init; }
}
