using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>The lines that a build asks for, without prices.</summary>
internal static class CostDraft
{
    private const string Perhaps = "perhaps";

    private static readonly string[] UsedUp = ["front-sealant", "rear-sealant", "grease", "carbon-paste", "threadlock"];

    /// <summary>Parts in the order of a build sheet, what is missing among them; then bridges, small parts, what is used up, and shop work.</summary>
    public static IEnumerable<CostLine> Lines(Build build)
    {
        FitReport report = build.Check();
        foreach (Slot slot in Slot.All)
        {
            if (build[slot] is { } part && !IsAnothersField(slot, build))
            {
                yield return new() { Id = slot.Key, Kind = CostKind.Part, Slot = slot, What = part.Name.Length > 0 ? $"{slot.Name} ({part.Name})" : slot.Name };
            }
            else if (report.Missing.Contains(slot))
            {
                yield return new() { Id = slot.Key, Kind = CostKind.Part, Slot = slot, What = $"{slot.Name}, still to be chosen" };
            }
        }

        ImmutableArray<SmallPart> smalls = build.SmallParts();
        foreach (SmallPart small in smalls.Where(p => p.Slot is null || !report.Missing.Contains(p.Slot)))
        {
            CostKind kind = small.Id.Contains(':', StringComparison.Ordinal) ? CostKind.Bridge : UsedUp.Contains(small.Id) ? CostKind.Consumable : CostKind.SmallPart;
            yield return new() { Id = small.Id, Kind = kind, Slot = small.Slot, What = small.ToString() };
        }

        // What may be needed is not nothing, and not two things where a small part is it.
        foreach (Fit fit in report.Findings.Where(f => f.Verdict == Verdict.NeedsMeasuring && !SmallPartTable.IsAsked(f.Joint!, smalls)))
        {
            string[] perhaps = [.. fit.Remedies.Where(r => r.Kind == RemedyKind.IfMeasured && r.Bridge is not null).Select(r => r.What)];
            if (perhaps.Length > 0)
            {
                yield return new() { Id = $"{fit.Joint!.Id}:{Perhaps}", Kind = CostKind.Bridge, What = $"perhaps, as it measures: {string.Join("; or ", perhaps)} ({fit.Joint.Name})" };
            }
        }

        foreach (Fit fit in report.Findings.Where(f => f.Verdict == Verdict.NeedsPart))
        {
            foreach (Remedy work in fit.Remedies.Where(r => r.Kind == RemedyKind.ShopWork).DistinctBy(r => r.Bridge?.Id))
            {
                yield return new() { Id = $"{fit.Joint!.Id}:{work.Bridge?.Id ?? "work"}", Kind = CostKind.ShopWork, What = $"{work.What} ({fit.Joint.Name})" };
            }
        }
    }

    /// <summary>A rider is bought nowhere, and what is one article with another part is bought with it.</summary>
    private static bool IsAnothersField(Slot slot, Build build) => slot == Slot.Rider || !OneArticle.HostsOf(slot, build).IsEmpty;
}
