using System.Collections.Immutable;
using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>
/// Every choice of a request one by one, judged by the check alone and priced by what its report says; nothing of the planner is used. Slots are filled one after the other, and what a joint refuses
/// between parts that stand already is not gone on with: no other part mends it.
/// </summary>
internal static class BruteForce
{
    private sealed record Try(Build Build, ImmutableList<ChoiceOffer> Taken, long Price, long Mass);

    /// <summary>Prices in ten-thousandths and masses in milligrams of all builds that fit, cheapest first.</summary>
    public static List<(long Price, long Mass, Build Build)> All(ChoiceRequest request, bool masses = false)
    {
        Slot[] open = [.. Slot.All.Where(s => s != Slot.Frame && s != Slot.Rider && !request.Wishes.Any(w => w.Slot == s && w.Name.StartsWith("keep", StringComparison.Ordinal)))];
        List<Try> some = [new(open.Where(s => request.Build[s] is not null).Aggregate(request.Build, (b, s) => b.Without(s)), [], 0, Slot.All.Where(s => !open.Contains(s) && request.Build[s] is not null).Sum(s => Milligrams(request, s)))];
        foreach (Slot slot in open)
        {
            List<Try> more = [];
            foreach (Try one in some)
            {
                Build without = one.Build;
                more.Add(one);
                if (request.Build[slot] is { } owned)
                {
                    more.Add(one with { Build = without.With(owned, slot), Mass = one.Mass + Milligrams(request, slot) });
                }

                foreach (ChoiceOffer offer in request.Offers.Where(o => o.Slot == slot && (o.IsOwned || o.Price is not null) && (!masses || o.Mass is not null)))
                {
                    more.Add(new(without.With(offer.Part, slot), one.Taken.Add(offer), one.Price + (offer.IsOwned ? 0 : (long)(offer.Price!.Value.Amount * 10_000)), one.Mass + (long)Math.Round(offer.Mass?.Milligrams ?? 0)));
                }
            }

            some = more.FindAll(t => Goes(t.Build, slot, request));
        }

        List<(long Price, long Mass, Build Build)> fitting = [];
        foreach (Try one in some)
        {
            if (request.Wishes.All(w => one.Build[w.Slot] is { } part && w.IsMetBy(part)) && BridgeSums.GoTogether(request, one.Build, one.Taken) && Bridges(one.Build, request, masses) is { } added)
            {
                fitting.Add((one.Price + added.Price, one.Mass + added.Mass, one.Build));
            }
        }

        return [.. fitting.OrderBy(f => f.Price)];
    }

    /// <summary>What stands so far meets its wish, and no joint refuses it.</summary>
    private static bool Goes(Build build, Slot slot, ChoiceRequest request)
    {
        Verdict worst = request.AllowsMeasuring ? Verdict.NeedsMeasuring : Verdict.NeedsPart;
        return request.Wishes.All(w => w.Slot != slot || (build[slot] is { } part && w.IsMetBy(part)))
            && (build[slot] is null || build.Check().Findings.All(f => f.Verdict <= worst));
    }

    private static long Milligrams(ChoiceRequest request, Slot slot) => request.OwnedMasses.TryGetValue(slot, out UnitsNet.Mass mass) ? (long)Math.Round(mass.Milligrams) : 0;

    /// <summary>What the bridges of a build cost; null where it does not fit or one has no price.</summary>
    private static (long Price, long Mass)? Bridges(Build build, ChoiceRequest request, bool masses)
    {
        FitReport report = build.Check();
        if (!report.IsComplete || report.Verdict > (request.AllowsMeasuring ? Verdict.NeedsMeasuring : Verdict.NeedsPart) || UnjudgedFields.Asked(build) is not null)
        {
            return null;
        }

        (long Price, long Mass) sum = default;
        foreach (Fit fit in report.Findings.Where(f => f.Verdict == Verdict.NeedsPart))
        {
            if (BridgeSums.Of(fit.Joint!, fit.Tell(), request, masses) is not { } added)
            {
                return null;
            }

            sum = (sum.Price + added.Price, sum.Mass + added.Mass);
        }

        return sum;
    }
}
