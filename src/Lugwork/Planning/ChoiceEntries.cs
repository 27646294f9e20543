namespace Lugwork.Planning;

/// <summary>Lays out what each slot can hold: the owned part, nothing, then the offers in their order. What has no price, no mass where masses count, or is outside the library is left out.</summary>
internal static class ChoiceEntries
{
    public static IReadOnlyList<ChoiceEntry>[] Of(ChoiceRequest request, bool masses)
    {
        List<ChoiceEntry>[] entries = [.. Slot.All.Select(_ => new List<ChoiceEntry>())];
        foreach (Slot slot in Slot.All)
        {
            if (slot == Slot.Rider)
            {
                // The rider is no part of the bicycle: there or not, as the build says, and without price or mass.
                entries[slot.Number].Add(request.Build[slot] is { } rider ? new(new ChoiceOffer("rider", slot, rider) { IsOwned = true }, 0, 0) : default);
                continue;
            }

            if (request.Build[slot] is { } part)
            {
                UnitsNet.Mass? mass = request.OwnedMasses.TryGetValue(slot, out UnitsNet.Mass known) ? known : null;
                ChoiceOffer owned = new(part.Name.Length > 0 ? part.Name : $"owned {slot.Name}", slot, part) { IsOwned = true, Mass = mass };
                if (slot == Slot.Frame && masses && mass is null)
                {
                    throw new ArgumentException($"masses count, and the mass of {owned.Id} is not known", nameof(request));
                }

                Add(entries, owned, masses);
            }

            if (slot != Slot.Frame)
            {
                entries[slot.Number].Add(default);
            }
        }

        foreach (ChoiceOffer offer in request.Offers)
        {
            if (offer.Slot == Slot.Frame)
            {
                throw new ArgumentException($"{offer.Id} is a frame: the frame of the build stays", nameof(request));
            }

            if (offer.Slot == Slot.Rider)
            {
                throw new ArgumentException($"{offer.Id} is a rider: the rider of the build stays", nameof(request));
            }

            if (offer.Price is { Amount: < 0 })
            {
                throw new ArgumentException($"{offer.Id} has a negative price", nameof(request));
            }

            Add(entries, offer, masses);
        }

        return entries;
    }

    /// <summary>The one currency of the request; null where nothing has a price.</summary>
    public static string? Currency(ChoiceRequest request) => Price.OneCurrency(
        [.. request.Offers.Where(o => o.Price is not null).Select(o => (o.Id, o.Price!.Value)), .. request.Bridges.Select(b => ($"bridge {b.BridgeId}", b.Price))]);

    /// <summary>Nothing of the part that no joint reads is outside the library: else nothing can be said of any bicycle with it.</summary>
    public static bool IsJudged(Slot slot, Part part) => UnjudgedFields.Asked(new ChoiceAlone(slot, part)) is null;

    private static void Add(List<ChoiceEntry>[] entries, ChoiceOffer offer, bool masses)
    {
        if ((offer.IsOwned || offer.Price is not null) && (!masses || offer.Mass is not null) && IsJudged(offer.Slot, offer.Part))
        {
            entries[offer.Slot.Number].Add(new(offer, offer.IsOwned ? 0 : offer.Price!.Value.Steps, masses ? ChoicePrices.Milligrams(offer.Mass!.Value, offer.Id) : 0));
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
