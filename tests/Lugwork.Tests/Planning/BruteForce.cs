using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>Every choice of a request one by one, judged by the check alone and priced by what its report says; nothing of the planner is used.</summary>
internal static class BruteForce
{
    /// <summary>Prices in ten-thousandths and masses in milligrams of all builds that fit, cheapest first.</summary>
    public static List<(long Price, long Mass, Build Build)> All(ChoiceRequest request)
    {
        Dictionary<string, ChoiceBridgePrice> bridges = request.Bridges.ToDictionary(b => b.BridgeId);
        Slot[] open = [.. Slot.All.Where(s => s != Slot.Frame && s != Slot.Rider && !request.Wishes.Any(w => w.Slot == s && w.Name.StartsWith("keep", StringComparison.Ordinal)))];
        List<(Build Build, long Price, long Mass)> some = [(request.Build, 0, Slot.All.Where(s => !open.Contains(s) && request.Build[s] is not null).Sum(s => Milligrams(request, s)))];
        foreach (Slot slot in open)
        {
            List<(Build Build, long Price, long Mass)> more = [];
            foreach ((Build build, long price, long mass) in some)
            {
                Build without = build[slot] is null ? build : build.Without(slot);
                more.Add((without, price, mass));
                if (request.Build[slot] is { } owned)
                {
                    more.Add((without.With(owned, slot), price, mass + Milligrams(request, slot)));
                }

                foreach (ChoiceOffer offer in request.Offers.Where(o => o.Slot == slot && (o.IsOwned || o.Price is not null)))
                {
                    more.Add((without.With(offer.Part, slot), price + (offer.IsOwned ? 0 : (long)(offer.Price!.Value.Amount * 10_000)), mass + (long)Math.Round(offer.Mass?.Milligrams ?? 0)));
                }
            }

            some = more;
        }

        List<(long Price, long Mass, Build Build)> fitting = [];
        foreach ((Build build, long price, long mass) in some)
        {
            if (request.Wishes.All(w => build[w.Slot] is { } part && w.IsMetBy(part)) && Bridges(build, request, bridges) is { } added)
            {
                fitting.Add((price + added.Price, mass + added.Mass, build));
            }
        }

        return [.. fitting.OrderBy(f => f.Price)];
    }

    private static long Milligrams(ChoiceRequest request, Slot slot) => request.OwnedMasses.TryGetValue(slot, out UnitsNet.Mass mass) ? (long)Math.Round(mass.Milligrams) : 0;

    /// <summary>What the bridges of a build cost; null where it does not fit or one has no price.</summary>
    private static (long Price, long Mass)? Bridges(Build build, ChoiceRequest request, Dictionary<string, ChoiceBridgePrice> bridges)
    {
        FitReport report = build.Check();
        if (!report.IsComplete || report.Verdict > (request.AllowsMeasuring ? Verdict.NeedsMeasuring : Verdict.NeedsPart))
        {
            return null;
        }

        long price = 0;
        long mass = 0;
        foreach (Fit fit in report.Fits.Where(f => f.Verdict == Verdict.NeedsPart))
        {
            Remedy[] remedies = [.. fit.Remedies.Where(r => r.Kind is RemedyKind.BuyPart or RemedyKind.ShopWork)];
            if (remedies.Any(r => r.Bridge is null))
            {
                throw new InvalidOperationException($"which bridge is open: {fit}");
            }

            foreach (Remedy remedy in remedies)
            {
                if (!bridges.TryGetValue(remedy.Bridge!.Id, out ChoiceBridgePrice? priced))
                {
                    if (!request.AllowsUnpricedBridges)
                    {
                        return null;
                    }

                    continue;
                }

                price += (long)(priced.Price.Amount * 10_000);
                mass += (long)Math.Round(priced.Mass?.Milligrams ?? 0);
            }
        }

        return (price, mass);
    }
}
