using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>Whether some joints, wishes and required slots alone can be met: every choice one by one, by the check.</summary>
internal static class BruteReason
{
    public static bool CanBeMet(ChoiceRequest request, IReadOnlyCollection<Joint> joints, IReadOnlyCollection<ChoiceWish> wishes, IReadOnlyCollection<Slot> required)
    {
        HashSet<string> bridges = [.. request.Bridges.Select(b => b.BridgeId)];
        HashSet<Slot> matter = [.. joints.SelectMany(j => j.Slots).Concat(wishes.Select(w => w.Slot)).Concat(required).Concat(required.Count > 0 ? [Slot.Fork, Slot.FrontWheel, Slot.RearWheel] : Array.Empty<Slot>()).Where(s => s != Slot.Frame && s != Slot.Rider)];
        List<Build> some = [request.Build];
        foreach (Slot slot in Slot.All.Where(matter.Contains))
        {
            Build[] before = [.. some];
            Part[] parts = [.. request.Offers.Where(o => o.Slot == slot && (o.IsOwned || o.Price is not null)).Select(o => o.Part)];
            some = [.. before.Select(b => b[slot] is null ? b : b.Without(slot)), .. before.Where(b => b[slot] is not null), .. before.SelectMany(b => parts.Select(p => b.With(p, slot)))];
        }

        return some.Exists(b => Meets(b, request, joints, wishes, required, bridges));
    }

    private static bool Meets(Build build, ChoiceRequest request, IReadOnlyCollection<Joint> joints, IReadOnlyCollection<ChoiceWish> wishes, IReadOnlyCollection<Slot> required, HashSet<string> bridges)
    {
        if (!wishes.All(w => build[w.Slot] is { } part && (w.Name.StartsWith("keep", StringComparison.Ordinal) ? ReferenceEquals(part, request.Build[w.Slot]) : w.IsMetBy(part))))
        {
            return false;
        }

        FitReport report = build.Check();
        return !required.Any(report.Missing.Contains)
            && report.Fits.Where(f => joints.Contains(f.Joint)).All(f => f.Verdict == Verdict.Fits || (f.Verdict == Verdict.NeedsPart && f.Remedies.All(r => r.Bridge is not null && bridges.Contains(r.Bridge.Id))));
    }
}
