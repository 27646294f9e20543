using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>What a judged joint costs by what its account tells; nothing of the planner is used.</summary>
internal static class BridgeSums
{
    /// <summary>Price in ten-thousandths and mass in milligrams of what a joint that needs a part asks for; where it tells a choice, the dearest and the heaviest. Null where something has no price, or no mass where masses count.</summary>
    public static (long Price, long Mass)? Of(Joint joint, Account account, ChoiceRequest request, bool masses)
    {
        (long Price, long Mass)? sum = (0, 0);
        foreach (Remedy remedy in account.Remedies.Where(r => r.Kind is RemedyKind.BuyPart or RemedyKind.ShopWork))
        {
            (long Price, long Mass)?[] choices = remedy.Bridge is { } bridge ? [One(joint, bridge, request, masses)] : [.. Choices(account, remedy.What).Select(c => Sum(c.Select(b => One(joint, b, request, masses))))];
            sum = sum is null || Array.Exists(choices, c => c is null) ? null : (sum.Value.Price + choices.Max(c => c!.Value.Price), sum.Value.Mass + choices.Max(c => c!.Value.Mass));
        }

        return sum;
    }

    private static (long Price, long Mass)? Sum(IEnumerable<(long Price, long Mass)?> all) =>
        all.Aggregate(((long, long)?)(0, 0), (sum, one) => sum is null || one is null ? null : (sum.Value.Item1 + one.Value.Price, sum.Value.Item2 + one.Value.Mass));

    private static (long Price, long Mass)? One(Joint joint, Bridge bridge, ChoiceRequest request, bool masses)
    {
        ChoiceBridgePrice? listed = request.Bridges.FirstOrDefault(b => b.BridgeId == bridge.Id);
        bool there = request.Build.SmallPartsThere.Contains($"{joint.Id}:{bridge.Id}");
        return (listed is null && !there && !request.AllowsUnpricedBridges) || (masses && listed?.Mass is null) ? null
            : (there || listed is null ? 0 : (long)(listed.Price.Amount * 10_000), masses ? (long)Math.Round(listed!.Mass!.Value.Milligrams) : 0);
    }

    /// <summary>"one of these, as it measures: a; or b and c": rows by what they are called.</summary>
    private static IEnumerable<Bridge[]> Choices(Account account, string told)
    {
        const string Start = "one of these, as it measures: ";
        if (!told.StartsWith(Start, StringComparison.Ordinal))
        {
            throw new InvalidOperationException($"which bridge is open: {told}");
        }

        foreach (string choice in told[Start.Length..].Split("; or "))
        {
            yield return account.Bridges.FirstOrDefault(b => b.What == choice) is { } one ? [one]
                : account.Bridges.SelectMany(b => account.Bridges.Select(c => new[] { b, c })).First(p => $"{p[0].What} and {p[1].What}" == choice);
        }
    }

    /// <summary>What is there once stands once, an article is taken whole, and owned parts that are one article stand together.</summary>
    public static bool GoTogether(ChoiceRequest request, Build build, IReadOnlyCollection<ChoiceOffer> taken)
    {
        bool IsOwned(Slot slot) => request.Build[slot] is { } part && ReferenceEquals(part, build[slot]) && !taken.Any(o => o.Slot == slot && !ReferenceEquals(o.Part, part));
        string[] items = [.. taken.Select(o => o.Item).Concat(request.OwnedItems.Where(i => IsOwned(i.Key) && !taken.Any(o => o.Slot == i.Key)).Select(i => i.Value)).OfType<string>()];
        Slot[] levers = [.. new[] { Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter }.Where(s => request.Build[s] is not null)];
        return items.Distinct().Count() == items.Length
            && taken.Where(o => o.Article is not null).All(o => request.Offers.Where(a => a.Article == o.Article).Select(a => a.Slot).Distinct().All(s => taken.Any(t => t.Slot == s && t.Article == o.Article)))
            && (request.Build[Slot.Dropper] is null || request.Build[Slot.Seatpost] is null || IsOwned(Slot.Dropper) == IsOwned(Slot.Seatpost))
            && (request.Build[Slot.Controls] is null || levers.Length == 0 || IsOwned(Slot.Controls) == levers.Any(IsOwned));
    }
}
