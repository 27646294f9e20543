using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>What each slot can hold: the owned part, nothing, then the offers in their order. What has no price, no mass where masses count, or is outside the library is left out.</summary>
/// <param name="BySlot">Entries by the number of the slot.</param>
/// <param name="LeftOut">What was left out, in the order of slots, owned parts first.</param>
internal sealed record ChoiceEntries(IReadOnlyList<ChoiceEntry>[] BySlot, ImmutableArray<ChoiceOffer> LeftOut)
{
    public static ChoiceEntries Of(ChoiceRequest request, bool masses)
    {
        List<ChoiceEntry>[] entries = [.. Slot.All.Select(_ => new List<ChoiceEntry>())];
        List<ChoiceOffer> leftOut = [];
        foreach (Slot slot in Slot.All)
        {
            if (slot == Slot.Rider)
            {
                // The rider is no part of the bicycle: there or not, as the build says, and without price or mass.
                entries[slot.Number].Add(request.Build[slot] is { } rider ? new(new ChoiceOffer("rider", slot, rider) { IsOwned = true }, 0, 0) : default);
                continue;
            }

            if (Owned(request, slot) is { } owned)
            {
                if (slot == Slot.Frame && masses && owned.Mass is null)
                {
                    throw new ArgumentException($"masses count, and the mass of {owned.Id} is not known", nameof(request));
                }

                Add(entries, owned, masses, leftOut);
            }

            if (slot != Slot.Frame)
            {
                entries[slot.Number].Add(default);
            }
        }

        foreach (ChoiceOffer offer in request.Offers)
        {
            if (Refused(offer) is { } why)
            {
                throw new ArgumentException(why, nameof(request));
            }

            Add(entries, offer, masses, leftOut);
        }

        AllOrNone(request, entries, leftOut);
        return new(entries, [.. leftOut.OrderBy(o => o.Slot.Number)]);
    }

    /// <summary>The part of the build in a slot, as an offer; null where there is none.</summary>
    public static ChoiceOffer? Owned(ChoiceRequest request, Slot slot)
    {
        if (request.Build[slot] is not { } part)
        {
            return null;
        }

        UnitsNet.Mass? mass = request.OwnedMasses.TryGetValue(slot, out UnitsNet.Mass known) ? known : OneArticle.HostsOf(slot, request.Build).IsEmpty ? null : UnitsNet.Mass.Zero;
        return new(part.Name.Length > 0 ? part.Name : $"owned {slot.Name}", slot, part) { IsOwned = true, IsOnBicycle = true, Mass = mass, Item = request.OwnedItems.GetValueOrDefault(slot) };
    }

    /// <summary>The one currency of the request; null where nothing has a price.</summary>
    public static string? Currency(ChoiceRequest request) => Price.OneCurrency(
        [.. request.Offers.Where(o => o.Price is not null).Select(o => (o.Id, o.Price!.Value)), .. request.Bridges.Select(b => ($"bridge {b.BridgeId}", b.Price))]);

    /// <summary>Nothing of the part that no joint reads is outside the library: else nothing can be said of any bicycle with it.</summary>
    public static bool IsJudged(Slot slot, Part part) => UnjudgedFields.Asked(new ChoiceAlone(slot, part)) is null;

    private static string? Refused(ChoiceOffer offer) =>
        offer.Slot == Slot.Frame ? $"{offer.Id} is a frame: the frame of the build stays"
        : offer.Slot == Slot.Rider ? $"{offer.Id} is a rider: the rider of the build stays"
        : offer.Price is { Amount: < 0 } ? $"{offer.Id} has a negative price"
        : null;

    private static void Add(List<ChoiceEntry>[] entries, ChoiceOffer offer, bool masses, List<ChoiceOffer> leftOut)
    {
        if ((offer.IsOwned || offer.Price is not null) && (!masses || offer.Mass is not null) && IsJudged(offer.Slot, offer.Part))
        {
            entries[offer.Slot.Number].Add(new(offer, offer.IsOwned ? 0 : offer.Price!.Value.Steps, masses ? ChoicePrices.Milligrams(offer.Mass!.Value, offer.Id) : 0));
        }
        else
        {
            leftOut.Add(offer);
        }
    }

    /// <summary>An article of which one slot's part was left out is left out whole.</summary>
    private static void AllOrNone(ChoiceRequest request, List<ChoiceEntry>[] entries, List<ChoiceOffer> leftOut)
    {
        foreach (IGrouping<string, ChoiceOffer> article in request.Offers.Where(o => o.Article is not null).GroupBy(o => o.Article!, StringComparer.Ordinal))
        {
            bool IsIn(Slot slot) => entries[slot.Number].Exists(e => e.Offer is { } offer && offer.Article == article.Key);
            if (!article.All(o => IsIn(o.Slot)))
            {
                foreach (Slot slot in article.Select(o => o.Slot).Distinct())
                {
                    leftOut.AddRange(entries[slot.Number].Where(e => e.Offer is { } offer && offer.Article == article.Key).Select(e => e.Offer!));
                    entries[slot.Number].RemoveAll(e => e.Offer is { } offer && offer.Article == article.Key);
                }
            }
        }
    }

    /// <summary>One part by itself.</summary>
    private sealed class ChoiceAlone(Slot slot, Part part) : IParts
    {
        public Part? At(Slot other) => other == slot ? part : null;

        public Joint JointAt(int number) => JudgePlan.Whole.JointAt(number);

        public Account ToldAt(int number, Verdict verdict) => Account.Of(JointAt(number), this, verdict);
    }
}
