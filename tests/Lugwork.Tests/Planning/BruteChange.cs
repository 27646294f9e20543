using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>Everything that could follow a swap, one by one, by the check.</summary>
internal static class BruteChange
{
    /// <summary>The fewest changes and the least price at that; null where nothing makes it fit.</summary>
    public static (int Count, decimal Price)? Best(ChoiceRequest request, Slot slot, Part part)
    {
        Dictionary<string, ChoiceBridgePrice> bridges = request.Bridges.ToDictionary(b => b.BridgeId);
        Build before = request.Build;
        FitReport old = before.Check();
        List<(Build Build, int Count, decimal Price)> some = [(before.With(part, slot), 0, 0)];
        foreach (Slot own in Slot.All.Where(s => s != Slot.Frame && s != slot && (before[s] is not null || request.Offers.Any(o => o.Slot == s))))
        {
            some = [.. some.SelectMany(s => request.Offers.Where(o => o.Slot == own).Select(o => (s.Build.With(o.Part, own), s.Count + 1, s.Price + (o.IsOwned ? 0 : o.Price!.Value.Amount)))
                .Append(s).Concat(before[own] is null ? [] : [(s.Build.Without(own), s.Count + 1, s.Price)]))];
        }

        (int Count, decimal Price)? best = null;

        // What may be best comes first: bridges only add to it.
        foreach ((Build build, int count, decimal price) in some.OrderBy(s => (s.Count, s.Price)))
        {
            if (best is not null && (count, price).CompareTo(best.Value) >= 0)
            {
                break;
            }

            if (GoWithTheirOwn(build, before, slot) && Added(build, before, old, bridges) is { } added && (best is null || (count, price + added).CompareTo(best.Value) < 0))
            {
                best = (count, price + added);
            }
        }

        return best;
    }

    /// <summary>An owned dropper stays where its seatpost stays, and controls where one of their levers or shifters does; one that is swapped by itself is asked about alone.</summary>
    private static bool GoWithTheirOwn(Build build, Build before, Slot swapped)
    {
        bool Stays(Slot slot) => ReferenceEquals(build[slot], before[slot]);
        bool Together(Slot companion, params Slot[] hosts) =>
            swapped == companion || before[companion] is null || !hosts.Any(h => before[h] is not null) || Stays(companion) == hosts.Any(h => before[h] is not null && Stays(h));
        return Together(Slot.Dropper, Slot.Seatpost) && Together(Slot.Controls, Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter);
    }

    private static decimal? Added(Build build, Build before, FitReport old, Dictionary<string, ChoiceBridgePrice> bridges)
    {
        FitReport report = build.Check();
        if (report.Missing.Any(s => !old.Missing.Contains(s)))
        {
            return null;
        }

        decimal added = 0;
        foreach (Fit fit in report.Findings.Where(f => f.Joint!.Slots.Any(s => !ReferenceEquals(build[s], before[s]))))
        {
            if (fit.Verdict > Verdict.NeedsPart || (fit.Verdict == Verdict.NeedsPart && !fit.Remedies.All(r => r.Bridge is not null && bridges.ContainsKey(r.Bridge.Id))))
            {
                return null;
            }

            added += fit.Verdict == Verdict.NeedsPart ? fit.Remedies.Sum(r => bridges[r.Bridge!.Id].Price.Amount) : 0;
        }

        return added;
    }
}
