using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <content>What follows when one part is swapped.</content>
public sealed partial class BuildChooser
{
    /// <summary>
    /// What else must change on the bicycle of the request when a part comes into a slot. The other parts stay where they can; offers and empty slots take their place where they cannot. Joints
    /// between parts that stay are not judged anew: what was wrong before the swap is no matter of it, and a slot that was missing before may stay so. The wishes of the request count, save those about the slot itself: one that is not met
    /// before the swap is met after it, and what that takes counts as a change. An owned dropper goes where its seatpost goes, and controls where all their levers and shifters go.
    /// </summary>
    /// <param name="slot">The slot; the frame's too.</param>
    /// <param name="part">What comes into it.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <exception cref="ArgumentException">The part does not go to this slot.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ChangePlan Changes(Slot slot, Part part, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(slot);
        ArgumentNullException.ThrowIfNull(part);
        Build before = Request.Build;
        Build swapped = before.With(part, slot);
        IReadOnlyList<ChoiceEntry>[] entries = ChangeEntries(swapped, slot);
        ImmutableArray<ChoiceWish> wishes = [.. Request.Wishes.Where(w => w.Slot != slot)];
        ChoiceModel model = ChoiceModel.Of(swapped, entries, wishes, _prices, before, cancellationToken);
        if (!ChoiceEntries.IsJudged(slot, part) || ChoiceReducer.Of(model, true, mostCells: MostTableCells, cancellationToken: cancellationToken) is not { } network)
        {
            return new(ChoiceStatus.Impossible, null, [], [], null, 0);
        }

        if (Fewest(network, cancellationToken, out long bound) is { } chosen)
        {
            return Changed(model, network, chosen, before, swapped, slot, _prices);
        }

        return bound >= ChoiceEntry.Never ? new(ChoiceStatus.Impossible, null, [], [], null, 0) : new(ChoiceStatus.Bound, null, [], [], null, (int)bound);
    }

    /// <summary>The choice of the fewest changes and, of those, of the least price. A change counts as a thousandth of a gram, so that it stands where masses do.</summary>
    /// <param name="network">The network of the swap.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <param name="bound">Where nothing was found, how many changes there are at least; never where there is none.</param>
    /// <param name="steps">The most steps of the search.</param>
    internal static (int State, int Rank)[]? Fewest(ChoiceNetwork network, CancellationToken cancellationToken, out long bound, long steps = MostSteps)
    {
        (ChoiceNetwork scaled, _, long perChange) = ChoiceScale.Of(network);
        long most = scaled.MostPrice;
        if ((Int128)(most + 1) * (scaled.MostMass + 1) < ChoiceEntry.Never / 2)
        {
            ChoiceWeights weights = new(1, most + 1);
            ChoiceSearch search = new(scaled, new(scaled, weights, cancellationToken), weights, cancellationToken);
            (int State, int Rank)[]? found = search.Next(steps)?.Chosen;
            bound = search.Bound >= ChoiceEntry.Never ? ChoiceEntry.Never : search.Bound / weights.PerMass * perChange;
            return found;
        }

        // Prices that are too large to stand behind a change in one number: how many changes there are is proven, and which of as many is cheapest is left open.
        ChoiceElimination fewest = new(scaled, ChoiceWeights.Mass, cancellationToken);
        bound = fewest.Bound >= ChoiceEntry.Never ? ChoiceEntry.Never : fewest.Bound * perChange;
        return null;
    }

    /// <summary>The swapped part alone in its slot; elsewhere what is there, nothing, or an offer. What is not as it was counts as one change.</summary>
    private IReadOnlyList<ChoiceEntry>[] ChangeEntries(Build swapped, Slot slot)
    {
        IReadOnlyList<ChoiceEntry>[] plain = ChoiceEntries.Of(Request, false).BySlot;
        foreach (Slot own in Slot.All)
        {
            Part? there = swapped[own];
            List<ChoiceEntry> list = [];
            if (there is not null)
            {
                list.Add(new(new ChoiceOffer(there.Name.Length > 0 ? there.Name : $"owned {own.Name}", own, there) { IsOwned = true, IsOnBicycle = true, Item = own == slot ? null : Request.OwnedItems.GetValueOrDefault(own) }, 0, 0));
            }

            if (own != slot && own != Slot.Frame && (own != Slot.Rider || there is null))
            {
                list.Add(new(null, 0, there is null ? 0 : 1));
                list.AddRange(plain[own.Number].Where(e => e.Offer is not null && !ReferenceEquals(e.Part, there)).Select(e => e with { Mass = 1 }));
            }

            plain[own.Number] = list;
        }

        return plain;
    }

    private ChangePlan Changed(ChoiceModel model, ChoiceNetwork network, (int State, int Rank)[] chosen, Build before, Build swapped, Slot slot, ChoicePrices prices)
    {
        Build after = swapped;
        ImmutableArray<SlotChange>.Builder changes = ImmutableArray.CreateBuilder<SlotChange>();
        for (int number = 0; number < chosen.Length; number++)
        {
            Slot own = model.Slots[number];
            ChoiceEntry entry = model.Entries[number][network.States[number][chosen[number].State].Entry[chosen[number].Rank]];
            if (own != slot && !ReferenceEquals(entry.Part, before[own]))
            {
                changes.Add(new(own, before[own], entry.Offer));
                after = entry.Part is { } part ? after.With(part, own) : after.Without(own);
            }
        }

        FitReport report = after.Check();
        bool AsItWas(Joint joint) => joint.Slots.All(s => ReferenceEquals(before[s], after[s]));
        Verdict worst = Request.AllowsMeasuring ? Verdict.NeedsMeasuring : Verdict.NeedsPart;
        ImmutableArray<Slot> missing = before.Check().Missing;
        (long price, long count) = network.Cost(chosen);
        ImmutableArray<ChosenBridge> bridges = [.. ChosenBridges(after, report.Findings.Where(f => !AsItWas(f.Joint!)), prices)];
        if (report.Findings.Any(f => f.Verdict > worst && !AsItWas(f.Joint!)) || report.Missing.Any(s => !missing.Contains(s)) || count != changes.Count)
        {
            throw new InvalidOperationException($"A fault of the library: what follows a swap does not pass its check. {report}");
        }

        return new(ChoiceStatus.Optimal, after, changes.ToImmutable(), bridges, PriceOf(price), changes.Count);
    }
}
