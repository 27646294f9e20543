using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>Whether some joints, wishes and required slots alone can be met: every choice one by one, by the check.</summary>
internal static class BruteReason
{
    public static bool CanBeMet(ChoiceRequest request, IReadOnlyCollection<Joint> joints, IReadOnlyCollection<ChoiceWish> wishes, IReadOnlyCollection<Slot> required)
    {
        HashSet<string> bridges = [.. request.Bridges.Select(b => b.BridgeId)];
        HashSet<Slot> matter = [.. joints.SelectMany(j => j.Slots).Concat(wishes.Select(w => w.Slot)).Concat(required).Concat(required.Count > 0 ? [Slot.Fork, Slot.FrontWheel, Slot.RearWheel] : Array.Empty<Slot>()).Where(s => s != Slot.Frame && s != Slot.Rider)];
        List<Build> some = [matter.Where(s => request.Build[s] is not null).Aggregate(request.Build, (b, s) => b.Without(s))];
        foreach (Slot slot in Slot.All.Where(matter.Contains))
        {
            Build[] before = [.. some];
            Part[] parts = [.. request.Offers.Where(o => o.Slot == slot && (o.IsOwned || o.Price is not null)).Select(o => o.Part)];
            Part[] owned = request.Build[slot] is { } there ? [there] : [];

            // What a joint refuses between parts that stand already no other part mends.
            some = [.. before, .. before.SelectMany(b => owned.Concat(parts).Select(p => b.With(p, slot))).Where(b => Goes(b, joints, bridges))];
        }

        return some.Exists(b => Meets(b, request, joints, wishes, required, bridges));
    }

    private static bool Meets(Build build, ChoiceRequest request, IReadOnlyCollection<Joint> joints, IReadOnlyCollection<ChoiceWish> wishes, IReadOnlyCollection<Slot> required, HashSet<string> bridges)
    {
        if (!wishes.All(w => build[w.Slot] is { } part && (w.Name.StartsWith("keep", StringComparison.Ordinal) ? ReferenceEquals(part, request.Build[w.Slot]) : w.IsMetBy(part))))
        {
            return false;
        }

        return !required.Any(build.Check().Missing.Contains) && Goes(build, joints, bridges);
    }

    private static bool Goes(Build build, IReadOnlyCollection<Joint> joints, HashSet<string> bridges) =>
        build.Check().Findings.Where(f => joints.Contains(f.Joint)).All(f => f.Verdict == Verdict.Fits || (f.Verdict == Verdict.NeedsPart && f.Remedies.All(r => r.Bridge is not null && bridges.Contains(r.Bridge.Id))));
}
